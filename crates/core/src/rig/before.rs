//! What a rig held before a pass: the pass before it, planned or recorded, from which something is still in tank, lines and boom that
//! the pass itself does not hold. It says why that matters to what grows there, and how it is cleaned out.
//!
//! Which pass comes first is asked of what is decided: days, records, places held in the day, typed starts. Where nothing decides
//! between two passes of a day, each is told of the other; no order is guessed here, since a better one may be reckoned for the day.

use std::borrow::Cow;

use jiff::civil::{Date, Time};

use super::clean_out::{self, pesticides, table};
use super::rinse::{self, strength};
use crate::farm::{Farm, Field, Id, Pass, Product, ProductKind, Record, Rig, Says};
use crate::finding::{Basis, Finding, Subject};
use crate::label::{self, for_crop, listed, once};
use crate::language::{Say, say, t};
use crate::quantity::{AsTyped, Quantity, Share, Units, Volume};
use crate::season::Log;

/// The clean-out that is due before the first load of a pass.
#[derive(Clone, Debug, PartialEq)]
pub struct CleanFirst {
    /// The passes that it follows, or may follow, by name and day.
    pub after: Vec<(String, Date)>,
    /// Which of them comes before it is not decided, and for all that is known it may be none.
    pub undecided: bool,
    /// The products that are to be out of the rig, by name.
    pub products: Vec<String>,
    /// How it is rinsed; `None` where the tank is not typed.
    pub rinsing: Option<Rinsing>,
    /// What labels say of it, word for word.
    pub how: Vec<String>,
}

/// Rinses that leave little enough.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Rinsing {
    /// How many.
    pub rinses: u32,
    /// Clean water in each.
    pub each: Volume,
    /// Share of the strength that is left; `None` where it is not known what stays in the rig.
    pub left: Option<Share>,
}

impl Rinsing {
    /// In words on a card: "3 rinses of 26.7 gal".
    pub(crate) fn said(self, units: Units) -> Say {
        say("card-rinses").with("count", self.rinses).with("each", self.each.show(units))
    }
}

/// How it is known that one pass comes before another.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Known {
    Recorded,
    Planned,
    Undecided,
}

/// What was or is to be sprayed.
#[derive(Clone, Copy, Debug)]
pub(crate) enum Sprayed<'a> {
    Plan(&'a Pass),
    Record(&'a Record),
}

impl<'a> Sprayed<'a> {
    pub(crate) fn name(self) -> &'a str {
        match self {
            Self::Plan(pass) => &pass.name,
            Self::Record(record) => &record.name,
        }
    }

    /// Its day, and the time at which it started.
    pub(crate) fn when(self) -> (Date, Option<Time>) {
        match self {
            Self::Plan(pass) => (pass.date, pass.start),
            Self::Record(record) => (record.date, record.start),
        }
    }

    /// As a pass, for what the conditions on labels ask.
    fn pass(self, farm: &'a Farm) -> Cow<'a, Pass> {
        match self {
            Self::Plan(pass) => Cow::Borrowed(pass),
            Self::Record(record) => match record.pass.as_ref().and_then(|id| farm.passes.get(id)) {
                Some(pass) => Cow::Borrowed(pass),
                None => Cow::Owned(Pass {
                    fields: record.fields.keys().cloned().collect(),
                    ..Pass::new(&record.name, record.date)
                }),
            },
        }
    }

    /// What tells which products were in it: a record without any leaves that to its plan.
    fn mix(self, farm: &'a Farm) -> Self {
        match self {
            Self::Record(record) if record.lines.is_empty() => {
                record.pass.as_ref().and_then(|id| farm.passes.get(id)).map_or(self, Self::Plan)
            }
            _ => self,
        }
    }

    /// The pesticides in it of which the farm knows.
    pub(crate) fn pesticides(self, farm: &'a Farm) -> Vec<&'a Product> {
        match self.mix(farm) {
            Self::Plan(pass) => pesticides(farm, pass).map(|(_, product)| product).collect(),
            Self::Record(record) => {
                let lines = record.lines.iter().filter(|line| !line.amount.is_zero());
                lines
                    .filter_map(|line| farm.products.get(&line.product))
                    .filter(|product| product.kind.is_pesticide())
                    .collect()
            }
        }
    }

    /// The pesticides that another pass does not hold, each with what the farm knows of it. What is in the farm no more counts as one,
    /// unless its record says that it is none.
    fn leaves(self, farm: &'a Farm, next: &Pass) -> Vec<(&'a str, Option<(&'a Id, &'a Product)>)> {
        let gone = |id: &str| next.mix.iter().all(|line| line.product != id);
        match self.mix(farm) {
            Self::Plan(pass) => pesticides(farm, pass)
                .filter(|(id, _)| gone(id))
                .map(|(id, product)| (product.name.as_str(), Some((id, product))))
                .collect(),
            Self::Record(record) => record
                .lines
                .iter()
                .filter(|line| !line.amount.is_zero() && gone(&line.product))
                .filter_map(|line| match farm.products.get_key_value(&line.product) {
                    Some((id, product)) => {
                        product.kind.is_pesticide().then_some((product.name.as_str(), Some((id, product))))
                    }
                    None => line.kind.is_none_or(ProductKind::is_pesticide).then_some((line.name.as_str(), None)),
                })
                .collect(),
        }
    }
}

/// Whether one pass of a rig comes before another of its day; `None` where nothing decides it.
fn comes_first(farm: &Farm, log: &Log, (one_id, one): (&Id, &Pass), (other_id, other): (&Id, &Pass)) -> Option<bool> {
    if one.begins_with().is_some_and(|in_tank| in_tank.from == *other_id) {
        return Some(false);
    }
    if other.begins_with().is_some_and(|in_tank| in_tank.from == *one_id) {
        return Some(true);
    }
    let day = farm.days.get(&one.date.to_string());
    let held = |id: &Id| day.and_then(|day| day.pinned.get(id)).map(|place| *place as usize);
    // Those sprayed already have the first places.
    let of_rig = || farm.passes.iter().filter(|(_, pass)| pass.date == one.date && pass.rig == one.rig);
    let is_first = |place: usize| place <= of_rig().filter(|(id, _)| log.is_recorded(farm, id)).count() + 1;
    let is_last = |place: usize| place >= of_rig().count();
    match (held(one_id), held(other_id)) {
        (Some(a), Some(b)) if a != b => return Some(a < b),
        (Some(a), None) if is_first(a) => return Some(true),
        (Some(a), None) if is_last(a) => return Some(false),
        (None, Some(b)) if is_first(b) => return Some(false),
        (None, Some(b)) if is_last(b) => return Some(true),
        _ => {}
    }
    one.start.zip(other.start).filter(|(a, b)| a != b).map(|(a, b)| a < b)
}

/// What a rig sprayed last before the open passes of a day, by records and by plans; several where it is not known which was the last.
pub(crate) fn last_before<'a>(farm: &'a Farm, log: &'a Log, rig: &str, day: Date) -> Vec<Sprayed<'a>> {
    let name = farm.rigs.get(rig).map_or("", |rig| rig.name.trim());
    let of_rig = || farm.passes.iter().filter(|(_, pass)| pass.rig == rig);
    let planned = || of_rig().filter(|(id, pass)| pass.date < day && !log.has_record(id)).map(|(_, pass)| pass);
    // A record may not name its rig, or by a name that it had then.
    let by_pass = || {
        of_rig().flat_map(|(id, _)| log.of_pass(farm, id)).filter(|record| {
            let told = record.rig.trim();
            record.date <= day && (told.is_empty() || farm.rigs.values().all(|rig| rig.name.trim() != told))
        })
    };
    // A rig may have records of many seasons, of which those of its last day are looked at alone.
    let days = planned().map(|pass| pass.date).chain(log.last_of_rig(name, day));
    let Some(last) = days.chain(by_pass().map(|record| record.date)).max() else { return Vec::new() };
    let planned = planned().filter(|pass| pass.date == last).map(Sprayed::Plan);
    let recorded = log.of_rig_on(farm, name, last).chain(by_pass().filter(|record| record.date == last));
    let mut all: Vec<Sprayed> = planned.chain(recorded.map(Sprayed::Record)).collect();
    if all.iter().all(|sprayed| sprayed.when().1.is_some()) {
        all = all.into_iter().max_by_key(|sprayed| sprayed.when().1).into_iter().collect();
    }
    all
}

/// The passes that may be in the rig before a pass.
fn before<'a>(farm: &'a Farm, log: &'a Log, pass_id: &Id, pass: &Pass) -> Vec<(Known, Sprayed<'a>)> {
    let of_day: Vec<(&Id, &Pass)> = farm
        .passes
        .iter()
        .filter(|(id, other)| *id != pass_id && other.rig == pass.rig && other.date == pass.date)
        .filter(|(id, other)| !other.mix.is_empty() && !log.is_recorded(farm, id))
        .collect();
    let first = |other: (&Id, &Pass)| comes_first(farm, log, other, (pass_id, pass));
    let earlier: Vec<(&Id, &Pass)> = of_day.iter().copied().filter(|other| first(*other) == Some(true)).collect();
    // Of those that come before it, the ones that no other surely follows.
    let is_last = |one: &(&Id, &Pass)| earlier.iter().all(|other| comes_first(farm, log, *one, *other) != Some(true));
    let mut all: Vec<(Known, Sprayed)> =
        earlier.iter().copied().filter(is_last).map(|(_, pass)| (Known::Planned, Sprayed::Plan(pass))).collect();
    if all.is_empty() {
        all.extend(last_before(farm, log, &pass.rig, pass.date).into_iter().map(|sprayed| match sprayed {
            Sprayed::Plan(..) => (Known::Planned, sprayed),
            Sprayed::Record(_) => (Known::Recorded, sprayed),
        }));
    }
    let open = of_day.into_iter().filter(|other| first(*other).is_none());
    all.extend(open.map(|(_, pass)| (Known::Undecided, Sprayed::Plan(pass))));
    all
}

/// Why what is left matters to what grows on the fields of a pass, the weightiest first, each with its basis.
struct Reasons {
    said: Vec<(String, Basis)>,
    /// The least strength that hurts, where that is known.
    most: Option<Share>,
    /// What labels say, word for word.
    how: Vec<String>,
}

fn reasons(farm: &Farm, sprayed: Sprayed, next: &Pass) -> Reasons {
    let as_pass = sprayed.pass(farm);
    let left: Vec<(&Id, &Product)> = sprayed.leaves(farm, next).into_iter().filter_map(|(_, known)| known).collect();
    let mix: Vec<&Product> = left.iter().map(|(_, product)| *product).collect();
    let (mut said, mut how) = (Vec::new(), Vec::new());
    for product in &left {
        for step in clean_out::of_label(farm, &as_pass, *product, Some(next)) {
            let words = step.what.trim_end_matches('.').to_owned();
            said.push((t!("rig-before-label-says", product = product.1.name, how = words), step.basis));
            how.push(words);
        }
    }
    let hurt = clean_out::hurt(farm, &mix, next);
    let most = hurt.iter().filter_map(|(row, _)| row.left).min_by(f64::total_cmp).map(Share::from_fraction);
    for (row, fields) in &hurt {
        said.push((t!("rig-before-hurts", says = row.says(), fields = named(fields)), row.basis()));
    }
    let ground: Vec<&Field> = next.fields.iter().filter_map(|field| farm.fields.get(field)).collect();
    for product in &mix {
        said.extend(not_labelled(product, &ground));
    }
    for (row, fields) in clean_out::unknown(farm, &mix, next) {
        said.push((t!("rig-before-unknown", what = row.what_said(), fields = named(&fields)), row.basis()));
    }
    if said.is_empty() {
        said.push((t!("rig-before-usual").to_owned(), Basis::Practice));
    }
    Reasons { said, most, how }
}

/// That a label has rates for crops, of which none grows on some fields.
fn not_labelled(product: &Product, ground: &[&Field]) -> Option<(String, Basis)> {
    let rates: Vec<_> = product.label.iter().filter(|statement| matches!(statement.says, Says::Rate { .. })).collect();
    let first = rates.first()?;
    let others: Vec<&Field> = ground
        .iter()
        .copied()
        .filter(|field| !field.crop.trim().is_empty() && rates.iter().all(|statement| !for_crop(statement, field)))
        .collect();
    if others.is_empty() {
        return None;
    }
    let crops = listed(&once(rates.iter().map(|statement| statement.crop.trim().to_owned())));
    let text = t!("rig-before-not-labelled", product = product.name, crops = crops, fields = named(&others));
    Some((text, Basis::Label(label::place(product, first))))
}

/// "Creek 22 (soybeans)".
fn named(fields: &[&Field]) -> String {
    let one = |field: &&Field| match field.crop.trim() {
        "" => field.name.clone(),
        crop => format!("{} ({crop})", field.name),
    };
    listed(&fields.iter().map(one).collect::<Vec<_>>())
}

/// How a rig is rinsed until little enough is left: with the water on board where that is enough, else as is published. Without a limit
/// of the crop the most that any country of the table allows at the nozzle is little enough.
fn rinsing(rig: &Rig, most: Option<Share>) -> Option<Rinsing> {
    let tank = rig.tank.value();
    let published = table()
        .iter()
        .filter(|row| row.kind == "rinse")
        .filter_map(|row| Some((row.rinses?, row.percent?)))
        .max_by(|(_, a), (_, b)| a.total_cmp(b))
        .filter(|_| !tank.is_zero());
    let (rinses, percent) = published?;
    let each = tank * (percent / 100.0);
    let residual = rig.residual.as_ref().map(AsTyped::value).filter(|residual| !residual.is_zero());
    let Some(residual) = residual else { return Some(Rinsing { rinses, each, left: None }) };
    let allowed = table().iter().filter(|row| row.kind == "strength").filter_map(|row| row.left);
    let enough = most.or_else(|| allowed.max_by(f64::total_cmp).map(Share::from_fraction))?;
    let water = rig.clean_water.as_ref().map_or(Volume::ZERO, AsTyped::value);
    let on_board = rinse::ways(residual, water, tank);
    if let Some(way) = on_board.iter().find(|way| way.on_board && !way.left.exceeds(enough)) {
        return Some(Rinsing { rinses: way.rinses, each: way.each, left: Some(way.left) });
    }
    let rinses = most.and_then(|most| rinse::rinses_to(residual, each, most)).unwrap_or(rinses);
    Some(Rinsing { rinses, each, left: rinse::left(residual, each, rinses) })
}

/// The clean-out between two passes of a rig, in their order; `None` where none is due.
fn between(farm: &Farm, sprayed: Sprayed, next: &Pass, undecided: bool) -> Option<(CleanFirst, Reasons)> {
    let rig = farm.rigs.get(&next.rig)?;
    let left = sprayed.leaves(farm, next);
    if left.is_empty() {
        return None;
    }
    let reasons = reasons(farm, sprayed, next);
    let first = CleanFirst {
        after: vec![(sprayed.name().to_owned(), sprayed.when().0)],
        undecided,
        products: once(left.into_iter().map(|(name, _)| name.to_owned())),
        rinsing: rinsing(rig, reasons.most),
        how: once(reasons.how.iter().cloned()),
    };
    Some((first, reasons))
}

/// The clean-out between two passes of a day in their order; `None` where none is due.
pub(crate) fn between_passes(farm: &Farm, first: &str, next: &Pass) -> Option<CleanFirst> {
    let pass = farm.passes.get(first)?;
    between(farm, Sprayed::Plan(pass), next, false).map(|(first, _)| first)
}

/// The clean-outs from what a rig sprayed last before the open passes of a day to one of them; which of several was the last is not known.
pub(crate) fn from_earlier(farm: &Farm, log: &Log, next: &Pass) -> Vec<CleanFirst> {
    let earlier = last_before(farm, log, &next.rig, next.date);
    earlier.into_iter().filter_map(|sprayed| Some(between(farm, sprayed, next, false)?.0)).collect()
}

/// Says what the rig held before a pass, and gives the clean-out that is due before its first load; `None` where none is.
pub(crate) fn judge(
    farm: &Farm,
    log: &Log,
    pass_id: &Id,
    pass: &Pass,
    findings: &mut Vec<Finding>,
) -> Option<CleanFirst> {
    // What a pass goes on with is meant to be in the tank, and one that is recorded has no load to come.
    let rig = farm.rigs.get(&pass.rig)?;
    if pass.mix.is_empty() || pass.begins_with().is_some() || log.is_recorded(farm, pass_id) {
        return None;
    }
    let mut undecided: Vec<(Sprayed, CleanFirst, Reasons)> = Vec::new();
    let mut all: Option<CleanFirst> = None;
    for (known, sprayed) in before(farm, log, pass_id, pass) {
        let Some((first, reasons)) = between(farm, sprayed, pass, known == Known::Undecided) else { continue };
        all = Some(joined(all, &first));
        let (name, date) = (sprayed.name(), sprayed.when().0);
        let left = listed(&first.products);
        let text = match known {
            Known::Recorded => t!("rig-before-recorded", rig = rig.name, name = name, date = date, left = left),
            Known::Planned => t!("rig-before-planned", rig = rig.name, name = name, date = date, left = left),
            Known::Undecided => {
                undecided.push((sprayed, first, reasons));
                continue;
            }
        };
        findings.push(finding(pass_id, &text, &reasons.said, &[hint(farm, &first), told(sprayed)]));
    }
    let every = undecided.iter().fold(None, |every, (_, first, _)| Some(joined(every, first)));
    if let Some(every) = every {
        let names = |of: &[&str]| listed(&of.iter().map(|name| format!("\"{name}\"")).collect::<Vec<_>>());
        let others: Vec<&str> = undecided.iter().map(|(sprayed, ..)| sprayed.name()).collect();
        let text = t!(
            "rig-before-undecided",
            rig = rig.name,
            names = names(&others),
            count = others.len(),
            left = listed(&every.products)
        );
        // Of each other pass the weightiest reason, the label's own words before all.
        let said: Vec<(String, Basis)> =
            once(undecided.iter().filter_map(|(.., reasons)| reasons.said.first().cloned()));
        let spared: Vec<&str> = undecided
            .iter()
            .filter(|(sprayed, ..)| {
                let as_pass = sprayed.pass(farm);
                Sprayed::Plan(pass).leaves(farm, &as_pass).is_empty()
            })
            .map(|(sprayed, ..)| sprayed.name())
            .collect();
        let spared = if spared.is_empty() {
            t!("rig-before-decide").to_owned()
        } else {
            t!("rig-before-spared", names = names(&spared))
        };
        findings.push(finding(pass_id, &text, &said, &[spared, hint(farm, &every)]));
    }
    all
}

fn finding(pass_id: &Id, text: &str, said: &[(String, Basis)], hints: &[String]) -> Finding {
    let basis = said.first().map_or(Basis::Practice, |(_, basis)| basis.clone());
    // The weightiest reasons; more would only be read less.
    let why = said.iter().take(2).map(|(words, _)| words.trim_end_matches('.'));
    let text = std::iter::once(text).chain(why).collect::<Vec<_>>().join(". ");
    let hint: Vec<&str> = hints.iter().map(String::as_str).filter(|hint| !hint.is_empty()).collect();
    Finding::check(Subject::Pass(pass_id.clone()), text, basis).hint(hint.join(" "))
}

/// What a record says of cleaning.
fn told(sprayed: Sprayed) -> String {
    match sprayed {
        Sprayed::Record(record) if !record.clean_out.trim().is_empty() => {
            t!("rig-before-record-says", words = record.clean_out.trim())
        }
        _ => String::new(),
    }
}

/// How it is cleaned out, in words.
fn hint(farm: &Farm, first: &CleanFirst) -> String {
    let how = match first.rinsing {
        Some(Rinsing { rinses, each, left: Some(left) }) => {
            t!("rig-before-rinse-to", count = rinses, each = each.show(farm.units), left = strength(left))
        }
        Some(Rinsing { rinses, each, left: None }) => {
            t!("rig-before-rinse", count = rinses, each = each.show(farm.units))
        }
        None => t!("rig-before-clean-out").to_owned(),
    };
    if first.how.is_empty() { format!("{how} {}", t!("rig-before-read-the-label")) } else { how }
}

/// Two clean-outs as one: all products, the most rinses and water.
fn joined(one: Option<CleanFirst>, other: &CleanFirst) -> CleanFirst {
    let Some(one) = one else { return other.clone() };
    let rinsing = match (one.rinsing, other.rinsing) {
        (Some(a), Some(b)) => {
            let more = (b.each * f64::from(b.rinses)).exceeds(a.each * f64::from(a.rinses));
            Some(if more { b } else { a })
        }
        (a, b) => a.or(b),
    };
    CleanFirst {
        after: once(one.after.into_iter().chain(other.after.iter().cloned())),
        // What surely comes before it is to be cleaned out, whatever else may.
        undecided: one.undecided && other.undecided,
        products: once(one.products.into_iter().chain(other.products.iter().cloned())),
        rinsing,
        how: once(one.how.into_iter().chain(other.how.iter().cloned())),
    }
}
