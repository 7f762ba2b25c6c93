//! One row of a spreadsheet, its cells read for what they are to be.

use jiff::civil::{Date, Time};
use tankard_core::farm::Product;
use tankard_core::quantity::{Amount, AmountPerArea, Area, AsTyped, CarrierRate, Quantity, Rate, Volume};
use tankard_core::t;

use super::day::{Written, no_day};
use super::figure::plain;
use super::holds::Holds;
use super::mapping::Mapping;
use crate::table::when::{clock, short};
use crate::table::{Row, is_bare, nothing};

/// The spray volume of a row.
#[derive(Debug)]
pub(super) struct Spray {
    pub(super) volume: Volume,
    /// Its text; none where it is reckoned over the ground.
    pub(super) typed: Option<AsTyped<Volume>>,
}

impl PartialEq for Spray {
    fn eq(&self, other: &Self) -> bool {
        self.volume.ratio(other.volume).is_none_or(|ratio| (ratio - 1.0).abs() < 1e-9)
    }
}

/// The cells of a row by what they hold.
#[derive(Clone, Copy)]
pub(super) struct Cells<'a> {
    pub(super) row: &'a Row,
    pub(super) mapping: &'a Mapping,
}

impl<'a> Cells<'a> {
    /// What stands in the column that holds something; empty where nothing does.
    pub(super) fn text(&self, holds: Holds) -> &'a str {
        let cell = self.mapping.of(holds).map_or("", |take| self.row.cell(take.column));
        if nothing(cell).is_some() { "" } else { cell }
    }

    /// The day, and the time written with it.
    pub(super) fn day(&self) -> Result<(Date, Option<Time>), String> {
        let cell = self.text(Holds::Date);
        Written::of(cell).ok_or_else(|| no_day(cell))?.read(self.mapping.days, cell)
    }

    /// A time of day.
    pub(super) fn time(&self, holds: Holds) -> Result<Option<Time>, String> {
        let cell = self.text(holds);
        if cell.is_empty() { Ok(None) } else { clock(cell).map(Some).map_err(|why| format!("{}: {why}", holds.name())) }
    }

    /// A figure with its unit, from the cell, the column of units or the mapping, in this order.
    pub(super) fn quantity<Q: Quantity>(&self, holds: Holds) -> Result<Option<AsTyped<Q>>, String> {
        let Some(text) = self.with_unit(holds)? else { return Ok(None) };
        AsTyped::parse(&text).map(Some).map_err(|error| format!("{}: {error}", holds.name()))
    }

    fn with_unit(&self, holds: Holds) -> Result<Option<String>, String> {
        let cell = self.text(holds);
        if cell.is_empty() {
            return Ok(None);
        }
        let figure = plain(cell, self.mapping.comma).map_err(|why| format!("{} {why}", holds.name()))?;
        if !is_bare(&figure) {
            return Ok(Some(self.over_ground(holds, figure)));
        }
        let beside = holds.unit_column().map_or("", |column| self.text(column));
        let unit =
            if beside.is_empty() { self.mapping.of(holds).map_or("", |take| take.unit.as_str()) } else { beside };
        if unit.is_empty() {
            return Err(t!("file-has-no-unit", holds = holds.name(), cell = short(cell)));
        }
        Ok(Some(self.over_ground(holds, format!("{figure} {unit}"))))
    }

    /// A figure in a column over ground, with the ground behind a unit that says only how much.
    fn over_ground(&self, holds: Holds, figure: String) -> String {
        let over = self.mapping.of(holds).and_then(|take| self.mapping.over(take.column));
        let is_half = match holds {
            Holds::Rate => Rate::parse(&figure).is_err() && Amount::parse(&figure).is_ok(),
            Holds::Carrier => CarrierRate::parse(&figure).is_err() && Volume::parse(&figure).is_ok(),
            _ => false,
        };
        match over {
            Some(over) if is_half => format!("{figure}{over}"),
            _ => figure,
        }
    }

    /// Whether a figure waits for a unit.
    pub(super) fn lacks_unit(&self, holds: Holds) -> bool {
        let cell = self.text(holds);
        let Some(take) = self.mapping.of(holds).filter(|take| take.unit.is_empty() && !cell.is_empty()) else {
            return false;
        };
        let beside = take.holds.unit_column().is_some_and(|column| !self.text(column).is_empty());
        !beside && plain(cell, self.mapping.comma).is_ok_and(|figure| is_bare(&figure))
    }

    /// The spray volume: as it stands, or over the ground.
    pub(super) fn spray(&self, area: Option<Area>) -> Result<Option<Spray>, String> {
        if let Some(typed) = self.quantity::<Volume>(Holds::Volume)? {
            return Ok(Some(Spray { volume: typed.value(), typed: Some(typed) }));
        }
        let over: Option<AsTyped<CarrierRate>> = self.quantity(Holds::Carrier)?;
        Ok(over.zip(area).map(|(over, area)| Spray { volume: over.value() * area, typed: None }))
    }

    /// The amount that stands there, if any.
    pub(super) fn amount(&self, product: Option<&Product>) -> Result<Option<AsTyped<Amount>>, String> {
        let Some(amount) = self.quantity::<Amount>(Holds::Amount)? else { return Ok(None) };
        let unit = amount.text().trim_start_matches(|c: char| !c.is_alphabetic()).trim().to_lowercase();
        if matches!(unit.as_str(), "oz" | "ounce" | "ounces") && product.is_none_or(Product::is_liquid) {
            return Err(t!("file-amount-may-be-fluid-ounces-or", amount = amount));
        }
        Ok(Some(amount))
    }

    /// The amount that the rate comes to, where there is a rate.
    pub(super) fn amount_by_rate(
        &self,
        product: Option<&Product>,
        area: Option<Area>,
        volume: Option<Volume>,
    ) -> Result<Option<Amount>, String> {
        let Some(rate) = self.quantity::<Rate>(Holds::Rate)? else { return Ok(None) };
        let ground = || area.filter(|area| !area.is_zero()).ok_or(t!("file-the-rate-has-no-area-to", rate = rate));
        let spray = || volume.ok_or(t!("file-the-rate-has-no-spray-volume", rate = rate));
        let is_dry = product.is_some_and(|product| !product.is_liquid());
        Ok(Some(match rate.value() {
            Rate::VolumePerArea(rate) => AmountPerArea::Volume(rate).over(ground()?),
            Rate::MassPerArea(rate) => AmountPerArea::Mass(rate).over(ground()?),
            Rate::OuncesPerArea(rate) if is_dry => AmountPerArea::Mass(rate).over(ground()?),
            Rate::VolumePerSpray(share) => Amount::Volume(spray()? * share.to_fraction()),
            Rate::MassPerSpray(content) => Amount::Mass(content * spray()?),
            Rate::OuncesPerSpray(content) if is_dry => Amount::Mass(content * spray()?),
            Rate::OuncesPerArea(_) | Rate::OuncesPerSpray(_) => {
                return Err(t!("file-the-rate-may-be-fluid-ounces", rate = rate));
            }
            Rate::ActivePerArea(..) | Rate::ActivePerSpray(..) => {
                return Err(t!("file-the-rate-is-of-an-active", rate = rate));
            }
        }))
    }
}
