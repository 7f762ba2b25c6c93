//! What a label may not be mixed with: in the tank, and on the same field within some days.
//!
//! "Within 7 days" takes in the seventh. Words that name nothing the program knows are not judged, and said.

use super::applications::in_days;
use super::names::{in_any_language, list, parts, understood};
use super::{Here, Spoken, harvest, listed};
use crate::farm::label::Says;
use crate::farm::{Product, RecordLine};
use crate::finding::{Finding, Subject};
use crate::language::t;
use crate::season::Reach;

/// The forbidden partners of a product on a field.
pub(crate) fn judge(here: &Here, findings: &mut Vec<Finding>) {
    let mut unread: Vec<(String, Spoken)> = Vec::new();
    for spoken in here.spoken() {
        let Says::NotWith { what, days } = &spoken.statement.says else { continue };
        let parts = parts(what);
        if parts.is_empty() {
            continue;
        }
        let names = |product: &Product| list(what, product);
        for partner in here.situation.partners.iter().filter(|partner| names(partner)) {
            let text =
                t!("label-may-not-be-mixed-with-is", name = here.product.name, what = what, name2 = partner.name);
            findings.push(spoken.forbid(here.about_product(), text).hint(t!("label-take-one-of-the-two-out")));
        }
        if *days > 0 {
            recorded(here, &spoken, what, *days, &names, &parts, findings);
            planned(here, &spoken, what, *days, &names, findings);
        }
        if !understood(what, here.farm) && !parts.iter().all(|part| understood(part, here.farm)) {
            unread.push((what.clone(), spoken));
        }
    }
    let words: Vec<String> = unread.iter().map(|(what, _)| format!("\"{what}\"")).collect();
    if let Some((_, spoken)) = unread.first() {
        findings.push(
            Finding::note(
                here.about_product(),
                t!("label-not-together-with-these-words-are", name = here.product.name, words = listed(&words)),
                spoken.basis(),
            )
            .hint(t!("label-read-the-mix-against-them-or")),
        );
    }
}

fn recorded(
    here: &Here,
    spoken: &Spoken,
    what: &str,
    days: u32,
    names: &impl Fn(&Product) -> bool,
    parts: &[String],
    findings: &mut Vec<Finding>,
) {
    let gone = |line: &RecordLine| {
        let is = |name: &str| parts.iter().any(|part| part.eq_ignore_ascii_case(name.trim()));
        is(&line.name)
            || line.actives.iter().any(|active| {
                is(&active.name) || in_any_language(|| is(&t!("label-group-group", group = active.group.trim())))
            })
    };
    for record in Reach::always(here.field_id, here.pass_id, here.pass.date).records(here.farm, here.log) {
        let apart = here.pass.date.since(record.date).map_or(i32::MAX, |span| span.get_days());
        if apart.unsigned_abs() > days {
            continue;
        }
        // A line of the product itself is no partner of it.
        let hit =
            record.lines.iter().filter(|line| line.product != *here.id && !line.amount.is_zero()).find(
                |line| match here.farm.products.get(&line.product) {
                    Some(product) => names(product),
                    None => gone(line),
                },
            );
        let Some(line) = hit else { continue };
        let (name, within) = (&here.product.name, in_days(i32::try_from(days).unwrap_or(i32::MAX)));
        let (field, partner, date) = (&here.field.name, &line.name, record.date);
        let text = match apart {
            0 => t!(
                "label-may-not-come-within-same-day",
                name = name,
                days = within,
                what = what,
                field = field,
                partner = partner,
                date = date
            ),
            1.. => t!(
                "label-may-not-come-within-before",
                name = name,
                days = within,
                what = what,
                field = field,
                partner = partner,
                date = date,
                apart = in_days(apart)
            ),
            _ => t!(
                "label-may-not-come-within-after",
                name = name,
                days = within,
                what = what,
                field = field,
                partner = partner,
                date = date,
                apart = in_days(-apart)
            ),
        };
        let hint = days
            .checked_add(1)
            .and_then(|days| harvest::days_after(record.date, days))
            .map_or_else(|| t!("label-choose-another-product").to_owned(), |day| t!("label-not-before", day = day));
        findings.push(spoken.forbid(here.about_field(), text).hint(hint));
    }
}

/// Other passes on the field that are planned within the days and not recorded: a Check, since they may not come about.
fn planned(
    here: &Here,
    spoken: &Spoken,
    what: &str,
    days: u32,
    names: &impl Fn(&Product) -> bool,
    findings: &mut Vec<Finding>,
) {
    for (id, other) in &here.farm.passes {
        let apart = here.pass.date.since(other.date).map_or(i32::MAX, |span| span.get_days());
        let elsewhere = id == here.pass_id || !other.fields.contains(here.field_id) || apart.unsigned_abs() > days;
        if elsewhere || !here.log.is_open(here.farm, id, std::slice::from_ref(here.field_id)) {
            continue;
        }
        let partner = other
            .mix
            .iter()
            .filter(|line| line.product != *here.id)
            .filter_map(|line| here.farm.products.get(&line.product))
            .find(|product| names(product));
        if let Some(partner) = partner {
            findings.push(
                Finding::check(
                    Subject::Pass(id.clone()),
                    t!(
                        "label-may-not-come-within-of-of",
                        name = here.product.name,
                        days = in_days(i32::try_from(days).unwrap_or(i32::MAX)),
                        what = what,
                        name2 = other.name,
                        date = other.date,
                        name3 = partner.name,
                        name4 = here.field.name
                    ),
                    spoken.basis(),
                )
                .hint(t!("label-move-one-of-the-two-passes")),
            );
        }
    }
}
