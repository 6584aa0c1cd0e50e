//! What a class did: codes taken, by topic, by person, the usual wrong roads, and who has shown what until when.

use super::{Props, about, count, hand_out, learned, press, tables};
use crate::page::components::{Chosen, OpenFile, Told, Typing};
use crate::page::focus;
use crate::page::keep::download;
use crate::page::keep::practice::change;
use crate::page::shared::Shared;
use crate::page::views::log::fields::tick;
use crate::practice::{Made, Refused, Register, Session};
use std::rc::Rc;
use yew::prelude::*;

/// The results before some were taken off the device, and whether they were kept.
pub type Gone = (Rc<Register>, bool);

/// What came of the codes that were taken last.
type Taken = (usize, Vec<Refused>);

/// Takes codes and shows what they say.
#[component]
pub fn ClassPart(props: &Props) -> Html {
    let (shared, held) = (&props.shared, &props.held);
    let (desk, register) = (&held.desk, &held.register);
    let taken = use_state(|| None::<Taken>);
    let made = use_memo(desk.given.clone(), |given| {
        given.iter().map(|one| (one.clone(), one.exercises())).collect::<Vec<Made>>()
    });
    let gone = use_state(|| None::<Gone>);
    let ongone = {
        let gone = gone.clone();
        use_callback((), move |before, ()| {
            gone.set(Some(before));
            focus::soon("class-gone".to_owned());
        })
    };
    let learned = html! {
        <>
            <learned::Learned shared={shared.clone()} register={register.clone()} made={made.clone()} ongone={ongone.clone()} />
            { put_back(shared, &gone) }
        </>
    };
    let Some(session) = desk.looked_at() else {
        return html! { <><p>{ shared.say("class-no-session") }</p>{ learned }</> };
    };
    let from_field = {
        let taken = taken.clone();
        move || taken.set(Some(take(None)))
    };
    let onfile = {
        let taken = taken.clone();
        move |(file, _): (Chosen, Callback<Told>)| {
            taken.set(Some(take(Some(&String::from_utf8_lossy(&file.bytes)))));
        }
    };
    let oninput = |text: String| change(|held| held.typed = text.into());
    html! {
        <>
            <section aria-labelledby="class-heading">
                <h2 id="class-heading" tabindex="-1">{ shared.say("class-heading") }</h2>
                <Typing id="class-codes" label={shared.say("class-codes")} hint={shared.say("class-codes-hint")} mistake={None::<String>} tall=true
                    value={held.typed.to_string()} {oninput} />
                <div class="buttons">{ press(shared, "class-take", from_field) }</div>
                <OpenFile shared={shared.clone()} name="class-open" accept=".txt,text/plain" {onfile} />
                <div role="status">{ for taken.as_ref().map(|taken| told(shared, taken)) }</div>
            </section>
            { summary(props, session, &made) }
            { learned }
            <Keeping shared={shared.clone()} register={register.clone()} is_kept={held.is_kept} {ongone} />
        </>
    }
}

/// Takes the codes of a file, or of the field, where the lines that were not taken stay.
fn take(file: Option<&str>) -> Taken {
    let mut out = (0, Vec::new());
    change(|held| {
        let text = file.unwrap_or(&held.typed);
        out = Rc::make_mut(&mut held.register).take(text, &held.desk.given);
        if file.is_none() {
            held.typed = out.1.iter().map(|one| &*one.line).collect::<Vec<_>>().join("\n").into();
        }
    });
    out
}

fn told(shared: &Shared, (taken, refused): &Taken) -> Html {
    html! {
        <div class={if refused.is_empty() { "remark news" } else { "remark" }} data-taken={taken.to_string()}>
            <p>{ shared.tell("class-taken", &[("n", count(shared, *taken))]) }</p>
            if !refused.is_empty() {
                <p>{ shared.tell("class-refused", &[("n", count(shared, refused.len()))]) }</p>
                <ul>{ for refused.iter().map(|one| html! {
                    <li data-refused={one.why.code()}><span class="key">{ &one.line }</span>{ ": " }{ shared.say(one.why.code()) }</li>
                }) }</ul>
            }
        </div>
    }
}

fn summary(props: &Props, session: &Session, made: &[Made]) -> Html {
    let (shared, register) = (&props.shared, &props.held.register);
    let class = register.class(session);
    let exercises = made.iter().find(|(one, _)| one == session).map_or(&[][..], |(_, exercises)| exercises);
    html! {
        <section aria-labelledby="class-summary">
            <h2 id="class-summary">{ shared.say("class-summary") }</h2>
            { hand_out::choose(shared, props, session) }
            { about(shared, session) }
            if class.attempts().is_empty() {
                <p>{ shared.say("class-none") }</p>
            } else {
                { tables::by_topic(shared, &class, exercises) }
                { tables::by_person(shared, &class) }
                { tables::roads(shared, &class) }
            }
        </section>
    }
}

/// What was taken off the device last, and the way to put it back, until somebody looks elsewhere.
fn put_back(shared: &Shared, gone: &UseStateHandle<Option<Gone>>) -> Html {
    let Some((before, was_kept)) = (**gone).clone() else { return Html::default() };
    let back = {
        let gone = gone.clone();
        move || {
            change(|held| {
                let codes = &mut Rc::make_mut(&mut held.register).codes;
                // What was taken since stays, too.
                codes.extend(
                    before.codes.iter().filter(|one| !codes.contains(one)).cloned().collect::<Vec<_>>(),
                );
                held.is_kept |= was_kept;
            });
            gone.set(None);
            focus::soon("class-heading".to_owned());
        }
    };
    html! {
        <div class="remark news" id="class-gone" tabindex="-1" role="status" data-remark="class-gone">
            <p>{ shared.say("class-gone") }</p>
            <div class="buttons">{ press(shared, "class-put-back", back) }</div>
        </div>
    }
}

/// What the part needs that keeps the results.
#[derive(Properties, PartialEq)]
struct KeepingProps {
    shared: Shared,
    register: Rc<Register>,
    is_kept: bool,
    ongone: Callback<Gone>,
}

/// Whether the results stay on this device, and how they are taken off it.
#[component]
fn Keeping(props: &KeepingProps) -> Html {
    let KeepingProps { shared, register, is_kept, ongone } = props;
    let (is_kept, asks) = (*is_kept, use_state(|| false));
    let save = {
        let codes = register.codes.join("\n");
        move || download::offer("brimline-class.txt", "text/plain", &format!("{codes}\n"))
    };
    let keep = |on: bool| change(|held| held.is_kept = on);
    let ask = |wanted: bool| {
        let asks = asks.clone();
        move || asks.set(wanted)
    };
    let erase = {
        let (asks, ongone) = (asks.clone(), ongone.clone());
        move || {
            asks.set(false);
            let mut before = None;
            change(|held| {
                before = Some((held.register.clone(), held.is_kept));
                Rc::make_mut(&mut held.register).codes.clear();
                held.is_kept = false;
            });
            if let Some(before) = before {
                ongone.emit(before);
            }
        }
    };
    let n = [("n", count(shared, register.codes.len()))];
    let any = !register.codes.is_empty();
    html! {
        <section aria-labelledby="class-keeping">
            <h2 id="class-keeping">{ shared.say("class-keeping") }</h2>
            <p>{ shared.say("class-keeping-hint") }</p>
            { tick("class-keep".to_owned(), shared.say("class-keep"), is_kept, keep) }
            <p role="status">{ shared.say(if is_kept { "class-kept" } else { "class-not-kept" }) }</p>
            if any {
                <div class="buttons">{ press(shared, "class-save", save) }{ press(shared, "class-erase", ask(true)) }</div>
            }
            if any && *asks {
                <div class="remark" role="alert" data-remark="class-erase">
                    <p>{ shared.tell("class-erase-warning", &n) }</p>
                    <div class="buttons">{ press(shared, "class-erase-do", erase) }{ press(shared, "class-erase-leave", ask(false)) }</div>
                </div>
            }
        </section>
    }
}
