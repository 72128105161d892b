//! Units of physical quantities other than lengths, areas and volumes.
//!
//! Factors are exact by definition: an inch is 25.4 mm, a pound 0.453 592 37 kg, standard gravity
//! 9.806 65 m/s², a Btu(IT) 1055.055 852 62 J, a US gallon 231 in³. Source: NIST SP 811 (2008),
//! B.8. A factor with more digits than fit is given to twelve or more.

/// Powers of the base kinds: length, force, heat, time, temperature, current, potential, money.
pub(crate) type Dims = [i8; 8];

/// A plain number.
pub(crate) const PURE: Dims = [0; 8];
/// A length, and so on.
pub(crate) const LENGTH: Dims = [1, 0, 0, 0, 0, 0, 0, 0];
const VOLUME: Dims = with(with(LENGTH, LENGTH, 1), LENGTH, 1);
const FORCE: Dims = [0, 1, 0, 0, 0, 0, 0, 0];
const HEAT: Dims = [0, 0, 1, 0, 0, 0, 0, 0];
const TIME: Dims = [0, 0, 0, 1, 0, 0, 0, 0];
const WARM: Dims = [0, 0, 0, 0, 1, 0, 0, 0];
const CURRENT: Dims = [0, 0, 0, 0, 0, 1, 0, 0];
const POTENTIAL: Dims = [0, 0, 0, 0, 0, 0, 1, 0];
const MONEY: Dims = [0, 0, 0, 0, 0, 0, 0, 1];

/// `a` to the first power times `b` to the power `times`.
pub(crate) const fn with(a: Dims, b: Dims, times: i8) -> Dims {
    let mut dims = a;
    let mut at = 0;
    while at < dims.len() {
        dims[at] += b[at] * times;
        at += 1;
    }
    dims
}

/// How a unit is shown to people who read metric: its sign, how many of it make one of the
/// customary unit, as a fraction, and what nothing of the customary unit is in it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Metric {
    pub(crate) sign: &'static str,
    pub(crate) over: i64,
    pub(crate) under: i64,
    /// Added after: in millionths of the metric unit.
    pub(crate) offset: i64,
}

/// A unit that a physical quantity is held in, and how it is written.
#[derive(Debug)]
pub struct Unit {
    /// As it is written in links and records, and as it may always be typed.
    pub key: &'static str,
    /// As a person reads it.
    pub(crate) sign: &'static str,
    /// Other ways to type it, small and without spaces.
    pub(crate) also: &'static [&'static str],
    /// No more decimals than this are shown.
    pub(crate) places: u32,
    /// Which kind of quantity it measures.
    pub(crate) dims: Dims,
    /// Base units in one of it: nanometres, pounds of force, Btu, minutes, degrees, amperes.
    pub(crate) size: (i128, i128),
    /// How it is shown in metric; none where it is the same there.
    pub(crate) metric: Option<Metric>,
}

const FOOT: i128 = 304_800_000;
const INCH: i128 = 25_400_000;

const fn metric(sign: &'static str, over: i64, under: i64) -> Option<Metric> {
    Some(Metric { sign, over, under, offset: 0 })
}

macro_rules! units {
    ($($(#[$doc:meta])* $name:ident = $key:literal, $sign:literal $also:tt, $places:literal, $dims:expr, $size:expr, $metric:expr;)*) => {
        $(
            $(#[$doc])*
            pub static $name: Unit = Unit {
                key: $key, sign: $sign, also: &$also, places: $places, dims: $dims, size: $size,
                metric: $metric,
            };
        )*
        /// All of them.
        pub static ALL: &[&Unit] = &[$(&$name,)*];
    };
}

units! {
    /// A plain decimal.
    NUMBER = "x", "" ["×"], 2, PURE, (1, 1), None;
    /// Hundredths.
    PERCENT = "%", "%" ["percent", "pct"], 1, PURE, (1, 100), None;
    /// Square inches of a hole or a cable: an area of a room is an area.
    SQUARE_INCH = "inch2", "sq in" [], 3, with(LENGTH, LENGTH, 1), (INCH * INCH, 1), metric("cm²", 64_516, 10_000);
    /// Hundredths of money, told finely: 7.25 % of tax is not 7.3.
    MONEY_PERCENT = "pct", "%" ["percent"], 3, PURE, (1, 100), None;
    /// A roof's rise in 12 of run.
    PITCH = "/12", "in 12" ["in12", "/12", ":12"], 2, PURE, (1, 12), None;
    /// Pounds of force on a square foot.
    PSF = "psf", "psf" ["lb/ft2", "lb/sqft"], 1, with(FORCE, LENGTH, -2), (1, FOOT * FOOT), metric("kPa", 47_880_258_980, 1_000_000_000_000);
    /// Pounds of force on a foot of length.
    PLF = "plf", "lb/ft" ["lb/ft", "lbft"], 0, with(FORCE, LENGTH, -1), (1, FOOT), metric("kN/m", 14_593_902_937, 1_000_000_000_000);
    /// Pounds of force on a square inch.
    PSI = "psi", "psi" ["lb/in2"], 0, with(FORCE, LENGTH, -2), (1, INCH * INCH), metric("MPa", 6_894_757_293, 1_000_000_000_000);
    /// Pounds of force.
    POUND = "lbf", "lb" ["lb", "lbs", "pounds"], 0, FORCE, (1, 1), metric("kN", 4_448_221_615, 1_000_000_000_000);
    /// Pounds of weight, to be carried.
    WEIGHT = "lb", "lb" ["lbs", "pounds"], 1, FORCE, (1, 1), metric("kg", 45_359_237, 100_000_000);
    /// A part of a pound, as a kitchen scale tells it.
    OUNCE = "oz", "oz" ["ounce", "ounces"], 1, FORCE, (1, 16), metric("g", 28_349_523_125, 1_000_000_000);
    /// What a truck's bed holds.
    CUBIC_YARD = "yd3", "cu yd" ["cuyd", "yards", "yd"], 2, VOLUME, (27 * FOOT * FOOT * FOOT, 1), metric("m³", 764_554_857_984, 1_000_000_000_000);
    /// How heavy a heap is.
    LB_PER_YARD = "lb/yd3", "lb/cu yd" ["lb/cuyd"], 0, with(FORCE, VOLUME, -1), (1, 27 * FOOT * FOOT * FOOT), metric("kg/m³", 593_276_421, 1_000_000_000);
    /// Pounds in a square foot of a sheet, to be carried.
    SHEET_WEIGHT = "lb/ft2", "lb/sq ft" [], 2, with(FORCE, LENGTH, -2), (1, FOOT * FOOT), metric("kg/m²", 4_882_427_636, 1_000_000_000);
    /// Pounds in a cubic foot.
    PCF = "pcf", "lb/cu ft" ["lb/cuft", "lb/ft3"], 2, with(FORCE, LENGTH, -3), (1, FOOT * FOOT * FOOT), metric("kg/m³", 16_018_463_374, 1_000_000_000);
    /// A temperature.
    FAHRENHEIT = "°F", "°F" ["degf", "deg"], 0, WARM, (1, 1), Some(Metric { sign: "°C", over: 5, under: 9, offset: -17_777_778 });
    /// A difference of temperatures.
    DEGREES = "F°", "°F" ["degf", "deg"], 0, WARM, (1, 1), metric("K", 5, 9);
    /// Heat in an hour.
    BTUH = "btu/h", "Btu/h" ["btuh", "btu/hr"], 0, with(HEAT, TIME, -1), (1, 60), metric("W", 293_071_070, 1_000_000_000);
    /// How well heat passes through a square foot.
    U_VALUE = "u", "Btu/h·ft²·°F" [], 3, with(with(with(HEAT, TIME, -1), LENGTH, -2), WARM, -1), (1, 60 * FOOT * FOOT), metric("W/m²K", 5_678_263, 1_000_000);
    /// How well heat is held back.
    R_VALUE = "r", "R" ["h·ft²·°f/btu"], 1, with(with(with(WARM, TIME, 1), LENGTH, 2), HEAT, -1), (60 * FOOT * FOOT, 1), metric("m²K/W", 176_110_184, 1_000_000_000);
    /// How well an inch of it holds heat back.
    R_PER_INCH = "r/in", "R per in" ["r/inch", "rperin"], 2, with(with(with(WARM, TIME, 1), LENGTH, 1), HEAT, -1), (60 * FOOT * FOOT, INCH), metric("m²K/W per cm", 69_334_718, 1_000_000_000);
    /// What warms a cubic foot by a degree.
    WARMING = "btu/cuft·f", "Btu/cu ft·°F" ["btu/ft3f"], 3, with(with(HEAT, LENGTH, -3), WARM, -1), (1, FOOT * FOOT * FOOT), metric("kJ/m³K", 67_066_105, 1_000_000);
    /// Air in a minute.
    CFM = "cfm", "cfm" ["cuft/min", "ft3/min"], 0, with(with(PURE, LENGTH, 3), TIME, -1), (FOOT * FOOT * FOOT, 1), metric("L/s", 471_947_443, 1_000_000_000);
    /// How fast air runs.
    FPM = "fpm", "fpm" ["ft/min"], 0, with(LENGTH, TIME, -1), (FOOT, 1), metric("m/s", 508, 100_000);
    /// Pressure, as a column of water at 4 °C.
    IN_WC = "inwc", "in wc" ["in.wc", "inw.c.", "in.w.c.", "in.wg", "inwg", "inw.g.", "in.w.g."], 4, with(FORCE, LENGTH, -2), (361_272_920_001, 10_000_000_000_000 * INCH * INCH), metric("Pa", 249_088_910_000, 1_000_000_000);
    /// Pressure lost along a duct.
    IN_WC_PER_100_FT = "inwc/100ft", "in wc/100 ft" ["in.wc/100ft", "in.wg/100ft", "inwg/100ft"], 4, with(FORCE, LENGTH, -3), (36_127_292, 1_000_000_000 * INCH * INCH * 100 * FOOT), metric("Pa/m", 817_220_833, 100_000_000);
    /// Pressure of a room against the house: told in pascals by crews of either system.
    PASCAL = "Pa", "Pa" ["pascal", "pascals"], 2, with(FORCE, LENGTH, -2), (145_037_737_730, 1_000_000_000_000_000 * INCH * INCH), None;
    /// What is open for air, less vanes and mesh.
    NET_IN2 = "net-in2", "sq in" ["in2", "in²", "sqin", "sq.in."], 1, with(LENGTH, LENGTH, 1), (INCH * INCH, 1), metric("cm²", 64_516, 10_000);
    /// A coefficient that is told finely.
    FACTOR = "factor", "" [], 4, PURE, (1, 1), None;
    /// Parts in a billion.
    BILLIONTH = "ppb", "billionths" [], 4, PURE, (1, 1_000_000_000), None;
    /// How often a room's air changes in an hour.
    PER_HOUR = "/h", "an hour" ["ach", "1/h"], 2, with(PURE, TIME, -1), (1, 60), None;
    /// Current.
    AMPERE = "A", "A" ["a", "amp", "amps"], 2, CURRENT, (1, 1), None;
    /// Potential.
    VOLT = "V", "V" ["v", "volts"], 1, POTENTIAL, (1, 1), None;
    /// What a conductor's length resists.
    OHMS_A_THOUSAND_FEET = "ohm/kft", "Ω/1000 ft" ["ohm/1000ft", "ω/kft"], 3, with(with(POTENTIAL, CURRENT, -1), LENGTH, -1), (1, 1_000 * FOOT), metric("Ω/km", 10_000, 3_048);
    /// How heavy cable is.
    POUNDS_A_THOUSAND_FEET = "lb/kft", "lb/1000 ft" ["lb/1000ft"], 0, with(FORCE, LENGTH, -1), (1, 1_000 * FOOT), metric("kg/km", 148_816_394, 100_000_000);
    /// Time.
    HOUR = "h", "h" ["hr", "hrs", "hours", "hour"], 1, TIME, (60, 1), None;
    /// A short time.
    SECOND = "s", "s" ["sec", "secs", "seconds"], 1, TIME, (1, 60), None;
    /// How high above the sea: past the mile that lengths are read to.
    ALTITUDE = "ft-asl", "ft" ["feet", "foot", "'"], 0, LENGTH, (FOOT, 1), metric("m", 3048, 10_000);
    /// What a bag or a bucket holds.
    GALLON = "gal", "gal" ["gallon", "gallons"], 2, with(with(LENGTH, LENGTH, 1), LENGTH, 1), (231 * INCH * INCH * INCH, 1), metric("L", 3_785_411_784, 1_000_000_000);
    /// A part of a gallon, as dehumidifiers are told in.
    PINT = "pt", "pt" ["pint", "pints"], 1, VOLUME, (231 * INCH * INCH * INCH, 8), metric("L", 473_176_473, 1_000_000_000);
    /// What a dehumidifier takes.
    PINT_A_DAY = "pt/day", "pt a day" ["ptaday", "pints/day"], 0, with(VOLUME, TIME, -1), (231 * INCH * INCH * INCH, 8 * 1440), metric("L a day", 473_176_473, 1_000_000_000);
    /// How heavy a wet product is.
    LB_PER_GAL = "lb/gal", "lb/gal" ["lbs/gal"], 2, with(FORCE, VOLUME, -1), (1, 231 * INCH * INCH * INCH), metric("kg/L", 119_826_427, 1_000_000_000);
    /// How far a gallon goes.
    SPREAD = "ft2/gal", "sq ft/gal" ["sqft/gal"], 1, with(PURE, LENGTH, -1), (144, 231 * INCH), metric("m²/L", 24_542_387, 1_000_000_000);
    /// A film's thickness: a thousandth of an inch.
    MIL = "mil", "mil" ["mils", "thou"], 2, LENGTH, (25_400, 1), metric("mm", 254, 10_000);
    /// What a foot of joint takes.
    CUBIC_INCH_A_FOOT = "in3/ft", "in³/ft" [], 2, with(LENGTH, LENGTH, 1), (INCH * INCH, 12), metric("cm³/m", 53_763_333, 1_000_000);
    /// What one worker covers in an hour.
    SQUARE_FOOT_AN_HOUR = "ft2/h", "sq ft/h" [], 0, with(with(LENGTH, LENGTH, 1), TIME, -1), (FOOT * FOOT, 60), metric("m²/h", 9_290_304, 100_000_000);
    /// Pressure of water vapor.
    KPA = "kPa", "kPa" [], 3, with(FORCE, LENGTH, -2), (145_037_737_730, 1_000_000_000_000 * INCH * INCH), None;
    /// Water in air: 7000 grains are a pound.
    GRAIN = "gr/ft3", "grains/cu ft" [], 2, with(FORCE, LENGTH, -3), (1, 7_000 * FOOT * FOOT * FOOT), metric("g/m³", 2_288_352, 1_000_000);
    /// Water carried off.
    POUND_AN_HOUR = "lb/h", "lb/h" [], 2, with(FORCE, TIME, -1), (1, 60), metric("kg/h", 45_359_237, 100_000_000);
    /// Heat in an hour that so much air carries at one degree of difference.
    AIR_HEAT = "btu/h/cfm/F°", "Btu/h·cfm·°F" [], 3, with(with(HEAT, with(with(LENGTH, LENGTH, 1), LENGTH, 1), -1), WARM, -1), (1, 60 * FOOT * FOOT * FOOT), metric("J/L·K", 1_117_768, 1_000_000);
    /// Money for an hour's work.
    MONEY_AN_HOUR = "$/h", "$/h" ["$/hr", "$/hour", "$ an hour"], 2, with(MONEY, TIME, -1), (1, 60), None;
    /// A hundredth of it, to which sums are rounded.
    CENT = "cent", "¢" ["¢", "cents"], 0, MONEY, (1, 100), None;
    /// Money, in the person's own currency.
    MONEY_SPENT = "$", "$" ["usd", "dollars"], 2, MONEY, (1, 1), None;
}

/// Units in which what was typed is shown as it was typed: with every decimal that it has. By their keys
/// they are the units that they come from, so that records and links don't differ.
pub mod typed {
    use super::Unit;

    /// A plain decimal.
    pub static NUMBER: Unit = Unit { places: 6, ..super::NUMBER };
    /// Time.
    pub static HOUR: Unit = Unit { places: 6, ..super::HOUR };
    /// Money for an hour's work.
    pub static MONEY_AN_HOUR: Unit = Unit { places: 6, ..super::MONEY_AN_HOUR };
    /// A share of money.
    pub static MONEY_PERCENT: Unit = Unit { places: 6, ..super::MONEY_PERCENT };
    /// Money.
    pub static MONEY_SPENT: Unit = Unit { places: 6, ..super::MONEY_SPENT };
}

/// One unit is told from another by its key.
impl PartialEq for Unit {
    fn eq(&self, other: &Self) -> bool {
        self.key == other.key
    }
}
impl Eq for Unit {}

impl Unit {
    /// The unit of this key.
    pub fn of_key(key: &str) -> Option<&'static Self> {
        ALL.iter().find(|unit| unit.key == key).copied()
    }
}
