//! Whether readings wander.

use crate::site::log::{Current, Scale};
use crate::trade::calibration::{LineMistake, Point, fit_line};
use crate::trade::student;

/// How readings change with time.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Drift {
    /// How many readings.
    pub readings: usize,
    /// Their mean, in SI units of the scale.
    pub mean: f64,
    /// How much they rise a day, in SI units of the scale.
    pub slope: f64,
    /// One standard error of that, from their scatter about the line; none for two readings, which have none.
    pub error: Option<f64>,
}

impl Drift {
    /// How far the rise may be off by chance, 95 times in 100: `t × s(b)`, by Student's t with n − 2 degrees of freedom.
    /// None for two readings. Source: [`student::SOURCE`].
    pub fn doubt(&self) -> Option<f64> {
        self.error.map(|error| student::bound(self.readings.saturating_sub(2)) * error)
    }

    /// Whether the rise is more than that. Of series that do not wander one in twenty seems to.
    pub fn is_clear(&self) -> bool {
        self.doubt().is_some_and(|doubt| self.slope.abs() > doubt)
    }
}

/// Why nobody can say whether readings wander.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DriftMistake {
    /// There are no readings at two times.
    TooFew,
    /// They are of more than one product or standard: another recipe is no drift.
    Mixed,
}

impl DriftMistake {
    /// The stable code.
    pub const fn code(self) -> &'static str {
        match self {
            Self::TooFew => "log-too-few-readings",
            Self::Mixed => "log-mixed-readings",
        }
    }
}

/// Fits a straight line through the readings of one scale against time, all counting the same.
///
/// `b = Σ(x − x̄)(y − ȳ) / Σ(x − x̄)²`, `s(b) = √(Σr² / (n − 2) / Σ(x − x̄)²)`, x in days
///
/// * `fills`: of one product and one standard.
///
/// Source: as [`fit_line`].
///
/// # Errors
/// [`DriftMistake`].
///
/// ```
/// use brimline::site::log::{Fill, Log, Reading, Scale, Si, Stamp, Words, current};
/// use brimline::site::log::questions::{Filter, drift};
/// let mut log = Log::default();
/// for (day, ppm) in [("01", 0.200), ("02", 0.190), ("03", 0.180)] {
///     let when = format!("2026-03-{day}T18:30:00Z");
///     let reading = Reading { scale: Scale::Active, si: Si::new(ppm).unwrap(), text: "".into() };
///     let stamp = Stamp { device: "station-1", when: &when, random: [7; 32] };
///     log.fill(&stamp, Fill { reading, ..Fill::default() }, Words::default()).unwrap();
/// }
/// let found = drift(Filter::default().of(&current(&log).fills), Scale::Active).unwrap();
/// assert!((found.slope + 0.010).abs() < 1e-12); // 10 ppm less a day
/// ```
pub fn drift<'a>(fills: impl IntoIterator<Item = &'a Current>, scale: Scale) -> Result<Drift, DriftMistake> {
    let mut points: Vec<Point> = Vec::new();
    let mut recipe: Option<(&str, &str, u32)> = None;
    let mut begin: Option<i64> = None;
    for one in fills {
        let reading = Some(&one.fill.reading).filter(|reading| reading.scale == scale);
        let Some(y) = reading.and_then(|reading| reading.si.value()) else { continue };
        let own = (&*one.fill.product.id, &*one.fill.standard.id, one.fill.version);
        if *recipe.get_or_insert(own) != own {
            return Err(DriftMistake::Mixed);
        }
        let at = one.when.instant();
        let since = at - *begin.get_or_insert(at);
        points.push(Point { x: since as f64 / 86_400.0, y, error: 1.0 });
    }
    let line = fit_line(&points).map_err(|_: LineMistake| DriftMistake::TooFew)?;
    let (_, error, _) = line.errors();
    Ok(Drift {
        readings: points.len(),
        mean: points.iter().map(|one| one.y).sum::<f64>() / points.len() as f64,
        slope: line.slope,
        error: (line.freedom > 0).then(|| error * line.scatter()),
    })
}
