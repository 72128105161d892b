//! A file that the page hands to the browser.

use std::fs;

use serde_json::json;

use super::Trouble;
use super::page::Page;
use super::spot::Spot;

impl Page {
    /// Taps the spot, waits for the one file that the browser saves, and gives its name and text.
    #[track_caller]
    pub(crate) fn saves(&self, spot: impl Into<Spot>) -> impl Future<Output = (String, String)> {
        let spot = spot.into();
        let tap = self.tap(spot.clone());
        self.step(format!("saves a file by {spot}"), async move {
            let trouble = |error: std::io::Error| Trouble::from(error.to_string());
            let folder = tempfile::tempdir().map_err(trouble)?;
            let wanted = json!({ "behavior": "allow", "downloadPath": folder.path() });
            self.cdp().await?.send_raw("Browser.setDownloadBehavior", wanted).await?;
            tap.await;
            self.patiently(async || {
                let entries = fs::read_dir(folder.path()).map_err(trouble)?;
                let files: Vec<_> = entries.flatten().map(|entry| entry.path()).collect();
                let [file] = &files[..] else {
                    return Err(Trouble::from(format!("there is {files:?}")));
                };
                if file.extension().is_some_and(|end| end == "crdownload") {
                    return Err(Trouble::from("it is not whole yet".to_owned()));
                }
                let name = file.file_name().unwrap_or_default().to_string_lossy().into_owned();
                Ok((name, fs::read_to_string(file).map_err(trouble)?))
            })
            .await
        })
    }
}
