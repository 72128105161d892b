//! A native choice. The system draws its list outside the page, where no test's finger reaches, so
//! the choice is set and told to the page as the system does it.

use serde_json::json;

use super::page::Page;
use super::spot::Spot;

impl Page {
    /// Picks the option that shows exactly these words.
    #[track_caller]
    pub(crate) fn choose(&self, spot: impl Into<Spot>, words: &str) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("choose `{words}` in {spot}"), async move {
            let function = "(spot, words) => { const select = one(spot); \
                if (!select.matches('select:enabled')) throw new Error('it is no choice'); \
                const option = [...select.options].find((it) => tidy(it.text) === words); \
                if (!option) throw new Error(`it offers ${[...select.options].map((it) => tidy(it.text)).join(', ')}`); \
                select.focus(); select.value = option.value; \
                select.dispatchEvent(new Event('input', { bubbles: true })); \
                select.dispatchEvent(new Event('change', { bubbles: true })); }";
            self.ask_patiently(function, json!([spot, words])).await
        })
    }
}
