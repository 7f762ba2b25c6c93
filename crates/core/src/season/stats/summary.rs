//! What one set of numbers comes to.

use super::t_point;

/// A set of numbers in a few.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Summary {
    /// How many.
    pub n: usize,
    /// Mean.
    pub mean: f64,
    /// Median.
    pub median: f64,
    /// Standard deviation of the sample (over n - 1); `None` for one number.
    pub sd: Option<f64>,
    /// In which the mean lies, by Student's t; `None` for one number.
    pub interval: Option<(f64, f64)>,
}

/// Sums a set up; `None` for an empty one.
pub fn summary(values: &[f64]) -> Option<Summary> {
    if values.is_empty() || values.iter().any(|value| !value.is_finite()) {
        return None;
    }
    let n = values.len();
    let mean = mean(values);
    let sd = variance(values, mean).map(f64::sqrt);
    let half = sd.zip(t_point(n as f64 - 1.0)).map(|(sd, t)| t * sd / (n as f64).sqrt());
    Some(Summary { n, mean, median: median(values)?, sd, interval: half.map(|half| (mean - half, mean + half)) })
}

/// The middle of a set, or the mean of its two middles; `None` for an empty one.
pub fn median(values: &[f64]) -> Option<f64> {
    let mut sorted = values.to_vec();
    let at = sorted.len() / 2;
    if sorted.is_empty() {
        return None;
    }
    let even = sorted.len().is_multiple_of(2);
    let (below, upper, _) = sorted.select_nth_unstable_by(at, f64::total_cmp);
    let lower = below.iter().copied().max_by(f64::total_cmp).filter(|_| even);
    Some(lower.map_or(*upper, |lower| f64::midpoint(lower, *upper)))
}

pub(super) fn mean(values: &[f64]) -> f64 {
    values.iter().sum::<f64>() / values.len() as f64
}

/// Of a sample; `None` for fewer than two.
pub(super) fn variance(values: &[f64], mean: f64) -> Option<f64> {
    let squares: f64 = values.iter().map(|value| (value - mean).powi(2)).sum();
    (values.len() > 1).then(|| squares / (values.len() as f64 - 1.0))
}
