//! What a standard asks beside its dose, in words.

use crate::form::cautions::panel;
use crate::form::fill;
use crate::form::site::chart::{Contact, Why};
use crate::page::components::trouble_text;
use crate::page::shared::Shared;
use crate::page::views::site::standards::{diluted, read_in};
use crate::site::{Product, Standard};
use crate::words::Argument;
use yew::prelude::*;

/// The order of work: water first, whatever the standard adds.
pub fn order(shared: &Shared, standard: &Standard) -> Html {
    let own = standard.order.trim();
    html! {
        <>
            { shared.say("caution-order") }
            if !own.is_empty() { <span class="notes">{ format!(" {own}") }</span> }
        </>
    }
}

/// What to wear: what the label asks, and what the standard adds.
pub fn wear(shared: &Shared, standard: &Standard, product: &Product) -> String {
    let ppe: Vec<String> = panel(product).advice.ppe().map(|ppe| shared.say(ppe.key())).collect();
    let label = if ppe.is_empty() { shared.say("caution-wear-none") } else { ppe.join("; ") };
    match standard.ppe.trim() {
        "" => label,
        own => {
            shared.tell("paper-wear-also", &[("label", Argument::text(label)), ("own", Argument::text(own))])
        }
    }
}

/// That the author of the standard let a warning pass, and why, by its code; none where it counts.
pub fn let_pass(shared: &Shared, standard: &Standard, code: &str) -> Option<String> {
    let reason = fill::let_pass(&shared.typed, standard, code)?;
    let author = Argument::text(written(shared, &standard.author));
    Some(shared.tell("paper-let-pass", &[("author", author), ("reason", Argument::text(reason))]))
}

/// How long the floor must stay wet.
pub fn contact(shared: &Shared, contact: &Contact) -> String {
    match contact {
        Contact::NotAsked => shared.say("paper-contact-none"),
        Contact::Unknown => shared.say("remark-contact-unknown"),
        Contact::Least(time) => shared.tell("paper-contact", &[("time", shared.argument(*time))]),
        Contact::Wrong(trouble) => trouble_text(shared, trouble),
    }
}

/// Whether it is rinsed.
pub fn rinse(shared: &Shared, standard: &Standard) -> String {
    shared.say(if standard.rinse { "paper-rinse" } else { "paper-rinse-not" })
}

/// The dilution as it was written, and in parts of water.
pub fn ratio(shared: &Shared, standard: &Standard) -> String {
    written(shared, &diluted(shared, &standard.dilution, read_in(shared, standard)))
}

/// What somebody wrote, or that nobody did.
pub fn written(shared: &Shared, text: &str) -> String {
    match text.trim() {
        "" => shared.say("paper-not-written"),
        text => text.to_owned(),
    }
}

/// Why a number does not stand where it would stand, in words; `shared` is about what was asked.
pub fn why(shared: &Shared, why: &Why) -> String {
    let told: Vec<String> = match why {
        Why::LeftOut(reason) => {
            return shared.tell("paper-left-out", &[("reason", Argument::text(written(shared, reason)))]);
        }
        Why::Troubles(troubles) => troubles.iter().map(|trouble| trouble_text(shared, trouble)).collect(),
        Why::Remarks(remarks) => {
            let told = remarks.iter().map(|remark| {
                let title = shared.words.remark_title(remark).map(|title| format!("{title}. "));
                title.unwrap_or_default() + &shared.words.remark(remark, shared.system())
            });
            told.collect()
        }
    };
    if told.is_empty() { shared.say("paper-not-worked-out") } else { told.join(" ") }
}
