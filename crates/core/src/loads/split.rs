//! Splits a spray volume into loads.

use crate::farm::{Id, LoadSplit};
use crate::quantity::{Area, Volume};

/// More loads than anyone fills in a day: a slip in the tank's size.
pub const MOST_LOADS: f64 = 500.0;

/// Splits a spray volume into loads that fit a tank.
///
/// A remainder below one part in 10⁹ of a tank is arithmetic, not spray: 6,000 gal in a 1,200 gal tank are five loads,
/// not five and an empty one. The loads always add up to the volume.
///
/// # Errors
/// The number of loads it would take, where that is more than [`MOST_LOADS`] or the tank holds nothing.
pub fn split(spray: Volume, tank: Volume, how: LoadSplit) -> Result<Vec<Volume>, f64> {
    let Some(ratio) = spray.ratio(tank) else { return Err(f64::INFINITY) };
    if ratio <= 0.0 {
        return Ok(Vec::new());
    }
    if ratio > MOST_LOADS {
        return Err(ratio.ceil());
    }
    let full = (ratio + 1e-9).floor();
    let rest = spray - tank * full;
    let has_rest = rest.exceeds(tank * 1e-9);
    let count = if has_rest { full + 1.0 } else { full };
    if has_rest && how == LoadSplit::FullTanks {
        let mut loads = repeat(tank, full);
        loads.push(rest);
        return Ok(loads);
    }
    // Full tanks without a rest are shared out too, so that the last bits of arithmetic are not lost.
    Ok(repeat(spray * (1.0 / count), count))
}

fn repeat(volume: Volume, count: f64) -> Vec<Volume> {
    let mut loads = Vec::new();
    while (loads.len() as f64) < count - 0.5 {
        loads.push(volume);
    }
    loads
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
    use super::{over_fields, split};
    use crate::farm::LoadSplit;
    use crate::quantity::{Area, Volume};

    fn gallons(spray: f64, tank: f64, how: LoadSplit) -> Vec<f64> {
        split(Volume::from_us_gallons(spray), Volume::from_us_gallons(tank), how)
            .unwrap()
            .into_iter()
            .map(|volume| (volume.to_us_gallons() * 1e6).round() / 1e6)
            .collect()
    }

    #[test]
    fn no_empty_sixth_load() {
        assert_eq!(gallons(400.0 * 15.0, 1200.0, LoadSplit::FullTanks), vec![1200.0; 5]);
        assert_eq!(
            gallons(430.0 * 15.0, 1200.0, LoadSplit::FullTanks),
            [1200.0, 1200.0, 1200.0, 1200.0, 1200.0, 450.0]
        );
        assert_eq!(gallons(430.0 * 15.0, 1200.0, LoadSplit::EvenLoads), vec![1075.0; 6]);
        assert!(gallons(0.0, 1200.0, LoadSplit::FullTanks).is_empty());
        assert!(split(Volume::from_us_gallons(1.0), Volume::ZERO, LoadSplit::FullTanks).is_err());
        assert!(split(Volume::from_us_gallons(1e6), Volume::from_us_gallons(1.0), LoadSplit::EvenLoads).is_err());
    }

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
