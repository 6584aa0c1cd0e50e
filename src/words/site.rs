//! What a site keeps, record by record, in words: names of fields, values, and what is different between two sites.
//!
//! Whatever a document declares can be told; a test walks the shape of a site and finds what has no words.

use super::{Argument, Words};
use crate::shape::{Shape, Shaped};
use crate::site::passing::{Change, NoNumber, REFERENCES, What};
use crate::site::{Entry, Record, Site};
use serde_json::Value;

/// What choices are called, by the field that holds them: how their word keys begin.
pub const CHOICES: &[(&str, &str)] = &[
    ("aim", "range"),
    ("around", "around"),
    ("dispenser", "dispenser"),
    ("families", "family"),
    ("film", "film"),
    ("foam", "foam-class"),
    ("joints", "joints"),
    ("place", "place"),
    ("porosity", "porosity"),
    ("reserve", "reserve"),
    ("signal", "ghs-signal"),
    ("soil", "soil"),
    ("standing", "standing"),
    ("surface", "surface"),
    ("system", "units"),
    ("texture", "texture"),
];

/// The word key of one record of a list; of the site itself where there is no list.
pub fn singular(list: &str) -> &str {
    match list {
        "" => "site",
        "finishes" => "finish",
        // Parts of records.
        "tests" => "catch",
        "patches" => "patch",
        other => other.strip_suffix('s').unwrap_or(other),
    }
}

impl Words {
    /// One of the kinds of records.
    pub fn list_name(&self, list: &str) -> String {
        self.say(singular(list))
    }

    /// What a field of a record is called: in a comparison, or at its input.
    ///
    /// * `list`: the list of the record, or the field that holds a part of one; empty for the site itself.
    ///
    /// ```
    /// use brimline::words::Words;
    /// let words = Words::english();
    /// assert_eq!(words.field_name("machines", "tank"), "Solution tank");
    /// assert_eq!(words.field_name("standards", "standing"), "Where it stands");
    /// ```
    pub fn field_name(&self, list: &str, field: &str) -> String {
        let field = field.replace('_', "-");
        let of = singular(list);
        let keys = [
            format!("told-{of}-{field}"),
            format!("told-{field}"),
            format!("{of}-{field}"),
            format!("field-{field}"),
        ];
        keys.iter().find_map(|key| self.find(key)).unwrap_or_else(|| self.say("told-field"))
    }

    /// One of the choices of a field.
    pub fn choice_name(&self, field: &str, code: &str) -> String {
        let start = CHOICES.iter().find(|(of, _)| *of == field).map_or(field, |(_, start)| start);
        let keys = [format!("{start}-{}", code.replace('_', "-")), format!("{start}-{code}")];
        keys.iter().find_map(|key| self.find(key)).unwrap_or_else(|| self.say("told-choice"))
    }

    /// The heading of a warning by its code, which a standard keeps where one was let pass.
    pub fn finding_name(&self, code: &str) -> String {
        let titled = self.find(&format!("{code}-title"));
        // What needs no heading of its own is a short sentence; one with numbers in it has none without them.
        let plain = || self.find(code).filter(|_| self.placeholders(code).is_empty());
        titled.or_else(plain).unwrap_or_else(|| self.say("told-warning"))
    }

    /// A record by what people call it: its own name, else what it is about.
    pub fn record_name(&self, site: &Site, list: &str, id: &str) -> Option<String> {
        fn named<T: Record>(all: &[T], id: &str) -> Option<String> {
            all.iter().find(|one| one.id() == id).map(|one| one.name().trim().to_owned())
        }
        let own = |name: String, floor: &str| match named(&site.floors, floor) {
            Some(floor) if name.is_empty() => floor,
            _ => name,
        };
        match list {
            "machines" => named(&site.machines, id),
            "products" => named(&site.products, id),
            "floors" => named(&site.floors, id),
            "measures" => named(&site.measures, id),
            "areas" => named(&site.areas, id),
            "finishes" => named(&site.finishes, id),
            "trials" => site
                .trials
                .iter()
                .find(|one| one.id == id)
                .map(|one| own(one.name.trim().to_owned(), &one.floor)),
            "standards" => site.standards.iter().find(|one| one.id == id).map(|one| {
                let name = Argument::text(own(one.name.trim().to_owned(), &one.floor));
                let version = Argument::text(one.version.to_string());
                self.tell("standard-title", &[("name", name), ("version", version)])
            }),
            _ => None,
        }
        .filter(|name| !name.is_empty())
    }

    /// A record with its kind, in the newer of two sites where that has it; the site itself by its own word.
    pub fn record_of(&self, (older, newer): (&Site, &Site), list: &str, id: &str) -> String {
        if list.is_empty() {
            return self.say("passing-site");
        }
        let found = [newer, older].into_iter().find_map(|site| self.record_name(site, list, id));
        let name = found.unwrap_or_else(|| self.say("told-nameless"));
        format!("{} “{name}”", self.list_name(list))
    }

    /// What a field of a site says, as people read it.
    pub fn told(&self, site: &Site, list: &str, field: &str, value: &Value) -> String {
        let shape = match list {
            "" => within(Site::SHAPE, field),
            list => within(Site::SHAPE, list).and_then(|records| within(records, field)),
        };
        let target =
            REFERENCES.iter().find(|row| row.list == list && row.field == field).map(|row| row.target);
        let text = match (target, value.as_str(), shape) {
            (Some(target), Some(id), _) if !id.is_empty() => {
                self.record_name(site, target, id).unwrap_or_else(|| self.say("told-nameless"))
            }
            // A checksum tells nobody anything but that it is another one.
            _ if field == "proved" => String::new(),
            (_, _, Some(shape)) => self.told_as(site, shape, field, value),
            _ => String::new(),
        };
        if text.trim().is_empty() { self.say("passing-nothing") } else { text }
    }

    fn told_as(&self, site: &Site, shape: &Shape, field: &str, value: &Value) -> String {
        match (shape, value) {
            (_, Value::Bool(yes)) => self.say(if *yes { "yes" } else { "no" }),
            (Shape::Choice(_), Value::String(code)) => self.choice_name(field, code),
            (Shape::List(shape), Value::Array(all)) => {
                let by = if matches!(shape, Shape::Object { .. }) && !is_entry(shape) { "; " } else { ", " };
                let told =
                    all.iter().map(|one| self.told_as(site, shape, field, one)).filter(|one| !one.is_empty());
                told.collect::<Vec<_>>().join(by)
            }
            (Shape::Object { .. }, Value::Object(_)) if is_entry(shape) => {
                let part = |part: &str| value.get(part).and_then(Value::as_str).unwrap_or_default();
                self.entry(&Entry::new(part("text"), part("unit")))
            }
            (Shape::Object { .. }, Value::Object(_)) if field == "overrides" => {
                let part = |part: &str| value.get(part).and_then(Value::as_str).unwrap_or_default();
                format!("{} ({})", self.finding_name(part("finding")), part("reason"))
            }
            (Shape::Object { .. }, Value::Object(_)) if field == "leaves_out" => {
                let part = |part: &str| value.get(part).and_then(Value::as_str).unwrap_or_default();
                let machine = self.record_name(site, "machines", part("machine"));
                format!("{} ({})", machine.unwrap_or_else(|| self.say("told-nameless")), part("reason"))
            }
            (Shape::Object { fields, .. }, Value::Object(parts)) => {
                let told = fields.iter().filter_map(|(part, shape)| {
                    let text = self.told_as(site, shape, part, parts.get(*part)?);
                    (!text.is_empty()).then(|| self.said_of(&self.field_name(field, part), &text))
                });
                told.collect::<Vec<_>>().join(", ")
            }
            (_, Value::String(text)) => text.clone(),
            (_, Value::Number(number)) => number.to_string(),
            _ => String::new(),
        }
    }

    /// One change in a line; `wrong` is what is no number in it.
    pub fn change(&self, sites: (&Site, &Site), change: &Change, wrong: &[NoNumber]) -> String {
        let of = ("record", Argument::text(self.record_of(sites, &change.list, &change.id)));
        let told = match &change.what {
            What::Added { .. } | What::Removed => self.tell(change.code(), &[of]),
            What::Moved { from, to } => {
                let number = |number: usize| Argument::number(number as f64, number.to_string());
                self.tell(change.code(), &[of, ("from", number(*from)), ("to", number(*to))])
            }
            What::Field { field, .. } if field == "proved" => self.tell("change-proved", &[of]),
            What::Field { field, before, after } => {
                let value = |site, value| Argument::text(self.told(site, &change.list, field, value));
                let name = ("field", Argument::text(self.field_name(&change.list, field)));
                let before = ("before", value(sites.0, before));
                self.tell(change.code(), &[of, name, before, ("after", value(sites.1, after))])
            }
        };
        if wrong.is_empty() {
            return told;
        }
        let places: Vec<String> = wrong
            .iter()
            .map(|one| {
                let name = self.field_name(&one.of, &one.field);
                self.tell(
                    "change-no-number",
                    &[("field", Argument::text(name)), ("text", Argument::text(one.text.trim()))],
                )
            })
            .collect();
        format!("{told} {}", places.join(" "))
    }
}

/// The shape behind a field; of a list, behind the field of its records.
fn within(shape: &'static Shape, field: &str) -> Option<&'static Shape> {
    match shape {
        Shape::List(shape) => within(shape, field),
        Shape::Object { fields, .. } => {
            fields.iter().find(|(name, _)| *name == field).map(|(_, shape)| *shape)
        }
        _ => None,
    }
}

fn is_entry(shape: &Shape) -> bool {
    std::ptr::eq(shape, Entry::SHAPE)
        || matches!(shape, Shape::Object { fields, .. } if fields.len() == 2 && fields[0].0 == "text" && fields[1].0 == "unit")
}
