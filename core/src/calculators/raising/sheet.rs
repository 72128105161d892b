//! The answer as it is shown. Every figure has a key that never changes: other marks link to them.

use super::Calculator;
use super::drawing::drawing;
use super::shown as s;
use super::walls::ceiling;
use super::working::working;
use super::{Answer, Carries, Input, Made, Room, Vault, Walls, is_stopped};
use crate::measure::{Area, Length};
use crate::rules::compare::{Limit, ask, at_least, at_most};
use crate::rules::electrical::fan_boxes::FAN_BOXES;
use crate::rules::framing::board_sheets::WIDTHS;
use crate::rules::framing::door_head::HEADER;
use crate::rules::framing::one_piece::JOINTS;
use crate::rules::framing::overhead::Overhead;
use crate::rules::framing::stud_height::{BEARING, PARTITION};
use crate::rules::residential::attic::ATTIC;
use crate::rules::residential::ceiling_height::{
    ANY_ROOM, BEAM, HALF_REQUIRED, LIVED_IN, REQUIRED, half_counted,
};
use crate::rules::residential::fan_blades::BLADES;
use crate::rules::residential::fireblocking::CEILING_LINE;
use crate::rules::residential::smoke_alarms::SMOKE_ALARMS;
use crate::say;
use crate::sheet::{Check, Figure, Material, Part, PartRow, Sheet, Source, Verdict};
use crate::words::{Amount, Phrase, Text};

pub(super) fn sheet(input: &Input, answer: &Answer) -> Sheet {
    let stopped = is_stopped(input);
    let headline = match &answer.made {
        _ if stopped => Figure::plain("height-change", &s::HIGHER, answer.higher.into()),
        Made::Flat(Walls { cripple: Some(cripple), .. }) => {
            Figure::plain("cripple", &s::CRIPPLE, (*cripple).into())
        }
        Made::Flat(walls) => Figure::plain("stud", &s::STUD, walls.stud.into()),
        _ => Figure::plain("ceiling-board", &s::BOARD, answer.board.into()),
    };
    let next = match input.overhead {
        Overhead::Trusses => Some((&s::STOP_TRUSSES).into()),
        Overhead::Unknown => Some((&s::STOP_UNKNOWN).into()),
        _ => None,
    };
    Sheet {
        headline,
        lead: None,
        next,
        figures: figures(answer, stopped),
        checks: checks(input, answer),
        working: working(input, answer),
        parts: parts(answer, stopped),
        materials: if stopped { Vec::new() } else { materials(answer) },
        cautions: super::Raising::cautions(None),
        drawing: Some(drawing(input, answer)),
    }
}

/// The figures as they come together: one way in, so that the page carries it once.
struct Figures(Vec<Figure>);

impl Figures {
    fn add(&mut self, key: &'static str, name: &'static Phrase, amount: Amount) {
        self.0.push(Figure::plain(key, name, amount));
    }

    fn length(&mut self, key: &'static str, name: &'static Phrase, length: Length) {
        self.add(key, name, Amount::Length(length));
    }

    fn area(&mut self, key: &'static str, name: &'static Phrase, area: Area) {
        self.add(key, name, Amount::Area(area));
    }
}

fn figures(answer: &Answer, stopped: bool) -> Vec<Figure> {
    let mut all = Figures(Vec::new());
    all.length("height-now", &s::NOW, answer.now);
    let to_be = if matches!(answer.made, Made::Vault(_)) { &s::HIGHEST } else { &s::TO_BE };
    all.length("height-to-be", to_be, answer.highest);
    // The headline has its own place.
    match (stopped, &answer.made) {
        (false, _) => all.length("height-change", &s::HIGHER, answer.higher),
        (true, Made::Flat(_)) => {}
        (true, _) => all.area("ceiling-board", &s::BOARD, answer.board),
    }
    all.length("framing-now", &s::FRAMING, answer.framing);
    let air = match &answer.made {
        Made::Flat(walls) => {
            all.length("framing-to-be", &s::FRAMING_TO_BE, walls.framing);
            all.length("raise", &s::RAISE, walls.raise);
            if stopped {
                // Nothing is cut.
            } else if walls.cripple.is_some() {
                all.length("stud", &s::WHOLE_STUD, walls.stud);
            } else {
                let sold = if walls.precut { &s::PRECUT } else { &s::BY_THE_FOOT };
                all.length("sold", sold, walls.sold);
                all.length("cut-off", &s::CUT_OFF, walls.sold.minus(walls.stud));
            }
            if !stopped {
                all.add("studs", &s::STUDS, Amount::Count(walls.studs));
            }
            all.length("perimeter", &s::PERIMETER, walls.perimeter);
            all.area("infill", &s::INFILL, answer.upright);
            all.area("ceiling-board", &s::BOARD, answer.board);
            &s::AIR
        }
        Made::Tray(tray) => {
            all.length("tray-long", &s::TRAY_LONG, tray.mouth[0]);
            all.length("tray-wide", &s::TRAY_WIDE, tray.mouth[1]);
            all.length("lid-long", &s::LID_LONG, tray.lid[0]);
            all.length("lid-wide", &s::LID_WIDE, tray.lid[1]);
            all.length("slant", &s::SLANT, tray.slant);
            all.area("opening", &s::OPENING, tray.opening);
            all.area("lid", &s::TOP, tray.top);
            all.area("tray-sides", &s::SIDES, tray.sides);
            &s::AIR_TRAY
        }
        Made::Vault(vault) => {
            all.length("rise", &s::RISE, vault.rise);
            all.length("slant", &s::SLOPE, vault.slant);
            all.area("ends", &s::ENDS, vault.ends);
            if vault.high_wall > Area::ZERO {
                all.area("high-wall", &s::HIGH_WALL, vault.high_wall);
                all.area("infill", &s::UPRIGHT, answer.upright);
            }
            all.length("strip-5", &s::STRIP_5, vault.strip_5);
            all.length("strip-7", &s::STRIP_7, vault.strip_7);
            all.area("counted", &s::COUNTED, vault.counted);
            all.area("full", &s::FULL, vault.full);
            if let Some(share) = vault.share() {
                all.add("full-share", &s::FULL_SHARE, Amount::Measure(share));
            }
            &s::AIR
        }
    };
    all.area("floor", &s::FLOOR, answer.floor);
    all.add("air-added", air, Amount::Room(answer.air));
    all.0
}

/// The same check, asking where it would be over.
fn or_ask(check: Check, why: &'static Phrase) -> Check {
    if check.verdict == Verdict::Over { ask(check, why) } else { check }
}

fn checks(input: &Input, answer: &Answer) -> Vec<Check> {
    let limit = match input.room {
        Room::LivedIn => LIVED_IN,
        Room::Bath => ANY_ROOM,
    };
    let high = |name: &'static Phrase, height| at_least("height", name.into(), height, limit);
    let joint = |why| ask(at_most("joint", (&s::CHECK_JOINT).into(), 1_i64, JOINTS), why);
    // What holds the house up comes first.
    let mut all = vec![overhead(input, answer)];
    match &answer.made {
        Made::Flat(walls) => {
            all.push(high(&s::CHECK_HEIGHT, answer.highest));
            let partition = input.wall.carries == Carries::Nothing;
            // A short wall has no stud of that height: its joint is what is asked about. Nor has
            // what isn't cut.
            if walls.cripple.is_some() {
                all.push(joint(if partition { &s::ASK_PARTITION } else { &s::ASK_JOINT }));
            } else if !is_stopped(input) {
                let tall = if partition { PARTITION } else { BEARING };
                let tall = at_most("stud-height", (&s::CHECK_STUD).into(), walls.stud, tall);
                all.push(or_ask(tall, &s::ASK_STUD));
            }
        }
        Made::Tray(_) => all.push(or_ask(high(&s::CHECK_BORDER, answer.now), &s::ASK_BORDER)),
        Made::Vault(vault) => {
            match input.room {
                Room::LivedIn => sloped(vault, &mut all),
                Room::Bath => all.push(or_ask(high(&s::CHECK_LOW, answer.now), &s::ASK_LOW)),
            }
            all.push(joint(&s::ASK_GABLE));
        }
    }
    clear(input, answer, limit, &mut all);
    all
}

/// Who may move what is over the ceiling.
fn overhead(input: &Input, answer: &Answer) -> Check {
    let moved = match &answer.made {
        Made::Flat(walls) => walls.raise,
        _ => answer.higher,
    };
    let name = (&s::CHECK_OVERHEAD).into();
    let check = at_most("overhead", name, moved, input.overhead.moved());
    let why = match (input.overhead, &answer.made) {
        (Overhead::Trusses, _) => return check,
        (Overhead::Unknown, _) => &s::ASK_UNKNOWN,
        (Overhead::Sticks, Made::Vault(_)) => &s::ASK_TIES,
        (Overhead::Sticks, _) => &s::ASK_STICKS,
        (Overhead::Story, _) => &s::ASK_STORY,
    };
    ask(check, why)
}

/// Both readings of half of the floor, and the floor itself.
fn sloped(vault: &Vault, all: &mut Vec<Check>) {
    let area = |key, name: &'static Phrase, value, limit| at_least(key, name.into(), value, limit);
    let room = area("sloped-floor", &s::CHECK_ROOM, vault.counted, REQUIRED);
    let is_small = room.verdict == Verdict::Over;
    let required = area("sloped-required", &s::CHECK_REQUIRED, vault.full, HALF_REQUIRED);
    let limit = half_counted(vault.counted);
    let counted = area("sloped-counted", &s::CHECK_COUNTED, vault.full, limit);
    let literal = required.verdict;
    all.push(or_ask(room, &s::ASK_SMALL));
    all.push(if is_small { or_ask(required, &s::ASK_SMALL) } else { required });
    all.push(match literal {
        Verdict::Over if is_small => or_ask(counted, &s::ASK_SMALL),
        Verdict::Over => counted,
        _ => or_ask(counted, &s::ASK_READING),
    });
}

/// What hangs or stands in the way.
fn clear(input: &Input, answer: &Answer, limit: Limit<Length>, all: &mut Vec<Check>) {
    let clear = &input.clear;
    // One slope is high where no fan hangs: the middle counts.
    let hung = match &answer.made {
        Made::Vault(vault) if vault.slopes == 1 => answer.now.plus(vault.rise.part(2)),
        _ => answer.highest,
    };
    if let Some(drop) = clear.fan {
        let blades = at_least("fan", (&s::CHECK_FAN).into(), hung.minus(drop), BLADES);
        all.push(or_ask(blades, &s::ASK_FAN));
    }
    if let Some(beam) = clear.beam {
        let name = || Text::from(&s::CHECK_BEAM);
        let least = at_least("beam", name(), beam, BEAM);
        let room = at_least("beam", name(), beam, limit);
        all.push(match least.verdict {
            Verdict::Over => least,
            _ => or_ask(room, &s::ASK_BEAM),
        });
    }
    if let Some(door) = clear.door {
        let head = at_least("door", (&s::CHECK_DOOR).into(), door, HEADER);
        all.push(or_ask(head, &s::ASK_DOOR));
    }
}

fn parts(answer: &Answer, stopped: bool) -> Vec<Part> {
    let read = |name: Text, value: Text| PartRow { name, value, puts: Vec::new() };
    let mut all = Vec::new();
    if matches!(answer.made, Made::Flat(_)) && !stopped {
        let mut rows = Vec::new();
        for width in WIDTHS {
            rows.push(read(say!(s::WIDE, width), seams(answer.highest, width)));
        }
        all.push(Part::plain("sheets", &s::SHEETS, Some(&s::SHEETS_NOTE), rows));
    }
    let blocks = match answer.made {
        Made::Flat(_) => &s::BLOCKS_FLAT,
        Made::Tray(_) => &s::BLOCKS_TRAY,
        Made::Vault(_) => &s::BLOCKS_VAULT,
    };
    let mut rows = Vec::new();
    let told: [(&'static Phrase, &'static Phrase, Option<&'static Source>); 9] = [
        (&s::BLOCKS, blocks, Some(&CEILING_LINE)),
        (&s::LIGHTS, &s::LIGHTS_WHY, None),
        (&s::FAN_BOX, FAN_BOXES.says, Some(&FAN_BOXES)),
        (&s::ALARMS, &s::ALARMS_WHY, Some(&SMOKE_ALARMS)),
        (&s::DUCTS, &s::DUCTS_WHY, None),
        (&s::WIRES, &s::WIRES_WHY, None),
        (&s::VENTS, &s::VENTS_WHY, None),
        (&s::INSULATION, ATTIC.says, Some(&ATTIC)),
        (&s::HEADERS, &s::HEADERS_WHY, None),
    ];
    for (name, why, source) in told {
        let said = match source {
            None => say!(s::MOVED, name, why),
            Some(source) => {
                say!(s::MOVED_BY, name, why, &source.clause, source.confidence.words())
            }
        };
        // Whole sentences: there is no figure beside them.
        rows.push(read(said, (&s::NOTHING).into()));
    }
    all.push(Part::plain("moves", &s::MOVES, Some(&s::MOVES_NOTE), rows));
    all
}

/// How many rows of sheets a wall takes, and where the seams between them land.
fn seams(height: Length, width: Length) -> Text {
    let rows = ceiling(height, width);
    let mut said: Option<Text> = None;
    for row in 1..rows {
        let seam = height.minus(width.times(row));
        said = Some(match said {
            None => say!(s::ONE, seam),
            Some(said) => say!(s::AND, said, seam),
        });
    }
    match said {
        None => say!(s::ROWS_NONE, rows),
        Some(said) => say!(s::ROWS, rows, said),
    }
}

fn materials(answer: &Answer) -> Vec<Material> {
    let mut all = Vec::new();
    let mut add = |key: &str, name: Text, amount: Amount| {
        all.push(Material { key: key.to_owned(), name, amount });
    };
    match &answer.made {
        Made::Flat(walls) => {
            let cut = walls.cut();
            let stud = if walls.cripple.is_some() { &s::M_CRIPPLE } else { &s::M_STUD };
            let key = ["stud ", &cut.exact()].concat();
            add(&key, Text { phrase: stud, args: vec![cut.into()] }, Amount::Count(walls.studs));
            add("plate", (&s::M_PLATE).into(), walls.perimeter.times(walls.plates).into());
            if walls.blocks > 0 {
                let blocks = walls.perimeter.times(walls.blocks);
                add("fireblock", (&s::M_BLOCK).into(), blocks.into());
            }
            add("wall-board", (&s::M_WALL_BOARD).into(), answer.upright.into());
        }
        Made::Tray(tray) => {
            let around = tray.mouth[0].plus(tray.mouth[1]).times(2);
            add("fireblock", (&s::M_BLOCK).into(), around.into());
        }
        Made::Vault(_) => add("wall-board", (&s::M_WALL_BOARD).into(), answer.upright.into()),
    }
    add("ceiling-board", (&s::M_BOARD).into(), answer.board.into());
    all
}
