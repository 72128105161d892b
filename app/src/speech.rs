//! The language the page speaks, chosen once when it starts. All words for people pass here on
//! their way to the screen; none are written anywhere but in `words` and in the core.

use ledgerboard_core::measure::Units;
use ledgerboard_core::words::{Language, Phrase, Text, Voice};
use leptos::prelude::{document, window};
use std::cell::Cell;

thread_local! {
    static LANGUAGE: Cell<Language> = const { Cell::new(Language::English) };
}

/// The languages that the page offers: key, and name in itself.
pub(crate) const LANGUAGES: [(&str, &str); 2] = [("en", "English"), ("es", "Español")];

/// Takes a language by its key in the settings, before anything is shown. The pseudo-language is
/// for the tests, which set its key by hand.
pub(crate) fn speak(key: &str) {
    LANGUAGE.set(match key {
        "es" => Language::Spanish,
        "pseudo" => Language::Pseudo,
        _ => Language::English,
    });
    if let Some(page) = document().document_element() {
        let _ = page.set_attribute("lang", if key == "es" { "es" } else { "en" });
    }
}

/// The language that a browser asks for, of those that the page offers.
pub(crate) fn asked_for() -> &'static str {
    let asked = window().navigator().language().unwrap_or_default();
    if asked.starts_with("es") { "es" } else { "en" }
}

/// The language that is spoken, by its key.
pub(crate) fn spoken() -> &'static str {
    if LANGUAGE.get() == Language::Spanish { "es" } else { "en" }
}

/// The page's voice in these units.
pub(crate) fn voice(units: Units) -> Voice {
    Voice { language: LANGUAGE.get(), units }
}

/// A phrase that shows no quantity.
pub(crate) fn phrase(phrase: &'static Phrase) -> String {
    voice(Units::Customary).phrase(phrase)
}

/// A text that shows no quantity.
pub(crate) fn say(text: &Text) -> String {
    voice(Units::Customary).say(text)
}

/// Fractions as fractions: `9 ft 4-1/2 in` with a real slash and no dash before it.
pub(crate) fn set_fractions(text: &str) -> String {
    let mut out = String::with_capacity(text.len() + 8);
    let signs: Vec<char> = text.chars().collect();
    let digit =
        |at: Option<usize>| at.and_then(|at| signs.get(at)).is_some_and(char::is_ascii_digit);
    for (at, sign) in signs.iter().enumerate() {
        let between = digit(at.checked_sub(1)) && digit(Some(at + 1));
        let rest = signs.get(at + 1..).unwrap_or_default();
        let fraction = || rest.iter().find(|sign| !sign.is_ascii_digit()) == Some(&'/');
        match sign {
            '/' if between => out.push('⁄'),
            '-' if between && fraction() => out.push('\u{a0}'),
            _ => out.push(*sign),
        }
    }
    out
}

#[cfg(test)]
mod tests {
    use super::set_fractions;

    #[test]
    fn only_fractions_are_set() {
        for (text, want) in [
            ("9 ft 4-1/2 in", "9 ft 4\u{a0}1⁄2 in"),
            ("15/16 in", "15⁄16 in"),
            ("14-2 cable, 2017-2023", "14-2 cable, 2017-2023"),
            ("in/out", "in/out"),
            ("", ""),
        ] {
            assert_eq!(set_fractions(text), want);
        }
    }
}
