//! Every product of the site on every floor of it: at the dilution of its label or of the site's standard, and
//! stronger than that, as a spill or a careless dose would be.

use super::{UsePh, ph, printed_neat, printed_ph};
use crate::chemistry::floor::{FloorVerdict, Ground, Missing, Reason};
use crate::form::rules::{Extent, Rules, read_label};
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::site::Product;
use crate::units::{Volume, VolumeFraction};

/// What is stronger than the use solution.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Stronger {
    /// The strong end of what the label allows.
    LabelEnd,
    /// The concentrate itself.
    Concentrate,
}

/// Whether a product fits a floor, at its dilution and stronger.
#[derive(Clone, Debug, PartialEq)]
pub enum Fit {
    /// By every rule listed here, even where the concentrate drips.
    Fits,
    /// The use solution fits; what is stronger does not, or nobody knows that it does.
    OnlyDiluted {
        /// What is stronger.
        stronger: Stronger,
        /// Why that would harm the floor; empty where that is only not known.
        reasons: Vec<Reason>,
    },
    /// The use solution harms it.
    DoesNotFit {
        /// Why.
        reasons: Vec<Reason>,
    },
    /// Not enough is known of the use solution: it counts as one that harms.
    Unknown {
        /// What to find out.
        missing: Vec<Missing>,
    },
}

impl Fit {
    /// The stable word key of the verdict.
    pub const fn key(&self) -> &'static str {
        match self {
            Self::Fits => "floor-verdict-fits",
            Self::OnlyDiluted { .. } => "floor-verdict-only-diluted",
            Self::DoesNotFit { .. } => "floor-verdict-does-not-fit",
            Self::Unknown { .. } => "floor-verdict-unknown",
        }
    }

    /// The word key of the verdict in a table.
    pub const fn short(&self) -> &'static str {
        match self {
            Self::Fits => "floor-verdict-fits-short",
            Self::OnlyDiluted { .. } => "floor-verdict-only-diluted-short",
            Self::DoesNotFit { .. } => "floor-verdict-does-not-fit-short",
            Self::Unknown { .. } => "floor-verdict-unknown-short",
        }
    }

    /// The word key of what would harm the floor where only the use solution fits it.
    pub const fn stronger(&self) -> Option<&'static str> {
        let Self::OnlyDiluted { stronger, reasons } = self else { return None };
        Some(match (stronger, reasons.is_empty()) {
            (Stronger::LabelEnd, true) => "floor-strong-end-unknown",
            (Stronger::LabelEnd, false) => "floor-strong-end",
            (Stronger::Concentrate, true) => "floor-concentrate-unknown",
            (Stronger::Concentrate, false) => "floor-concentrate",
        })
    }
}

/// What is known of the pH of a product, diluted and not.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct PhOf {
    /// The dilution; none where the label, or a number in it, does not work out.
    pub strength: Option<VolumeFraction>,
    /// Of the use solution.
    pub used: UsePh,
    /// Of the strongest use solution that the label allows, where that is another one.
    pub strong_end: Option<UsePh>,
    /// Of the concentrate.
    pub neat: UsePh,
}

impl PhOf {
    /// Of the product asked about, at the strength that Fill works out for it in its machine.
    pub fn in_machine(typed: &Typed, marks: Marks) -> Self {
        let found = ph::work(typed, marks);
        let by_label = dilution(typed, marks);
        Self::at(typed, &found, by_label.map(|(_, most)| most), marks)
    }

    /// Of the product asked about, at the dilution of its label or of the site's standard.
    pub fn by_label(typed: &Typed, marks: Marks) -> Self {
        let by_label = dilution(typed, marks);
        let found = ph::at(typed, by_label.map(|(used, _)| used), marks);
        Self::at(typed, &found, by_label.map(|(_, most)| most), marks)
    }

    fn at(typed: &Typed, found: &ph::Ph, most: Option<VolumeFraction>, marks: Marks) -> Self {
        let Some(product) = typed.product() else { return Self::default() };
        let printed = printed_ph(product, marks);
        // A pH is printed for what the label allows: for less of it, and for no more.
        let beyond = most.zip(found.strength).is_some_and(|(most, used)| used > most * (1.0 + 1e-9));
        let used = UsePh::of_both(printed, found.band, product, !beyond);
        let stronger = most.filter(|most| found.strength.is_some_and(|used| *most > used * (1.0 + 1e-9)));
        // One pH that is printed for the use solution holds for all that the label allows.
        let strong_end = stronger
            .map(|most| UsePh::of_both(printed, ph::at(typed, Some(most), marks).band, product, true));
        let neat = UsePh::of_both(printed_neat(product, marks), found.neat, product, true);
        Self { strength: found.strength, used, strong_end, neat }
    }

    /// Whether the product fits a floor and the finish on it.
    pub fn fit(&self, product: &Product, ground: Ground) -> Fit {
        match self.used.verdict(product, ground) {
            FloorVerdict::DoesNotFit { reasons } => return Fit::DoesNotFit { reasons },
            FloorVerdict::Unknown { missing } => return Fit::Unknown { missing },
            FloorVerdict::Fits => (),
        }
        let strong_end = self.strong_end.map(|ph| (Stronger::LabelEnd, ph));
        for (stronger, ph) in strong_end.into_iter().chain([(Stronger::Concentrate, self.neat)]) {
            match ph.verdict(product, ground) {
                FloorVerdict::Fits => (),
                FloorVerdict::DoesNotFit { reasons } => return Fit::OnlyDiluted { stronger, reasons },
                FloorVerdict::Unknown { .. } => return Fit::OnlyDiluted { stronger, reasons: Vec::new() },
            }
        }
        Fit::Fits
    }
}

/// The pH of each product of the site, in the order of its list.
///
/// ```
/// use brimline::form::{Typed, cautions::{floors::{Fit, all}, ground}};
/// use brimline::number::Marks;
/// let typed = Typed::default();
/// let (products, floors) = (&typed.site.products, &typed.site.floors);
/// let vinegar = products.iter().position(|one| one.id == "vinegar").unwrap();
/// let marble = floors.iter().find(|one| one.id == "marble").unwrap();
/// let fit = all(&typed, Marks::POINT)[vinegar].fit(&products[vinegar], ground(&typed.site, marble, Marks::POINT));
/// assert!(matches!(fit, Fit::DoesNotFit { .. }));
/// ```
pub fn all(typed: &Typed, marks: Marks) -> Vec<PhOf> {
    let mut own = typed.without_areas();
    let of = |product: &Product| {
        own.ask.product.clone_from(&product.id);
        PhOf::by_label(&own, marks)
    };
    typed.site.products.iter().map(of).collect()
}

/// How strong label and standard ask the use solution to be, and how strong the label lets it be: for a full
/// tank, since some labels give an amount a tank, and whatever the machine allows.
fn dilution(typed: &Typed, marks: Marks) -> Option<(VolumeFraction, VolumeFraction)> {
    // What is wrong is told on Fill.
    let mut aside = Outcome::default();
    let tank: Volume = aside.need(typed, Field::Tank, marks)?;
    let label = read_label(&mut aside, typed)?;
    let rules = Rules::read(&mut aside, typed, &label, marks)?.without_machine();
    let fill = Extent { filling: typed.ask.filling, ..Extent::full(tank) };
    let share = |dose: Volume| dose.fraction_of(fill.total(dose));
    let used = rules.govern(fill).dose;
    Some((share(used), share(rules.asked(fill).high.max(used))))
}
