//! What the page remembers besides jobs and drafts.

use crate::clock;
use ledgerboard_core::measure::Units;
use ledgerboard_core::wire::Node;

/// The settings of this browser.
#[derive(Clone, Debug, PartialEq, Eq)]
pub(crate) struct Settings {
    /// What no job says otherwise.
    pub(crate) units: Units,
    /// The job that is being worked on; none: loose notes.
    pub(crate) job: Option<String>,
    /// The language's key.
    pub(crate) language: String,
    /// Dark or light; empty: as the phone has it.
    pub(crate) light: String,
    /// The invented job has been taken away.
    pub(crate) demo_hidden: bool,
    /// This browser's own name in clocks.
    pub(crate) device: String,
    /// Calculators opened last, the latest first.
    pub(crate) recent: Vec<String>,
    /// The job that holds a day's loose notes: its date and its id.
    pub(crate) loose: Option<(String, String)>,
    /// When all jobs were backed up last, in seconds since 1970.
    pub(crate) backed_up: Option<i64>,
}

impl Settings {
    /// Of a browser that has never been here.
    pub(crate) fn fresh() -> Self {
        Self {
            units: Units::Customary,
            job: None,
            language: crate::speech::asked_for().to_owned(),
            light: String::new(),
            demo_hidden: false,
            device: by_chance(),
            recent: Vec::new(),
            loose: None,
            backed_up: None,
        }
    }

    /// Reads what was kept; a part that can't be read is as it would be in a new browser.
    pub(super) fn read(node: &Node) -> Option<Self> {
        let fresh = Self::fresh();
        let recent = node.items("recent").iter().filter_map(Node::leaf).collect();
        Some(Self {
            units: units(node)?,
            job: leaf(node, "job"),
            language: leaf(node, "language").unwrap_or(fresh.language),
            light: leaf(node, "light").unwrap_or(fresh.light),
            demo_hidden: leaf(node, "demo").as_deref() == Some("hidden"),
            device: leaf(node, "device").unwrap_or(fresh.device),
            recent,
            loose: leaf(node, "loose.date").zip(leaf(node, "loose.job")),
            backed_up: leaf(node, "backup").and_then(|at| at.parse().ok()),
        })
    }

    pub(super) fn write(&self) -> Node {
        let mut node = Node::EMPTY;
        node.put("units", Node::text(self.units.key()));
        node.put("language", Node::text(&self.language));
        node.put("device", Node::text(&self.device));
        if let Some(job) = &self.job {
            node.put("job", Node::text(job));
        }
        if !self.light.is_empty() {
            node.put("light", Node::text(&self.light));
        }
        if self.demo_hidden {
            node.put("demo", Node::text("hidden"));
        }
        node.put("recent", Node::List(self.recent.iter().map(|id| Node::text(id)).collect()));
        if let Some((date, job)) = &self.loose {
            node.put("loose.date", Node::text(date));
            node.put("loose.job", Node::text(job));
        }
        if let Some(at) = self.backed_up {
            node.put("backup", Node::Whole(at));
        }
        node
    }
}

/// Eight signs by chance: enough to tell a person's few devices or tabs apart, and nothing of the
/// person.
pub(super) fn by_chance() -> String {
    let mut rest = clock::chance();
    let mut name = String::with_capacity(8);
    for _ in 0..8 {
        name.extend(char::from_digit((rest % 36) as u32, 36));
        rest /= 36;
    }
    name
}

pub(super) fn leaf(node: &Node, path: &str) -> Option<String> {
    node.at(path).and_then(Node::leaf)
}

/// The units of a tree; those of a word that isn't known are the usual ones.
pub(super) fn units(node: &Node) -> Option<Units> {
    leaf(node, "units").map(|key| Units::from_key(&key).unwrap_or_default())
}
