//! Checks of nozzles: flow, pressure, sizes, carriers other than water, bands.

use tankard_core::farm::{Formulation, Layout, Line, NozzleSet, Product, ProductKind, Rated};
use tankard_core::quantity::{CarrierRate, Density, Flow, Length, Pressure, Speed};
use tankard_core::rig::flow::{self, Law};
use tankard_core::rig::{density, nozzle};

use super::Verdict;
use super::planned::{farm, pass, planned, typed};
use super::quantities::{amount_in, parse};
use crate::{Row, close};

fn flow_in(flow: Flow, unit: &str) -> Result<f64, String> {
    Ok(match unit {
        "gal/min" => flow.to_us_gallons_per_minute(),
        "fl oz/min" => flow.to_us_gallons_per_minute() * 128.0,
        "L/min" => flow.to_litres_per_minute(),
        _ => return Err(format!("a flow has no unit \"{unit}\" here")),
    })
}

/// What a nozzle must give for the row's volume over ground.
pub(super) fn needed(row: &Row) -> Result<Verdict, String> {
    let (speed, width): (Speed, Length) = (parse(row.need("speed")?)?, parse(row.need("width")?)?);
    close(row, flow_in(flow::needed(parse(&row.input)?, speed, width), &row.unit)?)
}

/// The volume over ground that the row's flow makes.
pub(super) fn volume(row: &Row) -> Result<Verdict, String> {
    let (speed, width): (Speed, Length) = (parse(row.need("speed")?)?, parse(row.need("width")?)?);
    let carrier: CarrierRate = flow::carrier(parse(&row.input)?, speed, width).ok_or("there is no such volume")?;
    close(
        row,
        match row.unit.as_str() {
            "gal/ac" => carrier.to_us_gallons_per_acre(),
            "L/ha" => carrier.to_litres_per_hectare(),
            other => return Err(format!("a volume over ground has no unit \"{other}\" here")),
        },
    )
}

/// The speed at which the row's flow makes a volume over ground.
pub(super) fn speed(row: &Row) -> Result<Verdict, String> {
    let speed = flow::speed(parse(&row.input)?, parse(row.need("carrier")?)?, parse(row.need("width")?)?)
        .ok_or("there is no such speed")?;
    close(row, speed.to_miles_per_hour())
}

fn law(flow: &str, at: &str) -> Result<Law, String> {
    Law::new(parse(flow)?, parse(at)?).ok_or_else(|| "a flow or pressure of nothing".to_owned())
}

/// The flow at another pressure.
pub(super) fn at_pressure(row: &Row) -> Result<Verdict, String> {
    let law = law(&row.input, row.need("at")?)?;
    close(row, flow_in(law.flow(parse(row.need("to")?)?), &row.unit)?)
}

/// The pressure for another flow.
pub(super) fn pressure(row: &Row) -> Result<Verdict, String> {
    let law = law(row.need("rated")?, row.need("at")?)?;
    close(row, law.pressure(parse(&row.input)?).to_psi())
}

fn size(row: &Row) -> Result<&'static nozzle::Size, String> {
    nozzle::size(&row.input).ok_or_else(|| format!("there is no size {}", row.input))
}

fn rated(rated: &Rated, to: Pressure) -> Result<Flow, String> {
    Ok(Law::new(rated.flow.value(), rated.at.value()).ok_or("the size gives nothing")?.flow(to))
}

/// What a size gives at a pressure, by the one definition or the other.
pub(super) fn size_flow(row: &Row) -> Result<Verdict, String> {
    let size = size(row)?;
    let defined = match row.need("as")? {
        "us" => &size.us,
        "metric" => &size.metric,
        other => return Err(format!("\"{other}\" is no definition")),
    };
    close(row, flow_in(rated(defined, parse(row.need("to")?)?)?, &row.unit)?)
}

/// The colour of a size.
pub(super) fn colour(row: &Row) -> Result<Verdict, String> {
    let found = size(row)?.colour.clone();
    Ok(Verdict { agrees: found == row.expected, found })
}

/// How far the US definition of a size lies from the metric one.
pub(super) fn apart(row: &Row) -> Result<Verdict, String> {
    let size = size(row)?;
    let at = Pressure::from_bar(3.0);
    let ratio = rated(&size.us, at)?.ratio(rated(&size.metric, at)?).ok_or("the size gives nothing")?;
    close(row, (ratio - 1.0) * 100.0)
}

/// The factor of a carrier by its density.
pub(super) fn carrier_factor(row: &Row) -> Result<Verdict, String> {
    let density: Density = parse(&row.input)?;
    close(row, density::factor(density).ok_or("there is no such factor")?)
}

/// What a plan puts of a dry product on the row's crop ground, sprayed in bands.
pub(super) fn band(row: &Row) -> Result<Verdict, String> {
    let mut farm = farm(row)?;
    let layout = Layout::Band { width: typed(row.need("band")?)?, rows: typed(row.need("rows")?)?, nozzles: 1 };
    let rig = farm.rigs.first_mut().ok_or("the farm has no rig")?.1;
    rig.sets.insert("set".to_owned(), NozzleSet { layout: Some(layout), ..NozzleSet::default() });
    farm.products.insert("product".to_owned(), Product::new("Product", ProductKind::Herbicide, Formulation::WG));
    pass(&mut farm)?.mix.push(Line::new("product", typed(&row.input)?));
    let plan = planned(&farm)?;
    let line = plan.lines.first().ok_or("the product is not planned")?;
    close(row, amount_in(line.demand, &row.unit)?)
}
