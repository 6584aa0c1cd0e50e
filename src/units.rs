//! Quantities and the units that a person writes them in.
//!
//! Inside, every quantity is an `f64` in SI units and its own type: a volume cannot be added to a
//! flow. Units stand at the edges only, one row each in [`table::UNITS`], with their factor to SI as
//! an exact fraction.
//!
//! The types are our own and not a crate's, for two measured reasons: the general-purpose crate
//! that was tried carries the *rounded* factors of NIST SP 811 (US gallon 3.785 412 × 10⁻³ m³ where
//! the definition, 231 in³, is 3.785 411 784 × 10⁻³), and the one relation table below reads like
//! the trade's own formulas.

pub mod quantity;
pub mod system;
pub mod table;
pub mod unit;

pub use quantity::{
    ApplicationRate, Area, AreaPrice, ArealMass, Coverage, Density, Duration, Flow, Frequency, Length, Mass,
    MassConcentration, MassFraction, Money, Plain, Pressure, Productivity, Quantity, SpecificEnergy, Speed,
    Temperature, Volume, VolumeFraction, VolumePrice, Wage,
};
pub use system::{Kind, System};
pub use table::{UNITS, unit};
pub use unit::{Dimension, Exact, Unit};
