//! The parts that views are made of.

mod amount;
mod announcer;
mod caution;
mod choice;
mod field;
mod figure;
mod glance;
mod open;
mod picker;
mod remarks;
mod tools;
mod workings;

pub use amount::Amount;
pub use announcer::Announcer;
pub use caution::{CautionPanel, CautionStrip};
pub use choice::{Choice, Switch};
pub use field::{LineField, NumberField};
pub use figure::{Computed, Fact};
pub use glance::Glance;
pub use open::OpenSaved;
pub use picker::{Picker, ShelfButtons, named};
pub use remarks::{Assumptions, Remarks, Stop};
pub use tools::{AnswerTools, Troubles};
pub use workings::Workings;
