//! What the browser complained of: console, uncaught errors, refusals by the security policy.
//!
//! Read from the browser's own log and not by a script in the page, so that nothing in the page
//! can hide an entry, and the policy cannot refuse the reader.

use std::cell::RefCell;

use thirtyfour::WebDriver;

use super::Told;

/// All entries since the browser was first started, over kills and restarts.
#[derive(Default)]
pub(crate) struct Console(RefCell<Vec<String>>);

impl Console {
    /// Takes over what the browser has to say since the last time.
    pub(super) async fn listen(&self, driver: &WebDriver) -> Told<()> {
        let fresh = driver.browser_log().await?;
        let line = |entry: thirtyfour::BrowserLogEntry| {
            format!("{} {} {}", entry.level, entry.source.unwrap_or_default(), entry.message)
        };
        self.0.borrow_mut().extend(fresh.into_iter().map(line));
        Ok(())
    }

    /// Each entry: level, source, place and message.
    pub(super) fn entries(&self) -> Vec<String> {
        self.0.borrow().clone()
    }

    /// Drops the entries that hold `part`, and says how many there were.
    pub(super) fn forgive(&self, part: &str) -> usize {
        let mut entries = self.0.borrow_mut();
        let before = entries.len();
        entries.retain(|entry| !entry.contains(part));
        before - entries.len()
    }
}
