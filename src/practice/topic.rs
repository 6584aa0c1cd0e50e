//! What can be practised, and how hard.

use crate::coded::coded;

coded! {
    /// What an exercise is about.
    Topic {
        /// Read a label.
        Label = "label",
        /// Turn one unit into another.
        Units = "units",
        /// Dose a fill.
        Dose = "dose",
        /// Top a tank up.
        TopUp = "top-up",
        /// Choose a setting for a floor.
        Setting = "setting",
        /// Plan a small shift.
        Shift = "shift",
        /// Spot the mistake in a fill ticket.
        Mistake = "mistake",
        /// Put an overdosed tank right.
        Rescue = "rescue",
        /// Choose what to wear from a label.
        Ppe = "ppe",
        /// Say which pair must never meet.
        Pairs = "pairs",
        /// Say what to do about foam.
        Foam = "foam",
    }
}

coded! {
    /// How hard an exercise is.
    #[derive(Default)]
    Level {
        /// One step, friendly numbers, the convention named.
        #[default]
        First = "first",
        /// The label as printed, tanks filled in part, mixed units.
        Second = "second",
        /// Ranges, the machine's own limits, rests of another strength, imperial measures, conventions that are
        /// hard to see.
        Third = "third",
    }
}

impl Level {
    /// Its number, from 1.
    ///
    /// ```
    /// use brimline::practice::Level;
    /// assert!(Level::ALL.iter().all(|level| Level::of(level.number()) == Some(*level)));
    /// ```
    pub const fn number(self) -> u32 {
        match self {
            Self::First => 1,
            Self::Second => 2,
            Self::Third => 3,
        }
    }

    /// The level of a number.
    pub fn of(number: u32) -> Option<Self> {
        Self::ALL.iter().copied().find(|level| level.number() == number)
    }
}

coded! {
    /// What a stock has too little of for a topic.
    Lack {
        /// No machine with a tank that reads.
        Machine = "machine",
        /// No product whose label reads.
        Label = "label",
        /// No liquid product whose label reads as a volume.
        Liquid = "liquid",
        /// No jug, cup, cap or pump with its step.
        Measure = "measure",
        /// No machine with its path, speed and two settings or more.
        Settings = "settings",
        /// No floor with what it should get.
        Floor = "floor",
        /// No product with hazard codes, or said to have none.
        Hazards = "hazards",
        /// The records are there, and no exercise can be made of them: the amounts are too small for the measure,
        /// say.
        NothingFits = "nothing-fits",
    }
}
