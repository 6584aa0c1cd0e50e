//! The views: a question, and its answer.

mod cautions;
mod fill;
mod flow;
mod shift;

pub use cautions::CautionsView;
pub use fill::FillView;
pub use flow::FlowView;
pub use shift::ShiftView;
