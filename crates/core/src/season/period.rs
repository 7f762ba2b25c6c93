//! The period over which a label counts: a calendar year, a crop, twelve months.

use jiff::Span;
use jiff::civil::Date;

use crate::farm::label::Period;
use crate::farm::{Field, Id, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;

/// The days of a period, both ends included.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Window {
    /// The first day.
    pub from: Date,
    /// The last day.
    pub to: Date,
    /// In words: "in 2031", "on this crop", "in 12 months".
    pub words: String,
    /// Why a crop's days are not known, where the calendar year stands in for them.
    pub instead: Option<Instead>,
}

/// Why the days of a crop are not known.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Instead {
    /// Its day of planting is not typed.
    NotTyped,
    /// It is planted after the day that is asked about.
    PlantedLater,
}

impl Window {
    /// The period of a field around a day. A crop counts from its planting on; twelve months end with the day, and a
    /// day a full year earlier is no longer in them.
    pub fn of(period: Period, field: &Field, day: Date) -> Self {
        match (period, field.planted) {
            (Period::Year, _) => Self::year(day, None),
            (Period::Crop, None) => Self::year(day, Some(Instead::NotTyped)),
            (Period::Crop, Some(planted)) if planted > day => Self::year(day, Some(Instead::PlantedLater)),
            (Period::Crop, Some(planted)) => {
                Self { from: planted, to: Date::MAX, words: t!("season-on-this-crop").to_owned(), instead: None }
            }
            (Period::TwelveMonths, _) => {
                let from = day.checked_sub(Span::new().months(12)).and_then(Date::tomorrow).unwrap_or(Date::MIN);
                Self { from, to: day, words: t!("season-in-12-months").to_owned(), instead: None }
            }
        }
    }

    fn year(day: Date, instead: Option<Instead>) -> Self {
        let year = day.year();
        Self {
            from: Date::new(year, 1, 1).unwrap_or(Date::MIN),
            to: Date::new(year, 12, 31).unwrap_or(Date::MAX),
            words: t!("season-in-year", year = year),
            instead,
        }
    }

    /// The Check that says that a calendar year stands in for a crop, once for a product and a field.
    pub(crate) fn stand_in(&self, field_id: &Id, field: &Field, product: &Product) -> Option<Finding> {
        let text = match self.instead? {
            Instead::NotTyped => t!("season-the-label-of-counts-by-the", name = product.name, name2 = field.name),
            Instead::PlantedLater => {
                t!("season-the-label-counts-by-a-crop-planted-later", name = product.name, name2 = field.name)
            }
        };
        Some(
            Finding::check(Subject::Field(field_id.clone()), text, Basis::Label(product.name.clone()))
                .hint(t!("season-type-the-day-of-planting-on")),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::Window;
    use crate::farm::Field;
    use crate::farm::label::Period;
    use crate::quantity::AsTyped;
    use jiff::civil::date;

    #[test]
    fn periods_by_the_calendar() {
        let mut field = Field::new("Field", AsTyped::parse("80 ac").unwrap());
        let days = |period, field: &Field, day| {
            let window = Window::of(period, field, day);
            (window.from, window.to, window.instead.is_some())
        };
        let day = date(2031, 6, 12);
        assert_eq!(days(Period::Year, &field, day), (date(2031, 1, 1), date(2031, 12, 31), false));
        assert_eq!(days(Period::TwelveMonths, &field, day), (date(2030, 6, 13), day, false));
        // 2032 is a leap year: a year before 29 February is 28 February, by the Gregorian calendar.
        let leap = date(2032, 2, 29);
        assert_eq!(days(Period::TwelveMonths, &field, leap), (date(2031, 3, 1), leap, false));
        assert!(days(Period::Crop, &field, day).2);
        field.planted = Some(date(2030, 10, 2));
        assert_eq!(days(Period::Crop, &field, day), (date(2030, 10, 2), jiff::civil::Date::MAX, false));
        field.planted = Some(date(2031, 6, 20));
        assert_eq!(days(Period::Crop, &field, day), (date(2031, 1, 1), date(2031, 12, 31), true));
        assert_eq!(days(Period::TwelveMonths, &field, jiff::civil::Date::MIN).0, jiff::civil::Date::MIN);
    }
}
