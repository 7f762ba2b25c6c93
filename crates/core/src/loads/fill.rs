//! The order of work at the tank: water to a mark, product, water, product, water to the end.

use super::LoadItem;
use crate::mix::order::Placed;
use crate::quantity::{Amount, Units, Volume};

/// One thing to do while filling.
#[derive(Clone, Debug, PartialEq)]
pub enum FillStep {
    /// Run water in until the sight gauge reads this.
    Water {
        /// The mark.
        to: Volume,
    },
    /// Put a product in.
    Product {
        /// Which item of the load.
        item: usize,
        /// What the sight gauge reads before it.
        from: Volume,
        /// And after it, for liquids.
        to: Volume,
    },
}

/// The steps of one load, and whether its products find room in it.
pub(crate) fn steps(volume: Volume, items: &[LoadItem], order: &[Placed], readable: Volume) -> (Vec<FillStep>, bool) {
    let mut steps = Vec::new();
    let mut level = Volume::ZERO;
    for (item, (load_item, placed)) in items.iter().zip(order).enumerate() {
        let mark = round_to(volume * placed.full_before.clamp(0.0, 1.0), readable).min(volume);
        if mark.exceeds(level) {
            level = mark;
            steps.push(FillStep::Water { to: level });
        }
        let from = level;
        if let Amount::Volume(liquid) = load_item.measured.amount {
            level = level + liquid;
        }
        steps.push(FillStep::Product { item, from, to: level });
    }
    let fits = !level.exceeds(volume);
    if volume.exceeds(level) {
        // The last products may already stand a hair below the brim.
        steps.push(FillStep::Water { to: volume });
    }
    (steps, fits)
}

/// Marks that a person can read on a sight gauge: a tenth of a full gauge's ordinary division.
pub(crate) fn readable(tank: Volume, units: Units) -> Volume {
    let (unit, size) = match units {
        Units::Metric => (Volume::from_litres(1.0), tank.to_litres()),
        Units::UsCustomary => (Volume::from_us_gallons(1.0), tank.to_us_gallons()),
        Units::Imperial => (Volume::from_imperial_gallons(1.0), tank.to_imperial_gallons()),
    };
    let step = match size {
        size if size >= 1000.0 => 10.0,
        size if size >= 200.0 => 5.0,
        size if size >= 20.0 => 1.0,
        _ => 0.1,
    };
    unit * step
}

fn round_to(volume: Volume, step: Volume) -> Volume {
    volume.ratio(step).map_or(volume, |marks| step * marks.round())
}
