//! The values of a finding that a person can correct.

/// A value of a finding that can be corrected, and how it is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Piece {
    /// Danger, warning or none.
    Signal,
    /// One H or P code.
    Code,
    /// The name of a part.
    Name,
    /// Its CAS number.
    Cas,
    /// Its share, percent.
    Share,
    /// Its own H codes.
    Codes,
    /// A pH, and of what in brackets.
    Ph,
    /// A density with its unit.
    Density,
    /// A UN number.
    Un,
    /// A toxicity, mg/kg.
    Toxicity,
    /// An M factor, and for which harm in brackets.
    Multiplier,
    /// What to wear, in words.
    Worn,
}

impl Piece {
    /// All of them.
    pub const ALL: [Self; 12] = [
        Self::Signal,
        Self::Code,
        Self::Name,
        Self::Cas,
        Self::Share,
        Self::Codes,
        Self::Ph,
        Self::Density,
        Self::Un,
        Self::Toxicity,
        Self::Multiplier,
        Self::Worn,
    ];

    /// The word key of its label; its end is also that of its input's name.
    pub const fn key(self) -> &'static str {
        match self {
            Self::Signal => "sheet-piece-signal",
            Self::Code => "sheet-piece-code",
            Self::Name => "sheet-piece-name",
            Self::Cas => "sheet-piece-cas",
            Self::Share => "sheet-piece-share",
            Self::Codes => "sheet-piece-codes",
            Self::Ph => "sheet-piece-ph",
            Self::Density => "sheet-piece-density",
            Self::Un => "sheet-piece-un",
            Self::Toxicity => "sheet-piece-toxicity",
            Self::Multiplier => "sheet-piece-multiplier",
            Self::Worn => "sheet-piece-worn",
        }
    }

    /// The word key of what is told where it is not understood.
    pub const fn mistake(self) -> &'static str {
        match self {
            Self::Signal => "mistake-sheet-signal",
            Self::Code => "mistake-sheet-code",
            Self::Name => "mistake-sheet-name",
            Self::Cas => "mistake-sheet-cas",
            Self::Share => "mistake-sheet-share",
            Self::Codes => "mistake-sheet-codes",
            Self::Ph => "mistake-sheet-ph",
            Self::Density => "mistake-sheet-density",
            Self::Un => "mistake-sheet-un",
            Self::Toxicity => "mistake-sheet-toxicity",
            Self::Multiplier => "mistake-sheet-multiplier",
            Self::Worn => "mistake-sheet-worn",
        }
    }

    /// The end of its input's name.
    pub fn name(self) -> &'static str {
        self.key().trim_start_matches("sheet-piece-")
    }
}
