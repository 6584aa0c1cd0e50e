//! Playing with the numbers: held against sums in exact fractions, made here.

use brimline::form::{What, names};
use brimline::number::Marks;
use brimline::practice::{Desk, Input, Laid, Numbers, Part, Seen};
use brimline::site::{Entry, demo};
use brimline::units::System;
use num_rational::Ratio;

type Exact = Ratio<i128>;

fn exact(above: i128, below: i128) -> Exact {
    Ratio::new(above, below)
}

#[allow(
    clippy::cast_precision_loss,
    reason = "the fractions are small enough for 53 bits or are rounded once"
)]
fn float(one: Exact) -> f64 {
    *one.numer() as f64 / *one.denom() as f64
}

/// Exact definitions, m³ and m². NIST SP 811 (2008), Appendix B: inch 0.0254 m, US gallon 231 in³, foot 0.3048 m; UK
/// Units of Measurement Regulations 1995: imperial gallon 4.546 09 L, 160 fl oz.
fn unit(code: &str) -> Exact {
    let inch = exact(254, 10_000);
    let gallon = inch * inch * inch * 231;
    let imperial = exact(454_609, 100_000_000);
    let square_foot = exact(3_048, 10_000) * exact(3_048, 10_000);
    match code {
        "gal_us" => gallon,
        "floz_us" => gallon / 128,
        "gal_imp" => imperial,
        "floz_imp" => imperial / 160,
        "l" => exact(1, 1_000),
        "gal_us_per_1000ft2" => gallon / (square_foot * 1_000),
        "gal_imp_per_1000ft2" => imperial / (square_foot * 1_000),
        "ml" | "ml_per_m2" => exact(1, 1_000_000),
        _ => panic!("{code} stands in no table here"),
    }
}

#[track_caller]
fn near(is: f64, expected: Exact, what: &str) {
    let expected = float(expected);
    assert!((is - expected).abs() <= 1e-12 * expected.abs().max(1e-9), "{what} is {is}, exactly {expected}");
}

fn begun(system: System) -> Numbers {
    Numbers::begin(&demo(), "", "", system)
}

fn figure(seen: &Seen, name: &str) -> f64 {
    seen.outcome.answer.get(name).unwrap_or_else(|| panic!("no {name}")).si
}

/// Tanks, levels, ratios and steps in all systems: `x = V/(1 + n)`, `N = (V − y)/y`, `off = y/x − 1`.
#[test]
fn cup_and_tank_are_what_they_are_in_fractions() {
    let tanks = [("10", exact(10, 1), "gal_us"), ("1.5", exact(3, 2), "gal_imp"), ("40", exact(40, 1), "l")];
    let levels = [("100", exact(1, 1)), ("75", exact(3, 4)), ("12.5", exact(1, 8))];
    let ratios = [("1:64", 64), ("1 to 10", 10), ("256", 256), ("1", 1), (" 1 : 500 ", 500)];
    let steps = [("1", exact(1, 1), "floz_us"), ("0.5", exact(1, 2), "floz_imp"), ("10", exact(10, 1), "ml")];
    let (mut seen_some, mut coarse) = (0, 0);
    for (tank_text, tank, tank_unit) in tanks {
        for (level_text, level) in levels {
            for (ratio_text, parts) in ratios {
                for (step_text, step, step_unit) in steps {
                    let numbers = Numbers {
                        tank: Entry::new(tank_text, tank_unit),
                        level: Entry::new(level_text, "percent"),
                        parts: ratio_text.into(),
                        step: Entry::new(step_text, step_unit),
                        ..begun(System::Us)
                    };
                    let seen = numbers.work(System::Us, Marks::POINT);
                    let (tank, step) = (tank * unit(tank_unit), step * unit(step_unit));
                    let total = tank * level;
                    let dose = total / (parts + 1);
                    near(figure(&seen, names::NUMBERS_TOTAL), total, "the mix");
                    near(figure(&seen, names::NUMBERS_WATER), total - dose, "the water");
                    near(figure(&seen, names::NUMBERS_DOSE), dose, "the product");
                    // A cube of that edge holds it.
                    let edge = figure(&seen, names::NUMBERS_TANK_EDGE);
                    assert!((edge.powi(3) / float(tank) - 1.0).abs() < 1e-12);
                    let edge = figure(&seen, names::NUMBERS_DOSE_EDGE);
                    assert!((edge.powi(3) / float(dose) - 1.0).abs() < 1e-12);
                    if step / 2 >= dose {
                        coarse += 1;
                        assert!(seen.mix.is_none());
                        assert_eq!(seen.outcome.answer.remarks[0].code, "remark-numbers-coarse");
                        continue;
                    }
                    seen_some += 1;
                    let mix = seen.mix.expect("a picture");
                    let count = (dose / step).round().max(exact(1, 1));
                    near(mix.steps, count, "whole steps");
                    let pours = [dose - step / 2, dose, step * count, dose + step / 2];
                    for (way, pour) in mix.ways.iter().zip(pours) {
                        near(way.product, pour, "what is poured");
                        near(way.ratio, (total - pour) / pour, "its ratio");
                        let off = float(pour / dose - 1);
                        assert!((way.off - off).abs() < 1e-12, "{} is {off} off", way.off);
                    }
                    near(mix.picture.less, (total - pours[0]) / pours[0], "half a step less");
                    near(mix.picture.more, (total - pours[3]) / pours[3], "half a step more");
                }
            }
        }
    }
    assert!(seen_some > 100 && coarse > 0, "{seen_some} seen, {coarse} too coarse");
}

/// By hand, 10 gal at 1:64 with a cup of 1 fl oz steps: 1280/65 = 19.692 fl oz, nearest 20, which makes 1260/20 = 63;
/// half a step is 0.5/19.692 = 2.539 %; 1280/19.1923 − 1 = 65.69 and 1280/20.1923 − 1 = 62.39.
#[test]
fn a_usual_tank_is_what_it_is_by_hand() {
    let mix = begun(System::Us).work(System::Us, Marks::POINT).mix.expect("a picture");
    for (is, expected) in [
        (mix.steps, 20.0),
        (mix.ways[2].ratio, 63.0),
        (mix.ways[0].ratio, 65.69),
        (mix.ways[3].ratio, 62.39),
        (mix.ways[3].off * 100.0, 2.539),
        (mix.ways[0].off * 100.0, -2.539),
    ] {
        assert!((is / expected - 1.0).abs() < 2e-4, "{is}, by hand {expected}");
    }
}

/// `d = a`, `w = 998 a`, `A = 0.3048²` or `0.3²` for a tile, a sheet of 0.1 mm.
#[test]
fn a_film_is_what_it_is_in_fractions() {
    for (system, edge) in [
        (System::Us, exact(3_048, 10_000)),
        (System::Imperial, exact(3_048, 10_000)),
        (System::Metric, exact(3, 10)),
    ] {
        for (text, number) in [("1", exact(1, 1)), ("1.2", exact(6, 5)), ("4.8", exact(24, 5))] {
            for code in ["gal_us_per_1000ft2", "gal_imp_per_1000ft2", "ml_per_m2"] {
                let numbers = Numbers { rate: Entry::new(text, code), ..begun(system) };
                let seen = numbers.work(system, Marks::POINT);
                let rate = number * unit(code);
                near(figure(&seen, names::NUMBERS_RATE), rate, "the rate");
                near(figure(&seen, names::NUMBERS_THICKNESS), rate, "the thickness");
                near(figure(&seen, names::NUMBERS_WEIGHT), rate * 998, "the weight");
                near(figure(&seen, names::NUMBERS_TILE), rate * edge * edge, "on a tile");
                near(figure(&seen, names::NUMBERS_SHEETS), rate * 10_000, "sheets");
                let film = seen.film.expect("a film");
                near(film.tile, edge, "the tile");
                near(film.thickness, rate, "the film");
            }
        }
    }
}

/// By hand: 0.30 gal/min at 15,000 ft²/h is 18 gal an hour on 15,000 ft², 1.2 gal/1000 ft². That speed is 15,000 ft²/h
/// on a path of 20 in less 2 in, 1.5 ft: 10,000 ft/h, 166.667 ft/min. 1.2 gal × 231 in³ on 144,000 in² is 1.925 mil.
#[test]
fn a_setting_makes_the_film_that_it_makes_by_hand() {
    let numbers = Numbers {
        laid: Laid::Setting,
        flow: Entry::new("0.30", "gal_us_per_min"),
        speed: Entry::new("166.6666666667", "ft_per_min"),
        path: Entry::new("20", "in"),
        overlap: Entry::new("2", "in"),
        ..begun(System::Us)
    };
    let seen = numbers.work(System::Us, Marks::POINT);
    let mil = figure(&seen, names::NUMBERS_THICKNESS) / (0.0254 / 1_000.0);
    assert!((mil / 1.925 - 1.0).abs() < 1e-9, "{mil} mil");
    // 1.925 mil is 48.895 µm: at 998 kg/m³ 48.797 g/m², and at 0.028 349 523 kg an ounce 0.159 91 oz/ft².
    let ounces = figure(&seen, names::NUMBERS_WEIGHT) / (0.028_349_523_125 / (0.3048 * 0.3048));
    assert!((ounces - 0.159_91).abs() < 1e-5, "{ounces} oz wt/ft²");
}

#[test]
fn what_is_wrong_is_told_at_its_field_and_the_other_half_stands() {
    let at = |numbers: &Numbers, name: &str| numbers.work(System::Us, Marks::POINT).outcome.at(name).cloned();
    for text in ["", "0", "1:0", "2001", "1:x", "2:64"] {
        let numbers = Numbers { parts: text.into(), ..begun(System::Us) };
        assert!(matches!(at(&numbers, "numbers-parts"), Some(What::Number(_))), "{text:?}");
        let seen = numbers.work(System::Us, Marks::POINT);
        assert!(seen.mix.is_none() && seen.film.is_some(), "{text:?}");
    }
    let mut numbers = begun(System::Us);
    numbers.level = Entry::new("11", "gal_us");
    assert_eq!(at(&numbers, "numbers-level"), Some(What::AboveTank));
    numbers.level = Entry::new("101", "percent");
    assert!(matches!(at(&numbers, "numbers-level"), Some(What::Number(_))));
    for input in Input::ALL {
        let mut numbers = Numbers { laid: Laid::Setting, ..begun(System::Us) };
        if input == Input::Rate {
            numbers.laid = Laid::Rate;
        }
        numbers.write(input, "much".into());
        assert!(matches!(at(&numbers, input.name()), Some(What::Number(_))), "{}", input.name());
        assert_eq!(input.of(&numbers).text, "much", "what was typed stays");
        let seen = numbers.work(System::Us, Marks::POINT);
        assert!(seen.mix.is_some() != seen.film.is_some(), "{}: one half stands", input.name());
    }
    let mut numbers = Numbers { laid: Laid::Setting, ..begun(System::Us) };
    numbers.overlap = Entry::new("20", "in");
    assert_eq!(at(&numbers, "numbers-overlap"), Some(What::OverlapTakesPath));
}

#[test]
fn a_record_is_taken_and_let_go_where_its_number_is_changed() {
    let site = demo();
    let machine = site.machines.iter().find(|one| one.settings.len() > 1).expect("one with settings");
    let mut numbers = begun(System::Us);
    numbers.take_machine(machine);
    numbers.take_setting(machine, 2);
    assert_eq!((&numbers.tank, &numbers.flow), (&machine.tank, &machine.settings[1]));
    assert_eq!(numbers.setting, format!("{} 2", machine.id));
    numbers.take_setting(machine, 99);
    assert_eq!(numbers.setting, format!("{} 2", machine.id), "there is no such setting");
    numbers.write(Input::Speed, "2".into());
    numbers.choose_unit(Input::Tank, "l".into());
    assert_eq!((numbers.setting.as_str(), numbers.machine.as_str()), ("", ""));
    // All of it is kept and comes back.
    let desk = Desk { part: Part::Numbers, numbers, ..Desk::default() };
    let text = serde_json::to_string(&desk).expect("it is written");
    assert_eq!(serde_json::from_str::<Desk>(&text).expect("it is read"), desk);
    // What an earlier version kept knew no numbers.
    let earlier: Desk = serde_json::from_str(r#"{"part":"class"}"#).expect("it is read");
    assert!(earlier.numbers.is_untouched());
}

/// A reader sees one set of units: records of another system come in their own, and so does what stood there when other
/// units are chosen. The amount is the same to four digits; what stands in the reader's units stays to the last one.
#[test]
fn all_fields_stand_in_the_units_of_the_reader() {
    let metric_alone =
        ["l", "ml", "percent", "ml_per_m2", "l_per_min", "ml_per_min", "km_per_h", "m_per_min", "cm", "m"];
    for (from, to) in
        [(System::Us, System::Metric), (System::Metric, System::Us), (System::Us, System::Imperial)]
    {
        let mut before = Numbers::begin(&demo(), "walk-behind", "jug", from);
        before.put_into(from, &Input::ALL, Marks::POINT);
        before.level = Entry::new("5", if from == System::Metric { "l" } else { "gal_us" });
        let mut after = before.clone();
        after.put_into(to, &Input::ALL, Marks::POINT);
        assert_eq!(after.system, to);
        for input in Input::ALL {
            let (was, is) = (input.of(&before), input.of(&after));
            assert!(
                input.field().units().contains(&&*is.unit),
                "{}: {} can be chosen",
                input.name(),
                is.unit
            );
            assert_eq!(
                metric_alone.contains(&&*is.unit),
                to == System::Metric || is.unit == "percent",
                "{} {}",
                input.name(),
                is.unit
            );
            if was.text.is_empty() {
                assert_eq!(is.text, "", "{}", input.name());
                continue;
            }
            let si = |entry: &Entry| {
                entry.value(Marks::POINT).map(|(value, unit)| unit.to_si(value)).expect("a number")
            };
            assert!((si(is) / si(was) - 1.0).abs() < 5e-4, "{}: {was:?} is {is:?}", input.name());
        }
        let mut again = after.clone();
        again.put_into(to, &Input::ALL, Marks::POINT);
        assert_eq!(again, after, "nothing is rounded twice");
    }
    let mut odd = begun(System::Us);
    odd.write(Input::Tank, "ten".into());
    odd.put_into(System::Metric, &Input::ALL, Marks::POINT);
    assert_eq!(
        (&*odd.tank.text, &*odd.tank.unit),
        ("ten", "gal_us"),
        "what cannot be read stays as it was typed"
    );
}
