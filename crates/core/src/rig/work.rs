//! How much ground a rig covers: spraying, filling, road.
//!
//! # Units
//! The pass takes the time to spray, and for each load its new spray ÷ the flow of the water, the rig's stop and so much for each
//! product, and the road ÷ the speed on the road. What is not typed counts as nothing and is named.

use crate::day::road::{self, Place};
use crate::farm::{CarrierKind, Farm, Fills, Id, Pass, Rig};
use crate::finding::{Basis, Finding, Subject};
use crate::label::{listed, once};
use crate::language::t;
use crate::loads::Load;
use crate::plan::PlannedField;
use crate::quantity::{Area, AsTyped, Duration, Quantity, Units, Volume};
use crate::working::Working;

/// The time that a pass takes, as far as it can be told.
#[derive(Clone, Debug, PartialEq)]
pub struct Work {
    /// Spraying, turns included.
    pub spraying: Duration,
    /// Filling each load, beside the loads of the plan; empty where the water's flow is not typed.
    pub fills: Vec<Duration>,
    /// Road: out, home, to the yard for filling, and from field to field, as far as it is known.
    pub road: Option<Duration>,
    /// Of the road, the way from the yard to where the pass begins; a pass that fills in the yard begins there.
    pub out: Duration,
    /// Of the road, the way home from where it ends.
    pub home: Duration,
    /// All of it that is known.
    pub total: Duration,
    /// What is not in it, in words.
    pub lacks: Vec<String>,
    /// Ground covered in an hour of spraying.
    pub in_an_hour: Area,
    /// Loads in an hour, filling and road included.
    pub loads_an_hour: Option<f64>,
}

impl Work {
    /// What `total` counts beside spraying, in words; empty for nothing.
    pub fn counted(&self) -> &'static str {
        match (self.fills.is_empty(), self.road.is_none()) {
            (false, false) => t!("rig-filling-and-road"),
            (false, true) => t!("rig-filling"),
            (true, false) => t!("rig-road"),
            (true, true) => "",
        }
    }
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
    let driven = road(farm, pass, rig, fields, loads, &mut lacks);
    let (road, out, home) =
        driven.map_or((None, Duration::ZERO, Duration::ZERO), |(all, out, home)| (Some(all), out, home));
    let filling: Duration = fills.iter().copied().sum();
    let total = spraying + filling + road.unwrap_or(Duration::ZERO);
    let number = f64::from(u32::try_from(loads.len()).unwrap_or(u32::MAX));
    let loads_an_hour = (!fills.is_empty() && road.is_some() && !total.is_zero()).then(|| number / total.to_hours());
    let work = Work { spraying, fills, road, out, home, total, lacks, in_an_hour, loads_an_hour };
    workings.push(working(&work, filling, farm.units));
    // A farm that types none of it does not ask for it.
    if !work.lacks.is_empty() && asked_for(farm, pass, rig) {
        findings.push(
            Finding::note(
                Subject::Pass(pass_id.clone()),
                t!("rig-the-time-for-the-pass-does", lacks = listed(&work.lacks)),
                Basis::Arithmetic,
            )
            .hint(t!("rig-type-what-is-missing-with-the")),
        );
    }
    Some(work)
}

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
            CarrierKind::Water => t!("rig-filling-the-flow-of-the-water").to_owned(),
            other => t!("rig-filling-the-flow-of-the-is", other = other.name()),
        });
        return Vec::new();
    };
    if rig.stop.is_none() {
        lacks.push(t!("rig-the-stop-for-each-filling").to_owned());
    }
    if rig.addition.is_none() {
        lacks.push(t!("rig-adding-the-products").to_owned());
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

/// The time on the road, and of it the way out and the way home: out to the first field, from field to field, home from the last;
/// where the tank is filled in the yard, so for each load.
fn road(
    farm: &Farm,
    pass: &Pass,
    rig: &Rig,
    fields: &[PlannedField],
    loads: &[Load],
    lacks: &mut Vec<String>,
) -> Option<(Duration, Duration, Duration)> {
    let trips: Vec<Vec<&Id>> = match pass.fills {
        Fills::AtField => vec![fields.iter().map(|field| &field.field).collect()],
        Fills::AtYard => loads.iter().map(|load| load.fields.iter().map(|(id, _)| id).collect()).collect(),
    };
    let trips: Vec<Vec<&Id>> = trips.into_iter().filter(|trip| !trip.is_empty()).collect();
    if trips.is_empty() {
        return None;
    }
    let Some(speed) = rig.road_speed.as_ref().map(AsTyped::value).filter(|speed| !speed.is_zero()) else {
        lacks.push(t!("rig-the-road-its-speed-is-not").to_owned());
        return None;
    };
    let mut unknown: Vec<String> = Vec::new();
    let mut known: Option<Duration> = None;
    let mut drive = |from: Place, to: Place| {
        let driven = road::way(farm, from, to).and_then(|way| road::time(way, speed));
        match driven {
            Some(driven) => known = Some(known.unwrap_or(Duration::ZERO) + driven),
            None => unknown.push(road::words(farm, from, to)),
        }
        driven.unwrap_or(Duration::ZERO)
    };
    let (mut out, mut home) = (None, Duration::ZERO);
    for trip in &trips {
        let way_out = drive(None, trip.first().copied());
        out = out.or(Some(way_out));
        for (from, to) in trip.iter().zip(trip.iter().skip(1)) {
            drive(Some(from), Some(to));
        }
        home = drive(trip.last().copied(), None);
    }
    lacks.extend(once(unknown));
    // A pass that fills in the yard begins there: its way out is within it.
    let out = out.filter(|_| pass.fills == Fills::AtField).unwrap_or(Duration::ZERO);
    known.map(|all| (all, out, home))
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
    let not_known = || t!("rig-not-known").to_owned();
    let mut working = Working::new(t!("rig-time-for-the-pass"))
        .step(t!("rig-spraying-turns-included"), work.spraying.show(units))
        .step(
            t!("rig-filling-load", fills = work.fills.len()),
            if work.fills.is_empty() { not_known() } else { filling.show(units) },
        )
        .step(t!("rig-road"), work.road.map_or_else(not_known, |road| road.show(units)))
        .step(t!("rig-in-all"), work.total.show(units))
        .step(t!("rig-ground-in-an-hour-of-spraying"), work.in_an_hour.show(units));
    if !work.lacks.is_empty() {
        working = working.step(t!("rig-not-counted", lacks = listed(&work.lacks)), "–");
    }
    working
}
