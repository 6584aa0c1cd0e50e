//! Labels in exact fractions: a reader of the forms that the stocks of these tests have.

use super::exact::{Q, number, q, size};
use brimline::units::System;
use num_traits::One;

/// What a label asks, from the least to the most.
#[derive(Clone, Debug)]
pub enum Asks {
    Strength(Q, Q),
    PerTank(Q, Q),
}

/// How a label is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Form {
    PlusWater,
    OfTotal,
    PerWater,
    MadeUp,
    Percent,
    PerTank,
    Powder,
    Packets,
}

impl Form {
    /// The end of the key that says what it means.
    pub fn code(self) -> &'static str {
        match self {
            Self::PlusWater => "plus-water",
            Self::OfTotal => "of-total",
            Self::PerWater => "per-water",
            Self::MadeUp => "made-up",
            Self::Percent => "percent",
            Self::PerTank => "per-tank",
            Self::Powder => "powder",
            Self::Packets => "packets",
        }
    }
}

/// Reads a label; its liquid, where it is one.
pub fn read(text: &str, system: System) -> (Form, Option<Asks>) {
    let (ounce, gallon) = match system {
        System::Imperial => ("floz_imp", "gal_imp"),
        _ => ("floz_us", "gal_us"),
    };
    let unit = |name: &str| {
        size(match name {
            "oz" => ounce,
            "gal" => gallon,
            "mL" => "ml",
            "L" => "l",
            other => panic!("no unit {other}"),
        })
    };
    let ends = |text: &str| match text.split_once(" to ") {
        Some((low, high)) => (number(low), number(high)),
        None => (number(text), number(text)),
    };
    if text.contains("oz wt") {
        return (Form::Powder, None);
    }
    if text.contains("tablet") || text.contains("packet") {
        return (Form::Packets, None);
    }
    if let Some(text) = text.strip_suffix(" %") {
        let (low, high) = ends(text);
        return (Form::Percent, Some(Asks::Strength(low / q(100, 1), high / q(100, 1))));
    }
    if let Some(amount) = text.strip_suffix(" per tank") {
        let (range, name) = amount.rsplit_once(' ').expect("a number and its unit");
        let (low, high) = ends(range);
        return (Form::PerTank, Some(Asks::PerTank(low * unit(name), high * unit(name))));
    }
    if text.contains(" in ") {
        let (part, all) = text.split_once(" in ").expect("a part");
        let share = number(part) / number(all);
        return (Form::OfTotal, Some(Asks::Strength(share.clone(), share)));
    }
    if text.contains(':') {
        // The weaker end of a range is the least product, wherever it stands.
        let mut shares: Vec<Q> = text.split(" to ").map(ratio).collect();
        shares.sort();
        let (low, high) = (shares[0].clone(), shares[shares.len() - 1].clone());
        return (Form::PlusWater, Some(Asks::Strength(low, high)));
    }
    let (text, made_up) = match text.strip_suffix(" made up") {
        Some(text) => (text, true),
        None => (text, false),
    };
    let (amount, per) = text.rsplit_once('/').expect("an amount for a volume");
    let (range, name) = amount.rsplit_once(' ').expect("a number and its unit");
    let (low, high) = ends(range);
    let share = |end: Q| {
        let share = end * unit(name) / unit(per);
        if made_up { share } else { &share / (Q::one() + &share) }
    };
    let form = if made_up { Form::MadeUp } else { Form::PerWater };
    (form, Some(Asks::Strength(share(low), share(high))))
}

/// "1:64" and its reverse "64:1": the smaller number is the product.
fn ratio(text: &str) -> Q {
    let (a, b) = text.split_once(':').expect("a ratio");
    let (a, b) = (number(a), number(b));
    let (part, water) = if a <= b { (a, b) } else { (b, a) };
    &part / (&part + water)
}
