//! How long the pH of a use solution takes, beside PHREEQC and pHcalc on the same solutions in the same
//! run: `cargo run -- test --only bench`, or `cargo bench --bench acid_base` with `BRIMLINE_PYTHON`.

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    bench::main();
}

#[cfg(not(target_arch = "wasm32"))]
#[path = "../acid_base/cases.rs"]
mod cases;

#[cfg(not(target_arch = "wasm32"))]
#[path = "../common/noted.rs"]
mod noted;

#[cfg(not(target_arch = "wasm32"))]
mod bench {
    use crate::cases::solution;
    use crate::noted::figure;
    use brimline::chemistry::acid_base::{Activity, Ingredient, Product, Water, curve, estimate};
    use brimline::units::{Density, MassConcentration, MassFraction, VolumeFraction};
    use serde_json::Value;
    use std::hint::black_box;
    use std::process::{Command, exit};
    use std::time::Instant;

    /// The longest that one solution may take, s.
    const BUDGET: f64 = 20e-6;
    /// The greatest share of PHREEQC's time and of pHcalc's.
    const SHARES: [f64; 2] = [0.25, 0.01];

    /// What is in one solution: names and mol/L.
    type Case = Vec<(String, f64)>;

    /// Runs all and says how many checks passed, in the words of a test runner.
    pub fn main() {
        let theirs = libraries();
        let number = |value: &Value| value.as_f64().expect("a number");
        let named = usize::try_from(theirs["named"].as_u64().expect("a count")).expect("few");
        let rows = &theirs["cases"].as_array().expect("cases")[..named];
        let cases: Vec<Case> = rows.iter().map(case).collect();
        let [phreeqc, phcalc] = ["phreeqc", "phcalc"].map(|name| number(&theirs["seconds"][name]));
        let solve = |case: &Case, activity| {
            solution(case.iter().map(|(name, amount)| (name.as_str(), *amount))).balance(activity).ph
        };
        let off = |key: &str, activity| {
            let gaps =
                rows.iter().zip(&cases).map(|(row, case)| (solve(case, activity) - number(&row[key])).abs());
            gaps.fold(0.0, f64::max)
        };
        let (ideal_off, davies_off) = (off("phcalc", Activity::Ideal), off("davies", Activity::Davies));
        let [ideal, davies] = [Activity::Ideal, Activity::Davies].map(|activity| {
            seconds(|| cases.iter().map(|case| solve(black_box(case), activity)).sum::<f64>())
                / cases.len() as f64
        });
        let slowest = cases.iter().map(|case| seconds(|| solve(black_box(case), Activity::Davies)));
        let slowest = slowest.fold(0.0, f64::max);
        let micro = 1e6;
        println!("{named} solutions, µs each, the fastest of many rounds:");
        println!(
            "  ideal  {:8.2}   pHcalc  {:8.2}   ratio 1 : {:.0}",
            ideal * micro,
            phcalc * micro,
            phcalc / ideal
        );
        println!(
            "  Davies {:8.2}   PHREEQC {:8.2}   ratio 1 : {:.0}",
            davies * micro,
            phreeqc * micro,
            phreeqc / davies
        );
        println!("  the slowest of them, Davies: {:.2}", slowest * micro);
        println!("  furthest from pHcalc {ideal_off:.1e}, from PHREEQC {davies_off:.4}");
        let percent = |share: f64| format!("{:.1} %", 100.0 * share);
        figure("a pH with activities, of PHREEQC’s time", &percent(SHARES[0]), &percent(davies / phreeqc));
        figure("an ideal pH, of pHcalc’s time", &percent(SHARES[1]), &percent(ideal / phcalc));
        figure("the slowest pH", "20 µs", &format!("{:.1} µs", slowest * micro));
        products();
        finish(&[
            ("the slowest solution within 20 µs", slowest <= BUDGET),
            ("a quarter of PHREEQC's time", davies <= SHARES[0] * phreeqc),
            ("a hundredth of pHcalc's time", ideal <= SHARES[1] * phcalc),
            ("pHcalc's pH to 0.0001", ideal_off <= 1e-4),
            ("PHREEQC's pH to 0.01", davies_off <= 0.01),
        ]);
    }

    fn libraries() -> Value {
        let python =
            std::env::var("BRIMLINE_PYTHON").expect("BRIMLINE_PYTHON names a Python with the libraries");
        let script = concat!(env!("CARGO_MANIFEST_DIR"), "/tests/reference/acid_base.py");
        let run = Command::new(python).args([script, "time"]).output().expect("Python starts");
        assert!(run.status.success(), "{}", String::from_utf8_lossy(&run.stderr));
        serde_json::from_slice(&run.stdout).expect("JSON")
    }

    fn case(row: &Value) -> Case {
        let given = row["given"].as_object().expect("what is in it");
        given.iter().map(|(name, amount)| (name.clone(), amount.as_f64().expect("mol/L"))).collect()
    }

    /// One call, the mean of the fastest of 50 rounds of 200.
    fn seconds<T>(mut call: impl FnMut() -> T) -> f64 {
        let round = |_| {
            let began = Instant::now();
            (0..200).for_each(|_| drop(black_box(call())));
            began.elapsed().as_secs_f64() / 200.0
        };
        (0..50).map(round).fold(f64::INFINITY, f64::min)
    }

    /// What a page would ask: the band of a product with six ranges, and its curve.
    fn products() {
        let share = MassFraction::new;
        let line = |cas, low, high| Ingredient { cas, low: share(low), high: share(high) };
        let ingredients = [
            line("1310-73-2", 0.005, 0.01),
            line("497-19-8", 0.01, 0.05),
            line("6834-92-0", 0.01, 0.03),
            line("64-02-8", 0.01, 0.03),
            line("141-43-5", 0.01, 0.05),
            line("144-55-8", 0.0, 0.01),
        ];
        let product = Product { ingredients: &ingredients, density: Density::new(1_080.0) };
        let tap = Water { alkalinity: MassConcentration::new(0.1), ph: 7.5 };
        let strength = VolumeFraction::from_parts_of_water(64.0);
        let band = seconds(|| estimate(black_box(product), strength, tap, Activity::Davies));
        let points = seconds(|| curve(black_box(product), tap, Activity::Davies, strength, 40));
        println!(
            "  the band of a product of six ranges: {:.0} µs; its curve of 41 points: {:.2} ms",
            band * 1e6,
            points * 1e3
        );
    }

    fn finish(checks: &[(&str, bool)]) {
        for (what, well) in checks {
            println!("{} {what}", if *well { "kept:  " } else { "MISSED:" });
        }
        let passed = checks.iter().filter(|check| check.1).count();
        let failed = checks.len() - passed;
        println!(
            "test result: {}. {passed} passed; {failed} failed",
            if failed == 0 { "ok" } else { "FAILED" }
        );
        exit(i32::from(failed > 0));
    }
}
