//! Loads worked by hand, statics from equilibrium and bending alone, then laws.

use super::*;
use crate::fields::Form;
use crate::measure::unit::PSF;
use crate::measure::{Rounding, Units};
use crate::sheet::{Value, Verdict};
use crate::words::Voice;
use proptest::prelude::*;

fn feet(count: i64) -> Length {
    Length::inches(12 * count, 1)
}

fn psf(count: i64) -> Measure {
    Measure::whole(&PSF, count)
}

fn plf(count: i64) -> Measure {
    Measure::whole(&PLF, count)
}

fn pounds(count: i64) -> Measure {
    Measure::whole(&POUND, count)
}

fn sheet(input: &Input) -> Sheet {
    Loads::sheet(input, &solve(input).unwrap(), Basis::default())
}

/// By hand: half of 12 and 12 ft is 12 ft; (10 + 20) × 12 + 15 = 375 lb/ft; × 16 ÷ 2 = 3000 lb.
#[test]
fn two_spans_on_a_beam_come_to_what_they_do_by_hand() {
    let answer = solve(&Input::sample()).unwrap();
    assert_eq!((answer.tributary, answer.line), (feet(12), plf(375)));
    assert_eq!(answer.ends, [pounds(3_000); 2]);
    assert_eq!(answer.sums.len(), 1, "no roof, no other sum");
}

/// By hand: dead 150, live 300, roof 100 lb/ft: 450, 250, and 150 + 225 + 75 = 450.
#[test]
fn loads_are_added_up_each_way() {
    let input = Input {
        left: Some(feet(10)),
        right: Some(feet(10)),
        dead: psf(15),
        live: psf(30),
        roof: true,
        roof_wide: Some(feet(5)),
        roof_live: Some(psf(20)),
        beam: plf(0),
        ..Input::sample()
    };
    let answer = solve(&input).unwrap();
    assert_eq!(answer.lines, [plf(150), plf(300), plf(100)]);
    let sums: Vec<_> = answer.sums.iter().map(|sum| sum.line).collect();
    assert_eq!((sums, answer.line), (vec![plf(450), plf(250), plf(450)], plf(450)));
}

/// By hand: 1000 lb at 4 of 16 ft brings 750 and 250; of a live one, three quarters of it count
/// beside a roof.
#[test]
fn a_point_goes_to_the_nearer_end() {
    let input = Input {
        left: None,
        right: None,
        beam: plf(0),
        point: true,
        post: Post { load: Some(pounds(1_000)), at: Some(feet(4)), kind: PointKind::Live },
        roof: true,
        ..Input::sample()
    };
    let answer = solve(&input).unwrap();
    let ends: Vec<_> = answer.sums.iter().map(|sum| [sum.left, sum.right]).collect();
    let want = [(750, 250), (0, 0), (1_125, 375)].map(|(left, right)| [left, right]);
    let halves = ends[2].map(|end| end.millionths() * 2 / 1_000_000);
    assert_eq!([ends[0], ends[1]], [want[0].map(pounds), want[1].map(pounds)]);
    assert_eq!(halves, want[2]);
    assert_eq!(answer.ends, [pounds(750), pounds(250)]);
}

/// By hand: (15 + 20) × 12 ÷ 2 = 210 lb/ft on each side; posts 4 ft apart carry 840 lb.
#[test]
fn shoring_takes_half_of_its_own_side() {
    let shoring = |left, right| {
        let input = Input {
            left,
            right,
            shoring: true,
            shore_dead: Some(psf(15)),
            work: Some(psf(20)),
            posts: Some(feet(4)),
            ..Input::sample()
        };
        solve(&input).unwrap().shores
    };
    let each = Some(Shore { line: plf(210), post: pounds(840) });
    assert_eq!(shoring(Some(feet(12)), Some(feet(12))), [each, each]);
    assert_eq!(shoring(Some(feet(12)), None), [each, None]);
}

/// Source: Fc-perp 425 and 625 psi, a trade magazine's table. By hand: 6000 ÷ (3.5 × 1.5) = 1142.9
/// psi under one stud; 4800 ÷ (3.5 × 625) = 2.194 in, so 2-1/4; a light end still rests 1-1/2 in, 3 on
/// masonry.
#[test]
fn bearing_stands_beside_what_is_published_and_is_not_judged() {
    let bear = |end: i64, on, long| {
        // An end takes half of an even load.
        let beam = Measure::new(&PLF, end * 2_000_000 / 16);
        let input = Input {
            left: None,
            right: None,
            beam,
            bearing: Rests { on, wide: Some(Length::inches(7, 2)), long: Some(long) },
            ..Input::sample()
        };
        let sheet = sheet(&input);
        let part = sheet.parts.iter().find(|part| part.key == "bearing").unwrap();
        part.rows.iter().map(|row| Voice::default().say(&row.value)).collect::<Vec<_>>()
    };
    let stud = Length::inches(3, 2);
    assert_eq!(bear(6_000, On::SprucePineFir, stud), ["≈ 1143 psi", "425 psi", "4-1/16 in"]);
    assert_eq!(bear(4_800, On::DouglasFirLarch, feet(1))[2], "2-1/4 in");
    assert_eq!(bear(480, On::HemFir, feet(1))[2], "1-1/2 in");
    assert_eq!(bear(480, On::Masonry, feet(1))[1..], ["3 in"]);
}

#[test]
fn what_does_not_fit_is_refused_at_its_field() {
    let refused = |input: Input| solve(&input).unwrap_err()[0].path.clone();
    let at = |at| Post { load: Some(pounds(100)), at: Some(feet(at)), ..Post::blank() };
    let point = |post| Input { point: true, post, ..Input::sample() };
    assert_eq!(refused(point(at(17))), "post.at");
    assert!(solve(&point(at(16))).is_ok(), "on its end");
    assert_eq!(refused(point(Post::blank())), "post.load");
    assert_eq!(refused(Input { through: true, right: None, ..Input::sample() }), "through");
    assert_eq!(refused(Input { span: feet(16), ..Input::blank() }), "left");
}

fn any_loads() -> impl Strategy<Value = Input> {
    let spans = (16_i64..7_680, 16_i64..7_680, any::<bool>());
    let loads = (0_i64..400, 0_i64..400, 0_i64..400, 0_i64..400, 0_i64..7_680, any::<bool>());
    let beam = (0_i64..2_000, 1_i64..2_000, 192_i64..11_520);
    let point = (1_i64..50_000, 0_i64..1_001, 0_usize..3, any::<bool>());
    (spans, loads, beam, point).prop_map(|(spans, loads, beam, point)| {
        let span = Length::inches(beam.2, 16);
        Input {
            left: Some(Length::inches(spans.0, 16)),
            right: Some(Length::inches(spans.1, 16)),
            through: spans.2,
            dead: psf(loads.0),
            live: psf(loads.1),
            roof_dead: Some(psf(loads.2)),
            roof_live: Some(psf(loads.3)),
            roof_wide: Some(Length::inches(loads.4, 16)),
            roof: loads.5,
            wall: plf(beam.0),
            beam: plf(beam.1),
            span,
            point: point.3,
            post: Post {
                load: Some(pounds(point.0)),
                at: Some(span.part(1_000).times(point.1).min(span)),
                kind: PointKind::ALL[point.2],
            },
            ..Input::sample()
        }
    })
}

fn in_feet(length: Length) -> f64 {
    length.nanometres() as f64 / 304_800_000.0
}

/// What two spans that run through bring to the support between them, of one pound a foot: the
/// support pushes back what the beam would sag there without it. Sags are by virtual work: moments
/// of the load times moments of a unit pound there, strip by strip.
fn middle(a: f64, b: f64) -> f64 {
    let (span, strips) = (a + b, 20_000);
    let wide = span / f64::from(strips);
    let (mut sag, mut unit) = (0.0, 0.0);
    for at in 0..strips {
        let x = (f64::from(at) + 0.5) * wide;
        let load = x * span / 2.0 - x * x / 2.0;
        let pound = if x < a { x * b / span } else { (span - x) * a / span };
        sag += load * pound * wide;
        unit += pound * pound * wide;
    }
    sag / unit
}

/// From bending alone; and 1.25 for two that are alike, as any handbook has it.
#[test]
fn joists_that_run_through_bring_what_their_bending_says() {
    for (a, b) in [(12, 12), (16, 8), (10, 14), (20, 5), (3, 17)] {
        let input =
            Input { left: Some(feet(a)), right: Some(feet(b)), through: true, ..Input::sample() };
        let answer = solve(&input).unwrap();
        let factor = answer.factor.unwrap().number();
        let by_bending = middle(a as f64, b as f64) / ((a + b) as f64 / 2.0);
        assert!((factor - by_bending).abs() < 1e-4, "{a} and {b}: {factor}, {by_bending}");
    }
    let alike = Input { through: true, ..Input::sample() };
    let answer = solve(&alike).unwrap();
    assert_eq!(answer.factor.unwrap().millionths(), 1_250_000);
    assert_eq!(answer.lines[1], plf(300), "20 × 12 × 1.25");
}

proptest! {
    /// From equilibrium alone: the ends hold up all that is on the beam, and about the left end what
    /// turns it comes to nothing.
    #[test]
    fn a_beam_is_in_balance(input in any_loads()) {
        let answer = solve(&input).unwrap();
        let span = in_feet(input.span);
        for sum in &answer.sums {
            let point = sum.point.map_or(0.0, Measure::number);
            let even = sum.line.number() * span;
            let (left, right) = (sum.left.number(), sum.right.number());
            let slack = (even + point) * 1e-9 + 1e-3;
            prop_assert!((left + right - even - point).abs() < slack);
            let turned = even * span / 2.0 + point * in_feet(input.point_at()) - right * span;
            prop_assert!(turned.abs() < slack * (span + 1.0), "{turned}");
        }
    }

    /// Dead, live and roof are all on the support, whichever way they got there.
    #[test]
    fn all_loads_reach_the_line(input in any_loads()) {
        let answer = solve(&input).unwrap();
        let [a, b] = [input.left, input.right].map(|it| in_feet(it.unwrap()));
        let width = if input.through {
            (a + b) / 2.0 * answer.factor.unwrap().number()
        } else {
            (a + b) / 2.0
        };
        let roof = if input.roof { in_feet(input.roof_wide.unwrap()) } else { 0.0 };
        let want = [
            input.dead.number() * width
                + input.roof_dead.unwrap().number() * roof
                + input.wall.number()
                + input.beam.number(),
            input.live.number() * width,
            input.roof_live.unwrap().number() * roof,
        ];
        for (line, want) in answer.lines.into_iter().zip(want) {
            prop_assert!((line.number() - want).abs() < 1e-3 + want * 1e-6, "{want}");
        }
    }

    #[test]
    fn more_load_never_lessens_an_end(input in any_loads(), more in 0_i64..200) {
        let ends = |input: &Input| solve(input).map(|answer| answer.ends).unwrap();
        let add = |to: Measure| to.of_same(to.millionths() + more * 1_000_000);
        let before = ends(&input);
        for heavier in [
            Input { dead: add(input.dead), ..input.clone() },
            Input { live: add(input.live), ..input.clone() },
            Input { roof_live: input.roof_live.map(add), ..input.clone() },
            Input { wall: add(input.wall), ..input.clone() },
            Input { post: Post { load: input.post.load.map(add), ..input.post.clone() }, ..input.clone() },
            Input { left: input.left.map(|it| it.plus(Length::inches(more, 1))), through: false, ..input.clone() },
        ] {
            let before = if heavier.through == input.through {
                before
            } else {
                ends(&Input { through: false, ..input.clone() })
            };
            let after = ends(&heavier);
            prop_assert!(after[0] >= before[0] && after[1] >= before[1], "{heavier:?}");
        }
    }

    #[test]
    fn nothing_is_ever_within_and_every_figure_is_its_step(input in any_loads()) {
        let sheet = sheet(&input);
        prop_assert_eq!(sheet.verdict(), Verdict::Ask);
        prop_assert!(sheet.checks.iter().all(|check| check.verdict == Verdict::Ask));
        for step in &sheet.working {
            let figures = [&sheet.headline].into_iter().chain(&sheet.figures);
            if let Some(figure) = figures.into_iter().find(|figure| figure.key == step.key) {
                prop_assert_eq!(step.expr.value().and_then(Value::amount), Some(figure.amount));
            }
        }
        let shown = sheet.headline.amount.show(Units::Customary, Rounding::Nearest);
        prop_assert_eq!(shown.unit, "lb/ft");
    }
}
