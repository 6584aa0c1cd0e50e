//! The log's side of the page without the page: what is written down, corrected, sought and asked.

use super::fills::{dose, litres, log, near};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::fill::work;
use brimline::form::log::{
    Base, Counted, Draft, Entered, Lack, Reader, Shown, Sought, choices, doubts, filled, measured_remark,
    plan, reading, reminder, words,
};
use brimline::form::site::Act;
use brimline::form::station::{Job, Method};
use brimline::form::{Action, Field, Filling, Typed, names};
use brimline::number::Marks;
use brimline::site::log::{
    Amount, Checklist, Deviation, Fill, Named, Reading, Scale, Si, Task, When, changed,
};
use brimline::site::{Entry, Site, Standing};
use brimline::trade::calendar::Date;
use brimline::trade::governing::Aim;
use brimline::units::{System, Volume};

fn after(actions: impl IntoIterator<Item = Action>) -> Typed {
    actions.into_iter().fold(Typed::default(), reduce)
}

fn write(entry: &Entry) -> String {
    format!("{} {}", entry.text, entry.unit)
}

fn reader() -> Reader<'static> {
    Reader {
        write: &write,
        now: When::read("2026-03-07T18:30:00-05:00"),
        offset: &|_, _| -300,
        ..Reader::default()
    }
}

fn shown() -> Shown {
    Shown { dose: "20 fl oz".into(), water: "9.84 gal".into(), level: "10 gal".into() }
}

/// Whatever is asked, the record has the figures that Fill shows, to the log's twelve digits.
#[test]
fn a_record_is_what_fill_shows() {
    let start = Typed::default();
    let mut recorded = 0;
    for machine in &start.site.machines {
        for product in &start.site.products {
            for measure in &start.site.measures {
                for filling in [Filling::MadeUp, Filling::OnTop] {
                    let typed = after([
                        Action::Pick(Shelf::Machine, machine.id.clone()),
                        Action::Pick(Shelf::Product, product.id.clone()),
                        Action::Pick(Shelf::Measure, measure.id.clone()),
                        Action::Filling(filling),
                        Action::Write(Field::Level, "75".into()),
                    ]);
                    let asked = work(&typed, Marks::POINT);
                    let Some(fill) = plan(&typed, &asked, &shown()) else {
                        assert!(asked.outcome.answer.stopped() || asked.headline().is_none());
                        continue;
                    };
                    recorded += 1;
                    let figure = |name| asked.outcome.answer.get(name).map(|value| value.si);
                    let same = |amount: &Amount, shown: Option<f64>| {
                        assert_eq!(amount.si, shown.and_then(Si::new).unwrap_or_default());
                    };
                    same(&fill.concentrate, figure(names::FILL_ROUNDED).or(figure(names::FILL_DOSE)));
                    same(&fill.water, figure(names::FILL_WATER));
                    same(&fill.level, figure(names::FILL_TOTAL));
                    assert_eq!((&*fill.machine.id, &*fill.product.id), (&*machine.id, &*product.id));
                    assert_eq!((&*fill.concentrate.text, &*fill.water.text), ("20 fl oz", "9.84 gal"));
                }
            }
        }
    }
    assert!(recorded > 40, "only {recorded} were recorded");
}

#[test]
fn what_stands_in_the_way_is_not_recorded() {
    let typed = after([Action::Pick(Shelf::Product, "quat".into())]);
    let asked = work(&typed, Marks::POINT);
    assert!(asked.outcome.answer.stopped());
    assert_eq!(plan(&typed, &asked, &shown()), None);
    let read = reduce(typed, Action::StopRead);
    assert!(plan(&read, &work(&read, Marks::POINT), &shown()).is_some());
}

#[test]
fn the_standard_in_force_is_named_with_its_version() {
    let start = Typed::default();
    let (product, floor) = (start.ask.product.clone(), start.ask.floor.clone());
    let typed = after([
        Act::Draft { floor, product, dilution: "1:64".into() }.action(),
        Act::Publish { date: "2026-03-01".into(), proved: String::new() }.action(),
    ]);
    let standard = typed.site.standards.last().expect("it was published").clone();
    assert_eq!(standard.standing, Standing::InForce);
    let fill = plan(&typed, &work(&typed, Marks::POINT), &shown()).expect("an amount");
    assert_eq!((&*fill.standard.id, fill.version), (&*standard.id, standard.version));
    let other = reduce(typed, Action::Pick(Shelf::Product, "vinegar".into()));
    let asked = work(&reduce(other.clone(), Action::StopRead), Marks::POINT);
    let fill = plan(&other, &asked, &shown()).expect("an amount");
    assert_eq!((&*fill.standard.id, fill.version), ("", 0), "it is for another product");
}

#[test]
fn what_a_person_adds_stands_beside_the_plan() {
    let typed = Typed::default();
    let planned = plan(&typed, &work(&typed, Marks::POINT), &shown()).expect("an amount");
    let base = Base { fill: planned.clone(), entered: Entered::default() };
    let area = typed.site.areas[0].clone();
    let entered = Entered {
        areas: vec![area.id.clone()],
        measured: Entry::new("500", "ml"),
        scale: Scale::Ratio,
        reading: Entry::new("1.5", "percent"),
        deviation: Deviation::Less,
        reason: "bottle empty".into(),
        who: " ab ".into(),
        ..Entered::default()
    };
    let fill = filled(&base, &entered, &typed.site, &reader()).expect("nothing is in the way");
    assert_eq!(fill.areas, [Named::new(area.id, area.name)]);
    assert_eq!((fill.measured.si.value(), &*fill.measured.text), (Some(0.0005), "500 ml"));
    assert_eq!((fill.reading.si.value(), fill.reading.scale), (Some(0.015), Scale::Ratio));
    let unadorned = Fill { areas: vec![], measured: Amount::default(), reading: Reading::default(), ..fill };
    assert_eq!(Fill { deviation: Deviation::None, ..unadorned }, planned, "the plan stays as it was");
    let said = words(&base.entered, &entered, "ab");
    assert_eq!(
        (said.who.text.as_str(), said.reason.text.as_str(), said.by.text.as_str()),
        ("ab", "bottle empty", "")
    );
}

#[test]
fn what_lacks_is_told_and_nothing_is_guessed() {
    let site = Site::default();
    let entered = Entered {
        measured: Entry::new("half", "ml"),
        reading: Entry::new("3", "one"),
        deviation: Deviation::Other,
        ..Entered::default()
    };
    let lacks = filled(&Base::default(), &entered, &site, &reader()).expect_err("all of it");
    let at: Vec<&str> = lacks.iter().map(Lack::at).collect();
    assert_eq!(at, ["log-measured", "log-scale", "log-product", "log-reason"]);
}

/// Opening a form and closing it changes nothing, in whatever units the reader sees it.
#[test]
fn a_correction_carries_what_was_changed_alone() {
    let fill = Fill {
        reading: Reading {
            scale: Scale::Active,
            si: Si::new(0.2).expect("an amount"),
            text: "200 ppm".into(),
        },
        water: litres(37.3),
        ..dose("p", 0.591, Some(0.6))
    };
    let fills = log(&[("2026-03-07T18:30:00Z", fill.clone(), "AB")]);
    let site = Typed::default().site;
    for system in [System::Us, System::Metric, System::Imperial] {
        let base = Base::of(&fills[0], system, Marks::POINT);
        let same = filled(&base, &base.entered, &site, &reader()).expect("as it was");
        assert_eq!(same, fill);
        let entered = Entered { measured: Entry::new("700", "ml"), who: "CD".into(), ..base.entered.clone() };
        let is = filled(&base, &entered, &site, &reader()).expect("a correction");
        assert_eq!(changed(&fill, &is).keys().collect::<Vec<_>>(), ["measured"]);
        let said = words(&base.entered, &entered, "EF");
        assert_eq!(
            (said.who.text.as_str(), said.by.text.as_str(), said.notes.text.as_str()),
            ("CD", "EF", "")
        );
    }
}

/// 10 gal at 1 to 64, measured in steps of 1 fl oz: 20 fl oz are planned, and the label gives 19.7.
#[test]
fn measured_far_from_the_plan_is_told() {
    let typed = Typed::default();
    let asked = work(&typed, Marks::POINT);
    let ounce = 29.573_529_562_5e-6;
    let told = |ounces: f64| {
        measured_remark(&typed, &asked, Volume::new(ounces * ounce), Marks::POINT).map(|remark| remark.code)
    };
    assert_eq!(told(20.0), None);
    assert_eq!(told(20.4), None, "within half a mark");
    assert_eq!((told(21.0), told(19.0)), (Some("remark-log-more"), Some("remark-log-less")));
    assert_eq!(told(25.0), Some("remark-log-over-label"), "more than a tenth off its one number");
    let range = [Action::Text(Line::Label, "1-3 oz/gal".into()), Action::Aim(Aim::Middle)];
    let range = range.into_iter().fold(typed, reduce);
    let asked = work(&range, Marks::POINT);
    let planned = asked.outcome.answer.get(names::FILL_ROUNDED).expect("a dose").si;
    let told = |more: f64| {
        let measured = Volume::new(planned + more * ounce);
        measured_remark(&range, &asked, measured, Marks::POINT).map(|remark| remark.code)
    };
    assert_eq!((told(2.0), told(-2.0)), (Some("remark-log-more"), Some("remark-log-less")));
    assert_eq!((told(11.0), told(-11.0)), (Some("remark-log-over-label"), Some("remark-log-under-label")));
}

/// "A self-driving scrubber takes 3 to 6 fl oz per tank": common practice, no source. The label's 19.7 fl oz is
/// overruled there, so neither 5 fl oz nor 6 is outside of anything, and more than 6 is too much for the machine.
#[test]
fn what_was_measured_is_held_against_the_rule_that_governs() {
    let typed = after([Action::Pick(Shelf::Machine, "self-driving".into())]);
    let asked = work(&typed, Marks::POINT);
    let ounce = 29.573_529_562_5e-6;
    let told = |ounces: f64| measured_remark(&typed, &asked, Volume::new(ounces * ounce), Marks::POINT);
    let code = |ounces| told(ounces).map(|remark| remark.code);
    assert_eq!(code(6.0), None);
    assert_eq!(code(5.0), Some("remark-log-less"));
    assert_eq!(code(2.0), Some("remark-log-under-machine"));
    assert_eq!(
        code(19.7),
        Some("remark-log-over-machine"),
        "the label asks for it, the machine does not take it"
    );
    let most = told(8.0).expect("too much").facts.into_iter().find(|(name, _)| *name == "most");
    assert!(most.is_some(), "it says how much");
}

/// Another product went in: the record is of that one, and no figure of the planned one counts it.
#[test]
fn another_product_is_asked_for_and_counted_as_itself() {
    let typed = Typed::default();
    let planned = plan(&typed, &work(&typed, Marks::POINT), &shown()).expect("a fill");
    let site = &typed.site;
    let other = site.products.iter().find(|one| *one.id != *planned.product.id).expect("another");
    let added = Entered {
        deviation: Deviation::OtherProduct,
        reason: "None left".into(),
        measured: Entry::new("500", "ml"),
        ..Entered::default()
    };
    let read = |added: &Entered| {
        let (base, entered) = added.beside(&planned, "planned: it, 20 fl oz");
        (filled(&base, &entered, site, &reader()), words(&base.entered, &entered, ""))
    };
    assert_eq!(read(&added).0, Err(vec![Lack::Product]), "it asks which");
    let same = Entered { product: planned.product.id.to_string(), ..added.clone() };
    assert_eq!(read(&same).0, Err(vec![Lack::Product]), "the planned one is no other");
    let silent = Entered { product: other.id.clone(), reason: " ".into(), ..added.clone() };
    assert_eq!(read(&silent).0, Err(vec![Lack::Reason]), "what was planned is no reason");
    let (fill, said) = read(&Entered { product: other.id.clone(), ..added.clone() });
    let fill = fill.expect("a record");
    assert_eq!((&*fill.product.id, &*fill.machine.id), (&*other.id, &*planned.machine.id));
    assert_eq!(fill.concentrate, Amount::default(), "nothing was planned of it");
    assert_eq!(fill.measured.si.value(), Some(0.0005));
    assert_eq!(said.reason.text, "None left (planned: it, 20 fl oz)");
    let (named, _) = read(&Entered { unlisted: " Blue can ".into(), ..added });
    assert_eq!(named.expect("a record").product, Named::new("Blue can", "Blue can"));
    // Who goes back to the plan leaves nothing of the other behind.
    let back = Entered { product: other.id.clone(), unlisted: "Blue can".into(), ..Entered::default() };
    assert_eq!(read(&back).0, Ok(planned.clone()));
    let fills = log(&[("2026-03-07T18:30:00Z", fill, "AB")]);
    assert!(fills.iter().all(|one| one.fill.product.id != planned.product.id));
}

#[test]
fn a_reading_is_taken_from_the_job_that_works_it_out() {
    let typed = after([
        Action::Job(Job::Reading),
        Action::Method(Method::Refractometer),
        Action::Write(Field::Brix, "2".into()),
        Action::Write(Field::PerBrix, "0.8".into()),
    ]);
    // 2 °Brix at 0.8 % each.
    let (scale, entry) = reading(&typed, Marks::POINT).expect("it works out");
    assert_eq!(scale, Scale::Ratio);
    assert!(near(entry.text.parse().expect("a number"), 1.6));
    assert_eq!(reading(&reduce(typed, Action::Write(Field::Brix, "?".into())), Marks::POINT), None);
}

#[test]
fn the_filter_shows_what_was_struck_and_counts_it_nowhere() {
    let struck = Fill { struck: true, ..dose("p", 1.0, None) };
    let fills = log(&[
        ("2026-03-31T23:30:00-05:00", dose("p", 1.0, None), "AB"),
        ("2026-04-01T08:00:00-05:00", struck, "ab"),
        ("2026-04-02T08:00:00-05:00", dose("q", 1.0, None), ""),
    ]);
    let april = Sought { month: "2026-04".into(), ..Sought::default() };
    assert_eq!(april.places(&fills), [2, 1], "the newest first");
    assert_eq!(april.filter().of(&fills).count(), 1);
    let found = choices(&fills);
    assert_eq!(found.months[0].0, "2026-04");
    assert_eq!(found.who, [("AB".to_owned(), "AB".to_owned())], "however it was written");
    assert_eq!(found.products, [("p".to_owned(), "P".to_owned()), ("q".to_owned(), "Q".to_owned())]);
}

#[test]
fn a_backup_is_asked_for_in_time() {
    let today = Date::new(2026, 3, 15).expect("a day");
    let code = |last: Option<(i64, i64)>, since| {
        let last = last.and_then(|(month, day)| Date::new(2026, month, day));
        reminder(last, since, today).map(|remark| remark.code)
    };
    assert_eq!(code(None, 0), None, "nothing would be lost");
    assert_eq!(code(None, 1), Some("remark-log-backup-none"));
    assert_eq!((code(Some((3, 8)), 200), code(Some((3, 7)), 1)), (None, Some("remark-log-backup-old")));
    assert_eq!(code(Some((3, 15)), 201), Some("remark-log-backup-old"));
    assert_eq!(code(Some((3, 1)), 0), None);
}

#[test]
fn a_draft_comes_back_as_it_was() {
    let draft = Draft {
        by: "AB".into(),
        hand: Entered { measured: Entry::new("half", "ml"), notes: "cold".into(), ..Entered::default() },
        ..Draft::default().with_count(Counted { product: "p".into(), ..Counted::default() })
    };
    let text = serde_json::to_string(&draft).expect("JSON");
    assert_eq!(serde_json::from_str::<Draft>(&text).expect("a draft"), draft);
    assert_eq!(serde_json::from_str::<Draft>("{}").expect("a draft"), Draft::default());
}

/// What was ticked off was done to one machine: a record that turns out to be of another one is not ticked off.
#[test]
fn ticks_do_not_go_to_another_machine() {
    let site = Typed::default().site;
    let checklist = Checklist { drain: Task::Done, ..Checklist::default() };
    let fills = log(&[("2026-03-07T08:00:00Z", Fill { checklist, ..dose("p", 1.0, None) }, "AB")]);
    let base = Base::of(&fills[0], System::Us, Marks::POINT);
    let same = Entered { notes: "cold".into(), ..base.entered.clone() };
    assert_eq!(filled(&base, &same, &site, &reader()).expect("a fill").checklist.drain, Task::Done);
    let other = Entered { machine: site.machines[0].id.clone(), ..base.entered.clone() };
    assert_eq!(filled(&base, &other, &site, &reader()).expect("a fill").checklist, Checklist::default());
}

/// A correction names who writes it, also where that is who did the fill; a fill names them once.
#[test]
fn a_correction_always_names_who_writes_it() {
    let fill = Entered { who: "JD".into(), ..Entered::default() };
    let by = |was: &Entered, is: &Entered| words(was, is, " JD ").by.text.trim().to_owned();
    assert_eq!(by(&Entered::default(), &fill), "");
    assert_eq!(by(&fill, &Entered { notes: "cold".into(), ..fill.clone() }), "JD");
    assert_eq!(by(&fill, &Entered { who: "KL".into(), ..fill.clone() }), "JD");
}

/// The demo's 10 gal walk-behind: more than it holds, too much for the label, far from the plan.
#[test]
fn a_record_by_hand_is_doubted_as_fill_would() {
    let typed = Typed::default();
    let planned = plan(&typed, &work(&typed, Marks::POINT), &shown()).expect("a plan");
    let doubted = |fill: &Fill| -> Vec<&'static str> {
        doubts(&typed, fill, Marks::POINT).iter().map(|remark| remark.code).collect()
    };
    let si = planned.concentrate.si.value().expect("an amount");
    let measured = |share: f64| Fill { measured: Amount::new(si * share, ""), ..planned.clone() };
    assert!(doubted(&measured(1.0)).is_empty());
    assert!(doubted(&measured(4.0))[0].starts_with("remark-log-over-"));
    assert!(doubted(&measured(0.1))[0].starts_with("remark-log-under-"));
    let full = Fill { level: Amount::new(1.9, "500 gal"), ..planned.clone() };
    assert_eq!(doubted(&full)[0], "remark-log-over-tank");
    let gone = Fill { product: Named::new("gone", "Gone"), ..measured(4.0) };
    assert_eq!(doubted(&gone), ["remark-log-more"], "its own plan still tells");
}

/// When a fill was done, by the clock on the wall there and then.
#[test]
fn a_fill_by_hand_says_when() {
    let site = Site::default();
    let entered = |day: &str, time: &str| Entered {
        product: "p".into(),
        notes: "cold".into(),
        day: day.into(),
        time: time.into(),
        ..Entered::default()
    };
    let at = |day: &str, time: &str| {
        let filled = filled(&Base::default(), &entered(day, time), &site, &reader());
        filled.map(|fill| fill.at.to_string()).map_err(|lacks| lacks[0].at())
    };
    assert_eq!(at("", ""), Ok(String::new()));
    assert_eq!(at("", "06:15"), Ok("2026-03-07T06:15:00-05:00".into()), "today");
    assert_eq!(at("2026-03-06", "23:50"), Ok("2026-03-06T23:50:00-05:00".into()));
    assert_eq!(at("2026-03-06", ""), Err("log-time"));
    assert_eq!(at("2026-02-30", "06:15"), Err("log-day"));
    assert_eq!(at("", "18:31"), Err("log-time"), "it has not come yet");
}

#[test]
fn a_fill_by_hand_says_something() {
    let chosen = Entered { product: "p".into(), machine: "m".into(), who: "AB".into(), ..Entered::default() };
    let of = |entered: &Entered| filled(&Base::default(), entered, &Site::default(), &reader());
    assert_eq!(of(&chosen), Err(vec![Lack::Nothing]));
    assert!(of(&Entered { measured: Entry::new("600", "ml"), ..chosen.clone() }).is_ok());
    assert!(of(&Entered { notes: "Topped up".into(), ..chosen }).is_ok());
}
