//! Checks of calibrations, of rinsing and of the work in an hour, through the rooms that the desk asks.

use tankard_core::farm::{Calibration, Farm, Layout, Line, NozzleSet, Pass, Rated, Rig, Test};
use tankard_core::finding::Level;
use tankard_core::plan::plan;
use tankard_core::quantity::{Amount, AsTyped, CarrierRate, Duration, Flow, Length, Quantity, Share, Speed, Volume};
use tankard_core::rig::calibration::{Calibrated, acre_course, judge};
use tankard_core::rig::rinse::{left, rinses_to};

use super::Verdict;
use super::planned::{self, PASS, typed};
use super::quantities::{area_in, parse};
use crate::{Row, close};

const RIG: &str = "rig";

fn no_unit(unit: &str) -> String {
    format!("no unit is \"{unit}\" here")
}

fn length_in(length: Length, unit: &str) -> Result<f64, String> {
    match unit {
        "ft" => Ok(length.to_feet()),
        "m" => Ok(length.to_metres()),
        _ => Err(no_unit(unit)),
    }
}

fn speed_in(speed: Speed, unit: &str) -> Result<f64, String> {
    match unit {
        "mph" => Ok(speed.to_miles_per_hour()),
        "km/h" => Ok(speed.to_kilometres_per_hour()),
        _ => Err(no_unit(unit)),
    }
}

fn share_in(share: Share, unit: &str) -> Result<f64, String> {
    match unit {
        "%" => Ok(share.to_percent()),
        "ppm" => Ok(share.to_fraction() * 1e6),
        _ => Err(no_unit(unit)),
    }
}

/// The course of the 1/128-acre method for a width.
pub(super) fn acre(row: &Row) -> Result<Verdict, String> {
    let course = acre_course(parse(&row.input)?).ok_or("there is no such course")?;
    close(row, length_in(course, &row.unit)?)
}

fn list<Q: Quantity>(text: &str) -> Result<Vec<Option<AsTyped<Q>>>, String> {
    text.split(',').map(str::trim).map(|one| if one.is_empty() { Ok(None) } else { typed(one).map(Some) }).collect()
}

fn maybe<Q: Quantity>(row: &Row, name: &str) -> Result<Option<AsTyped<Q>>, String> {
    row.with(name).map(typed).transpose()
}

fn layout(row: &Row) -> Result<Option<Layout>, String> {
    let nozzles = || row.with("nozzles").map_or(Ok(1), |count| count.parse().map_err(|_| "no number".to_owned()));
    Ok(match (maybe(row, "spacing")?, maybe(row, "band")?, maybe(row, "rows")?) {
        (Some(spacing), ..) => Some(Layout::Broadcast { spacing }),
        (None, Some(width), Some(rows)) => Some(Layout::Band { width, rows, nozzles: nozzles()? }),
        (None, None, Some(rows)) => Some(Layout::Directed { rows, nozzles: nozzles()? }),
        _ => None,
    })
}

/// A rig with one nozzle set, as the row describes it.
fn rig(row: &Row) -> Result<Rig, String> {
    let mut rig = Rig::new("Rig", typed(row.with("tank").unwrap_or("1000 gal"))?);
    let rated = match (maybe(row, "rated")?, maybe(row, "at")?) {
        (Some(flow), Some(at)) => Some(Rated { flow, at }),
        _ => None,
    };
    let set = NozzleSet { name: "Set".to_owned(), rated, layout: layout(row)?, ..NozzleSet::default() };
    rig.sets.insert("set".to_owned(), set);
    Ok(rig)
}

fn judged(row: &Row, test: Test) -> Result<Calibrated, String> {
    let mut farm = Farm::new("Reference");
    farm.rigs.insert(RIG.to_owned(), rig(row)?);
    let date = serde_json::from_str("\"2031-04-02\"").map_err(|error| error.to_string())?;
    let pressure = maybe(row, "pressure")?;
    let calibration = Calibration { date, set: String::new(), by: String::new(), pressure, test, note: String::new() };
    Ok(judge(&farm, RIG, &calibration))
}

/// A calibration of the kind `test`, and what it comes to.
pub(super) fn calibrated(row: &Row) -> Result<Verdict, String> {
    let test = match row.need("test")? {
        "catch" => Test::Catch { time: typed(row.need("time")?)?, caught: list(&row.input)? },
        "acre" => Test::AcreFraction {
            time: typed(row.need("time")?)?,
            caught: list(&row.input)?.into_iter().flatten().collect(),
        },
        "course" => Test::Course {
            length: typed(&row.input)?,
            times: list(row.need("times")?)?.into_iter().flatten().collect(),
            shown: maybe(row, "shown")?,
        },
        "tank" => {
            Test::TankLevel { area: typed(row.need("area")?)?, used: typed(&row.input)?, set_to: maybe(row, "set_to")? }
        }
        other => return Err(format!("there is no test \"{other}\"")),
    };
    let found = judged(row, test)?;
    let unit = row.unit.as_str();
    let nothing = || "it was not found".to_owned();
    let text = |found: String| Ok(Verdict { agrees: found == row.expected, found });
    match row.need("ask")? {
        "flow" => {
            let flow: Flow = found.flow.ok_or_else(nothing)?;
            close(
                row,
                match unit {
                    "gal/min" => flow.to_us_gallons_per_minute(),
                    "L/min" => flow.to_litres_per_minute(),
                    _ => return Err(no_unit(unit)),
                },
            )
        }
        "carrier" => {
            let carrier: CarrierRate = found.carrier.ok_or_else(nothing)?;
            close(
                row,
                match unit {
                    "gal/ac" => carrier.to_us_gallons_per_acre(),
                    "L/ha" => carrier.to_litres_per_hectare(),
                    _ => return Err(no_unit(unit)),
                },
            )
        }
        "speed" => close(row, speed_in(found.speed.ok_or_else(nothing)?, unit)?),
        "new" => close(row, share_in(found.against_new.ok_or_else(nothing)?, unit)?),
        "typed" => close(row, share_in(found.against_typed.ok_or_else(nothing)?, unit)?),
        // Of the first nozzle.
        "state" => text(found.nozzles.first().ok_or_else(nothing)?.state.name().to_owned()),
        // Whose word the first Check is; nothing where there is none.
        "basis" => text(
            found
                .findings
                .iter()
                .find(|finding| finding.level == Level::Check)
                .map_or("", |finding| finding.basis.source())
                .to_owned(),
        ),
        other => Err(format!("nothing is asked by \"{other}\"")),
    }
}

/// The seconds that a course takes at a speed, by the speed that a minute over it comes to.
pub(super) fn timed(row: &Row) -> Result<Verdict, String> {
    let minute: AsTyped<Duration> = typed("60 s")?;
    let test = Test::Course { length: typed(&row.input)?, times: vec![minute.clone()], shown: None };
    let in_a_minute = judged(row, test)?.speed.ok_or("there is no speed")?;
    let times = in_a_minute.ratio(parse(row.need("speed")?)?).ok_or("the speed is nothing")?;
    close(row, minute.to_seconds() * times)
}

/// Ground in an hour, through the plan.
pub(super) fn hourly(row: &Row) -> Result<Verdict, String> {
    let mut farm = planned::farm(row)?;
    let rig = farm.rigs.get_mut(RIG).ok_or("no rig")?;
    rig.boom = Some(typed(&row.input)?);
    rig.speed = Some(typed(row.need("speed")?)?);
    rig.efficiency = Some(typed(row.with("efficiency").unwrap_or("100 %"))?);
    let work = plan(&farm, PASS).and_then(|plan| plan.work).ok_or("there is no work")?;
    close(row, area_in(work.in_an_hour, &row.unit)?)
}

/// What some rinses leave.
pub(super) fn rinse(row: &Row) -> Result<Verdict, String> {
    let number = row.need("rinses")?.parse().map_err(|_| "no number of rinses".to_owned())?;
    let left = left(parse(&row.input)?, parse(row.need("each")?)?, number).ok_or("nothing is diluted")?;
    close(row, share_in(left, &row.unit)?)
}

/// How many rinses reach a share.
pub(super) fn rinses(row: &Row) -> Result<Verdict, String> {
    let number = rinses_to(parse(&row.input)?, parse(row.need("each")?)?, parse(row.need("left")?)?)
        .ok_or("no number of rinses does it")?;
    close(row, f64::from(number))
}

/// The rinse plan of a pass: a way by its source, or the ground for the last of the spray.
pub(super) fn rinse_way(row: &Row) -> Result<Verdict, String> {
    let mut farm = planned::farm(row)?;
    let rig = farm.rigs.get_mut(RIG).ok_or("no rig")?;
    rig.residual = Some(typed(&row.input)?);
    rig.clean_water = maybe::<Volume>(row, "clean_water")?;
    let plan = plan(&farm, PASS).and_then(|plan| plan.rinse).ok_or("rinsing is not planned")?;
    if row.need("ask")? == "ground" {
        return close(row, area_in(plan.last_ground.ok_or("no ground")?, &row.unit)?);
    }
    let source = row.need("source")?;
    let way = plan.ways.iter().find(|way| way.basis.source().contains(source)).ok_or("no such way")?;
    match row.need("ask")? {
        "each" => close(row, way.each.to_us_gallons()),
        "rinses" => close(row, f64::from(way.rinses)),
        "left" => close(row, share_in(way.left, &row.unit)?),
        other => Err(format!("nothing is asked by \"{other}\"")),
    }
}

/// A product on an acre of crop with a nozzle set that sprays bands.
pub(super) fn banded(row: &Row) -> Result<Verdict, String> {
    let mut farm = planned::farm(row)?;
    farm.rigs.insert(RIG.to_owned(), rig(row)?);
    farm.products.insert("dry".to_owned(), planned::product(row)?);
    let pass: &mut Pass = planned::pass(&mut farm)?;
    pass.mix.push(Line::new("dry", typed(&row.input)?));
    let plan = planned::planned(&farm)?;
    match plan.lines.first().ok_or("no line")?.demand {
        Amount::Mass(mass) => close(row, mass.to_pounds()),
        Amount::Volume(_) => Err("it is liquid".to_owned()),
    }
}
