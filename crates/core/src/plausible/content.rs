//! What a product holds: contents against what is possible, against the figure in the product's name and against label figures that are
//! typed by product and by active both; and its density.

use super::confusions::{Kind, meant};
use super::text::{Typed, plain};
use super::{Held, Offer, Slot, doubted, ranges, salts};
use crate::farm::{Active, Farm, Id, Product, Says, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{ActiveBasis, AsTyped, Concentration, MassPerArea, MassPerVolume, Rate, Units, VolumePerArea};

/// Two figures within so much of one another are one figure, rounded. Common practice, no source.
const SAME: f64 = 0.015;

/// Contents and density of a product.
pub(super) fn judge(farm: &Farm, id: &Id, product: &Product, findings: &mut Vec<Finding>) {
    let units = farm.units;
    if let Some(density) = product.density.as_ref().filter(|_| product.is_liquid()) {
        let held = Held {
            kind: Kind::Density,
            typed: density,
            slot: Slot::Density(id.clone()),
            about: Subject::Product(id.clone()),
            what: t!("plausible-the-density-of", name = product.name),
            units,
        };
        findings.extend(held.against(ranges::density()));
    }
    for (at, active) in product.actives.iter().enumerate() {
        let here = Here { id, product, active, at, units };
        let found = here
            .basis_twice()
            .or_else(|| here.possible())
            .or_else(|| here.against_name())
            .or_else(|| here.against_label());
        findings.extend(found);
    }
}

struct Here<'a> {
    id: &'a Id,
    product: &'a Product,
    active: &'a Active,
    at: usize,
    units: Units,
}

impl Here<'_> {
    fn slot(&self) -> Slot {
        Slot::Content { product: self.id.clone(), active: self.at }
    }

    fn basis_slot(&self) -> Slot {
        Slot::Basis { product: self.id.clone(), active: self.at }
    }

    fn what(&self) -> String {
        t!("plausible-the-content-of-in", name = self.active.name, name2 = self.product.name)
    }

    fn check(&self, why: &str, would: &str, basis: Basis, offers: Vec<Offer>) -> Option<Finding> {
        let text = t!("plausible-is-typed-as", what = self.what(), content = self.active.content.text(), why = why);
        doubted(Subject::Product(self.id.clone()), &text, would, basis, offers)
    }

    /// The typed text without a confusion.
    fn meant(&self, is_likely: impl Fn(&Concentration) -> bool) -> Vec<Offer> {
        meant::<Concentration>(Kind::Content, self.active.content.text(), self.units)
            .into_iter()
            .filter(|meant| is_likely(&meant.value))
            .map(|meant| Offer::of(self.slot(), meant.text.clone(), meant.why()))
            .collect()
    }

    /// "4.5 lb ae/gal", counted as ai.
    fn basis_twice(&self) -> Option<Finding> {
        let written = self.active.content.basis().filter(|basis| *basis != self.active.basis)?;
        let why = t!("plausible-it-is-counted-as", short = self.active.basis.short());
        let offer = Offer::of(self.basis_slot(), written.short(), t!("plausible-the-one-way-to-count-for"));
        self.check(&why, t!("plausible-be-what-is-written"), Basis::Arithmetic, vec![offer])
    }

    /// Grams in a litre of a liquid, grams in a kilogram of what is dry.
    fn size(&self, content: &Concentration) -> Option<f64> {
        let density = self.product.density.as_ref().map(AsTyped::value);
        if self.product.is_liquid() {
            content.per_volume(density).map(MassPerVolume::to_grams_per_litre)
        } else {
            content.per_mass(density).map(|share| share.to_fraction() * 1000.0)
        }
    }

    /// Against what a litre can hold.
    fn possible(&self) -> Option<Finding> {
        let content = self.active.content.value();
        if !self.product.is_liquid() {
            // A volume of something dry says nothing of its mass.
            let by_volume = matches!(content, Concentration::MassPerVolume(..)) && self.product.density.is_none();
            let offers = self.meant(|meant| matches!(meant, Concentration::MassFraction(..)));
            return by_volume
                .then(|| {
                    self.check(
                        t!("plausible-the-product-is-dry-and-has"),
                        t!("plausible-be-by-mass"),
                        Basis::Arithmetic,
                        offers,
                    )
                })
                .flatten();
        }
        let ends = ranges::content()?;
        let size = MassPerVolume::from_grams_per_litre(self.size(&content)?);
        let density = self.product.density.as_ref().map(|density| density.to_kilograms_per_cubic_metre());
        let most = density.map_or(ends.most, |density| ends.most.min(MassPerVolume::from_grams_per_litre(density)));
        let most_likely = ends.likely_most.min(most);
        let offers = || {
            self.meant(|meant| {
                self.size(meant)
                    .map(MassPerVolume::from_grams_per_litre)
                    .is_some_and(|size| !ends.likely_least.exceeds(size) && !size.exceeds(most_likely))
            })
        };
        if size.exceeds(most) {
            let (why, basis) = match &self.product.density {
                Some(density) if most < ends.most => {
                    (t!("plausible-all-of-the-product-weighs", density = density.text()), Basis::Arithmetic)
                }
                _ => (t!("plausible-hardly-any-holds-more-than", most = grams(ends.most)), ends.basis.clone()),
            };
            self.check(&why, t!("plausible-be-possible"), basis, offers())
        } else if ends.least.exceeds(size) && !size.is_zero() {
            let why = t!("plausible-hardly-any-holds-less-than", least = grams(ends.least));
            self.check(&why, t!("plausible-be-usual"), ends.basis.clone(), offers())
        } else {
            None
        }
    }

    /// Against the figure in the name of a product of one active: "540" in "Glyphosate 540 SL".
    fn against_name(&self) -> Option<Finding> {
        let [_] = self.product.actives.as_slice() else { return None };
        let size = self.size(&self.active.content.value())?;
        let named: Vec<f64> = self.figures().collect();
        let is_near = |size: f64, figure: f64| (size / figure - 1.0).abs() <= SAME;
        let is_one = |size: f64| named.iter().any(|figure| is_near(size, *figure));
        let ratios: Vec<f64> = salts::of(&self.active.name).map(salts::Salt::ratio).collect();
        // A name may give the figure of the salt while the acid is typed, and the other way round.
        let other = |ratio: &f64| match self.active.basis {
            ActiveBasis::AcidEquivalent => size * ratio,
            ActiveBasis::ActiveIngredient => size / ratio,
        };
        if named.is_empty() || is_one(size) || ratios.iter().any(|ratio| is_one(other(ratio))) {
            return None;
        }
        let mut offers = self.meant(|meant| self.size(meant).is_some_and(is_one));
        offers.extend(self.of_salt(size, is_one));
        self.check(t!("plausible-that-is-not-the-figure-in"), t!("plausible-agree-with-that"), Basis::Practice, offers)
    }

    /// What the figure would be on the other way to count, where that is likely.
    fn of_salt(&self, size: f64, is_likely: impl Fn(f64) -> bool) -> Vec<Offer> {
        let Some(typed) = Typed::of(self.active.content.text()) else { return Vec::new() };
        let mut offers: Vec<Offer> = Vec::new();
        for salt in salts::of(&self.active.name) {
            let (by, other, why) = match self.active.basis {
                ActiveBasis::AcidEquivalent => (
                    1.0 / salt.ratio(),
                    ActiveBasis::ActiveIngredient,
                    t!("plausible-the-salt-or-ester-for-its", salt = salt.salt),
                ),
                ActiveBasis::ActiveIngredient => (
                    salt.ratio(),
                    ActiveBasis::AcidEquivalent,
                    t!("plausible-the-acid-for-its-salt-or", salt = salt.salt),
                ),
            };
            if !is_likely(size * by) {
                continue;
            }
            let text = format!("{} {}", plain(typed.value * by, 3), typed.unit);
            if offers.iter().all(|offer| offer.text() != text) {
                offers.insert(offers.len().saturating_sub(1), Offer::of(self.slot(), text, &why));
            }
            let flip = Offer::of(self.basis_slot(), other.short(), &why);
            if !offers.contains(&flip) && offers.iter().all(|offer| !offer.is_for(&self.basis_slot())) {
                offers.push(flip);
            }
        }
        offers
    }

    /// The figures of a name, in grams in a litre or a kilogram.
    fn figures(&self) -> impl Iterator<Item = f64> {
        let words: Vec<&str> =
            self.product.name.split(|letter: char| letter.is_whitespace() || "()".contains(letter)).collect();
        let is_liquid = self.product.is_liquid();
        let figure = move |(word, next): (&str, Option<&&str>)| -> Option<f64> {
            let value: f64 = word.parse().ok().filter(|value: &f64| *value > 0.0)?;
            match next.map(|next| next.to_lowercase()).as_deref() {
                Some("%" | "percent") => (!is_liquid).then_some(value * 10.0),
                Some("lb/gal") => {
                    is_liquid.then(|| MassPerVolume::from_pounds_per_us_gallon(value).to_grams_per_litre())
                }
                _ if is_liquid => (value >= 20.0).then_some(value),
                // "75 WG" and "750 WG" are both written.
                _ if value <= 100.0 => (value >= 5.0).then_some(value * 10.0),
                _ => Some(value),
            }
        };
        let pairs: Vec<f64> =
            words.iter().enumerate().filter_map(|(at, word)| figure((word, words.get(at + 1)))).collect();
        pairs.into_iter()
    }

    /// Against a label that states one rate, or one total, by product and by active both.
    fn against_label(&self) -> Option<Finding> {
        let [_] = self.product.actives.as_slice() else { return None };
        let size = self.size(&self.active.content.value())?;
        let implied = implied(self.product, self.active)?;
        let is_near = |size: f64| (size / implied - 1.0).abs() <= 2.0 * SAME;
        if is_near(size) {
            return None;
        }
        let mut offers = self.meant(|meant| self.size(meant).is_some_and(is_near));
        offers.extend(self.of_salt(size, is_near));
        let shown = grams(MassPerVolume::from_grams_per_litre(implied));
        let why = t!("plausible-by-its-label-which-states-the", shown = shown);
        self.check(&why, t!("plausible-agree-with-that"), Basis::Label(self.product.name.clone()), offers)
    }
}

fn grams(content: MassPerVolume) -> String {
    format!("{} g/L", plain(content.to_grams_per_litre(), 3))
}

/// The content, in grams in a litre, that follows from two statements in the same place of a label of which one states by product what
/// the other states by active.
fn implied(product: &Product, active: &Active) -> Option<f64> {
    let by_product = |statement: &Statement| -> Option<VolumePerArea> {
        match &statement.says {
            Says::Rate { most, .. } => volume(most.as_ref()?),
            Says::SeasonTotal { most, .. } => volume(most),
            _ => None,
        }
    };
    let by_active = |statement: &Statement| -> Option<MassPerArea> {
        match &statement.says {
            Says::Rate { most, .. } => mass(most.as_ref()?, active.basis),
            Says::ActiveSeasonTotal { active: of, most, .. } if crate::mix::actives::same(of, &active.name) => {
                mass(most, active.basis)
            }
            _ => None,
        }
    };
    let is_pair = |a: &Statement, b: &Statement| {
        let is_total = |says: &Says| matches!(says, Says::SeasonTotal { .. } | Says::ActiveSeasonTotal { .. });
        is_total(&a.says) == is_total(&b.says)
            && !a.at.trim().is_empty()
            && (&a.at, &a.crop, &a.from_stage, &a.to_stage, &a.when)
                == (&b.at, &b.crop, &b.from_stage, &b.to_stage, &b.when)
    };
    product.label.iter().find_map(|a| {
        let volume = by_product(a).filter(|volume| !volume.is_zero())?;
        let mass = product.label.iter().filter(|b| is_pair(a, b)).find_map(by_active)?;
        Some(mass.to_kilograms_per_hectare() / volume.to_litres_per_hectare() * 1000.0)
    })
}

fn volume(rate: &AsTyped<Rate>) -> Option<VolumePerArea> {
    match rate.value() {
        Rate::VolumePerArea(volume) => Some(volume),
        _ => None,
    }
}

fn mass(rate: &AsTyped<Rate>, basis: ActiveBasis) -> Option<MassPerArea> {
    match rate.value() {
        Rate::ActivePerArea(mass, of) if of == basis => Some(mass),
        _ => None,
    }
}
