//! Fills by hand, for questions whose answers are sums.

use brimline::answer::Remark;
use brimline::site::log::{Amount, Current, Fill, Log, Named, Part, Stamp, Words, current};

/// Fills as they stand: when, what, who.
pub fn log(fills: &[(&str, Fill, &str)]) -> Vec<Current> {
    let mut log = Log::default();
    for (when, fill, who) in fills {
        let stamp = Stamp { device: "station-1", when, random: [7; 32] };
        log.fill(&stamp, fill.clone(), Words::default().with(Part::Who, *who)).expect("taken");
    }
    current(&log).fills
}

/// An amount of so many litres.
pub fn litres(litres: f64) -> Amount {
    Amount::new(litres / 1000.0, format!("{litres} L"))
}

/// A dose of a product in the one machine, litres.
pub fn dose(product: &str, planned: f64, measured: Option<f64>) -> Fill {
    Fill {
        product: Named::new(product, product.to_uppercase()),
        machine: Named::new("m1", "Scrubber"),
        concentrate: litres(planned),
        measured: measured.map(litres).unwrap_or_default(),
        ..Fill::default()
    }
}

/// Whether two figures are the same but for what sums round away.
pub fn near(a: f64, b: f64) -> bool {
    (a - b).abs() <= 1e-9 * a.abs().max(b.abs())
}

/// The codes of remarks.
pub fn codes(remarks: &[Remark]) -> Vec<&str> {
    remarks.iter().map(|remark| remark.code).collect()
}
