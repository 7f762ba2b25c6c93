//! What stands on the sheets of a review, in which order.

use jiff::civil::Date;
use tankard_core::farm::Farm;
use tankard_core::loads::card::short_date;
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::season::review::words::{self, by_number};
use tankard_core::season::review::{Choice, Figures, Index, Picked, Review, review};

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
        vec![Section { title: "Overview".to_owned(), parts: vec![say("No record fits what is chosen.")] }]
    } else {
        vec![
            section("Overview", ground::overview(&shown)),
            section("Products", products::products(&shown)),
            section("Actives", products::actives(&shown)),
            section("Resistance groups", products::groups(&shown)),
            section("Adjuvants", money::adjuvants(&shown)),
            section("Planned and applied", ground::planned(&shown)),
            section("Weather", ground::weather(&shown, tell)?),
            section("Cost", money::cost(&shown)),
            section("Water and hours", ground::work(&shown)),
            section("Outcomes", ratings::outcomes(&shown)),
            section("Trials", ratings::trials(&shown)),
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
        printed: format!("printed {}", short_date(printed)),
        about: vec![
            "What the records of the farm come to, reckoned from what was typed in them. What a record does not say is in no sum, and \
             how often that is so stands beside the sums."
                .to_owned(),
            "The label and local law govern. The review says what was recorded and rated on this farm; it never says why, and it \
             is no record that a law asks for."
                .to_owned(),
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
        (Some(first), Some(last)) => format!("{first} to {last}"),
        _ => String::new(),
    }
}

/// "Seasons 2029 to 2031, Mill field, corn".
fn of(index: &Index, choice: &Choice, seasons: &str) -> String {
    let when = match seasons {
        "" => "All seasons".to_owned(),
        one if one.len() > 4 => format!("Seasons {one}"),
        one => format!("Season {one}"),
    };
    let mut fields: Vec<&str> =
        index.fields().filter(|(id, _)| choice.fields.contains(id)).map(|(_, name)| name).collect();
    fields.sort_by_cached_key(|name| by_number(name));
    let crops = choice.crops.iter().map(|crop| words::crop(crop));
    std::iter::once(when.as_str()).chain(fields).chain(crops).collect::<Vec<_>>().join(", ")
}
