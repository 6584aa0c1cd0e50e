//! The formulas that the workings show, one row each. The functions beside them compute them.

use crate::answer::Formula;
use crate::source::Source;

macro_rules! formulas {
    ($($name:ident: $code:literal, $result:literal = $equation:literal, $source:expr;)*) => {
        $(#[doc = concat!("`", $result, " = ", $equation, "`")]
        pub static $name: Formula = Formula { code: $code, equation: $equation, result: $result, source: $source };)*
        /// All rows.
        pub static ALL: &[&Formula] = &[$(&$name),*];
    };
}

const BY_DEFINITION: Source = Source::DEFINITION;
const CUSTOM: Source = Source::COMMON_PRACTICE;
const LEAST_SQUARES: Source = Source::unverified(
    "NIST/SEMATECH e-Handbook of Statistical Methods, 4.1.4.3; from memory, held against NIST's Norris data",
);
/// The same as of [`crate::chemistry::drying`], which computes it.
const EVAPORATION: Source = Source::published("ASHRAE Transactions 104, part 1A (1998), abstract 4146");

/// The constants are those of [`crate::trade::control::CONSTANTS`].
const CONTROL: Source = crate::trade::control::SOURCE;

formulas! {
    PLUS_WATER: "formula-plus-water", "r" = "1 / (1 + n)", CUSTOM;
    OF_TOTAL: "formula-of-total", "r" = "1 / n", BY_DEFINITION;
    PER_WATER: "formula-per-water", "r" = "x / (1 + x)", BY_DEFINITION;
    MADE_UP: "formula-made-up", "r" = "x", BY_DEFINITION;
    PERCENT: "formula-percent", "r" = "p / 100", BY_DEFINITION;
    PER_TANK: "formula-per-tank", "c" = "x × V / T", BY_DEFINITION;
    FILL_LEVEL: "formula-fill-level", "V" = "f × T", BY_DEFINITION;
    DOSE: "formula-dose", "c" = "r × V", BY_DEFINITION;
    DOSE_ON_TOP: "formula-dose-on-top", "c" = "W × r / (1 − r)", BY_DEFINITION;
    WATER: "formula-water", "W" = "V − c", BY_DEFINITION;
    MACHINE_WINDOW: "formula-machine-window", "m" = "M × V / T", BY_DEFINITION;
    GOVERN: "formula-govern", "c" = "min(label, machine)", CUSTOM;
    ROUND: "formula-round", "k" = "round(c / s)", CUSTOM;
    TRUE_RATIO: "formula-true-ratio", "n" = "W / (k × s)", BY_DEFINITION;
    PASSING: "formula-passing", "P" = "v × (w − o)", BY_DEFINITION;
    RATE: "formula-rate", "a" = "Q / P", BY_DEFINITION;
    TANK_TIME: "formula-tank-time", "t" = "T / (Q × (1 − u))", BY_DEFINITION;
    TANK_AREA: "formula-tank-area", "A" = "T / (a × (1 − u))", BY_DEFINITION;
    THICKNESS: "formula-thickness", "d" = "m", BY_DEFINITION;
    FILM_MASS: "formula-film-mass", "w" = "a × ρ", BY_DEFINITION;
    FILM: "formula-film", "m" = "a × (1 − p)", BY_DEFINITION;
    DRYING: "formula-drying", "t" = "m × ρ × Y / ((p_w − p_a) × (0.089 + 0.0782 × V))", EVAPORATION;
    FADES: "formula-fades", "Q" = "Q₀ × √(h / h₀)", BY_DEFINITION;
    PASSES: "formula-passes", "n" = "ceil(a₀ / a)", BY_DEFINITION;
    SPEED_FOR: "formula-speed-for", "v" = "Q / (a × (w − o))", BY_DEFINITION;
    PRODUCTIVITY: "formula-productivity", "P" = "v × (w − o) × e", BY_DEFINITION;
    RUN_TIME: "formula-run-time", "t" = "Σ n × A / P", BY_DEFINITION;
    SOLUTION: "formula-solution", "S" = "Σ n × a × A × (1 − u)", BY_DEFINITION;
    RECOVERY: "formula-recovery", "T" = "0.9 × R / d", BY_DEFINITION;
    CATCH_FLOW: "formula-catch-flow", "Q" = "V / t", BY_DEFINITION;
    CATCH_ERROR: "formula-catch-error", "s" = "Q × √(j² + (h / t)²)", CUSTOM;
    CATCH_LINE: "formula-catch-line", "Q" = "a + b × n", LEAST_SQUARES;
    SHIFT_TOTAL: "formula-shift-total", "E" = "t + refills + changes + ways + mopping + charges + waits", BY_DEFINITION;
    LABOUR: "formula-labour", "L" = "E − alone", BY_DEFINITION;
    FADE_MEAN: "formula-fade-mean", "Q" = "(Q₀ + Qₑ) / 2", BY_DEFINITION;
    WASTE: "formula-waste", "D" = "S × d", BY_DEFINITION;
    RESIDUE: "formula-residue", "m" = "f × r × s", BY_DEFINITION;
    RESIDUE_SUM: "formula-residue-sum", "M" = "n × m", BY_DEFINITION;
    COST: "formula-cost", "K" = "Σ C × k + W × w + L × l", BY_DEFINITION;
    COST_EACH: "formula-cost-each", "k" = "K / Σ A", BY_DEFINITION;
    A_MONTH: "formula-a-month", "S" = "Σ f × S / 12", BY_DEFINITION;
    FILLS: "formula-fills", "N" = "ceil(S / T)", BY_DEFINITION;
    CONCENTRATE: "formula-concentrate", "C" = "r × S", BY_DEFINITION;
    TOP_UP: "formula-top-up", "X" = "r × V − r₀ × V₀", BY_DEFINITION;
    TOP_UP_WATER: "formula-top-up-water", "W" = "V − V₀ − X", BY_DEFINITION;
    TOP_UP_DRAIN: "formula-top-up-drain", "D" = "V₀ − r × V / r₀", BY_DEFINITION;
    TOP_UP_ROOM: "formula-top-up-room", "D" = "V₀ − V × (1 − r) / (1 − r₀)", BY_DEFINITION;
    RESCUE_ADD: "formula-rescue-add", "X" = "V × (r − m) / (1 − r)", BY_DEFINITION;
    RESCUE_WATER: "formula-rescue-water", "W" = "V × (m / r − 1)", BY_DEFINITION;
    RESCUE_ROOM: "formula-rescue-room", "D" = "V − T × (1 − r) / (1 − m)", BY_DEFINITION;
    RESCUE_DRAIN: "formula-rescue-drain", "D" = "V − r × T / m", BY_DEFINITION;
    READ_ACTIVE: "formula-read-active", "m" = "c / C", BY_DEFINITION;
    READ_DROPS: "formula-read-drops", "c" = "d × k", BY_DEFINITION;
    READ_BRIX: "formula-read-brix", "m" = "B × f", CUSTOM;
    READ_CONDUCTIVITY: "formula-read-conductivity", "m" = "s × (κ − κ₀) / (κₛ − κ₀)", CUSTOM;
    CATCH: "formula-catch", "m" = "q / Q", BY_DEFINITION;
    ACTIVE: "formula-active", "C" = "w × ρ", BY_DEFINITION;
    ACTIVE_DOSE: "formula-active-dose", "r" = "c / C", BY_DEFINITION;
    POWDER: "formula-powder", "m" = "c × V", BY_DEFINITION;
    SCOOPS: "formula-scoops", "k" = "m / (ρ × s)", BY_DEFINITION;
    PORTION: "formula-portion", "V" = "k × Vᵤ", BY_DEFINITION;
    WEIGHED: "formula-weighed", "m" = "ρ × c", BY_DEFINITION;
    PPM: "formula-ppm", "c" = "r × C", BY_DEFINITION;
    SURE: "formula-sure", "s" = "√(sₓ² + (x × u)²)", BY_DEFINITION;
    BOTTLE_TIME: "formula-bottle-time", "t" = "B / (r × Q)", BY_DEFINITION;
    MIXED: "formula-mixed", "x" = "c / (c + w)", BY_DEFINITION;
    FINISH_VOLUME: "formula-finish-volume", "V" = "n × A / c", BY_DEFINITION;
    LAID_ON: "formula-laid-on", "S" = "a × A", BY_DEFINITION;
    COAT_WATER: "formula-coat-water", "m" = "(1 − s) / c", BY_DEFINITION;
    COAT_START: "formula-coat-start", "t" = "(n − 1) × d", BY_DEFINITION;
    FIRST_SCRUB: "formula-first-scrub", "t" = "n × d + u", BY_DEFINITION;
    LOG_SHARE: "formula-log-share", "q" = "M / P", BY_DEFINITION;
    LOG_COST: "formula-log-cost", "k" = "k₁ + k₂", BY_DEFINITION;
    LOG_SUPPLY: "formula-log-supply", "t" = "S / d", BY_DEFINITION;
    LOG_DRIFT: "formula-log-drift", "b" = "Σ(x − x̄)(y − ȳ) / Σ(x − x̄)²", LEAST_SQUARES;
    CONTROL_UPPER: "formula-control-upper", "UCL" = "x̄ + 3 × MR̄ / 1.128", CONTROL;
    CONTROL_LOWER: "formula-control-lower", "LCL" = "x̄ − 3 × MR̄ / 1.128", CONTROL;
    CONTROL_RANGE: "formula-control-range", "UCL(MR)" = "3.267 × MR̄", CONTROL;
    MIXED_ERROR: "formula-mixed-error", "s" = "√((w × s₁)² + (c × s₂)²) / (c + w)²", BY_DEFINITION;
}
