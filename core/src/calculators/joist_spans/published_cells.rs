//! The 128 cells of the published table's 19.2 in and 24 in rows with storage.

use super::*;
use crate::rules::framing::ceiling_joists::{Attic, Size, Spacing, Species};

/// A species and grade with its values, and its cells at 19.2 in and at 24 in.
struct Grade {
    /// As the calculator offers it, where it does.
    own: Option<Species>,
    /// Bending of 2x4, 2x6, 2x8 and 2x10, with the factor for size, and stiffness, in psi.
    wood: ([f64; 4], f64),
    /// Feet and inches of 2x4, 2x6, 2x8, 2x10.
    cells: [[(i64, i64); 4]; 2],
}

/// What is held for a size in western lumber; southern pine's values are told by size.
fn by_size(bending: f64) -> [f64; 4] {
    [1.5, 1.3, 1.2, 1.1].map(|factor| factor * bending)
}

/// Source of the cells: 2018 IRC, Table R802.5.1(2), printed page 405, live load 20 psf, dead load
/// 10 psf, L/240. The wood's values are those of the NDS Supplement (2018), Tables 4A and 4B, from
/// memory.
#[rustfmt::skip]
fn grades() -> [Grade; 16] {
    use Species::{DouglasFirLarch, HemFir, SouthernPine, SprucePineFir};
    let of = |own, wood, cells| Grade { own, wood, cells };
    [
        of(None, (by_size(1500.0), 1.9e6), [[(8, 11), (14, 0), (18, 5), (23, 7)], [(8, 3), (13, 0), (17, 2), (21, 3)]]),
        of(None, (by_size(1000.0), 1.7e6), [[(8, 7), (12, 6), (15, 10), (19, 5)], [(7, 8), (11, 2), (14, 2), (17, 4)]]),
        of(Some(DouglasFirLarch), (by_size(900.0), 1.6e6), [[(8, 2), (11, 11), (15, 1), (18, 5)], [(7, 3), (10, 8), (13, 6), (16, 5)]]),
        of(None, (by_size(525.0), 1.4e6), [[(6, 2), (9, 1), (11, 6), (14, 1)], [(5, 7), (8, 1), (10, 3), (12, 7)]]),
        of(None, (by_size(1400.0), 1.6e6), [[(8, 5), (13, 3), (17, 5), (22, 3)], [(7, 10), (12, 3), (16, 2), (20, 6)]]),
        of(None, (by_size(975.0), 1.5e6), [[(8, 3), (12, 4), (15, 8), (19, 2)], [(7, 7), (11, 1), (14, 0), (17, 1)]]),
        of(Some(HemFir), (by_size(850.0), 1.3e6), [[(7, 10), (11, 7), (14, 8), (17, 10)], [(7, 1), (10, 4), (13, 1), (16, 0)]]),
        of(None, (by_size(500.0), 1.2e6), [[(6, 1), (8, 10), (11, 3), (13, 8)], [(5, 5), (7, 11), (10, 0), (12, 3)]]),
        of(None, ([2350.0, 2100.0, 1950.0, 1700.0], 1.8e6), [[(8, 9), (13, 9), (18, 2), (23, 1)], [(8, 1), (12, 9), (16, 10), (21, 6)]]),
        of(None, ([1500.0, 1350.0, 1250.0, 1050.0], 1.6e6), [[(8, 5), (12, 9), (16, 2), (18, 11)], [(7, 8), (11, 5), (14, 6), (16, 11)]]),
        of(Some(SouthernPine), ([1100.0, 1000.0, 925.0, 800.0], 1.4e6), [[(7, 4), (11, 0), (13, 11), (16, 6)], [(6, 7), (9, 10), (12, 6), (14, 9)]]),
        of(None, ([650.0, 575.0, 525.0, 475.0], 1.3e6), [[(5, 8), (8, 4), (10, 6), (12, 9)], [(5, 1), (7, 5), (9, 5), (11, 5)]]),
        of(None, (by_size(1250.0), 1.5e6), [[(8, 3), (12, 11), (17, 1), (21, 8)], [(7, 8), (12, 0), (15, 10), (19, 5)]]),
        of(None, (by_size(875.0), 1.4e6), [[(8, 0), (11, 9), (14, 10), (18, 2)], [(7, 2), (10, 6), (13, 3), (16, 3)]]),
        of(Some(SprucePineFir), (by_size(875.0), 1.4e6), [[(8, 0), (11, 9), (14, 10), (18, 2)], [(7, 2), (10, 6), (13, 3), (16, 3)]]),
        of(None, (by_size(500.0), 1.2e6), [[(6, 1), (8, 10), (11, 3), (13, 8)], [(5, 5), (7, 11), (10, 0), (12, 3)]]),
    ]
}

const SIZES: [Size; 4] = [Size::TwoByFour, Size::TwoBySix, Size::TwoByEight, Size::TwoByTen];

/// The same by the textbook: the least of what bends too far and what is too weak, in inches.
fn by_textbook((bending, stiffness): (f64, f64), depth: f64, apart: f64) -> f64 {
    // Pounds on an inch of joist.
    let (live, all) = (20.0 * apart / 144.0, 30.0 * apart / 144.0);
    let inertia = 1.5 * depth.powi(3) / 12.0;
    let modulus = 1.5 * depth.powi(2) / 6.0;
    let stiff = libm::cbrt(384.0 * stiffness * inertia / (1200.0 * live));
    let strong = libm::sqrt(8.0 * bending * 1.15 * modulus / all);
    stiff.min(strong)
}

#[test]
fn all_but_one_of_the_printed_cells_come_out_to_the_inch() {
    let mut off = Vec::new();
    let mut own = 0;
    for grade in grades() {
        for ((apart, inches), cells) in
            [(Spacing::S19, 19.2), (Spacing::S24, 24.0)].into_iter().zip(grade.cells)
        {
            for (at, size) in SIZES.into_iter().enumerate() {
                let printed = 12 * cells[at].0 + cells[at].1;
                let depth = [3.5, 5.5, 7.25, 9.25][at];
                let wood = (grade.wood.0[at], grade.wood.1);
                let worked = libm::round(by_textbook(wood, depth, inches)) as i64;
                if worked != printed {
                    off.push((wood, inches, printed, worked));
                }
                if let Some(species) = grade.own {
                    let attic = Attic::Storage;
                    let input = Input { species, size, apart, attic, ..Input::sample() };
                    let table = solve(&input).unwrap().table;
                    assert_eq!(table, Some(Length::inches(printed, 1)), "{species:?} {size:?}");
                    own += 1;
                }
            }
        }
    }
    assert_eq!(own, 32, "what the calculator offers is all among them");
    // Southern pine, select structural, 2x10 at 19.2 in: 23 ft 1 in is printed.
    assert_eq!(off.len(), 1, "{off:?}");
    assert_eq!((off[0].2, (off[0].2 - off[0].3).abs()), (277, 1));
}
