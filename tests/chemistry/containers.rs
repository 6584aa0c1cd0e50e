//! The label of a bottle: whose hazards it bears, and by what.

use brimline::chemistry::ghs::mixture::Reserve;
use brimline::chemistry::ghs::{Knowledge, SignalWord};
use brimline::form::action::{Line, Shelf, reduce};
use brimline::form::cautions::container::{Bears, Holds, Label, label};
use brimline::form::cautions::panel;
use brimline::form::{Action, Field, Typed};
use brimline::number::Marks;

fn pick(id: &str) -> Action {
    Action::Pick(Shelf::Product, id.into())
}

/// The degreaser with all that the rules ask for: 2 to 5 % caustic soda and 1 to 5 % metasilicate, both H314.
fn known(dilution: &str) -> Typed {
    [
        pick("degreaser"),
        Action::Text(Line::Codes, "H314".into()),
        Action::Text(Line::PartCodes(0), "H314".into()),
        Action::Text(Line::PartCodes(1), "H314".into()),
        Action::Text(Line::Standard, String::new()),
        Action::Text(Line::Label, dilution.into()),
        Action::Write(Field::Density, "1.1".into()),
        Action::Listed(true),
    ]
    .into_iter()
    .fold(Typed::default(), reduce)
}

fn of(typed: &Typed) -> Label {
    label(typed, Marks::POINT).expect("a product")
}

fn codes(label: &Label) -> Vec<&'static str> {
    label.elements.statements.iter().map(|one| one.code).collect()
}

/// Extreme pH: Hazardous Products Regulations (Canada), SOR/2015-17, 8.2.5 and 8.3.5. Below 1 % of each that
/// burns and below pH 11.5 no rule gives a class: 8.2.11(3), 8.3.11(3).
#[test]
fn a_use_solution_bears_what_its_screening_finds_where_all_is_known() {
    let strong = of(&known("1:30"));
    let Bears::Screened(rules) = &strong.bears else { panic!("{:?}", strong.bears) };
    assert_eq!(rules.iter().map(|rule| rule.code).collect::<Vec<_>>(), ["mixture-ph"]);
    assert_eq!((codes(&strong), strong.elements.signal), (vec!["H314"], SignalWord::Danger));

    let weak = of(&known("1:2000"));
    let Bears::Screened(rules) = &weak.bears else { panic!("{:?}", weak.bears) };
    assert!(rules.iter().all(|rule| rule.code == "mixture-below"), "{rules:?}");
    assert_eq!((codes(&weak), weak.elements.signal), (Vec::new(), SignalWord::None));
    // What to wear stays as the concentrate asks.
    assert_eq!(weak.advice, panel(known("1:2000").product().expect("a product")).advice);
}

#[test]
fn the_concentrate_counts_where_something_is_missing() {
    let thin = known("1:2000");
    let missing = [
        Action::Listed(false),
        Action::Text(Line::PartCodes(0), String::new()),
        Action::Text(Line::PartCas(1), "107-07-3".into()),
        Action::Text(Line::PartCodes(1), "H314 H335".into()),
        Action::Signal(SignalWord::Unknown),
        Action::Text(Line::Codes, "H314 H999".into()),
        Action::Text(Line::Label, "as you like".into()),
        Action::Write(Field::Density, "heavy".into()),
    ];
    for less in missing {
        let label = of(&reduce(thin.clone(), less.clone()));
        assert_eq!(label.bears, Bears::ConcentrateInstead, "{less:?}");
        assert!(codes(&label).contains(&"H314"), "{less:?}");
    }
    let nothing = of(&[pick("neutral")].into_iter().fold(Typed::default(), reduce));
    assert_eq!(nothing.bears, Bears::ConcentrateInstead);
}

#[test]
fn a_bottle_of_concentrate_bears_the_concentrate() {
    let label = of(&reduce(known("1:2000"), Action::Holds(Holds::Concentrate)));
    assert_eq!((label.bears.clone(), codes(&label)), (Bears::Concentrate, vec!["H314"]));
    assert_eq!(label.knowledge, Knowledge::Full);
    // A reserve that is not small changes nothing of it.
    let again = of(&[Action::Holds(Holds::Concentrate), Action::Reserve(Reserve::Large)]
        .into_iter()
        .fold(known("1:2000"), reduce));
    assert_eq!(codes(&again), ["H314"]);
}
