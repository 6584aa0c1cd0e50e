//! What PHREEQC, pHcalc, scipy and chemicals say of the same solutions and substances.

use crate::cases::solution;
use brimline::chemistry::acid_base::{Activity, Makeup, Solution, substance, weak};
use serde_json::Value;
use std::process::Command;

fn numbers(value: &Value) -> Vec<f64> {
    value.as_array().expect("a list").iter().map(|one| one.as_f64().expect("a number")).collect()
}

fn made(case: &Value) -> Solution {
    let given = case["given"].as_object().expect("what is in it");
    solution(given.iter().map(|(name, amount)| (name.as_str(), amount.as_f64().expect("mol/L"))))
}

#[test]
#[ignore = "needs the Python reference libraries; `cargo run -- test` runs it"]
fn libraries_say_the_same() {
    let python = std::env::var("BRIMLINE_PYTHON")
        .expect("BRIMLINE_PYTHON names a Python with phreeqpython and pHcalc");
    let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/acid_base.py");
    let rows: Vec<&str> = substance::all().map(|row| row.cas).collect();
    let run = Command::new(python).args([script, &rows.join(",")]).output().expect("Python starts");
    assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
    let theirs: Value = serde_json::from_slice(&run.stdout).expect("JSON");
    constants(&theirs);
    solutions(theirs["cases"].as_array().expect("cases"));
    masses(&theirs["masses"]);
}

/// Both sides reckon with the same constants, and those are what PHREEQC ships where the table says so.
fn constants(theirs: &Value) {
    let acids = theirs["acids"].as_object().expect("acids");
    assert_eq!(acids.len(), weak::ALL.len());
    for row in weak::ALL {
        let acid = &acids[row.name];
        assert_eq!(
            (acid[0].as_i64(), numbers(&acid[1])),
            (Some(row.charge.into()), row.pka.to_vec()),
            "{}",
            row.name
        );
    }
    let shipped = theirs["shipped"].as_object().expect("constants");
    let cited = weak::ALL.iter().filter(|row| row.source.cite.contains("phreeqc.dat"));
    assert_eq!(cited.count(), shipped.len());
    for row in weak::ALL.iter().filter(|row| row.source.cite.contains("phreeqc.dat")) {
        for (ours, theirs) in row.pka.iter().zip(numbers(&shipped[row.name])) {
            assert!((ours - theirs).abs() < 1e-9, "{} {ours} {theirs}", row.name);
        }
    }
}

/// Ideal: a root is a root. Davies: PHREEQC also lets the activity of water sink, which is 0.002 in pH at an
/// ionic strength of 0.15 mol/L.
fn solutions(cases: &[Value]) {
    let mut furthest = 0.0_f64;
    for case in cases {
        let made = made(case);
        let ideal = made.balance(Activity::Ideal).ph;
        let root = case["ideal"].as_f64().expect("a pH");
        assert!((ideal - root).abs() < 1e-8, "{ideal} is not {root}: {case}");
        if let Some(phcalc) = case["phcalc"].as_f64() {
            assert!((ideal - phcalc).abs() < 1e-4, "{ideal} is not {phcalc}: {case}");
        }
        let davies = made.balance(Activity::Davies);
        let (ph, strength) = (&case["davies"], &case["ionic_strength"]);
        let (ph, strength) = (ph.as_f64().expect("a pH"), strength.as_f64().expect("mol/kg"));
        furthest = furthest.max((davies.ph - ph).abs());
        assert!((davies.ph - ph).abs() < 0.01, "{davies:?} is not {ph}: {case}");
        assert!((davies.ionic_strength - strength).abs() < 0.002 * strength + 1e-9, "{davies:?}: {case}");
    }
    println!("{} solutions, the furthest from PHREEQC by {furthest:.4}", cases.len());
}

/// Molar masses to the digits of the table. The library knows no technical mixtures, and the salts of EDTA by
/// their acid only.
fn masses(theirs: &Value) {
    let edta = theirs["60-00-4"].as_f64().expect("EDTA");
    let mut known = 0;
    let rows = substance::all().flat_map(|row| row.makeups().map(move |makeup| (row, makeup)));
    for (row, Makeup { molar_mass, .. }) in rows.filter(|(row, _)| row.makeups().count() == 1) {
        let Some(mass) = theirs[row.cas].as_f64() else { continue };
        if row.name.ends_with("EDTA") || row.name.contains("EDTA dihydrate") {
            assert!((mass - edta).abs() < 1e-9 || (mass - molar_mass).abs() < 0.002, "{}", row.name);
            continue;
        }
        assert!((molar_mass - mass).abs() < 0.002, "{} {}: {molar_mass} is not {mass}", row.cas, row.name);
        known += 1;
    }
    assert!(known > 60, "the library knew {known}");
}
