//! What a class did: codes taken, by topic, by person, the usual wrong roads, and who has shown what until when.

use super::{Props, about, count, hand_out, learned, press, tables};
use crate::page::components::{Chosen, OpenFile, Told, Typing};
use crate::page::focus;
use crate::page::keep::download;
use crate::page::keep::practice::{Held, change};
use crate::page::keep::today;
use crate::page::log::use_log;
use crate::page::shared::Shared;
use crate::page::views::log::fields::tick;
use crate::practice::{Known, Made, Refused, Register, Session};
use crate::site::log::Lesson;
use crate::trade::calendar::Date;
use std::rc::Rc;
use yew::prelude::*;

/// What was held before some results were taken off the device.
pub type Gone = Held;

/// What came of the codes that were taken last.
type Taken = (usize, Vec<Refused>);

/// Takes codes and shows what they say.
#[component]
pub fn ClassPart(props: &Props) -> Html {
    let (shared, held) = (&props.shared, &props.held);
    let (desk, register) = (&held.desk, &held.register);
    let taken = use_state(|| None::<Taken>);
    let log = use_log();
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
    // What the log says of people whose initials were erased.
    let nameless = log.view.lessons.iter().filter(|one| one.who.is_empty());
    let nameless: Rc<[Lesson]> = nameless.map(|one| one.lesson.clone()).collect();
    let take = {
        let (taken, made) = (taken.clone(), made.clone());
        move |from: From| {
            let (nameless, today) = (&*nameless, Date::read(&today::now()));
            let known = Known { made: &made, today, nameless, sure: matches!(from, From::Doubts(_)) };
            taken.set(Some(take(&from, known)));
        }
    };
    let from_field = {
        let take = take.clone();
        move || take(From::Field)
    };
    let onfile = {
        let take = take.clone();
        move |(file, _): (Chosen, Callback<Told>)| {
            take(From::File(String::from_utf8_lossy(&file.bytes).into_owned()));
        }
    };
    let sure = {
        let (take, taken) = (take.clone(), taken.clone());
        move || {
            let refused = taken.iter().flat_map(|(_, refused)| refused);
            take(From::Doubts(
                refused.filter(|one| one.why.is_doubt()).map(|one| one.line.clone()).collect(),
            ));
        }
    };
    let asks = taken.iter().flat_map(|(_, refused)| refused).any(|one| one.why.is_doubt());
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
                if asks { <div class="buttons">{ press(shared, "class-take-sure", sure) }</div> }
            </section>
            { summary(props, session, &made) }
            { learned }
            <Keeping shared={shared.clone()} register={register.clone()} is_kept={held.is_kept} {ongone} />
        </>
    }
}

/// Where codes come from.
enum From {
    /// The field.
    Field,
    /// A file.
    File(String),
    /// Those that were asked about.
    Doubts(Vec<String>),
}

/// Takes codes. In the field the lines that were not taken stay.
fn take(from: &From, known: Known) -> Taken {
    let mut out = (0, Vec::new());
    change(|held| {
        let text = match from {
            From::Field => held.typed.to_string(),
            From::File(text) => text.clone(),
            From::Doubts(lines) => lines.join("\n"),
        };
        out = Rc::make_mut(&mut held.register).take(&text, known);
        let stay: Vec<&str> = match from {
            From::Field => out.1.iter().map(|one| &*one.line).collect(),
            From::File(_) => return,
            From::Doubts(lines) => {
                held.typed.lines().filter(|line| !lines.iter().any(|one| one == line.trim())).collect()
            }
        };
        held.typed = stay.join("\n").into();
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
                    <li data-refused={one.why.code()}><span class="key">{ shared.words.headed(&one.line) }</span>{ " " }{ shared.say(one.why.code()) }</li>
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
    let Some(before) = (**gone).clone() else { return Html::default() };
    let back = {
        let gone = gone.clone();
        move || {
            change(|held| {
                // What was taken or typed since stays, too.
                let codes = &mut Rc::make_mut(&mut held.register).codes;
                let missing = before.register.codes.iter().filter(|one| !codes.contains(one));
                codes.extend(missing.cloned().collect::<Vec<_>>());
                let now = held.typed.clone();
                let missing = before.typed.lines().filter(|line| !now.lines().any(|one| one == *line));
                held.typed = now.lines().chain(missing).collect::<Vec<_>>().join("\n").into();
                held.is_kept |= before.is_kept;
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
                before = Some(held.clone());
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
