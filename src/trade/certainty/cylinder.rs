//! What measures are good for.

use crate::source::Source;
use crate::units::{Quantity, Volume};

/// The class that is printed on a graduated cylinder.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Class {
    /// The finer.
    A,
    /// The usual: twice the tolerance of A.
    B,
}

/// One row: a glass cylinder filled to its capacity at 20 °C.
#[derive(Debug)]
pub struct Cylinder {
    /// Its capacity, m³.
    pub capacity: Volume,
    /// Tolerance of class A, ±, m³.
    pub class_a: Volume,
    /// Tolerance of class B, ±, m³.
    pub class_b: Volume,
    /// Where it stands.
    pub source: Source,
}

impl Cylinder {
    /// The tolerance of a class, ±, m³.
    pub fn tolerance(&self, class: Class) -> Volume {
        match class {
            Class::A => self.class_a,
            Class::B => self.class_b,
        }
    }
}

const ASTM: Source = Source::published("ASTM E1272-02(2012), Table 1");
const ASTM_UNSEEN: Source = Source::unverified("from memory; check against ASTM E1272-02(2012), Table 1");
const MILLILITRE: f64 = 1e-6;

const fn row(capacity: f64, class_a: f64, class_b: f64, source: Source) -> Cylinder {
    Cylinder {
        capacity: Volume::new(capacity * MILLILITRE),
        class_a: Volume::new(class_a * MILLILITRE),
        class_b: Volume::new(class_b * MILLILITRE),
        source,
    }
}

/// Graduated cylinders, in millilitres.
pub static CYLINDERS: &[Cylinder] = &[
    row(10.0, 0.10, 0.20, ASTM),
    row(25.0, 0.17, 0.34, ASTM),
    row(50.0, 0.25, 0.50, ASTM),
    row(100.0, 0.50, 1.00, ASTM),
    row(250.0, 1.0, 2.0, ASTM),
    row(500.0, 2.0, 4.0, ASTM),
    row(1_000.0, 3.0, 6.0, ASTM_UNSEEN),
];

/// The tolerance of a plastic jug or cup, as a share of what it measures. Common practice, no source.
pub const JUG_SHARE: f64 = 0.05;

/// The cylinder of a capacity.
///
/// * `capacity`: m³, as printed on it.
///
/// Returns `None` for a capacity without a row. Source: [`CYLINDERS`], row by row.
///
/// ```
/// use brimline::trade::certainty::{Class, cylinder};
/// use brimline::units::{Quantity, Volume, unit};
/// let ml = unit("ml").unwrap();
/// let row = cylinder(Volume::of(100.0, ml).unwrap()).unwrap();
/// assert!((row.tolerance(Class::B).value_in(ml).unwrap() - 1.0).abs() < 1e-12);
/// assert!(cylinder(Volume::of(123.0, ml).unwrap()).is_none());
/// ```
pub fn cylinder(capacity: Volume) -> Option<&'static Cylinder> {
    CYLINDERS.iter().find(|row| (row.capacity.si() / capacity.si() - 1.0).abs() < 1e-9)
}
