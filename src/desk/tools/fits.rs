//! Which versions of a tool serve.

/// What a version must be.
#[derive(Debug)]
pub enum Fits<'a> {
    /// Any of this series, as `0.21`.
    Series(&'a str),
    /// This one only, as `0.2.100`.
    Exactly(&'a str),
    /// A plain number that is at least this.
    AtLeast(u32),
}

impl Fits<'_> {
    /// Whether `version` serves.
    pub fn accepts(&self, version: &str) -> bool {
        match self {
            Self::Series(series) => version.strip_prefix(series).is_some_and(|rest| rest.starts_with('.')),
            Self::Exactly(wanted) => version == *wanted,
            Self::AtLeast(least) => version.parse::<u32>().is_ok_and(|number| number >= *least),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::Fits;

    #[test]
    fn a_series_ends_at_a_dot() {
        assert!(Fits::Series("0.21").accepts("0.21.14"));
        assert!(!Fits::Series("0.21").accepts("0.210.0"));
        assert!(!Fits::Series("0.21").accepts("0.20.3"));
    }

    #[test]
    fn a_least_number_and_an_exact_version() {
        assert!(Fits::AtLeast(116).accepts("132"));
        assert!(!Fits::AtLeast(116).accepts("108"));
        assert!(Fits::Exactly("0.2.9").accepts("0.2.9"));
        assert!(!Fits::Exactly("0.2.9").accepts("0.2.90"));
    }
}
