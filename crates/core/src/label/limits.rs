//! All limits of the labels, on every field of a pass.

use super::{Bound, End};
use super::{carrier, harvest, rate, season, stage, typed};
use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::mix::choice;
use crate::mix::line::{PlannedLine, per_area};
use crate::plan::PlannedField;
use crate::quantity::{AsTyped, CarrierRate, Rate};
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
) -> Vec<Bound> {
    let season = season::Season { farm, pass: pass_id, date: pass.date, carrier, lines };
    season.note_passes(findings);
    let mut bounds = Vec::new();
    for line in lines {
        let Some(product) = farm.products.get(&line.product) else { continue };
        // "At least" and "at most" as the user typed them bind the rounding like a label.
        let typed_line = pass.mix.iter().find(|typed| typed.product == line.product);
        let own = |rate: Option<&AsTyped<Rate>>| per_area(rate?.value(), product, carrier).ok();
        let own_most = own(typed_line.and_then(|typed| typed.at_most.as_ref()));
        let own_least = own(typed_line.and_then(|typed| typed.at_least.as_ref()))
            .filter(|least| least.exceeds(line.per_area) == Some(false));
        let partners = choice::most_allowed(line, product, farm, lines, carrier);
        for planned in fields {
            let Some(field) = farm.fields.get(&planned.field) else { continue };
            rate::judge(line, product, field, carrier, farm.units, findings);
            carrier::judge(&line.product, product, field, carrier, farm.units, findings);
            stage::judge(product, &planned.field, field, findings);
            harvest::judge(&line.product, product, &planned.field, field, pass.date, findings);
            typed::judge(&line.product, product, field, findings);
            season.judge(line, product, (&planned.field, field), findings, workings, &mut bounds);
            let (least, most) = rate::bounds(line, product, field, carrier);
            let ends = [
                (End::Most, most),
                (End::Most, own_most),
                (End::Most, partners),
                (End::Least, least),
                (End::Least, own_least),
            ];
            bounds.extend(ends.into_iter().filter_map(|(end, amount)| {
                Some(Bound { product: line.product.clone(), field: planned.field.clone(), end, amount: amount? })
            }));
        }
    }
    bounds
}
