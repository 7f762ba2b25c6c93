//! All limits of the labels, on every field of a pass.

use super::Cap;
use super::{adjuvant, carrier, harvest, rate, season, stage, typed};
use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::mix::line::{PlannedLine, per_area};
use crate::plan::PlannedField;
use crate::quantity::CarrierRate;
use crate::working::Working;

/// Label limits on every field; gives, for each line and field, how far the rounding may go.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn judge(
    farm: &Farm,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<Cap> {
    let season = season::Season { farm, pass: pass_id, date: pass.date, carrier, lines };
    season.note_passes(findings);
    let mut caps = Vec::new();
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        // "At most" as the user typed it binds the rounding like a label.
        let own = pass
            .mix
            .iter()
            .find(|typed| typed.product == line.product)
            .and_then(|typed| typed.at_most.as_ref())
            .and_then(|most| per_area(most.value(), product, carrier).ok());
        let partners = adjuvant::cap(line, product, farm, lines, carrier);
        for planned in fields {
            let Some(field) = farm.fields.get(&planned.field) else { continue };
            rate::judge(line, product, field, carrier, farm.units, findings);
            carrier::judge(&line.product, product, field, carrier, farm.units, findings);
            stage::judge(product, &planned.field, field, findings);
            harvest::judge(&line.product, product, &planned.field, field, pass.date, findings);
            adjuvant::judge(&line.product, product, field, farm, lines, carrier, findings);
            typed::judge(&line.product, product, field, findings);
            season.judge(line, product, (&planned.field, field), findings, workings, &mut caps);
            let range = rate::cap(line, product, field, carrier);
            caps.extend([range, own, partners].into_iter().flatten().map(|most| Cap {
                product: line.product.clone(),
                field: planned.field.clone(),
                most,
            }));
        }
    }
    caps
}
