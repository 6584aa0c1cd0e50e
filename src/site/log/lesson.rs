//! What is written down of a practice session that somebody took part in.

use super::Flaw;
use crate::document::shaped as document;
use crate::trade::calendar::Date;
use std::sync::Arc;

/// The levels of practice.
const LEVELS: std::ops::RangeInclusive<u32> = 1..=3;

document! {
    /// What a person has shown in one session. Who it was stands with the words of the record, and can be erased.
    Lesson {
        /// The check of the session.
        session: String,
        /// Its level, 1 to 3.
        level: u32,
        /// The day, year-month-day.
        day: String,
        /// The last day for which it holds; empty for no end.
        until: String,
        /// Topics of which every task was right, by their codes.
        shown: Vec<String>,
        /// Topics of which a task was wrong or left out.
        missed: Vec<String>,
    }
}

/// A session that somebody took part in, as it stands.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Attended {
    /// Its record.
    pub id: super::Id,
    /// Initials; empty where they were erased.
    pub who: Arc<str>,
    /// What was shown.
    pub lesson: Lesson,
}

impl Lesson {
    /// Holds it to all that does not need the session.
    pub(super) fn hold(&self) -> Result<(), Flaw> {
        let is = |right: bool, field| if right { Ok(()) } else { Err(Flaw::Lesson(field)) };
        let day = Date::read(&self.day);
        is(is_name(&self.session), "session")?;
        is(LEVELS.contains(&self.level), "level")?;
        is(day.is_some(), "day")?;
        is(self.until.is_empty() || Date::read(&self.until) >= day, "until")?;
        is(self.shown.iter().chain(&self.missed).all(|topic| is_name(topic)), "topics")?;
        is(!self.shown.iter().any(|topic| self.missed.contains(topic)), "topics")?;
        is(!(self.shown.is_empty() && self.missed.is_empty()), "topics")
    }
}

/// A code: small letters, digits, `-` and `_`.
fn is_name(text: &str) -> bool {
    let plain = |byte: u8| byte.is_ascii_lowercase() || byte.is_ascii_digit() || b"-_".contains(&byte);
    (1..=40).contains(&text.len()) && text.bytes().all(plain)
}
