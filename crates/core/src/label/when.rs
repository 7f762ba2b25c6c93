//! Whether the conditions of a statement hold for a pass: "in drought", "with group 1", "below 10 gal/ac".

use super::droplets::{self, OfPass};
use crate::farm::label::When;
use crate::farm::{Farm, Id, Pass, Product};
use crate::language::{Say, names, say};
use crate::mix::line::{over_ground, per_area};
use crate::quantity::{AsTyped, CarrierRate, Rate, Temperature};
use crate::rig::setting::Classes;
use crate::weather::limits::warmer;

/// What conditions are held against: a product in the mix of a pass, and what goes with it.
#[derive(Clone, Debug)]
pub struct Situation<'a> {
    /// The farm.
    pub farm: &'a Farm,
    /// The pass.
    pub pass: &'a Pass,
    /// The product whose statement is read.
    pub product: &'a Product,
    /// The other products of the mix.
    pub partners: Vec<&'a Product>,
    /// Spray volume over ground; `None` until it is typed.
    pub carrier: Option<CarrierRate>,
}

impl<'a> Situation<'a> {
    /// A product of a pass as it stands; what is not in the shed is left out.
    pub fn new(farm: &'a Farm, pass: &'a Pass, id: &Id, product: &'a Product) -> Self {
        let partners = pass
            .mix
            .iter()
            .filter(|line| line.product != *id)
            .filter_map(|line| farm.products.get(&line.product))
            .collect();
        Self { farm, pass, product, partners, carrier: pass.carrier_rate() }
    }
}

/// Whether all conditions hold at once; none at all always hold. `None` where what a condition asks about is not typed and
/// no other condition fails.
///
/// # Units
/// Temperatures are held against the warmest air that is expected; the marks "heat" and "cold" of a pass name no degrees.
pub fn holds<'w>(when: impl IntoIterator<Item = &'w When>, situation: &Situation) -> Option<bool> {
    at_once(when.into_iter().map(|when| one(when, situation)))
}

/// Whether conditions on the air hold in air of a temperature; `None` where that is not known.
pub(crate) fn hold_in_air(when: &[When], air: Option<Temperature>) -> Option<bool> {
    at_once(when.iter().map(|when| in_air(when, air)))
}

fn at_once(all: impl Iterator<Item = Option<bool>>) -> Option<bool> {
    let all: Vec<Option<bool>> = all.collect();
    if all.contains(&Some(false)) {
        Some(false)
    } else if all.contains(&None) {
        None
    } else {
        Some(true)
    }
}

/// The conditions that cannot be told for want of what they ask about, in words.
pub(crate) fn doubts<'w>(when: impl IntoIterator<Item = &'w When>, situation: &Situation) -> Vec<String> {
    when.into_iter().filter(|when| one(when, situation).is_none()).map(words).collect()
}

/// Whether a condition is on the air, which each hour has for itself.
pub(crate) const fn is_on_air(when: &When) -> bool {
    matches!(when, When::WarmerThan(_) | When::ColderThan(_))
}

/// Whether a condition holds as far as it is on the air; `None` where that is not known.
fn in_air(when: &When, air: Option<Temperature>) -> Option<bool> {
    match when {
        When::WarmerThan(limit) => air.map(|air| warmer(air, limit.value())),
        When::ColderThan(limit) => air.map(|air| warmer(limit.value(), air)),
        _ => Some(true),
    }
}

/// A condition in words: "in drought", "with group 1", "below 10 gal/ac of spray".
pub fn words(when: &When) -> String {
    said(when).aloud()
}

/// The same in any language.
pub(crate) fn said(when: &When) -> Say {
    match when {
        When::Heat => say("card-when-heat"),
        When::Cold => say("card-when-cold"),
        When::Drought => say("card-when-drought"),
        When::LargeWeeds => say("card-when-large-weeds"),
        When::HeavyPressure => say("card-when-thick"),
        When::Weed(name) if name.trim().is_empty() => say("card-when-a-weed"),
        When::Weed(name) => say("card-when-weed").with("weed", names::weed(name)),
        When::With(what) if what.trim().is_empty() => say("card-when-with-partner"),
        When::With(what) => say("card-when-with").with("what", what.trim()),
        When::Alone => say("card-when-alone"),
        When::NoSurfactantBuiltIn => say("card-when-no-surfactant"),
        When::LoadedPartner => say("card-when-loaded-partner"),
        When::Carrier(kind) => say("card-when-carrier").with("carrier", kind.named_on_card()),
        When::CarrierBelow(rate) => say("card-when-below").with("rate", rate.text()),
        When::CarrierAbove(rate) => say("card-when-above").with("rate", rate.text()),
        When::DropletsFinerThan(class) => say("card-when-finer").with("class", class.on_card()),
        When::DropletsAtLeast(class) => say("card-when-coarser").with("class", class.on_card()),
        When::RateAbove(rate) => say("card-when-rate-above").with("rate", rate.text()),
        When::RateUpTo(rate) => say("card-when-rate-up-to").with("rate", rate.text()),
        When::WarmerThan(air) => say("card-when-warmer").with("air", air.text()),
        When::ColderThan(air) => say("card-when-colder").with("air", air.text()),
    }
}

fn one(when: &When, situation: &Situation) -> Option<bool> {
    let growing = &situation.pass.growing;
    match when {
        When::Heat => Some(growing.heat),
        When::Cold => Some(growing.cold),
        When::Drought => Some(growing.drought),
        When::LargeWeeds => Some(growing.large_weeds),
        When::HeavyPressure => Some(growing.heavy_pressure),
        When::Weed(name) => {
            let weeds = &situation.pass.weeds;
            let mut each = weeds.iter().flat_map(|weed| weed.split([',', ';']));
            (!weeds.is_empty()).then(|| each.any(|weed| same_weed(weed, name)))
        }
        When::With(what) => Some(situation.partners.iter().any(|partner| super::names::speak_of(what, partner))),
        When::Alone => Some(!situation.partners.iter().any(|partner| partner.kind.is_pesticide())),
        When::NoSurfactantBuiltIn => {
            let known = situation.product.surfactant.map(|surfactant| !surfactant.complete);
            known.or(situation.product.no_surfactant.then_some(true))
        }
        When::LoadedPartner => Some(situation.partners.iter().any(|partner| partner.is_loaded())),
        When::Carrier(kind) => Some(situation.pass.carrier_kind == *kind),
        When::CarrierBelow(limit) => situation.carrier.map(|carrier| limit.exceeds(carrier)),
        When::CarrierAbove(limit) => situation.carrier.map(|carrier| carrier.exceeds(limit.value())),
        When::DropletsFinerThan(class) => finer(situation, *class),
        When::DropletsAtLeast(class) => finer(situation, *class).map(|finer| !finer),
        When::RateAbove(rate) => rate_above(situation, rate.value()),
        When::RateUpTo(rate) => rate_above(situation, rate.value()).map(|above| !above),
        When::WarmerThan(_) | When::ColderThan(_) => in_air(when, growing.air.as_ref().map(AsTyped::value)),
    }
}

/// Whether the droplets of the pass are finer than a class; `None` where they are not known, or may be the one or the other.
fn finer(situation: &Situation, than: crate::farm::Droplets) -> Option<bool> {
    match droplets::of_the_pass(situation.farm, situation.pass, situation.carrier?) {
        OfPass::Known(Classes { coarsest, .. }) if coarsest < than => Some(true),
        OfPass::Known(Classes { finest, .. }) if finest >= than => Some(false),
        _ => None,
    }
}

/// Whether more of the product goes over ground than a rate says; `None` where the two cannot be compared, or no rate is planned.
fn rate_above(situation: &Situation, limit: Rate) -> Option<bool> {
    let carrier = situation.carrier?;
    let is_it = |id: &Id| situation.farm.products.get(id).is_some_and(|other| std::ptr::eq(other, situation.product));
    let line = situation.pass.mix.iter().find(|line| is_it(&line.product))?;
    let planned = over_ground(line, situation.product, carrier).ok().filter(|planned| !planned.is_zero())?;
    planned.exceeds(per_area(limit, situation.product, carrier).ok()?)
}

/// Whether two names mean one weed: case, doubled spaces and a plural's end do not matter.
pub fn same_weed(a: &str, b: &str) -> bool {
    // Typed in Spanish on one side and in English on the other, say.
    let in_tables = (names::weed_of_tables(a), names::weed_of_tables(b));
    let plain = |name: &str| {
        let name = crate::words::plain(name);
        name.strip_suffix("es").or_else(|| name.strip_suffix('s')).unwrap_or(&name).to_owned()
    };
    let (a, b) = (plain(a), plain(b));
    // "grasses" loses two letters where "grass" loses one.
    let is_alike = a == b || a.strip_suffix('s') == Some(b.as_str()) || b.strip_suffix('s') == Some(a.as_str());
    !a.is_empty() && (is_alike || in_tables.0.is_some() && in_tables.0 == in_tables.1)
}

#[cfg(test)]
mod tests {
    use super::{Situation, holds, same_weed};
    use crate::farm::label::When;
    use crate::farm::{Active, Farm, Formulation, Line, Pass, Product, ProductKind, Surfactant};
    use crate::quantity::{ActiveBasis, AsTyped, Quantity};

    fn q<Q: Quantity>(text: &str) -> AsTyped<Q> {
        AsTyped::parse(text).unwrap()
    }

    fn farm() -> Farm {
        let mut farm = Farm::new("Test");
        let mut grass = Product::new("Clethodim 240 EC (demo)", ProductKind::Herbicide, Formulation::EC);
        grass.actives.push(Active {
            name: "clethodim".to_owned(),
            group: "1".to_owned(),
            basis: ActiveBasis::ActiveIngredient,
            content: q("240 g/L"),
        });
        grass.surfactant = Some(Surfactant { charge: crate::farm::Charge::NonIonic, complete: true });
        farm.products.insert("c".to_owned(), grass);
        farm.products
            .insert("m".to_owned(), Product::new("Mesotrione 480 SC (demo)", ProductKind::Herbicide, Formulation::SC));
        let mut pass = Pass::new("Pass", "2031-06-12".parse().unwrap());
        pass.carrier = Some(q("10 gal/ac"));
        pass.mix = vec![Line::new("m", q("3 fl oz/ac")), Line::new("c", q("6 fl oz/ac"))];
        farm.passes.insert("p".to_owned(), pass);
        farm
    }

    fn asked(farm: &Farm, when: &[When]) -> Option<bool> {
        let id = "m".to_owned();
        holds(when, &Situation::new(farm, &farm.passes["p"], &id, &farm.products["m"]))
    }

    #[test]
    fn each_condition_has_two_sides() {
        let mut farm = farm();
        assert_eq!(asked(&farm, &[]), Some(true));
        assert_eq!(asked(&farm, &[When::With("group 1".to_owned())]), Some(true));
        assert_eq!(asked(&farm, &[When::With("group 15".to_owned())]), Some(false));
        assert_eq!(
            asked(&farm, &[When::With("mesotrione 480 SC (demo)".to_owned())]),
            Some(false),
            "no partner of itself"
        );
        assert_eq!(asked(&farm, &[When::LoadedPartner]), Some(true));
        assert_eq!(asked(&farm, &[When::NoSurfactantBuiltIn]), None, "nobody has typed whether there is one");
        farm.products["m"].no_surfactant = true;
        assert_eq!(asked(&farm, &[When::NoSurfactantBuiltIn]), Some(true));
        assert_eq!(asked(&farm, &[When::CarrierBelow(q("10 gal/ac"))]), Some(false));
        assert_eq!(asked(&farm, &[When::CarrierBelow(q("15 gal/ac"))]), Some(true));
        assert_eq!(asked(&farm, &[When::CarrierAbove(q("5 gal/ac"))]), Some(true));
        assert_eq!(asked(&farm, &[When::Drought]), Some(false));
        let pass = &mut farm.passes["p"];
        pass.growing.heat = true;
        pass.weeds = vec!["Waterhemp".to_owned(), "green foxtails".to_owned()];
        assert_eq!(asked(&farm, &[When::Heat]), Some(true));
        assert_eq!(asked(&farm, &[When::Weed("water hemp".to_owned())]), Some(false));
        assert_eq!(asked(&farm, &[When::Weed("Green  foxtail".to_owned())]), Some(true));
        farm.passes["p"].weeds = vec!["volunteer corn, Waterhemp; kochia".to_owned()];
        assert_eq!(asked(&farm, &[When::Weed("waterhemp".to_owned())]), Some(true), "several in one line");
    }

    #[test]
    fn what_is_not_typed_is_not_known_and_one_that_fails_decides() {
        let mut farm = farm();
        farm.passes["p"].growing.heat = true;
        let warm = When::WarmerThan(q("85 °F"));
        assert_eq!(asked(&farm, std::slice::from_ref(&warm)), None, "heat names no degrees");
        assert_eq!(asked(&farm, &[When::Weed("waterhemp".to_owned())]), None);
        assert_eq!(asked(&farm, &[warm.clone(), When::Drought]), Some(false));
        assert_eq!(asked(&farm, &[warm.clone(), When::Heat]), None);
        farm.passes["p"].growing.air = Some(q("30 °C"));
        assert_eq!(asked(&farm, std::slice::from_ref(&warm)), Some(true), "30 °C is 86 °F");
        farm.passes["p"].growing.air = Some(q("85 °F"));
        assert_eq!(asked(&farm, &[warm]), Some(false));
    }

    #[test]
    fn weeds_in_the_plural_are_the_same() {
        for (a, b) in [("grass", "Grasses"), ("kochia", "kochias"), ("lambsquarters", "lambsquarter")] {
            assert!(same_weed(a, b) && same_weed(b, a), "{a}");
        }
        assert!(!same_weed("", "s"));
        assert!(same_weed("Malva Terciopelo", "velvetleaf") && same_weed("lambsquarters", "quelite cenizo"));
        assert!(!same_weed("malva terciopelo", "kochia") && !same_weed("bur oak", "some oak"));
        assert!(!same_weed("giant ragweed", "common ragweed"));
    }
}
