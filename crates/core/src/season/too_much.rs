//! What a record brings its fields to, against the season totals of labels and laws. It counts what was really sprayed, whatever
//! was planned.

use crate::farm::{Farm, Field, Id, Product, Record, Says, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::label::{laws, names_crop};
use crate::language::t;
use crate::mix::actives::Wanted;
use crate::mix::line::per_area;
use crate::quantity::rate::show_active;
use crate::quantity::{ActiveBasis, CarrierRate, Rate};
use crate::season::period::Window;
use crate::season::{Log, Reach, active_so_far, product_so_far};

/// A Check for each product or active of which a field has had more, up to and with a record, than a label or a law allows in its
/// period. The labels are read as they are typed now; a condition of a statement is taken to hold, and said to be.
pub fn judge(farm: &Farm, log: &Log, id: &Id, record: &Record) -> Vec<Finding> {
    let mut findings = Vec::new();
    let carrier = record.volume.as_ref().and_then(|volume| volume.value().over(record.area()));
    let mut seen: Vec<&str> = Vec::new();
    for line in record.lines.iter().filter(|line| !line.amount.is_zero()) {
        let Some(product) = farm.products.get(&line.product) else { continue };
        if seen.contains(&line.product.as_str()) {
            continue;
        }
        seen.push(&line.product);
        for (field_id, then) in &record.fields {
            let mut field = Field::new(&then.name, then.area.clone());
            field.planted = farm.fields.get(field_id).and_then(|now| now.planted);
            let totals = |says: &Says| matches!(says, Says::SeasonTotal { .. } | Says::ActiveSeasonTotal { .. });
            for (speaker, statement) in laws::binding(farm, product, record.date, totals) {
                let untold = then.crop.trim().is_empty() && !statement.crop.trim().is_empty();
                if !untold && !names_crop(statement, &then.crop) {
                    continue;
                }
                let on = On { farm, log, record, field_id, field: &field, product, carrier };
                let Some(had) = on.too_much(&line.product, statement) else { continue };
                let allows = if untold || !statement.when.is_empty() { "may-allow" } else { "allows" };
                let basis = speaker.basis(statement);
                let whose = if matches!(basis, Basis::Law(_)) { "law" } else { "label" };
                let text = t!(
                    "season-of-brings-to-of-the-as",
                    name = record.name,
                    date = record.date,
                    name2 = then.name,
                    sum = had.sum,
                    what = had.what,
                    words = had.window.words,
                    whose = whose,
                    allows = allows,
                    most = had.most
                );
                let finding = Finding::check(Subject::Record(id.clone()), text, basis)
                    .hint(t!("season-the-record-stays-as-it-is"));
                if !findings.contains(&finding) {
                    findings.push(finding);
                }
            }
        }
    }
    findings
}

/// A product of a record on one of its fields.
struct On<'a> {
    farm: &'a Farm,
    log: &'a Log,
    record: &'a Record,
    field_id: &'a Id,
    field: &'a Field,
    product: &'a Product,
    carrier: Option<CarrierRate>,
}

/// What a field has had of something, and the most of it.
struct Had {
    what: String,
    sum: String,
    most: String,
    window: Window,
}

impl On<'_> {
    /// What the field has had, where that is more than a statement allows; `None` also where the two cannot be compared.
    fn too_much(&self, product_id: &str, statement: &Statement) -> Option<Had> {
        let (nobody, units) = (Id::new(), self.farm.units);
        let (Says::SeasonTotal { per, .. } | Says::ActiveSeasonTotal { per, .. }) = &statement.says else {
            return None;
        };
        let window = Window::of(*per, self.field, self.record.date);
        let to = window.to.min(self.record.date);
        let reach = Reach { from: window.from, to, field: self.field_id, pass: &nobody, date: self.record.date };
        match &statement.says {
            Says::SeasonTotal { most, .. } => {
                // A rate in the spray says nothing over ground without the spray that went out.
                let carrier = match most.value() {
                    Rate::VolumePerArea(_)
                    | Rate::MassPerArea(_)
                    | Rate::OuncesPerArea(_)
                    | Rate::ActivePerArea(..) => CarrierRate::ZERO,
                    _ => self.carrier?,
                };
                let limit = per_area(most.value(), self.product, carrier).ok()?;
                let sum = product_so_far(self.farm, self.log, reach, product_id).sum?;
                (sum.exceeds(limit) == Some(true)).then(|| Had {
                    what: self.product.name.clone(),
                    sum: sum.show(units),
                    most: most.text().to_owned(),
                    window,
                })
            }
            Says::ActiveSeasonTotal { active, most, .. } => {
                let own = Wanted::new(active).in_product(self.product).next().map(|held| held.basis);
                let (limit, basis) = match most.value() {
                    Rate::ActivePerArea(limit, basis) => (limit, basis),
                    Rate::MassPerArea(limit) | Rate::OuncesPerArea(limit) => {
                        (limit, own.unwrap_or(ActiveBasis::ActiveIngredient))
                    }
                    _ => return None,
                };
                let sum = active_so_far(self.farm, self.log, reach, active, basis).sum;
                sum.exceeds(limit).then(|| Had {
                    what: active.clone(),
                    sum: show_active(sum, basis, units),
                    most: most.text().to_owned(),
                    window,
                })
            }
            _ => None,
        }
    }
}
