//! Units, numbers, limits, labels, formulas and forms: against published figures, hand-worked
//! examples and the laws that none of them may break.

#![cfg(not(target_arch = "wasm32"))]

#[path = "core/area_list.rs"]
mod area_list;
#[path = "core/area_list_files.rs"]
mod area_list_files;
#[path = "core/area_list_laws.rs"]
mod area_list_laws;
#[path = "core/by_hand.rs"]
mod by_hand;
#[path = "core/dilution.rs"]
mod dilution;
#[path = "core/form_actions.rs"]
mod form_actions;
#[path = "core/form_answers.rs"]
mod form_answers;
#[path = "core/form_floor.rs"]
mod form_floor;
#[path = "core/form_flow.rs"]
mod form_flow;
#[path = "core/form_measures.rs"]
mod form_measures;
#[path = "core/form_saved.rs"]
mod form_saved;
#[path = "core/form_station.rs"]
mod form_station;
#[path = "core/form_troubles.rs"]
mod form_troubles;
#[path = "core/label_counted.rs"]
mod label_counted;
#[path = "core/label_laws.rs"]
mod label_laws;
#[path = "core/label_refusals.rs"]
mod label_refusals;
#[path = "core/labels.rs"]
mod labels;
#[path = "core/limits.rs"]
mod limits;
#[path = "core/numbers.rs"]
mod numbers;
#[path = "core/site_chart.rs"]
mod site_chart;
#[path = "core/trade_laws.rs"]
mod trade_laws;
#[path = "core/units.rs"]
mod units;

#[path = "common/figures.rs"]
mod figures;

use figures::{after, assert_printed, in_unit, of};
