//! Fields to type into. They own the wiring that every field needs: label, hint, unit, mistake.

use super::choice::shown;
use crate::form::action::Line;
use crate::form::{Action, Field, Outcome};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::units::unit;
use crate::words::Argument;
use gloo::timers::callback::Timeout;
use web_sys::{HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement};
use yew::prelude::*;

/// A number and its unit. `label` replaces the usual one where that does not tell enough.
pub fn number_field(shared: &Shared, outcome: &Outcome, field: Field, label: Option<String>) -> Html {
    let Some(entry) = field.entry(&shared.typed) else { return Html::default() };
    let name = field.name();
    // A label of its own means another question, and the usual hint would not fit it.
    let hint = label.is_none().then(|| shared.words.find(&format!("{}-hint", field.key()))).flatten();
    let limits = shared.limits.then(|| shared.words.limits(field, &entry.unit)).flatten();
    let hint = match (hint, limits) {
        (Some(hint), Some(limits)) => Some(format!("{hint} {limits}")),
        (hint, limits) => hint.or(limits),
    };
    let label = label.unwrap_or_else(|| shared.say(field.key()));
    let typed = (entry.text.as_str(), entry.unit.as_str());
    let mistake = outcome.at(&name).map(|what| shared.words.trouble(what, &label, Some(field), typed));
    html! {
        <Typing
            id={name.clone()}
            {hint}
            {mistake}
            value={entry.text.clone()}
            readonly={shared.forbids(&Action::Write(field, String::new()))}
            oninput={shared.on(move |text| Action::Write(field, text))}
            number=true
            beside={units(shared, field, &name, &label, &entry.unit)}
            readings={outcome.at(&name).map(|what| shared.words.readings(what)).unwrap_or_default()}
            {label}
        />
    }
}

/// The unit of a number: a word where there is one, a list where there are several.
fn units(shared: &Shared, field: Field, name: &str, label: &str, chosen: &str) -> Html {
    if let [only] = field.units() {
        // Money is told in the site's own.
        let told = if *only == "money" {
            shared.typed.site.currency.clone().into()
        } else {
            shared.words.symbol_of(only)
        };
        return html! { <span class="unit">{ told }</span> };
    }
    let onchange = shared.on(move |event: Event| {
        Action::Unit(field, event.target_unchecked_into::<HtmlSelectElement>().value())
    });
    let of_what = shared.tell("unit-of", &[("field", Argument::text(label))]);
    html! {
        <select class="unit" name={format!("{name}-unit")} disabled={shared.forbids(&Action::Unit(field, String::new()))} aria-label={of_what} {onchange} ~value={shown(chosen)}>
            { for field.units().iter().filter_map(|code| unit(code)).map(|unit| html! {
                <option value={unit.code} selected={unit.code == chosen}>{ shared.words.symbol(unit) }</option>
            }) }
        </select>
    }
}

/// A field for a line or a few lines of text.
pub struct Text {
    /// Which.
    pub line: Line,
    /// Its stable name.
    pub name: String,
    /// The word key of its label; `-hint` behind it is the key of its hint.
    pub key: &'static str,
    /// What it holds.
    pub value: String,
    /// Whether it takes several lines.
    pub tall: bool,
    /// What is wrong with it, in words.
    pub mistake: Option<String>,
}

/// A line or a few lines of text.
pub fn text_field(shared: &Shared, text: Text) -> Html {
    let Text { line, name, key, value, tall, mistake } = text;
    html! {
        <Typing
            id={name}
            label={shared.say(key)}
            hint={shared.words.find(&format!("{key}-hint"))}
            {mistake}
            {value}
            readonly={shared.forbids(&Action::Text(line, String::new()))}
            oninput={shared.on(move |text| Action::Text(line, text))}
            {tall}
        />
    }
}

/// A line of text that belongs to no record yet.
pub fn loose_field(
    id: String,
    label: String,
    value: String,
    mistake: Option<String>,
    oninput: Callback<String>,
) -> Html {
    html! { <Typing {id} {label} {mistake} {value} {oninput} /> }
}

/// What a field to type into needs.
#[derive(Properties, PartialEq)]
pub struct TypingProps {
    /// Its id and its stable name.
    pub id: AttrValue,
    /// Its label.
    pub label: String,
    /// What stands under it.
    #[prop_or_default]
    pub hint: Option<String>,
    /// What is wrong with it.
    pub mistake: Option<String>,
    /// What it holds.
    pub value: String,
    /// Is told what it holds now.
    pub oninput: Callback<String>,
    /// Whether it may not be changed.
    #[prop_or_default]
    pub readonly: bool,
    /// Whether it takes a number.
    #[prop_or_default]
    pub number: bool,
    /// Whether it takes several lines.
    #[prop_or_default]
    pub tall: bool,
    /// Its unit.
    #[prop_or_default]
    pub beside: Html,
    /// Both ways to write a number that can be read in two.
    #[prop_or_default]
    pub readings: Vec<String>,
}

/// Writes a number as it is meant; the focus goes to where it stands then.
fn reading(props: &TypingProps, text: &String) -> Html {
    let (oninput, id, written) = (props.oninput.clone(), props.id.clone(), text.clone());
    let onclick = move |_: MouseEvent| {
        oninput.emit(written.clone());
        focus::on(&id);
    };
    html! { <button type="button" name={format!("{}-reading", props.id)} {onclick}>{ text }</button> }
}

/// So long nothing was typed when a number counts as typed, milliseconds.
const PAUSE: u32 = 1_000;

/// Where a person types. A mistake shows when the field is left or the hand rests, not while a number is half typed; once
/// it is told it stays until it is mended.
#[component]
pub fn Typing(props: &TypingProps) -> Html {
    let typing = use_state_eq(|| false);
    let (pause, told) = (use_mut_ref(|| None::<Timeout>), use_mut_ref(|| false));
    let id = &props.id;
    let mistake = props.mistake.as_ref().filter(|_| !*typing || *told.borrow());
    *told.borrow_mut() = mistake.is_some();
    let (hint_id, mistake_id) = (format!("{id}-hint"), format!("{id}-mistake"));
    let described = [props.hint.as_ref().map(|_| hint_id.as_str()), mistake.map(|_| mistake_id.as_str())];
    let described = described.into_iter().flatten().collect::<Vec<_>>().join(" ");
    let described = (!described.is_empty()).then_some(described);
    let invalid = mistake.map(|_| "true");
    let typed = {
        let (typing, given) = (typing.clone(), props.oninput.clone());
        Callback::from(move |text| {
            typing.set(true);
            let rests = typing.clone();
            *pause.borrow_mut() = Some(Timeout::new(PAUSE, move || rests.set(false)));
            given.emit(text);
        })
    };
    let onblur = move |_: FocusEvent| typing.set(false);
    let control = if props.tall {
        let oninput =
            typed.reform(|event: InputEvent| event.target_unchecked_into::<HtmlTextAreaElement>().value());
        html! {
            <textarea {id} name={id} rows="4" readonly={props.readonly} value={props.value.clone()} {oninput} {onblur}
                aria-describedby={described} aria-invalid={invalid} />
        }
    } else {
        let oninput =
            typed.reform(|event: InputEvent| event.target_unchecked_into::<HtmlInputElement>().value());
        html! {
            <input {id} name={id} type="text" inputmode={props.number.then_some("decimal")} autocomplete="off"
                readonly={props.readonly} value={props.value.clone()} {oninput} {onblur}
                aria-describedby={described} aria-invalid={invalid} />
        }
    };
    html! {
        <div class={classes!("field", mistake.map(|_| "wrong"))}>
            <label for={id}>{ &props.label }</label>
            <div class="entry">{ control }{ props.beside.clone() }</div>
            if let Some(hint) = &props.hint { <p class="hint" id={hint_id}>{ hint }</p> }
            if let Some(mistake) = mistake {
                <p class="mistake" id={mistake_id}>{ mistake }</p>
                if !props.readings.is_empty() && !props.readonly {
                    <p class="readings">{ for props.readings.iter().map(|text| reading(props, text)) }</p>
                }
            }
        </div>
    }
}
