//! What must be known about a product on a floor and in a machine before any amount is used.

pub mod container;
pub mod floors;
pub mod leaving;
pub mod mixing;
pub mod part;
pub mod ph;
pub mod phone;
pub mod residue;
pub mod screening;
pub mod shake;
pub mod use_ph;
pub mod worse;

pub use use_ph::UsePh;

use super::Typed;
use crate::answer::{Fact, Remark, Value, Weight};
use crate::chemistry::advice::{Advice, advise};
use crate::chemistry::floor::{Cover, FloorVerdict, Ground, Missing, PhRange, Reason};
use crate::chemistry::foam::{self, FoamVerdict};
use crate::chemistry::ghs::mixture::{EXTREME_PH, Reserve};
use crate::chemistry::ghs::{Codes, Hazard, Knowledge, LabelElements, SignalWord, codes, elements};
use crate::chemistry::pairs::{Pair, never_with};
use crate::number::{self, Marks};
use crate::site::{Finish, Floor, Product, Record, Site};
use crate::units::{Kind, Plain, Quantity};

/// The cautions of one product.
#[derive(Clone, Debug)]
pub struct Panel {
    /// Signal word, pictograms and hazard statements, the most serious first.
    pub elements: LabelElements,
    /// The codes as they were read: precautions, and what no table has.
    pub codes: Codes,
    /// Whether the label was read in full.
    pub knowledge: Knowledge,
    /// PPE, first aid, spill, storage, disposal.
    pub advice: Advice,
    /// What must never meet it.
    pub never: Vec<&'static Pair>,
}

impl Panel {
    /// Whether its vapour may burn: sparks of a vacuum's motor set it off.
    pub fn burns(&self) -> bool {
        self.codes.hazards.iter().any(|one| burns(one))
    }
}

/// Reads a product's cautions, by its label.
pub fn panel(product: &Product) -> Panel {
    panel_with(product, &[])
}

/// The same with statements that its label does not bear and its parts ask for.
pub fn panel_with(product: &Product, more: &[&'static Hazard]) -> Panel {
    let codes = codes::read(&product.codes);
    // A product without hazard codes is cleared only by a person who said that its label has none.
    let read = product.signal != SignalWord::Unknown && codes.unknown.is_empty();
    let contradicts =
        product.signal != SignalWord::None && codes.hazards.is_empty() || burns_unsaid(product, &codes);
    let knowledge = if read && !contradicts { Knowledge::Full } else { Knowledge::Partial };
    let mut hazards = codes.hazards.clone();
    hazards.extend(more);
    let mut elements = elements(&hazards, knowledge);
    elements.signal = elements.signal.max(product.signal);
    let advice = advise(&hazards, knowledge).with_precautions(&codes.precautions);
    Panel { elements, codes, knowledge, advice, never: never_with(&product.kinds()) }
}

/// A floor of the site with the finish that lies on it. A finish that the site has lost, or whose window is not
/// typed in or wrongly, is one of which nothing is known.
pub fn ground(site: &Site, floor: &Floor, marks: Marks) -> Ground {
    let cover = match floor.finish.as_str() {
        "" => Cover::Bare,
        id => site
            .finishes
            .iter()
            .find(|finish| finish.id() == id)
            .map_or(Cover::Unknown, |finish| cover(finish, marks)),
    };
    Ground { surface: floor.surface, cover }
}

/// What a finish bears, as far as it reads.
pub fn cover(finish: &Finish, marks: Marks) -> Cover {
    let read = |entry: &crate::site::Entry| entry.read_optional::<Plain>(&crate::limits::PH, marks);
    match (read(&finish.ph_low), read(&finish.ph_high)) {
        (Ok(low), Ok(high)) => Cover::finish(low.map(Plain::si), high.map(Plain::si)),
        _ => Cover::Unknown,
    }
}

/// Whether the product may be used on the floor, by its kinds and the pH that its maker prints.
pub fn on_floor(product: &Product, ground: Ground, marks: Marks) -> FloorVerdict {
    by_kinds(product, ground, printed_ph(product, marks))
}

/// The same with a pH. Parts that are found can refuse a floor and never clear one: that takes a family that
/// somebody ticked.
fn by_kinds(product: &Product, ground: Ground, ph: Option<PhRange>) -> FloorVerdict {
    let verdict = ground.verdict(&product.kinds(), ph);
    if product.families.is_empty() {
        return verdict.and(FloorVerdict::Unknown { missing: vec![Missing::Families] });
    }
    verdict
}

/// The maker's pH of the use solution, where it is a pH.
pub fn printed_ph(product: &Product, marks: Marks) -> Option<PhRange> {
    a_ph(&product.ph, marks)
}

/// The pH of the product as it is sold, where its sheet gives one.
pub fn printed_neat(product: &Product, marks: Marks) -> Option<PhRange> {
    a_ph(&product.ph_neat, marks)
}

fn a_ph(text: &str, marks: Marks) -> Option<PhRange> {
    // No pH is a thousand: 7.125 is what English reads.
    let ph = number::read(text, marks).or_else(|_| number::read(text, Marks::POINT));
    let ph = ph.ok().filter(|ph| (0.0..=14.0).contains(ph))?;
    Some(PhRange { low: ph, high: ph })
}

/// Whether a text was typed for a pH that is none.
pub fn ph_is_wrong(text: &str, marks: Marks) -> bool {
    !text.trim().is_empty() && a_ph(text, marks).is_none()
}

/// Whether the pH of the concentrate says that it burns, and no statement of its label does. A reserve that was
/// found small says otherwise: the extreme pH rule allows that.
fn burns_unsaid(product: &Product, codes: &Codes) -> bool {
    // Either mark is a decimal one: no pH is in the thousands.
    let ph = [Marks::POINT, Marks::COMMA].iter().find_map(|marks| a_ph(&product.ph_neat, *marks));
    let extreme = ph.is_some_and(|ph| ph.low <= EXTREME_PH.low || ph.high >= EXTREME_PH.high);
    let said = codes.hazards.iter().flat_map(|one| one.parts()).any(|part| part == "H314");
    extreme && !said && product.reserve != Reserve::Small
}

/// The remarks that belong beside every amount: foam or fire in this machine, harm to this floor, a
/// label that nobody has read.
pub fn remarks(typed: &Typed, marks: Marks) -> Vec<Remark> {
    let of = |product: &Product, floor: &Floor| on_floor(product, ground(&typed.site, floor, marks), marks);
    remarks_with(typed, &of)
}

/// The same where the pH is estimated too: what is said of the floor is by the worse of label and estimate. Not for
/// [`super::fill`], on whose strength the estimate rests.
pub fn remarks_by_estimate(typed: &Typed, marks: Marks) -> Vec<Remark> {
    let ph = UsePh::of(typed, marks);
    let of = |product: &Product, floor: &Floor| ph.verdict(product, ground(&typed.site, floor, marks));
    let mut out = remarks_with(typed, &of);
    out.extend(ph.differs());
    out
}

fn remarks_with(typed: &Typed, on_floor: &dyn Fn(&Product, &Floor) -> FloorVerdict) -> Vec<Remark> {
    let Some(product) = typed.product() else { return Vec::new() };
    let panel = panel(product);
    // What may not be used at all stands in the way of the amount until it was read, and stays
    // beside it after.
    let stop = if typed.ask.stop_read { Weight::Warn } else { Weight::Stop };
    let mut out = Vec::new();
    let named = |code| Remark::new(code, stop).with("product", Fact::Text(product.name.clone()));
    out.extend(foam_code(typed, product).map(named));
    if typed.machine().is_none_or(|machine| machine.vacuum) && panel.burns() {
        out.push(Remark::new("remark-flammable", stop));
    }
    out.extend(mixing::before(typed, stop));
    if let Some(floor) = typed.floor() {
        let verdict = on_floor(product, floor);
        out.extend(floor_remarks(floor, &verdict, stop));
    }
    out.extend(left_out(typed));
    if mixing::clashes_with_itself(product) {
        out.push(Remark::new("remark-families-clash", Weight::Warn));
    }
    if product.is_no_neutral() {
        out.push(Remark::new("remark-not-neutral", Weight::Warn));
    }
    if burns_unsaid(product, &panel.codes) {
        out.push(Remark::new("remark-extreme-ph", Weight::Warn));
    }
    if panel.knowledge == Knowledge::Partial {
        out.push(Remark::new("remark-hazards-unknown", Weight::Warn));
    }
    out
}

/// What a standard in force that is not for this machine says of it. Where nothing but standards is gone by there is
/// no amount then, and reading makes none.
pub(super) fn left_out(typed: &Typed) -> Option<Remark> {
    let (standard, reason) = typed.left_out()?;
    let weight = if typed.ask.held { Weight::Stop } else { Weight::Warn };
    let version = Value::plain(f64::from(standard.version), Kind::Count);
    let remark = Remark::new(LEFT_OUT, weight).value("version", version);
    Some(remark.with("reason", Fact::Text(reason.to_owned())))
}

/// The code of what says that the standard in force is not for a machine.
pub const LEFT_OUT: &str = "remark-standard-leaves-out";

/// Puts the most serious first: harm to people by gas, fire and burns, then harm to the floor and the machine, then
/// what is not known.
pub fn by_danger(remarks: &mut [Remark]) {
    let rank = |one: &Remark| BY_DANGER.iter().position(|code| *code == one.code).unwrap_or(BY_DANGER.len());
    remarks.sort_by_key(rank);
}

const BY_DANGER: [&str; 14] = [
    "remark-before-never",
    "remark-families-clash",
    "remark-not-neutral",
    "remark-flammable",
    "remark-extreme-ph",
    "remark-hazards-unknown",
    "remark-ph-differs",
    "remark-before-unknown",
    "remark-before-not-known",
    "remark-floor-does-not-fit",
    "remark-foam-refuse",
    "remark-foam-test-first",
    "remark-floor-unknown",
    "remark-before-other",
];

/// Whether the product may not be used in this machine or on this floor, read or not.
pub fn banned(remarks: &[Remark]) -> bool {
    remarks.iter().any(|remark| BANS.contains(&remark.code))
}

const BANS: [&str; 6] = [
    "remark-setting-outside",
    "remark-foam-refuse",
    "remark-foam-test-first",
    "remark-flammable",
    "remark-floor-does-not-fit",
    "remark-shift-floor",
];

/// Flammable gases, aerosols and liquids: sparks of a motor set them off.
fn burns(hazard: &Hazard) -> bool {
    matches!(hazard.code, "H220" | "H221" | "H222" | "H223" | "H224" | "H225" | "H226")
}

fn foam_code(typed: &Typed, product: &Product) -> Option<&'static str> {
    // A machine that nobody described may have a vacuum.
    let vacuum = typed.machine().is_none_or(|machine| machine.vacuum);
    match foam::verdict(product.foam, vacuum) {
        FoamVerdict::Fits => None,
        FoamVerdict::Refuse => Some("remark-foam-refuse"),
        FoamVerdict::TestFirst => Some("remark-foam-test-first"),
    }
}

fn floor_remarks(floor: &Floor, verdict: &FloorVerdict, stop: Weight) -> Vec<Remark> {
    let named = |code, weight| Remark::new(code, weight).with("floor", Fact::Text(floor.name.clone()));
    match verdict {
        FloorVerdict::Fits => Vec::new(),
        FloorVerdict::DoesNotFit { reasons } => reasons
            .iter()
            .map(|reason| {
                let remark = named("remark-floor-does-not-fit", stop);
                let remark = remark.with("why", Fact::Key(reason.key().to_owned()));
                match reason {
                    Reason::Family(_) => remark,
                    Reason::TooAcid(window) | Reason::TooAlkaline(window) => remark
                        .value("low", Value::plain(window.low, Kind::Ph))
                        .value("high", Value::plain(window.high, Kind::Ph)),
                }
            })
            .collect(),
        FloorVerdict::Unknown { missing } => {
            let first = missing.first().map(|missing| missing.key().to_owned()).unwrap_or_default();
            vec![named("remark-floor-unknown", Weight::Warn).with("what", Fact::Key(first))]
        }
    }
}
