//! Wilcoxon's signed-rank test, exact, with the estimate of Hodges and Lehmann. It asks for no bell curve, so that it also holds
//! for ratings that lie at the end of their scale.

use super::{FEWEST, LEVEL, median};

/// For how many differences at most it is reckoned: beyond, the t interval serves.
pub const LARGEST: usize = 25;

/// What differences come to by their ranks.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SignedRank {
    /// How many differences are not zero; zeros are left out of the test (Wilcoxon), but not of the estimate.
    pub apart: usize,
    /// Sum of the ranks of those above zero; ties share the mean of their ranks.
    pub above: f64,
    /// How often a sum so far out, to either side, comes by chance: exact, also with ties.
    pub p: f64,
    /// Median of the means of all pairs of differences, each with itself too.
    pub estimate: f64,
    /// In which the shift lies; `None` for fewer than [`FEWEST`] differences, which cannot reach 95 %.
    pub interval: Option<(f64, f64)>,
}

/// Ranks differences; `None` for none of them, and for more than [`LARGEST`].
pub fn signed_rank(differences: &[f64]) -> Option<SignedRank> {
    if differences.is_empty() || differences.len() > LARGEST || differences.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let mut apart: Vec<f64> = differences.iter().copied().filter(|value| *value != 0.0).collect();
    apart.sort_by(|a, b| a.abs().total_cmp(&b.abs()));
    // Twice the ranks are whole numbers, so that sums of them are counted exactly.
    let doubled = doubled_ranks(&apart);
    let above: usize = apart.iter().zip(&doubled).filter(|(value, _)| **value > 0.0).map(|(_, rank)| rank).sum();
    let ways = ways(&doubled);
    let all: f64 = ways.iter().sum();
    let up_to: f64 = ways.iter().take(above + 1).sum();
    let from: f64 = ways.iter().skip(above).sum();
    let p = (2.0 * up_to.min(from) / all).min(1.0);
    let mut means = walsh(differences);
    means.sort_by(f64::total_cmp);
    Some(SignedRank {
        apart: apart.len(),
        above: above as f64 / 2.0,
        p,
        estimate: median(&means)?,
        interval: interval(&means, differences.len()),
    })
}

/// Twice the rank of each of some values sorted by size; values equal to some parts in 10¹² are tied.
fn doubled_ranks(sorted: &[f64]) -> Vec<usize> {
    let mut ranks = Vec::with_capacity(sorted.len());
    while let Some(first) = sorted.get(ranks.len()) {
        let before = ranks.len();
        let rest = sorted.get(before..).unwrap_or_default();
        let tied = rest.iter().take_while(|value| value.abs() - first.abs() <= first.abs() * 1e-12).count();
        // The mean of ranks before + 1 to before + tied, twice.
        ranks.extend(std::iter::repeat_n(2 * before + tied + 1, tied));
    }
    ranks
}

/// In how many ways of choosing signs the ranks above zero add up to each number. At most 2²⁵, so exact.
fn ways(ranks: &[usize]) -> Vec<f64> {
    let mut ways = vec![0.0; ranks.iter().sum::<usize>() + 1];
    if let Some(none) = ways.first_mut() {
        *none = 1.0;
    }
    for rank in ranks {
        for sum in (*rank..ways.len()).rev() {
            let without = ways.get(sum - rank).copied().unwrap_or_default();
            if let Some(with) = ways.get_mut(sum) {
                *with += without;
            }
        }
    }
    ways
}

fn walsh(values: &[f64]) -> Vec<f64> {
    let from = |at: usize| values.get(at..).unwrap_or_default().iter();
    values.iter().enumerate().flat_map(|(at, one)| from(at).map(|other| f64::midpoint(*one, *other))).collect()
}

/// As many means are cut off at each end as sums of ranks stay within half of what the level leaves, without ties.
fn interval(sorted_means: &[f64], n: usize) -> Option<(f64, f64)> {
    if n < FEWEST {
        return None;
    }
    let ways = ways(&(1..=n).collect::<Vec<_>>());
    let most = (1.0 - LEVEL) / 2.0 * ways.iter().sum::<f64>();
    let mut held = 0.0;
    let cut = ways.iter().take_while(|ways| {
        held += **ways;
        held <= most
    });
    let cut = cut.count();
    let last = sorted_means.len().checked_sub(cut + 1)?;
    Some((*sorted_means.get(cut)?, *sorted_means.get(last)?))
}
