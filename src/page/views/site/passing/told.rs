//! What passing a site on says, in words: refusals with their place, and why a device stays with what it has.

use crate::page::shared::Shared;
use crate::site::passing::{Place, Reason, Refusal, Why};
use crate::words::Argument;

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
            shared.tell(code, &[("text", text(id)), ("list", Argument::text(shared.words.list_name(list)))])
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
        Why::Older { edition, taken } => {
            let number = |number: u32| Argument::text(number.to_string());
            shared.tell(why.code(), &[("edition", number(*edition)), ("taken", number(*taken))])
        }
        Why::Broken { step } => shared.tell(why.code(), &[("step", Argument::text(step.to_string()))]),
        Why::Unsigned | Why::Altered => shared.say(why.code()),
    }
}
