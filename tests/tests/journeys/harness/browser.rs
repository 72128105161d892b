//! A real Chromium with a profile of its own, started by us and not by its driver.
//!
//! So it can be closed as a person closes it, or killed as an empty battery does, and be started
//! again with whatever the profile then holds.

use std::fs::{self, File};
use std::path::PathBuf;
use std::process::{Command, Stdio};
use std::rc::Rc;
use std::time::{Duration, Instant};

use tempfile::TempDir;
use thirtyfour::{
    ChromeCapabilities, ChromiumLikeCapabilities, LoggingPrefsLogLevel, WebDriver, WindowHandle,
};

use super::console::Console;
use super::device::Device;
use super::page::{Page, Session};
use super::process::Family;
use super::{Told, Trouble};

/// How long one command to the browser may take.
const COMMAND: Duration = Duration::from_secs(30);

/// Where the browser and its driver are, unless `LEDGERBOARD_CHROMIUM` and
/// `LEDGERBOARD_CHROMEDRIVER` say otherwise: the Debian packages chromium and chromium-driver.
const CHROMIUM: &str = "/usr/bin/chromium";
const CHROMEDRIVER: &str = "/usr/bin/chromedriver";

const FLAGS: [&str; 12] = [
    "--headless=new",
    "--no-sandbox",
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
    "--disable-breakpad",
    "--disable-crash-reporter",
    // Nothing but this machine can be reached, whatever a page asks for.
    "--host-resolver-rules=MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost",
    "--remote-debugging-port=0",
];

/// One profile, and the browser that runs on it or has run.
pub(crate) struct Browser {
    // Before the profile, so that it is gone when the profile's folder goes.
    running: Option<Running>,
    profile: TempDir,
    device: Device,
    home: String,
    console: Rc<Console>,
    private: bool,
}

struct Running {
    session: Rc<Session>,
    driver: Family,
    chromium: Family,
}

/// Starts the driver on a port of its own choice. Of a port that is free for one protocol and
/// taken for the other it makes nothing and ends: then it chooses again.
fn start_driver() -> Told<(Family, u16)> {
    for _ in 0..5 {
        let mut driver = Family::start(
            Command::new(variable("LEDGERBOARD_CHROMEDRIVER", CHROMEDRIVER))
                .arg("--port=0")
                .stdout(Stdio::piped())
                .stderr(Stdio::null()),
        );
        let port = driver.try_first(|line| {
            line.split_once("started successfully on port ")?.1.trim_end_matches('.').parse().ok()
        });
        if let Some(port) = port {
            return Ok((driver, port));
        }
    }
    Err(Trouble::from(format!("{CHROMEDRIVER} does not start")))
}

impl Browser {
    /// A browser with an empty profile, not yet running. `home` is the address of the site.
    pub(super) fn new(device: Device, home: &str) -> Browser {
        Browser {
            profile: tempfile::tempdir().expect("a temporary folder"),
            device,
            home: home.to_owned(),
            console: Rc::default(),
            running: None,
            private: false,
        }
    }

    /// From the next start on, all is done in a private window.
    pub(crate) fn be_private(&mut self) {
        self.private = true;
    }

    /// Starts the browser, again on the same profile when it ran before, at a blank page.
    pub(crate) async fn open(&mut self) -> Page {
        self.try_open().await.unwrap_or_else(|trouble| {
            let log = fs::read_to_string(self.log()).unwrap_or_default();
            panic!("the browser can't be used: {trouble}\n{log}")
        })
    }

    /// A browser of its own at the same site, with an empty profile: somebody else's phone.
    pub(crate) fn another(&self) -> Browser {
        Browser::new(self.device, &self.home)
    }

    /// Another tab of the same browser, at a blank page.
    pub(crate) async fn new_tab(&self) -> Page {
        self.try_new_tab()
            .await
            .unwrap_or_else(|trouble| panic!("there is no second tab: {trouble}"))
    }

    /// Closes the browser as a person does: it may finish its writing.
    pub(crate) async fn close(&mut self) {
        if let Some(mut running) = self.running.take() {
            // The last words of a browser that is on its way out may be lost.
            let _ = self.console.listen(&running.session.driver).await;
            // Nor need it answer: whether it closes is seen by its process ending.
            let _ = running.session.driver.cdp().send_raw("Browser.close", ()).await;
            running.chromium.wait();
        }
    }

    /// Ends the browser at once, all its processes together.
    pub(crate) async fn kill(&mut self) {
        if let Some(mut running) = self.running.take() {
            let _ = self.console.listen(&running.session.driver).await;
            running.chromium.kill_to_the_last();
        }
    }

    async fn try_open(&mut self) -> Told<Page> {
        let port_file = self.profile.path().join("DevToolsActivePort");
        let _ = fs::remove_file(&port_file);
        let log = File::create(self.log()).map_err(|error| Trouble::from(error.to_string()))?;
        let mut chromium = Family::start(
            Command::new(variable("LEDGERBOARD_CHROMIUM", CHROMIUM))
                .args(FLAGS)
                .args(self.device.flags())
                .args(self.private.then_some("--incognito"))
                .arg(format!("--user-data-dir={}", self.profile.path().display()))
                .arg("about:blank")
                .stdout(Stdio::null())
                .stderr(log),
        );
        let (driver, port) = start_driver()?;
        let debugger = debugger_port(&port_file, &mut chromium).await?;

        let mut wanted = ChromeCapabilities::new();
        wanted.set_debugger_address(&format!("127.0.0.1:{debugger}"))?;
        wanted.set_browser_log_level(LoggingPrefsLogLevel::All)?;
        let driver_address = format!("http://127.0.0.1:{port}");
        let web = WebDriver::builder(driver_address, wanted).request_timeout(COMMAND).await?;
        let window = web.window().await?;
        self.device.apply(&web.cdp()).await?;

        let session = Session::new(web, self.device, Rc::clone(&self.console), window.clone());
        let session = Rc::new(session);
        self.running = Some(Running { session: Rc::clone(&session), driver, chromium });
        Ok(Page::new(session, window, self.home.clone()))
    }

    async fn try_new_tab(&self) -> Told<Page> {
        let running =
            self.running.as_ref().ok_or_else(|| Trouble::from("not running".to_owned()))?;
        let window: WindowHandle = running.session.driver.new_tab().await?;
        running.session.to_front(&window).await?;
        self.device.apply(&running.session.driver.cdp()).await?;
        Ok(Page::new(Rc::clone(&running.session), window, self.home.clone()))
    }

    fn log(&self) -> PathBuf {
        self.profile.path().join("chromium.log")
    }
}

impl Drop for Running {
    fn drop(&mut self) {
        // Without this the client would ask a driver that is about to go for a tidy end, and wait.
        let _ = self.session.driver.clone().leak();
        self.driver.kill();
    }
}

// Chromium picks a free port and writes it down; the second line comes last.
async fn debugger_port(file: &PathBuf, chromium: &mut Family) -> Told<u16> {
    let start = Instant::now();
    loop {
        let written = fs::read_to_string(file).unwrap_or_default();
        if let [port, path, ..] = written.lines().collect::<Vec<_>>()[..]
            && path.starts_with("/devtools/")
            && let Ok(port) = port.parse()
        {
            return Ok(port);
        }
        if chromium.has_ended() || start.elapsed() > COMMAND {
            return Err(Trouble::from("it does not open a port for its driver".to_owned()));
        }
        tokio::time::sleep(Duration::from_millis(10)).await;
    }
}

fn variable(name: &str, usual: &str) -> String {
    std::env::var(name).unwrap_or_else(|_| usual.to_owned())
}
