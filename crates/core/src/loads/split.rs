//! How many loads a spray takes, and how they lie over fields.

use crate::farm::Id;
use crate::quantity::{Area, Volume};

/// More loads than anyone fills in a day: a slip in the tank's size.
pub const MOST_LOADS: f64 = 500.0;

/// The fewest fillings that hold a spray; `None` for a tank of nothing.
pub(crate) fn fewest_fills(spray: Volume, full: Volume) -> Option<u32> {
    spray.ratio(full).map(whole_up)
}

/// The next whole number, where what lies above one by a part in 10⁹ is arithmetic.
#[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // A float that is too large becomes the largest number.
pub(crate) fn whole_up(ratio: f64) -> u32 {
    (ratio - 1e-9).ceil().max(0.0) as u32
}

/// Lays loads over fields one after another: which ground each load covers.
pub fn over_fields(loads: &[Area], fields: &[(Id, Area)]) -> Vec<Vec<(Id, Area)>> {
    let mut queue = fields.iter();
    let mut current: Option<(Id, Area)> = queue.next().cloned();
    let mut covered = Vec::with_capacity(loads.len());
    for (at, load) in loads.iter().enumerate() {
        let last = at + 1 == loads.len();
        let mut left = *load;
        let mut parts: Vec<(Id, Area)> = Vec::new();
        while let Some((field, ground)) = current.take() {
            if ground.is_zero() {
                current = queue.next().cloned();
                continue;
            }
            // What is left of a field after the last metre of a load, below a part in 10⁹, is arithmetic.
            let whole = last || !ground.exceeds(left + *load * 1e-9);
            let taken = if whole { ground } else { left };
            if taken.exceeds(Area::ZERO) {
                parts.push((field.clone(), taken));
            }
            left = left - taken;
            current = if whole { queue.next().cloned() } else { Some((field, ground - taken)) };
            if !last && !left.exceeds(*load * 1e-9) {
                break;
            }
        }
        covered.push(parts);
    }
    covered
}

#[cfg(test)]
mod tests {
    use super::over_fields;
    use crate::quantity::Area;

    #[test]
    fn loads_run_over_field_borders_and_cover_all_ground() {
        let acres = Area::from_acres;
        let fields = [("a".to_owned(), acres(74.6)), ("b".to_owned(), acres(96.0)), ("c".to_owned(), acres(60.8))];
        let loads = [acres(80.0), acres(80.0), acres(71.4)];
        let parts = over_fields(&loads, &fields);
        assert_eq!(parts.iter().map(Vec::len).collect::<Vec<_>>(), [2, 1, 2]);
        let total: Area = parts.iter().flatten().map(|(_, area)| *area).sum();
        assert!((total.to_acres() - 231.4).abs() < 1e-9);
        assert!((parts[0][1].1.to_acres() - 5.4).abs() < 1e-9);
    }
}
