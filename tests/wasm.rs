//! The same core and the real page in a real browser.

#![cfg(target_arch = "wasm32")]

#[path = "practice/golden.rs"]
mod golden;
#[path = "practice/stocks.rs"]
mod stocks;

use brimline::form::saved::recompute;
use wasm_bindgen_test::{wasm_bindgen_test, wasm_bindgen_test_configure};

wasm_bindgen_test_configure!(run_in_browser);

/// Answers that were worked out natively stand when the browser works them out again.
#[wasm_bindgen_test]
fn native_answers_stand_in_the_browser() {
    for file in [
        include_str!("saved/fill-schema-1.json"),
        include_str!("saved/flow-schema-1.json"),
        include_str!("saved/shift-schema-1.json"),
    ] {
        assert!(recompute(file).is_ok(), "{:?}", recompute(file));
    }
}

/// The same seed makes the same tasks, answers and wrong roads in the browser, to the last bit of each number.
#[wasm_bindgen_test]
fn sessions_are_the_same_in_the_browser() {
    golden::hold(include_str!("practice/sessions.txt"));
}

/// The page mounts, and shows the amount of its demo site: 10 gal at 1 to 64 is 19.69 fl oz, and 20
/// on a jug with 1 fl oz marks.
#[wasm_bindgen_test]
async fn the_page_mounts_and_shows_an_amount() {
    let document = gloo::utils::document();
    let app = document.create_element("div").expect("an element");
    app.set_id("app");
    document.body().expect("a body").append_child(&app).expect("it takes a child");
    brimline::page::mount();
    // The page opens in several tasks, so the amount comes when it comes: within ten seconds here.
    let mut figure = None;
    for _ in 0..200 {
        gloo::timers::future::TimeoutFuture::new(50).await;
        figure = document.query_selector("[data-answer='fill.rounded']").expect("a selector");
        if figure.is_some() {
            break;
        }
    }
    let figure = figure.expect("the amount");
    assert_eq!(figure.text_content().expect("text").replace('\u{202f}', " "), "20 fl oz");
    let si: f64 = figure.get_attribute("data-si").expect("its value").parse().expect("a number");
    assert!((si - 20.0 * 29.573_529_562_5e-6).abs() < 1e-15);
}
