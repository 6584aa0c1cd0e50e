//! A straight line by weighted least squares.

/// A measured value with its error.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Where it was measured.
    pub x: f64,
    /// What was measured.
    pub y: f64,
    /// One standard deviation of it, above 0.
    pub error: f64,
}

/// Why no line goes through points.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum LineMistake {
    /// Fewer than two places were measured.
    OnePlace,
    /// A value or an error is not a number, or an error is not above 0.
    NoNumber,
}

/// `y = a + b × x`, with what it is known to.
#[derive(Clone, Debug, PartialEq)]
pub struct Line {
    /// a, the value at 0.
    pub intercept: f64,
    /// b, the rise a step.
    pub slope: f64,
    /// χ², the sum of squared residuals, each in its own standard deviation.
    pub chi_squared: f64,
    /// n − 2.
    pub freedom: usize,
    /// Each residual `y − a − b × x`, in the order of the points.
    pub residuals: Vec<f64>,
    /// Each residual in standard deviations of what it would be without its own point; 0 where fewer
    /// than four points leave nothing to hold it against.
    pub studentised: Vec<f64>,
    centre: f64,
    weight: f64,
    spread: f64,
}

/// A residual further than this from the line is pointed out. Common practice, no source.
const FAR: f64 = 3.0;

/// Fits a line.
///
/// `w = 1 / s²`, `x̄ = Σwx / Σw`, `b = Σw(x − x̄)(y − ȳ) / Σw(x − x̄)²`, `a = ȳ − b × x̄`
///
/// * `points`: at least two different x; each error above 0.
///
/// Sums are taken about the mean, so that digits are not lost. That y depends on x in a straight line
/// is not checked: [`Line::off`] and [`Line::outliers`] tell. Source: NIST/SEMATECH e-Handbook of
/// Statistical Methods, 4.1.4.3, weighted least squares regression, from memory, unverified; held against
/// the "Norris" data of the NIST in the tests.
///
/// # Errors
/// [`LineMistake`].
///
/// ```
/// use brimline::trade::calibration::{Point, fit_line};
/// let point = |x, y, error| Point { x, y, error };
/// let line = fit_line(&[
///     point(1.0, 0.21, 0.01), point(2.0, 0.39, 0.01), point(3.0, 0.62, 0.02), point(4.0, 0.80, 0.02), point(5.0, 1.01, 0.03),
/// ]).unwrap();
/// assert!((line.intercept - 0.003_505_32).abs() < 5e-9 && (line.slope - 0.199_427).abs() < 5e-7);
/// ```
pub fn fit_line(points: &[Point]) -> Result<Line, LineMistake> {
    if points.iter().any(|one| !(one.x.is_finite() && one.y.is_finite() && one.error > 0.0)) {
        return Err(LineMistake::NoNumber);
    }
    let weights: Vec<f64> = points.iter().map(|one| one.error.powi(-2)).collect();
    let weight: f64 = weights.iter().sum();
    let mean = |of: &dyn Fn(&Point) -> f64| -> f64 {
        points.iter().zip(&weights).map(|(one, weight)| weight * of(one)).sum::<f64>() / weight
    };
    let (x, y) = (mean(&|one| one.x), mean(&|one| one.y));
    let spread = mean(&|one| (one.x - x).powi(2)) * weight;
    if points.len() < 2 || spread <= f64::EPSILON * weight * x * x {
        return Err(LineMistake::OnePlace);
    }
    let slope = mean(&|one| (one.x - x) * (one.y - y)) * weight / spread;
    // About the means: of a nearly flat line far from 0 the intercept would lose what the residuals need.
    let residuals: Vec<f64> = points.iter().map(|one| (one.y - y) - slope * (one.x - x)).collect();
    let chi_squared = residuals.iter().zip(&weights).map(|(one, weight)| weight * one * one).sum();
    let freedom = points.len() - 2;
    let line = Line {
        intercept: y - slope * x,
        slope,
        chi_squared,
        freedom,
        studentised: Vec::new(),
        residuals,
        centre: x,
        weight,
        spread,
    };
    let studentised =
        points.iter().zip(&line.residuals).map(|(one, off)| line.studentise(*one, *off)).collect();
    Ok(Line { studentised, ..line })
}

impl Line {
    /// Standard errors of a and b, and their covariance, where the errors of the points are believed.
    pub fn errors(&self) -> (f64, f64, f64) {
        let slope = 1.0 / self.spread;
        let intercept = 1.0 / self.weight + self.centre * self.centre * slope;
        (intercept.sqrt(), slope.sqrt(), -self.centre * slope)
    }

    /// What the standard errors are multiplied by where only the scatter is believed: `√(χ² / (n − 2))`;
    /// 1 for two points, which have no scatter.
    pub fn scatter(&self) -> f64 {
        if self.freedom == 0 { 1.0 } else { (self.chi_squared / self.freedom as f64).sqrt() }
    }

    /// The line at `x`, and its standard error there.
    ///
    /// `s² = 1 / Σw + (x − x̄)² / Σw(x − x̄)²`
    pub fn at(&self, x: f64) -> (f64, f64) {
        let off = x - self.centre;
        (self.intercept + self.slope * x, (1.0 / self.weight + off * off / self.spread).sqrt())
    }

    /// The indices of points that lie further off than the others explain. They are pointed out and
    /// stay in the line: whoever caught them knows why.
    pub fn outliers(&self) -> Vec<usize> {
        (0..self.studentised.len()).filter(|index| self.studentised[*index].abs() > FAR).collect()
    }

    /// The largest residual as a share of the line there: what a setting may be off.
    pub fn off(&self, points: &[Point]) -> f64 {
        let share = |(one, off): (&Point, &f64)| (off / self.at(one.x).0).abs();
        points.iter().zip(&self.residuals).map(share).fold(0.0, f64::max)
    }

    /// A residual against the scatter of the other points: `t = r / (s₍ᵢ₎ × σᵢ × √(1 − h))`.
    fn studentise(&self, point: Point, residual: f64) -> f64 {
        if self.freedom < 2 {
            return 0.0;
        }
        let weight = point.error.powi(-2);
        let off = point.x - self.centre;
        let leverage = weight * (1.0 / self.weight + off * off / self.spread);
        let (own, rest) = (weight * residual * residual, 1.0 - leverage);
        // Points that lie on one line to the last digit leave rounding errors, which are no outliers.
        let size = self.intercept.abs() + (self.slope * point.x).abs();
        if rest <= 1e-12 || residual.abs() <= 1e-12 * size {
            return 0.0;
        }
        let others = (self.chi_squared - own / rest).max(0.0) / (self.freedom - 1) as f64;
        // Where all others lie on one line exactly, any point beside it is infinitely far off.
        (own / (rest * others.max(f64::MIN_POSITIVE))).sqrt().copysign(residual)
    }
}
