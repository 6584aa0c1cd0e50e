//! Foam and the vacuum of a scrubber: foam drawn into the vacuum motor shuts the machine off or
//! ruins it.

use crate::coded::coded;

use crate::source::Source;
use crate::units::Length;

coded! {
    /// How a product's use solution foams.
    Foam {
        /// The label says non-foaming, or the shake test leaves none.
        NonFoaming = "non_foaming",
        /// The label says low foam or made for floor machines.
        Low = "low",
        /// It foams: dish soap, hand soap, carpet shampoo.
        Foaming = "foaming",
        /// Nobody has said or tested.
        Unknown = "unknown",
    }
}

impl Foam {
    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NonFoaming => "foam-class-non-foaming",
            Self::Low => "foam-class-low",
            Self::Foaming => "foam-class-foaming",
            Self::Unknown => "foam-class-unknown",
        }
    }
}

/// Whether a product's foam and a machine go together.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum FoamVerdict {
    /// No foam to fear in this machine.
    Fits,
    /// Not in this machine.
    Refuse,
    /// Not before a shake test: until then it counts as foaming.
    TestFirst,
}

impl FoamVerdict {
    /// Every verdict.
    pub const ALL: [Self; 3] = [Self::Fits, Self::Refuse, Self::TestFirst];

    /// The word key of what to do.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Fits => "foam-verdict-fits",
            Self::Refuse => "foam-verdict-refuse",
            Self::TestFirst => "foam-verdict-test-first",
        }
    }
}

/// Where the rule comes from.
pub const SOURCE: Source = Source::COMMON_PRACTICE;

/// The word key of the shake test's steps.
pub const SHAKE_TEST: &str = "foam-shake-test";
/// The word key of what a defoamer is and is not for.
pub const DEFOAMER: &str = "foam-defoamer";
/// The word key of what foam does to the vacuum.
pub const WHY: &str = "foam-why";

/// Whether a product goes in a machine, by its foam; `vacuum` says whether the machine picks its
/// own solution up.
///
/// ```
/// use brimline::chemistry::foam::{Foam, FoamVerdict, verdict};
/// assert_eq!(verdict(Foam::Unknown, true), FoamVerdict::TestFirst);
/// assert_eq!(verdict(Foam::Foaming, true), FoamVerdict::Refuse);
/// ```
pub const fn verdict(foam: Foam, vacuum: bool) -> FoamVerdict {
    match (foam, vacuum) {
        (Foam::NonFoaming | Foam::Low, _) | (_, false) => FoamVerdict::Fits,
        (Foam::Foaming, true) => FoamVerdict::Refuse,
        (Foam::Unknown, true) => FoamVerdict::TestFirst,
    }
}

/// Foam below this is none.
const NONE: Length = Length::new(0.002);
/// The most that a low-foam product makes at once, and may leave after a minute.
pub const LITTLE: Length = Length::new(0.0127);

/// The most of its foam that a low-foam product leaves after a minute.
const FALLS: f64 = 1.0 / 3.0;

/// The class that a shake test points to.
///
/// * `first`: the foam in a bottle half full of use solution after ten shakes, m, 0 or above.
/// * `later`: the same after one minute, m, `first` at most.
///
/// Non-foaming: half an inch at most, none a minute later. Low: half an inch at most a minute later, and no
/// more than a third of what there was. Foaming otherwise: foam that stays or falls slowly. A guide and no standard test.
/// Source: common practice.
///
/// ```
/// use brimline::chemistry::foam::{Foam, shaken};
/// use brimline::units::Length;
/// let mm = |height: f64| Length::new(height / 1000.0);
/// assert_eq!(shaken(mm(8.0), mm(0.0)), Foam::NonFoaming);
/// assert_eq!(shaken(mm(30.0), mm(10.0)), Foam::Low);
/// assert_eq!(shaken(mm(30.0), mm(25.0)), Foam::Foaming);
/// ```
pub fn shaken(first: Length, later: Length) -> Foam {
    if first <= LITTLE && later <= NONE {
        Foam::NonFoaming
    } else if later <= LITTLE && later <= first * FALLS * (1.0 + 1e-9) {
        Foam::Low
    } else {
        Foam::Foaming
    }
}

/// The word keys of foam.
pub fn word_keys() -> impl Iterator<Item = String> {
    Foam::ALL
        .iter()
        .map(|one| one.key())
        .chain(FoamVerdict::ALL.iter().map(|one| one.key()))
        .chain([SHAKE_TEST, DEFOAMER, WHY])
        .map(str::to_owned)
}
