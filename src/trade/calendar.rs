//! Dates and times of day as people write them, without a clock: the proleptic Gregorian calendar of
//! ISO 8601, exact in whole days and minutes.
//!
//! Times are local ones. Where clocks are put forward or back in between, what comes after is an hour off:
//! whoever shows a time says so.

use crate::units::{Duration, Quantity};
use std::fmt;

/// Days of the months before each month of a year without a leap day.
const BEFORE: [i64; 12] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];
/// Days from 0001-01-01 to 1970-01-01.
const EPOCH: i64 = 719_162;
/// Days of four hundred years: 97 of them are leap years.
const CYCLE: i64 = 146_097;
/// Minutes of a day.
const DAY: i64 = 1_440;

/// A day, from 0001-01-01 to 9999-12-31.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Date {
    year: i64,
    month: i64,
    day: i64,
}

/// Whether a year has a 29 February: every fourth, of the hundreds every fourth. Source: ISO 8601-1:2019, the
/// Gregorian calendar.
fn leap(year: i64) -> bool {
    year % 4 == 0 && (year % 100 != 0 || year % 400 == 0)
}

/// Days of a month.
fn length(year: i64, month: i64) -> i64 {
    match month {
        2 => 28 + i64::from(leap(year)),
        4 | 6 | 9 | 11 => 30,
        _ => 31,
    }
}

impl Date {
    /// The day, where the calendar has it.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// assert!(Date::new(2000, 2, 29).is_some());
    /// assert!(Date::new(1900, 2, 29).is_none());
    /// ```
    pub fn new(year: i64, month: i64, day: i64) -> Option<Self> {
        let is = (1..=9_999).contains(&year)
            && (1..=12).contains(&month)
            && (1..=length(year, month)).contains(&day);
        is.then_some(Self { year, month, day })
    }

    /// Reads year-month-day, as ISO 8601 writes it; a month or a day of one digit is read as well.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// assert_eq!(Date::read("2026-03-07").unwrap().to_string(), "2026-03-07");
    /// assert!(Date::read("03/07/2026").is_none());
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let mut parts = text.trim().split('-');
        let (year, month, day) = (parts.next()?, parts.next()?, parts.next()?);
        let whole = year.len() == 4 && parts.next().is_none();
        if whole { Self::new(digits(year, 4)?, digits(month, 2)?, digits(day, 2)?) } else { None }
    }

    /// Days since 1970-01-01, below 0 before it.
    ///
    /// `365 (y − 1) + ⌊(y − 1)/4⌋ − ⌊(y − 1)/100⌋ + ⌊(y − 1)/400⌋ + days before the month + d − 1 − 719162`
    ///
    /// Source: from the rule of leap years, ISO 8601-1:2019.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// assert_eq!(Date::new(2000, 3, 1).unwrap().days(), 11_017);
    /// ```
    pub fn days(self) -> i64 {
        let before = self.year - 1;
        let years = 365 * before + before / 4 - before / 100 + before / 400;
        let leap_day = i64::from(self.month > 2 && leap(self.year));
        let months = usize::try_from(self.month - 1).ok().and_then(|month| BEFORE.get(month)).unwrap_or(&0);
        years + months + leap_day + self.day - 1 - EPOCH
    }

    /// The day so many days after 1970-01-01; none beyond the years 1 to 9999.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// assert_eq!(Date::from_days(11_016), Date::new(2000, 2, 29));
    /// ```
    pub fn from_days(days: i64) -> Option<Self> {
        let since = days.checked_add(EPOCH).filter(|since| (0..CYCLE * 25).contains(since))?;
        // The mean year is a guess that is one off at most.
        let guess = since * 400 / CYCLE + 1;
        let year = (guess - 1..=guess + 1).rev().find(|year| first(*year) <= since)?;
        let mut day = since - first(year);
        let mut month = 1;
        while day >= length(year, month) {
            day -= length(year, month);
            month += 1;
        }
        Self::new(year, month, day + 1)
    }

    /// The same day so many months later; the last one of a month that is shorter. None beyond the year 9999.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// let (last, leap) = (Date::new(2024, 1, 31).unwrap(), Date::new(2024, 2, 29).unwrap());
    /// assert_eq!(last.months_later(1), Some(leap));
    /// assert_eq!(leap.months_later(12), Date::new(2025, 2, 28));
    /// ```
    pub fn months_later(self, months: u32) -> Option<Self> {
        let since = self.year * 12 + self.month - 1 + i64::from(months);
        let (year, month) = (since / 12, since % 12 + 1);
        Self::new(year, month, self.day.min(length(year, month)))
    }

    /// The day of the week, 1 for Monday to 7 for Sunday. Source: ISO 8601-1:2019; 2000-01-01, a Saturday, is
    /// the day that it is counted from there.
    ///
    /// ```
    /// use brimline::trade::calendar::Date;
    /// assert_eq!(Date::new(2000, 1, 1).unwrap().weekday(), 6);
    /// ```
    pub fn weekday(self) -> i64 {
        (self.days() + 3).rem_euclid(7) + 1
    }
}

/// Days from 0001-01-01 to the first day of a year.
fn first(year: i64) -> i64 {
    let before = year - 1;
    365 * before + before.div_euclid(4) - before.div_euclid(100) + before.div_euclid(400)
}

/// One to `most` digits, and nothing else.
fn digits(text: &str, most: usize) -> Option<i64> {
    let plain = (1..=most).contains(&text.len()) && text.bytes().all(|byte| byte.is_ascii_digit());
    plain.then(|| text.bytes().fold(0, |number, byte| number * 10 + i64::from(byte - b'0')))
}

impl fmt::Display for Date {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        write!(out, "{:04}-{:02}-{:02}", self.year, self.month, self.day)
    }
}

/// Minutes since midnight, as hours:minutes, 0:00 to 23:59.
///
/// ```
/// use brimline::trade::calendar::minutes;
/// assert_eq!(minutes("18:30"), Some(1_110));
/// assert_eq!(minutes("24:00"), None);
/// ```
pub fn minutes(text: &str) -> Option<i64> {
    let (hours, minutes) = text.trim().split_once(':')?;
    let (hours, minutes) = (digits(hours, 2)?, digits(minutes, 2).filter(|_| minutes.len() == 2)?);
    (hours < 24 && minutes < 60).then_some(hours * 60 + minutes)
}

/// A minute of a day, by the clock on the wall.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub struct Moment {
    /// The day.
    pub date: Date,
    /// Minutes since midnight, 0 to 1439.
    pub minute: i64,
}

impl Moment {
    /// The last minute of a day: what was done on it was done no later.
    ///
    /// ```
    /// use brimline::trade::calendar::{Date, Moment};
    /// let last = Moment::last_of(Date::new(2024, 2, 29).unwrap());
    /// assert_eq!((last.to_string().as_str(), last.clock().as_str()), ("2024-02-29 23:59", "23:59"));
    /// ```
    pub fn last_of(date: Date) -> Self {
        Self { date, minute: DAY - 1 }
    }

    /// The time of day as ISO 8601 has it, to the minute.
    pub fn clock(self) -> String {
        format!("{:02}:{:02}", self.minute / 60, self.minute % 60)
    }

    /// So long after this one, in whole minutes, never too early: a started minute counts. None beyond the
    /// calendar, or for a time that is below 0 or without an end.
    ///
    /// ```
    /// use brimline::trade::calendar::{Date, Moment};
    /// use brimline::units::Duration;
    /// let evening = Moment { date: Date::new(2024, 2, 28).unwrap(), minute: 23 * 60 + 30 };
    /// assert_eq!(evening.after(Duration::new(45.0 * 60.0)).unwrap().to_string(), "2024-02-29 00:15");
    /// ```
    pub fn after(self, time: Duration) -> Option<Self> {
        // What is a whole minute but for rounding is that minute.
        let minutes = (time.si() / 60.0 - 1e-6).ceil().max(0.0);
        if !(time.si() >= 0.0 && minutes < 1e10) {
            return None;
        }
        #[allow(clippy::cast_possible_truncation, reason = "a whole number below 1e10")]
        let at = self.minute + minutes as i64;
        Some(Self {
            date: Date::from_days(self.date.days() + at.div_euclid(DAY))?,
            minute: at.rem_euclid(DAY),
        })
    }
}

impl fmt::Display for Moment {
    fn fmt(&self, out: &mut fmt::Formatter) -> fmt::Result {
        write!(out, "{} {}", self.date, self.clock())
    }
}
