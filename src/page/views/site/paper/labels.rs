//! A sheet of labels for containers with use solution of a standard. They have no code: whoever holds a bottle needs to
//! read what is in it, and a code opens the fill of a machine’s tank.

use super::facts;
use super::sheet::{edition, sheet, standing};
use crate::form::site::asked::asked;
use crate::form::site::chart::Why;
use crate::page::shared::Shared;
use crate::page::views::cautions::container_label;
use crate::site::{Record, Standard};
use std::rc::Rc;
use yew::prelude::*;

/// As many labels of 74 mm as an A4 and a Letter sheet hold under the running line.
const LABELS: usize = 3;

/// The sheet.
pub fn labels(shared: &Shared, standard: &Standard) -> Html {
    let typed = &shared.typed;
    let known = typed.site.products.iter().any(|one| one.id() == standard.product);
    let (Some(machine), Some(measure), true) = (typed.machine(), typed.measure(), known) else {
        return html! { <p class="unknown">{ shared.say("paper-lacks-label") }</p> };
    };
    if let Some(reason) = standard.left_out(machine.id()) {
        let why = facts::why(shared, &Why::LeftOut(reason.to_owned()));
        return html! { <p class="unknown"><strong>{ shared.words.headed(machine.name()) }{ " " }{ why }</strong></p> };
    }
    let about = asked(typed, standard, machine.id(), measure.id(), 100);
    let about = Shared { typed: Rc::new(about), ..shared.clone() };
    let of = shared.words.said_of(&shared.say("paper-labels"), &edition(shared, standard));
    let content = html! {
        <>
            { standing(shared, standard) }
            { for (0..LABELS).map(|_| html! {
                <div class="tag">{ container_label(&about) }</div>
            }) }
        </>
    };
    sheet(shared, of, content)
}
