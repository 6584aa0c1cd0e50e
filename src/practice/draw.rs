//! Numbers from a seed, the same on every device and for ever.

use rand_pcg::{Pcg32, rand_core::Rng};

/// A stream of numbers that its seed decides.
///
/// PCG-XSH-RR 64/32. Its documentation calls it portable and tests it against the reference vectors of its
/// author. Ranges and orders are made here, since general libraries do not promise theirs.
///
/// Source: M. E. O'Neill, PCG: A Family of Simple Fast Space-Efficient Statistically Good Algorithms for Random
/// Number Generation, Harvey Mudd College, HMC-CS-2014-0905.
#[derive(Clone, Debug)]
pub struct Draw(Pcg32);

/// Which of the generator's streams; every seed takes the same one.
const STREAM: u64 = 54;

impl Draw {
    /// The stream of a seed.
    ///
    /// ```
    /// use brimline::practice::Draw;
    /// // The author's own demonstration begins so: seed 42, stream 54.
    /// assert_eq!(Draw::new(42).bits(), 0xa15c_02b7);
    /// ```
    pub fn new(seed: u32) -> Self {
        Self(Pcg32::new(u64::from(seed), STREAM))
    }

    /// The next 32 bits.
    pub fn bits(&mut self) -> u32 {
        self.0.next_u32()
    }

    /// A whole number from 0 to below `count`, each as likely; 0 where `count` is 0.
    ///
    /// `⌊x × n / 2³²⌋`, drawn anew where the low half of the product is below `2³² mod n`.
    ///
    /// Source: D. Lemire, Fast Random Integer Generation in an Interval, ACM Transactions on Modeling and Computer
    /// Simulation 29(1), 2019.
    ///
    /// ```
    /// use brimline::practice::Draw;
    /// let mut draw = Draw::new(1);
    /// assert!((0..100).all(|_| draw.below(6) < 6));
    /// ```
    #[allow(clippy::cast_possible_truncation, reason = "the two halves of 64 bits")]
    pub fn below(&mut self, count: u32) -> u32 {
        if count == 0 {
            return 0;
        }
        let least = count.wrapping_neg() % count;
        loop {
            let product = u64::from(self.bits()) * u64::from(count);
            if product as u32 >= least {
                return (product >> 32) as u32;
            }
        }
    }

    /// One of a list, each as likely; none of an empty one.
    pub fn pick<'a, T>(&mut self, all: &'a [T]) -> Option<&'a T> {
        let count = u32::try_from(all.len()).ok()?;
        all.get(self.below(count) as usize)
    }

    /// Whether the one chance in `of` comes.
    pub fn one_in(&mut self, of: u32) -> bool {
        self.below(of) == 0
    }

    /// Puts a list in an order that is as likely as any other.
    ///
    /// Source: R. Durstenfeld, Algorithm 235: Random permutation, Communications of the ACM 7(7), 1964.
    pub fn shuffle<T>(&mut self, all: &mut [T]) {
        for last in (1..all.len()).rev() {
            let count = u32::try_from(last + 1).unwrap_or(u32::MAX);
            all.swap(last, self.below(count) as usize);
        }
    }
}
