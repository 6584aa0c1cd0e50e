//! A day, or a month, as a language writes it: the browser knows how (`Intl.DateTimeFormat`, with the tables of Unicode CLDR).

use super::log::script::{call, get, window};
use crate::trade::calendar::Date;
use crate::words::Words;
use wasm_bindgen::JsValue;

/// The month is a word: 11/7 has two readings. Midnight in UTC, shown in UTC: the day does not move.
const STYLE: &str = r#"{"dateStyle":"medium","timeZone":"UTC"}"#;
const MONTH: &str = r#"{"month":"long","year":"numeric","timeZone":"UTC"}"#;

/// A day in a language, in the manner of the reader's own place where the browser names it. What is no day, and a day
/// in a language that the browser has no tables for, stays as it is: ISO 8601 has one reading.
pub fn written(language: &str, iso: &str) -> String {
    told(language, iso, STYLE).unwrap_or_else(|| iso.to_owned())
}

/// A month (`2026-11`) as the language of the words writes it. What is no month stays as it is.
pub fn month_in(words: &Words, iso: &str) -> String {
    told(words.language().code, &format!("{iso}-01"), MONTH).unwrap_or_else(|| iso.to_owned())
}

fn told(language: &str, iso: &str, style: &str) -> Option<String> {
    Date::read(iso).and_then(|_| in_words(language, iso, style).ok()?.as_string())
}

fn in_words(language: &str, iso: &str, style: &str) -> Result<JsValue, JsValue> {
    let page = window();
    let read = call(&get(&get(&page, "navigator")?, "languages")?, "join", &[&" ".into()])?;
    let read = read.as_string().unwrap_or_default();
    let place =
        read.split(' ').find(|tag| tag.split('-').next() == Some(language)).unwrap_or(language).into();
    let intl = get(&page, "Intl")?;
    let known = call(&get(&intl, "DateTimeFormat")?, "supportedLocalesOf", &[&place])?;
    // The first tag that is known; the browser would take its own language for another one.
    let place = get(&known, "0")?.as_string().ok_or(JsValue::NULL)?.into();
    let style = call(&get(&page, "JSON")?, "parse", &[&style.into()])?;
    let date: JsValue = js_sys::Date::new(&iso.into()).into();
    call(&call(&intl, "DateTimeFormat", &[&place, &style])?, "format", &[&date])
}
