//! The code that opens one fill, and the link that it holds.

use crate::form::site::carried::carry;
use crate::form::site::in_force::{Phase, phase};
use crate::page::drawing::qr;
use crate::page::keep::keys;
use crate::page::shared::Shared;
use crate::site::address::{AddressMistake, Unreachable, outward};
use crate::site::passing::link::pack;
use crate::site::passing::stamp::stamp;
use crate::site::{Measure, Record, Standard};
use crate::words::Argument;
use yew::prelude::*;

/// The code of a standard in the machine asked about, its tank full, with the measure on the wall; `told` is what
/// stands under it beside what it does.
pub fn code(shared: &Shared, standard: &Standard, measure: &Measure, told: impl Fn(&str) -> String) -> Html {
    let instead = |key: &str| html! { <p class="qr-none">{ shared.say(key) }</p> };
    let Some(machine) = shared.typed.machine() else { return Html::default() };
    // What a code opens looks as if it were in force.
    if phase(&shared.typed, standard) != Phase::InForce {
        return instead("code-none");
    }
    if standard.left_out(machine.id()).is_some() {
        return instead("code-left-out");
    }
    let address = match address(shared) {
        Ok(address) => address,
        Err(why) => return html! { <p class="qr-none">{ unreachable(shared, why) }</p> },
    };
    let Ok(payload) = pack(&carry(&shared.typed, standard, machine.id(), measure.id(), 100)) else {
        return instead("code-not-made");
    };
    // A device that is pinned to a key takes no other link.
    let payload = keys::secret().map_or_else(|| payload.clone(), |secret| stamp(&payload, &secret));
    let link = format!("{address}#fill={payload}");
    let Some(drawing) = qr(shared, "qr-label", &link) else {
        let n = Argument::number(link.len() as f64, shared.words.number(link.len() as f64));
        return html! { <p class="qr-none">{ shared.tell("qr-too-long", &[("n", n)]) }</p> };
    };
    html! {
        <div class="qr-code" data-link={link}>
            { drawing }
            <p><strong>{ shared.say("code-scan") }</strong>{ told(&machine.name) }</p>
        </div>
    }
}

/// The address that codes begin with. What stands behind it, after the number sign, a browser sends to nobody.
pub fn address(shared: &Shared) -> Result<String, Unreachable> {
    let page = gloo::utils::window().location().href().unwrap_or_default();
    outward(&shared.typed.site.address, &page).map(str::to_owned)
}

/// That no code is printed, and what to do about it; nothing where one can be.
pub fn no_way_here(shared: &Shared) -> Option<String> {
    address(shared).err().map(|why| unreachable(shared, why))
}

fn unreachable(shared: &Shared, why: Unreachable) -> String {
    match why {
        Unreachable::Page => shared.say("code-no-address"),
        Unreachable::Typed(mistake) => {
            shared.tell("code-wrong-address", &[("why", Argument::text(wrong(shared, mistake)))])
        }
    }
}

/// What is wrong with an address that was typed in.
pub fn wrong(shared: &Shared, mistake: AddressMistake) -> String {
    match mistake {
        AddressMistake::Character(one) => {
            shared.tell(mistake.code(), &[("character", Argument::text(one.to_string()))])
        }
        _ => shared.say(mistake.code()),
    }
}
