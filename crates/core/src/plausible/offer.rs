//! A value that was probably meant, and where it belongs. Nothing is changed until a person takes it; then it is an edit like any other.

use jiff::civil::Date;

use crate::farm::{Farm, Id, Layout, Place, Record};
use crate::language::t;
use crate::quantity::{ActiveBasis, AsTyped, Quantity};
use crate::season::record::with_amount;
use crate::words::all_of;

/// A value that was probably meant, in the notation of whoever typed what stands there.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Offer {
    /// What goes where; two boxes where two were taken for one another.
    pub sets: Vec<Set>,
    /// What was probably taken for what, in words.
    pub why: String,
}

/// A text for one box.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub struct Set {
    /// Which.
    pub slot: Slot,
    /// What to type there.
    pub text: String,
}

/// A box of the document that holds one value.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Slot {
    /// Rate of a product in a pass.
    Rate {
        /// The pass.
        pass: Id,
        /// The product.
        product: Id,
    },
    /// Spray volume of a pass.
    Carrier(Id),
    /// Day of a pass.
    PassDate(Id),
    /// Speed of a pass.
    PassSpeed(Id),
    /// Pressure of a pass.
    PassPressure(Id),
    /// Height of the nozzles of a pass.
    PassHeight(Id),
    /// The warmest air of a pass.
    PassAir(Id),
    /// Ground of a field that a pass sprays.
    Part {
        /// The pass.
        pass: Id,
        /// The field.
        field: Id,
    },
    /// Stated area of a field.
    Area(Id),
    /// Ground of a field that stays unsprayed.
    Unsprayed(Id),
    /// Day on which a field was planted.
    Planted(Id),
    /// Day on which a field is harvested.
    Harvest(Id),
    /// Tank of a rig.
    Tank(Id),
    /// Boom of a rig.
    Boom(Id),
    /// Usual speed of a rig.
    RigSpeed(Id),
    /// Usual pressure of a rig.
    RigPressure(Id),
    /// Usual height of a rig.
    RigHeight(Id),
    /// How far the nozzles of a set stand apart.
    Spacing {
        /// The rig.
        rig: Id,
        /// The set.
        set: Id,
    },
    /// What a nozzle of a set gives.
    RatedFlow {
        /// The rig.
        rig: Id,
        /// The set.
        set: Id,
    },
    /// The pressure at which it gives that.
    RatedAt {
        /// The rig.
        rig: Id,
        /// The set.
        set: Id,
    },
    /// Content of an active of a product, by its place.
    Content {
        /// The product.
        product: Id,
        /// Which of its actives.
        active: usize,
    },
    /// How that is counted: "ae" or "ai".
    Basis {
        /// The product.
        product: Id,
        /// Which of its actives.
        active: usize,
    },
    /// Density of a product.
    Density(Id),
    /// Calcium of a water.
    Calcium(Id),
    /// Magnesium of a water.
    Magnesium(Id),
    /// Bicarbonate of a water.
    Bicarbonate(Id),
    /// Hardness of a water.
    Hardness(Id),
    /// Conductivity of a water.
    Conductivity(Id),
    /// Latitude of the farm.
    Latitude,
    /// Longitude of the farm.
    Longitude,
    /// Time zone of the farm.
    Zone,
    /// Day of a record.
    RecordDate(Id),
    /// What was used of a product by a record.
    RecordAmount {
        /// The record.
        record: Id,
        /// The product.
        product: Id,
    },
    /// A measurement of a record.
    Measured {
        /// The record.
        record: Id,
        /// Which of the later readings; none for the first.
        reading: Option<usize>,
        /// What was measured.
        what: Measured,
    },
}

/// What is measured of the weather.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Measured {
    /// Temperature of the air.
    Air,
    /// Mean wind.
    Wind,
    /// Strongest gust.
    Gust,
}

impl Slot {
    /// What it is called, as the machine-readable findings name it: "rate:PASS/PRODUCT".
    pub fn key(&self) -> String {
        match self {
            Self::Rate { pass, product } => format!("rate:{pass}/{product}"),
            Self::Carrier(id) => format!("carrier:{id}"),
            Self::PassDate(id) => format!("pass-date:{id}"),
            Self::PassSpeed(id) => format!("pass-speed:{id}"),
            Self::PassPressure(id) => format!("pass-pressure:{id}"),
            Self::PassHeight(id) => format!("pass-height:{id}"),
            Self::PassAir(id) => format!("pass-air:{id}"),
            Self::Part { pass, field } => format!("part:{pass}/{field}"),
            Self::Area(id) => format!("area:{id}"),
            Self::Unsprayed(id) => format!("unsprayed:{id}"),
            Self::Planted(id) => format!("planted:{id}"),
            Self::Harvest(id) => format!("harvest:{id}"),
            Self::Tank(id) => format!("tank:{id}"),
            Self::Boom(id) => format!("boom:{id}"),
            Self::RigSpeed(id) => format!("rig-speed:{id}"),
            Self::RigPressure(id) => format!("rig-pressure:{id}"),
            Self::RigHeight(id) => format!("rig-height:{id}"),
            Self::Spacing { rig, set } => format!("spacing:{rig}/{set}"),
            Self::RatedFlow { rig, set } => format!("rated-flow:{rig}/{set}"),
            Self::RatedAt { rig, set } => format!("rated-at:{rig}/{set}"),
            Self::Content { product, active } => format!("content:{product}/{active}"),
            Self::Basis { product, active } => format!("basis:{product}/{active}"),
            Self::Density(id) => format!("density:{id}"),
            Self::Calcium(id) => format!("calcium:{id}"),
            Self::Magnesium(id) => format!("magnesium:{id}"),
            Self::Bicarbonate(id) => format!("bicarbonate:{id}"),
            Self::Hardness(id) => format!("hardness:{id}"),
            Self::Conductivity(id) => format!("conductivity:{id}"),
            Self::Latitude => "latitude".to_owned(),
            Self::Longitude => "longitude".to_owned(),
            Self::Zone => "zone".to_owned(),
            Self::RecordDate(id) => format!("record-date:{id}"),
            Self::RecordAmount { record, product } => format!("record-amount:{record}/{product}"),
            Self::Measured { record, reading, what } => {
                let what = match what {
                    Measured::Air => "air",
                    Measured::Wind => "wind",
                    Measured::Gust => "gust",
                };
                match reading {
                    Some(at) => format!("{what}:{record}/{at}"),
                    None => format!("{what}:{record}"),
                }
            }
        }
    }
}

impl Offer {
    /// Of one box.
    pub(crate) fn of(slot: Slot, text: impl Into<String>, why: &str) -> Self {
        Self { sets: vec![Set { slot, text: text.into() }], why: why.to_owned() }
    }

    /// What is offered: "22 fl oz/ac", "calcium 118 ppm and magnesium 42 ppm", "the basis ai".
    pub fn text(&self) -> String {
        let is_one = self.sets.len() == 1;
        let text = |set: &Set| match set.slot {
            Slot::Basis { .. } => t!("plausible-the-basis", text = set.text),
            Slot::Calcium(_) if !is_one => t!("plausible-calcium", text = set.text),
            Slot::Magnesium(_) if !is_one => t!("plausible-magnesium", text = set.text),
            Slot::Latitude if !is_one => t!("plausible-latitude", text = set.text),
            Slot::Longitude if !is_one => t!("plausible-longitude", text = set.text),
            _ => set.text.clone(),
        };
        all_of(self.sets.iter().map(text).collect::<Vec<_>>())
    }

    /// Whether it is for a box.
    pub fn is_for(&self, slot: &Slot) -> bool {
        self.sets.iter().any(|set| set.slot == *slot)
    }

    /// Types it in its boxes; whether it could be done. Where a box is gone, or is closed to edits, that one stays as it is.
    pub fn take(&self, farm: &mut Farm) -> bool {
        let mut done = !self.sets.is_empty();
        for set in &self.sets {
            done &= set.take(farm).is_some();
        }
        done
    }
}

fn put<Q: Quantity>(place: &mut AsTyped<Q>, text: &str) -> Option<()> {
    *place = AsTyped::parse(text).ok()?;
    Some(())
}

fn put_some<Q: Quantity>(place: &mut Option<AsTyped<Q>>, text: &str) -> Option<()> {
    *place = Some(AsTyped::parse(text).ok()?);
    Some(())
}

impl Set {
    fn take(&self, farm: &mut Farm) -> Option<()> {
        let text = self.text.as_str();
        let day = || text.parse::<Date>().ok();
        match &self.slot {
            Slot::Rate { pass, product } => {
                let pass = farm.passes.get_mut(pass)?;
                put(&mut pass.mix.iter_mut().find(|line| line.product == *product)?.rate, text)
            }
            Slot::Carrier(id) => put_some(&mut farm.passes.get_mut(id)?.carrier, text),
            Slot::PassDate(id) => {
                farm.passes.get_mut(id)?.date = day()?;
                Some(())
            }
            Slot::PassSpeed(id) => put_some(&mut farm.passes.get_mut(id)?.speed, text),
            Slot::PassPressure(id) => put_some(&mut farm.passes.get_mut(id)?.pressure, text),
            Slot::PassHeight(id) => put_some(&mut farm.passes.get_mut(id)?.height, text),
            Slot::PassAir(id) => put_some(&mut farm.passes.get_mut(id)?.growing.air, text),
            Slot::Part { pass, field } => put(farm.passes.get_mut(pass)?.parts.get_mut(field)?, text),
            Slot::Area(id) => put(&mut farm.fields.get_mut(id)?.area, text),
            Slot::Unsprayed(id) => put_some(&mut farm.fields.get_mut(id)?.unsprayed, text),
            Slot::Planted(id) => {
                farm.fields.get_mut(id)?.planted = Some(day()?);
                Some(())
            }
            Slot::Harvest(id) => {
                farm.fields.get_mut(id)?.harvest = Some(day()?);
                Some(())
            }
            Slot::Tank(id) => put(&mut farm.rigs.get_mut(id)?.tank, text),
            Slot::Boom(id) => put_some(&mut farm.rigs.get_mut(id)?.boom, text),
            Slot::RigSpeed(id) => put_some(&mut farm.rigs.get_mut(id)?.speed, text),
            Slot::RigPressure(id) => put_some(&mut farm.rigs.get_mut(id)?.pressure, text),
            Slot::RigHeight(id) => put_some(&mut farm.rigs.get_mut(id)?.height, text),
            Slot::Spacing { rig, set } => match &mut farm.rigs.get_mut(rig)?.sets.get_mut(set)?.layout {
                Some(Layout::Broadcast { spacing }) => put(spacing, text),
                _ => None,
            },
            Slot::RatedFlow { rig, set } => {
                put(&mut farm.rigs.get_mut(rig)?.sets.get_mut(set)?.rated.as_mut()?.flow, text)
            }
            Slot::RatedAt { rig, set } => put(&mut farm.rigs.get_mut(rig)?.sets.get_mut(set)?.rated.as_mut()?.at, text),
            Slot::Content { product, active } => {
                put(&mut farm.products.get_mut(product)?.actives.get_mut(*active)?.content, text)
            }
            Slot::Basis { product, active } => {
                let active = farm.products.get_mut(product)?.actives.get_mut(*active)?;
                let all = [ActiveBasis::AcidEquivalent, ActiveBasis::ActiveIngredient];
                active.basis = all.into_iter().find(|basis| basis.short() == text)?;
                Some(())
            }
            Slot::Density(id) => put_some(&mut farm.products.get_mut(id)?.density, text),
            Slot::Calcium(id) => put_some(&mut farm.waters.get_mut(id)?.calcium, text),
            Slot::Magnesium(id) => put_some(&mut farm.waters.get_mut(id)?.magnesium, text),
            Slot::Bicarbonate(id) => put_some(&mut farm.waters.get_mut(id)?.bicarbonate, text),
            Slot::Hardness(id) => put_some(&mut farm.waters.get_mut(id)?.hardness, text),
            Slot::Conductivity(id) => put_some(&mut farm.waters.get_mut(id)?.conductivity, text),
            Slot::Latitude => {
                text.clone_into(&mut farm.place.get_or_insert_with(Place::default).latitude);
                Some(())
            }
            Slot::Zone => {
                text.clone_into(&mut farm.place.get_or_insert_with(Place::default).zone);
                Some(())
            }
            Slot::Longitude => {
                text.clone_into(&mut farm.place.get_or_insert_with(Place::default).longitude);
                Some(())
            }
            Slot::RecordDate(id) => {
                open(farm, id)?.date = day()?;
                Some(())
            }
            Slot::RecordAmount { record, product } => {
                let (known, units) = (farm.products.get(product).cloned(), farm.units);
                let line = open(farm, record)?.lines.iter_mut().find(|line| line.product == *product)?;
                *line = with_amount(line, AsTyped::parse(text).ok()?, known.as_ref(), units);
                Some(())
            }
            Slot::Measured { record, reading, what } => measured(open(farm, record)?, *reading, *what, text),
        }
    }
}

/// A record that may be edited: a signed one is amended, not edited.
fn open<'a>(farm: &'a mut Farm, id: &str) -> Option<&'a mut Record> {
    farm.records.get_mut(id).filter(|record| record.signed.is_none())
}

fn measured(record: &mut Record, reading: Option<usize>, what: Measured, text: &str) -> Option<()> {
    let (air, wind, gust) = match reading {
        None => (&mut record.temperature, &mut record.wind, &mut record.gust),
        Some(at) => {
            let reading = record.readings.get_mut(at)?;
            (&mut reading.temperature, &mut reading.wind, &mut reading.gust)
        }
    };
    match what {
        Measured::Air => put_some(air, text),
        Measured::Wind => put_some(wind, text),
        Measured::Gust => put_some(gust, text),
    }
}
