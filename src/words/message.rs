//! A reader for the part of the Fluent syntax that the resource files use: messages, placeholders,
//! and one choice by plural category a message.

use super::Plural;

/// What fills a placeholder.
#[derive(Clone, Debug, PartialEq)]
pub struct Argument {
    text: String,
    number: Option<f64>,
}

impl Argument {
    /// A text.
    pub fn text(text: impl Into<String>) -> Self {
        Self { text: text.into(), number: None }
    }

    /// Whether nothing would be read.
    pub fn is_blank(&self) -> bool {
        self.text.trim().is_empty()
    }

    /// A number, written as `text`; it can choose a plural form.
    pub fn number(number: f64, text: impl Into<String>) -> Self {
        Self { text: text.into(), number: Some(number) }
    }
}

/// A line of a resource file that is not understood.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Flaw {
    /// Its number, from 1.
    pub line: usize,
    /// It.
    pub text: String,
}

#[derive(Clone, Debug, PartialEq)]
enum Part {
    Text(String),
    Placeholder(String),
}

/// One message.
#[derive(Clone, Debug, PartialEq)]
pub struct Message(Shape);

#[derive(Clone, Debug, PartialEq)]
enum Shape {
    Plain(Vec<Part>),
    Plural { rule: Plural, by: String, variants: Vec<(String, Vec<Part>)>, usual: usize },
}

impl Message {
    /// Its text. A placeholder without an argument is shown by its name.
    pub fn format(&self, arguments: &[(&str, Argument)]) -> String {
        let argument =
            |name: &str| arguments.iter().find(|(key, _)| *key == name).map(|(_, argument)| argument);
        let parts = match &self.0 {
            Shape::Plain(parts) => parts,
            Shape::Plural { rule, by, variants, usual } => {
                let number = argument(by).and_then(|argument| argument.number);
                let category = number.map_or("other", |number| rule.category(number));
                let chosen = variants.iter().position(|(name, _)| name == category).unwrap_or(*usual);
                &variants[chosen].1
            }
        };
        parts.iter().fold(String::new(), |mut out, part| {
            match part {
                Part::Text(text) => out.push_str(text),
                Part::Placeholder(name) => {
                    if let Some(argument) = argument(name) {
                        out.push_str(&argument.text);
                    } else {
                        out.push('$');
                        out.push_str(name);
                    }
                }
            }
            out
        })
    }

    /// The names of its placeholders.
    pub fn placeholders(&self) -> Vec<&str> {
        match &self.0 {
            Shape::Plain(parts) => names(parts).collect(),
            Shape::Plural { by, variants, .. } => std::iter::once(by.as_str())
                .chain(variants.iter().flat_map(|(_, parts)| names(parts)))
                .collect(),
        }
    }
}

fn names(parts: &[Part]) -> impl Iterator<Item = &str> {
    parts.iter().filter_map(|part| match part {
        Part::Placeholder(name) => Some(name.as_str()),
        Part::Text(_) => None,
    })
}

/// Reads all messages of a resource file, in the order of their keys.
pub(super) fn read(resource: &str, rule: Plural) -> Result<Vec<(String, Message)>, Flaw> {
    let mut messages: Vec<(String, Message)> = Vec::new();
    let mut lines = resource.lines().enumerate();
    while let Some((index, line)) = lines.next() {
        if line.trim().is_empty() || line.starts_with('#') {
            continue;
        }
        let flaw = || Flaw { line: index + 1, text: line.to_owned() };
        let (key, value) = line.split_once('=').ok_or_else(flaw)?;
        let (key, value) = (key.trim(), value.trim());
        let is_key = key.starts_with(|c: char| c.is_ascii_alphabetic())
            && key.chars().all(|c| c.is_ascii_alphanumeric() || c == '-' || c == '_');
        if !is_key || value.is_empty() {
            return Err(flaw());
        }
        let shape = match value.strip_prefix("{ $").and_then(|rest| rest.strip_suffix("->")) {
            Some(by) => plural(rule, by.trim(), &mut lines).ok_or_else(flaw)?,
            None => Shape::Plain(parts(value).ok_or_else(flaw)?),
        };
        match messages.binary_search_by(|(one, _)| one.as_str().cmp(key)) {
            Ok(_) => return Err(flaw()),
            Err(index) => messages.insert(index, (key.to_owned(), Message(shape))),
        }
    }
    Ok(messages)
}

/// The variants after `{ $n ->`, one a line, the usual one marked `*`, up to the closing brace.
fn plural<'a>(rule: Plural, by: &str, lines: &mut impl Iterator<Item = (usize, &'a str)>) -> Option<Shape> {
    let mut variants = Vec::new();
    let mut usual = None;
    for (_, line) in lines.by_ref() {
        let line = line.trim();
        if line == "}" {
            return Some(Shape::Plural { rule, by: by.to_owned(), variants, usual: usual? });
        }
        let (line, is_usual) = line.strip_prefix('*').map_or((line, false), |rest| (rest, true));
        let (name, value) = line.strip_prefix('[')?.split_once(']')?;
        if is_usual {
            usual = Some(variants.len());
        }
        variants.push((name.to_owned(), parts(value.trim())?));
    }
    None
}

/// Text and `{ $placeholders }`.
fn parts(value: &str) -> Option<Vec<Part>> {
    let mut out = Vec::new();
    let mut rest = value;
    while let Some((before, inside)) = rest.split_once('{') {
        let (name, after) = inside.split_once('}')?;
        let name = name.trim();
        if !before.is_empty() {
            out.push(Part::Text(before.to_owned()));
        }
        // A quoted text keeps a space or a brace that the syntax would take.
        match (name.strip_prefix('$'), name.strip_prefix('"').and_then(|text| text.strip_suffix('"'))) {
            (Some(name), _) => out.push(Part::Placeholder(name.to_owned())),
            (None, Some(text)) => out.push(Part::Text(text.to_owned())),
            (None, None) => return None,
        }
        rest = after;
    }
    if rest.contains('}') {
        return None;
    }
    if !rest.is_empty() {
        out.push(Part::Text(rest.to_owned()));
    }
    Some(out)
}
