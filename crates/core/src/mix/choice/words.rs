//! A set of adjuvants in words: what each product says of it, and why it stands behind the one before.

use super::search::Score;
use super::voices::{Authority, Claim, Voice};
use super::{Choice, Content, Member, Role, Verdict};
use crate::farm::AdjuvantClass;
use crate::farm::label::Stance;
use crate::finding::Basis;
use crate::quantity::{Money, Units};
use rust_decimal::Decimal;

/// Classes as alternatives: "crop oil concentrate or methylated seed oil".
pub(crate) fn either(classes: &[AdjuvantClass]) -> String {
    let names: Vec<&str> = classes.iter().map(|class| class.name()).collect();
    match names.split_last() {
        Some((last, [])) => (*last).to_owned(),
        Some((last, before)) => format!("{} or {last}", before.join(", ")),
        None => String::new(),
    }
}

/// A verdict in the making: the weightiest content, and every clause.
struct Said {
    content: Content,
    clauses: Vec<String>,
    basis: Option<Basis>,
}

impl Said {
    fn add(&mut self, content: Content, clause: String, basis: &Basis) {
        // What a product lacks or forbids is told before what it is content with.
        if self.basis.is_none() || content > self.content {
            self.content = content;
            self.basis = Some(basis.clone());
            self.clauses.insert(0, clause);
        } else {
            self.clauses.push(clause);
        }
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
    let mut said = Said { content: Content::Silent, clauses: Vec::new(), basis: None };
    let has = |class: &AdjuvantClass| set.contains(class);
    let mut told: Vec<AdjuvantClass> = Vec::new();
    for group in &voice.required {
        let met = group.met_by(set);
        let Some(claim) = group.claim(met) else { continue };
        let classes = either(&group.classes);
        if met.is_some() {
            said.add(Content::Served, format!("requires {}", reasoned(&classes, claim)), &claim.basis);
        } else {
            said.add(Content::Lacks, format!("requires {classes}, which this set lacks"), &claim.basis);
        }
        told.extend(&group.classes);
    }
    for group in &voice.preferred {
        let met = group.met_by(set);
        let Some(claim) = group.claim(met) else { continue };
        let classes = either(&group.classes);
        if met.is_some() {
            said.add(Content::Served, format!("wants {}", reasoned(&classes, claim)), &claim.basis);
        } else {
            said.add(Content::WouldRather, format!("would rather have {classes}"), &claim.basis);
        }
        told.extend(&group.classes);
    }
    for claim in voice.claims.iter().filter(|claim| has(&claim.class) && !told.contains(&claim.class)) {
        let class = claim.class.name();
        match claim.stance {
            Stance::Forbidden => said.add(Content::Forbids, format!("forbids {class}"), &claim.basis),
            Stance::Discouraged => {
                said.add(Content::Objects, format!("advises against {}", reasoned(class, claim)), &claim.basis);
            }
            Stance::Allowed | Stance::Preferred | Stance::Required => {
                said.add(Content::Accepts, format!("allows {}", reasoned(class, claim)), &claim.basis);
            }
        }
    }
    // What one role's silence leaves open.
    let activators = |role: Role| set.iter().any(|class| Role::of(*class) == role);
    let speaks_of = |role: Role| voice.claims.iter().any(|claim| Role::of(claim.class) == role);
    match voice.surfactant {
        Some(surfactant) if surfactant.complete && !speaks_of(Role::Activator) => {
            said.clauses.push(format!("brings its own {} surfactant, which serves it alone", surfactant.charge.name()));
            if said.content == Content::Silent {
                said.content = Content::Accepts;
                said.basis = Some(Basis::Label(voice.name.clone()));
            }
        }
        _ if voice.claims.is_empty() => {
            said.clauses.push("has no guidance on adjuvants: read its label".to_owned());
        }
        _ if said.clauses.is_empty() && activators(Role::Activator) => {
            said.clauses.push("says nothing of these: read its label".to_owned());
        }
        _ if said.clauses.is_empty() => {
            said.content = Content::Accepts;
            said.clauses.push("asks for none of what is left out".to_owned());
        }
        _ => {}
    }
    Verdict {
        product: voice.product.clone(),
        name,
        content: said.content,
        text: said.clauses.join("; "),
        basis: said.basis.unwrap_or(Basis::Arithmetic),
    }
}

/// What is said, with the sentence that goes with it.
fn reasoned(what: &str, claim: &Claim) -> String {
    let says = claim.says.trim().trim_end_matches('.');
    if says.is_empty() { what.to_owned() } else { format!("{what} (\u{201c}{says}\u{201d})") }
}

/// Why a set stands behind the one before it: the first part in which they differ.
pub(crate) fn behind(before: &Choice, this: &Choice, units: Units, currency: &str) -> String {
    let (a, b) = (&before.score, &this.score);
    let worse = |from: Content| -> Vec<&Verdict> {
        this.verdicts
            .iter()
            .zip(&before.verdicts)
            .filter(|(this, before)| this.content >= from && before.content < this.content)
            .map(|(this, _)| this)
            .collect()
    };
    let because = |verdicts: Vec<&Verdict>, otherwise: &str| match verdicts.first() {
        Some(verdict) => format!("Behind {}: {} {}", before.title(), verdict.name, clause(&verdict.text)),
        None => format!("Behind {}: {otherwise}", before.title()),
    };
    if a.unmet != b.unmet {
        return because(worse(Content::Lacks), "a demand is not met");
    }
    if a.buys != b.buys {
        return format!("Behind {}: it would have to be bought", before.title());
    }
    if a.stacked != b.stacked {
        return format!("Behind {}: two of a kind, where one will do", before.title());
    }
    for (authority, (was, is)) in Authority::ALL.into_iter().zip(a.standing.iter().zip(&b.standing)) {
        let whose = match authority {
            Authority::Label => "a label",
            Authority::Local => "local advice",
            Authority::Published => "a publication",
            Authority::Practice => "common practice",
        };
        if was.0 != is.0 {
            return because(worse(Content::Objects), &format!("{whose} has more against it"));
        }
        if was.1 != is.1 {
            return because(worse(Content::WouldRather), &format!("{whose} would rather have the other"));
        }
    }
    by_lean_or_cost(before, a, b, units, currency)
}

/// The first clause of a verdict, without the sentence in quotation marks.
fn clause(text: &str) -> &str {
    let first = text.split("; ").next().unwrap_or(text);
    first.split(" (\u{201c}").next().unwrap_or(first)
}

fn by_lean_or_cost(before: &Choice, a: &Score, b: &Score, units: Units, currency: &str) -> String {
    let title = before.title();
    if a.lean != b.lean {
        // The lean part is negative where the stronger set is preferred.
        let stronger = a.lean < b.lean && a.lean < 0;
        return if stronger {
            format!("Behind {title}: weaker on weeds, which weighs more here")
        } else {
            format!("Behind {title}: harder on the crop, which weighs more here")
        };
    }
    if a.unpriced != b.unpriced {
        return format!("Behind {title}: its price or rate is not known");
    }
    if a.cost != b.cost {
        let more = Money::new(Decimal::new(b.cost - a.cost, 6));
        return format!("Behind {title}: dearer by {}", per_ground(more, units, currency));
    }
    format!("As good as {title}")
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
