//! How far a pass is recorded: its records together cover its ground, or leave some of it.
//!
//! A record of some loads is not the pass: what it leaves is still to be sprayed, takes from the shed and counts as planned. In a season
//! that is closed nothing is still to be sprayed, so that any record settles a pass of it: its fields may be measured anew by then.

use super::DIGITS;
use crate::farm::{Farm, Id, Record};
use crate::language::t;
use crate::quantity::{Area, AsTyped, Quantity, Share};
use crate::rig;
use crate::season::close::is_closed;

/// What the records of a pass leave of its ground.
#[derive(Clone, Debug, PartialEq)]
pub struct Unrecorded {
    /// The ground left by field, in the order sprayed, as it is treated: in bands their share of what is driven over.
    pub fields: Vec<(Id, Area)>,
    /// The ground of the pass in all, as it is treated.
    pub of: Area,
    /// Whether some of it is recorded.
    pub partly: bool,
    bands: f64,
}

impl Unrecorded {
    /// How much ground is left.
    pub fn area(&self) -> Area {
        self.fields.iter().map(|(_, area)| *area).sum()
    }

    /// How much of the pass that is, from 0 to 1; 1 where it has no ground.
    pub fn share(&self) -> f64 {
        self.area().ratio(self.of).unwrap_or(1.0)
    }

    /// Whether something is left on a field.
    pub fn is_on(&self, field: &str) -> bool {
        self.fields.iter().any(|(id, _)| id == field)
    }

    /// What is left of a field as it is driven over: with the ground between bands.
    pub fn driven_over(&self, field: &str) -> Option<Area> {
        self.fields.iter().find(|(id, _)| id == field).map(|(_, area)| *area * (1.0 / self.bands))
    }

    /// "partly recorded: 70.5 ac of 71.5 ac left"; `None` where nothing of it is recorded.
    pub fn words(&self, farm: &Farm) -> Option<String> {
        let [left, of] = [self.area(), self.of].map(|area| area.show(farm.units));
        self.partly.then(|| t!("season-partly-recorded-of-left", left = left, of = of))
    }
}

/// What the records of a pass leave of it; `None` where they cover it. It looks at each record until they do.
pub fn unrecorded(farm: &Farm, pass: &str) -> Option<Unrecorded> {
    after(farm, pass, farm.records.values().filter(|record| record.pass.as_deref() == Some(pass)))
}

impl Farm {
    /// Whether a pass has been recorded as sprayed: its records cover its ground, to the six digits that they hold.
    pub fn is_recorded(&self, pass: &str) -> bool {
        unrecorded(self, pass).is_none()
    }

    /// Whether a pass has a record, of all its ground or of some.
    pub fn has_record(&self, pass: &str) -> bool {
        self.records.values().any(|record| record.pass.as_deref() == Some(pass))
    }
}

/// What some records of a pass leave of it; `None` where they cover it.
pub(crate) fn after<'a>(farm: &Farm, id: &str, records: impl Iterator<Item = &'a Record>) -> Option<Unrecorded> {
    let pass = farm.passes.get(id);
    let records: Vec<&Record> = records.collect();
    let partly = !records.is_empty();
    if partly && pass.is_none_or(|pass| is_closed(farm, pass.date.year())) {
        return None;
    }
    let bands = pass.and_then(|pass| rig::in_bands(farm, pass)).map_or(1.0, Share::to_fraction);
    // Records of all that is beside no strip cover what is left beside strips, too, which takes longer to tell.
    let whole = pass.iter().flat_map(|pass| pass.fields.iter().map(move |id| (*pass, id)));
    let whole = whole.filter_map(|(pass, id)| {
        let most = farm.fields.get(id)?.sprayable();
        Some((id, pass.parts.get(id).map_or(most, AsTyped::value) * bands))
    });
    if partly && left_on(whole, &records).is_empty() {
        return None;
    }
    let mut ground: Vec<(&Id, Area)> = Vec::new();
    for field in pass.iter().flat_map(|pass| &pass.fields) {
        let treated = pass
            .zip(farm.fields.get(field))
            .map_or(Area::ZERO, |(pass, of)| crate::ground::covers(farm, pass, field, of) * bands);
        if !treated.is_zero() && ground.iter().all(|(known, _)| *known != field) {
            ground.push((field, treated));
        }
    }
    let of = ground.iter().map(|(_, treated)| *treated).sum();
    let fields = left_on(ground.into_iter(), &records);
    (!partly || !fields.is_empty()).then_some(Unrecorded { fields, of, partly, bands })
}

/// What of some ground records leave, to the six digits that they hold; fields of which nothing is left do not come.
pub(super) fn left_on<'a>(ground: impl Iterator<Item = (&'a Id, Area)>, records: &[&Record]) -> Vec<(Id, Area)> {
    let left = ground.filter_map(|(id, area)| {
        let covered = records.iter().filter_map(|record| record.fields.get(id)).map(|field| field.area.value()).sum();
        let rest = area - covered;
        (area.exceeds(covered) && rest.exceeds(area * DIGITS)).then(|| (id.clone(), rest))
    });
    left.collect()
}
