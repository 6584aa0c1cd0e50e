//! When something was done, by the clock on the wall and how far that is from UTC.

use crate::trade::calendar::Date;
use std::fmt;

/// The farthest that a clock on the wall is from UTC, minutes: 14 hours.
const FARTHEST: i64 = 14 * 60;

/// A local time with its offset.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct When {
    /// The local day.
    pub date: Date,
    /// Seconds since local midnight, 0 to 86,399.
    pub second: i64,
    /// Minutes that local time is ahead of UTC.
    pub offset: i64,
}

impl When {
    /// Reads the extended format of ISO 8601-1:2019 (5.4.2.1) with an offset: `2026-03-07T18:30:00-05:00`, `…Z`.
    /// Seconds may be left out; fractions of them may not stand.
    ///
    /// ```
    /// use brimline::site::log::When;
    /// let here = When::read("2026-03-07T18:30-05:00").unwrap();
    /// assert_eq!(here.instant(), When::read("2026-03-07T23:30:00Z").unwrap().instant());
    /// assert_eq!(When::read("2026-03-07T18:30:00"), None);
    /// ```
    pub fn read(text: &str) -> Option<Self> {
        let (date, rest) = text.split_once('T').filter(|(date, _)| date.len() == 10)?;
        let date = Date::read(date)?;
        let at = rest.find(['Z', '+', '-'])?;
        let (time, offset) = rest.split_at(at);
        let second = match time.len() {
            5 => clock(time)? * 60,
            8 if time.is_char_boundary(5) => {
                clock(&time[..5])? * 60 + below_60(time[5..].strip_prefix(':')?)?
            }
            _ => return None,
        };
        let offset = match offset.split_at(1) {
            ("Z", "") => 0,
            ("+", ahead) => clock(ahead)?,
            // ISO 8601 knows no -00:00.
            ("-", behind) => -clock(behind).filter(|behind| *behind > 0)?,
            _ => return None,
        };
        (offset.abs() <= FARTHEST).then_some(Self { date, second, offset })
    }

    /// Seconds since 1970-01-01T00:00Z.
    pub fn instant(self) -> i64 {
        self.date.days() * 86_400 + self.second - self.offset * 60
    }

    /// The local year and month.
    ///
    /// ```
    /// use brimline::site::log::When;
    /// assert_eq!(When::read("2026-03-31T23:30-05:00").unwrap().month(), "2026-03");
    /// ```
    pub fn month(self) -> String {
        let mut day = self.date.to_string();
        day.truncate(7);
        day
    }
}

impl fmt::Display for When {
    /// As [`When::read`] takes it, with seconds.
    ///
    /// ```
    /// use brimline::site::log::When;
    /// let text = "2026-03-07T06:05:09-05:30";
    /// assert_eq!(When::read(text).unwrap().to_string(), text);
    /// ```
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        let Self { date, second, offset } = self;
        let (sign, ahead) = (if *offset < 0 { '-' } else { '+' }, offset.abs());
        let [hour, minute, second] = [second / 3_600, second / 60 % 60, second % 60];
        write!(f, "{date}T{hour:02}:{minute:02}:{second:02}{sign}{:02}:{:02}", ahead / 60, ahead % 60)
    }
}

/// Minutes since midnight of hh:mm.
fn clock(text: &str) -> Option<i64> {
    if text.len() == 5 { crate::trade::calendar::minutes(text) } else { None }
}

fn below_60(text: &str) -> Option<i64> {
    let plain = text.len() == 2 && text.bytes().all(|byte| byte.is_ascii_digit());
    text.parse().ok().filter(|number| plain && *number < 60)
}
