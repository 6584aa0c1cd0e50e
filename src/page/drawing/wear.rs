//! What a label warns of beside what is worn: pictograms and words.

use crate::page::pictogram::pictogram;
use crate::page::shared::Shared;
use crate::practice::Wear;
use yew::prelude::*;

/// The pictograms with their names, the signal word, and a line for each thing to wear.
pub fn wear(shared: &Shared, drawn: &Wear) -> Html {
    html! {
        <div class="fields">
            <div>
                { for drawn.pictograms.iter().map(|one| pictogram(*one, shared.say(one.key()))) }
                <p><strong>{ shared.say(drawn.signal) }</strong></p>
                { for drawn.pictograms.iter().map(|one| html! { <p>{ shared.say(one.key()) }</p> }) }
            </div>
            <ul>
                { for drawn.wear.iter().map(|key| html! { <li>{ shared.say(key) }</li> }) }
                if drawn.wear.is_empty() { <li>{ shared.say("practice-ppe-nothing") }</li> }
            </ul>
        </div>
    }
}
