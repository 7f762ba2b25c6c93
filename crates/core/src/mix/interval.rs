//! Pairs that want days between them: one in this pass, the other in this tank, in another pass or in a record.

use jiff::civil::Date;

use super::pairs::{AtRate, InTank, Pair, Side};
use crate::farm::{CarrierKind, Farm, Id, Pass, Product};
use crate::finding::Finding;
use crate::language::t;
use crate::season::Log;

/// What else went or will go over the same ground.
struct Spraying<'a> {
    name: &'a str,
    date: Date,
    carrier: Option<CarrierKind>,
    products: Vec<&'a Product>,
}

impl Spraying<'_> {
    /// What of it stands on a side, by name.
    fn holds(&self, side: &Side) -> Option<&str> {
        match side {
            Side::Carrier(kind) => (self.carrier == Some(*kind)).then(|| kind.name()),
            side => self.products.iter().find(|product| side.fits(product)).map(|product| product.name.as_str()),
        }
    }
}

/// One row over this pass, the others and the records.
pub(super) fn judge(
    (farm, log): (&Farm, &Log),
    pass_id: &Id,
    pass: &Pass,
    pair: &Pair,
    crops: &[&str],
    tank: &[InTank<'_>],
    findings: &mut Vec<Finding>,
) {
    let Some((before, after)) = pair.apart else { return };
    let too_near = |first: Date, second: Date| {
        let days = (second - first).get_days();
        days < before && -days < after
    };
    let near = |date: Date| {
        let days = (date - pass.date).get_days();
        days < before.max(after) && -days < before.max(after)
    };
    let others = others(farm, log, pass_id, pass, near);
    for a in tank.iter().filter(|a| pair.a.fits(a.product)) {
        if pair.holds(*a, crops, tank, farm.units).is_none() {
            continue;
        }
        // What a row says of the carrier in one tank is another row.
        for b in tank.iter().filter(|b| b.id != a.id && pair.second_fits(b.product)) {
            let text = t!("mix-and-stand-in-one-tank", name = a.product.name, name2 = b.product.name);
            findings.push(pair.finding(a.id, &text, &AtRate::Any));
        }
        for other in others.iter().filter(|other| too_near(pass.date, other.date)) {
            let Some(name) = other.holds(&pair.b) else { continue };
            let text = t!(
                "mix-is-planned-for-for",
                name = a.product.name,
                date = pass.date,
                name2 = name,
                date2 = other.date,
                name3 = other.name
            );
            findings.push(pair.finding(a.id, &text, &AtRate::Any));
        }
    }
    // The same from the other side: this pass holds the second, another the first.
    let mine = Spraying {
        name: &pass.name,
        date: pass.date,
        carrier: Some(pass.carrier_kind),
        products: tank.iter().map(|held| held.product).collect(),
    };
    if let Some(name) = mine.holds(&pair.b) {
        let Some(about) = tank.iter().find(|held| held.product.name == name).or(tank.first()) else { return };
        if pair.holds(*about, crops, tank, farm.units).is_none() {
            return;
        }
        for other in others.iter().filter(|other| too_near(other.date, pass.date)) {
            let Some(first) = other.holds(&pair.a) else { continue };
            let text = t!(
                "mix-name-is-planned-for-date-first-for-date2-name2",
                name = name,
                date = pass.date,
                first = first,
                date2 = other.date,
                name2 = other.name
            );
            findings.push(pair.finding(about.id, &text, &AtRate::Any));
        }
    }
}

/// Other passes not yet recorded on the ground, and the records of others, that are near and share a field with this pass.
fn others<'a>(farm: &'a Farm, log: &Log, pass_id: &Id, pass: &Pass, near: impl Fn(Date) -> bool) -> Vec<Spraying<'a>> {
    let planned = farm
        .passes
        .iter()
        .filter(|(id, other)| {
            near(other.date)
                && other.fields.iter().any(|field| pass.fields.contains(field))
                && !farm.is_one_application(id, pass_id)
                && log.is_open(farm, id, &pass.fields)
        })
        .map(|(_, other)| Spraying {
            name: &other.name,
            date: other.date,
            carrier: Some(other.carrier_kind),
            products: other.mix.iter().filter_map(|line| farm.products.get(&line.product)).collect(),
        });
    // Each record once, in the order of the farm.
    let mut places: Vec<usize> = pass.fields.iter().flat_map(|field| log.places(field)).collect();
    places.sort_unstable();
    places.dedup();
    let recorded = places
        .into_iter()
        .filter_map(|place| farm.records.get_index(place))
        .map(|(_, record)| record)
        .filter(|record| {
            near(record.date) && !record.pass.as_ref().is_some_and(|of| farm.is_one_application(of, pass_id))
        })
        .map(|record| Spraying {
            name: &record.name,
            date: record.date,
            carrier: record.pass.as_ref().and_then(|id| farm.passes.get(id)).map(|pass| pass.carrier_kind),
            products: record.lines.iter().filter_map(|line| farm.products.get(&line.product)).collect(),
        });
    planned.chain(recorded).collect()
}
