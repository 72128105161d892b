//! The real server process of the site, one for each journey, on a port of its own.
//!
//! It can be killed, as a lost signal looks to the phone, and started again at the same address.

use std::fs;
use std::io;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};

use tempfile::TempDir;

use super::process::Family;
use super::{Site, from_xtask};

/// How the server is to misbehave, beside the site's folder.
const RULES: &str = "rules.txt";

/// A line of the server's log.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Request {
    pub(crate) method: String,
    pub(crate) path: String,
    pub(crate) status: u16,
}

/// A running server, or one that was killed and keeps its address.
pub(crate) struct Server {
    process: Option<Family>,
    folder: TempDir,
    base: String,
    address: String,
    port: u16,
    starts: usize,
}

impl Server {
    /// Serves the built site under `base` ("/" or "/sub/"), from a copy that the journey may
    /// spoil (see [`Server::site`]).
    pub(crate) fn start(base: &str) -> Server {
        let folder = tempfile::tempdir().expect("a temporary folder");
        let built = from_xtask("LEDGERBOARD_DIST");
        copy(Path::new(&built), &folder.path().join("site"))
            .unwrap_or_else(|error| panic!("{built} can't be copied: {error}"));
        fs::write(folder.path().join(RULES), "").expect("the folder can be written");
        let mut server = Server {
            process: None,
            folder,
            base: base.to_owned(),
            address: String::new(),
            port: 0,
            starts: 0,
        };
        server.restart();
        server
    }

    /// The folder that this server alone serves. Most files have a packed twin beside them, `.br`,
    /// which the server prefers: whoever spoils a file removes its twin.
    pub(crate) fn site(&self) -> PathBuf {
        self.folder.path().join("site")
    }

    /// Puts another version in the place of the one that is served: the same program with a stamp,
    /// so that the page, the program and the worker are new ones.
    pub(crate) fn publish(&self, stamp: &str) {
        self.replace(&["--stamp", stamp]);
    }

    /// Publishes a site whose worker switches itself off.
    pub(crate) fn retire(&self) {
        self.replace(&["--retire"]);
    }

    fn replace(&self, options: &[&str]) {
        let fresh = self.folder.path().join("fresh");
        let mut build = Command::new(from_xtask("LEDGERBOARD_XTASK"));
        build.args(["build", "--unpacked", "--from"]).arg(from_xtask("LEDGERBOARD_DIST"));
        build.arg("--dist").arg(&fresh).args(options);
        let status = build.status().unwrap_or_else(|error| panic!("no build: {error}"));
        assert!(status.success(), "the build of {options:?} ended with {status}");
        let old = self.folder.path().join("old");
        let _ = fs::remove_dir_all(&old);
        fs::rename(self.site(), old).expect("the old site can be moved");
        fs::rename(fresh, self.site()).expect("the new site can be moved");
    }

    /// Makes a bad host of the server from now on, by the rules of `xtask/src/serve/tamper.rs`, a
    /// line each: `app.wasm cut`. No rules make it a careful one again.
    pub(crate) fn misbehave(&self, rules: &str) {
        fs::write(self.folder.path().join(RULES), rules).expect("the rules can be written");
    }

    /// Ends the server at once: from now on nothing answers at the address.
    pub(crate) fn kill(&mut self) {
        self.process = None;
    }

    /// Starts the server, again at the same address when it had one.
    pub(crate) fn restart(&mut self) {
        self.kill();
        self.starts += 1;
        let mut command = Command::new(from_xtask("LEDGERBOARD_XTASK"));
        command.args(["serve", "--no-build", "--dist"]).arg(self.site());
        command.args(["--port", &self.port.to_string(), "--base", &self.base]);
        command.arg("--log").arg(self.log(self.starts));
        command.arg("--tamper").arg(self.folder.path().join(RULES));
        let mut process = Family::start(command.stdout(Stdio::piped()));
        let origin = process.first(|line| {
            let start = line.find("http://")?;
            let address = line[start..].split_whitespace().next()?;
            Some(address.splitn(4, '/').take(3).collect::<Vec<_>>().join("/"))
        });
        let port = origin.rsplit(':').next().and_then(|port| port.parse().ok());
        self.port = port.unwrap_or_else(|| panic!("the server's address has no port: {origin}"));
        self.address = format!("{origin}{}", self.base);
        self.process = Some(process);
    }

    /// All requests since the first start, oldest first.
    pub(crate) fn requests(&self) -> Vec<Request> {
        (1..=self.starts)
            .map(|start| fs::read_to_string(self.log(start)).unwrap_or_default())
            .flat_map(|log| log.lines().map(read).collect::<Vec<_>>())
            .collect()
    }

    /// How often the file at `place` (below the base) was answered with `status`.
    pub(crate) fn count(&self, place: &str, status: u16) -> usize {
        let path = format!("{}{place}", self.base);
        let asked = |request: &Request| request.path == path && request.status == status;
        self.requests().into_iter().filter(asked).count()
    }

    // A file for each start, whatever the server does with a log that is already there.
    fn log(&self, start: usize) -> PathBuf {
        self.folder.path().join(format!("requests-{start}.log"))
    }
}

impl Site for Server {
    fn address(&self) -> &str {
        &self.address
    }
}

fn read(line: &str) -> Request {
    let parts: Vec<&str> = line.split_whitespace().collect();
    let [method, path, status] = parts[..] else {
        panic!("not a line of the server's log: {line}");
    };
    let status = status.parse().unwrap_or_else(|_| panic!("no status in: {line}"));
    Request { method: method.to_owned(), path: path.to_owned(), status }
}

fn copy(from: &Path, to: &Path) -> io::Result<()> {
    fs::create_dir_all(to)?;
    for entry in fs::read_dir(from)? {
        let entry = entry?;
        let target = to.join(entry.file_name());
        if entry.path().is_dir() {
            copy(&entry.path(), &target)?;
        } else {
            fs::copy(entry.path(), target)?;
        }
    }
    Ok(())
}
