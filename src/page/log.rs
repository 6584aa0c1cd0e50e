//! The log on this device: what the browser keeps of it, what the page holds of it, and one function an act.
//!
//! | part | what it does |
//! |---|---|
//! | [`Held`], [`use_log`] | what the page holds; a view that uses it is drawn again when it changes |
//! | [`record`], [`correct`], [`erase`] | write one record; it is confirmed when the browser says that it is durable |
//! | [`again`], [`let_go`], [`save_waiting`] | what was not confirmed: tried again, let go, or saved as a file |
//! | [`history`] | a fill with all that was written about it |
//! | [`backup_ndjson`], [`backup_csv`] | files to save |
//! | [`compare`], [`take`] | a file from elsewhere: what it would bring, then taking it |
//! | [`check_now`] | holds every record to its chain |
//!
//! Codes of [`Trouble`]: `log-denied`, `log-full`, `log-newer`, `log-blocked`, `log-unreadable`, `log-no-random`,
//! `log-failed`, and those of [`Flaw`](crate::site::log::Flaw) where the record itself is none. Codes of [`Doing`]:
//! `opening`, `reading`, `comparing`, `writing`, `saving`.
//!
//! All of it stands in the later chunk of the page.

mod act;
mod held;
mod incoming;
mod trouble;

pub use act::{
    again, backup_csv, backup_ndjson, check_now, correct, erase, history, let_go, record, save_waiting,
};
pub use held::{Backup, Busy, Check, Doing, Held, Lost, Saved, Stage, Usage, Waiting, use_log};
pub use incoming::{Incoming, compare, take};
pub use trouble::Trouble;
