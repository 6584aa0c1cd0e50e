//! Whether a standard may be published: what stands in its way, what only warns, and what it gives in every
//! machine.

mod fresh;

use super::asked::{asked, in_use};
use super::library::shares_name;
use crate::answer::{Fact, Remark, Value, Weight};
use crate::document::checksum;
use crate::form::action::Shelf;
use crate::form::cautions::{remarks_by_estimate, residue};
use crate::form::fill::{self, Fill};
use crate::form::flow::{self, Flow};
use crate::form::{Field, Outcome, Typed, What, names};
use crate::number::Marks;
use crate::site::{Machine, Measure, Record, Standard, Standing, says_why};
use crate::trade::calendar::Date;
use crate::trade::label::{self, LabelMistake};
use crate::trade::stock::cost_each;
use crate::units::{ApplicationRate, Duration, Kind, Money, Quantity, Volume, VolumeFraction, VolumePrice};
use serde::Serialize;

/// What stands in the way of a standard, or beside it.
#[derive(Clone, Debug, PartialEq)]
pub struct Finding {
    /// What was found.
    pub remark: Remark,
    /// Whether it blocks: nothing can be published over it.
    pub blocks: bool,
    /// The machines that it is about; empty where it is about all.
    pub machines: Vec<String>,
    /// Why the author lets it pass.
    pub reason: Option<String>,
}

impl Finding {
    /// Whether it still stands in the way.
    pub fn holds(&self) -> bool {
        self.blocks || !self.reason.as_deref().is_some_and(says_why)
    }
}

/// What a standard gives in one machine.
#[derive(Clone, Debug)]
pub struct InMachine {
    /// The id of the machine.
    pub id: String,
    /// What people call it.
    pub name: String,
    /// A full tank in each measure in which it can be measured, with the id of the measure.
    pub doses: Vec<(String, Fill)>,
    /// The flow setting on this floor.
    pub flow: Flow,
    /// Concentrate for the floor area, in money; none where the price is not known.
    pub cost: Option<Value>,
    /// What one cleaning leaves; none where that is not known.
    pub residue: Option<Value>,
}

/// All that was found.
#[derive(Clone, Debug, Default)]
pub struct Proof {
    /// What stands in the way first, then what warns.
    pub findings: Vec<Finding>,
    /// Every machine in use that it is for.
    pub machines: Vec<InMachine>,
    /// Checksum of the records that it depends on.
    pub proved: String,
}

impl Proof {
    /// Whether it may be published.
    pub fn sound(&self) -> bool {
        !self.findings.iter().any(Finding::holds)
    }

    fn find(&mut self, standard: &Standard, remark: Remark, blocks: bool, machine: Option<&str>) {
        let same = |one: &&mut Finding| one.remark.code == remark.code && one.remark.facts == remark.facts;
        if let Some(known) = self.findings.iter_mut().find(same) {
            known.machines.extend(machine.map(str::to_owned).filter(|name| !known.machines.contains(name)));
            return;
        }
        let given = standard.overrides.iter().find(|one| one.finding == remark.code);
        let reason = given.map(|one| one.reason.trim().to_owned()).filter(|reason| !reason.is_empty());
        let machines = machine.map(str::to_owned).into_iter().collect();
        self.findings.push(Finding { remark, blocks, machines, reason });
    }
}

/// What may not be published whatever the reason: harm to people, floor or machine, or a label that is not kept.
pub const BLOCKS: [&str; 7] = [
    "remark-foam-refuse",
    "remark-foam-test-first",
    "remark-flammable",
    "remark-floor-does-not-fit",
    "remark-hazards-unknown",
    "remark-standard-outside",
    "remark-minimum-missed",
];

/// What keeps a measure from being used for a dose.
pub(in crate::form) const TOO_COARSE: [&str; 6] = [
    "remark-packets-level",
    "remark-measure-too-big",
    "remark-measure-coarse",
    "remark-rounded-outside",
    "remark-rounded-below-minimum",
    "remark-setting-outside",
];

/// What is about this fill or this shift, and not about the standard.
const PASSING: [&str; 5] = [
    "remark-standard-narrows",
    "remark-contact",
    "remark-reuse",
    "remark-machine-narrows",
    "remark-minimum-narrows",
];

/// The machines in use that a standard is for.
pub fn served<'a>(typed: &'a Typed, standard: &'a Standard) -> impl Iterator<Item = &'a Machine> {
    in_use(&typed.site.machines).filter(|machine| standard.left_out(&machine.id).is_none())
}

/// Checks a standard as it is written, `today` being year-month-day.
///
/// ```
/// use brimline::form::{Typed, site::proof::prove};
/// use brimline::number::Marks;
/// use brimline::site::Standard;
/// let vinegar = Standard { floor: "marble".into(), product: "vinegar".into(), dilution: "1:64".into(), ..Standard::default() };
/// let proof = prove(&Typed::default(), &vinegar, "2026-01-01", Marks::POINT);
/// assert!(!proof.sound());
/// assert!(proof.findings.iter().any(|one| one.blocks && one.remark.code == "remark-floor-does-not-fit"));
/// ```
pub fn prove(typed: &Typed, standard: &Standard, today: &str, marks: Marks) -> Proof {
    let mut proof = Proof { proved: proved(typed, standard), ..Proof::default() };
    written(&mut proof, typed, standard, today, marks);
    let records = typed.site.floors.iter().any(|one| one.id == standard.floor)
        && typed.site.products.iter().any(|one| one.id == standard.product);
    if records {
        for machine in served(typed, standard) {
            let row = in_machine(&mut proof, typed, standard, machine, marks);
            proof.machines.push(row);
        }
    }
    // What blocks first. A warning keeps its place while its reason is typed.
    proof.findings.sort_by_key(|one| !one.blocks);
    proof
}

/// What is written in the standard itself.
fn written(proof: &mut Proof, typed: &Typed, standard: &Standard, today: &str, marks: Marks) {
    let mut block = |code| proof.find(standard, Remark::new(code, Weight::Stop), true, None);
    let site = &typed.site;
    let product = site.products.iter().find(|one| one.id == standard.product);
    match site.floors.iter().find(|one| one.id == standard.floor) {
        None => block("finding-no-floor"),
        Some(floor) if floor.retired => block("finding-floor-retired"),
        Some(_) => {}
    }
    match product {
        None => block("finding-no-product"),
        Some(product) if product.retired => block("finding-product-retired"),
        Some(_) => {}
    }
    if served(typed, standard).next().is_none() {
        block("finding-no-machine");
    }
    if standard.leaves_out.iter().any(|one| !says_why(&one.reason)) {
        block("finding-left-out-why");
    }
    match label::read(&standard.dilution, typed.system) {
        Ok(_) => {}
        Err(LabelMistake::Empty) => block("finding-no-dilution"),
        Err(_) => block("finding-dilution"),
    }
    if standard.author.trim().is_empty() {
        block("finding-no-author");
    }
    if standard.reason.trim().is_empty() {
        block("finding-no-reason");
    } else if !says_why(&standard.reason) {
        block("finding-short-reason");
    }
    match Date::read(&standard.effective) {
        None => block("finding-no-day"),
        Some(first) => never(proof, typed, standard, first, today),
    }
    for name in same_names(typed, standard) {
        let same = Remark::new("finding-same-name", Weight::Stop).with("name", Fact::Text(name));
        proof.find(standard, same, true, None);
    }
    let read = |entry: &crate::site::Entry, field: Field| {
        entry.read_optional::<Duration>(field.limit(), marks).ok().flatten()
    };
    let asked = product.and_then(|product| read(&product.contact, Field::Contact));
    if let (Some(asked), Some(own)) = (asked, read(&standard.contact, Field::StandardContact))
        && own < asked
    {
        let short = Remark::new("finding-contact", Weight::Stop).value("time", Value::new(asked, Kind::Time));
        proof.find(standard, short, true, None);
    }
    for (entry, field) in
        [(&standard.contact, Field::StandardContact), (&standard.frequency, Field::StandardFrequency)]
    {
        if entry.check(field.limit(), field.units(), marks).is_err() {
            proof.find(standard, Remark::new("finding-unread", Weight::Stop), true, None);
        }
    }
    fresh::note(proof, typed, standard, marks);
    if site.standards.iter().any(|one| one.floor == standard.floor && one.retired() && one.id == standard.id)
    {
        proof.find(standard, Remark::new("finding-replaced", Weight::Stop), true, None);
    }
}

/// The names of its floor, its product and the machines, where another record bears one as well: nobody could tell
/// which is meant.
fn same_names(typed: &Typed, standard: &Standard) -> Vec<String> {
    let site = &typed.site;
    let floor = site.floors.iter().filter(|one| one.id == standard.floor).map(|one| one as &dyn Record);
    let product = site.products.iter().filter(|one| one.id == standard.product).map(|one| one as &dyn Record);
    let machines = in_use(&site.machines).map(|one| one as &dyn Record);
    let named = (floor.map(|one| (Shelf::Floor, one)))
        .chain(product.map(|one| (Shelf::Product, one)))
        .chain(machines.map(|one| (Shelf::Machine, one)));
    let mut told: Vec<String> = named
        .filter(|(shelf, one)| shares_name(typed, *shelf, *one))
        .map(|(_, one)| one.name().trim().to_owned())
        .collect();
    told.dedup_by_key(|name| name.to_lowercase());
    told
}

/// What waits for its first day and would never hold, since this one takes its place before.
fn never(proof: &mut Proof, typed: &Typed, standard: &Standard, first: Date, today: &str) {
    let waits = |one: &&Standard| {
        one.floor == standard.floor
            && one.id != standard.id
            && one.standing == Standing::InForce
            && !one.has_begun(today)
            && one.first_day() >= Some(first)
    };
    for one in typed.site.standards.iter().filter(waits) {
        let remark = Remark::new("finding-never", Weight::Warn)
            .value("version", Value::plain(f64::from(one.version), Kind::Count))
            .with("day", Fact::Day(one.effective.clone()));
        proof.find(standard, remark, false, None);
    }
}

/// What it gives in one machine, and what is found there.
fn in_machine(
    proof: &mut Proof,
    typed: &Typed,
    standard: &Standard,
    machine: &Machine,
    marks: Marks,
) -> InMachine {
    let question = |measure: &str| asked(typed, standard, &machine.id, measure, 100);
    let doses: Vec<(String, Fill)> = in_use(&typed.site.measures)
        .map(|measure: &Measure| (measure.id.clone(), fill::unsure(&question(&measure.id), marks)))
        .filter(|(_, fill)| measures(&fill.outcome))
        .collect();
    let about = Some(machine.name.as_str());
    let first = doses.first().map(|(id, _)| id.clone()).unwrap_or_default();
    let typed = question(&first);
    let fill = fill::unsure(&typed, marks);
    let flow = flow::work(&typed, marks);
    for outcome in [&fill.outcome, &flow.outcome] {
        note(proof, standard, outcome, about);
    }
    // Fill goes by what is printed; what the parts say can make it worse.
    let by_parts = |one: &Remark| matches!(one.code, "remark-floor-does-not-fit" | "remark-ph-differs");
    for remark in remarks_by_estimate(&typed, marks).into_iter().filter(by_parts) {
        let blocks = BLOCKS.contains(&remark.code);
        proof.find(standard, remark, blocks, about);
    }
    // A dilution that does not read was told already.
    let unread = fill.outcome.troubles.iter().any(|trouble| matches!(trouble.what, What::Label(_)));
    if doses.is_empty() && !unread {
        proof.find(standard, Remark::new("finding-no-dose", Weight::Warn), false, about);
    }
    if flow.choice.is_none() {
        proof.find(standard, Remark::new("finding-no-setting", Weight::Warn), false, about);
    }
    let left = residue::work(&typed, marks).answer.get(names::RESIDUE_ONE);
    if left.is_none() && !standard.rinse {
        proof.find(standard, Remark::new("finding-residue-unknown", Weight::Warn), false, None);
    }
    let cost = cost(&typed, &fill, &flow, marks);
    if cost.is_none() {
        proof.find(standard, Remark::new("finding-no-price", Weight::Warn), false, None);
    }
    InMachine { id: machine.id.clone(), name: machine.name.clone(), doses, flow, cost, residue: left }
}

/// Whether a measure can measure the dose.
fn measures(outcome: &Outcome) -> bool {
    let coarse = |remark: &Remark| TOO_COARSE.contains(&remark.code);
    outcome.troubles.is_empty() && !outcome.answer.remarks.iter().any(coarse)
}

/// The warnings of an answer that are about the standard.
fn note(proof: &mut Proof, standard: &Standard, outcome: &Outcome, machine: Option<&str>) {
    // Which measure is too coarse is seen in the table of doses.
    let passing = |code: &str| PASSING.contains(&code) || TOO_COARSE.contains(&code);
    let ours = |remark: &&Remark| remark.weight != Weight::Assumed && !passing(remark.code);
    for remark in outcome.answer.remarks.iter().filter(ours) {
        proof.find(standard, remark.clone(), BLOCKS.contains(&remark.code), machine);
    }
}

/// Concentrate for the floor area.
fn cost(typed: &Typed, fill: &Fill, flow: &Flow, marks: Marks) -> Option<Value> {
    let product = typed.product()?;
    let price: Money = product.price.read_optional(Field::Price.limit(), marks).ok()??;
    let container: Volume = product.container.read_optional(Field::Container.limit(), marks).ok()??;
    let each: VolumePrice = price / container;
    let strength = VolumeFraction::from_si(fill.outcome.answer.get(names::FILL_STRENGTH)?.si);
    let rate = ApplicationRate::from_si(flow.outcome.answer.get(names::FLOW_RATE)?.si);
    Some(Value::new(cost_each(each, strength, rate), Kind::AreaPrice))
}

/// Checksum of all that the standard's figures depend on: its floor, finish and product, the machines and the
/// measures.
fn proved(typed: &Typed, standard: &Standard) -> String {
    let site = &typed.site;
    let floor = site.floors.iter().find(|one| one.id == standard.floor);
    let finish = floor.and_then(|floor| site.finishes.iter().find(|one| one.id == floor.finish));
    let product = site.products.iter().find(|one| one.id == standard.product);
    let machines: Vec<&Machine> = served(typed, standard).collect();
    let measures: Vec<&Measure> = in_use(&site.measures).collect();
    // Into one text: Fill asks for it, and has little room.
    let mut text = Vec::new();
    let mut out = serde_json::Serializer::new(&mut text);
    let written = (floor.serialize(&mut out))
        .and_then(|()| finish.serialize(&mut out))
        .and_then(|()| product.serialize(&mut out))
        .and_then(|()| machines.serialize(&mut out))
        .and_then(|()| measures.serialize(&mut out));
    written.map(|()| checksum(&String::from_utf8_lossy(&text))).unwrap_or_default()
}

/// Whether something that a published standard was checked with has changed since.
pub fn changed_since(typed: &Typed, standard: &Standard) -> bool {
    !standard.proved.is_empty() && proved(typed, standard) != standard.proved
}
