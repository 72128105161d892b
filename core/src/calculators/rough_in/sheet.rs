//! The answer as it is shown: over first, then what is nearest to its limit.

use super::Calculator;
use super::circuits::Circuit;
use super::counted::Without;
use super::drawing::drawing;
use super::graph::{Answer, Laid, State};
use super::holes::Bundle;
use super::input::{Input, PlacedBox, Run, What};
use super::labels::ordered;
use super::off_wall::off_walls;
use super::schedule::{circuits_by_box, ends, far_end, in_all, material, parts, unplaced};
use super::shown as s;
use super::words::AND_MORE;
use crate::fields::Typed;
use crate::measure::unit::{PERCENT, VOLT};
use crate::measure::{Length, Measure, Volume};
use crate::rules::compare::{Limit, at_least, at_most, is_at_most, settle, unverified};
use crate::rules::electrical::ampacity::{AMPACITY, behind, carries};
use crate::rules::electrical::box_fill::{FILL, Grounds, grounds};
use crate::rules::electrical::bundling::{SEALED, in_sealed_hole};
use crate::rules::electrical::cable_length::ALLOWANCES;
use crate::rules::electrical::cable_securing::{End, SPACING, from_box};
use crate::rules::electrical::cable_sizes::{MOST_TAKEN, WHOLE};
use crate::rules::electrical::low_voltage::APART;
use crate::rules::electrical::rough_in::{GANGS, PLAN, SEVERAL, WALLS, most_fed};
use crate::rules::electrical::voltage_drop::{
    ADVICE, Heat, OF_BRANCH, RESISTANCE, lost, of_cable, resistance,
};
use crate::say;
use crate::sheet::{Asks, Check, Expr, Figure, Material, Sheet, Source, Step, UNPLACED, Verdict};
use crate::words::{Amount, Arg, Phrase, Text};

/// Of a plan without what of it isn't counted.
pub(super) fn sheet(input: &Input, answer: &Answer, without: &Without) -> Sheet {
    let (left, less) = less(without);
    let (checks, over) = checks(input, answer, (left, less.clone()));
    let [boxes, circuits, holes] =
        [answer.boxes.len(), answer.circuits.len(), answer.holes.len()].map(|it| it as i64);
    let count = match holes {
        0 => say!(s::OVER, boxes, circuits),
        _ => say!(s::OVER_HOLES, boxes, circuits, holes),
    };
    // What is open may hide what is over: nothing over isn't all.
    let is_open = |it: &&Check| it.verdict == Verdict::Ask && it.asks != Asks::Minded;
    let open = checks.iter().filter(is_open).count() as i64;
    let said = match (over, open) {
        (0, 0) => Some((&s::NONE_OVER).into()),
        (_, 0) => None,
        (0, _) => Some(say!(s::NONE_OVER_OPEN, open)),
        _ => Some(say!(s::OVER_OPEN, over, open)),
    };
    let tightest = fill_order(answer).first().copied();
    let next = tightest.filter(|at| is_over(&answer.boxes[*at])).and_then(|at| {
        let by = Volume::ZERO.minus(answer.boxes[at].spare()?);
        Some(over_by(&name_of(input, at), by.into()))
    });
    Sheet {
        headline: Figure { said, ..Figure::new("over", count, over.into()) },
        lead: None,
        next: next
            .filter(|_| answer.edition.is_verified())
            .or(less.map(|less| say!(s::NEXT_UNCOUNTED, less)))
            .or_else(|| advice(input, answer)),
        figures: figures(input, answer, tightest),
        checks,
        working: working(input, answer, tightest),
        parts: parts(input, answer),
        materials: materials(answer),
        cautions: super::RoughIn::cautions(None),
        drawing: drawing(input, answer),
    }
}

fn over_by(label: &str, by: Amount) -> Text {
    say!(s::NEXT_OVER, label, by)
}

/// How much isn't counted, and what it is, kind by kind; none where all is counted.
fn less(of: &Without) -> (i64, Option<Text>) {
    // A box without a label is told as one already.
    let named: Vec<Text> =
        of.places.iter().filter(|it| !it.is_empty()).map(|it| say!(s::AT, it.as_str())).collect();
    let kinds = [
        (&s::LESS_BOXES, of.boxes, None),
        (&s::LESS_CABLES, of.cables, None),
        (&s::LESS_ENDS, of.ends, None),
        (&s::LESS_HEIGHTS, of.heights, None),
        (&s::LESS_PLACES, named.len() as i64, some_of(named)),
        (&s::LESS_LENGTHS, of.lengths, None),
        (&s::LESS_HOLES, of.holes, None),
    ];
    let (mut all, mut told): (i64, Option<Text>) = (0, None);
    for (phrase, count, names) in kinds {
        all += count;
        if count > 0 {
            let arg = names.map_or(count.into(), Arg::from);
            let one = Text { phrase, args: vec![arg] };
            told = Some(match told {
                Some(before) => say!(s::THESE, before, one),
                None => one,
            });
        }
    }
    (all, told)
}

/// As many as are read at a glance; none of none.
fn some_of(all: Vec<Text>) -> Option<Text> {
    const READ: usize = 6;
    let more = all.len().saturating_sub(READ) as i64;
    let told = all.into_iter().take(READ).reduce(|before, one| say!(s::THESE, before, one));
    told.map(|told| if more > 0 { say!(AND_MORE, told, more) } else { told })
}

/// A box's label; of all panels the first one's.
pub(super) fn name_of(input: &Input, at: usize) -> String {
    let panel = || input.boxes.iter().find(|it| it.what == What::Panel);
    let of = input.boxes.get(at).or_else(panel);
    of.map_or("", |it| it.label.trim()).to_owned()
}

fn limit(volume: Volume) -> Limit<Volume> {
    Limit { value: volume, source: &FILL }
}

pub(super) fn is_over(state: &State) -> bool {
    state.volume.is_some_and(|volume| !is_at_most(state.fill, limit(volume)))
}

/// Boxes with the least to spare first; those whose volume isn't said behind them.
pub(super) fn fill_order(answer: &Answer) -> Vec<usize> {
    let spare = |at: usize| {
        let spare = answer.boxes[at].spare();
        (spare.is_none(), spare)
    };
    ordered(answer.boxes.len(), &|a, b| spare(a).cmp(&spare(b)))
}

/// The circuit that loses the largest share.
fn worst(answer: &Answer) -> Option<&Circuit> {
    let mut worst: Option<&Circuit> = None;
    let share = |of: &Circuit| of.worst.as_ref().map(|worst| worst.share);
    for circuit in &answer.circuits {
        if share(circuit) > worst.and_then(share) {
            worst = Some(circuit);
        }
    }
    worst
}

/// The circuit that loses most, where that is past what is advised.
fn advice(input: &Input, answer: &Answer) -> Option<Text> {
    let circuit = worst(answer)?;
    let share = circuit.worst.as_ref()?.share;
    let place = far_end(input, answer, circuit);
    let says = say!(s::LOSES, circuit.name.as_str(), share, place);
    (!is_at_most(share, OF_BRANCH)).then(|| say!(s::ADVICE_DROP, says))
}

fn figures(input: &Input, answer: &Answer, tightest: Option<usize>) -> Vec<Figure> {
    let mut all = Vec::new();
    let mut add = |key, name: Text, amount| all.push(Figure::new(key, name, amount));
    add("boxes", say!(s::COUNT_BOXES), (answer.boxes.len() as i64).into());
    add("cables", say!(s::COUNT_CABLES), (answer.cables.len() as i64).into());
    let spare = tightest.and_then(|at| Some((at, answer.boxes[at].spare()?)));
    if let Some((at, spare)) = spare {
        add("tightest", say!(s::TIGHTEST, name_of(input, at)), spare.into());
    }
    let unknown = answer.cables.iter().filter(|it| it.way.is_none()).count() as i64;
    let length = if unknown > 0 { say!(s::LENGTH_WITHOUT, unknown) } else { say!(s::LENGTH) };
    add("length", length, in_all(answer).into());
    for buy in answer.buys.iter().filter(|buy| buy.cut > Length::ZERO) {
        add(buy.kind.key(), say!(s::KIND, buy.kind.label()), buy.cut.into());
    }
    add("staples", say!(s::STAPLES), answer.staples.into());
    if let Some((circuit, worst)) = worst(answer).and_then(|it| Some((it, it.worst.as_ref()?))) {
        add("drop", say!(s::DROP_OF, circuit.name.as_str()), worst.volts.into());
        add("share", say!(s::SHARE_OF), worst.share.into());
    }
    let by_places = |(run, laid): (&Run, &Laid)| run.length == Typed::Empty && laid.way.is_some();
    if input.cables.iter().zip(&answer.cables).any(by_places) {
        add("ceiling", (&s::CEILING).into(), input.high.into());
        add("above", (&s::ABOVE).into(), input.above.into());
    }
    let mut unknown = Vec::new();
    for circuit in &answer.circuits {
        let told = named(input, answer, &circuit.unknown);
        unknown.extend(told.map(|told| say!(s::RUN_FEEDS, circuit.name.as_str(), told)));
    }
    let count = (unknown.len() as i64).into();
    if let Some(told) = some_of(unknown) {
        let figure = Figure::new("loss-unknown", (&s::LOSS_UNKNOWN).into(), count);
        all.push(Figure { said: Some(told), ..figure });
    }
    all
}

/// Cables by their ends, as many as are read at a glance; none of none.
pub(super) fn named(input: &Input, answer: &Answer, those: &[usize]) -> Option<Text> {
    some_of(those.iter().map(|at| ends(input, &input.cables[*at], &answer.cables[*at])).collect())
}

/// A box that several circuits end in: no one breaker makes it dead. A panel is where they all start.
fn several(label: &str, names: &[&str], checks: &mut Checks) {
    if let [before @ .., last] = names
        && !before.is_empty()
    {
        let why = say!(s::ASK_SEVERAL, label, before.join(", "), *last);
        let name = (say!(s::CHECK_SEVERAL, label), Asks::Minded);
        checks.none(Checks::key("circuits", label), name, names.len() as i64, (&SEVERAL, why));
    }
}

/// What comes with a list of checks.
struct Checks {
    all: Vec<Check>,
}

impl Checks {
    fn key(kind: &str, of: &str) -> String {
        [kind, "-", of].concat()
    }

    /// So many that nobody gave what belongs to them.
    fn missing(
        &mut self,
        key: &str,
        name: &'static Phrase,
        count: i64,
        why: (&'static Source, Text),
    ) {
        self.none(key.to_owned(), (name.into(), Asks::Missing), count, why);
    }

    /// So many that there ought to be none of; each asks.
    fn none(
        &mut self,
        key: String,
        (name, asks): (Text, Asks),
        count: i64,
        why: (&'static Source, Text),
    ) {
        if count > 0 {
            let check = at_most(&key, name, count, Limit { value: 0, source: why.0 });
            self.all.push(asked(check, asks, why.1));
        }
    }
}

/// The same check as something that asks, whomever.
fn asked(check: Check, asks: Asks, why: Text) -> Check {
    Check { verdict: Verdict::Ask, note: Some(why), asks, ..check }
}

/// In order, and how many boxes, circuits and holes are over.
fn checks(input: &Input, answer: &Answer, less: (i64, Option<Text>)) -> (Vec<Check>, i64) {
    let mut checks = Checks { all: Vec::new() };
    let mut over = 0;
    let mut count = |of: &[&[Check]]| {
        over += i64::from(of.concat().iter().any(|it| it.verdict == Verdict::Over));
    };
    let mut minded = Checks { all: Vec::new() };
    let circuits = circuits_by_box(answer);
    for at in fill_order(answer) {
        let first = checks.all.len();
        of_box(input, answer, at, &mut checks);
        let of = &input.boxes[at];
        if of.what != What::Panel {
            several(of.label.trim(), &circuits[at], &mut minded);
        }
        count(&[&checks.all[first..]]);
    }
    for circuit in &answer.circuits {
        let first = checks.all.len();
        of_circuit(input, answer, circuit, &mut checks);
        count(&[&checks.all[first..]]);
    }
    // What the code says stands before what is common practice.
    let mut room = Checks { all: Vec::new() };
    for hole in &answer.holes {
        let (first, tight) = (checks.all.len(), room.all.len());
        carried(answer, hole, &mut checks);
        taken(hole, &mut room);
        count(&[&checks.all[first..], &room.all[tight..]]);
    }
    checks.all.append(&mut room.all);
    if let (count, Some(less)) = less {
        let why = say!(s::ASK_UNCOUNTED, less);
        checks.missing("uncounted", &s::CHECK_UNCOUNTED, count, (&PLAN, why));
    }
    let mut those = |key, name, why: &'static Phrase, is_one: &dyn Fn(usize) -> bool| {
        let found: Vec<usize> = (0..answer.cables.len()).filter(|at| is_one(*at)).collect();
        if let Some(told) = named(input, answer, &found) {
            let why = Text { phrase: why, args: vec![told.into()] };
            checks.missing(key, name, found.len() as i64, (&PLAN, why));
        }
    };
    let is_unknown = |at: usize| answer.cables[at].way.is_none();
    let any_lost = answer.cables.iter().any(|it| it.lost);
    let why = if any_lost { &s::ASK_LENGTHS_LOST } else { &s::ASK_LENGTHS };
    those("lengths", &s::CHECK_LENGTHS, why, &is_unknown);
    let is_unnamed =
        |at: usize| input.cables[at].cable.power().is_some() && answer.cables[at].circuit.is_none();
    those("named", &s::CHECK_NAMED, &s::ASK_NAMED, &is_unnamed);
    let unplaced = unplaced(input);
    let names = unplaced.iter().map(|at| say!(s::AT, name_of(input, *at))).collect();
    if let Some(told) = some_of(names) {
        let why = (&PLAN, say!(s::ASK_PLACES, told));
        checks.missing(UNPLACED, &s::CHECK_PLACES, unplaced.len() as i64, why);
    }
    let off = off_walls(input);
    if let [first, more @ ..] = &*off {
        let why = match more.len() as i64 {
            0 => say!(s::ASK_WALL, first.told()),
            more => say!(s::ASK_WALLS, first.told(), more),
        };
        let name = ((&s::CHECK_WALLS).into(), Asks::First);
        checks.none("walls".to_owned(), name, off.len() as i64, (&WALLS, why));
    }
    let why = (&SEALED, (&s::ASK_HOLES).into());
    checks.missing("bundles", &s::CHECK_HOLES, no_hole(input, answer), why);
    checks.all.append(&mut minded.all);
    let mut all = checks.all;
    if !answer.edition.is_verified() {
        // What already says why it asks hangs on no edition's text.
        let settled = |it: Check| if it.note.is_none() { unverified(it) } else { it };
        all = all.into_iter().map(settled).collect();
    }
    for check in all.iter_mut().filter(|it| it.verdict == Verdict::Over) {
        if let Some(label) = check.key.strip_prefix("fill-") {
            check.note = Some(over_by(label, check.value.of_same(-check.margin().raw())));
        }
    }
    // A plan that is broken comes before what was not given, and what is only to be minded last.
    let open = |asks| match asks {
        Asks::First => 3,
        Asks::Locally => 2,
        Asks::Missing | Asks::Unmeasured => 1,
        Asks::Minded => 0,
    };
    let rank = |at: usize| (all[at].verdict, open(all[at].asks));
    let order = ordered(all.len(), &|a, b| rank(b).cmp(&rank(a)));
    (order.into_iter().map(|at| all[at].clone()).collect(), over)
}

/// Power cables that name no hole and leave their box with as many as would be adjusted together.
fn no_hole(input: &Input, answer: &Answer) -> i64 {
    let mut from = vec![0; answer.boxes.len()];
    for (run, laid) in input.cables.iter().zip(&answer.cables) {
        let start = if laid.forth == Some(false) { laid.to } else { Some(laid.from) };
        if let Some(start) = start.filter(|_| run.cable.power().is_some())
            && run.holes.trim().is_empty()
        {
            from[start] += 1;
        }
    }
    let most = answer.edition.or_newest(in_sealed_hole);
    let many = |count: &i64| most.is_some_and(|most| !is_at_most(*count, most));
    from.into_iter().filter(many).sum()
}

fn of_box(input: &Input, answer: &Answer, at: usize, checks: &mut Checks) {
    let (of, state) = (&input.boxes[at], &answer.boxes[at]);
    let label = of.label.trim();
    let named = |phrase: &'static Phrase| Text { phrase, args: vec![label.into()] };
    let ends = state.contents.cables() + state.signals;
    if of.what != What::Panel {
        let key = Checks::key("fill", label);
        let name = named(&s::CHECK_FILL);
        if let Some(volume) = state.volume {
            checks.all.push(at_most(&key, name, state.fill, limit(volume)));
        } else if state.contents.cables() > 0 {
            let check = at_most(&key, name, state.fill, limit(Volume::ZERO));
            checks.all.push(asked(check, Asks::Missing, (&s::ASK_VOLUME).into()));
        }
        let both = state.signals.min(state.contents.cables()).min(1) * state.signals;
        let name = (named(&s::CHECK_APART), Asks::First);
        checks.none(Checks::key("apart", label), name, both, (&APART, (&s::ASK_APART).into()));
    }
    if let Some(metal) = of.enclosure.metal().filter(|it| !it.family.gangs()) {
        let most = Limit { value: metal.family.devices(), source: &GANGS };
        if !is_at_most(of.gangs(), most) {
            let key = Checks::key("gangs", label);
            checks.all.push(at_most(&key, named(&s::CHECK_GANGS), of.gangs(), most));
        }
    }
    if ends == 0 {
        let key = Checks::key("reached", label);
        let one = Limit { value: 1, source: &PLAN };
        let check = at_least(&key, named(&s::CHECK_REACHED), 0, one);
        checks.all.push(settle(check, &s::ASK_REACHED));
    }
    let why = (&PLAN, (&s::ASK_ENDS).into());
    let name = (named(&s::CHECK_ENDS), Asks::First);
    checks.none(Checks::key("ends", label), name, state.both_ends, why);
}

fn of_circuit(input: &Input, answer: &Answer, circuit: &Circuit, checks: &mut Checks) {
    let name = circuit.name.as_str();
    let named = |phrase: &'static Phrase| Text { phrase, args: vec![name.into()] };
    let key = |kind| Checks::key(kind, name);
    let row = answer.edition.or_newest(|edition| carries(edition, circuit.thinnest));
    if let Some(row) = row {
        let title = if circuit.assumed { &s::CHECK_ASSUMED } else { &s::CHECK_BREAKER };
        let check = match row.largest {
            Some(largest) => at_most(&key("breaker"), named(title), circuit.breaker, largest),
            None => {
                let name = named(&s::CHECK_CARRIES);
                behind(&key("breaker"), name, row.at_60, circuit.breaker, &row, &AMPACITY)
            }
        };
        // What nobody read at the panel is never plain within.
        let is_plain = circuit.assumed && check.verdict == Verdict::Within;
        let note = say!(s::ASK_BREAKER, circuit.breaker);
        checks.all.push(if is_plain { asked(check, Asks::Missing, note) } else { check });
    }
    if circuit.load.millionths() > 0 {
        let most = most_fed(circuit.breaker);
        checks.all.push(at_most(&key("load"), named(&s::CHECK_LOAD), circuit.load, most));
    }
    let looped = i64::from(!circuit.looped.is_empty());
    let mut way = Vec::new();
    for at in circuit.looped.iter().chain(circuit.looped.first()) {
        way.push(name_of(input, *at));
    }
    let unfed = circuit.cables.iter().filter(|at| answer.cables[**at].forth.is_none());
    let unfed: Vec<usize> = unfed.copied().collect();
    let unfed = self::named(input, answer, &unfed).map(|told| say!(s::ASK_FED_THESE, told));
    let mut broken = |kind, name, count, why| {
        checks.none(key(kind), (named(name), Asks::First), count, (&PLAN, why));
    };
    broken("loop", &s::CHECK_LOOP, looped, say!(s::ASK_LOOP, way.join(" – ")));
    broken("fed", &s::CHECK_FED, circuit.unfed, unfed.unwrap_or((&s::ASK_FED).into()));
    broken("breakers", &s::CHECK_DIFFER, circuit.differ.into(), (&s::ASK_DIFFER).into());
    if let Some(told) = self::named(input, answer, &circuit.unknown) {
        let (count, why) = (circuit.unknown.len() as i64, (&PLAN, say!(s::ASK_LOSS, told)));
        checks.none(key("loss"), (named(&s::CHECK_LOSS), Asks::Missing), count, why);
    }
}

fn taken(hole: &Bundle, checks: &mut Checks) {
    let name = hole.label.as_str();
    let key = |kind| Checks::key(kind, name);
    if let Some(taken) = hole.taken {
        let named = || say!(s::CHECK_TAKEN, name);
        let half = at_most(&key("taken"), named(), taken, MOST_TAKEN);
        let whole = at_most(&key("taken"), named(), taken, WHOLE);
        checks.all.push(if whole.verdict == Verdict::Over {
            Check { note: Some((&s::TOO_SMALL).into()), ..whole }
        } else if half.verdict == Verdict::Over {
            asked(half, Asks::Minded, (&s::ASK_TAKEN).into())
        } else if hole.unread > 0 {
            settle(half, &s::ASK_SIZE)
        } else {
            half
        });
    }
}

/// One for each size of each circuit that falls short here; the one nearest to it where none does.
/// What a wire carries anywhere is told of its circuit, once, and not of each hole that it goes through.
fn carried(answer: &Answer, hole: &Bundle, checks: &mut Checks) {
    let label = hole.label.as_str();
    let first = checks.all.len();
    for least in &hole.least {
        let size = least.size;
        let is_told = least.circuit.is_some();
        if is_told && !hole.is_reduced {
            continue;
        }
        let circuit = least.circuit.map(|at| &answer.circuits[at].name);
        let mut key = Checks::key("carries", label);
        let is_first = checks.all.len() == first;
        if !is_first {
            let circuit = circuit.map_or("", String::as_str);
            key = [&key, circuit, size.key()].join("-");
        }
        let name = match circuit {
            Some(circuit) => say!(s::CHECK_CIRCUIT, label, size.label(), circuit.as_str()),
            None => say!(s::CHECK_HOLE, label, size.label()),
        };
        let (here, breaker) = (least.here, least.breaker);
        let check = behind(&key, name, here, breaker, &least.carries, hole.by);
        let is_within = check.verdict == Verdict::Within;
        let is_slip = is_told && !is_within && least.here >= least.carries.at_60;
        if !is_slip && (is_first || !is_within) {
            checks.all.push(check);
        }
    }
}

fn working(input: &Input, answer: &Answer, tightest: Option<usize>) -> Vec<Step> {
    let mut all = Vec::new();
    let mut step = |key: &str, name: Text, expr: Expr, source| {
        all.push(Step { key: key.to_owned(), name, expr, source: Some(source) });
    };
    if let Some(at) = tightest.filter(|at| answer.boxes[*at].volume.is_some()) {
        let contents = answer.boxes[at].contents;
        let (edition, count) = (answer.edition, contents.cables());
        if let Some((how, source)) = edition.or_newest(grounds).filter(|_| count > 0) {
            let phrase = match how {
                Grounds::OneForAll => &s::GROUNDS_ALL,
                Grounds::QuarterPast { free, .. } if count <= free => &s::GROUNDS_FOUR,
                Grounds::QuarterPast { .. } => &s::GROUNDS_PAST,
            };
            let name = Text { phrase, args: vec![name_of(input, at).into(), count.into()] };
            step("grounds", name, contents.of_grounds(edition), source);
        }
        step("fill", say!(s::FILL_OF, name_of(input, at)), contents.expr(edition), &FILL);
    }
    for (at, (run, laid)) in input.cables.iter().zip(&answer.cables).enumerate() {
        if let (Some(way), Some(lies), Some(cut)) = (laid.way, laid.laid, laid.cut) {
            let parts = [way, cut.minus(lies), lies.minus(way)].map(Expr::length);
            let key = ["cut-", &(at + 1).to_string()].concat();
            let name = say!(s::CUT_OF, ends(input, run, laid));
            step(&key, name, Expr::Sum(parts.into()), &ALLOWANCES);
        }
    }
    let cuts: Vec<Expr> = answer.buys.iter().map(|buy| Expr::length(buy.cut)).collect();
    if !cuts.is_empty() {
        step("length", say!(s::LENGTH), Expr::Sum(cuts), &ALLOWANCES);
        step("staples", say!(s::STAPLES), Expr::count(answer.staples), &SPACING);
        for (key, name, end) in [
            ("staple-clamped", &s::STAPLE_CLAMPED, End::Clamped),
            ("staple-single", &s::STAPLE_SINGLE, End::Single),
        ] {
            let ends = |of: &PlacedBox| super::graph::end(of) == end;
            let limit = answer.edition.or_newest(|edition| from_box(edition, end));
            if let Some(limit) = limit.filter(|_| input.boxes.iter().any(ends)) {
                step(key, name.into(), Expr::length(limit.value), limit.source);
            }
        }
    }
    let Some((circuit, worst)) = worst(answer).and_then(|it| Some((it, it.worst.as_ref()?))) else {
        return all;
    };
    let mut parts = Vec::new();
    for (at, current) in &worst.path {
        let size = input.cables[*at].cable.power().map(|cable| cable.conductors().0);
        let ohms = size.and_then(|size| resistance(size, of_cable(size)));
        if let (Some(ohms), Some(long)) = (ohms, answer.cables[*at].laid) {
            parts.push(lost(long, *current, ohms, Heat::At75));
        }
    }
    let drop = Expr::Sum(parts).told_in(&VOLT);
    step("drop", say!(s::DROP_OF, circuit.name.as_str()), drop, &RESISTANCE);
    let last = worst.path.last().map(|(at, _)| input.cables[*at].volts).unwrap_or_default();
    let supply = Expr::measure(Measure::whole(&VOLT, super::circuits::volts(last)));
    let share = Expr::measure(worst.volts).over(supply).told_in(&PERCENT);
    step("share", say!(s::SHARE_OF), share, &ADVICE);
    all
}

fn materials(answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    for buy in &answer.buys {
        let name = material(buy.kind);
        // By the roll, as the plan picks them: only it knows which pieces have to stay whole.
        for (long, count) in &buy.rolls {
            let key = ["cable-roll ", buy.kind.key(), " ", &long.exact()].concat();
            let name = say!(s::M_ROLL, name.clone(), *long);
            all.push(Material { key, name, amount: (*count).into() });
        }
        if buy.rolls.is_empty() && buy.cut > Length::ZERO {
            let key = ["cable ", buy.kind.key()].concat();
            all.push(Material { key, name, amount: buy.cut.into() });
        }
    }
    if answer.staples > 0 {
        let (key, amount) = ("staple".to_owned(), Amount::Count(answer.staples));
        all.push(Material { key, name: (&s::M_STAPLE).into(), amount });
    }
    all
}
