//! What blocks a standard and what only warns.
//!
//! Vinegar on marble: the Natural Stone Institute’s care guidance, as the floor rules cite it. 1 to 64 in 10 US gal:
//! 1280 fl oz / 65 = 19.69 fl oz, by definition of the gallon (NIST SP 811).

use super::{after, draft};
use brimline::form::action::{Line, Shelf, StandardLine};
use brimline::form::site::proof::{Finding, Proof, prove};
use brimline::form::site::{Act, changed_since};
use brimline::form::{Action, Field, Typed, names};
use brimline::number::Marks;
use brimline::site::Entry;
use brimline::units::{Quantity, Volume};

const TODAY: &str = "2026-02-01";

fn check(typed: &Typed) -> Proof {
    prove(typed, typed.standard().expect("a draft"), TODAY, Marks::POINT)
}

fn blocks(proof: &Proof) -> Vec<&str> {
    proof.findings.iter().filter(|one| one.blocks).map(|one| one.remark.code).collect()
}

fn warns(proof: &Proof) -> Vec<&str> {
    proof
        .findings
        .iter()
        .filter(|one| !one.blocks && one.reason.is_none())
        .map(|one| one.remark.code)
        .collect()
}

#[test]
fn vinegar_never_becomes_the_standard_for_marble() {
    let proof = check(&draft("marble", "vinegar", "1:20"));
    assert!(blocks(&proof).contains(&"remark-floor-does-not-fit"), "{:?}", proof.findings);
    // No reason lifts what blocks.
    let reasoned = after(
        draft("marble", "vinegar", "1:20"),
        [Action::Text(Line::Override("remark-floor-does-not-fit"), "It was always so".into())],
    );
    assert!(blocks(&check(&reasoned)).contains(&"remark-floor-does-not-fit"));
    assert!(!check(&reasoned).sound());
}

#[test]
fn a_foaming_or_untested_product_is_blocked() {
    assert!(blocks(&check(&draft("vinyl", "hand-soap", "1:64"))).contains(&"remark-foam-refuse"));
    assert!(blocks(&check(&draft("vinyl", "quat", "1:64"))).contains(&"remark-foam-test-first"));
}

#[test]
fn a_dilution_outside_the_label_is_blocked_and_one_inside_is_not() {
    let outside = check(&draft("vinyl", "neutral", "1:20"));
    assert!(blocks(&outside).contains(&"remark-standard-outside"), "{:?}", outside.findings);
    let inside = check(&draft("vinyl", "neutral", "1:64"));
    assert_eq!(blocks(&inside), Vec::<&str>::new());
}

#[test]
fn what_is_not_written_is_asked_for() {
    let bare = after(Typed::default(), [Act::Add(Shelf::Standard).action()]);
    let blocked = check(&bare);
    for code in ["finding-no-dilution", "finding-no-author", "finding-no-reason", "finding-no-day"] {
        assert!(blocks(&blocked).contains(&code), "{code} in {:?}", blocked.findings);
    }
    let nowhere = draft("moon", "cheese", "1:64");
    assert!(blocks(&check(&nowhere)).contains(&"finding-no-floor"));
    assert!(blocks(&check(&nowhere)).contains(&"finding-no-product"));
}

#[test]
fn a_warning_is_let_pass_with_a_reason_that_stays() {
    let mut typed = draft("vinyl", "neutral", "1:64");
    for _ in 0..12 {
        let proof = check(&typed);
        let Some(open) = proof.findings.iter().find(|one| !one.blocks && one.reason.is_none()) else { break };
        assert!(!proof.sound());
        typed = after(typed, [Action::Text(Line::Override(open.remark.code), "Seen and measured".into())]);
    }
    let proof = check(&typed);
    assert_eq!(warns(&proof), Vec::<&str>::new());
    assert!(proof.sound());
    assert!(!typed.standard().expect("a draft").overrides.is_empty());
    // A reason of blanks is none.
    let code = proof.findings[0].remark.code;
    let blank = after(typed, [Action::Text(Line::Override(code), "  ".into())]);
    assert!(!check(&blank).sound());
}

#[test]
fn less_time_on_the_floor_than_the_label_wants_is_blocked() {
    let mut typed = draft("vinyl", "neutral", "1:64");
    typed = after(typed, [Action::Write(Field::Contact, "10".into())]);
    typed.site.products.iter_mut().find(|one| one.id == "neutral").expect("neutral").contact =
        Entry::new("10", "min");
    let short = after(typed.clone(), [Action::Write(Field::StandardContact, "5".into())]);
    assert!(blocks(&check(&short)).contains(&"finding-contact"));
    let long = after(typed, [Action::Write(Field::StandardContact, "10".into())]);
    assert!(!blocks(&check(&long)).contains(&"finding-contact"));
}

#[test]
fn the_doses_are_those_of_the_dilution() {
    let proof = check(&draft("vinyl", "neutral", "1:64"));
    let walk = proof.machines.iter().find(|one| one.id == "walk-behind").expect("the walk-behind");
    let (_, fill) = walk.doses.iter().find(|(measure, _)| measure == "jug").expect("the jug");
    let ounce = brimline::units::unit("floz_us").expect("the fluid ounce");
    let dose = fill.outcome.answer.get(names::FILL_DOSE).expect("a dose");
    let ounces = Volume::from_si(dose.si).value_in(ounce).expect("a volume");
    assert!((ounces - 1280.0 / 65.0).abs() < 1e-9, "{ounces}");
    // In the machine that takes 6 fl oz at the most the smaller governs, and it is told.
    assert!(proof.findings.iter().any(|one| one.remark.code == "remark-clash-machine"
        && one.machines == ["Self-driving, reuses its solution"]));
}

#[test]
fn a_standard_knows_what_it_was_checked_with() {
    let mut typed = draft("vinyl", "neutral", "1:64");
    let proved = check(&typed).proved;
    typed = after(typed, [Act::Publish { date: TODAY.into(), proved }.action()]);
    let of = |typed: &Typed| changed_since(typed, typed.standard().expect("the standard"));
    assert!(!of(&typed));
    let other = after(typed.clone(), [Action::Text(Line::SiteName, "Elsewhere".into())]);
    assert!(!of(&other), "the name of the site changes no dose");
    let changed = after(
        typed,
        [Action::Pick(Shelf::Machine, "ride-on".into()), Action::Write(Field::Tank, "28".into())],
    );
    assert!(of(&changed));
}

#[test]
fn a_number_that_does_not_read_is_in_the_way() {
    for (field, text) in [(Field::StandardContact, "abc"), (Field::StandardFrequency, "-3")] {
        let typed = after(draft("vinyl", "neutral", "1:64"), [Action::Write(field, text.into())]);
        assert!(blocks(&check(&typed)).contains(&"finding-unread"), "{field:?}");
    }
}

#[test]
fn a_trial_whose_every_patch_kept_a_film_warns() {
    use brimline::site::{Film, Patch, Trial};
    let mut typed = draft("vinyl", "neutral", "1:64");
    let patch = |film| Patch { film, ..Patch::default() };
    let trial = |films: [Film; 3]| Trial {
        id: "t9".into(),
        floor: "vinyl".into(),
        product: "neutral".into(),
        patches: films.into_iter().map(patch).collect(),
        ..Trial::default()
    };
    typed.site.trials = vec![trial([Film::Slight, Film::Plain, Film::NotSeen])];
    assert!(warns(&check(&typed)).contains(&"finding-film"));
    typed.site.trials = vec![trial([Film::None, Film::Plain, Film::NotSeen])];
    assert!(!warns(&check(&typed)).contains(&"finding-film"));
    typed.site.trials = vec![trial([Film::NotSeen; 3])];
    assert!(!warns(&check(&typed)).contains(&"finding-film"), "nobody has looked");
}

/// Four coats of the demo’s gloss finish dry for 40 min each and cure for 72 h: of a first coat on 7 March 2026 at
/// 18:30 the first wet scrub is 74 h 40 min later, on 10 March at 21:10 (Python's datetime, as in `coats.rs`).
#[test]
fn a_standard_that_begins_before_the_first_wet_scrub_warns() {
    let planned = |floor: &str, finish: &str, day: &str, time: &str, begins: &str| {
        let mut typed = draft("vinyl", "neutral", "1:64");
        let lies = typed.site.floors.iter_mut().find(|one| one.id == "vinyl").expect("vinyl");
        lies.finish = finish.into();
        let typed = after(
            typed,
            [
                Action::Pick(Shelf::Floor, floor.into()),
                Action::Pick(Shelf::Finish, "gloss".into()),
                Action::Text(Line::FirstCoat, day.into()),
                Action::Text(Line::FirstCoatAt, time.into()),
                Action::Text(Line::Rule(StandardLine::Effective), begins.into()),
            ],
        );
        let proof = check(&typed);
        let found = proof.findings.iter().find(|one| one.remark.code == "finding-before-scrub");
        assert!(found.is_none_or(|one| !one.blocks));
        found.map(|one| brimline::words::Words::english().remark(&one.remark, typed.system))
    };
    let (day, time) = ("2026-03-07", "18:30");
    for begins in ["2026-02-01", "2026-03-09", "2026-03-10"] {
        let told = planned("vinyl", "gloss", day, time, begins).expect("a warning");
        assert!(told.contains("2026-03-10, 21:10"), "{told}");
    }
    assert_eq!(planned("vinyl", "gloss", day, time, "2026-03-11"), None);
    // Of the day alone the last minute counts: 23:59 and 74 h 40 min are 02:39 on 11 March.
    let told = planned("vinyl", "gloss", day, "", "2026-03-11").expect("a warning");
    assert!(told.contains("2026-03-11, 02:39"), "{told}");
    assert_eq!(planned("vinyl", "gloss", day, "", "2026-03-12"), None);
    // A floor without a finish, where the new one is asked about; another floor, another finish, no coat planned.
    assert!(planned("vinyl", "", day, time, "2026-03-09").is_some());
    assert_eq!(planned("marble", "", day, time, "2026-03-09"), None);
    assert_eq!(planned("vinyl", "matte", day, time, "2026-03-09"), None);
    assert_eq!(planned("vinyl", "gloss", "", "", "2026-03-09"), None);
}

#[test]
fn a_first_coat_whose_cure_nobody_knows_warns() {
    let mut typed = draft("vinyl", "neutral", "1:64");
    typed.site.floors.iter_mut().find(|one| one.id == "vinyl").expect("vinyl").finish = "gloss".into();
    let picked = after(typed, [Action::Pick(Shelf::Finish, "gloss".into())]);
    let unknown = after(picked, [Action::Write(Field::FinishCure, String::new())]);
    assert!(!warns(&check(&unknown)).contains(&"remark-cure-unknown"), "no coat is planned");
    let planned = after(unknown, [Action::Text(Line::FirstCoat, "2026-03-07".into())]);
    assert!(warns(&check(&planned)).contains(&"remark-cure-unknown"));
}

/// ANSI A326.3 asks a wet dynamic coefficient of friction of 0.42 of level interior floors that are walked on wet, seen
/// second-hand.
#[test]
fn a_trial_that_read_too_little_grip_warns() {
    use brimline::site::{Patch, Trial};
    let with = |floor: &str, slips: [&str; 2]| {
        let mut typed = draft("vinyl", "neutral", "1:64");
        let patch = |slip: &str| Patch { slip: Entry::new(slip, "one"), ..Patch::default() };
        typed.site.trials = vec![Trial {
            id: "t9".into(),
            floor: floor.into(),
            product: "neutral".into(),
            patches: slips.into_iter().map(patch).collect(),
            ..Trial::default()
        }];
        let proof = check(&typed);
        let found: Vec<&Finding> =
            proof.findings.iter().filter(|one| one.remark.code == "remark-trial-slippery").collect();
        assert!(found.len() <= 1 && found.iter().all(|one| !one.blocks));
        found.first().map(|one| brimline::words::Words::english().remark(&one.remark, typed.system))
    };
    let told = with("vinyl", ["0.41", "0.38"]).expect("a warning");
    assert!(told.contains("0.38 is below 0.42"), "{told}");
    assert!(with("vinyl", ["", "0.419"]).is_some());
    assert_eq!(with("vinyl", ["0.42", "0.6"]), None);
    assert_eq!(with("vinyl", ["", ""]), None);
    assert_eq!(with("marble", ["0.3", "0.3"]), None, "another floor");
}

#[test]
fn whole_packets_that_ask_for_another_level_are_no_dose_for_a_full_tank() {
    let mut typed = draft("vinyl", "neutral", "1:256");
    typed.site.products.iter_mut().find(|one| one.id == "neutral").expect("neutral").label =
        "1:64 to 1:256".into();
    let proof = check(&typed);
    // Two packets of 2 fl oz make 4 × 257 = 1028 fl oz, 8.03 US gal, and not the 10 that are asked for.
    let walk = proof.machines.iter().find(|one| one.id == "walk-behind").expect("the walk-behind");
    assert!(!walk.doses.iter().any(|(measure, _)| measure == "packet"), "2 packets make 8.03 of 10 gal");
}

#[test]
fn a_reason_says_why_in_two_words_or_ten_letters() {
    use brimline::form::action::StandardLine;
    for (reason, sound) in
        [("x", false), ("a b", false), ("because", false), ("New finish", true), ("Neuversiegelung", true)]
    {
        let line = |line: Line, text: &str| Action::Text(line, text.into());
        let typed =
            after(draft("vinyl", "neutral", "1:64"), [line(Line::Rule(StandardLine::Reason), reason)]);
        assert_eq!(!blocks(&check(&typed)).contains(&"finding-short-reason"), sound, "{reason}");
        let code = "remark-clash-machine";
        let typed = after(draft("vinyl", "neutral", "1:64"), [line(Line::Override(code), reason)]);
        let proof = check(&typed);
        let clash = proof.findings.iter().find(|one| one.remark.code == code).expect("the clash");
        assert_eq!(!clash.holds(), sound, "{reason}");
    }
}

#[test]
fn a_standard_names_nothing_that_bears_another_ones_name() {
    let same = |change: &dyn Fn(&mut Typed)| {
        let mut typed = draft("vinyl", "neutral", "1:64");
        change(&mut typed);
        blocks(&check(&typed)).contains(&"finding-same-name")
    };
    assert!(!same(&|_| {}));
    assert!(same(
        &|typed| typed.site.machines[1].name = format!(" {} ", typed.site.machines[0].name.to_uppercase())
    ));
    let product = |typed: &mut Typed, retired| {
        let neutral =
            typed.site.products.iter().find(|one| one.id == "neutral").expect("neutral").name.clone();
        let other = typed.site.products.iter_mut().find(|one| one.id == "quat").expect("quat");
        (other.name, other.retired) = (neutral, retired);
    };
    assert!(same(&|typed| product(typed, false)));
    assert!(!same(&|typed| product(typed, true)), "what is out of use is not offered");
    // Two products that it does not name are none of its business.
    assert!(!same(&|typed| {
        for one in typed.site.products.iter_mut().filter(|one| one.id != "neutral") {
            one.name = "The same".into();
        }
    }));
}

/// Standards that were published keep their checksum: what it is taken of is the JSON of the floor, its finish, the
/// product, the machines and the measures, one after the other.
#[test]
fn the_checksum_is_of_the_records_one_after_the_other() {
    use brimline::document::checksum;
    fn json<T: serde::Serialize>(one: &T) -> String {
        serde_json::to_string(one).expect("JSON")
    }
    let typed = draft("vinyl", "neutral", "1:64");
    let site = &typed.site;
    let floor = site.floors.iter().find(|one| one.id == "vinyl");
    let finish = floor.and_then(|floor| site.finishes.iter().find(|one| one.id == floor.finish));
    let product = site.products.iter().find(|one| one.id == "neutral");
    let whole = [json(&floor), json(&finish), json(&product), json(&site.machines), json(&site.measures)];
    assert_eq!(check(&typed).proved, checksum(&whole.concat()));
}
