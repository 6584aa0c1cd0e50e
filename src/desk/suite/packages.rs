//! What Cargo brings in: under which licence, from where, and how often.
//!
//! Known weaknesses are not looked for: their list is kept where no package registry has it, and changes from day to
//! day. The output says so, and how to look for them where there is a network.

use super::tally::Tally;
use crate::desk::child;
use crate::desk::fault::Fault;
use crate::desk::places::Places;
use crate::desk::tools::Tools;

/// What may come in, relative to the checkout.
const RULES: &str = "src/desk/suite/deny.toml";
/// Each counts as one check.
const CHECKS: [&str; 3] = ["licenses", "sources", "bans"];

/// Runs the checks over all packages that Cargo.lock names, the desk's and the tests' own among them.
///
/// # Errors
/// When the tool for it cannot be installed or started.
pub fn run(places: &Places) -> Result<Tally, Fault> {
    let tools = Tools::of(places)?;
    tools.install_deny()?;
    let asked = |check: &str| {
        let mut deny = tools.deny();
        deny.args(["--locked", "--config", RULES, "check", "-D", "warnings", check])
            .current_dir(places.root());
        deny
    };
    let mut sum = Tally::default();
    for check in CHECKS {
        // A rule that meets nothing is a mistake in the rules.
        let well = child::stream(&mut asked(check), |_| ())?;
        println!("{}", if well { "    passed" } else { "    FAILED" });
        sum += Tally::one(well);
    }
    let by_hand = child::by_hand(&asked("advisories"));
    println!("    known weaknesses: NOT CHECKED; where there is a network: {by_hand}");
    Ok(sum)
}
