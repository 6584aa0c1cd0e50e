//! A machine's flow settings from catch tests: a weighted line, a rising table where no line fits, and
//! the orifice law for a tank that drains by gravity.

mod gravity;
mod line;
mod rising;

pub use gravity::{DISCHARGE, Drain, GRAVITY, drain_time, fades, orifice_area, orifice_flow};
pub use line::{Line, LineMistake, Point, fit_line};
pub use rising::{Step, rising};

use crate::units::{Duration, Flow, Quantity, Volume};

/// One catch test: what came out at a setting in a timed interval.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct CatchTest {
    /// The number of the setting.
    pub setting: f64,
    /// How long was collected, s, above 0.
    pub time: Duration,
    /// What was collected, m³, 0 or above.
    pub caught: Volume,
}

/// How far a hand on a stopwatch is off, s, one standard deviation. Common practice, no source.
pub const HAND: Duration = Duration::new(0.3);

impl CatchTest {
    /// The flow, m³/s: `Q = V / t`.
    pub fn flow(self) -> Flow {
        self.caught / self.time
    }

    /// The flow with its standard deviation, for [`fit_line`].
    ///
    /// `s = Q × √((s_V / V)² + (s_t / t)²)`
    ///
    /// * `jug`: `s_V / V`, one relative standard deviation of the jug, above 0.
    ///
    /// The hand on the stopwatch counts as [`HAND`]. Where nothing came out, the error of a test that
    /// caught a hundredth of a litre stands in, so that the point keeps a weight. Source: law of
    /// propagation of uncertainty, JCGM 100:2008 (GUM), 5.1.2, from memory, unverified.
    ///
    /// ```
    /// use brimline::trade::calibration::CatchTest;
    /// use brimline::units::{Duration, Volume};
    /// let test = CatchTest { setting: 2.0, time: Duration::new(30.0), caught: Volume::new(600e-6) };
    /// let point = test.point(0.03);
    /// assert!((point.y - 20e-6).abs() < 1e-18);
    /// assert!((point.error / point.y - 0.0316228).abs() < 5e-8); // √(3² + 1²) %
    /// ```
    pub fn point(self, jug: f64) -> Point {
        let by_hand = HAND / self.time;
        let caught = self.caught.max(Volume::new(1e-5));
        let error = (caught / self.time).si() * jug.hypot(by_hand);
        Point { x: self.setting, y: self.flow().si(), error }
    }
}
