//! A fill ticket as a sheet of paper, with the line that is wrong marked in words.

use crate::page::shared::Shared;
use crate::practice::{Exercise, Said, Ticket};
use crate::words::Argument;
use yew::prelude::*;

/// Its lines; under the wrong one stands what should be there.
pub fn ticket(shared: &Shared, drawn: &Ticket, exercise: &Exercise) -> Html {
    let line = |(index, said): (usize, &Said)| {
        let text = shared.words.said(said, exercise);
        let should = drawn.wrong.as_ref().filter(|(wrong, _)| *wrong == index).map(|(_, should)| should);
        html! {
            <li data-wrong={should.map(|_| "")}>
                if let Some(should) = should {
                    <s>{ text }</s><br />
                    <strong>{ shared.tell("practice-ticket-should", &[("line", Argument::text(shared.words.said(should, exercise)))]) }</strong>
                } else { { text } }
            </li>
        }
    };
    html! { <ul class="ticket">{ for drawn.lines.iter().enumerate().map(line) }</ul> }
}
