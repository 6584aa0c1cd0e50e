//! What is written down of one fill.

use super::Si;
use crate::coded::coded;
use crate::document::shaped as document;
use serde_json::{Map, Value};
use std::sync::Arc;

document! {
    /// A record of the site as it was then: what it is called may change, and it may be gone.
    Named {
        /// Its id.
        id: Arc<str>,
        /// Its name at that time.
        name: Arc<str>,
    }
}

document! {
    /// An amount.
    Amount {
        /// In SI units, or unknown.
        si: Si,
        /// As it was shown, with its unit.
        text: Arc<str>,
    }
}

coded! {
    /// What a reading tells.
    #[derive(Default)]
    Scale {
        /// Nobody read anything.
        #[default]
        None = "none",
        /// Active substance in the solution, SI kg/m³; shown as ppm.
        Active = "active",
        /// Concentrate in the solution, a volume fraction; shown as a ratio.
        Ratio = "ratio",
    }
}

document! {
    /// What a strip, a titration or a refractometer said.
    Reading {
        /// What it tells.
        scale: Scale,
        /// In SI units, or unknown.
        si: Si,
        /// As it was shown, with its unit.
        text: Arc<str>,
    }
}

coded! {
    /// How a fill was done otherwise than the standard says, by the word of whoever did it.
    #[derive(Default)]
    Deviation {
        /// As it says, or nobody said.
        #[default]
        None = "none",
        /// More concentrate.
        More = "more",
        /// Less concentrate.
        Less = "less",
        /// Another product.
        OtherProduct = "other_product",
        /// Something else, as the reason tells.
        Other = "other",
    }
}

coded! {
    /// Whether a task at the end of a shift was done.
    #[derive(Default)]
    Task {
        /// Nobody asked.
        #[default]
        NotAsked = "not_asked",
        /// It was done.
        Done = "done",
        /// It was not.
        NotDone = "not_done",
    }
}

document! {
    /// What is done to a machine at the end of a shift.
    Checklist {
        /// The tanks drained.
        drain: Task,
        /// The tanks rinsed.
        rinse: Task,
        /// The filters cleaned.
        filters: Task,
        /// The debris bag or the brush cleaned.
        brush: Task,
        /// The squeegee wiped.
        squeegee: Task,
    }
}

document! {
    /// A fill: what was planned, and what was done.
    Fill {
        /// When it was done, as [`super::When::read`] takes it, where that is another time than that of writing.
        at: Arc<str>,
        /// The machine.
        machine: Named,
        /// The areas it is for.
        areas: Vec<Named>,
        /// The product.
        product: Named,
        /// The floor.
        floor: Named,
        /// The standard that it goes by; blank for none.
        standard: Named,
        /// The version of the standard; 0 for none.
        version: u32,
        /// Concentrate as planned, m³.
        concentrate: Amount,
        /// Water as planned, m³.
        water: Amount,
        /// How far the tank is filled, m³.
        level: Amount,
        /// Concentrate as it was measured out, m³.
        measured: Amount,
        /// A reading of the solution.
        reading: Reading,
        /// What was done otherwise.
        deviation: Deviation,
        /// What was done at the end of the shift.
        checklist: Checklist,
        /// Whether it was written down by mistake: it is shown, and counted nowhere.
        struck: bool,
    }
}

impl Checklist {
    /// The tasks by their codes, in the order in which they are done.
    ///
    /// ```
    /// use brimline::site::log::{Checklist, Task};
    /// let list = Checklist { rinse: Task::NotDone, ..Checklist::default() };
    /// assert_eq!(list.tasks()[1], ("rinse", Task::NotDone));
    /// ```
    pub const fn tasks(&self) -> [(&'static str, Task); 5] {
        [
            ("drain", self.drain),
            ("rinse", self.rinse),
            ("filters", self.filters),
            ("brush", self.brush),
            ("squeegee", self.squeegee),
        ]
    }

    /// The same with one task as it is now; the same where no task has this code.
    ///
    /// ```
    /// use brimline::site::log::{Checklist, Task};
    /// let list = Checklist::default().with("drain", Task::Done).with("brush", Task::NotDone);
    /// assert_eq!(list, Checklist { drain: Task::Done, brush: Task::NotDone, ..Checklist::default() });
    /// ```
    #[must_use]
    pub fn with(mut self, task: &str, state: Task) -> Self {
        match task {
            "drain" => self.drain = state,
            "rinse" => self.rinse = state,
            "filters" => self.filters = state,
            "brush" => self.brush = state,
            "squeegee" => self.squeegee = state,
            _ => {}
        }
        self
    }
}

impl Amount {
    /// An amount in SI units, as it was shown; unknown where it is none.
    ///
    /// ```
    /// use brimline::site::log::Amount;
    /// assert_eq!(Amount::new(0.001, "1 L").si.value(), Some(0.001));
    /// assert_eq!(Amount::new(f64::NAN, "–").si.value(), None);
    /// ```
    pub fn new(si: f64, text: impl Into<Arc<str>>) -> Self {
        Self { si: Si::new(si).unwrap_or_default(), text: text.into() }
    }
}

impl Named {
    /// A record by its id and its name.
    pub fn new(id: impl Into<Arc<str>>, name: impl Into<Arc<str>>) -> Self {
        Self { id: id.into(), name: name.into() }
    }
}

/// A fill as JSON, every field of it.
pub(super) fn value(fill: &Fill) -> Map<String, Value> {
    match serde_json::to_string(fill).and_then(|text| serde_json::from_str(&text)) {
        Ok(Value::Object(fields)) => fields,
        _ => Map::new(),
    }
}

/// The fill that has these fields, the others blank.
pub(super) fn of_value(fields: &Map<String, Value>) -> Result<Fill, String> {
    let text = serde_json::to_string(fields).unwrap_or_default();
    serde_json::from_str(&text).map_err(|error| error.to_string())
}

/// The fields in which one fill differs from another, with the values of the second: what a correction carries.
///
/// ```
/// use brimline::site::log::{Amount, Fill, changed};
/// let was = Fill::default();
/// let is = Fill { water: Amount::new(0.04, "40 L"), ..Fill::default() };
/// assert_eq!(changed(&was, &is).keys().collect::<Vec<_>>(), ["water"]);
/// ```
pub fn changed(was: &Fill, is: &Fill) -> Map<String, Value> {
    let was = value(was);
    value(is).into_iter().filter(|(field, value)| was.get(field) != Some(value)).collect()
}
