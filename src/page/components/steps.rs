//! The fill as a short checklist, in the order that splashes and foams least.

use yew::prelude::*;

/// What there is to do.
#[derive(Properties, PartialEq)]
pub struct StepsProps {
    /// The heading.
    pub title: String,
    /// In order.
    pub steps: Vec<String>,
}

/// A checklist. Another amount is another list: its ticks start anew.
#[component]
pub fn Steps(props: &StepsProps) -> Html {
    let done = use_state(Vec::<usize>::new);
    {
        let done = done.clone();
        use_effect_with(props.steps.clone(), move |_| done.set(Vec::new()));
    }
    let line = |(index, step): (usize, &String)| {
        let ticked = done.contains(&index);
        let onchange = {
            let done = done.clone();
            move |_: Event| {
                let mut next = (*done).clone();
                next.retain(|one| *one != index);
                if !ticked {
                    next.push(index);
                }
                done.set(next);
            }
        };
        // A key, so that a shorter list loses its end and not its beginning.
        html! {
            <li key={index}>
                <label class="switch step">
                    <input type="checkbox" name={format!("step-{}", index + 1)} checked={ticked} {onchange} />
                    <span>{ step }</span>
                </label>
            </li>
        }
    };
    html! {
        <section class="steps">
            <h2>{ &props.title }</h2>
            <ol>{ for props.steps.iter().enumerate().map(line) }</ol>
        </section>
    }
}
