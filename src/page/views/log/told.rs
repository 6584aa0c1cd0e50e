//! The log in words: a record, its time, what is wrong with it.

use crate::answer::Value;
use crate::page::log::Trouble;
use crate::page::shared::Shared;
use crate::page::views::site::refusal;
use crate::site::log::{Broken, Current, Fill, Flaw, Kind, Record, When, Why};
use crate::units::{Kind as Shown, VolumeFraction};
use crate::words::Argument;

/// A time as the clock on the wall had it, hours and minutes.
pub fn clock(when: &str) -> String {
    when.get(11..16).unwrap_or(when).to_owned()
}

/// A day and a time.
pub fn moment(shared: &Shared, when: &str) -> String {
    if When::read(when).is_none() { when.to_owned() } else { shared.moment(when) }
}

/// A fill in one line.
pub fn title(shared: &Shared, one: &Current) -> String {
    let number = one.id.number.to_string();
    let told = [
        ("number", Argument::text(number)),
        ("when", Argument::text(moment(shared, &one.said))),
        ("product", Argument::text(&*one.fill.product.name)),
        ("machine", Argument::text(&*one.fill.machine.name)),
    ];
    shared.tell("log-title", &told)
}

/// The record of a line that was not kept.
pub fn of_line(shared: &Shared, line: &str) -> String {
    serde_json::from_str(line).map_or_else(|_| String::new(), |found| record(shared, &found))
}

/// A record in one line.
pub fn record(shared: &Shared, record: &Record) -> String {
    let fill = &record.fill;
    let parts = match record.kind {
        Kind::Fill => vec![
            moment(shared, &record.when),
            fill.product.name.to_string(),
            fill.machine.name.to_string(),
            fill.concentrate.text.to_string(),
            measured(shared, fill),
            record.words.who.text.clone(),
        ],
        _ => vec![
            moment(shared, &record.when),
            shared.say(&format!("log-kind-{}", record.kind.code())),
            record.of.clone(),
        ],
    };
    parts.into_iter().filter(|part| !part.is_empty()).collect::<Vec<_>>().join(" · ")
}

/// What was measured out, where anybody did.
fn measured(shared: &Shared, fill: &Fill) -> String {
    let text = &fill.measured.text;
    if text.is_empty() {
        String::new()
    } else {
        shared.tell("log-measured-told", &[("text", Argument::text(&**text))])
    }
}

/// A share above or below the plan, with its sign.
pub fn share(shared: &Shared, share: f64) -> String {
    let sign = if share < 0.0 { "−" } else { "+" };
    format!("{sign}{}", shared.show(Value::new(VolumeFraction::new(share.abs()), Shown::Percent)))
}

/// Tasks by their codes, in words.
pub fn tasks(shared: &Shared, codes: &[&str]) -> String {
    codes.iter().map(|code| shared.say(&format!("log-task-{code}"))).collect::<Vec<_>>().join(", ")
}

/// Why the log could not be opened, or a record not be kept.
pub fn trouble(shared: &Shared, trouble: &Trouble) -> String {
    match trouble {
        Trouble::Refused(found) => flaw(shared, found),
        Trouble::Failed(text) => shared.tell(trouble.code(), &[("text", Argument::text(text.clone()))]),
        _ => shared.say(trouble.code()),
    }
}

/// Why a record is not taken.
pub fn flaw(shared: &Shared, flaw: &Flaw) -> String {
    let text = |text: &str| [("text", Argument::text(text))];
    match flaw {
        Flaw::Json(found) => refusal(shared, found),
        Flaw::LongLine(bytes) => shared.tell(flaw.code(), &text(&bytes.to_string())),
        Flaw::Device(found) | Flaw::When(found) | Flaw::Of(found) => shared.tell(flaw.code(), &text(found)),
        Flaw::Number(number) => shared.tell(flaw.code(), &text(&number.to_string())),
        Flaw::Hash(field) | Flaw::Stray(field) | Flaw::Lesson(field) => {
            shared.tell(flaw.code(), &text(field))
        }
        Flaw::Unknown(id) | Flaw::NotAFill(id) | Flaw::NothingToErase(id) => {
            shared.tell(flaw.code(), &text(&id.to_string()))
        }
        Flaw::CutOff | Flaw::Kind | Flaw::NothingChanged | Flaw::Nobody => shared.say(flaw.code()),
    }
}

/// Where a chain does not hold, why, and what to do.
pub fn broken(shared: &Shared, broken: &Broken, advice: &str) -> String {
    let part = match &broken.why {
        Why::WordsAltered(part) | Why::WordsGone(part) => shared.say(&format!("log-part-{}", part.code())),
        _ => String::new(),
    };
    let why = shared.tell(broken.why.code(), &[("part", Argument::text(part))]);
    let id = Argument::text(broken.id.to_string());
    format!("{} {why} {}", shared.tell("log-broken", &[("id", id)]), shared.say(advice))
}

/// A whole number as an argument, every digit of it.
pub fn count(shared: &Shared, n: usize) -> Argument {
    Argument::number(n as f64, crate::number::write(n as f64, 15, shared.marks()))
}
