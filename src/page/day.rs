//! A day as a language writes it: the browser knows how (`Intl.DateTimeFormat`, with the tables of Unicode CLDR).

use super::log::script::{call, get, window};
use crate::trade::calendar::Date;
use wasm_bindgen::JsValue;

/// The month is a word: 11/7 has two readings. Midnight in UTC, shown in UTC: the day does not move.
const STYLE: &str = r#"{"dateStyle":"medium","timeZone":"UTC"}"#;

/// A day in a language, in the manner of the reader's own place where the browser names it. What is no day, and a day
/// in a language that the browser has no tables for, stays as it is: ISO 8601 has one reading.
pub fn written(language: &str, iso: &str) -> String {
    let told = Date::read(iso).and_then(|_| in_words(language, iso).ok()?.as_string());
    told.unwrap_or_else(|| iso.to_owned())
}

fn in_words(language: &str, iso: &str) -> Result<JsValue, JsValue> {
    let page = window();
    let read = call(&get(&get(&page, "navigator")?, "languages")?, "join", &[&" ".into()])?;
    let read = read.as_string().unwrap_or_default();
    let place =
        read.split(' ').find(|tag| tag.split('-').next() == Some(language)).unwrap_or(language).into();
    let intl = get(&page, "Intl")?;
    let known = call(&get(&intl, "DateTimeFormat")?, "supportedLocalesOf", &[&place])?;
    // The first tag that is known; the browser would take its own language for another one.
    let place = get(&known, "0")?.as_string().ok_or(JsValue::NULL)?.into();
    let style = call(&get(&page, "JSON")?, "parse", &[&STYLE.into()])?;
    let date: JsValue = js_sys::Date::new(&iso.into()).into();
    call(&call(&intl, "DateTimeFormat", &[&place, &style])?, "format", &[&date])
}
