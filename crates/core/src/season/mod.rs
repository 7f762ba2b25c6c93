//! Records: how they come from a plan, how they are signed and amended, and sums over them: what a field has had, what a season
//! came to.

pub mod amend;
pub mod binds;
pub mod close;
pub mod find;
mod log;
pub mod outside;
pub mod period;
pub mod portion;
pub mod profile;
pub mod record;
pub mod review;
pub mod seal;
pub mod stats;
mod totals;
pub mod trials;
pub mod used;

pub use log::Log;
pub use totals::{Totals, sum, totals};

use crate::farm::{Farm, Id, Record};
use crate::mix::actives::Wanted;
use crate::quantity::{ActiveBasis, AmountPerArea, Area, MassPerArea, Share};
use jiff::civil::Date;
use std::cell::OnceCell;
use std::collections::HashMap;

/// What a field has had, and which records could not be counted in.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SoFar<T> {
    /// The sum over ground of what could be counted.
    pub sum: T,
    /// Records that belong to it and could not be counted, each with the reason.
    pub left_out: Vec<String>,
}

/// Which records a season total looks at.
#[derive(Clone, Copy, Debug)]
pub struct Reach<'a> {
    /// From which day on.
    pub from: Date,
    /// Up to and including which day.
    pub to: Date,
    /// The field.
    pub field: &'a Id,
    /// The pass that is planned: its own record of the same day is the pass itself and does not count, nor does the record of
    /// another part of the same application, which lies on other ground.
    pub pass: &'a Id,
    /// The day of that pass.
    pub date: Date,
}

impl<'a> Reach<'a> {
    /// All records of a field, whenever they were.
    pub fn always(field: &'a Id, pass: &'a Id, date: Date) -> Self {
        Self { from: Date::MIN, to: Date::MAX, field, pass, date }
    }

    /// The records.
    pub fn records(self, farm: &'a Farm, log: &'a Log) -> impl Iterator<Item = &'a Record> + use<'a> {
        let (first, in_parts) = (farm.first_part(self.pass), OnceCell::new());
        log.on_field(farm, self.field).map(|(_, record)| record).filter(move |record| {
            (self.from..=self.to).contains(&record.date)
                && !record.pass.as_ref().is_some_and(|of| {
                    if of == self.pass {
                        record.date == self.date || *in_parts.get_or_init(|| self.is_in_parts(farm, log))
                    } else {
                        farm.first_part(of) == first
                    }
                })
        })
    }

    /// Whether the pass is recorded in parts, which together cover no more of the field than it does.
    fn is_in_parts(self, farm: &Farm, log: &Log) -> bool {
        let own = log.of_pass(farm, self.pass);
        let ground: Vec<Area> = own.filter_map(|record| driven_over(farm, record, self.field)).collect();
        let room = room_of_pass(farm, self.pass, self.field);
        ground.len() > 1 && room.is_some_and(|room| !ground.into_iter().sum::<Area>().exceeds(room))
    }
}

/// How much of a field a record drove over: in bands the ground between them with it; `None` where it was not on the field.
pub(crate) fn driven_over(farm: &Farm, record: &Record, field: &Id) -> Option<Area> {
    let pass = record.pass.as_ref().and_then(|pass| farm.passes.get(pass));
    let bands = pass.and_then(|pass| crate::rig::in_bands(farm, pass)).map_or(1.0, Share::to_fraction);
    Some(record.fields.get(field)?.area.value() * (1.0 / bands))
}

/// How much of a field the records of a pass may cover, as they hold six digits; `None` where pass or field are gone.
fn room_of_pass(farm: &Farm, pass: &str, field: &Id) -> Option<Area> {
    Some(farm.passes.get(pass)?.covers(field, farm.fields.get(field)?) * (1.0 + 1e-5))
}

/// The records of a field by application: parts of one, which lie on different ground of the field, stand together, and so do
/// records of one pass as long as they cover no more than it does. What is recorded of one pass twice, or of more ground than
/// the field has, is an application each time.
pub(crate) fn by_application<'a>(
    farm: &Farm,
    field: &Id,
    records: impl Iterator<Item = &'a Record>,
) -> Vec<Vec<&'a Record>> {
    // Records hold six digits.
    let there = farm.fields.get(field).map_or(Area::ZERO, |field| field.area.value()) * (1.0 + 1e-5);
    let records: Vec<(&Record, Area)> =
        records.map(|record| (record, driven_over(farm, record, field).unwrap_or(Area::ZERO))).collect();
    let mut passes: HashMap<&str, OfPass> = HashMap::new();
    for (record, ground) in &records {
        let Some(pass) = record.pass.as_deref() else { continue };
        let of_pass = passes.entry(pass).or_insert_with(|| OfPass {
            room: room_of_pass(farm, pass, field),
            application: farm.first_part(pass),
            least: *ground,
            seen: 0,
            open: Vec::new(),
        });
        of_pass.least = of_pass.least.min(*ground);
    }
    let mut all: Vec<Vec<&Record>> = Vec::new();
    let mut begun: HashMap<&str, Vec<Begun>> = HashMap::new();
    for (record, ground) in records {
        let Some((pass, of_pass)) = record.pass.as_deref().and_then(|pass| Some((pass, passes.get_mut(pass)?))) else {
            all.push(vec![record]);
            continue;
        };
        let beside = begun.entry(of_pass.application).or_default();
        of_pass.open.extend(of_pass.seen..beside.len());
        of_pass.seen = beside.len();
        // What has no room for the least of the pass has none for any of it.
        let (room, least) = (of_pass.room, of_pass.least);
        of_pass.open.retain(|at| beside.get(*at).is_some_and(|begun| begun.has_room(pass, room, least, there)));
        let found = of_pass
            .open
            .iter()
            .copied()
            .find(|at| beside.get(*at).is_some_and(|begun| begun.has_room(pass, room, ground, there)));
        if let Some(begun) = found.and_then(|at| beside.get_mut(at)) {
            begun.take(pass, ground);
            if let Some(parts) = all.get_mut(begun.place) {
                parts.push(record);
            }
        } else {
            beside.push(Begun { place: all.len(), ground, by_pass: vec![(pass, ground)] });
            all.push(vec![record]);
        }
    }
    all
}

/// What records of a pass look for.
struct OfPass<'a> {
    /// How much of the field they may cover together.
    room: Option<Area>,
    /// The first pass of its application.
    application: &'a str,
    /// The ground of its smallest record.
    least: Area,
    /// How many of the applications that have begun were looked at.
    seen: usize,
    /// Those of them that may have room, in order.
    open: Vec<usize>,
}

/// An application of which records were found.
struct Begun<'a> {
    place: usize,
    ground: Area,
    by_pass: Vec<(&'a str, Area)>,
}

impl<'a> Begun<'a> {
    fn has_room(&self, pass: &str, room: Option<Area>, ground: Area, there: Area) -> bool {
        let own = self.by_pass.iter().find(|(known, _)| *known == pass);
        let fits_pass = own.is_none_or(|(_, sum)| room.is_some_and(|room| !(*sum + ground).exceeds(room)));
        fits_pass && !(self.ground + ground).exceeds(there)
    }

    fn take(&mut self, pass: &'a str, ground: Area) {
        self.ground = self.ground + ground;
        match self.by_pass.iter_mut().find(|(known, _)| *known == pass) {
            Some((_, sum)) => *sum = *sum + ground,
            None => self.by_pass.push((pass, ground)),
        }
    }
}

fn named(record: &Record) -> String {
    format!("\"{}\" of {}", record.name, record.date)
}

/// How much of a product a field has had, over ground; `None` for nothing.
///
/// Each record's amount is spread evenly over the ground of that record. Of parts of one application, of which any ground has had
/// but one, the largest counts.
pub fn product_so_far(farm: &Farm, log: &Log, reach: Reach<'_>, product: &Id) -> SoFar<Option<AmountPerArea>> {
    let liquid = farm.products.get(product).is_some_and(crate::farm::Product::is_liquid);
    let mut so_far: SoFar<Option<AmountPerArea>> = SoFar::default();
    let plus = |sum: Option<AmountPerArea>, rate: AmountPerArea| sum.map_or(Some(rate), |before| before.plus(rate));
    for parts in by_application(farm, reach.field, reach.records(farm, log)) {
        let mut largest: Option<AmountPerArea> = None;
        for record in parts {
            let mut sum = None;
            for line in record.lines.iter().filter(|line| line.product == *product) {
                let rate = line.amount.value().spread(record.area());
                let fits = matches!(
                    (rate, liquid),
                    (Some(AmountPerArea::Volume(_)), true) | (Some(AmountPerArea::Mass(_)), false)
                );
                match (rate, fits) {
                    (Some(rate), true) => sum = plus(sum, rate),
                    (Some(_), false) => {
                        so_far.left_out.push(format!("{} has it as {}", named(record), line.amount.text()));
                    }
                    (None, _) => so_far.left_out.push(format!("{} has no area", named(record))),
                }
            }
            largest = largest.into_iter().chain(sum).reduce(AmountPerArea::larger);
        }
        so_far.sum = largest.map_or(so_far.sum, |rate| plus(so_far.sum, rate));
    }
    so_far
}

/// How much of an active a field has had, over ground, from all products, on the basis asked for.
pub fn active_so_far(farm: &Farm, log: &Log, reach: Reach<'_>, active: &str, basis: ActiveBasis) -> SoFar<MassPerArea> {
    let mut so_far = SoFar { sum: MassPerArea::ZERO, left_out: Vec::new() };
    let mut meant = Meant { wanted: Wanted::new(active), names: HashMap::new(), products: HashMap::new() };
    for parts in by_application(farm, reach.field, reach.records(farm, log)) {
        let one = |record| active_in(farm, record, &mut meant, basis, &mut so_far.left_out);
        let largest = parts.into_iter().map(one).fold(MassPerArea::ZERO, MassPerArea::max);
        so_far.sum = so_far.sum + largest;
    }
    so_far
}

/// An active with what was compared with it: thousands of lines name a handful of actives and products.
struct Meant<'a> {
    wanted: Wanted<'a>,
    names: HashMap<&'a str, bool>,
    products: HashMap<&'a Id, bool>,
}

impl<'a> Meant<'a> {
    fn is(&mut self, name: &'a str) -> bool {
        *self.names.entry(name).or_insert_with(|| self.wanted.is(name))
    }

    fn is_in(&mut self, farm: &Farm, id: &'a Id) -> bool {
        let made = || farm.products.get(id).is_some_and(|product| self.wanted.is_in(product));
        *self.products.entry(id).or_insert_with(made)
    }
}

/// How much of an active a record put on its ground.
fn active_in<'a>(
    farm: &Farm,
    record: &'a Record,
    meant: &mut Meant<'a>,
    basis: ActiveBasis,
    left_out: &mut Vec<String>,
) -> MassPerArea {
    let mut sum = MassPerArea::ZERO;
    for line in &record.lines {
        let held: Vec<_> = line.actives.iter().filter(|held| meant.is(&held.name)).collect();
        if held.is_empty() && !line.amount.is_zero() && meant.is_in(farm, &line.product) {
            left_out.push(format!("{} does not say how much of it was in {}", named(record), line.name));
        }
        for held in held {
            match held.mass.value().over(record.area()) {
                Some(rate) if held.basis == basis => sum = sum + rate,
                Some(_) => left_out.push(format!("{} counts it as {}", named(record), held.basis.short())),
                None => left_out.push(format!("{} has no area", named(record))),
            }
        }
    }
    sum
}
