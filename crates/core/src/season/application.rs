//! What counts as one application of a field.

use crate::farm::{Farm, Field, Id, Record};
use crate::quantity::{Area, Share};

/// Records hold six digits.
const DIGITS: f64 = 1e-5;

/// How much of a field a record drove over: in bands the ground between them with it; `None` where it was not on the field.
pub(crate) fn driven_over(farm: &Farm, record: &Record, field: &Id) -> Option<Area> {
    let pass = record.pass.as_ref().and_then(|pass| farm.passes.get(pass));
    let bands = pass.and_then(|pass| crate::rig::in_bands(farm, pass)).map_or(1.0, Share::to_fraction);
    Some(record.fields.get(field)?.area.value() * (1.0 / bands))
}

/// Whether a pass covers so much of a field.
fn fits_pass(farm: &Farm, pass: &str, field: &str, ground: Area) -> bool {
    let covers = || Some(farm.passes.get(pass)?.covers(field, farm.fields.get(field)?));
    covers().is_some_and(|covers| !ground.exceeds(covers * (1.0 + DIGITS)))
}

/// An application of a field, while its records come in. Parts of one, which lie on different ground of the field, stand
/// together, and so do records of one pass as long as they cover no more than it does. What is recorded of one pass twice, or
/// of more ground than the field has, is an application each time; so is a record of no pass.
#[derive(Clone, Debug)]
pub(super) struct Application<'a> {
    /// The first part of it; `None` for a record of no pass.
    first: Option<&'a str>,
    /// How much of the field was driven over by the records of each pass.
    passes: Vec<(&'a str, Area)>,
}

impl<'a> Application<'a> {
    /// Of its first record.
    pub(super) fn of(farm: &'a Farm, pass: Option<&'a str>, ground: Area) -> Self {
        Self {
            first: pass.map(|pass| farm.first_part(pass)),
            passes: pass.map(|pass| (pass, ground)).into_iter().collect(),
        }
    }

    /// Takes another record of the field in, and says whether it belongs here.
    pub(super) fn takes(&mut self, farm: &'a Farm, field: &str, pass: Option<&'a str>, ground: Area) -> bool {
        let Some(pass) = pass.filter(|pass| self.first == Some(farm.first_part(pass))) else { return false };
        let there = farm.fields.get(field).map_or(Area::ZERO, |field: &Field| field.area.value());
        let all = self.passes.iter().map(|(_, ground)| *ground).sum::<Area>() + ground;
        let same = self.passes.iter_mut().find(|(own, _)| *own == pass);
        let with_same = same.as_ref().map(|(_, before)| *before + ground);
        if with_same.is_some_and(|ground| !fits_pass(farm, pass, field, ground)) || all.exceeds(there * (1.0 + DIGITS))
        {
            return false;
        }
        match (same, with_same) {
            (Some((_, sum)), Some(ground)) => *sum = ground,
            _ => self.passes.push((pass, ground)),
        }
        true
    }
}

/// The records of a field by [`Application`].
pub(crate) fn by_application<'a>(
    farm: &'a Farm,
    field: &Id,
    records: impl Iterator<Item = &'a Record>,
) -> Vec<Vec<&'a Record>> {
    let mut all: Vec<(Application<'a>, Vec<&'a Record>)> = Vec::new();
    for record in records {
        let (pass, ground) = (record.pass.as_deref(), driven_over(farm, record, field).unwrap_or(Area::ZERO));
        match all.iter_mut().find_map(|(known, parts)| known.takes(farm, field, pass, ground).then_some(parts)) {
            Some(parts) => parts.push(record),
            None => all.push((Application::of(farm, pass, ground), vec![record])),
        }
    }
    all.into_iter().map(|(_, records)| records).collect()
}
