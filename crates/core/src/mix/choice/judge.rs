//! The door of the room: the sets on offer, what stands in the mix against the same rules, and what there is to say.

use super::search::{Problem, Score};
use super::voices::{Authority, Claim, Ground, Group, Voice, is_good, voices};
use super::words::{behind, classes, either, verdicts};
use super::{Adjuvants, Choice, Collision, Member, Role, content, dose};
use crate::farm::label::{Says, Stance, When};
use crate::farm::{AdjuvantClass, Charge, Farm, Field, Id, Pass, Product};
use crate::finding::{Basis, Finding, Subject};
use crate::label::forbid;
use crate::mix::line::PlannedLine;
use crate::mix::{actives, guidance};
use crate::quantity::{AmountPerArea, CarrierRate, MassPerVolume, Money, Quantity};

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
        let before = at.checked_sub(1).and_then(|before| choices.get(before)).cloned();
        let Some(this) = choices.get_mut(at) else { continue };
        this.rank = u32::try_from(at + 1).unwrap_or(u32::MAX);
        this.behind = before.map_or_else(String::new, |before| behind(&before, this, farm.units, &farm.currency));
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

fn total(members: &[Member]) -> Option<Money> {
    members
        .iter()
        .map(|member| member.cost_per_hectare)
        .try_fold(Money::default(), |sum, cost| cost.map(|cost| sum.plus(cost)))
}

/// The set in the mix with the rates and costs that are really planned.
fn as_typed(current: &mut Choice, lines: &[PlannedLine], farm: &Farm) {
    let hectare = crate::quantity::Area::from_hectares(1.0);
    for member in &mut current.members {
        let Some(line) = lines.iter().find(|line| Some(&line.product) == member.product.as_ref()) else { continue };
        member.per_area = Some(line.per_area);
        member.cost_per_hectare = farm
            .products
            .get(&line.product)
            .and_then(|product| product.price.as_ref()?.of(line.per_area.over(hectare)));
    }
    current.cost_per_hectare = total(&current.members);
}

/// Several bases as one.
fn basis_of(bases: &[Basis]) -> Basis {
    let both: Vec<String> = bases.iter().map(ToString::to_string).collect();
    match bases {
        [] => Basis::Arithmetic,
        [one] => one.clone(),
        // The weightier kind names the finding; the words name both.
        [Basis::Label(first), ..] => Basis::Label(match both.get(1) {
            Some(second) => format!("{first}; {second}"),
            None => first.clone(),
        }),
        _ => Basis::Published(both.join("; ")),
    }
}

/// Demands that no set on offer meets, each with who stands against it and the ways out.
fn collisions(ground: &Ground<'_>, voices: &[Voice], problem: &Problem, choices: &[Choice]) -> Vec<Collision> {
    let met = choices.iter().any(|choice| choice.satisfies);
    let mut collisions: Vec<Collision> = Vec::new();
    for voice in voices {
        // A wish for an activator that a partner forbids is worth a word too; the water has its own ways.
        let wishes = voice.preferred.iter().filter(|group| {
            group.role == Role::Activator && !voice.required.iter().any(|required| required.role == group.role)
        });
        let demands = voice.required.iter().filter(|_| !met).map(|group| (group, true));
        let mut told: Vec<Role> = Vec::new();
        for (group, demanded) in demands.chain(wishes.map(|group| (group, false))) {
            // What a lesser voice wishes for in the same role collides for the same reason.
            if !demanded && told.contains(&group.role) {
                continue;
            }
            let bans = bans(group, voices);
            let wish = group.claim(None);
            let Some(wish) = wish else { continue };
            let verb = if demanded { "requires" } else { "wants" };
            // One product may ask on one crop for what it forbids on another.
            let of_two_crops = bans.iter().any(|(other, _)| other.product == voice.product);
            let named = |voice: &Voice| match voice.crop.as_str() {
                crop if of_two_crops && !crop.is_empty() => format!("{} in {crop}", voice.name),
                _ => voice.name.clone(),
            };
            let wants = format!("{} {verb} {}", named(voice), either(&group.classes));
            let (forbids, text, ban) =
                if let (Some((other, ban)), true) = (bans.first(), bans.len() == group.classes.len()) {
                    let classes: Vec<AdjuvantClass> = bans.iter().map(|(_, ban)| ban.class).collect();
                    let whose: Vec<String> = bans.iter().map(|(other, _)| named(other)).collect();
                    let one = whose.iter().all(|name| *name == named(other));
                    let by = if one { named(other) } else { whose.join(" and ") };
                    (
                        Some(other.product.clone()),
                        format!("{wants}; {by} {} {}", if one { "forbids" } else { "forbid" }, either(&classes)),
                        Some(ban),
                    )
                } else if let Some(reason) = left_out(problem, &group.classes) {
                    if collisions.iter().any(|known| known.text.ends_with(&reason)) {
                        continue;
                    }
                    (None, format!("{wants}; {reason}"), None)
                } else {
                    continue;
                };
            told.push(group.role);
            let ways_out = ways_out(ground, voice, forbids.as_ref());
            collisions.push(Collision {
                wants: voice.product.clone(),
                binds: demanded
                    && group.authority == Authority::Label
                    && ban.is_none_or(|ban| ban.authority == Authority::Label),
                forbids,
                text,
                bases: std::iter::once(wish.basis.clone()).chain(ban.map(|ban| ban.basis.clone())).collect(),
                ways_out,
                classes: group.classes.clone(),
            });
        }
    }
    if !met && collisions.iter().all(|collision| !collision.binds) {
        collisions.extend(apart_in_the_shed(voices, problem));
    }
    collisions.dedup_by(|a, b| a.text == b.text);
    collisions
}

/// Two demands that could be met each by itself, and not with what the shed holds for both.
fn apart_in_the_shed(voices: &[Voice], problem: &Problem) -> Option<Collision> {
    let demands: Vec<(&Voice, &Group)> =
        voices.iter().flat_map(|voice| voice.required.iter().map(move |group| (voice, group))).collect();
    demands.iter().enumerate().find_map(|(at, (voice, group))| {
        demands.iter().skip(at + 1).find_map(|(other, second)| {
            let (one, two) = problem.never_together(&group.classes, &second.classes)?;
            let bases = [group.claim(None), second.claim(None)].into_iter().flatten().map(|claim| claim.basis.clone());
            Some(Collision {
                wants: voice.product.clone(),
                forbids: None,
                text: format!(
                    "{} requires {}{} {}; {one} and {two} may not go into one tank",
                    voice.name,
                    either(&group.classes),
                    if voice.product == other.product {
                        " and".to_owned()
                    } else {
                        format!(", {} requires", other.name)
                    },
                    either(&second.classes)
                ),
                bases: bases.collect(),
                ways_out: vec![format!(
                    "Buy another product in the place of {one} or {two}, whose label allows the rest of the mix."
                )],
                binds: group.authority == Authority::Label && second.authority == Authority::Label,
                classes: Vec::new(),
            })
        })
    })
}

/// Who forbids the classes of a demand.
fn bans<'a>(group: &Group, voices: &'a [Voice]) -> Vec<(&'a Voice, &'a Claim)> {
    let ban = |class: &AdjuvantClass| {
        voices.iter().find_map(|voice| {
            voice.on(*class).filter(|claim| claim.stance == Stance::Forbidden).map(|claim| (voice, claim))
        })
    };
    group.classes.iter().filter_map(ban).collect()
}

/// Why every product of these classes is left out, where the shed has some and all are.
fn left_out(problem: &Problem, classes: &[AdjuvantClass]) -> Option<String> {
    problem.left_out.iter().find(|(_, class, _)| classes.contains(class)).map(|(_, _, reason)| reason.clone())
}

/// What can be done where two products do not go together: another product of the shed, two passes, another formulation.
fn ways_out(ground: &Ground<'_>, voice: &Voice, forbids: Option<&Id>) -> Vec<String> {
    if forbids == Some(&voice.product) {
        return vec!["Spray the two crops in two passes, each with its own adjuvants.".to_owned()];
    }
    let mut ways = Vec::new();
    for (stays, goes) in [(forbids, Some(&voice.product)), (Some(&voice.product), forbids)] {
        let (Some(goes), Some(stays)) = (goes, stays) else { continue };
        let Some(product) = ground.farm.products.get(goes) else { continue };
        for (id, other) in
            ground.farm.products.iter().filter(|(id, other)| *id != goes && *id != stays && kin(product, other))
        {
            let products: Vec<(&Id, &Product)> = ground
                .products
                .iter()
                .map(|(own, known)| if *own == goes { (id, other) } else { (*own, *known) })
                .collect();
            let instead = Ground { products: &products, ..*ground };
            let voices = voices(&instead);
            let offer = Problem::new(&instead, &voices, None, &[]).offer();
            let wants = |voice: &Voice| {
                let groups = voice.required.iter().chain(&voice.preferred);
                groups
                    .filter(|group| group.role == Role::Activator)
                    .any(|group| bans(group, &voices).len() == group.classes.len())
            };
            let meets = offer.first().is_some_and(|(score, _)| score.unmet == 0 && score.buys == 0)
                && !voices.iter().any(wants);
            if meets {
                ways.push(format!(
                    "Take {} instead of {}, if its label suits the crop and the weeds.",
                    other.name, product.name
                ));
            }
        }
    }
    ways.truncate(3);
    let partner =
        forbids.and_then(|id| ground.farm.products.get(id)).map_or("its partner", |product| product.name.as_str());
    ways.push(format!("Spray {} and {partner} in two passes, as far apart as their labels ask.", voice.name));
    ways.push(format!("Look for another formulation of {} that does not need it.", voice.name));
    ways
}

/// Whether two products may stand in for each other: pesticides that share an active or a resistance group.
fn kin(one: &Product, other: &Product) -> bool {
    other.kind == one.kind
        && other.kind.is_pesticide()
        && one.actives.iter().any(|a| {
            other.actives.iter().any(|b| !actives::group(a).is_empty() && actives::group(a) == actives::group(b))
        })
}

/// What there is to say of the set that stands in the mix.
#[allow(clippy::too_many_arguments)] // The room's state, handed on.
fn judge(
    ground: &Ground<'_>,
    pass_id: &Id,
    voices: &[Voice],
    lines: &[PlannedLine],
    current: &Choice,
    choices: &[Choice],
    collisions: &[Collision],
    findings: &mut Vec<Finding>,
) {
    let set = classes(&current.members);
    for voice in voices {
        demands(voice, voices, &set, collisions, findings);
        for claim in &voice.claims {
            if set.contains(&claim.class) {
                standing(ground, voice, claim, lines, current, findings);
            }
        }
        untyped_surfactant(ground, voice, findings);
    }
    by_class(ground, voices, lines, current, findings);
    content::judge(ground.farm, lines, findings);
    built_in(voices, findings);
    overruled(voices, &set, findings);
    practice(voices, &set, findings);
    if let Some(first) = choices.first()
        && !first.current
        && current.score.broken == 0
        && Problem::suits_better(&first.score, &current.score)
    {
        let text = format!("{} would suit this mix better than {}", capital(&first.title()), current.title());
        let why = behind(first, current, ground.farm.units, &ground.farm.currency);
        let why = why.split_once(": ").map_or("", |(_, why)| why);
        findings.push(
            Finding::note(
                Subject::Pass(pass_id.clone()),
                if why.is_empty() { text } else { format!("{text}: {why}") },
                Basis::Arithmetic,
            )
            .hint("See the sets beside the mix, each with its reasons; one click takes one into the mix."),
        );
    }
}

pub(crate) fn capital(text: &str) -> String {
    let mut letters = text.chars();
    letters.next().map_or_else(String::new, |first| first.to_uppercase().chain(letters).collect())
}

/// What a product requires or wants and does not find.
fn demands(
    voice: &Voice,
    voices: &[Voice],
    set: &[AdjuvantClass],
    collisions: &[Collision],
    findings: &mut Vec<Finding>,
) {
    let about = || Subject::Product(voice.product.clone());
    let told = |group: &Group| {
        collisions.iter().any(|collision| {
            // Where no rate or no product suits, the same words serve every product that asks.
            (collision.wants == voice.product || collision.forbids.is_none())
                && collision.classes.iter().any(|class| group.classes.contains(class))
        })
    };
    let mut missing: Vec<Role> = Vec::new();
    for group in &voice.required {
        if group.met_by(set).is_some() {
            continue;
        }
        missing.push(group.role);
        if told(group) {
            continue;
        }
        let Some(claim) = group.claim(None) else { continue };
        let text = format!("{} requires {}, and the mix has none", voice.name, either(&group.classes));
        let hint = match voice.surfactant {
            Some(_) if group.role == Role::Activator => "What is built into it does not take its place.",
            _ => "Take one of the sets beside the mix.",
        };
        let finding = if group.authority == Authority::Label {
            firm(claim, about(), text)
        } else {
            Finding::check(about(), text, claim.basis.clone())
        };
        findings.push(finding.hint(hint));
    }
    for group in &voice.preferred {
        // Once is enough where a weightier voice asks in the same role, and what all partners forbid is no advice.
        let banned = bans(group, voices).len() == group.classes.len();
        if group.met_by(set).is_some() || missing.contains(&group.role) || told(group) || banned {
            continue;
        }
        missing.push(group.role);
        let Some(claim) = group.claim(None) else { continue };
        let text = format!("{} would rather have {}, and the mix has none", voice.name, either(&group.classes));
        let finding = if group.authority.binds() {
            Finding::check(about(), text, claim.basis.clone())
        } else {
            Finding::note(about(), text, claim.basis.clone())
        };
        findings.push(finding.hint(claim.says.clone()));
    }
}

/// What a product says of a class that stands in the mix.
fn standing(
    ground: &Ground<'_>,
    voice: &Voice,
    claim: &Claim,
    lines: &[PlannedLine],
    current: &Choice,
    findings: &mut Vec<Finding>,
) {
    let about = || Subject::Product(voice.product.clone());
    let members = current.members.iter().filter(|member| member.class == claim.class);
    let mut held: Vec<&PlannedLine> = Vec::new();
    for member in members {
        let Some(line) = lines.iter().find(|line| Some(&line.product) == member.product.as_ref()) else { continue };
        match claim.stance {
            Stance::Forbidden => findings.push(forbidden(voice, claim, line)),
            Stance::Discouraged => {
                let text =
                    format!("{} advises against {}, and {} is in the mix", voice.name, claim.class.name(), line.name);
                let finding = if claim.authority.binds() {
                    Finding::check(about(), text, claim.basis.clone())
                } else {
                    Finding::note(about(), text, claim.basis.clone())
                };
                findings.push(finding.hint(claim.says.clone()));
            }
            // What labels name of ammonium sulfate is weighed with the water.
            _ if claim.class == AdjuvantClass::AmmoniumSulfate && claim.authority == Authority::Label => {}
            _ => held.push(line),
        }
    }
    // Several products of one class count together.
    let Some((first, rest)) = held.split_first() else { return };
    let mut all = (*first).clone();
    for line in rest {
        let Some(sum) = all.per_area.plus(line.per_area) else {
            for line in &held {
                rates(ground, voice, claim, line, findings);
            }
            return;
        };
        all.per_area = sum;
        all.name = format!("{} and {}", all.name, line.name);
    }
    rates(ground, voice, claim, &all, findings);
}

fn forbidden(voice: &Voice, claim: &Claim, line: &PlannedLine) -> Finding {
    let about = Subject::Product(voice.product.clone());
    let text = format!("{} forbids {}, and {} is in the mix", voice.name, claim.class.name(), line.name);
    let otherwise = voice.others.iter().any(|other| {
        other.class == claim.class
            && other.authority == claim.authority
            && !matches!(other.stance, Stance::Forbidden | Stance::Discouraged)
    });
    let binds = claim.authority.binds();
    // Where publications disagree, a person must read the label.
    if !binds && otherwise {
        Finding::check(about, format!("{text}; another publication allows it"), claim.basis.clone())
            .hint("Read the label, and type what it says: it decides.")
    } else {
        firm(claim, about, text).hint(if binds {
            "Take one of the two out, or split the pass."
        } else {
            "Take one of the two out. If the label says otherwise, type what it says in the shed: it decides."
        })
    }
}

/// A Stop; a Check where an adviser says so and no label, or where it cannot be told whether what is said counts here.
fn firm(claim: &Claim, about: Subject, text: String) -> Finding {
    if claim.authority == Authority::Local {
        return Finding::check(about, text, claim.basis.clone());
    }
    if claim.doubt.is_empty() || claim.authority == Authority::Label {
        return forbid(&claim.doubt, about, text, claim.basis.clone());
    }
    let text = format!("{text}; this is said {}, which cannot be told here", claim.doubt);
    Finding::check(about, text, claim.basis.clone())
}

/// The rate of an adjuvant against what a product names for its class.
fn rates(ground: &Ground<'_>, voice: &Voice, claim: &Claim, line: &PlannedLine, findings: &mut Vec<Finding>) {
    let Some(adjuvant) = ground.farm.products.get(&line.product) else { return };
    let about = || Subject::Product(voice.product.clone());
    let units = ground.farm.units;
    let planned = line.per_area.show(units);
    let mut read = |rate: &Option<crate::quantity::AsTyped<crate::quantity::Rate>>| match dose::over_ground(
        rate.as_ref()?,
        adjuvant,
        ground.carrier,
    ) {
        Ok(amount) => Some((amount, rate.as_ref()?.show(units))),
        Err(problem) => {
            if claim.authority.binds() {
                findings.push(Finding::check(
                    Subject::Product(voice.product.clone()),
                    format!("What {} says of an adjuvant cannot be compared: {problem}", voice.name),
                    claim.basis.clone(),
                ));
            }
            None
        }
    };
    let (least, most) = (read(&claim.least), read(&claim.most));
    let (at_least, at_most) = (read(&claim.at_least), read(&claim.at_most));
    let clamp = |amount: AmountPerArea| {
        let raised = at_least.as_ref().map_or(amount, |(floor, _)| amount.larger(*floor));
        at_most.as_ref().map_or(raised, |(ceiling, _)| raised.smaller(*ceiling))
    };
    let least = least.map(|(amount, text)| (clamp(amount), text)).or(at_least.clone());
    let most = most
        .map(|(amount, text)| (clamp(amount), text))
        .into_iter()
        .chain(at_most.clone())
        .reduce(|a, b| if b.0.exceeds(a.0) == Some(true) { a } else { b });
    let also = |text: &str, amount: AmountPerArea| {
        let over = amount.show(units);
        if over == text { over } else { format!("{text} ({over})") }
    };
    if let Some((most, text)) = most
        && line.per_area.exceeds(most) == Some(true)
    {
        let text =
            format!("{} allows {} of {} at most; {planned} is planned", voice.name, also(&text, most), line.name);
        findings.push(if claim.authority.binds() {
            Finding::stop(about(), text, claim.basis.clone()).hint("Lower its rate.")
        } else {
            Finding::check(about(), text, claim.basis.clone()).hint("The label of each product decides.")
        });
    }
    if let Some((least, text)) = least
        && least.exceeds(line.per_area) == Some(true)
    {
        let text =
            format!("{} names {} of {} at least; {planned} is planned", voice.name, also(&text, least), line.name);
        findings.push(if claim.authority.binds() || claim.stance == Stance::Required {
            Finding::check(about(), text, claim.basis.clone())
        } else {
            Finding::note(about(), text, claim.basis.clone())
        });
    }
}

/// What is published of a class itself, such as how much of an oil goes over ground. Where a label of the mix names a rate
/// for the class, this is only worth knowing.
fn by_class(
    ground: &Ground<'_>,
    voices: &[Voice],
    lines: &[PlannedLine],
    current: &Choice,
    findings: &mut Vec<Finding>,
) {
    let units = ground.farm.units;
    for member in &current.members {
        let Some(line) = lines.iter().find(|line| Some(&line.product) == member.product.as_ref()) else { continue };
        let Some(adjuvant) = ground.farm.products.get(&line.product) else { continue };
        let by_label = voices
            .iter()
            .filter_map(|voice| voice.on(member.class))
            .any(|claim| claim.authority.binds() && claim.least.is_some());
        for (guidance, _) in guidance::on(adjuvant) {
            for statement in &guidance.statements {
                let Says::Adjuvant { least: Some(least), .. } = &statement.says else { continue };
                let for_crop = ground.fields.iter().any(|field| crate::label::for_crop(statement, field));
                let Ok(amount) = dose::over_ground(least, adjuvant, ground.carrier) else { continue };
                if !for_crop || amount.exceeds(line.per_area) != Some(true) {
                    continue;
                }
                let about = Subject::Product(line.product.clone());
                let text = format!(
                    "{} comes to {} at {}, less than the {} that is advised",
                    line.name,
                    line.per_area.show(units),
                    ground.carrier.show(units),
                    least.show(units)
                );
                let finding = if by_label {
                    Finding::note(about, text, guidance.basis.clone())
                } else {
                    Finding::check(about, text, guidance.basis.clone())
                };
                findings.push(finding.hint(guidance.says.clone()));
            }
        }
    }
}

/// Where advice hangs on a built-in surfactant and nobody has typed whether there is one.
fn untyped_surfactant(ground: &Ground<'_>, voice: &Voice, findings: &mut Vec<Finding>) {
    let Some(product) = ground.farm.products.get(&voice.product) else { return };
    if product.surfactant.is_some() {
        return;
    }
    let hangs = guidance::on(product).find(|(guidance, _)| {
        guidance.statements.iter().any(|statement| statement.when.contains(&When::NoSurfactantBuiltIn))
    });
    if let Some((guidance, _)) = hangs
        && !voice.claims.iter().any(|claim| Role::of(claim.class) == Role::Activator && claim.authority.binds())
    {
        findings.push(
            Finding::check(
                Subject::Product(voice.product.clone()),
                format!("Whether {} holds a surfactant of its own is not typed; without one it needs one", voice.name),
                guidance.basis.clone(),
            )
            .hint("Type on its page whether the label says that no other is needed."),
        );
    }
}

/// A surfactant built into one product does not serve its partners.
fn built_in(voices: &[Voice], findings: &mut Vec<Finding>) {
    let wants = |voice: &Voice| {
        let group = voice.required.iter().chain(&voice.preferred).find(|group| group.role == Role::Activator)?;
        let claim = group.claim(None)?;
        Some((either(&group.classes), claim.basis.clone()))
    };
    for voice in voices {
        let Some(surfactant) = voice.surfactant else { continue };
        let partner = voices.iter().filter(|partner| partner.product != voice.product).find_map(|partner| {
            let (classes, basis) = wants(partner)?;
            Some((partner, classes, basis))
        });
        if let Some((partner, classes, basis)) = partner {
            findings.push(
                Finding::note(
                    Subject::Product(voice.product.clone()),
                    format!(
                        "The {}surfactant built into {} serves that product alone; {} wants {classes}",
                        match surfactant.charge {
                            Charge::NotStated => String::new(),
                            charge => format!("{} ", charge.name()),
                        },
                        voice.name,
                        partner.name
                    ),
                    basis,
                )
                .hint("What one product brings for itself is rarely what its partners need."),
            );
        }
    }
}

/// Where a lesser authority says the opposite of what counts about a class that matters here.
fn overruled(voices: &[Voice], set: &[AdjuvantClass], findings: &mut Vec<Finding>) {
    for voice in voices {
        for claim in &voice.claims {
            // What nobody has in mind need not be argued about: it stands in the mix, or a ban meets a wish.
            let in_mind = set.contains(&claim.class);
            let wished = |stance: Stance| matches!(stance, Stance::Required | Stance::Preferred);
            let differs = |other: &&Claim| {
                other.class == claim.class
                    && source(other) != source(claim)
                    && (in_mind || wished(other.stance) || wished(claim.stance))
                    && (is_good(other.stance) != is_good(claim.stance)
                        || (other.stance == Stance::Required) != (claim.stance == Stance::Required)
                            && set.contains(&claim.class)
                            && other.authority == claim.authority)
            };
            let Some(other) = voice.others.iter().find(differs) else { continue };
            findings.push(
                Finding::note(
                    Subject::Product(voice.product.clone()),
                    format!(
                        "On {} with {}, sources differ: {} {} it, {} {} it",
                        claim.class.name(),
                        voice.name,
                        source(claim),
                        claim.stance.verb(),
                        source(other),
                        other.stance.verb()
                    ),
                    basis_of(&[claim.basis.clone(), other.basis.clone()]),
                )
                .hint(if claim.authority == Authority::Label {
                    "The label, as typed, decides."
                } else {
                    "The plan follows the weightier and stricter one; the label decides, once it is typed."
                }),
            );
        }
    }
}

fn source(claim: &Claim) -> String {
    match &claim.basis {
        Basis::Label(at) => format!("the label ({at})"),
        basis => basis.source().to_owned(),
    }
}

/// What common practice has to say of a class that is in the mix without being what it would choose: what it costs the crop,
/// whoever else speaks of it.
fn practice(voices: &[Voice], set: &[AdjuvantClass], findings: &mut Vec<Finding>) {
    let mut said: Vec<&str> = Vec::new();
    for voice in voices {
        for claim in voice.claims.iter().chain(&voice.others) {
            if claim.authority == Authority::Practice
                && !matches!(claim.stance, Stance::Required | Stance::Preferred)
                && set.contains(&claim.class)
                && !claim.says.is_empty()
                && !said.contains(&claim.says.as_str())
            {
                said.push(&claim.says);
                findings.push(Finding::note(
                    Subject::Product(voice.product.clone()),
                    format!("{}: {}", voice.name, claim.says),
                    claim.basis.clone(),
                ));
            }
        }
    }
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
