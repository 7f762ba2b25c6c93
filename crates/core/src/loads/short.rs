//! What a load shorter than planned takes: amounts for less ground, for the day on which the ground turns out smaller.

use crate::farm::{Farm, ShortRow};
use crate::language::say;
use crate::loads::build::FAR;
use crate::loads::sizing::Portion;
use crate::loads::{Load, measure};
use crate::plan::Plan;
use crate::quantity::{Area, AsTyped, Quantity, Units, Volume};
use crate::stock::Accounts;
use crate::words::one_unit;

/// Rows that a card has room for.
const MOST_ROWS: f64 = 8.0;

/// The rows for a load, from little ground to just below its own: at each step of the farm's
/// ([`Farm::short_step`]), or where there would be more than eight rows, at a multiple of it; without one at 1, 2, 5, 10 and so on
/// acres or hectares. Amounts are to the mark, within the tightest bounds of its fields, for spray that is all mixed anew. None
/// for a load that holds spray already, or that is to leave some over; and no row for ground that takes so little of a product that
/// the mark is far from exact. In band spraying the ground is all that is driven over, since that is what people count.
pub(super) fn rows(farm: &Farm, plan: &Plan, load: &Load) -> Vec<ShortRow> {
    let Some(carrier) = plan.carrier else { return Vec::new() };
    let units = farm.units;
    let step = farm.short_step.as_ref().map(AsTyped::value).filter(|step| step.exceeds(Area::ZERO));
    let bands = plan.fields.iter().find_map(|field| field.area.ratio(field.covered)).filter(|share| *share < 1.0);
    let share = bands.unwrap_or(1.0);
    let all = load.area * (1.0 / share);
    let Some(step) = step_for(all, step, units) else { return Vec::new() };
    if !load.carried.is_zero() || !load.left.is_zero() {
        return Vec::new();
    }
    let fields: Vec<_> = load.fields.iter().map(|(id, _)| id.clone()).collect();
    // Bounds and marks do not depend on what is on hand.
    let accounts = Accounts::default();
    let portions: Vec<Option<Portion>> =
        plan.lines.iter().map(|line| Portion::of(farm, &accounts, line, &plan.bounds, &fields)).collect();
    let rig = farm.passes.get(&plan.pass).and_then(|pass| farm.rigs.get(&pass.rig));
    let mark = rig.and_then(|rig| rig.mark.as_ref()).map(AsTyped::value);
    let mut rows = Vec::new();
    let mut ground = step;
    while all.exceeds(ground) {
        let treated = ground * share;
        let spray = carrier * treated;
        let amount = |at: usize| {
            let line = plan.lines.get(at)?;
            let (product, portion) = (farm.products.get(&line.product)?, portions.get(at)?.as_ref()?);
            let exact = line.per_area.over(treated);
            let measured = measure::measure(exact, portion.bounds(spray, carrier), product, &farm.measuring, units);
            (measured.rounding.abs() <= FAR).then_some(measured.text)
        };
        if let Some(amounts) = (0..plan.lines.len()).map(amount).collect() {
            let words = ground.show(units);
            let ground = match bands {
                Some(_) => say("card-area-of-ground").with("area", words).in_languages(&farm.card_languages),
                None => words,
            };
            rows.push(ShortRow { ground, spray: to_fill(spray, mark, farm), amounts });
        }
        ground = ground + step;
    }
    rows
}

/// What is filled to; with the two marks of the tank that it lies between, where it is on none.
fn to_fill(spray: Volume, mark: Option<Volume>, farm: &Farm) -> String {
    let shown = spray.show(farm.units);
    let Some((mark, marks)) = mark.and_then(|mark| Some((mark, spray.ratio(mark)?))) else { return shown };
    // A hundredth of the way between two marks is not seen.
    if (marks - marks.round()).abs() < 0.01 {
        return shown;
    }
    let [below, above] = [marks.floor(), marks.ceil()].map(|marks| (mark * marks).show(farm.units));
    say("card-between-marks")
        .with("spray", shown)
        .with("below", one_unit(&below, &above))
        .with("above", above.as_str())
        .in_languages(&farm.card_languages)
}

/// The step between rows: as set, or the finest of 1, 2, 5 and so on, that makes no more rows than there is room for.
fn step_for(ground: Area, set: Option<Area>, units: Units) -> Option<Area> {
    let finest = set.unwrap_or(match units {
        Units::Metric => Area::from_hectares(0.01),
        Units::UsCustomary | Units::Imperial => Area::from_acres(0.01),
    });
    let fits = |step: &Area| ground.ratio(*step).is_some_and(|rows| rows <= MOST_ROWS + 1.0);
    let mut factors = [2.0, 2.5, 2.0].into_iter().cycle();
    let mut step = finest;
    // From a hundredth of an acre 40 steps reach farther than any farm.
    for _ in 0..40 {
        if fits(&step) {
            return Some(step);
        }
        step = step * factors.next()?;
    }
    None
}

#[cfg(test)]
mod tests {
    use super::{step_for, to_fill};
    use crate::farm::Farm;
    use crate::quantity::{Area, Units, Volume};

    #[test]
    fn what_lies_between_two_marks_of_the_tank_says_so() {
        let farm = Farm::new("Test");
        let gallons = Volume::from_us_gallons;
        for (spray, mark, said) in [
            (245.0, Some(10.0), "245 gal, between 240 and 250 gal"),
            (240.0, Some(10.0), "240 gal"),
            (243.0, None, "243 gal"),
            (1_245.0, Some(50.0), "1,245 gal, between 1,200 and 1,250 gal"),
            (4.0, Some(10.0), "4 gal, between 0 and 10 gal"),
        ] {
            assert_eq!(to_fill(gallons(spray), mark.map(gallons), &farm), said);
        }
    }

    #[test]
    fn steps_are_round_and_rows_few() {
        for (ground, step) in [(80.0, 10.0), (30.0, 5.0), (71.67, 10.0), (8.0, 1.0), (0.5, 0.1), (95.0, 20.0)] {
            let found = step_for(Area::from_acres(ground), None, Units::UsCustomary).unwrap();
            assert!((found.to_acres() - step).abs() < 1e-9, "{ground} ac: {}", found.to_acres());
        }
        let set = step_for(Area::from_acres(80.0), Some(Area::from_acres(4.0)), Units::UsCustomary).unwrap();
        assert!((set.to_acres() - 20.0).abs() < 1e-9, "{}", set.to_acres());
        assert!(step_for(Area::ZERO, None, Units::Metric).is_some());
    }
}
