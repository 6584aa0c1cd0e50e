//! The whole way: from a pasted sheet to a product, and from the product to the class of its use solution.

use super::layouts::{english, sheet};
use brimline::chemistry::cas::check;
use brimline::chemistry::floor::PhRange;
use brimline::chemistry::ghs::mixture::{
    Class, Doubt, Endpoint, Ingredient, Kind, Mixture, Screening, Verdict, concentrate_share, screen,
};
use brimline::chemistry::ghs::{Knowledge, codes};
use brimline::number::{self, Marks};
use brimline::site::sheet::take;
use brimline::site::{Entry, Product};
use brimline::units::{Density, MassFraction, Quantity, VolumeFraction};

fn share(entry: &Entry) -> Option<MassFraction> {
    number::read(&entry.text, Marks::POINT).ok().map(|percent| MassFraction::new(percent / 100.0))
}

/// The product of a sheet, 1 part to so many of water.
fn diluted(product: &Product, water: f64, ph: Option<PhRange>) -> Screening {
    let ingredients = product.parts.iter().map(|part| {
        let low = share(&part.low).unwrap_or_default();
        let hazards = codes::read(&part.codes).hazards;
        Ingredient {
            name: part.name.clone(),
            cas: check(&part.cas),
            low,
            high: share(&part.high).unwrap_or(low),
            hazards: (!hazards.is_empty()).then_some(hazards),
            kind: check(&part.cas).map_or(Kind::Unknown, Kind::of),
            ..Ingredient::default()
        }
    });
    let density =
        number::read(&product.density.text, Marks::POINT).ok().map(|one| Density::new(one * 1_000.0));
    screen(&Mixture {
        ingredients: ingredients.collect(),
        share: concentrate_share(VolumeFraction::new(1.0 / (1.0 + water)), density),
        label: codes::read(&product.codes).hazards,
        label_read: true,
        ph,
        ph_of_concentrate: Some(PhRange { low: 13.0, high: 13.8 }),
        ..Mixture::default()
    })
}

/// By hand, with the limits of Hazardous Products Regulations (Canada), SOR/2015-17, 8.2.11 and 8.3.11: the
/// degreaser holds up to 10 % sodium hydroxide and 5 % sodium metasilicate, both of which burn and neither of
/// which adds up; 1 + 9 by volume at 1.09 g/mL is 10.8 % by mass, so 1.08 % sodium hydroxide: it burns. 1 + 15 is
/// 6.8 %, so 0.68 % and 0.34 %: too little to count.
#[test]
fn a_degreaser_from_its_sheet() {
    let product = take(&Product::default(), &english(&sheet("degreaser-table")).findings, Marks::POINT);
    let mild = Some(PhRange { low: 10.5, high: 11.4 });
    let verdict = |screening: &Screening, endpoint| screening.of(endpoint).expect("a finding").verdict();
    let strong = diluted(&product, 9.0, mild);
    let burns = |endpoint| Verdict::Class(Class { endpoint, category: 1 });
    assert_eq!(verdict(&strong, Endpoint::Skin), burns(Endpoint::Skin));
    assert_eq!(verdict(&strong, Endpoint::Eye), burns(Endpoint::Eye));
    let weak = diluted(&product, 15.0, mild);
    for endpoint in [Endpoint::Skin, Endpoint::Eye, Endpoint::Swallowed, Endpoint::ThroughSkin] {
        assert_eq!(verdict(&weak, endpoint), Verdict::NotClassified, "{endpoint:?}");
    }
    // Without the pH of the use solution nobody can say, and it is treated as what it was.
    let unknown = diluted(&product, 15.0, None);
    let skin = unknown.of(Endpoint::Skin).expect("a finding");
    assert_eq!((skin.verdict(), &skin.doubts[..]), (Verdict::Unknown, &[Doubt::Ph][..]));
    assert_eq!(skin.treated_as, Some(Class { endpoint: Endpoint::Skin, category: 1 }));
    assert_eq!(unknown.knowledge, Knowledge::Partial);
    // By the least of each ingredient 13 % of the concentrate are not accounted for.
    assert!((weak.unknown.si() - 0.068 * 0.13).abs() < 0.001, "{:?}", weak.unknown);
}
