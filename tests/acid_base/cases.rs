//! Solutions, as the tables name what is in them.

use brimline::chemistry::acid_base::{Solution, weak};

/// What is in a solution.
#[allow(dead_code, reason = "the benchmark reads its own")]
pub type Given = &'static [(&'static str, f64)];

/// Moles a litre of each: `Na` and `Cl` for strong ions, a weak acid by the name of its row.
pub fn solution<'a>(given: impl IntoIterator<Item = (&'a str, f64)>) -> Solution {
    given.into_iter().fold(Solution::water(), |all, (name, amount)| match name {
        "Na" => all.strong(amount, 0.0),
        "Cl" => all.strong(0.0, amount),
        acid => {
            let row = weak::ALL.iter().find(|row| row.name == acid);
            all.weak(row.unwrap_or_else(|| panic!("{acid} is in no row")), amount)
        }
    })
}
