//! The exact search: every set of classes, with the best products of the shed for it.
//!
//! A set holds at most one product of a class; a second one of the same class would add nothing but cost. What a set is
//! worth is its [`Score`], compared from the first part to the last.

use super::Role;
use super::dose::{Dose, dose};
use super::voices::{Authority, Ground, Group, Voice, is_good, of_class};
use crate::farm::label::Stance;
use crate::farm::{AdjuvantClass, Id, Lean, Pass, Product};
use crate::label::names::list;
use crate::label::when::{Situation, holds};
use crate::label::{Speaks, speaks};
use crate::mix::charge::{Conflict, conflict};
use crate::quantity::{Area, MassPerVolume, Money};
use rust_decimal::prelude::ToPrimitive;

/// What a set is worth: less is better, compared part by part in this order.
#[derive(Clone, Debug, Default, PartialEq, Eq, PartialOrd, Ord)]
pub(crate) struct Score {
    /// Bans broken, demands of labels and local advice not met, ranges that do not meet. A set on offer has none.
    pub(crate) broken: u32,
    /// Demands of publications and common practice not met.
    pub(crate) unmet: u32,
    /// Products that would have to be bought.
    pub(crate) buys: u32,
    /// Activators and conditioners beyond the first of each: one mostly serves all, and two cost crop and money.
    pub(crate) stacked: u32,
    /// For each authority, the weightiest first: objections raised, wishes not met.
    pub(crate) standing: [(u32, u32); 4],
    /// Against the lean: the strength of the activator, turned by what weighs more.
    pub(crate) lean: i32,
    /// Products without price or dose.
    pub(crate) unpriced: u32,
    /// Cost over a hectare, in millionths.
    pub(crate) cost: i64,
    /// How many products.
    pub(crate) count: u32,
    /// Which ones, so that no two sets are equal.
    pub(crate) which: Vec<u16>,
}

/// A product that may go into a set.
#[derive(Clone, Debug)]
pub(crate) struct Candidate {
    pub(crate) product: Option<Id>,
    pub(crate) name: String,
    pub(crate) class: AdjuvantClass,
    pub(crate) dose: Dose,
    pub(crate) cost: Option<Money>,
    /// How many products of the mix its charge may bind with.
    pub(crate) may_bind: u32,
}

impl Candidate {
    fn millionths(&self) -> Option<i64> {
        let cost = self.cost?.amount() * rust_decimal::Decimal::from(1_000_000);
        self.dose.rate.as_ref()?;
        cost.round().to_i64()
    }
}

/// A mask over the classes of a problem.
type Mask = u32;

/// A mix and a shed, made ready for the search.
pub(crate) struct Problem {
    /// The classes that somebody has a good word for, in a fixed order.
    classes: Vec<AdjuvantClass>,
    /// The products of each class, the best first.
    pub(crate) candidates: Vec<Candidate>,
    of_class: Vec<Vec<u16>>,
    required: Vec<(Mask, bool)>,
    preferred: Vec<(Mask, Authority)>,
    /// For each class, objections by authority.
    objections: Vec<[u32; 4]>,
    forbidden: Mask,
    activators: Mask,
    water: Mask,
    lean: i32,
    /// Pairs of candidates that may not go together.
    clashes: Vec<(u16, u16)>,
    /// Products left out, each with the reason.
    pub(crate) left_out: Vec<(Id, AdjuvantClass, String)>,
}

/// How much the lean and the day weigh for control of the weeds, or, below zero, for safety of the crop.
fn lean(pass: &Pass) -> i32 {
    let growing = &pass.growing;
    let chosen = match pass.lean {
        Lean::WeedControl => 2,
        Lean::Even => 0,
        Lean::CropSafety => -2,
    };
    chosen + i32::from(growing.large_weeds) + i32::from(growing.heavy_pressure) + i32::from(growing.drought)
        - i32::from(growing.heat)
        - i32::from(growing.cold)
}

impl Problem {
    /// From the voices of a mix and what the shed holds. Classes that nobody has a good word for are left out, but for
    /// those of `also`, which stand in the mix and are to be scored.
    pub(crate) fn new(ground: &Ground<'_>, voices: &[Voice], water_needs: Option<MassPerVolume>, also: &[&Id]) -> Self {
        let mut classes: Vec<AdjuvantClass> = voices
            .iter()
            .flat_map(|voice| &voice.claims)
            .filter(|claim| is_good(claim.stance))
            .map(|claim| claim.class)
            .chain(also.iter().filter_map(|id| ground.farm.products.get(*id)?.adjuvant_class()))
            .collect();
        classes.sort_unstable();
        classes.dedup();
        let mut problem = Self {
            of_class: vec![Vec::new(); classes.len()],
            objections: vec![[0; 4]; classes.len()],
            candidates: Vec::new(),
            required: Vec::new(),
            preferred: Vec::new(),
            forbidden: 0,
            activators: 0,
            water: 0,
            lean: lean(ground.pass),
            clashes: Vec::new(),
            left_out: Vec::new(),
            classes,
        };
        for (at, class) in problem.classes.clone().into_iter().enumerate() {
            let bit = 1 << at;
            match Role::of(class) {
                Role::Activator => problem.activators |= bit,
                Role::WaterAndNitrogen => problem.water |= bit,
                _ => {}
            }
            // Where a weightier voice leaves a choice, what a lesser one has against a class still counts as its advice.
            let overruled = voices.iter().flat_map(|voice| voice.overruled(class));
            for authority in overruled {
                if let Some(count) = problem.objections.get_mut(at).and_then(|by| by.get_mut(authority as usize)) {
                    *count += 1;
                }
            }
            for claim in voices.iter().filter_map(|voice| voice.on(class)) {
                match claim.stance {
                    Stance::Forbidden => problem.forbidden |= bit,
                    Stance::Discouraged => {
                        if let Some(count) =
                            problem.objections.get_mut(at).and_then(|by| by.get_mut(claim.authority as usize))
                        {
                            *count += 1;
                        }
                    }
                    _ => {}
                }
            }
        }
        let groups = |of: fn(&Voice) -> &Vec<Group>| -> Vec<(Mask, Authority)> {
            voices.iter().flat_map(of).map(|group| (problem.mask(&group.classes), group.authority)).collect()
        };
        let (required, preferred) = (groups(|voice| &voice.required), groups(|voice| &voice.preferred));
        problem.required = required.into_iter().map(|(mask, authority)| (mask, authority.binds())).collect();
        problem.preferred = preferred;
        problem.stock(ground, voices, water_needs, also);
        problem
    }

    fn bit(&self, class: AdjuvantClass) -> Option<Mask> {
        self.classes.iter().position(|known| *known == class).map(|at| 1 << at)
    }

    fn mask(&self, classes: &[AdjuvantClass]) -> Mask {
        classes.iter().filter_map(|class| self.bit(*class)).fold(0, |mask, bit| mask | bit)
    }

    /// Fills the classes with what the shed holds, by id, so that the order of the shed does not matter.
    fn stock(&mut self, ground: &Ground<'_>, voices: &[Voice], water_needs: Option<MassPerVolume>, also: &[&Id]) {
        let mut shed: Vec<(&Id, &Product)> = ground.farm.products.iter().collect();
        shed.sort_by_key(|(id, _)| *id);
        let hectare = Area::from_hectares(1.0);
        for (id, product) in shed {
            let Some(class) = product.adjuvant_class() else { continue };
            let Some(at) = self.classes.iter().position(|known| *known == class) else { continue };
            let dose = dose(class, product, voices, ground, water_needs);
            let stands = also.contains(&id);
            let against = against(ground, id, product).or_else(|| dose.apart.clone());
            if let Some(reason) = against {
                self.left_out.push((id.clone(), class, reason));
                if !stands {
                    continue;
                }
            }
            let cost = dose.per_area.and_then(|amount| product.price.as_ref()?.of(amount.over(hectare)));
            let may_bind = ground
                .products
                .iter()
                .filter(|(other, partner)| {
                    *other != id && matches!(conflict(product, partner), Some(Conflict::MayBind(_)))
                })
                .filter(|(_, partner)| partner.adjuvant_class().is_none())
                .count();
            let number = u16::try_from(self.candidates.len()).unwrap_or(u16::MAX);
            self.candidates.push(Candidate {
                product: Some(id.clone()),
                name: product.name.clone(),
                class,
                dose,
                cost,
                may_bind: u32::try_from(may_bind).unwrap_or(u32::MAX),
            });
            if let Some(of_class) = self.of_class.get_mut(at) {
                of_class.push(number);
            }
        }
        for (at, class) in self.classes.clone().into_iter().enumerate() {
            let held =
                self.of_class.get(at).is_some_and(|of_class| of_class.iter().any(|number| !self.is_left_out(*number)));
            if held {
                continue;
            }
            let product = of_class(class);
            let mut dose = dose(class, &product, voices, ground, water_needs);
            if let Some((_, _, reason)) = self.left_out.iter().find(|(_, out, _)| *out == class) {
                let before = if dose.from.is_empty() { String::new() } else { format!("{}; ", dose.from) };
                dose.from = format!("{before}what the shed has of it does not suit: {reason}");
            }
            // What no rate suits cannot be bought either.
            if let Some(reason) = dose.apart {
                self.left_out.push((Id::new(), class, reason));
                continue;
            }
            let number = u16::try_from(self.candidates.len()).unwrap_or(u16::MAX);
            self.candidates.push(Candidate {
                product: None,
                name: class.name().to_owned(),
                class,
                dose,
                cost: None,
                may_bind: 0,
            });
            if let Some(of_class) = self.of_class.get_mut(at) {
                of_class.push(number);
            }
        }
        let key = |candidates: &[Candidate], number: u16| {
            candidates.get(usize::from(number)).map(|candidate| {
                let cost = candidate.millionths();
                (candidate.product.is_none(), candidate.may_bind, cost.is_none(), cost, number)
            })
        };
        for of_class in &mut self.of_class {
            of_class.sort_by_key(|number| key(&self.candidates, *number));
        }
        for (a, first) in self.candidates.iter().enumerate() {
            for (b, second) in self.candidates.iter().enumerate().skip(a + 1) {
                let product = |candidate: &Candidate| ground.farm.products.get(candidate.product.as_ref()?);
                if let (Some(one), Some(other)) = (product(first), product(second))
                    && first.class != second.class
                    && clash(ground, one, other)
                    && let (Ok(a), Ok(b)) = (u16::try_from(a), u16::try_from(b))
                {
                    self.clashes.push((a, b));
                }
            }
        }
    }

    fn is_left_out(&self, number: u16) -> bool {
        let id = self.candidates.get(usize::from(number)).and_then(|candidate| candidate.product.as_ref());
        id.is_some_and(|id| self.left_out.iter().any(|(out, ..)| out == id))
    }

    /// What a set is worth.
    pub(crate) fn score(&self, set: &[u16]) -> Score {
        let members = || set.iter().filter_map(|number| self.candidates.get(usize::from(*number)));
        let mask = members().filter_map(|member| self.bit(member.class)).fold(0, |mask, bit| mask | bit);
        let mut score = Score { lean: -self.lean * strength(members().map(|member| member.class)), ..Score::default() };
        score.broken += (mask & self.forbidden).count_ones();
        for (group, binds) in &self.required {
            if mask & group == 0 {
                if *binds { score.broken += 1 } else { score.unmet += 1 }
            }
        }
        for role in [self.activators, self.water] {
            score.stacked += (mask & role).count_ones().saturating_sub(1);
        }
        for (group, authority) in &self.preferred {
            if mask & group == 0
                && let Some((_, wishes)) = score.standing.get_mut(*authority as usize)
            {
                *wishes += 1;
            }
        }
        for (at, objections) in self.objections.iter().enumerate() {
            if mask & (1 << at) != 0 {
                for (standing, count) in score.standing.iter_mut().zip(objections) {
                    standing.0 += count;
                }
            }
        }
        for number in set {
            score.broken += u32::from(self.is_left_out(*number));
        }
        let clashing = |a: &u16, b: &u16| set.contains(a) && set.contains(b);
        score.broken += u32::try_from(self.clashes.iter().filter(|(a, b)| clashing(a, b)).count()).unwrap_or(u32::MAX);
        for member in members() {
            score.buys += u32::from(member.product.is_none());
            let [.., practice] = &mut score.standing;
            practice.0 += member.may_bind;
            match member.millionths() {
                Some(cost) => score.cost = score.cost.saturating_add(cost),
                None => score.unpriced += 1,
            }
            score.count += 1;
        }
        score.which = set.to_vec();
        score.which.sort_unstable();
        score
    }

    /// The best set of products for a set of classes.
    fn best_of(&self, mask: Mask) -> Option<(Score, Vec<u16>)> {
        let options: Vec<&Vec<u16>> = self
            .of_class
            .iter()
            .enumerate()
            .filter(|(at, _)| mask & (1 << at) != 0)
            .map(|(_, options)| options)
            .collect();
        // Without clashes the best of each class are the best together: every part of the score adds up by product.
        let first: Vec<u16> = options
            .iter()
            .filter_map(|options| options.iter().find(|number| !self.is_left_out(**number)).copied())
            .collect();
        if first.len() < options.len() {
            return None;
        }
        let best = (self.score(&first), first);
        if best.0.broken == 0 || !self.clashes.iter().any(|(a, b)| best.1.contains(a) && best.1.contains(b)) {
            return Some(best);
        }
        let mut found: Option<(Score, Vec<u16>)> = None;
        self.walk(&options, &mut Vec::new(), &mut found);
        found.or(Some(best))
    }

    /// All products for the classes, leaving out what clashes as soon as it does.
    fn walk(&self, options: &[&Vec<u16>], set: &mut Vec<u16>, found: &mut Option<(Score, Vec<u16>)>) {
        let Some((here, rest)) = options.split_first() else {
            let score = self.score(set);
            if found.as_ref().is_none_or(|(best, _)| score < *best) {
                *found = Some((score, set.clone()));
            }
            return;
        };
        let clashes = |number: u16, set: &[u16]| {
            self.clashes.iter().any(|(a, b)| (*a == number && set.contains(b)) || (*b == number && set.contains(a)))
        };
        // Products of one class differ by what they cost and clash with: of those that clash with nothing, only the first,
        // which is the best, can be part of the answer.
        let mut free_seen = false;
        for number in here.iter().filter(|number| !self.is_left_out(**number)) {
            let free = !self.clashes.iter().any(|(a, b)| a == number || b == number);
            if (free && free_seen) || clashes(*number, set) {
                continue;
            }
            free_seen |= free;
            set.push(*number);
            self.walk(rest, set, found);
            set.pop();
        }
    }

    /// The sets to offer, the best first: for each choice of activators the best set there is, and for the best activators
    /// each other way to condition the water. None that breaks a ban or a binding demand.
    pub(crate) fn offer(&self) -> Vec<(Score, Vec<u16>)> {
        let all: Mask = (1 << self.classes.len()) - 1;
        let mut best: Vec<(Mask, Score, Vec<u16>)> = (0..=all)
            .filter(|mask| mask & self.forbidden == 0)
            .filter_map(|mask| self.best_of(mask).map(|(score, set)| (mask, score, set)))
            .filter(|(_, score, _)| score.broken == 0)
            .collect();
        best.sort_by(|a, b| a.1.cmp(&b.1));
        let Some((first, first_score, _)) = best.first().cloned() else { return Vec::new() };
        let mut activators: Vec<Mask> = Vec::new();
        let mut waters: Vec<Mask> = vec![first & self.water];
        let mut offered = Vec::new();
        for (mask, score, set) in best {
            let (activator, water) = (mask & self.activators, mask & self.water);
            let is_new = !activators.contains(&activator);
            // Two activators only where they are the answer or one alone leaves a demand unmet.
            let plain = activator.count_ones() <= 1 || score == first_score;
            let other_water = activator == first & self.activators
                && water.is_power_of_two()
                && !waters.contains(&water)
                && mask & !self.water == first & !self.water;
            if (is_new && plain) || other_water {
                // What would have to be bought is of interest where nothing in the shed is as good.
                let worth = score.buys == 0 || first_score.buys > 0 || better_but_for_buying(&score, &first_score);
                if is_new {
                    activators.push(activator);
                }
                if other_water {
                    waters.push(water);
                }
                if worth {
                    offered.push((score, set));
                }
            }
        }
        offered.truncate(8);
        offered
    }

    /// Whether a set suits the products of the mix better than another: cost and lean left aside.
    pub(crate) fn suits_better(a: &Score, b: &Score) -> bool {
        (a.unmet, a.buys, a.stacked, a.standing) < (b.unmet, b.buys, b.stacked, b.standing)
    }

    /// A product for each of two demands, where every one for the first clashes with every one for the second.
    pub(crate) fn never_together(&self, one: &[AdjuvantClass], two: &[AdjuvantClass]) -> Option<(&str, &str)> {
        let of = |classes: &[AdjuvantClass]| -> Vec<(u16, &str)> {
            (0_u16..)
                .zip(&self.candidates)
                .filter(|(number, candidate)| classes.contains(&candidate.class) && !self.is_left_out(*number))
                .map(|(number, candidate)| (number, candidate.name.as_str()))
                .collect()
        };
        let (ones, twos) = (of(one), of(two));
        let apart = |a: u16, b: u16| self.clashes.contains(&(a, b)) || self.clashes.contains(&(b, a));
        let never = ones.iter().all(|(a, _)| twos.iter().all(|(b, _)| apart(*a, *b)));
        let ((_, first), (_, second)) = ones.first().zip(twos.first())?;
        never.then_some((*first, *second))
    }

    /// The number of a product of the shed.
    pub(crate) fn number_of(&self, id: &Id) -> Option<u16> {
        let at = self.candidates.iter().position(|candidate| candidate.product.as_ref() == Some(id))?;
        u16::try_from(at).ok()
    }
}

fn better_but_for_buying(score: &Score, first: &Score) -> bool {
    (score.unmet, score.stacked, score.standing) < (first.unmet, first.stacked, first.standing)
}

/// How strongly the activators of a set act, on weeds and crop alike: oils more than surfactants. Oils are not ranked among
/// each other, since publications disagree.
fn strength(classes: impl Iterator<Item = AdjuvantClass>) -> i32 {
    classes
        .map(|class| match class {
            class if class.is_oil() => 2,
            AdjuvantClass::NonIonicSurfactant | AdjuvantClass::Organosilicone => 1,
            _ => 0,
        })
        .max()
        .unwrap_or(0)
}

/// Why a product of the shed may not go into this mix at all: its own label or a partner's names the other.
fn against(ground: &Ground<'_>, id: &Id, product: &Product) -> Option<String> {
    ground.products.iter().filter(|(other, partner)| *other != id && partner.adjuvant_class().is_none()).find_map(
        |(_, partner)| {
            if names(ground, product, partner) {
                Some(format!("its label says not to mix it with {}", partner.name))
            } else if names(ground, partner, product) {
                Some(format!("the label of {} says not to mix it with {}", partner.name, product.name))
            } else {
                match conflict(product, partner) {
                    Some(Conflict::Precipitates(_, text)) => Some(text),
                    _ => None,
                }
            }
        },
    )
}

/// Whether the label of one says that on these fields it may not go with the other.
fn names(ground: &Ground<'_>, one: &Product, other: &Product) -> bool {
    let situation = Situation { pass: ground.pass, product: one, partners: vec![other], carrier: Some(ground.carrier) };
    one.label.iter().any(|statement| {
        matches!(&statement.says, crate::farm::Says::NotWith { what, .. } if list(what, other))
            && holds(&statement.when, &situation) != Some(false)
            && ground.fields.iter().any(|field| matches!(speaks(statement, field), Speaks::Yes | Speaks::Unclear))
    })
}

/// Whether two adjuvants may not stand in one set: a label says so, or their charges meet.
fn clash(ground: &Ground<'_>, one: &Product, other: &Product) -> bool {
    names(ground, one, other) || names(ground, other, one) || conflict(one, other).is_some()
}

#[cfg(test)]
mod tests {
    use super::super::voices::{Ground, voices};
    use super::{Problem, Score};
    use crate::farm::label::{Says, Stance};
    use crate::farm::{AdjuvantClass, Farm, Field, Formulation, Id, Lean, Pass, Product, ProductKind, Statement};
    use crate::quantity::{AsTyped, Quantity};

    fn typed<Q: Quantity>(text: &str) -> AsTyped<Q> {
        AsTyped::parse(text).unwrap()
    }

    /// A row of numbers that is the same on every machine.
    struct Numbers(u64);

    impl Numbers {
        fn below(&mut self, limit: u64) -> u64 {
            self.0 = self.0.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            (self.0 >> 33) % limit
        }
    }

    const CLASSES: [AdjuvantClass; 6] = [
        AdjuvantClass::NonIonicSurfactant,
        AdjuvantClass::CropOilConcentrate,
        AdjuvantClass::MethylatedSeedOil,
        AdjuvantClass::AmmoniumSulfate,
        AdjuvantClass::ConditionerWithoutAmmonium,
        AdjuvantClass::VolatilityReducer,
    ];

    /// An invented farm: up to three products with random statements, up to ten adjuvants, some of which name each other or
    /// a partner as what they may not go with, some without a price.
    fn invented(numbers: &mut Numbers) -> Farm {
        let mut farm = Farm::new("Invented");
        farm.fields.insert("f".to_owned(), Field::new("Field", typed("80 ac")));
        let mut pass = Pass::new("Pass", jiff::civil::date(2031, 6, 12));
        pass.lean = Lean::ALL[usize::try_from(numbers.below(3)).unwrap()];
        pass.growing.drought = numbers.below(3) == 0;
        for partner in 0..=numbers.below(3) {
            let mut product = Product::new(&format!("Partner {partner}"), ProductKind::Herbicide, Formulation::SC);
            for class in CLASSES {
                if numbers.below(2) == 0 {
                    let stance = Stance::ALL[usize::try_from(numbers.below(5)).unwrap()];
                    let says = Says::Adjuvant { class, stance, least: None, most: None, at_least: None, at_most: None };
                    product.label.push(Statement::new(says, ""));
                }
            }
            farm.products.insert(format!("partner-{partner}"), product);
        }
        for n in 0..4 + numbers.below(7) {
            let class = CLASSES[usize::try_from(numbers.below(6)).unwrap()];
            let mut product = super::of_class(class);
            product.name = format!("Adjuvant {n}");
            if numbers.below(5) > 0 {
                let price = format!("{}/{}", 1 + numbers.below(30), if product.is_liquid() { "gal" } else { "lb" });
                product.price = Some(typed(&price));
            }
            let against = match numbers.below(4) {
                0 | 1 => Some(format!("Adjuvant {}", numbers.below(6))),
                2 => Some("Partner 0".to_owned()),
                _ => None,
            };
            product.label.extend(against.map(|what| Statement::new(Says::NotWith { what, days: 0 }, "")));
            farm.products.insert(format!("adjuvant-{n}"), product);
        }
        farm.passes.insert("p".to_owned(), pass);
        farm
    }

    /// Every set with one product of a class at most, the plain way.
    fn every_set(problem: &Problem) -> Vec<Vec<u16>> {
        let mut sets = vec![Vec::new()];
        for of_class in &problem.of_class {
            let longer: Vec<Vec<u16>> = sets
                .iter()
                .flat_map(|set| of_class.iter().map(move |number| set.iter().copied().chain([*number]).collect()))
                .collect();
            sets.extend(longer);
        }
        sets
    }

    #[test]
    fn the_first_on_offer_is_the_best_of_every_set_there_is() {
        let mut numbers = Numbers(7);
        let (mut offered, mut clashed) = (0, 0);
        for _ in 0..400 {
            let farm = invented(&mut numbers);
            let products: Vec<(&Id, &Product)> =
                farm.products.iter().filter(|(_, product)| product.kind.is_pesticide()).collect();
            let fields = [&farm.fields["f"]];
            let carrier = crate::quantity::CarrierRate::from_us_gallons_per_acre(15.0);
            let ground = Ground { farm: &farm, pass: &farm.passes["p"], fields: &fields, carrier, products: &products };
            let problem = Problem::new(&ground, &voices(&ground), None, &[]);
            let sets = every_set(&problem);
            let scored: Vec<(Score, Vec<u16>)> = sets.into_iter().map(|set| (problem.score(&set), set)).collect();
            let best = scored.iter().filter(|(score, _)| score.broken == 0).min();
            let offer = problem.offer();
            assert_eq!(offer.first().map(|(score, _)| score), best.map(|(score, _)| score));
            offered += usize::from(!offer.is_empty());
            clashed += usize::from(!problem.clashes.is_empty());
            // And each other set on offer is the best with its classes.
            for (score, set) in &offer {
                let classes = |set: &[u16]| {
                    let mut classes: Vec<_> =
                        set.iter().map(|number| problem.candidates[usize::from(*number)].class).collect();
                    classes.sort_unstable();
                    classes
                };
                let rivals = scored.iter().filter(|(_, other)| classes(other) == classes(set));
                assert_eq!(rivals.map(|(score, _)| score).min(), Some(score));
            }
        }
        assert!(offered > 200 && clashed > 100, "{offered} offered, {clashed} with clashes");
    }
}
