//! The wind that the map shows: of the pass, else of the forecast for its day.

use jiff::civil::Time;
use tankard_core::farm::{Farm, Forecast, Pass};
use tankard_core::language::days::{clock, short_date};
use tankard_core::quantity::Bearing;
use tankard_core::t;

/// A wind.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Wind {
    /// From where it blows.
    pub(super) bearing: Bearing,
    /// "wind from NW, 6 mph".
    pub(super) words: String,
    /// Who says so.
    pub(super) from: String,
}

/// The wind of a pass.
pub(super) fn of(farm: &Farm, pass: &Pass) -> Option<Wind> {
    if let Some(planned) = &pass.wind_from {
        let bearing = planned.value();
        return Some(Wind {
            bearing,
            words: t!("fields-wind-from", point = bearing.point()),
            from: t!("fields-as-planned-for", date = short_date(pass.date)),
        });
    }
    let hour = of_forecast(&farm.forecast, pass)?;
    let bearing = hour.wind_from.as_ref()?.value();
    let words = match &hour.wind {
        Some(speed) => t!("fields-wind-from-point-speed", point = bearing.point(), speed = speed.show(farm.units)),
        None => t!("fields-wind-from", point = bearing.point()),
    };
    Some(Wind { bearing, words, from: t!("fields-forecast", date = short_date(hour.at.date()), time = clock(hour.at)) })
}

/// The hour of the forecast at which the pass starts; where that is not typed, the first from six in the morning on.
fn of_forecast<'a>(forecast: &'a Forecast, pass: &Pass) -> Option<&'a tankard_core::farm::Hour> {
    let start = pass.start.unwrap_or(Time::constant(6, 0, 0, 0));
    let mut of_day = forecast.hours.iter().filter(|hour| hour.at.date() == pass.date && hour.wind_from.is_some());
    match pass.start {
        Some(start) => of_day.rfind(|hour| hour.at.time() <= start),
        None => of_day.find(|hour| hour.at.time() >= start),
    }
}

#[cfg(test)]
mod tests {
    use jiff::civil::{date, time};
    use tankard_core::farm::{Farm, Forecast, Hour, Pass};
    use tankard_core::quantity::AsTyped;

    use super::of;

    #[test]
    fn the_plan_goes_before_the_forecast() {
        let mut farm = Farm::new("Test");
        let day = date(2031, 6, 12);
        let hours = [(4, "N"), (7, "SW"), (10, "W")].map(|(hour, from)| {
            let mut hour = Hour::new(day.at(hour, 0, 0, 0));
            hour.wind_from = Some(AsTyped::parse(from).unwrap());
            hour
        });
        farm.forecast = Forecast { hours: hours.to_vec(), ..Forecast::default() };
        let mut pass = Pass::new("Corn", day);
        assert_eq!(of(&farm, &pass).unwrap().words, "wind from SW");
        pass.start = Some(time(11, 30, 0, 0));
        let later = of(&farm, &pass).unwrap();
        assert_eq!((later.words.as_str(), later.from.as_str()), ("wind from W", "forecast, 12 June 2031 10:00"));
        pass.wind_from = Some(AsTyped::parse("NE").unwrap());
        assert_eq!(of(&farm, &pass).unwrap().from, "as planned for 12 June 2031");
        pass.wind_from = None;
        pass.date = date(2031, 6, 13);
        assert_eq!(of(&farm, &pass), None);
    }
}
