//! What is known about a machine, a product, a floor or a measure, to type over.

mod floor;
mod machine;
mod measure;
mod parts;
mod product;

pub use floor::floor_editor;
pub use machine::{machine_basics, machine_motion, machine_round, machine_settings};
pub use measure::measure_editor;
pub use parts::product_parts;
pub use product::{
    active_fields, by_mass, label_field, product_basics, product_cautions, product_rules, tank_before,
};
