//! Rates, contents and amounts that come in several kinds: by volume or by mass, over ground or in the spray, of product
//! or of active ingredient.

use crate::language::t;
use serde::{Deserialize, Serialize};

use super::number::{show, show_significant, take};
use super::unit::{self, find, normal};
use super::{
    Area, CarrierRate, Density, Mass, MassPerArea, MassPerVolume, Quantity, QuantityError, Share, Units, Volume,
    VolumePerArea,
};

/// What the mass of an active is counted as.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash, Serialize, Deserialize)]
pub enum ActiveBasis {
    /// Acid equivalent, "ae".
    AcidEquivalent,
    /// Active ingredient, "ai".
    ActiveIngredient,
}

impl ActiveBasis {
    /// The abbreviation of the trade.
    pub const fn short(self) -> &'static str {
        match self {
            Self::AcidEquivalent => "ae",
            Self::ActiveIngredient => "ai",
        }
    }
}

/// A rate of use, on the basis on which it was typed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Rate {
    /// Volume of product over ground: "22 fl oz/ac".
    VolumePerArea(VolumePerArea),
    /// Mass of product over ground: "1.5 lb/ac".
    MassPerArea(MassPerArea),
    /// Bare ounces over ground, "0.75 oz/ac": a mass for a dry product; for a liquid it may mean fluid ounces.
    OuncesPerArea(MassPerArea),
    /// Volume of product in the finished spray: "0.25 % v/v", "1 qt/100 gal".
    VolumePerSpray(Share),
    /// Mass of product in the finished spray: "17 lb/100 gal".
    MassPerSpray(MassPerVolume),
    /// Bare ounces in the finished spray, as above.
    OuncesPerSpray(MassPerVolume),
    /// Mass of active over ground: "0.75 lb ae/ac".
    ActivePerArea(MassPerArea, ActiveBasis),
    /// Mass of active in the finished spray: "8.5 lb ai/100 gal".
    ActivePerSpray(MassPerVolume, ActiveBasis),
}

impl Rate {
    /// The kind in words, for messages that compare two rates.
    pub fn kind(&self) -> &'static str {
        match self {
            Self::VolumePerArea(_) => t!("quantity-a-volume-over-ground"),
            Self::MassPerArea(_) | Self::OuncesPerArea(_) => t!("quantity-a-mass-over-ground"),
            Self::VolumePerSpray(_) => t!("quantity-a-share-of-the-spray-volume"),
            Self::MassPerSpray(_) | Self::OuncesPerSpray(_) => t!("quantity-a-mass-in-the-spray-volume"),
            Self::ActivePerArea(..) => t!("quantity-a-mass-of-active-over-ground"),
            Self::ActivePerSpray(..) => t!("quantity-a-mass-of-active-in-the"),
        }
    }

    /// Whether it is a rate of nothing.
    pub fn is_zero(self) -> bool {
        match self {
            Self::VolumePerArea(rate) => rate.is_zero(),
            Self::MassPerArea(rate) | Self::OuncesPerArea(rate) | Self::ActivePerArea(rate, _) => rate.is_zero(),
            Self::VolumePerSpray(share) => share.is_zero(),
            Self::MassPerSpray(rate) | Self::OuncesPerSpray(rate) | Self::ActivePerSpray(rate, _) => rate.is_zero(),
        }
    }
}

fn split_basis(numerator: &str) -> (&str, Option<ActiveBasis>) {
    for (ending, basis) in [(" ae", ActiveBasis::AcidEquivalent), (" ai", ActiveBasis::ActiveIngredient)] {
        if let Some(bare) = numerator.strip_suffix(ending) {
            return (bare, Some(basis));
        }
    }
    (numerator, None)
}

/// What stands above the stroke.
enum Top {
    Volume(f64),
    Mass(f64, Option<ActiveBasis>),
    /// "oz" without a word on whether it is weighed.
    Ounces(f64),
}

/// Nobody sprays per less: a rate over next to nothing would be endless.
const LEAST_BELOW: f64 = 1e-6;

/// What stands below the stroke, in SI base units.
enum Bottom {
    Area(f64),
    Volume(f64),
    Mass(f64),
}

fn read_top(text: &str) -> Result<Top, String> {
    let (name, basis) = split_basis(text);
    if let Some(mass) = find(unit::MASS, name) {
        let bare = basis.is_none() && mass.names.contains(&"oz");
        return Ok(if bare { Top::Ounces(mass.factor) } else { Top::Mass(mass.factor, basis) });
    }
    match (find(unit::VOLUME, name), basis) {
        (Some(volume), None) => Ok(Top::Volume(volume.factor)),
        (Some(_), Some(_)) => Err(t!("quantity-an-active-is-weighed-so-cannot", text = text)),
        (None, _) if name.is_empty() => Err(t!("quantity-the-unit-before-the-stroke-is").to_owned()),
        (None, _) => Err(t!("quantity-is-not-a-unit-of-volume", name = name)),
    }
}

fn read_bottom(text: &str, top: &str) -> Result<Bottom, String> {
    if text == "a" {
        return if unit::is_metric(split_basis(top).0) {
            Err(t!("quantity-a-may-be-an-acre-or").to_owned())
        } else {
            Ok(Bottom::Area(super::factor::ACRE))
        };
    }
    if let Some(area) = find(unit::AREA, text) {
        return Ok(Bottom::Area(area.factor));
    }
    let (count, name) = take(text).map_or((1.0, text), |(count, rest)| (count, rest.trim()));
    if count < LEAST_BELOW {
        return Err(t!("quantity-below-the-stroke-is-nothing-or", text = text));
    }
    if let Some(area) = find(unit::AREA, name) {
        return Ok(Bottom::Area(count * area.factor));
    }
    if let Some(volume) = find(unit::VOLUME, name) {
        return Ok(Bottom::Volume(count * volume.factor));
    }
    if let Some(mass) = find(unit::MASS, name) {
        return Ok(Bottom::Mass(count * mass.factor));
    }
    Err(t!("quantity-is-not-an-area-or-a", text = text))
}

fn positive(text: &str) -> Result<(f64, String), String> {
    let (value, rest) = take(text)?;
    if value < 0.0 {
        return Err(t!("quantity-text-is-below-zero", text = text.trim()));
    }
    let unit = normal(rest);
    if unit.is_empty() {
        return Err(t!("quantity-the-unit-after-is-missing", show = show(value, 6)));
    }
    Ok((value, unit))
}

fn read_rate(text: &str) -> Result<Rate, String> {
    let (value, name) = positive(text)?;
    match name.as_str() {
        "%v/v" | "%by volume" | "%vol" | "%(v/v)" => return Ok(Rate::VolumePerSpray(Share::from_percent(value))),
        "%" => return Err(t!("quantity-a-bare-may-be-by-volume").to_owned()),
        "%w/v" => return Ok(Rate::MassPerSpray(MassPerVolume::from_grams_per_litre(value * 10.0))),
        "gpa" => {
            return Ok(Rate::VolumePerArea(VolumePerArea::from_base_units(value * super::factor::US_GALLON_PER_ACRE)));
        }
        _ => {}
    }
    let (top, bottom) =
        name.split_once('/').ok_or_else(|| t!("quantity-does-not-say-over-what-ground", name = name))?;
    Ok(match (read_top(top.trim())?, read_bottom(bottom.trim(), top.trim())?) {
        (Top::Ounces(top), Bottom::Area(bottom)) => {
            Rate::OuncesPerArea(MassPerArea::from_base_units(value * top / bottom))
        }
        (Top::Ounces(top), Bottom::Volume(bottom)) => {
            Rate::OuncesPerSpray(MassPerVolume::from_grams_per_litre(value * top / bottom))
        }
        (Top::Volume(top), Bottom::Area(bottom)) => {
            Rate::VolumePerArea(VolumePerArea::from_base_units(value * top / bottom))
        }
        (Top::Mass(top, None), Bottom::Area(bottom)) => {
            Rate::MassPerArea(MassPerArea::from_base_units(value * top / bottom))
        }
        (Top::Mass(top, Some(basis)), Bottom::Area(bottom)) => {
            Rate::ActivePerArea(MassPerArea::from_base_units(value * top / bottom), basis)
        }
        (Top::Volume(top), Bottom::Volume(bottom)) => Rate::VolumePerSpray(Share::from_fraction(value * top / bottom)),
        (Top::Mass(top, None), Bottom::Volume(bottom)) => {
            Rate::MassPerSpray(MassPerVolume::from_grams_per_litre(value * top / bottom))
        }
        (Top::Mass(top, Some(basis)), Bottom::Volume(bottom)) => {
            Rate::ActivePerSpray(MassPerVolume::from_grams_per_litre(value * top / bottom), basis)
        }
        (_, Bottom::Mass(_)) => return Err(t!("quantity-is-a-mass-a-rate-goes", bottom = bottom)),
    })
}

impl Quantity for Rate {
    const EXAMPLE: &'static str = "22 fl oz/ac";

    fn called() -> &'static str {
        t!("quantity-called-a-rate")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let rate = read_rate(text).map_err(|problem| QuantityError::of::<Self>(text, problem))?;
        match rate {
            Self::VolumePerSpray(share) if share.to_fraction() > 1.0 => {
                Err(QuantityError::of::<Self>(text, t!("quantity-that-is-more-product-than-spray")))
            }
            other => Ok(other),
        }
    }

    fn show(&self, units: Units) -> String {
        match *self {
            Self::VolumePerArea(rate) => rate.show(units),
            Self::MassPerArea(rate) | Self::OuncesPerArea(rate) => rate.show(units),
            Self::VolumePerSpray(share) => format!("{} % v/v", show(share.to_percent(), 4)),
            Self::MassPerSpray(content) | Self::OuncesPerSpray(content) => content.show(units),
            Self::ActivePerArea(rate, basis) => with_basis(&rate.show(units), basis),
            Self::ActivePerSpray(content, basis) => with_basis(&content.show(units), basis),
        }
    }
}

/// Puts "ae" or "ai" before the stroke: "0.75 lb ae/ac".
fn with_basis(shown: &str, basis: ActiveBasis) -> String {
    match shown.split_once('/') {
        Some((top, bottom)) => format!("{top} {}/{bottom}", basis.short()),
        None => format!("{shown} {}", basis.short()),
    }
}

/// How much active a product holds.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Concentration {
    /// Mass in a volume of product: "540 g/L", "4.5 lb ae/gal".
    MassPerVolume(MassPerVolume, Option<ActiveBasis>),
    /// Share of the product's mass: "75 % w/w".
    MassFraction(Share, Option<ActiveBasis>),
}

impl Concentration {
    /// The basis typed with the number, if any.
    pub const fn basis(&self) -> Option<ActiveBasis> {
        match *self {
            Self::MassPerVolume(_, basis) | Self::MassFraction(_, basis) => basis,
        }
    }

    /// As mass per volume, through the density where the content is a share of the mass.
    pub fn per_volume(&self, density: Option<Density>) -> Option<MassPerVolume> {
        match *self {
            Self::MassPerVolume(content, _) => Some(content),
            Self::MassFraction(share, _) => density.map(|density| {
                MassPerVolume::from_grams_per_litre(density.to_kilograms_per_cubic_metre() * share.to_fraction())
            }),
        }
    }

    /// As a share of the product's mass, through the density where the content is a mass per volume.
    pub fn per_mass(&self, density: Option<Density>) -> Option<Share> {
        match *self {
            Self::MassFraction(share, _) => Some(share),
            Self::MassPerVolume(content, _) => density.filter(|density| !density.is_zero()).map(|density| {
                Share::from_fraction(content.to_grams_per_litre() / density.to_kilograms_per_cubic_metre())
            }),
        }
    }
}

impl Quantity for Concentration {
    const EXAMPLE: &'static str = "540 g/L";

    fn called() -> &'static str {
        t!("quantity-called-a-content")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let error = |problem: String| QuantityError::of::<Self>(text, problem);
        let (value, name) = positive(text).map_err(error)?;
        let (whole, basis) = split_basis(&name);
        if matches!(whole, "%w/w" | "%by weight" | "%wt" | "%") {
            if value > 100.0 {
                return Err(error(t!("quantity-that-is-more-than-the-whole").to_owned()));
            }
            return Ok(Self::MassFraction(Share::from_percent(value), basis));
        }
        if whole == "%w/v" {
            return Ok(Self::MassPerVolume(MassPerVolume::from_grams_per_litre(value * 10.0), basis));
        }
        let (top, bottom) =
            whole.split_once('/').ok_or_else(|| error(t!("quantity-is-not-a-mass-in-a", name = name)))?;
        match (read_top(top.trim()).map_err(error)?, read_bottom(bottom.trim(), top.trim()).map_err(error)?) {
            (Top::Ounces(top), Bottom::Volume(bottom)) => {
                Ok(Self::MassPerVolume(MassPerVolume::from_grams_per_litre(value * top / bottom), basis))
            }
            (Top::Mass(top, inner), Bottom::Volume(bottom)) => {
                Ok(Self::MassPerVolume(MassPerVolume::from_grams_per_litre(value * top / bottom), inner.or(basis)))
            }
            (Top::Mass(top, inner), Bottom::Mass(bottom)) if value * top <= bottom => {
                Ok(Self::MassFraction(Share::from_fraction(value * top / bottom), inner.or(basis)))
            }
            (Top::Mass(..), Bottom::Mass(_)) => Err(error(t!("quantity-that-is-more-than-the-whole").to_owned())),
            _ => Err(error(t!("quantity-name-is-not-a-mass-in-a-volume-or", name = name))),
        }
    }

    fn show(&self, units: Units) -> String {
        let (text, basis) = match *self {
            Self::MassPerVolume(content, basis) => (
                match units {
                    Units::Metric => format!("{} g/L", show(content.to_grams_per_litre(), 1)),
                    Units::Imperial => {
                        format!("{} lb/imp gal", show(content.to_pounds_per_100_imperial_gallons() / 100.0, 2))
                    }
                    Units::UsCustomary => format!("{} lb/gal", show(content.to_pounds_per_us_gallon(), 2)),
                },
                basis,
            ),
            Self::MassFraction(share, basis) => (format!("{} % w/w", show(share.to_percent(), 2)), basis),
        };
        match basis {
            Some(basis) if text.contains("% w/w") => format!("{text} {}", basis.short()),
            Some(basis) => with_basis(&text, basis),
            None => text,
        }
    }
}

/// An amount of product: liquid by volume, dry by mass.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Amount {
    /// Liquid.
    Volume(Volume),
    /// Dry.
    Mass(Mass),
}

impl Amount {
    /// Whether there is none of it.
    pub fn is_zero(self) -> bool {
        match self {
            Self::Volume(volume) => volume.is_zero(),
            Self::Mass(mass) => mass.is_zero(),
        }
    }

    /// Times a plain number.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        match self {
            Self::Volume(volume) => Self::Volume(volume * factor),
            Self::Mass(mass) => Self::Mass(mass * factor),
        }
    }

    /// The sum, where both are of one kind.
    pub fn plus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => Some(Self::Volume(a + b)),
            (Self::Mass(a), Self::Mass(b)) => Some(Self::Mass(a + b)),
            _ => None,
        }
    }

    /// The difference, where both are of one kind; may be below zero.
    pub fn minus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => Some(Self::Volume(a - b)),
            (Self::Mass(a), Self::Mass(b)) => Some(Self::Mass(a - b)),
            _ => None,
        }
    }

    /// How many times `other` goes into it, where both are of one kind and `other` is not zero.
    pub fn ratio(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => a.ratio(b),
            (Self::Mass(a), Self::Mass(b)) => a.ratio(b),
            _ => None,
        }
    }

    /// Over an area; `None` where that is zero.
    pub fn spread(self, area: Area) -> Option<AmountPerArea> {
        match self {
            Self::Volume(volume) => volume.spread(area).map(AmountPerArea::Volume),
            Self::Mass(mass) => mass.over(area).map(AmountPerArea::Mass),
        }
    }
}

impl Quantity for Amount {
    const EXAMPLE: &'static str = "2.5 gal";

    fn called() -> &'static str {
        t!("quantity-called-an-amount")
    }

    fn parse(text: &str) -> Result<Self, QuantityError> {
        let volume = super::kind::parse_sum::<Self>(text, unit::VOLUME).map(Volume::from_cubic_metres);
        match volume {
            Ok(volume) => Ok(Self::Volume(volume)),
            Err(error) => super::kind::parse_sum::<Self>(text, unit::MASS)
                .map(|mass| Self::Mass(Mass::from_kilograms(mass)))
                .map_err(|_| error),
        }
    }

    fn show(&self, units: Units) -> String {
        super::practical::show_amount(*self, units)
    }
}

/// An amount of product over ground, whatever basis it was typed on.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum AmountPerArea {
    /// Liquid.
    Volume(VolumePerArea),
    /// Dry.
    Mass(MassPerArea),
}

impl AmountPerArea {
    /// Whether there is none of it.
    pub fn is_zero(self) -> bool {
        match self {
            Self::Volume(rate) => rate.is_zero(),
            Self::Mass(rate) => rate.is_zero(),
        }
    }

    /// The larger of two; the first where one is liquid and the other dry.
    #[must_use]
    pub fn larger(self, other: Self) -> Self {
        if other.exceeds(self) == Some(true) { other } else { self }
    }

    /// On an area.
    pub fn over(self, area: Area) -> Amount {
        match self {
            Self::Volume(rate) => Amount::Volume(rate * area),
            Self::Mass(rate) => Amount::Mass(rate * area),
        }
    }

    /// Larger than the limit by more than arithmetic error; `None` where one is liquid and the other dry.
    pub fn exceeds(self, limit: Self) -> Option<bool> {
        match (self, limit) {
            (Self::Volume(a), Self::Volume(b)) => Some(a.exceeds(b)),
            (Self::Mass(a), Self::Mass(b)) => Some(a.exceeds(b)),
            _ => None,
        }
    }

    /// The difference, where both are of one kind.
    pub fn minus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => Some(Self::Volume(a - b)),
            (Self::Mass(a), Self::Mass(b)) => Some(Self::Mass(a - b)),
            _ => None,
        }
    }

    /// Times a plain number.
    #[must_use]
    pub fn times(self, factor: f64) -> Self {
        match self {
            Self::Volume(rate) => Self::Volume(rate * factor),
            Self::Mass(rate) => Self::Mass(rate * factor),
        }
    }

    /// The smaller of two; the first where one is liquid and the other dry.
    #[must_use]
    pub fn smaller(self, other: Self) -> Self {
        if self.exceeds(other) == Some(true) { other } else { self }
    }

    /// The sum, where both are of one kind.
    pub fn plus(self, other: Self) -> Option<Self> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => Some(Self::Volume(a + b)),
            (Self::Mass(a), Self::Mass(b)) => Some(Self::Mass(a + b)),
            _ => None,
        }
    }

    /// How many times `other` goes into it, where both are of one kind and `other` is not zero.
    pub fn ratio(self, other: Self) -> Option<f64> {
        match (self, other) {
            (Self::Volume(a), Self::Volume(b)) => a.ratio(b),
            (Self::Mass(a), Self::Mass(b)) => a.ratio(b),
            _ => None,
        }
    }

    /// Prints as a rate.
    pub fn show(self, units: Units) -> String {
        match self {
            Self::Volume(rate) => rate.show(units),
            Self::Mass(rate) => rate.show(units),
        }
    }

    /// As a share of the spray at a carrier rate, for liquids.
    pub fn share_of(self, carrier: CarrierRate) -> Option<Share> {
        match self {
            Self::Volume(rate) if !carrier.is_zero() => {
                Some(Share::from_fraction(rate.to_litres_per_hectare() / carrier.to_litres_per_hectare()))
            }
            _ => None,
        }
    }
}

/// Prints a mass of active over ground with its basis: "0.75 lb ae/ac".
pub fn show_active(rate: MassPerArea, basis: ActiveBasis, units: Units) -> String {
    match units {
        Units::Metric => with_basis(&rate.show(units), basis),
        _ => format!("{} lb {}/ac", show_significant(rate.to_pounds_per_acre()), basis.short()),
    }
}
