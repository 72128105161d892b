//! Faults that a phone or a browser has: stores that refuse, a clock that is wrong.

use serde_json::json;

use super::Trouble;
use super::page::Page;

impl Page {
    /// Runs a script in this tab before anything else, in every page that it loads from now on.
    /// Gives the name by which [`Page::no_longer`] takes it away.
    #[track_caller]
    pub(crate) fn before_all(&self, script: &str) -> impl Future<Output = String> {
        let wanted = json!({ "source": script });
        self.step("run a script before all else".to_owned(), async move {
            let cdp = self.cdp().await?;
            // Without this the protocol notes the script and never runs it.
            cdp.send_raw("Page.enable", ()).await?;
            let reply = cdp.send_raw("Page.addScriptToEvaluateOnNewDocument", wanted).await?;
            let name = reply["identifier"].as_str().map(str::to_owned);
            name.ok_or_else(|| Trouble::from(format!("no name in {reply}")))
        })
    }

    /// Takes a script of [`Page::before_all`] away.
    #[track_caller]
    pub(crate) fn no_longer(&self, script: String) -> impl Future<Output = ()> {
        let wanted = json!({ "identifier": script });
        self.step("no longer run a script".to_owned(), async move {
            let cdp = self.cdp().await?;
            cdp.send_raw("Page.removeScriptToEvaluateOnNewDocument", wanted).await?;
            Ok(())
        })
    }
}
