//! What was found in a safety data sheet, in words.

use crate::page::shared::Shared;
use crate::site::sheet::{By, Finding, Gear, Harm, Ingredient, Of, Sheet, Span, What};
use crate::words::Argument;

/// What was found and what is missing, in a few sentences.
pub fn summary(shared: &Shared, sheet: &Sheet) -> String {
    let count = Argument::number(sheet.findings.len() as f64, sheet.findings.len().to_string());
    let mut told = vec![shared.tell("sheet-found", &[("n", count)])];
    let missing: Vec<String> = sheet.missing().iter().map(u8::to_string).collect();
    if !missing.is_empty() {
        told.push(shared.tell("sheet-missing", &[("sections", Argument::text(missing.join(", ")))]));
    }
    let lacks: Vec<String> = sheet.lacks().iter().map(|lack| shared.say(lack.key())).collect();
    if !lacks.is_empty() {
        told.push(shared.tell("sheet-lacks", &[("what", Argument::text(lacks.join(", ")))]));
    }
    if sheet.cut {
        told.push(shared.say("sheet-cut"));
    }
    told.join(" ")
}

/// Where a finding stands: its line, as it was pasted.
pub fn place(shared: &Shared, finding: &Finding) -> String {
    let line = Argument::text(finding.line.to_string());
    shared.tell("sheet-place", &[("line", line), ("text", Argument::text(finding.text.clone()))])
}

fn span_text(shared: &Shared, span: Span) -> String {
    let number = |value: f64| shared.words.number(value);
    match (span.is_one(), span.high.is_finite()) {
        (true, _) => number(span.low),
        (false, true) => format!("{} – {}", number(span.low), number(span.high)),
        (false, false) => format!("≥ {}", number(span.low)),
    }
}

/// What was found, in words.
pub fn told(shared: &Shared, what: &What) -> String {
    let text = |text: String| Argument::text(text);
    match what {
        What::Signal(word) => shared.tell("sheet-signal", &[("word", text(shared.say(word.key())))]),
        What::NotHazardous => shared.say("sheet-not-hazardous"),
        What::Hazard(hazard) => format!("{} {}", hazard.code, shared.say(&hazard.key())),
        What::Precaution(precaution) => format!("{} {}", precaution.code, shared.say(&precaution.key())),
        What::UnknownCode(code) => shared.tell("sheet-unknown-code", &[("code", text(code.clone()))]),
        What::Part(part) => {
            let share = part.share.map(|share| format!("{} %", span_text(shared, share))).unwrap_or_default();
            let codes: Vec<&str> = part.hazards.iter().map(|hazard| hazard.code).collect();
            let all = [part.name.as_str(), part.cas.as_str(), share.as_str(), &codes.join(" ")];
            let said: Vec<&str> = all.into_iter().filter(|one| !one.is_empty()).collect();
            shared.tell("sheet-part", &[("part", text(said.join(", ")))])
        }
        What::Protection(gear) => shared.say(match gear {
            Gear::Hands => "sheet-gear-hands",
            Gear::Eyes => "sheet-gear-eyes",
            Gear::Body => "sheet-gear-body",
            Gear::Breathing => "sheet-gear-breathing",
        }),
        What::Ph { span, of } => {
            let of = shared.say(match of {
                Of::NotSaid => "sheet-of-not-said",
                Of::Concentrate => "sheet-of-concentrate",
                Of::UseSolution => "sheet-of-use-solution",
                Of::Solution => "sheet-of-solution",
            });
            shared.tell("sheet-ph", &[("ph", text(span_text(shared, *span))), ("of", text(of))])
        }
        What::NoPh => shared.say("sheet-no-ph"),
        What::Density { span, unit } => {
            let symbol = shared.words.symbol_of(unit);
            let density = format!("{} {symbol}", span_text(shared, *span));
            shared.tell("sheet-density", &[("density", text(density))])
        }
        What::Toxicity { of, by, span } => {
            let key = if *by == By::Mouth { "sheet-toxicity-mouth" } else { "sheet-toxicity-skin" };
            let dose = format!("{} mg/kg", span_text(shared, *span));
            shared.tell(key, &[("part", text(named(of))), ("dose", text(dose))])
        }
        What::Multiplier { of, factor, harm } => {
            let key = match harm {
                Harm::Acute => "sheet-multiplier-acute",
                Harm::Chronic => "sheet-multiplier-chronic",
                Harm::NotSaid => "sheet-multiplier",
            };
            shared.tell(key, &[("part", text(named(of))), ("m", text(shared.words.number(*factor)))])
        }
        What::Un(number) => shared.tell("sheet-un", &[("number", text(number.to_string()))]),
        What::NotRegulated => shared.say("sheet-not-regulated"),
    }
}

fn named(of: &Ingredient) -> String {
    if of.name.is_empty() { of.cas.clone() } else { of.name.clone() }
}
