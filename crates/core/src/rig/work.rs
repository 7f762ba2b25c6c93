//! How much ground a rig covers: spraying, filling, road.
//!
//! # Units
//! The pass takes the time to spray, and for each load its new spray ÷ the flow of the water, the rig's stop and so much for each
//! product, and the road ÷ the speed on the road. What is not typed counts as nothing and is named.

use crate::farm::{CarrierKind, Farm, Fills, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::listed;
use crate::loads::Load;
use crate::plan::PlannedField;
use crate::quantity::{Area, AsTyped, Duration, Length, Quantity, Units, Volume};
use crate::working::Working;

/// The time that a pass takes, as far as it can be told.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// Spraying, turns included.
    pub spraying: Duration,
    /// Filling each load, beside the loads of the plan; empty where the water's flow is not typed.
    pub fills: Vec<Duration>,
    /// Road: out, home, and to the yard for filling, as far as it is typed; between two fields it is not known.
    pub road: Option<Duration>,
    /// All of it that is known.
    pub total: Duration,
    /// What is not in it, in words.
    pub lacks: Vec<String>,
    /// Ground covered in an hour of spraying.
    pub in_an_hour: Area,
    /// Loads in an hour, filling and road included.
    pub loads_an_hour: Option<f64>,
}

/// The time that a pass takes.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn reckon(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    loads: &[Load],
    spraying: Option<Duration>,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Option<Work> {
    let rig = farm.rigs.get(&pass.rig)?;
    let spraying = spraying?;
    let in_an_hour = in_an_hour(farm, pass, rig)?;
    let mut lacks = Vec::new();
    let fills = fills(farm, pass, rig, loads, &mut lacks);
    let road = road(farm, pass, rig, fields, loads, &mut lacks);
    let filling: Duration = fills.iter().copied().sum();
    let total = spraying + filling + road.unwrap_or(Duration::ZERO);
    let number = f64::from(u32::try_from(loads.len()).unwrap_or(u32::MAX));
    let loads_an_hour = (!fills.is_empty() && road.is_some() && !total.is_zero()).then(|| number / total.to_hours());
    let work = Work { spraying, fills, road, total, lacks, in_an_hour, loads_an_hour };
    workings.push(working(&work, filling, farm.units));
    // A farm that types none of it does not ask for it, and the road between fields cannot be typed.
    let missing: Vec<String> = work.lacks.iter().filter(|lack| *lack != BETWEEN).cloned().collect();
    if !missing.is_empty() && asked_for(farm, pass, rig) {
        findings.push(
            Finding::note(
                Subject::Pass(pass_id.clone()),
                format!("The time for the pass does not count {}", listed(&missing)),
                Basis::Arithmetic,
            )
            .hint("Type what is missing with the rig, the water and the fields."),
        );
    }
    Some(work)
}

/// What no length on the farm tells.
const BETWEEN: &str = "the road from field to field";

/// Speed × working width × field efficiency, in an hour.
fn in_an_hour(farm: &Farm, pass: &Pass, rig: &Rig) -> Option<Area> {
    let speed = pass.speed_in(farm)?.to_metres_per_second();
    let width = rig.boom.as_ref()?.to_metres();
    let efficiency = rig.efficiency.as_ref()?.to_fraction();
    Some(Area::from_square_metres(speed * width * efficiency * Duration::from_hours(1.0).to_seconds()))
}

/// The time of each filling: the whole load at the flow of the water, the stop, and each product. The products run in while
/// water runs, so the load's volume is a little on the safe side.
fn fills(farm: &Farm, pass: &Pass, rig: &Rig, loads: &[Load], lacks: &mut Vec<String>) -> Vec<Duration> {
    if loads.is_empty() {
        return Vec::new();
    }
    let flow = match pass.carrier_kind {
        CarrierKind::Water => farm.waters.get(&pass.water).and_then(|water| water.flow.as_ref()).map(AsTyped::value),
        // The flow typed is that of a water.
        CarrierKind::UreaAmmoniumNitrate | CarrierKind::LiquidFertilizer => None,
    };
    let Some(flow) = flow.filter(|flow| !flow.is_zero()) else {
        lacks.push(match pass.carrier_kind {
            CarrierKind::Water => "filling (the flow of the water is not typed)".to_owned(),
            other => format!("filling (the flow of the {} is not known)", other.name()),
        });
        return Vec::new();
    };
    if rig.stop.is_none() {
        lacks.push("the stop for each filling".to_owned());
    }
    if rig.addition.is_none() {
        lacks.push("adding the products".to_owned());
    }
    let time = |typed: &Option<AsTyped<Duration>>| typed.as_ref().map_or(Duration::ZERO, AsTyped::value);
    let (stop, addition) = (time(&rig.stop), time(&rig.addition));
    loads
        .iter()
        .map(|load| {
            let new = load.new_spray();
            if !new.exceeds(Volume::ZERO) {
                return Duration::ZERO;
            }
            let running = new.to_cubic_metres() / flow.to_cubic_metres_per_second();
            let products = f64::from(u32::try_from(load.items.len()).unwrap_or(u32::MAX));
            Duration::from_seconds(running) + stop + addition * products
        })
        .collect()
}

/// The time on the road: out to the first field and home from the last; where the tank is filled in the yard, so for each load.
fn road(
    farm: &Farm,
    pass: &Pass,
    rig: &Rig,
    fields: &[PlannedField],
    loads: &[Load],
    lacks: &mut Vec<String>,
) -> Option<Duration> {
    let ends = |ids: &[&Id]| -> Option<(Id, Id)> { Some(((*ids.first()?).clone(), (*ids.last()?).clone())) };
    let (trips, between): (Vec<(Id, Id)>, bool) = match pass.fills {
        Fills::AtField => {
            let ids: Vec<&Id> = fields.iter().map(|field| &field.field).collect();
            (ends(&ids).into_iter().collect(), ids.len() > 1)
        }
        Fills::AtYard => {
            let of_load = |load: &Load| ends(&load.fields.iter().map(|(id, _)| id).collect::<Vec<_>>());
            (loads.iter().filter_map(of_load).collect(), loads.iter().any(|load| load.fields.len() > 1))
        }
    };
    if trips.is_empty() {
        return None;
    }
    if between {
        lacks.push(BETWEEN.to_owned());
    }
    let Some(speed) = rig.road_speed.as_ref().map(AsTyped::value).filter(|speed| !speed.is_zero()) else {
        lacks.push("the road (its speed is not typed)".to_owned());
        return None;
    };
    let mut unknown: Vec<String> = Vec::new();
    let mut length = Length::ZERO;
    let mut known = false;
    for id in trips.iter().flat_map(|(out, home)| [out, home]) {
        let Some(field) = farm.fields.get(id) else { continue };
        match &field.road {
            Some(road) => {
                length = length + road.value();
                known = true;
            }
            None if unknown.contains(&field.name) => {}
            None => unknown.push(field.name.clone()),
        }
    }
    if !unknown.is_empty() {
        lacks.push(format!("the road to {}", listed(&unknown)));
    }
    known.then(|| Duration::from_seconds(length.to_metres() / speed.to_metres_per_second()))
}

/// Whether anything of filling or road is typed.
fn asked_for(farm: &Farm, pass: &Pass, rig: &Rig) -> bool {
    rig.stop.is_some()
        || rig.addition.is_some()
        || rig.road_speed.is_some()
        || farm.waters.get(&pass.water).is_some_and(|water| water.flow.is_some())
        || pass.fields.iter().any(|id| farm.fields.get(id).is_some_and(|field| field.road.is_some()))
}

fn working(work: &Work, filling: Duration, units: Units) -> Working {
    let not_known = || "not known".to_owned();
    let mut working = Working::new("Time for the pass")
        .step("spraying, turns included", work.spraying.show(units))
        .step(
            format!("filling {} load{}", work.fills.len(), if work.fills.len() == 1 { "" } else { "s" }),
            if work.fills.is_empty() { not_known() } else { filling.show(units) },
        )
        .step("road", work.road.map_or_else(not_known, |road| road.show(units)))
        .step("in all", work.total.show(units))
        .step("ground in an hour of spraying", work.in_an_hour.show(units));
    if !work.lacks.is_empty() {
        working = working.step(format!("not counted: {}", listed(&work.lacks)), "–");
    }
    working
}
