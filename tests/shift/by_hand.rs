//! Whole shifts worked by hand, held to the digits that the hand wrote down. Units exact by NIST SP 811,
//! Appendix B: 1 gal = 128 fl oz, 1 mile = 5280 ft.

use crate::{after, assert_figure, assert_printed, codes, in_unit, write};
use brimline::form::action::{Line, Shelf};
use brimline::form::{Action, Field, names, shift};
use brimline::number::Marks;
use brimline::trade::shift::{Act, Fill};
use brimline::trade::soil::Soil;
use brimline::units::{Duration, Quantity};

/// Three areas with the small walk-behind of the demo: 10 gal, 17 in less 2 in at 2 mph, 65 % of the time
/// at work, settings of 0.12, 0.2 and 0.3 gal/min, 1 to 64, 10 min a refill.
///
/// Passing: 15/12 ft × 2 × 5280 ft/h = 13 200 ft²/h; cleaned: 13 200 × 0.65 = 8580 ft²/h = 143 ft²/min.
///
/// | area | ft² | wanted, gal/1000 ft² | setting | gives | gal | min |
/// |---|---|---|---|---|---|---|
/// | Reading room | 6000 | 0.3 to 0.6 | 1 | 0.12 × 60 / 13.2 = 0.545455 | 3.27273 | 41.9580 |
/// | Sports hall | 9000 | 0.3 to 0.6 | 1 | 0.545455 | 4.90909 | 62.9371 |
/// | Changing rooms | 3600 | 0.8 to 1.3 | 2 | 0.2 × 60 / 13.2 = 0.909091 | 3.27273 | 25.1748 |
///
/// In all 18 600 ft², 11.45455 gal and 130.0699 min. The first fill of 10 gal covers the first two
/// (8.18182 gal) and 1.81818 gal of the third, which is 1.81818 / 0.909091 = 2000 ft² of it. That is at
/// 41.9580 + 62.9371 + 2000 / 143 = 118.8811 min; the refill is done at 128.8811, and is only the
/// 1.45455 gal that are left; all ends at 140.0699 min. Concentrate at 1/65: 1280 / 65 = 19.6923 and
/// 1.45455 × 128 / 65 = 2.8643 fl oz, together 22.5566; water 11.45455 × 64 / 65 = 11.27832 gal.
#[test]
fn a_shift_of_three_areas() {
    let typed = after([Action::Include(1, false), Action::Write(Field::AreaSize(3), "3600".into())]);
    let shift = shift::work(&typed, Marks::POINT);
    assert_eq!(shift.outcome.troubles, []);
    let rows: Vec<(usize, usize)> = shift.rows.iter().map(|row| (row.area, row.setting)).collect();
    assert_eq!(rows, [(0, 1), (2, 1), (3, 2)]);
    for (row, rate, solution, run) in [
        (0, "0.545455", "3.27273", "41.9580"),
        (1, "0.545455", "4.90909", "62.9371"),
        (2, "0.909091", "3.27273", "25.1748"),
    ] {
        assert_printed(in_unit(shift.rows[row].rate, "gal_us_per_1000ft2"), rate);
        assert_printed(in_unit(shift.rows[row].solution(), "gal_us"), solution);
        assert_printed(in_unit(shift.rows[row].run(), "min"), run);
    }
    let answer = &shift.outcome.answer;
    for (name, code, printed) in [
        (names::SHIFT_AREA, "ft2", "18600.00"),
        (names::SHIFT_RUN_TIME, "min", "130.0699"),
        (names::SHIFT_TOTAL_TIME, "min", "140.0699"),
        (names::SHIFT_SOLUTION, "gal_us", "11.45455"),
        (names::SHIFT_CONCENTRATE, "floz_us", "22.5566"),
        (names::SHIFT_WATER, "gal_us", "11.27832"),
        (names::SHIFT_FILLS, "", "2.0000"),
    ] {
        assert_figure(answer, name, code, printed);
    }
    let fills = &shift.rounds[0].plan.fills;
    let [Fill { at: start, after: none, .. }, second] = fills[..] else { panic!("{fills:?}") };
    assert_eq!((start, none.si()), (Duration::ZERO, 0.0));
    assert_printed(in_unit(fills[0].concentrate, "floz_us"), "19.6923");
    assert_eq!(second.task, 2);
    assert_printed(in_unit(second.after, "ft2"), "2000.00");
    assert_printed(in_unit(second.at, "min"), "128.8811");
    assert_printed(in_unit(second.solution, "gal_us"), "1.45455");
    assert_printed(in_unit(second.concentrate, "floz_us"), "2.8643");
}

/// Five areas, two machines side by side, two products, heavy soil, loose debris, ways, prices.
///
/// The small walk-behind as above: 143 ft²/min; 0.12 and 0.2 gal/min lay down 0.545455 and 0.909091
/// gal/1000 ft². The ride-on: 28 in less 2 in at 3 mph pass 26/12 × 15 840 = 34 320 ft²/h, 80 % of it is
/// 457.6 ft²/min; 0.25 and 0.9 gal/min lay down 0.437063 and 1.573427 gal/1000 ft².
///
/// | area | ft² | machine | product | setting | passes | gal | min |
/// |---|---|---|---|---|---|---|---|
/// | Reading room | 6000 | walk-behind | neutral, 1 to 64 | 1 | 1 | 3.272727 | 41.9580 |
/// | Entrance hall | 2400 | walk-behind | neutral | 1 | 2 | 2.618182 | 33.5664 |
/// | Sports hall, 3 min away | 9000 | ride-on | neutral | 1 | 1 | 3.933566 | 19.6678 |
/// | Changing rooms | 1800 | walk-behind | degreaser, 1 to 32 | 2 | 1 | 1.636364 | 12.5874 |
/// | Store, loose debris, 2 min away | 1200 | ride-on | neutral | 4 | 1 | 1.888112 | 2.6224 |
///
/// The walk-behind fills 5.890909 gal with 5.890909 × 128 / 65 = 11.6006 fl oz, changes for 20 min at
/// 75.5245 min, fills 1.636364 gal with 1.636364 × 128 / 33 = 6.3471 fl oz, and ends at
/// 41.9580 + 33.5664 + 20 + 12.5874 = 108.1119 min. The ride-on fills 5.821678 gal with 11.4642 fl oz and
/// goes 3 min, cleans 19.6678, dry-mops 1200 / 10 000 h = 7.2, cleans 2.6224, goes 2 back: 34.4902 min.
/// Together 13.348951 gal, 29.4119 fl oz, 13.119171 gal of water; of what is laid down 90 % are picked up,
/// 12.014056 gal. Labour 142.6021 min.
///
/// Cost: 23.0648 fl oz at 62 / 5 gal and 6.3471 at 88 / 5 gal are 3.1071; water at 12 / 1000 gal 0.1574;
/// labour at 18 an hour 42.7806; together 46.0452, for 20 400 ft² 2.2571 per 1000 ft².
///
/// A year has 365.2425 / 7 = 52.1775 weeks: 5, 7, 3 and 7 times a week and 12 times a year are
/// 3046.1428 gal, a month 253.8452. Labour in a year: each time an area takes what it takes here, with the
/// ways, the mopping and the change before it (41.9580, 33.5664, 22.6678, 32.5874 and 11.8224 min): 646.6441 h.
#[test]
fn a_shift_of_five_areas_to_the_ounce() {
    let typed = after([
        Action::Include(4, true),
        Action::AreaMachine(2, "ride-on".into()),
        Action::AreaMachine(4, "ride-on".into()),
        Action::AreaSoil(1, Soil::Heavy),
        Action::AreaLoose(4, true),
        Action::AreaProduct(3, "degreaser".into()),
        write(Field::AreaWay(2), "3"),
        write(Field::AreaWay(4), "2"),
        Action::Pick(Shelf::Product, "degreaser".into()),
        Action::Text(Line::Label, "1:32".into()),
        Action::Text(Line::Standard, String::new()),
        Action::Pick(Shelf::Product, "neutral".into()),
    ]);
    let shift = shift::work(&typed, Marks::POINT);
    assert_eq!(shift.outcome.troubles, []);
    for (row, setting, gallons, minutes) in [
        (0, 1, "3.272727", "41.9580"),
        (1, 1, "2.618182", "33.5664"),
        (2, 1, "3.933566", "19.6678"),
        (3, 2, "1.636364", "12.5874"),
        (4, 4, "1.888112", "2.6224"),
    ] {
        assert_eq!(shift.rows[row].setting, setting, "area {row}");
        assert_printed(in_unit(shift.rows[row].solution(), "gal_us"), gallons);
        assert_printed(in_unit(shift.rows[row].run(), "min"), minutes);
    }
    let [walk, ride] = &shift.rounds[..] else { panic!("two machines") };
    let ounces = |fill: &Fill| in_unit(fill.concentrate, "floz_us");
    assert_printed(ounces(&walk.plan.fills[0]), "11.6006");
    assert_printed(ounces(&walk.plan.fills[1]), "6.3471");
    assert_printed(ounces(&ride.plan.fills[0]), "11.4642");
    assert_eq!((walk.plan.fills.len(), ride.plan.fills.len()), (2, 1));
    assert_printed(in_unit(walk.plan.total, "min"), "108.1119");
    assert_printed(in_unit(ride.plan.total, "min"), "34.4902");
    let acts: Vec<Act> = ride.plan.events.iter().map(|event| event.act).collect();
    assert_eq!(acts, [Act::Go, Act::Clean, Act::Mop, Act::Clean, Act::Go]);
    let change = walk.plan.events[2];
    assert_eq!((change.act, change.lasts), (Act::Change(1), Duration::new(1200.0)));
    assert_printed(in_unit(change.from, "min"), "75.5245");

    let answer = &shift.outcome.answer;
    for (name, code, printed) in [
        (names::SHIFT_SOLUTION, "gal_us", "13.348951"),
        (names::SHIFT_CONCENTRATE, "floz_us", "29.4119"),
        (names::SHIFT_WATER, "gal_us", "13.119171"),
        (names::SHIFT_WASTE, "gal_us", "12.014056"),
        (names::SHIFT_RUN_TIME, "min", "110.4021"),
        (names::SHIFT_TOTAL_TIME, "min", "108.1119"),
        (names::SHIFT_LABOUR, "min", "142.6021"),
        (names::SHIFT_FILLS, "", "3.0"),
        (names::SHIFT_CHANGES, "", "1.0"),
        (names::COST_CONCENTRATE, "money", "3.1071"),
        (names::COST_WATER, "money", "0.1574"),
        (names::COST_LABOUR, "money", "42.7806"),
        (names::COST_TOTAL, "money", "46.0452"),
        (names::COST_EACH, "money_per_1000ft2", "2.2571"),
        (names::YEAR_SOLUTION, "gal_us", "3046.1428"),
        (names::MONTH_SOLUTION, "gal_us", "253.8452"),
        (names::YEAR_LABOUR, "h", "646.6441"),
    ] {
        assert_figure(answer, name, code, printed);
    }
    assert_eq!(answer.get(names::SHIFT_CHARGES), None);
    let said = codes(answer);
    for code in ["remark-dry-mop", "remark-heavy", "remark-moves"] {
        assert_eq!(said.iter().filter(|one| **one == code).count(), 1, "{code} in {said:?}");
    }
}
