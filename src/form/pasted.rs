//! What was pasted of a safety data sheet and is not taken yet.

use crate::document::{checksum, document};
use crate::number::Marks;
use crate::site::sheet::Sheet;
use std::collections::BTreeMap;

document! {
    /// A finding as a person corrected it.
    Correction {
        /// Which one, from 0.
        finding: u32,
        /// Its values as they were typed.
        values: Vec<String>,
    }
}

document! {
    /// All of it.
    Pasted {
        /// What stands in the field.
        text: String,
        /// Whether a text was looked through, whose findings are shown.
        looked: bool,
        /// That text, where what stands in the field was changed since; else empty.
        of: String,
        /// What tells the findings from those of another reader or language, as [`told_apart`] does.
        findings: String,
        /// The id of the product that they are ticked for.
        product: String,
        /// Which are ticked, from 0.
        ticked: Vec<u32>,
        /// Which were corrected.
        corrected: Vec<Correction>,
    }
}

/// The values of findings as a person typed them, by the place of the finding.
pub type Corrections = BTreeMap<usize, Vec<String>>;

/// Tells findings of one text from others of the same: another language knows other statements.
pub fn told_apart(sheet: &Sheet) -> String {
    let lines: Vec<String> = sheet.findings.iter().map(|finding| finding.line.to_string()).collect();
    checksum(&lines.join(" "))
}

impl Pasted {
    /// Something is typed; what was looked through before stays known.
    ///
    /// ```
    /// use brimline::form::pasted::Pasted;
    /// use brimline::site::sheet::Sheet;
    /// let mut pasted = Pasted::default();
    /// pasted.look("H314".to_owned(), "neutral", &Sheet::default());
    /// pasted.type_in("H315".to_owned());
    /// assert_eq!((pasted.text.as_str(), pasted.looked_through()), ("H315", Some("H314")));
    /// pasted.type_in("H314".to_owned());
    /// assert_eq!((pasted.of.as_str(), pasted.looked_through()), ("", Some("H314")));
    /// ```
    pub fn type_in(&mut self, text: String) {
        if self.looked && self.of.is_empty() && text != self.text {
            self.of = std::mem::take(&mut self.text);
        } else if text == self.of {
            self.of.clear();
        }
        self.text = text;
    }

    /// A text is looked through for a product, by its id, and `sheet` found: nothing of it is ticked or corrected yet.
    pub fn look(&mut self, text: String, product: &str, sheet: &Sheet) {
        let (findings, product) = (told_apart(sheet), product.to_owned());
        *self = Self { text, looked: true, findings, product, ..Self::default() };
    }

    /// The text that was looked through; none where none was.
    pub fn looked_through(&self) -> Option<&str> {
        let text = if self.of.is_empty() { &self.text } else { &self.of };
        self.looked.then_some(text)
    }

    /// Whether there is nothing to keep.
    pub fn is_blank(&self) -> bool {
        self.text.is_empty() && !self.looked
    }

    /// Which findings are ticked and how they were corrected; none where `sheet` has other findings than those.
    pub fn marks(&self, sheet: &Sheet, marks: Marks) -> Option<(Vec<usize>, Corrections)> {
        let fits = |(index, values): &(usize, Vec<String>)| {
            sheet.findings.get(*index).is_some_and(|one| one.pieces(marks).len() == values.len())
        };
        let ticked = self.ticked.iter().map(|one| *one as usize).filter(|one| *one < sheet.findings.len());
        let corrected = self.corrected.iter().map(|one| (one.finding as usize, one.values.clone()));
        (self.findings == told_apart(sheet)).then(|| (ticked.collect(), corrected.filter(fits).collect()))
    }

    /// Keeps which findings of `sheet` are ticked and how they were corrected.
    pub fn mark(&mut self, sheet: &Sheet, ticked: &[usize], corrected: &Corrections) {
        let number = |index: &usize| u32::try_from(*index).unwrap_or(u32::MAX);
        self.findings = told_apart(sheet);
        self.ticked = ticked.iter().map(number).collect();
        self.corrected = corrected
            .iter()
            .map(|(index, values)| Correction { finding: number(index), values: values.clone() })
            .collect();
    }
}
