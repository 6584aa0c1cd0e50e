//! Published limits: where ours lie is found by trying, not read off our own tables.

use crate::report::{Report, Within};
use brimline::chemistry::family::Family;
use brimline::chemistry::floor::tile::TileClass;
use brimline::chemistry::floor::{FloorVerdict, PhRange, Surface, verdict};
use brimline::chemistry::ghs::mixture::{
    Endpoint, Ingredient, Kind, Mixture, Rest, Verdict, WATER, concentrate_share, estimate, screen,
};
use brimline::chemistry::ghs::{Knowledge, codes, elements};
use brimline::chemistry::pairs::{Severity, clashes};
use brimline::trade::certainty::{CYLINDERS, JUG_SHARE};
use brimline::units::{MassFraction, Quantity, VolumeFraction};

const HPR: &str = "SOR/2015-17 (HPR, Canada), as of March 2020";
const CLP: &str = "CLP, Annex I";

pub fn all(out: &mut Report) {
    sums(out);
    extreme_ph(out);
    acute(out);
    dilution(out);
    labels(out);
    pairs(out);
    floors(out);
    cylinders(out);
}

/// The point between two at which something begins to hold.
fn edge(mut below: f64, mut above: f64, holds: impl Fn(f64) -> bool) -> f64 {
    if holds(below) || !holds(above) {
        return f64::NAN;
    }
    for _ in 0..60 {
        let middle = f64::midpoint(below, above);
        *if holds(middle) { &mut above } else { &mut below } = middle;
    }
    f64::midpoint(below, above)
}

fn part(share: f64, hazards: &str, kind: Kind) -> Ingredient {
    let share = MassFraction::new(share);
    Ingredient {
        low: share,
        high: share,
        hazards: Some(codes::read(hazards).hazards),
        kind,
        ..Ingredient::default()
    }
}

fn category(mixture: &Mixture, endpoint: Endpoint) -> u8 {
    match screen(mixture).of(endpoint).expect("a finding").verdict() {
        Verdict::Class(class) => class.category,
        _ => u8::MAX,
    }
}

fn mild(ingredients: Vec<Ingredient>) -> Mixture {
    let ph = Some(PhRange { low: 7.0, high: 7.0 });
    Mixture { ingredients, rest: Rest::Harmless, share: MassFraction::new(1.0), ph, ..Mixture::default() }
}

fn sums(out: &mut Report) {
    out.part("Share from which a mixture has a class, %");
    let rows: [(&str, &str, Kind, Endpoint, u8, f64, &str); 11] = [
        ("skin 1 → skin 1, adds up", "H314", Kind::Additive, Endpoint::Skin, 1, 5.0, "8.2.11(2)(a)"),
        ("skin 1 → skin 2, adds up", "H314", Kind::Additive, Endpoint::Skin, 2, 1.0, "8.2.11(2)(b)"),
        ("skin 2 → skin 2, adds up", "H315", Kind::Additive, Endpoint::Skin, 2, 10.0, "8.2.11(2)(c)"),
        ("eye 1 → eye 1, adds up", "H318", Kind::Additive, Endpoint::Eye, 1, 3.0, "8.3.11(2)(a)"),
        ("eye 1 → eye 2, adds up", "H318", Kind::Additive, Endpoint::Eye, 2, 1.0, "8.3.11(2)(b)"),
        ("eye 2 → eye 2, adds up", "H319", Kind::Additive, Endpoint::Eye, 2, 10.0, "8.3.11(2)(c)"),
        ("skin 1 → skin 1, alone", "H314", Kind::Surfactant, Endpoint::Skin, 1, 1.0, "8.2.11(3)"),
        ("skin 2 → skin 2, alone", "H315", Kind::Surfactant, Endpoint::Skin, 2, 3.0, "8.2.11(3)"),
        ("eye 1 → eye 1, alone", "H318", Kind::Surfactant, Endpoint::Eye, 1, 1.0, "8.3.11(3)"),
        ("eye 2 → eye 2, alone", "H319", Kind::Surfactant, Endpoint::Eye, 2, 3.0, "8.3.11(3)"),
        ("skin 1 → eye 1, adds up", "H314", Kind::Additive, Endpoint::Eye, 1, 3.0, "8.3.11(2)(a)"),
    ];
    for (what, hazards, kind, endpoint, gives, percent, place) in rows {
        let holds = |share| category(&mild(vec![part(share, hazards, kind)]), endpoint) <= gives;
        let source = format!("{HPR}, {place}");
        out.number(what, 100.0 * edge(1e-6, 1.0, holds), percent, Within::Of(1e-6), &source);
    }
    // From there on the formula speaks of the known part only, and the estimate sinks.
    let ours = 100.0 * edge(0.01, 0.3, |unknown| estimate(&[(0.1, 10.0)], unknown) < Some(100.0));
    out.number(
        "unknown share from which an ATE leaves it out",
        ours,
        10.0,
        Within::Of(1e-6),
        "29 CFR 1910.1200, A.1.3.6.2.4, correction of 2024",
    );
}

fn extreme_ph(out: &mut Report) {
    out.part("pH from which a mixture burns");
    let burns = |ph: f64| {
        let mixture = Mixture { ph: Some(PhRange { low: ph, high: ph }), ..mild(Vec::new()) };
        category(&mixture, Endpoint::Skin) == 1
    };
    let source = format!("{CLP}, 3.2.3.1.2; {HPR}, 8.2.5");
    out.number("acid", edge(7.0, 0.0, burns), 2.0, Within::Of(1e-9), &source);
    out.number("alkaline", edge(7.0, 14.0, burns), 11.5, Within::Of(1e-9), &source);
}

fn acute(out: &mut Report) {
    out.part("Greatest acute toxicity estimate of a category, mg/kg");
    let with = |endpoint, milligrams: f64| {
        let ate = Some(MassFraction::new(milligrams * 1e-6));
        let mut one = part(1.0, "", Kind::Additive);
        *if endpoint == Endpoint::Swallowed { &mut one.oral } else { &mut one.dermal } = ate;
        category(&mild(vec![one]), endpoint)
    };
    let source = format!("{HPR}, 8.1.1(3), tables 1 and 2");
    for (endpoint, name, limits) in [
        (Endpoint::Swallowed, "oral", [5.0, 50.0, 300.0, 2000.0]),
        (Endpoint::ThroughSkin, "dermal", [50.0, 200.0, 1000.0, 2000.0]),
    ] {
        for (gives, limit) in (1..).zip(limits) {
            let ours = edge(10_000.0, 0.01, |ate| with(endpoint, ate) <= gives);
            out.number(&format!("{name}, category {gives}"), ours, limit, Within::Part(1e-6), &source);
        }
    }
}

/// 20 % of something corrosive that adds up, 1 part to so many of water.
fn dilution(out: &mut Report) {
    out.part("20 % skin 1, diluted: share of it, %, and its classes");
    for (water, percent, skin, eye) in [
        (3.0, 5.0, 1, 1),
        (4.0, 4.0, 2, 1),
        (6.0, 2.857, 2, 2),
        (19.0, 1.0, 2, 2),
        (20.0, 0.952, u8::MAX, u8::MAX),
    ] {
        let share = concentrate_share(VolumeFraction::new(1.0 / (1.0 + water)), Some(WATER));
        let source = format!("{HPR}, 8.2.11 and 8.3.11, derived");
        let what = format!("1 + {water}");
        out.number(&what, 20.0 * share.si(), percent, Within::Of(0.0005), &source);
        let mixture = Mixture { share, ..mild(vec![part(0.2, "H314", Kind::Additive)]) };
        let told = |one: u8| if one == u8::MAX { "none".to_owned() } else { one.to_string() };
        let both = |skin: u8, eye: u8| format!("skin {}, eye {}", told(skin), told(eye));
        let ours = both(category(&mixture, Endpoint::Skin), category(&mixture, Endpoint::Eye));
        out.words(&what, &ours, &both(skin, eye), &source);
    }
}

fn labels(out: &mut Report) {
    out.part("Label elements");
    for (code, theirs, source) in [
        ("H314", "ghs05 danger", "class and picture seen second-hand"),
        ("H315", "ghs07 warning", "from memory"),
        ("H318", "ghs05 danger", "CLP, Annex I, Table 3.3.5"),
        ("H319", "ghs07 warning", "CLP, Annex I, Table 3.3.5"),
        ("H271", "ghs03 danger", "CLP, Annex I, Table 2.13.2"),
        ("H272", "ghs03 danger", "CLP, Annex I, Table 2.13.2, category 2"),
        ("H302", "ghs07 warning", "CLP, Annex I, Table 3.1.3"),
        ("H400", "ghs09 warning", "INRS, table of label elements"),
        ("H410", "ghs09 warning", "INRS, table of label elements"),
        ("H411", "ghs09 none", "INRS, table of label elements"),
        ("H412", "none", "INRS, table of label elements"),
    ] {
        let label = elements(&codes::read(code).hazards, Knowledge::Full);
        let pictures = label.pictograms.iter().map(|one| format!("{one:?}").to_lowercase());
        let ours: Vec<String> = pictures.chain([label.signal.code().to_owned()]).collect();
        out.words(code, &ours.join(" "), theirs, source);
    }
}

fn pairs(out: &mut Report) {
    use Family::{
        Acid, Alcohol, Ammonia, HypochloriteBleach, Peroxide, Quat, Soap, StrongAcid, StrongAlkali,
    };
    out.part("Pairs that must never meet");
    for (a, b, theirs, source) in [
        (HypochloriteBleach, Acid, "gas", "CDC, MMWR 40(36):619, 1991"),
        (HypochloriteBleach, Ammonia, "gas", "OSHA 3511 / NIOSH 2012-125"),
        (HypochloriteBleach, Alcohol, "harms", "NFPA, 13 April 2020"),
        (Peroxide, Acid, "harms", "NFPA, 13 April 2020"),
        (StrongAcid, StrongAlkali, "harms", "40 CFR 265, Appendix V, groups 1-A and 1-B"),
        (Quat, Soap, "spoils", "Univ. of Iowa EHS 8.2.9"),
        (HypochloriteBleach, Peroxide, "harms", "from memory"),
    ] {
        let ours = match clashes(&[a], &[b]).iter().map(|pair| pair.severity).max() {
            Some(Severity::Gas) => "gas",
            Some(Severity::Harms) => "harms",
            Some(Severity::Spoils) => "spoils",
            None => "not listed",
        };
        out.words(&format!("{a:?} + {b:?}"), ours, theirs, source);
    }
}

fn floors(out: &mut Report) {
    out.part("What floors bear");
    for (surface, low, high, source) in [
        (Surface::Terrazzo, 7.0, 10.0, "NTMA care text, seen second-hand"),
        (Surface::Rubber, 7.0, 8.5, "three suppliers, seen second-hand"),
        (Surface::Linoleum, 5.0, 8.0, "trade text, seen second-hand, weak"),
    ] {
        let fits = |ph: f64| {
            verdict(surface, &[Family::Neutral], Some(PhRange { low: ph, high: ph })) == FloorVerdict::Fits
        };
        let what = |end: &str| format!("{surface:?}, {end} pH");
        out.number(&what("least"), edge(0.0, 7.5, fits), low, Within::Of(1e-9), source);
        out.number(&what("greatest"), edge(14.0, 7.5, fits), high, Within::Of(1e-9), source);
    }
    for (surface, family, source) in [
        (Surface::CalcareousStone, Family::Acid, "Marble Institute of America, seen second-hand"),
        (Surface::Terrazzo, Family::Acid, "GSA terrazzo procedure"),
        (Surface::Terrazzo, Family::Alkali, "GSA terrazzo procedure"),
        (Surface::Rubber, Family::Solvent, "GSA 0966001P"),
        (Surface::FinishedVinyl, Family::Ammonia, "common practice, no source"),
    ] {
        let neutral = Some(PhRange { low: 7.5, high: 7.5 });
        let harmed = matches!(verdict(surface, &[family], neutral), FloorVerdict::DoesNotFit { .. });
        let ours = if harmed { "never" } else { "let onto it" };
        out.words(&format!("{family:?} on {surface:?}"), ours, "never", source);
    }
    let source = "ASTM C373 / ANSI A137.1, seen second-hand; porcelain: ISO 13006";
    for (class, next, limit) in [
        (TileClass::Impervious, TileClass::Vitreous, 0.5),
        (TileClass::Vitreous, TileClass::SemiVitreous, 3.0),
        (TileClass::SemiVitreous, TileClass::NonVitreous, 7.0),
    ] {
        let ours = edge(0.0, 30.0, |absorption| TileClass::of(absorption).is_some_and(|one| one >= next));
        out.number(&format!("most absorption of {class:?} tile, %"), ours, limit, Within::Of(1e-6), source);
    }
}

fn cylinders(out: &mut Report) {
    out.part("Graduated cylinders, ± mL");
    for (capacity, class_a, class_b) in [
        (10.0, 0.10, 0.20),
        (25.0, 0.17, 0.34),
        (50.0, 0.25, 0.50),
        (100.0, 0.50, 1.00),
        (250.0, 1.0, 2.0),
        (500.0, 2.0, 4.0),
        (1000.0, 3.0, 6.0),
    ] {
        let source = if capacity < 1000.0 { "ASTM E1272-02(2012), Table 1" } else { "from memory" };
        let row = CYLINDERS.iter().find(|row| (row.capacity.si() * 1e6 - capacity).abs() < 1e-6);
        let ours = |of: fn(&brimline::trade::certainty::Cylinder) -> f64| row.map_or(f64::NAN, of) * 1e6;
        out.number(
            &format!("{capacity} mL, class A"),
            ours(|row| row.class_a.si()),
            class_a,
            Within::Of(1e-9),
            source,
        );
        out.number(
            &format!("{capacity} mL, class B"),
            ours(|row| row.class_b.si()),
            class_b,
            Within::Of(1e-9),
            source,
        );
    }
    out.number("plastic jug, %", JUG_SHARE * 100.0, 5.0, Within::Of(1e-9), "common practice, no source");
}
