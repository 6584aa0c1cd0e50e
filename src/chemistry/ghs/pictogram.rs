//! The nine hazard pictograms and the signal words.

use crate::coded::coded;

/// A GHS hazard pictogram: a black symbol on white in a red frame set on a point.
///
/// Numbered as in Annex V of Regulation (EC) No 1272/2008; the UN standard names the symbols only.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Pictogram {
    /// Exploding bomb.
    Ghs01,
    /// Flame.
    Ghs02,
    /// Flame over circle.
    Ghs03,
    /// Gas cylinder.
    Ghs04,
    /// Corrosion.
    Ghs05,
    /// Skull and crossbones.
    Ghs06,
    /// Exclamation mark.
    Ghs07,
    /// Health hazard.
    Ghs08,
    /// Environment.
    Ghs09,
}

impl Pictogram {
    /// All nine, in the order of their codes.
    pub const ALL: [Self; 9] = [
        Self::Ghs01,
        Self::Ghs02,
        Self::Ghs03,
        Self::Ghs04,
        Self::Ghs05,
        Self::Ghs06,
        Self::Ghs07,
        Self::Ghs08,
        Self::Ghs09,
    ];

    /// The code a label or safety data sheet prints.
    ///
    /// ```
    /// use brimline::chemistry::ghs::Pictogram;
    /// assert_eq!(Pictogram::Ghs05.code(), "GHS05");
    /// ```
    pub const fn code(self) -> &'static str {
        ["GHS01", "GHS02", "GHS03", "GHS04", "GHS05", "GHS06", "GHS07", "GHS08", "GHS09"][self as usize]
    }

    /// The word key of the symbol's name.
    pub const fn key(self) -> &'static str {
        [
            "ghs-pictogram-ghs01",
            "ghs-pictogram-ghs02",
            "ghs-pictogram-ghs03",
            "ghs-pictogram-ghs04",
            "ghs-pictogram-ghs05",
            "ghs-pictogram-ghs06",
            "ghs-pictogram-ghs07",
            "ghs-pictogram-ghs08",
            "ghs-pictogram-ghs09",
        ][self as usize]
    }
}

coded! {
    /// The one word a label uses for how severe its hazards are.
    ///
    /// Ordered from least to most serious. What is unknown stands above `Warning`: it may turn out to
    /// be `Danger`, so it is never taken for less.
    #[derive(PartialOrd, Ord)]
    SignalWord {
        /// The label bears no signal word.
        None = "none",
        /// The less severe word.
        Warning = "warning",
        /// Not all hazard information was seen.
        Unknown = "unknown",
        /// The more severe word.
        Danger = "danger",
    }
}

impl SignalWord {
    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::None => "ghs-signal-none",
            Self::Warning => "ghs-signal-warning",
            Self::Unknown => "ghs-signal-unknown",
            Self::Danger => "ghs-signal-danger",
        }
    }
}
