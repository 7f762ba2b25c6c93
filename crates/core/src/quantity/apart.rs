//! Two figures side by side that are not the same must not be printed alike: "4.79 fl oz/ac; its label allows 4.79 fl oz/ac" tells nobody
//! what to change.

use super::number::show;
use super::{AmountPerArea, CarrierRate, MassPerArea, Quantity, Units, VolumePerArea};

/// More places than these are arithmetic and no spray.
const MOST_PLACES: usize = 7;

/// Both texts, with more places where they are alike. `of` gives both numbers in a unit by its text.
fn told_apart(one: String, other: String, of: impl Fn(&str) -> Option<(f64, f64)>) -> (String, String) {
    let finer = || {
        let (number, unit) = one.split_once(' ')?;
        let (first, second) = of(unit)?;
        let usual = number.split_once('.').map_or(0, |(_, places)| places.len());
        (usual + 1..=MOST_PLACES).find_map(|places| {
            let (first, second) = (show(first, places), show(second, places));
            (first != second).then(|| (format!("{first} {unit}"), format!("{second} {unit}")))
        })
    };
    if one != other {
        return (one, other);
    }
    finer().unwrap_or((one, other))
}

/// Two amounts over ground, told apart.
///
/// # Examples
/// ```
/// use tankard_core::quantity::{AmountPerArea, Units, VolumePerArea, apart};
/// let ounces = VolumePerArea::from_us_fluid_ounces_per_acre(4.79);
/// let litres = VolumePerArea::from_litres_per_hectare(0.35);
/// let (planned, most) = apart::amounts(AmountPerArea::Volume(ounces), AmountPerArea::Volume(litres), Units::UsCustomary);
/// assert_eq!((planned.as_str(), most.as_str()), ("4.79 fl oz/ac", "4.789 fl oz/ac"));
/// ```
pub fn amounts(one: AmountPerArea, other: AmountPerArea, units: Units) -> (String, String) {
    told_apart(one.show(units), other.show(units), |unit| {
        let one_of = format!("1 {unit}");
        let unit = match one {
            AmountPerArea::Volume(_) => AmountPerArea::Volume(VolumePerArea::parse(&one_of).ok()?),
            AmountPerArea::Mass(_) => AmountPerArea::Mass(MassPerArea::parse(&one_of).ok()?),
        };
        Some((one.ratio(unit)?, other.ratio(unit)?))
    })
}

/// Two masses of an active over ground, told apart; `shown` is how each is printed.
pub fn actives(one: MassPerArea, other: MassPerArea, shown: impl Fn(MassPerArea) -> String) -> (String, String) {
    told_apart(shown(one), shown(other), |unit| {
        let unit = MassPerArea::parse(&format!("1 {}", unit.replace(" ae", "").replace(" ai", ""))).ok()?;
        Some((one.ratio(unit)?, other.ratio(unit)?))
    })
}

/// Two volumes of spray over ground, told apart.
pub fn carriers(one: CarrierRate, other: CarrierRate, units: Units) -> (String, String) {
    told_apart(one.show(units), other.show(units), |unit| {
        let unit = CarrierRate::parse(&format!("1 {unit}")).ok()?;
        Some((one.ratio(unit)?, other.ratio(unit)?))
    })
}

#[cfg(test)]
mod tests {
    use super::{actives, amounts, carriers};
    use crate::quantity::rate::show_active;
    use crate::quantity::{ActiveBasis, AmountPerArea, CarrierRate, MassPerArea, Units, VolumePerArea};

    /// 4046.8564224 m² to the acre, 3.785411784 L to the gallon (NIST Handbook 44): 20 gal/ac are 187.0791 L/ha.
    #[test]
    fn what_is_not_the_same_is_not_printed_alike() {
        let of = |pounds: f64| MassPerArea::from_pounds_per_acre(pounds);
        let shown = |mass: MassPerArea| show_active(mass, ActiveBasis::AcidEquivalent, Units::UsCustomary);
        let texts = |(one, other): (String, String)| [one, other];
        assert_eq!(texts(actives(of(2.2532), of(2.25), shown)), ["2.253 lb ae/ac", "2.25 lb ae/ac"]);
        assert_eq!(texts(actives(of(2.4), of(2.25), shown)), ["2.4 lb ae/ac", "2.25 lb ae/ac"]);
        assert_eq!(texts(actives(of(2.25), of(2.25), shown)), ["2.25 lb ae/ac", "2.25 lb ae/ac"]);
        let metric = |litres: f64| CarrierRate::from_litres_per_hectare(litres);
        let gallons = CarrierRate::from_us_gallons_per_acre(20.0);
        assert_eq!(texts(carriers(metric(187.0), gallons, Units::Metric)), ["187 L/ha", "187.1 L/ha"]);
        let volume = |litres: f64| AmountPerArea::Volume(VolumePerArea::from_litres_per_hectare(litres));
        assert_eq!(texts(amounts(volume(0.219_9), volume(0.219_6), Units::Metric)), ["0.2199 L/ha", "0.2196 L/ha"]);
        let dry = |pounds: f64| AmountPerArea::Mass(of(pounds));
        assert_eq!(texts(amounts(dry(1.500_1), dry(1.5), Units::UsCustomary)), ["1.5001 lb/ac", "1.5 lb/ac"]);
    }
}
