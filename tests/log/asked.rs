//! What the log is asked, as figures, rows and remarks.

use super::fills::{codes, dose, litres, log, near};
use brimline::form::log::asked::{FEWEST, costs, doses, drifts, shelf, uses};
use brimline::form::log::{Counted, Draft};
use brimline::form::{Typed, names};
use brimline::number::Marks;
use brimline::site::log::questions::By;
use brimline::site::log::{Amount, Current, Fill, Reading, Scale, Si};
use brimline::site::{Entry, Product};
use brimline::trade::calendar::Date;
use brimline::trade::control::Rule;
use brimline::units::Quantity;

/// By hand: 1 L planned and 1.5 measured, 2 L planned and 1.8 measured, 4 L planned and not measured, one unknown.
#[test]
fn use_over_and_under() {
    let fills = log(&[
        ("2026-03-01T08:00:00Z", dose("p", 1.0, Some(1.5)), ""),
        ("2026-03-02T08:00:00Z", dose("p", 2.0, Some(1.8)), ""),
        ("2026-03-03T08:00:00Z", dose("q", 4.0, None), ""),
        ("2026-03-04T08:00:00Z", Fill { concentrate: Amount::default(), ..dose("q", 0.0, None) }, ""),
    ]);
    let found = uses(&fills, By::Product);
    let get = |name| found.told.answer.get(name).expect("a figure").si;
    assert!(near(get(names::LOG_USED), 0.0073));
    assert!(near(get(names::LOG_PLANNED), 0.003));
    assert!(near(get(names::LOG_MEASURED), 0.0033));
    assert!(near(found.rows[0].off.expect("two have both"), 0.0003));
    assert!(near(found.rows[0].share.expect("two have both"), 0.1));
    assert_eq!((found.rows[1].off, found.told.uncounted), (None, 1));
    assert_eq!(codes(&found.told.answer.remarks), ["remark-log-use-over", "remark-log-assumed"]);
    assert_eq!(codes(&uses(&[], By::Month).told.answer.remarks), ["remark-log-use-none"]);
}

/// NIST/SEMATECH e-Handbook of Statistical Methods, 6.3.2.2, flow rates of ten batches, taken as hundredths of a
/// plan of 1 L: mean 50.81, limits 55.8041 and 45.8159. Seen in a table that cites it.
#[test]
fn the_chart_has_the_handbooks_limits() {
    let rates = [49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1];
    let made = |rates: &[f64]| -> Vec<Current> {
        let fills: Vec<(String, Fill)> = rates
            .iter()
            .enumerate()
            .map(|(day, rate)| {
                (format!("2026-03-{:02}T08:00:00Z", day + 1), dose("p", 1.0, Some(rate / 100.0)))
            })
            .collect();
        log(&fills.iter().map(|(when, fill)| (when.as_str(), fill.clone(), "")).collect::<Vec<_>>())
    };
    let found = doses(&made(&rates));
    let percent = |name| found.told.answer.get(name).expect("a figure").si * 100.0;
    for (name, printed) in [
        (names::LOG_CENTRE, 50.81),
        (names::LOG_UPPER, 55.8041),
        (names::LOG_LOWER, 45.8159),
        (names::LOG_RANGE, 1.8778),
    ] {
        assert!((percent(name) - printed).abs() < 5.001e-5, "{name} {} is not {printed}", percent(name));
    }
    // All of them are far below the plan, and steady there: both are said.
    assert_eq!((found.within, found.over, found.under), (0, 0, 10));
    assert_eq!(
        codes(&found.told.answer.remarks),
        ["remark-log-doses", "remark-log-chart-steady", "remark-log-doses-low", "remark-log-chart-estimate"]
    );
    assert!(doses(&made(&rates[..FEWEST - 1])).limits.is_none(), "too few for a chart");
    let jump = [100.0, 101.0, 100.0, 101.0, 100.0, 101.0, 100.0, 101.0, 100.0, 160.0];
    let found = doses(&made(&jump));
    let last = found.points.last().expect("a point");
    assert!(last.rules.contains(&Rule::Beyond) && last.rules.contains(&Rule::Jump), "{:?}", last.rules);
    let beyond = found.points.iter().filter(|point| point.rules.contains(&Rule::Beyond));
    assert_eq!(beyond.count(), 1);
}

fn priced(price: &str) -> Typed {
    let mut typed = Typed::default();
    let product = Product {
        id: "p".into(),
        name: "P".into(),
        container: Entry::new("5", "l"),
        price: Entry::new(price, "money"),
        lead: Entry::new("7", "d"),
        ..Product::default()
    };
    typed.site.products = vec![product];
    typed.ask.water_price = Entry::new("2", "money_per_m3");
    typed
}

/// By hand: 3 L at 40 for 5 L are 24; 500 L of water at 2 a cubic metre are 1.
#[test]
fn cost_at_the_sites_prices() {
    let fill = Fill { water: litres(500.0), ..dose("p", 1.0, Some(3.0)) };
    let fills =
        log(&[("2026-03-01T08:00:00Z", fill, ""), ("2026-03-02T08:00:00Z", dose("q", 1.0, None), "")]);
    let found = costs(&fills, &priced("40"), Marks::POINT);
    let get = |name| found.told.answer.get(name).expect("a figure").si;
    assert!(near(get(names::LOG_COST_CONCENTRATE), 24.0));
    assert!(near(get(names::LOG_COST_WATER), 1.0));
    assert!(near(get(names::LOG_COST), 25.0));
    assert_eq!(found.told.uncounted, 1);
    assert!(codes(&found.told.answer.remarks).contains(&"remark-log-unpriced"));
}

/// By hand: four containers of 5 L were counted on the fifth day, and 2 L were used on that day; 6 L in five days
/// are 1.2 L a day, so that 18 L last 15 days.
#[test]
fn days_of_stock_left() {
    let fills = log(&[
        ("2026-03-01T08:00:00Z", dose("p", 4.0, None), ""),
        ("2026-03-05T08:00:00Z", dose("p", 2.0, None), ""),
    ]);
    let today = Date::new(2026, 3, 5).expect("a day");
    let counted = |containers: &str, day: &str| {
        let containers = Entry::new(containers, "one");
        Draft::default().with_count(Counted { product: "p".into(), containers, day: day.into() })
    };
    let ask = |draft: &Draft| shelf(&fills, &priced("40"), draft, today, Marks::POINT);
    let found = ask(&counted("4", "2026-03-05"));
    let row = &found.rows[0];
    assert!(near(row.left.expect("counted").si(), 0.018));
    let days = row.supply.expect("known").expect("used").lasts.si() / 86_400.0;
    assert!(near(days, 15.0));
    assert!(!row.is_late());
    assert!(ask(&counted("1", "2026-03-05")).rows[0].is_late(), "3 L last 2.5 days, a delivery takes 7");
    assert!(ask(&counted("4", "2026-03-06")).rows[0].no_day, "tomorrow nobody has counted");
    assert!(ask(&counted("four", "2026-03-05")).rows[0].mistake.is_some());
    assert_eq!(codes(&ask(&Draft::default()).told.answer.remarks), ["remark-log-stock-none"]);
}

/// Readings that fall by 10 ppm a day without any scatter fall by 70 ppm a week.
#[test]
fn readings_that_wander() {
    let read = |product: &str, ppm: f64| Fill {
        reading: Reading {
            scale: Scale::Active,
            si: Si::new(ppm / 1000.0).expect("an amount"),
            text: "".into(),
        },
        ..dose(product, 1.0, None)
    };
    let fills = log(&[
        ("2026-03-01T08:00:00Z", read("p", 200.0), ""),
        ("2026-03-02T08:00:00Z", read("p", 190.0), ""),
        ("2026-03-02T09:00:00Z", read("q", 190.0), ""),
        ("2026-03-03T08:00:00Z", read("p", 180.0), ""),
        ("2026-03-04T08:00:00Z", read("p", 170.0), ""),
        ("2026-03-04T09:00:00Z", dose("p", 1.0, None), ""),
    ]);
    let found = drifts(&fills);
    let line = found.rows[0].line.expect("four readings");
    assert!(near(line.slope * 7.0, -0.07));
    assert_eq!((found.rows.len(), found.rows[1].line, found.told.uncounted), (2, None, 1));
    assert_eq!(codes(&found.told.answer.remarks), ["remark-log-drift-falls"]);
    assert_eq!(codes(&drifts(&fills[..2]).told.answer.remarks), ["remark-log-drift-few"]);
}
