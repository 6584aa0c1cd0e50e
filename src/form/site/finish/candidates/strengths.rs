//! The dilutions of a product that are looked at: the ends and the middle of its label's window, narrowed by
//! the site's own rule.

use crate::answer::{Remark, Value, Weight};
use crate::form::rules::{Extent, Liquid, Rules};
use crate::form::site::finish::dilution::{like_label, per_tank, plus_water};
use crate::form::site::finish::machines::Dose;
use crate::form::{Field, Outcome, Typed};
use crate::number::Marks;
use crate::site::{Entry, Machine, Product};
use crate::trade::governing::{Aim, Governs, govern};
use crate::trade::label::{self, Rule, Window};
use crate::units::{Kind, Volume};

/// One dilution, as it is asked about.
#[derive(Clone, Debug)]
pub(in crate::form::site::finish) struct Asked {
    /// Where in the range; none where there is none.
    pub aim: Option<Aim>,
    /// The dilution, written as labels are.
    pub dilution: String,
    /// What a full tank is given; none where that does not work out.
    pub dose: Option<Dose>,
    /// What speaks against it before anything else is looked at, and whether that forbids it.
    pub against: Option<(bool, Remark)>,
}

impl Asked {
    fn unclear(product: &Product, code: &'static str) -> Vec<Self> {
        let against = Some((false, Remark::new(code, Weight::Warn)));
        vec![Self { aim: None, dilution: product.label.trim().to_owned(), dose: None, against }]
    }
}

/// The dilutions of a product, the weakest first.
pub(super) fn of(own: &Typed, product: &Product, marks: Marks) -> Vec<Asked> {
    let Ok(label) = label::read(&product.label, own.system) else {
        return Asked::unclear(product, "remark-fit-label");
    };
    if matches!(label.rule, Rule::Powder(_) | Rule::Packets(_)) {
        let dilution = product.label.trim().to_owned();
        return vec![Asked { aim: None, dilution, dose: Some(Dose::Solid), against: None }];
    }
    let typed = of_product(own, product);
    let mut aside = Outcome::default();
    let tank = aside.need::<Volume>(&typed, Field::Tank, marks);
    let Some(rules) = Rules::read(&mut aside, &typed, &label, marks) else {
        return Asked::unclear(product, "remark-fit-unsound");
    };
    let whole = match (rules.liquid, tank) {
        (_, Some(tank)) => tank,
        // A share is the same in any tank.
        (Liquid::Strength(_), None) => Volume::new(0.1),
        (Liquid::PerTank(_), None) => return Asked::unclear(product, "remark-fit-unsound"),
    };
    let fill = Extent::full(whole);
    let (asked, bounds) = (rules.asked(fill), rules.bounds(fill));
    let window = govern(asked, &bounds, Aim::Low).window;
    let minimum = bounds.iter().find(|bound| bound.by == Governs::Minimum);
    let aims: &[Aim] = if window.is_point() { &[Aim::Low] } else { Aim::ALL };
    let one = |aim: &Aim| {
        let amount = aim.within(window);
        let as_printed = window.is_point() && window == asked;
        let (dose, text) = match rules.liquid {
            Liquid::PerTank(_) => (Dose::PerTank(amount), per_tank(amount, *aim)),
            Liquid::Strength(_) => {
                let share = |amount: Volume| amount.fraction_of(whole);
                let range = Window { low: share(window.low), high: share(window.high) };
                let (text, share) = like_label(&product.label, own.system, range, *aim)
                    .unwrap_or_else(|| (plus_water(share(amount), *aim), share(amount)));
                (Dose::Share(share), text)
            }
        };
        let below = minimum.filter(|minimum| !minimum.allows(amount));
        let against = below.map(|minimum| {
            let Window { low, .. } = minimum.window;
            (
                true,
                Remark::new("remark-fit-minimum", Weight::Warn).value("least", Value::new(low, Kind::Dose)),
            )
        });
        Asked {
            aim: (!window.is_point()).then_some(*aim),
            dilution: if as_printed { product.label.trim().to_owned() } else { text },
            dose: Some(dose),
            against,
        }
    };
    aims.iter().map(one).collect()
}

/// Asked about the product in a machine without limits of its own: each machine is asked by itself.
fn of_product(own: &Typed, product: &Product) -> Typed {
    let mut typed = own.clone();
    typed.ask.product.clone_from(&product.id);
    without_limits(&mut typed);
    typed
}

/// Takes away what the machine asked about allows for a full tank.
pub(super) fn without_limits(typed: &mut Typed) {
    if let Some(Machine { least, most, .. }) = typed.machine_mut() {
        (*least, *most) = (Entry::new("", "ml"), Entry::new("", "ml"));
    }
}
