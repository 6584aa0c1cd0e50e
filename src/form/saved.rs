//! An answer on its own: a file that anyone can work out again.

use super::typed::{SCHEMA, Typed};
use super::{fill, flow, shift, station};
use crate::answer::Answer;
use crate::coded::coded;
use crate::document::{self, document};
use crate::number::Marks;
use serde_json::{Map, Value};

/// What the first field of a file says.
const KIND: &str = "brimline answer";

coded! {
    /// The view that an answer comes from.
    #[derive(Default)]
    View {
        /// The fill.
        #[default]
        Fill = "fill",
        /// The top-up.
        TopUp = "top_up",
        /// The rescue.
        Rescue = "rescue",
        /// The reading.
        Reading = "reading",
        /// The flow setting.
        Flow = "flow",
        /// The shift.
        Shift = "shift",
    }
}

impl View {
    /// The fragment of the address that shows it.
    pub fn fragment(self) -> &'static str {
        match self {
            Self::Fill | Self::TopUp | Self::Rescue | Self::Reading => "fill",
            other => other.code(),
        }
    }

    /// Works the view's answer out.
    pub fn answer(self, typed: &Typed, marks: Marks) -> Answer {
        match self {
            Self::Fill => fill::work(typed, marks).outcome.answer,
            Self::TopUp => station::top_up::work(typed, marks).outcome.answer,
            Self::Rescue => station::rescue::work(typed, marks).outcome.answer,
            Self::Reading => station::reading::work(typed, marks).outcome.answer,
            Self::Flow => flow::work(typed, marks).outcome.answer,
            Self::Shift => shift::work(typed, marks).outcome.answer,
        }
    }
}

document! {
    /// A saved answer.
    Saved {
        /// That it is a saved answer.
        kind: String,
        /// [`SCHEMA`] when it was written.
        schema: u32,
        /// Where the answer comes from.
        view: View,
        /// The decimal mark that the texts were typed with.
        decimal: char,
        /// Checksum of the question, to tell a changed one from a wrong answer.
        check: String,
        /// What was typed.
        input: Value,
        /// Figures by name, SI.
        figures: Map<String, Value>,
        /// Codes of the warnings and assumptions.
        remarks: Vec<String>,
    }
}

/// Why a file does not stand.
#[derive(Clone, Debug, PartialEq)]
pub enum Doubt {
    /// It is not a saved answer; the reader's own words say where it stops making sense.
    Unreadable(String),
    /// It was written by a later version.
    Later(u32),
    /// What was typed is not what the answer was saved with.
    InputChanged,
    /// A figure is not what the same input gives.
    Differs {
        /// Its name.
        name: String,
        /// In the file, SI.
        saved: Option<f64>,
        /// Worked out now, SI.
        now: Option<f64>,
    },
    /// The warnings are not those that the same input gives.
    Remarks,
}

/// What was compared.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Agreement {
    /// The view.
    pub view: View,
    /// How many figures agree.
    pub figures: usize,
}

/// The answer of a view as the text of a file.
///
/// ```
/// use brimline::form::{Typed, saved::{View, recompute, save}};
/// use brimline::number::Marks;
/// let file = save(View::Fill, &Typed::default(), Marks::POINT);
/// assert!(recompute(&file).is_ok());
/// assert!(recompute(&file.replace("1:64", "1:65")).is_err());
/// ```
pub fn save(view: View, typed: &Typed, marks: Marks) -> String {
    let (figures, remarks) = content(&view.answer(typed, marks));
    let input = as_value(typed);
    let saved = Saved {
        kind: KIND.to_owned(),
        schema: SCHEMA,
        view,
        decimal: marks.decimal,
        check: checksum(view, marks.decimal, &input),
        input,
        figures,
        remarks,
    };
    serde_json::to_string(&saved).unwrap_or_default()
}

/// Works a saved answer out again and compares.
///
/// Figures agree within 10⁻¹² of their size: less than any printed digit, more than the difference
/// between two processors.
///
/// # Errors
/// The first [`Doubt`].
pub fn recompute(file: &str) -> Result<Agreement, Doubt> {
    let (saved, typed) = parse(file)?;
    let marks = if saved.decimal == ',' { Marks::COMMA } else { Marks::POINT };
    let (figures, remarks) = content(&saved.view.answer(&typed, marks));
    // An earlier version knew fewer figures and remarks; what it states must still stand.
    let earlier = saved.schema < SCHEMA;
    let names = figures.keys().filter(|_| !earlier).chain(saved.figures.keys());
    for name in names {
        let si = |all: &Map<String, Value>| all.get(name).and_then(Value::as_f64);
        let (then, now) = (si(&saved.figures), si(&figures));
        if !matches!((then, now), (Some(a), Some(b)) if (a - b).abs() <= 1e-12 * a.abs().max(b.abs())) {
            return Err(Doubt::Differs { name: name.clone(), saved: then, now });
        }
    }
    let stands = |code: &String| remarks.contains(code);
    let agree = if earlier { saved.remarks.iter().all(stands) } else { remarks == saved.remarks };
    if !agree {
        return Err(Doubt::Remarks);
    }
    Ok(Agreement { view: saved.view, figures: saved.figures.len() })
}

/// The view and what was typed, from a saved answer.
///
/// # Errors
/// The [`Doubt`] that keeps the file from being read, or that its input was changed.
///
/// ```
/// use brimline::form::{Typed, saved::{View, open, save}};
/// use brimline::number::Marks;
/// let typed = Typed::default();
/// assert_eq!(open(&save(View::Shift, &typed, Marks::POINT)), Ok((View::Shift, typed)));
/// ```
pub fn open(file: &str) -> Result<(View, Typed), Doubt> {
    parse(file).map(|(saved, typed)| (saved.view, typed))
}

fn parse(file: &str) -> Result<(Saved, Typed), Doubt> {
    let unreadable = |error: serde_json::Error| Doubt::Unreadable(error.to_string());
    let saved: Saved = serde_json::from_str(file).map_err(unreadable)?;
    if saved.kind != KIND {
        return Err(Doubt::Unreadable(format!("kind: {}", saved.kind)));
    }
    if saved.schema > SCHEMA {
        return Err(Doubt::Later(saved.schema));
    }
    if checksum(saved.view, saved.decimal, &saved.input) != saved.check {
        return Err(Doubt::InputChanged);
    }
    let typed: Typed = serde_json::from_str(&saved.input.to_string()).map_err(unreadable)?;
    if typed.schema > SCHEMA {
        return Err(Doubt::Later(typed.schema));
    }
    Ok((saved, typed.up_to_date()))
}

fn content(answer: &Answer) -> (Map<String, Value>, Vec<String>) {
    let figures =
        answer.figures.iter().map(|figure| (figure.name.to_owned(), figure.value.si.into())).collect();
    let remarks = answer.remarks.iter().map(|remark| remark.code.to_owned()).collect();
    (figures, remarks)
}

/// By way of text: reading documents from a value as well as from text would double the code for it,
/// 13 kB gzip of the page.
fn as_value(typed: &Typed) -> Value {
    serde_json::to_string(typed).and_then(|text| serde_json::from_str(&text)).unwrap_or_default()
}

/// Over the question: the view, the decimal mark, and the compact JSON of what was
/// typed with its keys in order. It is taken of the text and not of [`Typed`], so that it also holds
/// for a file of an earlier version, which knows fewer fields.
fn checksum(view: View, decimal: char, input: &Value) -> String {
    document::checksum(&format!("{}{decimal}{input}", view.code()))
}
