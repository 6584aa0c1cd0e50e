//! A product from the pasted text of its safety data sheet: what is found stands beside its line, and is taken
//! only where a person ticked it.

use crate::form::Action;
use crate::page::shared::Shared;
use crate::site::sheet::{Disagreement, Doubt, Finding, Gear, Of, Sheet, Span, Statements, What, read, take};
use crate::words::Argument;
use std::rc::Rc;
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

#[derive(Properties, PartialEq)]
pub struct SheetReaderProps {
    /// What every part needs.
    pub shared: Shared,
}

/// A component, since it remembers what was pasted, found and ticked.
#[component]
pub fn SheetReader(props: &SheetReaderProps) -> Html {
    let shared = &props.shared;
    let pasted = use_node_ref();
    let found = use_state(|| None::<Rc<Sheet>>);
    let ticked = use_state(Vec::<usize>::new);
    let onread = {
        let (shared, pasted, found, ticked) = (shared.clone(), pasted.clone(), found.clone(), ticked.clone());
        move |_: MouseEvent| {
            let Some(area) = pasted.cast::<HtmlTextAreaElement>() else { return };
            let statements = Statements::of(|key| shared.words.find(key));
            found.set(Some(Rc::new(read(&area.value(), &statements))));
            ticked.set(Vec::new());
        }
    };
    let ontake = {
        let (shared, found, ticked) = (shared.clone(), found.clone(), ticked.clone());
        move |_: MouseEvent| {
            let Some(sheet) = &*found else { return };
            let accepted: Vec<Finding> =
                ticked.iter().filter_map(|index| sheet.findings.get(*index).cloned()).collect();
            let mut typed = (*shared.typed).clone();
            if let Some(product) = typed.product_mut() {
                *product = take(product, &accepted, shared.marks());
                shared.act.emit(Action::Replace(Box::new(typed)));
            }
            found.set(None);
            ticked.set(Vec::new());
        }
    };
    let line = |(index, finding): (usize, &Finding)| {
        let ticked = ticked.clone();
        let on = ticked.contains(&index);
        let onchange = move |event: Event| {
            let mut next: Vec<usize> = ticked.iter().copied().filter(|one| *one != index).collect();
            if event.target_unchecked_into::<HtmlInputElement>().checked() {
                next.push(index);
            }
            ticked.set(next);
        };
        let name = format!("sheet-{}", index + 1);
        html! {
            <li>
                <label class="switch">
                    <input type="checkbox" id={name.clone()} {name} checked={on} {onchange} />
                    <span><strong>{ told(shared, &finding.what) }</strong></span>
                </label>
                <p class="hint">{ place(shared, finding) }</p>
                { for finding.doubts.iter().map(|doubt| html! { <p class="unknown">{ doubt_text(shared, *doubt) }</p> }) }
            </li>
        }
    };
    html! {
        <>
            <p>{ shared.say("sheet-hint") }</p>
            <div class="field">
                <label for="sheet-text">{ shared.say("sheet-text") }</label>
                <textarea id="sheet-text" name="sheet-text" rows="6" ref={pasted} />
            </div>
            <div class="buttons">
                <button type="button" name="sheet-read" onclick={onread}>{ shared.say("sheet-read") }</button>
            </div>
            if let Some(sheet) = (*found).clone() {
                <div role="status">{ summary(shared, &sheet) }</div>
                { for sheet.clashes.iter().map(|clash| html! { <p class="mistake">{ clash_text(shared, clash.what) }</p> }) }
                <ol class="findings">{ for sheet.findings.iter().enumerate().map(line) }</ol>
                if !sheet.findings.is_empty() {
                    <div class="buttons">
                        <button type="button" name="sheet-take" onclick={ontake} disabled={ticked.is_empty()}>
                            { shared.tell("sheet-take", &[("n", Argument::number(ticked.len() as f64, ticked.len().to_string()))]) }
                        </button>
                    </div>
                }
            }
        </>
    }
}

fn summary(shared: &Shared, sheet: &Sheet) -> String {
    let count = Argument::number(sheet.findings.len() as f64, sheet.findings.len().to_string());
    let mut told = vec![shared.tell("sheet-found", &[("n", count)])];
    let missing: Vec<String> = sheet.missing().iter().map(u8::to_string).collect();
    if !missing.is_empty() {
        told.push(shared.tell("sheet-missing", &[("sections", Argument::text(missing.join(", ")))]));
    }
    if sheet.cut {
        told.push(shared.say("sheet-cut"));
    }
    told.join(" ")
}

/// Where a finding stands: its line, as it was pasted.
fn place(shared: &Shared, finding: &Finding) -> String {
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
fn told(shared: &Shared, what: &What) -> String {
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
            let symbol = crate::units::unit(unit).map(|unit| unit.symbol).unwrap_or_default();
            let density = format!("{} {symbol}", span_text(shared, *span));
            shared.tell("sheet-density", &[("density", text(density))])
        }
        What::Un(number) => shared.tell("sheet-un", &[("number", text(number.to_string()))]),
        What::NotRegulated => shared.say("sheet-not-regulated"),
    }
}

fn doubt_text(shared: &Shared, doubt: Doubt) -> String {
    shared.say(doubt.key())
}

fn clash_text(shared: &Shared, clash: Disagreement) -> String {
    shared.say(clash.key())
}
