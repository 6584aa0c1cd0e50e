//! How long the core takes for what a page asks of it: `cargo run -- test --only bench`, or `cargo bench --bench core`.

#[cfg(target_arch = "wasm32")]
fn main() {}

#[cfg(not(target_arch = "wasm32"))]
mod areas;

#[cfg(not(target_arch = "wasm32"))]
fn main() {
    bench::main();
}

#[cfg(not(target_arch = "wasm32"))]
mod bench {
    use crate::areas::demo_with;
    use brimline::form::{Typed, fill, flow, shift};
    use brimline::number::{self, Marks};
    use brimline::site::log::{Amount, Fill, Log, Part, Stamp, Words, read, verify, write};
    use brimline::trade::label;
    use brimline::units::{System, unit};
    use criterion::{BatchSize, Criterion};
    use std::hint::black_box;
    use std::time::Duration;

    /// Runs all; criterion prints each with the range of its mean.
    pub fn main() {
        let mut criterion = Criterion::default()
            .without_plots()
            .sample_size(20)
            .warm_up_time(Duration::from_millis(300))
            .measurement_time(Duration::from_millis(1_200))
            .configure_from_args();
        words(&mut criterion);
        views(&mut criterion);
        log(&mut criterion);
        criterion.final_summary();
    }

    fn words(criterion: &mut Criterion) {
        criterion.bench_function("a number as typed", |one| {
            one.iter(|| number::read(black_box("1 1/2"), Marks::POINT));
        });
        let (gallon, litre) = (unit("gal_us").expect("a unit"), unit("l").expect("a unit"));
        criterion.bench_function("a conversion", |one| {
            one.iter(|| litre.from_si(gallon.to_si(black_box(12.5))));
        });
        for text in ["1:64", "2 to 4 fl oz per gallon of water", "0.5 % v/v"] {
            criterion.bench_function(&format!("a label: {text}"), |one| {
                one.iter(|| label::read(black_box(text), System::Us));
            });
        }
    }

    fn views(criterion: &mut Criterion) {
        let typed = Typed::default();
        criterion.bench_function("Fill", |one| one.iter(|| fill::work(black_box(&typed), Marks::POINT)));
        criterion.bench_function("Flow", |one| one.iter(|| flow::work(black_box(&typed), Marks::POINT)));
        criterion.bench_function("Shift", |one| one.iter(|| shift::work(black_box(&typed), Marks::POINT)));
        let large = demo_with(1_000);
        criterion.bench_function("Shift of 1,000 areas", |one| {
            one.iter(|| shift::work(black_box(&large), Marks::POINT));
        });
    }

    fn log(criterion: &mut Criterion) {
        let stamp = Stamp { device: "station-1", when: "2026-03-07T18:30:00Z", random: [7; 32] };
        let measured = || Fill { measured: Amount::new(0.000_6, "600 mL"), ..Fill::default() };
        let words = || Words::default().with(Part::Who, "AB");
        criterion.bench_function("a record, hashed", |one| {
            one.iter_batched(
                Log::default,
                |mut log| log.fill(&stamp, measured(), words()),
                BatchSize::SmallInput,
            );
        });
        let mut log = Log::default();
        for _ in 0..100 {
            log.fill(&stamp, measured(), words()).expect("taken");
        }
        let file = write(&log);
        criterion.bench_function("100 records read", |one| one.iter(|| read(black_box(&file))));
        criterion.bench_function("100 records verified", |one| one.iter(|| verify(black_box(log.records()))));
    }
}
