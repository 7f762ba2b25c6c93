//! Loads whose size is decided by hand: laid first, in order, over the stretches of a pass.
//!
//! A decided load may run over a border that keeps fields apart; the two stretches are then one. So it is with what is in the
//! tank before the first load where that reaches over a border.

use super::apart::Stretch;
use super::build::Asked;
use crate::farm::Id;
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{Area, Quantity, Volume};

/// A decided load that ends so near the end of its stretch ends there: what people type is rounded.
const NEAR: f64 = 1e-6;

/// A stretch with its decided loads.
#[derive(Clone, Debug)]
pub(super) struct Laid {
    pub(super) fields: Stretch,
    /// The decided loads: what the tank holds, and what is left of it after its ground.
    pub(super) decided: Vec<(Volume, Volume)>,
    /// What remains to be split; in the last stretch with what is to be left over.
    pub(super) open: Volume,
}

impl Laid {
    fn join(&mut self, next: Self) {
        self.fields.extend(next.fields);
        self.open = self.open + next.open;
    }
}

/// Lays the decided loads over the stretches.
///
/// # Errors
/// A Stop where a load cannot be.
pub(super) fn lay(
    asked: &Asked,
    stretches: Vec<Stretch>,
    (carried, extra): (Volume, Volume),
) -> Result<(Vec<Laid>, Vec<Finding>), Box<Finding>> {
    let (pass, units) = (asked.pass, asked.farm.units);
    let mut said = Vec::new();
    let alone = stretches.len() == 1;
    let mut ahead = stretches.into_iter().map(|fields| {
        let area: Area = fields.iter().map(|(_, area)| *area).sum();
        // One stretch is the whole pass, to the last bit.
        let open = if alone { asked.spray } else { asked.carrier * area };
        Laid { fields, decided: Vec::new(), open }
    });
    let mut ahead: std::collections::VecDeque<Laid> = ahead.by_ref().collect();
    if let Some(last) = ahead.back_mut() {
        last.open = last.open + extra;
    }
    let Some(mut here) = ahead.pop_front() else { return Ok((Vec::new(), said)) };
    while !here.open.exceeds(carried) {
        let Some(next) = ahead.pop_front() else { break };
        said.push(over_border(asked, None, &here, &next));
        here.join(next);
    }
    let mut done: Vec<Laid> = Vec::new();
    let mut beyond = Volume::ZERO;
    let mut number = 0;
    for size in &pass.sizes {
        let mut size = size.value();
        number += 1;
        check(asked, number, size, if number == 1 { carried } else { Volume::ZERO })?;
        if let Some(fill) = pass.fill_to.as_ref().filter(|fill| size.exceeds(fill.value())) {
            let (size, fill) = (size.show(units), fill.show(units));
            let text = t!("loads-load-is-decided-as-though-the", number = number, size = size, fill = fill);
            let about = Subject::Pass(asked.pass_id.clone());
            said.push(Finding::check(about, text, Basis::Arithmetic).hint(t!("loads-lower-the-load-or-raise-fill")));
        }
        // Nothing but what is to be left over is still to be mixed.
        let ground_is_done = |here: &Laid, ahead: usize| ahead == 0 && !(here.open - extra).exceeds(asked.spray * 1e-9);
        if ground_is_done(&here, ahead.len()) {
            beyond = beyond + size;
            here.open = Volume::ZERO;
            continue;
        }
        while size.exceeds(here.open * (1.0 + NEAR)) {
            let Some(next) = ahead.pop_front() else { break };
            said.push(over_border(asked, Some(number), &here, &next));
            here.join(next);
        }
        let last = ahead.is_empty();
        let over = size - here.open;
        if size.exceeds(here.open * (1.0 + NEAR)) {
            beyond = beyond + over;
            here.decided.push((size, over + extra));
            here.open = Volume::ZERO;
        } else if over.exceeds(size * -NEAR) {
            size = here.open;
            here.decided.push((size, if last { extra } else { Volume::ZERO }));
            here.open = Volume::ZERO;
        } else {
            here.open = here.open - size;
            let mut left = Volume::ZERO;
            if ground_is_done(&here, ahead.len()) {
                left = extra - here.open;
                here.open = Volume::ZERO;
            }
            here.decided.push((size, left));
        }
        if here.open.is_zero()
            && let Some(next) = ahead.pop_front()
        {
            done.push(std::mem::replace(&mut here, next));
        }
    }
    done.push(here);
    done.extend(ahead);
    if beyond.exceeds(asked.spray * NEAR) {
        said.push(
            Finding::check(
                Subject::Pass(asked.pass_id.clone()),
                t!("loads-the-decided-loads-hold-more-than", beyond = beyond.show(units)),
                Basis::Arithmetic,
            )
            .hint(t!("loads-lower-the-last-of-them-or")),
        );
    }
    Ok((done, said))
}

/// Whether a decided load can be.
fn check(asked: &Asked, number: u32, size: Volume, carried: Volume) -> Result<(), Box<Finding>> {
    let (rig, units) = (asked.rig, asked.farm.units);
    let stop = |text: String| {
        let found = Finding::stop(Subject::Pass(asked.pass_id.clone()), text, Basis::Arithmetic);
        Err(Box::new(found.hint(t!("loads-mend-the-decided-loads-of-the"))))
    };
    if size.exceeds(rig.tank.value()) {
        return stop(t!(
            "loads-load-is-decided-as-the-tank",
            number = number,
            size = size.show(units),
            name = rig.name,
            tank = rig.tank.show(units)
        ));
    }
    if size.is_zero() {
        return stop(t!("loads-load-is-decided-as-nothing", number = number));
    }
    if carried.exceeds(size) {
        return stop(t!(
            "loads-load-is-decided-as-but-are",
            number = number,
            size = size.show(units),
            carried = carried.show(units)
        ));
    }
    Ok(())
}

/// What runs over: a decided load, or what is in the tank already.
fn over_border(asked: &Asked, load: Option<u32>, here: &Laid, next: &Laid) -> Finding {
    let name = |field: Option<&(Id, Area)>| {
        field.and_then(|(id, _)| asked.farm.fields.get(id)).map_or("", |field| field.name.as_str())
    };
    let (last, first) = (name(here.fields.last()), name(next.fields.first()));
    let text = match load {
        Some(number) => t!("loads-decided-load-runs-over", number = number, last = last, first = first),
        None => t!("loads-tank-runs-over", last = last, first = first),
    };
    Finding::check(Subject::Pass(asked.pass_id.clone()), text, Basis::Arithmetic)
        .hint(t!("loads-make-sure-that-this-is-right"))
}
