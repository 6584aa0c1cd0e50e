//! The parts that views are made of.

mod amount;
mod announcer;
mod caution;
mod choice;
mod field;
mod figure;
mod fold;
mod glance;
mod later;
mod open;
mod picker;
mod print_part;
mod remarks;
mod steps;
mod tools;
mod workings;

pub use amount::{Amount, amount};
pub use announcer::Announcer;
pub use caution::{at_once, caution_of, caution_panel, caution_strip, first_help};
pub use choice::{Choice, button, choice, drop_down, pick, shown, switch};
pub use field::{Text, Typing, loose_field, number_field, text_field};
pub use figure::{computed, computed_as, facts};
pub use fold::{fold, unfolds};
pub use glance::glance;
pub use later::later;
pub use open::{Chosen, OpenFile, Told, open_saved};
pub use picker::{named, picker, shelf_buttons, used_by};
pub use print_part::print_part;
pub use remarks::{assumptions, stop, warnings};
pub use steps::Steps;
pub use tools::{
    answer_tools, print_button, trouble_label, trouble_text, troubles, troubles_beside, troubles_under,
};
pub use workings::workings;
