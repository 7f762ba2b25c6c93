//! The usual limits of weather where no label and no law says more: the rows of `assets/weather-limits.csv`, each with its source.

use std::sync::LazyLock;

use serde::Deserialize;

use crate::farm::{Farm, Practice};
use crate::finding::Basis;
use crate::language;
use crate::quantity::{AsTyped, Bearing, Duration, Length, Quantity, Share, Speed, TemperatureSpan};
use crate::table;

/// A row of the table.
#[derive(Clone, Debug, Deserialize)]
struct Row {
    /// Which limit.
    limit: String,
    value: String,
    /// "published" or "practice".
    basis: String,
    /// A sentence that says why.
    says: String,
    source: String,
}

fn rows() -> &'static [Row] {
    static ROWS: LazyLock<Vec<Row>> =
        LazyLock::new(|| table::read(include_str!("../../../../assets/weather-limits.csv")).unwrap_or_default());
    &ROWS
}

fn row(limit: &str) -> Option<&'static Row> {
    rows().iter().find(|row| row.limit == limit)
}

fn value<Q: Quantity>(limit: &str) -> Option<AsTyped<Q>> {
    AsTyped::parse(&row(limit)?.value).ok()
}

/// The usual limits.
pub fn usual() -> &'static Practice {
    static USUAL: LazyLock<Practice> = LazyLock::new(|| Practice {
        least_wind: value("least_wind"),
        most_wind: value("most_wind"),
        most_gust: value("most_gust"),
        least_delta_t: value("least_delta_t"),
        good_delta_t: value("good_delta_t"),
        most_delta_t: value("most_delta_t"),
        least_air: value("least_air"),
        most_air: value("most_air"),
        wet_chance: value("wet_chance"),
        near: value("near"),
        area_differs: value("area_differs"),
        calibration_days: None,
    });
    &USUAL
}

/// On what a usual limit rests, by its name in the table; common practice where the table does not know it.
pub fn source(limit: &str) -> Basis {
    match row(limit) {
        Some(row) if row.basis == "published" => Basis::Published(row.source.clone()),
        _ => Basis::Practice,
    }
}

/// Why there is such a limit, in a sentence.
pub fn why(limit: &str) -> &'static str {
    row(limit).map_or("", |row| language::row(&row.says))
}

/// What the farm keeps to of a limit: as typed, else the usual; and on what it rests.
pub(crate) fn of<Q: Quantity>(
    farm: &Farm,
    limit: &str,
    which: fn(&Practice) -> &Option<AsTyped<Q>>,
) -> Option<(Q, Basis)> {
    match which(&farm.practice) {
        Some(typed) => Some((typed.value(), Basis::Own)),
        None => which(usual()).as_ref().map(|usual| (usual.value(), source(limit))),
    }
}

/// What points to an inversion, and what clears it of the doubt.
#[derive(Clone, Debug)]
pub(crate) struct Inversion {
    pub(crate) heights: TemperatureSpan,
    pub(crate) before_sunset: Duration,
    pub(crate) after_sunrise: Duration,
    pub(crate) calm: Speed,
    pub(crate) cloud: Share,
    pub(crate) overcast: Share,
    pub(crate) wind: Speed,
}

pub(crate) fn inversion() -> &'static Inversion {
    static INVERSION: LazyLock<Inversion> = LazyLock::new(|| {
        fn typed<Q: Quantity>(limit: &str, other: Q) -> Q {
            value(limit).map_or(other, |typed: AsTyped<Q>| typed.value())
        }
        Inversion {
            heights: typed("inversion_heights", TemperatureSpan::from_celsius(0.0)),
            before_sunset: typed("inversion_before_sunset", Duration::from_hours(1.0)),
            after_sunrise: typed("inversion_after_sunrise", Duration::from_hours(1.0)),
            calm: typed("inversion_calm", Speed::from_kilometres_per_hour(3.0)),
            cloud: typed("inversion_cloud", Share::from_percent(25.0)),
            overcast: typed("inversion_overcast", Share::from_percent(75.0)),
            wind: typed("inversion_wind", Speed::from_miles_per_hour(5.0)),
        }
    });
    &INVERSION
}

/// Within how many degrees of a neighbour the wind blows toward it.
pub(crate) fn toward() -> f64 {
    static TOWARD: LazyLock<f64> =
        LazyLock::new(|| value::<Bearing>("toward").map_or(45.0, |bearing| bearing.to_degrees()));
    *TOWARD
}

/// How far off something drawn on the map still lies beside a field.
pub(crate) fn beside() -> Length {
    static BESIDE: LazyLock<Length> =
        LazyLock::new(|| value::<Length>("beside").map_or_else(|| Length::from_metres(400.0), |beside| beside.value()));
    *BESIDE
}

#[cfg(test)]
mod tests {
    use super::{beside, inversion, rows, source, toward, usual, why};
    use crate::finding::Basis;

    #[test]
    fn the_table_reads_and_every_limit_is_in_it() {
        assert_eq!(rows().len(), 21);
        let usual = usual();
        assert!(usual.least_wind.is_some() && usual.most_wind.is_some() && usual.most_gust.is_some());
        assert!(usual.least_delta_t.is_some() && usual.good_delta_t.is_some() && usual.most_delta_t.is_some());
        assert!(usual.least_air.is_some() && usual.most_air.is_some() && usual.wet_chance.is_some());
        assert!(usual.near.is_some() && usual.area_differs.is_some() && usual.calibration_days.is_none());
        for row in rows() {
            assert_eq!(source(&row.limit) == Basis::Practice, row.source == "common practice, no source", "{row:?}");
            assert!(!why(&row.limit).is_empty());
        }
        // As the sources print them.
        assert!((usual.most_wind.as_ref().unwrap().to_miles_per_hour() - 10.0).abs() < 1e-9);
        assert!((usual.good_delta_t.as_ref().unwrap().to_celsius() - 8.0).abs() < 1e-9);
        assert!((inversion().calm.to_kilometres_per_hour() - 3.0).abs() < 1e-9);
        assert!((inversion().cloud.to_percent() - 25.0).abs() < 1e-9);
        assert!((toward() - 45.0).abs() < 1e-9);
        assert!((beside().to_metres() - 402.336).abs() < 1e-9);
        // Purdue University Extension, 2018, speaks of one use and of its 10 mph.
        let gusts = why("gust_as_wind");
        assert!(gusts.contains("over-the-top dicamba") && gusts.contains("10 mph"), "{gusts}");
    }
}
