use super::*;
use crate::catalog;
use crate::job::samples::stamp;
use crate::job::{Edit, Mark, Tie, apply, record};
use crate::wire::Node;
use crate::words::{Language, Voice};
use proptest::prelude::*;

fn mark(calculator: &str, puts: &[(&str, &str)], step: u64) -> Mark {
    let entry = catalog::find(calculator).unwrap();
    let mut input = entry.sample();
    for (path, value) in puts {
        input.put(path, Node::text(value));
    }
    let mark = Mark::new(entry, &input, Units::Customary, <_>::default(), None, &stamp(step));
    let title = [calculator, " ", &step.to_string()].concat();
    Mark { title, spot: "Den".into(), ..mark.unwrap() }
}

fn job(marks: Vec<Mark>) -> Job {
    let mut job = Job::new("Invented", "", &stamp(0)).unwrap();
    for (mark, step) in marks.into_iter().zip(20..) {
        apply(&mut job, Edit::Keep(mark), &stamp(step)).unwrap();
    }
    job
}

fn say(job: &mut Job, about: About<'_>, key: &str, says: &str) {
    let edit = Edit::Jot { key: said_of(about, key), says: says.into() };
    apply(job, edit, &stamp(50)).unwrap();
}

fn bought(job: &Job) -> Buying {
    buying(job, &Survey::of(job))
}

fn line(job: &Job, key: &str) -> Line {
    bought(job).lines.into_iter().find(|line| line.key == key).unwrap()
}

fn says(line: &Line) -> String {
    Voice::default().say(&line.says())
}

/// 30 ft from box to box: staples at 12 in from each and every 54 in, `1 + ceil(336/54)` = 8.
const RUN: &[(&str, &str)] = &[("run", "30 ft")];
/// A wall of so many square feet, finished once.
fn skim(area: &str, step: u64) -> Mark {
    mark("paint", &[("area", area)], step)
}

#[test]
fn the_same_thing_from_two_marks_is_one_line_with_both_shares() {
    let job =
        job(vec![mark("cable-securing", RUN, 1), mark("cable-securing", &[("run", "12 ft")], 2)]);
    let line = line(&job, "staple");
    let asked: Vec<i128> = line.shares.iter().map(|share| share.asks.raw()).collect();
    assert_eq!(line.needs.raw(), asked.iter().sum::<i128>());
    assert_eq!(line.shares.len(), 2);
    assert_eq!(line.buys, line.needs);
    assert_eq!(line.trade, Trade::RoughIn);
}

/// Two rooms whose paint comes to parts of a gallon: the parts are added before they are rounded.
#[test]
fn parts_of_a_can_are_added_before_they_are_rounded() {
    let (one, other) = (skim("150 sq ft", 1), skim("130 sq ft", 2));
    let alone = |mark: &Mark| line(&job(vec![mark.clone()]), "primer").buys.raw();
    assert_eq!((alone(&one), alone(&other)), (1, 1), "a can for each by itself");
    let both = line(&job(vec![one, other]), "primer");
    let need = both.needs.raw();
    assert_eq!(both.buys.raw(), (need + 999_999) / 1_000_000, "gallons: {need}");
    assert_eq!(says(&both), ["", "1 × can of 1 gal", "2 × can of 1 gal"][both.buys.raw() as usize]);
}

#[test]
fn a_spare_a_package_and_a_price_are_a_persons_own() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    let need = line(&job, "staple").needs.raw();
    say(&mut job, About::Spare, "", "10");
    let all = line(&job, "staple");
    assert_eq!(all.in_all.raw(), (need * 110 + 99) / 100, "of all as of this: up");
    say(&mut job, About::Spare, "staple", "50 %");
    say(&mut job, About::Pack, "staple", "5");
    say(&mut job, About::Price, "staple", "1.25");
    let own = line(&job, "staple");
    let in_all = (need * 150 + 99) / 100;
    assert_eq!(own.in_all.raw(), in_all);
    assert_eq!(own.buys.raw(), (in_all + 4) / 5);
    assert!(own.pack.as_ref().unwrap().is_own);
    assert_eq!(own.cost.unwrap().number(), 1.25 * own.buys.raw() as f64);
    assert_eq!(bought(&job).still(), Sum { cost: own.cost, unpriced: 0 });
    for (about, nonsense) in [(About::Spare, "x"), (About::Pack, "0"), (About::Price, "-1")] {
        say(&mut job, about, "staple", nonsense);
    }
    let back = line(&job, "staple");
    assert_eq!((back.in_all, back.pack, back.price), (all.in_all, None, None), "as if not said");
}

#[test]
fn what_is_needed_is_told_only_where_it_is_not_what_is_bought() {
    let mut job = job(vec![mark("cable-securing", RUN, 1), skim("150 sq ft", 2)]);
    assert!(line(&job, "staple").is_as_needed(), "8 staples are 8 staples");
    assert!(!line(&job, "primer").is_as_needed(), "a can is more than what is needed of it");
    say(&mut job, About::Spare, "staple", "50");
    assert!(!line(&job, "staple").is_as_needed());
    say(&mut job, About::Spare, "staple", "0");
    say(&mut job, About::Pack, "staple", "4");
    assert!(!line(&job, "staple").is_as_needed(), "two packages");
}

#[test]
fn what_was_ticked_asks_for_more_when_the_job_does() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    let first = line(&job, "staple");
    say(&mut job, About::Got, "staple", &first.buys.exact());
    let got = line(&job, "staple");
    assert!(got.is_got());
    assert_eq!((got.more(), got.got.unwrap().at), (None, stamp(50).moment()));
    apply(&mut job, Edit::Keep(mark("cable-securing", RUN, 3)), &stamp(60)).unwrap();
    let more = line(&job, "staple");
    assert!(!more.is_got());
    assert_eq!(more.more(), Some(first.buys), "as much again");
}

#[test]
fn a_share_can_be_left_out_and_comes_back() {
    let mut job = job(vec![mark("cable-securing", RUN, 1), mark("cable-securing", RUN, 2)]);
    let before = line(&job, "staple");
    let out = before.shares[0].mark.clone();
    say(&mut job, About::Share(&out), "staple", LEFT_OUT);
    let less = line(&job, "staple");
    assert_eq!(less.needs, before.shares[1].asks);
    assert_eq!(less.shares[0].counts, Counts::LeftOut);
    assert!(reason(&job, &less.shares[0]).is_some());
    say(&mut job, About::Share(&out), "staple", "");
    assert_eq!(line(&job, "staple"), before);
}

#[test]
fn a_sample_is_bought_only_if_a_person_says_so() {
    let sample = mark("cable-securing", &[], 1);
    let mut job = job(vec![sample.clone(), mark("cable-securing", RUN, 2)]);
    let before = line(&job, "staple");
    assert_eq!(before.shares[0].counts, Counts::Sample);
    assert_eq!(before.needs, before.shares[1].asks);
    say(&mut job, About::Share(&sample.id), "staple", COUNTED);
    let all: i128 = before.shares.iter().map(|share| share.asks.raw()).sum();
    assert_eq!(line(&job, "staple").needs.raw(), all);
}

/// Somebody's own number may be the sample's, word for word.
#[test]
fn a_sample_that_is_said_to_be_ones_own_is_bought() {
    let sample = mark("cable-securing", &[], 1);
    let mut job = job(vec![sample.clone()]);
    assert_eq!(line(&job, "staple").shares[0].counts, Counts::Sample);
    let own = job.note_sample(&sample.id, &[], true).unwrap();
    crate::job::apply(&mut job, own, &stamp(9)).unwrap();
    assert_eq!(line(&job, "staple").shares[0].counts, Counts::Whole);
}

#[test]
fn a_mark_that_can_not_be_worked_is_named() {
    let stale = Mark { version: 9, ..mark("cable-securing", RUN, 1) };
    let job = job(vec![stale.clone()]);
    assert_eq!(bought(&job).missing, [stale.id]);
}

/// A plan for old material that nothing has opened stays out of sight, and so do its materials: the
/// mark is named, so that nobody takes the list for whole.
#[test]
fn a_mark_whose_plan_is_withheld_is_named() {
    let strip = mark("stripping", &[], 1);
    let job = job(vec![strip.clone(), mark("cable-securing", RUN, 2)]);
    let all = bought(&job);
    assert_eq!(all.held, [strip.title]);
    assert!(all.missing.is_empty() && all.lines.iter().all(|line| line.key == "staple"));
}

/// Two phones changed one number: what is in use is bought once, and the other is told of.
#[test]
fn another_version_of_a_number_is_not_bought_beside_it() {
    let used = mark("cable-securing", RUN, 1);
    let other = Mark {
        title: crate::job::merge::other_title(&used.title),
        ..mark("cable-securing", &[("run", "60 ft")], 2)
    };
    let alone = line(&job(vec![used.clone()]), "staple");
    let mut job = job(vec![used.clone(), other.clone()]);
    let both = line(&job, "staple");
    assert_eq!(both.needs, alone.needs);
    let counts = |line: &Line| line.shares.iter().map(|it| it.counts.clone()).collect::<Vec<_>>();
    assert_eq!(counts(&both), [Counts::Whole, Counts::OtherVersion]);
    let told = list(&job, &bought(&job), Voice::default());
    assert!(told.contains("Two versions wait for a choice: cable-securing 1."), "{told}");
    // Unless a person says so, or gives it a name of its own.
    say(&mut job, About::Share(&other.id), "staple", COUNTED);
    assert!(line(&job, "staple").needs.raw() > alone.needs.raw());
    say(&mut job, About::Share(&other.id), "staple", "");
    let named = Mark { title: "Cable, upstairs".into(), ..other };
    apply(&mut job, Edit::Change(named), &stamp(60)).unwrap();
    assert!(line(&job, "staple").needs.raw() > alone.needs.raw());
    assert!(bought(&job).versions.is_empty());
}

/// Work on old material is held until a hold opens it: what it needs may be bought, with a word about it.
#[test]
fn what_is_counted_of_held_work_is_told() {
    let skim = mark("skim-coat", &[("area", "150 sq ft")], 1);
    let job = job(vec![skim.clone()]);
    let all = bought(&job);
    assert!(all.lines.iter().any(|line| line.is_counted() && line.shares[0].is_held));
    assert_eq!(all.on_hold, [&*skim.title]);
    let told = list(&job, &all, Voice::default());
    assert!(told.contains("Counted, though this work is held"), "{told}");
}

#[test]
fn what_is_unlike_its_room_is_told_where_it_is_bought_for() {
    let room = mark("room", &[("height", "8 ft"), ("height_to_be", "9 ft 2 in")], 1);
    let room = Mark { title: "Den".into(), ..room };
    let plan = mark("rough-in", &[("high", "8 ft 6 in")], 2);
    let job = job(vec![room, plan]);
    let told = list(&job, &bought(&job), Voice::default());
    let says = "rough-in 2, Finished ceiling: 8 ft 6 in here. Ceiling height to be in Den: \
                9 ft 2 in, not taken from there.";
    assert!(told.contains(says), "{told}");
}

#[test]
fn a_text_to_send_leaves_out_what_is_there() {
    let mut job = job(vec![mark("cable-securing", RUN, 1), skim("150 sq ft", 2)]);
    let told = |job: &Job| list(job, &bought(job), Voice::default());
    let before = told(&job);
    assert!(before.starts_with("To buy for Invented\n\nBoxes and cables\n- "), "{before}");
    assert!(before.contains(": 1 × can of 1 gal"), "{before}");
    let staples = line(&job, "staple").buys.exact();
    say(&mut job, About::Got, "staple", &staples);
    assert!(!told(&job).contains("Boxes and cables"));
}

#[test]
fn what_is_typed_is_read_in_the_kind_of_what_it_is_about() {
    let feet = |feet: i64| Amount::Length(Length::inches(12 * feet, 1));
    let gallon = Amount::Measure(Measure::whole(&crate::measure::unit::GALLON, 1));
    assert_eq!(read_like("250", feet(1)), Some(feet(250)), "bare digits are feet");
    assert_eq!(read_like(" 50 ft ", feet(1)), Some(feet(50)));
    assert_eq!(read_like("5", gallon), Some(gallon.of_same(5_000_000)));
    assert_eq!(read_like("", feet(1)), None);
    assert_eq!(read_like("many", Amount::Count(1)), None);
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// Whatever the order in which marks are made, the same is bought; and never less than needed,
    /// nor a package more.
    #[test]
    fn the_sum_is_free_of_order_and_rounded_once(
        feet in proptest::collection::vec(1_u32..200, 1..5), pack in 1_i64..40, spare in 0_u32..30,
    ) {
        let made = |turned: bool| {
            let run = |(at, feet): (usize, &u32)| {
                let step = if turned { 9 - at as u64 } else { at as u64 };
                mark("cable-securing", &[("run", &[&feet.to_string(), " ft"].concat())], step)
            };
            let mut job = job(feet.iter().enumerate().map(run).collect());
            say(&mut job, About::Pack, "staple", &pack.to_string());
            say(&mut job, About::Spare, "staple", &spare.to_string());
            line(&job, "staple")
        };
        let (one, other) = (made(false), made(true));
        prop_assert_eq!((one.needs, one.buys), (other.needs, other.buys));
        let alone: i128 = one.shares.iter().map(|share| share.asks.raw()).sum();
        prop_assert_eq!(one.needs.raw(), alone);
        let holds = one.buys.raw() * i128::from(pack);
        prop_assert!(100 * (holds + 1) > alone * i128::from(100 + spare));
        prop_assert!(holds - i128::from(pack) < one.in_all.raw());
    }
}

fn told(job: &Job) -> String {
    list(job, &bought(job), Voice::default())
}

/// 52 studs and a tenth are 57.2, of which a shop sells 58; three boards and a tenth are four.
#[test]
fn a_spare_of_all_adds_to_what_is_counted_one_by_one() {
    let raised = mark("raising", &[("overhead", "sticks")], 1);
    let mut job = job(vec![raised, mark("boards", &[("long", "12 ft 1 in")], 2)]);
    let before = bought(&job);
    say(&mut job, About::Spare, "", "10");
    let mut looked_at = 0;
    for (line, was) in bought(&job).lines.iter().zip(&before.lines) {
        if let (Amount::Count(needs), Amount::Count(in_all)) = (line.needs, line.in_all) {
            assert_eq!(in_all, needs + (needs + 9) / 10, "{}", line.key);
            assert!(line.spare.millionths() > 0 && line.buys.raw() > was.buys.raw());
            looked_at += 1;
        }
    }
    assert!(looked_at > 2, "studs, boards and screws");
}

proptest! {
    #![proptest_config(ProptestConfig::with_cases(60))]

    /// Never less than asked with its spare, never a whole one more, and more spare buys no less: of
    /// what is counted, poured and cut off a roll, whether the spare is of all or of this.
    #[test]
    fn a_spare_is_rounded_up_once_and_grows(
        feet in 1_u32..200, area in 1_u32..2000, spare in 0_u32..100, of_this: bool,
    ) {
        let marks = vec![
            mark("cable-securing", &[("run", &format!("{feet} ft"))], 1),
            skim(&format!("{area} sq ft"), 2),
            mark("cable-run", &[("across", &format!("{feet} ft"))], 3),
        ];
        let mut job = job(marks);
        let keys: Vec<String> = bought(&job).lines.into_iter().map(|line| line.key).collect();
        let mut with = |spare: u32| {
            for key in keys.iter().map(String::as_str).filter(|_| of_this).chain([""]) {
                say(&mut job, About::Spare, key, &spare.to_string());
            }
            bought(&job).lines
        };
        let (less, more) = (with(spare), with(spare + 1));
        prop_assert!(less.len() > 2);
        for (line, next) in less.iter().zip(&more) {
            let one = line.pack.as_ref().map_or(whole_one(line.buys), |pack| pack.holds.raw());
            let has = line.buys.raw() / if line.pack.is_some() { 1 } else { one } * one;
            let asked = line.needs.raw() * i128::from(100 + spare);
            prop_assert!(100 * has >= asked, "{}: {} of {}", line.key, has, asked);
            prop_assert!(100 * (has - one) < asked, "{}: {} of {}", line.key, has, asked);
            prop_assert!(next.in_all.raw() >= line.in_all.raw());
        }
    }
}

/// What nobody can read stays in its field, and is no price; what was said before doesn't count for it.
#[test]
fn a_price_that_can_not_be_read_is_kept_and_counts_as_none() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    let field = |job: &Job| in_field(job, About::Price, "staple").to_owned();
    let type_in = |job: &mut Job, typed: &str| {
        let is_read = typed.is_empty() || read_price(typed).is_ok();
        let edit = typed_in(job, About::Price, "staple", typed, is_read);
        apply(job, edit, &stamp(50)).unwrap()
    };
    let price = |job: &Job| line(job, "staple").price.map(|price| price.exact());
    assert_eq!((field(&job), price(&job)), (String::new(), None));
    type_in(&mut job, "cheap");
    assert_eq!((&*field(&job), price(&job)), ("cheap", None));
    type_in(&mut job, "18.49");
    assert_eq!((&*field(&job), price(&job)), ("18.49", Some("18.49 $".into())));
    assert!(!is_unread(&job, About::Price, "staple"));
    let undo = type_in(&mut job, "12 or so");
    assert_eq!(field(&job), "12 or so");
    assert!(is_unread(&job, About::Price, "staple"));
    assert!(!is_unread(&job, About::Pack, "staple"));
    assert_eq!(price(&job), None, "the price before is another");
    // Kept with the job.
    let head = record::Head::new(1, "phone", 0);
    let (_, kept) = record::read(&record::write(&job, &head)).unwrap();
    assert_eq!(field(&kept), "12 or so");
    apply(&mut job, undo, &stamp(51)).unwrap();
    assert_eq!((&*field(&job), price(&job)), ("18.49", Some("18.49 $".into())));
    type_in(&mut job, "12 or so");
    type_in(&mut job, "");
    assert_eq!((field(&job), price(&job)), (String::new(), None));
}

/// Three at $18.49 are $55.47, on the line, in the text and in the table.
#[test]
fn a_line_with_a_price_tells_what_it_comes_to() {
    let mut job = job(vec![mark("cable-securing", RUN, 1), skim("150 sq ft", 2)]);
    let comes = |job: &Job| line(job, "staple").comes_to().map(|it| Voice::default().say(&it));
    assert_eq!(comes(&job), None, "nobody knows a price");
    say(&mut job, About::Pack, "staple", "3");
    say(&mut job, About::Price, "staple", "18.49");
    assert_eq!(comes(&job).unwrap(), "3 × $18.49 = $55.47");
    assert!(told(&job).contains(": 3 × 3, 3 × $18.49 = $55.47\n"), "{}", told(&job));
    let table = csv(&job, &bought(&job), Voice::default());
    assert!(table.contains(",3,,package,18.49,55.47,55.47,,8,0,3,"), "{table}");
    // Parts of a cent are told, so that the sum can be followed.
    say(&mut job, About::Pack, "staple", "");
    say(&mut job, About::Price, "staple", "0.125");
    assert_eq!(comes(&job).unwrap(), "8 × $0.125 = $1.00");
    // What is still to be bought is told at its own price.
    say(&mut job, About::Got, "staple", "6");
    assert!(told(&job).contains(": 2 more, 2 × $0.125 = $0.25"), "{}", told(&job));
    // Nothing counted costs nothing.
    let id = job.marks.iter().find(|it| it.calculator == "cable-securing").unwrap().id.clone();
    say(&mut job, About::Share(&id), "staple", LEFT_OUT);
    assert_eq!(comes(&job), None);
}

fn tick(job: &mut Job, key: &str) {
    let edit = line(job, key).ticked(Voice::default());
    apply(job, edit, &stamp(51)).unwrap();
}

/// Studs of another length are another thing: those that were bought are told until they are unticked.
#[test]
fn what_was_bought_is_told_when_nothing_asks_for_it_any_more() {
    let raised = |high: &str| mark("raising", &[("overhead", "sticks"), ("to.height", high)], 1);
    let mut job = job(vec![raised("8 ft 10 in")]);
    let studs = |job: &Job| {
        bought(job).lines.into_iter().find(|line| line.key.starts_with("stud ")).unwrap()
    };
    let first = studs(&job);
    tick(&mut job, &first.key);
    assert!(studs(&job).is_got() && bought(&job).bought.is_empty());
    let voice = Voice::default();
    let before = [voice.say(&first.name), ": ".into(), first.buys.exact()].concat();
    let raised = Mark { id: job.marks[0].id.clone(), ..raised("8 ft 8 in") };
    apply(&mut job, Edit::Change(raised), &stamp(60)).unwrap();
    let now = studs(&job);
    assert!(now.key != first.key && !now.is_got(), "{}", now.key);
    let kept = bought(&job).bought;
    assert_eq!((kept.len(), voice.say(&kept[0].says)), (1, before.clone()));
    assert_eq!(kept[0].got.amount, first.buys);
    let says = told(&job);
    assert!(says.contains(&format!("\n\nBought, and no longer asked for\n- {before}")), "{says}");
    let table = csv(&job, &bought(&job), voice);
    let (got, rest) = (first.buys.exact(), ",".repeat(14));
    let row = format!(",,{got}{rest}\"Bought, and no longer asked for\"\r\n");
    assert!(table.ends_with(&row), "{table}");
    // Nor when the number goes altogether.
    let clear = Edit::clear(&job);
    apply(&mut job, clear, &stamp(61)).unwrap();
    assert_eq!(bought(&job).bought, kept);
    say(&mut job, About::Got, &first.key, "");
    assert!(bought(&job).bought.is_empty());
}

/// A tick from before its words were kept, and one whose words are of another amount.
#[test]
fn what_was_bought_without_its_words_is_told_by_its_key() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    tick(&mut job, "staple");
    say(&mut job, About::Got, "staple", "5");
    let id = job.marks[0].id.clone();
    say(&mut job, About::Share(&id), "staple", LEFT_OUT);
    let kept = bought(&job).bought;
    assert_eq!(Voice::default().say(&kept[0].says), "staple: 5");
    say(&mut job, About::Share(&id), "staple", "");
    assert!(bought(&job).bought.is_empty(), "asked for again");
    assert_eq!(line(&job, "staple").got.unwrap().amount, Amount::Count(5));
}

/// Of a ceiling whose boards are planned the bare square feet stand back, as far as the plan covers
/// them; where rooms aren't said, sizes tell whether it is the same one.
#[test]
fn a_ceilings_bare_board_stands_back_where_its_boards_are_planned() {
    let sides = [("long", "18 ft"), ("wide", "14 ft")];
    let raised = || mark("raising", &[&sides[..], &[("overhead", "sticks")]].concat(), 1);
    let plan = || mark("boards", &sides, 2);
    let bare = |job: &Job| line(job, "ceiling-board");
    let feet = |feet: i64| Amount::Area(Area::square_feet(feet));
    assert_eq!(bare(&job(vec![raised()])).needs, feet(252));
    let mut both = job(vec![raised(), plan()]);
    let none = bare(&both);
    assert!(!none.is_counted(), "{none:?}");
    assert_eq!(none.shares[0].counts, Counts::Beyond(vec![plan().id]));
    let says = Voice::default().say(&reason(&both, &none.shares[0]).unwrap());
    assert_eq!(says, "without what is in “boards 2”, counted there");
    let left = "\n\nNot counted: Gypsum board, ceiling (counted in “boards 2”).";
    assert!(told(&both).ends_with(left), "{}", told(&both));
    let spanish = Voice { language: Language::Spanish, ..Voice::default() };
    let left = spanish.say(&left_out(&both, &bought(&both), spanish).unwrap());
    assert!(left.ends_with("(se cuenta en «boards 2»)."), "{left}");
    // Counted all the same where a person says so, and by itself where the plan isn't bought.
    let (id, boards) = (raised().id, plan().id);
    say(&mut both, About::Share(&id), "ceiling-board", COUNTED);
    assert_eq!(bare(&both).needs, feet(252));
    say(&mut both, About::Share(&id), "ceiling-board", "");
    let keys: Vec<String> = bought(&both).lines.into_iter().map(|line| line.key).collect();
    for key in keys.iter().filter(|key| key.starts_with("board ")) {
        say(&mut both, About::Share(&boards), key, LEFT_OUT);
    }
    assert_eq!(bare(&both).needs, feet(252));
    // Half of it planned, half of it left; a wall's plan is none of a ceiling, nor is another room's.
    let needs = |plan: Mark| bare(&job(vec![raised(), plan])).needs;
    assert_eq!(needs(mark("boards", &[("long", "9 ft"), ("wide", "14 ft")], 2)), feet(126));
    let wall = [("of", "wall"), ("wall", "18 ft"), ("high", "14 ft 1 in")];
    assert_eq!(needs(mark("boards", &wall, 2)), feet(252));
    assert_eq!(needs(Mark { spot: "Hall".into(), ..plan() }), feet(252));
    // Nobody said where: the same size is the same ceiling, another one isn't.
    let nowhere = |plan: Mark| Mark { spot: String::new(), ..plan };
    assert_eq!(needs(nowhere(plan())), feet(0));
    assert_eq!(
        needs(nowhere(mark("boards", &[("long", "9 ft"), ("wide", "14 ft")], 2))),
        feet(252)
    );
    // One plan doesn't stand for two ceilings of one size.
    let second = Mark { id: stamp(7).id(), ..raised() };
    assert_eq!(bare(&job(vec![raised(), second, plan()])).needs, feet(252));
}

/// Staples along a cable whose way came out of a rough-in plan are the plan's.
#[test]
fn staples_of_a_way_that_came_from_a_plan_are_the_plans() {
    let plan = mark("rough-in", &[("above", "8 in")], 1);
    let sheet = plan.work(<_>::default()).unwrap().sheet;
    let length = sheet.figures.iter().find(|figure| figure.key == "length").unwrap();
    let seen = length.amount.exact();
    let mut secured = mark("cable-securing", &[("run", &seen)], 2);
    let (from, key) = (plan.id.clone(), "length".to_owned());
    secured.ties = vec![Tie { path: "run".into(), mark: from, key, seen: seen.clone() }];
    let staples =
        |marks: &[&Mark]| line(&job(marks.iter().map(|it| (*it).clone()).collect()), "staple");
    let alone = staples(&[&plan]);
    let both = staples(&[&plan, &secured]);
    assert_eq!(both.needs, alone.needs);
    assert_eq!(both.shares[1].counts, Counts::Beyond(vec![plan.id.clone()]));
    // One that isn't linked still adds, and so does one whose plan isn't bought.
    let own = Mark { ties: Vec::new(), ..secured.clone() };
    let asks = both.shares[1].asks.raw();
    assert!(asks > 0);
    assert_eq!(staples(&[&plan, &own]).needs.raw(), alone.needs.raw() + asks);
    let mut left = job(vec![plan.clone(), secured.clone()]);
    say(&mut left, About::Share(&plan.id), "staple", LEFT_OUT);
    assert_eq!(line(&left, "staple").needs.raw(), asks);
    say(&mut left, About::Share(&plan.id), "staple", "");
    say(&mut left, About::Share(&secured.id), "staple", COUNTED);
    assert_eq!(line(&left, "staple").needs.raw(), alone.needs.raw() + asks);
    // How far apart they stand is no way.
    let apart = Tie { path: "spacing".into(), ..secured.ties[0].clone() };
    let apart = Mark { ties: vec![apart], ..secured };
    assert_eq!(staples(&[&plan, &apart]).needs.raw(), alone.needs.raw() + asks);
}

/// Screws that a plan of boards counts are taken over by the compound that covers their heads: one
/// box of screws, not two.
#[test]
fn what_was_taken_over_is_counted_once() {
    let boards = mark("boards", &[("long", "15 ft")], 1);
    let worked = boards.work(<_>::default()).unwrap();
    let screws = worked.sheet.figures.iter().find(|figure| figure.key == "screws").unwrap();
    let seen = screws.amount.exact();
    let mut compound = mark("joint-compound", &[("screws", &seen)], 2);
    let tie = |path: &str| Tie {
        path: path.into(),
        mark: boards.id.clone(),
        key: "screws".into(),
        seen: seen.clone(),
    };
    compound.ties = vec![tie("screws")];
    let job_of = |compound: &Mark| job(vec![boards.clone(), compound.clone()]);
    let mut both = job_of(&compound);
    let shared = line(&both, "drywall-screw");
    assert_eq!(shared.needs, screws.amount);
    assert_eq!(shared.shares[1].counts, Counts::Beyond(vec![boards.id.clone()]));
    let says = Voice::default().say(&reason(&both, &shared.shares[1]).unwrap());
    assert!(says.contains("boards 1"), "{says}");
    // Until the compound follows a longer room, it has what it took of the boards' screws.
    let longer = mark("boards", &[("long", "22 ft")], 1);
    let more = line(&job(vec![longer.clone()]), "drywall-screw").needs;
    assert!(more.raw() > screws.amount.raw());
    let moved = job(vec![longer.clone(), compound.clone()]);
    let waiting = line(&moved, "drywall-screw");
    assert_eq!(waiting.needs, more);
    assert!(waiting.shares[1].waits && !waiting.shares[0].waits);
    let all = buying(&moved, &Survey::of(&moved));
    assert_eq!(all.waiting, [compound.title.clone()]);
    assert!(list(&moved, &all, Voice::default()).contains("Counted with old figures"));
    // Counted all the same where a person says so, and by itself where the plan's are left out.
    say(&mut both, About::Share(&compound.id), "drywall-screw", COUNTED);
    assert_eq!(line(&both, "drywall-screw").needs.raw(), 2 * screws.amount.raw());
    say(&mut both, About::Share(&compound.id), "drywall-screw", "");
    say(&mut both, About::Share(&boards.id), "drywall-screw", LEFT_OUT);
    assert_eq!(line(&both, "drywall-screw").needs, screws.amount);
    compound.ties.clear();
    assert_eq!(line(&job_of(&compound), "drywall-screw").needs.raw(), 2 * screws.amount.raw());
}

/// A plan picks rolls for its own pieces; a single run of the same cable may come off what they leave.
#[test]
fn cable_by_the_foot_beside_a_plans_rolls_is_said() {
    let says = |marks: Vec<Mark>| {
        let job = job(marks);
        list(&job, &buying(&job, &Survey::of(&job)), Voice::default())
    };
    let plan = || mark("rough-in", &[("above", "8 in")], 1);
    let run = |cable: &str| mark("cable-run", &[("cable", cable)], 2);
    let kind = "12-2";
    let both = says(vec![plan(), run(kind)]);
    let warned =
        format!("{kind} cable with ground: a plan’s rolls and single runs are both on this list.");
    assert!(both.contains(&warned), "{both}");
    for alone in [vec![plan()], vec![run(kind)], vec![plan(), run("14-2")]] {
        assert!(!says(alone).contains("single runs are both"));
    }
}

/// A plan's rolls are without its cables of no length, and the list says so by their names, as a table
/// does; an untouched sample's are nobody's.
#[test]
fn cables_of_no_length_are_named_beside_the_list() {
    let plan = mark("rough-in", &[("above", "8 in"), ("cables.1.to", "Porch")], 1);
    let with = job(vec![plan]);
    let all = bought(&with);
    let names: Vec<String> = all.unknown.iter().map(|it| Voice::default().say(&it.name)).collect();
    let lost = "12-2 cable with ground, K1 → “Porch”: no such box";
    assert_eq!(names, [lost, "Data cable, PANEL → coiled: above PANEL"]);
    let says = format!(
        "Not on this list yet, from “rough-in 1”: {lost} (no length); {} (no length).",
        names[1]
    );
    assert!(told(&with).contains(&says), "{}", told(&with));
    let table = csv(&with, &all, Voice::default());
    let rows: Vec<&str> = table.lines().filter(|row| row.contains("not counted: ")).collect();
    assert_eq!(rows.len(), 2, "{table}");
    assert!(rows[0].contains(lost) && rows[0].contains("rough-in 1,Den,"), "{}", rows[0]);
    assert!(rows[0].ends_with("not counted: no length"), "{}", rows[0]);
    let sample = job(vec![mark("rough-in", &[], 1)]);
    assert_eq!(bought(&sample).unknown, []);
}

/// What nobody counts is told with why, each reason once.
#[test]
fn a_text_to_send_says_why_something_is_not_counted() {
    let runs = [mark("cable-securing", &[], 1), mark("cable-securing", RUN, 2)];
    let mut job = job([&runs[..], &[mark("cable-securing", RUN, 3)]].concat());
    for run in &job.marks.clone()[1..] {
        say(&mut job, About::Share(&run.id), "staple", LEFT_OUT);
    }
    let (told, name) = (told(&job), Voice::default().say(&line(&job, "staple").name));
    let left = format!("Not counted: {name} (the sample as it came, left out).");
    assert!(told.ends_with(&left), "{told}");
}

fn sums(job: &Job) -> Vec<String> {
    bought(job).sums().iter().map(|sum| Voice::default().say(sum)).collect()
}

/// Of staples 8 at $3.97 are $31.76; of 14 then asked for 6 are left, $23.82; with a can of primer at
/// $18.49 that is $42.31, and once the can is bought $31.76 + $18.49 = $50.25.
#[test]
fn what_is_still_to_buy_and_what_was_bought_are_two_sums() {
    let mut job = job(vec![mark("cable-securing", RUN, 1), skim("150 sq ft", 2)]);
    assert_eq!(sums(&job), [""; 0], "nobody knows a price");
    let others = bought(&job).lines.len() - 2;
    assert_eq!(others, 1, "the finish has no price");
    say(&mut job, About::Price, "staple", "3.97");
    assert_eq!(sums(&job), ["Still to buy $31.76, 2 lines without a price"]);
    tick(&mut job, "staple");
    assert_eq!(sums(&job), ["Still to buy: 2 lines without a price", "Bought $31.76"]);

    // Twice as far: what was bought stays bought, and the line tells what is left, as the text does.
    let longer = mark("cable-securing", &[("run", "60 ft")], 1);
    let longer = Mark { id: line(&job, "staple").shares[0].mark.clone(), ..longer };
    apply(&mut job, Edit::Change(longer), &stamp(60)).unwrap();
    let comes = Voice::default().say(&line(&job, "staple").comes_to().unwrap());
    assert_eq!(comes, "6 × $3.97 = $23.82");
    assert!(told(&job).contains(&comes), "{}", told(&job));
    say(&mut job, About::Price, "primer", "18.49");
    assert_eq!(sums(&job), ["Still to buy $42.31, 1 line without a price", "Bought $31.76"]);
    tick(&mut job, "primer");
    let both = ["Still to buy $23.82, 1 line without a price", "Bought $50.25"];
    assert_eq!(sums(&job), both);
    let told_both = format!("\n\n{}\n{}", both[0], both[1]);
    assert!(told(&job).contains(&told_both), "{}", told(&job));

    // Nothing asks for staples any more: what they cost was paid all the same.
    let id = line(&job, "staple").shares[0].mark.clone();
    say(&mut job, About::Share(&id), "staple", LEFT_OUT);
    assert_eq!(sums(&job), ["Still to buy: 1 line without a price", "Bought $50.25"]);
    assert_eq!(bought(&job).bought[0].cost.unwrap().number(), 31.76);
    // Bought without a price is said beside.
    say(&mut job, About::Price, "staple", "");
    assert_eq!(sums(&job)[1], "Bought $18.49, 1 line without a price");
}

/// Less is asked for than was bought: all that was bought was paid.
#[test]
fn more_bought_than_asked_for_is_paid_whole() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    say(&mut job, About::Price, "staple", "0.50");
    say(&mut job, About::Got, "staple", "10");
    assert_eq!(sums(&job), ["Bought $5.00"]);
    let comes = line(&job, "staple").comes_to().map(|it| Voice::default().say(&it));
    assert_eq!(comes.unwrap(), "10 × $0.50 = $5.00");
}

#[test]
fn what_was_unticked_by_mistake_is_ticked_again_as_it_was() {
    let mut job = job(vec![mark("cable-securing", RUN, 1)]);
    tick(&mut job, "staple");
    let id = job.marks[0].id.clone();
    say(&mut job, About::Share(&id), "staple", LEFT_OUT);
    let kept = bought(&job).bought.remove(0);
    say(&mut job, About::Got, "staple", "");
    assert_eq!(bought(&job).bought, []);
    apply(&mut job, kept.ticked(), &stamp(61)).unwrap();
    let again = bought(&job).bought.remove(0);
    assert_eq!((&again.says, again.got.amount), (&kept.says, kept.got.amount));
}

/// In dollars three digits behind a point are thousands to some and cents to others.
#[test]
fn a_price_that_may_mean_two_sums_is_asked_about() {
    let says = |text: &str| read_price(text).map_err(|fault| Voice::default().say(&fault));
    let asked = "“18.450” could mean thousands or cents. Write 18450 or 18.45.";
    assert_eq!(says(" 18.450 "), Err(asked.to_owned()));
    assert_eq!(says("18.45").unwrap().number(), 18.45);
    assert_eq!(says("18450").unwrap().number(), 18_450.0);
    for bad in ["cheap", "-1", "-18.450", ""] {
        assert_eq!(says(bad), Err("Write a price, such as 12.50.".to_owned()), "{bad}");
    }
}
