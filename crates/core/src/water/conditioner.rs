//! Which conditioner the mix takes and how much of it: the labels' demands for ammonium sulfate, what the ions tie up, and
//! what there is instead where a label forbids ammonium.

use super::demands::{self, Asked, is_sulfate};
use super::dose::{self, Dose};
use super::thresholds::{Factor, Mixed};
use super::verdict::concerned;
use super::{WaterPlan, need, ranges, without_ammonium};
use crate::farm::label::When;
use crate::farm::product::AdjuvantClass;
use crate::farm::{CarrierKind, Farm, Field, Grade, Id, Pass, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::label::names::speak_of;
use crate::label::when::{Situation, holds};
use crate::label::{Speaks, speaks};
use crate::language::t;
use crate::mix::actives;
use crate::mix::line::PlannedLine;
use crate::quantity::{CarrierRate, Hardness, MassPerVolume, Quantity, Units};
use crate::working::Working;

pub use super::need::SOURCE;

/// What is recommended to condition the water.
#[derive(Clone, Debug, PartialEq)]
pub struct ConditionerChoice {
    /// The product, in the mix or else in the shed; `None` where there is none and one has to be bought.
    pub product: Option<Id>,
    /// Whether the mix already holds it.
    pub in_mix: bool,
    /// [`AdjuvantClass::AmmoniumSulfate`] or [`AdjuvantClass::ConditionerWithoutAmmonium`].
    pub class: AdjuvantClass,
    /// What it is called: the product's name, or the class in words.
    pub name: String,
    /// How much of the product goes into the finished spray; the least where its label gives a range. `None` where that is
    /// not known: a solution whose content, or a label whose rate, is not typed. [`Dose::over`] a load's volume gives what
    /// goes into it; [`dose::per_load`] all loads with the arithmetic.
    pub per_spray: Option<Dose>,
    /// The most of it, where the label gives a range.
    pub per_spray_most: Option<Dose>,
    /// Ammonium sulfate in a volume of the product, for a solution whose content is typed.
    pub content: Option<MassPerVolume>,
    /// Why this one, in a sentence without a full stop.
    pub why: String,
    /// On what that rests.
    pub basis: Basis,
}

/// The state of the walk that the conditioner is judged with.
pub(crate) struct Judged<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) pass: &'a Pass,
    pub(crate) fields: &'a [&'a Field],
    pub(crate) lines: &'a [PlannedLine],
    pub(crate) carrier: CarrierRate,
    pub(crate) mix: &'a [Mixed<'a>],
    /// Ammonium sulfate in the spray of the set of adjuvants that suits the mix best.
    pub(crate) in_best_set: Option<MassPerVolume>,
}

impl Judged<'_> {
    pub(super) fn units(&self) -> Units {
        self.farm.units
    }

    pub(super) fn products(&self) -> impl Iterator<Item = (&PlannedLine, &Product)> {
        self.lines.iter().filter_map(|line| Some((line, self.farm.products.get(&line.product)?)))
    }

    pub(super) fn of_class(&self, class: AdjuvantClass) -> Option<(&Id, &Product)> {
        self.products()
            .find(|(_, product)| product.class == Some(class))
            .map(|(line, product)| (&line.product, product))
    }

    pub(super) fn holds_active(&self, name: &str) -> bool {
        let is = |product: &Product| product.actives.iter().any(|active| actives::same(&active.name, name));
        self.products().any(|(_, product)| is(product))
    }

    /// Whether a statement speaks of one of the fields in this mix. A condition that cannot be told counts as met.
    pub(super) fn applies(&self, statement: &Statement) -> bool {
        let here = |field: &&Field| !matches!(speaks(statement, field), Speaks::OtherCrop | Speaks::OtherStage);
        self.fields.iter().any(here)
            && statement.when.iter().all(|when| match when {
                When::With(what) => self.products().any(|(_, product)| speak_of(what, product)),
                // These ask about the product whose label it is.
                When::Alone | When::NoSurfactantBuiltIn | When::LoadedPartner => true,
                when => self.products().next().is_none_or(|(_, product)| {
                    let (partners, carrier) = (Vec::new(), Some(self.carrier));
                    let situation = Situation { farm: self.farm, pass: self.pass, product, partners, carrier };
                    holds(std::slice::from_ref(when), &situation) != Some(false)
                }),
            })
    }
}

/// Sets what the labels of the mix ask for beside what the water needs and what the mix holds, and chooses a conditioner.
///
/// `ammonium_forbidden` is what a publication or an adviser has against ammonium in this mix; a label that forbids it goes
/// first. Then no ammonium sulfate is ever recommended.
pub(crate) fn judge(
    judged: &Judged<'_>,
    ammonium_forbidden: Option<Basis>,
    water: &mut WaterPlan,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) {
    let held = demands::held(judged);
    let untold = demands::untold(judged, findings);
    demands::grade(judged, findings);
    let asked = demands::asked(judged, held, findings);
    // Where fertilizer takes the place of water, the ions of the water are not in the tank.
    if judged.pass.carrier_kind != CarrierKind::Water {
        return;
    }
    let need = water.need.as_ref().map(need::ConditionerNeed::most);
    if let (Some(held), Some(need)) = (held, need)
        && need.exceeds(held)
    {
        findings.push(
            Finding::check(
                Subject::Water(water.id.clone()),
                t!(
                    "water-ties-up-of-ammonium-sulfate-the",
                    name = water.name,
                    need = need.show(judged.units()),
                    held = held.show(judged.units())
                ),
                Basis::Published(SOURCE.to_owned()),
            )
            .hint(t!("water-the-label-of-each-product-decides")),
        );
    }
    let (Some(need), Some(hardness)) = (need, water.hardness) else { return };
    let needs = !concerned(Factor::Hardness, judged.mix).is_empty()
        && ranges::good_water().is_none_or(|good| need.exceeds(good.most));
    let ban = without_ammonium::forbidden(judged)
        .or_else(|| ammonium_forbidden.map(|basis| (t!("water-guidance", source = basis.source()), basis)));
    if let Some(ban) = ban {
        if needs {
            water.conditioner = Some(without_ammonium::choose(judged, water, need, ban, findings));
        }
        return;
    }
    // Where a label advises against it and none asks for it, the need alone does not bring it in.
    if asked.wanted || held.is_some() || untold || (needs && !asked.discouraged) {
        sulfate(judged, &asked, held, (need, hardness), water, findings, workings);
    }
    if needs && let (None, Some((id, product))) = (held, judged.of_class(AdjuvantClass::UreaAmmoniumNitrate)) {
        findings.push(Finding::note(
            Subject::Product(id.clone()),
            t!("water-conditions-water-too-more-weakly-than", name = product.name),
            Basis::Published(t!("water-woznica-nalewaja-messersmith-and-milkowski").to_owned()),
        ));
    }
}

/// Three figures side by side, and what to plan: never less than a label's least, never more than a label's most.
fn sulfate(
    judged: &Judged<'_>,
    asked: &Asked,
    held: Option<MassPerVolume>,
    (need, hardness): (MassPerVolume, Hardness),
    water: &mut WaterPlan,
    findings: &mut Vec<Finding>,
    workings: &mut Vec<Working>,
) {
    let units = judged.units();
    let printed = ranges::labels().filter(|range| judged.holds_active(&range.active));
    let places = asked.places();
    let typed = places.is_some();
    let least = asked.least.as_ref().map(|(least, _)| *least).or_else(|| printed.map(|range| range.least));
    let most = match &asked.most {
        Some((most, _)) => Some(*most),
        None => printed.filter(|_| !typed).map(|range| range.most),
    };
    // Whatever the water needs, the labels' most is the most.
    let apart = matches!((&asked.least, &asked.most), (Some((least, _)), Some((most, _))) if least.exceeds(*most));
    // What the best set takes already answers to every label and publication of the mix.
    let floor = [least, judged.in_best_set].into_iter().flatten().reduce(MassPerVolume::max);
    let recommended =
        floor.filter(|_| !apart).map(|least| most.map_or(need.max(least), |most| need.max(least).min(most)));
    water.recommended = recommended;
    let ends = match (&asked.least, &asked.most) {
        (None, None) => (least, most),
        (least, most) => (least.as_ref().map(|(least, _)| *least), most.as_ref().map(|(most, _)| *most)),
    };
    let labels = match ends {
        (Some(least), Some(most)) if apart => {
            t!("water-at-least-and-at-most-which", least = least.show(units), most = most.show(units))
        }
        (Some(least), Some(most)) => ranges::show(least.min(most), most, units),
        (Some(least), None) => t!("water-at-least", least = least.show(units)),
        (None, Some(most)) => t!("water-at-most", most = most.show(units)),
        (None, None) => t!("water-not-typed").to_owned(),
    };
    let whose = match &places {
        Some(places) => t!("water-label-range-as-typed", places = places),
        None => t!("water-label-range-as-published").to_owned(),
    };
    let practice = ranges::practice().map_or_else(String::new, |range| range.show(units));
    let mut working = Working::new(t!("water-ammonium-sulfate-for-three-figures", name = water.name))
        .step(t!("water-tied-up-by-the-ions-by"), need.show(units))
        .step(t!("water-north-dakota-practice-for-most-hard"), practice.clone())
        .step(whose.clone(), labels.clone());
    if let Some(set) = judged.in_best_set {
        working = working.step(t!("water-in-the-set-that-suits-the"), set.show(units));
    }
    if let Some(recommended) = recommended {
        working = working.step(t!("water-to-plan-the-most-of-these"), recommended.show(units));
    }
    workings.push(working);
    let plan = match (recommended, held) {
        (None, _) if apart => t!("water-no-rate-serves-both-labels").to_owned(),
        (None, _) => t!("water-the-label-says-how-much-may").to_owned(),
        (Some(recommended), Some(held)) if !recommended.exceeds(held) => {
            let (recommended, held) = (recommended.show(units), held.show(units));
            if recommended == held {
                t!("water-plan-which-the-mix-holds", recommended = recommended)
            } else {
                t!("water-serves-and-the-mix-holds", recommended = recommended, held = held)
            }
        }
        (Some(recommended), _) => t!("water-plan", recommended = recommended.show(units)),
    };
    let mut hint = String::from(t!("water-the-label-governs"));
    let mut source = SOURCE.to_owned();
    if let Some(places) = &places {
        source = t!("water-label-of-as-typed", source = source, places = places);
    } else if let Some(printed) = printed {
        source.clone_from(&printed.source);
    }
    if judged.holds_active("glyphosate") {
        hint = [hint.as_str(), t!("water-it-may-pay-nine-trials-in")].join(" ");
        source = t!("water-with-glyphosate-trials", source = source);
    }
    findings.push(
        Finding::note(
            Subject::Water(water.id.clone()),
            t!(
                "water-hard-its-ions-tie-up-of",
                name = water.name,
                hardness = hardness.show(units),
                need = need.show(units),
                practice = practice,
                labels = match &asked.least {
                    _ if !typed && printed.is_none() => t!("water-a-label-range-is-not-typed").to_owned(),
                    Some(_) if apart => t!("water-the-labels-ask-for", labels = labels),
                    Some(_) => t!("water-the-label-asks-for", labels = labels),
                    None if typed => t!("water-the-label-allows", labels = labels),
                    None => t!("water-labels-ask-for", labels = labels),
                },
                plan = plan
            ),
            Basis::Published(source),
        )
        .hint(hint),
    );
    water.conditioner = Some(choose_sulfate(judged, recommended, water));
}

/// The sulfate of the mix, else of the shed: spray grade before an untyped one, never fertilizer grade.
fn choose_sulfate(judged: &Judged<'_>, salt: Option<MassPerVolume>, water: &WaterPlan) -> ConditionerChoice {
    let in_mix = judged.of_class(AdjuvantClass::AmmoniumSulfate);
    let in_shed = || {
        let mut all: Vec<(&Id, &Product)> = judged
            .farm
            .products
            .iter()
            .filter(|(_, product)| is_sulfate(product) && product.grade != Some(Grade::Fertilizer))
            .collect();
        all.sort_by_key(|(_, product)| {
            (product.is_liquid() && dose::salt_in(product).is_none(), product.grade != Some(Grade::Spray))
        });
        all.first().copied()
    };
    let chosen = in_mix.or_else(in_shed);
    let why = match (&chosen, in_mix.is_some()) {
        (_, true) => t!("water-the-mix-holds-it-for-what", name = water.name),
        (Some(_), false) => t!("water-it-is-in-the-shed-and", name = water.name),
        (None, false) => t!("water-the-shed-has-no-ammonium-sulfate").to_owned(),
    };
    ConditionerChoice {
        product: chosen.map(|(id, _)| id.clone()),
        in_mix: in_mix.is_some(),
        class: AdjuvantClass::AmmoniumSulfate,
        name: chosen
            .map_or_else(|| t!("water-ammonium-sulfate-spray-grade").to_owned(), |(_, product)| product.name.clone()),
        per_spray: salt.and_then(|salt| match chosen {
            Some((_, product)) => dose::of_salt(salt, product),
            None => Some(Dose::Dry(salt)),
        }),
        per_spray_most: None,
        content: chosen.and_then(|(_, product)| dose::salt_in(product)),
        why,
        basis: Basis::Published(SOURCE.to_owned()),
    }
}
