//! What the invented job is made of. Where a figure follows from others, the sum stands above.

use super::Told;
use crate::job::words as w;
use crate::words::Phrase;

/// With no note, nothing taken by name and nothing on record.
const fn told(
    day: i64,
    spot: &'static Phrase,
    title: &'static Phrase,
    address: &'static str,
) -> Told {
    Told { address, title, spot, note: None, takes: &[], record: &[], was: None, day }
}

/// A report and who was asked, made up: it opens holds of the invented job, and of no other.
const RECORD: &[(&str, &str)] = &[
    ("report.result", "none-detected"),
    ("report.samples", "3"),
    ("report.lab", "Example Laboratory (invented)"),
    ("report.number", "EX-0001 (invented)"),
    ("report.accreditation", "none: invented"),
    ("report.dated", "2026-10-05"),
    ("report.sampled", "ceiling, three corners"),
    ("paint.result", "no-lead"),
    ("paint.tester", "A. Example (invented)"),
    ("paint.tested", "2026-10-05"),
    ("office.asks", "nothing-stricter"),
    ("office.says", "Example building department (invented): nothing beyond the federal rules"),
];

type Takes = &'static [(&'static str, &'static str, &'static str)];

const LONG_AND_WIDE: Takes = &[("long", "room", "longest"), ("wide", "room", "widest")];

pub(super) static TOLD: &[Told] = &[
    // 14 ft by 12 ft are 168 sq ft.
    Told {
        note: Some(&w::DEMO_ROOM_NOTE),
        ..told(
            0,
            &w::DEMO_DEN,
            &w::DEMO_DEN,
            "room?long=14 ft&wide=12 ft&height=7 ft 10 in&height_to_be=9 ft&framing.runs=across\
             &openings.0.kind=door&openings.0.width=2 ft 8 in&openings.0.height=6 ft 8 in\
             &openings.0.wall=3&openings.1.kind=window&openings.1.width=4 ft&openings.1.height=4 ft\
             &openings.1.wall=1&outside.0.wall=1",
        )
    },
    told(0, &w::DEMO_HALL, &w::DEMO_HALL, "room?long=12 ft&wide=4 ft&height=8 ft"),
    Told {
        takes: &[("area", "room", "ceiling-area")],
        record: RECORD,
        ..told(
            1,
            &w::DEMO_DEN,
            &w::DEMO_CEILING,
            "hold?place=Den ceiling&material=texture&deed=tear-out&built=1962",
        )
    },
    Told {
        takes: &[("area", "room", "ceiling-area")],
        record: RECORD,
        ..told(
            1,
            &w::DEMO_HALL,
            &w::DEMO_HALL_CEILING,
            "hold?place=Hall ceiling&material=texture&deed=strip&built=1962",
        )
    },
    // No result is on record.
    Told {
        note: Some(&w::DEMO_CEILING_NOTE),
        ..told(
            1,
            &w::DEMO_KITCHEN,
            &w::DEMO_KITCHEN_CEILING,
            "hold?place=Kitchen ceiling&material=texture&deed=cut&area=110 ft2&built=1962",
        )
    },
    told(
        2,
        &w::DEMO_DEN,
        &w::DEMO_DOWN,
        "taken-down?items.0.what=smoke&items.0.place=Hall&items.0.how=off&items.0.off=2026-10-08\
         &items.0.back=2026-10-08&items.0.tested=yes&items.1.what=register&items.1.place=Den, by the \
         window&items.1.how=off&items.1.off=2026-10-08",
    ),
    // 12 ft by 4 ft.
    Told {
        takes: LONG_AND_WIDE,
        ..told(2, &w::DEMO_HALL, &w::DEMO_STRIP, "stripping?spread=room")
    },
    // Studs of 7 ft 6-3/4 in, three plates of 1-1/2 in, less 1/2 in of board and 3/4 in of floor, are
    // the 7 ft 10 in that were measured.
    Told {
        note: Some(&w::DEMO_RAISE_NOTE),
        takes: &[
            ("long", "room", "longest"),
            ("wide", "room", "widest"),
            ("to.height", "room", "ceiling-height-to-be"),
        ],
        ..told(
            3,
            &w::DEMO_DEN,
            &w::DEMO_RAISE,
            "raising?stud=7 ft 6-3/4 in&board=1/2 in&new_board=1/2 in&old=texture\
             &wall.carries=bearing&overhead=unknown",
        )
    },
    Told {
        takes: &[("span", "room", "widest")],
        ..told(4, &w::DEMO_DEN, &w::DEMO_JOISTS, "joist-spans?attic=bare")
    },
    // 4 conductors, the grounds and a switch: 7 of 2.00 in³ are 14.0 of 18.0.
    Told {
        note: Some(&w::DEMO_SWITCH_NOTE),
        ..told(
            5,
            &w::DEMO_DEN,
            &w::DEMO_SWITCH,
            "box-fill?enclosure=marked&marked=18 in3&cables.0.cable=14-2&cables.0.count=2\
             &devices.0.kind=switch&depth=2-3/4 in",
        )
    },
    // 9 conductors, the grounds and two switches: 14 of 2.00 in³ are 28.0 of 28.0.
    Told {
        note: Some(&w::DEMO_PAIR_NOTE),
        // With two cables of 14-2: 12 of 2.00 in³.
        was: Some(("24.0 in3", "within")),
        ..told(
            5,
            &w::DEMO_HALL,
            &w::DEMO_PAIR,
            "box-fill?enclosure=marked&marked=28 in3&gangs=2&cables.0.cable=14-2&cables.0.count=3\
             &cables.1.cable=14-3&devices.0.kind=3-way&devices.0.count=2",
        )
    },
    // 12 conductors of 2.25 in³ are 27.0; six grounds add 2.25 (2017) or 1-1/2 times that (2020):
    // 29.25 or 30.375 of 30.3.
    Told {
        note: Some(&w::DEMO_JUNCTION_NOTE),
        ..told(
            5,
            &w::DEMO_KITCHEN,
            &w::DEMO_JUNCTION,
            "box-fill?enclosure=sq-4x2-1/8&cables.0.cable=12-2&cables.0.count=6&devices",
        )
    },
    // The door takes the sample's place in wall 3.
    told(6, &w::DEMO_DEN, &w::DEMO_OUTLETS, "outlets?"),
    told(
        6,
        &w::DEMO_DEN,
        &w::DEMO_SET_OUT,
        "set-out?floors.0.name=by the door&floors.0.down=4 ft&floors.0.backer=0 in&floors.0.bed=0 in\
         &floors.0.cover=0 in&floors.1.name=by the window&floors.1.down=4 ft 1/4 in\
         &floors.1.backer=0 in&floors.1.bed=0 in&floors.1.cover=0 in&boxes.0.kind=receptacle\
         &boxes.0.name=R1&boxes.0.height=16 in&boxes.0.floor=1&boxes.0.along=8 ft 1-7/8 in\
         &boxes.1.kind=switch&boxes.1.name=S1&boxes.1.height=4 ft&boxes.1.floor=1\
         &boxes.1.along=4 ft 2 in&boxes.2.kind=receptacle&boxes.2.name=R3&boxes.2.height=16 in\
         &boxes.2.floor=2&boxes.2.along=2 ft 6-1/8 in&seam=",
    ),
    Told {
        note: Some(&w::DEMO_DRILL_NOTE),
        ..told(
            7,
            &w::DEMO_DEN,
            &w::DEMO_DRILL,
            "drilling?member=top-plate-double&size=2x4&wall=bearing&bit=1-1/8 in&plates=2",
        )
    },
    Told {
        takes: &[("bit", "drilling", "hole")],
        ..told(
            7,
            &w::DEMO_DEN,
            &w::DEMO_HOLE,
            "hole-cables?cables.0.cable=14-2&cables.0.count=3&hole=sealed",
        )
    },
    told(
        7,
        &w::DEMO_HALL,
        &w::DEMO_FEED,
        "cable-run?cable=14-3&from_high=4 ft&to_high=4 ft&across=11 ft 6 in&plates=2&load.amperes=2 A",
    ),
    // 14 ft were there; the way is longer by what the ceiling goes up.
    Told {
        takes: &[("raise", "raising", "raise")],
        ..told(8, &w::DEMO_DEN, &w::DEMO_LIGHT, "rerouted-cable?there=14 ft&splice=attic")
    },
    // The five places of the receptacles above, the den 18 ft right of the panel.
    Told {
        takes: &[
            ("high", "room", "ceiling-height-to-be"),
            ("boxes.1.marked", "box-fill", "volume"),
        ],
        ..told(
            8,
            &w::DEMO_DEN,
            &w::DEMO_PLAN,
            "rough-in?boxes.0.label=PANEL&boxes.0.what=panel&boxes.0.x=0&boxes.0.y=0&boxes.0.high=5 ft\
             &boxes.1.label=S1&boxes.1.what=switch&boxes.1.x=27 ft 10 in&boxes.1.y=12 ft&boxes.1.high=4 ft&boxes.1.marked=18 in3\
             &boxes.2.label=R1&boxes.2.what=receptacle&boxes.2.x=23 ft 10-1/8 in&boxes.2.y=12 ft&boxes.2.high=16 in&boxes.2.marked=22.5 in3\
             &boxes.3.label=R2&boxes.3.what=receptacle&boxes.3.x=18 ft&boxes.3.y=7 ft 10-1/8 in&boxes.3.high=16 in&boxes.3.marked=18 in3\
             &boxes.4.label=R3&boxes.4.what=receptacle&boxes.4.x=20 ft 6-1/8 in&boxes.4.y=0&boxes.4.high=16 in&boxes.4.marked=18 in3\
             &boxes.5.label=R4&boxes.5.what=receptacle&boxes.5.x=30 ft 1-7/8 in&boxes.5.y=0&boxes.5.high=16 in&boxes.5.marked=18 in3\
             &boxes.6.label=R5&boxes.6.what=receptacle&boxes.6.x=32 ft&boxes.6.y=8 ft 1-7/8 in&boxes.6.high=16 in&boxes.6.marked=18 in3\
             &boxes.7.label=L1&boxes.7.what=light&boxes.7.x=25 ft&boxes.7.y=6 ft&boxes.7.mount=ceiling&boxes.7.marked=18 in3\
             &cables.0.from=PANEL&cables.0.to=R3&cables.0.cable=14-2&cables.0.circuit=4&cables.0.breaker=15 A\
             &cables.1.from=R3&cables.1.to=R4&cables.1.cable=14-2&cables.1.circuit=4\
             &cables.2.from=R4&cables.2.to=R5&cables.2.cable=14-2&cables.2.circuit=4\
             &cables.3.from=R5&cables.3.to=R1&cables.3.cable=14-2&cables.3.circuit=4\
             &cables.4.from=R1&cables.4.to=R2&cables.4.cable=14-2&cables.4.circuit=4&cables.4.load=6 A\
             &cables.5.from=R1&cables.5.to=S1&cables.5.cable=14-2&cables.5.circuit=4\
             &cables.6.from=S1&cables.6.to=L1&cables.6.cable=14-2&cables.6.circuit=4&cables.6.load=1 A",
        )
    },
    told(8, &w::DEMO_HALL, &w::DEMO_ALARMS, "alarm-places?bedrooms=3&have=4"),
    // 1404 Btu/h at 20 F° are 65 cfm.
    told(8, &w::DEMO_DEN, &w::DEMO_AIR, "room-air?load=1404 btu/h"),
    Told {
        takes: &[("cfm", "room-air", "air")],
        was: Some(("11 ft 10 in", "ask")),
        ..told(8, &w::DEMO_DEN, &w::DEMO_REGISTER, "raised-register?way=12 ft&guess=no")
    },
    Told {
        takes: &[("cfm", "room-air", "air"), ("high", "room", "ceiling-height-to-be")],
        ..told(
            10,
            &w::DEMO_DEN,
            &w::DEMO_SPOTS,
            "register-spots?season=cooling&guess=no&spots.0.name=today&spots.0.place=floor\
             &spots.0.x=7 ft&spots.0.y=1 ft&spots.0.aim=right&spots.1.name=over the door\
             &spots.1.place=high-wall&spots.1.x=11 ft 8 in&spots.1.y=12 ft&spots.1.aim=up\
             &window.x=7 ft&window.y=0 in&alarm.x=5 ft&alarm.y=6 ft&back.x=2 ft&back.y=12 ft",
        )
    },
    Told {
        takes: &[("cfm", "room-air", "air"), ("way", "room", "widest")],
        ..told(10, &w::DEMO_DEN, &w::DEMO_THROW, "register-throw?know=cfm")
    },
    Told {
        takes: &[("flow", "room-air", "air")],
        ..told(
            10,
            &w::DEMO_DEN,
            &w::DEMO_DUCT,
            "duct-branch?now.length=28 ft&piece_length=4 ft&piece_slack=5 %25&wrap=no",
        )
    },
    Told {
        takes: &[("flow", "room-air", "air")],
        ..told(10, &w::DEMO_DEN, &w::DEMO_BACK, "return-path?gap=1/2 in")
    },
    told(14, &w::DEMO_DEN, &w::DEMO_BOARDS, "boards?panel=1/2"),
    Told {
        takes: &[("long", "boards", "longest"), ("sheets", "boards", "boards")],
        ..told(14, &w::DEMO_DEN, &w::DEMO_WEIGHT, "board-weight?panel=1/2&pails=1")
    },
    told(16, &w::DEMO_DEN, &w::DEMO_COMPOUND, "joint-compound?level=4"),
    Told {
        takes: LONG_AND_WIDE,
        ..told(18, &w::DEMO_DEN, &w::DEMO_SKIM, "skim-coat?ground=flat&coats=2&old=new")
    },
    Told {
        takes: &[("gallons", "skim-coat", "coat"), ("room", "room", "volume-to-be")],
        ..told(
            18,
            &w::DEMO_DEN,
            &w::DEMO_DRYING,
            "drying?temperature=62 °F&humidity=60 %25&thick=1/32 in",
        )
    },
    // 168 sq ft, two coats at 400 sq ft a gallon: 0.84 gal; a primer at 250: 0.672 gal.
    Told {
        takes: &[("area", "boards", "surface")],
        ..told(20, &w::DEMO_DEN, &w::DEMO_PAINT, "paint?sands=no")
    },
    // 48 sq ft: 0.24 gal and 0.192 gal.
    Told {
        takes: &[("area", "room", "ceiling-area")],
        ..told(20, &w::DEMO_HALL, &w::DEMO_HALL_PAINT, "paint?sands=no")
    },
];

/// What was noted: ticks, prices, what is there already.
pub(super) static JOTS: &[(&str, &str)] = &[
    ("looked strip dead", "yes"),
    ("looked strip closed", "yes"),
    ("looked rough-in line", "yes"),
    ("price primer", "24"),
    ("given electrician gone", "18.0 in3\twithin\tOld closet switch (invented)"),
    ("given inspector gone", "18.0 in3\twithin\tOld closet switch (invented)"),
];
