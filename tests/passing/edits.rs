//! Edits of a site that know nothing of its records but their shape.

use brimline::shape::{Shape, Shaped};
use brimline::site::passing::REFERENCES;
use brimline::site::{Site, demo};
use proptest::prelude::*;
use serde_json::Value;

/// One edit; the numbers are taken modulo what there is.
#[derive(Clone, Debug)]
pub enum Edit {
    /// A field of the site itself.
    Own { field: usize },
    /// A field of a record.
    Field { list: usize, record: usize, field: usize },
    /// A record goes, and with it what names it.
    Remove { list: usize, record: usize },
    /// A record comes, a copy of another one.
    Add { list: usize, record: usize, at: usize },
    /// A record goes to another place.
    Move { list: usize, record: usize, at: usize },
}

pub fn edit() -> impl Strategy<Value = Edit> {
    let n = || 0..64_usize;
    prop_oneof![
        1 => n().prop_map(|field| Edit::Own { field }),
        6 => (n(), n(), n()).prop_map(|(list, record, field)| Edit::Field { list, record, field }),
        1 => (n(), n()).prop_map(|(list, record)| Edit::Remove { list, record }),
        2 => (n(), n(), n()).prop_map(|(list, record, at)| Edit::Add { list, record, at }),
        2 => (n(), n(), n()).prop_map(|(list, record, at)| Edit::Move { list, record, at }),
    ]
}

pub fn edits() -> impl Strategy<Value = Vec<Edit>> {
    prop::collection::vec(edit(), 0..12)
}

/// The lists of a site and the shape of their records' fields.
pub fn lists() -> Vec<(&'static str, &'static [(&'static str, &'static Shape)])> {
    let fields = |shape: &'static Shape| match shape {
        Shape::Object { fields, .. } => *fields,
        _ => &[],
    };
    let list = |(name, shape): &(&'static str, &'static Shape)| match shape {
        Shape::List(record) => Some((*name, fields(record))),
        _ => None,
    };
    fields(Site::SHAPE).iter().filter_map(list).collect()
}

/// A site as JSON, field by field.
pub fn value(site: &Site) -> Value {
    serde_json::to_value(site).expect("a site is JSON")
}

pub fn site(value: Value) -> Site {
    serde_json::from_value(value).expect("the edits keep the shape")
}

/// Another value of the same shape.
pub fn other(value: &mut Value, shape: &Shape) {
    match (shape, value) {
        (Shape::Text, Value::String(text)) => text.push('7'),
        (Shape::Flag, Value::Bool(flag)) => *flag = !*flag,
        (Shape::Number, Value::Number(number)) => *number = (number.as_u64().unwrap_or(0) + 1).into(),
        (Shape::Choice(codes), Value::String(code)) => {
            let at = codes.iter().position(|one| one == code).expect("a code");
            codes[(at + 1) % codes.len()].clone_into(code);
        }
        (Shape::List(one), Value::Array(all)) if all.len() % 2 == 0 => {
            all.push(if let Shape::Choice(codes) = one { codes[0].into() } else { one.blank() });
        }
        (Shape::List(_), Value::Array(all)) => drop(all.pop()),
        (Shape::Object { fields, .. }, value) => {
            let (name, shape) = fields[0];
            other(&mut value[name], shape);
        }
        (shape, value) => panic!("{value} is no {shape:?}"),
    }
}

/// Fields that hold an id.
pub fn is_reference(field: &str) -> bool {
    field == "id" || REFERENCES.iter().any(|row| row.field == field)
}

/// The records of a list; none where the site has no such list.
pub fn all<'a>(whole: &'a Value, list: &str) -> &'a [Value] {
    whole[list].as_array().map_or(&[], Vec::as_slice)
}

/// The site after the edits; new records get ids that begin with `by`.
pub fn after(base: &Site, edits: &[Edit], by: &str) -> Site {
    let mut whole = value(base);
    for (count, edit) in edits.iter().enumerate() {
        apply(&mut whole, edit, &format!("{by}-{count}"));
    }
    for row in REFERENCES {
        let ids: Vec<Value> = all(&whole, row.target).iter().map(|one| one["id"].clone()).collect();
        for record in whole[row.list].as_array_mut().into_iter().flatten() {
            if let Some(entries) = record[row.field].as_array_mut() {
                entries.retain(|one| ids.contains(&one[row.within]));
            } else if !ids.contains(&record[row.field]) {
                record[row.field] = "".into();
            }
        }
    }
    site(whole)
}

fn apply(whole: &mut Value, edit: &Edit, fresh: &str) {
    let lists = lists();
    let list = |index: &usize| lists[index % lists.len()];
    match edit {
        Edit::Own { field } => {
            let name = ["name", "emergency", "currency"][field % 3];
            other(&mut whole[name], &Shape::Text);
        }
        Edit::Field { list: index, record, field } => {
            let (name, fields) = list(index);
            let fields: Vec<_> = fields.iter().filter(|(field, _)| !is_reference(field)).collect();
            let (field, shape) = fields[field % fields.len()];
            let all = whole[name].as_array_mut().expect("a list");
            let count = all.len().max(1);
            if let Some(record) = all.get_mut(record % count) {
                other(&mut record[*field], shape);
            }
        }
        Edit::Remove { list: index, record } => {
            let all = whole[list(index).0].as_array_mut().expect("a list");
            if !all.is_empty() {
                all.remove(record % all.len());
            }
        }
        Edit::Add { list: index, record, at } => {
            let all = whole[list(index).0].as_array_mut().expect("a list");
            let Some(mut copy) = all.get(record % all.len().max(1)).cloned() else { return };
            copy["id"] = fresh.into();
            all.insert(at % (all.len() + 1), copy);
        }
        Edit::Move { list: index, record, at } => {
            let all = whole[list(index).0].as_array_mut().expect("a list");
            if !all.is_empty() {
                let record = all.remove(record % all.len());
                all.insert(at % (all.len() + 1), record);
            }
        }
    }
}

/// The demo, edited at random.
pub fn edited(by: &'static str) -> impl Strategy<Value = Site> {
    edits().prop_map(move |edits| after(&demo(), &edits, by))
}
