//! One type per quantity, and the products and quotients that make sense between them.

use super::{Dimension, Unit};
use std::iter::Sum;
use std::ops::{Add, AddAssign, Div, Mul, Sub};

/// What all quantities share: an SI value and a dimension.
pub trait Quantity: Copy {
    /// The dimension that a unit must have to measure this quantity.
    const DIMENSION: Dimension;

    /// From a value in the SI unit of the dimension.
    fn from_si(si: f64) -> Self;

    /// The value in the SI unit of the dimension.
    fn si(self) -> f64;

    /// From a value in `unit`; `None` when the unit measures something else.
    fn of(value: f64, unit: &Unit) -> Option<Self> {
        (unit.dimension == Self::DIMENSION).then(|| Self::from_si(unit.to_si(value)))
    }

    /// The value in `unit`; `None` when the unit measures something else.
    fn value_in(self, unit: &Unit) -> Option<f64> {
        (unit.dimension == Self::DIMENSION).then(|| unit.from_si(self.si()))
    }
}

macro_rules! quantities {
    ($($(#[$doc:meta])* $name:ident;)*) => {$(
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, Default, PartialEq, PartialOrd)]
        pub struct $name(f64);

        impl Quantity for $name {
            const DIMENSION: Dimension = Dimension::$name;
            fn from_si(si: f64) -> Self { Self(si) }
            fn si(self) -> f64 { self.0 }
        }

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self(0.0);

            /// From a value in the SI unit, where a constant needs it.
            pub const fn new(si: f64) -> Self { Self(si) }

            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self { Self(self.0.min(other.0)) }

            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self { Self(self.0.max(other.0)) }
        }

        impl Add for $name { type Output = Self; fn add(self, b: Self) -> Self { Self(self.0 + b.0) } }
        impl Sub for $name { type Output = Self; fn sub(self, b: Self) -> Self { Self(self.0 - b.0) } }
        impl AddAssign for $name { fn add_assign(&mut self, b: Self) { self.0 += b.0; } }
        impl Mul<f64> for $name { type Output = Self; fn mul(self, k: f64) -> Self { Self(self.0 * k) } }
        impl Div<f64> for $name { type Output = Self; fn div(self, k: f64) -> Self { Self(self.0 / k) } }
        impl Div for $name { type Output = f64; fn div(self, b: Self) -> f64 { self.0 / b.0 } }
        impl Sum for $name { fn sum<I: Iterator<Item = Self>>(all: I) -> Self { all.fold(Self::ZERO, Add::add) } }
    )*};
}

quantities! {
    /// A volume of water, concentrate or use solution, m³.
    Volume;
    /// Volume a time, m³/s: what a flow setting delivers.
    Flow;
    /// A floor area, m².
    Area;
    /// A width, m: the cleaning path and its overlap.
    Length;
    /// Travel speed, m/s.
    Speed;
    /// A time, s.
    Duration;
    /// Volume of solution a floor area, m³/m². It has the dimension of a length and is not one.
    ApplicationRate;
    /// Floor area that a volume covers, m²/m³: of a finish, one coat.
    Coverage;
    /// Floor area a time, m²/s.
    Productivity;
    /// Volume of concentrate in the volume of use solution, r, 0 to 1.
    VolumeFraction;
    /// A plain number: drops of a drop test, degrees of an instrument.
    Plain;
    /// A mass of powder, concentrate or active substance, kg.
    Mass;
    /// Mass of a substance in its own volume, kg/m³: of a liquid, or of a powder as it is poured.
    Density;
    /// Mass of a substance in the volume of a solution, kg/m³. It has the dimension of a density and
    /// is not one: the rest of that volume is something else.
    MassConcentration;
    /// A temperature, K. Two of them are never added; a difference is told by the formula that takes it.
    Temperature;
    /// Mass of a substance in the mass of a product, 0 to 1: the "% w/w" of a safety data sheet.
    MassFraction;
    /// Mass on a floor area, kg/m²: what a use solution leaves when it dries.
    ArealMass;
    /// What something costs, in the site's own money.
    Money;
    /// Money a volume, one/m³: what concentrate and water are bought at.
    VolumePrice;
    /// Money a time, one/s.
    Wage;
    /// Money a floor area, one/m².
    AreaPrice;
    /// How often a time, 1/s.
    Frequency;
    /// A pressure, Pa: of water vapour.
    Pressure;
    /// Energy a mass, J/kg: what a kilogram of water takes with it when it evaporates.
    SpecificEnergy;
}

/// `A * B = C` also gives `B * A = C`, `C / A = B` and `C / B = A`.
macro_rules! relations {
    ($($a:ident * $b:ident = $c:ident;)*) => {$(
        impl Mul<$b> for $a { type Output = $c; fn mul(self, b: $b) -> $c { $c(self.0 * b.0) } }
        impl Mul<$a> for $b { type Output = $c; fn mul(self, a: $a) -> $c { $c(self.0 * a.0) } }
        impl Div<$a> for $c { type Output = $b; fn div(self, a: $a) -> $b { $b(self.0 / a.0) } }
        impl Div<$b> for $c { type Output = $a; fn div(self, b: $b) -> $a { $a(self.0 / b.0) } }
    )*};
}

relations! {
    Flow * Duration = Volume;
    Speed * Length = Productivity;
    Productivity * Duration = Area;
    ApplicationRate * Area = Volume;
    Coverage * Volume = Area;
    ApplicationRate * Productivity = Flow;
    Density * Volume = Mass;
    MassFraction * Density = MassConcentration;
    MassConcentration * ApplicationRate = ArealMass;
    VolumePrice * Volume = Money;
    Wage * Duration = Money;
    AreaPrice * Area = Money;
}

/// `r × V`: the concentrate in a volume of use solution.
impl Mul<Volume> for VolumeFraction {
    type Output = Volume;
    fn mul(self, total: Volume) -> Volume {
        Volume(self.0 * total.0)
    }
}

/// `c × V`: the substance in a volume of solution. A mass divided by a volume is a density, so that
/// the way back has a name of its own, [`Mass::in_solution`].
impl Mul<Volume> for MassConcentration {
    type Output = Mass;
    fn mul(self, solution: Volume) -> Mass {
        Mass(self.0 * solution.0)
    }
}

/// `m / c`: the volume of solution that a mass makes.
impl Div<MassConcentration> for Mass {
    type Output = Volume;
    fn div(self, concentration: MassConcentration) -> Volume {
        Volume(self.0 / concentration.0)
    }
}

impl Mass {
    /// The concentration that this much makes in `solution`.
    pub fn in_solution(self, solution: Volume) -> MassConcentration {
        MassConcentration(self.0 / solution.0)
    }
}

impl ApplicationRate {
    /// How thick it lies: 1 mL/m² is 1 µm.
    pub fn thickness(self) -> Length {
        Length(self.0)
    }
}

impl Frequency {
    /// How often in a time: `n = f × t`.
    pub fn times_in(self, time: Duration) -> f64 {
        self.0 * time.0
    }
}

impl Flow {
    /// This flow as a share of another.
    pub fn fraction_of(self, whole: Self) -> VolumeFraction {
        VolumeFraction(self.0 / whole.0)
    }
}

impl Volume {
    /// The volume fraction that this much concentrate makes in `total` of use solution.
    pub fn fraction_of(self, total: Self) -> VolumeFraction {
        VolumeFraction(self.0 / total.0)
    }
}

impl VolumeFraction {
    /// What is not concentrate: `1 − r`.
    #[must_use]
    pub fn water(self) -> Self {
        Self(1.0 - self.0)
    }

    /// In parts of a hundred.
    pub fn percent(self) -> f64 {
        self.0 * 100.0
    }

    /// The n of "1 part plus n parts water": `n = (1 − r) / r`.
    pub fn parts_of_water(self) -> f64 {
        (1.0 - self.0) / self.0
    }

    /// From the n of "1 part plus n parts water": `r = 1 / (1 + n)`.
    pub fn from_parts_of_water(parts: f64) -> Self {
        Self(1.0 / (1.0 + parts))
    }
}
