//! The season review in words and as JSON.

mod json;
mod text;

pub use json::json;
pub use text::text;

use tankard_core::farm::{Farm, Trial};
use tankard_core::finding::Finding;
use tankard_core::season::review::{Picked, Review, review, weather};
use tankard_core::season::trials::{Judged, judge};

/// What is reckoned for a review on the command line, where nothing hurries.
struct All {
    review: Review,
    weather: Vec<(String, Vec<Finding>)>,
    trials: Vec<(String, Judged)>,
}

impl All {
    fn of(farm: &Farm, picked: &Picked<'_>) -> Self {
        let weather = picked.ids().map(|id| (id.clone(), weather::of_record(farm, id))).collect();
        let of_time = |trial: &Trial| {
            trial.pairs.iter().any(|(one, other)| picked.ids().any(|id| *id == one.record || *id == other.record))
        };
        let trials =
            farm.trials.iter().filter(|(_, trial)| of_time(trial)).map(|(id, trial)| (id.clone(), judge(farm, trial)));
        Self { review: review(picked), weather, trials: trials.collect() }
    }

    fn outside(&self) -> weather::Outside {
        weather::outside(self.weather.iter().map(|(_, findings)| findings.as_slice()))
    }
}
