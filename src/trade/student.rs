//! How far a mean or a slope may be off by chance, where few values tell their own scatter.

use crate::source::Source;

/// Where the values come from.
pub const SOURCE: Source =
    Source::unverified("NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.2, critical values of t");

/// Upper 2.5 % points of Student's t for 1 to 30 degrees of freedom.
const UPPER: [f64; 30] = [
    12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262, 2.228, 2.201, 2.179, 2.160, 2.145, 2.131,
    2.120, 2.110, 2.101, 2.093, 2.086, 2.080, 2.074, 2.069, 2.064, 2.060, 2.056, 2.052, 2.048, 2.045, 2.042,
];

/// So many standard errors hold the true value 95 times in 100, by Student's t.
///
/// * `freedom`: degrees of freedom. Beyond 30 the value for 30 is given, which is on the safe side by 4 % at most; for
///   0 nothing bounds it.
///
/// ```
/// use brimline::trade::student::bound;
/// assert_eq!((bound(2), bound(30), bound(500)), (4.303, 2.042, 2.042));
/// assert!(bound(0).is_infinite());
/// ```
pub fn bound(freedom: usize) -> f64 {
    let Some(place) = freedom.checked_sub(1) else { return f64::INFINITY };
    UPPER.get(place).copied().unwrap_or(UPPER[UPPER.len() - 1])
}
