//! What a step says and asks, and how far the page says it is.

use super::lead;
use super::offer::STEP;
use super::panel::At;
use crate::chemistry::ghs::Knowledge;
use crate::form::cautions::panel;
use crate::page::focus;
use crate::page::keep::first_fill::change;
use crate::page::shared::Shared;
use crate::page::views::log::fields::{press, tick};
use crate::practice::first_fill::{Reason, Standing, Step};
use crate::site::Product;
use crate::site::log::Checklist;
use crate::words::Argument;
use yew::prelude::*;

fn text(text: impl Into<String>) -> Argument {
    Argument::text(text.into())
}

/// What there is to do, and what a person answers here.
pub fn asked(at: &At) -> Html {
    let (shared, step) = (at.shared, at.guide.at);
    let control = lead::controls(step, shared.locked).first().map_or("", |(key, _)| *key);
    let does = shared.tell(&step.text_key(shared.locked), &[("control", text(shared.say(control)))]);
    let more = match step {
        Step::Wear => wear(at),
        Step::Amount => amount(at),
        Step::Record => html! { <p class="unknown">{ shared.say("first-fill-record-training") }</p> },
        Step::Shift => five(shared),
        Step::Product | Step::Floor => again(at),
        Step::Machine | Step::Level => Html::default(),
    };
    html! { <><p>{ does }</p>{ more }</> }
}

/// What to wear for the product that is chosen.
fn list(shared: &Shared, product: &Product) -> Html {
    let panel = panel(product);
    let wear: Vec<String> = panel.advice.ppe().map(|one| shared.say(one.key())).collect();
    let named = ("product", text(&*product.name));
    html! {
        <>
            if !wear.is_empty() {
                <p>{ shared.tell("first-fill-wear-list", &[named.clone(), ("wear", text(wear.join("; ")))]) }</p>
            } else if panel.knowledge != Knowledge::Partial {
                <p>{ shared.tell("first-fill-wear-none", std::slice::from_ref(&named)) }</p>
            }
            if panel.knowledge == Knowledge::Partial {
                <p class="unknown">{ shared.tell("first-fill-wear-unknown", &[named]) }</p>
            }
        </>
    }
}

fn wear(at: &At) -> Html {
    let Some(product) = at.seen.typed.product() else { return Html::default() };
    // Where nothing is to be put on the label is read all the same.
    let asks = panel(product).advice.ppe().next().is_some();
    let said = if asks { "first-fill-wear-on" } else { "first-fill-wear-read" };
    let on = {
        let product = product.clone();
        move |on| change(|guide| guide.put_on(&product, on))
    };
    html! {
        <>
            { list(at.shared, product) }
            { tick("first-fill-wear-on".to_owned(), at.shared.say(said), at.guide.is_on(product), on) }
        </>
    }
}

/// Another product asks for other things: what was put on before is looked at again.
fn again(at: &At) -> Html {
    let Some(product) = at.seen.typed.product().filter(|one| at.guide.is_on_for_another(one)) else {
        return Html::default();
    };
    let own = at.shared.clone();
    let back = move || {
        change(|guide| guide.go_to(Step::Wear));
        lead::show(&own, Step::Wear);
        focus::soon(STEP.to_owned());
    };
    html! {
        <div data-again="wear">
            <p class="unknown">{ at.shared.say("first-fill-wear-again") }</p>
            { list(at.shared, product) }
            <div class="buttons">{ press(at.shared, "first-fill-wear-again-go", back) }</div>
        </div>
    }
}

/// The amount, and why water goes first.
fn amount(at: &At) -> Html {
    let (shared, guide) = (at.shared, at.guide);
    let said = guide.reason.first().copied();
    let choice = |one: &Reason| {
        let (one, is) = (*one, said == Some(*one));
        let id = format!("first-fill-why-{}", one.code());
        let onchange = move |_: Event| change(|guide| guide.say(one));
        html! {
            <label class="switch">
                <input type="radio" id={id.clone()} name="first-fill-why" value={one.code()} checked={is} {onchange} />
                <span>{ shared.say(&id) }</span>
            </label>
        }
    };
    let answer = said.map(|one| if one.is_right() { "first-fill-why-right" } else { "first-fill-why-wrong" });
    let stands = !matches!(at.standing(), Standing::Lacks | Standing::Stopped);
    html! {
        <>
            if stands { <p><strong>{ shared.tell("first-fill-amount-is", &[("amount", text(at.amount()))]) }</strong></p> }
            <fieldset>
                <legend>{ shared.say("first-fill-why") }</legend>
                { for Reason::ALL.iter().map(choice) }
                <div role="status">{ for answer.map(|key| html! { <p>{ shared.say(key) }</p> }) }</div>
            </fieldset>
        </>
    }
}

/// The five tasks, as they are done.
fn five(shared: &Shared) -> Html {
    let tasks = Checklist::default().tasks();
    html! { <ol>{ for tasks.iter().map(|(code, _)| html! { <li>{ shared.say(&format!("first-fill-shift-{code}")) }</li> }) }</ol> }
}

/// What Fill warns about in what the step chose; blank where it does not.
pub fn warned(at: &At) -> String {
    let key = match at.standing() {
        Standing::Warned => "first-fill-warned",
        Standing::Stopped => "first-fill-stopped",
        _ => return String::new(),
    };
    let warned: Vec<String> =
        at.seen.warned(at.guide.at).map(|one| at.shared.words.remark(one, at.shared.system())).collect();
    if warned.is_empty() {
        String::new()
    } else {
        at.shared.tell(key, &[("warning", text(warned.join(" ")))])
    }
}

/// How far the page says that the step is.
pub fn told(at: &At) -> String {
    let (shared, step, typed) = (at.shared, at.guide.at, at.seen.typed);
    let key = step.standing_key(at.standing());
    let name = |of: Option<&str>| text(of.unwrap_or_default().trim());
    let entry =
        |of: Option<&crate::site::Entry>| text(of.map(|one| shared.words.entry(one)).unwrap_or_default());
    let product = ("product", name(typed.product().map(|one| &*one.name)));
    match step {
        Step::Wear => shared.tell(&key, &[product]),
        Step::Machine => {
            let machine = ("machine", name(typed.machine().map(|one| &*one.name)));
            shared.tell(&key, &[machine, ("tank", entry(typed.machine().map(|one| &one.tank)))])
        }
        Step::Product => {
            shared.tell(&key, &[product, ("label", name(typed.product().map(|one| &*one.label)))])
        }
        Step::Floor => {
            let floor = shared.tell(&key, &[("floor", name(typed.floor().map(|one| &*one.name)))]);
            match (typed.floor(), typed.governing()) {
                (None, _) => floor,
                (_, Some(one)) => {
                    let standard = (
                        "standard",
                        name(Some(if one.name.trim().is_empty() { &*one.dilution } else { &*one.name })),
                    );
                    format!("{floor} {}", shared.tell("first-fill-floor-standard", &[standard]))
                }
                (_, None) => format!("{floor} {}", shared.say("first-fill-floor-no-standard")),
            }
        }
        Step::Level => {
            let measure = ("measure", name(typed.measure().map(|one| &*one.name)));
            shared.tell(&key, &[("level", entry(Some(&typed.ask.level))), measure])
        }
        Step::Shift => {
            let undone = at.seen.shift().map(|shift| shift.undone()).unwrap_or_default();
            let tasks: Vec<String> =
                undone.iter().map(|code| shared.say(&format!("log-task-{code}"))).collect();
            shared.tell(&key, &[("tasks", text(tasks.join(", ")))])
        }
        Step::Amount | Step::Record => shared.say(&key),
    }
}
