//! The analysis of a water: its figures against one another. Calcium and magnesium make the hardness; ions of one charge have those of the
//! other beside them; and all of them together carry the current.

use super::confusions::{Kind, Meant, meant};
use super::{Held, Offer, Set, Slot, doubted, ranges};
use crate::farm::{Farm, Id, Water};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Conductivity, Hardness, IonContent, Quantity};
use crate::water::hardness::from_ions;

/// Two ways to the same hardness agree within so much. Common practice, no source.
const SAME: f64 = 0.08;
/// Beyond so much they contradict one another.
const OFF: f64 = 1.4;
/// How far conductivity and ions may lie apart before one is doubted.
const FAR: f64 = 3.0;
/// How many microsiemens to the centimetre a milliequivalent of positive ions to the litre makes, with the negative ones beside it.
/// Standard Methods for the Examination of Water and Wastewater, method 1030 E: 0.9 to 1.1 of a hundred times the sum; from memory.
const PER_MILLIEQUIVALENT: f64 = 100.0;
const STANDARD: &str = "Standard Methods for the Examination of Water and Wastewater, method 1030 E, from memory";

/// Milligrams of an ion that are a milliequivalent: its molar mass by its charge. IUPAC standard atomic weights 2021, abridged.
mod equivalent {
    pub(super) const CALCIUM: f64 = 40.078 / 2.0;
    pub(super) const MAGNESIUM: f64 = 24.305 / 2.0;
    pub(super) const SODIUM: f64 = 22.990;
    pub(super) const POTASSIUM: f64 = 39.098;
    pub(super) const BICARBONATE: f64 = 61.016;
    pub(super) const CALCIUM_CARBONATE: f64 = 100.086 / 2.0;
}

/// The analysis of a water.
pub(super) fn judge(farm: &Farm, id: &Id, water: &Water, findings: &mut Vec<Finding>) {
    let here = Here { farm, id, water };
    let before = findings.len();
    findings.extend(here.hardness());
    if findings.len() == before {
        findings.extend(here.balance());
    }
    if findings.len() == before {
        findings.extend(here.conductivity());
    }
}

struct Here<'a> {
    farm: &'a Farm,
    id: &'a Id,
    water: &'a Water,
}

fn milliequivalents(ion: Option<&AsTyped<IonContent>>, equivalent: f64) -> Option<f64> {
    ion.map(|ion| ion.to_ppm() / equivalent)
}

impl Here<'_> {
    fn held<'a, Q>(&self, kind: Kind, typed: &'a AsTyped<Q>, slot: Slot, what: String) -> Held<'a, Q> {
        let about = Subject::Water(self.id.clone());
        Held { kind, typed, slot, about, what, units: self.farm.units }
    }

    fn about(&self) -> Subject {
        Subject::Water(self.id.clone())
    }

    /// The stated hardness against that of calcium and magnesium, else against what waters have.
    fn hardness(&self) -> Option<Finding> {
        let stated = self.water.hardness.as_ref().filter(|stated| !stated.is_zero())?;
        let held = self.held(
            Kind::Hardness,
            stated,
            Slot::Hardness(self.id.clone()),
            t!("plausible-the-hardness-of", name = self.water.name),
        );
        let (Some(calcium), Some(magnesium)) = (&self.water.calcium, &self.water.magnesium) else {
            return held.against(ranges::hardness());
        };
        let reckoned = from_ions(calcium.value(), magnesium.value());
        let apart = reckoned.ratio(stated.value())?;
        if (1.0 / OFF..=OFF).contains(&apart) || reckoned.is_zero() {
            return None;
        }
        let off = |hardness: Hardness, from: Hardness| {
            hardness.ratio(from).map_or(f64::INFINITY, |ratio| (ratio - 1.0).abs())
        };
        let of_hardness = meant::<Hardness>(Kind::Hardness, stated.text(), self.farm.units).into_iter().map(|one| {
            (off(one.value, reckoned), Offer::of(Slot::Hardness(self.id.clone()), one.text.clone(), one.why()))
        });
        let of_ions = self.ions(calcium, magnesium).map(|(value, offer)| (off(value, stated.value()), offer));
        let mut all: Vec<(f64, Offer)> = of_hardness.chain(of_ions).filter(|(off, _)| *off <= SAME).collect();
        all.sort_by(|(a, _), (b, _)| a.total_cmp(b));
        let offers = all.into_iter().map(|(_, offer)| offer).collect();
        let text = t!(
            "plausible-calcium-and-magnesium-make-the-report",
            name = self.water.name,
            reckoned = reckoned.show(self.farm.units),
            stated = stated.text()
        );
        doubted(self.about(), &text, t!("plausible-would-agree"), Basis::Arithmetic, offers)
    }

    /// Calcium, magnesium, or both as they may have been meant, with the hardness they make.
    fn ions<'a>(
        &'a self,
        calcium: &'a AsTyped<IonContent>,
        magnesium: &'a AsTyped<IonContent>,
    ) -> impl Iterator<Item = (Hardness, Offer)> + 'a {
        let of = |kind, ion: &AsTyped<IonContent>| meant::<IonContent>(kind, ion.text(), self.farm.units);
        let (of_calcium, of_magnesium) = (of(Kind::Calcium, calcium), of(Kind::Magnesium, magnesium));
        let set =
            |slot: fn(Id) -> Slot, one: &Meant<IonContent>| Set { slot: slot(self.id.clone()), text: one.text.clone() };
        let mut all: Vec<(Hardness, Offer)> = Vec::new();
        for one in &of_calcium {
            let offer = Offer { sets: vec![set(Slot::Calcium, one)], why: one.why().to_owned() };
            all.push((from_ions(one.value, magnesium.value()), offer));
            // Both are confused alike, as a report has one unit for them.
            let kind = |says: &str| says.trim_start_matches("calcium ").trim_start_matches("magnesium ").to_owned();
            for other in of_magnesium.iter().filter(|other| kind(other.says) == kind(one.says)) {
                let sets = vec![set(Slot::Calcium, one), set(Slot::Magnesium, other)];
                all.push((from_ions(one.value, other.value), Offer { sets, why: one.why().to_owned() }));
            }
        }
        for one in &of_magnesium {
            let offer = Offer { sets: vec![set(Slot::Magnesium, one)], why: one.why().to_owned() };
            all.push((from_ions(calcium.value(), one.value), offer));
        }
        all.into_iter()
    }

    /// Milliequivalents of positive ions in a litre, and whether sodium is among them, without which there may be more.
    fn positive(&self) -> Option<(f64, bool)> {
        let water = self.water;
        let hard = match (&water.calcium, &water.magnesium, &water.hardness) {
            (Some(calcium), Some(magnesium), _) => {
                calcium.to_ppm() / equivalent::CALCIUM + magnesium.to_ppm() / equivalent::MAGNESIUM
            }
            (_, _, Some(hardness)) => hardness.to_ppm() / equivalent::CALCIUM_CARBONATE,
            _ => return None,
        };
        let sodium = milliequivalents(water.sodium.as_ref(), equivalent::SODIUM);
        let potassium = milliequivalents(water.potassium.as_ref(), equivalent::POTASSIUM);
        Some((hard + sodium.unwrap_or(0.0) + potassium.unwrap_or(0.0), sodium.is_some()))
    }

    /// Bicarbonate needs as much of positive ions beside it.
    fn balance(&self) -> Option<Finding> {
        let bicarbonate = self.water.bicarbonate.as_ref()?;
        let (positive, is_whole) = self.positive()?;
        let negative = bicarbonate.to_ppm() / equivalent::BICARBONATE;
        if !is_whole || positive <= 0.0 || negative <= positive * FAR {
            return None;
        }
        let fits = |positive: f64| negative <= positive * 1.1 && positive <= negative * 4.0;
        let mut offers = Vec::new();
        if let (Some(calcium), Some(magnesium)) = (&self.water.calcium, &self.water.magnesium) {
            let now = from_ions(calcium.value(), magnesium.value()).to_ppm() / equivalent::CALCIUM_CARBONATE;
            let rest = positive - now;
            let both = self.ions(calcium, magnesium).filter(|(hardness, offer)| {
                offer.sets.len() == 2 && fits(hardness.to_ppm() / equivalent::CALCIUM_CARBONATE + rest)
            });
            offers.extend(both.map(|(_, offer)| offer));
        }
        let of_bicarbonate = self.held(
            Kind::Bicarbonate,
            bicarbonate,
            Slot::Bicarbonate(self.id.clone()),
            t!("plausible-the-bicarbonate-of", name = self.water.name),
        );
        offers.extend(of_bicarbonate.offers(|meant| {
            let negative = meant.to_ppm() / equivalent::BICARBONATE;
            negative <= positive * 1.1 && negative >= positive * 0.2
        }));
        let text = t!(
            "plausible-holds-of-bicarbonate-times-as-much",
            name = self.water.name,
            bicarbonate = bicarbonate.text(),
            show = crate::quantity::number::show(negative / positive, 1)
        );
        doubted(self.about(), &text, t!("plausible-would-balance"), Basis::Arithmetic, offers)
    }

    /// What is dissolved carries the current.
    fn conductivity(&self) -> Option<Finding> {
        let stated = self.water.conductivity.as_ref().filter(|stated| !stated.is_zero())?;
        let held = self.held(
            Kind::Conductivity,
            stated,
            Slot::Conductivity(self.id.clone()),
            t!("plausible-the-conductivity-of", name = self.water.name),
        );
        let Some((positive, is_whole)) = self.positive().filter(|(positive, _)| *positive > 0.0) else {
            return held.against(ranges::conductivity());
        };
        let expected = positive * PER_MILLIEQUIVALENT;
        let times = |of: Conductivity| of.to_microsiemens_per_centimetre() / expected;
        let is_out = times(stated.value()) < 1.0 / FAR || (is_whole && times(stated.value()) > FAR);
        if !is_out {
            return held.against(ranges::conductivity());
        }
        let most = if is_whole { 2.0 } else { FAR };
        let offers = held.offers(|meant| (0.5..=most).contains(&times(*meant)));
        let why = t!(
            "plausible-its-ions-make-about",
            expected = Conductivity::from_microsiemens_per_centimetre(expected).show(self.farm.units)
        );
        held.doubted(&why, t!("plausible-would-agree"), Basis::Published(STANDARD.to_owned()), offers)
    }
}
