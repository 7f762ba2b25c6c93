//! Months before another crop may follow: for the next crop after this pass and after the records, and for the crop that
//! stands, from what was sprayed before it was planted.

use jiff::civil::Date;

use super::{Here, Spoken, harvest, listed};
use crate::farm::label::Says;
use crate::farm::{Field, crop};
use crate::finding::{Basis, Finding};
use crate::language::t;
use crate::season::binds::{Bind, Binds, binds, names_crop};

/// A day before which a crop may not be planted, and who says so.
#[derive(PartialEq, Eq)]
struct Until {
    crop: String,
    day: Date,
    words: String,
    at: String,
}

/// The plant-back times on all fields of the pass, given as the rows of each; what is the same on several is said once.
pub(crate) fn judge(fields: &[Vec<Here>], findings: &mut Vec<Finding>) {
    let mut said: Vec<(Until, Vec<&Here>)> = Vec::new();
    for rows in fields {
        let (Some(here), Some(until)) = (rows.first(), on_field(rows, findings)) else { continue };
        match said.iter_mut().find(|(known, _)| *known == until) {
            Some((_, places)) => places.push(here),
            None => said.push((until, vec![here])),
        }
    }
    for (until, places) in said {
        let names: Vec<String> = places.iter().map(|here| here.field.name.clone()).collect();
        let Some(first) = places.first() else { continue };
        findings.push(
            Finding::note(
                first.about_field(),
                t!(
                    "label-may-not-be-planted-before",
                    names = listed(&names),
                    crop = until.crop,
                    day = until.day,
                    words = until.words
                ),
                Basis::Label(until.at),
            )
            .hint(t!("label-cold-and-drought-lengthen-what-the")),
        );
    }
}

/// The latest of the days that the products of the pass and the records name for the next crop of a field, where it lies
/// beyond the harvest.
fn on_field(rows: &[Here], findings: &mut Vec<Finding>) -> Option<Until> {
    let here = rows.first()?;
    let field = here.field;
    // Before its harvest nothing is planted after the crop that stands.
    let free = field.harvest.unwrap_or(here.pass.date);
    let planted = field.planted.unwrap_or(here.pass.date);
    let bound = binds(here.farm, here.log, here.field_id, field, free.min(planted));
    standing(here, &bound, findings);
    let next = field.next_crop.trim();
    if next.is_empty() {
        return None;
    }
    let mut latest: Option<Until> = None;
    let mut later = |until: Until| {
        if latest.as_ref().is_none_or(|latest| until.day > latest.day) {
            latest = Some(until);
        }
    };
    for row in rows {
        let typed: Vec<(Spoken, &str, u32)> = row
            .spoken()
            .filter_map(|spoken| match &spoken.statement.says {
                Says::PlantBack { next_crop, months } => Some((spoken, next_crop.as_str(), *months)),
                _ => None,
            })
            .collect();
        let most = |by_name: bool| {
            typed
                .iter()
                .filter(|(_, crop, _)| names_crop(crop, next) == Some(by_name))
                .max_by_key(|(.., months)| *months)
        };
        if let Some((spoken, _, months)) = most(true).or_else(|| most(false)) {
            let day = harvest::months_after(row.pass.date, *months).unwrap_or(Date::MAX);
            let words = t!("label-months-after", months = months, name = row.product.name);
            later(Until { crop: next.to_owned(), day, words, at: spoken.at() });
        } else if let Some((spoken, ..)) = typed.first() {
            findings.push(
                Finding::check(
                    row.about_product(),
                    t!("label-the-label-of-names-when-other", name = row.product.name, next = next),
                    spoken.basis(),
                )
                .hint(t!("label-type-what-it-says-of-this")),
            );
        }
    }
    for bind in &bound {
        if let Binds::Planting { months, .. } = &bind.binds
            && bind.keeps_from(next)
            && bind.record.date <= here.pass.date
        {
            let words = t!("label-months-after-of", months = months, name = bind.product.name, date = bind.record.date);
            later(Until { crop: next.to_owned(), day: bind.until, words, at: bind.at.clone() });
        }
    }
    latest.filter(|until| until.day > free)
}

/// The limit that ran longest beyond the planting of the crop that stands, of those that had not run out by then. Without a day of
/// planting the day that is given stands in.
pub(crate) fn planted_too_early<'a, 'b>(
    bound: &'b [Bind<'a>],
    field_id: &str,
    field: &Field,
    day: Date,
) -> Option<&'b Bind<'a>> {
    let standing = field.crop.trim();
    let start = field.planted.unwrap_or(day);
    let ran = |bind: &&Bind| {
        let then = bind.record.fields.get(field_id).map_or("", |then| then.crop.trim());
        // Without a day of planting, what was sprayed on the crop itself is no plant-back.
        let before =
            bind.record.date < start && (field.planted.is_some() || !(then.is_empty() || crop::same(then, standing)));
        before && bind.keeps_from(standing) && bind.until > start
    };
    // Of several that run as long, the first.
    bound.iter().filter(ran).reduce(|worst, bind| if bind.until > worst.until { bind } else { worst })
}

/// Plant-back times that had not run out when the crop that stands was planted.
fn standing(here: &Here, bound: &[Bind], findings: &mut Vec<Finding>) {
    let field = here.field;
    let crop = field.crop.trim();
    let Some(bind) = planted_too_early(bound, here.field_id, field, here.pass.date) else { return };
    let Binds::Planting { months, .. } = &bind.binds else { return };
    let (name, product, date, until) = (&field.name, &bind.product.name, bind.record.date, bind.until);
    let text = match field.planted {
        Some(planted) => t!(
            "label-planted-too-early",
            name = name,
            product = product,
            date = date,
            months = months,
            crop = crop,
            until = until,
            planted = planted
        ),
        None => t!(
            "label-perhaps-planted-too-early",
            name = name,
            product = product,
            date = date,
            months = months,
            crop = crop,
            until = until
        ),
    };
    findings.push(
        Finding::check(here.about_field(), text, Basis::Label(bind.at.clone()))
            .hint(t!("label-look-at-the-crop-before-more")),
    );
}
