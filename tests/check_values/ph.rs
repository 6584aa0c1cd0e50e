//! pH at 25 °C.

use crate::cases::{Given, solution};
use crate::computed::{ACETIC, BLEACH, BLEACH_ACID, BUFFERS, CARBONIC, CL, INTO_TAP, NA, TABLE, VINEGAR};
use crate::report::{Report, Within};
use brimline::chemistry::acid_base::{Activity, Solution, Water};
use brimline::units::MassConcentration;

const SCIPY: &str = "scipy brentq, charge balance";
const PHREEQC: &str = "PHREEQC, Davies, the same pKa";
/// A root is a root; PHREEQC also lets the activity of water sink.
const BOTH: [(Activity, f64, &str); 2] = [(Activity::Ideal, 1e-4, SCIPY), (Activity::Davies, 0.01, PHREEQC)];

pub fn all(out: &mut Report) {
    out.part("pH of solutions, 25 °C (mol/L)");
    for (given, ideal, davies) in TABLE {
        pair(out, &told(given), |_| solution(given.iter().copied()), [*ideal, *davies]);
    }
    out.part("pH of published buffers");
    for (given, published, within, source) in BUFFERS {
        let ph = solution(given.iter().copied()).balance(Activity::Davies).ph;
        out.number(&format!("{}, Davies", told(given)), ph, *published, Within::Of(*within), source);
    }
    out.part("pH of vinegar, 6 US fl oz of 0.833 mol/L in tap water of pH 7.5");
    for (alkalinity, row) in VINEGAR {
        for (gallons, (ideal, davies)) in [10.0, 20.0, 30.0].into_iter().zip(row) {
            let share = 6.0 / (128.0 * gallons + 6.0);
            let made = |activity| {
                let water = tap(alkalinity).solution(activity).diluted(1.0 - share);
                solution([(ACETIC, 0.833 * share)]).and(&water)
            };
            pair(out, &format!("{gallons} gal of {alkalinity} mg/L alkalinity"), made, [ideal, davies]);
        }
    }
    out.part("pH of tap water of 100 mg/L alkalinity and pH 7.5, with more in it (mol/L)");
    let water = tap(100.0).solution(Activity::Ideal);
    for (given, ideal, davies) in INTO_TAP {
        let made = |_| solution(given.iter().copied()).and(&water);
        pair(out, &told(given), made, [*ideal, *davies]);
    }
    out.part("pH of tap water with its carbonate worked out elsewhere (mol/L)");
    for (alkalinity, carbonate) in [(50.0, 0.001_068_20), (100.0, 0.002_136_70), (200.0, 0.004_273_71)] {
        let made = solution([(NA, alkalinity / 50_043.5), (CARBONIC, carbonate)]);
        let what = format!("{alkalinity} mg/L alkalinity, {carbonate} {CARBONIC}");
        let ours = made.balance(Activity::Ideal).ph;
        out.number(&what, ours, 7.5, Within::Of(5e-5), "definition of alkalinity, scipy");
    }
    out.part("pH at which so much of the bleach is its acid, pKa 7.53");
    for (ph, acid) in BLEACH_ACID {
        let (hydrogen, hydroxide) = (10_f64.powf(-ph), 10_f64.powf(ph - 14.0));
        let sodium = 0.01 * (1.0 - acid / 100.0) + hydroxide - hydrogen;
        let made = solution([(BLEACH, 0.01), (NA, sodium.max(0.0)), (CL, (-sodium).max(0.0))]);
        let ours = made.balance(Activity::Ideal).ph;
        out.number(&format!("{acid} % acid"), ours, ph, Within::Of(2e-4), "100 / (1 + 10^(pH − pKa))");
    }
}

fn pair(out: &mut Report, what: &str, made: impl Fn(Activity) -> Solution, theirs: [f64; 2]) {
    for ((activity, within, source), theirs) in BOTH.into_iter().zip(theirs) {
        let name = if activity == Activity::Ideal { "ideal" } else { "Davies" };
        let ours = made(activity).balance(activity).ph;
        out.number(&format!("{what}, {name}"), ours, theirs, Within::Of(within), source);
    }
}

fn told(given: Given) -> String {
    if given.is_empty() {
        return "nothing".to_owned();
    }
    given.iter().map(|(name, amount)| format!("{amount} {name}")).collect::<Vec<_>>().join(" + ")
}

fn tap(alkalinity: f64) -> Water {
    Water { alkalinity: MassConcentration::new(alkalinity / 1_000.0), ph: 7.5 }
}
