//! Warnings and assumptions, and the warning that stands where the amount would stand.

use crate::answer::{Remark, Weight};
use crate::chemistry::foam;
use crate::form::Action;
use crate::form::cautions::LEFT_OUT;
use crate::page::focus;
use crate::page::shared::Shared;
use yew::prelude::*;

fn of(remarks: &[Remark], weight: Weight) -> impl Iterator<Item = &Remark> {
    remarks.iter().filter(move |remark| remark.weight == weight)
}

fn title(shared: &Shared, remark: &Remark) -> Html {
    shared.words.remark_title(remark).map(|title| html! { <h2>{ title }</h2> }).unwrap_or_default()
}

/// What to mind and what to do about it.
pub fn warnings(shared: &Shared, remarks: &[Remark]) -> Html {
    html! {
        { for of(remarks, Weight::Warn).map(|remark| html! {
            <div class={classes!("remark", remark.code.ends_with("-narrows").then_some("news"))} data-remark={remark.code}>
                { title(shared, remark) }
                <p>{ shared.words.remark(remark, shared.system()) }</p>
            </div>
        }) }
    }
}

/// What was taken for granted.
pub fn assumptions(shared: &Shared, remarks: &[Remark]) -> Html {
    // Which tolerance matters most stands beside the tolerances.
    let assumed = || of(remarks, Weight::Assumed).filter(|remark| !remark.code.starts_with("sure-"));
    if assumed().next().is_none() {
        return Html::default();
    }
    html! {
        <section class="assumptions">
            <h2>{ shared.say("assumptions") }</h2>
            <ul>
                { for assumed().map(|remark| html! {
                    <li data-remark={remark.code}>{ shared.words.remark(remark, shared.system()) }</li>
                }) }
            </ul>
        </section>
    }
}

/// What stands where the amount would stand, until it was read.
pub fn stop(shared: &Shared, remarks: &[Remark]) -> Html {
    let reasons: Vec<&Remark> = of(remarks, Weight::Stop).collect();
    if reasons.is_empty() {
        return Html::default();
    }
    let foams = reasons.iter().any(|remark| remark.code.starts_with("remark-foam-"));
    let act = shared.act.clone();
    let read = move |_: MouseEvent| {
        act.emit(Action::StopRead);
        // This button goes; what it gives way to takes the focus.
        focus::soon("answer".to_owned());
    };
    let untested = remarks.iter().find(|remark| remark.code == "remark-shake-recipe");
    html! {
        <section class="stop" role="alert">
            { for reasons.iter().map(|remark| html! {
                <div data-remark={remark.code}>
                    { title(shared, remark) }
                    <p>{ shared.words.remark(remark, shared.system()) }</p>
                </div>
            }) }
            if foams { <p>{ shared.say(foam::WHY) }</p> }
            if let Some(recipe) = untested {
                <p>{ shared.say(foam::SHAKE_TEST) }{ " " }{ shared.words.remark(recipe, shared.system()) }</p>
            }
            if foams { <p>{ shared.say(foam::DEFOAMER) }</p> }
            if reasons.iter().all(|remark| remark.code != LEFT_OUT) {
                <button type="button" name="stop-read" onclick={read}>{ shared.say("stop-read") }</button>
            }
        </section>
    }
}
