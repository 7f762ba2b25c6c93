//! Statistics of small sets of plain numbers: what one set comes to, whether two differ, pair by pair or without pairs.
//!
//! Numbers here have no unit of their own: all that are given together are of one, and answers are of the same. All intervals hold
//! 95 %. A number that is not finite makes an answer `None`.
//!
//! # References
//! Student (W. S. Gosset) 1908, Biometrika 6:1-25; B. L. Welch 1947, Biometrika 34:28-35, with the degrees of freedom of
//! F. E. Satterthwaite 1946, Biometrics Bulletin 2:110-114; F. Wilcoxon 1945, Biometrics Bulletin 1:80-83; J. L. Hodges and
//! E. L. Lehmann 1963, Annals of Mathematical Statistics 34:598-611. Cited from memory; the figures are held against SciPy.

mod compare;
mod signed_rank;
mod summary;

pub use compare::{Paired, Welch, paired, welch};
pub use signed_rank::{LARGEST, SignedRank, signed_rank};
pub use summary::{Summary, median, summary};

use statrs::distribution::{Continuous, ContinuousCDF, StudentsT};

/// How sure an interval is.
pub const LEVEL: f64 = 0.95;

/// From how many values on, or pairs, a comparison is told: with fewer than six pairs the signed-rank test cannot come below 5 %
/// whatever they show, since 2 of 2⁵ orders of signs are 6.25 %. For sets without pairs the same number is taken (common practice,
/// no source).
pub const FEWEST: usize = 6;

/// The point of Student's t below which all but half of what [`LEVEL`] leaves lies; `None` without degrees of freedom.
fn t_point(freedom: f64) -> Option<f64> {
    let t = StudentsT::new(0.0, 1.0, freedom).ok()?;
    let below = f64::midpoint(1.0, LEVEL);
    let mut point = t.inverse_cdf(below);
    // The library's inverse is good to some eight digits; Newton's steps take it to what its own integral holds.
    for _ in 0..3 {
        point -= (t.cdf(point) - below) / t.pdf(point);
    }
    point.is_finite().then_some(point)
}

/// How often a t so far from zero, to either side, comes by chance.
fn two_sided(t: f64, freedom: f64) -> Option<f64> {
    if !t.is_finite() {
        return None;
    }
    let chance = 2.0 * StudentsT::new(0.0, 1.0, freedom).ok()?.cdf(-t.abs());
    chance.is_finite().then(|| chance.min(1.0))
}
