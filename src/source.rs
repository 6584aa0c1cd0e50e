//! Where a figure, a rule or a formula comes from.

/// How far a figure can be trusted, by where it comes from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Standing {
    /// Read in a published standard, law, handbook or paper, which the citation names.
    Published,
    /// Follows from the definition of the quantities; nothing to look up.
    Definition,
    /// What the trade does, for which no publication was found.
    CommonPractice,
    /// Written down from memory or seen only second-hand, and not yet checked against the publication named.
    Unverified,
}

/// A citation and its standing, kept beside each figure, rule and formula.
///
/// ```
/// use brimline::source::{Source, Standing};
/// const GALLON: Source = Source::published("NIST SP 811 (2008), App. B.8: gallon (U.S.) = 231 in³");
/// assert_eq!(GALLON.standing, Standing::Published);
/// ```
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub struct Source {
    /// Title, edition and place in it; empty for common practice. A citation is not translated.
    pub cite: &'static str,
    /// How far it can be trusted.
    pub standing: Standing,
}

impl Source {
    /// What the trade does, for which no publication was found.
    pub const COMMON_PRACTICE: Self = Self { cite: "", standing: Standing::CommonPractice };
    /// Follows from the definition of the quantities.
    pub const DEFINITION: Self = Self { cite: "", standing: Standing::Definition };

    /// A figure read in a publication.
    pub const fn published(cite: &'static str) -> Self {
        Self { cite, standing: Standing::Published }
    }

    /// A figure from memory or second-hand; `cite` says where it should be checked.
    pub const fn unverified(cite: &'static str) -> Self {
        Self { cite, standing: Standing::Unverified }
    }
}

/// The rows of a table without their sources. The table itself keeps both; the page, which shows no source of a
/// unit or of a statement, carries these alone.
pub(crate) const fn uncited<T: Copy, const ROWS: usize>(cited: &[(T, Source)]) -> [T; ROWS] {
    let mut rows = [cited[0].0; ROWS];
    let mut row = 1;
    while row < ROWS {
        rows[row] = cited[row].0;
        row += 1;
    }
    rows
}
