//! Whether JSON is what a document is written as.

use super::{Json, MOST_CHARACTERS, MOST_ENTRIES, Reason, Refusal};
use crate::shape::Shape;
use serde_json::Value;
use std::fmt::Write;

/// What is done with a field that the shape does not have.
#[derive(Clone, Copy, PartialEq, Eq)]
pub(in crate::site) enum Unknown {
    /// It is passed over, as the readers of documents do.
    PassedOver,
    /// It is refused.
    Refused,
}

/// Holds a value to a shape, from the top down and in the order of the fields. A field that is missing is
/// none that is wrong: earlier versions knew fewer.
///
/// * `path`: where the value stands, for the refusal.
pub(in crate::site) fn check(
    value: &Value,
    shape: &Shape,
    path: &str,
    unknown: Unknown,
) -> Result<(), Refusal> {
    Walk { path: path.to_owned(), unknown }.check(value, shape)
}

struct Walk {
    path: String,
    unknown: Unknown,
}

impl Walk {
    fn refuse<T>(&self, reason: Reason) -> Result<T, Refusal> {
        Err(Refusal::at(&self.path, reason))
    }

    fn within(&mut self, value: &Value, shape: &Shape, step: std::fmt::Arguments) -> Result<(), Refusal> {
        let outside = self.path.len();
        let _ = self.path.write_fmt(step);
        self.check(value, shape)?;
        self.path.truncate(outside);
        Ok(())
    }

    fn check(&mut self, value: &Value, shape: &Shape) -> Result<(), Refusal> {
        match (shape, value) {
            (Shape::Any, _)
            | (Shape::Flag, Value::Bool(_))
            | (Shape::Number, Value::Number(_))
            | (Shape::Perhaps, Value::Number(_) | Value::Null) => Ok(()),
            (Shape::Text, Value::String(text)) => self.text(text),
            (Shape::Choice(codes), Value::String(code)) if codes.contains(&code.as_str()) => Ok(()),
            (Shape::Choice(_), Value::String(code)) => self.refuse(Reason::Choice(code.clone())),
            (Shape::List(_), Value::Array(list)) if list.len() > MOST_ENTRIES => {
                self.refuse(Reason::LongList(list.len()))
            }
            (Shape::List(shape), Value::Array(list)) => list
                .iter()
                .enumerate()
                .try_for_each(|(index, value)| self.within(value, shape, format_args!("[{index}]"))),
            (Shape::Object { fields, .. }, Value::Object(object)) => {
                for (field, shape) in *fields {
                    if let Some(value) = object.get(*field) {
                        self.within(value, shape, format_args!(".{field}"))?;
                    }
                }
                let known = |key: &str| fields.iter().any(|(field, _)| *field == key);
                match object.keys().find(|key| self.unknown == Unknown::Refused && !known(key)) {
                    Some(key) => Err(Refusal::at(format!("{}.{key}", self.path), Reason::UnknownField)),
                    None => Ok(()),
                }
            }
            _ => self.refuse(Reason::Type { expected: expected(shape), found: Json::of(value) }),
        }
    }

    fn text(&self, text: &str) -> Result<(), Refusal> {
        // No text has more characters than bytes, and counting is the slower of the two.
        if text.len() > MOST_CHARACTERS {
            let characters = text.chars().count();
            if characters > MOST_CHARACTERS {
                return self.refuse(Reason::LongText(characters));
            }
        }
        text.chars().find(|one| is_hidden(*one)).map_or(Ok(()), |one| self.refuse(Reason::Hidden(one)))
    }
}

fn expected(shape: &Shape) -> Json {
    match shape {
        Shape::Flag => Json::Flag,
        Shape::Number | Shape::Perhaps => Json::Number,
        Shape::List(_) => Json::List,
        Shape::Object { .. } => Json::Object,
        Shape::Text | Shape::Choice(_) | Shape::Any => Json::Text,
    }
}

/// Control characters but those of lines and tabs, and the two that force a direction upon what follows
/// (Unicode Standard Annex 9, overrides): behind one, a dose of 12 shows as 21.
fn is_hidden(character: char) -> bool {
    let lines = matches!(character, '\n' | '\r' | '\t');
    character.is_control() && !lines || matches!(character, '\u{202d}' | '\u{202e}')
}
