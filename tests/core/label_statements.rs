//! Labels that say their dilution twice, or name their measures in a part of its own.

use super::assert_reads;
use brimline::trade::label::{Basis, Note};
use brimline::units::System::{self, Metric, Us};

/// A bracket or a part with the system's name alone names it for the whole label.
#[test]
fn a_system_of_its_own() {
    for &site in System::ALL {
        for text in ["2 oz/gal (US)", "2 oz/gal [U.S.]", "(US) 2 oz/gal", "2 oz/gal, US", "2 oz (US) per gal"]
        {
            assert_reads(text, site, Basis::PerWater, 2.0 / 130.0, &[Note::FluidOunce]);
        }
        for text in ["2 fl oz/gal (imp)", "2 fl oz (57 mL) per gal (UK)", "2 imp fl oz per imp gal (imp)"] {
            assert_reads(text, site, Basis::PerWater, 2.0 / 162.0, &[]);
        }
    }
}

/// A statement with one reading settles one with two, whichever stands first.
#[test]
fn one_statement_settles_the_other() {
    for text in ["1:64 (2 oz/gal)", "1:64, 2 oz/gal", "1:64 (1-64)", "1:64 (1.54 %) (2 oz/gal)"] {
        assert_reads(text, Metric, Basis::PlusWater, 1.0 / 65.0, &[]);
    }
    assert_reads("2 oz/gal (1:64)", Metric, Basis::PerWater, 2.0 / 130.0, &[]);
    assert_reads("2 oz/gal (1:80)", Metric, Basis::PerWater, 2.0 / 162.0, &[]);
    assert_reads("2:5 (28.6 %)", Us, Basis::PlusWater, 2.0 / 7.0, &[]);
    assert_reads("1:1,000 (1 mL/L)", Metric, Basis::PlusWater, 1.0 / 1001.0, &[]);
}
