//! What is typed: labels and numbers; and the list of areas as a spreadsheet gives it.

use super::changed::{changed, corpus};
use super::fuzz;
use brimline::number::{self, Marks};
use brimline::site::area_list::{Mapping, Table, export, import};
use brimline::site::{Site, demo};
use brimline::trade::label;
use brimline::units::System;

/// Labels as products print them, in every form that is read.
const LABELS: [&str; 24] = [
    "1:64",
    "1 to 64",
    "1+64",
    "64:1",
    "1 in 65",
    "1/64",
    "2 oz/gal",
    "2-4 oz/gal",
    "2 to 4 fl oz per gallon of water",
    "15 mL/L",
    "0.5 %",
    "0.5-1 %",
    "3 to 6 oz per tank",
    "30 g/L",
    "1/2 oz wt/gal",
    "1 tablet per 2 gal",
    "200 ppm",
    "1:64 to 1:128",
    "1:64-128",
    "½ oz per US gal",
    "20 mL per 10 litres",
    "1:64 (2 oz/gal)",
    "15 mL made up to 1 L",
    "1 packet per bucket",
];

#[test]
fn labels() {
    let texts = corpus(LABELS);
    fuzz(
        "labels",
        1,
        20_000,
        |rng| changed(&texts, rng),
        |bytes| {
            let text = String::from_utf8_lossy(bytes);
            let read = label::read(&text, System::Us);
            // What is offered instead is taken, and offers nothing more of its own kind.
            let offered = match &read {
                Ok(label) => &label.others[..],
                Err(mistake) => mistake.readings(),
            };
            for offer in offered {
                assert!(label::read(offer, System::Us).is_ok(), "{text:?} offers {offer:?}");
            }
            assert_eq!(label::read(&format!(" {text}\t"), System::Us), read, "spaces around it say nothing");
            read.is_ok()
        },
    );
}

#[test]
fn numbers() {
    let texts = corpus([
        "1", "12.5", "1,234.5", "1.234,5", "½", "2 1/2", "1/3", "0.001", "-3", "1 000", "7½", "1e3", "１２",
    ]);
    for (name, marks) in [("numbers with a point", Marks::POINT), ("numbers with a comma", Marks::COMMA)] {
        fuzz(
            name,
            2,
            20_000,
            |rng| changed(&texts, rng),
            |bytes| {
                let text = String::from_utf8_lossy(bytes);
                let Ok(value) = number::read(&text, marks) else { return false };
                assert!(value.is_finite(), "{text:?}");
                // No limit lets more in than a number of 15 digits.
                if value.abs() >= 1e15 {
                    return true;
                }
                // What is written of it reads as the same number, to the digits that were asked for.
                let written = number::write(value, 9, marks);
                let again = number::read(&written, marks)
                    .unwrap_or_else(|mistake| panic!("{written:?}: {mistake:?}"));
                // Twelve decimals are the most that are written.
                assert!(
                    (again - value).abs() <= 1e-8 * value.abs() + 1e-12,
                    "{text:?} is {value}, {written:?} is {again}"
                );
                true
            },
        );
    }
}

#[test]
fn lists_of_areas() {
    let site = demo();
    let mut texts = Vec::new();
    for marks in [Marks::POINT, Marks::COMMA] {
        for system in System::ALL {
            texts.push(export(&site, *system, marks));
        }
    }
    texts.push(
        "Raumbezeichnung;Fläche in m²;Floor;Lane;Clean\nHalle;1.200;Moon;3;ja\nBar;big;Foyer marble;;x\n"
            .into(),
    );
    let texts = corpus(texts);
    fuzz(
        "lists of areas",
        3,
        4_000,
        |rng| changed(&texts, rng),
        |bytes| {
            let Ok(table) = Table::open(bytes) else { return false };
            let mapping = Mapping::guess(&table, System::Us);
            let read = import(&table, &mapping, &site, Marks::POINT);
            assert_eq!(read.areas.len(), mapping.body(&table).len(), "a row, an area");
            if !read.flaws.is_empty() || read.two_readings().is_some() {
                return false;
            }
            let text = |areas| export(&Site { areas, ..site.clone() }, System::Us, Marks::POINT);
            let once = text(read.areas.clone());
            let table = Table::open(once.as_bytes()).expect("what was written opens");
            let again = import(&table, &Mapping::guess(&table, System::Us), &site, Marks::POINT);
            assert_eq!(text(again.areas), once, "it is written again the same");
            true
        },
    );
}
