//! The key of an exercise, worked out from what it tells and from nothing else, in exact fractions.

use super::exact::{Q, ceiling, entry, fact, is, number, positive, q, said, size, text, typed};
use super::labels::{Asks, read};
use super::rules::{calls_for, never, wear};
use super::tickets::Ticket;
use brimline::chemistry::family::Family;
use brimline::chemistry::foam::Foam;
use brimline::practice::{Exercise, Fact, Key, Led, Said, Stock, Topic, Way};
use brimline::units::System;
use num_traits::One;
use std::collections::BTreeSet;

/// Holds the key against the second computation.
pub fn check(exercise: &Exercise, stock: &Stock) {
    let system = stock.system;
    no_foam(exercise, stock);
    match exercise.topic {
        Topic::Label => label(exercise, system),
        Topic::Units => {
            let asked = said(exercise, "practice-ask-units").expect("the amount");
            amount(exercise, &fact(asked, "amount"));
        }
        Topic::Dose => {
            let ticket = Ticket::of(exercise, system);
            amount(exercise, &ticket.dose());
            for road in &exercise.roads {
                let Led::To(si) = road.led else { panic!("a dose leads to an amount") };
                let led = ticket.all_by(road.way);
                assert!(led.iter().any(|one| is(si, one)), "{:?} {:?}", road, exercise.asked);
                assert!(
                    led.len() == 1 || road.way == Way::StandardIgnored,
                    "{:?} {:?}",
                    road,
                    exercise.asked
                );
            }
        }
        Topic::TopUp => top_up(exercise, system),
        Topic::Rescue => rescue(exercise, system),
        Topic::Shift => shift(exercise, system),
        Topic::Mistake => mistake(exercise, system),
        Topic::Setting => setting(exercise),
        Topic::Ppe => ppe(exercise, stock),
        Topic::Pairs => pairs(exercise, stock),
        Topic::Foam => foam(exercise, stock),
    }
}

/// No exercise puts a product that foams into a machine with a vacuum, and of an untested one it says that it was
/// tested.
fn no_foam(exercise: &Exercise, stock: &Stock) {
    let (Some(tank), Some(label)) = (said(exercise, "practice-tank"), said(exercise, "practice-label"))
    else {
        return;
    };
    let names = (text(tank, "machine"), text(label, "product"));
    let machine = stock.machines.iter().find(|one| one.name == names.0).expect("a machine");
    let product = stock.products.iter().find(|one| one.name == names.1).expect("a product");
    let foams = if machine.vacuum { product.foam } else { Foam::NonFoaming };
    assert!(foams != Foam::Foaming, "{:?}", exercise.asked);
    assert_eq!(said(exercise, "practice-tested").is_some(), foams == Foam::Unknown);
}

#[track_caller]
fn amount(exercise: &Exercise, exact: &Q) {
    let Key::Amount(key) = exercise.key else { panic!("an amount is asked for: {:?}", exercise.asked) };
    assert!(positive(exact), "solvable");
    assert!(is(key.si, exact), "{} is not {exact} in {:?}", key.si, exercise.asked);
}

#[track_caller]
fn chosen(exercise: &Exercise) -> (&[Said], usize) {
    match &exercise.key {
        Key::Choice { options, right } => (options, *right),
        other => panic!("one of several is asked for: {other:?}"),
    }
}

#[track_caller]
fn marked(exercise: &Exercise) -> (&[Said], &[usize]) {
    match &exercise.key {
        Key::Several { options, right } => (options, right),
        other => panic!("some of several are asked for: {other:?}"),
    }
}

fn high(exercise: &Exercise) -> bool {
    said(exercise, "practice-aim-high").is_some()
}

/// The share of a full tank's mix that is product.
fn share(exercise: &Exercise, system: System) -> Q {
    let label = said(exercise, "practice-label").expect("a label");
    match read(text(label, "label"), system).1.expect("a liquid") {
        Asks::Strength(low, most) => {
            if high(exercise) {
                most
            } else {
                low
            }
        }
        Asks::PerTank(low, most) => {
            let tank = fact(said(exercise, "practice-tank").expect("a tank"), "tank");
            (if high(exercise) { most } else { low }) / tank
        }
    }
}

fn label(exercise: &Exercise, system: System) {
    if said(exercise, "practice-ask-convention").is_some() {
        let label = said(exercise, "practice-label").expect("a label");
        let (form, _) = read(text(label, "label"), system);
        let (options, right) = chosen(exercise);
        assert_eq!(options[right].key, format!("practice-means-{}", form.code()));
        return;
    }
    let share = share(exercise, system);
    let parts = said(exercise, "practice-ask-parts").is_some();
    amount(exercise, &if parts { Q::one() / share } else { share });
}

fn top_up(exercise: &Exercise, system: System) {
    let tank = fact(said(exercise, "practice-tank").expect("a tank"), "tank");
    let level =
        said(exercise, "practice-top-up-part").map_or_else(|| tank.clone(), |said| fact(said, "fill"));
    let r = share(exercise, system);
    let (left, rest) = match said(exercise, "practice-rest-other") {
        Some(other) => {
            let Some((_, Fact::Count(parts))) = other.facts.iter().find(|(name, _)| *name == "parts") else {
                panic!("parts of water")
            };
            (fact(other, "left"), q(1, i64::from(*parts) + 1))
        }
        None => (fact(said(exercise, "practice-rest-same").expect("what is left"), "left"), r.clone()),
    };
    assert!(left < level && level <= tank, "it goes into the tank");
    let product = &r * &level - &rest * &left;
    assert!(&product + &left <= level, "nothing has to be drained");
    amount(exercise, &product);
}

fn rescue(exercise: &Exercise, system: System) {
    let tank = fact(said(exercise, "practice-tank").expect("a tank"), "tank");
    let found = said(exercise, "practice-found").expect("what is in it");
    let (volume, poured) = (fact(found, "found"), fact(found, "poured"));
    let r = share(exercise, system);
    assert!(poured > &r * &volume, "too strong");
    // All its product at the right strength.
    let end = &poured / &r;
    if said(exercise, "practice-ask-rescue-water").is_some() {
        assert!(end <= tank, "it has room");
        amount(exercise, &(end - volume));
    } else {
        assert!(end > tank, "it has no room");
        amount(exercise, &(&volume - &r * &tank * &volume / &poured));
    }
}

fn areas(exercise: &Exercise) -> impl Iterator<Item = Q> {
    exercise
        .asked
        .iter()
        .filter(|said| said.key.starts_with("practice-area"))
        .map(|said| fact(said, "area") * fact(said, "rate"))
}

fn shift(exercise: &Exercise, system: System) {
    let laid: Q = areas(exercise).sum();
    if said(exercise, "practice-ask-solution").is_some() {
        amount(exercise, &laid);
    } else if said(exercise, "practice-ask-fills").is_some() {
        let tank = fact(said(exercise, "practice-tank").expect("a tank"), "tank");
        amount(exercise, &ceiling(&(laid / tank)));
    } else {
        let reuse = said(exercise, "practice-reuse").map_or_else(|| q(0, 1), |said| fact(said, "reuse"));
        amount(exercise, &(share(exercise, system) * laid * (Q::one() - reuse)));
    }
}

/// Of all that is offered one alone is true: by the dose that a slip leads to, or because the rule that it names was
/// passed over.
fn mistake(exercise: &Exercise, system: System) {
    let ticket = Ticket::of(exercise, system);
    let poured = fact(said(exercise, "practice-ticket-poured").expect("an amount"), "poured");
    let product_first = said(exercise, "practice-ticket-product-first").is_some();
    let (options, right) = chosen(exercise);
    let away = |dose: Q| if dose > poured { dose - &poured } else { &poured - dose };
    let way = |said: &Said| {
        said.key.strip_prefix("practice-made-").map(|code| Way::from_code(code).expect("a way"))
    };
    let sound = away(ticket.dose()) <= ticket.half_step();
    let is_right = |option: &Said| match way(option) {
        None => sound && !product_first,
        Some(Way::ProductFirst) => product_first,
        Some(way) => {
            let leads = ticket.all_by(way).into_iter().any(|dose| away(dose) <= ticket.half_step());
            leads || ticket.passes_over(way, &poured)
        }
    };
    let found: Vec<usize> = (0..options.len()).filter(|index| is_right(&options[*index])).collect();
    assert_eq!(found, [right], "{:?} {:?}", exercise.asked, options);
}

fn setting(exercise: &Exercise) {
    let floor = said(exercise, "practice-floor").expect("a floor");
    let (low, most) = (fact(floor, "low"), fact(floor, "high"));
    let (options, right) = chosen(exercise);
    let amounts: Vec<Q> = options
        .iter()
        .filter(|option| option.key != "practice-setting-none")
        .map(|one| fact(one, "amount"))
        .collect();
    let rates: Vec<Q> = match said(exercise, "practice-speed") {
        None => amounts,
        Some(speed) => {
            let plain = said(exercise, "practice-path");
            let path = plain.or_else(|| said(exercise, "practice-path-overlap")).expect("a path");
            let overlap = if plain.is_some() { q(0, 1) } else { fact(path, "overlap") };
            let passing = fact(speed, "speed") * (fact(path, "path") - overlap);
            amounts.into_iter().map(|flow| flow / &passing).collect()
        }
    };
    let lowest = rates.iter().position(|rate| *rate >= low);
    let fits = lowest.filter(|index| rates[*index] <= most);
    assert_eq!(right, fits.unwrap_or(rates.len()), "{:?}", exercise.asked);
}

fn ppe(exercise: &Exercise, stock: &Stock) {
    let asked = said(exercise, "practice-ppe").expect("a product");
    let product = stock.products.iter().find(|one| one.name == text(asked, "product")).expect("of the stock");
    let wanted = wear(&product.codes, text(asked, "signal"));
    let (options, right) = marked(exercise);
    let found: BTreeSet<&str> = right.iter().map(|index| options[*index].key.as_str()).collect();
    let nothing = BTreeSet::from(["practice-ppe-nothing"]);
    assert_eq!(found, if wanted.is_empty() { nothing } else { wanted }, "{}", product.codes);
    assert_eq!(reasons(exercise), causes(&product.codes, &found), "{}", product.codes);
    // What the exercise tells is all of it.
    if let Some(told) = said(exercise, "practice-ppe-codes") {
        assert_eq!(text(told, "codes"), product.codes);
    } else {
        let told: BTreeSet<String> = exercise
            .asked
            .iter()
            .filter(|said| said.key == "practice-ppe-says")
            .map(|said| text(said, "statement").to_owned())
            .collect();
        let codes = product.codes.split_whitespace().filter(|code| code.starts_with('H'));
        assert_eq!(told.len(), codes.count(), "{told:?}");
    }
}

/// What is worn by which code, as the workings say; an empty code where not all of the label is known.
fn reasons(exercise: &Exercise) -> BTreeSet<(&str, &str)> {
    let worn = exercise.reasons.iter().map(|one| &one.said).filter_map(|said| match said.key.as_str() {
        "practice-because-wear" => Some((text(said, "piece"), text(said, "code"))),
        "practice-because-wear-unknown" => Some((text(said, "piece"), "")),
        _ => None,
    });
    worn.collect()
}

/// The same by the second table.
fn causes<'a>(codes: &'a str, worn: &BTreeSet<&'a str>) -> BTreeSet<(&'a str, &'a str)> {
    let mut out = BTreeSet::new();
    for piece in worn.iter().filter(|one| one.starts_with("ppe-")) {
        let by: Vec<&str> = codes.split_whitespace().filter(|code| calls_for(code, piece)).collect();
        let unknown = if by.is_empty() { vec![""] } else { by };
        out.extend(unknown.into_iter().map(|code| (*piece, code)));
    }
    out
}

fn pairs(exercise: &Exercise, stock: &Stock) {
    // A product by its families, or a family by itself.
    let families = |fact: &Fact| match fact {
        Fact::Text(name) => {
            stock.products.iter().find(|one| one.name == *name).expect("a product").families.clone()
        }
        Fact::Key(key) => vec![*Family::ALL.iter().find(|one| one.key() == key).expect("a family")],
        other => panic!("no pair of {other:?}"),
    };
    let apart = |said: &Said| {
        let (a, b) = (families(&said.facts[0].1), families(&said.facts[1].1));
        let meets = a.iter().any(|one| b.iter().any(|other| never(*one, *other)));
        meets || a.is_empty() || b.is_empty()
    };
    let (options, right): (&[Said], Vec<usize>) = match &exercise.key {
        Key::Choice { options, right } => (options, vec![*right]),
        Key::Several { options, right } => (options, right.clone()),
        other => panic!("{other:?}"),
    };
    let found: Vec<usize> = (0..options.len()).filter(|index| apart(&options[*index])).collect();
    assert_eq!(found, right, "{options:?}");
}

fn foam(exercise: &Exercise, stock: &Stock) {
    if let Key::Order { options, right } = &exercise.key {
        let keys: Vec<&str> = right.iter().map(|index| options[*index].key.as_str()).collect();
        // Stop before anything else; what foams out before rinsing; fill last. Common practice, no source.
        assert_eq!(keys, ["foam-tank-stop", "foam-tank-drain", "foam-tank-rinse", "foam-tank-refill"]);
        return;
    }
    let class = if let Some(shaken) = said(exercise, "practice-foam-shaken") {
        // Half an inch and none after a minute; half an inch and a third after a minute. Common practice.
        let (first, later) = (fact(shaken, "first"), fact(shaken, "later"));
        let half = number("0.5") * size("in");
        if first <= half && later <= q(2, 1_000) {
            "non-foaming"
        } else if later <= half && later <= first * q(1, 3) {
            "low"
        } else {
            "foaming"
        }
    } else {
        let told =
            said(exercise, "practice-foam-product").or_else(|| said(exercise, "practice-foam-any-product"));
        text(told.expect("how it foams"), "class").strip_prefix("foam-class-").expect("a class")
    };
    let (options, right) = chosen(exercise);
    if said(exercise, "practice-ask-foam-class").is_some() {
        assert_eq!(options[right].key, format!("foam-class-{class}"));
        return;
    }
    let machine = said(exercise, "practice-foam-no-vacuum");
    if let Some(machine) = machine {
        let name = text(machine, "machine");
        assert!(stock.machines.iter().any(|one| one.name == name && !one.vacuum));
    }
    let verdict = match (class, machine) {
        ("non-foaming" | "low", _) | (_, Some(_)) => "fits",
        ("foaming", None) => "refuse",
        _ => "test-first",
    };
    assert_eq!(options[right].key, format!("foam-verdict-{verdict}"));
}

/// Entries that a person could not type, or units that no field has, would make an exercise that cannot be solved.
pub fn readable(exercise: &Exercise) {
    for said in &exercise.asked {
        for (name, fact) in &said.facts {
            if let Fact::Entry(_) = fact {
                let typed = typed(said, name);
                assert!(entry(typed) >= q(0, 1), "{typed:?}");
            }
        }
    }
}
