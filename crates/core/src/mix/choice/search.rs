//! The exact search: every set of adjuvants there is, none guessed.
//!
//! A set holds at most one product of a class; a second one of the same class would add nothing but cost. What a set is
//! worth is its [`Score`], compared from the first part to the last. Demands and wishes speak of one role each, so scores of
//! roles add up, and the best set is put together from the best part for each role; only products that may not go together
//! tie roles to each other, and then parts are tried in turn until no better set can be left.

use super::Role;
use super::choose::cost;
use super::dose::{Dose, dose};
use super::voices::{Authority, Ground, Group, Voice, is_good, of_class};
use crate::farm::label::Stance;
use crate::farm::{AdjuvantClass, CarrierKind, Id, Lean, Pass, Product};
use crate::finding::Basis;
use crate::label::names::list;
use crate::label::when::{Situation, holds};
use crate::label::{Speaks, speaks};
use crate::language::t;
use crate::mix::charge::{Conflict, conflict};
use crate::quantity::{MassPerVolume, Money};
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
    /// Which ones, role by role, so that no two sets are equal.
    pub(crate) which: Vec<u16>,
}

impl Score {
    /// The score of two parts of a set together.
    fn plus(&self, other: &Self) -> Self {
        let mut sum = self.clone();
        sum.broken += other.broken;
        sum.unmet += other.unmet;
        sum.buys += other.buys;
        sum.stacked += other.stacked;
        for (standing, more) in sum.standing.iter_mut().zip(&other.standing) {
            standing.0 += more.0;
            standing.1 += more.1;
        }
        sum.lean += other.lean;
        sum.unpriced += other.unpriced;
        sum.cost = sum.cost.saturating_add(other.cost);
        sum.count += other.count;
        sum.which.extend(&other.which);
        sum
    }
}

/// The part of a set that serves one role.
#[derive(Clone, Debug)]
struct Part {
    mask: Mask,
    score: Score,
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
    /// It stands in the mix, though something is against it.
    left_out: bool,
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
    required: Vec<(Role, Mask, bool)>,
    preferred: Vec<(Role, Mask, Authority)>,
    /// For each class, objections by authority.
    objections: Vec<[u32; 4]>,
    forbidden: Mask,
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
            .chain(also.iter().filter_map(|id| ground.farm.products.get(id)?.adjuvant_class()))
            .collect();
        classes.sort_unstable();
        classes.dedup();
        if ground.pass.carrier_kind == CarrierKind::UreaAmmoniumNitrate {
            // It is the carrier, so it is no additive as well.
            classes.retain(|class| *class != AdjuvantClass::UreaAmmoniumNitrate);
        }
        let mut problem = Self {
            of_class: vec![Vec::new(); classes.len()],
            objections: vec![[0; 4]; classes.len()],
            candidates: Vec::new(),
            required: Vec::new(),
            preferred: Vec::new(),
            forbidden: 0,
            lean: lean(ground.pass),
            clashes: Vec::new(),
            left_out: Vec::new(),
            classes,
        };
        for (at, class) in problem.classes.clone().into_iter().enumerate() {
            let bit = 1 << at;
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
        let groups = |of: fn(&Voice) -> &Vec<Group>| -> Vec<(Role, Mask, Authority)> {
            let groups = voices.iter().flat_map(of);
            groups.map(|group| (group.role, problem.mask(&group.classes), group.authority)).collect()
        };
        let (required, preferred) = (groups(|voice| &voice.required), groups(|voice| &voice.preferred));
        problem.required =
            required.into_iter().map(|(role, mask, authority)| (role, mask, authority.binds())).collect();
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
        for (id, product) in shed {
            let Some(class) = product.adjuvant_class() else { continue };
            let Some(at) = self.classes.iter().position(|known| *known == class) else { continue };
            let dose = dose(class, product, voices, ground, water_needs);
            let stands = also.contains(&id);
            let against = against(ground, id, product).or_else(|| dose.apart.clone());
            let left_out = against.is_some();
            if let Some(reason) = against {
                self.left_out.push((id.clone(), class, reason));
                if !stands {
                    continue;
                }
            }
            let cost = dose.per_area.and_then(|amount| cost(product, amount));
            let may_bind = ground
                .products
                .iter()
                .filter(|(other, partner)| *other != id && conflict(product, partner).is_some())
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
                left_out,
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
                dose.from = if dose.from.is_empty() {
                    t!("mix-what-the-shed-has-of-it", reason = reason)
                } else {
                    t!("mix-rate-though-the-shed-does-not-suit", from = dose.from, reason = reason)
                };
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
                left_out: false,
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
        self.candidates.get(usize::from(number)).is_some_and(|candidate| candidate.left_out)
    }

    /// What a set is worth.
    pub(crate) fn score(&self, set: &[u16]) -> Score {
        let parts = Role::ALL.into_iter().map(|role| {
            let of_role = |number: &&u16| self.class_of(**number).is_some_and(|class| Role::of(class) == role);
            let mut part: Vec<u16> = set.iter().filter(of_role).copied().collect();
            part.sort_unstable();
            self.score_part(role, part)
        });
        let mut score = parts.fold(Score::default(), |sum, part| sum.plus(&part));
        let across = self.clashes.iter().filter(|(a, b)| {
            let role = |number: u16| self.class_of(number).map(Role::of);
            role(*a) != role(*b) && set.contains(a) && set.contains(b)
        });
        score.broken += u32::try_from(across.count()).unwrap_or(u32::MAX);
        score
    }

    fn class_of(&self, number: u16) -> Option<AdjuvantClass> {
        self.candidates.get(usize::from(number)).map(|candidate| candidate.class)
    }

    /// What the part of a set is worth that serves a role.
    fn score_part(&self, role: Role, part: Vec<u16>) -> Score {
        let members = || part.iter().filter_map(|number| self.candidates.get(usize::from(*number)));
        let mask = members().filter_map(|member| self.bit(member.class)).fold(0, |mask, bit| mask | bit);
        let mut score = Score { lean: -self.lean * strength(members().map(|member| member.class)), ..Score::default() };
        score.broken += (mask & self.forbidden).count_ones();
        for (_, _, binds) in self.required.iter().filter(|(of, group, _)| *of == role && mask & group == 0) {
            if *binds { score.broken += 1 } else { score.unmet += 1 }
        }
        score.stacked = mask.count_ones().saturating_sub(1);
        for (_, _, authority) in self.preferred.iter().filter(|(of, group, _)| *of == role && mask & group == 0) {
            if let Some((_, wishes)) = score.standing.get_mut(*authority as usize) {
                *wishes += 1;
            }
        }
        for (_, objections) in self.objections.iter().enumerate().filter(|(at, _)| mask & (1 << at) != 0) {
            for (standing, count) in score.standing.iter_mut().zip(objections) {
                standing.0 += count;
            }
        }
        let inside = self.clashes.iter().filter(|(a, b)| part.contains(a) && part.contains(b)).count();
        score.broken += u32::try_from(inside).unwrap_or(u32::MAX);
        for number in &part {
            score.broken += u32::from(self.is_left_out(*number));
        }
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
        score.which = part;
        score
    }

    /// Every part for a role that breaks nothing, the best first: each set of its classes with the products that may be in
    /// the answer.
    fn parts(&self, role: Role) -> Vec<Part> {
        let classes: Vec<(Mask, &Vec<u16>)> = self
            .classes
            .iter()
            .zip(&self.of_class)
            .filter_map(|(class, of_class)| Some((self.bit(*class)?, class, of_class)))
            .filter(|(bit, class, _)| Role::of(**class) == role && bit & self.forbidden == 0)
            .map(|(bit, _, of_class)| (bit, of_class))
            .collect();
        // A class beyond one for each demand, and beyond the first, serves no demand and is one too many: the set without it is
        // better, so no larger part is ever in the answer.
        let demands = self.required.iter().filter(|(of, ..)| *of == role).count().max(1);
        let mut sets: Vec<(Mask, Vec<u16>)> = vec![(0, Vec::new())];
        for (bit, of_class) in classes {
            // Products of one class differ by what they cost and clash with: of those that clash with nothing, only the first,
            // which is the best, can be part of the answer.
            let mut free_seen = false;
            let may = of_class.iter().copied().filter(|number| !self.is_left_out(*number)).filter(|number| {
                let free = !self.clashes.iter().any(|(a, b)| a == number || b == number);
                let keep = !(free && free_seen);
                free_seen |= free;
                keep
            });
            let may: Vec<u16> = may.collect();
            let longer: Vec<(Mask, Vec<u16>)> = sets
                .iter()
                .filter(|(_, set)| set.len() < demands)
                .flat_map(|(mask, set)| {
                    may.iter().map(move |number| (mask | bit, set.iter().copied().chain([*number]).collect()))
                })
                .collect();
            sets.extend(longer);
        }
        let mut parts: Vec<Part> = sets
            .into_iter()
            .map(|(mask, mut set)| {
                set.sort_unstable();
                Part { mask, score: self.score_part(role, set) }
            })
            .filter(|part| part.score.broken == 0)
            .collect();
        parts.sort_by(|a, b| a.score.cmp(&b.score));
        parts
    }

    /// The best set that takes one part for each role.
    fn solve(&self, roles: &[Vec<&Part>]) -> Option<(Mask, Score)> {
        let mut best = None;
        // What the best parts of the roles from each on come to, clashes aside.
        let mut rest = vec![Score::default()];
        for parts in roles.iter().rev() {
            let least = rest.last().map(|after| parts.first().map(|part| part.score.plus(after)))??;
            rest.push(least);
        }
        rest.reverse();
        self.descend(roles, &rest, 0, &Score::default(), &mut best);
        best
    }

    fn descend(&self, roles: &[Vec<&Part>], rest: &[Score], mask: Mask, sum: &Score, best: &mut Option<(Mask, Score)>) {
        let (Some((parts, later)), Some((_, rest_later))) = (roles.split_first(), rest.split_first()) else {
            if best.as_ref().is_none_or(|(_, known)| sum < known) {
                *best = Some((mask, sum.clone()));
            }
            return;
        };
        for part in parts {
            let here = sum.plus(&part.score);
            let least = rest_later.first().map_or_else(|| here.clone(), |after| here.plus(after));
            if best.as_ref().is_some_and(|(_, known)| least >= *known) {
                // The parts come the best first, so none that follows can do better.
                break;
            }
            let clashes = self.clashes.iter().any(|(a, b)| {
                let (new, old) = (&part.score.which, &sum.which);
                (new.contains(a) && old.contains(b)) || (new.contains(b) && old.contains(a))
            });
            if !clashes {
                self.descend(later, rest_later, mask | part.mask, &here, best);
            }
        }
    }

    /// The sets to offer, the best first: for each choice of activators the best set there is, and for the best activators
    /// each other way to condition the water. None that breaks a ban or a binding demand.
    pub(crate) fn offer(&self) -> Vec<(Score, Vec<u16>)> {
        let parts: Vec<(Role, Vec<Part>)> = Role::ALL.into_iter().map(|role| (role, self.parts(role))).collect();
        let of = |wanted: Role| parts.iter().find(|(role, _)| *role == wanted).map_or(&[][..], |(_, parts)| parts);
        // The best set in which some roles are served by given classes.
        let best_with = |given: &[(Role, Mask)]| {
            let roles: Vec<Vec<&Part>> = parts
                .iter()
                .map(|(role, parts)| {
                    let wanted = given.iter().find(|(of, _)| of == role).map(|(_, mask)| *mask);
                    parts.iter().filter(|part| wanted.is_none_or(|wanted| part.mask == wanted)).collect()
                })
                .collect();
            self.solve(&roles)
        };
        let masks = |role: Role| {
            let mut masks: Vec<Mask> = of(role).iter().map(|part| part.mask).collect();
            masks.sort_unstable();
            masks.dedup();
            masks
        };
        let mut found: Vec<(Mask, Score)> =
            masks(Role::Activator).into_iter().filter_map(|mask| best_with(&[(Role::Activator, mask)])).collect();
        found.sort_by(|a, b| a.1.cmp(&b.1));
        let Some((first, first_score)) = found.first().cloned() else { return Vec::new() };
        let activators = self.mask_of(Role::Activator);
        // Two activators only where they are the answer.
        found.retain(|(mask, score)| (mask & activators).count_ones() <= 1 || *score == first_score);
        let waters = masks(Role::WaterAndNitrogen)
            .into_iter()
            .filter(|water| water.is_power_of_two() && *water != first & self.mask_of(Role::WaterAndNitrogen));
        let others = waters
            .filter_map(|water| best_with(&[(Role::Activator, first & activators), (Role::WaterAndNitrogen, water)]));
        found.extend(others);
        // And the best there would be if buying did not matter.
        let mut dear: Vec<(Role, Vec<Part>)> = parts.clone();
        for part in dear.iter_mut().flat_map(|(_, parts)| parts) {
            part.score.buys = 0;
        }
        for (_, parts) in &mut dear {
            parts.sort_by(|a, b| a.score.cmp(&b.score));
        }
        let dear: Vec<Vec<&Part>> = dear.iter().map(|(_, parts)| parts.iter().collect()).collect();
        found.extend(self.solve(&dear).map(|(mask, score)| (mask, self.score(&score.which))));
        // What would have to be bought is of interest where nothing in the shed is as good.
        found
            .retain(|(_, score)| score.buys == 0 || first_score.buys > 0 || better_but_for_buying(score, &first_score));
        found.sort_by(|a, b| a.1.cmp(&b.1));
        found.dedup_by(|a, b| a.1 == b.1);
        found.truncate(8);
        found.into_iter().map(|(_, score)| (score.clone(), score.which)).collect()
    }

    fn mask_of(&self, role: Role) -> Mask {
        let of_role: Vec<AdjuvantClass> =
            self.classes.iter().copied().filter(|class| Role::of(*class) == role).collect();
        self.mask(&of_role)
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
                Some(t!("mix-its-label-says-not-to-mix", name = partner.name))
            } else if names(ground, partner, product) {
                Some(t!("mix-the-label-of-says-not-to", name = partner.name, name2 = product.name))
            } else {
                match conflict(product, partner) {
                    Some(Conflict::Precipitates(Basis::Published(_), text)) => Some(text),
                    _ => None,
                }
            }
        },
    )
}

/// Whether the label of one says that on these fields it may not go with the other.
fn names(ground: &Ground<'_>, one: &Product, other: &Product) -> bool {
    let situation = Situation {
        farm: ground.farm,
        pass: ground.pass,
        product: one,
        partners: vec![other],
        carrier: Some(ground.carrier),
    };
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
