//! How dirty a floor is, and how often a machine passes over it.

use crate::coded::coded;

coded! {
    /// How dirty a floor is.
    #[derive(Default)]
    Soil {
        /// As it is after a usual day.
        #[default]
        Usual = "usual",
        /// Heavy soil: grease, mud, old marks.
        Heavy = "heavy",
    }
}

impl Soil {
    /// How often the machine passes over each part of the floor: once, and twice over heavy soil, where
    /// the first pass lays solution down to work and the second picks it up. Each pass takes its time and
    /// its solution. Source: common practice.
    ///
    /// ```
    /// use brimline::trade::soil::Soil;
    /// assert_eq!((Soil::Usual.passes(), Soil::Heavy.passes()), (1.0, 2.0));
    /// ```
    pub fn passes(self) -> f64 {
        match self {
            Self::Usual => 1.0,
            Self::Heavy => 2.0,
        }
    }
}
