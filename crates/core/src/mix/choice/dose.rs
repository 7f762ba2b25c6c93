//! How much of an adjuvant goes in: what the labels and, failing them, publications ask for, within what all allow.

use std::sync::LazyLock;

use serde::Deserialize;

use super::voices::{Claim, Ground, Voice, is_good};
use crate::farm::label::Says;
use crate::farm::{AdjuvantClass, Field, Product, ProductKind, Statement};
use crate::label::when::{Situation, holds};
use crate::label::{Speaks, speaks};
use crate::language::t;
use crate::mix::line::per_area;
use crate::quantity::{AmountPerArea, AsTyped, CarrierRate, MassPerVolume, Rate};

/// A row of `assets/adjuvant-classes.csv`: the usual rate of a class.
#[derive(Deserialize)]
struct Row {
    class: String,
    usual: String,
    source: String,
}

fn usual(class: AdjuvantClass) -> Option<(AsTyped<Rate>, &'static str)> {
    static TABLE: LazyLock<Vec<Row>> = LazyLock::new(|| {
        crate::table::read(include_str!("../../../../../assets/adjuvant-classes.csv")).unwrap_or_default()
    });
    let row = TABLE.iter().find(|row| row.class == class.key())?;
    Some((AsTyped::parse(&row.usual).ok()?, row.source.as_str()))
}

/// What of an adjuvant goes in.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Dose {
    pub(crate) rate: Option<AsTyped<Rate>>,
    pub(crate) at_least: Option<AsTyped<Rate>>,
    pub(crate) at_most: Option<AsTyped<Rate>>,
    pub(crate) per_area: Option<AmountPerArea>,
    pub(crate) from: String,
    /// Two labels whose least and most do not meet, in a sentence.
    pub(crate) apart: Option<String>,
}

/// A rate of an adjuvant over ground. A mass of a salt is of the salt, also where the product is a solution of it.
pub(crate) fn over_ground(
    rate: &AsTyped<Rate>,
    adjuvant: &Product,
    carrier: CarrierRate,
) -> Result<AmountPerArea, String> {
    let of_mass = matches!(rate.value(), Rate::MassPerSpray(_) | Rate::MassPerArea(_));
    if of_mass && is_untold(adjuvant) {
        return Err(t!("mix-how-much-ammonium-sulfate-holds-is", name = adjuvant.name));
    }
    per_area(of_salt(rate.value(), adjuvant), adjuvant, carrier)
}

/// Whether it is a solution of ammonium sulfate of which nobody knows how much it holds.
fn is_untold(adjuvant: &Product) -> bool {
    adjuvant.adjuvant_class() == Some(AdjuvantClass::AmmoniumSulfate)
        && adjuvant.is_liquid()
        && adjuvant.actives.is_empty()
}

fn of_salt(rate: Rate, adjuvant: &Product) -> Rate {
    let salt = adjuvant.actives.first().filter(|_| adjuvant.kind == ProductKind::Conditioner && adjuvant.is_liquid());
    match (rate, salt) {
        (Rate::MassPerSpray(content), Some(salt)) => Rate::ActivePerSpray(content, salt.basis),
        (Rate::MassPerArea(mass), Some(salt)) => Rate::ActivePerArea(mass, salt.basis),
        (other, _) => other,
    }
}

/// The rate as it is typed for the product: "8.5 lb/100 gal" of a salt is "8.5 lb ai/100 gal" of its solution.
fn for_product(rate: &AsTyped<Rate>, adjuvant: &Product) -> AsTyped<Rate> {
    let value = of_salt(rate.value(), adjuvant);
    let basis = match value {
        Rate::ActivePerSpray(_, basis) | Rate::ActivePerArea(_, basis) if value != rate.value() => basis.short(),
        _ => return rate.clone(),
    };
    match rate.text().split_once('/') {
        Some((amount, per)) => {
            AsTyped::parse(&format!("{} {basis}/{per}", amount.trim_end())).unwrap_or_else(|_| rate.clone())
        }
        None => rate.clone(),
    }
}

/// One end of a range, with who says so.
struct End {
    rate: AsTyped<Rate>,
    at_least: Option<AsTyped<Rate>>,
    at_most: Option<AsTyped<Rate>>,
    amount: AmountPerArea,
    /// Who asks.
    who: String,
    /// The same with where that is said.
    from: String,
    binds: bool,
}

impl End {
    fn exceeds(&self, other: &Self) -> bool {
        self.amount.exceeds(other.amount) == Some(true)
    }
}

/// One end of what a claim names, floor and ceiling over ground applied; the floor or the ceiling alone where that is all it
/// names. `None` where it names none or it does not reach the product.
fn end(
    claim: &Claim,
    rate: Option<&AsTyped<Rate>>,
    who: &str,
    adjuvant: &Product,
    carrier: CarrierRate,
) -> Option<End> {
    let mut amount = over_ground(rate?, adjuvant, carrier).ok()?;
    let bound = |rate: &Option<AsTyped<Rate>>| over_ground(rate.as_ref()?, adjuvant, carrier).ok();
    if let Some(floor) = bound(&claim.at_least) {
        amount = amount.larger(floor);
    }
    if let Some(ceiling) = bound(&claim.at_most) {
        amount = amount.smaller(ceiling);
    }
    Some(End {
        rate: for_product(rate?, adjuvant),
        at_least: claim.at_least.clone(),
        at_most: claim.at_most.clone(),
        amount,
        who: who.to_owned(),
        from: format!("{who}: {}", claim.basis),
        binds: claim.authority.binds(),
    })
}

/// What the adjuvant's own label names: on each field the widest range of what speaks there, and of all fields what suits
/// every one.
fn own(adjuvant: &Product, ground: &Ground<'_>) -> (Option<End>, Option<End>) {
    let (mut low, mut high): (Option<End>, Option<End>) = (None, None);
    for field in ground.fields {
        let (least, most) = own_on(adjuvant, field, ground);
        if let Some(least) = least
            && low.as_ref().is_none_or(|before| least.exceeds(before))
        {
            low = Some(least);
        }
        if let Some(most) = most
            && high.as_ref().is_none_or(|before| before.exceeds(&most))
        {
            high = Some(most);
        }
    }
    (low, high)
}

fn own_on(adjuvant: &Product, field: &Field, ground: &Ground<'_>) -> (Option<End>, Option<End>) {
    let (mut low, mut high): (Option<End>, Option<End>) = (None, None);
    let partners = ground.products.iter().map(|(_, partner)| *partner).collect();
    let situation =
        Situation { farm: ground.farm, pass: ground.pass, product: adjuvant, partners, carrier: Some(ground.carrier) };
    let here = |statement: &&Statement| {
        matches!(speaks(statement, field), Speaks::Yes | Speaks::Unclear)
            && holds(&statement.when, &situation) != Some(false)
    };
    let is_rate = |statement: &&Statement| matches!(statement.says, Says::Rate { .. });
    // Where the label speaks of other crops alone, what it allows at all is still better than no limit.
    let any = adjuvant.label.iter().filter(is_rate).any(|statement| here(&statement));
    for statement in adjuvant.label.iter().filter(|statement| !any || here(statement)) {
        let Says::Rate { least, most } = &statement.says else { continue };
        let read = |rate: &Option<AsTyped<Rate>>| {
            let rate = rate.as_ref()?;
            let from = match statement.at.as_str() {
                "" => t!("mix-its-own-label").to_owned(),
                at => t!("mix-its-own-label-at", at = at),
            };
            Some(End {
                rate: for_product(rate, adjuvant),
                at_least: None,
                at_most: None,
                amount: over_ground(rate, adjuvant, ground.carrier).ok()?,
                who: from.clone(),
                from,
                binds: true,
            })
        };
        // Several statements are for several uses: the widest range is what the label allows in all.
        if let Some(least) = read(least)
            && low.as_ref().is_none_or(|before| before.exceeds(&least))
        {
            low = Some(least);
        }
        if let Some(most) = read(most)
            && high.as_ref().is_none_or(|before| most.exceeds(before))
        {
            high = Some(most);
        }
    }
    (low, high)
}

/// The dose of an adjuvant for the voices of a mix.
pub(crate) fn dose(
    class: AdjuvantClass,
    adjuvant: &Product,
    voices: &[Voice],
    ground: &Ground<'_>,
    water_needs: Option<MassPerVolume>,
) -> Dose {
    let carrier = ground.carrier;
    let (own_low, own_high) = own(adjuvant, ground);
    let mut lows: Vec<End> = Vec::new();
    let mut highs: Vec<End> = own_high.into_iter().collect();
    for voice in voices {
        let Some(claim) = voice.on(class) else { continue };
        if !is_good(claim.stance) {
            continue;
        }
        // Publications that agree on the stance may name different rates: the range runs from the lowest to the highest.
        let alike = |other: &&Claim| {
            !claim.authority.binds()
                && (other.class, other.authority, other.stance) == (class, claim.authority, claim.stance)
        };
        let said: Vec<&Claim> = std::iter::once(claim).chain(voice.others.iter().filter(alike)).collect();
        let least = |claim: &&Claim| {
            end(claim, claim.least.as_ref().or(claim.at_least.as_ref()), &voice.name, adjuvant, carrier)
        };
        let most =
            |claim: &&Claim| end(claim, claim.most.as_ref().or(claim.at_most.as_ref()), &voice.name, adjuvant, carrier);
        let named: Vec<End> = said.iter().filter_map(least).collect();
        let spread: Vec<String> = named.iter().map(|end| end.rate.text().to_owned()).collect();
        if let Some(mut low) = named.into_iter().reduce(|a, b| if a.exceeds(&b) { b } else { a }) {
            let others: Vec<String> = spread.into_iter().filter(|text| *text != low.rate.text()).collect();
            if !others.is_empty() {
                low.from = t!("mix-other-sources-name", from = low.from, others = others.join(", "));
            }
            lows.push(low);
        }
        // One that names no most leaves the range open only where none does.
        highs.extend(said.iter().filter_map(most).reduce(|a, b| if b.exceeds(&a) { b } else { a }));
    }
    let smallest = |ends: Vec<End>| ends.into_iter().reduce(|a, b| if a.exceeds(&b) { b } else { a });
    let (binding, soft): (Vec<End>, Vec<End>) = highs.into_iter().partition(|end| end.binds);
    let (ceiling, soft_ceiling) = (smallest(binding), smallest(soft));
    let wanted = lows.into_iter().chain(own_low).reduce(|a, b| if b.exceeds(&a) { b } else { a }).or_else(|| {
        let (rate, source) = usual(class)?;
        let amount = over_ground(&rate, adjuvant, carrier).ok()?;
        Some(End {
            rate: for_product(&rate, adjuvant),
            at_least: None,
            at_most: None,
            amount,
            who: t!("mix-usual-rate").to_owned(),
            from: t!("mix-usual", source = source),
            binds: false,
        })
    });
    let Some(mut wanted) = wanted else {
        if is_untold(adjuvant) && ceiling.is_none() {
            let from = t!("mix-not-known-how-much-ammonium-sulfate").to_owned();
            return Dose { from, ..Dose::default() };
        }
        return ceiling.or(soft_ceiling).map_or_else(Dose::default, told);
    };
    // What a label asks for at least stands, whatever the water needs.
    let meets = ceiling.as_ref().is_none_or(|ceiling| !wanted.exceeds(ceiling));
    let lowers = soft_ceiling.as_ref().is_some_and(|soft| !wanted.binds || !wanted.exceeds(soft));
    let binds = wanted.binds;
    if let (AdjuvantClass::AmmoniumSulfate, Some(need), true) = (class, water_needs, meets) {
        wanted = conditioned(wanted, need, adjuvant, carrier);
    }
    if let Some(soft) = soft_ceiling
        && lowers
        && wanted.exceeds(&soft)
    {
        wanted = soft;
    }
    if let Some(ceiling) = ceiling
        && wanted.exceeds(&ceiling)
    {
        if binds && !meets {
            let apart = t!(
                "mix-asks-for-at-least-of-allows",
                from = wanted.who,
                rate = wanted.rate.text(),
                class = class.name(),
                from2 = ceiling.who,
                rate2 = ceiling.rate.text()
            );
            return Dose { apart: Some(apart), ..told(wanted) };
        }
        wanted = ceiling;
    }
    told(wanted)
}

fn told(end: End) -> Dose {
    Dose {
        rate: Some(end.rate),
        at_least: end.at_least,
        at_most: end.at_most,
        per_area: Some(end.amount),
        from: end.from,
        apart: None,
    }
}

/// Raised to what the ions of the water tie up, to the next half pound per 100 gallons; no longer a label's own figure, so a
/// ceiling may lower it again.
fn conditioned(wanted: End, need: MassPerVolume, adjuvant: &Product, carrier: CarrierRate) -> End {
    let halves = (need.to_pounds_per_100_us_gallons() * 2.0 - 1e-9).ceil() / 2.0;
    let Ok(rate) = AsTyped::parse(&format!("{halves} lb/100 gal")) else { return wanted };
    match over_ground(&rate, adjuvant, carrier) {
        Ok(amount) if amount.exceeds(wanted.amount) == Some(true) => End {
            rate: for_product(&rate, adjuvant),
            at_least: None,
            at_most: None,
            amount,
            who: t!("mix-the-ions-of-the-water").to_owned(),
            from: t!("mix-the-ions-of-the-water").to_owned(),
            binds: false,
        },
        _ => wanted,
    }
}

#[cfg(test)]
mod tests {
    use super::{Row, usual};
    use crate::farm::AdjuvantClass;

    #[test]
    fn every_usual_rate_reads_and_has_a_source() {
        let rows: Vec<Row> = crate::table::read(include_str!("../../../../../assets/adjuvant-classes.csv")).unwrap();
        assert!(rows.len() >= 7);
        for row in rows {
            let class = AdjuvantClass::of_key(&row.class).unwrap();
            assert!(usual(class).is_some() && !row.source.is_empty(), "{}", row.class);
        }
    }
}
