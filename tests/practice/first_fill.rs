//! The guide through a first fill: no dead end, every step within reach, gone on with where it was left, and done only
//! where the page itself says so.

use brimline::answer::Weight;
use brimline::chemistry::floor::{FloorVerdict, Surface};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::fill::{Fill, work};
use brimline::form::{Action, Field, Typed, cautions};
use brimline::number::Marks;
use brimline::practice::first_fill::{FirstFill, Reason, Seen, Stage, Standing, Step};
use brimline::site::Site;
use brimline::site::log::{
    Checklist, Current, Fill as Record, Log, Named, Stamp, Task, When, Words, current,
};
use proptest::prelude::*;

const BEGUN: &str = "2026-03-07T18:30:00-05:00";

/// What a person does with the guide.
#[derive(Clone, Copy, Debug)]
enum Move {
    Next(bool),
    Back,
    GoTo(Step),
    Pause,
    Resume,
    Close,
    Say(Reason),
    Begin,
}

fn moves() -> impl Strategy<Value = Vec<Move>> {
    let one = prop_oneof![
        6 => any::<bool>().prop_map(Move::Next),
        3 => Just(Move::Back),
        1 => prop::sample::select(Step::ALL).prop_map(Move::GoTo),
        1 => Just(Move::Pause),
        1 => Just(Move::Resume),
        1 => Just(Move::Close),
        1 => prop::sample::select(Reason::ALL).prop_map(Move::Say),
        1 => Just(Move::Begin),
    ];
    prop::collection::vec(one, 0..60)
}

fn after(moves: &[Move]) -> FirstFill {
    let mut guide = FirstFill::begin(BEGUN);
    for one in moves {
        match *one {
            Move::Next(done) => guide.next(done),
            Move::Back => guide.back(),
            Move::GoTo(step) => guide.go_to(step),
            Move::Pause => guide.pause(),
            Move::Resume => guide.resume(),
            Move::Close => guide.close(),
            Move::Say(reason) => guide.say(reason),
            Move::Begin => guide = FirstFill::begin(BEGUN),
        }
    }
    guide
}

fn kept(guide: &FirstFill) -> FirstFill {
    serde_json::from_str(&serde_json::to_string(guide).expect("it is written")).expect("and read")
}

proptest! {
    /// From wherever somebody is, skipping leads to the end and passes every step that lies ahead.
    #[test]
    fn no_step_is_a_dead_end(moves in moves()) {
        let mut guide = after(&moves);
        guide.go_to(guide.at);
        let mut shown = vec![guide.at];
        for _ in Step::ALL {
            guide.next(false);
            if guide.stage == Stage::Running {
                shown.push(guide.at);
            }
        }
        prop_assert_eq!(guide.stage, Stage::Ended);
        prop_assert_eq!(&shown[..], &Step::ALL[shown[0].place()..]);
    }

    /// Back undoes next, and from the last step every one is reached by going back.
    #[test]
    fn every_step_is_within_reach(moves in moves(), done in any::<bool>()) {
        let mut guide = after(&moves);
        guide.go_to(guide.at);
        let here = guide.at;
        guide.next(done);
        if guide.stage == Stage::Running {
            guide.back();
            prop_assert_eq!(guide.at, here);
        }
        guide.go_to(*Step::ALL.last().expect("steps"));
        let mut shown = vec![guide.at];
        for _ in 1..Step::ALL.len() {
            guide.back();
            shown.push(guide.at);
        }
        shown.reverse();
        prop_assert_eq!(&shown[..], Step::ALL);
        guide.back();
        prop_assert_eq!((guide.stage, guide.at), (Stage::Running, Step::ALL[0]), "from the first step nowhere");
    }

    /// Left, kept, opened and gone on with: the same place with all that was said.
    #[test]
    fn it_goes_on_where_it_was_left(moves in moves()) {
        let mut guide = after(&moves);
        prop_assert_eq!(&kept(&guide), &guide);
        guide.go_to(guide.at);
        let before = guide.clone();
        guide.pause();
        prop_assert!(guide.is_held() && guide.stage == Stage::Paused);
        let mut again = kept(&guide);
        again.next(true);
        again.back();
        prop_assert_eq!(&again, &guide, "nothing moves while it is left");
        again.resume();
        prop_assert_eq!(again, before);
    }

    /// What was passed over is never called done; each step is behind once, in the order of the work.
    #[test]
    fn what_was_skipped_is_told(moves in moves()) {
        let guide = after(&moves);
        let places: Vec<usize> = guide.passed.iter().map(|one| one.step.place()).collect();
        prop_assert!(places.windows(2).all(|pair| pair[0] < pair[1]), "{places:?}");
        for step in guide.skipped() {
            prop_assert!(guide.passed.iter().all(|one| one.step != step || !one.done));
        }
        if !moves.iter().any(|one| matches!(one, Move::Next(true))) {
            prop_assert_eq!(guide.skipped().count(), Step::ALL.len());
        }
    }

    /// Whatever is typed, each step stands at one of what it can be, and the words for it are there.
    #[test]
    fn each_step_stands_somewhere_whatever_is_typed(
        field in prop::sample::select(Field::SINGLE), text in "[0-9a-z./ ]{0,6}", label in "[0-9a-z:/ ]{0,8}", moves in moves()
    ) {
        let typed = [Action::Write(field, text), Action::Text(Line::Label, label)].into_iter().fold(Typed::default(), reduce);
        let (guide, fill) = (after(&moves), work(&typed, Marks::POINT));
        let seen = seen(&typed, &fill, &[]);
        for step in Step::ALL {
            prop_assert!(step.standings().contains(&guide.standing(*step, &seen)), "{step:?}");
        }
    }
}

fn seen<'a>(typed: &'a Typed, fill: &'a Fill, fills: &'a [Current]) -> Seen<'a> {
    Seen { typed, fill, fills, device: "cart-1", now: When::read("2026-03-07T22:00:00-05:00") }
}

/// How the steps stand.
fn standings(guide: &FirstFill, typed: &Typed, fills: &[Current]) -> Vec<(Step, Standing)> {
    let fill = work(typed, Marks::POINT);
    Step::ALL.iter().map(|step| (*step, guide.standing(*step, &seen(typed, &fill, fills)))).collect()
}

fn standing(guide: &FirstFill, typed: &Typed, fills: &[Current], step: Step) -> Standing {
    standings(guide, typed, fills)[step.place()].1
}

/// A log of fills of one machine, by the device that wrote them and when.
fn log(fills: &[(&str, &str, Checklist)]) -> Vec<Current> {
    let machine = Typed::default().machine().map(|one| Named::new(&*one.id, &*one.name)).expect("a machine");
    let mut log = Log::default();
    for (device, when, checklist) in fills {
        let fill = Record { machine: machine.clone(), checklist: checklist.clone(), ..Record::default() };
        log.fill(&Stamp { device, when, random: [3; 32] }, fill, Words::default()).expect("it is written");
    }
    current(&log).fills
}

#[test]
fn a_page_that_was_just_opened_asks_for_what_nobody_can_see() {
    use Standing::{Done, Lacks, Open};
    let stands: Vec<Standing> =
        standings(&FirstFill::begin(BEGUN), &Typed::default(), &[]).into_iter().map(|(_, one)| one).collect();
    assert_eq!(stands, [Open, Done, Done, Done, Done, Open, Open, Lacks]);
}

#[test]
fn what_cannot_be_read_is_lacking_at_its_own_step() {
    let guide = FirstFill::begin(BEGUN);
    let lacking = |actions: &[Action]| -> Vec<Step> {
        let typed = actions.iter().cloned().fold(Typed::default(), reduce);
        let all = standings(&guide, &typed, &[]).into_iter();
        // No fill is in the log, whatever is typed.
        all.filter(|(step, one)| *one == Standing::Lacks && *step != Step::Shift)
            .map(|(step, _)| step)
            .collect()
    };
    assert_eq!(lacking(&[]), []);
    assert_eq!(
        lacking(&[Action::Write(Field::Tank, "ten".into())]),
        [Step::Machine, Step::Level, Step::Amount, Step::Record]
    );
    assert_eq!(
        lacking(&[Action::Text(Line::Label, "half a cup".into())]),
        [Step::Product, Step::Amount, Step::Record]
    );
    assert_eq!(
        lacking(&[Action::Write(Field::Level, "?".into())]),
        [Step::Level, Step::Amount, Step::Record]
    );
    assert!(lacking(&[Action::Write(Field::MeasureStep, "?".into())]).contains(&Step::Level));
    let empty = Typed { site: Site::default(), ..Typed::default() };
    let lacks = standings(&guide, &empty, &[]).into_iter().filter(|(_, one)| *one == Standing::Lacks).count();
    assert_eq!(lacks, Step::ALL.len(), "an empty site has nothing to go by, and holds nobody back");
}

#[test]
fn a_warning_stands_where_the_amount_would() {
    let typed = reduce(Typed::default(), Action::Pick(Shelf::Product, "hand-soap".into()));
    let mut guide = FirstFill::begin(BEGUN);
    guide.say(Reason::Splash);
    assert_eq!(
        standing(&guide, &typed, &[], Step::Amount),
        Standing::Stopped,
        "whatever was answered before"
    );
    assert_eq!(standing(&guide, &typed, &[], Step::Record), Standing::Stopped);
}

/// Where Fill warns, the step that chose what is warned about says so, whatever Fill is asked.
#[test]
fn a_step_is_not_simply_done_where_fill_warns() {
    let guide = FirstFill::begin(BEGUN);
    let pick = |shelf, id: &str| Action::Pick(shelf, id.into());
    let soap = [pick(Shelf::Product, "hand-soap"), Action::StopRead];
    for (actions, expected) in [(&soap[..1], Standing::Stopped), (&soap[..], Standing::Warned)] {
        let typed = actions.iter().cloned().fold(Typed::default(), reduce);
        assert_eq!(standing(&guide, &typed, &[], Step::Product), expected);
    }
    let site = Typed::default().site;
    let mut warned = 0;
    for (floor, product) in
        site.floors.iter().flat_map(|floor| site.products.iter().map(move |one| (floor, one)))
    {
        let (floor, product) = (&*floor.id, &*product.id);
        let chosen = [pick(Shelf::Floor, floor), pick(Shelf::Product, product)];
        let typed = chosen.into_iter().fold(Typed::default(), reduce);
        let remarks = work(&typed, Marks::POINT).outcome.answer.remarks;
        let weighs = |codes: &[&str]| {
            let own = remarks.iter().filter(|one| codes.contains(&one.code));
            own.map(|one| one.weight).min()
        };
        let expected =
            match weighs(&["remark-floor-does-not-fit", "remark-floor-unknown", "remark-standard-other"]) {
                Some(Weight::Stop) => Standing::Stopped,
                Some(_) => Standing::Warned,
                None => Standing::Done,
            };
        warned += usize::from(expected != Standing::Done);
        assert_eq!(standing(&guide, &typed, &[], Step::Floor), expected, "{product} on {floor}");
    }
    assert!(warned > 0, "the demo has floors and products that do not go together");
}

#[test]
fn only_the_right_reason_is_taken() {
    let typed = Typed::default();
    for reason in Reason::ALL {
        let mut guide = FirstFill::begin(BEGUN);
        guide.say(*reason);
        let done = standing(&guide, &typed, &[], Step::Amount) == Standing::Done;
        assert_eq!(done, *reason == Reason::Splash);
    }
}

#[test]
fn what_was_put_on_is_for_one_label() {
    let mut typed = Typed::default();
    let mut guide = FirstFill::begin(BEGUN);
    guide.put_on(typed.product().expect("a product"), true);
    assert_eq!(standing(&guide, &typed, &[], Step::Wear), Standing::Done);
    let other = reduce(typed.clone(), Action::Pick(Shelf::Product, "degreaser".into()));
    assert_eq!(
        standing(&guide, &other, &[], Step::Wear),
        Standing::Open,
        "another product asks for other things"
    );
    assert!(guide.is_on_for_another(other.product().expect("it")));
    typed.product_mut().expect("it").codes = "H314".into();
    assert_eq!(
        standing(&guide, &typed, &[], Step::Wear),
        Standing::Open,
        "and so does its label once it is read anew"
    );
    guide.put_on(typed.product().expect("it"), true);
    guide.put_on(typed.product().expect("it"), false);
    assert_eq!(standing(&guide, &typed, &[], Step::Wear), Standing::Open, "taken back");
    assert!(!guide.is_on_for_another(other.product().expect("it")));
}

#[test]
fn a_record_counts_that_this_device_wrote_since_the_beginning() {
    let (guide, typed) = (FirstFill::begin(BEGUN), Typed::default());
    let record = |fills: &[Current], typed: &Typed| standing(&guide, typed, fills, Step::Record);
    let unticked = Checklist::default;
    let before = log(&[
        ("cart-1", "2026-03-07T18:29:59-05:00", unticked()),
        ("cart-2", "2026-03-07T19:00:00-05:00", unticked()),
    ]);
    assert_eq!(record(&before, &typed), Standing::Open, "one of before, and one of another device");
    let mut since = log(&[("cart-1", "2026-03-07T18:30:00-05:00", unticked())]);
    assert_eq!(record(&since, &typed), Standing::Done);
    let other = reduce(typed.clone(), Action::Pick(Shelf::Machine, "self-driving".into()));
    assert_eq!(record(&since, &other), Standing::Open, "it is of another machine");
    since[0].fill.struck = true;
    assert_eq!(record(&since, &typed), Standing::Open, "it was struck");
    let unreadable = FirstFill { begun: "some day".into(), ..FirstFill::begin(BEGUN) };
    assert_eq!(standing(&unreadable, &typed, &before, Step::Record), Standing::Open);
}

#[test]
fn the_end_of_the_shift_is_read_off_the_log() {
    let (guide, typed) = (FirstFill::begin(BEGUN), Typed::default());
    let whole = ["drain", "rinse", "filters", "brush", "squeegee"]
        .iter()
        .fold(Checklist::default(), |list, task| list.with(task, Task::Done));
    let when = "2026-03-07T19:00:00-05:00";
    let shift = |list: Checklist| standing(&guide, &typed, &log(&[("cart-1", when, list)]), Step::Shift);
    assert_eq!(shift(Checklist::default()), Standing::Open);
    assert_eq!(shift(whole.clone().with("filters", Task::NotDone)), Standing::Open);
    assert_eq!(shift(whole), Standing::Done);
    assert_eq!(standing(&guide, &typed, &[], Step::Shift), Standing::Lacks);
}

#[test]
fn what_an_earlier_version_kept_opens() {
    let bare: FirstFill = serde_json::from_str(r#"{"stage":"running","at":"floor"}"#).expect("it opens");
    assert_eq!((bare.stage, bare.at, bare.passed.len()), (Stage::Running, Step::Floor, 0));
    let first = r#"{"stage":"paused","at":"level","passed":[{"step":"wear","done":true},{"step":"machine"}],
        "wears_for":"neutral","reason":["same"],"begun":"2026-03-07T18:30:00-05:00","of_a_later_version":[1]}"#;
    let mut guide: FirstFill = serde_json::from_str(first).expect("it opens");
    guide.resume();
    assert_eq!((guide.stage, guide.at), (Stage::Running, Step::Level));
    assert_eq!(guide.skipped().next(), Some(Step::Machine));
    assert!(
        !guide.is_on(Typed::default().product().expect("a product")),
        "what it asked for was not kept: look again"
    );
    assert!(
        serde_json::from_str::<FirstFill>(r#"{"at":"dance"}"#).is_err(),
        "a step that is none is no place to go on"
    );
}

/// What the panels say of harm is what the page itself goes by: chemistry and floors have their sources there.
#[test]
fn the_harm_that_is_told_is_the_harm_that_the_rules_know() {
    let typed = Typed::default();
    let product =
        |id: &str| typed.site.products.iter().find(|one| one.id == id).expect("of the demo").clone();
    let on = |id: &str, floor: &str| {
        let floor = typed.site.floors.iter().find(|one| one.id == floor).expect("of the demo");
        cautions::on_floor(&product(id), cautions::ground(&typed.site, floor, Marks::POINT), Marks::POINT)
    };
    assert!(matches!(on("vinegar", "marble"), FloorVerdict::DoesNotFit { .. }), "acid etches marble");
    assert_eq!(
        typed.site.floors.iter().find(|one| one.id == "marble").map(|one| one.surface),
        Some(Surface::CalcareousStone)
    );
    assert!(
        matches!(on("stripper", "vinyl"), FloorVerdict::DoesNotFit { .. }),
        "a stripper takes the finish off"
    );
    let foaming = reduce(typed.clone(), Action::Pick(Shelf::Product, "hand-soap".into()));
    assert!(work(&foaming, Marks::POINT).outcome.answer.stopped(), "foam and a vacuum");
}
