//! Which fills of a machine belong to one shift.

use crate::site::log::Current;
use std::collections::HashMap;

/// A machine that was not filled for so long, seconds, has had the end of its shift: 8 hours. Common practice, no
/// source. The day on the calendar does not part shifts: a night shift goes over midnight.
pub const REST: i64 = 8 * 3_600;

/// The fills, shift by shift: those of one machine with less than [`REST`] from each to the next. The shifts stand in
/// the order of their first fills. Fills of a machine that is not known are left out.
///
/// * `fills`: by time.
///
/// ```
/// use brimline::site::log::{Fill, Log, Named, Stamp, Words, current};
/// use brimline::site::log::questions::shifts;
/// let fill = Fill { machine: Named::new("m1", "Scrubber"), ..Fill::default() };
/// let mut log = Log::default();
/// for when in ["2026-03-06T22:30:00Z", "2026-03-07T02:00:00Z", "2026-03-07T22:30:00Z"] {
///     log.fill(&Stamp { device: "station-1", when, random: [7; 32] }, fill.clone(), Words::default()).unwrap();
/// }
/// let fills = current(&log).fills;
/// assert_eq!(shifts(&fills).iter().map(Vec::len).collect::<Vec<_>>(), [2, 1]);
/// ```
pub fn shifts<'a>(fills: impl IntoIterator<Item = &'a Current>) -> Vec<Vec<&'a Current>> {
    let mut shifts: Vec<Vec<&Current>> = Vec::new();
    let mut latest: HashMap<&str, usize> = HashMap::new();
    for one in fills.into_iter().filter(|one| !one.fill.machine.id.is_empty()) {
        let machine = &*one.fill.machine.id;
        let goes_on = |shift: &Vec<&Current>| {
            shift.last().is_some_and(|last| one.when.instant() - last.when.instant() < REST)
        };
        let latest_of = latest.get(machine).and_then(|place| shifts.get_mut(*place));
        if let Some(shift) = latest_of.filter(|shift| goes_on(shift)) {
            shift.push(one);
        } else {
            latest.insert(machine, shifts.len());
            shifts.push(vec![one]);
        }
    }
    shifts
}
