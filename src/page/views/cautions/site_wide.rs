//! All products of the site with each other: which must never meet.

use crate::chemistry::pairs::{Meeting, Pair, Severity};
use crate::form::cautions::mixing;
use crate::page::shared::Shared;
use yew::prelude::*;

/// A cell of the table: what is known, in two or three words.
fn meeting_key(meeting: &Meeting) -> &'static str {
    match meeting {
        Meeting::Never(pairs) => match pairs.iter().map(|pair| pair.severity).max() {
            Some(Severity::Gas) => "meet-gas",
            Some(Severity::Harms) | None => "meet-harms",
            Some(Severity::Spoils) => "meet-spoils",
        },
        Meeting::Unknown => "meet-unknown",
        Meeting::NoPairListed => "meet-none",
    }
}

/// Each product of the site with each other one, and under the table what would happen and what to do.
pub fn mixing_table(shared: &Shared) -> Html {
    let products = &shared.typed.site.products;
    let rows = mixing::matrix(&shared.typed).into_iter().enumerate().map(|(index, row)| {
        let cell = |(other, meeting): (usize, &Meeting)| {
            if other == index {
                return html! { <td>{ "–" }</td> };
            }
            let key = meeting_key(meeting);
            let grave = matches!(meeting, Meeting::Never(_));
            html! { <td data-meet={key}>if grave { <strong>{ shared.say(key) }</strong> } else { { shared.say(key) } }</td> }
        };
        html! { <tr><th scope="row"><span class="number">{ index + 1 }</span>{ &products[index].name }</th>{ for row.iter().enumerate().map(cell) }</tr> }
    });
    // Numbers keep the columns narrow; each is told by its name as well.
    let heads = products.iter().enumerate().map(|(index, product)| {
        html! { <th scope="col" aria-label={product.name.clone()}>{ index + 1 }</th> }
    });
    let caption = shared.say("meet-table");
    let line = |pair: &&Pair| {
        html! {
            <li>
                <strong>{ shared.words.headed(&format!("{}, {}", shared.say(pair.a.key()), shared.say(pair.b.key()))) }</strong>
                { " " }{ shared.say(pair.happens) }{ " " }{ shared.say(pair.act) }
                <span class="source">{ " " }{ shared.words.source(pair.source) }</span>
            </li>
        }
    };
    html! {
        <>
            <p class="hint">{ shared.say("meet-hint") }</p>
            <div class="scroll" tabindex="0" role="region" aria-label={caption.clone()}>
                <table>
                    <caption><span>{ caption }</span></caption>
                    <thead><tr><td></td>{ for heads }</tr></thead>
                    <tbody>{ for rows }</tbody>
                </table>
            </div>
            <ul>{ for mixing::pairs_on_site(&shared.typed).iter().map(line) }</ul>
        </>
    }
}
