//! Files on their way in and out. The system's own pickers stand outside the page, where no test's
//! finger reaches, so that a field is given its file as the picker does it.

use std::fs;
use std::path::{Path, PathBuf};

use serde_json::json;

use super::page::{FIND, Page};
use super::spot::Spot;
use super::{Told, Trouble};

impl Page {
    /// Picks a file of this machine in a file field.
    #[track_caller]
    pub(crate) fn choose_file(
        &self,
        spot: impl Into<Spot>,
        file: &Path,
    ) -> impl Future<Output = ()> {
        let spot = spot.into();
        self.step(format!("choose {} in {spot}", file.display()), async move {
            self.patiently(async || {
                let field = format!("(() => {{ {FIND}\n return one({}); }})()", json!(spot));
                let cdp = self.cdp().await?;
                let found =
                    cdp.send_raw("Runtime.evaluate", json!({ "expression": field })).await?;
                let Some(object) = found["result"]["objectId"].as_str() else {
                    return Err(Trouble::from(format!("no field in {found}")));
                };
                let wanted = json!({ "files": [file], "objectId": object });
                cdp.send_raw("DOM.setFileInputFiles", wanted).await?;
                Ok(())
            })
            .await
        })
    }

    /// Has downloads put into this folder from now on, without asking.
    #[track_caller]
    pub(crate) fn keep_downloads(&self, folder: &Path) -> impl Future<Output = ()> {
        self.step(format!("downloads go to {}", folder.display()), async move {
            let wanted = json!({ "behavior": "allow", "downloadPath": folder });
            self.cdp().await?.send_raw("Browser.setDownloadBehavior", wanted).await?;
            Ok(())
        })
    }

    /// Waits for the one whole file in the folder of downloads.
    #[track_caller]
    pub(crate) fn downloaded(&self, folder: &Path) -> impl Future<Output = PathBuf> {
        self.step(format!("downloaded to {}", folder.display()), async move {
            self.patiently(async || only_file(folder)).await
        })
    }
}

fn only_file(folder: &Path) -> Told<PathBuf> {
    let trouble = |error: std::io::Error| Trouble::from(error.to_string());
    let entries = fs::read_dir(folder).map_err(trouble)?;
    let all: Vec<PathBuf> =
        entries.map(|entry| Ok(entry.map_err(trouble)?.path())).collect::<Told<_>>()?;
    match &all[..] {
        [file] if file.extension().is_none_or(|end| end != "crdownload") => Ok(file.clone()),
        _ => Err(Trouble::from(format!("there is {all:?}"))),
    }
}
