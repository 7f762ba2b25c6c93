//! All limits of the labels, on every field of a pass.

use super::when::Situation;
use super::{Bound, End, Here};
use super::{applications, boom_height, buffer, carrier, dates, droplets, ground_speed, groups, harvest, laws};
use super::{ends, partners, plant_back, rate, re_entry, restricted, season, stage, tolerance, typed, weather};
use crate::farm::{Farm, Id, Pass};
use crate::finding::Finding;
use crate::mix::choice;
use crate::mix::line::{PlannedLine, per_area};
use crate::plan::PlannedField;
use crate::quantity::{AsTyped, CarrierRate, Rate};
use crate::season::Log;
use crate::working::Working;

/// Label limits on every field; gives, for each line and field, how far the rounding may go.
#[allow(clippy::too_many_arguments)] // The walk's state, handed on.
pub(crate) fn judge(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    fields: &[PlannedField],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) -> Vec<Bound> {
    let season = season::Season { farm, log, pass: pass_id, date: pass.date, lines };
    season.note_passes(findings);
    let mut bounds = Vec::new();
    let known: Vec<_> =
        lines.iter().filter_map(|line| Some((line, farm.products.get_key_value(&line.product)?))).collect();
    let situations: Vec<Situation> =
        known.iter().map(|(_, (id, product))| Situation::new(farm, pass, id, product)).collect();
    let mut all: Vec<Here> = Vec::new();
    for ((line, (id, product)), situation) in known.into_iter().zip(&situations) {
        // "At least" and "at most" as the user typed them bind the rounding like a label.
        let typed_line = pass.mix.iter().find(|typed| typed.product == line.product);
        let own = |rate: Option<&AsTyped<Rate>>| per_area(rate?.value(), product, carrier).ok();
        let own_most = own(typed_line.and_then(|typed| typed.at_most.as_ref()));
        let own_least = own(typed_line.and_then(|typed| typed.at_least.as_ref()))
            .filter(|least| least.exceeds(line.per_area) == Some(false));
        let partners = choice::most_allowed(line, product, farm, lines, carrier);
        ends::judge(id, product, carrier, farm.units, findings);
        for planned in fields {
            let Some((field_id, field)) = farm.fields.get_key_value(&planned.field) else { continue };
            let area = planned.area;
            let here = Here { farm, log, pass_id, pass, carrier, id, product, field_id, field, area, situation };
            rate::judge(line, &here, findings);
            carrier::judge(&here, findings);
            stage::judge(&here, findings);
            dates::judge(&here, findings);
            harvest::judge(&here, findings);
            applications::judge(&here, findings, workings);
            partners::judge(&here, findings);
            buffer::judge(&here, findings);
            laws::judge(&here, findings);
            weather::temperature(&here, findings);
            typed::judge(&line.product, product, field, findings);
            season.judge(line, &here, findings, workings, &mut bounds);
            all.push(here);
            let (least, most) = rate::bounds(line, &here);
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
    of_the_pass(pass_id, &all, findings);
    let by_field = |planned: &PlannedField| -> Vec<Here> {
        all.iter().filter(|here| *here.field_id == planned.field).copied().collect()
    };
    let by_field: Vec<Vec<Here>> = fields.iter().map(by_field).collect();
    plant_back::judge(&by_field, findings);
    for rows in &by_field {
        season.of_what_was_sprayed(rows, findings, workings, &mut bounds);
    }
    for here in by_field.iter().filter_map(|rows| rows.first()) {
        harvest::recorded(here, findings);
    }
    bounds
}

/// What is said once for all products and fields.
fn of_the_pass(pass_id: &Id, all: &[Here], findings: &mut Vec<Finding>) {
    let (mut droplets, mut speeds, mut heights) = (Vec::new(), Vec::new(), Vec::new());
    let class = all.first().map(|here| droplets::of_the_pass(here.farm, here.pass, here.carrier));
    for here in all {
        if let Some(class) = &class {
            droplets::judge(here, class, findings, &mut droplets);
        }
        ground_speed::judge(here, findings, &mut speeds);
        boom_height::judge(here, findings, &mut heights);
    }
    findings.extend(class.and_then(|class| droplets::not_typed(pass_id, &class, droplets)));
    findings.extend(ground_speed::not_typed(pass_id, speeds));
    findings.extend(boom_height::not_typed(pass_id, heights));
    groups::effective(all, findings);
    groups::repeated(all, findings);
    weather::on_the_day(all, findings);
    re_entry::judge(all, findings);
    tolerance::judge(all, findings);
    restricted::judge(all, findings);
}
