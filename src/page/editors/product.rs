//! A product: its label and how that was read, its foam, its cautions.

use super::EditorProps;
use crate::chemistry::family::Family;
use crate::chemistry::foam::Foam;
use crate::chemistry::ghs::SignalWord;
use crate::form::action::{Line, Shelf};
use crate::form::cautions::ph_is_wrong;
use crate::form::fill::LABEL;
use crate::form::{Action, What};
use crate::page::components::{Choice, LineField, ShelfButtons, Switch};
use crate::page::shared::use_shared;
use crate::trade::label;
use yew::prelude::*;

/// The dilution as the label writes it, with the other readings to choose from.
#[component]
pub fn LabelField(props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(product) = shared.typed.product() else { return Html::default() };
    let trouble = props.mistakes.at(LABEL);
    let mistake = trouble.as_ref().map(|what| shared.words.trouble(what, &shared.say(LABEL), None, ("", "")));
    let read = label::read(&product.label, shared.system());
    let (title, readings) = match (&read, &trouble) {
        (Ok(label), _) => ("label-others", label.others.clone()),
        (Err(_), Some(What::Label(mistake))) => ("label-readings", mistake.readings().to_vec()),
        (Err(_), _) => ("label-readings", Vec::new()),
    };
    html! {
        <LineField line={Line::Label} name={LABEL} key_={LABEL} value={product.label.clone()} {mistake}>
            if !readings.is_empty() {
                <p class="readings">
                    <span>{ shared.say(title) }</span>
                    { for readings.iter().map(|reading| {
                        let text = reading.clone();
                        html! {
                            <button type="button" name="label-reading"
                                onclick={shared.on(move |_| Action::Text(Line::Label, text.clone()))}>{ reading }</button>
                        }
                    }) }
                </p>
            }
        </LineField>
    }
}

fn foam_choice(shared: &crate::page::shared::Shared, foam: Foam) -> Html {
    let option = |one: Foam| (one.key().to_owned(), shared.say(one.key()));
    let chosen = |key: String| {
        Action::Foam(Foam::ALL.into_iter().find(|one| one.key() == key).unwrap_or(Foam::Unknown))
    };
    html! {
        <Choice name="product-foam" label={shared.say("product-foam")} hint={shared.say("product-foam-hint")}
            options={Foam::ALL.map(option).to_vec()} chosen={foam.key().to_owned()} onchoose={shared.on(chosen)} />
    }
}

/// Name and foam class.
#[component]
pub fn ProductBasics(_props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(product) = shared.typed.product().cloned() else { return Html::default() };
    html! {
        <details class="more">
            <summary>{ shared.say("product-more") }</summary>
            <div class="fields">
                <LineField line={Line::ProductName} name="product-name" key_="product-name" value={product.name} />
                { foam_choice(&shared, product.foam) }
            </div>
            <p class="hint">{ shared.say("product-more-hint") }</p>
            <ShelfButtons shelf={Shelf::Product} />
        </details>
    }
}

/// All that its label and safety data sheet say about handling it.
#[component]
pub fn ProductCautions(_props: &EditorProps) -> Html {
    let shared = use_shared();
    let Some(product) = shared.typed.product().cloned() else { return Html::default() };
    let signal = |one: SignalWord| (one.key().to_owned(), shared.say(one.key()));
    let signal_of = |key: String| {
        Action::Signal(
            SignalWord::ALL.into_iter().find(|one| one.key() == key).unwrap_or(SignalWord::Unknown),
        )
    };
    let ph = ph_is_wrong(&product, shared.marks()).then(|| shared.say("mistake-ph"));
    html! {
        <div class="fields">
            <LineField line={Line::ProductName} name="product-name" key_="product-name" value={product.name.clone()} />
            { foam_choice(&shared, product.foam) }
            <Choice name="product-signal" label={shared.say("product-signal")} hint={shared.say("product-signal-hint")}
                options={SignalWord::ALL.map(signal).to_vec()} chosen={product.signal.key().to_owned()}
                onchoose={shared.on(signal_of)} />
            <LineField line={Line::Ph} name="product-ph" key_="product-ph" value={product.ph.clone()} mistake={ph} />
            <LineField line={Line::Codes} name="product-codes" key_="product-codes" value={product.codes.clone()} tall=true />
            <LineField line={Line::Notes} name="product-notes" key_="product-notes" value={product.notes.clone()} tall=true />
            <fieldset>
                <legend>{ shared.say("product-families") }</legend>
                <p class="hint">{ shared.say("product-families-hint") }</p>
                <div class="switches">
                    { for Family::ALL.into_iter().map(|family| html! {
                        <Switch name={format!("product-{}", family.key())} key_={family.key()}
                            on={product.families.contains(&family)}
                            onswitch={shared.on(move |is| Action::Family(family, is))} />
                    }) }
                </div>
            </fieldset>
        </div>
    }
}
