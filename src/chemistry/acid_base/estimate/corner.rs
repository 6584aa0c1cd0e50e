//! Where the lowest and the highest pH of a range of mixtures lie. Why corners suffice:
//! [`crate::chemistry::acid_base`].

use crate::chemistry::acid_base::activity::DAVIES_TURN;
use crate::chemistry::acid_base::{Activity, Balance, Makeup, Solution};

/// Mixtures: each part takes one of its choices, or anything between two of them.
#[derive(Clone, Debug)]
pub(super) struct Blend {
    water: Solution,
    parts: Vec<Vec<(Makeup, f64)>>,
}

/// Both ends of the band.
#[derive(Clone, Debug)]
pub(super) struct Band {
    /// Where pH is lowest.
    pub low: End,
    /// Where it is highest.
    pub high: End,
}

/// One end.
#[derive(Clone, Debug)]
pub(super) struct End {
    /// pH that no mixture passes.
    pub ph: f64,
    /// Ionic strength of the mixture at this end, mol/L.
    pub ionic_strength: f64,
    /// What it has of each part, mol/L.
    pub amounts: Vec<f64>,
}

/// Which of its choices each part takes.
type Picked = Vec<usize>;

impl Blend {
    /// Water, into which parts go.
    pub fn new(water: Solution) -> Self {
        Self { water, parts: Vec::new() }
    }

    /// With one more part: what it can be, and how much of that, mol/L.
    pub fn part(&mut self, choices: impl Iterator<Item = (Makeup, f64)>) {
        self.parts.push(choices.collect());
    }

    /// The band that holds every mixture.
    ///
    /// Without activities its ends are mixtures. With them a salt also shifts pH by its ions, and a
    /// mixture in between may lie a little further out than any corner; so the ends are solved again with
    /// the least and the greatest ionic strength that the mixtures have, and the one between at which
    /// activities turn.
    pub fn band(&self, activity: Activity) -> Band {
        let solve = |mixture: &Solution| mixture.balance(activity);
        let ends = [-1.0, 1.0].map(|direction| {
            self.corner(direction, self.by_charge(direction, &Solution::neutral(activity)), solve)
        });
        let amounts =
            |picked: &Picked| self.chosen(picked).map(|choice| choice.map_or(0.0, |it| it.1)).collect();
        let [mut low, mut high] = ends.each_ref().map(|(balance, picked)| End {
            ph: balance.ph,
            ionic_strength: balance.ionic_strength,
            amounts: amounts(picked),
        });
        let open = self.parts.iter().any(|choices| choices.windows(2).any(|two| two[0] != two[1]));
        if activity != Activity::Ideal && open {
            let others =
                [self.by_amount(-1.0), self.by_amount(1.0)].map(|picked| solve(&self.mixture(&picked)));
            let strengths = ends.iter().map(|end| end.0).chain(others).map(|balance| balance.ionic_strength);
            let least = strengths.clone().fold(f64::INFINITY, f64::min);
            let greatest = strengths.fold(0.0, f64::max);
            for strength in [least, DAVIES_TURN.min(greatest).max(least), greatest] {
                let solve = |mixture: &Solution| mixture.balance_at(activity, strength);
                low.ph = low.ph.min(self.corner(-1.0, ends[0].1.clone(), solve).0.ph);
                high.ph = high.ph.max(self.corner(1.0, ends[1].1.clone(), solve).0.ph);
            }
        }
        Band { low, high }
    }

    /// The corner with the highest pH, or with the lowest where `direction` is −1, from any corner on.
    fn corner(
        &self,
        direction: f64,
        mut picked: Picked,
        solve: impl Fn(&Solution) -> Balance,
    ) -> (Balance, Picked) {
        let mut best = solve(&self.mixture(&picked));
        // No part picks a choice twice but where activities change on the way: the bound is for those.
        for _ in 0..=4 * self.parts.len() {
            let next = self.by_charge(direction, &best);
            if next == picked {
                break;
            }
            let trial = solve(&self.mixture(&next));
            if direction * (trial.ph - best.ph) <= 0.0 {
                break;
            }
            (best, picked) = (trial, next);
        }
        (best, picked)
    }

    /// Of each part the choice whose charge moves pH furthest up, or down where `direction` is −1.
    fn by_charge(&self, direction: f64, at: &Balance) -> Picked {
        let hardest = |choices: &Vec<(Makeup, f64)>| {
            // Both ends of a range have one makeup, and stand next to each other.
            let mut known: Option<(&Makeup, f64)> = None;
            let pulls = choices.iter().map(move |(makeup, amount)| {
                let charge = known.filter(|one| one.0 == makeup).map(|one| one.1);
                let charge = charge.unwrap_or_else(|| Solution::charge_of(makeup, at));
                known = Some((makeup, charge));
                direction * amount * charge
            });
            strongest(pulls)
        };
        self.parts.iter().map(hardest).collect()
    }

    /// Every part at its greatest amount, or at its least where `direction` is −1.
    fn by_amount(&self, direction: f64) -> Picked {
        let most =
            |choices: &Vec<(Makeup, f64)>| strongest(choices.iter().map(|choice| direction * choice.1));
        self.parts.iter().map(most).collect()
    }

    fn chosen<'a>(&'a self, picked: &'a Picked) -> impl Iterator<Item = Option<&'a (Makeup, f64)>> {
        self.parts.iter().zip(picked).map(|(choices, &one)| choices.get(one))
    }

    fn mixture(&self, picked: &Picked) -> Solution {
        let parts = self.chosen(picked).flatten();
        parts.fold(self.water.clone(), |all, (makeup, amount)| all.with(makeup, *amount))
    }
}

/// Where the greatest number stands; at the front where there is none.
fn strongest(pulls: impl Iterator<Item = f64>) -> usize {
    pulls.enumerate().max_by(|a, b| a.1.total_cmp(&b.1)).map_or(0, |(place, _)| place)
}
