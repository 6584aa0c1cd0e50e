//! The kinds of records, each a shelf of the library.

use crate::coded::coded;
use crate::form::Typed;
use crate::site::{Record, Site};

coded! {
    /// A kind of record that can be chosen, added and removed.
    #[derive(Default)]
    Shelf {
        /// Machines.
        #[default]
        Machine = "machine",
        /// Products.
        Product = "product",
        /// Floors.
        Floor = "floor",
        /// Finishes.
        Finish = "finish",
        /// Measures.
        Measure = "measure",
        /// Areas.
        Area = "area",
        /// Trials.
        Trial = "trial",
        /// Standards.
        Standard = "standard",
    }
}

impl Shelf {
    /// Its records.
    pub fn records(self, site: &Site) -> Vec<&dyn Record> {
        fn all<T: Record>(all: &[T]) -> Vec<&dyn Record> {
            all.iter().map(|record| record as &dyn Record).collect()
        }
        match self {
            Self::Machine => all(&site.machines),
            Self::Product => all(&site.products),
            Self::Floor => all(&site.floors),
            Self::Finish => all(&site.finishes),
            Self::Measure => all(&site.measures),
            Self::Area => all(&site.areas),
            Self::Trial => all(&site.trials),
            Self::Standard => all(&site.standards),
        }
    }

    /// The id of the record asked about.
    pub fn chosen(self, typed: &Typed) -> Option<&str> {
        match self {
            Self::Machine => typed.machine().map(Record::id),
            Self::Product => typed.product().map(Record::id),
            Self::Floor => typed.floor().map(Record::id),
            Self::Finish => typed.finish().map(Record::id),
            Self::Measure => typed.measure().map(Record::id),
            Self::Area => typed.area().map(Record::id),
            Self::Trial => typed.trial().map(Record::id),
            Self::Standard => typed.standard().map(Record::id),
        }
    }
}
