//! What is worth saying beside demands and bans: built-in surfactants, sources that differ, what is published of a class
//! itself, what common practice says an adjuvant costs the crop.

use super::voices::{Authority, Claim, Ground, Voice, is_good};
use super::words::{basis_of, either};
use super::{Choice, Role, dose};
use crate::farm::label::{Says, Stance, When};
use crate::farm::{AdjuvantClass, Charge, Statement};
use crate::finding::{Basis, Finding, Subject, TypedAt};
use crate::language::{self, t};
use crate::mix::guidance;
use crate::mix::line::PlannedLine;
use crate::quantity::Quantity;

/// What is published of a class itself, such as how much of an oil goes over ground. Where a label of the mix names a rate
/// for the class, this is only worth knowing.
pub(super) fn by_class(
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
                let text = t!(
                    "mix-comes-to-at-less-than-the",
                    name = line.name,
                    per_area = line.per_area.show(units),
                    carrier = ground.carrier.show(units),
                    least = least.show(units)
                );
                let finding = if by_label {
                    Finding::note(about, text, guidance.basis.clone())
                } else {
                    Finding::check(about, text, guidance.basis.clone())
                };
                findings.push(finding.hint(language::row(&guidance.says)));
            }
        }
    }
}

/// Where advice hangs on a built-in surfactant and nobody has typed whether there is one.
pub(super) fn untyped_surfactant(ground: &Ground<'_>, voice: &Voice, findings: &mut Vec<Finding>) {
    let Some(product) = ground.farm.products.get(&voice.product) else { return };
    if product.surfactant.is_some() || product.no_surfactant {
        return;
    }
    let on_it = |statement: &&Statement| statement.when.contains(&When::NoSurfactantBuiltIn);
    let here = |statement: &Statement| ground.fields.iter().any(|field| crate::label::for_crop(statement, field));
    let mut hangs: Vec<(bool, &Basis)> = guidance::on(product)
        .filter_map(|(guidance, _)| {
            let mut speaks = guidance.statements.iter().filter(on_it).peekable();
            speaks.peek()?;
            Some((speaks.any(here), &guidance.basis))
        })
        .collect();
    hangs.sort_by_key(|(is_here, _)| !is_here);
    // What is published of another crop is no source for this one.
    let basis = hangs.first().map(|(is_here, basis)| if *is_here { (*basis).clone() } else { Basis::Practice });
    if let Some(basis) = basis
        && !voice.claims.iter().any(|claim| Role::of(claim.class) == Role::Activator && claim.authority.binds())
    {
        findings.push(
            Finding::check(
                Subject::Product(voice.product.clone()),
                t!("mix-whether-holds-a-surfactant-of-its", name = voice.name),
                basis,
            )
            .hint(t!("mix-type-on-its-page-whether-the"))
            .at(TypedAt::Surfactant),
        );
    }
}

/// A surfactant built into one product does not serve its partners.
pub(super) fn built_in(voices: &[Voice], findings: &mut Vec<Finding>) {
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
            let (name, partner) = (&voice.name, &partner.name);
            let text = match surfactant.charge {
                Charge::NotStated => {
                    t!("mix-the-surfactant-built-into-serves-that", name = name, partner = partner, classes = classes)
                }
                charge => t!(
                    "mix-the-charged-surfactant-built-in",
                    charge = charge.name(),
                    name = name,
                    partner = partner,
                    classes = classes
                ),
            };
            findings.push(
                Finding::note(Subject::Product(voice.product.clone()), text, basis)
                    .hint(t!("mix-what-one-product-brings-for-itself")),
            );
        }
    }
}

/// Where a lesser authority says the opposite of what counts about a class that matters here.
pub(super) fn overruled(voices: &[Voice], set: &[AdjuvantClass], findings: &mut Vec<Finding>) {
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
                    t!(
                        "mix-on-with-sources-differ-it-it",
                        class = claim.class.name(),
                        name = voice.name,
                        one = stands(claim),
                        other = stands(other)
                    ),
                    basis_of(&[claim.basis.clone(), other.basis.clone()]),
                )
                .hint(if claim.authority == Authority::Label {
                    t!("mix-the-label-as-typed-decides")
                } else {
                    t!("mix-the-plan-follows-the-weightier-and")
                }),
            );
        }
    }
}

/// Who says what of a class: "a publication forbids it".
fn stands(claim: &Claim) -> String {
    let source = source(claim);
    match claim.stance {
        Stance::Required => t!("mix-source-requires-it", source = source),
        Stance::Preferred => t!("mix-source-prefers-it", source = source),
        Stance::Allowed => t!("mix-source-allows-it", source = source),
        Stance::Discouraged => t!("mix-source-advises-against-it", source = source),
        Stance::Forbidden => t!("mix-source-forbids-it", source = source),
    }
}

fn source(claim: &Claim) -> String {
    match &claim.basis {
        Basis::Label(at) => t!("mix-the-label", at = at),
        basis => basis.source().to_owned(),
    }
}

/// What common practice has to say of a class that is in the mix without being what it would choose: what it costs the crop,
/// whoever else speaks of it.
pub(super) fn practice(voices: &[Voice], set: &[AdjuvantClass], findings: &mut Vec<Finding>) {
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
