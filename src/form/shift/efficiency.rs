//! The efficiency that a site has measured itself.

use crate::form::flow::motion;
use crate::form::{Field, Outcome, Typed, What};
use crate::limits::EFFICIENCY;
use crate::number::Marks;
use crate::trade::coverage::measured_efficiency;
use crate::units::{Area, Duration, VolumeFraction};

/// What was found, and what is in its way.
#[derive(Clone, Debug, Default)]
pub struct Efficiency {
    /// Mistakes, each at its field.
    pub outcome: Outcome,
    /// Time at work in the time spent.
    pub measured: Option<VolumeFraction>,
}

/// Reads an area that was timed with the machine asked about, and tells the efficiency that it shows.
///
/// Nothing is asked for until one of the two numbers is typed. See [`measured_efficiency`].
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::reduce, shift::efficiency};
/// use brimline::number::Marks;
/// assert!(efficiency(&Typed::default(), Marks::POINT).measured.is_none());
/// let timed = [(Field::TimedArea, "6600"), (Field::TimedTime, "60")];
/// let write = |typed, (field, text): (Field, &str)| reduce(typed, Action::Write(field, text.into()));
/// let typed = timed.into_iter().fold(Typed::default(), write);
/// // 15 in at 2 mph pass 13 200 ft² in an hour.
/// assert!((efficiency(&typed, Marks::POINT).measured.unwrap().percent() - 50.0).abs() < 1e-9);
/// ```
pub fn efficiency(typed: &Typed, marks: Marks) -> Efficiency {
    let mut found = Efficiency::default();
    let out = &mut found.outcome;
    let area = out.may::<Area>(typed, Field::TimedArea, marks).flatten();
    let time = out.may::<Duration>(typed, Field::TimedTime, marks).flatten();
    // What is wrong with the machine is told at its own fields.
    let motion = motion(&mut Outcome::default(), typed, marks);
    if let (Some(area), Some(time), Some(motion)) = (area, time, motion) {
        let measured = measured_efficiency(area, time, motion.passing);
        if EFFICIENCY.check(measured).is_ok() {
            found.measured = Some(measured);
        } else {
            out.trouble(Field::TimedTime.name(), What::Efficiency);
        }
    }
    found
}
