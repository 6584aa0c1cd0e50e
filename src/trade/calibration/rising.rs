//! A table that never falls, for settings that no line fits.

use super::Point;

/// One setting of the table.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// The setting.
    pub x: f64,
    /// The value there.
    pub y: f64,
    /// How many points stand behind it.
    pub count: usize,
}

/// The rising table that is nearest to the points.
///
/// Least squares with weights `1 / s²` among all tables that never fall, by pooling neighbours that
/// would: the repeats of one setting are averaged first.
///
/// * `points`: any number, in any order; each error above 0.
///
/// Returns one step a setting, in rising order; the neighbours that were pooled share one value. Between
/// settings nothing is said: a dial has none there. Source: the pool-adjacent-violators method, Ayer et
/// al., Annals of Mathematical Statistics 26:641 (1955), from memory, unverified; held against the
/// definition by brute force in the tests.
///
/// ```
/// use brimline::trade::calibration::{Point, rising};
/// let point = |x, y| Point { x, y, error: 1.0 };
/// let table = rising(&[point(1.0, 2.0), point(3.0, 4.0), point(2.0, 5.0), point(3.0, 2.0)]);
/// // Settings 2 and 3 would fall from 5 to 3: three points, 11 in all.
/// let values: Vec<f64> = table.iter().map(|step| step.y).collect();
/// assert!((values[0] - 2.0).abs() < 1e-12 && (values[1] - 11.0 / 3.0).abs() < 1e-12 && values[1] == values[2]);
/// ```
pub fn rising(points: &[Point]) -> Vec<Step> {
    struct Pool {
        xs: Vec<(f64, usize)>,
        sum: f64,
        weight: f64,
    }
    let mut sorted: Vec<Point> = points.to_vec();
    sorted.sort_by(|a, b| a.x.total_cmp(&b.x));
    let mut pools: Vec<Pool> = Vec::new();
    for point in sorted {
        let weight = point.error.powi(-2);
        match pools.last_mut() {
            Some(last) if last.xs.len() == 1 && last.xs[0].0.total_cmp(&point.x).is_eq() => {
                last.xs[0].1 += 1;
                last.sum += weight * point.y;
                last.weight += weight;
            }
            _ => pools.push(Pool { xs: vec![(point.x, 1)], sum: weight * point.y, weight }),
        }
    }
    let mut rising: Vec<Pool> = Vec::new();
    for mut pool in pools {
        while let Some(before) = rising.last()
            && before.sum / before.weight > pool.sum / pool.weight
            && let Some(before) = rising.pop()
        {
            pool = Pool {
                xs: [before.xs, pool.xs].concat(),
                sum: before.sum + pool.sum,
                weight: before.weight + pool.weight,
            };
        }
        rising.push(pool);
    }
    rising
        .into_iter()
        .flat_map(|pool| {
            let y = pool.sum / pool.weight;
            pool.xs.into_iter().map(move |(x, count)| Step { x, y, count })
        })
        .collect()
}
