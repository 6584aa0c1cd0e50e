//! A product from the pasted text of its safety data sheet: what is found stands beside its line, can be
//! corrected there, and is taken only where a person ticked it.

mod keeping;
mod said;

use crate::form::Action;
use crate::form::pasted::Corrections;
use crate::page::components::loose_field;
use crate::page::focus;
use crate::page::keep::after_paint::after_paint;
use crate::page::keep::pasted;
use crate::page::shared::Shared;
use crate::site::sheet::{Corrected, Finding, Piece, Sheet, Statements, read, take};
use crate::words::Argument;
use keeping::use_keeping;
use said::{place, summary, told};
use std::rc::Rc;
use web_sys::{HtmlInputElement, HtmlTextAreaElement};
use yew::prelude::*;

/// The id of the line that says what was taken.
const TAKEN: &str = "sheet-taken";

#[derive(Properties, PartialEq)]
pub struct SheetReaderProps {
    /// What every part needs.
    pub shared: Shared,
}

/// A component, since it remembers what was found, ticked and corrected; what was pasted is kept on the device.
#[component]
pub fn SheetReader(props: &SheetReaderProps) -> Html {
    let shared = &props.shared;
    let area = use_node_ref();
    let first = use_memo((), |()| pasted::now().text.clone());
    let (kept, soon) = use_keeping();
    let found = use_state(|| None::<Rc<Sheet>>);
    let ticked = use_state(Vec::<usize>::new);
    let typed = use_state(Corrections::new);
    // What an earlier visit left is shown until something is done here.
    let touched = use_mut_ref(|| false);
    let taken_into = use_state(|| None::<String>);
    let named = shared.typed.product().map(|product| product.name.clone()).unwrap_or_default();
    // What was ticked was ticked for one product: another one begins without.
    let id = shared.typed.product().map(|product| product.id.clone()).unwrap_or_default();
    {
        let (ticked, taken_into, soon) = (ticked.clone(), taken_into.clone(), soon.clone());
        use_effect_with(id.clone(), move |id| {
            taken_into.set(None);
            if pasted::now().product != *id {
                ticked.set(Vec::new());
                pasted::change(|pasted| {
                    pasted.product.clone_from(id);
                    pasted.ticked.clear();
                });
                soon.emit(());
            }
        });
    }
    {
        let (shared, found, touched) = (shared.clone(), found.clone(), touched.clone());
        let (ticked, typed) = (ticked.clone(), typed.clone());
        // Other words know other statements; those of the reader's language may come later.
        use_effect_with(Rc::as_ptr(&shared.words), move |_| {
            let waits = (!*touched.borrow() && pasted::now().looked).then(|| {
                after_paint(move || {
                    let pasted = pasted::now();
                    let Some(text) = pasted.looked_through().filter(|_| !*touched.borrow()) else { return };
                    let sheet = look_through(&shared, text);
                    if let Some((are_ticked, were_typed)) = pasted.marks(&sheet, shared.marks()) {
                        ticked.set(are_ticked);
                        typed.set(were_typed);
                        *touched.borrow_mut() = true;
                    }
                    found.set(Some(sheet));
                })
            });
            move || drop(waits)
        });
    }
    let mark = {
        let (found, touched, soon) = (found.clone(), touched.clone(), soon.clone());
        let (ticked, typed) = (ticked.clone(), typed.clone());
        Callback::from(move |(are_ticked, were_typed): (Vec<usize>, Corrections)| {
            *touched.borrow_mut() = true;
            if let Some(sheet) = found.as_ref() {
                pasted::change(|pasted| pasted.mark(sheet, &are_ticked, &were_typed));
                soon.emit(());
            }
            ticked.set(are_ticked);
            typed.set(were_typed);
        })
    };
    let oninput = {
        let soon = soon.clone();
        move |event: InputEvent| {
            let text = event.target_unchecked_into::<HtmlTextAreaElement>().value();
            pasted::change(|pasted| pasted.type_in(text));
            soon.emit(());
        }
    };
    let corrected = found.as_ref().map(|sheet| Rc::new(sheet.corrected(&typed, shared.marks())));
    let onread = {
        let (shared, area, found) = (shared.clone(), area.clone(), found.clone());
        let (ticked, typed) = (ticked.clone(), typed.clone());
        let (taken_into, touched, id) = (taken_into.clone(), touched.clone(), id.clone());
        move |_: MouseEvent| {
            taken_into.set(None);
            let Some(area) = area.cast::<HtmlTextAreaElement>() else { return };
            let text = area.value();
            let sheet = look_through(&shared, &text);
            *touched.borrow_mut() = true;
            pasted::change(|pasted| pasted.look(text, &id, &sheet));
            soon.emit(());
            found.set(Some(sheet));
            ticked.set(Vec::new());
            typed.set(Corrections::new());
        }
    };
    // One whose correction is not understood is not taken, ticked or not.
    let taken: Vec<usize> = corrected.as_ref().map_or_else(Vec::new, |corrected| {
        ticked.iter().copied().filter(|index| !corrected.mistakes.contains_key(index)).collect()
    });
    let ontake = {
        let (shared, found, ticked, taken) = (shared.clone(), found.clone(), ticked.clone(), taken.clone());
        let (typed, corrected) = (typed.clone(), corrected.clone());
        let (taken_into, named) = (taken_into.clone(), named.clone());
        move |_: MouseEvent| {
            let Some(corrected) = &corrected else { return };
            let accepted: Vec<Finding> =
                taken.iter().filter_map(|index| corrected.findings.get(*index).cloned()).collect();
            let mut whole = (*shared.typed).clone();
            if let Some(product) = whole.product_mut() {
                *product = take(product, &accepted, shared.marks());
                shared.act.emit(Action::Replace(Box::new(whole)));
                taken_into.set(Some(named.clone()));
                pasted::forget();
            }
            found.set(None);
            ticked.set(Vec::new());
            typed.set(Corrections::new());
            // The button goes; what is to be done next is said where it was taken.
            focus::soon(TAKEN.to_owned());
        }
    };
    let correct = {
        let ticked = ticked.clone();
        mark.reform(move |corrected: Corrections| ((*ticked).clone(), corrected))
    };
    let line = |index: usize, read: &Finding, corrected: &Corrected| {
        let mistake = corrected.mistakes.get(&index).copied();
        let now = &corrected.findings[index];
        let onchange = {
            let (ticked, typed, mark) = (ticked.clone(), typed.clone(), mark.clone());
            move |event: Event| {
                let mut next: Vec<usize> = ticked.iter().copied().filter(|one| *one != index).collect();
                if event.target_unchecked_into::<HtmlInputElement>().checked() {
                    next.push(index);
                }
                mark.emit((next, (*typed).clone()));
            }
        };
        let name = format!("sheet-{}", index + 1);
        html! {
            <li>
                <label class="switch">
                    <input type="checkbox" id={name.clone()} name={name.clone()} {onchange}
                        checked={taken.contains(&index)} disabled={mistake.is_some()} />
                    <span><strong>{ told(shared, &now.what) }</strong></span>
                </label>
                <p class="hint">{ place(shared, read) }</p>
                if now.what != read.what { <p class="hint">{ shared.say("sheet-corrected") }</p> }
                { for now.doubts.iter().map(|doubt| html! { <p class="unknown">{ shared.say(doubt.key()) }</p> }) }
                { pieces(shared, &name, read, &typed, index, mistake, &correct) }
            </li>
        }
    };
    // One that has no name yet is of no other product.
    let other =
        found.as_ref().filter(|_| !named.trim().is_empty()).and_then(|sheet| sheet.bears_other_than(&named));
    html! {
        <>
            <p>{ shared.say("sheet-hint") }</p>
            <div class="field">
                <label for="sheet-text">{ shared.say("sheet-text") }</label>
                <textarea id="sheet-text" name="sheet-text" rows="6" ref={area}
                    defaultvalue={(*first).clone()} {oninput} aria-describedby={(!kept).then_some("sheet-text-unkept")} />
                if !kept { <p id="sheet-text-unkept" class="mistake" role="alert">{ shared.say("sheet-unkept") }</p> }
            </div>
            <div class="buttons">
                <button type="button" name="sheet-read" onclick={onread}>{ shared.say("sheet-read") }</button>
            </div>
            if let Some(into) = &*taken_into {
                <p role="status" id={TAKEN} tabindex="-1">{ shared.tell("sheet-taken", &[("product", Argument::text(into.clone()))]) }</p>
            }
            if let (Some(sheet), Some(corrected)) = (found.as_ref(), &corrected) {
                <div role="status">{ summary(shared, sheet) }</div>
                { for corrected.clashes.iter().map(|clash| html! { <p class="mistake">{ shared.say(clash.what.key()) }</p> }) }
                <ol class="findings">
                    { for sheet.findings.iter().enumerate().map(|(index, read)| line(index, read, corrected)) }
                </ol>
                if !sheet.findings.is_empty() {
                    if let Some(other) = other {
                        <p class="unknown" id="sheet-named">{ shared.tell("sheet-named", &[
                            ("sheet", Argument::text(other)),
                            ("product", Argument::text(named.clone())),
                        ]) }</p>
                    }
                    <div class="buttons">
                        <button type="button" name="sheet-take" onclick={ontake} disabled={taken.is_empty()}
                            aria-describedby={other.map(|_| "sheet-named")}>
                            { shared.tell("sheet-take", &[
                                ("n", Argument::number(taken.len() as f64, taken.len().to_string())),
                                ("product", Argument::text(named.clone())),
                            ]) }
                        </button>
                    </div>
                }
            }
        </>
    }
}

fn look_through(shared: &Shared, text: &str) -> Rc<Sheet> {
    Rc::new(read(text, &Statements::of(|key| shared.words.find(key))))
}

/// The values of a finding, to correct beside its line.
fn pieces(
    shared: &Shared,
    name: &str,
    read: &Finding,
    typed: &UseStateHandle<Corrections>,
    index: usize,
    mistake: Option<Piece>,
    correct: &Callback<Corrections>,
) -> Html {
    let all = read.pieces(shared.marks());
    if all.is_empty() {
        return Html::default();
    }
    let texts: Vec<String> =
        typed.get(&index).cloned().unwrap_or_else(|| all.iter().map(|(_, text)| text.clone()).collect());
    let field = |(at, (piece, _)): (usize, &(Piece, String))| {
        let oninput = {
            let (typed, texts, correct) = (typed.clone(), texts.clone(), correct.clone());
            move |text: String| {
                let mut next = (*typed).clone();
                let mut texts = texts.clone();
                texts[at] = text;
                next.insert(index, texts);
                correct.emit(next);
            }
        };
        loose_field(
            format!("{name}-{}", piece.name()),
            shared.say(piece.key()),
            texts[at].clone(),
            mistake.filter(|one| one == piece).map(|piece| shared.say(piece.mistake())),
            oninput.into(),
        )
    };
    html! {
        <details class="more">
            <summary>{ shared.tell("sheet-correct", &[("line", Argument::text(read.line.to_string()))]) }</summary>
            <div class="fields">{ for all.iter().enumerate().map(field) }</div>
        </details>
    }
}
