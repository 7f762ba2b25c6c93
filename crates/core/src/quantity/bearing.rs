//! Directions on the ground, by the compass.

use std::cmp::Ordering;

use super::number::take;
use super::unit::normal;
use super::{Quantity, QuantityError, Units};
use crate::language::t;

/// A direction, clockwise from north.
///
/// # Units
/// Degrees, from 0 up to and not including 360.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bearing(f64);

const POINTS: [(&str, &str); 16] = [
    ("N", "north"),
    ("NNE", "north-northeast"),
    ("NE", "northeast"),
    ("ENE", "east-northeast"),
    ("E", "east"),
    ("ESE", "east-southeast"),
    ("SE", "southeast"),
    ("SSE", "south-southeast"),
    ("S", "south"),
    ("SSW", "south-southwest"),
    ("SW", "southwest"),
    ("WSW", "west-southwest"),
    ("W", "west"),
    ("WNW", "west-northwest"),
    ("NW", "northwest"),
    ("NNW", "north-northwest"),
];

impl Bearing {
    /// From degrees; any turn round the compass is taken off.
    pub fn from_degrees(degrees: f64) -> Self {
        let turned = degrees.rem_euclid(360.0);
        // The remainder of a tiny negative number rounds up to the full turn.
        Self(if turned < 360.0 { turned } else { 0.0 })
    }

    /// In degrees.
    pub const fn to_degrees(self) -> f64 {
        self.0
    }

    /// The opposite direction: where a wind from here blows to.
    #[must_use]
    pub fn opposite(self) -> Self {
        Self::from_degrees(self.0 + 180.0)
    }

    /// How far two directions are apart, 0 to 180 degrees.
    pub fn apart(self, other: Self) -> f64 {
        let apart = (self.0 - other.0).abs();
        apart.min(360.0 - apart)
    }

    /// The nearest of the sixteen points of the compass, such as "NNW".
    pub fn point(self) -> &'static str {
        #[allow(clippy::cast_possible_truncation, clippy::cast_sign_loss)] // Between 0 and 16.
        let at = (self.0 / 22.5).round() as usize % POINTS.len();
        POINTS.get(at).map_or("N", |point| point.0)
    }
}

impl Eq for Bearing {}
impl PartialOrd for Bearing {
    fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
        Some(self.cmp(other))
    }
}
impl Ord for Bearing {
    fn cmp(&self, other: &Self) -> Ordering {
        self.0.total_cmp(&other.0)
    }
}

impl Quantity for Bearing {
    const EXAMPLE: &'static str = "NW";

    fn called() -> &'static str {
        t!("quantity-called-a-direction")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let word: String = normal(text).chars().filter(char::is_ascii_alphabetic).collect();
        let named = POINTS.iter().position(|(short, long)| {
            short.eq_ignore_ascii_case(&word) || long.chars().filter(char::is_ascii_alphabetic).eq(word.chars())
        });
        if let Some(at) = named
            && !text.contains(|letter: char| letter.is_ascii_digit())
        {
            return Ok(Self::from_degrees(at as f64 * 22.5));
        }
        let (value, unit) = take(text).map_err(|problem| QuantityError::of::<Self>(text, problem))?;
        match normal(unit).as_str() {
            "" | "°" | "º" | "deg" | "degree" | "degrees" if (0.0..=360.0).contains(&value) => {
                Ok(Self::from_degrees(value))
            }
            "" | "°" | "º" | "deg" | "degree" | "degrees" => {
                Err(QuantityError::of::<Self>(text, t!("quantity-a-compass-has-0-to-360")))
            }
            other => Err(QuantityError::of::<Self>(text, t!("quantity-is-no-direction", other = other))),
        }
    }

    fn show(&self, _: Units) -> String {
        self.point().to_owned()
    }
}

#[cfg(test)]
mod tests {
    use super::Bearing;
    use crate::quantity::{Quantity, Units};

    #[test]
    fn directions_are_read_and_shown() {
        for (text, degrees, shown) in [
            ("NW", 315.0, "NW"),
            ("north-west", 315.0, "NW"),
            ("Northeast", 45.0, "NE"),
            ("360", 0.0, "N"),
            ("200°", 200.0, "SSW"),
            ("s", 180.0, "S"),
        ] {
            let read = Bearing::parse(text).unwrap();
            assert!((read.to_degrees() - degrees).abs() < 1e-9, "{text}");
            assert_eq!(read.show(Units::Metric), shown);
        }
        for text in ["", "up", "361", "-10", "12 mph", "NX", "N 12"] {
            assert!(Bearing::parse(text).is_err(), "{text}");
        }
    }

    #[test]
    fn apart_goes_the_short_way() {
        let apart = |a: f64, b: f64| Bearing::from_degrees(a).apart(Bearing::from_degrees(b));
        assert!((apart(350.0, 10.0) - 20.0).abs() < 1e-9);
        assert!((apart(90.0, 270.0) - 180.0).abs() < 1e-9);
        assert!((Bearing::from_degrees(315.0).opposite().to_degrees() - 135.0).abs() < 1e-9);
        assert!(Bearing::from_degrees(-1e-20).to_degrees() < 360.0);
    }
}
