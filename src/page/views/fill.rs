//! Fill: how much concentrate goes into this fill.

use crate::answer::{Answer, Value};
use crate::form::action::Shelf;
use crate::form::fill::{Fill, work};
use crate::form::saved::View;
use crate::form::{Action, Field, Filling, names};
use crate::page::components::{
    Amount, AnswerTools, Assumptions, CautionStrip, Choice, Computed, Fact, Glance, NumberField, Picker,
    Remarks, Stop, Troubles, Workings,
};
use crate::page::drawing::JugAndTank;
use crate::page::editors::{LabelField, MachineBasics, MeasureEditor, Mistakes, ProductBasics};
use crate::page::shared::{Shared, use_shared};
use crate::site::Dispenser;
use crate::trade::governing::Aim;
use crate::trade::label::{Label, Rule};
use crate::units::{Kind, System, unit};
use crate::words::Argument;
use std::rc::Rc;
use yew::prelude::*;

/// The view.
#[component]
pub fn FillView() -> Html {
    let shared = use_shared();
    let fill = work(&shared.typed, shared.marks());
    let mistakes = Mistakes::of(&fill.outcome);
    html! {
        <div class="view fill">
            <section class="question" aria-labelledby="fill-heading">
                <h1 id="fill-heading">{ shared.say("fill-heading") }</h1>
                { question(&shared, &fill, &mistakes) }
            </section>
            <section id="answer" class="answer" tabindex="-1" aria-label={shared.say("answer")}>
                { answer(&shared, &fill, &mistakes) }
            </section>
        </div>
    }
}

fn question(shared: &Shared, fill: &Fill, mistakes: &Mistakes) -> Html {
    let ask = &shared.typed.ask;
    let range = |label: &Label| match &label.rule {
        Rule::Strength(window) => !window.is_point(),
        Rule::PerTank(window) => !window.is_point(),
    };
    let aim = |one: Aim| (one.code().to_owned(), shared.say(&format!("aim-{}", one.code())));
    let filling = |one: Filling| (one.code().to_owned(), shared.say(&format!("filling-{}", one.code())));
    let number = |field: Field| html! { <NumberField {field} trouble={mistakes.at(&field.name())} /> };
    html! {
        <>
            <div class="fields">
                <Picker shelf={Shelf::Machine} />
                { number(Field::Tank) }
                <div>
                    { number(Field::Level) }
                    { levels(shared) }
                </div>
                <Picker shelf={Shelf::Product} />
                <LabelField mistakes={mistakes.clone()} />
                if fill.label.as_ref().is_some_and(range) {
                    <Choice name="fill-aim" label={shared.say("fill-aim")}
                        options={Aim::ALL.map(aim).to_vec()} chosen={ask.aim.code().to_owned()}
                        onchoose={shared.on(|code: String| Action::Aim(Aim::from_code(&code).unwrap_or_default()))} />
                }
                <Picker shelf={Shelf::Measure} />
                <Picker shelf={Shelf::Floor} />
            </div>
            <MachineBasics mistakes={mistakes.clone()} />
            <ProductBasics />
            <details class="more">
                <summary>{ shared.say("fill-more") }</summary>
                <Choice name="fill-filling" label={shared.say("fill-filling")}
                    options={Filling::ALL.map(filling).to_vec()} chosen={ask.filling.code().to_owned()}
                    onchoose={shared.on(|code: String| Action::Filling(Filling::from_code(&code).unwrap_or_default()))} />
                <MeasureEditor mistakes={mistakes.clone()} />
            </details>
            <Glance text={glance(shared, fill)} />
        </>
    }
}

/// The four levels that a tank's marks show.
fn levels(shared: &Shared) -> Html {
    html! {
        <div class="levels" role="group" aria-label={shared.say("fill-levels")}>
            { for ["25", "50", "75", "100"].map(|share| {
                let entry = &shared.typed.ask.level;
                let pressed = entry.text == share && entry.unit == "percent";
                let act = shared.act.clone();
                let onclick = move |_| {
                    act.emit(Action::Unit(Field::Level, "percent".to_owned()));
                    act.emit(Action::Write(Field::Level, share.to_owned()));
                };
                html! {
                    <button type="button" name={format!("level-{share}")} {onclick} aria-pressed={pressed.to_string()}>
                        { shared.say(&format!("fill-level-{share}")) }
                    </button>
                }
            }) }
        </div>
    }
}

fn answer(shared: &Shared, fill: &Fill, mistakes: &Mistakes) -> Html {
    let answer = &fill.outcome.answer;
    let remarks = Rc::new(answer.remarks.clone());
    if answer.stopped() {
        return html! { <><Stop {remarks} /><CautionStrip /></> };
    }
    let Some(dose) = answer.get(names::FILL_DOSE) else {
        return html! { <Troubles troubles={mistakes.all()} /> };
    };
    html! {
        <>
            <Troubles troubles={mistakes.all()} />
            { amount(shared, fill, dose) }
            <Remarks remarks={remarks.clone()} />
            { drawing(shared, fill, dose) }
            { facts(fill) }
            <CautionStrip />
            <Assumptions {remarks} />
            <Workings steps={Rc::new(answer.steps.clone())} />
            <AnswerTools view={View::Fill} />
        </>
    }
}

fn glance(shared: &Shared, fill: &Fill) -> String {
    let answer = &fill.outcome.answer;
    if answer.stopped() {
        return shared.say("glance-stop");
    }
    match answer.get(names::FILL_ROUNDED).or(answer.get(names::FILL_DOSE)) {
        Some(dose) => in_measure(shared, fill, dose),
        None => shared.say("glance-trouble"),
    }
}

/// A dose as it is measured: so many strokes or caps, or so much in the jug's own unit.
fn in_measure(shared: &Shared, fill: &Fill, dose: Value) -> String {
    match (fill.dispenser, fill.outcome.answer.get(names::FILL_COUNT)) {
        (Dispenser::Cup, _) | (_, None) => {
            step_unit(shared).map_or_else(|| shared.show(dose), |unit| shared.words.in_unit(dose.si, unit))
        }
        (dispenser, Some(count)) => {
            let n = Argument::number(count.si, shared.words.number(count.si));
            shared.tell(&format!("count-{}", dispenser.code()), &[("n", n)])
        }
    }
}

/// The measure's own unit: what is printed on the jug.
fn step_unit(shared: &Shared) -> Option<&'static crate::units::Unit> {
    shared.typed.measure().and_then(|measure| unit(&measure.step.unit))
}

fn amount(shared: &Shared, fill: &Fill, dose: Value) -> Html {
    let answer = &fill.outcome.answer;
    let (name, value) = match answer.get(names::FILL_ROUNDED) {
        Some(rounded) => (names::FILL_ROUNDED, rounded),
        None => (names::FILL_DOSE, dose),
    };
    let text = in_measure(shared, fill, value);
    let customary = if shared.system() == System::Imperial { System::Imperial } else { System::Us };
    let mut others = vec![shared.words.value(value, customary), shared.words.value(value, System::Metric)];
    others.retain(|other| *other != text);
    let both = others.join(" · ");
    let sentence = sentence(shared, answer, &text, &both);
    html! {
        <Amount {name} {value} {text} title={shared.say("fill-amount")} {sentence}>
            { both }
            if name == names::FILL_ROUNDED {
                { " " }{ shared.say("fill-exact") }{ " " }<Computed name={names::FILL_DOSE} value={dose} />
            }
        </Amount>
    }
}

/// What to do, in one sentence.
fn sentence(shared: &Shared, answer: &Answer, amount: &str, other: &str) -> String {
    let value = |name| answer.get(name).map_or(Argument::text(""), |value| shared.argument(value));
    let product = shared.typed.product().map(|product| product.name.clone()).unwrap_or_default();
    let key = match shared.typed.ask.filling {
        Filling::MadeUp => "fill-sentence-made-up",
        Filling::OnTop => "fill-sentence-on-top",
    };
    let ratio = if answer.get(names::FILL_ROUNDED_RATIO).is_some() {
        names::FILL_ROUNDED_RATIO
    } else {
        names::FILL_RATIO
    };
    shared.tell(
        key,
        &[
            ("amount", Argument::text(amount)),
            ("other", Argument::text(other)),
            ("product", Argument::text(product)),
            ("water", value(names::FILL_WATER)),
            ("total", value(names::FILL_TOTAL)),
            ("ratio", value(ratio)),
        ],
    )
}

fn drawing(shared: &Shared, fill: &Fill, dose: Value) -> Html {
    let answer = &fill.outcome.answer;
    let tank = Field::Tank
        .entry(&shared.typed)
        .and_then(|tank| tank.read::<crate::units::Volume>(Field::Tank.limit(), shared.marks()).ok());
    let (Some(tank), Some(total)) = (tank, answer.get(names::FILL_TOTAL)) else { return Html::default() };
    let tank = Value::new(tank, Kind::Fill);
    let dose = answer.get(names::FILL_ROUNDED).unwrap_or(dose);
    let step = match (answer.get(names::FILL_COUNT), fill.dispenser) {
        (Some(count), Dispenser::Cup) => Some(Value { si: dose.si / count.si, kind: Kind::Dose }),
        _ => None,
    };
    html! { <JugAndTank {tank} {total} {dose} {step} unit={step_unit(shared).map(|unit| unit.code)} /> }
}

fn facts(fill: &Fill) -> Html {
    let answer = &fill.outcome.answer;
    let figures = [
        names::FILL_COUNT,
        names::FILL_WATER,
        names::FILL_TOTAL,
        names::FILL_RATIO,
        names::FILL_ROUNDED_RATIO,
        names::FILL_STRENGTH,
        names::LABEL_LOW,
        names::LABEL_HIGH,
        names::MACHINE_LOW,
        names::MACHINE_HIGH,
    ];
    html! {
        <dl class="facts">
            { for figures.into_iter().filter_map(|name| Some((name, answer.get(name)?))).map(|(name, value)| html! {
                <Fact key_={format!("figure-{}", name.replace(['.', '_'], "-"))}><Computed {name} {value} /></Fact>
            }) }
        </dl>
    }
}
