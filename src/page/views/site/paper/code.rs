//! The code that opens one fill, and the link that it holds.

use super::payload::payload;
use crate::form::site::carried::{Carried, carry};
use crate::page::drawing::qr;
use crate::page::shared::Shared;
use crate::site::{Measure, Record, Standard, Standing};
use crate::words::Argument;
use yew::prelude::*;

/// The code of a standard in the machine asked about, its tank full, with the measure on the wall.
pub fn of_chart(shared: &Shared, standard: &Standard, measure: &Measure) -> Html {
    let Some(machine) = shared.typed.machine() else { return Html::default() };
    let fill = shared.tell("code-fill", &[("machine", Argument::text(machine.name.clone()))]);
    let carried = carry(&shared.typed, standard, machine.id(), measure.id(), 100);
    code(shared, standard, &link(&carried), fill)
}

/// The code of a link with its words; a standard that is not in force has none, since what it opened would look as
/// if it were.
fn code(shared: &Shared, standard: &Standard, link: &str, fill: String) -> Html {
    if standard.standing != Standing::InForce {
        return html! { <p class="code-none">{ shared.say("code-none") }</p> };
    }
    html! {
        <div class="qr-code" data-link={link.to_owned()}>
            { qr(shared, link) }
            <p><strong>{ shared.say("code-scan") }</strong>{ " " }{ fill }</p>
        </div>
    }
}

/// The address of the page with the fill behind it, which a browser sends to nobody.
fn link(carried: &Carried) -> String {
    let href = gloo::utils::window().location().href().unwrap_or_default();
    let page = href.split('#').next().unwrap_or_default();
    format!("{page}#fill={}", payload(carried))
}
