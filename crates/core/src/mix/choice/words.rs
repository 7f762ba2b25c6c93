//! A set of adjuvants in words: what each product says of it, and why it stands behind the one before.

use super::search::Score;
use super::voices::{Authority, Claim, Voice};
use super::{Choice, Clause, Content, Member, Role, Verdict};
use crate::farm::AdjuvantClass;
use crate::farm::label::Stance;
use crate::finding::Basis;
use crate::language::t;
use crate::quantity::{Money, Units};
use rust_decimal::Decimal;

/// Several bases as one.
pub(crate) fn basis_of(bases: &[Basis]) -> Basis {
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

/// Classes as alternatives: "crop oil concentrate or methylated seed oil".
pub(crate) fn either(classes: &[AdjuvantClass]) -> String {
    let names: Vec<&str> = classes.iter().map(|class| class.name()).collect();
    match names.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, before)) => t!("mix-or", before = before.join(", "), last = last),
        None => String::new(),
    }
}

/// What each product has to say of a set of classes.
pub(crate) fn verdicts(voices: &[Voice], set: &[AdjuvantClass]) -> Vec<Verdict> {
    let several = |voice: &Voice| voices.iter().filter(|other| other.product == voice.product).count() > 1;
    voices
        .iter()
        .map(|voice| {
            let name = if several(voice) && !voice.crop.is_empty() {
                format!("{} in {}", voice.name, voice.crop)
            } else {
                voice.name.clone()
            };
            verdict(voice, name, set)
        })
        .collect()
}

fn verdict(voice: &Voice, name: String, set: &[AdjuvantClass]) -> Verdict {
    let mut clauses: Vec<Clause> = Vec::new();
    let mut told: Vec<AdjuvantClass> = Vec::new();
    let mut say = |content: Content, verb: &'static str, what: String, claim: &Claim| {
        let says = claim.says.trim().trim_end_matches('.').to_owned();
        clauses.push(Clause { content, verb, what, says, basis: claim.basis.clone() });
    };
    let groups = voice.required.iter().map(|group| (group, true));
    for (group, required) in groups.chain(voice.preferred.iter().map(|group| (group, false))) {
        let met = group.met_by(set);
        let Some(claim) = group.claim(met) else { continue };
        match (met, required) {
            // Where a weightier voice has been served with it, a lesser one need not say the same.
            (Some(class), _) if told.contains(&class) => {}
            (Some(_), true) => say(Content::Served, "requires", either(&group.classes), claim),
            (Some(_), false) => say(Content::Served, "wants", either(&group.classes), claim),
            (None, true) => {
                say(Content::Lacks, "requires", format!("{}, which this set lacks", either(&group.classes)), claim);
            }
            (None, false) => say(Content::WouldRather, "would rather have", either(&group.classes), claim),
        }
        told.extend(met);
        if met.is_none() {
            told.extend(&group.classes);
        }
    }
    for claim in voice.claims.iter().filter(|claim| set.contains(&claim.class) && !told.contains(&claim.class)) {
        let (content, verb) = match claim.stance {
            Stance::Forbidden => (Content::Forbids, "forbids"),
            Stance::Discouraged => (Content::Objects, t!("mix-advises-against")),
            Stance::Allowed | Stance::Preferred | Stance::Required => (Content::Accepts, "allows"),
        };
        say(content, verb, claim.class.name().to_owned(), claim);
    }
    clauses.extend(silence(voice, set, clauses.is_empty()));
    clauses.sort_by_key(|clause| std::cmp::Reverse(clause.content));
    Verdict {
        product: voice.product.clone(),
        name,
        content: clauses.first().map_or(Content::Silent, |clause| clause.content),
        basis: clauses.first().map_or(Basis::Arithmetic, |clause| clause.basis.clone()),
        clauses,
    }
}

/// What is to be said where a product says little or nothing.
fn silence(voice: &Voice, set: &[AdjuvantClass], silent: bool) -> Option<Clause> {
    let clause = |content: Content, verb: &'static str, what: &str, basis: Basis| {
        Some(Clause { content, verb, what: what.to_owned(), says: String::new(), basis })
    };
    let activator = |class: AdjuvantClass| Role::of(class) == Role::Activator;
    match voice.surfactant {
        Some(surfactant) if surfactant.complete && !voice.claims.iter().any(|claim| activator(claim.class)) => {
            let what = t!("mix-its-own-surfactant-which-serves-it", charge = surfactant.charge.name());
            clause(Content::Accepts, "brings", &what, Basis::Label(voice.name.clone()))
        }
        _ if voice.claims.is_empty() => {
            clause(Content::Silent, "has", t!("mix-no-guidance-on-adjuvants-read-its"), Basis::Arithmetic)
        }
        _ if silent && set.iter().any(|class| activator(*class)) => {
            clause(Content::Silent, "says", t!("mix-nothing-of-these-read-its-label"), Basis::Arithmetic)
        }
        _ if silent => {
            clause(Content::Accepts, t!("mix-asks-for"), t!("mix-nothing-that-is-left-out"), Basis::Arithmetic)
        }
        _ => None,
    }
}

/// Why a set stands behind the one before it: the first part in which they differ.
pub(crate) fn behind(before: &Choice, this: &Choice, units: Units, currency: &str) -> String {
    let (a, b) = (&before.score, &this.score);
    // What is said of this set, and not of the one before, by the first product that is less content.
    let because = |from: Content, otherwise: &str| {
        let said = this.verdicts.iter().zip(&before.verdicts).find_map(|(this, before)| {
            let known = |clause: &Clause| {
                before.clauses.iter().any(|other| (other.verb, &other.what) == (clause.verb, &clause.what))
            };
            let clause = this.clauses.iter().find(|clause| clause.content >= from && !known(clause))?;
            Some(format!("{} {} {}", this.name, clause.verb, clause.what))
        });
        t!("mix-behind", title = before.title(), as_deref = said.as_deref().unwrap_or(otherwise))
    };
    if a.broken != b.broken {
        return because(Content::Lacks, t!("mix-something-in-the-mix-speaks-against"));
    }
    if a.unmet != b.unmet {
        return because(Content::Lacks, t!("mix-a-demand-is-not-met"));
    }
    if a.buys != b.buys {
        return t!("mix-behind-it-would-have-to-be", title = before.title());
    }
    if a.stacked != b.stacked {
        return t!("mix-behind-two-of-a-kind-where", title = before.title());
    }
    for (authority, (was, is)) in Authority::ALL.into_iter().zip(a.standing.iter().zip(&b.standing)) {
        let whose = match authority {
            Authority::Label => t!("mix-a-label"),
            Authority::Local => t!("mix-local-advice"),
            Authority::Published => t!("mix-a-publication"),
            Authority::Practice => t!("mix-common-practice"),
        };
        if was.0 != is.0 {
            return because(Content::Objects, &t!("mix-has-more-against-it", whose = whose));
        }
        if was.1 != is.1 {
            return because(Content::WouldRather, &t!("mix-would-rather-have-the-other", whose = whose));
        }
    }
    by_lean_or_cost(before, a, b, units, currency)
}

fn by_lean_or_cost(before: &Choice, a: &Score, b: &Score, units: Units, currency: &str) -> String {
    let title = before.title();
    if a.lean != b.lean {
        // The lean part is negative where the stronger set is preferred.
        let stronger = a.lean < b.lean && a.lean < 0;
        return if stronger {
            t!("mix-behind-weaker-on-weeds-which-weighs", title = title)
        } else {
            t!("mix-behind-harder-on-the-crop-which", title = title)
        };
    }
    if a.unpriced != b.unpriced {
        return t!("mix-behind-its-price-or-rate-is", title = title);
    }
    if a.cost != b.cost {
        let more = Money::new(Decimal::new(b.cost - a.cost, 6));
        return t!("mix-behind-dearer-by", title = title, per_ground = per_ground(more, units, currency));
    }
    t!("mix-as-good-as", title = title)
}

/// Money over a hectare, as the farm counts ground.
pub fn per_ground(per_hectare: Money, units: Units, currency: &str) -> String {
    let hectare = crate::quantity::Area::from_hectares(1.0);
    match units {
        Units::Metric => format!("{currency}{}/ha", per_hectare.show()),
        _ => format!("{currency}{}/ac", per_hectare.per(hectare.to_acres()).unwrap_or(per_hectare).show()),
    }
}

/// The classes of members.
pub(crate) fn classes(members: &[Member]) -> Vec<AdjuvantClass> {
    members.iter().map(|member| member.class).collect()
}
