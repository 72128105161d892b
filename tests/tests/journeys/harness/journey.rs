//! How a journey is run: its site, its browser, and what is left behind when it fails.

use std::fs;
use std::panic::{AssertUnwindSafe, resume_unwind};
use std::path::PathBuf;
use std::time::Duration;

use futures_util::FutureExt;
use tokio::sync::Semaphore;
use tokio::time::timeout;

use super::Site;
use super::browser::Browser;
use super::device::Device;
use super::page::Page;

/// Browsers that run at once: two cores, and a starved browser fails on time and not on fault.
static TURNS: Semaphore = Semaphore::const_new(2);

/// No journey may take longer.
const LIMIT: Duration = Duration::from_secs(180);

/// What the steps of a journey are given.
pub(crate) struct Journey<S> {
    /// The server, or the bench of bad pages.
    pub(crate) site: S,
    /// The browser, to be closed, killed, and opened again.
    pub(crate) browser: Browser,
    /// The first tab; set it to the new one after opening the browser again.
    pub(crate) page: Page,
}

/// Runs one journey with a browser of its own on an empty profile.
///
/// It fails when its steps do, or when the browser complained of anything that was not forgiven.
/// A picture and the text of the page are then saved, and their place printed.
pub(crate) async fn journey<S: Site, F>(site: S, device: Device, steps: F)
where
    F: AsyncFnOnce(&mut Journey<S>),
{
    let name = name_of::<F>();
    let _turn = TURNS.acquire().await.expect("the turns are never closed");
    let mut browser = Browser::new(device, site.address());
    let page = browser.open().await;
    let mut journey = Journey { site, browser, page };

    let walk = async {
        steps(&mut journey).await;
        journey.page.assert_quiet().await;
    };
    let outcome = timeout(LIMIT, AssertUnwindSafe(walk).catch_unwind()).await;
    if let Ok(Ok(())) = outcome {
        journey.browser.close().await;
        return;
    }
    let saved = journey.page.save_evidence(&name).await;
    eprintln!("{name} failed; see {}", saved.display());
    match outcome {
        Ok(Err(panic)) => resume_unwind(panic),
        _ => panic!("{name} took longer than {LIMIT:?}"),
    }
}

/// The folder that pictures and evidence go to: `LEDGERBOARD_SHOTS`, or `target/shots`.
pub(crate) fn evidence_folder() -> PathBuf {
    let usual = || PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../target/shots"));
    let folder = std::env::var_os("LEDGERBOARD_SHOTS").map_or_else(usual, PathBuf::from);
    fs::create_dir_all(&folder)
        .unwrap_or_else(|error| panic!("{} can't be made: {error}", folder.display()));
    folder
}

impl Page {
    // As much as the browser still gives: it may be the very thing that failed.
    async fn save_evidence(&self, name: &str) -> PathBuf {
        let spare = Duration::from_secs(10);
        let picture = AssertUnwindSafe(self.screenshot(name)).catch_unwind();
        let _ = timeout(spare, picture).await;
        let read = self.run("`${location.href}\\n\\n${document.body.innerText}`");
        let shown = match timeout(spare, read).await {
            Ok(Ok(text)) => text.as_str().unwrap_or_default().to_owned(),
            Ok(Err(trouble)) => trouble.to_string(),
            Err(_) => "the page does not answer".to_owned(),
        };
        let console = self.session.console.entries().join("\n");
        let trail = self.trail();
        let path = evidence_folder().join(format!("{name}.txt"));
        let text = format!("{shown}\n\nconsole:\n{console}\n\nsteps:\n{trail}\n");
        fs::write(&path, text)
            .unwrap_or_else(|error| panic!("{} can't be written: {error}", path.display()));
        path
    }
}

// The test that runs, `first_visit.opens_answered`: its thread has its name, unless all tests run
// on the main thread; then the function that the steps stand in.
fn name_of<F>() -> String {
    let thread = std::thread::current();
    let written = std::any::type_name::<F>().split_once("::").map_or("", |(_, path)| path);
    let whole = thread.name().filter(|name| *name != "main").unwrap_or(written);
    let parts = whole.split("::").filter(|part| !part.starts_with('{'));
    parts.collect::<Vec<_>>().join(".")
}
