//! The fields of the numbers. What is typed stays on the device with the other choices of the view.

use crate::form::{Outcome, What};
use crate::page::components::{Typing, shown as selected};
use crate::page::keep::practice::at_desk;
use crate::page::shared::Shared;
use crate::page::views::log::fields::{pick, select};
use crate::practice::{Input, Laid, Numbers, SLIDER, USUAL_PARTS};
use crate::site::{Machine, Record};
use crate::units::unit;
use crate::words::Argument;
use std::rc::Rc;
use web_sys::{HtmlInputElement, HtmlSelectElement};
use yew::prelude::*;

/// What a setting lays is worked out of these.
const BY_SETTING: [Input; 4] = [Input::Flow, Input::Speed, Input::Path, Input::Overlap];

/// How full a press makes the tank, in percent.
const LEVELS: [u32; 4] = [25, 50, 75, 100];

/// What was typed, in the reader's units; before anybody typed, the machine and the measure that Fill asks about.
pub fn shown(shared: &Shared, typed: &Numbers) -> Rc<Numbers> {
    let ask = &shared.typed.ask;
    let begins = typed.is_untouched();
    let mut numbers = if begins {
        Numbers::begin(&shared.typed.site, &ask.machine, &ask.measure, shared.system())
    } else {
        typed.clone()
    };
    if begins || numbers.system != shared.system() {
        numbers.put_into(shared.system(), &Input::ALL, shared.marks());
    }
    Rc::new(numbers)
}

/// Changes the numbers that are shown.
fn change(shown: &Rc<Numbers>, with: impl FnOnce(&mut Numbers)) {
    at_desk(|desk| {
        desk.numbers = (**shown).clone();
        with(&mut desk.numbers);
    });
}

/// Takes numbers from a record, in the reader's units.
fn take(shown: &Rc<Numbers>, shared: &Shared, inputs: &[Input], with: impl FnOnce(&mut Numbers)) {
    change(shown, |numbers| {
        with(numbers);
        numbers.put_into(shared.system(), inputs, shared.marks());
    });
}

/// The tank, how full it is, the ratio and the cup.
pub fn mix(shared: &Shared, numbers: &Rc<Numbers>, outcome: &Outcome) -> Html {
    html! {
        <>
            <div class="fields">
                { machine(shared, numbers) }
                { number(shared, numbers, outcome, Input::Tank) }
                <div>
                    { number(shared, numbers, outcome, Input::Level) }
                    { levels(shared, numbers) }
                </div>
                <div>
                    { parts(shared, numbers, outcome) }
                    { usual(shared, numbers) }
                </div>
            </div>
            { slider(shared, numbers) }
            <div class="fields">
                { measure(shared, numbers) }
                { number(shared, numbers, outcome, Input::Step) }
            </div>
        </>
    }
}

/// What is laid on the floor, typed or by a setting.
pub fn film(shared: &Shared, numbers: &Rc<Numbers>, outcome: &Outcome) -> Html {
    let laid = {
        let numbers = numbers.clone();
        pick(shared, "numbers-laid", numbers.laid, move |laid| change(&numbers, |typed| typed.laid = laid))
    };
    let inputs: &[Input] = match numbers.laid {
        Laid::Rate => &[Input::Rate],
        Laid::Setting => &BY_SETTING,
    };
    html! {
        <div class="fields">
            { laid }
            if numbers.laid == Laid::Setting { { setting(shared, numbers) } }
            { for inputs.iter().map(|input| number(shared, numbers, outcome, *input)) }
        </div>
    }
}

/// A number and its unit.
fn number(shared: &Shared, numbers: &Rc<Numbers>, outcome: &Outcome, input: Input) -> Html {
    let (name, label, entry) = (input.name(), shared.say(input.name()), input.of(numbers));
    let field = Some(input.field());
    let typed = (entry.text.as_str(), entry.unit.as_str());
    let mistake = outcome.at(name).map(|what| shared.words.trouble(what, &label, field, typed));
    let (writes, chooses) = (numbers.clone(), numbers.clone());
    let oninput = move |text| change(&writes, |typed| typed.write(input, text));
    let onchange = move |event: Event| {
        let code = event.target_unchecked_into::<HtmlSelectElement>().value();
        change(&chooses, |typed| typed.choose_unit(input, code));
    };
    let of_what = shared.tell("unit-of", &[("field", Argument::text(&*label))]);
    let beside = html! {
        <select class="unit" name={format!("{name}-unit")} aria-label={of_what} {onchange} ~value={selected(&entry.unit)}>
            { for input.field().units().iter().filter_map(|code| unit(code)).map(|unit| html! {
                <option value={unit.code} selected={unit.code == entry.unit}>{ shared.words.symbol(unit) }</option>
            }) }
        </select>
    };
    // Keyed: a list of units that took over another one's place would show none.
    html! { <Typing key={name} id={name} {label} {mistake} value={entry.text.clone()} number=true {beside} {oninput} /> }
}

/// The ratio, typed.
fn parts(shared: &Shared, numbers: &Rc<Numbers>, outcome: &Outcome) -> Html {
    let label = shared.say("numbers-parts");
    let typed = (numbers.parts.as_str(), "one");
    let mistake =
        outcome.at("numbers-parts").map(|what: &What| shared.words.trouble(what, &label, None, typed));
    let writes = numbers.clone();
    let oninput = move |text| change(&writes, |typed| typed.parts = text);
    html! {
        <Typing id="numbers-parts" {label} hint={shared.say("numbers-parts-hint")} {mistake} value={numbers.parts.clone()} number=true {oninput} />
    }
}

/// The ratio, by a slider that arrow keys move by one part.
fn slider(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let (least, most) = SLIDER;
    let now = numbers.parts(shared.marks()).ok();
    let text = match now {
        Some(parts) => shared.tell("numbers-ratio", &[("n", Argument::text(shared.words.number(parts)))]),
        None => "–".to_owned(),
    };
    let value = now.unwrap_or(64.0).round().clamp(f64::from(least), f64::from(most)).to_string();
    let numbers = numbers.clone();
    let oninput = move |event: InputEvent| {
        let text = event.target_unchecked_into::<HtmlInputElement>().value();
        change(&numbers, |typed| typed.parts = text);
    };
    html! {
        <div class="field">
            <label for="numbers-slider">{ shared.say("numbers-slider") }{ " " }<output for="numbers-slider">{ &text }</output></label>
            <input type="range" id="numbers-slider" name="numbers-slider" min={least.to_string()} max={most.to_string()} step="1"
                {value} aria-valuetext={text.clone()} {oninput} />
        </div>
    }
}

/// A row of buttons, one a number.
fn row(
    shared: &Shared,
    start: &'static str,
    label: &str,
    all: &[u32],
    told: impl Fn(u32) -> String,
    is_chosen: impl Fn(u32) -> bool,
    does: impl Fn(u32) + Clone + 'static,
) -> Html {
    let button = |one: &u32| {
        let (one, does) = (*one, does.clone());
        let onclick = move |_: MouseEvent| does(one);
        html! { <button type="button" name={format!("{start}-{one}")} aria-pressed={is_chosen(one).to_string()} {onclick}>{ told(one) }</button> }
    };
    html! { <div class="buttons" role="group" aria-label={shared.say(label)}>{ for all.iter().map(button) }</div> }
}

fn usual(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let now = numbers.parts(shared.marks()).ok();
    let told = |parts: u32| format!("1:{parts}");
    let does = {
        let numbers = numbers.clone();
        move |parts: u32| change(&numbers, |typed| typed.parts = parts.to_string())
    };
    let chosen = |parts| now == Some(f64::from(parts));
    row(shared, "numbers-parts", "numbers-usual", &USUAL_PARTS, told, chosen, does)
}

fn levels(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let level = &numbers.level;
    let does = {
        let numbers = numbers.clone();
        move |share: u32| {
            change(&numbers, |typed| {
                typed.write(Input::Level, share.to_string());
                typed.choose_unit(Input::Level, "percent".to_owned());
            });
        }
    };
    let chosen = |share: u32| level.unit == "percent" && level.text.trim() == share.to_string();
    row(shared, "numbers-level", "numbers-level", &LEVELS, |share| format!("{share}\u{202f}%"), chosen, does)
}

/// What stands for a number of one's own in a list of records.
fn own(shared: &Shared) -> (String, String) {
    (String::new(), shared.say("numbers-own"))
}

fn in_use(machines: &[Machine]) -> impl Iterator<Item = &Machine> {
    machines.iter().filter(|one| !one.retired())
}

fn machine(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let site = &shared.typed.site;
    let options = std::iter::once(own(shared))
        .chain(in_use(&site.machines).map(|one| (one.id.clone(), one.name.clone())))
        .collect();
    let (numbers, own) = (numbers.clone(), shared.clone());
    select("numbers-machine", shared.say("numbers-machine"), options, &numbers.machine.clone(), move |id| {
        let machine = own.typed.site.machines.iter().find(|one| one.id == id);
        take(&numbers, &own, &[Input::Tank], |numbers| match machine {
            Some(machine) => numbers.take_machine(machine),
            None => numbers.machine.clear(),
        });
    })
}

fn measure(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let offered = shared.typed.site.measures.iter().filter(|one| !one.retired() && one.dispenser.steps());
    let options =
        std::iter::once(own(shared)).chain(offered.map(|one| (one.id.clone(), one.name.clone()))).collect();
    let (numbers, own) = (numbers.clone(), shared.clone());
    select("numbers-measure", shared.say("numbers-measure"), options, &numbers.measure.clone(), move |id| {
        let measure = own.typed.site.measures.iter().find(|one| one.id == id);
        take(&numbers, &own, &[Input::Step], |numbers| match measure {
            Some(measure) => numbers.take_measure(measure),
            None => numbers.measure.clear(),
        });
    })
}

fn setting(shared: &Shared, numbers: &Rc<Numbers>) -> Html {
    let told = |machine: &Machine, number: usize| {
        let facts = [("machine", Argument::text(&*machine.name)), ("n", Argument::text(number.to_string()))];
        (format!("{} {number}", machine.id), shared.tell("numbers-setting-of", &facts))
    };
    let all = in_use(&shared.typed.site.machines)
        .flat_map(|one| (1..=one.settings.len()).map(move |number| told(one, number)));
    let options = std::iter::once(own(shared)).chain(all).collect();
    let (numbers, shared) = (numbers.clone(), shared.clone());
    select(
        "numbers-setting",
        shared.say("numbers-setting"),
        options,
        &numbers.setting.clone(),
        move |chosen| {
            let found = chosen.rsplit_once(' ').and_then(|(id, number)| {
                Some((shared.typed.site.machines.iter().find(|one| one.id == id)?, number.parse().ok()?))
            });
            take(&numbers, &shared, &BY_SETTING, |numbers| match found {
                Some((machine, number)) => numbers.take_setting(machine, number),
                None => numbers.setting.clear(),
            });
        },
    )
}
