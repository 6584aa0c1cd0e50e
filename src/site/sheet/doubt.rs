//! What can be doubtful about a finding.

/// Why a finding needs a second look.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Doubt {
    /// No heading of a section stands above it.
    NoSection,
    /// It was put together from several lines.
    SeveralLines,
    /// Names, numbers and shares stood in columns of their own, and were matched by their order.
    Columns,
    /// It stands alone, without the words that should stand before it.
    Alone,
    /// It was found by its words; the code itself is not printed.
    ByWords,
    /// The ingredient has no CAS number.
    NoCas,
    /// The check digit of the CAS number is wrong: a digit was misread or mistyped.
    CheckDigit,
    /// The ingredient has no name.
    NoName,
    /// The ingredient has no share.
    NoShare,
    /// No percent sign stands at the share or above its column.
    NoPercent,
    /// It is more than the whole.
    MoreThanWhole,
    /// The first number of a range is the greater one.
    Backwards,
    /// Several numbers would fit.
    SeveralNumbers,
    /// It is a range, and one number is needed: the middle of a density, the end of a pH farther from 7.
    Range,
    /// No unit stands beside it.
    NoUnit,
    /// It lies where no such number should lie.
    Unlikely,
    /// The pH is that of a solution which may not be the use solution.
    OtherSolution,
    /// The pH is that of the concentrate, not of the use solution.
    OfConcentrate,
    /// A mark in the number may part thousands or tenths.
    Thousands,
    /// It is a range or has one end: the least counts, the worse case.
    LeastCounts,
    /// The sheet does not say for which harm in water the M factor is.
    WhichHarm,
    /// The line ends in the middle of it, and the next one does not go on.
    CutOff,
}

impl Doubt {
    /// All of them.
    pub const ALL: [Self; 22] = [
        Self::NoSection,
        Self::SeveralLines,
        Self::Columns,
        Self::Alone,
        Self::ByWords,
        Self::NoCas,
        Self::CheckDigit,
        Self::NoName,
        Self::NoShare,
        Self::NoPercent,
        Self::MoreThanWhole,
        Self::Backwards,
        Self::SeveralNumbers,
        Self::Range,
        Self::NoUnit,
        Self::Unlikely,
        Self::OtherSolution,
        Self::OfConcentrate,
        Self::Thousands,
        Self::LeastCounts,
        Self::WhichHarm,
        Self::CutOff,
    ];

    /// The word key.
    pub const fn key(self) -> &'static str {
        match self {
            Self::NoSection => "sheet-doubt-no-section",
            Self::SeveralLines => "sheet-doubt-several-lines",
            Self::Columns => "sheet-doubt-columns",
            Self::Alone => "sheet-doubt-alone",
            Self::ByWords => "sheet-doubt-by-words",
            Self::NoCas => "sheet-doubt-no-cas",
            Self::CheckDigit => "sheet-doubt-check-digit",
            Self::NoName => "sheet-doubt-no-name",
            Self::NoShare => "sheet-doubt-no-share",
            Self::NoPercent => "sheet-doubt-no-percent",
            Self::MoreThanWhole => "sheet-doubt-more-than-whole",
            Self::Backwards => "sheet-doubt-backwards",
            Self::SeveralNumbers => "sheet-doubt-several-numbers",
            Self::Range => "sheet-doubt-range",
            Self::NoUnit => "sheet-doubt-no-unit",
            Self::Unlikely => "sheet-doubt-unlikely",
            Self::OtherSolution => "sheet-doubt-other-solution",
            Self::OfConcentrate => "sheet-doubt-of-concentrate",
            Self::Thousands => "sheet-doubt-thousands",
            Self::LeastCounts => "sheet-doubt-least-counts",
            Self::WhichHarm => "sheet-doubt-which-harm",
            Self::CutOff => "sheet-doubt-cut-off",
        }
    }
}
