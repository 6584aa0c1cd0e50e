//! The film that stays on the floor: how thick it is, how long it stays wet, and whether that is long
//! enough for the product.

use crate::answer::{Answer, Fact, Remark, Value, Weight};
use crate::chemistry::drying::{Air, drying_time, latent_heat, saturation, wet_bulb};
use crate::form::{Field, Outcome, Typed, names};
use crate::number::Marks;
use crate::site::Product;
use crate::trade::formula;
use crate::trade::label::Window;
use crate::units::{
    ApplicationRate, Duration, Kind, Pressure, Quantity, SpecificEnergy, Speed, Temperature, VolumeFraction,
};

/// Longer than anything.
pub(in crate::form) const NEVER: Duration = Duration::new(f64::INFINITY);

/// Reads the air of the room; mistakes are noted.
pub(in crate::form) fn room(out: &mut Outcome, typed: &Typed, marks: Marks) -> Option<Air> {
    let temperature = out.need::<Temperature>(typed, Field::Air, marks);
    let humidity = out.need::<VolumeFraction>(typed, Field::Humidity, marks);
    let speed = out.need::<Speed>(typed, Field::Draught, marks);
    Some(Air { temperature: temperature?, humidity: humidity?, speed: speed? })
}

/// Notes the film and its drying for what a setting lays down.
pub(in crate::form::flow) fn note(out: &mut Outcome, typed: &Typed, rate: ApplicationRate, marks: Marks) {
    let picked_up = out.need::<VolumeFraction>(typed, Field::PickUp, marks);
    let air = room(out, typed, marks);
    let contact = out.may::<Duration>(typed, Field::Contact, marks);
    thickness(&mut out.answer, names::FLOW_THICKNESS, rate);
    let Some(picked_up) = picked_up else { return };
    // A machine without a vacuum leaves all of it, whatever stands in the field.
    let vacuum = typed.machine().is_none_or(|machine| machine.vacuum);
    let picked_up = if vacuum { picked_up } else { VolumeFraction::ZERO };
    let film = rate * (1.0 - picked_up.si());
    let film_shown = Value::new(film, Kind::Rate);
    let given = [("a", Value::new(rate, Kind::Rate)), ("p", Value::new(picked_up, Kind::Percent))];
    out.answer.step(&formula::FILM, &given, film_shown);
    out.answer.figure(names::FLOW_FILM, film_shown);
    thickness(&mut out.answer, names::FLOW_FILM_THICKNESS, film);
    let Some(air) = air else { return };
    let time = drying_time(film, air);
    if time.low >= NEVER {
        out.answer.remark(Remark::new("remark-never-dries", Weight::Warn));
        return;
    }
    step(&mut out.answer, film, air, air.temperature, time.low);
    out.answer.figure(names::FLOW_DRY_FROM, Value::new(time.low, Kind::Time));
    if time.high < NEVER {
        step(&mut out.answer, film, air, wet_bulb(air), time.high);
        out.answer.figure(names::FLOW_DRY_TO, Value::new(time.high, Kind::Time));
    }
    out.answer.remark(Remark::new("remark-dry-estimate", Weight::Assumed));
    let Some(product) = typed.product() else { return };
    match contact {
        Some(Some(contact)) if contact > time.low => {
            // A wrong target is told where the settings are held against it.
            let most = Outcome::default().may::<ApplicationRate>(typed, Field::TargetHigh, marks).flatten();
            out.answer.remark(too_soon(product, contact, (rate, film), most, time));
        }
        Some(None) if product.disinfects() => {
            out.answer.remark(Remark::new("remark-contact-unknown", Weight::Warn));
        }
        _ => {}
    }
}

/// A volume on an area, as how thick it lies.
fn thickness(answer: &mut Answer, name: &'static str, laid: ApplicationRate) {
    let thick = Value::new(laid.thickness(), Kind::Thickness);
    answer.step(&formula::THICKNESS, &[("m", Value::new(laid, Kind::Rate))], thick);
    answer.figure(name, thick);
}

/// One end of the drying time, with all that its formula takes.
pub(in crate::form) fn step(
    answer: &mut Answer,
    film: ApplicationRate,
    air: Air,
    water: Temperature,
    time: Duration,
) {
    let vapour = saturation(air.temperature) * air.humidity.si();
    let given = [
        ("m", Value::new(film, Kind::Rate)),
        ("θ", Value::new(water, Kind::Temperature)),
        ("Y", Value::new(SpecificEnergy::new(latent_heat(water) * 1e3), Kind::Heat)),
        ("p_w", Value::new(Pressure::new(saturation(water)), Kind::Pressure)),
        ("p_a", Value::new(Pressure::new(vapour), Kind::Pressure)),
        ("V", Value::new(air.speed, Kind::AirSpeed)),
    ];
    answer.step(&formula::DRYING, &given, Value::new(time, Kind::Time));
}

/// The film is, or may be, gone before the label's contact time is over: how soon, and what would keep the
/// floor wet. The soonest drying decides, so that nobody counts on a floor that may be dry.
fn too_soon(
    product: &Product,
    contact: Duration,
    (rate, film): (ApplicationRate, ApplicationRate),
    most: Option<ApplicationRate>,
    time: Window<Duration>,
) -> Remark {
    let shown = |time| Value::new(time, Kind::Time);
    let surely = contact > time.high;
    // What stays wet lasts as long as there is of it.
    let (whole, need) = (time.low * (rate / film), film * (contact / time.low));
    // No floor is flooded for it: more than it may get is no advice.
    let floods = most.is_some_and(|most| need > most);
    let act = match () {
        () if film >= rate && floods => "dries-early-floods",
        () if film >= rate => "dries-early-more",
        () if whole >= contact => "dries-early-lift",
        () if floods => "dries-early-again-floods",
        () => "dries-early-again",
    };
    let remark = Remark::new("remark-dries-early", Weight::Warn)
        .with("product", Fact::Text(product.name.clone()))
        .with("dries", Fact::Key(if surely { "dries-early-surely" } else { "dries-early-maybe" }.to_owned()))
        .with("act", Fact::Key(act.to_owned()))
        .value("contact", shown(contact))
        .value("dry", shown(time.low))
        .value("latest", shown(time.high))
        .value("whole", shown(whole))
        .value("need", Value::new(need, Kind::Rate));
    match most {
        Some(most) => remark.value("most", Value::new(most, Kind::Rate)),
        None => remark,
    }
}
