//! Files of all sorts as the list of areas: encodings, hostile ones, and what a spreadsheet would compute.

use super::area_list::read;
use brimline::document::MOST_BYTES;
use brimline::number::Marks;
use brimline::site::area_list::{MOST_AREAS, MOST_CHARACTERS, Refusal, Table, Wrong, export};
use brimline::site::demo;
use brimline::units::System;

fn rows(text: &str) -> Vec<(usize, Vec<String>)> {
    Table::open(text.as_bytes()).expect("a table").rows.into_iter().map(|row| (row.line, row.cells)).collect()
}

fn row(line: usize, cells: &[&str]) -> (usize, Vec<String>) {
    (line, cells.iter().map(|cell| (*cell).to_owned()).collect())
}

/// The line is what an editor shows, whatever ends it and whatever was skipped.
#[test]
fn rows_know_their_line() {
    for end in ["\n", "\r\n", "\r"] {
        let text = ["a;b", "", "1;2", "\"x", "y\";3", "   ", ";", "4;5", ""].join(end);
        let expected = [
            row(1, &["a", "b"]),
            row(3, &["1", "2"]),
            row(4, &[&format!("x{end}y"), "3"]),
            row(8, &["4", "5"]),
        ];
        assert_eq!(rows(&text), expected, "{end:?}");
    }
}

#[test]
fn text_is_read_in_the_encodings_that_spreadsheets_save() {
    // é, ß, ² and € by ISO/IEC 8859-1 and WHATWG's index windows-1252; UTF-16 by RFC 2781.
    let expected = vec![row(1, &["Caf\u{e9}", "Gr\u{f6}\u{df}e (m\u{b2})", "\u{20ac}"])];
    let windows = b"Caf\xe9;Gr\xf6\xdfe (m\xb2);\x80\n";
    let text = "Café;Größe (m²);€\n";
    let sixteen = |mark: [u8; 2], bytes: fn(u16) -> [u8; 2]| -> Vec<u8> {
        mark.into_iter().chain(text.encode_utf16().flat_map(bytes)).collect()
    };
    let files = [
        windows.to_vec(),
        text.as_bytes().to_vec(),
        format!("\u{feff}{text}").into_bytes(),
        sixteen([0xff, 0xfe], u16::to_le_bytes),
        sixteen([0xfe, 0xff], u16::to_be_bytes),
    ];
    for file in files {
        let table = Table::open(&file).expect("a table");
        let found: Vec<_> = table.rows.into_iter().map(|row| (row.line, row.cells)).collect();
        assert_eq!(found, expected, "{file:?}");
    }
}

#[test]
fn the_separator_is_the_one_that_most_lines_have() {
    let first = |text: &str| rows(text)[0].1.len();
    assert_eq!(first("name;size;lane\nHall;1,5;2,5\n"), 3);
    assert_eq!(first("name,notes\nHall,a;b\nBar,c\n"), 2);
    assert_eq!(first("name\tsize, in m2\nHall\t1,5\n"), 2);
    assert_eq!(first("\"a;b;c;d\",size\n\"x\",2\n"), 2, "not counted inside quotation marks");
    assert_eq!(first("sep=,\n\"name\";x,size\n"), 2);
    assert_eq!(first("name\nHall\n"), 1);
}

/// A quotation mark that is closed nowhere would swallow all that follows.
#[test]
fn a_lone_quotation_mark_swallows_nothing() {
    let text = "name;size;floor\nHall;12;vinyl\n\"Bar;13;vinyl\nDen;14;vinyl\n";
    let read = read(text, &demo(), System::Us, Marks::POINT);
    let names: Vec<&str> = read.areas.iter().map(|area| area.name.as_str()).collect();
    assert_eq!(names, ["Hall", "\"Bar", "Den"]);
    let told: Vec<(usize, Wrong)> = read.flaws.iter().map(|flaw| (flaw.line, flaw.what)).collect();
    assert_eq!(told, [(3, Wrong::Quote)]);
    assert_eq!(rows("a\"b;5\" pipe\n\"c\"d;2\n"), [row(1, &["a\"b", "5\" pipe"]), row(2, &["cd", "2"])]);
    assert_eq!(rows("\""), [row(1, &["\""])]);
}

/// One that is closed too late is told where its cell is used.
#[test]
fn a_cell_over_several_lines_is_told() {
    let text = "name;size;floor\n\"Bar;13;vinyl\nDen\";14;vinyl\nInn;15;vinyl\n";
    let read = read(text, &demo(), System::Us, Marks::POINT);
    assert_eq!(read.areas[0].name, "Bar;13;vinyl Den");
    assert_eq!((read.flaws[0].line, read.flaws[0].what), (2, Wrong::Lines));
    assert_eq!(read.areas.len(), 2);
}

#[test]
fn what_is_too_much_or_no_table_is_refused() {
    let open = |text: String| Table::open(text.as_bytes()).map(|table| table.rows.len());
    let areas = |count: usize| format!("name;size\n{}", "Hall;12\n".repeat(count));
    assert_eq!(open(areas(MOST_AREAS)), Ok(MOST_AREAS + 1));
    assert_eq!(open(areas(MOST_AREAS + 1)), Err(Refusal::TooManyRows));
    assert_eq!(open("x\n".repeat(2_000_000)), Err(Refusal::TooManyRows));
    assert_eq!(open(";".repeat(10_000)), Err(Refusal::TooManyColumns));
    assert_eq!(open(format!("a;b\n{}\n", ";".repeat(10_000))), Err(Refusal::TooManyColumns), "in any row");
    assert_eq!(open("x".repeat(MOST_BYTES + 1)), Err(Refusal::TooBig));
    for empty in ["", "\u{feff}", "\n\r\n", ";;;\n;;\n", "   "] {
        assert_eq!(open(empty.to_owned()), Err(Refusal::Empty), "{empty:?}");
    }
    // The first bytes of a ZIP archive, which a spreadsheet's own file is: APPNOTE.TXT 4.3.7.
    assert_eq!(Table::open(b"PK\x03\x04\x14\x00xl/worksheets"), Err(Refusal::NotText));
    assert_eq!(open("name;size\nHall\0;12\n".to_owned()), Err(Refusal::NotText));
}

/// More than a megabyte of the worst is read or refused while a person waits: even unoptimized in less than a
/// second each, where something quadratic would take hours.
#[test]
fn hostile_files_are_done_with_quickly() {
    let filled = |piece: &str| piece.repeat(MOST_BYTES / 4 / piece.len());
    let begun = std::time::Instant::now();
    for text in [
        filled("\n"),
        filled("\""),
        filled("\"a\n"),
        filled(";\n"),
        format!("name;size\n\"{}", filled("a\n")),
        format!("name;size\n{};12\n", filled("a")),
        format!("name;size\nHall;{}\n", filled("1,")),
        filled("\u{1f}\u{1f}\n"),
    ] {
        if let Ok(table) = Table::open(text.as_bytes()) {
            let longest = table.rows.iter().flat_map(|row| &row.cells).map(|cell| cell.chars().count()).max();
            assert!(longest.is_some_and(|longest| longest <= MOST_CHARACTERS + 1), "{longest:?}");
            read(&text, &demo(), System::Us, Marks::POINT);
        }
    }
    assert!(begun.elapsed().as_secs() < 60, "{:?}", begun.elapsed());
}

#[test]
fn a_cell_that_is_too_long_is_cut_and_told() {
    let text = format!("name;size;floor\n{};12;vinyl\n", "a".repeat(MOST_CHARACTERS + 7));
    let read = read(&text, &demo(), System::Us, Marks::POINT);
    assert_eq!(read.areas[0].name.chars().count(), MOST_CHARACTERS);
    assert_eq!(read.flaws.iter().map(|flaw| flaw.what).collect::<Vec<_>>(), [Wrong::Long]);
}

/// A spreadsheet computes what begins like a formula (CWE-1236): such texts go out with an apostrophe and come
/// back without it, and none is cut in two by a spreadsheet that parts cells elsewhere.
#[test]
fn a_text_is_never_a_formula() {
    let names = [
        "=HYPERLINK(1)",
        "-12 stairs",
        "+1",
        "@SUM(1)",
        "'=1",
        "''=1",
        "' a",
        "＝1",
        "Hall;=1+1",
        "Hall,=1+1",
        "a\t=1",
    ];
    for marks in [Marks::POINT, Marks::COMMA] {
        let mut site = demo();
        let area = site.areas[0].clone();
        site.areas =
            names.map(|name| brimline::site::Area { name: name.to_owned(), ..area.clone() }).to_vec();
        site.areas[0].size.text = "=2*3".to_owned();
        site.floors[0].name = "=cmd()".to_owned();
        let text = export(&site, System::Us, marks);
        for separator in [',', ';', '\t'] {
            let mut reader = csv::ReaderBuilder::new()
                .delimiter(separator as u8)
                .flexible(true)
                .from_reader(text.as_bytes());
            for cell in reader
                .records()
                .flat_map(|row| row.expect("a row").iter().map(str::to_owned).collect::<Vec<_>>())
            {
                assert!(
                    !cell.starts_with(['=', '+', '-', '@', '＝', '\t']),
                    "{cell} at {separator:?} in {text}"
                );
            }
        }
        let back = read(&text, &site, System::Us, marks);
        assert_eq!(back.areas.iter().map(|area| area.name.as_str()).collect::<Vec<_>>(), names);
        assert_eq!(
            (back.areas[0].size.text.as_str(), back.areas[0].floor.as_str()),
            ("=2*3", area.floor.as_str())
        );
    }
}
