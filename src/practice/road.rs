//! The usual wrong roads to an answer, and what a wrong answer could do.

use crate::coded::coded;

coded! {
    /// A usual wrong road. That these are the usual ones is common practice, no source.
    Way {
        /// "1 to 64" taken as 1 part in 64 parts in all.
        PartsForTotal = "parts-for-total",
        /// "1 in 64" taken as 1 part and 64 parts of water.
        TotalForParts = "total-for-parts",
        /// What belongs to the water taken as a part of the whole, or a mark taken for water alone.
        WaterForMix = "water-for-mix",
        /// What belongs to the whole taken as a part of the water.
        MixForWater = "mix-for-water",
        /// Another way to read the label.
        OtherReading = "other-reading",
        /// The amount of a full tank for one that is filled in part.
        FullForPart = "full-for-part",
        /// The amount of a whole fill where only a part of it was missing.
        FullForRest = "full-for-rest",
        /// A number of ounces written as millilitres.
        OuncesForMillilitres = "ounces-for-millilitres",
        /// A number of millilitres written as ounces.
        MillilitresForOunces = "millilitres-for-ounces",
        /// US gallons or ounces for imperial ones.
        UsForImperial = "us-for-imperial",
        /// Imperial gallons or ounces for US ones.
        ImperialForUs = "imperial-for-us",
        /// Ounces of weight for ounces of volume, or the other way.
        WeightForVolume = "weight-for-volume",
        /// Multiplied where to divide.
        UpsideDown = "upside-down",
        /// Ten times too much or too little.
        DecimalSlip = "decimal-slip",
        /// The other end of a range.
        OtherEnd = "other-end",
        /// The machine's own limit passed over.
        MachineIgnored = "machine-ignored",
        /// The site's standard passed over.
        StandardIgnored = "standard-ignored",
        /// What was left taken to be as strong as what is wanted.
        RestIgnored = "rest-ignored",
        /// What there is in the end for what has to be added.
        EndForAdded = "end-for-added",
        /// As much water again, whatever the strength.
        SameAgain = "same-again",
        /// No look at the room in the tank.
        RoomIgnored = "room-ignored",
        /// A rate for a thousand taken for one.
        Thousand = "thousand",
        /// The part of a tank left off at the end.
        RoundedDown = "rounded-down",
        /// Tanks in parts, where only whole fills are made.
        NotWhole = "not-whole",
        /// What the machine uses again counted as spent.
        ReuseIgnored = "reuse-ignored",
        /// One area of two.
        OneAreaOnly = "one-area-only",
        /// All of the mix taken as product.
        MixForProduct = "mix-for-product",
        /// Product before water.
        ProductFirst = "product-first",
        /// Less solution than the floor needs.
        TooDry = "too-dry",
        /// More solution than the floor should get.
        TooWet = "too-wet",
        /// A setting that would do, where a lower one does too.
        MoreThanNeeded = "more-than-needed",
        /// One that fits, called none.
        NoneThought = "none-thought",
        /// No mistake seen where there is one.
        Overlooked = "overlooked",
        /// A mistake seen where there is none.
        FalseAlarm = "false-alarm",
        /// Another mistake than the one that was made.
        OtherMistake = "other-mistake",
        /// Eyes bare.
        NoEyes = "no-eyes",
        /// Hands or skin bare.
        NoSkin = "no-skin",
        /// Bad air.
        NoAir = "no-air",
        /// More than the label calls for.
        MoreThanAsked = "more-than-asked",
        /// A pair that must never meet passed over.
        PairMissed = "pair-missed",
        /// A pair that is not known passed as one that may meet.
        UnknownCleared = "unknown-cleared",
        /// A pair named that stands in no table.
        PairNotListed = "pair-not-listed",
        /// Foam let into a vacuum.
        FoamLetIn = "foam-let-in",
        /// An untested product taken as tested.
        NotTested = "not-tested",
        /// A product kept out that fits, or put in another class of foam than its own.
        KeptOut = "kept-out",
        /// The machine left running.
        NotStopped = "not-stopped",
        /// Other steps out of order.
        OrderMixed = "order-mixed",
        /// The amount in the unit that it was given in.
        AsGiven = "as-given",
        /// A round number for what a unit is, where more digits are asked for.
        RoundFactor = "round-factor",
    }
}

impl Way {
    /// Those that a fill ticket can show.
    pub const ON_TICKETS: [Self; 13] = [
        Self::PartsForTotal,
        Self::TotalForParts,
        Self::WaterForMix,
        Self::MixForWater,
        Self::FullForPart,
        Self::OuncesForMillilitres,
        Self::MillilitresForOunces,
        Self::UsForImperial,
        Self::ImperialForUs,
        Self::OtherEnd,
        Self::MachineIgnored,
        Self::StandardIgnored,
        Self::ProductFirst,
    ];
}

coded! {
    /// What a wrong answer could do to a person, a floor or a machine.
    Harm {
        /// More product than the label allows.
        OverLabel = "over-label",
        /// Two products that must never meet.
        ForbiddenPair = "forbidden-pair",
        /// Nothing before the eyes.
        NoEyes = "no-eyes",
        /// Nothing on the skin.
        NoSkin = "no-skin",
        /// Air that hurts the lungs.
        NoAir = "no-air",
        /// Foam in the vacuum's motor.
        Foam = "foam",
        /// Concentrate that splashes.
        Splash = "splash",
    }
}

/// Where a road leads.
#[derive(Clone, Debug, PartialEq)]
pub enum Led {
    /// To this amount, in SI units.
    To(f64),
    /// To this one of the choices.
    Choice(usize),
    /// Past this one of the choices, which belongs to the answer.
    Lacks(usize),
    /// To this one of the choices, which does not.
    Has(usize),
    /// To any order in which the first of two comes after the second.
    After(usize, usize),
    /// To the right amount in this unit, which it was given in.
    In(&'static str),
}

/// A wrong road.
#[derive(Clone, Debug, PartialEq)]
pub struct Road {
    /// Which.
    pub way: Way,
    /// Where it leads.
    pub led: Led,
    /// What it could do; what an amount could do is decided by the amount.
    pub harm: Option<Harm>,
}

impl Road {
    /// One that hurts nobody.
    pub(super) fn new(way: Way, led: Led) -> Self {
        Self { way, led, harm: None }
    }

    /// One that could.
    pub(super) fn harms(way: Way, led: Led, harm: Harm) -> Self {
        Self { way, led, harm: Some(harm) }
    }
}
