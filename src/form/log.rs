//! The log: the fill to write down out of what Fill shows, what a person adds or corrects, and what the log is asked.
//!
//! Pure: the fills as they stand and the time of now are the caller's.

pub mod asked;
mod draft;
mod entered;
mod filled;
mod plan;
mod reminder;
mod sought;
mod today;

pub use draft::{Counted, Draft, Part, planned_for};
pub use entered::{Base, DOSES, Entered, TANKS, scale_unit, words};
pub use filled::{Lack, Reader, filled};
pub use plan::{Shown, doubts, measured_remark, plan, reading};
pub use reminder::{LATE_DAYS, LATE_RECORDS, reminder};
pub use sought::{Choices, Sought, choices};
pub use today::{Shift, end_of_shift, late, left_undone};
