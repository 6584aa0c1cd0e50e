//! Whether it is time for a backup.

use crate::answer::{Remark, Value, Weight};
use crate::trade::calendar::Date;
use crate::units::Kind;

/// A backup is old after so many days. Common practice, no source.
pub const LATE_DAYS: i64 = 7;
/// It is old when so many records are not in it. Common practice, no source.
pub const LATE_RECORDS: usize = 200;

/// That records stand on this device alone for too long, and how many.
///
/// * `last`: the day of the last backup; none where there never was one.
/// * `since`: records that it does not have.
///
/// ```
/// use brimline::form::log::reminder;
/// use brimline::trade::calendar::Date;
/// let today = Date::new(2026, 3, 15).unwrap();
/// assert!(reminder(Date::new(2026, 3, 8), 3, today).is_none());
/// assert_eq!(reminder(Date::new(2026, 3, 7), 3, today).unwrap().code, "remark-log-backup-old");
/// assert_eq!(reminder(None, 1, today).unwrap().code, "remark-log-backup-none");
/// ```
pub fn reminder(last: Option<Date>, since: usize, today: Date) -> Option<Remark> {
    let n = |remark: Remark| remark.value("n", Value::plain(since as f64, Kind::Count));
    if since == 0 {
        return None;
    }
    let Some(last) = last else { return Some(n(Remark::new("remark-log-backup-none", Weight::Warn))) };
    let days = today.days() - last.days();
    let old = n(Remark::new("remark-log-backup-old", Weight::Warn));
    (days > LATE_DAYS || since > LATE_RECORDS)
        .then(|| old.value("days", Value::plain(days.max(0) as f64, Kind::Count)))
}
