//! What passing a site on says, in words: refusals with their place, changes, values.

use crate::page::shared::Shared;
use crate::site::passing::{Change, Place, Reason, Refusal, What, Why, readable};
use crate::units::unit;
use crate::words::Argument;
use serde_json::Value;

/// Why a file is refused, and where.
pub fn refusal(shared: &Shared, refusal: &Refusal) -> String {
    let text = |text: &str| Argument::text(text);
    let number = |number: usize| Argument::number(number as f64, number.to_string());
    let place = match &refusal.place {
        Place::Path(path) => shared.tell("place-path", &[("path", text(path))]),
        Place::Line { line, column } => {
            shared.tell("place-line", &[("line", number(*line)), ("column", number(*column))])
        }
        Place::Bytes(bytes) => shared.tell("place-bytes", &[("n", number(*bytes))]),
    };
    let code = refusal.code();
    let reason = match &refusal.reason {
        Reason::TooLarge(most) | Reason::LongText(most) | Reason::LongList(most) => {
            shared.tell(code, &[("n", number(*most))])
        }
        Reason::Later { schema, known } => {
            let numbers = [("schema", text(&schema.to_string())), ("known", text(&known.to_string()))];
            shared.tell(code, &numbers)
        }
        Reason::Type { expected, found } => {
            let kinds = [
                ("expected", Argument::text(shared.say(expected.code()))),
                ("found", Argument::text(shared.say(found.code()))),
            ];
            shared.tell(code, &kinds)
        }
        Reason::Choice(word) | Reason::SameId(word) | Reason::Unreadable(word) => {
            shared.tell(code, &[("text", text(word))])
        }
        Reason::Hidden(character) => {
            shared.tell(code, &[("text", Argument::text(format!("U+{:04X}", u32::from(*character))))])
        }
        Reason::Nowhere { id, list } => {
            shared.tell(code, &[("text", text(id)), ("list", Argument::text(list_name(shared, list)))])
        }
        Reason::Circle(ids) => shared.tell(code, &[("text", text(&ids.join(", ")))]),
        _ => shared.say(code),
    };
    format!("{place} {reason}")
}

/// Why a site is not admitted on this device.
pub fn why(shared: &Shared, why: &Why) -> String {
    match why {
        Why::OtherKey { by, pinned } => {
            let keys =
                [("by", Argument::text(by.fingerprint())), ("pinned", Argument::text(pinned.fingerprint()))];
            shared.tell(why.code(), &keys)
        }
        Why::Unsigned | Why::Altered => shared.say(why.code()),
    }
}

/// One of the kinds of records.
pub fn list_name(shared: &Shared, list: &str) -> String {
    shared.words.find(singular(list)).unwrap_or_else(|| list.to_owned())
}

/// The word key of one record of a list.
fn singular(list: &str) -> &str {
    match list {
        "finishes" => "finish",
        other => other.strip_suffix('s').unwrap_or(other),
    }
}

/// What a record is called: its kind and its name; the site itself by its own word.
pub fn record(shared: &Shared, list: &str, name: &str) -> String {
    if list.is_empty() {
        shared.say("passing-site")
    } else {
        format!("{} “{name}”", list_name(shared, list))
    }
}

/// What a field of a record is called: the label of its input where there is one.
pub fn field(shared: &Shared, list: &str, field: &str) -> String {
    let dashed = field.replace('_', "-");
    let own = format!("{}-{dashed}", singular(if list.is_empty() { "site" } else { list }));
    shared
        .words
        .find(&own)
        .or_else(|| shared.words.find(&format!("field-{dashed}")))
        .unwrap_or_else(|| field.replace('_', " "))
}

/// A value as people read it: a number with the symbol of its unit, yes and no in words.
pub fn value(shared: &Shared, value: &Value) -> String {
    match value {
        Value::Bool(yes) => shared.say(if *yes { "yes" } else { "no" }),
        Value::Object(parts)
            if parts.len() == 2 && parts.contains_key("text") && parts.contains_key("unit") =>
        {
            let text = parts["text"].as_str().unwrap_or_default();
            let symbol = parts["unit"].as_str().and_then(unit).map_or("", |unit| unit.symbol);
            if text.is_empty() { shared.say("passing-nothing") } else { format!("{text}\u{202f}{symbol}") }
        }
        Value::Array(all) => {
            match all.iter().map(|one| self::value(shared, one)).collect::<Vec<_>>().join(", ") {
                none if none.is_empty() => shared.say("passing-nothing"),
                some => some,
            }
        }
        other => match readable(other) {
            none if none.is_empty() => shared.say("passing-nothing"),
            some => some,
        },
    }
}

/// One change in a line.
pub fn change(shared: &Shared, change: &Change) -> String {
    let of = ("record", Argument::text(record(shared, &change.list, &change.name)));
    match &change.what {
        What::Added { .. } | What::Removed => shared.tell(change.code(), &[of]),
        What::Moved { from, to } => {
            let number = |number: usize| Argument::number(number as f64, number.to_string());
            shared.tell(change.code(), &[of, ("from", number(*from)), ("to", number(*to))])
        }
        What::Field { field: name, before, after } => {
            let parts = [
                of,
                ("field", Argument::text(field(shared, &change.list, name))),
                ("before", Argument::text(value(shared, before))),
                ("after", Argument::text(value(shared, after))),
            ];
            shared.tell(change.code(), &parts)
        }
    }
}
