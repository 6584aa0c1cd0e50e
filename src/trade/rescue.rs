//! Putting a tank right that was dosed wrong.

use super::label::Window;
use super::top_up::{Content, Work};
use crate::units::{Quantity, Volume, VolumeFraction};

/// How far, as a share of the target, a strength may be off and still be left alone: what a plastic
/// jug is good for. Common practice, no source; a site may choose another.
pub const TOLERANCE: f64 = 0.05;

/// How a tank of measured strength is put right.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rescue {
    /// It is near enough to the target.
    Right,
    /// Too weak: add concentrate, after draining where it would not fit.
    Weak(Work),
    /// Too strong: add water, after draining where it would not fit.
    Strong(Work),
}

impl Rescue {
    /// What is done; nothing when it is right.
    pub fn work(self) -> Work {
        match self {
            Self::Right => Work { drain: Volume::ZERO, water: Volume::ZERO, concentrate: Volume::ZERO },
            Self::Weak(work) | Self::Strong(work) => work,
        }
    }
}

/// Brings a tank of measured strength to the target.
///
/// Weak: `X = V × (r − m) / (1 − r)`. Strong: `W = V × (m / r − 1)`. Where that is more than the
/// room left, drain until the tank is full afterwards: `D = V − T × (1 − r) / (1 − m)` when weak,
/// `D = V − r × T / m` when strong.
///
/// * `found`: V, m³, above 0 up to the tank, and m, 0 to 1, as it was read.
/// * `target`: r, above 0, below 1.
/// * `tank`: T, m³.
/// * `tolerance`: how far m may be off, as a share of r, and still be right, 0 or above;
///   [`TOLERANCE`] is usual.
///
/// Returns what to do; afterwards the strength is r. The error of the reading is not part of it:
/// [`super::reading`] tells what the reading supports. Source: conservation of the concentrate.
///
/// ```
/// use brimline::trade::rescue::{Rescue, TOLERANCE, rescue};
/// use brimline::trade::top_up::Content;
/// use brimline::units::{Volume, VolumeFraction};
/// let found = Content { volume: Volume::new(50.0), strength: VolumeFraction::new(0.04) };
/// let (target, tank) = (VolumeFraction::new(0.02), Volume::new(80.0));
/// let Rescue::Strong(work) = rescue(found, target, tank, TOLERANCE) else { unreachable!() };
/// // 50 more of water would make 100: keep 40, add 40.
/// assert_eq!((work.drain, work.water), (Volume::new(10.0), Volume::new(40.0)));
/// ```
pub fn rescue(found: Content, target: VolumeFraction, tank: Volume, tolerance: f64) -> Rescue {
    let (volume, read) = (found.volume, found.strength);
    let nothing = Volume::ZERO;
    if (read / target - 1.0).abs() <= tolerance {
        Rescue::Right
    } else if read < target {
        let concentrate = volume * ((target - read) / target.water());
        if volume + concentrate <= tank {
            return Rescue::Weak(Work { drain: nothing, water: nothing, concentrate });
        }
        let kept = tank * (target.water() / read.water());
        Rescue::Weak(Work { drain: volume - kept, water: nothing, concentrate: tank - kept })
    } else {
        let water = volume * (read / target - 1.0);
        if volume + water <= tank {
            return Rescue::Strong(Work { drain: nothing, water, concentrate: nothing });
        }
        let kept = tank * (target / read);
        Rescue::Strong(Work { drain: volume - kept, water: tank - kept, concentrate: nothing })
    }
}

/// What to do when nobody remembers whether concentrate was added.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Remedy {
    /// Read the strength, then rescue or leave it.
    ReadFirst,
    /// There is nothing to read it with: drain, rinse, fill afresh.
    DrainAndRinse,
}

/// A tank of which nobody remembers whether it was dosed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Forgotten {
    /// What to do.
    pub act: Remedy,
    /// What it is now: water, or one dose.
    pub now: Window<VolumeFraction>,
    /// What it would be after a dose was added to be on the safe side: one dose, or two.
    pub if_dosed: Window<VolumeFraction>,
}

/// Bounds of a tank that holds no dose or one.
///
/// Now 0 to r. A dose `V × r / (1 − r)` on top would make it r to `r × (2 − r)`: nearly twice.
///
/// * `dose`: r, the strength that one dose makes, 0 to 1.
/// * `can_read`: whether there is a strip, a drop test or a meter for this product.
///
/// More than one forgotten dose is not considered. Source: interval arithmetic; the decision is
/// common practice.
///
/// ```
/// use brimline::trade::rescue::{Remedy, forgotten};
/// use brimline::units::VolumeFraction;
/// let tank = forgotten(VolumeFraction::new(0.5), false);
/// assert_eq!((tank.act, tank.if_dosed.high), (Remedy::DrainAndRinse, VolumeFraction::new(0.75)));
/// ```
pub fn forgotten(dose: VolumeFraction, can_read: bool) -> Forgotten {
    Forgotten {
        act: if can_read { Remedy::ReadFirst } else { Remedy::DrainAndRinse },
        now: Window { low: VolumeFraction::ZERO, high: dose },
        if_dosed: Window { low: dose, high: dose * (2.0 - dose.si()) },
    }
}

/// What the table of products that must never meet says about the wrong product and the rest of
/// the tank, which the caller asks first ([`crate::chemistry::pairs`]).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meeting {
    /// The pair does not stand in the table. That does not make it safe.
    NotListed,
    /// One spoils the other.
    Spoils,
    /// Gas, heat, spatter or fire can follow.
    Harms,
    /// What is in the tank is not known, so that nothing could be asked.
    Unknown,
}

/// What to do when the wrong product went into a tank. It is never kept or thinned.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum WrongProduct {
    /// Drain, rinse, fill afresh.
    DrainAndRinse,
    /// Step away and let air in first; drain and rinse only when the safety data sheets or a
    /// qualified person say how.
    KeepAway,
}

/// Decides on a tank that the wrong product went into.
///
/// Where harm can follow or the content is unknown: keep away first. Otherwise drain and rinse:
/// whatever its strength, a mixture of two products has no label.
///
/// * `meeting`: what the table of pairs says.
///
/// What the drain may take is not checked: local codes say. Source: common practice.
///
/// ```
/// use brimline::trade::rescue::{Meeting, WrongProduct, wrong_product};
/// assert_eq!(wrong_product(Meeting::Spoils), WrongProduct::DrainAndRinse);
/// assert_eq!(wrong_product(Meeting::Harms), WrongProduct::KeepAway);
/// ```
pub fn wrong_product(meeting: Meeting) -> WrongProduct {
    match meeting {
        Meeting::NotListed | Meeting::Spoils => WrongProduct::DrainAndRinse,
        Meeting::Harms | Meeting::Unknown => WrongProduct::KeepAway,
    }
}
