//! A set of adjuvants in words: what each product says of it, and why it stands behind the one before.

use super::search::Score;
use super::voices::{Authority, Claim, Voice};
use super::{Choice, Clause, Content, Member, Role, Verb, Verdict};
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
                t!("mix-product-in-crop", name = voice.name, crop = voice.crop)
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
    let mut say = |content: Content, verb: Verb, what: String, claim: &Claim| {
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
            (Some(_), true) => say(Content::Served, Verb::Requires, either(&group.classes), claim),
            (Some(_), false) => say(Content::Served, Verb::Wants, either(&group.classes), claim),
            (None, true) => say(Content::Lacks, Verb::Lacks, either(&group.classes), claim),
            (None, false) => say(Content::WouldRather, Verb::WouldRather, either(&group.classes), claim),
        }
        told.extend(met);
        if met.is_none() {
            told.extend(&group.classes);
        }
    }
    for claim in voice.claims.iter().filter(|claim| set.contains(&claim.class) && !told.contains(&claim.class)) {
        let (content, verb) = match claim.stance {
            Stance::Forbidden => (Content::Forbids, Verb::Forbids),
            Stance::Discouraged => (Content::Objects, Verb::AdvisesAgainst),
            Stance::Allowed | Stance::Preferred | Stance::Required => (Content::Accepts, Verb::Allows),
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
    let clause = |content: Content, verb: Verb, what: &str, basis: Basis| {
        Some(Clause { content, verb, what: what.to_owned(), says: String::new(), basis })
    };
    let activator = |class: AdjuvantClass| Role::of(class) == Role::Activator;
    match voice.surfactant {
        Some(surfactant) if surfactant.complete && !voice.claims.iter().any(|claim| activator(claim.class)) => {
            clause(Content::Accepts, Verb::Brings, surfactant.charge.name(), Basis::Label(voice.name.clone()))
        }
        _ if voice.claims.is_empty() => clause(Content::Silent, Verb::HasNoGuidance, "", Basis::Arithmetic),
        _ if silent && set.iter().any(|class| activator(*class)) => {
            clause(Content::Silent, Verb::SaysNothing, "", Basis::Arithmetic)
        }
        _ if silent => clause(Content::Accepts, Verb::AsksForNothing, "", Basis::Arithmetic),
        _ => None,
    }
}

/// Why a set stands behind the one before it, in a sentence.
pub(crate) fn behind(before: &Choice, this: &Choice, units: Units, currency: &str) -> String {
    let title = before.title();
    match why_behind(before, this, units, currency) {
        Some(why) => t!("mix-behind", title = title, why = why),
        None => t!("mix-as-good-as", title = title),
    }
}

/// The first part in which a set is worse than the one before it; `None` where it is as good.
pub(crate) fn why_behind(before: &Choice, this: &Choice, units: Units, currency: &str) -> Option<String> {
    let (a, b) = (&before.score, &this.score);
    // What is said of this set, and not of the one before, by the first product that is less content.
    let because = |from: Content, otherwise: &dyn Fn() -> String| {
        let said = this.verdicts.iter().zip(&before.verdicts).find_map(|(this, before)| {
            let known = |clause: &Clause| {
                before.clauses.iter().any(|other| (other.verb, &other.what) == (clause.verb, &clause.what))
            };
            let clause = this.clauses.iter().find(|clause| clause.content >= from && !known(clause))?;
            Some(format!("{} {}", this.name, clause.verb.with(&clause.what)))
        });
        Some(said.unwrap_or_else(otherwise))
    };
    if a.broken != b.broken {
        return because(Content::Lacks, &|| t!("mix-something-in-the-mix-speaks-against").to_owned());
    }
    if a.unmet != b.unmet {
        return because(Content::Lacks, &|| t!("mix-a-demand-is-not-met").to_owned());
    }
    if a.buys != b.buys {
        return Some(t!("mix-it-would-have-to-be-bought").to_owned());
    }
    if a.stacked != b.stacked {
        return Some(t!("mix-two-of-a-kind-where-one-will-do").to_owned());
    }
    for (authority, (was, is)) in Authority::ALL.into_iter().zip(a.standing.iter().zip(&b.standing)) {
        let whose = match authority {
            Authority::Label => "label",
            Authority::Local => "local",
            Authority::Published => "published",
            Authority::Practice => "practice",
        };
        if was.0 != is.0 {
            return because(Content::Objects, &|| t!("mix-has-more-against-it", authority = whose));
        }
        if was.1 != is.1 {
            return because(Content::WouldRather, &|| t!("mix-would-rather-have-the-other", authority = whose));
        }
    }
    by_lean_or_cost(a, b, units, currency)
}

fn by_lean_or_cost(a: &Score, b: &Score, units: Units, currency: &str) -> Option<String> {
    if a.lean != b.lean {
        // The lean part is negative where the stronger set is preferred.
        let stronger = a.lean < b.lean && a.lean < 0;
        let why = if stronger { t!("mix-weaker-on-weeds") } else { t!("mix-harder-on-the-crop") };
        return Some(why.to_owned());
    }
    if a.unpriced != b.unpriced {
        return Some(t!("mix-its-price-or-rate-is-not-known").to_owned());
    }
    (a.cost != b.cost).then(|| {
        let more = Money::new(Decimal::new(b.cost - a.cost, 6));
        t!("mix-dearer-by", per_ground = per_ground(more, units, currency))
    })
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
