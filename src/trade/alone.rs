//! Where a machine can work without anyone beside it.

use crate::coded::coded;
use crate::units::Length;

coded! {
    /// Whether a machine that works on its own finds around it what it needs.
    #[derive(Default)]
    Around {
        /// Nobody has looked.
        #[default]
        Unknown = "unknown",
        /// It does.
        There = "there",
        /// It does not.
        Lacking = "lacking",
    }
}

/// What a machine asks of a place before it works there on its own.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Asks {
    /// The least lane width, m; none where any will do.
    pub least: Option<Length>,
    /// The greatest, m.
    pub most: Option<Length>,
    /// Whether it needs something around it: walls or shelves to find its way by, shut doors, a clear floor.
    pub around: bool,
}

/// Why a machine does not work in a place on its own.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Misfit {
    /// The lanes are narrower than it can work.
    Narrow,
    /// They are wider: it loses its way.
    Wide,
    /// What it needs around it is not there.
    Lacking,
    /// Nobody has looked yet, which counts as not suiting.
    Unknown,
}

/// Whether a machine works in a place on its own: the first reason why it does not, what is known before
/// what is not.
///
/// * `asks`: what the machine asks of a place.
/// * `lane`: the width of the lanes, or of the open floor, m; none where nobody has measured.
/// * `around`: whether what it needs around it is there.
///
/// Source: the limits are the machine maker's; that what nobody has looked at does not suit is a caution
/// of this page.
///
/// ```
/// use brimline::trade::alone::{Around, Asks, Misfit, misfit};
/// use brimline::units::Length;
/// let asks = Asks { least: Some(Length::new(1.0)), most: Some(Length::new(10.0)), around: true };
/// assert_eq!(misfit(asks, Some(Length::new(3.0)), Around::There), None);
/// assert_eq!(misfit(asks, Some(Length::new(0.8)), Around::Unknown), Some(Misfit::Narrow));
/// assert_eq!(misfit(asks, None, Around::There), Some(Misfit::Unknown));
/// ```
pub fn misfit(asks: Asks, lane: Option<Length>, around: Around) -> Option<Misfit> {
    let Asks { least, most, around: needs } = asks;
    // Typed in feet and in metres, the same width may differ in its last digit.
    let slack = 1e-9;
    let lane_asked = least.is_some() || most.is_some();
    if lane.zip(least).is_some_and(|(lane, least)| lane < least * (1.0 - slack)) {
        Some(Misfit::Narrow)
    } else if lane.zip(most).is_some_and(|(lane, most)| lane > most * (1.0 + slack)) {
        Some(Misfit::Wide)
    } else if needs && around == Around::Lacking {
        Some(Misfit::Lacking)
    } else if lane_asked && lane.is_none() || needs && around == Around::Unknown {
        Some(Misfit::Unknown)
    } else {
        None
    }
}
