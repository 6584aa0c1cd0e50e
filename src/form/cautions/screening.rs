//! The class of the use solution, from what the product is made of: a screening estimate.

use super::use_ph::{disagree, joined};
use super::{panel, ph};
use crate::chemistry::cas;
use crate::chemistry::floor::PhRange;
use crate::chemistry::ghs::mixture::{
    EXTREME_PH, Ingredient, Kind, Mixture, Reserve, Rest, Screening, concentrate_share, screen,
};
use crate::chemistry::ghs::{Knowledge, codes};
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::units::{Density, MassFraction, Plain, Quantity, VolumeFraction};

/// Screens the use solution of the product asked about, at the strength of Fill; none where it lists no part,
/// or a number in the list is wrong.
///
/// What is not known never clears it: a part without codes, a rest that the sheet does not list, a pH.
///
/// ```
/// use brimline::chemistry::ghs::mixture::{Endpoint, Verdict};
/// use brimline::form::{Action, Typed, action::{Shelf, reduce}, cautions::screening::work};
/// use brimline::number::Marks;
/// let degreaser = reduce(Typed::default(), Action::Pick(Shelf::Product, "degreaser".into()));
/// let found = work(&degreaser, Marks::POINT).unwrap();
/// // Its pH alone says that it burns.
/// assert!(matches!(found.of(Endpoint::Skin).unwrap().verdict(), Verdict::Class(class) if class.category == 1));
/// assert!(work(&Typed::default(), Marks::POINT).is_none());
/// ```
pub fn work(typed: &Typed, marks: Marks) -> Option<Screening> {
    let found = ph::work(typed, marks);
    let density = Outcome::default().may::<Density>(typed, Field::Density, marks)?;
    let share = concentrate_share(found.strength?, density);
    Some(screen(&mixture(typed, &found, share, super::printed_ph(typed.product()?, marks), marks)?))
}

/// The same of the concentrate itself, by its ingredients.
pub fn concentrate(typed: &Typed, marks: Marks) -> Option<Screening> {
    let found = ph::at(typed, Some(VolumeFraction::new(1.0)), marks);
    let printed = super::printed_neat(typed.product()?, marks);
    Some(screen(&mixture(typed, &found, MassFraction::new(1.0), printed, marks)?))
}

fn mixture(
    typed: &Typed,
    found: &ph::Ph,
    share: MassFraction,
    printed: Option<PhRange>,
    marks: Marks,
) -> Option<Mixture> {
    let product = typed.product().filter(|product| !product.parts.is_empty())?;
    let mut aside = Outcome::default();
    let parts = ph::parts(&mut aside, typed, marks)?;
    let panel = panel(product);
    let mut ingredients = Vec::new();
    let factor =
        |out: &mut Outcome, field: Field| out.may::<Plain>(typed, field, marks).flatten().map(Quantity::si);
    for (index, (part, (_, low, high))) in product.parts.iter().zip(&parts).enumerate() {
        let number = cas::check(&part.cas);
        let mut toxicity = |field: Field| aside.may::<MassFraction>(typed, field, marks).flatten();
        // A part without codes is not cleared by that: only who has read the sheet knows.
        let read = codes::read(&part.codes);
        let known = !part.codes.trim().is_empty() && read.unknown.is_empty();
        ingredients.push(Ingredient {
            name: part.name.clone(),
            cas: number,
            low: *low,
            high: *high,
            hazards: known.then_some(read.hazards),
            kind: number.map_or(Kind::Unknown, Kind::of),
            oral: toxicity(Field::PartOral(index)),
            dermal: toxicity(Field::PartDermal(index)),
            m_acute: factor(&mut aside, Field::PartMAcute(index)),
            m_chronic: factor(&mut aside, Field::PartMChronic(index)),
        });
    }
    // An extreme pH is one whatever else may be in it; a mild one counts where nothing else can be.
    let extreme = |band: &PhRange| band.low <= EXTREME_PH.low || band.high >= EXTREME_PH.high;
    let estimated = found.band.filter(|band| product.listed || extreme(band));
    Some(Mixture {
        ingredients,
        rest: if product.listed { Rest::Harmless } else { Rest::Unknown },
        share,
        label: panel.codes.hazards.clone(),
        label_read: panel.knowledge == Knowledge::Full,
        covers_water: false,
        ph: worse(printed, found.band, estimated),
        ph_of_concentrate: worse(
            super::printed_neat(product, marks),
            found.neat,
            found.neat.filter(|_| product.listed),
        ),
        reserve_is_small: product.reserve == Reserve::Small,
    })
}

/// What is printed, and the estimate with it where that says something else; without print the estimate, as far as
/// it may stand alone.
fn worse(printed: Option<PhRange>, band: Option<PhRange>, alone: Option<PhRange>) -> Option<PhRange> {
    let Some(printed) = printed else { return alone };
    Some(band.filter(|band| disagree(printed, *band)).map_or(printed, |band| joined(printed, band)))
}

/// What is wrong with the numbers of the product's parts, each at its field.
pub fn mistakes(typed: &Typed, marks: Marks) -> Outcome {
    let mut out = Outcome::default();
    ph::parts(&mut out, typed, marks);
    for index in 0..typed.product().map_or(0, |product| product.parts.len()) {
        out.may::<MassFraction>(typed, Field::PartOral(index), marks);
        out.may::<MassFraction>(typed, Field::PartDermal(index), marks);
        out.may::<Plain>(typed, Field::PartMAcute(index), marks);
        out.may::<Plain>(typed, Field::PartMChronic(index), marks);
    }
    out
}
