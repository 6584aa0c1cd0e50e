//! What is known of a floor's thirst, from what was typed.

use crate::chemistry::floor::thirst::{Guide, Known, guide};
use crate::form::{Field, Typed};
use crate::number::Marks;
use crate::units::{Quantity, VolumeFraction};

/// What was typed, where it is a number within its limits; what is wrong with it stands at its field.
fn read<Q: Quantity>(typed: &Typed, field: Field, marks: Marks) -> Option<Q> {
    field.entry(typed)?.read(field.limit(), marks).ok()
}

/// The water that the tile of the floor asked about takes up, as a share of its mass.
pub fn absorption(typed: &Typed, marks: Marks) -> Option<VolumeFraction> {
    read(typed, Field::Absorption, marks)
}

/// The porosity class that the floor asked about is pointed to, with the reasons.
///
/// ```
/// use brimline::form::{Action, Field, Typed, action::reduce, flow::thirst::class};
/// use brimline::number::Marks;
/// use brimline::trade::porosity::Porosity;
/// let typed = reduce(Typed::default(), Action::Write(Field::Drop, "45".into()));
/// assert_eq!(class(&typed, Marks::POINT).unwrap().class, Porosity::Medium);
/// ```
pub fn class(typed: &Typed, marks: Marks) -> Option<Guide> {
    let floor = typed.floor()?;
    guide(Known {
        surface: floor.surface,
        absorption: absorption(typed, marks),
        texture: floor.texture,
        joints: floor.joints,
        drop: read(typed, Field::Drop, marks),
    })
}
