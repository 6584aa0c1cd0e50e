//! The words that labels are made of.

use crate::units::{Dimension, Exact, System, UNITS, Unit, unit};

/// A measure whose size the word alone does not tell.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Customary {
    FluidOunce,
    Pint,
    Quart,
    Gallon,
}

impl Customary {
    pub(super) fn in_system(self, system: System) -> Option<&'static Unit> {
        let (us, imperial) = match self {
            Self::FluidOunce => ("floz_us", "floz_imp"),
            Self::Pint => ("pt_us", "pt_imp"),
            Self::Quart => ("qt_us", "qt_imp"),
            Self::Gallon => ("gal_us", "gal_imp"),
        };
        match system {
            System::Us => unit(us),
            System::Imperial => unit(imperial),
            System::Metric => None,
        }
    }
}

/// A volume unit on a label.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Measure {
    Known(&'static Unit),
    Customary(Customary),
    /// "oz" alone: fluid on a liquid's label.
    BareOunce,
}

/// What a word says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Word {
    Measure(Measure),
    Fluid,
    To,
    In,
    Per,
    Water,
    MadeUp,
    /// What is made: finished solution in an amount, nothing new beside a ratio.
    Solution,
    /// Not to be diluted.
    Neat,
    Tank,
    System(System),
    Percent,
    /// A unit of weight.
    Mass(&'static str),
    /// "oz" beside it is the avoirdupois ounce.
    Weight,
    /// A share by weight, which no dilution here is read from.
    ByWeight,
    /// Parts per million of active substance, 1 mg/L each.
    Ppm,
    /// A whole packet or tablet.
    Packet,
    /// Says nothing about the amount.
    Filler,
}

#[rustfmt::skip]
const WORDS: &[(&[&str], Word)] = &[
    (&["to", "bis"], Word::To),
    (&["in"], Word::In),
    (&["per", "for", "each", "every"], Word::Per),
    (&["water"], Word::Water),
    (&["makes", "make", "made", "total", "finished"], Word::MadeUp),
    (&["solution"], Word::Solution),
    (&["neat", "undiluted", "rtu", "as is", "as-is", "ready to use", "ready-to-use", "full strength", "full-strength", "do not dilute"], Word::Neat),
    (&["tank", "tanks", "tankful", "fill"], Word::Tank),
    (&["us", "u.s", "usa", "american"], Word::System(System::Us)),
    (&["imp", "imperial", "uk", "u.k", "british"], Word::System(System::Imperial)),
    (&["percent", "pct"], Word::Percent),
    (&["fl", "fluid", "liquid"], Word::Fluid),
    (&["floz", "flozs", "fl.oz"], Word::Measure(Measure::Customary(Customary::FluidOunce))),
    (&["oz", "ozs", "ounce", "ounces"], Word::Measure(Measure::BareOunce)),
    (&["pt", "pts", "pint", "pints"], Word::Measure(Measure::Customary(Customary::Pint))),
    (&["qt", "qts", "quart", "quarts"], Word::Measure(Measure::Customary(Customary::Quart))),
    (&["gal", "gals", "gall", "gallon", "gallons"], Word::Measure(Measure::Customary(Customary::Gallon))),
    (&["g", "gram", "grams", "gm"], Word::Mass("g")),
    (&["kg", "kilogram", "kilograms"], Word::Mass("kg")),
    (&["lb", "lbs", "pound", "pounds"], Word::Mass("lb")),
    (&["wt", "weight"], Word::Weight),
    (&["w/v", "w/w", "mg"], Word::ByWeight),
    (&["ppm", "mg/l", "mg/liter", "mg/litre"], Word::Ppm),
    (&["packet", "packets", "pack", "packs", "pouch", "pouches", "sachet", "sachets", "tablet", "tablets", "tab", "tabs"], Word::Packet),
    (&["part", "parts", "concentrate", "product", "chemical", "cleaner", "of", "up", "with", "the", "a", "an", "full", "v/v", "vol", "volume", "by", "use", "dilution", "ratio", "add", "mix", "mixed", "dilute", "diluted", "at", "cold", "warm", "hot", "clean", "powder", "active", "available"], Word::Filler),
];

/// What is read as one word although a space or sign stands in it, in lower case.
pub(super) const PHRASES: &[&str] = &[
    "v/v",
    "w/v",
    "w/w",
    "mg/l",
    "mg/liter",
    "mg/litre",
    "as is",
    "as-is",
    "ready to use",
    "ready-to-use",
    "full strength",
    "full-strength",
    "do not dilute",
    "one half",
    "one-half",
];

const COUNTS: [&str; 12] =
    ["one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "eleven", "twelve"];

/// The number that a lower-case word is.
pub(super) fn number_word(text: &str) -> Option<f64> {
    if matches!(text, "half" | "one half" | "one-half") {
        return Some(0.5);
    }
    (1_u8..).zip(COUNTS).find(|(_, word)| *word == text).map(|(number, _)| f64::from(number))
}

/// Labels in the laboratory's manner measure in it; nothing on the page is shown in it.
/// Source: BIPM SI Brochure, 9th edition (2019), tables 7 and 8.
static DECILITRE: Unit = Unit {
    code: "dl",
    dimension: Dimension::Volume,
    exact: Exact::new(1, 10_000),
    zero: None,
    symbol: "dL",
    aliases: &["dl", "deciliter", "deciliters", "decilitre", "decilitres"],
    system: Some(System::Metric),
};

/// The meaning of a lower-case word.
pub(super) fn word(text: &str) -> Option<Word> {
    let listed = WORDS.iter().find(|(forms, _)| forms.contains(&text)).map(|(_, word)| *word);
    listed.or_else(|| {
        let named = |row: &&Unit| row.dimension == Dimension::Volume && row.aliases.contains(&text);
        UNITS.iter().chain([&DECILITRE]).find(named).map(|row| Word::Measure(Measure::Known(row)))
    })
}

/// How a reading names a unit, so that it has one meaning.
pub(super) fn plain_name(unit: &Unit) -> String {
    match unit.system {
        Some(System::Us) => format!("US {}", unit.symbol),
        _ => unit.symbol.to_owned(),
    }
}
