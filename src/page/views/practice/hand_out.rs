//! Handing a session out: a link, its code, and paper.

use super::choose::Fields;
use super::copy::Copy;
use super::{Props, about, count, offered, paper};
use crate::page::drawing::qr;
use crate::page::keep::practice::change;
use crate::page::shared::Shared;
use crate::page::views::log::fields::select;
use crate::page::views::site::{no_way_here, outer_address};
use crate::practice::{Exercise, Session, Stock};
use crate::site::passing::link::pack;
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// Makes a session, and shows the one that is looked at.
#[component]
pub fn HandOut(props: &Props) -> Html {
    let (shared, desk) = (&props.shared, &props.held.desk);
    let looked_at = desk.looked_at().cloned().unwrap_or_default();
    let exercises = use_memo(looked_at.clone(), Session::exercises);
    let onmade = |session: Session| {
        change(|held| Rc::make_mut(&mut held.desk).give(session.for_all(), &held.register));
    };
    html! {
        <>
            <section aria-labelledby="practice-hand-out-heading">
                <h2 id="practice-hand-out-heading">{ shared.say("practice-hand-out-heading") }</h2>
                <p>{ shared.say("practice-hand-out-hint") }</p>
                <Fields shared={shared.clone()} desk={desk.clone()} button="practice-make" {onmade} />
            </section>
            <div role="status">
                if !desk.given.is_empty() { { given(props, &looked_at, &exercises) } }
            </div>
        </>
    }
}

/// The session that is looked at, and how it reaches people.
fn given(props: &Props, session: &Session, exercises: &[Exercise]) -> Html {
    let shared = &props.shared;
    html! {
        <section aria-labelledby="practice-given-heading">
            <h2 id="practice-given-heading">{ shared.say("practice-given-heading") }</h2>
            { choose(shared, props, session) }
            { about(shared, session) }
            { smaller(shared, session) }
            { link(shared, session) }
            { paper::paper(shared, session, exercises) }
        </section>
    }
}

/// Which session is looked at; nothing where there is but one.
pub fn choose(shared: &Shared, props: &Props, shown: &Session) -> Html {
    let given = &props.held.desk.given;
    if given.len() < 2 {
        return Html::default();
    }
    let option = |one: &Session| {
        let check = one.check();
        let told = [
            ("seed", Argument::text(one.seed.to_string())),
            ("level", Argument::text(shared.say(&format!("practice-level-{}", one.level.code())))),
            ("n", count(shared, usize::try_from(one.count).unwrap_or_default())),
            ("check", Argument::text(&*check)),
        ];
        (check.clone(), shared.tell("practice-given-one", &told))
    };
    let options = given.iter().rev().map(option).collect();
    select("practice-given", shared.say("practice-given"), options, &shown.check(), |check| {
        change(|held| Rc::make_mut(&mut held.desk).shown = check);
    })
}

/// That a code had no room for all records.
fn smaller(shared: &Shared, session: &Session) -> Html {
    let size = |stock: &Stock| {
        stock.machines.len() + stock.products.len() + stock.floors.len() + stock.measures.len()
    };
    let whole = Stock::of(&shared.typed.site, shared.system(), shared.marks());
    if whole.name != session.stock.name || size(&whole) <= size(&session.stock) {
        return Html::default();
    }
    html! { <p class="hint" data-smaller="">{ shared.say("practice-smaller") }</p> }
}

/// The link and its code, or why there is none.
fn link(shared: &Shared, session: &Session) -> Html {
    if let Some(why) = no_way_here(shared) {
        return html! { <p class="unknown" data-lacks="link">{ why }</p> };
    }
    let made = outer_address(shared).ok().zip(pack(session).ok());
    let link = made.map(|(address, payload)| format!("{address}{}{payload}", offered::MARK));
    let drawn = link.and_then(|link| Some((qr(shared, "practice-qr", &link)?, link)));
    let Some((drawing, link)) = drawn else {
        return html! { <p class="unknown" data-lacks="link">{ shared.say("practice-session-link") }</p> };
    };
    html! {
        <div class="handing" data-link={link.clone()}>
            { drawing }
            <p>{ shared.say("practice-scan") }</p>
            <Copy shared={shared.clone()} name="practice-link" text={link} />
        </div>
    }
}
