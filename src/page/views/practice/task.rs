//! One task: what is asked, the answer, what came of it, the workings.

use super::{answer, count, picture, press};
use crate::page::focus;
use crate::page::keep::practice::at_desk;
use crate::page::keep::today;
use crate::page::shared::Shared;
use crate::practice::{Exercise, Run, Verdict};
use crate::words::Argument;
use yew::prelude::*;

/// The task that is asked.
///
/// * `of`: how many there are.
pub fn task(shared: &Shared, run: &Run, exercise: &Exercise, of: usize) -> Html {
    let (marks, closed) = (shared.marks(), run.is_closed());
    let verdict = run.verdict(exercise, marks);
    let next = || {
        at_desk(|desk| desk.run.go_on(&today::now()));
        focus::soon("practice-task".to_owned());
    };
    let onsubmit = {
        let exercise = exercise.clone();
        move |event: SubmitEvent| {
            event.prevent_default();
            if closed {
                return next();
            }
            at_desk(|desk| {
                desk.run.check(&exercise, marks);
                // What is over can be typed into no more: the focus goes to what is told, with the way on behind it.
                if desk.run.is_closed() {
                    focus::soon("practice-verdict".to_owned());
                } else {
                    answer::retry(&desk.run, &exercise);
                }
            });
        }
    };
    let leave = || {
        at_desk(|desk| desk.run = Run::default());
        focus::soon("practice-choose".to_owned());
    };
    let at = usize::try_from(run.at).unwrap_or_default() + 1;
    let progress = [("n", count(shared, at)), ("of", count(shared, of))];
    let (last, first) =
        exercise.asked.split_last().map_or((None, &[][..]), |(last, first)| (Some(last), first));
    let sentences: Vec<String> = first.iter().map(|said| shared.words.said(said, exercise)).collect();
    let topic = shared.say(&format!("practice-topic-{}", exercise.topic.code()));
    html! {
        <div class="task-at" key={run.at}>
            <p data-progress={at.to_string()}>{ shared.tell("practice-progress", &progress) }</p>
            <h2 id="practice-task" tabindex="-1">{ topic }</h2>
            <p>{ sentences.join(" ") }</p>
            <p id="practice-ask"><strong>{ for last.map(|said| shared.words.said(said, exercise)) }</strong></p>
            <form {onsubmit}>
                { answer::answer(shared, run, exercise) }
                <div id="practice-verdict" class="verdict" role="status" tabindex="-1" data-verdict={verdict.as_ref().map(code)}>
                    { for verdict.as_ref().map(|verdict| told(shared, run, exercise, verdict)) }
                </div>
                <div class="buttons">
                    if closed {
                        <button type="submit" name="practice-next">{ shared.say(if at == of { "practice-end" } else { "practice-next" }) }</button>
                    } else {
                        <button type="submit" name="practice-check">{ shared.say("practice-check") }</button>
                        { press(shared, "practice-skip", next) }
                    }
                </div>
            </form>
            if closed { { solution(shared, exercise) } }
            <p class="hint">{ shared.tell("practice-from", &[("site", Argument::text(run.session.stock.name.trim()))]) }{ " " }{ shared.say("practice-governs") }</p>
            <details class="more">
                <summary>{ shared.say("practice-stop") }</summary>
                <p>{ shared.say("practice-stop-hint") }</p>
                <div class="buttons">{ press(shared, "practice-leave", leave) }</div>
            </details>
        </div>
    }
}

/// The code of what came of an answer.
fn code(verdict: &Verdict) -> &'static str {
    match verdict {
        Verdict::Right => "right",
        Verdict::Rounded => "rounded",
        Verdict::Wrong { .. } => "wrong",
        Verdict::NotRead(_) | Verdict::NotAbove => "not-read",
    }
}

fn told(shared: &Shared, run: &Run, exercise: &Exercise, verdict: &Verdict) -> Html {
    let said = match verdict {
        // There is no other try to ask for.
        Verdict::Wrong { way: None, harm } if run.is_closed() => {
            let harm = harm.map(|harm| shared.say(&format!("practice-harm-{}", harm.code())));
            let last = std::iter::once(shared.say("practice-wrong-last"));
            Some(last.chain(harm).collect::<Vec<_>>().join(" "))
        }
        _ => run
            .judged
            .first()
            .map(|given| given.as_reply(exercise, |reply| shared.words.verdict(exercise, reply, verdict))),
    };
    let more = match verdict {
        Verdict::Wrong { .. } if run.is_closed() => {
            let right = Argument::text(shared.words.right_answer(exercise));
            Some(shared.tell("practice-right-is", &[("answer", right)]))
        }
        Verdict::Wrong { .. } => Some(shared.say("practice-once-more")),
        _ => None,
    };
    let class = if verdict.is_right() { "remark news" } else { "remark" };
    html! { <div {class}><p><strong>{ for said }</strong></p>{ for more.map(|more| html! { <p>{ more }</p> }) }</div> }
}

/// The picture of the fill, and the workings, which unfold on demand.
fn solution(shared: &Shared, exercise: &Exercise) -> Html {
    html! {
        <>
            { for exercise.picture.as_ref().map(|drawn| picture::picture(shared, exercise, drawn)) }
            <details class="workings">
                <summary>{ shared.say("workings") }</summary>
                <ol>
                    { for shared.words.workings(exercise).into_iter().map(|line| html! {
                        <li><p>{ line.text }</p><p class="source">{ line.source }</p></li>
                    }) }
                </ol>
            </details>
        </>
    }
}
