//! The plain quantities: one newtype each, with named constructors and accessors.
//!
//! # Valid range
//! Reading from text refuses what is not finite, and what is negative except for temperatures. Constructors take a finite
//! number; divisions by a quantity that is zero give `None`, so no NaN arises inside.

use std::cmp::Ordering;
use std::ops::{Add, Div, Mul, Sub};

use crate::language::t;

use uom::si::f64 as si;

use super::factor as f;
use super::number::{show, show_significant, take};
use super::practical::{show_mass, show_volume};
use super::unit::{self, Unit, find, normal};
use super::{Quantity, QuantityError, Rate, Units};

/// So many numbers with units are added up; nobody types more, and each is looked for in all the rest of the text.
const MOST_PARTS: usize = 12;

/// Reads "13 gal 3 qt": numbers with units of one table, added up.
pub(super) fn parse_sum<Q: Quantity>(text: &str, table: &[Unit]) -> Result<f64, QuantityError> {
    let error = |problem: String| QuantityError::of::<Q>(text, problem);
    let mut total = 0.0;
    let mut rest = text.trim();
    for _ in 0..MOST_PARTS {
        let (value, after) = take(rest).map_err(error)?;
        if value < 0.0 {
            return Err(error(t!("quantity-is-below-zero", rest = rest.trim())));
        }
        let after = after.trim_start();
        // The unit runs to the next number, but "m2" and "100 gal" hold digits of their own.
        let end = next_number(after).unwrap_or(after.len());
        let (name, tail) = after.split_at_checked(end).unwrap_or((after, ""));
        let whole = normal(after);
        if let Some(unit) = find(table, &whole) {
            return Ok(total + value * unit.factor);
        }
        match find(table, &normal(name)) {
            Some(unit) => total += value * unit.factor,
            None if name.trim().is_empty() => {
                return Err(error(t!("quantity-the-unit-after-is-missing", show = show(value, 6))));
            }
            None => return Err(error(t!("quantity-is-not-a-unit-known-here", after = after.trim()))),
        }
        rest = tail.trim();
        if rest.is_empty() {
            return Ok(total);
        }
    }
    Err(error(t!("quantity-more-than-numbers-are-added-up", most_parts = MOST_PARTS)))
}

/// Where the next number begins that stands after a space.
fn next_number(text: &str) -> Option<usize> {
    let bytes = text.as_bytes();
    (1..bytes.len()).find(|&at| {
        bytes.get(at).is_some_and(|b| b.is_ascii_digit() || *b == b'-') && bytes.get(at - 1).is_some_and(|b| *b == b' ')
    })
}

macro_rules! quantity {
    (
        $(#[$doc:meta])*
        $name:ident($inner:ty), $called:literal, $example:literal, parse $parse:expr,
        { $($(#[$unit_doc:meta])* $from:ident, $to:ident = $factor:expr;)+ },
        show $show:expr
    ) => {
        $(#[$doc])*
        #[derive(Clone, Copy, Debug, PartialEq)]
        pub struct $name($inner);

        impl $name {
            /// Nothing of it.
            pub const ZERO: Self = Self::from_base(0.0);

            /// From SI base units.
            const fn from_base(value: f64) -> Self {
                Self(uom::si::Quantity {
                    dimension: std::marker::PhantomData,
                    units: std::marker::PhantomData,
                    value,
                })
            }

            /// In SI base units.
            const fn base(self) -> f64 {
                self.0.value
            }

            $(
                $(#[$unit_doc])*
                pub const fn $from(value: f64) -> Self {
                    Self::from_base(value * ($factor))
                }
                $(#[$unit_doc])*
                pub const fn $to(self) -> f64 {
                    self.base() / ($factor)
                }
            )+

            /// As the `uom` quantity.
            pub const fn uom(self) -> $inner {
                self.0
            }

            /// Whether it is exactly nothing.
            pub fn is_zero(self) -> bool {
                self.base() == 0.0
            }

            /// How many times `other` goes into it; `None` where `other` is zero.
            pub fn ratio(self, other: Self) -> Option<f64> {
                (!other.is_zero()).then(|| self.base() / other.base())
            }

            /// The smaller of two.
            #[must_use]
            pub fn min(self, other: Self) -> Self {
                if other < self { other } else { self }
            }

            /// The larger of two.
            #[must_use]
            pub fn max(self, other: Self) -> Self {
                if other > self { other } else { self }
            }

            /// Whether it is larger than `limit` by more than the error of floating-point arithmetic (one part in 10⁹).
            pub fn exceeds(self, limit: Self) -> bool {
                self.base() > limit.base() + limit.base().abs() * 1e-9
            }
        }

        impl Eq for $name {}
        impl PartialOrd for $name {
            fn partial_cmp(&self, other: &Self) -> Option<Ordering> {
                Some(self.cmp(other))
            }
        }
        impl Ord for $name {
            fn cmp(&self, other: &Self) -> Ordering {
                self.base().total_cmp(&other.base())
            }
        }
        impl Add for $name {
            type Output = Self;
            fn add(self, other: Self) -> Self {
                Self(self.0 + other.0)
            }
        }
        impl Sub for $name {
            type Output = Self;
            fn sub(self, other: Self) -> Self {
                Self(self.0 - other.0)
            }
        }
        impl Mul<f64> for $name {
            type Output = Self;
            fn mul(self, factor: f64) -> Self {
                Self(self.0 * factor)
            }
        }
        impl std::iter::Sum for $name {
            fn sum<I: Iterator<Item = Self>>(all: I) -> Self {
                all.fold(Self::ZERO, Add::add)
            }
        }

        impl Quantity for $name {
            const EXAMPLE: &'static str = $example;

            fn called() -> &'static str {
                t!($called)
            }

            fn parse(text: &str) -> Result<Self, QuantityError> {
                let parse: fn(&str) -> Result<Self, QuantityError> = $parse;
                parse(text)
            }

            fn show(&self, units: Units) -> String {
                let show: fn($name, Units) -> String = $show;
                show(*self, units)
            }
        }
    };
}

/// A product of two quantities is a third.
macro_rules! product {
    ($a:ident * $b:ident = $c:ident) => {
        impl Mul<$b> for $a {
            type Output = $c;
            fn mul(self, other: $b) -> $c {
                $c::from_base(self.base() * other.base())
            }
        }
        impl $c {
            #[doc = concat!("Divided by ", stringify!($b), "; `None` where that is zero.")]
            pub fn over(self, other: $b) -> Option<$a> {
                (!other.is_zero()).then(|| $a::from_base(self.base() / other.base()))
            }
        }
    };
}

type VolumeOverArea = <si::Volume as Div<si::Area>>::Output;
type MassOverArea = <si::Mass as Div<si::Area>>::Output;

quantity! {
    /// Ground.
    Area(si::Area), "quantity-called-an-area", "74.6 ac", parse |text| parse_sum::<Self>(text, unit::AREA).map(Self::from_base),
    {
        /// Square metres.
        from_square_metres, to_square_metres = 1.0;
        /// Hectares.
        from_hectares, to_hectares = f::HECTARE;
        /// International acres.
        from_acres, to_acres = f::ACRE;
    },
    show |q, units| match units {
        Units::Metric => format!("{} ha", show(q.to_hectares(), 2)),
        _ => format!("{} ac", show(q.to_acres(), if q.to_acres() < 0.1 { 4 } else if q.to_acres() < 1.0 { 2 } else { 1 })),
    }
}

quantity! {
    /// A volume of liquid.
    Volume(si::Volume), "quantity-called-a-volume", "1200 gal", parse |text| parse_sum::<Self>(text, unit::VOLUME).map(Self::from_base),
    {
        /// Cubic metres.
        from_cubic_metres, to_cubic_metres = 1.0;
        /// Litres.
        from_litres, to_litres = f::LITRE;
        /// US gallons.
        from_us_gallons, to_us_gallons = f::US_GALLON;
        /// US fluid ounces.
        from_us_fluid_ounces, to_us_fluid_ounces = f::US_FLUID_OUNCE;
        /// Imperial gallons.
        from_imperial_gallons, to_imperial_gallons = f::IMPERIAL_GALLON;
        /// Imperial fluid ounces.
        from_imperial_fluid_ounces, to_imperial_fluid_ounces = f::IMPERIAL_FLUID_OUNCE;
    },
    show |q, units| match units {
        // Less than the large unit reads better in the small one.
        Units::UsCustomary if q.to_us_gallons() < 1.0 => show_volume(q, units),
        Units::Imperial if q.to_imperial_gallons() < 1.0 => show_volume(q, units),
        Units::Metric if q.to_litres() < 1.0 => show_volume(q, units),
        Units::UsCustomary => format!("{} gal", show_significant(q.to_us_gallons())),
        Units::Imperial => format!("{} imp gal", show_significant(q.to_imperial_gallons())),
        Units::Metric => format!("{} L", show_significant(q.to_litres())),
    }
}

quantity! {
    /// A mass.
    Mass(si::Mass), "quantity-called-a-mass", "51 lb", parse |text| parse_sum::<Self>(text, unit::MASS).map(Self::from_base),
    {
        /// Kilograms.
        from_kilograms, to_kilograms = 1.0;
        /// Grams.
        from_grams, to_grams = 0.001;
        /// Avoirdupois pounds.
        from_pounds, to_pounds = f::POUND;
        /// Avoirdupois ounces.
        from_ounces, to_ounces = f::OUNCE;
    },
    show |q, units| match units {
        Units::Metric if q.to_kilograms() < 1.0 => show_mass(q, units),
        Units::UsCustomary | Units::Imperial if q.to_pounds() < 1.0 => show_mass(q, units),
        Units::Metric => format!("{} kg", show_significant(q.to_kilograms())),
        _ => format!("{} lb", show_significant(q.to_pounds())),
    }
}

quantity! {
    /// Spray volume over an area of ground ("gallons per acre").
    CarrierRate(VolumeOverArea), "quantity-called-a-carrier-volume-per-area", "15 gal/ac", parse |text| parse_sum::<Self>(text, unit::CARRIER).map(Self::from_base),
    {
        /// Litres per hectare.
        from_litres_per_hectare, to_litres_per_hectare = f::LITRE / f::HECTARE;
        /// US gallons per acre.
        from_us_gallons_per_acre, to_us_gallons_per_acre = f::US_GALLON_PER_ACRE;
        /// Imperial gallons per acre.
        from_imperial_gallons_per_acre, to_imperial_gallons_per_acre = f::IMPERIAL_GALLON / f::ACRE;
    },
    show |q, units| match units {
        Units::UsCustomary => format!("{} gal/ac", show(q.to_us_gallons_per_acre(), 1)),
        Units::Imperial => format!("{} imp gal/ac", show(q.to_imperial_gallons_per_acre(), 1)),
        Units::Metric => format!("{} L/ha", show(q.to_litres_per_hectare(), 1)),
    }
}

quantity! {
    /// Liquid product over an area of ground.
    VolumePerArea(VolumeOverArea), "quantity-called-a-rate-by-volume", "22 fl oz/ac", parse |text| match Rate::parse(text)? {
        Rate::VolumePerArea(rate) => Ok(rate),
        other => Err(QuantityError::of::<Self>(text, t!("quantity-it-is", kind = other.kind()))),
    },
    {
        /// Cubic metres per square metre.
        from_base_units, to_base_units = 1.0;
        /// Litres per hectare.
        from_litres_per_hectare, to_litres_per_hectare = f::LITRE / f::HECTARE;
        /// US fluid ounces per acre.
        from_us_fluid_ounces_per_acre, to_us_fluid_ounces_per_acre = f::US_FLUID_OUNCE / f::ACRE;
        /// US pints per acre.
        from_us_pints_per_acre, to_us_pints_per_acre = f::US_PINT / f::ACRE;
        /// Imperial fluid ounces per acre.
        from_imperial_fluid_ounces_per_acre, to_imperial_fluid_ounces_per_acre = f::IMPERIAL_FLUID_OUNCE / f::ACRE;
    },
    show |q, units| match units {
        Units::UsCustomary => {
            let ounces = q.to_us_fluid_ounces_per_acre();
            if ounces < 64.0 { format!("{} fl oz/ac", show_significant(ounces)) }
            else if ounces < 256.0 { format!("{} pt/ac", show_significant(ounces / 16.0)) }
            else { format!("{} gal/ac", show_significant(ounces / 128.0)) }
        }
        Units::Imperial => format!("{} imp fl oz/ac", show_significant(q.to_imperial_fluid_ounces_per_acre())),
        Units::Metric => {
            let litres = q.to_litres_per_hectare();
            if litres < 0.1 { format!("{} mL/ha", show_significant(litres * 1000.0)) }
            else { format!("{} L/ha", show(litres, 3)) }
        }
    }
}

quantity! {
    /// Dry product, or active ingredient, over an area of ground.
    MassPerArea(MassOverArea), "quantity-called-a-rate-by-mass", "1.5 lb/ac", parse |text| match Rate::parse(text)? {
        Rate::MassPerArea(rate) | Rate::OuncesPerArea(rate) => Ok(rate),
        other => Err(QuantityError::of::<Self>(text, t!("quantity-it-is", kind = other.kind()))),
    },
    {
        /// Kilograms per square metre.
        from_base_units, to_base_units = 1.0;
        /// Kilograms per hectare.
        from_kilograms_per_hectare, to_kilograms_per_hectare = 1.0 / f::HECTARE;
        /// Pounds per acre.
        from_pounds_per_acre, to_pounds_per_acre = f::POUND / f::ACRE;
        /// Ounces per acre.
        from_ounces_per_acre, to_ounces_per_acre = f::OUNCE / f::ACRE;
    },
    show |q, units| if units == Units::Metric {
        let kilograms = q.to_kilograms_per_hectare();
        if kilograms < 1.0 { format!("{} g/ha", show_significant(kilograms * 1000.0)) }
        else { format!("{} kg/ha", show_significant(kilograms)) }
    } else {
        let pounds = q.to_pounds_per_acre();
        if pounds < 0.25 { format!("{} oz/ac", show_significant(pounds * 16.0)) }
        else { format!("{} lb/ac", show(pounds, 3)) }
    }
}

quantity! {
    /// Something dissolved in the finished spray or in a product.
    MassPerVolume(si::MassDensity), "quantity-called-a-mass-per-volume", "17 lb/100 gal", parse |text| match Rate::parse(text)? {
        Rate::MassPerSpray(content) | Rate::OuncesPerSpray(content) => Ok(content),
        other => Err(QuantityError::of::<Self>(text, t!("quantity-it-is", kind = other.kind()))),
    },
    {
        /// Kilograms per cubic metre, which are grams per litre.
        from_grams_per_litre, to_grams_per_litre = 1.0;
        /// Pounds per US gallon.
        from_pounds_per_us_gallon, to_pounds_per_us_gallon = f::POUND / f::US_GALLON;
        /// Pounds per 100 US gallons.
        from_pounds_per_100_us_gallons, to_pounds_per_100_us_gallons = f::POUND / (100.0 * f::US_GALLON);
        /// Pounds per 100 imperial gallons.
        from_pounds_per_100_imperial_gallons, to_pounds_per_100_imperial_gallons = f::POUND / (100.0 * f::IMPERIAL_GALLON);
    },
    show |q, units| match units {
        Units::UsCustomary => format!("{} lb/100 gal", show(q.to_pounds_per_100_us_gallons(), 2)),
        Units::Imperial => format!("{} lb/100 imp gal", show(q.to_pounds_per_100_imperial_gallons(), 2)),
        Units::Metric => format!("{} g/L", show(q.to_grams_per_litre(), 2)),
    }
}

quantity! {
    /// Density of a product or carrier.
    Density(si::MassDensity), "quantity-called-a-density", "10.2 lb/gal", parse |text| parse_sum::<Self>(text, unit::DENSITY).map(Self::from_base),
    {
        /// Kilograms per litre.
        from_kilograms_per_litre, to_kilograms_per_litre = 1000.0;
        /// Kilograms per cubic metre.
        from_kilograms_per_cubic_metre, to_kilograms_per_cubic_metre = 1.0;
        /// Pounds per US gallon.
        from_pounds_per_us_gallon, to_pounds_per_us_gallon = f::POUND / f::US_GALLON;
    },
    show |q, units| match units {
        Units::UsCustomary => format!("{} lb/gal", show(q.to_pounds_per_us_gallon(), 2)),
        Units::Imperial => format!("{} lb/imp gal", show(q.base() * f::IMPERIAL_GALLON / f::POUND, 2)),
        Units::Metric => format!("{} kg/L", show(q.to_kilograms_per_litre(), 3)),
    }
}

quantity! {
    /// Hardness of water, as calcium carbonate.
    Hardness(si::MassDensity), "quantity-called-a-hardness", "350 ppm", parse |text| parse_sum::<Self>(text, unit::HARDNESS).map(Self::from_base),
    {
        /// Milligrams per litre as CaCO3, which are parts per million.
        from_ppm, to_ppm = f::MG_PER_LITRE;
        /// Grains per US gallon.
        from_grains_per_us_gallon, to_grains_per_us_gallon = f::GRAIN_PER_US_GALLON;
        /// German degrees.
        from_german_degrees, to_german_degrees = f::GERMAN_DEGREE;
        /// French degrees.
        from_french_degrees, to_french_degrees = f::FRENCH_DEGREE;
        /// English (Clark) degrees.
        from_clark_degrees, to_clark_degrees = f::CLARK_DEGREE;
        /// Millimoles of CaCO3 per litre.
        from_millimoles_per_litre, to_millimoles_per_litre = f::CACO3_MOLAR;
    },
    show |q, _| format!("{} ppm", show(q.to_ppm(), 0))
}

quantity! {
    /// Content of one ion in water.
    IonContent(si::MassDensity), "quantity-called-an-ion-content", "118 ppm", parse |text| parse_sum::<Self>(text, unit::ION).map(Self::from_base),
    {
        /// Milligrams per litre, which are parts per million.
        from_ppm, to_ppm = f::MG_PER_LITRE;
    },
    show |q, _| format!("{} ppm", show_significant(q.to_ppm()))
}

quantity! {
    /// Electrical conductivity of water.
    Conductivity(si::ElectricalConductivity), "quantity-called-a-conductivity", "750 µS/cm", parse |text| parse_sum::<Self>(text, unit::CONDUCTIVITY).map(Self::from_base),
    {
        /// Microsiemens per centimetre.
        from_microsiemens_per_centimetre, to_microsiemens_per_centimetre = f::MICROSIEMENS_PER_CENTIMETRE;
        /// Decisiemens per metre, which are millisiemens per centimetre.
        from_decisiemens_per_metre, to_decisiemens_per_metre = 0.1;
    },
    show |q, _| format!("{} µS/cm", show(q.to_microsiemens_per_centimetre(), 0))
}

quantity! {
    /// A length.
    Length(si::Length), "quantity-called-a-length", "120 ft", parse |text| parse_sum::<Self>(text, unit::LENGTH).map(Self::from_base),
    {
        /// Metres.
        from_metres, to_metres = 1.0;
        /// Feet.
        from_feet, to_feet = f::FOOT;
        /// Inches.
        from_inches, to_inches = f::INCH;
    },
    show |q, units| match units {
        // What nozzles stand apart is told to the millimetre.
        Units::Metric => format!("{} m", show(q.to_metres(), if q.to_metres() < 1.0 { 3 } else { 2 })),
        _ if q.to_feet() < 4.0 => format!("{} in", show(q.to_inches(), 1)),
        _ => format!("{} ft", show(q.to_feet(), 1)),
    }
}

quantity! {
    /// A speed, over ground or of the wind.
    Speed(si::Velocity), "quantity-called-a-speed", "12 mph", parse |text| parse_sum::<Self>(text, unit::SPEED).map(Self::from_base),
    {
        /// Metres per second.
        from_metres_per_second, to_metres_per_second = 1.0;
        /// Miles per hour.
        from_miles_per_hour, to_miles_per_hour = f::MPH;
        /// Kilometres per hour.
        from_kilometres_per_hour, to_kilometres_per_hour = f::KMH;
    },
    show |q, units| match units {
        Units::Metric => format!("{} km/h", show(q.to_kilometres_per_hour(), 1)),
        _ => format!("{} mph", show(q.to_miles_per_hour(), 1)),
    }
}

quantity! {
    /// A pressure in the boom.
    Pressure(si::Pressure), "quantity-called-a-pressure", "40 psi", parse |text| parse_sum::<Self>(text, unit::PRESSURE).map(Self::from_base),
    {
        /// Pascals.
        from_pascals, to_pascals = 1.0;
        /// Bar.
        from_bar, to_bar = 1e5;
        /// Pounds per square inch.
        from_psi, to_psi = f::PSI;
    },
    show |q, units| match units {
        Units::Metric => format!("{} bar", show(q.to_bar(), 2)),
        _ => format!("{} psi", show(q.to_psi(), 0)),
    }
}

quantity! {
    /// A flow of liquid.
    Flow(si::VolumeRate), "quantity-called-a-flow", "0.4 gal/min", parse |text| parse_sum::<Self>(text, unit::FLOW).map(Self::from_base),
    {
        /// Cubic metres per second.
        from_cubic_metres_per_second, to_cubic_metres_per_second = 1.0;
        /// Litres per minute.
        from_litres_per_minute, to_litres_per_minute = f::LITRE / 60.0;
        /// US gallons per minute.
        from_us_gallons_per_minute, to_us_gallons_per_minute = f::US_GALLON / 60.0;
    },
    show |q, units| match units {
        Units::Metric => format!("{} L/min", show(q.to_litres_per_minute(), 2)),
        Units::Imperial => format!("{} imp gal/min", show(q.base() * 60.0 / f::IMPERIAL_GALLON, 2)),
        Units::UsCustomary => format!("{} gal/min", show(q.to_us_gallons_per_minute(), 2)),
    }
}

quantity! {
    /// A span of time.
    Duration(si::Time), "quantity-called-a-time", "12 h", parse |text| parse_sum::<Self>(text, unit::TIME).map(Self::from_base),
    {
        /// Seconds.
        from_seconds, to_seconds = 1.0;
        /// Hours.
        from_hours, to_hours = 3600.0;
    },
    show |q, _| {
        // Whole minutes, so that 59.9 minutes print as one hour and not as "0 h 60 min".
        let minutes = (q.to_seconds() / 60.0).round();
        let (hours, rest) = ((minutes / 60.0).floor(), minutes % 60.0);
        if hours < 1.0 { format!("{rest} min") }
        else if rest < 1.0 { format!("{} h", show(hours, 0)) }
        else { format!("{} h {rest} min", show(hours, 0)) }
    }
}

quantity! {
    /// A share of a whole, such as a relative humidity or the field efficiency.
    Share(si::Ratio), "quantity-called-a-share", "65 %", parse |text| parse_sum::<Self>(text, unit::SHARE).map(Self::from_base),
    {
        /// A fraction of one.
        from_fraction, to_fraction = 1.0;
        /// Per cent.
        from_percent, to_percent = 0.01;
    },
    show |q, _| format!("{} %", show(q.to_percent(), 3))
}

product!(CarrierRate * Area = Volume);
product!(MassPerArea * Area = Mass);

impl Mul<Area> for VolumePerArea {
    type Output = Volume;
    fn mul(self, area: Area) -> Volume {
        Volume::from_base(self.base() * area.base())
    }
}

impl Mul<Volume> for MassPerVolume {
    type Output = Mass;
    fn mul(self, volume: Volume) -> Mass {
        Mass::from_base(self.base() * volume.base())
    }
}

/// What hardens the water, counted as calcium carbonate.
impl From<Hardness> for MassPerVolume {
    fn from(hardness: Hardness) -> Self {
        Self::from_base(hardness.base())
    }
}

impl From<IonContent> for MassPerVolume {
    fn from(ion: IonContent) -> Self {
        Self::from_base(ion.base())
    }
}

impl CarrierRate {
    /// The part of the spray that a share by volume takes, over the area.
    pub fn share(self, share: Share) -> VolumePerArea {
        VolumePerArea::from_base(self.base() * share.to_fraction())
    }

    /// What a content of the finished spray puts on the ground.
    pub fn content(self, content: MassPerVolume) -> MassPerArea {
        MassPerArea::from_base(self.base() * content.base())
    }
}

impl Share {
    /// Prints in whole per cent.
    pub fn show_whole(self) -> String {
        format!("{} %", show(self.to_percent().round(), 0))
    }
}

impl Length {
    /// Prints as a depth of rain: millimetres, or inches to the hundredth.
    pub fn show_rain(self, units: Units) -> String {
        match units {
            Units::Metric => format!("{} mm", show(self.to_metres() * 1000.0, 1)),
            _ => format!("{} in", show(self.to_inches(), 2)),
        }
    }
}

impl Volume {
    /// The ground it covers at a carrier rate; `None` where the rate is zero.
    pub fn ground(self, rate: CarrierRate) -> Option<Area> {
        (!rate.is_zero()).then(|| Area::from_base(self.base() / rate.base()))
    }

    /// What it weighs.
    pub fn mass(self, density: Density) -> Mass {
        Mass::from_base(self.base() * density.base())
    }

    /// Spread over an area; `None` where the area is zero.
    pub fn spread(self, area: Area) -> Option<VolumePerArea> {
        (!area.is_zero()).then(|| VolumePerArea::from_base(self.base() / area.base()))
    }
}

impl Mass {
    /// The room it takes; `None` where the density is zero.
    pub fn volume(self, density: Density) -> Option<Volume> {
        (!density.is_zero()).then(|| Volume::from_base(self.base() / density.base()))
    }
}

impl MassPerArea {
    /// The volume of a liquid that carries this mass of active over the area; `None` where the content is zero.
    pub fn through(self, content: MassPerVolume) -> Option<VolumePerArea> {
        (!content.is_zero()).then(|| VolumePerArea::from_base(self.base() / content.base()))
    }
}

impl VolumePerArea {
    /// The mass of active that the rate puts on the ground.
    pub fn content(self, content: MassPerVolume) -> MassPerArea {
        MassPerArea::from_base(self.base() * content.base())
    }
}

impl Area {
    /// Time to cover it at a speed over a working width with a field efficiency; `None` where any of these is zero.
    ///
    /// # Units
    /// area ÷ (speed × width × efficiency).
    pub fn time(self, speed: Speed, width: Length, efficiency: Share) -> Option<Duration> {
        let capacity = speed.base() * width.base() * efficiency.base();
        (capacity > 0.0).then(|| Duration::from_base(self.base() / capacity))
    }
}

/// A temperature of the air.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Temperature(si::ThermodynamicTemperature);

impl Temperature {
    /// Degrees Celsius.
    pub fn from_celsius(value: f64) -> Self {
        Self(si::ThermodynamicTemperature::new::<uom::si::thermodynamic_temperature::kelvin>(value + 273.15))
    }

    /// Degrees Fahrenheit.
    pub fn from_fahrenheit(value: f64) -> Self {
        Self::from_celsius((value - 32.0) / 1.8)
    }

    /// Degrees Celsius.
    pub fn to_celsius(self) -> f64 {
        self.0.value - 273.15
    }

    /// Degrees Fahrenheit.
    pub fn to_fahrenheit(self) -> f64 {
        self.to_celsius() * 1.8 + 32.0
    }
}

impl Quantity for Temperature {
    const EXAMPLE: &'static str = "68 °F";

    fn called() -> &'static str {
        t!("quantity-called-a-temperature")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let (value, unit) = take(text).map_err(|problem| QuantityError::of::<Self>(text, problem))?;
        let read = match normal(unit).trim_start_matches(['°', 'º']).trim_start_matches("deg").trim_start() {
            "f" => Self::from_fahrenheit(value),
            "c" => Self::from_celsius(value),
            "" => return Err(QuantityError::of::<Self>(text, t!("quantity-the-unit-is-missing-f-or"))),
            other => return Err(QuantityError::of::<Self>(text, t!("quantity-is-not-f-or-c", other = other))),
        };
        if (-60.0..=70.0).contains(&read.to_celsius()) {
            Ok(read)
        } else {
            Err(QuantityError::of::<Self>(text, t!("quantity-no-field-is-that-cold-or")))
        }
    }

    fn show(&self, units: Units) -> String {
        match units {
            Units::Metric => format!("{} °C", show(self.to_celsius(), 1)),
            _ => format!("{} °F", show(self.to_fahrenheit(), 0)),
        }
    }
}

/// A difference between two temperatures, such as the Delta T of dry and wet bulb.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct TemperatureSpan(si::TemperatureInterval);

impl TemperatureSpan {
    /// Degrees Celsius, or kelvins.
    pub fn from_celsius(value: f64) -> Self {
        Self(si::TemperatureInterval::new::<uom::si::temperature_interval::kelvin>(value))
    }

    /// Degrees Fahrenheit.
    pub fn from_fahrenheit(value: f64) -> Self {
        Self::from_celsius(value / 1.8)
    }

    /// Degrees Celsius, or kelvins.
    pub fn to_celsius(self) -> f64 {
        self.0.value
    }

    /// Degrees Fahrenheit.
    pub fn to_fahrenheit(self) -> f64 {
        self.to_celsius() * 1.8
    }
}

impl Sub for Temperature {
    type Output = TemperatureSpan;
    fn sub(self, other: Self) -> TemperatureSpan {
        TemperatureSpan::from_celsius(self.0.value - other.0.value)
    }
}

impl Quantity for TemperatureSpan {
    const EXAMPLE: &'static str = "8 °C";

    fn called() -> &'static str {
        t!("quantity-called-a-difference-of-temperatures")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let (value, unit) = take(text).map_err(|problem| QuantityError::of::<Self>(text, problem))?;
        let read = match normal(unit).trim_start_matches(['°', 'º']).trim_start_matches("deg").trim_start() {
            "f" => Self::from_fahrenheit(value),
            "c" | "k" => Self::from_celsius(value),
            "" => return Err(QuantityError::of::<Self>(text, t!("quantity-the-unit-is-missing-f-or"))),
            other => return Err(QuantityError::of::<Self>(text, t!("quantity-is-not-f-or-c", other = other))),
        };
        if (0.0..=60.0).contains(&read.to_celsius()) {
            Ok(read)
        } else {
            Err(QuantityError::of::<Self>(text, t!("quantity-it-lies-between-0-and-60")))
        }
    }

    fn show(&self, units: Units) -> String {
        match units {
            Units::Metric => format!("{} °C", show(self.to_celsius(), 1)),
            _ => format!("{} °F", show(self.to_fahrenheit(), 1)),
        }
    }
}

/// Acidity of water, pH 0 to 14.
#[derive(Clone, Copy, Debug, PartialEq, PartialOrd)]
pub struct Acidity(f64);

impl Acidity {
    /// The pH.
    pub const fn ph(self) -> f64 {
        self.0
    }
}

impl Quantity for Acidity {
    const EXAMPLE: &'static str = "7.8";

    fn called() -> &'static str {
        t!("quantity-called-a-ph")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let bare = text.trim().trim_start_matches("pH").trim_start_matches("ph");
        let (value, rest) = take(bare).map_err(|problem| QuantityError::of::<Self>(text, problem))?;
        if !rest.trim().is_empty() {
            return Err(QuantityError::of::<Self>(text, t!("quantity-does-not-belong-to-a-ph", rest = rest.trim())));
        }
        if !(0.0..=14.0).contains(&value) {
            return Err(QuantityError::of::<Self>(text, t!("quantity-a-ph-lies-between-0-and")));
        }
        Ok(Self(value))
    }

    fn show(&self, _: Units) -> String {
        t!("quantity-ph", show = show(self.0, 2))
    }
}
