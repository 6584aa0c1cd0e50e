//! Whatever bytes come, the readers come to an end and say something.

use crate::faults::with_faults;
use crate::times::times;
use brimline::site::passing::{Chain, Secret, backup, link, read, sign, verify, write};
use brimline::site::{Site, demo};
use proptest::prelude::*;
use proptest::test_runner::TestRunner;
use std::cell::Cell;

/// Whatever is taken can be written and read again.
fn feed(bytes: &[u8]) {
    if let Ok(opened) = read(bytes) {
        verify(&opened);
        let again = write(&opened.site).expect("what was taken goes out");
        assert_eq!(read(again).expect("and comes in").site, opened.site);
    }
    let _ = Chain::read(bytes);
    let text = String::from_utf8_lossy(bytes);
    let _ = link::unpack::<Site>(&text);
    let _ = backup::read(&text);
}

/// Pieces of site files.
fn pieces() -> impl Strategy<Value = Vec<String>> {
    let piece = prop_oneof![
        Just("{\"brimline\":\"site\",\"schema\":1,\"site\":{".to_owned()),
        prop::sample::select(vec![
            "{",
            "}",
            "[",
            "]",
            ":",
            ",",
            "\"",
            "null",
            "true",
            "1e999",
            "-0",
            "\\",
            "\\ud800",
            "\"id\":\"a\"",
            "\"areas\":[",
            "\"floors\":[{\"id\":\"a\"}]",
            "\"floor\":\"a\"",
            "\"replaces\":",
            "\"standards\":[",
            "\"name\":",
            "\"tank\":{\"text\":\"1\"}",
            "\"signed\":{\"by\":",
            "}}",
            "\u{feff}",
            " ",
            "\n",
        ])
        .prop_map(str::to_owned),
        ".{0,8}",
    ];
    prop::collection::vec(piece, 0..24)
}

/// A small signed file.
fn small() -> Vec<u8> {
    let mut site = demo();
    site.areas.truncate(2);
    site.machines.truncate(1);
    site.products.truncate(1);
    site.trials.clear();
    for area in &mut site.areas {
        area.product.clear();
        area.machine.clear();
    }
    sign(&site, &Secret::new([1; 32]), 1).expect("it goes out").into_bytes()
}

#[test]
fn no_reader_panics() {
    let runs = Cell::new(0_usize);
    let run = |cases, strategy: BoxedStrategy<Vec<u8>>| {
        let cases = cases * times();
        let config = ProptestConfig { cases, failure_persistence: None, ..ProptestConfig::default() };
        let fed = |bytes: Vec<u8>| {
            runs.set(runs.get() + 1);
            feed(&bytes);
            Ok(())
        };
        TestRunner::new(config).run(&strategy, fed).expect("it comes to an end");
    };
    run(3_000, prop::collection::vec(any::<u8>(), 0..600).boxed());
    run(3_000, pieces().prop_map(|pieces| pieces.concat().into_bytes()).boxed());
    let file = small();
    let faults = prop::collection::vec((any::<usize>(), 0..4_u8, any::<u8>()), 1..6);
    run(3_000, faults.prop_map(move |faults| with_faults(file.clone(), &faults)).boxed());
    let links = "[A-Za-z0-9_-]{0,200}|AQ[A-Za-z0-9_-]{0,200}|.{0,40}";
    run(3_000, links.prop_map(String::into_bytes).boxed());
    println!("{} executions of each reader, no panic", runs.get());
    assert!(runs.get() >= 12_000);
}
