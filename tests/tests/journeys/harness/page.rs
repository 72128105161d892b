//! A tab: going to places, asking the page, and how a word waits and gives up.
//!
//! What can be read is in `reading`, the finger in `touch`, the keyboard in `keys`, and what is
//! checked of a whole page in `audit`.

use std::cell::{Cell, RefCell};
use std::fs;
use std::panic::Location;
use std::path::PathBuf;
use std::rc::Rc;
use std::time::{Duration, Instant};

use serde::de::DeserializeOwned;
use serde_json::{Value, json};
use thirtyfour::cdp::Cdp;
use thirtyfour::common::print::{PrintPage, PrintParameters};
use thirtyfour::{WebDriver, WindowHandle};

use super::console::Console;
use super::device::{Device, Scheme, set_text_percent};
use super::journey::evidence_folder;
use super::{Told, Trouble};

/// What it is printed on.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Paper {
    /// 8.5 by 11 in.
    Letter,
    /// 210 by 297 mm.
    A4,
}

/// How long a word waits, unless the page is told otherwise.
const PATIENCE: Duration = Duration::from_secs(10);

/// What all functions that run in the page may use: how to find and name elements.
pub(super) const FIND: &str = include_str!("in_page/find.js");

/// One run of the browser, shared by its tabs.
pub(super) struct Session {
    pub(super) driver: WebDriver,
    pub(super) device: Device,
    pub(super) console: Rc<Console>,
    in_front: RefCell<WindowHandle>,
    trail: RefCell<Vec<String>>,
}

impl Session {
    pub(super) fn new(
        driver: WebDriver,
        device: Device,
        console: Rc<Console>,
        window: WindowHandle,
    ) -> Session {
        Session { driver, device, console, in_front: window.into(), trail: RefCell::default() }
    }

    // A tab in the background draws no frames and takes no touch.
    pub(super) async fn to_front(&self, window: &WindowHandle) -> Told<()> {
        if *self.in_front.borrow() != *window {
            self.driver.switch_to_window(window.clone()).await?;
            self.driver.cdp().send_raw("Page.bringToFront", ()).await?;
            *self.in_front.borrow_mut() = window.clone();
        }
        Ok(())
    }
}

/// A tab of a running browser.
#[derive(Clone)]
pub(crate) struct Page {
    pub(super) session: Rc<Session>,
    window: WindowHandle,
    home: String,
    patience: Cell<Duration>,
}

impl Page {
    pub(super) fn new(session: Rc<Session>, window: WindowHandle, home: String) -> Page {
        Page { session, window, home, patience: Cell::new(PATIENCE) }
    }

    /// Goes to a place of the site: `#/box-fill`, `rescue.html`, or "" for the first page.
    #[track_caller]
    pub(crate) fn goto(&self, place: &str) -> impl Future<Output = ()> {
        let address = format!("{}{place}", self.home);
        self.step(format!("go to {address}"), async move {
            self.session.to_front(&self.window).await?;
            Ok(self.session.driver.goto(address).await?)
        })
    }

    /// Loads the page again, as a person who pulls it down.
    #[track_caller]
    pub(crate) fn reload(&self) -> impl Future<Output = ()> {
        self.step("reload".to_owned(), async {
            self.session.to_front(&self.window).await?;
            Ok(self.session.driver.refresh().await?)
        })
    }

    /// Goes back, as by the browser's own key.
    #[track_caller]
    pub(crate) fn back(&self) -> impl Future<Output = ()> {
        self.step("go back".to_owned(), async {
            self.session.to_front(&self.window).await?;
            Ok(self.session.driver.back().await?)
        })
    }

    /// Waits until a condition in JavaScript holds. Prefer the words of `reading`, which a person
    /// could follow; this is for what can't be seen, as a store or a worker.
    #[track_caller]
    pub(crate) fn until(&self, condition: &str) -> impl Future<Output = ()> {
        // A promise that never settles must not hold the browser for longer than one try.
        let function = format!(
            "async () => {{ const late = new Promise((done) => setTimeout(done, 1000)); \
             if (!(await Promise.race([{condition}, late]))) throw new Error('it does not hold'); }}"
        );
        self.step(format!("until {condition}"), async move {
            self.ask_patiently(&function, json!([])).await
        })
    }

    /// The value of an expression in JavaScript, awaited when it is a promise.
    #[track_caller]
    pub(crate) fn evaluate<T: DeserializeOwned>(
        &self,
        expression: &str,
    ) -> impl Future<Output = T> {
        self.step(format!("evaluate {expression}"), async move {
            Ok(serde_json::from_value(self.run(expression).await?)?)
        })
    }

    /// Asks for the light or the dark scheme.
    #[track_caller]
    pub(crate) fn scheme(&self, scheme: Scheme) -> impl Future<Output = ()> {
        self.step(
            format!("scheme {scheme:?}"),
            async move { scheme.apply(&self.cdp().await?).await },
        )
    }

    /// Shows the page as it goes to paper, or on the screen again.
    #[track_caller]
    pub(crate) fn print_media(&self, on_paper: bool) -> impl Future<Output = ()> {
        self.step(format!("on paper: {on_paper}"), async move {
            let media = if on_paper { "print" } else { "screen" };
            let cdp = self.cdp().await?;
            cdp.send_raw("Emulation.setEmulatedMedia", json!({ "media": media })).await?;
            Ok(())
        })
    }

    /// Asks for larger text, in percent of the usual; see [`set_text_percent`].
    #[track_caller]
    pub(crate) fn text_percent(&self, percent: u32) -> impl Future<Output = ()> {
        self.step(format!("text at {percent} %"), async move {
            set_text_percent(&self.cdp().await?, percent).await
        })
    }

    /// Runs everything so many times slower than this machine would: a phone is.
    #[track_caller]
    pub(crate) fn slower(&self, times: u32) -> impl Future<Output = ()> {
        self.step(format!("{times} times slower"), async move {
            let rate = json!({ "rate": times });
            self.cdp().await?.send_raw("Emulation.setCPUThrottlingRate", rate).await?;
            Ok(())
        })
    }

    /// Saves what is in view as `name.png` in the folder of pictures, and says where.
    #[track_caller]
    pub(crate) fn screenshot(&self, name: &str) -> impl Future<Output = PathBuf> {
        let path = evidence_folder().join(format!("{name}.png"));
        self.step(format!("screenshot {name}"), async move {
            self.session.to_front(&self.window).await?;
            let picture = self.session.driver.screenshot_as_png().await?;
            fs::write(&path, picture)
                .map_err(|error| format!("{} can't be written: {error}", path.display()))?;
            Ok(path)
        })
    }

    /// Prints to a file as the browser does, and reads the text of its pages. The style sheet sets
    /// the margins.
    #[track_caller]
    pub(crate) fn printed(&self, paper: Paper) -> impl Future<Output = Vec<String>> {
        self.step(format!("print on {paper:?}"), async move {
            self.session.to_front(&self.window).await?;
            let (width, height) = match paper {
                Paper::Letter => (21.59, 27.94),
                Paper::A4 => (21.0, 29.7),
            };
            let page = PrintPage { width, height };
            let parameters = PrintParameters { page, ..PrintParameters::default() };
            let bytes = self.session.driver.print_page(parameters).await?;
            let text = pdf_extract::extract_text_from_mem_by_pages(&bytes);
            Ok(text.map_err(|error| format!("what was printed can't be read: {error}"))?)
        })
    }

    /// How long a word waits from now on.
    pub(crate) fn set_patience(&self, patience: Duration) {
        self.patience.set(patience);
    }

    /// What was done in this run of the browser so far, a line a word.
    pub(super) fn trail(&self) -> String {
        self.session.trail.borrow().join("\n")
    }

    pub(super) async fn cdp(&self) -> Told<Cdp> {
        self.session.to_front(&self.window).await?;
        Ok(self.session.driver.cdp())
    }

    /// Notes a word with its place in the journey, carries it out, and fails naming that place.
    #[track_caller]
    pub(super) fn step<T>(
        &self,
        words: String,
        work: impl Future<Output = Told<T>>,
    ) -> impl Future<Output = T> {
        let place = Location::caller();
        async move {
            let line = format!("{}:{}: {words}", place.file(), place.line());
            self.session.trail.borrow_mut().push(line.clone());
            work.await.unwrap_or_else(|trouble| panic!("{line}: {trouble}"))
        }
    }

    /// Tries until it works or the patience has run out.
    pub(super) async fn patiently<T>(&self, attempt: impl AsyncFn() -> Told<T>) -> Told<T> {
        let start = Instant::now();
        loop {
            match attempt().await {
                Err(_) if start.elapsed() < self.patience.get() => {
                    tokio::time::sleep(Duration::from_millis(25)).await;
                }
                outcome => return outcome,
            }
        }
    }

    /// Calls a function in the page, with `find.js` in reach, until it does not throw.
    pub(super) async fn ask_patiently<T: DeserializeOwned>(
        &self,
        function: &str,
        arguments: Value,
    ) -> Told<T> {
        self.patiently(async || self.ask(function, &arguments).await).await
    }

    /// Calls a function in the page once, with `find.js` in reach.
    pub(super) async fn ask<T: DeserializeOwned>(
        &self,
        function: &str,
        arguments: &Value,
    ) -> Told<T> {
        let call = format!("(async () => {{ {FIND}\n return ({function})(...{arguments}); }})()");
        Ok(serde_json::from_value(self.run(&call).await?)?)
    }

    // By the debugging protocol and not by a script element, which the site's policy refuses.
    pub(super) async fn run(&self, expression: &str) -> Told<Value> {
        let wanted =
            json!({ "expression": expression, "awaitPromise": true, "returnByValue": true });
        let mut reply = self.cdp().await?.send_raw("Runtime.evaluate", wanted).await?;
        if let Some(thrown) = reply.get("exceptionDetails") {
            let words = &thrown["exception"]["description"];
            let words = words.as_str().map_or_else(|| thrown.to_string(), str::to_owned);
            let first = words.lines().take_while(|line| !line.starts_with("    at "));
            let words = first.collect::<Vec<_>>().join("\n");
            return Err(Trouble::from(words.trim_start_matches("Error: ").to_owned()));
        }
        Ok(reply["result"]["value"].take())
    }
}
