//! Laws of the list of areas: whatever the site holds comes back, and whatever a file holds is read.

use super::area_list::read;
use brimline::number::Marks;
use brimline::site::area_list::{COLUMNS, Kind, Mapping, Table, export, import};
use brimline::site::{Area, Entry, Site, demo};
use brimline::trade::alone::Around;
use brimline::trade::order::Place;
use brimline::trade::soil::Soil;
use brimline::units::{System, unit};
use proptest::prelude::*;

const BOTH: [Marks; 2] = [Marks::POINT, Marks::COMMA];

/// A number as people type it with these marks: whole, decimal, grouped, a fraction; sometimes nothing.
fn number(marks: Marks) -> impl Strategy<Value = String> {
    let (decimal, group) = (marks.decimal, marks.group);
    prop_oneof![
        2 => (1_u32..100_000).prop_map(|whole| whole.to_string()),
        3 => (0_u32..10_000, 0_u32..100_000, 1_usize..5).prop_map(move |(whole, tail, places)| {
            format!("{whole}{decimal}{tail:0places$}")
        }),
        2 => (1_u32..999, 0_u32..1000, 0_u32..10).prop_map(move |(high, low, tail)| {
            format!("{high}{group}{low:03}{decimal}{tail}")
        }),
        1 => (1_u32..20, 1_u32..9, 2_u32..9).prop_map(|(whole, above, below)| format!("{whole} {above}/{below}")),
        1 => Just(String::new()),
    ]
}

fn entry(column: &'static str, marks: Marks) -> impl Strategy<Value = Entry> {
    let column = COLUMNS.iter().find(|one| one.code == column).expect("a column");
    (number(marks), proptest::sample::select(column.units())).prop_map(|(text, unit)| Entry::new(text, unit))
}

/// A name: anything without a line break, with spaces and marks that files use themselves.
fn name() -> impl Strategy<Value = String> {
    prop_oneof!["[^\r\n\0]{0,20}", "[ ;,\t\"'=+@|-]{0,4}[a-z0-9 ;,\"]{0,8}"]
        .prop_map(|name| name.trim().to_owned())
}

fn area(marks: Marks) -> impl Strategy<Value = Area> {
    let of =
        |ids: &[&str]| proptest::sample::select(ids.iter().map(|id| (*id).to_owned()).collect::<Vec<_>>());
    let site = demo();
    let floors: Vec<&str> = site.floors.iter().map(|one| one.id.as_str()).collect();
    let products: Vec<&str> = site.products.iter().map(|one| one.id.as_str()).chain([""]).collect();
    let machines: Vec<&str> = site.machines.iter().map(|one| one.id.as_str()).chain([""]).collect();
    let words = (of(&floors), of(&products), of(&machines), any::<bool>(), any::<bool>());
    let choices = (
        proptest::sample::select(Place::ALL),
        proptest::sample::select(Soil::ALL),
        proptest::sample::select(Around::ALL),
    );
    let times = (entry("opens", marks), entry("closes", marks), entry("way", marks));
    let others = (entry("size", marks), entry("lane", marks), entry("times", marks));
    (name(), words, choices, times, others).prop_map(|(name, words, choices, times, others)| Area {
        id: String::new(),
        name,
        floor: words.0,
        product: words.1,
        machine: words.2,
        included: words.3,
        loose: words.4,
        place: choices.0,
        soil: choices.1,
        around: choices.2,
        opens: times.0,
        closes: times.1,
        way: times.2,
        size: others.0,
        lane: others.1,
        frequency: others.2,
        retired: false,
    })
}

/// The value of an entry in SI units; none where nothing was typed.
fn si(entry: &Entry, marks: Marks) -> Option<f64> {
    let (value, unit) = entry.value(marks).ok()?;
    Some(unit.to_si(value))
}

/// The columns that hold quantities hold the same, to the 12 digits of a file.
fn same_quantities(before: &Area, after: &Area, written: Marks, page: Marks) -> Result<(), TestCaseError> {
    for column in &COLUMNS {
        let Kind::Quantity { get, .. } = column.kind else { continue };
        match (si(get(before), written), si(get(after), page)) {
            (Some(old), Some(new)) => {
                prop_assert!((old - new).abs() <= 1e-9 * old.abs(), "{}: {old} became {new}", column.code);
            }
            (old, new) => prop_assert_eq!(old, new, "{}", column.code),
        }
    }
    Ok(())
}

proptest! {
    /// Written with any marks and read on a page with any marks: each area comes back, in its order.
    #[test]
    fn what_was_saved_comes_back(
        (written, areas) in proptest::sample::select(&BOTH[..]).prop_flat_map(|marks| {
            (Just(marks), proptest::collection::vec(area(marks), 1..8))
        }),
        page in proptest::sample::select(&BOTH[..]),
        saved in proptest::sample::select(System::ALL),
        opened in proptest::sample::select(System::ALL),
    ) {
        let site = Site { areas, ..demo() };
        let text = export(&site, saved, written);
        let back = read(&text, &site, opened, page);
        prop_assert_eq!(site.areas.len(), back.areas.len(), "{}", text);
        for (before, after) in site.areas.iter().zip(&back.areas) {
            prop_assert_eq!(&before.name, &after.name, "{}", text);
            same_quantities(before, after, written, page)?;
            let rest = |area: &Area| Area {
                id: String::new(),
                size: Entry::default(), opens: Entry::default(), closes: Entry::default(),
                lane: Entry::default(), frequency: Entry::default(), way: Entry::default(),
                ..area.clone()
            };
            prop_assert_eq!(rest(before), rest(after), "{}", text);
        }
        // A second time nothing changes any more: the units are the file's own by then.
        let again = export(&Site { areas: back.areas, ..site.clone() }, saved, page);
        let twice = read(&again, &site, opened, page);
        for (before, after) in site.areas.iter().zip(&twice.areas) {
            same_quantities(before, after, written, page)?;
        }
    }

    /// Whatever a number is written with: on the page it is the same number, or it is told.
    #[test]
    fn no_number_changes_unseen(text in "[0-9., ½/+-]{1,12}", page in proptest::sample::select(&BOTH[..])) {
        let read = read(&format!("name;size (ft²)\nHall;\"{text}\"\n"), &demo(), System::Us, page);
        let point = brimline::number::read(text.trim(), Marks::POINT);
        let comma = brimline::number::read(text.trim(), Marks::COMMA);
        let shown = read.areas[0].size.value(page).map(|(value, _)| value);
        match (point, comma) {
            // One number whichever way; a file of a single number has no other evidence.
            (Ok(point), Ok(comma)) if point.total_cmp(&comma).is_eq() => prop_assert_eq!(shown, Ok(point), "{}", text),
            (Ok(_), Ok(_)) => {
                prop_assert!(read.two_readings().is_some() && shown.is_err(), "{}: {:?}", text, shown);
            }
            _ => prop_assert!(!read.flaws.is_empty() && shown.is_err(), "{}: {:?}", text, shown),
        }
    }

    /// Any bytes at all, with any columns taken for any: nothing breaks, and no row is lost without a word.
    #[test]
    fn any_bytes_are_read_or_refused(
        bytes in proptest::collection::vec(prop_oneof![
            any::<u8>(),
            proptest::sample::select(b";,\t|\"\r\n'=0159. am\xb2?".to_vec()),
        ], 0..300),
        headed in any::<bool>(),
        froms in proptest::collection::vec(proptest::option::of(0_usize..6), COLUMNS.len()),
    ) {
        let Ok(table) = Table::open(&bytes) else { return Ok(()) };
        let mut mapping = Mapping::guess(&table, System::Metric);
        mapping.head(&table, headed);
        for (column, from) in froms.into_iter().enumerate() {
            mapping.choose(&table, column, from);
        }
        let read = import(&table, &mapping, &demo(), Marks::POINT);
        prop_assert_eq!(read.areas.len(), mapping.body(&table).len());
        prop_assert!(headed || read.areas.len() == table.rows.len());
        let lines: Vec<usize> = table.rows.iter().map(|row| row.line).collect();
        prop_assert!(lines.windows(2).all(|two| two[0] < two[1]), "{:?}", lines);
        for area in &read.areas {
            for column in &COLUMNS {
                if let Kind::Quantity { units, get, .. } = column.kind {
                    let code = get(area).unit.as_str();
                    prop_assert!(units.contains(&code) || mapping.source(column.code).from.is_none(), "{}", code);
                    prop_assert!(unit(code).is_some());
                }
            }
        }
    }

    /// Lines of ordinary cells: as many areas as lines, each in its line, whatever stands between the cells.
    #[test]
    fn every_line_is_an_area(
        names in proptest::collection::vec("[a-zA-Z][a-z ]{0,10}", 1..30),
        separator in proptest::sample::select(vec![';', '\t', ',', '|']),
        end in proptest::sample::select(vec!["\n", "\r\n", "\r"]),
    ) {
        let lines: Vec<String> = names.iter().enumerate().map(|(index, name)| format!("{name}{separator}{index}x")).collect();
        let text = format!("name{separator}size{end}{}", lines.join(end));
        let read = read(&text, &demo(), System::Us, Marks::POINT);
        let expected: Vec<&str> = names.iter().map(|name| name.trim()).collect();
        prop_assert_eq!(read.areas.iter().map(|area| area.name.as_str()).collect::<Vec<_>>(), expected);
        let told: Vec<usize> = read.flaws.iter().map(|flaw| flaw.line).collect();
        prop_assert_eq!(told, (2..names.len() + 2).collect::<Vec<_>>());
    }
}
