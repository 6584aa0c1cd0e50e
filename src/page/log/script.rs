//! Calls into the browser by name. Each typed binding is a function of its own in the glue, and the glue is in the
//! first load, which does without the log: these few serve all of it.

use js_sys::{Array, Function, Reflect};
use wasm_bindgen::{JsCast, JsValue};

/// A property.
pub fn get(of: &JsValue, name: &str) -> Result<JsValue, JsValue> {
    Reflect::get(of, &name.into())
}

/// Sets a property.
pub fn set(of: &JsValue, name: &str, value: &JsValue) -> Result<(), JsValue> {
    Reflect::set(of, &name.into(), value).map(drop)
}

/// Calls a method. One that is not there is an error, as one that throws is.
pub fn call(of: &JsValue, name: &str, with: &[&JsValue]) -> Result<JsValue, JsValue> {
    let method: Function = get(of, name)?.dyn_into()?;
    method.apply(of, &list(with))
}

/// Makes an object of a class of the window.
pub fn make(class: &str, with: &[&JsValue]) -> Result<JsValue, JsValue> {
    let class: Function = get(&window(), class)?.dyn_into()?;
    Reflect::construct(&class, &list(with))
}

/// The window.
pub fn window() -> JsValue {
    gloo::utils::window().into()
}

fn list(with: &[&JsValue]) -> Array {
    with.iter().copied().collect()
}
