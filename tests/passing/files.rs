//! The site file: what goes out comes back, and what is refused is told with its place.

use super::edits::edited;
use brimline::site::passing::{
    Json, MOST_CHARACTERS, MOST_ENTRIES, Place, Reason, Refusal, SCHEMA, read, write,
};
use brimline::site::{Area, Entry, Floor, Site, demo, unknown};
use proptest::prelude::*;

fn refused(file: &str) -> Refusal {
    read(file).expect_err(file)
}

fn at(path: &str, reason: Reason) -> Refusal {
    Refusal { place: Place::Path(path.to_owned()), reason }
}

/// A file around the JSON of a site.
fn around(site: &str) -> String {
    format!(r#"{{"brimline":"site","schema":1,"site":{site}}}"#)
}

proptest! {
    #[test]
    fn what_is_written_is_what_is_read(site in edited("x")) {
        let file = write(&site).expect("it goes out");
        let opened = read(&file).expect("it comes in");
        prop_assert_eq!(&opened.site, &site);
        prop_assert_eq!(write(&opened.site), Ok(file));
    }
}

#[test]
fn the_file_is_as_it_is_told() {
    let file = write(&demo()).expect("the demo goes out");
    let start = r#"{"brimline":"site","schema":2,"site":{"address":"","areas":["#;
    assert!(file.starts_with(start), "{}", &file[..80]);
    println!("the demo as a file: {} bytes", file.len());
    assert_eq!(read(format!("\u{feff}{file}")).expect("a byte order mark").site, demo());
}

/// A file of the first schema, kept for good: it opens, whatever is added to the records.
#[test]
fn the_first_file_opens() {
    let opened = read(include_str!("site-schema-1.json")).expect("it opens");
    assert_eq!((opened.schema, opened.site.areas.len()), (1, demo().areas.len()));
    assert_eq!(opened.site.machines[1].name, "Self-driving, reuses its solution");
}

/// An earlier version knew fewer fields, and a later one of the same schema may know more.
#[test]
fn what_is_missing_is_blank_and_what_is_unknown_is_passed_over() {
    let file = around(r#"{"name":"Hall","colour":{"wall":[1,null]},"floors":[{"id":"f","gloss":3}]}"#);
    let floors = vec![Floor { id: "f".into(), ..Floor::default() }];
    assert_eq!(read(file).expect("it opens").site, Site { name: "Hall".into(), floors, ..Site::default() });
}

/// Names are texts, byte for byte, whatever another program would take them for.
#[test]
fn names_with_script_are_texts() {
    for name in [
        "<script>alert(1)</script>",
        "<img src=x onerror=\"alert(1)\">",
        "javascript:alert(1)//",
        "'; DROP TABLE areas; --",
        "{{7*7}} ${7*7} %s %n",
        "=HYPERLINK(\"x\")",
        "\\u003cb\\u003e & &lt; &#x3c;",
        "line\nline\r\n\ttab",
        "\u{2028}\u{2029}\u{feff}\u{200b}",
        "Empfangshalle – Größe ½ · 受付 · قاعة · 🧽",
    ] {
        let mut site = demo();
        site.name = name.into();
        site.areas[0].name = name.into();
        site.products[0].notes = name.into();
        let read = read(write(&site).expect(name)).expect(name).site;
        assert_eq!(read.name.as_bytes(), name.as_bytes());
        assert_eq!(read.areas[0].name.as_bytes(), name.as_bytes());
        assert_eq!(read.products[0].notes.as_bytes(), name.as_bytes());
    }
}

#[test]
fn every_refusal_tells_what_and_where() {
    let kind = |expected, found| Reason::Type { expected, found };
    let cases = [
        (around("7"), at("site", kind(Json::Object, Json::Number))),
        (around(r#"{"name":7}"#), at("site.name", kind(Json::Text, Json::Number))),
        (
            around(r#"{"products":[{"id":"a"},{"id":"b"},{"id":"c","name":null}]}"#),
            at("site.products[2].name", kind(Json::Text, Json::Null)),
        ),
        (
            around(r#"{"machines":[{"id":"a","tank":{"text":10}}]}"#),
            at("site.machines[0].tank.text", kind(Json::Text, Json::Number)),
        ),
        (
            around(r#"{"machines":[{"id":"a","settings":[{},[]]}]}"#),
            at("site.machines[0].settings[1]", kind(Json::Object, Json::List)),
        ),
        (
            around(r#"{"machines":[{"id":"a","vacuum":"yes"}]}"#),
            at("site.machines[0].vacuum", kind(Json::Flag, Json::Text)),
        ),
        (
            around(r#"{"products":[{"id":"a","families":["acid","kryptonite"]}]}"#),
            at("site.products[0].families[1]", Reason::Choice("kryptonite".into())),
        ),
        (
            around(r#"{"floors":[{"id":"a","surface":""}]}"#),
            at("site.floors[0].surface", Reason::Choice(String::new())),
        ),
        (around(r#"{"floors":[{}]}"#), at("site.floors[0].id", Reason::NoId)),
        (around(r#"{"floors":[{"id":" "}]}"#), at("site.floors[0].id", Reason::NoId)),
        (around(r#"{"floors":[{"id":"?a"}]}"#), at("site.floors[0].id", Reason::NoId)),
        (
            around(r#"{"floors":[{"id":"a"},{"id":"b"},{"id":"a"}]}"#),
            at("site.floors[2].id", Reason::SameId("a".into())),
        ),
        (
            around(r#"{"floors":[{"id":"a"}],"areas":[{"id":"a","floor":"a"},{"id":"b","floor":"b"}]}"#),
            at("site.areas[1].floor", Reason::Nowhere { id: "b".into(), list: "floors" }),
        ),
        (
            around(r#"{"areas":[{"id":"a","product":"p"}]}"#),
            at("site.areas[0].product", Reason::Nowhere { id: "p".into(), list: "products" }),
        ),
        (
            around(r#"{"areas":[{"id":"a","machine":"m"}]}"#),
            at("site.areas[0].machine", Reason::Nowhere { id: "m".into(), list: "machines" }),
        ),
        (around(r#"{"name":"12\u202e gal"}"#), at("site.name", Reason::Hidden('\u{202e}'))),
        (around(r#"{"name":"\u0000"}"#), at("site.name", Reason::Hidden('\0'))),
        (around(r#"{"name":"\u009b1m"}"#), at("site.name", Reason::Hidden('\u{9b}'))),
        (around("{}").replace(":1,", ":3,"), at("schema", Reason::Later { schema: 3, known: SCHEMA })),
        (around("{}").replace(":1,", ":0,"), at("brimline", Reason::OtherKind)),
        (around("{}").replace(":1,", ":1.5,"), at("brimline", Reason::OtherKind)),
        (around("{}").replace(":1,", ":\"1\","), at("schema", kind(Json::Number, Json::Text))),
        (around("{}").replace("\"schema\":1,", ""), at("schema", Reason::Missing)),
        (around("{}").replace(",\"site\":{}", ""), at("site", Reason::Missing)),
        (around("{},\"sign\":{}"), at("sign", Reason::UnknownField)),
        (around("{},\"signed\":[]"), at("signed", kind(Json::Object, Json::List))),
        (around("{},\"signed\":{}"), at("signed.by", Reason::Missing)),
        (around("{},\"signed\":{\"by\":\"abc\",\"signature\":\"\"}"), at("signed.by", Reason::NotAKey)),
        (around("{},\"signed\":{\"to\":\"\"}"), at("signed.to", Reason::UnknownField)),
        (around("{}").replace("\"site\",", "\"letter\","), at("brimline", Reason::OtherKind)),
        ("[]".into(), at("brimline", Reason::OtherKind)),
        ("null".into(), at("brimline", Reason::OtherKind)),
        (
            around(r#"{"name":"a","name":"b"}"#),
            Refusal { place: Place::Line { line: 1, column: 60 }, reason: Reason::FieldTwice },
        ),
        (
            "{\n \"brimline\": oops".into(),
            Refusal { place: Place::Line { line: 2, column: 14 }, reason: Reason::NotJson },
        ),
        (String::new(), Refusal { place: Place::Line { line: 1, column: 0 }, reason: Reason::CutOff }),
    ];
    for (file, expected) in cases {
        assert_eq!(refused(&file), expected, "{file}");
        assert!(expected.code().starts_with("passing-"));
    }
    let not_text = read([b'{', 0xff]).expect_err("not UTF-8");
    assert_eq!(not_text, Refusal { place: Place::Bytes(1), reason: Reason::NotText });
}

/// What a reader would refuse does not leave.
#[test]
fn the_same_is_refused_on_the_way_out() {
    let long = |characters| Site { name: "é".repeat(characters), ..Site::default() };
    assert!(write(&long(MOST_CHARACTERS)).is_ok());
    assert_eq!(
        write(&long(MOST_CHARACTERS + 1)),
        Err(at("site.name", Reason::LongText(MOST_CHARACTERS + 1)))
    );
    let area = |n: usize| Area { id: format!("n{n}"), ..Area::default() };
    let many = Site { areas: (0..=MOST_ENTRIES).map(area).collect(), ..Site::default() };
    assert_eq!(write(&many), Err(at("site.areas", Reason::LongList(MOST_ENTRIES + 1))));
    let mut without = demo();
    without.floors.remove(0);
    assert_eq!(write(&without).expect_err("an area is left behind").code(), "passing-nowhere");
    let mut asks = demo();
    asks.areas[0].floor = unknown::id("Moon");
    asks.machines[0].tank = Entry::new("half a", "gal_us");
    assert_eq!(read(write(&asks).expect("it asks")).expect("it asks").site, asks);
}

/// More than the most that is opened cannot be written either.
#[test]
fn a_site_too_large_for_a_file_does_not_leave() {
    let name = "x".repeat(MOST_CHARACTERS);
    let area = |n: usize| Area { id: format!("n{n}"), name: name.clone(), ..Area::default() };
    let large = Site { areas: (0..260).map(area).collect(), ..Site::default() };
    assert_eq!(write(&large).expect_err("over 5 MB").code(), "passing-too-large");
}
