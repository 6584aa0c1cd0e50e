//! The table for people.

use super::made::{several, whole};
use brimline::number::{Marks, read};
use brimline::site::log::{COLUMNS, csv, current};
use brimline::units::System;
use proptest::prelude::*;

fn rows(text: &str, separator: u8) -> Vec<Vec<String>> {
    let text = text.strip_prefix('\u{feff}').expect("a byte order mark");
    let mut reader =
        csv::ReaderBuilder::new().delimiter(separator).has_headers(false).from_reader(text.as_bytes());
    reader.records().map(|row| row.expect("a row").iter().map(str::to_owned).collect()).collect()
}

fn cell<'a>(rows: &'a [Vec<String>], row: usize, header: &str) -> &'a str {
    let at =
        rows[0].iter().position(|one| one == header).unwrap_or_else(|| panic!("no {header}: {:?}", rows[0]));
    &rows[row][at]
}

#[test]
fn units_stand_in_the_header_and_numbers_below() {
    let fills = current(&whole()).fills;
    let us = rows(&csv(&fills, System::Us, Marks::POINT), b',');
    // NIST SP 811 (2008), App. B.8: 1 gal = 3.785 411 784 L, 1 fl oz = 1/128 gal.
    assert_eq!(cell(&us, 1, "tank level (gal)"), "10");
    let ounces: f64 = cell(&us, 2, "concentrate measured (fl oz)").parse().expect("a number");
    assert!((ounces - 0.6 / 3.785_411_784 * 128.0).abs() < 1e-9);
    let metric = rows(&csv(&fills, System::Metric, Marks::COMMA), b';');
    assert_eq!(cell(&metric, 1, "concentrate measured (mL)"), "580");
    assert_eq!(cell(&metric, 1, "concentrate planned (mL)"), "582,4");
    assert_eq!(cell(&metric, 1, "water planned (L)"), "37,27");
    assert_eq!(cell(&metric, 1, "reading (ppm)"), "210");
    assert_eq!(cell(&metric, 1, "reading (%)"), "");
    assert_eq!(cell(&metric, 1, "areas"), "Reading room; Entrance");
    assert_eq!((cell(&metric, 1, "struck"), cell(&metric, 2, "struck")), ("no", "yes"));
    assert_eq!(cell(&metric, 1, "corrections"), "station-1/3");
    assert_eq!(cell(&metric, 1, "squeegee"), "not_done");
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 64, failure_persistence: None, ..ProptestConfig::default() })]

    /// No cell is a formula (CWE-1236), every row has every column, and numbers come back.
    #[test]
    fn no_cell_is_a_formula(log in several(), comma in any::<bool>()) {
        let (marks, separator) = if comma { (Marks::COMMA, b';') } else { (Marks::POINT, b',') };
        let fills = current(&log).fills;
        let rows = rows(&csv(&fills, System::Imperial, marks), separator);
        prop_assert_eq!(rows.len(), fills.len() + 1);
        for row in &rows {
            prop_assert_eq!(row.len(), COLUMNS.len());
            prop_assert!(row.iter().all(|cell| !cell.starts_with(['=', '+', '-', '@', '\t', '\r', '\n'])), "{:?}", row);
        }
        for (at, one) in fills.iter().enumerate() {
            let written = cell(&rows, at + 1, "water planned (imp gal)");
            match one.fill.water.si.value() {
                None => prop_assert_eq!(written, ""),
                // The Units of Measurement Regulations 1995 (UK): 1 gal = 4.546 09 L.
                Some(si) => {
                    let back = read(written, marks).expect("a number") * 0.004_546_09;
                    prop_assert!((back - si).abs() <= 1e-11 * si + 1e-20, "{} {}", back, si);
                }
            }
        }
    }
}
