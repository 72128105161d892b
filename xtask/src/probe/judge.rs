//! What a host may not do to a site, and what it had better do.

use std::fs;
use std::path::Path;

use anyhow::{Context, Result};

use super::{Answer, MISSING, Source};
use crate::headers::{self, Headers};
use crate::precache::{self, PAGE, WORKER};
use crate::serve::media_type;
use crate::{asset, workspace};

/// What was found.
#[derive(Debug, Default)]
pub(super) struct Found {
    /// What keeps the site from working, or its updates from arriving.
    pub(super) faults: Vec<String>,
    /// What would be better.
    pub(super) notes: Vec<String>,
    /// Files that came as they are.
    pub(super) whole: usize,
}

/// Looks at every file of a site. With the folder that was published, the worker itself is
/// compared too; without, all there is to compare with is the worker's own list.
///
/// # Errors
/// If the host can't be reached, or our own files can't be read.
pub(super) fn look(source: &Source, dist: Option<&Path>) -> Result<Found> {
    let text = fs::read_to_string(workspace::root().join("public").join(headers::FILE))?;
    let mut found = Found::default();
    let looked = Look { source, headers: Headers::read(&text)? };
    looked.at_address(&mut found);
    let worker = source.get(WORKER, "identity")?;
    if !looked.at_head(WORKER, &worker, &mut found) {
        return Ok(found);
    }
    match dist {
        Some(dist) => {
            let ours = fs::read(dist.join(WORKER))
                .with_context(|| format!("{} is not a built site", dist.display()))?;
            if ours != worker.body {
                let what = "is another worker than that of the folder: changed on the way, or not \
                            the version that was published";
                found.fault(WORKER, what);
            }
        }
        None => found.note(WORKER, "can't be compared by itself; name what was published: --dist"),
    }
    let list = std::str::from_utf8(&worker.body).ok().and_then(|text| precache::read(text).ok());
    let Some(list) = list else {
        found.fault(WORKER, "has no list of files: it was changed, or it switches itself off");
        return Ok(found);
    };
    for (address, integrity) in &list {
        looked.at_file(address, integrity, &mut found)?;
    }
    looked.at_nothing(&mut found)?;
    Ok(found)
}

struct Look<'a> {
    source: &'a Source,
    headers: Headers,
}

impl Look<'_> {
    fn at_address(&self, found: &mut Found) {
        let Source::Host(site) = self.source else { return };
        let host = site.host().unwrap_or_default();
        if !matches!(host, "localhost" | "127.0.0.1" | "[::1]") {
            let what = "browsers keep nothing for work without signal from a plain http address";
            found.fault(host, what);
        }
    }

    /// What comes before the bytes. Whether the bytes are worth looking at.
    fn at_head(&self, name: &str, answer: &Answer, found: &mut Found) -> bool {
        if answer.status != 200 {
            let to = answer.header("Location").map_or(String::new(), |to| format!(" to {to}"));
            let what = format!("is answered with {}{to}, not with 200", answer.status);
            found.fault(name, &what);
            return false;
        }
        let (want, given) = (media_type(name), answer.header("Content-Type").unwrap_or("nothing"));
        let bare = |text: &str| text.split(';').next().unwrap_or_default().trim().to_lowercase();
        if bare(given) != bare(want) {
            found.fault(name, &format!("is sent as {given}, and must be {want}"));
        }
        if answer.header("Clear-Site-Data").is_some() {
            found.fault(name, "comes with Clear-Site-Data, which deletes what people saved");
        }
        let cached = answer.header("Cache-Control").unwrap_or_default().to_lowercase();
        let asks = ["no-cache", "no-store", "max-age=0"].iter().any(|it| cached.contains(it));
        if matches!(name, WORKER | PAGE) && !asks {
            found.fault(name, "comes without Cache-Control: no-cache, so that updates come late");
        }
        if asset::is_hashed(name) && !cached.contains("immutable") {
            found.note(name, "could be kept for good: Cache-Control: …, immutable");
        }
        if name == WORKER {
            self.at_scope(answer, found);
        }
        for (header, want) in self.headers.for_every_answer() {
            match answer.header(header) {
                Some(given) if given == want => {}
                None => found.note(name, &format!("comes without {header}")),
                Some(given) if header == "Content-Security-Policy" => {
                    found.fault(name, &format!("comes with another {header}: {given}"));
                }
                Some(given) => found.note(name, &format!("comes with another {header}: {given}")),
            }
        }
        true
    }

    /// A worker answers for the folder that it is in, unless its host narrows that.
    fn at_scope(&self, worker: &Answer, found: &mut Found) {
        let Some(allowed) = worker.header("Service-Worker-Allowed") else { return };
        let folder = match self.source {
            Source::Host(site) => site.path(),
            // Where it was published can't be told from a folder.
            Source::Folder(_) => "",
        };
        if !matches!(allowed, "/" | "./" | ".") && !(folder.starts_with(allowed)) {
            let what = format!("may answer only for {allowed}, by Service-Worker-Allowed");
            found.fault(WORKER, &what);
        }
    }

    fn at_file(&self, address: &str, integrity: &str, found: &mut Found) -> Result<()> {
        let name = precache::file_name(address);
        let answer = match self.source.get(address, "identity") {
            Ok(answer) => answer,
            Err(error) => {
                found.fault(name, &format!("can't be fetched: {error:#}"));
                return Ok(());
            }
        };
        if !self.at_head(name, &answer, found) {
            return Ok(());
        }
        if let Some(coding) = answer.header("Content-Encoding") {
            found.fault(name, &format!("is sent packed ({coding}) to who can't unpack it"));
            return Ok(());
        }
        if asset::integrity(&answer.body) != integrity {
            let what = "is changed on the way: its bytes are not those that were published";
            found.fault(name, what);
            return Ok(());
        }
        if let Source::Host(_) = self.source {
            let packed = self.source.get(address, "br")?;
            if packed.header("Content-Encoding") == Some("br") && !unpacks(&packed.body, integrity)
            {
                found.fault(name, "is changed on the way where it is sent packed");
                return Ok(());
            }
        }
        found.whole += 1;
        Ok(())
    }

    /// What isn't there must be said to be missing.
    fn at_nothing(&self, found: &mut Found) -> Result<()> {
        let status = self.source.get(MISSING, "identity")?.status;
        if status != 404 {
            let what = format!("is no file, and is answered with {status} instead of 404");
            found.fault(MISSING, &what);
        }
        Ok(())
    }
}

fn unpacks(packed: &[u8], integrity: &str) -> bool {
    let mut content = Vec::new();
    let mut packed = packed;
    brotli::BrotliDecompress(&mut packed, &mut content).is_ok()
        && asset::integrity(&content) == integrity
}

impl Found {
    fn fault(&mut self, name: &str, what: &str) {
        self.faults.push(format!("{name} {what}"));
    }

    fn note(&mut self, name: &str, what: &str) {
        self.notes.push(format!("{name} {what}"));
    }
}
