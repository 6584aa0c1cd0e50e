//! The end of a session: what was right at which try, the roads that were taken, and the code to hand in.

use super::copy::Copy;
use super::{Props, about, count, press};
use crate::page::components::Typing;
use crate::page::drawing::qr;
use crate::page::focus;
use crate::page::keep::download;
use crate::page::keep::practice::at_desk;
use crate::page::shared::Shared;
use crate::practice::{Exercise, Mark, Run, Session, Tries};
use yew::prelude::*;

/// What came of the session.
#[component]
pub fn Result(props: &Props) -> Html {
    let (shared, run) = (&props.shared, &props.held.desk.run);
    let exercises = use_memo(run.session.clone(), Session::exercises);
    let leave = || {
        at_desk(|desk| desk.run = Run::default());
        focus::soon("practice-choose".to_owned());
    };
    let line = |tries: &Tries| {
        let n = run.right_at(*tries);
        let told = [("n", count(shared, n)), ("of", count(shared, run.marks.len()))];
        let key = format!("practice-tries-{}", tries.code());
        (n > 0 || matches!(tries, Tries::First | Tries::Second))
            .then(|| html! { <li data-tries={tries.code()} data-n={n.to_string()}>{ shared.tell(&key, &told) }</li> })
    };
    let order = [Tries::First, Tries::Second, Tries::Later, Tries::Never, Tries::Open];
    html! {
        <section aria-labelledby="practice-task">
            <h2 id="practice-task" tabindex="-1">{ shared.say("practice-result") }</h2>
            <ul>{ for order.iter().filter_map(line) }</ul>
            { roads(shared, &run.marks, &exercises) }
            <h3>{ shared.say("practice-hand-in") }</h3>
            <Typing id="practice-initials" label={shared.say("practice-initials")} hint={shared.say("practice-initials-hint")} mistake={None::<String>}
                value={run.initials.clone()} oninput={|text| at_desk(|desk| desk.run.initials = text)} />
            { code(shared, run) }
            { about(shared, &run.session) }
            <p class="hint">{ shared.say("practice-governs") }</p>
            <div class="buttons">{ press(shared, "practice-finish", leave) }</div>
        </section>
    }
}

/// The first usual wrong road of each task, and what to do instead.
fn roads(shared: &Shared, marks: &[Mark], exercises: &[Exercise]) -> Html {
    let taken =
        marks.iter().zip(exercises).filter_map(|(mark, exercise)| Some((exercise, mark.way.first()?)));
    let lines: Vec<Html> = taken
        .map(|(exercise, way)| {
            let topic = shared.say(&format!("practice-topic-{}", exercise.topic.code()));
            html! { <li data-way={way.code()}>{ shared.words.said_of(&topic, &shared.say(&format!("practice-way-{}", way.code()))) }</li> }
        })
        .collect();
    if lines.is_empty() {
        return Html::default();
    }
    html! { <><h3>{ shared.say("practice-roads") }</h3><ul>{ for lines }</ul></> }
}

/// The code, or what it lacks.
fn code(shared: &Shared, run: &Run) -> Html {
    let code = match run.attempt().to_code() {
        Ok(code) => code,
        Err(mistake) => {
            return html! { <p class="hint" data-code={mistake.code()}>{ shared.say(mistake.code()) }</p> };
        }
    };
    let save = {
        let code = code.clone();
        move || download::offer("brimline-practice.txt", "text/plain", &format!("{code}\n"))
    };
    html! {
        <div class="handing" data-code="" role="status">
            { for qr(shared, "practice-code-qr", &code) }
            <Copy shared={shared.clone()} name="practice-code" text={code.clone()} />
            <div class="buttons">{ press(shared, "practice-code-save", save) }</div>
            <p class="hint">{ shared.tell("practice-code-holds", &[("date", shared.day(&run.day))]) }</p>
        </div>
    }
}
