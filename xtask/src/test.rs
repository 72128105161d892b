//! `cargo xtask test`: everything that must hold, in the order in which it fails soonest.

use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

use anyhow::{Context, Result, bail, ensure};

use crate::build::{self, Options};
use crate::workspace::{self, WASM_TARGET, cargo, run};
use crate::{budget, tidy};

/// What the journeys drive, and the Debian package each comes in.
const TOOLS: [(&str, &str); 3] = [
    ("/usr/bin/chromium", "chromium"),
    ("/usr/bin/chromedriver", "chromium-driver"),
    ("npm", "npm"),
];
const AXE_VERSION: &str = "4.14.1";
/// The page is looked at as it is shipped: what builds for it is then built once, not twice.
const PAGE: [&str; 6] =
    ["--package", "ledgerboard-app", "--target", WASM_TARGET, "--profile", "site"];
/// This program, as it was built to run this.
const XTASK: [&str; 2] = ["--package", "xtask"];
/// All else, chosen alike by every step: with another choice of packages and features cargo builds
/// what they stand on once more.
const REST: [&str; 5] =
    ["--workspace", "--exclude", "xtask", "--features", "ledgerboard-tests/browser"];
const JOURNEYS: [&str; 2] = ["--test", "journeys"];
const DENY: [&str; 3] = ["--", "-D", "warnings"];

pub(crate) fn command(mut args: lexopt::Parser) -> Result<()> {
    if let Some(arg) = args.next()? {
        return Err(arg.unexpected().into());
    }
    let mut steps = Steps::default();
    let mut axe = PathBuf::new();
    steps.run("What the tests need", || {
        workspace::ensure_wasm_target()?;
        ensure_tools()?;
        axe = ensure_axe()?;
        Ok(())
    })?;
    steps.run("Format", || run(cargo().args(["fmt", "--all", "--check"])))?;
    steps.run("Lints, on this machine", || {
        let clippy = || {
            let mut clippy = cargo();
            clippy.arg("clippy");
            clippy
        };
        run(clippy().args(XTASK).arg("--all-targets").args(DENY))?;
        run(clippy().args(REST).arg("--all-targets").args(DENY))?;
        // Not among all targets, as it only runs when it is asked for.
        run(clippy().args(REST).args(JOURNEYS).args(DENY))
    })?;
    steps.run("Lints, page", || run(cargo().arg("clippy").args(PAGE).args(DENY)))?;
    steps.run("Documentation", || {
        let doc = || {
            let mut doc = cargo();
            doc.env("RUSTDOCFLAGS", "-D warnings").args(["doc", "--no-deps"]);
            doc
        };
        run(doc().args(XTASK))?;
        run(doc().args(REST))
    })?;
    steps.run("How the code is laid out", tidy::check)?;
    steps.run("Tests", || {
        run(cargo().arg("test").args(XTASK))?;
        run(cargo().arg("test").args(REST))
    })?;
    let site = Options::default();
    steps.run("Site", || build::build(&site))?;
    steps.run("Budget", || budget::check(&site.dist()))?;
    steps.run("Journeys, in a browser", || {
        run(cargo()
            .arg("test")
            .args(REST)
            .args(JOURNEYS)
            .env("LEDGERBOARD_DIST", site.dist())
            .env("LEDGERBOARD_XTASK", std::env::current_exe()?)
            .env("LEDGERBOARD_AXE", &axe))
    })?;
    // Nothing after this: the last lines are those of the test runner.
    Ok(())
}

/// Runs one step after another, each under a heading that says how long the one before took.
#[derive(Default)]
struct Steps {
    count: usize,
    last: Option<(String, Instant)>,
}

impl Steps {
    fn run(&mut self, name: &str, step: impl FnOnce() -> Result<()>) -> Result<()> {
        self.count += 1;
        if let Some((last, start)) = &self.last {
            println!("-- {last}: {:.1} s", start.elapsed().as_secs_f32());
        }
        println!("\n== {}. {name}", self.count);
        self.last = Some((name.to_owned(), Instant::now()));
        step().with_context(|| format!("stopped at step {}, {name}", self.count))
    }
}

/// Installs what is missing of the tools, where that is ours to do.
fn ensure_tools() -> Result<()> {
    let missing: Vec<&str> =
        TOOLS.iter().filter(|(tool, _)| !can_start(tool)).map(|(_, package)| *package).collect();
    if missing.is_empty() {
        return Ok(());
    }
    let packages = missing.join(" ");
    // Debian keeps /etc/debian_version, and so does whoever is built on it.
    if !Path::new("/etc/debian_version").is_file() || !is_root()? {
        bail!(
            "the browser tests need the Debian packages {packages}; install them with: \
             sudo apt-get install {packages}\n\
             On another system, install Chromium, its driver and npm, so that {} start.",
            TOOLS.map(|(tool, _)| tool).join(", ")
        );
    }
    let apt = || {
        let mut apt = Command::new("apt-get");
        apt.env("DEBIAN_FRONTEND", "noninteractive").arg("--quiet");
        apt
    };
    run(apt().arg("update"))?;
    run(apt().args(["install", "--yes", "--no-install-recommends"]).args(&missing))?;
    for (tool, package) in TOOLS {
        ensure!(can_start(tool), "{package} is installed, but {tool} doesn't start");
    }
    Ok(())
}

fn can_start(tool: &str) -> bool {
    let mut command = Command::new(tool);
    command.arg("--version").stdout(Stdio::null()).stderr(Stdio::null());
    command.status().is_ok_and(|status| status.success())
}

fn is_root() -> Result<bool> {
    Ok(workspace::read(Command::new("id").arg("--user"))?.trim() == "0")
}

/// Fetches the accessibility checks that the journeys run in the page, and gives their script.
fn ensure_axe() -> Result<PathBuf> {
    let folder = workspace::target_dir()?.join("axe");
    let package = folder.join("node_modules/axe-core");
    let script = package.join("axe.min.js");
    let has_version = || {
        let text = std::fs::read_to_string(package.join("package.json")).unwrap_or_default();
        let json: serde_json::Value = serde_json::from_str(&text).unwrap_or_default();
        json["version"] == AXE_VERSION
    };
    if !(has_version() && script.is_file()) {
        std::fs::create_dir_all(&folder)?;
        let mut npm = Command::new("npm");
        npm.arg("install").arg("--prefix").arg(&folder);
        npm.args(["--no-save", "--no-audit", "--no-fund", "--ignore-scripts"]);
        run(npm.arg(format!("axe-core@{AXE_VERSION}")))?;
        ensure!(has_version() && script.is_file(), "npm left no axe-core {AXE_VERSION}");
    }
    Ok(script)
}
