//! The elements of a hazard label after the Globally Harmonized System (GHS): pictograms, signal
//! words, hazard (H) and precautionary (P) statements, and which of them stand on a label together.

pub mod codes;
pub mod elements;
mod environment;
pub mod hazard;
mod health;
pub mod mixture;
mod physical;
pub mod pictogram;
pub mod precaution;

pub use codes::Codes;
pub use elements::{LabelElements, elements};
pub use hazard::{Hazard, Part, Route};
pub use pictogram::{Pictogram, SignalWord};
pub use precaution::{Precaution, Purpose};

/// How much of a product's hazard information was seen.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Knowledge {
    /// All of it: the label or section 2 of the safety data sheet was read in full. With no
    /// statement listed this means "not classified as hazardous".
    Full,
    /// Some or none of it. Never a reason to reassure.
    Partial,
}

/// The word keys of pictograms, signal words and statements.
pub fn word_keys() -> impl Iterator<Item = String> {
    Pictogram::ALL
        .iter()
        .map(|one| one.key().to_owned())
        .chain(SignalWord::ALL.iter().map(|one| one.key().to_owned()))
        .chain(hazard::all().map(Hazard::key))
        .chain(precaution::ALL.iter().map(Precaution::key))
}
