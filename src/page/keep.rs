//! What the browser gives and keeps: the store, files, the date, a newer version.

pub mod after_paint;
pub mod behind_frame;
pub mod download;
pub mod event;
pub mod first_fill;
pub mod kept;
pub mod keys;
pub mod lock;
pub mod log_draft;
pub mod pasted;
pub mod practice;
pub mod store;
pub mod tabs;
pub mod texts;
pub mod today;
pub mod update;
