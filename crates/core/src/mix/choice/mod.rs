//! Which adjuvants suit every product of the mix, exactly: every set is looked at, none is guessed.
//!
//! What products say stands in [`voices`]; how a set is scored and found in `search`; in which words it is given in
//! `words`; how much of an adjuvant goes in with `dose`; what cannot be met at once in `collide`; what is said of the set that
//! stands in the mix in `judge` and `beside`. `choose` is the door.

pub mod alternatives;
mod beside;
mod choose;
mod collide;
mod content;
pub(crate) mod dose;
mod judge;
mod search;
pub mod voices;
mod words;

use crate::farm::{AdjuvantClass, Farm, Id, Line, Pass};
use crate::finding::Basis;
use crate::language::t;
use crate::quantity::{AmountPerArea, AsTyped, Money, Rate};
use crate::words::all_of;

pub(crate) use choose::{choose, most_allowed};
pub(crate) use dose::over_ground as rate_over_ground;
pub use voices::{Authority, Claim, Voice};
pub use words::per_ground;

/// What an adjuvant class is for. Of one role a product mostly needs one class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Role {
    /// Wets, spreads, carries in: surfactants and oils.
    Activator,
    /// Conditions the water or brings nitrogen.
    WaterAndNitrogen,
    /// Sets the acidity.
    Buffer,
    /// Keeps a herbicide from rising as vapour.
    Volatility,
    /// Keeps droplets from drifting.
    Drift,
    /// Keeps a mix together.
    Compatibility,
    /// Keeps foam down.
    Foam,
    /// Anything else.
    Other,
}

impl Role {
    /// All of them.
    pub const ALL: [Self; 8] = [
        Self::Activator,
        Self::WaterAndNitrogen,
        Self::Buffer,
        Self::Volatility,
        Self::Drift,
        Self::Compatibility,
        Self::Foam,
        Self::Other,
    ];

    /// The role of a class.
    pub const fn of(class: AdjuvantClass) -> Self {
        use AdjuvantClass as C;
        match class {
            C::NonIonicSurfactant
            | C::CropOilConcentrate
            | C::MethylatedSeedOil
            | C::HighSurfactantOil
            | C::Organosilicone => Self::Activator,
            C::AmmoniumSulfate | C::UreaAmmoniumNitrate | C::ConditionerWithoutAmmonium => Self::WaterAndNitrogen,
            C::Buffer => Self::Buffer,
            C::VolatilityReducer => Self::Volatility,
            C::DriftRetardant => Self::Drift,
            C::CompatibilityAgent => Self::Compatibility,
            C::Defoamer => Self::Foam,
            C::Other => Self::Other,
        }
    }

    /// Whether taking a set decides it alone; what serves another role stays unless the set brings its own.
    const fn is_chosen(self) -> bool {
        matches!(self, Self::Activator | Self::WaterAndNitrogen)
    }
}

/// What there is to say about adjuvants for a mix.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Adjuvants {
    /// The sets on offer, the best first.
    pub choices: Vec<Choice>,
    /// The set that stands in the mix, judged by the same rules.
    pub current: Option<Choice>,
    /// Demands that no set can meet at once.
    pub collisions: Vec<Collision>,
    /// On what it rests that a product of the mix forbids ammonium sulfate; `None` where none does.
    pub ammonium_forbidden: Option<Basis>,
}

/// One set of adjuvants.
#[derive(Clone, Debug, PartialEq)]
pub struct Choice {
    /// Its place, from 1; 0 for a set chosen by hand that is not on offer.
    pub rank: u32,
    /// What is in it, by role; empty for no adjuvant at all.
    pub members: Vec<Member>,
    /// What it costs over a hectare; `None` where a price is missing.
    pub cost_per_hectare: Option<Money>,
    /// Whether every demand is met.
    pub satisfies: bool,
    /// What each product has to say of it.
    pub verdicts: Vec<Verdict>,
    /// Why it stands behind the one before; empty for the first.
    pub behind: String,
    /// Whether it is what stands in the mix.
    pub current: bool,
    pub(crate) score: search::Score,
}

impl Choice {
    /// Its classes, or "no adjuvant".
    pub fn title(&self) -> String {
        if self.members.is_empty() {
            return t!("mix-no-adjuvant").to_owned();
        }
        let names: Vec<&str> = self.members.iter().map(|member| member.class.name()).collect();
        all_of(names)
    }

    /// Every reason in a sentence: what each product says of it, then why it stands behind the one before.
    pub fn reasons(&self) -> Vec<String> {
        let mut reasons: Vec<String> = self.verdicts.iter().map(Verdict::sentence).collect();
        reasons.extend((!self.behind.is_empty()).then(|| self.behind.clone()));
        reasons
    }

    /// Puts the set into a pass in the place of its activators and conditioners. Any other adjuvant stays, unless the set holds
    /// another of its class; and so does a line of the set itself for which no rate is known but the typed one. One that is
    /// new and has no known rate goes in at none, which the plan stops at until its rate is typed.
    pub fn take(&self, pass: &mut Pass, farm: &Farm) {
        let typed_alone =
            |id: &Id| self.members.iter().any(|member| member.rate.is_none() && member.product.as_ref() == Some(id));
        pass.mix.retain(|line| {
            if typed_alone(&line.product) {
                return true;
            }
            let class = farm.products.get(&line.product).and_then(crate::farm::Product::adjuvant_class);
            class.is_none_or(|class| {
                !Role::of(class).is_chosen() && !self.members.iter().any(|member| member.class == class)
            })
        });
        for member in &self.members {
            let Some(id) = &member.product else { continue };
            let stays = pass.mix.iter().any(|line| line.product == *id);
            let liquid = farm.products.get(id).is_some_and(crate::farm::Product::is_liquid);
            let none = || AsTyped::parse(if liquid { "0 fl oz/ac" } else { "0 lb/ac" }).ok();
            if let (false, Some(rate)) = (stays, member.rate.clone().or_else(none)) {
                let mut line = Line::new(id, rate);
                line.at_least.clone_from(&member.at_least);
                line.at_most.clone_from(&member.at_most);
                pass.mix.push(line);
            }
        }
    }
}

/// One adjuvant of a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Member {
    /// Which product of the shed; `None` where it would have to be bought.
    pub product: Option<Id>,
    /// Its name, or that of its class.
    pub name: String,
    /// Its class.
    pub class: AdjuvantClass,
    /// Its rate; `None` where neither a label nor a publication names one.
    pub rate: Option<AsTyped<Rate>>,
    /// Floor over ground.
    pub at_least: Option<AsTyped<Rate>>,
    /// Ceiling over ground.
    pub at_most: Option<AsTyped<Rate>>,
    /// What that is over ground.
    pub per_area: Option<AmountPerArea>,
    /// What it costs over a hectare.
    pub cost_per_hectare: Option<Money>,
    /// Where the rate comes from, in words.
    pub rate_from: String,
}

/// How content a product is with a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Content {
    /// Nothing is typed or published about it.
    Silent,
    /// Nothing it says is against it.
    Accepts,
    /// It has what it requires or prefers.
    Served,
    /// It would rather have something else.
    WouldRather,
    /// It advises against part of it.
    Objects,
    /// It lacks what it requires.
    Lacks,
    /// It forbids part of it.
    Forbids,
}

/// What one product has to say of a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Verdict {
    /// The product.
    pub product: Id,
    /// Its name.
    pub name: String,
    /// How content it is: the worst of what it says.
    pub content: Content,
    /// What it says, the worst first.
    pub clauses: Vec<Clause>,
    /// On what the first of it rests.
    pub basis: Basis,
}

/// One thing a product says of a set.
#[derive(Clone, Debug, PartialEq)]
pub struct Clause {
    /// How content that leaves it.
    pub content: Content,
    /// What it does.
    pub verb: Verb,
    /// With what: "crop oil concentrate"; empty where the verb says all.
    pub what: String,
    /// The sentence that goes with it; may be empty.
    pub says: String,
    /// On what it rests.
    pub basis: Basis,
}

/// What a product does with something of a set.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
pub enum Verb {
    /// It requires what the set has.
    Requires,
    /// It requires what the set lacks.
    Lacks,
    /// It wants what the set has.
    Wants,
    /// It wants what the set lacks.
    WouldRather,
    /// It forbids it.
    Forbids,
    /// It advises against it.
    AdvisesAgainst,
    /// It allows it.
    Allows,
    /// It has a surfactant of its own, of this charge.
    Brings,
    /// Nothing is typed or published about it.
    HasNoGuidance,
    /// It says nothing of what is in the set.
    SaysNothing,
    /// It asks for nothing that the set lacks.
    AsksForNothing,
}

impl Verb {
    /// In words, without the name of the product: "forbids crop oil concentrate".
    pub fn with(self, what: &str) -> String {
        match self {
            Self::Requires => t!("mix-clause-requires", what = what),
            Self::Lacks => t!("mix-clause-lacks", what = what),
            Self::Wants => t!("mix-clause-wants", what = what),
            Self::WouldRather => t!("mix-clause-would-rather", what = what),
            Self::Forbids => t!("mix-clause-forbids", what = what),
            Self::AdvisesAgainst => t!("mix-clause-advises-against", what = what),
            Self::Allows => t!("mix-clause-allows", what = what),
            Self::Brings => t!("mix-clause-brings", what = what),
            Self::HasNoGuidance => t!("mix-clause-no-guidance").to_owned(),
            Self::SaysNothing => t!("mix-clause-nothing-of-these").to_owned(),
            Self::AsksForNothing => t!("mix-clause-asks-for-nothing").to_owned(),
        }
    }
}

impl Verdict {
    /// What it says in short, without its name: "wants crop oil concentrate and ammonium sulfate".
    pub fn plain(&self) -> String {
        let mut said: Vec<(Verb, Vec<&str>)> = Vec::new();
        for clause in &self.clauses {
            match said.iter_mut().find(|(verb, _)| *verb == clause.verb) {
                // A lesser voice may wish for the same or something else: the weightier wish is enough.
                Some((_, whats)) if whats.iter().any(|what| clause.what.contains(what)) => {}
                Some((_, whats)) => whats.push(&clause.what),
                None => said.push((clause.verb, vec![&clause.what])),
            }
        }
        let said: Vec<String> = said.iter().map(|(verb, whats)| verb.with(&all_of(whats))).collect();
        said.join("; ")
    }

    /// With its name, and for each thing the sentence that goes with it and the basis.
    pub fn sentence(&self) -> String {
        let said: Vec<String> = self.clauses.iter().map(Clause::sentence).collect();
        format!("{} {}", self.name, said.join("; "))
    }
}

impl Clause {
    fn sentence(&self) -> String {
        let basis = match &self.basis {
            Basis::Arithmetic => String::new(),
            basis => format!(" ({basis})"),
        };
        let does = self.verb.with(&self.what);
        if self.says.is_empty() {
            format!("{does}{basis}")
        } else {
            format!("{does}: \u{201c}{}\u{201d}{basis}", self.says)
        }
    }
}

/// Two demands that no set can meet at once.
#[derive(Clone, Debug, PartialEq)]
pub struct Collision {
    /// The product that needs something.
    pub wants: Id,
    /// The product that forbids it; `None` where nothing of that kind can be had at all.
    pub forbids: Option<Id>,
    /// What collides, in a sentence.
    pub text: String,
    /// On what the demand rests, and on what the ban.
    pub bases: Vec<Basis>,
    /// What can be done.
    pub ways_out: Vec<String>,
    /// Whether both sides bind: labels or local advice, as typed.
    pub binds: bool,
    /// The classes of the demand.
    pub(crate) classes: Vec<AdjuvantClass>,
}
