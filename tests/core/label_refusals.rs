//! Labels that are refused, each with the whole mistake and the readings offered instead.

use brimline::limits::{MACHINE_DOSE, OutOfRange, STRENGTH};
use brimline::trade::label::LabelMistake::{
    self, Ambiguous, Backwards, Empty, MoreThanWhole, NoPer, NoUnit, Range, Shape, TooLong, TwoRules,
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
    refused("1:1.500", Us, ambiguous(&["1:1.5", "1:1500"]));
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
    for text in
        ["oz", "1:", ":64", "1:64:2", "per gal", "2 oz per", "water", "US", "% 5", "1:64 to", "2 gal oz"]
    {
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
    for text in ["30 g/L", "2 oz wt per gal", "1 lb per tank", "200 ppm", "5 % w/v", "5 % w/w"] {
        refused(text, Metric, Weight);
    }
}

#[test]
fn impossible_numbers() {
    for text in
        ["0:64", "1:0", "1+0", "0+64", "0 in 64", "1 in 0", "0 oz/gal", "2 oz per 0 gal", "0 %", "0 oz"]
    {
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
    refused("two oz/gal", Us, unknown("two"));
    refused("2 oz/firkin", Us, unknown("firkin"));
    refused("1:64 or 1:128", Us, unknown("or"));
    refused("1:64 = 2 oz/gal", Us, unknown("="));
    refused("-1:64?", Us, unknown("?"));
    refused("2 oz, per gal", Us, unknown(","));
    refused("1:1.2.3", Us, unknown("1.2.3"));
    refused("<b>1:64</b>", Us, unknown("<"));
    refused("1:64 🧴", Us, unknown("🧴"));
    refused(&"9".repeat(LONGEST), Us, unknown(&"9".repeat(LONGEST)));
    refused(&"9".repeat(LONGEST + 1), Us, TooLong);
}

/// Within two in a hundred two statements are one, printed twice and rounded.
#[test]
fn two_statements() {
    refused("1:64 (4 oz/gal)", Us, TwoRules { readings: texts(&["1:64", "4 oz/gal"]) });
    refused("1:64 (15 mL/L)", Metric, TwoRules { readings: texts(&["1:64", "15 mL/L"]) });
    refused("1:64 (2 oz per tank)", Us, TwoRules { readings: texts(&["1:64", "2 oz per tank"]) });
    // What makes no dilution is not offered as one.
    refused("1:64 (1:32) (firkin)", Us, TwoRules { readings: texts(&["1:64", "1:32"]) });
    refused("1:64 (2 oz/gal)", Metric, ambiguous(&["2 US fl oz per US gal", "2 imp fl oz per imp gal"]));
    assert!(read("1:64 (15.6 mL/L)", Metric).is_ok());
}
