//! Labels that are refused, each with the whole mistake and the readings offered instead.

use brimline::limits::{MACHINE_DOSE, OutOfRange, STRENGTH};
use brimline::trade::label::LabelMistake::{
    self, Ambiguous, Backwards, Empty, MoreThanWhole, Neat, NoPer, NoUnit, Range, Shape, TooLong, TwoRules,
    Unknown, Weight, Zero,
};
use brimline::trade::label::{LONGEST, read};
use brimline::units::System::{self, Imperial, Metric, Us};

#[track_caller]
fn refused(text: &str, system: System, mistake: LabelMistake) {
    assert_eq!(read(text, system), Err(mistake), "{text:?}");
}

fn texts(readings: &[&str]) -> Vec<String> {
    readings.iter().map(ToString::to_string).collect()
}

fn ambiguous(readings: &[&str]) -> LabelMistake {
    Ambiguous { readings: texts(readings) }
}

fn no_per(readings: &[&str]) -> LabelMistake {
    NoPer { readings: texts(readings) }
}

fn unknown(word: &str) -> LabelMistake {
    Unknown { word: word.to_owned() }
}

fn backwards(reading: &str) -> LabelMistake {
    Backwards { reading: reading.to_owned() }
}

#[test]
fn two_readings_of_equal_right() {
    refused("2:5", Us, ambiguous(&["2+5", "5+2"]));
    refused("1-64", Us, ambiguous(&["1:64", "1 to 64 US fl oz per US gal"]));
    refused("1-64", Metric, ambiguous(&["1:64", "1 to 64 mL per L"]));
    refused("1-64", Imperial, ambiguous(&["1:64", "1 to 64 imp fl oz per imp gal"]));
    refused("2-5", Metric, ambiguous(&["2+5", "5+2", "2 to 5 mL per L"]));
    refused("1:1,000", Us, ambiguous(&["1:1", "1:1000"]));
    refused("1:1,000", Metric, ambiguous(&["1:1", "1:1000"]));
    refused("1,125 oz/gal", Imperial, ambiguous(&["1.1250 oz/gal", "1125 oz/gal"]));
    refused("1:1.500", Metric, ambiguous(&["1:1.5", "1:1500"]));
    refused("1.125 mL/L", Metric, ambiguous(&["1.1250 mL/L", "1125 mL/L"]));
    // What a point has settled stays settled beside a comma.
    refused("1.500 oz per 1,000 gal", Us, ambiguous(&["1.5 oz per 1 gal", "1.5 oz per 1000 gal"]));
    // The measure that a bracket names goes with every reading.
    refused("1,500 oz/gal (US)", Imperial, ambiguous(&["1.5 oz/gal US", "1500 oz/gal US"]));
    refused("1 per 64", Us, ambiguous(&["1:64", "1 in 64"]));
    refused("2 per 5", Us, ambiguous(&["2+5", "2 in 5"]));
    refused("0 per 64", Us, Zero);
    refused("2:5 to 2:10", Us, ambiguous(&["2+5 to 2+10", "5+2 to 10+2"]));
    refused("2:5-10", Us, ambiguous(&["2+5 to 2+10", "5+2 to 10+2"]));
    refused("1:5 to 2:5", Us, ambiguous(&["1+5 to 2+5"]));
    refused("1:1,256", Us, ambiguous(&["1:1.2560", "1:1256"]));
    refused("1:1,000 to 1:2,000", Us, ambiguous(&["1:1 to 1:2", "1:1000 to 1:2000"]));
    // The second reading is more than any canister for a tank.
    refused("1,500 oz per tank", Us, ambiguous(&["1.5 oz per tank"]));
}

/// A metric site tells neither gallon; both are offered, with what the label says about the water.
#[test]
fn gallons_in_a_metric_site() {
    refused("2 oz/gal", Metric, ambiguous(&["2 US fl oz per US gal", "2 imp fl oz per imp gal"]));
    refused("2 oz per 5 gal", Metric, ambiguous(&["2 US fl oz per 5 US gal", "2 imp fl oz per 5 imp gal"]));
    refused("10 mL/gal", Metric, ambiguous(&["10 mL per US gal", "10 mL per imp gal"]));
    refused(
        "3 to 6 oz per tank",
        Metric,
        ambiguous(&["3 to 6 US fl oz per tank", "3 to 6 imp fl oz per tank"]),
    );
    refused("2 oz", Metric, ambiguous(&["2 US fl oz per tank", "2 imp fl oz per tank"]));
    let made_up = ["2 US fl oz per US gal made up", "2 imp fl oz per imp gal made up"];
    refused("2 oz makes 1 gal", Metric, ambiguous(&made_up));
    refused("4-2 oz/gal", Metric, ambiguous(&["2 to 4 US fl oz per US gal", "2 to 4 imp fl oz per imp gal"]));
}

#[test]
fn half_a_rule() {
    refused("2 oz", Us, no_per(&["2 US fl oz per US gal", "2 US fl oz per tank"]));
    refused("2 fl oz", Imperial, no_per(&["2 imp fl oz per imp gal", "2 imp fl oz per tank"]));
    refused("15 mL", Metric, no_per(&["15 mL per L", "15 mL per tank"]));
    refused("4-2 oz", Us, no_per(&["2 to 4 US fl oz per US gal", "2 to 4 US fl oz per tank"]));
    for text in ["64", "½", "1 64", "64,000"] {
        refused(text, Us, NoUnit);
    }
    for text in [
        "oz",
        "1:",
        ":64",
        "1:64:2",
        "per gal",
        "2 oz per",
        "water",
        "US",
        "% 5",
        "1:64 to",
        "2 gal oz",
        "64:1-32",
        "1:64-",
        "1:0.5-2",
        "1:64 to 1 in 64",
        "1/32-64",
        "2 % in",
        "2 oz to 4 oz per",
        "1 oz per gal to 2 oz per tank",
        "3 oz per gal tank",
        "1 half oz per gal",
    ] {
        refused(text, Us, Shape);
    }
    refused("", Us, Empty);
    refused(" \t\n", Us, Empty);
    refused("()", Us, Empty);
}

/// A gallon that is the water must not be read as the dose.
#[test]
fn the_water_is_not_the_dose() {
    for text in ["1 gallon of water to 2 oz", "1 gal water per 2 oz cleaner", "1 part water in 64"] {
        refused(text, Us, Shape);
    }
}

#[test]
fn weights_need_more_than_a_label() {
    for text in ["5 % w/v", "5 % w/w", "30 mg per L", "2 wt per gal"] {
        refused(text, Metric, Weight);
    }
}

#[test]
fn impossible_numbers() {
    for text in [
        "1:0-64",
        "1 in 64 to 1 in 0",
        "0:64",
        "1:0",
        "1+0",
        "0+64",
        "0 in 64",
        "1 in 0",
        "0 oz/gal",
        "2 oz per 0 gal",
        "0 %",
        "0 oz",
    ] {
        refused(text, Us, Zero);
    }
    refused("4 to 2 oz/gal", Us, backwards("2 to 4 US fl oz per US gal"));
    refused("4-2 oz makes 1 gal", Us, backwards("2 to 4 US fl oz per US gal made up"));
    refused("6 to 3 oz per tank", Us, backwards("3 to 6 US fl oz per tank"));
    refused("1 to 0.5 %", Us, backwards("0.5 to 1 %"));
    refused("200 to 40 %", Us, MoreThanWhole);
    for text in ["120 %", "3 in 2", "64/1", "2 gal makes 1 gal"] {
        refused(text, Us, MoreThanWhole);
    }
    refused("1:200000", Us, Range(OutOfRange::Below(&STRENGTH)));
    refused("30 L per tank", Metric, Range(OutOfRange::Above(&MACHINE_DOSE)));
    refused("0.0001 mL per tank", Metric, Range(OutOfRange::Below(&MACHINE_DOSE)));
}

#[test]
fn words_that_no_dilution_uses() {
    refused("thirteen oz/gal", Us, unknown("thirteen"));
    refused("2 oz/firkin", Us, unknown("firkin"));
    refused("1:64 or 1:128", Us, unknown("or"));
    refused("1:64 = 2 oz/gal", Us, unknown("="));
    refused("-1:64?", Us, unknown("?"));
    // No pause between statements: a decimal that lost its zero, or its place.
    refused(",5 %", Us, unknown(","));
    refused("1:64 ,5 %", Us, unknown(","));
    refused("1:1.2.3", Us, unknown("1.2.3"));
    refused("<b>1:64</b>", Us, unknown("<"));
    refused("1:64 🧴", Us, unknown("🧴"));
    refused(&"9".repeat(LONGEST), Us, unknown(&"9".repeat(LONGEST)));
    refused(&"9".repeat(LONGEST + 1), Us, TooLong);
}

/// Nothing that is used neat goes into a tank; beside a dilution it is a second rule.
#[test]
fn neat_is_no_dilution() {
    for text in [
        "neat",
        "Undiluted.",
        "use as is",
        "Ready to use",
        "ready-to-use solution",
        "RTU",
        "full strength",
        "Use neat (undiluted)",
    ] {
        refused(text, Us, Neat);
        refused(text, Metric, Neat);
    }
    assert_eq!(Neat.code(), "label-neat");
    refused("neat 1:64", Us, Shape);
    for text in ["1:64, neat", "Neat (1:64)"] {
        refused(text, Us, TwoRules { readings: texts(&["1:64"]) });
    }
}

/// Half a statement after a comma is never completed without the other half.
#[test]
fn listed_halves() {
    for text in
        ["2 oz, 5 gal", "1, 5 oz/gal", "0, 5 %", "1:64, 128", "1:64 (2 oz)", "2 oz (60 mL) per gal (4 L)"]
    {
        refused(text, Us, Shape);
    }
    refused("2 oz (60 mL)", Us, no_per(&["2 US fl oz per US gal", "2 US fl oz per tank"]));
    refused("(US)", Us, Shape);
    refused("1:64 (US) (imp)", Us, Shape);
    refused("2 imp fl oz/gal (US)", Us, Shape);
}

/// Within two in a hundred two statements are one, printed twice and rounded.
#[test]
fn two_statements() {
    refused("1:64 (4 oz/gal)", Us, TwoRules { readings: texts(&["1:64", "4 oz/gal"]) });
    refused("1:64 (15 mL/L)", Metric, TwoRules { readings: texts(&["1:64", "15 mL/L"]) });
    refused("1:64 (2 oz per tank)", Us, TwoRules { readings: texts(&["1:64", "2 oz per tank"]) });
    // What makes no dilution is not offered as one.
    refused("1:64 (1:32) (firkin)", Us, TwoRules { readings: texts(&["1:64", "1:32"]) });
    refused("1:64, 4 oz/gal", Us, TwoRules { readings: texts(&["1:64", "4 oz/gal"]) });
    refused("2 oz (90 mL) per gal", Us, TwoRules { readings: texts(&["2 oz per gal", "90 mL per gal"]) });
    refused("4 oz/gal, 1:64, US", Metric, TwoRules { readings: texts(&["4 oz/gal US", "1:64 US"]) });
    // Where no reading agrees with the clear statement, or two do, nothing is settled.
    let both = ["1:64", "4 US fl oz per US gal", "4 imp fl oz per imp gal"];
    refused("1:64 (4 oz/gal)", Metric, TwoRules { readings: texts(&both) });
    refused("1 per 64 (1.55 %)", Us, ambiguous(&["1:64", "1 in 64"]));
    refused("1.55 % (1 per 64)", Us, ambiguous(&["1:64", "1 in 64"]));
    // Saying it twice does not make it clear, even where the other reading is beyond the limits.
    refused("1,500 oz per tank, 1,500 oz per tank", Us, ambiguous(&["1.5 oz per tank"]));
    let gallons = ["2 US fl oz per US gal", "2 imp fl oz per imp gal"];
    refused("2 oz/gal (16 oz per 8 gal)", Metric, ambiguous(&gallons));
    assert!(read("1:64 (15.6 mL/L)", Metric).is_ok());
}
