//! What to buy for a job: the materials of all its marks, added up exactly and rounded once to
//! what a shop sells, with where each comes from.
//!
//! What a person decides stands in the job's own words ([`super::Jot`]): how much to spare, what a
//! package holds, what it costs, what is there already, and what isn't to be counted.

use super::edit::Edit;
use super::site::Job;
use super::stamp::Moment;
use super::survey::Survey;
use super::unlike_room::Rooms;
use super::version::in_use;
use super::words as w;
use crate::calculators::Trade;
use crate::catalog;
use crate::measure::unit::PERCENT;
use crate::measure::{Area, Length, Measure, Units, Volume};
use crate::rules::packs;
use crate::say;
use crate::sheet::{Material, UNBOUGHT};
use crate::words::{Amount, Phrase, Text, Voice};

mod bought;
mod counted;
mod sums;
mod told;
use bought::bought;
pub use bought::{Bought, bought_before};
use counted::{counted, plans};
use sums::times;
pub use sums::{Sum, read_price};
pub use told::{csv, list};

/// The most to spare, in percent.
const MOST_SPARE: Measure = Measure::whole(&PERCENT, 100);

/// In millionths of a dollar.
const CENT: i64 = 10_000;

/// How a mark's share of a material counts.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Counts {
    /// All of it.
    Whole,
    /// Without what the marks of these ids ask for, where that is counted already.
    Beyond(Vec<String>),
    /// Not at all: a person said so.
    LeftOut,
    /// Not at all: it is a calculator's sample, as nobody's job is.
    Sample,
    /// Not at all: it is another version of a number, and the one that is in use counts.
    OtherVersion,
}

/// What one mark asks for.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Share {
    /// The mark's id.
    pub mark: String,
    /// Its title.
    pub title: String,
    /// Its room or spot.
    pub spot: String,
    /// As its sheet has it.
    pub asks: Amount,
    /// What of that is counted.
    pub counted: Amount,
    /// Why.
    pub counts: Counts,
    /// Whether the work is held.
    pub is_held: bool,
    /// Its mark waits for a number that changed.
    pub waits: bool,
}

/// What it is sold in.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Pack {
    /// What one holds.
    pub holds: Amount,
    /// What it is called; none where only its size is known.
    pub called: Option<&'static Phrase>,
    /// Whether a person said so.
    pub is_own: bool,
}

/// What was bought, and when that was noted.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Got {
    /// How much; packages, where it is sold in them.
    pub amount: Amount,
    /// When.
    pub at: Moment,
}

/// One thing to buy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Line {
    /// The material's key.
    pub key: String,
    /// What to ask for.
    pub name: Text,
    /// Whose it is.
    pub trade: Trade,
    /// The sum of what counts.
    pub needs: Amount,
    /// How much more to have, in percent.
    pub spare: Measure,
    /// With that.
    pub in_all: Amount,
    /// What it is sold in, where that is known.
    pub pack: Option<Pack>,
    /// How many packages; else the sum rounded up to whole ones of its unit.
    pub buys: Amount,
    /// What one of them costs.
    pub price: Option<Measure>,
    /// What all of them cost.
    pub cost: Option<Measure>,
    /// What is there already.
    pub got: Option<Got>,
    /// Where it comes from.
    pub shares: Vec<Share>,
}

impl Line {
    /// Whether anything of it counts.
    pub fn is_counted(&self) -> bool {
        self.buys.raw() > 0
    }

    /// Whether it is there, all of it.
    pub fn is_got(&self) -> bool {
        self.got.is_some_and(|got| got.amount.raw() >= self.buys.raw())
    }

    /// What is still to be bought of it after it was ticked; none where nothing is.
    pub fn more(&self) -> Option<Amount> {
        let got = self.got?.amount.raw();
        let more = self.buys.raw() - got;
        (got > 0 && more > 0).then(|| self.buys.of_same(more))
    }

    /// Whether what is needed is what is bought: nothing rounded, no spare, no package.
    pub fn is_as_needed(&self) -> bool {
        self.pack.is_none() && self.spare.millionths() == 0 && self.buys == self.needs
    }

    /// How much to ask for: `3 pails of 4.5 gal`.
    pub fn says(&self) -> Text {
        match &self.pack {
            Some(Pack { holds, called: Some(called), .. }) => {
                say!(w::PACKS, self.buys, *called, *holds)
            }
            Some(Pack { holds, called: None, .. }) => say!(w::PACKS_OF, self.buys, *holds),
            None => say!(w::AMOUNT, self.buys),
        }
    }
}

/// What a mark needs, and nobody can say how much of it yet.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Unknown {
    /// The mark's title.
    pub title: String,
    /// Its room or spot.
    pub spot: String,
    /// Whose it is.
    pub trade: Trade,
    /// What it is.
    pub name: Text,
    /// Why it isn't counted.
    pub why: Text,
}

/// All that there is to buy.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Buying {
    /// By trade, in the order of a job; in each in the order in which the marks were made.
    pub lines: Vec<Line>,
    /// What was bought, and is on no line any more.
    pub bought: Vec<Bought>,
    /// What is needed too, and isn't on any line: nobody can say how much of it yet.
    pub unknown: Vec<Unknown>,
    /// Marks that can't be worked today: what they ask for is missing here.
    pub missing: Vec<String>,
    /// Titles of marks whose plan is held and out of sight: what they ask for is missing here too.
    pub held: Vec<String>,
    /// Titles of marks that ask for something, and wait for a number that changed: they ask as they
    /// did before.
    pub waiting: Vec<String>,
    /// Titles of marks that count here, with fields that are still the sample's.
    pub sampled: Vec<String>,
    /// Titles of other marks that count here and take values from some with such fields.
    pub on_samples: Vec<String>,
    /// Titles of marks that count here, though their work is held.
    pub on_hold: Vec<String>,
    /// What marks that count here say otherwise than their room.
    pub unlike: Vec<Text>,
    /// Titles of marks in use of which another version waits for a choice.
    pub versions: Vec<String>,
}

/// What a person may say of a material, or of a mark's share of it: the name under which a job
/// keeps it.
pub fn said_of(what: About, key: &str) -> String {
    let about = match what {
        About::Spare => "spare ",
        About::Pack => "pack ",
        About::Price => "price ",
        About::Got => "got ",
        About::Told => "bought ",
        About::Share(mark) => return ["share ", mark, " ", key].concat(),
    };
    [about, key].concat()
}

/// The name under which a job keeps what was typed of a material and can't be read.
fn typed_of(what: About<'_>, key: &str) -> String {
    ["typed ", &said_of(what, key)].concat()
}

/// What stands in the field of what a person says of a material: what was typed there last, though
/// nobody can read it.
pub fn in_field<'a>(job: &'a Job, what: About<'_>, key: &str) -> &'a str {
    match job.jotted(&typed_of(what, key)) {
        "" => job.jotted(&said_of(what, key)),
        typed => typed,
    }
}

/// Whether something that can't be read stands there.
pub fn is_unread(job: &Job, what: About<'_>, key: &str) -> bool {
    !job.jotted(&typed_of(what, key)).is_empty()
}

/// The edit that keeps what was typed there: as what a person says or, where that can't be read, in the
/// place of what they said before, which comes back when it is taken back.
pub fn typed_in(job: &Job, what: About<'_>, key: &str, typed: &str, is_read: bool) -> Edit {
    let says = typed.to_owned();
    if !is_read {
        return Edit::Jot { key: typed_of(what, key), says };
    }
    let mut edits = vec![Edit::Jot { key: said_of(what, key), says }];
    if is_unread(job, what, key) {
        edits.push(Edit::Jot { key: typed_of(what, key), says: String::new() });
    }
    Edit::Several(edits)
}

/// What a person may say of a material.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum About<'a> {
    /// How much more to have: percent. With an empty key, of all that isn't said by itself.
    Spare,
    /// What a package holds.
    Pack,
    /// What one costs.
    Price,
    /// How much is there, in exact text.
    Got,
    /// That, and what it is called, as it was told when it was ticked.
    Told,
    /// Whether a mark's share counts: `no`, or `all`.
    Share(&'a str),
}

/// The words for a share that doesn't count.
pub const LEFT_OUT: &str = "no";
/// The words for a share that counts, whatever it took over.
pub const COUNTED: &str = "all";

/// Adds up what the marks of a job ask for.
pub fn buying(job: &Job, survey: &Survey<'_>) -> Buying {
    let mut all = Buying {
        lines: Vec::new(),
        bought: Vec::new(),
        unknown: Vec::new(),
        missing: Vec::new(),
        held: Vec::new(),
        waiting: Vec::new(),
        sampled: Vec::new(),
        on_samples: Vec::new(),
        on_hold: Vec::new(),
        unlike: Vec::new(),
        versions: Vec::new(),
    };
    let rooms = Rooms::of(job, survey);
    let mut plans = plans(job, survey);
    for mark in &job.marks {
        let Some(Ok(worked)) = survey.worked(&mark.id) else {
            all.missing.push(mark.id.clone());
            continue;
        };
        if worked.is_withheld {
            all.held.push(mark.title.clone());
        }
        let entry = catalog::find(&mark.calculator);
        let trade = entry.map_or(Trade::First, |entry| entry.trade);
        let waits = !survey.is_fresh(&mark.id);
        let is_other = match in_use(job, mark) {
            Some(used) if !all.versions.contains(&used.title) => {
                all.versions.push(used.title.clone());
                true
            }
            used => used.is_some(),
        };
        if !job.is_sample(mark) && !is_other && !worked.sheet.materials.is_empty() {
            if waits {
                all.waiting.push(mark.title.clone());
            }
            if worked.standing.is_held() {
                all.on_hold.push(mark.title.clone());
            }
            let unlike = rooms.unlike(job, mark).into_iter();
            all.unlike.extend(unlike.map(|it| say!(w::UNLIKE_OF, &*mark.title, it.says())));
            if !job.still_sample(mark).is_empty() {
                all.sampled.push(mark.title.clone());
            } else if !job.sampled_sources(mark).is_empty() {
                all.on_samples.push(mark.title.clone());
            }
        }
        // As it was typed, where it was.
        let has_spot = !mark.spot.trim().is_empty();
        let spot = if has_spot { mark.spot.clone() } else { job.spot_of(mark).to_owned() };
        let unbought = worked.sheet.parts.iter().filter(|part| part.key == UNBOUGHT);
        let is_asked = !job.is_sample(mark) && !is_other;
        for row in unbought.flat_map(|part| &part.rows).filter(|_| is_asked) {
            let (title, spot) = (mark.title.clone(), spot.clone());
            let (name, why) = (row.name.clone(), row.value.clone());
            all.unknown.push(Unknown { title, spot, trade, name, why });
        }
        for material in &worked.sheet.materials {
            let (counted, counts) = counted(job, survey, &mut plans, mark, material);
            let share = Share {
                mark: mark.id.clone(),
                title: mark.title.clone(),
                spot: spot.clone(),
                asks: material.amount,
                counted,
                counts,
                is_held: worked.standing.is_held(),
                waits,
            };
            add(&mut all.lines, material, trade, share);
        }
    }
    for line in &mut all.lines {
        settle(job, line);
    }
    all.bought = bought(job, &all.lines);
    all
}

/// Puts a share under its material. The lines stay in the order of the trades.
fn add(lines: &mut Vec<Line>, material: &Material, trade: Trade, share: Share) {
    let same = |line: &Line| line.key == material.key && line.needs.is_like(material.amount);
    if let Some(line) = lines.iter_mut().find(|line| same(line)) {
        line.needs = line.needs.of_same(line.needs.raw() + share.counted.raw());
        line.shares.push(share);
        return;
    }
    let order = |trade: Trade| Trade::ALL.iter().position(|it| *it == trade);
    let at = lines.partition_point(|line| order(line.trade) <= order(trade));
    let line = Line {
        key: material.key.clone(),
        name: material.name.clone(),
        trade,
        needs: share.counted,
        spare: MOST_SPARE.of_same(0),
        in_all: share.counted,
        pack: None,
        buys: share.counted,
        price: None,
        cost: None,
        got: None,
        shares: vec![share],
    };
    lines.insert(at, line);
}

/// What a person said of it, and what it comes to then.
fn settle(job: &Job, line: &mut Line) {
    // What can't be read counts as nothing said, not as what was said before.
    let said = |about, key: &str| in_field(job, about, key);
    let percent = |text: &str| {
        let read = Measure::read(text, &PERCENT, Units::Customary).ok();
        read.filter(|it| (0..=MOST_SPARE.millionths()).contains(&it.millionths()))
    };
    let (of_this, of_all) =
        (percent(said(About::Spare, &line.key)), percent(said(About::Spare, "")));
    let hundred = i128::from(MOST_SPARE.millionths());
    let raw = line.needs.raw().max(0);
    let share = raw.saturating_mul(of_this.or(of_all).map_or(0, |it| it.millionths().into()));
    // Up, of what is counted one by one too: a spare that adds nothing is none.
    let more = rounded_up(share, hundred);
    line.spare = of_this.or(of_all).filter(|_| more > 0).unwrap_or(line.spare);
    line.in_all = line.needs.of_same(raw + more);
    let own = read_like(said(About::Pack, &line.key), line.needs).filter(|it| it.raw() > 0);
    line.pack = match own {
        Some(holds) => Some(Pack { holds, called: None, is_own: true }),
        None => packs::usual(&line.key, line.in_all)
            .filter(|(_, holds)| holds.is_like(line.needs))
            .map(|(called, holds)| Pack { holds, called: Some(called), is_own: false }),
    };
    line.buys = match &line.pack {
        Some(pack) => Amount::Count(narrow(rounded_up(line.in_all.raw(), pack.holds.raw()))),
        None => whole_ones(line.in_all),
    };
    line.price = read_price(said(About::Price, &line.key)).ok();
    line.cost = line.price.map(|price| times(price, line.buys));
    let got = job.jot(&said_of(About::Got, &line.key));
    line.got = got.and_then(|jot| {
        let amount = Amount::from_exact(&jot.says).filter(|it| it.is_like(line.buys))?;
        Some(Got { amount, at: jot.at })
    });
}

/// One of the unit that a person buys by.
fn whole_one(amount: Amount) -> i128 {
    match amount {
        Amount::Length(_) => Length::inches(12, 1).nanometres().into(),
        Amount::Area(_) => Area::square_feet(1).square_nanometres(),
        Amount::Volume(_) => Volume::hundredths(100).units().into(),
        Amount::Room(_) => i128::from(Volume::hundredths(100).units()) * 1728,
        Amount::Count(_) | Amount::Day(_) => 1,
        Amount::Measure(_) => 1_000_000,
    }
}

/// Rounded up to whole ones of its unit.
fn whole_ones(amount: Amount) -> Amount {
    let one = whole_one(amount);
    amount.of_same(rounded_up(amount.raw(), one) * one)
}

fn rounded_up(of: i128, by: i128) -> i128 {
    if of <= 0 { 0 } else { (of - 1) / by + 1 }
}

fn narrow(of: i128) -> i64 {
    i64::try_from(of).unwrap_or(i64::MAX)
}

/// Reads a quantity of the same kind as another; feet, gallons and so on where no unit is given.
pub fn read_like(text: &str, like: Amount) -> Option<Amount> {
    let units = Units::Customary;
    let text = text.trim();
    match like {
        Amount::Length(_) => {
            let bare = text.bytes().all(|byte| byte.is_ascii_digit() || byte == b'.');
            let text =
                if bare && !text.is_empty() { [text, " ft"].concat() } else { text.to_owned() };
            Length::read(&text, units).ok().map(Amount::Length)
        }
        Amount::Area(_) => Area::read(text, units).ok().map(Amount::Area),
        Amount::Volume(_) => Volume::read(text, units).ok().map(Amount::Volume),
        Amount::Room(_) => Volume::read(text, units).ok().map(Amount::Room),
        Amount::Count(_) => text.parse().ok().map(Amount::Count),
        Amount::Day(_) => None,
        Amount::Measure(like) => Measure::read(text, like.unit(), units).ok().map(Amount::Measure),
    }
}

/// What a person has to know of what is counted: what waits and is asked for as before, what is
/// reckoned with fields of a sample, what isn't on the list since nobody can say how much of it, and
/// cable that is asked for by the foot beside rolls of it, which a plan picked for its own pieces alone.
pub fn warnings(buying: &Buying) -> Vec<Text> {
    let names = |all: &[String]| Some(all.join(", ")).filter(|all| !all.is_empty());
    let waits = names(&buying.waiting).map(|it| say!(w::BUY_WAITS, it));
    let sampled = names(&buying.sampled).map(|it| say!(w::BUY_SAMPLED, it));
    let on_samples = names(&buying.on_samples).map(|it| say!(w::BUY_TAKES_SAMPLE, it));
    let by_the_foot = buying.lines.iter().filter(|line| line.is_counted()).filter(|line| {
        let rolls = line.key.strip_prefix("cable ").map(|kind| ["cable-roll ", kind, " "].concat());
        let is_roll = |rolls: &str| buying.lines.iter().any(|it| it.key.starts_with(rolls));
        rolls.is_some_and(|rolls| is_roll(&rolls))
    });
    let by_the_foot = by_the_foot.map(|line| say!(w::BUY_ROLLS_TOO, line.name.clone()));
    let on_hold = names(&buying.on_hold).map(|it| say!(w::BUY_HELD, it));
    let versions = names(&buying.versions).map(|it| say!(w::BUY_VERSIONS, it));
    let mut all = unknown(buying);
    all.extend(on_hold.into_iter().chain(versions).chain(waits));
    all.extend(buying.unlike.iter().cloned());
    all.extend(sampled.into_iter().chain(on_samples).chain(by_the_foot));
    all
}

/// What isn't on the list, a mark after another, as much of each as is read.
fn unknown(buying: &Buying) -> Vec<Text> {
    const READ: usize = 12;
    let mut all = Vec::new();
    for of_mark in buying.unknown.chunk_by(|one, other| one.title == other.title) {
        let told = of_mark
            .iter()
            .take(READ)
            .map(|it| say!(w::UNKNOWN_SINCE, it.name.clone(), it.why.clone()));
        let told = told.reduce(|before, one| say!(w::UNKNOWN_AND, before, one));
        let more = of_mark.len().saturating_sub(READ) as i64;
        let told = told.map(|told| if more > 0 { say!(w::AND_OTHERS, told, more) } else { told });
        all.extend(told.map(|told| say!(w::BUY_UNKNOWN, of_mark[0].title.as_str(), told)));
    }
    all
}

/// The names of what nothing is counted of, one after another; empty where there is none.
pub fn uncounted(buying: &Buying, voice: Voice) -> String {
    let lines = buying.lines.iter().filter(|line| !line.is_counted());
    lines.map(|line| voice.say(&line.name)).collect::<Vec<_>>().join(", ")
}

/// The same for a paper or a text, where it can't be opened: each with why, so that nobody adds it
/// again; none where there is none.
pub fn left_out(job: &Job, buying: &Buying, voice: Voice) -> Option<Text> {
    let of = |line: &Line| {
        let mut why: Vec<String> = Vec::new();
        for since in line.shares.iter().filter_map(|share| since(job, share)) {
            let since = voice.say(&since);
            if !why.contains(&since) {
                why.push(since);
            }
        }
        voice.say(&match &*why {
            [] => line.name.clone(),
            why => say!(w::UNCOUNTED_SINCE, line.name.clone(), why.join(", ")),
        })
    };
    let lines = buying.lines.iter().filter(|line| !line.is_counted());
    let names = lines.map(of).collect::<Vec<_>>().join(", ");
    (!names.is_empty()).then(|| say!(w::BUY_UNCOUNTED, names))
}

/// Why nothing of a share counts, in short.
fn since(job: &Job, share: &Share) -> Option<Text> {
    match &share.counts {
        Counts::Whole => None,
        Counts::LeftOut => Some((&w::SHARE_LEFT_OUT).into()),
        Counts::Sample => Some((&w::AS_IT_CAME).into()),
        Counts::OtherVersion => Some((&w::IS_OTHER).into()),
        Counts::Beyond(marks) => Some(say!(w::COUNTED_IN, titles(job, marks))),
    }
}

fn titles(job: &Job, marks: &[String]) -> String {
    let titles = marks.iter().filter_map(|mark| Some(&*job.mark(mark)?.title));
    titles.collect::<Vec<_>>().join(", ")
}

/// Why a share counts as it does, as a person reads it; none where all of it does.
pub fn reason(job: &Job, share: &Share) -> Option<Text> {
    match &share.counts {
        Counts::Whole => None,
        Counts::LeftOut => Some((&w::SHARE_LEFT_OUT).into()),
        Counts::Sample => Some((&w::SHARE_SAMPLE).into()),
        Counts::OtherVersion => Some((&w::SHARE_OTHER_VERSION).into()),
        Counts::Beyond(marks) => Some(say!(w::SHARE_BEYOND, titles(job, marks))),
    }
}

#[cfg(test)]
mod tests;
