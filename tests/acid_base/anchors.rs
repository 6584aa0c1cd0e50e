//! Buffers whose pH was measured and published: what a model of constants and activities must meet.
//!
//! The tolerance is what the Davies model supports at an ionic strength of about 0.1 mol/L, potassium and
//! sodium counting alike and no ions pairing up: 0.03 where ions carry one or two charges. The ideal model
//! is off by up to 0.35 there and supports no check; that it is off is the reason for the other one.

use crate::cases::{Given, solution};
use brimline::chemistry::acid_base::Activity;

const NBS_1969: &str = "J. Res. NBS 73A (1969) 37, doi 10.6028/jres.073A.004";
const JIS: &str = "JIS Z 8802 (confirmed 2011), reference solutions at 25 °C";

/// Potassium dihydrogen citrate, carbonate and hydrogencarbonate; borax, which the same abstract names as
/// the upper end of the scale before; equimolal phosphate; tetraoxalate KH₃(C₂O₄)₂.
#[rustfmt::skip]
const BUFFERS: &[(Given, f64, f64, &str)] = &[
    (&[("Na", 0.05), ("citric acid", 0.05)], 3.776, 0.03, NBS_1969),
    (&[("Na", 0.075), ("carbonic acid", 0.05)], 10.012, 0.03, NBS_1969),
    (&[("Na", 0.02), ("boric acid", 0.04)], 9.180, 0.03, NBS_1969),
    (&[("Na", 0.075), ("phosphoric acid", 0.05)], 6.86, 0.03, JIS),
    (&[("Na", 0.075), ("carbonic acid", 0.05)], 10.02, 0.03, JIS),
    (&[("Na", 0.02), ("boric acid", 0.04)], 9.18, 0.03, JIS),
    (&[("Na", 0.05), ("oxalic acid", 0.1)], 1.68, 0.03, JIS),
];

#[test]
fn published_buffers() {
    for (given, published, within, source) in BUFFERS {
        let ph = solution(given.iter().copied()).balance(Activity::Davies).ph;
        assert!((ph - published).abs() <= *within, "{ph} is not {published}: {given:?}, {source}");
    }
}

/// Without activities the same buffers are off by more than the published digits by far.
#[test]
fn ideal_is_for_thin_solutions() {
    for (given, published, _, _) in &BUFFERS[..4] {
        let made = solution(given.iter().copied());
        let off = made.balance(Activity::Ideal).ph - published;
        assert!((0.05..0.36).contains(&off), "{given:?}: {off}");
    }
}
