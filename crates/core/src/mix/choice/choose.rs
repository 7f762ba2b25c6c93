//! The door of the room: the sets on offer, and the one that stands in the mix.

use super::collide::collisions;
use super::judge::judge;
use super::search::{Problem, Score};
use super::voices::{Ground, Voice, voices};
use super::words::{basis_of, behind, classes, verdicts};
use super::{Adjuvants, Choice, Member, Role, dose};
use crate::farm::label::{Says, Stance};
use crate::farm::{AdjuvantClass, Farm, Field, Id, Pass, Product};
use crate::finding::{Finding, Subject};
use crate::mix::line::PlannedLine;
use crate::quantity::{AmountPerArea, Area, CarrierRate, MassPerVolume, Money};

/// Chooses adjuvants for a mix, and judges those that stand in it.
pub(crate) fn choose(
    farm: &Farm,
    (pass_id, pass): (&Id, &Pass),
    fields: &[&Field],
    lines: &[PlannedLine],
    carrier: CarrierRate,
    water_needs: Option<MassPerVolume>,
    findings: &mut Vec<Finding>,
) -> Adjuvants {
    let products: Vec<(&Id, &Product)> =
        lines.iter().filter_map(|line| farm.products.get_key_value(&line.product)).collect();
    let ground = Ground { farm, pass, fields, carrier, products: &products };
    let voices = voices(&ground);
    if voices.is_empty() {
        return Adjuvants::default();
    }
    let standing: Vec<&Id> =
        products.iter().filter(|(_, product)| product.adjuvant_class().is_some()).map(|(id, _)| *id).collect();
    let problem = Problem::new(&ground, &voices, water_needs, &standing);
    let mut choices: Vec<Choice> =
        problem.offer().into_iter().map(|(score, set)| choice(&problem, &voices, score, &set)).collect();
    let set: Vec<u16> = standing.iter().filter_map(|id| problem.number_of(id)).collect();
    let mut current = choice(&problem, &voices, problem.score(&set), &set);
    current.current = true;
    as_typed(&mut current, lines, farm);
    let exact = choices.iter().any(|choice| ids(&choice.members) == ids(&current.members));
    for at in 0..choices.len() {
        let (ranked, rest) = choices.split_at_mut(at);
        let Some(this) = rest.first_mut() else { continue };
        this.rank = u32::try_from(at + 1).unwrap_or(u32::MAX);
        this.behind = ranked.last().map_or_else(String::new, |before| behind(before, this, farm.units, &farm.currency));
        if stands(this, &current, exact) {
            this.current = true;
            current.rank = this.rank;
            current.behind.clone_from(&this.behind);
        }
    }
    if current.rank == 0
        && let Some(first) = choices.first()
    {
        current.behind = behind(first, &current, farm.units, &farm.currency);
    }
    let collisions = collisions(&ground, &voices, &problem, &choices);
    for collision in &collisions {
        let subject = Subject::Product(collision.wants.clone());
        let basis = basis_of(&collision.bases);
        let finding = if collision.binds {
            Finding::stop(subject, collision.text.clone(), basis)
        } else {
            Finding::check(subject, collision.text.clone(), basis)
        };
        findings.push(finding.hint(collision.ways_out.join(" ")));
    }
    judge(&ground, pass_id, &voices, lines, &current, &choices, &collisions, findings);
    let ammonium_forbidden = voices
        .iter()
        .filter_map(|voice| voice.on(AdjuvantClass::AmmoniumSulfate))
        .find(|claim| claim.stance == Stance::Forbidden)
        .map(|claim| claim.basis.clone());
    Adjuvants { choices, current: Some(current), collisions, ammonium_forbidden }
}

/// Whether a set is what stands in the mix. What keeps the mix together or from drifting, and is not of the set, stays
/// where the set is taken, so it makes no other set of it.
fn stands(set: &Choice, current: &Choice, exact: bool) -> bool {
    if exact {
        return ids(&set.members) == ids(&current.members);
    }
    let of_set = classes(&set.members);
    let rest: Vec<Member> = current
        .members
        .iter()
        .filter(|member| Role::of(member.class).is_chosen() || of_set.contains(&member.class))
        .cloned()
        .collect();
    ids(&set.members) == ids(&rest)
}

fn ids(members: &[Member]) -> Vec<Option<&Id>> {
    let mut ids: Vec<Option<&Id>> = members.iter().map(|member| member.product.as_ref()).collect();
    ids.sort_unstable();
    ids
}

fn choice(problem: &Problem, voices: &[Voice], score: Score, set: &[u16]) -> Choice {
    let mut members: Vec<Member> = set
        .iter()
        .filter_map(|number| problem.candidates.get(usize::from(*number)))
        .map(|candidate| Member {
            product: candidate.product.clone(),
            name: candidate.name.clone(),
            class: candidate.class,
            rate: candidate.dose.rate.clone(),
            at_least: candidate.dose.at_least.clone(),
            at_most: candidate.dose.at_most.clone(),
            per_area: candidate.dose.per_area,
            cost_per_hectare: candidate.cost,
            rate_from: candidate.dose.from.clone(),
        })
        .collect();
    members.sort_by_key(|member| (Role::of(member.class), member.class));
    let verdicts = verdicts(voices, &classes(&members));
    let cost = total(&members);
    Choice {
        rank: 0,
        satisfies: score.broken == 0 && score.unmet == 0,
        members,
        cost_per_hectare: cost,
        verdicts,
        behind: String::new(),
        current: false,
        score,
    }
}

/// What a rate of a product costs over a hectare; `None` without a price that fits.
pub(super) fn cost(product: &Product, per_area: AmountPerArea) -> Option<Money> {
    product.price.as_ref()?.of(per_area.over(Area::from_hectares(1.0)))
}

fn total(members: &[Member]) -> Option<Money> {
    members
        .iter()
        .map(|member| member.cost_per_hectare)
        .try_fold(Money::default(), |sum, cost| cost.map(|cost| sum.plus(cost)))
}

/// The set in the mix with the rates and costs that are really planned.
fn as_typed(current: &mut Choice, lines: &[PlannedLine], farm: &Farm) {
    for member in &mut current.members {
        let Some(line) = lines.iter().find(|line| Some(&line.product) == member.product.as_ref()) else { continue };
        member.per_area = Some(line.per_area);
        member.cost_per_hectare = farm.products.get(&line.product).and_then(|product| cost(product, line.per_area));
    }
    current.cost_per_hectare = total(&current.members);
}

/// How far the rounding of an adjuvant may go: the smallest most that a partner's label names for its class and that the
/// plan itself keeps.
pub(crate) fn most_allowed(
    line: &PlannedLine,
    product: &Product,
    farm: &Farm,
    lines: &[PlannedLine],
    carrier: CarrierRate,
) -> Option<AmountPerArea> {
    lines
        .iter()
        .filter_map(|partner| farm.products.get(&partner.product))
        .flat_map(|partner| &partner.label)
        .filter_map(|statement| match &statement.says {
            Says::Adjuvant { class, most, at_most, .. } if product.class == Some(*class) => Some([most, at_most]),
            _ => None,
        })
        .flatten()
        .filter_map(|most| dose::over_ground(most.as_ref()?, product, carrier).ok())
        .filter(|most| line.per_area.exceeds(*most) == Some(false))
        .reduce(AmountPerArea::smaller)
}
