//! The family that a part brings into its product, by its CAS number.

use super::Family;
use crate::source::Source;

/// From this share on, mass in mass, a part makes its product an acid, an alkali, an alcohol or a solvent: less of
/// it buffers, perfumes or thins. The mixture rules count ingredients from the same share on.
pub const COUNTS_FROM: f64 = 0.01;

/// Which family a number belongs to.
pub const SOURCE: Source = Source::unverified(
    "chemistry; names and CAS numbers checked with the Python library chemicals 1.5.2, as far as it has them",
);

/// What gives off or spoils at any share, a trace included.
const AT_ANY_SHARE: &[(Family, &str)] = &[
    (
        Family::HypochloriteBleach,
        "7681-52-9 10022-70-5 7778-54-3 7790-92-3 2893-78-9 51580-86-0 87-90-1 7782-50-5",
    ),
    (Family::Ammonia, "7664-41-7 1336-21-6"),
    (Family::Peroxide, "7722-84-1"),
    (Family::Oxidiser, "15630-89-4 79-21-0 10486-00-7 70693-62-8"),
    (
        Family::Quat,
        "7173-51-5 68424-85-1 68391-01-5 8001-54-5 63449-41-2 68956-79-6 85409-22-9 32426-11-2 5538-94-3",
    ),
    (Family::Soap, "151-21-3 68891-38-3 9004-82-4 68411-30-3 25155-30-0 27176-87-0 68439-57-6 143-18-0"),
];

/// What counts from [`COUNTS_FROM`] on; of a strong acid or alkali less still is one.
const FROM_A_SHARE: &[(Family, &str)] = &[
    (
        Family::StrongAcid,
        "7647-01-0 7664-93-9 7697-37-2 7664-38-2 5329-14-6 75-75-2 64-18-6 7664-39-3 7681-38-1 506-89-8",
    ),
    (
        Family::Acid,
        "64-19-7 77-92-9 5949-29-1 50-21-5 79-33-4 79-14-1 144-62-7 6153-56-6 526-95-4 110-16-7 6915-15-7 87-69-4",
    ),
    (Family::StrongAlkali, "1310-73-2 1310-58-3 6834-92-0 10213-79-3"),
    (
        Family::Alkali,
        "497-19-8 584-08-7 7601-54-9 10101-89-0 7722-88-5 7320-34-5 7758-29-4 1344-09-8 1312-76-1 141-43-5 1330-43-4",
    ),
    (Family::Alcohol, "64-17-5 67-63-0 67-56-1 71-23-8"),
    (
        Family::Solvent,
        "5989-27-5 138-86-3 8028-48-6 111-76-2 112-34-5 34590-94-8 107-98-2 29911-28-2 5131-66-8 112-25-4 111-90-0 64742-47-8 64742-48-9 8052-41-3 100-51-6 122-99-6 770-35-4 872-50-4 67-64-1",
    ),
];

/// The family that a part brings into its product.
///
/// * `cas`: its number, as typed; its digits count, whatever stands between them.
/// * `most`: the most of it in the product, mass in mass, 0 to 1; 1 where nobody knows.
///
/// Returns none where the table lacks it or too little of it is in: that clears nothing. Source: [`SOURCE`].
///
/// ```
/// use brimline::chemistry::family::{Family, of_part};
/// assert_eq!(of_part("7681-52-9", 0.001), Some(Family::HypochloriteBleach));
/// assert_eq!(of_part(" 01310–73–2", 0.05), Some(Family::StrongAlkali));
/// assert_eq!(of_part("77-92-9", 0.002), None);
/// assert_eq!(of_part("", 1.0), None);
/// ```
pub fn of_part(cas: &str, most: f64) -> Option<Family> {
    if most <= 0.0 {
        return None;
    }
    let among = |table: &[(Family, &str)]| {
        let row = table.iter().find(|(_, numbers)| numbers.split(' ').any(|one| digits(one).eq(digits(cas))));
        row.map(|(family, _)| *family)
    };
    among(AT_ANY_SHARE).or_else(|| match (among(FROM_A_SHARE)?, most < COUNTS_FROM) {
        (Family::StrongAcid, true) => Some(Family::Acid),
        (Family::StrongAlkali, true) => Some(Family::Alkali),
        (_, true) => None,
        (family, false) => Some(family),
    })
}

/// The digits of a number without zeros before them, its check digit among them: a number with a wrong one stands in
/// no row.
fn digits(text: &str) -> impl Iterator<Item = char> {
    text.chars().filter(char::is_ascii_digit).skip_while(|one| *one == '0')
}

/// Every number of the table with its family.
pub fn known_parts() -> impl Iterator<Item = (Family, &'static str)> {
    let all = AT_ANY_SHARE.iter().chain(FROM_A_SHARE);
    all.flat_map(|(family, numbers)| numbers.split(' ').map(|number| (*family, number)))
}
