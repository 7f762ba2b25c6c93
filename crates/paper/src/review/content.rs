//! What stands on the sheets of a review, in which order.

use jiff::civil::Date;
use tankard_core::farm::Farm;
use tankard_core::language::days::short_date;
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::season::review::words::{self, by_number};
use tankard_core::season::review::{Choice, Figures, Index, Picked, Review, review};
use tankard_core::t;

use super::parts::{Content, Section, say};
use super::{ground, money, products, ratings};

/// What every section is made from.
pub(super) struct Shown<'a> {
    pub(super) farm: &'a Farm,
    pub(super) picked: &'a Picked<'a>,
    pub(super) review: &'a Review,
    pub(super) figures: &'a Figures,
    /// The day of printing.
    pub(super) printed: Date,
    /// "2031", "2029 to 2031".
    pub(super) seasons: &'a str,
}

/// What the review of what a choice picks says on paper.
pub fn content(farm: &Farm, choice: &Choice, printed: Date) -> Content {
    content_told(farm, choice, printed, &untold).unwrap_or_default()
}

/// The same, told how many records are held against their labels.
pub(super) fn content_told(farm: &Farm, choice: &Choice, printed: Date, tell: &Tell<'_>) -> Result<Content, Cancelled> {
    let index = Index::of(farm);
    let picked = index.pick(choice);
    let review = review(&picked);
    let figures = Figures { units: farm.units, currency: farm.currency.clone() };
    let seasons = seasons(choice, &review);
    let shown = Shown { farm, picked: &picked, review: &review, figures: &figures, printed, seasons: &seasons };
    let sections = if review.passes.passes == 0 {
        vec![Section { title: t!("paper-overview").to_owned(), parts: vec![say(t!("paper-no-record-fits"))] }]
    } else {
        vec![
            section(t!("paper-overview"), ground::overview(&shown)),
            section(t!("paper-products"), products::products(&shown)),
            section(t!("paper-actives"), products::actives(&shown)),
            section(t!("paper-resistance-groups"), products::groups(&shown)),
            section(t!("paper-adjuvants"), money::adjuvants(&shown)),
            section(t!("paper-planned-and-applied"), ground::planned(&shown)),
            section(t!("paper-weather"), ground::weather(&shown, tell)?),
            section(t!("paper-cost"), money::cost(&shown)),
            section(t!("paper-water-and-hours"), ground::work(&shown)),
            section(t!("paper-outcomes"), ratings::outcomes(&shown)),
            section(t!("paper-trials"), ratings::trials(&shown)),
        ]
    };
    let keeping = &farm.keeping;
    let holder: Vec<&str> = [&keeping.holder, &keeping.address, &keeping.number]
        .map(|text| text.trim())
        .into_iter()
        .filter(|text| !text.is_empty())
        .collect();
    Ok(Content {
        paper: farm.paper,
        farm: farm.name.clone(),
        holder: holder.join(", "),
        of: of(&index, choice, &seasons),
        printed: t!("paper-printed", printed = short_date(printed)),
        about: vec![
            t!("paper-what-the-records-of-the-farm").to_owned(),
            t!("paper-the-label-and-local-law-govern").to_owned(),
        ],
        sections,
    })
}

fn section(title: &str, parts: Vec<super::Part>) -> Section {
    Section { title: title.to_owned(), parts }
}

fn seasons(choice: &Choice, review: &Review) -> String {
    let years = || review.passes.years.iter().map(|year| year.year);
    let open = (choice.from, choice.to) == (Date::MIN, Date::MAX);
    let (first, last) =
        if open { (years().min(), years().max()) } else { (Some(choice.from.year()), Some(choice.to.year())) };
    match (first, last) {
        (Some(first), Some(last)) if first == last => first.to_string(),
        (Some(first), Some(last)) => t!("paper-to", first = first, last = last),
        _ => String::new(),
    }
}

/// "Seasons 2029 to 2031, Mill field, corn".
fn of(index: &Index, choice: &Choice, seasons: &str) -> String {
    let when = match seasons {
        "" => t!("paper-all-seasons").to_owned(),
        one if one.len() > 4 => t!("paper-seasons", one = one),
        one => t!("paper-season", one = one),
    };
    let mut fields: Vec<&str> =
        index.fields().filter(|(id, _)| choice.fields.contains(id)).map(|(_, name)| name).collect();
    fields.sort_by_cached_key(|name| by_number(name));
    let crops = choice.crops.iter().map(|crop| words::crop(crop));
    std::iter::once(when.as_str()).chain(fields).chain(crops).collect::<Vec<_>>().join(", ")
}
