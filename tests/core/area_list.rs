//! The list of areas to and from spreadsheets: what goes out, what is found, what comes in and what is told.
//! CSV by RFC 4180; 1 ft² = 0.09290304 m² and 1 ft = 0.3048 m exactly (NIST SP 811 (2008), Appendix B.8).

use brimline::error::Mistake;
use brimline::form::Field;
use brimline::number::{Marks, NumberMistake};
use brimline::site::area_list::{COLUMNS, Column, Imported, Kind, Mapping, Table, Wrong, export, import};
use brimline::site::{Area, Entry, Site, demo, unknown};
use brimline::trade::alone::Around;
use brimline::trade::order::Place;
use brimline::trade::soil::Soil;
use brimline::units::System;

/// A text read as the page reads it, with what it guesses.
pub fn read(text: &str, site: &Site, system: System, page: Marks) -> Imported {
    let table = Table::open(text.as_bytes()).expect("a table");
    import(&table, &Mapping::guess(&table, system), site, page)
}

fn us(text: &str) -> Imported {
    read(text, &demo(), System::Us, Marks::POINT)
}

fn sizes(areas: &[Area]) -> Vec<(&str, &str)> {
    areas.iter().map(|area| (area.size.text.as_str(), area.size.unit.as_str())).collect()
}

/// Line, column and text of each flaw.
fn told(read: &Imported) -> Vec<(usize, &str, &str)> {
    read.flaws.iter().map(|flaw| (flaw.line, flaw.column.code, flaw.text.as_str())).collect()
}

/// An area with something in every column.
fn full() -> Area {
    Area {
        id: "a1".to_owned(),
        name: "Reading room; \"west\", 2".to_owned(),
        size: Entry::new("6,000", "ft2"),
        floor: "marble".to_owned(),
        included: false,
        product: "vinegar".to_owned(),
        place: Place::Last,
        opens: Entry::new("1½", "h"),
        closes: Entry::new("200", "min"),
        machine: "ride-on".to_owned(),
        soil: Soil::Heavy,
        loose: true,
        lane: Entry::new("1.125", "m"),
        around: Around::Lacking,
        frequency: Entry::new("2", "per_month"),
        way: Entry::new("90", "s"),
        retired: false,
    }
}

#[test]
fn every_column_goes_out_with_its_unit_and_comes_back() {
    let site = Site { areas: vec![full()], ..demo() };
    let text = export(&site, System::Us, Marks::POINT);
    assert_eq!(
        text,
        "\u{feff}\"name\",\"size (ft²)\",\"floor\",\"product\",\"machine\",\"clean\",\"place\",\"not before (h)\",\"done by (min)\",\
         \"soil\",\"loose debris\",\"lane (m)\",\"needs around it\",\"times (a month)\",\"way (s)\"\n\
         \"Reading room; \"\"west\"\", 2\",6000,\"Foyer marble\",\"Vinegar cleaner\",\"Ride-on, two dozen gallons\",\"no\",\"last\",1.5,200,\
         \"heavy\",\"yes\",1.1250,\"lacking\",2,90\n"
            .replace("Vinegar cleaner", name_of(&site, "vinegar"))
            .replace("Ride-on, two dozen gallons", machine_of(&site, "ride-on"))
    );
    let back = us(&text);
    assert_eq!(back.flaws, []);
    let expected = Area {
        id: "n1".to_owned(),
        size: Entry::new("6000", "ft2"),
        opens: Entry::new("1.5", "h"),
        lane: Entry::new("1.1250", "m"),
        ..full()
    };
    assert_eq!(back.areas, [expected]);
}

/// The README names the columns as a file of the demo site has them.
#[test]
fn the_readme_names_the_columns() {
    let text = export(&demo(), System::Us, Marks::POINT);
    let header = text.trim_start_matches('\u{feff}').lines().next().unwrap_or_default();
    let named: Vec<String> = header.split(',').map(|title| format!("`{title}`")).collect();
    let readme = include_str!("../../README.md");
    assert!(readme.contains(&named.join(", ")), "{}", named.join(", "));
}

fn name_of<'a>(site: &'a Site, product: &str) -> &'a str {
    site.products.iter().find(|one| one.id == product).map_or("", |one| &one.name)
}

fn machine_of<'a>(site: &'a Site, machine: &str) -> &'a str {
    site.machines.iter().find(|one| one.id == machine).map_or("", |one| &one.name)
}

/// Where the areas do not agree, the unit of the reader's system stands in the header.
#[test]
fn areas_in_several_units_are_told_in_one() {
    let mut site = demo();
    site.areas[1].size = Entry::new("100", "m2");
    site.areas[2].size = Entry::new("big", "m2");
    site.areas[0].way = Entry::new("30", "s");
    site.areas[1].way = Entry::new("1", "min");
    let metric = export(&site, System::Metric, Marks::COMMA);
    assert!(metric.starts_with("\u{feff}\"name\";\"size (m²)\";"), "{metric}");
    assert!(metric.contains("\n\"Reading room\";\"557,41824\";"), "6000 ft² exactly: {metric}");
    assert!(metric.contains("\n\"Sports hall\";\"big\";"), "{metric}");
    let back = read(&metric, &site, System::Us, Marks::POINT);
    assert_eq!(sizes(&back.areas)[..3], [("557.41824", "m2"), ("100", "m2"), ("big", "m2")]);
    assert_eq!((back.areas[0].way.text.as_str(), back.areas[0].way.unit.as_str()), ("0.5", "min"));
    assert_eq!(told(&back), [(4, "size", "big")]);
}

/// The page offers these units beside a field and no others: an entry in another could not be shown.
#[test]
fn a_column_is_in_the_units_that_its_field_offers() {
    let fields = [
        ("size", Field::AreaSize(0)),
        ("opens", Field::AreaOpens(0)),
        ("closes", Field::AreaCloses(0)),
        ("lane", Field::AreaLane(0)),
        ("times", Field::AreaFrequency(0)),
        ("way", Field::AreaWay(0)),
    ];
    let quantities: Vec<&str> = COLUMNS
        .iter()
        .filter(|column| matches!(column.kind, Kind::Quantity { .. }))
        .map(|column| column.code)
        .collect();
    assert_eq!(quantities, fields.map(|(code, _)| code));
    for (code, field) in fields {
        let sorted = |units: &[&'static str]| {
            let mut units = units.to_vec();
            units.sort_unstable();
            units
        };
        let column = Column::of(code).expect(code);
        assert_eq!(sorted(column.units()), sorted(field.units()), "{code}");
        let Kind::Quantity { check, .. } = column.kind else { panic!("{code}") };
        let above = Entry::new("99999999999", column.units()[0]);
        let Err(Mistake::Range(brimline::limits::OutOfRange::Above(limit))) = check(&above, Marks::POINT)
        else {
            panic!("{code} has no limit")
        };
        assert_eq!(limit.name, field.limit().name, "{code}");
    }
}

#[test]
fn it_is_read_as_people_keep_it() {
    let quoted = "\u{feff}Name,Notes,Size (m2),Floor\r\n\"Hall, west\",\"two\nlines\",120,foyer MARBLE\r\n\r\n\"A \"\"b\"\"\",,7.5,Entrance terrazzo\r\n";
    let quoted = us(quoted);
    assert_eq!(quoted.flaws, []);
    assert_eq!(sizes(&quoted.areas), [("120", "m2"), ("7.5", "m2")]);
    assert_eq!((quoted.areas[0].name.as_str(), quoted.areas[1].name.as_str()), ("Hall, west", "A \"b\""));
    assert_eq!(quoted.areas[0].floor, "marble");
    let tabs = read(
        "room\tsize\tclean\tfloor\nHall\t1.200,5\tno\tfoyer marble\n",
        &demo(),
        System::Metric,
        Marks::POINT,
    );
    assert_eq!(sizes(&tabs.areas), [("1200.5", "m2")]);
    assert!(!tabs.areas[0].included);
    let sep = us("sep=|\nroom|size, in ft²|floor\nHall|12|foyer marble\n");
    assert_eq!((sizes(&sep.areas), sep.flaws), (vec![("12", "ft2")], vec![]));
}

#[test]
fn headers_are_found_by_what_they_say() {
    let found = |header: &str| -> Vec<(&'static str, usize)> {
        let table = Table::open(format!("{header}\nx;x;x;x\n").as_bytes()).expect("a table");
        let mapping = Mapping::guess(&table, System::Us);
        let of = |column: &Column| mapping.source(column.code).from.map(|from| (column.code, from));
        let mut found: Vec<_> = COLUMNS.iter().filter_map(of).collect();
        found.sort_by_key(|(_, from)| *from);
        found
    };
    assert_eq!(found("Room;Area (ft²);Floor type"), [("name", 0), ("size", 1), ("floor", 2)]);
    assert_eq!(found("Area;Room;Floor"), [("size", 0), ("name", 1), ("floor", 2)]);
    assert_eq!(found("Area;Size"), [("name", 0), ("size", 1)]);
    assert_eq!(found("Raumbezeichnung;Sq ft"), [("size", 1)], "a unit of area alone is a size");
    assert_eq!(found("Floor area;Floor;Room name"), [("size", 0), ("floor", 1), ("name", 2)]);
    assert_eq!(found("Lane width [cm];Times per week;way_s"), [("lane", 0), ("times", 1), ("way", 2)]);
    assert_eq!(found("Distance to the exit;Price"), [], "nothing is made of single letters and little words");
    assert_eq!(found("The room's name;Scrubber no.;"), [("name", 0), ("machine", 1)]);
}

#[test]
fn a_header_names_its_unit_in_many_ways() {
    for (header, unit) in [
        ("size (m²)", "m2"),
        ("Size [sq. ft.]", "ft2"),
        ("size in square metres", "m2"),
        ("SIZE_SQM", "m2"),
        ("Area, m2", "m2"),
        ("size sqft", "ft2"),
    ] {
        let table = Table::open(format!("name;{header}\nHall;12\n").as_bytes()).expect("a table");
        let source = Mapping::guess(&table, System::Us).source("size");
        assert_eq!(
            (source.from, source.unit.map(|unit| unit.code), source.named),
            (Some(1), Some(unit), true),
            "{header}"
        );
    }
    let table = Table::open(b"name;size (yd)\nHall;12\n").expect("a table");
    let source = Mapping::guess(&table, System::Metric).source("size");
    assert_eq!((source.unit.map(|unit| unit.code), source.named), (Some("m2"), false), "asked about");
}

/// A unit behind a number counts more than the header's; one that the page does not offer is converted.
#[test]
fn a_cell_may_name_its_own_unit() {
    let read = us("name;size (ft²);way (h);lane (mm)\nHall;120 m²;0,5;2500\nBar;1,200.5 sq ft;1/4;9 ft\n");
    assert_eq!(read.flaws, [], "no column of floors: none is missed row by row");
    assert_eq!(sizes(&read.areas), [("120", "m2"), ("1,200.5", "ft2")]);
    let others: Vec<_> = read.areas.iter().map(|area| (area.way.clone(), area.lane.clone())).collect();
    let entry = |text: &str, unit: &str| Entry::new(text, unit);
    assert_eq!(
        others,
        [(entry("30", "min"), entry("8.20209973753", "ft")), (entry("15", "min"), entry("9", "ft")),],
        "2.5 m is 2.5 / 0.3048 ft"
    );
}

#[test]
fn what_cannot_be_read_is_kept_and_told_by_its_line() {
    let read = us(
        "area;size;floor;product;machine;clean;soil\nHall;big;Moon;Soap;Rover;maybe;\n;;;;;;\nBar;12;foyer marble;vinegar;;YES;Heavy\nDen;;;;;0;\n",
    );
    let wrong: Vec<(usize, &str, &str, Wrong)> =
        read.flaws.iter().map(|flaw| (flaw.line, flaw.column.code, flaw.text.as_str(), flaw.what)).collect();
    assert_eq!(
        wrong,
        [
            (2, "size", "big", Wrong::Number(Mistake::Number(NumberMistake::NotANumber))),
            (2, "floor", "Moon", Wrong::Unknown),
            (2, "product", "Soap", Wrong::Unknown),
            (2, "machine", "Rover", Wrong::Unknown),
            (2, "clean", "maybe", Wrong::Choice("yes")),
            (5, "size", "", Wrong::Number(Mistake::Missing)),
            (5, "floor", "", Wrong::Missing),
        ]
    );
    assert_eq!(sizes(&read.areas), [("big", "ft2"), ("12", "ft2"), ("", "ft2")]);
    let names = |area: &Area| {
        [&area.floor, &area.product, &area.machine].map(|id| unknown::name(id).map(str::to_owned))
    };
    assert_eq!(
        names(&read.areas[0]),
        ["Moon", "Soap", "Rover"].map(|name| Some(name.to_owned())),
        "no name is lost"
    );
    let bar = &read.areas[1];
    assert_eq!(
        (bar.product.as_str(), bar.machine.as_str(), bar.soil, bar.included),
        ("vinegar", "", Soil::Heavy, true),
        "by its id as well"
    );
    assert!(!read.areas[2].included);
}

/// What the site does not know goes out by its name and is still asked for when it comes back.
#[test]
fn an_unknown_name_goes_out_again() {
    let site = demo();
    let areas = us("name;size;floor\nHall;12;Moon\n").areas;
    let text = export(&Site { areas, ..site.clone() }, System::Us, Marks::POINT);
    assert!(text.contains("\nHall,12,Moon,"), "{text}");
    assert_eq!(unknown::name(&us(&text).areas[0].floor), Some("Moon"));
    let removed = Area { product: "n9".to_owned(), ..site.areas[0].clone() };
    let text = export(&Site { areas: vec![removed], ..site }, System::Us, Marks::POINT);
    assert_ne!(us(&text).areas[0].product, "", "a product that was removed does not become the one above");
}

#[test]
fn a_decimal_comma_is_found_and_put_into_the_marks_of_the_page() {
    let german = "Raum;Größe (m²);Lane (m)\nHalle;1.200;3\nBar;120,5;2,75\n";
    let guess = |text: &str| {
        let table = Table::open(text.as_bytes()).expect("a table");
        let mut mapping = Mapping::guess(&table, System::Us);
        mapping.choose(&table, 0, Some(0));
        (table, mapping)
    };
    let (table, mapping) = guess(german);
    let english = import(&table, &mapping, &demo(), Marks::POINT);
    assert_eq!(sizes(&english.areas), [("1200", "m2"), ("120.5", "m2")], "one comma decides for its file");
    assert_eq!(english.areas[1].lane.text, "2.75");
    let at_home = import(&table, &mapping, &demo(), Marks::COMMA);
    assert_eq!(
        sizes(&at_home.areas),
        [("1.200", "m2"), ("120,5", "m2")],
        "in its own marks it stays as typed"
    );
    let (table, mapping) = guess("room,size (m2)\nHall,\"1,200.5\"\nBar,\"1,200\"\n");
    let abroad = import(&table, &mapping, &demo(), Marks::COMMA);
    assert_eq!(sizes(&abroad.areas), [("1200,5", "m2"), ("1200", "m2")]);
}

/// `1.200` is a thousand in one country and little more than one in another.
#[test]
fn a_number_with_two_readings_is_asked_about() {
    let text = "room;size (m²);way (min)\nHall;1.200;5\nBar;90;2,5/1\n";
    let table = Table::open(text.as_bytes()).expect("a table");
    let mut mapping = Mapping::guess(&table, System::Us);
    let asked = import(&table, &mapping, &demo(), Marks::POINT);
    assert_eq!(asked.two_readings(), Some(("1.200", 1.2, 1200.0)));
    assert_eq!(asked.areas[0].size.text, "1.200 ?", "no number until somebody mended it");
    assert!(asked.areas[0].size.value(Marks::POINT).is_err());
    for (marks, page, size) in [
        (Marks::POINT, Marks::POINT, "1.200"),
        (Marks::COMMA, Marks::POINT, "1200"),
        (Marks::POINT, Marks::COMMA, "1,200"),
        (Marks::COMMA, Marks::COMMA, "1.200"),
    ] {
        mapping.marks = Some(marks);
        let answered = import(&table, &mapping, &demo(), page);
        assert_eq!(answered.two_readings(), None);
        assert_eq!(answered.areas[0].size.text, size, "{marks:?} on {page:?}");
    }
    let mixed = us("name;size (m2)\nA;120,5\nB;7.5\nC;1.200\n");
    assert_eq!(sizes(&mixed.areas), [("120.5", "m2"), ("7.5", "m2"), ("1.200 ?", "m2")], "they disagree");
}

/// A number is kept as typed where it reads the same: fractions, spaces, a half.
#[test]
fn numbers_are_read_as_in_the_fields() {
    let read = us("name;size (ft2)\nA;1 1/2\nB;12½\nC;12 500\nD;+7\nE;-5\nF;1e9\nG;0\n");
    let kept = ["1 1/2", "12½", "12 500", "+7", "-5", "1e9", "0"];
    assert_eq!(sizes(&read.areas), kept.map(|text| (text, "ft2")));
    assert_eq!(told(&read), [(6, "size", "-5"), (7, "size", "1e9"), (8, "size", "0")]);
    let limits: Vec<bool> =
        read.flaws.iter().map(|flaw| matches!(flaw.what, Wrong::Number(Mistake::Range(_)))).collect();
    assert_eq!(limits, [true, false, true]);
}

/// The areas that come in get numbers that no area has.
#[test]
fn new_areas_have_ids_of_their_own() {
    let mut site = demo();
    site.areas[0].id = "n7".to_owned();
    let areas = read("name;size\nA;1\nB;2\n", &site, System::Us, Marks::POINT).areas;
    assert_eq!(areas.iter().map(|area| area.id.as_str()).collect::<Vec<_>>(), ["n8", "n9"]);
}

/// A file without headers, or with a title above them, is read all the same.
#[test]
fn headers_may_be_missing_or_stand_lower() {
    let table = Table::open("Hall;120\nBar;7\n".as_bytes()).expect("a table");
    let mut mapping = Mapping::guess(&table, System::Metric);
    assert!(!mapping.headed, "a number among them: these are no headers");
    mapping.choose(&table, 0, Some(0));
    mapping.choose(&table, 1, Some(1));
    assert_eq!(sizes(&import(&table, &mapping, &demo(), Marks::POINT).areas), [("120", "m2"), ("7", "m2")]);
    let text = "Reading room;6000;Store, bare concrete\n";
    let table = Table::open(text.as_bytes()).expect("a table");
    assert!(!Mapping::guess(&table, System::Us).headed, "a word of a header in it makes it none");
    let table = Table::open("Hall;120\nBar;7\n".as_bytes()).expect("a table");
    mapping.head(&table, true);
    assert_eq!(import(&table, &mapping, &demo(), Marks::POINT).areas.len(), 1);
    let text = "Areas, as of May\n\nname;size (m2)\nHall;120\n";
    let table = Table::open(text.as_bytes()).expect("a table");
    let mapping = Mapping::guess(&table, System::Us);
    assert_eq!(
        (mapping.line(&table), mapping.titles(&table)),
        (3, vec!["name".to_owned(), "size (m2)".to_owned()])
    );
    let areas = import(&table, &mapping, &demo(), Marks::POINT).areas;
    assert_eq!((areas.len(), areas[0].name.as_str()), (1, "Hall"));
}
