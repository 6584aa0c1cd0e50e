//! What a product is made of, as section 3 of its safety data sheet lists it.

use crate::form::action::Line;
use crate::form::cautions::part::{Doubt, doubt};
use crate::form::{Action, Field, Outcome};
use crate::page::components::{Text, number_field, switch, text_field};
use crate::page::focus;
use crate::page::shared::Shared;
use crate::site::Ingredient;
use crate::words::Argument;
use yew::prelude::*;

/// The parts of the product asked about.
pub fn product_parts(shared: &Shared, outcome: &Outcome) -> Html {
    let Some(product) = shared.typed.product() else { return Html::default() };
    let added = {
        let (act, number) = (shared.act.clone(), product.parts.len() + 1);
        move |_: MouseEvent| {
            act.emit(Action::AddPart);
            focus::soon(format!("part-{number}-name"));
        }
    };
    let parts = product.parts.iter().enumerate().map(|(index, part)| line(shared, outcome, index, part));
    html! {
        <fieldset class="settings">
            <legend>{ shared.say("parts") }</legend>
            <p class="hint">{ shared.say("parts-hint") }</p>
            { for parts }
            { switch(shared, "parts-listed", shared.say("parts-listed"), product.listed, Action::Listed) }
            <div class="buttons">
                <button type="button" id="part-add" name="part-add" onclick={added}>{ shared.say("part-add") }</button>
            </div>
        </fieldset>
    }
}

fn line(shared: &Shared, outcome: &Outcome, index: usize, part: &Ingredient) -> Html {
    let number = index + 1;
    let text = |line: Line, what: &str, key: &'static str, value: &str| Text {
        line,
        name: format!("part-{number}-{what}"),
        key,
        value: value.to_owned(),
        tall: false,
        mistake: None,
    };
    let cas = outcome
        .at(&format!("part-{number}-cas"))
        .map(|what| shared.words.trouble(what, &shared.say("part-cas"), None, ("", "")));
    let field = |field: Field| number_field(shared, outcome, field, None);
    let removed = {
        let act = shared.act.clone();
        move |_: MouseEvent| {
            act.emit(Action::DropPart(index));
            focus::soon("part-add".to_owned());
        }
    };
    let named = if part.name.trim().is_empty() { number.to_string() } else { part.name.clone() };
    html! {
        <div class="fields caught" role="group" aria-label={named.clone()}>
            { text_field(shared, text(Line::PartName(index), "name", "part-name", &part.name)) }
            { text_field(shared, Text { mistake: cas, ..text(Line::PartCas(index), "cas", "part-cas", &part.cas) }) }
            { doubt(part).map(|doubt| doubtful(shared, doubt)).unwrap_or_default() }
            { field(Field::PartLow(index)) }
            { field(Field::PartHigh(index)) }
            { text_field(shared, text(Line::PartCodes(index), "codes", "part-codes", &part.codes)) }
            { field(Field::PartOral(index)) }
            { field(Field::PartDermal(index)) }
            { field(Field::PartMAcute(index)) }
            { field(Field::PartMChronic(index)) }
            <div class="buttons">
                <button type="button" name={format!("part-{number}-remove")} onclick={removed}>
                    { shared.tell("part-remove", &[("part", Argument::text(named))]) }
                </button>
            </div>
        </div>
    }
}

/// What is doubtful about a part, beside its number.
fn doubtful(shared: &Shared, doubt: Doubt) -> Html {
    let told = match doubt {
        Doubt::NoCas => shared.say("part-no-cas"),
        Doubt::OtherName(name) => shared.tell("part-other-name", &[("name", Argument::text(name))]),
    };
    html! { <p class="unknown">{ told }</p> }
}
