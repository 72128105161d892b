//! What the page reads of an open question: its answer, how far that has come, and its faults.

use super::{Question, looking};
use crate::signal::Memo;
use crate::{elements, speech};
use ledgerboard_core::calculators::Progress;
use ledgerboard_core::catalog::Worked;
use ledgerboard_core::sheet::{Fault, Faults};
use ledgerboard_core::wire::Node;
use ledgerboard_core::words::Voice;

impl Question {
    /// The voice that figures are read out in.
    pub(crate) fn voice(self) -> Voice {
        speech::voice(self.units.get())
    }

    /// How far the answer has come.
    pub(crate) fn progress(self) -> Progress {
        let whole = |worked: &Result<Worked, Faults>| match worked {
            Ok(worked) => worked.progress,
            Err(_) => Progress::Whole,
        };
        self.worked.with(whole)
    }

    /// Stops looking for a better answer, or goes on.
    pub(crate) fn stop(self, stopped: bool) {
        looking::stop(stopped, self.found);
    }

    /// Reads the answer for what is large, which is drawn anew when typing pauses. While a fault
    /// stands it never shows an old figure.
    pub(crate) fn at_rest<T>(self, read: impl FnOnce(&Result<Worked, Faults>) -> T) -> T {
        if !self.is_long.get() {
            return self.worked.with(read);
        }
        self.rested.track();
        self.stands.get();
        self.worked.with_untracked(read)
    }

    /// The text of one leaf.
    pub(crate) fn text(self, path: &str) -> Memo<String> {
        let path = path.to_owned();
        elements::text(move || {
            self.draft.with(|draft| draft.at(&path).and_then(Node::leaf).unwrap_or_default())
        })
    }

    /// What is wrong at one path; empty where nothing is.
    pub(crate) fn fault(self, path: &str) -> Memo<String> {
        let path = path.to_owned();
        elements::text(move || {
            let voice = self.voice();
            self.with_faults(|faults| {
                let fault = faults.iter().find(|fault| fault.path == path);
                fault.map(|fault| voice.say(&fault.says)).unwrap_or_default()
            })
        })
    }

    /// Reads the faults: those that keep the answer, else those that it leaves out a check for.
    pub(crate) fn with_faults<T>(self, read: impl FnOnce(&[Fault]) -> T) -> T {
        self.worked.with(|worked| match worked {
            Ok(worked) => read(&worked.left_out),
            Err(faults) => read(faults),
        })
    }
}
