//! Roads from place to place: as typed, else by way of the yard.

use crate::farm::{Farm, Id};
use crate::language::t;
use crate::quantity::{AsTyped, Duration, Length, Speed};

/// A place that a road leads to: a field, or the yard.
pub(crate) type Place<'a> = Option<&'a Id>;

/// The road between two places, the same both ways: the one typed, else by way of the yard; `None` where neither is known. From a
/// field to itself there is none, whatever is typed.
pub(crate) fn way(farm: &Farm, from: Place, to: Place) -> Option<Length> {
    if from == to {
        return Some(Length::ZERO);
    }
    let to_yard = |field: &Id| farm.fields.get(field)?.road.as_ref().map(AsTyped::value);
    match (from, to) {
        (Some(from), Some(to)) => {
            let typed = farm
                .roads
                .iter()
                .find(|road| (&road.from, &road.to) == (from, to) || (&road.from, &road.to) == (to, from));
            typed.map(|road| road.length.value()).or_else(|| Some(to_yard(from)? + to_yard(to)?))
        }
        (Some(field), None) | (None, Some(field)) => to_yard(field),
        (None, None) => Some(Length::ZERO),
    }
}

/// The time that a road takes; `None` at no speed.
pub(crate) fn time(way: Length, speed: Speed) -> Option<Duration> {
    (!speed.is_zero()).then(|| Duration::from_seconds(way.to_metres() / speed.to_metres_per_second()))
}

/// "the road from Oak field to Mill field", "the road to Oak field".
pub(crate) fn words(farm: &Farm, from: Place, to: Place) -> String {
    let name = |id: &Id| farm.fields.get(id).map_or_else(|| id.clone(), |field| field.name.clone());
    match (from, to) {
        (Some(from), Some(to)) => t!("day-the-road-from-to", from = name(from), to = name(to)),
        (Some(field), None) | (None, Some(field)) => t!("day-the-road-to", field = name(field)),
        (None, None) => t!("day-no-road").to_owned(),
    }
}

#[cfg(test)]
mod tests {
    use super::{time, way};
    use crate::farm::{Farm, Field, Road};
    use crate::quantity::{AsTyped, Length, Speed};

    #[test]
    fn a_typed_road_goes_before_the_one_by_the_yard() {
        let mut farm = Farm::new("Roads");
        let ids = ["a", "b", "c"].map(ToOwned::to_owned);
        for (id, road) in ids.iter().zip([Some("2 km"), Some("3 km"), None]) {
            let mut field = Field::new(id, AsTyped::parse("10 ha").unwrap());
            field.road = road.map(|road| AsTyped::parse(road).unwrap());
            farm.fields.insert(id.clone(), field);
        }
        let [a, b, c] = [&ids[0], &ids[1], &ids[2]].map(Some);
        let metres = |farm: &Farm, from, to| way(farm, from, to).map(|way| way.to_metres().round());
        assert_eq!([metres(&farm, None, a), metres(&farm, b, None)], [Some(2000.0), Some(3000.0)]);
        assert_eq!([metres(&farm, a, b), metres(&farm, b, a)], [Some(5000.0); 2]);
        assert_eq!([metres(&farm, a, c), metres(&farm, None, c)], [None; 2]);
        assert_eq!([metres(&farm, c, c), metres(&farm, None, None)], [Some(0.0); 2]);
        for (from, to, length) in [("b", "a", "1 km"), ("c", "a", "4 km")] {
            let length = AsTyped::parse(length).unwrap();
            farm.roads.push(Road { from: from.to_owned(), to: to.to_owned(), length });
        }
        assert_eq!([metres(&farm, a, b), metres(&farm, b, a)], [Some(1000.0); 2]);
        assert_eq!([metres(&farm, a, c), metres(&farm, b, c)], [Some(4000.0), None]);
        // 1 km at 20 km/h.
        let speed = |text| AsTyped::<Speed>::parse(text).unwrap().value();
        let minutes = time(Length::from_metres(1000.0), speed("20 km/h")).unwrap().to_seconds() / 60.0;
        assert!((minutes - 3.0).abs() < 1e-9);
        assert!(time(Length::from_metres(1000.0), speed("0 km/h")).is_none());
    }
}
