//! A floor as a use solution meets it: what it is made of, and the finish that lies on it.

use super::verdict::{FloorVerdict, Missing, PhRange, verdict_within};
use super::{Surface, Window};
use crate::chemistry::family::Family;
use crate::source::Source;

/// What lies on a floor.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Cover {
    /// Nothing, or what its surface tells already.
    Bare,
    /// A finish that bears this pH by its own label.
    Bears(Window),
    /// A finish of which nobody has written down what it bears.
    Unknown,
}

impl Cover {
    /// A finish with the ends of its window as far as they were read.
    ///
    /// An end that is not written down is that of a solution near neutral: 6 or 9, common practice. With
    /// neither, or with the ends the wrong way round, nothing is known.
    ///
    /// ```
    /// use brimline::chemistry::floor::Cover;
    /// let Cover::Bears(window) = Cover::finish(None, Some(8.0)) else { unreachable!() };
    /// assert_eq!((window.low, window.high), (6.0, 8.0));
    /// assert_eq!(Cover::finish(None, None), Cover::Unknown);
    /// ```
    pub fn finish(low: Option<f64>, high: Option<f64>) -> Self {
        let near = super::rules::NEAR_NEUTRAL;
        let window = Window { low: low.unwrap_or(near.low), high: high.unwrap_or(near.high), source: SHEET };
        let known = low.is_some() || high.is_some();
        if known && window.low <= window.high { Self::Bears(window) } else { Self::Unknown }
    }
}

/// Where a finish's window comes from.
const SHEET: Source = Source::unverified("the finish's own label or data sheet, as somebody typed it");

/// A floor and what lies on it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ground {
    /// What it is made of.
    pub surface: Surface,
    /// What lies on it.
    pub cover: Cover,
}

impl Ground {
    /// The pH that both the floor and its finish bear, where a window is known; none where the two have nothing
    /// in common.
    pub fn window(self) -> Option<Window> {
        match (self.surface.window().copied(), self.cover) {
            (Some(own), Cover::Bears(finish)) => narrowed(own, finish),
            (None, Cover::Bears(finish)) => Some(finish),
            (own, Cover::Bare | Cover::Unknown) => own,
        }
    }

    /// Whether a product of these families, with this pH in its use solution, fits the floor and its finish.
    ///
    /// The finish only ever narrows: the floor's own window and harms stay, and what strips the finish of
    /// vinyl counts as stripping any finish. A finish of unknown window clears nothing.
    ///
    /// ```
    /// use brimline::chemistry::family::Family;
    /// use brimline::chemistry::floor::{Cover, FloorVerdict, Ground, PhRange, Surface};
    /// let ground = Ground { surface: Surface::FinishedVinyl, cover: Cover::finish(Some(7.0), Some(8.0)) };
    /// let ph = |ph| Some(PhRange { low: ph, high: ph });
    /// assert_eq!(ground.verdict(&[Family::Neutral], ph(7.5)), FloorVerdict::Fits);
    /// assert!(matches!(ground.verdict(&[Family::Neutral], ph(8.5)), FloorVerdict::DoesNotFit { .. }));
    /// ```
    pub fn verdict(self, families: &[Family], ph: Option<PhRange>) -> FloorVerdict {
        let own = self.surface.window().copied();
        let finish = match self.cover {
            Cover::Bare => return verdict_within(self.surface, own, families, ph),
            Cover::Bears(finish) => Some(finish),
            Cover::Unknown => None,
        };
        // Both tell the window that they share, so that nobody reads two.
        let shared = own.zip(finish).and_then(|(own, finish)| narrowed(own, finish));
        let on_floor = verdict_within(self.surface, shared.or(own), families, ph);
        let on_finish = verdict_within(Surface::FinishedVinyl, shared.or(finish).or(own), families, ph);
        let both = on_floor.and(on_finish);
        if finish.is_some() {
            return both;
        }
        both.and(FloorVerdict::Unknown { missing: vec![Missing::FinishLimit] })
    }
}

/// What two windows share.
fn narrowed(a: Window, b: Window) -> Option<Window> {
    let (low, high) = (a.low.max(b.low), a.high.min(b.high));
    // Where the floor's own rule is the tighter one at both ends, it stays the one that is cited.
    let source = if (low, high) == (a.low, a.high) { a.source } else { b.source };
    (low <= high).then_some(Window { low, high, source })
}
