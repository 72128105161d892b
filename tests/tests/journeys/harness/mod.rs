//! The vocabulary that journeys are written in: a server, a browser, a page, a finger.
//!
//! Nothing here knows a calculator. Each word waits for what it needs, up to the page's patience,
//! and says where in the journey it was spoken when it gives up.

mod audit;
mod bench;
mod browser;
mod choosing;
mod console;
mod device;
mod downloads;
mod faulting;
mod files;
mod journey;
mod keys;
mod page;
mod process;
mod reading;
mod refused;
mod server;
mod spot;
mod touch;

pub(crate) use bench::Bench;
pub(crate) use device::{Device, Scheme};
pub(crate) use journey::{Journey, evidence_folder, journey};
pub(crate) use page::{Page, Paper};
pub(crate) use refused::refused;
pub(crate) use server::Server;
pub(crate) use spot::{field, saying};

/// Something that answers at an address: the real server, or a bench of bad pages.
pub(crate) trait Site {
    /// Where its first page is, with a slash at the end.
    fn address(&self) -> &str;
}

/// Why a word could not be carried out, in words for whoever reads the failed run.
#[derive(Debug)]
pub(crate) struct Trouble(String);

/// What a word's work comes to.
pub(crate) type Told<T> = Result<T, Trouble>;

impl std::fmt::Display for Trouble {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str(&self.0)
    }
}

impl From<String> for Trouble {
    fn from(words: String) -> Self {
        Trouble(words)
    }
}

impl From<thirtyfour::error::WebDriverError> for Trouble {
    fn from(error: thirtyfour::error::WebDriverError) -> Self {
        // What follows is the driver's own stack, which says nothing of the page.
        let words = error.to_string();
        let words = words.split("Stacktrace:").next().unwrap_or_default();
        let words = words.split_whitespace().collect::<Vec<_>>().join(" ");
        Trouble(format!("the browser did not do it: {words}"))
    }
}

impl From<serde_json::Error> for Trouble {
    fn from(error: serde_json::Error) -> Self {
        Trouble(format!("the page's answer has another shape: {error}"))
    }
}

/// The value of a variable that `cargo xtask test` sets.
///
/// # Panics
/// When it is not set: a journey without a site or a browser must not pass for one that ran.
pub(crate) fn from_xtask(variable: &str) -> String {
    std::env::var(variable).unwrap_or_else(|_| {
        panic!("{variable} is not set. Run the journeys by `cargo xtask test`, which builds the site and sets it.")
    })
}
