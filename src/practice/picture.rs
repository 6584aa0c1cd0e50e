//! A fill as a picture: the cup, the tank, and what half a step of the cup does to the ratio.

use super::exercise::{Exercise, Fact, Key};
use super::topic::Topic;
use crate::number::Marks;
use crate::site::Entry;
use crate::units::{Quantity, Volume, unit};

/// What is drawn of a fill, in SI units. Nothing that the exercise did not tell, but the answer.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Picture {
    /// What the tank holds.
    pub tank: f64,
    /// Product and water in it.
    pub total: f64,
    /// Product.
    pub dose: f64,
    /// One step of the cup.
    pub step: f64,
    /// The unit on the cup, by its code.
    pub unit: &'static str,
    /// Parts of water to one part of product.
    pub ratio: f64,
    /// The same with half a step less.
    pub less: f64,
    /// The same with half a step more.
    pub more: f64,
}

impl Exercise {
    /// The picture of a dose exercise; none of any other.
    ///
    /// `N = (V − x)/x` where the mix reaches a mark V, `N = W/x` where the product x goes on top of the water W.
    ///
    /// ```
    /// use brimline::number::Marks;
    /// use brimline::practice::{Session, Stock, Topic};
    /// use brimline::site::demo;
    /// use brimline::units::System;
    /// let stock = Stock::of(&demo(), System::Us, Marks::POINT);
    /// let session = Session { topics: vec![Topic::Dose], count: 1, stock, ..Session::default() };
    /// let drawn = session.exercises()[0].picture().unwrap();
    /// assert!(drawn.dose < drawn.total && drawn.total <= drawn.tank);
    /// assert!(drawn.more < drawn.ratio && drawn.ratio < drawn.less); // more product is less water for each part
    /// ```
    pub fn picture(&self) -> Option<Picture> {
        let Key::Amount(key) = &self.key else { return None };
        if self.topic != Topic::Dose {
            return None;
        }
        let told = |sentence: &str, name: &str| self.told(sentence, name).and_then(volume);
        let tank = told("practice-tank", "tank")?;
        let step = told("practice-jug", "step")?;
        let (dose, half) = (key.si, step / 2.0);
        let on_top = told("practice-fill-on-top", "fill");
        let total = match on_top {
            Some(water) => water + dose,
            None => told("practice-fill-part", "fill").unwrap_or(tank),
        };
        // On top the water stays what it is; up to a mark water makes room for product.
        let parts = |dose: f64| on_top.unwrap_or(total - dose) / dose;
        let unit = key.unit;
        (half < dose).then(|| Picture {
            tank,
            total,
            dose,
            step,
            unit,
            ratio: parts(dose),
            less: parts(dose - half),
            more: parts(dose + half),
        })
    }

    fn told(&self, sentence: &str, name: &str) -> Option<&Entry> {
        let facts = &self.asked.iter().find(|said| said.key == sentence)?.facts;
        facts.iter().find_map(|(one, fact)| match fact {
            Fact::Entry(entry) if *one == name => Some(entry),
            _ => None,
        })
    }
}

/// An exercise tells its numbers with a point, whatever the reader's mark.
fn volume(entry: &Entry) -> Option<f64> {
    let value = crate::number::read(&entry.text, Marks::POINT).ok()?;
    Some(Volume::new(unit(&entry.unit)?.to_si(value)).si())
}
