//! Resistance groups: how often a group comes back on a field, and how many groups of a mix are effective on its weeds.
//!
//! A season is a calendar year. A group counts within its kind of product, since group 3 of the herbicides is not group 3
//! of the fungicides. Effective is a group of a product whose label, as typed, says that it controls the weed, and to which
//! the weed is not typed as resistant on the field. What works through the leaf and what works through the soil are not told
//! apart, nor is the rate: a group counts in full.
//!
//! # References
//! Use several effective groups at once: Norsworthy et al. 2012, Weed Science 60 (sp1):31-62, from memory. From which number
//! of times on a group is named is common practice without a source.

use std::collections::HashMap;

use super::when::same_weed;
use super::{Here, listed};
use crate::farm::label::Says;
use crate::farm::{Farm, Field, Product, ProductKind, Record};
use crate::finding::{Basis, Finding, Level, Subject};
use crate::language::t;
use crate::mix::actives;
use crate::season::Reach;
use crate::words::capital;
use jiff::civil::Date;

/// How many seasons are looked at, with that of the pass.
const SEASONS: i16 = 3;
/// From so many earlier times in these seasons on, or in the season of the pass itself, a person must decide.
const OFTEN: (usize, usize) = (3, 2);

/// The groups of an active: as typed, else as the table of actives has them. "Group 4/19" is two.
pub fn groups(active: &str, typed: &str) -> Vec<String> {
    actives::group_or(active, typed)
        .split(['/', ',', '+', '&', ';'])
        .map(plain)
        .filter(|group| !group.is_empty())
        .collect()
}

/// "Group 9", "HRAC 9" and "9" are one.
fn plain(group: &str) -> String {
    let group = group.trim().to_lowercase();
    let group = group.trim_start_matches("hrac").trim_start().trim_start_matches("group").trim();
    group.split_whitespace().next().unwrap_or_default().to_owned()
}

/// The number that a group of a kind of product bears today: of the herbicides 7 is now 5, and 8 is now 15. Older labels and
/// tables still print the old ones (the scheme of 2020, from memory).
pub fn of_today(kind: ProductKind, group: String) -> String {
    match (kind, group.as_str()) {
        (ProductKind::Herbicide, "7") => "5".to_owned(),
        (ProductKind::Herbicide, "8") => "15".to_owned(),
        _ => group,
    }
}

/// The groups of an active of a kind of product, by today's numbers.
fn groups_today(kind: ProductKind, active: &str, typed: &str) -> impl Iterator<Item = String> {
    groups(active, typed).into_iter().map(move |group| of_today(kind, group))
}

fn of_product(product: &Product) -> Vec<String> {
    let mut all: Vec<String> = Vec::new();
    if product.kind.is_pesticide() {
        for group in product.actives.iter().flat_map(|active| groups_today(product.kind, &active.name, &active.group)) {
            if !all.contains(&group) {
                all.push(group);
            }
        }
    }
    all
}

/// Whether a record put a group of a kind of product on its fields.
/// What is told of an active's name and typed group is kept in `known`, since thousands of lines name a handful.
fn holds<'a>(
    record: &'a Record,
    kind: ProductKind,
    group: &str,
    farm: &Farm,
    known: &mut HashMap<(&'a str, &'a str), bool>,
) -> bool {
    record.lines.iter().filter(|line| !line.amount.is_zero()).any(|line| {
        let product = farm.products.get(&line.product);
        // Of a product that is gone from the shed, the table of actives tells the herbicides.
        let is_kind = |active: &str| {
            product.map_or_else(
                || kind == ProductKind::Herbicide && actives::facts(active).is_some(),
                |product| product.kind == kind,
            )
        };
        let recorded = line.actives.iter().any(|active| {
            let (name, typed) = (active.name.as_str(), active.group.as_str());
            is_kind(name)
                && *known
                    .entry((name, typed))
                    .or_insert_with(|| groups_today(kind, name, typed).any(|of_active| of_active == group))
        });
        recorded
            || (line.actives.is_empty()
                && product
                    .is_some_and(|product| product.kind == kind && of_product(product).iter().any(|g| g == group)))
    })
}

/// Groups of the mix that its fields have had before.
pub(crate) fn repeated(all: &[Here], findings: &mut Vec<Finding>) {
    let mut kinds: Vec<(ProductKind, String)> = Vec::new();
    for here in all {
        for group in of_product(here.product) {
            let key = (here.product.kind, group);
            if !kinds.contains(&key) {
                kinds.push(key);
            }
        }
    }
    for (kind, group) in kinds {
        let mut known = HashMap::new();
        let mut by_count: Vec<(usize, Vec<String>)> = Vec::new();
        let mut often = false;
        let mut pass = None;
        for here in all.iter().filter(|here| here.product.kind == kind && of_product(here.product).contains(&group)) {
            pass = Some(here.pass_id);
            let this_year = here.pass.date.year();
            let reach = Reach {
                from: Date::new(this_year.saturating_sub(SEASONS - 1), 1, 1).unwrap_or(Date::MIN),
                to: here.pass.date,
                field: here.field_id,
                pass: here.pass_id,
                date: here.pass.date,
            };
            let earlier: Vec<Date> = reach
                .records(here.farm, here.log)
                .filter(|record| holds(record, kind, &group, here.farm, &mut known))
                .map(|record| record.date)
                .collect();
            let this_season = earlier.iter().filter(|day| day.year() == this_year).count();
            // Once in three seasons before is rotation enough to say nothing.
            if earlier.len() < 2 && this_season == 0 {
                continue;
            }
            often |= earlier.len() >= OFTEN.0 || this_season >= OFTEN.1;
            match by_count.iter_mut().find(|(count, _)| *count == earlier.len()) {
                Some((_, names)) if names.contains(&here.field.name) => {}
                Some((_, names)) => names.push(here.field.name.clone()),
                None => by_count.push((earlier.len(), vec![here.field.name.clone()])),
            }
        }
        let Some(pass) = pass.filter(|_| !by_count.is_empty()) else { continue };
        by_count.sort_by_key(|(count, _)| std::cmp::Reverse(*count));
        let parts: Vec<String> = by_count
            .iter()
            .enumerate()
            .map(|(at, (count, names))| {
                let (names, now) = (listed(names), ordinal(count + 1));
                if at == 0 {
                    t!("label-on-fields-times-in-seasons", times = count, names = names, seasons = SEASONS, now = now)
                } else {
                    t!("label-on-fields-times", times = count, names = names, now = now)
                }
            })
            .collect();
        let parts = parts.join("; ");
        let text = if kind == ProductKind::Herbicide {
            t!("label-group-was-sprayed", group = group, parts = parts)
        } else {
            t!("label-group-of-a-kind-was-sprayed", kind = capital(kind.name()), group = group, parts = parts)
        };
        let level = if often { Level::Check } else { Level::Note };
        findings.push(
            Finding::new(level, Subject::Pass(pass.clone()), text, Basis::Practice)
                .hint(t!("label-another-effective-group-in-the-mix")),
        );
    }
}

fn ordinal(number: usize) -> String {
    let ending = match (number % 10, number % 100) {
        (_, 11..=13) => "th",
        (1, _) => "st",
        (2, _) => "nd",
        (3, _) => "rd",
        _ => "th",
    };
    t!("label-ordinal", number = number, ending = ending)
}

/// Fields with the groups that are effective on them.
type Found = Vec<(Vec<String>, Vec<String>)>;

/// How many groups of the mix are effective on each weed of the pass, field by field.
pub(crate) fn effective(all: &[Here], findings: &mut Vec<Finding>) {
    let Some(first) = all.first() else { return };
    let about = || Subject::Pass(first.pass_id.clone());
    let weeds = &first.pass.weeds;
    if weeds.iter().all(|weed| weed.trim().is_empty()) {
        return;
    }
    let lists = |product: &Product| product.label.iter().any(|said| matches!(said.says, Says::Controls { .. }));
    let with_group = |here: &&Here| !of_product(here.product).is_empty();
    if !all.iter().any(|here| lists(here.product)) {
        findings.push(
            Finding::note(about(), t!("label-no-label-in-the-mix-says"), Basis::Practice)
                .hint(t!("label-type-controls-in-the-shed-with")),
        );
        return;
    }
    let mut silent: Vec<String> = Vec::new();
    for here in all.iter().filter(with_group).filter(|here| !lists(here.product)) {
        if !silent.contains(&here.product.name) {
            silent.push(here.product.name.clone());
        }
    }
    let hint = if silent.is_empty() {
        t!("label-add-a-product-of-another-group").to_owned()
    } else {
        t!("label-what-controls-is-not-typed-type", silent = listed(&silent))
    };
    for weed in weeds.iter().map(|weed| weed.trim()).filter(|weed| !weed.is_empty()) {
        let mut found: Found = Vec::new();
        let mut fields: Vec<&Field> = Vec::new();
        for here in all {
            if fields.iter().any(|field| std::ptr::eq(*field, here.field)) {
                continue;
            }
            fields.push(here.field);
            let of_field = all.iter().filter(|other| other.field_id == here.field_id);
            let working = working_groups(of_field, weed, here.field);
            match found.iter_mut().find(|(groups, _)| *groups == working) {
                Some((_, names)) => names.push(here.field.name.clone()),
                None => found.push((working, vec![here.field.name.clone()])),
            }
        }
        for (groups, names) in found {
            let on = listed(&names);
            let text = match groups.as_slice() {
                [] => {
                    t!("label-nothing-in-the-mix-controls-on", weed = weed, on = on)
                }
                [one] => t!("label-only-one-effective-group-is-in", weed = weed, on = on, one = one),
                _ => continue,
            };
            let basis = Basis::Published(t!("label-norsworthy-et-al-2012-weed-science").to_owned());
            findings.push(Finding::check(about(), text, basis).hint(hint.clone()));
        }
    }
}

/// The groups of a field's products that control a weed there. A statement that may not speak does not count.
fn working_groups<'a>(products: impl Iterator<Item = &'a Here<'a>>, weed: &str, field: &Field) -> Vec<String> {
    let resists = |kind: ProductKind, group: &String| {
        let named = |typed: &str| groups_today(kind, "", typed).any(|resisted| resisted == *group);
        field.resistant.iter().any(|resistant| same_weed(&resistant.weed, weed) && named(&resistant.group))
    };
    let mut working: Vec<String> = Vec::new();
    for here in products {
        let controls = here.spoken().filter(|spoken| spoken.doubt.is_empty()).any(|spoken| {
            matches!(&spoken.statement.says,
                Says::Controls { weeds } if weeds.split([',', ';']).any(|name| same_weed(name, weed)))
        });
        if !controls {
            continue;
        }
        for group in of_product(here.product) {
            // Two kinds of product may share a number.
            if !resists(here.product.kind, &group) && !working.contains(&group) {
                working.push(group);
            }
        }
    }
    working.sort();
    working
}

#[cfg(test)]
mod tests {
    use super::{groups, of_today, ordinal};
    use crate::farm::ProductKind;

    #[test]
    fn groups_however_they_are_written() {
        assert_eq!(groups("x", "Group 4/19"), ["4", "19"]);
        assert_eq!(groups("x", "HRAC group 27"), ["27"]);
        assert_eq!(groups("glyphosate", ""), ["9"]);
        assert!(groups("x", " ").is_empty());
    }

    #[test]
    fn old_numbers_of_herbicides_alone_are_brought_up_to_date() {
        for (kind, old, new) in [
            (ProductKind::Herbicide, "7", "5"),
            (ProductKind::Herbicide, "8", "15"),
            (ProductKind::Herbicide, "9", "9"),
            (ProductKind::Fungicide, "7", "7"),
        ] {
            assert_eq!(of_today(kind, old.to_owned()), new);
        }
    }

    #[test]
    fn ordinals() {
        for (number, text) in
            [(1, "1st"), (2, "2nd"), (3, "3rd"), (4, "4th"), (11, "11th"), (22, "22nd"), (113, "113th")]
        {
            assert_eq!(ordinal(number), text);
        }
    }
}
