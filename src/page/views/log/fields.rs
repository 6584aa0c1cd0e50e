//! Fields of the log's forms: they change the draft, which is not part of what was typed for an answer.

use crate::coded::Coded;
use crate::form::What;
use crate::form::log::{Draft, Lack};
use crate::page::components::{Typing, shown};
use crate::page::keep::log_draft::change;
use crate::page::shared::Shared;
use crate::site::Entry;
use crate::units::unit;
use crate::words::Argument;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// What is in the way at an input, in words.
pub fn lack(shared: &Shared, lacks: &[Lack], name: &str, entry: (&str, &str)) -> Option<String> {
    let found = lacks.iter().find(|lack| lack.at() == name)?;
    Some(match found {
        Lack::Number(_, mistake) => {
            shared.words.trouble(&What::Number(*mistake), &shared.say(name), None, entry)
        }
        Lack::Reason => shared.say("log-lack-reason"),
        Lack::Why => shared.say("log-lack-why"),
        Lack::Product => shared.say("log-lack-product"),
        Lack::Scale => shared.say("log-lack-scale"),
        Lack::Nothing => shared.say("log-lack-nothing"),
        Lack::Day => shared.say("log-lack-day"),
        Lack::Time => shared.say("log-lack-time"),
        Lack::Later => shared.say("log-lack-later"),
    })
}

/// A line or a few lines of text. The words of its label stand under its name, and of its hint under `<name>-hint`.
pub fn text_at(
    shared: &Shared,
    name: &'static str,
    value: &str,
    tall: bool,
    mistake: Option<String>,
    of: impl Fn(&mut Draft) -> &mut String + 'static,
) -> Html {
    let oninput = Callback::from(move |text| change(|draft| *of(draft) = text));
    html! {
        <Typing id={name} label={shared.say(name)} hint={shared.words.find(&format!("{name}-hint"))} {mistake}
            value={value.to_owned()} {tall} {oninput} />
    }
}

/// A number with its unit.
pub fn number(
    shared: &Shared,
    name: &'static str,
    label: String,
    entry: &Entry,
    units: &'static [&'static str],
    mistake: Option<String>,
    of: impl Fn(&mut Draft) -> &mut Entry + Clone + 'static,
) -> Html {
    let typed = of.clone();
    let oninput = Callback::from(move |text| change(|draft| typed(draft).text = text));
    let beside = if let [only] = units {
        html! { <span class="unit">{ shared.words.symbol_of(only) }</span> }
    } else {
        let onchange = move |event: Event| {
            let code = event.target_unchecked_into::<HtmlSelectElement>().value();
            change(|draft| of(draft).unit = code);
        };
        let of_what = shared.tell("unit-of", &[("field", Argument::text(&*label))]);
        html! {
            <select class="unit" name={format!("{name}-unit")} aria-label={of_what} {onchange} ~value={shown(&entry.unit)}>
                { for units.iter().filter_map(|code| unit(code)).map(|unit| html! {
                    <option value={unit.code} selected={unit.code == entry.unit}>{ shared.words.symbol(unit) }</option>
                }) }
            </select>
        }
    };
    let hint = shared.words.find(&format!("{name}-hint"));
    html! { <Typing id={name} {label} {hint} {mistake} value={entry.text.clone()} number=true {beside} {oninput} /> }
}

/// One of a list of values with their texts.
pub fn select(
    name: &'static str,
    label: String,
    options: Vec<(String, String)>,
    chosen: &str,
    does: impl Fn(String) + 'static,
) -> Html {
    let onchange = move |event: Event| does(event.target_unchecked_into::<HtmlSelectElement>().value());
    html! {
        <div class="field">
            <label for={name}>{ label }</label>
            <select id={name} {name} {onchange} ~value={shown(chosen)}>
                { for options.into_iter().map(|(value, text)| {
                    let selected = value == chosen;
                    html! { <option {value} {selected}>{ text }</option> }
                }) }
            </select>
        </div>
    }
}

/// One of a list of choices with codes; the words of each stand under `<name>-<code>`.
pub fn pick<T: Coded>(shared: &Shared, name: &'static str, chosen: T, does: impl Fn(T) + 'static) -> Html {
    pick_of(shared, name, chosen, |_| true, does)
}

/// The same, of those that are open.
pub fn pick_of<T: Coded>(
    shared: &Shared,
    name: &'static str,
    chosen: T,
    is_open: impl Fn(&T) -> bool,
    does: impl Fn(T) + 'static,
) -> Html {
    let options = (T::ALL.iter().filter(|one| is_open(one)))
        .map(|one| one.code())
        .map(|code| (code.to_owned(), shared.say(&format!("{name}-{}", code.replace('_', "-")))))
        .collect();
    select(name, shared.say(name), options, chosen.code(), move |code| {
        does(T::from_code(&code).unwrap_or(chosen));
    })
}

/// A tick box.
pub fn tick(name: String, label: String, on: bool, does: impl Fn(bool) + 'static) -> Html {
    let onchange = move |event: Event| does(event.target_unchecked_into::<HtmlInputElement>().checked());
    html! {
        <label class="switch">
            <input type="checkbox" id={name.clone()} {name} checked={on} {onchange} />
            <span>{ label }</span>
        </label>
    }
}

/// A button; the words stand under its name.
pub fn press(shared: &Shared, name: &'static str, does: impl Fn() + 'static) -> Html {
    let onclick = move |_: MouseEvent| does();
    html! { <button type="button" {name} {onclick}>{ shared.say(name) }</button> }
}

/// Buttons that a press reaches whatever is half typed: a field that is left could tell a mistake, and they would have
/// moved from under the finger before it is lifted.
pub fn steady(buttons: Html) -> Html {
    let onmousedown = |event: MouseEvent| event.prevent_default();
    html! { <div class="buttons" {onmousedown}>{ buttons }</div> }
}

/// A day or a time, which the browser lets people pick.
///
/// * `kind`: `date` or `time`.
pub fn moment(
    kind: &'static str,
    name: impl Into<AttrValue>,
    label: String,
    value: String,
    mistake: Option<String>,
    does: impl Fn(String) + 'static,
) -> Html {
    let name: AttrValue = name.into();
    let oninput = move |event: InputEvent| does(event.target_unchecked_into::<HtmlInputElement>().value());
    let told = format!("{name}-mistake");
    html! {
        <div class={classes!("field", mistake.is_some().then_some("wrong"))}>
            <label for={name.clone()}>{ label }</label>
            <input type={kind} id={name.clone()} {name} {value} {oninput} aria-describedby={mistake.is_some().then(|| told.clone())} aria-invalid={mistake.is_some().then_some("true")} />
            if let Some(mistake) = mistake { <p class="mistake" id={told.clone()}>{ mistake }</p> }
        </div>
    }
}
