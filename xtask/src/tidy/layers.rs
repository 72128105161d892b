//! Checks that imports in core run one way, and that calculators stay apart.

use std::collections::BTreeMap;

use super::source::{Sources, is_punct, is_word};

/// The modules of core. Each may use itself and those before it.
const LAYERS: [&str; 12] = [
    "measure",
    "plan",
    "layout",
    "words",
    "wire",
    "edition",
    "sheet",
    "fields",
    "rules",
    "calculators",
    "catalog",
    "job",
];

/// Which calculator may call which other's public `solve`. Never in a circle.
const CALLS: &[(&str, &str)] = &[
    ("behind_the_board", "boards"),
    ("boards", "hold"),
    ("boards", "room"),
    ("cable_run", "cable_securing"),
    ("outlets", "room"),
    ("raised_register", "register_throw"),
    ("register_spots", "register_throw"),
    ("register_spots", "room"),
    ("rerouted_cable", "cable_securing"),
    ("rough_in", "cable_securing"),
    ("skim_coat", "joint_compound"),
    ("strip", "hold"),
    ("switch_boxes", "box_fill"),
    ("floor_cover", "hold"),
    ("floor_cover", "strip"),
    ("three_ways", "hold"),
    ("three_ways", "strip"),
    ("three_ways", "skim_coat"),
    ("three_ways", "drying"),
    ("three_ways", "joint_compound"),
    ("three_ways", "board_weight"),
    ("three_ways", "boards"),
];

pub(super) fn check(core: &Sources) -> Vec<String> {
    check_with(core, CALLS)
}

fn check_with(core: &Sources, calls: &[(&str, &str)]) -> Vec<String> {
    let macros = exported_macros(core);
    let calculators: Vec<&str> = core
        .0
        .iter()
        .filter(|source| source.module.first().is_some_and(|first| first == "calculators"))
        .filter_map(|source| source.module.get(1).map(String::as_str))
        .collect();

    let mut found = circles(calls);
    for (caller, callee) in calls {
        if let Some(gone) = [caller, callee].into_iter().find(|name| !calculators.contains(name)) {
            found.push(format!("layers.rs lists a call of {gone}, which is no calculator"));
        }
    }
    for source in &core.0 {
        // The root of the crate only names its modules.
        let Some(own) = source.module.first() else { continue };
        let Some(own_layer) = layer(own) else {
            found.push(format!("{}: give {own} a place in LAYERS of layers.rs", source.file));
            continue;
        };
        for import in source.imports() {
            let place = format!("{}:{}", source.file, import.line);
            // A macro that is exported stands at the root, but comes from its own module.
            let path = import.path.iter().map(String::as_str).collect::<Vec<_>>();
            let path = match path.as_slice() {
                [name, ..] if layer(name).is_none() && macros.contains_key(*name) => {
                    vec![macros[*name].as_str()]
                }
                _ => path,
            };
            match path.as_slice() {
                [] | ["*", ..] => found.push(format!("{place}: say which module you mean")),
                ["calculators", "*", ..] if source.module.len() > 1 => {
                    found.push(format!("{place}: say which of the calculators you mean"));
                }
                [first, ..] if layer(first).is_none() => {
                    found.push(format!("{place}: {first} is not among LAYERS of layers.rs"));
                }
                [first, ..] if layer(first) > Some(own_layer) => found.push(format!(
                    "{place}: {own} may not use {first}, which comes after it; move what both \
                     need down"
                )),
                ["calculators", other, ..] => {
                    let Some(this) = source.module.get(1).filter(|_| own == "calculators") else {
                        continue;
                    };
                    let apart = this != other && calculators.contains(other);
                    if apart && !calls.contains(&(this, other)) {
                        found.push(format!(
                            "{place}: {this} may not use {other}; if it calls its `solve`, list \
                             the pair in CALLS of layers.rs"
                        ));
                    }
                }
                _ => {}
            }
        }
    }
    found
}

fn layer(module: &str) -> Option<usize> {
    LAYERS.iter().position(|layer| *layer == module)
}

/// Macros of `#[macro_export]`, and the module each one is from.
fn exported_macros(core: &Sources) -> BTreeMap<String, String> {
    let mut macros = BTreeMap::new();
    for source in &core.0 {
        let tokens = source.flat();
        for (at, _) in tokens.iter().enumerate().filter(|(_, t)| is_word(t, "macro_export")) {
            let mut rest = tokens[at..].iter().skip_while(|token| !is_word(token, "macro_rules"));
            let name = rest.nth(1).filter(|mark| is_punct(mark, '!')).and_then(|_| rest.next());
            if let (Some(name), Some(module)) = (name, source.module.first()) {
                macros.insert(name.to_string(), module.clone());
            }
        }
    }
    macros
}

/// Takes away calls of calculators that call nobody, until none is left or only circles are.
fn circles(calls: &[(&str, &str)]) -> Vec<String> {
    let mut left = calls.to_vec();
    loop {
        let before = left.len();
        let callers: Vec<&str> = left.iter().map(|(caller, _)| *caller).collect();
        left.retain(|(_, callee)| callers.contains(callee));
        match left.len() {
            0 => return Vec::new(),
            n if n == before => return vec![format!("calculators call in a circle: {left:?}")],
            _ => {}
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::source::Source;
    use super::Sources;
    use super::{check_with, circles};

    /// With no calculator, and so no calls.
    fn check(core: &Sources) -> Vec<String> {
        check_with(core, &[])
    }

    fn core(files: &[(&str, &str)]) -> Sources {
        let parse = |(name, text): &(&str, &str)| Source::parse(name, name, text).unwrap();
        Sources(files.iter().map(parse).collect())
    }

    #[test]
    fn an_import_against_the_order_is_named() {
        let upward = core(&[("rules/air.rs", "use crate::sheet::Sheet;\nuse crate::job::Job;")]);
        let found = check(&upward);
        assert_eq!(found.len(), 1, "{found:?}");
        assert!(found[0].starts_with("rules/air.rs:2: rules may not use job"), "{found:?}");
        let by_super = core(&[("measure/length.rs", "use super::super::wire::Node;")]);
        assert_eq!(check(&by_super).len(), 1);
    }

    #[test]
    fn a_module_without_a_place_is_named() {
        assert!(check(&core(&[("stray.rs", "")]))[0].contains("stray"));
        assert!(check(&core(&[("job.rs", "use crate::stray::X;")]))[0].contains("stray"));
        assert_eq!(check(&core(&[("measure/mod.rs", "use super::*;")])).len(), 1);
    }

    #[test]
    fn calculators_stay_apart_but_for_the_listed_calls() {
        let files = core(&[
            ("calculators/mod.rs", "pub mod duct; pub mod throw; pub trait Calculator {}"),
            ("calculators/duct/mod.rs", "use crate::calculators::Calculator; use super::throw;"),
            ("calculators/throw/mod.rs", "use super::Calculator; use crate::measure::Length;"),
        ]);
        assert!(check_with(&files, &[])[0].contains("duct may not use throw"));
        assert!(check_with(&files, &[("duct", "throw")]).is_empty());
        assert!(check_with(&files, &[("duct", "throw"), ("throw", "gone")])[0].contains("gone"));
    }

    #[test]
    fn calls_in_a_circle_are_named() {
        assert!(circles(&[("a", "b"), ("b", "c")]).is_empty());
        assert_eq!(circles(&[("x", "a"), ("a", "b"), ("b", "a")]).len(), 1);
    }

    #[test]
    fn an_exported_macro_belongs_to_its_module() {
        let text = "#[doc(hidden)] #[macro_export] macro_rules! say { () => {} }";
        let upward = core(&[("sheet.rs", text), ("measure.rs", "use crate::say;")]);
        assert!(check(&upward)[0].contains("measure may not use sheet"));
        assert!(check(&core(&[("sheet.rs", text), ("job.rs", "use crate::say;")])).is_empty());
    }
}
