//! The film that stays on the floor: how long it stays wet, and whether that is long enough.

use crate::answer::{Remark, Value, Weight};
use crate::chemistry::drying::{Air, drying_time};
use crate::form::{Field, Outcome, Typed, names};
use crate::number::Marks;
use crate::trade::formula;
use crate::units::{ApplicationRate, Duration, Kind, Quantity, Speed, Temperature, VolumeFraction};

/// Notes the film and its drying for what a setting lays down.
pub(super) fn note(out: &mut Outcome, typed: &Typed, rate: ApplicationRate, marks: Marks) {
    let picked_up = out.need::<VolumeFraction>(typed, Field::PickUp, marks);
    let temperature = out.need::<Temperature>(typed, Field::Air, marks);
    let humidity = out.need::<VolumeFraction>(typed, Field::Humidity, marks);
    let speed = out.need::<Speed>(typed, Field::Draught, marks);
    let contact = out.may::<Duration>(typed, Field::Contact, marks);
    let Some(picked_up) = picked_up else { return };
    // A machine without a vacuum leaves all of it, whatever stands in the field.
    let vacuum = typed.machine().is_none_or(|machine| machine.vacuum);
    let picked_up = if vacuum { picked_up } else { VolumeFraction::ZERO };
    let film = rate * (1.0 - picked_up.si());
    let film_shown = Value::new(film, Kind::Rate);
    let given = [("a", Value::new(rate, Kind::Rate)), ("p", Value::new(picked_up, Kind::Percent))];
    out.answer.step(&formula::FILM, &given, film_shown);
    out.answer.figure(names::FLOW_FILM, film_shown);
    let (Some(temperature), Some(humidity), Some(speed)) = (temperature, humidity, speed) else { return };
    let time = drying_time(film, Air { temperature, humidity, speed });
    let never = Duration::new(f64::INFINITY);
    if time.low >= never {
        out.answer.remark(Remark::new("remark-never-dries", Weight::Warn));
        return;
    }
    let low = Value::new(time.low, Kind::Time);
    let given = [("m", film_shown), ("V", Value::new(speed, Kind::Speed))];
    out.answer.step(&formula::DRYING, &given, low);
    out.answer.figure(names::FLOW_DRY_FROM, low);
    if time.high < never {
        out.answer.figure(names::FLOW_DRY_TO, Value::new(time.high, Kind::Time));
    }
    out.answer.remark(Remark::new("remark-dry-estimate", Weight::Assumed));
    if let Some(Some(contact)) = contact
        && contact > time.low
    {
        out.answer.remark(
            Remark::new("remark-dries-early", Weight::Warn)
                .value("contact", Value::new(contact, Kind::Time))
                .value("dry", low),
        );
    }
}
