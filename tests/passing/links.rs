//! One small thing in an address.

use super::edits::edited;
use base64ct::{Base64UrlUnpadded, Encoding};
use brimline::site::passing::link::{LinkMistake, MOST_CHARACTERS, MOST_INFLATED, pack, unpack};
use brimline::site::passing::{MOST_CHARACTERS as LONGEST, Reason};
use brimline::site::{Floor, Machine, Measure, Product, Record, Site, demo};
use miniz_oxide::deflate::compress_to_vec;
use proptest::prelude::*;
use std::collections::BTreeMap;

/// The demo with one machine, product, floor and measure.
fn one_fill(machine: &str, product: usize) -> Site {
    let demo = demo();
    Site {
        name: String::new(),
        machines: demo.machines.into_iter().filter(|one| one.id == machine).collect(),
        products: demo.products.into_iter().skip(product).take(1).collect(),
        floors: demo.floors.into_iter().take(1).collect(),
        measures: demo.measures.into_iter().take(1).collect(),
        areas: Vec::new(),
        finishes: Vec::new(),
        trials: Vec::new(),
        standards: Vec::new(),
        ..demo
    }
}

/// A link around JSON that no document would make.
fn around(json: &[u8]) -> String {
    let deflated = compress_to_vec(json, 6);
    let length = u16::try_from(deflated.len()).expect("short").to_be_bytes();
    let sum = crc32fast::hash(&[&[1], &length[..], &deflated].concat()).to_be_bytes();
    Base64UrlUnpadded::encode_string(&[&[1], &length[..], &sum, &deflated].concat())
}

proptest! {
    #[test]
    fn what_is_packed_comes_out(site in edited("x"), at in any::<usize>()) {
        fn round<T: Record + Clone + PartialEq + std::fmt::Debug + serde::Serialize + serde::de::DeserializeOwned + brimline::shape::Shaped>(all: &[T], at: usize) {
            if let Some(one) = all.get(at % all.len().max(1)) {
                let link = pack(one).expect("it fits");
                assert_eq!(unpack::<T>(&link).as_ref(), Ok(one), "{link}");
                assert_eq!(unpack::<T>(&format!(" {link}\n")).as_ref(), Ok(one));
            }
        }
        round::<Machine>(&site.machines, at);
        round::<Product>(&site.products, at);
        round::<Floor>(&site.floors, at);
        round::<Measure>(&site.measures, at);
        round(&site.areas, at);
    }
}

/// Measured: a fill of the demo fits a QR code that is read off a screen or a sheet with ease. Version 20-L
/// (97 modules a side) holds 858 bytes, ISO/IEC 18004, table 7, from memory.
#[test]
fn a_fill_fits_a_code() {
    let demo = demo();
    let mut longest = 0;
    for machine in &demo.machines {
        for product in 0..demo.products.len() {
            let site = one_fill(&machine.id, product);
            let link = pack(&site).expect("it fits");
            assert_eq!(unpack(&link), Ok(site));
            println!("{} with {}: {} characters", machine.id, demo.products[product].id, link.len());
            longest = longest.max(link.len());
        }
    }
    assert!(longest < 900, "{longest} characters");
}

/// The link of the first version, kept for good.
#[test]
fn the_first_link_opens() {
    assert_eq!(unpack(include_str!("link-1.txt")), Ok(demo().floors[0].clone()));
}

#[test]
fn every_changed_character_and_every_cut_is_caught() {
    let link = pack(&one_fill("walk-behind", 0)).expect("it fits");
    let alphabet = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_";
    let mut told: BTreeMap<&str, usize> = BTreeMap::new();
    for at in 0..link.len() {
        for character in
            alphabet.chars().chain("+/=.%".chars()).filter(|one| link[at..=at] != one.to_string())
        {
            let mut changed = link.clone();
            changed.replace_range(at..=at, &character.to_string());
            let mistake = unpack::<Site>(&changed).expect_err("it was changed");
            assert!(
                !matches!(mistake, LinkMistake::Content(_)),
                "the checksum stands before the content: {mistake:?}"
            );
            *told.entry(mistake.code()).or_default() += 1;
        }
        let cut = unpack::<Site>(&link[..at]).expect_err("it was cut");
        assert_eq!(cut, LinkMistake::CutOff, "after {at} characters");
    }
    for at in 1..link.len() {
        let mut swapped = link.clone().into_bytes();
        swapped.swap(at - 1, at);
        if swapped != link.as_bytes() {
            unpack::<Site>(std::str::from_utf8(&swapped).expect("text")).expect_err("two were swapped");
        }
    }
    assert_eq!(unpack::<Site>(&format!("{link}A")), Err(LinkMistake::Altered), "one more");
    println!("{} characters: {told:?}", link.len());
}

#[test]
fn each_mistake_is_told() {
    assert_eq!(unpack::<Site>(""), Err(LinkMistake::CutOff));
    let link = pack(&demo().floors[0]).expect("it fits");
    assert_eq!(unpack::<Floor>(&link.replacen("AQ", "Ag", 1)), Err(LinkMistake::Later(2)));
    assert_eq!(unpack::<Floor>(&link.replacen("AQ", "AA", 1)), Err(LinkMistake::Altered));
    assert_eq!(
        unpack::<Floor>(&format!("{link}é")),
        Err(LinkMistake::Foreign { at: link.len() + 1, character: 'é' })
    );
    assert_eq!(unpack::<Floor>(&"A".repeat(MOST_CHARACTERS + 1)), Err(LinkMistake::TooLarge));
    let content = |json: &str| match unpack::<Floor>(&around(json.as_bytes())).expect_err(json) {
        LinkMistake::Content(refusal) => (refusal.code(), refusal.place.to_string()),
        other => panic!("{json}: {other:?}"),
    };
    assert_eq!(content("{\"name\":7}"), ("passing-type", "link.name".into()));
    assert_eq!(content("{\"gloss\":\"high\"}"), ("passing-unknown-field", "link.gloss".into()));
    assert_eq!(content("{\"surface\":\"moon\"}"), ("passing-choice", "link.surface".into()));
    assert_eq!(content("[]").0, "passing-type");
    assert_eq!(content("{").0, "passing-cut-off");
    assert_eq!(content("{\"id\":\"a\",\"id\":\"b\"}").0, "passing-field-twice");
    assert_eq!(content(&"[".repeat(100_000)).0, "passing-too-deep");
    let hidden = Floor { name: "\u{202e}21".into(), ..Floor::default() };
    assert!(
        matches!(pack(&hidden), Err(LinkMistake::Content(refusal)) if refusal.reason == Reason::Hidden('\u{202e}'))
    );
}

/// A few hundred characters that unfold to gigabytes would take the device down.
#[test]
fn a_bomb_does_not_go_off() {
    let bomb = around(&vec![b' '; 10_000_000]);
    assert!(bomb.len() < MOST_CHARACTERS, "{}", bomb.len());
    assert_eq!(unpack::<Site>(&bomb), Err(LinkMistake::TooLarge));
    let last = format!("{{\"id\":\"a\"{}}}", " ".repeat(MOST_INFLATED - 10));
    assert_eq!(last.len(), MOST_INFLATED);
    assert_eq!(unpack(&around(last.as_bytes())), Ok(Floor { id: "a".into(), ..Floor::default() }));
    assert_eq!(unpack::<Floor>(&around(format!("{last} ").as_bytes())), Err(LinkMistake::TooLarge));
}

/// What does not fit is told when the link is made.
#[test]
fn too_much_for_a_link() {
    let mut draw = fastrand::Rng::with_seed(7);
    let name: String = std::iter::repeat_with(|| draw.alphanumeric()).take(LONGEST).collect();
    assert_eq!(pack(&Floor { name, ..Floor::default() }), Err(LinkMistake::TooLarge));
    assert!(pack(&Floor { name: "a".repeat(LONGEST), ..Floor::default() }).is_ok());
}
