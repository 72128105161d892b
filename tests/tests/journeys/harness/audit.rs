//! What is asked of every page as a whole: quiet, usable by all, whole, and installable.

use std::fs;

use serde_json::json;

use super::page::Page;
use super::{Told, Trouble, from_xtask};

impl Page {
    /// What the browser complained of since its first start and was not forgiven: anything on the
    /// console, uncaught errors, rejected promises, refusals by the security policy, failed loads.
    #[track_caller]
    pub(crate) fn console(&self) -> impl Future<Output = Vec<String>> {
        self.step("console".to_owned(), self.complaints())
    }

    /// Fails when the browser complained of anything. Each journey ends with this by itself.
    #[track_caller]
    pub(crate) fn assert_quiet(&self) -> impl Future<Output = ()> {
        self.step("quiet".to_owned(), async {
            let complaints = self.complaints().await?;
            fail_on("the browser complains:", complaints)
        })
    }

    /// Waits for complaints that hold `part`, as those about a server that the journey killed, and
    /// drops them. Fails when none comes: what is forgiven must have happened.
    #[track_caller]
    pub(crate) fn forgive(&self, part: &str) -> impl Future<Output = ()> {
        self.step(format!("forgive `{part}`"), async move {
            self.patiently(async || {
                self.complaints().await?;
                match self.session.console.forgive(part) {
                    0 => Err(Trouble::from("there is no such complaint".to_owned())),
                    _ => Ok(()),
                }
            })
            .await
        })
    }

    /// Runs axe-core, rules of WCAG 2.0 to 2.2, A and AA, and its best practice; fails with a list
    /// of what it holds against the page. Hands back what it could not decide by itself.
    #[track_caller]
    pub(crate) fn axe(&self) -> impl Future<Output = Vec<String>> {
        self.step("axe".to_owned(), async {
            if self.run("typeof window.axe").await? == "undefined" {
                let path = from_xtask("LEDGERBOARD_AXE");
                let source = fs::read_to_string(&path)
                    .map_err(|error| format!("{path} can't be read: {error}"))?;
                // Evaluated, not added as a script element, which the site's policy refuses.
                self.run(&format!("{source}\n;undefined")).await?;
            }
            let (broken, undecided): (Vec<String>, Vec<String>) =
                self.ask(include_str!("in_page/run_axe.js"), &json!([])).await?;
            fail_on("not usable by all:", broken)?;
            Ok(undecided)
        })
    }

    /// The controls that are smaller than `least` CSS pixels in either direction, a line each.
    /// A link in running text is excused by the attribute `data-inline`.
    #[track_caller]
    pub(crate) fn smallest_targets(&self, least: u32) -> impl Future<Output = Vec<String>> {
        self.step(format!("targets under {least} px"), async move {
            self.ask(include_str!("in_page/small_targets.js"), &json!([least])).await
        })
    }

    /// What sticks out of the device's width, a line each; empty when the page neither scrolls
    /// sideways nor is cut off. Rows that scroll by themselves are excused.
    #[track_caller]
    pub(crate) fn overflow(&self) -> impl Future<Output = Vec<String>> {
        self.step("overflow".to_owned(), async {
            let (width, _) = self.session.device.size();
            self.ask(include_str!("in_page/overflow.js"), &json!([width])).await
        })
    }

    /// Why the browser would not offer to install the site; empty when it would.
    #[track_caller]
    pub(crate) fn installability(&self) -> impl Future<Output = Vec<String>> {
        self.step("installability".to_owned(), async {
            let reply = self.cdp().await?.send_raw("Page.getInstallabilityErrors", ()).await?;
            let errors = reply["installabilityErrors"].as_array().cloned();
            let errors = errors.ok_or_else(|| Trouble::from(format!("no list in {reply}")))?;
            let name = |error: serde_json::Value| match error["errorId"].as_str() {
                Some(id) => id.to_owned(),
                None => error.to_string(),
            };
            Ok(errors.into_iter().map(name).collect())
        })
    }

    async fn complaints(&self) -> Told<Vec<String>> {
        // A question to the page first: what it did before the question is then in the log.
        self.run("undefined").await?;
        self.session.console.listen(&self.session.driver).await?;
        Ok(self.session.console.entries())
    }
}

fn fail_on(heading: &str, lines: Vec<String>) -> Told<()> {
    if lines.is_empty() {
        return Ok(());
    }
    Err(Trouble::from(format!("{heading}\n  {}", lines.join("\n  "))))
}
