//! The words that a person reads, as the batch door gives them.

use ledgerboard_core::catalog;

/// "Light fixture" is what the trade says, "luminaire" the code's word for it: the second stands
/// only behind the first.
#[test]
fn the_codes_word_for_a_light_fixture_never_stands_alone() {
    let described = catalog::describe(catalog::find("box-fill").unwrap());
    let canopy = r#"{"calculator":"box-fill","input":{"marked":"18",
        "supports":[{}],"wires":[{"how":"canopy","size":"18","count":5}]}}"#;
    let worked = catalog::answer_line(&canopy.replace('\n', ""));
    for text in [&described, &worked] {
        let plain = text.replace("ight fixture (luminaire)", "ight fixture");
        assert!(text.len() > plain.len(), "the code's word is there for who looks for it");
        assert!(!plain.to_lowercase().contains("luminaire"), "{plain}");
        assert!(!plain.contains("Not told") && !plain.contains("Left empty"), "{plain}");
    }
}
