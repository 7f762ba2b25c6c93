//! Whether two sets differ.

use super::summary::{mean, variance};
use super::{SignedRank, signed_rank, t_point, two_sided};

/// Pairs, by their differences: the one less the other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Paired {
    /// How many pairs.
    pub n: usize,
    /// Mean difference.
    pub mean: f64,
    /// Standard deviation of the differences.
    pub sd: f64,
    /// In which the mean difference lies, by Student's t.
    pub interval: (f64, f64),
    /// How often a mean so far from zero comes by chance, by Student's t; 1 where no pair differs, `None` where all differ alike, which
    /// leaves nothing to tell it from.
    pub p: Option<f64>,
    /// By ranks; `None` for more than [`super::LARGEST`] pairs.
    pub rank: Option<SignedRank>,
}

/// Compares pairs; `None` for fewer than two.
pub fn paired(differences: &[f64]) -> Option<Paired> {
    let n = differences.len();
    let mean = mean(differences);
    if !mean.is_finite() {
        return None;
    }
    let sd = variance(differences, mean)?.sqrt();
    let error = sd / (n as f64).sqrt();
    let freedom = n as f64 - 1.0;
    let half = t_point(freedom)? * error;
    // Differences that are all alike leave no room for chance, unless they are none.
    let p = match (mean == 0.0, error == 0.0) {
        (true, _) => Some(1.0),
        (false, true) => None,
        (false, false) => Some(two_sided(mean / error, freedom)?),
    };
    half.is_finite().then(|| Paired {
        n,
        mean,
        sd,
        interval: (mean - half, mean + half),
        p,
        rank: signed_rank(differences),
    })
}

/// Two sets without pairs, each with its own spread (Welch).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Welch {
    /// Mean of the one less mean of the other.
    pub difference: f64,
    /// Degrees of freedom, by Satterthwaite.
    pub freedom: f64,
    /// In which the difference of the means lies.
    pub interval: (f64, f64),
    /// How often a difference so far from zero comes by chance.
    pub p: f64,
}

/// Compares two sets; `None` where either has fewer than two numbers, or where neither has any spread.
pub fn welch(one: &[f64], other: &[f64]) -> Option<Welch> {
    let (mean_one, mean_other) = (mean(one), mean(other));
    let part = |values: &[f64], mean: f64| Some(variance(values, mean)? / values.len() as f64);
    let (a, b) = (part(one, mean_one)?, part(other, mean_other)?);
    let error = (a + b).sqrt();
    let freedom = (a + b).powi(2) / (a.powi(2) / (one.len() as f64 - 1.0) + b.powi(2) / (other.len() as f64 - 1.0));
    let difference = mean_one - mean_other;
    // The library's integral knows no number that is none.
    if !(error > 0.0 && freedom.is_finite() && difference.is_finite()) {
        return None;
    }
    let half = t_point(freedom)? * error;
    let p = two_sided(difference / error, freedom)?;
    Some(Welch { difference, freedom, interval: (difference - half, difference + half), p })
}
