//! Stocks: the demo in each system of units, and made-up ones of every shape.

use brimline::chemistry::family::Family;
use brimline::chemistry::foam::Foam;
use brimline::chemistry::ghs::SignalWord;
use brimline::number::Marks;
use brimline::practice::{Draw, Stock};
use brimline::site::{Dispenser, Entry, Floor, Machine, Measure, Product, Site, demo};
use brimline::units::System;

/// The demo and what was made up.
pub fn all(made: u32) -> Vec<Stock> {
    // A metric site reads no bare ounce, so that it has fewer products; its numbers stay as typed.
    let demos = System::ALL.iter().map(|system| Stock::of(&demo(), *system, Marks::POINT));
    demos.chain((0..made).map(made_up)).collect()
}

fn pick<T: Copy>(draw: &mut Draw, all: &[T]) -> T {
    *draw.pick(all).expect("something to pick from")
}

/// A site of round numbers in one system of units.
fn made_up(seed: u32) -> Stock {
    let draw = &mut Draw::new(seed.wrapping_add(900));
    let system = pick(draw, System::ALL);
    let site = Site {
        name: format!("Made up {seed} (invented)"),
        machines: (0..=draw.below(4)).map(|n| machine(n, system, draw)).collect(),
        products: (0..4 + draw.below(6)).map(|n| product(n, system, draw)).collect(),
        floors: (0..2 + draw.below(3)).map(|n| floor(n, system, draw)).collect(),
        measures: (0..=draw.below(4)).map(|n| measure(n, system, draw)).collect(),
        ..Site::default()
    };
    Stock::of(&site, system, Marks::POINT)
}

fn machine(n: u32, system: System, draw: &mut Draw) -> Machine {
    let (tank, dose, flow, width, speed) = match system {
        System::Us => ("gal_us", "floz_us", "gal_us_per_min", "in", "mph"),
        System::Metric => ("l", "ml", "l_per_min", "cm", "km_per_h"),
        System::Imperial => ("gal_imp", "floz_imp", "gal_imp_per_min", "in", "mph"),
    };
    let metric = system == System::Metric;
    let sizes: &[&str] = if metric {
        &["20", "35", "40", "55.5", "70", "110", "200"]
    } else {
        &["5", "8", "10", "12.5", "20", "30"]
    };
    let first = 4 + draw.below(12);
    let settings = (0..2 + draw.below(4)).map(|index| {
        let hundredths = (first + index * (3 + first / 2)) * if metric { 4 } else { 1 };
        Entry::new(format!("{}.{:02}", hundredths / 100, hundredths % 100), flow)
    });
    let mut out = Machine {
        id: format!("m{n}"),
        name: format!("Machine {n}"),
        tank: Entry::new(pick(draw, sizes), tank),
        vacuum: !draw.one_in(4),
        path: Entry::new(
            pick(draw, if metric { &["43", "50", "71"][..] } else { &["17", "20", "28.5"] }),
            width,
        ),
        overlap: Entry::new(pick(draw, &["", "2", "0"]), width),
        speed: Entry::new(pick(draw, &["1.5", "2", "2.5", "3"]), speed),
        settings: settings.collect(),
        ..Machine::default()
    };
    if draw.one_in(4) {
        out.reuse = Entry::new(pick(draw, &["50", "75"]), "percent");
    }
    if draw.one_in(3) {
        let (least, most) = if metric { ("100", "400") } else { ("3", "12") };
        out.least = Entry::new(if draw.one_in(2) { least } else { "" }, dose);
        out.most = Entry::new(most, dose);
    }
    out
}

fn product(n: u32, system: System, draw: &mut Draw) -> Product {
    let customary = [
        "1:64",
        "1:32",
        "1:128",
        "1 in 65",
        "1:10 to 1:16",
        "1:256 to 1:64",
        "64:1",
        "0.5 %",
        "1 to 2 %",
        "2 oz/gal",
        "4 to 8 oz/gal",
        "1/2 oz/gal",
        "2 oz/gal made up",
        "6 oz per tank",
        "3 to 6 oz per tank",
        "1/2 to 1 oz wt/gal",
        "1 tablet per 2 gal",
    ];
    let metric = [
        "1:64",
        "1:50",
        "1 in 100",
        "1:20 to 1:40",
        "100:1",
        "0.5 %",
        "1.5 to 3 %",
        "15 mL/L",
        "5 to 10 mL/L",
        "20 mL/L made up",
        "150 mL per tank",
        "100 to 200 mL per tank",
    ];
    let (label, standard) = if system == System::Metric {
        (pick(draw, &metric), pick(draw, &["", "", "12 mL/L", "1:80"]))
    } else {
        (pick(draw, &customary), pick(draw, &["", "", "3 oz/gal", "1:80"]))
    };
    let codes = [
        "",
        "H314 P280",
        "H318",
        "H319 P280",
        "H315 H319",
        "H317",
        "H335 H315",
        "H226 H319",
        "H302 H410",
        "H290 H314",
    ];
    let signal = [SignalWord::Warning, SignalWord::Danger, SignalWord::None, SignalWord::Unknown];
    let mut families: Vec<Family> = (0..draw.below(3)).map(|_| pick(draw, Family::ALL)).collect();
    families.dedup();
    let codes = pick(draw, &codes);
    Product {
        id: format!("p{n}"),
        name: format!("Product {n}"),
        label: label.to_owned(),
        standard: standard.to_owned(),
        foam: pick(draw, Foam::ALL),
        families,
        signal: if codes.is_empty() { pick(draw, &signal) } else { pick(draw, &signal[..2]) },
        codes: codes.to_owned(),
        ..Product::default()
    }
}

fn floor(n: u32, system: System, draw: &mut Draw) -> Floor {
    let targets: &[(&str, &str)] = match system {
        System::Metric => &[("12", "25"), ("20", "40"), ("30", "55"), ("50", "80")],
        _ => &[("0.3", "0.6"), ("0.5", "0.9"), ("0.8", "1.3"), ("1.2", "2")],
    };
    let unit = match system {
        System::Us => "gal_us_per_1000ft2",
        System::Metric => "ml_per_m2",
        System::Imperial => "gal_imp_per_1000ft2",
    };
    let (low, high) = pick(draw, targets);
    Floor {
        id: format!("f{n}"),
        name: format!("Floor {n}"),
        target_low: Entry::new(low, unit),
        target_high: Entry::new(high, unit),
        ..Floor::default()
    }
}

fn measure(n: u32, system: System, draw: &mut Draw) -> Measure {
    let steps: &[(&str, &str)] = match system {
        System::Us => &[("1", "floz_us"), ("1/2", "floz_us"), ("10", "ml"), ("30", "ml")],
        System::Metric => &[("5", "ml"), ("10", "ml"), ("20", "ml"), ("1", "cl")],
        System::Imperial => &[("1", "floz_imp"), ("1/2", "floz_imp"), ("10", "ml")],
    };
    let (step, unit) = pick(draw, steps);
    let dispenser = pick(draw, &[Dispenser::Cup, Dispenser::Pump, Dispenser::Cap]);
    Measure {
        id: format!("j{n}"),
        name: format!("Measure {n}"),
        dispenser,
        step: Entry::new(step, unit),
        ..Measure::default()
    }
}
