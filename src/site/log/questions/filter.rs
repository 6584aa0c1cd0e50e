//! Which fills are asked about.

use crate::site::log::Current;

/// What a fill must have; what is empty asks for nothing.
///
/// ```
/// use brimline::site::log::{Fill, Log, Named, Stamp, Words, current, questions::Filter};
/// let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
/// let mut log = Log::default();
/// log.fill(&stamp, Fill { product: Named::new("p1", "Neutral"), ..Fill::default() }, Words::default()).unwrap();
/// let view = current(&log);
/// let march = Filter { product: "p1".into(), month: "2026-03".into(), ..Filter::default() };
/// assert_eq!(march.of(&view.fills).count(), 1);
/// assert_eq!(Filter { machine: "m1".into(), ..march }.of(&view.fills).count(), 0);
/// ```
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Filter {
    /// The id of its product.
    pub product: String,
    /// The id of its machine.
    pub machine: String,
    /// The id of one of its areas.
    pub area: String,
    /// The local month, year-month.
    pub month: String,
    /// Initials of who did it, in capitals or not.
    pub who: String,
    /// The id of its standard, whatever its version.
    pub standard: String,
}

impl Filter {
    /// The fills that have it, in their order.
    pub fn of<'a>(&'a self, fills: &'a [Current]) -> impl Iterator<Item = &'a Current> + Clone {
        fills.iter().filter(|one| !one.fill.struck && self.fits(one))
    }

    /// Whether a fill has it, written down by mistake or not.
    pub fn fits(&self, one: &Current) -> bool {
        let is = |wanted: &str, found: &str| wanted.is_empty() || wanted == found;
        is(&self.product, &one.fill.product.id)
            && is(&self.machine, &one.fill.machine.id)
            && is(&self.standard, &one.fill.standard.id)
            // A time that was read begins with its month as it stands.
            && (self.month.is_empty() || one.said.get(..7) == Some(self.month.as_str()))
            && (self.who.is_empty() || one.who.trim().to_lowercase() == self.who.trim().to_lowercase())
            && (self.area.is_empty() || one.fill.areas.iter().any(|area| *area.id == *self.area))
    }
}
