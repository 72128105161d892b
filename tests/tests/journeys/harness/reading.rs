//! What a person can read on the page.

use serde_json::json;

use super::page::Page;
use super::spot::Spot;

const TEXT: &str = "(spot) => shows(one(spot))";
const ATTRIBUTE: &str = "(spot, name) => one(spot).getAttribute(name)";

impl Page {
    /// Waits until the spot is shown.
    #[track_caller]
    pub(crate) fn sees(&self, spot: impl Into<Spot>) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("sees {spot}"), async move {
            self.ask_patiently("(spot) => { some(spot); }", json!([spot])).await
        })
    }

    /// Waits until the spot is no longer shown.
    #[track_caller]
    pub(crate) fn misses(&self, spot: impl Into<Spot>) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("misses {spot}"), async move {
            let function = "(spot) => { const still = find(spot)[0]; \
                if (still) throw new Error(`still shown: ${describe(still)}`); }";
            self.ask_patiently(function, json!([spot])).await
        })
    }

    /// Waits until the spot shows exactly these words, spaces drawn together.
    #[track_caller]
    pub(crate) fn reads(&self, spot: impl Into<Spot>, words: &str) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("{spot} reads `{words}`"), async move {
            let function = "(spot, words) => { const shown = shows(one(spot)); \
                if (shown !== words) throw new Error(`it reads \\`${shown}\\``); }";
            self.ask_patiently(function, json!([spot, words])).await
        })
    }

    /// What the one spot shows, spaces drawn together; for an input, its value.
    #[track_caller]
    pub(crate) fn text(&self, spot: impl Into<Spot>) -> impl Future<Output = String> {
        let spot = spot.into();
        self.step(format!("text of {spot}"), async move {
            self.ask_patiently(TEXT, json!([spot])).await
        })
    }

    /// What each shown match shows, in the order of the page. Waits for at least one.
    #[track_caller]
    pub(crate) fn all_texts(&self, spot: impl Into<Spot>) -> impl Future<Output = Vec<String>> {
        let spot = spot.into();
        self.step(format!("texts of {spot}"), async move {
            self.ask_patiently("(spot) => some(spot).map(shows)", json!([spot])).await
        })
    }

    /// An attribute of the one spot, when it has it.
    #[track_caller]
    pub(crate) fn attribute(
        &self,
        spot: impl Into<Spot>,
        name: &str,
    ) -> impl Future<Output = Option<String>> {
        let spot = spot.into();
        self.step(format!("{name} of {spot}"), async move {
            self.ask_patiently(ATTRIBUTE, json!([spot, name])).await
        })
    }

    /// Waits until the keyboard's focus is on the spot.
    #[track_caller]
    pub(crate) fn has_focus(&self, spot: impl Into<Spot>) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("focus on {spot}"), async move {
            let function = "(spot) => { if (document.activeElement !== one(spot)) \
                throw new Error(`the focus is on ${describe(document.activeElement)}`); }";
            self.ask_patiently(function, json!([spot])).await
        })
    }
}
