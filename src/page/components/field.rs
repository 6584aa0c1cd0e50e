//! Fields to type into. They own the wiring that every field needs: label, hint, unit, mistake.

use crate::form::action::Line;
use crate::form::{Action, Field, What};
use crate::page::shared::use_shared;
use crate::units::unit;
use web_sys::{HtmlInputElement, HtmlSelectElement, HtmlTextAreaElement};
use yew::prelude::*;

/// A number field.
#[derive(Properties, PartialEq)]
pub struct NumberFieldProps {
    /// Which.
    pub field: Field,
    /// What is wrong with it.
    #[prop_or_default]
    pub trouble: Option<What>,
    /// A label of its own, where the usual one does not tell enough.
    #[prop_or_default]
    pub label: Option<String>,
}

/// A number and its unit. A mistake shows when the field is left, not while a number is half typed.
#[component]
pub fn NumberField(props: &NumberFieldProps) -> Html {
    let shared = use_shared();
    let typing = use_state(|| false);
    let field = props.field;
    let Some(entry) = field.entry(&shared.typed).cloned() else { return Html::default() };
    let name = field.name();
    let label = props.label.clone().unwrap_or_else(|| shared.say(field.key()));
    let hint = shared.words.find(&format!("{}-hint", field.key()));
    let trouble = props.trouble.as_ref().filter(|_| !*typing);
    let mistake =
        trouble.map(|what| shared.words.trouble(what, &label, Some(field), (&entry.text, &entry.unit)));

    let oninput = shared.on(move |event: InputEvent| {
        Action::Write(field, event.target_unchecked_into::<HtmlInputElement>().value())
    });
    let units = match field.units() {
        [only] => html! { <span class="unit">{ unit(only).map(|unit| unit.symbol) }</span> },
        several => {
            let onchange = shared.on(move |event: Event| {
                Action::Unit(field, event.target_unchecked_into::<HtmlSelectElement>().value())
            });
            let of_what = shared.tell("unit-of", &[("field", crate::words::Argument::text(label.clone()))]);
            html! {
                <select class="unit" name={format!("{name}-unit")} aria-label={of_what} {onchange}>
                    { for several.iter().filter_map(|code| unit(code)).map(|unit| html! {
                        <option value={unit.code} selected={unit.code == entry.unit}>{ unit.symbol }</option>
                    }) }
                </select>
            }
        }
    };
    html! {
        <div class={classes!("field", mistake.is_some().then_some("wrong"))}>
            <label for={name.clone()}>{ label }</label>
            <div class="entry">
                <input id={name.clone()} name={name.clone()} type="text" inputmode="decimal" autocomplete="off"
                    value={entry.text} {oninput}
                    onfocus={let typing = typing.clone(); move |_| typing.set(true)}
                    onblur={move |_| typing.set(false)}
                    aria-invalid={mistake.is_some().then_some("true")}
                    aria-describedby={described_by(&name, hint.is_some(), mistake.is_some())} />
                { units }
            </div>
            { below(&name, hint, mistake) }
        </div>
    }
}

/// A field for a line or a few lines of text.
#[derive(Properties, PartialEq)]
pub struct LineFieldProps {
    /// Which.
    pub line: Line,
    /// Its stable name.
    pub name: AttrValue,
    /// The word key of its label; `-hint` behind it is the key of its hint.
    pub key_: AttrValue,
    /// What it holds.
    pub value: String,
    /// Whether it takes several lines.
    #[prop_or_default]
    pub tall: bool,
    /// What is wrong with it, in words.
    #[prop_or_default]
    pub mistake: Option<String>,
    /// What stands under it.
    #[prop_or_default]
    pub children: Html,
}

/// A line of text.
#[component]
pub fn LineField(props: &LineFieldProps) -> Html {
    let shared = use_shared();
    let typing = use_state(|| false);
    let (line, name) = (props.line, props.name.clone());
    let hint = shared.words.find(&format!("{}-hint", props.key_));
    let mistake = props.mistake.clone().filter(|_| !*typing);
    let described = described_by(&name, hint.is_some(), mistake.is_some());
    let invalid = mistake.is_some().then_some("true");
    let onfocus = {
        let typing = typing.clone();
        Callback::from(move |_: FocusEvent| typing.set(true))
    };
    let onblur = Callback::from(move |_: FocusEvent| typing.set(false));
    let control = if props.tall {
        let oninput = shared.on(move |event: InputEvent| {
            Action::Text(line, event.target_unchecked_into::<HtmlTextAreaElement>().value())
        });
        html! {
            <textarea id={name.clone()} name={name.clone()} rows="4" value={props.value.clone()} {oninput}
                {onfocus} {onblur} aria-describedby={described} aria-invalid={invalid} />
        }
    } else {
        let oninput = shared.on(move |event: InputEvent| {
            Action::Text(line, event.target_unchecked_into::<HtmlInputElement>().value())
        });
        html! {
            <input id={name.clone()} name={name.clone()} type="text" autocomplete="off" value={props.value.clone()}
                {oninput} {onfocus} {onblur} aria-describedby={described} aria-invalid={invalid} />
        }
    };
    html! {
        <div class={classes!("field", "line", mistake.is_some().then_some("wrong"))}>
            <label for={name.clone()}>{ shared.say(&props.key_) }</label>
            { control }
            { below(&name, hint, mistake) }
            { props.children.clone() }
        </div>
    }
}

fn described_by(name: &str, hint: bool, mistake: bool) -> Option<String> {
    match (hint, mistake) {
        (true, true) => Some(format!("{name}-hint {name}-mistake")),
        (true, false) => Some(format!("{name}-hint")),
        (false, true) => Some(format!("{name}-mistake")),
        (false, false) => None,
    }
}

fn below(name: &str, hint: Option<String>, mistake: Option<String>) -> Html {
    html! {
        <>
            if let Some(hint) = hint { <p class="hint" id={format!("{name}-hint")}>{ hint }</p> }
            if let Some(mistake) = mistake { <p class="mistake" id={format!("{name}-mistake")}>{ mistake }</p> }
        </>
    }
}
