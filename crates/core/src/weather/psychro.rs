//! Moist air: wet bulb, dew point, Delta T, and the pressure of the air at a height.
//!
//! The program's wet bulb is that of full psychrometrics at the pressure of the farm's height, with the equations of the ASHRAE
//! Handbook of Fundamentals. The short formula of Stull (2011) stands beside it as a check: it is for sea level, and up to 0.8 °C off,
//! so that the two may lie on different sides of a limit of 2 or 8 °C.
//!
//! # Below freezing
//! The wet bulb is that of liquid water throughout, and humidity is over liquid water, as weather services state it. A droplet in
//! the air stays liquid some degrees below freezing; and a bulb that changes to ice at 0 °C would make Delta T jump by 0.3 °C
//! there. Psychrometers that freeze, and the published equations for them, read otherwise below 0 °C.

use crate::language::t;
use crate::quantity::{Length, Pressure, Quantity, Share, Temperature, TemperatureSpan, Units};
use crate::working::Working;

/// Pressure of the standard atmosphere at sea level, pascals.
const SEA_LEVEL: f64 = 101_325.0;

/// The pressure of the standard atmosphere at a height.
///
/// # Valid range
/// Up to 11,000 m; `None` above.
///
/// # References
/// ASHRAE Handbook of Fundamentals (2017), chapter 1, equation 3.
///
/// # Examples
/// ```
/// use tankard_core::quantity::Length;
/// use tankard_core::weather::psychro::pressure_at;
/// let pressure = pressure_at(Length::from_metres(0.0)).map(|pressure| pressure.to_pascals());
/// assert_eq!(pressure, Some(101_325.0));
/// ```
pub fn pressure_at(height: Length) -> Option<Pressure> {
    let metres = height.to_metres();
    (metres <= 11_000.0).then(|| Pressure::from_pascals(SEA_LEVEL * (1.0 - 2.25577e-5 * metres).powf(5.2559)))
}

/// Pressure of saturated vapour over liquid water, pascals. ASHRAE Handbook of Fundamentals (2017), chapter 1, equation 6, which
/// holds from 0 °C on and is carried on below.
fn saturated(celsius: f64) -> f64 {
    let t = celsius + 273.15;
    (-5.800_220_6e3 / t + 1.391_499_3 - 4.864_023_9e-2 * t + 4.176_476_8e-5 * t * t - 1.445_209_3e-8 * t * t * t
        + 6.545_967_3 * t.ln())
    .exp()
}

/// Humidity ratio at saturation; endless where the vapour alone has the pressure of the air.
fn saturated_ratio(celsius: f64, pascals: f64) -> f64 {
    let vapour = saturated(celsius);
    if vapour < pascals { 0.621_945 * vapour / (pascals - vapour) } else { f64::INFINITY }
}

/// Humidity ratio of air with a wet bulb over liquid water. ASHRAE Handbook of Fundamentals (2017), chapter 1, equation 33.
fn ratio_of_bulb(dry: f64, wet: f64, pascals: f64) -> f64 {
    ((2501.0 - 2.326 * wet) * saturated_ratio(wet, pascals) - 1.006 * (dry - wet)) / (2501.0 + 1.86 * dry - 4.186 * wet)
}

/// The wet bulb of air in which the vapour has a pressure. Bisection, since it cannot leave its bracket.
fn bulb(dry: f64, vapour: f64, pascals: f64) -> Option<f64> {
    if !(dry.is_finite() && vapour >= 0.0 && vapour < pascals && saturated(dry) < pascals) {
        return None;
    }
    let ratio = 0.621_945 * vapour / (pascals - vapour);
    let (mut low, mut high) = (dry.min(0.0) - 100.0, dry);
    for _ in 0..40 {
        let middle = f64::midpoint(low, high);
        if ratio_of_bulb(dry, middle, pascals) < ratio { low = middle } else { high = middle }
    }
    Some(high)
}

/// The wet bulb of air of a humidity.
///
/// # Valid range
/// Humidity 0 to 100 %; `None` outside, and where water would boil.
///
/// # References
/// ASHRAE Handbook of Fundamentals (2017), chapter 1, equations 6, 20, 22, 33.
///
/// # Examples
/// ```
/// use tankard_core::quantity::{Pressure, Share, Temperature};
/// use tankard_core::weather::psychro::wet_bulb;
/// let air = Temperature::from_celsius(20.0);
/// let bulb = wet_bulb(air, Share::from_percent(50.0), Pressure::from_pascals(101_325.0)).map(|bulb| bulb.to_celsius());
/// assert!(bulb.is_some_and(|bulb| (bulb - 13.783).abs() < 0.001));
/// ```
pub fn wet_bulb(air: Temperature, humidity: Share, pressure: Pressure) -> Option<Temperature> {
    let share = humidity.to_fraction();
    if !(0.0..=1.0).contains(&share) {
        return None;
    }
    let dry = air.to_celsius();
    bulb(dry, share * saturated(dry), pressure.to_pascals()).map(Temperature::from_celsius)
}

/// The humidity of air with a dew point. Where the dew point lies above the air by no more than whole degrees round (0.6 °C), the
/// air is saturated; `None` where it lies higher.
pub fn humidity(air: Temperature, dew_point: Temperature) -> Option<Share> {
    let (dry, dew) = (air.to_celsius(), dew_point.to_celsius());
    (dew <= dry + 0.6).then(|| Share::from_fraction((saturated(dew) / saturated(dry)).min(1.0)))
}

/// The dew point of air of a humidity; `None` for dry air.
///
/// # References
/// World Meteorological Organization, constants of the dew point, as a weather-station manual cites them: 17.62 and 243.12 °C over
/// water.
pub fn dew_point(air: Temperature, humidity: Share) -> Option<Temperature> {
    let (dry, share) = (air.to_celsius(), humidity.to_fraction());
    if !(share > 0.0 && share <= 1.0) {
        return None;
    }
    let power = share.ln() + 17.62 * dry / (243.12 + dry);
    Some(Temperature::from_celsius(243.12 * power / (17.62 - power)))
}

/// Water in air by the mass of dry air, from dry and wet bulb over liquid water.
///
/// # References
/// ASHRAE Handbook of Fundamentals (2017), chapter 1, equation 33.
pub fn humidity_ratio(air: Temperature, wet_bulb: Temperature, pressure: Pressure) -> Option<Share> {
    let ratio = ratio_of_bulb(air.to_celsius(), wet_bulb.to_celsius(), pressure.to_pascals());
    (ratio.is_finite() && ratio >= 0.0 && wet_bulb <= air).then(|| Share::from_fraction(ratio))
}

/// The humidity of air from its dry and wet bulb over liquid water.
pub fn humidity_of_bulbs(air: Temperature, wet_bulb: Temperature, pressure: Pressure) -> Option<Share> {
    let ratio = humidity_ratio(air, wet_bulb, pressure)?.to_fraction();
    let vapour = pressure.to_pascals() * ratio / (0.621_945 + ratio);
    Some(Share::from_fraction(vapour / saturated(air.to_celsius())))
}

/// Delta T: dry bulb less wet bulb.
pub fn delta_t(air: Temperature, humidity: Share, pressure: Pressure) -> Option<TemperatureSpan> {
    wet_bulb(air, humidity, pressure).map(|bulb| air - bulb)
}

/// The wet bulb by the short formula, for comparison alone.
///
/// # Valid range
/// Sea level; 5 to 99 % and -20 to 50 °C except cold with dry air. Its error is -1 to +0.65 °C. `None` outside.
///
/// # References
/// R. Stull, Wet-bulb temperature from relative humidity and air temperature, Journal of Applied Meteorology and Climatology 50
/// (2011), 2267, doi 10.1175/JAMC-D-11-0143.1.
pub fn stull(air: Temperature, humidity: Share) -> Option<Temperature> {
    let (t, rh) = (air.to_celsius(), humidity.to_percent());
    if !((5.0..=99.0).contains(&rh) && (-20.0..=50.0).contains(&t)) {
        return None;
    }
    Some(Temperature::from_celsius(
        t * (0.151_977 * (rh + 8.313_659).sqrt()).atan() + (t + rh).atan() - (rh - 1.676_331).atan()
            + 0.003_918_38 * rh.powf(1.5) * (0.023_101 * rh).atan()
            - 4.686_035,
    ))
}

/// How Delta T comes about, with the short formula beside it; `None` where it cannot be told.
pub fn working(air: Temperature, humidity: Share, pressure: Pressure, units: Units) -> Option<Working> {
    let bulb = wet_bulb(air, humidity, pressure)?;
    let mut working = Working::new(t!("weather-delta-t-625"))
        .step(t!("weather-air-of-the-working"), air.show(units))
        .step(t!("weather-relative-humidity"), humidity.show(units))
        .step(t!("weather-pressure-of-the-air-at-the"), format!("{:.1} kPa", pressure.to_pascals() / 1000.0))
        .step(t!("weather-wet-bulb-ashrae-handbook-of-fundamentals"), bulb.show(units))
        .step(t!("weather-delta-t-air-less-wet-bulb"), (air - bulb).show(units));
    if let Some(short) = stull(air, humidity) {
        working = working.step(
            t!("weather-for-comparison-wet-bulb-by-stull"),
            t!("weather-short-delta-t-air", short = short.show(units), air = (air - short).show(units)),
        );
    }
    Some(working)
}

#[cfg(test)]
mod tests {
    use super::{bulb, dew_point, humidity, pressure_at, stull, wet_bulb};
    use crate::quantity::{Length, Pressure, Share, Temperature};

    /// Physics: never above the dry bulb, higher with more humidity, and a number whatever comes.
    #[test]
    fn a_wet_bulb_is_a_number_between() {
        for height in [0.0, 500.0, 3000.0, 11_000.0] {
            let pressure = pressure_at(Length::from_metres(height)).unwrap();
            for air in -60..=70 {
                let air = Temperature::from_celsius(f64::from(air));
                let mut before = f64::NEG_INFINITY;
                for share in 0..=100 {
                    let share = Share::from_percent(f64::from(share));
                    let Some(bulb) = wet_bulb(air, share, pressure) else { continue };
                    let celsius = bulb.to_celsius();
                    assert!(celsius.is_finite() && celsius >= before, "{air:?} {share:?}");
                    assert!(celsius <= air.to_celsius() + 1e-9 && celsius > -99.0, "{air:?} {share:?}");
                    before = celsius;
                }
            }
        }
    }

    #[test]
    fn what_cannot_be_is_not_told() {
        let (air, sea) = (Temperature::from_celsius(20.0), Pressure::from_pascals(101_325.0));
        for share in [-1.0, 100.5, 250.0, f64::NAN, f64::INFINITY] {
            assert_eq!(wet_bulb(air, Share::from_percent(share), sea), None, "{share}");
            assert_eq!(dew_point(air, Share::from_percent(share)), None, "{share}");
            assert_eq!(stull(air, Share::from_percent(share)), None, "{share}");
        }
        assert_eq!(wet_bulb(air, Share::from_percent(50.0), Pressure::from_pascals(0.0)), None);
        assert_eq!(bulb(f64::NAN, 100.0, 101_325.0), None);
        assert_eq!(pressure_at(Length::from_metres(1e9)), None);
        assert_eq!(humidity(air, Temperature::from_celsius(21.0)), None);
        assert_eq!(humidity(air, Temperature::from_celsius(20.4)), Some(Share::from_percent(100.0)));
    }

    /// Saturated air has one temperature for all: dry bulb, wet bulb, dew point.
    #[test]
    fn saturated_air() {
        for celsius in [-10.0, 0.0, 17.6, 30.0] {
            let air = Temperature::from_celsius(celsius);
            let all = Share::from_percent(100.0);
            let wet = wet_bulb(air, all, Pressure::from_pascals(85_000.0)).unwrap();
            assert!((wet.to_celsius() - celsius).abs() < 1e-6);
            assert!((dew_point(air, all).unwrap().to_celsius() - celsius).abs() < 1e-9);
        }
    }
}
