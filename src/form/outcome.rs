//! What a view gets back: an answer, and what stands in its way, each at its field.

use super::{Field, Typed};
use crate::answer::Answer;
use crate::error::Mistake;
use crate::limits::Limit;
use crate::number::Marks;
use crate::trade::label::LabelMistake;
use crate::trade::reading::ReadingMistake;
use crate::units::{Quantity, Volume, VolumeFraction, unit};

/// What is wrong.
#[derive(Clone, Debug, PartialEq)]
pub enum What {
    /// With a number and its unit.
    Number(Mistake),
    /// With the label.
    Label(LabelMistake),
    /// More is filled than the tank holds.
    AboveTank,
    /// The tank has no room for the concentrate on top of the water.
    NoRoom,
    /// A product used neat cannot be added to water.
    Neat,
    /// The concentrate holds less active substance than is asked for.
    TooWeak,
    /// A powder or whole packets, where a liquid is needed.
    NoLiquid,
    /// The chosen measure cannot measure a powder.
    PowderMeasure,
    /// One packet makes more than the tank holds.
    PacketTooBig,
    /// The chosen measure is not one to add concentrate by hand with.
    NotByHand,
    /// The machine's ratios do not read as numbers.
    Ratios,
    /// A tip draws more than the whole unit delivers.
    AboveTotal,
    /// No tip was measured yet.
    NoTip,
    /// The least is more than the most.
    LeastAboveMost,
    /// The overlap takes the whole path.
    OverlapTakesPath,
    /// The site has none of it yet.
    NoRecord,
    /// There is nothing in the tank to put right.
    TankEmpty,
    /// The product that was put in is not chosen.
    NoOther,
    /// The blocks of a strip's chart do not read as rising numbers.
    Blocks,
    /// The instrument says nothing.
    Reading(ReadingMistake),
    /// The floor of an area was removed.
    NoFloor,
    /// The floor of an area has no sound target.
    FloorTarget,
    /// The product of an area was removed.
    NoProduct,
    /// A CAS number whose check digit does not belong to it.
    Cas,
    /// A machine of the shift has no such setting.
    NoSetting,
    /// More foam after a minute than at once.
    FoamGrows,
    /// An area was cleaned faster, or far slower, than the machine can.
    Efficiency,
    /// The machine of an area was removed.
    NoMachine,
    /// The machine of an area lacks a number, or has a wrong one.
    MachineUnsound,
    /// The product of an area does not work out with its machine.
    ProductUnsound,
    /// A catch test in which nothing came out.
    NothingCame,
    /// Settings are numbered 1, 2, 3.
    Whole,
    /// No area is chosen.
    NoArea,
    /// The tank is far too small for the floor.
    TooManyFills,
    /// No day of the calendar, written year-month-day.
    Date,
    /// Another record of the shelf bears the same name.
    SameName,
    /// No time of day, written hours:minutes.
    Time,
}

/// A mistake and the name of the input it belongs to.
#[derive(Clone, Debug, PartialEq)]
pub struct Trouble {
    /// The input's name on the page.
    pub name: String,
    /// What is wrong.
    pub what: What,
}

/// An answer as far as it goes, and what is in the way of the rest.
#[derive(Clone, Debug, Default)]
pub struct Outcome {
    /// The answer.
    pub answer: Answer,
    /// Mistakes, in the order of the fields.
    pub troubles: Vec<Trouble>,
}

impl Outcome {
    /// Notes a mistake at an input.
    pub fn trouble(&mut self, name: impl Into<String>, what: What) {
        let name = name.into();
        // Two questions may ask the same field; it is mended once.
        if self.at(&name).is_none() {
            self.troubles.push(Trouble { name, what });
        }
    }

    /// Reads a field that the answer needs; a mistake is noted.
    pub fn need<Q: Quantity>(&mut self, typed: &Typed, field: Field, marks: Marks) -> Option<Q> {
        let Some(entry) = field.entry(typed) else {
            self.trouble(field.name(), What::NoRecord);
            return None;
        };
        match entry.read(field.limit(), marks) {
            Ok(quantity) => Some(quantity),
            Err(mistake) => {
                self.trouble(field.name(), What::Number(mistake));
                None
            }
        }
    }

    /// Reads a field that may be empty. The outer `None` is a mistake, which is noted.
    #[allow(clippy::option_option, reason = "left empty and mistyped are two things")]
    pub fn may<Q: Quantity>(&mut self, typed: &Typed, field: Field, marks: Marks) -> Option<Option<Q>> {
        match field.entry(typed)?.read_optional(field.limit(), marks) {
            Ok(quantity) => Some(quantity),
            Err(mistake) => {
                self.trouble(field.name(), What::Number(mistake));
                None
            }
        }
    }

    /// Reads a volume that may be typed as a share of another; a mistake is noted.
    pub fn share_or_volume(
        &mut self,
        typed: &Typed,
        field: Field,
        share: &'static Limit,
        whole: Volume,
        marks: Marks,
    ) -> Option<Volume> {
        let entry = field.entry(typed)?;
        let read = if unit(&entry.unit).is_some_and(|unit| unit.code == "percent") {
            entry.read::<VolumeFraction>(share, marks).map(|share| share * whole)
        } else {
            entry.read::<Volume>(field.limit(), marks)
        };
        read.map_err(|mistake| self.trouble(field.name(), What::Number(mistake))).ok()
    }

    /// The mistake at an input.
    pub fn at(&self, name: &str) -> Option<&What> {
        self.troubles.iter().find(|trouble| trouble.name == name).map(|trouble| &trouble.what)
    }
}
