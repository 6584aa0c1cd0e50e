//! Every number field, one row each: its name on the page, its limit, its units, and where its text
//! is kept.

mod lists;

use super::Typed;
use crate::limits::{self, Limit};
use crate::site::Entry;

/// The codes of the units that can stand beside a number.
type Units = &'static [&'static str];

const SHARE: Units = &["percent"];
const DOSES: Units = &["floz_us", "ml", "floz_imp"];
const TANKS: Units = &["gal_us", "l", "gal_imp"];
const LEVELS: Units = &["percent", "gal_us", "l", "gal_imp"];
const WIDTHS: Units = &["in", "cm", "mm"];
const SPEEDS: Units = &["mph", "ft_per_min", "km_per_h", "m_per_min"];
const FLOWS: Units = &["gal_us_per_min", "l_per_min", "gal_imp_per_min", "floz_us_per_min", "ml_per_min"];
const RATES: Units = &["gal_us_per_1000ft2", "ml_per_m2", "gal_imp_per_1000ft2"];
const AREAS: Units = &["ft2", "m2"];
const COVERAGES: Units = &["ft2_per_gal_us", "m2_per_l", "ft2_per_gal_imp"];
const CURES: Units = &["h", "d"];
const BATCHES: Units = &["l", "ml", "gal_us", "floz_us", "gal_imp"];
const TIMES: Units = &["min", "s"];
const CLOCK: Units = &["h", "min"];
const SECONDS: Units = &["s", "min"];
const PPM: Units = &["mg_per_l"];
const ACTIVES: Units = &["percent_wv", "g_per_l", "percent_ww"];
const DENSITIES: Units = &["g_per_ml", "lb_per_gal_us"];
const DEGREES: Units = &["deg_f", "deg_c"];
const AIR_SPEEDS: Units = &["ft_per_min", "m_per_s"];
const CATCHES: Units = &["floz_us", "ml", "floz_imp", "l", "gal_us", "gal_imp"];
const NUMBER: Units = &["one"];
const MASSES: Units = &["g", "oz", "kg", "lb"];
const BOTTLES: Units = &["floz_us", "ml", "floz_imp", "l", "gal_us", "gal_imp"];
const TRICKLES: Units = &["ml_per_min", "floz_us_per_min", "l_per_min"];
const LANES: Units = &["ft", "m", "in", "cm"];
const OFTEN: Units = &["per_day", "per_week", "per_month", "per_year"];
const MOP_PACES: Units = &["ft2_per_h", "m2_per_h"];
const CONTAINERS: Units = &["gal_us", "l", "gal_imp", "floz_us", "ml", "floz_imp"];
const MONEY: Units = &["money"];
const WAGES: Units = &["money_per_h"];
const WATER_PRICES: Units =
    &["money_per_1000gal_us", "money_per_m3", "money_per_gal_us", "money_per_l", "money_per_gal_imp"];
const SOLIDS_IN: Units = &["percent_wv", "g_per_l"];
const SHARES_MASS: Units = &["percent_ww"];
const BODY_DOSES: Units = &["mg_per_kg"];
const DAYS: Units = &["d"];
const DOSE_ERRORS: Units = &["percent", "floz_us", "ml", "floz_imp"];

/// `Variant: "name", LIMIT, UNITS, record.field;` for a field of which there is one,
/// `Variant: "name", LIMIT, UNITS, "key";` for one that belongs to the fill station alone, kept in
/// files under that key, and `Variant(index): …, record.list;` for one of a list.
macro_rules! fields {
    (
        $($(#[$doc:meta])* $one:ident: $key:literal, $limit:ident, $units:ident, $record:ident.$($place:ident).+;)*
        --
        $($(#[$own_doc:meta])* $own:ident: $own_name:literal, $own_limit:ident, $own_units:ident, $own_key:literal;)*
        --
        $($(#[$docs:meta])* $many:ident(index): $keys:literal, $limits:ident, $unitss:ident, $of:ident.$list:ident $(.$item:ident)?;)*
    ) => {
        /// A number field.
        #[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
        pub enum Field {
            $($(#[$doc])* $one,)*
            $($(#[$own_doc])* $own,)*
            $($(#[$docs])* $many(usize),)*
        }

        impl Field {
            /// Those of which there is one.
            pub const SINGLE: &[Self] = &[$(Self::$one,)* $(Self::$own,)*];

            /// Those of the fill station, with the keys that files know them by.
            pub const STATION: &[(Self, &str)] = &[$((Self::$own, $own_key)),*];

            /// The word key of its label and hint.
            pub fn key(self) -> &'static str {
                match self { $(Self::$one => $key,)* $(Self::$own => $own_name,)* $(Self::$many(_) => $keys,)* }
            }

            /// What it may hold.
            pub fn limit(self) -> &'static Limit {
                match self {
                    $(Self::$one => &limits::$limit,)*
                    $(Self::$own => &limits::$own_limit,)*
                    $(Self::$many(_) => &limits::$limits,)*
                }
            }

            /// The codes of the units that can stand beside it.
            pub fn units(self) -> &'static [&'static str] {
                match self { $(Self::$one => $units,)* $(Self::$own => $own_units,)* $(Self::$many(_) => $unitss,)* }
            }

            /// What was typed into it; `None` where the site has no such record.
            pub fn entry(self, typed: &Typed) -> Option<&Entry> {
                Some(match self {
                    $(Self::$one => &record!(typed, $record).$($place).+,)*
                    $(Self::$own)|* => typed.ask.station.entry(self)?,
                    $(Self::$many(index) => fields!(@ref record!(typed, $of).$list.get(index)? $(, $item)?),)*
                })
            }

            /// The place of its text, to change.
            pub fn entry_mut(self, typed: &mut Typed) -> Option<&mut Entry> {
                Some(match self {
                    $(Self::$one => &mut record_mut!(typed, $record).$($place).+,)*
                    $(Self::$own)|* => typed.ask.station.entry_mut(self)?,
                    $(Self::$many(index) => fields!(@mut record_mut!(typed, $of).$list.get_mut(index)? $(, $item)?),)*
                })
            }
        }
    };
    (@ref $entry:expr) => { $entry };
    (@ref $record:expr, $item:ident) => { &$record.$item };
    (@mut $entry:expr) => { $entry };
    (@mut $record:expr, $item:ident) => { &mut $record.$item };
}

macro_rules! record {
    ($typed:ident, machine) => {
        $typed.machine()?
    };
    ($typed:ident, measure) => {
        $typed.measure()?
    };
    ($typed:ident, product) => {
        $typed.product()?
    };
    ($typed:ident, floor) => {
        $typed.floor()?
    };
    ($typed:ident, finish) => {
        $typed.finish()?
    };
    ($typed:ident, trial) => {
        $typed.trial()?
    };
    ($typed:ident, standard) => {
        $typed.standard()?
    };
    ($typed:ident, $own:ident) => {
        $typed.$own
    };
}

macro_rules! record_mut {
    ($typed:ident, machine) => {
        $typed.machine_mut()?
    };
    ($typed:ident, measure) => {
        $typed.measure_mut()?
    };
    ($typed:ident, product) => {
        $typed.product_mut()?
    };
    ($typed:ident, floor) => {
        $typed.floor_mut()?
    };
    ($typed:ident, finish) => {
        $typed.finish_mut()?
    };
    ($typed:ident, trial) => {
        $typed.trial_mut()?
    };
    ($typed:ident, standard) => {
        $typed.draft_mut()?
    };
    ($typed:ident, $own:ident) => {
        $typed.$own
    };
}

fields! {
    /// The machine's solution tank.
    Tank: "machine-tank", TANK, TANKS, machine.tank;
    /// The machine's least concentrate for a full tank.
    Least: "machine-least", MACHINE_DOSE, DOSES, machine.least;
    /// The machine's most concentrate for a full tank.
    Most: "machine-most", MACHINE_DOSE, DOSES, machine.most;
    /// The share of its solution that the machine uses again.
    Reuse: "machine-reuse", REUSE, SHARE, machine.reuse;
    /// Cleaning path.
    Path: "machine-path", PATH, WIDTHS, machine.path;
    /// Overlap of two passes.
    Overlap: "machine-overlap", OVERLAP, WIDTHS, machine.overlap;
    /// Travel speed.
    Speed: "machine-speed", SPEED, SPEEDS, machine.speed;
    /// Time at work in the time spent.
    Efficiency: "machine-efficiency", EFFICIENCY, SHARE, machine.efficiency;
    /// How full the tank is filled.
    Level: "fill-level", LEVEL, LEVELS, ask.level;
    /// One graduation, stroke or cap.
    MeasureStep: "measure-step", MEASURE, DOSES, measure.step;
    /// The share of its solution that the machine picks up again.
    PickUp: "machine-pick-up", PICK_UP, SHARE, machine.pick_up;
    /// Water above the valve with a full tank, where gravity feeds the machine.
    HeadFull: "machine-head-full", HEAD, WIDTHS, machine.head_full;
    /// Water above the valve when the tank is as good as empty.
    HeadLow: "machine-head-low", HEAD, WIDTHS, machine.head_low;
    /// One dump, rinse and fill for another product.
    Change: "shift-change", REFILL_TIME, TIMES, ask.change;
    /// The air of the room.
    Air: "air-temperature", AIR, DEGREES, ask.air;
    /// Its relative humidity.
    Humidity: "air-humidity", HUMIDITY, SHARE, ask.humidity;
    /// How fast it moves along the floor.
    Draught: "air-speed", AIR_SPEED, AIR_SPEEDS, ask.draught;
    /// How long a drop stays on the floor.
    Drop: "floor-drop", DROP, SECONDS, floor.drop;
    /// The water that its tile takes up.
    Absorption: "floor-absorption", ABSORPTION, SHARE, floor.absorption;
    /// What one packet or tablet weighs, or the smallest division of a scale.
    MeasureWeight: "measure-weight", POWDER, MASSES, measure.weight;
    /// All that a wall unit delivers a time.
    MeasureTotal: "measure-total", FLOW, FLOWS, measure.total;
    /// The concentrate bottle of a machine that meters its own.
    Bottle: "machine-bottle", BOTTLE, BOTTLES, machine.bottle;
    /// The least solution that the floor should get.
    TargetLow: "floor-target-low", RATE, RATES, floor.target_low;
    /// The most solution that the floor should get.
    TargetHigh: "floor-target-high", RATE, RATES, floor.target_high;
    /// One drain, rinse and refill.
    Refill: "shift-refill", REFILL_TIME, TIMES, ask.refill;
    /// The active substance in the concentrate.
    Active: "product-active", ACTIVE_NEAT, ACTIVES, product.active;
    /// The concentrate's density.
    Density: "product-density", DENSITY, DENSITIES, product.density;
    /// The least active substance in the use solution by law, code or order.
    Minimum: "product-minimum", ACTIVE, PPM, product.minimum;
    /// How long the label wants the floor wet.
    Contact: "product-contact", CONTACT, TIMES, product.contact;
    /// The machine's recovery tank.
    Recovery: "machine-recovery", TANK, TANKS, machine.recovery;
    /// How long it runs on one charge.
    Battery: "machine-battery", RUN_TIME, CLOCK, machine.battery;
    /// How long a charge takes.
    Charge: "machine-charge", CHARGE, CLOCK, machine.charge;
    /// The least lane width that it can work on its own.
    LaneLeast: "machine-lane-least", LANE, LANES, machine.lane_least;
    /// The greatest.
    LaneMost: "machine-lane-most", LANE, LANES, machine.lane_most;
    /// What the product is bought in.
    Container: "product-container", CONTAINER, CONTAINERS, product.container;
    /// What one container costs.
    Price: "product-price", PRICE, MONEY, product.price;
    /// Days from ordering to delivery.
    Lead: "product-lead", LEAD, DAYS, product.lead;
    /// What an hour of labour costs.
    Wage: "cost-wage", WAGE, WAGES, ask.wage;
    /// What water costs.
    WaterPrice: "cost-water", WATER_PRICE, WATER_PRICES, ask.water_price;
    /// Floor area that a person dry-mops a time.
    DryMop: "shift-dry-mop", DRY_MOP, MOP_PACES, ask.dry_mop;
    /// An area that was cleaned to see how long it takes.
    TimedArea: "efficiency-area", AREA, AREAS, ask.timed_area;
    /// How long it took.
    TimedTime: "efficiency-time", WORK_TIME, TIMES, ask.timed;
    /// How far a day's use may differ.
    Spread: "stock-spread", SPREAD, SHARE, ask.spread;
    /// What is dissolved in the concentrate and stays when it dries.
    Solids: "product-solids", SOLIDS, SOLIDS_IN, product.solids;
    /// How often the floor is cleaned until somebody rinses it.
    Cleanings: "residue-cleanings", CLEANINGS, NUMBER, ask.cleanings;
    /// Foam in the shake test at once.
    FoamFirst: "foam-first", FOAM, WIDTHS, ask.foam_first;
    /// Foam after one minute.
    FoamLater: "foam-later", FOAM, WIDTHS, ask.foam_later;
    /// The tap water's alkalinity, as calcium carbonate.
    Alkalinity: "water-alkalinity", ALKALINITY, PPM, ask.alkalinity;
    /// The tap water's pH.
    TapPh: "water-ph", TAP_PH, NUMBER, ask.tap_ph;
    /// A flow setting to compare with.
    OtherSetting: "compare-setting", SETTING, NUMBER, ask.other_setting;
    /// The lowest pH that a finish bears.
    FinishPhLow: "finish-ph-low", PH, NUMBER, finish.ph_low;
    /// The highest.
    FinishPhHigh: "finish-ph-high", PH, NUMBER, finish.ph_high;
    /// Its coats.
    FinishCoats: "finish-coats", COATS, NUMBER, finish.coats;
    /// What one coat covers.
    FinishCoverage: "finish-coverage", COVERAGE, COVERAGES, finish.coverage;
    /// How long a coat dries before the next.
    FinishDry: "finish-dry", COAT_TIME, CLOCK, finish.dry;
    /// The share of it that stays when it dries.
    FinishSolids: "finish-solids", FINISH_SOLIDS, SHARE, finish.solids;
    /// How long before it may be scrubbed wet.
    FinishCure: "finish-cure", CURE, CURES, finish.cure;
    /// The floor that is stripped and coated.
    CoatArea: "coat-area", AREA, AREAS, ask.site.coat_area;
    /// How much strip solution is laid down.
    StripRate: "strip-rate", STRIP_RATE, RATES, ask.site.strip_rate;
    /// How long it stays.
    StripDwell: "strip-dwell", CONTACT, TIMES, ask.site.strip_dwell;
    /// What the last rinse reads.
    RinsePh: "rinse-ph", PH, NUMBER, ask.site.rinse_ph;
    /// What is mixed for one patch.
    Batch: "trial-batch", BATCH, BATCHES, trial.batch;
    /// How long a standard wants the floor wet.
    StandardContact: "standard-contact", CONTACT, TIMES, standard.contact;
    /// How often a standard wants the floor cleaned.
    StandardFrequency: "standard-frequency", FREQUENCY, OFTEN, standard.frequency;
    --
    /// What is in the tank now.
    Left: "station-left", RESIDUE, LEVELS, "left";
    /// The concentrate that was put in.
    PutIn: "station-put-in", MACHINE_DOSE, DOSES, "put_in";
    /// What a test strip shows.
    Strip: "reading-strip", ACTIVE, PPM, "strip";
    /// The drops of a drop test.
    Drops: "reading-drops", SHOWN, NUMBER, "drops";
    /// What one drop stands for.
    PerDrop: "reading-per-drop", ACTIVE, PPM, "per_drop";
    /// What a refractometer shows, °Brix.
    Brix: "reading-brix", SHOWN, NUMBER, "brix";
    /// The strength that 1 °Brix stands for.
    PerBrix: "reading-per-brix", READ_STRENGTH, SHARE, "per_brix";
    /// What a conductivity meter shows.
    Conductivity: "reading-conductivity", SHOWN, NUMBER, "conductivity";
    /// What it shows in the water alone.
    ConductivityWater: "reading-conductivity-water", SHOWN, NUMBER, "conductivity_water";
    /// What it shows in a solution of known strength.
    ConductivityKnown: "reading-conductivity-known", SHOWN, NUMBER, "conductivity_known";
    /// That strength.
    KnownStrength: "reading-known-strength", READ_STRENGTH, SHARE, "known_strength";
    /// Concentrate drawn in a catch test.
    Drawn: "reading-drawn", MACHINE_DOSE, DOSES, "drawn";
    /// The whole that came out in the same time.
    Caught: "reading-caught", LEVEL, TANKS, "caught";
    /// How far the measure may be off.
    SureMeasure: "sure-measure", TOLERANCE, DOSE_ERRORS, "sure_measure";
    /// How far the tank's mark may be off.
    SureTank: "sure-tank", TOLERANCE, LEVELS, "sure_tank";
    /// How far the label's own number may be off.
    SureLabel: "sure-label", TOLERANCE_SHARE, SHARE, "sure_label";
    --
    /// The flow of a setting, from 0.
    Setting(index): "machine-setting", FLOW, FLOWS, machine.settings;
    /// When an area opens, from 0.
    AreaOpens(index): "area-opens", SHIFT_TIME, CLOCK, site.areas.opens;
    /// When an area must be done.
    AreaCloses(index): "area-closes", SHIFT_TIME, CLOCK, site.areas.closes;
    /// The setting of a catch test, from 0.
    TestSetting(index): "catch-setting", SETTING, NUMBER, machine.tests.setting;
    /// How long was collected.
    TestTime(index): "catch-time", COLLECTED, SECONDS, machine.tests.time;
    /// What was collected.
    TestCaught(index): "catch-volume", CAUGHT, CATCHES, machine.tests.caught;
    /// What a metering tip of a wall unit draws, from 0.
    Tip(index): "measure-tip", TIP, TRICKLES, measure.tips;
    /// The least of a part in the product, from 0.
    PartLow(index): "part-low", PART, SHARES_MASS, product.parts.low;
    /// The most of it.
    PartHigh(index): "part-high", PART, SHARES_MASS, product.parts.high;
    /// Its acute toxicity estimate by mouth.
    PartOral(index): "part-oral", TOXICITY, BODY_DOSES, product.parts.oral;
    /// By skin.
    PartDermal(index): "part-dermal", TOXICITY, BODY_DOSES, product.parts.dermal;
    /// What a gloss meter reads on a patch, from 0.
    PatchGloss(index): "patch-gloss", GLOSS, NUMBER, trial.patches.gloss;
    /// What a slip meter reads on it.
    PatchSlip(index): "patch-slip", SLIP, NUMBER, trial.patches.slip;
    /// Its M factor for acute harm in water.
    PartMAcute(index): "part-m-acute", M_FACTOR, NUMBER, product.parts.m_acute;
    /// For long-lasting harm.
    PartMChronic(index): "part-m-chronic", M_FACTOR, NUMBER, product.parts.m_chronic;
    /// How wide an area's lanes are, from 0.
    AreaLane(index): "area-lane", LANE, LANES, site.areas.lane;
    /// How often an area is cleaned.
    AreaFrequency(index): "area-frequency", FREQUENCY, OFTEN, site.areas.frequency;
    /// The way to an area from the fill station.
    AreaWay(index): "area-way", WAY, TIMES, site.areas.way;
    /// The size of an area, from 0.
    AreaSize(index): "area-size", AREA, AREAS, site.areas.size;
}
