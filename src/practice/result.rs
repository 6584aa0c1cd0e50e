//! What one person did in a session, as a document and as a code that can be read out, typed or kept in a file.
//!
//! The code is Bech32m (BIP 350) with the prefix `brim`: 32 characters without look-alikes and a checksum that is
//! sure to find up to four wrong characters in a code of 90, and so any slip and any two that changed places. It
//! holds
//!
//! | bytes | what |
//! |---|---|
//! | 1 | the version |
//! | 4 | the session's check |
//! | 2 | days since 2000-01-01 |
//! | 1 and up to 8 | how many bytes, and the initials in UTF-8 |
//! | 1 | how many exercises |
//! | 1 each | the try that was right and the first wrong road: `tries × 51 + way`, where 0 is no way |
//!
//! Nothing in it is secret and nothing proves who wrote it.

use super::Way;
use crate::coded::coded;
use crate::document::shaped as document;
use crate::limits;
use crate::trade::calendar::Date;
use bech32::primitives::decode::CheckedHrpstring;
use bech32::{Bech32m, Hrp};

coded! {
    /// Which try was right.
    #[derive(Default)]
    Tries {
        /// Not answered.
        #[default]
        Open = "open",
        /// The first.
        First = "first",
        /// The second.
        Second = "second",
        /// A later one.
        Later = "later",
        /// None: left after wrong ones.
        Never = "never",
    }
}

document! {
    /// What came of one exercise.
    Mark {
        /// Which try was right.
        tries: Tries,
        /// The first usual wrong road that was taken; one at most.
        way: Vec<Way>,
    }
}

document! {
    /// What one person did. Initials only: no name, no time.
    Attempt {
        /// The session's check.
        session: String,
        /// Initials.
        initials: String,
        /// The day, year-month-day, from 2000 on.
        date: String,
        /// Exercise by exercise.
        marks: Vec<Mark>,
    }
}

/// The version of the code. Another order of [`Way::ALL`] or of [`Tries`] is another version; new ways stand at
/// the end.
const VERSION: u8 = 2;
/// What every code begins with.
const PREFIX: &str = "brim";
/// 2000-01-01, in days since 1970.
const FIRST_DAY: i64 = 10_957;
/// The most letters of initials, and the most bytes: four of any alphabet whose letters need two.
const MOST_INITIALS: (usize, usize) = (4, 8);
/// The places that a mark has for ways, none among them. They stay what they are when a way is added, since the try
/// stands above them: version 1 had as many as there were ways then.
const fn places(version: u8) -> usize {
    if version == 1 { 48 } else { 51 }
}
const _: () = assert!(places(VERSION) * Tries::ALL.len() <= 256, "a mark is one byte");
const _: () = assert!(Way::ALL.len() < places(VERSION), "each way has a place");

/// Why a code is not taken, or none can be made.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum CodeMistake {
    /// It is no code of a result, or it is not as it was made.
    Altered,
    /// It was made by a later version.
    Later,
    /// Initials are missing, or longer than four letters.
    Initials,
    /// The day is none, or before 2000.
    Day,
    /// The session's check is none.
    Session,
    /// No exercise, or more than a code has room for.
    Marks,
}

impl CodeMistake {
    /// The stable code and word key.
    pub const fn code(&self) -> &'static str {
        match self {
            Self::Altered => "practice-code-altered",
            Self::Later => "practice-code-later",
            Self::Initials => "practice-code-initials",
            Self::Day => "practice-code-day",
            Self::Session => "practice-code-session",
            Self::Marks => "practice-code-marks",
        }
    }
}

impl Attempt {
    /// The code, in groups of four.
    ///
    /// # Errors
    /// [`CodeMistake`]: what is missing from the result.
    ///
    /// ```
    /// use brimline::practice::{Attempt, Mark, Tries};
    /// let mark = Mark { tries: Tries::First, ..Mark::default() };
    /// let (session, date) = ("0badcafe".into(), "2026-03-07".into());
    /// let attempt = Attempt { session, initials: "AB".into(), date, marks: vec![mark] };
    /// let code = attempt.to_code().unwrap();
    /// assert!(code.starts_with("brim 1"));
    /// assert_eq!(Attempt::from_code(&code.to_uppercase()), Ok(attempt));
    /// ```
    pub fn to_code(&self) -> Result<String, CodeMistake> {
        let check = u32::from_str_radix(&self.session, 16).ok().filter(|_| self.session.len() == 8);
        let check = check.ok_or(CodeMistake::Session)?;
        let initials = self.initials.trim();
        let (letters, bytes) = (initials.chars().count(), initials.len());
        if letters == 0 || letters > MOST_INITIALS.0 || bytes > MOST_INITIALS.1 {
            return Err(CodeMistake::Initials);
        }
        let day = Date::read(&self.date).and_then(|date| u16::try_from(date.days() - FIRST_DAY).ok());
        let day = day.ok_or(CodeMistake::Day)?;
        let count = u8::try_from(self.marks.len()).unwrap_or(u8::MAX);
        if limits::TASKS.check_si(f64::from(count)).is_err() {
            return Err(CodeMistake::Marks);
        }
        let mut bytes = vec![VERSION];
        bytes.extend(check.to_be_bytes());
        bytes.extend(day.to_be_bytes());
        bytes.extend(u8::try_from(initials.len()));
        bytes.extend(initials.bytes());
        bytes.push(count);
        bytes.extend(self.marks.iter().filter_map(Mark::byte));
        let code = Hrp::parse(PREFIX).ok().and_then(|hrp| bech32::encode::<Bech32m>(hrp, &bytes).ok());
        Ok(grouped(&code.ok_or(CodeMistake::Marks)?))
    }

    /// Reads a code; spaces, dashes and capitals do not matter.
    ///
    /// # Errors
    /// [`CodeMistake::Altered`] for what is no code or was changed, [`CodeMistake::Later`].
    pub fn from_code(text: &str) -> Result<Self, CodeMistake> {
        let parted = |one: &char| !one.is_whitespace() && *one != '-';
        let plain: String = text.chars().filter(parted).collect::<String>().to_lowercase();
        let code = CheckedHrpstring::new::<Bech32m>(&plain).map_err(|_| CodeMistake::Altered)?;
        if code.hrp().as_str() != PREFIX {
            return Err(CodeMistake::Altered);
        }
        let bytes: Vec<u8> = code.byte_iter().collect();
        match bytes.first() {
            Some(version @ 1..=VERSION) => read(*version, &bytes[1..]).ok_or(CodeMistake::Altered),
            Some(later) if *later > VERSION => Err(CodeMistake::Later),
            _ => Err(CodeMistake::Altered),
        }
    }
}

fn read(version: u8, bytes: &[u8]) -> Option<Attempt> {
    let (check, rest) = bytes.split_first_chunk::<4>()?;
    let (day, rest) = rest.split_first_chunk::<2>()?;
    let (length, rest) = rest.split_first()?;
    let (initials, rest) = rest.split_at_checked(usize::from(*length))?;
    let (count, marks) = rest.split_first()?;
    let date = Date::from_days(i64::from(u16::from_be_bytes(*day)) + FIRST_DAY)?;
    let attempt = Attempt {
        session: format!("{:08x}", u32::from_be_bytes(*check)),
        initials: String::from_utf8(initials.to_vec()).ok()?,
        date: date.to_string(),
        marks: marks.iter().map(|one| Mark::of_byte(version, *one)).collect::<Option<_>>()?,
    };
    // What could not have been made is none: as many marks as are said, and initials without spaces around.
    let bare = attempt.initials.trim() == attempt.initials;
    (bare && marks.len() == usize::from(*count) && attempt.to_code().is_ok()).then_some(attempt)
}

impl Mark {
    fn byte(&self) -> Option<u8> {
        let way = self.way.first().and_then(|way| Way::ALL.iter().position(|one| one == way));
        let tries = Tries::ALL.iter().position(|one| *one == self.tries)?;
        u8::try_from(tries * places(VERSION) + way.map_or(0, |way| way + 1)).ok()
    }

    fn of_byte(version: u8, byte: u8) -> Option<Self> {
        let (byte, places) = (usize::from(byte), places(version));
        let way = match byte % places {
            0 => None,
            place => Some(*Way::ALL.get(place - 1)?),
        };
        Some(Self { tries: *Tries::ALL.get(byte / places)?, way: way.into_iter().collect() })
    }
}

/// In groups of four, which the eye keeps.
fn grouped(code: &str) -> String {
    let mut out = String::with_capacity(code.len() * 5 / 4);
    for (index, one) in code.chars().enumerate() {
        if index > 0 && index.is_multiple_of(4) {
            out.push(' ');
        }
        out.push(one);
    }
    out
}
