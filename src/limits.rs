//! Every limit on what can be typed, one row each: the check, the hint, the message and the test
//! generators all read these rows.

use crate::source::Source;
use crate::units::{
    ApplicationRate, Area, Coverage, Density, Dimension, Duration, Flow, Frequency, Length, Mass,
    MassConcentration, MassFraction, Money, Plain, Productivity, Quantity, Speed, Temperature, Volume,
    VolumeFraction, VolumePrice, Wage,
};

/// One row: the least and the greatest value accepted, both in SI units and both included.
#[derive(Debug)]
pub struct Limit {
    /// The stable name.
    pub name: &'static str,
    /// What it limits.
    pub dimension: Dimension,
    /// Least value accepted, SI.
    pub low: f64,
    /// Greatest value accepted, SI.
    pub high: f64,
}

/// Which side of a limit was passed.
#[derive(Clone, Copy, Debug)]
pub enum OutOfRange {
    /// Less than the least value.
    Below(&'static Limit),
    /// More than the greatest value.
    Above(&'static Limit),
}

impl PartialEq for OutOfRange {
    fn eq(&self, other: &Self) -> bool {
        match (self, other) {
            (Self::Below(a), Self::Below(b)) | (Self::Above(a), Self::Above(b)) => a.name == b.name,
            _ => false,
        }
    }
}

impl Limit {
    const fn row(name: &'static str, dimension: Dimension, low: f64, high: f64) -> Self {
        Self { name, dimension, low, high }
    }

    /// Why these values. It stands apart from them, so that the page, which does not show it, does not carry it.
    pub fn reason(&self) -> &'static str {
        REASONS.iter().find(|(name, _)| *name == self.name).map_or("", |(_, reason)| reason)
    }

    /// Where they come from.
    pub const fn source(&self) -> Source {
        Source::COMMON_PRACTICE
    }

    /// The value itself when it lies within.
    ///
    /// # Errors
    /// The side that was passed. A value that is not a number counts as below.
    ///
    /// ```
    /// use brimline::limits::{OutOfRange, TANK};
    /// use brimline::units::Volume;
    /// assert_eq!(TANK.check(Volume::new(0.04)), Ok(Volume::new(0.04)));
    /// assert_eq!(TANK.check(Volume::new(9.0)), Err(OutOfRange::Above(&TANK)));
    /// ```
    pub fn check<Q: Quantity>(&'static self, quantity: Q) -> Result<Q, OutOfRange> {
        debug_assert_eq!(Q::DIMENSION, self.dimension, "{} limits another quantity", self.name);
        self.check_si(quantity.si()).map(|()| quantity)
    }

    /// Whether a value in the SI unit of its dimension lies within.
    ///
    /// # Errors
    /// As [`Limit::check`].
    pub fn check_si(&'static self, si: f64) -> Result<(), OutOfRange> {
        // Typed units convert with one rounding: a value typed exactly at the limit is within it.
        let slack = 1e-12;
        if si > self.high * (1.0 + slack) {
            Err(OutOfRange::Above(self))
        } else if si >= self.low * (1.0 - slack) {
            Ok(())
        } else {
            Err(OutOfRange::Below(self))
        }
    }

    /// Whether a value lies so far beyond that nobody means it: more than [`FAR_BEYOND`] times.
    ///
    /// ```
    /// use brimline::limits::DENSITY;
    /// assert!(DENSITY.is_far(1_006_000.0) && !DENSITY.is_far(1_006.0) && !DENSITY.is_far(3_000.0));
    /// ```
    pub fn is_far(&self, si: f64) -> bool {
        si > FAR_BEYOND * self.high || FAR_BEYOND * si < self.low
    }
}

/// A value so many times beyond a limit is no slip at its edge: the number means something else. A decimal mark that
/// is taken for one between thousands makes a thousandfold, and the limits are wide; one place of ten beyond them parts
/// the two. Common practice, no source.
pub const FAR_BEYOND: f64 = 10.0;

const LITRE: f64 = 1e-3;
const MILLILITRE: f64 = 1e-6;

macro_rules! limits {
    ($($(#[$doc:meta])* $name:ident: $quantity:ident, $code:literal, $low:expr, $high:expr, $reason:literal;)*) => {
        $($(#[$doc])* pub static $name: Limit = Limit::row($code, <$quantity as Quantity>::DIMENSION, $low, $high);)*
        /// All rows.
        pub static ALL: &[&Limit] = &[$(&$name),*];
        const REASONS: &[(&str, &str)] = &[$(($code, $reason)),*];
    };
}

limits! {
    /// A solution tank.
    TANK: Volume, "tank", 0.5 * LITRE, 2_000.0 * LITRE, "from a hand spray bottle to twice the largest ride-on";
    /// The volume filled now.
    LEVEL: Volume, "level", 0.1 * LITRE, 2_000.0 * LITRE, "a tenth of a litre is the least a tank mark shows";
    /// How full, as a share of the tank.
    LEVEL_SHARE: VolumeFraction, "level-share", 0.01, 1.0, "a tank holds no more than itself";
    /// A machine's own least or greatest amount of concentrate for a full tank.
    MACHINE_DOSE: Volume, "machine-dose", MILLILITRE, 20.0 * LITRE, "one millilitre to a canister";
    /// A graduation, a pump stroke or a cap.
    MEASURE: Volume, "measure", 0.1 * MILLILITRE, 20.0 * LITRE, "a pipette graduation to a canister";
    /// Concentrate in the use solution.
    STRENGTH: VolumeFraction, "strength", 0.000_01, 1.0, "1 to 100,000 is weaker than any label, neat is the strongest";
    /// The flow of one setting.
    FLOW: Flow, "flow", 0.01 * LITRE / 60.0, 60.0 * LITRE / 60.0, "a dripping valve to a garden hose";
    /// The width cleaned in one pass.
    PATH: Length, "path", 0.1, 4.0, "a hand scrubber to the widest industrial rider";
    /// The width that two passes share.
    OVERLAP: Length, "overlap", 0.0, 1.0, "a metre is more than any pass shares";
    /// Travel speed.
    SPEED: Speed, "speed", 0.05, 5.0, "slower is standing, faster than 18 km/h no scrubber goes";
    /// Solution that a floor should get.
    RATE: ApplicationRate, "rate", MILLILITRE, 2_000.0 * MILLILITRE, "a damp mist to two millimetres of water";
    /// The size of an area.
    AREA: Area, "area", 0.1, 1_000_000.0, "a door mat to a hundred hectares";
    /// Time at work in the time spent.
    EFFICIENCY: VolumeFraction, "efficiency", 0.05, 1.0, "turning and waiting take the rest";
    /// Solution that a machine filters and uses again.
    REUSE: VolumeFraction, "reuse", 0.0, 0.95, "the floor, the filter and the dump always take some";
    /// The time of one drain, rinse and refill.
    REFILL_TIME: Duration, "refill-time", 0.0, 14_400.0, "four hours is half a shift";
    /// A time of the shift, from its start.
    SHIFT_TIME: Duration, "shift-time", 0.0, 86_400.0, "a shift ends within a day";
    /// How long an area took.
    WORK_TIME: Duration, "work-time", 1.0, 86_400.0, "a second to a day";
    /// Use solution that is left in a tank.
    RESIDUE: Volume, "residue", 0.0, 2_000.0 * LITRE, "an empty tank to a full one";
    /// A strength that was read, not chosen.
    READ_STRENGTH: VolumeFraction, "read-strength", 0.0, 1.0, "from plain water to neat concentrate";
    /// Powder to weigh out, or in one packet or tablet.
    POWDER: Mass, "powder", 0.000_1, 25.0, "a tenth of a gram to a sack";
    /// Powder in the use solution.
    POWDER_STRENGTH: MassConcentration, "powder-strength", 0.01, 500.0, "weaker than any label to a brine";
    /// A liquid's density, or a powder's as it is poured.
    DENSITY: Density, "density", 100.0, 2_500.0, "a light powder to a strong salt solution";
    /// Active substance in a product, by mass.
    ACTIVE_SHARE: MassFraction, "active-share", 0.000_01, 1.0, "a trace to the pure substance";
    /// Active substance in a use solution.
    ACTIVE: MassConcentration, "active", 0.000_1, 100.0, "a tenth of a ppm to 10 % w/v";
    /// Active substance in a concentrate.
    ACTIVE_NEAT: MassConcentration, "active-neat", 0.01, 1_500.0, "a trace to a strong acid";
    /// What an instrument shows.
    SHOWN: Plain, "shown", 0.0, 1_000_000.0, "no instrument at a fill station shows more";
    /// How far a volume may be off.
    TOLERANCE: Volume, "tolerance", 0.0, 100.0 * LITRE, "exact to a tank's worth";
    /// How far a volume or a label may be off, as a share.
    TOLERANCE_SHARE: VolumeFraction, "tolerance-share", 0.0, 0.5, "at half as much again nothing is measured";
    /// How long a floor must stay wet.
    CONTACT: Duration, "contact", 0.0, 7_200.0, "at once to two hours";
    /// What a metering tip draws.
    TIP: Flow, "tip", 0.000_1 * LITRE / 60.0, 10.0 * LITRE / 60.0, "a tenth of a millilitre to ten litres a minute";
    /// The air of a room.
    AIR: Temperature, "air", 273.15, 318.15, "0 to 45 °C: a cold store to a laundry";
    /// Relative humidity.
    HUMIDITY: VolumeFraction, "humidity", 0.0, 1.0, "dry air to fog";
    /// Air along the floor.
    AIR_SPEED: Speed, "air-speed", 0.0, 10.0, "still air to a strong fan";
    /// Solution that a machine picks up again.
    PICK_UP: VolumeFraction, "pick-up", 0.0, 0.999, "something always stays on the floor";
    /// How long a drop stays on a floor.
    DROP: Duration, "drop", 0.0, 3_600.0, "at once to an hour";
    /// The water that a tile takes up, as a share of its mass.
    ABSORPTION: VolumeFraction, "absorption", 0.0, 0.5, "glass to a brick that holds half its own weight";
    /// How long was collected in a catch test.
    COLLECTED: Duration, "collected", 1.0, 3_600.0, "a hand on a stopwatch is a third of a second off";
    /// The number of a flow setting.
    SETTING: Plain, "setting", 1.0, 99.0, "settings are numbered from 1";
    /// What was collected in a catch test.
    CAUGHT: Volume, "caught", 0.0, 100.0 * LITRE, "nothing to a barrel";
    /// Water above a valve.
    HEAD: Length, "head", 0.005, 2.0, "a finger's breadth to a wall tank";
    /// The bottle of a machine that meters its own concentrate.
    BOTTLE: Volume, "bottle", 50.0 * MILLILITRE, 25.0 * LITRE, "a flask to a canister";
    /// How long a machine runs on one charge.
    RUN_TIME: Duration, "run-time", 300.0, 86_400.0, "five minutes is a spent battery, a day more than any holds";
    /// How long a charge takes.
    CHARGE: Duration, "charge", 300.0, 172_800.0, "a change of batteries to two days";
    /// The width of a lane, or of open floor.
    LANE: Length, "lane", 0.1, 500.0, "a cupboard door to an airfield";
    /// The way from the fill station.
    WAY: Duration, "way", 0.0, 7_200.0, "next to it to two hours";
    /// How often an area is cleaned.
    FREQUENCY: Frequency, "frequency", 1.0 / 31_556_952.0 / 10.0, 48.0 / 86_400.0, "once in ten years to every half hour";
    /// Floor area that a person dry-mops a time.
    DRY_MOP: Productivity, "dry-mop", 10.0 / 3_600.0, 20_000.0 / 3_600.0, "a cloth on a stick to a wide mop in a hall";
    /// What is dissolved in a concentrate and stays when it dries.
    SOLIDS: MassConcentration, "solids", 0.0, 1_500.0, "nothing to a syrup";
    /// A part in a product, by mass.
    PART: MassFraction, "part", 0.0, 1.0, "a trace to the pure substance";
    /// An acute toxicity estimate, mass for each body mass.
    TOXICITY: MassFraction, "toxicity", 1e-9, 0.1, "a thousandth of a milligram to 100 g for a kilogram";
    /// An M factor of harm in water.
    M_FACTOR: Plain, "m-factor", 1.0, 1_000_000.0, "1, 10, 100 and so on";
    /// How often a floor was cleaned.
    CLEANINGS: Plain, "cleanings", 1.0, 10_000.0, "once to every day of thirty years";
    /// The foam in a bottle.
    FOAM: Length, "foam", 0.0, 0.5, "none to a large bottle full";
    /// The alkalinity of tap water.
    ALKALINITY: MassConcentration, "alkalinity", 0.0, 1.0, "rain water to a hard well, as calcium carbonate";
    /// The pH of tap water.
    TAP_PH: Plain, "tap-ph", 4.0, 11.0, "no tap water is more acid or more alkaline";
    /// The pH that a floor finish bears, or that a rinse reads.
    PH: Plain, "ph", 0.0, 14.0, "the scale";
    /// Coats of a finish.
    COATS: Plain, "coats", 1.0, 20.0, "one to a floor built up for years";
    /// What a volume of finish covers, one coat.
    COVERAGE: Coverage, "coverage", 1_000.0, 500_000.0, "a thick seal to a thin mist: 1 to 500 m²/L";
    /// How long a coat dries.
    COAT_TIME: Duration, "coat-time", 60.0, 172_800.0, "a minute to two days";
    /// How long before a machine may scrub a new finish wet.
    CURE: Duration, "cure", 0.0, 90.0 * 86_400.0, "at once to three months";
    /// The share of a finish that stays when it dries.
    FINISH_SOLIDS: VolumeFraction, "finish-solids", 0.01, 1.0, "a thin one to one without water";
    /// What is laid down to strip a floor.
    STRIP_RATE: ApplicationRate, "strip-rate", 0.01 * LITRE, 5.0 * LITRE, "a damp floor to a flood: 10 mL/m² to 5 L/m²";
    /// What is mixed for one patch.
    BATCH: Volume, "batch", 100.0 * MILLILITRE, 20.0 * LITRE, "a cup to a bucket";
    /// What a gloss meter reads.
    GLOSS: Plain, "gloss", 0.0, 1_000.0, "a scale that runs to 100 for black glass, and mirrors beyond";
    /// What a slip meter reads.
    SLIP: Plain, "slip", 0.0, 2.0, "ice to rubber on grit";
    /// What concentrate is bought in.
    CONTAINER: Volume, "container", 10.0 * MILLILITRE, 1_100.0 * LITRE, "a sachet to a tank on a pallet";
    /// What one container costs.
    PRICE: Money, "price", 0.0, 10_000_000.0, "for nothing to ten million";
    /// What an hour of labour costs.
    WAGE: Wage, "wage", 0.0, 1_000_000.0 / 3_600.0, "for nothing to a million an hour";
    /// What water costs, with its sewage.
    WATER_PRICE: VolumePrice, "water-price", 0.0, 1_000_000.0, "for nothing to a million a cubic metre";
    /// Days from ordering to delivery.
    LEAD: Duration, "lead", 0.0, 365.0 * 86_400.0, "the same day to a year";
    /// Containers on a shelf.
    SHELF: Plain, "shelf", 0.0, 10_000.0, "none to a warehouse";
    /// Parts of water to one part of product.
    PARTS: Plain, "parts", 1.0, 2_000.0, "as much water as product to weaker than any label";
    /// Tasks of a session of practice.
    TASKS: Plain, "tasks", 1.0, 30.0, "as many as a result code has room for";
    /// Months that a thing shown in practice holds.
    MONTHS: Plain, "months", 1.0, 120.0, "a month to ten years";
    /// How far a day's use may differ, one standard deviation of its mean.
    SPREAD: VolumeFraction, "spread", 0.0, 3.0, "always the same to three times its mean";
}
