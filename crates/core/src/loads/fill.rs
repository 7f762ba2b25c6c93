//! The order of work at the tank: what is in it already, water to a mark, product, water, product, water to the end.

use super::LoadItem;
use crate::mix::order::Placed;
use crate::quantity::{Amount, Units, Volume};

/// One thing to do while filling.
#[derive(Clone, Debug, PartialEq)]
pub enum FillStep {
    /// Spray of this mix is in the tank already; the sight gauge reads this.
    InTank {
        /// The mark.
        to: Volume,
    },
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
///
/// A water mark is brought down to one of the tank's own scale where its finest mark is typed, else to one that can be read; never so low that a product goes into an empty tank, and never so
/// high that the products still to come pass the end mark.
pub(crate) fn steps(
    volume: Volume,
    carried: Volume,
    items: &[LoadItem],
    order: &[Placed],
    own: Option<Volume>,
    units: Units,
) -> (Vec<FillStep>, bool) {
    let liquid = |item: &LoadItem| match item.measured.amount {
        Amount::Volume(liquid) => liquid,
        Amount::Mass(_) => Volume::ZERO,
    };
    let mut to_come: Volume = items.iter().map(liquid).sum();
    // Some water must come first, or a product would go into an empty tank.
    let fits = items.is_empty() || (volume - carried).exceeds(to_come);
    let mut steps = Vec::new();
    let mut level = carried;
    if !carried.is_zero() {
        steps.push(FillStep::InTank { to: carried });
    }
    for (item, (load_item, placed)) in items.iter().zip(order).enumerate() {
        let room = (volume - to_come).max(Volume::ZERO);
        let wanted = volume * placed.full_before.clamp(0.0, 1.0);
        let mark = mark_below(wanted.min(room), level, own);
        let mark = mark.unwrap_or_else(|| readable_mark(wanted, volume, units).min(room));
        if mark.exceeds(level) {
            level = mark;
            steps.push(FillStep::Water { to: level });
        }
        let from = level;
        level = level + liquid(load_item);
        to_come = to_come - liquid(load_item);
        steps.push(FillStep::Product { item, from, to: level });
    }
    // What arithmetic leaves below the brim is no water.
    if volume.exceeds(level + volume * 1e-9) {
        steps.push(FillStep::Water { to: volume });
    }
    (steps, fits)
}

/// The mark of the tank's own scale at or below a volume; `None` where none is typed, or where the tank is empty and would stay so.
fn mark_below(wanted: Volume, level: Volume, own: Option<Volume>) -> Option<Volume> {
    let step = own.filter(|step| !step.is_zero())?;
    let mark = step * (wanted.ratio(step)? + 1e-9).floor();
    (mark.exceeds(level) || !level.is_zero()).then_some(mark)
}

/// The mark at or below a volume that a person can read on a sight gauge or a meter, for a load of a size.
fn readable_mark(mark: Volume, load: Volume, units: Units) -> Volume {
    let Some(step) = readable_step(load, units) else { return mark };
    mark.ratio(step).map_or(mark, |marks| step * (marks + 1e-9).floor())
}

/// How far the marks lie apart that a person can read, for a load of a size; `None` where it is too small for any.
pub(super) fn readable_step(load: Volume, units: Units) -> Option<Volume> {
    let (unit, size) = match units {
        Units::Metric => (Volume::from_litres(1.0), load.to_litres()),
        Units::UsCustomary => (Volume::from_us_gallons(1.0), load.to_us_gallons()),
        Units::Imperial => (Volume::from_imperial_gallons(1.0), load.to_imperial_gallons()),
    };
    let step = match size {
        size if size >= 1000.0 => 10.0,
        size if size >= 200.0 => 5.0,
        size if size >= 20.0 => 1.0,
        size if size >= 1.0 => 0.1,
        _ => return None,
    };
    Some(unit * step)
}
