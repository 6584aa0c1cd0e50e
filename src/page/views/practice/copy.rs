//! A text to copy: the button copies it where the browser lets it, and marks it for the keyboard in any case.

use crate::page::shared::Shared;
use wasm_bindgen::{JsCast, JsValue};
use wasm_bindgen_futures::JsFuture;
use web_sys::HtmlTextAreaElement;
use yew::prelude::*;

/// What is copied.
#[derive(Properties, PartialEq)]
pub struct CopyProps {
    /// What every part needs.
    pub shared: Shared,
    /// The stable name of the field; the button’s has `-copy` behind it. Key of its label.
    pub name: &'static str,
    /// The text.
    pub text: String,
}

/// A field that holds the text, and its button.
#[component]
pub fn Copy(props: &CopyProps) -> Html {
    let CopyProps { shared, name, text } = props;
    let told = use_state(|| None::<&'static str>);
    let field = use_node_ref();
    let onclick = {
        let (field, told, text) = (field.clone(), told.clone(), text.clone());
        move |_: MouseEvent| {
            if let Some(field) = field.cast::<HtmlTextAreaElement>() {
                // A field that takes no focus is marked all the same.
                let _ = field.focus();
                field.select();
            }
            let (told, text) = (told.clone(), text.clone());
            yew::platform::spawn_local(async move {
                told.set(Some(if copied(&text).await { "practice-copied" } else { "practice-marked" }));
            });
        }
    };
    html! {
        <div class="field">
            <label for={*name}>{ shared.say(name) }</label>
            <textarea ref={field} class="key copied" id={*name} name={*name} rows="4" readonly=true value={text.clone()} />
            // Paper cannot scroll: there it stands whole.
            <p class="key on-paper">{ text }</p>
            <div class="buttons">
                <button type="button" name={format!("{name}-copy")} {onclick}>{ shared.say("practice-copy") }</button>
                <span role="status">{ for told.map(|key| shared.say(key)) }</span>
            </div>
        </div>
    }
}

/// Hands the text to the browser; it has no place for it where the page was opened without encryption.
async fn copied(text: &str) -> bool {
    let navigator = gloo::utils::window().navigator();
    let of = |object: &JsValue, name: &str| js_sys::Reflect::get(object, &name.into()).ok();
    let Some(clipboard) = of(&navigator, "clipboard").filter(JsValue::is_object) else { return false };
    let Some(write) = of(&clipboard, "writeText").and_then(|it| it.dyn_into::<js_sys::Function>().ok())
    else {
        return false;
    };
    let Some(promise) =
        write.call1(&clipboard, &text.into()).ok().and_then(|it| it.dyn_into::<js_sys::Promise>().ok())
    else {
        return false;
    };
    JsFuture::from(promise).await.is_ok()
}
