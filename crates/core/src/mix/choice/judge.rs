//! What there is to say of the set that stands in the mix, by the same rules as of those on offer.

use super::collide::bans;
use super::search::Problem;
use super::voices::{Authority, Claim, Ground, Group, Voice};
use super::words::{classes, either, why_behind};
use super::{Choice, Collision, Role, beside, content, dose};
use crate::farm::label::Stance;
use crate::farm::{AdjuvantClass, CarrierKind, Id};
use crate::finding::{Basis, Finding, Subject};
use crate::label::forbid;
use crate::language::t;
use crate::mix::line::PlannedLine;
use crate::quantity::AmountPerArea;
use crate::words::capital;

/// What there is to say of the set that stands in the mix.
#[allow(clippy::too_many_arguments)] // The room's state, handed on.
pub(super) fn judge(
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
        against_the_carrier(ground, voice, findings);
        beside::untyped_surfactant(ground, voice, findings);
    }
    beside::by_class(ground, voices, lines, current, findings);
    content::judge(ground.farm, lines, findings);
    beside::built_in(voices, findings);
    beside::overruled(voices, &set, findings);
    beside::practice(voices, &set, findings);
    if let Some(first) = choices.first()
        && !first.current
        && current.score.broken == 0
        && Problem::suits_better(&first.score, &current.score)
    {
        let (title, title2) = (capital(&first.title()), current.title());
        let text = match why_behind(first, current, ground.farm.units, &ground.farm.currency) {
            Some(why) => t!("mix-would-suit-better-because", title = title, title2 = title2, why = why),
            None => t!("mix-would-suit-this-mix-better-than", title = title, title2 = title2),
        };
        findings.push(
            Finding::note(Subject::Pass(pass_id.clone()), text, Basis::Arithmetic)
                .hint(t!("mix-see-the-sets-below-the-mix")),
        );
    }
}

/// What a product has against nitrogen solution where that carries the whole mix.
fn against_the_carrier(ground: &Ground<'_>, voice: &Voice, findings: &mut Vec<Finding>) {
    if ground.pass.carrier_kind != CarrierKind::UreaAmmoniumNitrate {
        return;
    }
    let Some(claim) = voice.on(AdjuvantClass::UreaAmmoniumNitrate) else { return };
    let about = Subject::Product(voice.product.clone());
    let hint = t!("mix-spray-in-water-or-read-on");
    match claim.stance {
        Stance::Forbidden => {
            let text = t!("mix-forbids-and-it-is-the-carrier", name = voice.name, class = claim.class.name());
            findings.push(firm(claim, about, text).hint(hint));
        }
        Stance::Discouraged => {
            let text = t!("mix-advises-against-and-it-is-the", name = voice.name, class = claim.class.name());
            findings.push(Finding::check(about, text, claim.basis.clone()).hint(hint));
        }
        Stance::Required | Stance::Preferred | Stance::Allowed => {}
    }
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
        let text = t!("mix-requires-and-the-mix-has-none", name = voice.name, classes = either(&group.classes));
        let hint = match voice.surfactant {
            Some(_) if group.role == Role::Activator => t!("mix-what-is-built-into-it-does"),
            _ => t!("mix-take-one-of-the-sets-below"),
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
        let text = t!("mix-would-rather-have-and-the-mix", name = voice.name, classes = either(&group.classes));
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
                let text = t!(
                    "mix-advises-against-and-is-in-the",
                    name = voice.name,
                    class = claim.class.name(),
                    name2 = line.name
                );
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
        all.name = t!("mix-and", name = all.name, name2 = line.name);
    }
    rates(ground, voice, claim, &all, findings);
}

fn forbidden(voice: &Voice, claim: &Claim, line: &PlannedLine) -> Finding {
    let about = Subject::Product(voice.product.clone());
    let text = t!("mix-forbids-and-is-in-the-mix", name = voice.name, class = claim.class.name(), name2 = line.name);
    let otherwise = voice.others.iter().any(|other| {
        other.class == claim.class
            && other.authority == claim.authority
            && !matches!(other.stance, Stance::Forbidden | Stance::Discouraged)
    });
    let binds = claim.authority.binds();
    // Where publications disagree, a person must read the label.
    if !binds && otherwise {
        Finding::check(about, t!("mix-another-publication-allows-it", text = text), claim.basis.clone())
            .hint(t!("mix-read-the-label-and-type-what"))
    } else {
        firm(claim, about, text).hint(if binds {
            t!("mix-take-one-of-the-two-out")
        } else {
            t!("mix-take-one-of-the-two-out-if-the-label")
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
    let text = t!("mix-this-is-said-which-cannot-be", text = text, doubt = claim.doubt);
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
                    t!("mix-what-says-of-an-adjuvant-cannot", name = voice.name, problem = problem),
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
        let text = t!(
            "mix-allows-of-at-most-is-planned",
            name = voice.name,
            also = also(&text, most),
            name2 = line.name,
            planned = planned
        );
        findings.push(if claim.authority.binds() {
            Finding::stop(about(), text, claim.basis.clone()).hint(t!("mix-lower-its-rate"))
        } else {
            Finding::check(about(), text, claim.basis.clone()).hint(t!("mix-the-label-of-each-product-decides"))
        });
    }
    if let Some((least, text)) = least
        && least.exceeds(line.per_area) == Some(true)
    {
        let text = t!(
            "mix-names-of-at-least-is-planned",
            name = voice.name,
            also = also(&text, least),
            name2 = line.name,
            planned = planned
        );
        findings.push(if claim.authority.binds() || claim.stance == Stance::Required {
            Finding::check(about(), text, claim.basis.clone())
        } else {
            Finding::note(about(), text, claim.basis.clone())
        });
    }
}
