//! Demands that no set can meet at once: which two statements collide, and what the ways out are.

use super::search::Problem;
use super::voices::{Authority, Claim, Ground, Group, Voice, voices};
use super::words::either;
use super::{Choice, Collision, Role};
use crate::farm::label::Stance;
use crate::farm::{AdjuvantClass, Id, Product};
use crate::language::t;
use crate::mix::actives;
use crate::words::all_of;

/// Demands that no set on offer meets, each with who stands against it and the ways out.
pub(super) fn collisions(
    ground: &Ground<'_>,
    voices: &[Voice],
    problem: &Problem,
    choices: &[Choice],
) -> Vec<Collision> {
    let met = choices.iter().any(|choice| choice.satisfies);
    let mut collisions: Vec<Collision> = Vec::new();
    let mut reasons: Vec<String> = Vec::new();
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
            // One product may ask on one crop for what it forbids on another.
            let of_two_crops = bans.iter().any(|(other, _)| other.product == voice.product);
            let named = |voice: &Voice| match voice.crop.as_str() {
                crop if of_two_crops && !crop.is_empty() => t!("mix-product-in-crop", name = voice.name, crop = crop),
                _ => voice.name.clone(),
            };
            let (name, wanted) = (named(voice), either(&group.classes));
            let wants = if demanded {
                t!("mix-product-requires", name = name, classes = wanted)
            } else {
                t!("mix-product-wants", name = name, classes = wanted)
            };
            let (forbids, text, ban) =
                if let (Some((other, ban)), true) = (bans.first(), bans.len() == group.classes.len()) {
                    let classes: Vec<AdjuvantClass> = bans.iter().map(|(_, ban)| ban.class).collect();
                    let whose: Vec<String> = bans.iter().map(|(other, _)| named(other)).collect();
                    let one = whose.iter().all(|name| *name == named(other));
                    let (count, names) = if one { (1, named(other)) } else { (whose.len(), all_of(whose)) };
                    let ban_said = t!("mix-products-forbid", count = count, names = names, classes = either(&classes));
                    (Some(other.product.clone()), format!("{wants}; {ban_said}"), Some(ban))
                } else if let Some(reason) = left_out(problem, &group.classes) {
                    let text = format!("{wants}; {reason}");
                    if reasons.contains(&reason) {
                        continue;
                    }
                    reasons.push(reason);
                    (None, text, None)
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
                text: if voice.product == other.product {
                    t!(
                        "mix-requires-both",
                        name = voice.name,
                        first = either(&group.classes),
                        second = either(&second.classes),
                        one = one,
                        two = two
                    )
                } else {
                    t!(
                        "mix-two-require",
                        name = voice.name,
                        first = either(&group.classes),
                        other = other.name,
                        second = either(&second.classes),
                        one = one,
                        two = two
                    )
                },
                bases: bases.collect(),
                ways_out: vec![t!("mix-buy-another-product-in-the-place", one = one, two = two)],
                binds: group.authority == Authority::Label && second.authority == Authority::Label,
                classes: Vec::new(),
            })
        })
    })
}

/// Who forbids the classes of a demand.
pub(super) fn bans<'a>(group: &Group, voices: &'a [Voice]) -> Vec<(&'a Voice, &'a Claim)> {
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
        return vec![t!("mix-spray-the-two-crops-in-two").to_owned()];
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
                ways.push(t!("mix-take-instead-of-if-its-label", name = other.name, name2 = product.name));
            }
        }
    }
    ways.truncate(3);
    let partner = forbids
        .and_then(|id| ground.farm.products.get(id))
        .map_or(t!("mix-its-partner"), |product| product.name.as_str());
    ways.push(t!("mix-spray-and-in-two-passes-as", name = voice.name, partner = partner));
    ways.push(t!("mix-look-for-another-formulation-of-that", name = voice.name));
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
