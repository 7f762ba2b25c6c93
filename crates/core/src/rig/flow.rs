//! Flow: what a nozzle must give, what it gives at a pressure, and what follows for speed and volume over ground.

use super::calibration;
use crate::farm::{Farm, Id, Layout, NozzleSet, Pass, Rated};
use crate::quantity::number::show;
use crate::quantity::{CarrierRate, Flow, Length, Pressure, Speed, Units, Volume};

/// Metres of water that a litre over a hectare makes.
const LITRE_PER_HECTARE: f64 = 1e-7;

/// The ground that the nozzles of a row stand for together, across the way of driving, and how many they are: a band, a row, or
/// what a single nozzle stands for where all spray the whole ground.
///
/// In bands this is ground in the band: volumes and rates hold for it. A band cannot be wider than the rows are apart.
pub fn width_together(layout: &Layout) -> (Length, u32) {
    match layout {
        Layout::Broadcast { spacing } => (spacing.value(), 1),
        Layout::Band { width, rows, nozzles } => (width.value().min(rows.value()), *nozzles),
        Layout::Directed { rows, nozzles } => (rows.value(), *nozzles),
    }
}

/// The ground that one nozzle stands for, across the way of driving; `None` where a number of the layout is nothing.
pub fn width_of_a_nozzle(layout: &Layout) -> Option<Length> {
    let (width, nozzles) = width_together(layout);
    (nozzles > 0 && !width.is_zero()).then(|| width * (1.0 / f64::from(nozzles)))
}

/// What a nozzle must give for a volume over ground.
///
/// # References
/// "GPM = GPA × MPH × W ÷ 5940": University of Illinois, 60 Ways, no. 55; University of Missouri Extension, G1270A. The
/// constant is what units make of carrier × speed × width.
///
/// # Examples
/// ```
/// use tankard_core::quantity::{CarrierRate, Length, Speed};
/// use tankard_core::rig::flow::needed;
/// let rate = CarrierRate::from_us_gallons_per_acre(15.0);
/// let flow = needed(rate, Speed::from_miles_per_hour(10.0), Length::from_inches(20.0));
/// assert!((flow.to_us_gallons_per_minute() - 0.5051).abs() < 5e-5);
/// ```
pub fn needed(carrier: CarrierRate, speed: Speed, width: Length) -> Flow {
    Flow::from_cubic_metres_per_second(
        carrier.to_litres_per_hectare() * LITRE_PER_HECTARE * speed.to_metres_per_second() * width.to_metres(),
    )
}

/// The volume over ground that a flow makes; `None` where speed or width is nothing.
pub fn carrier(flow: Flow, speed: Speed, width: Length) -> Option<CarrierRate> {
    let ground = speed.to_metres_per_second() * width.to_metres();
    (ground > 0.0)
        .then(|| CarrierRate::from_litres_per_hectare(flow.to_cubic_metres_per_second() / ground / LITRE_PER_HECTARE))
}

/// The speed at which a flow makes a volume over ground; `None` where that or the width is nothing.
pub fn speed(flow: Flow, carrier: CarrierRate, width: Length) -> Option<Speed> {
    let depth = carrier.to_litres_per_hectare() * LITRE_PER_HECTARE * width.to_metres();
    (depth > 0.0).then(|| Speed::from_metres_per_second(flow.to_cubic_metres_per_second() / depth))
}

/// What a nozzle gives of water at any pressure, from one pressure at which that is known: flow goes with the square root
/// of pressure.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Law {
    /// What it gives of water.
    pub flow: Flow,
    /// At this pressure.
    pub at: Pressure,
}

impl Law {
    /// From a flow at a pressure; `None` where one of them is nothing.
    pub fn new(flow: Flow, at: Pressure) -> Option<Self> {
        (flow > Flow::ZERO && at > Pressure::ZERO).then_some(Self { flow, at })
    }

    /// From a rating; `None` where its flow or its pressure is nothing.
    pub fn of(rated: &Rated) -> Option<Self> {
        Self::new(rated.flow.value(), rated.at.value())
    }

    /// The flow of water at a pressure.
    ///
    /// # Examples
    /// ```
    /// use tankard_core::quantity::{Flow, Pressure};
    /// use tankard_core::rig::flow::Law;
    /// let law = Law::new(Flow::from_us_gallons_per_minute(0.4), Pressure::from_psi(40.0)).unwrap();
    /// assert!((law.flow(Pressure::from_psi(10.0)).to_us_gallons_per_minute() - 0.2).abs() < 1e-9);
    /// ```
    pub fn flow(self, pressure: Pressure) -> Flow {
        self.flow * pressure.ratio(self.at).unwrap_or_default().max(0.0).sqrt()
    }

    /// The pressure for a flow of water.
    pub fn pressure(self, flow: Flow) -> Pressure {
        let ratio = flow.ratio(self.flow).unwrap_or_default();
        self.at * (ratio * ratio)
    }
}

/// Where the flow of a set is known from.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Known {
    /// What a new nozzle gives.
    Rated,
    /// What was measured on the rig on this day.
    Measured(jiff::civil::Date),
}

/// The law of a set for a pass: from what was measured last up to its day, where the rig asks for that and it was measured; else
/// from the rating.
pub fn law_of(farm: &Farm, pass: &Pass, id: &Id, set: &NozzleSet) -> Option<(Law, Known)> {
    if farm.rigs.get(&pass.rig).is_some_and(|rig| rig.measured_flow)
        && let Some((law, day)) = calibration::measured_flow(farm, &pass.rig, id, pass.date)
    {
        return Some((law, Known::Measured(day)));
    }
    Some((Law::of(set.rated.as_ref()?)?, Known::Rated))
}

/// The flow of one nozzle in words, which wants a digit more than that of a pump.
pub(crate) fn of_a_nozzle(flow: Flow, units: Units) -> String {
    let litres = flow.to_litres_per_minute();
    match units {
        Units::Metric => format!("{} L/min", show(litres, 3)),
        Units::Imperial => format!("{} imp gal/min", show(Volume::from_litres(litres).to_imperial_gallons(), 3)),
        Units::UsCustomary => format!("{} gal/min", show(flow.to_us_gallons_per_minute(), 3)),
    }
}
