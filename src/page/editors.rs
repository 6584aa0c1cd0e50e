//! What is known about a machine, a product, a floor or a measure, to type over.

mod floor;
mod machine;
mod measure;
mod product;

pub use floor::FloorEditor;
pub use machine::{MachineBasics, MachineMotion, MachineSettings};
pub use measure::MeasureEditor;
pub use product::{LabelField, ProductBasics, ProductCautions};

use crate::form::{Outcome, What};
use std::rc::Rc;
use yew::Properties;

/// The mistakes of the view that an editor stands on.
#[derive(Clone, Default, PartialEq)]
pub struct Mistakes(Rc<Vec<(String, What)>>);

impl Mistakes {
    /// Those of an outcome.
    pub fn of(outcome: &Outcome) -> Self {
        Self(Rc::new(
            outcome.troubles.iter().map(|trouble| (trouble.name.clone(), trouble.what.clone())).collect(),
        ))
    }

    /// The mistake at an input.
    pub fn at(&self, name: &str) -> Option<What> {
        self.0.iter().find(|(at, _)| at == name).map(|(_, what)| what.clone())
    }

    /// All of them.
    pub fn all(&self) -> Vec<(String, What)> {
        (*self.0).clone()
    }
}

/// What every editor takes.
#[derive(Properties, PartialEq)]
pub struct EditorProps {
    /// The mistakes of its view.
    #[prop_or_default]
    pub mistakes: Mistakes,
}
