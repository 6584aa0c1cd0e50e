//! Buffers whose pH was measured and published: what a model of constants and activities must meet.
//!
//! The tolerance is what the Davies model supports at an ionic strength of about 0.1 mol/L, potassium and
//! sodium counting alike and no ions pairing up: 0.03 where ions carry one or two charges. The ideal model
//! is off by up to 0.35 there and supports no check; that it is off is the reason for the other one.

use crate::cases::solution;
use crate::computed::BUFFERS;
use brimline::chemistry::acid_base::Activity;

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
