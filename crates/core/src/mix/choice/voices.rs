//! What each product of the mix says of each adjuvant class, and who speaks for it: its label, local advice, a publication or
//! common practice, in this order.

use super::Role;
use crate::farm::label::{Says, Stance, When};
use crate::farm::{AdjuvantClass, Advice, CarrierKind, Farm, Field, Id, Pass, Product, Statement, Surfactant};
use crate::finding::Basis;
use crate::label::names::{advises, list};
use crate::label::when::{Situation, doubts, holds};
use crate::label::{Speaks, crop_doubt, place, speaks, unclear};
use crate::language::{self, t};
use crate::mix::guidance;
use crate::quantity::{AsTyped, CarrierRate, Rate};
use crate::words::all_of;

/// Who speaks, the weightiest first.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Authority {
    /// The label, as typed.
    Label,
    /// Local advice, as typed.
    Local,
    /// A publication.
    Published,
    /// Common practice.
    Practice,
}

impl Authority {
    /// All of them, the weightiest first.
    pub const ALL: [Self; 4] = [Self::Label, Self::Local, Self::Published, Self::Practice];

    /// Whether what it says was typed by the user for this farm, and so binds.
    pub const fn binds(self) -> bool {
        matches!(self, Self::Label | Self::Local)
    }
}

/// One thing that is said for a product about an adjuvant class.
#[derive(Clone, Debug, PartialEq)]
pub struct Claim {
    /// The class.
    pub class: AdjuvantClass,
    /// How it stands to it.
    pub stance: Stance,
    /// Who says so.
    pub authority: Authority,
    /// How particular it is: more for an active in a formulation, a crop, a stage, a condition.
    pub(crate) particular: u32,
    /// At least.
    pub least: Option<AsTyped<Rate>>,
    /// At most.
    pub most: Option<AsTyped<Rate>>,
    /// Floor over ground.
    pub at_least: Option<AsTyped<Rate>>,
    /// Ceiling over ground.
    pub at_most: Option<AsTyped<Rate>>,
    /// A sentence that says it; may be empty.
    pub says: String,
    /// What cannot be told about its stages and conditions, in words; empty where it surely speaks.
    pub(crate) doubt: String,
    /// On what it rests.
    pub basis: Basis,
}

/// One product on one kind of field: what counts for it, and what was said otherwise.
#[derive(Clone, Debug, PartialEq)]
pub struct Voice {
    /// The product.
    pub product: Id,
    /// Its name.
    pub name: String,
    /// The crop of the field.
    pub crop: String,
    /// The surfactant in its formulation.
    pub surfactant: Option<Surfactant>,
    /// What counts: one claim for a class at most.
    pub claims: Vec<Claim>,
    /// What was said as well, by a lesser authority or less particularly.
    pub others: Vec<Claim>,
    /// Classes of which one must be there, by role, and who says so.
    pub(crate) required: Vec<Group>,
    /// Classes of which one is wanted, by role and authority.
    pub(crate) preferred: Vec<Group>,
}

/// Classes of one role, any of which will do.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Group {
    pub(crate) role: Role,
    pub(crate) authority: Authority,
    pub(crate) classes: Vec<AdjuvantClass>,
    /// What was said for each of the classes.
    claims: Vec<Claim>,
}

impl Group {
    /// What was said for a class of it, else for its first.
    pub(crate) fn claim(&self, class: Option<AdjuvantClass>) -> Option<&Claim> {
        self.claims.iter().find(|claim| Some(claim.class) == class).or(self.claims.first())
    }

    /// The class of it that a set holds.
    pub(crate) fn met_by(&self, set: &[AdjuvantClass]) -> Option<AdjuvantClass> {
        self.classes.iter().copied().find(|class| set.contains(class))
    }
}

impl Voice {
    /// The lesser authorities that are against a class of which a weightier one has a good word.
    pub(crate) fn overruled(&self, class: AdjuvantClass) -> Vec<Authority> {
        let Some(counted) = self.on(class).filter(|claim| is_good(claim.stance)) else { return Vec::new() };
        let mut lesser: Vec<Authority> = self
            .others
            .iter()
            .filter(|other| other.class == class && !is_good(other.stance) && other.authority > counted.authority)
            .map(|other| other.authority)
            .collect();
        lesser.dedup();
        lesser
    }

    /// What counts for it about a class.
    pub fn on(&self, class: AdjuvantClass) -> Option<&Claim> {
        self.claims.iter().find(|claim| claim.class == class)
    }
}

/// What a voice needs to know of the pass.
pub(crate) struct Ground<'a> {
    pub(crate) farm: &'a Farm,
    pub(crate) pass: &'a Pass,
    pub(crate) fields: &'a [&'a Field],
    pub(crate) carrier: CarrierRate,
    /// Every product of the mix.
    pub(crate) products: &'a [(&'a Id, &'a Product)],
}

/// The voices of a mix: one for each pesticide and each kind of field that it hears differently on.
pub(crate) fn voices(ground: &Ground<'_>) -> Vec<Voice> {
    let mut voices: Vec<Voice> = Vec::new();
    for (id, product) in ground.products.iter().filter(|(_, product)| product.adjuvant_class().is_none()) {
        for field in ground.fields {
            let claims = claims(ground, product, field);
            let voice = weigh(id, product, field, claims);
            if !voices.iter().any(|other| {
                other.product == voice.product && other.claims == voice.claims && other.others == voice.others
            }) {
                voices.push(voice);
            }
        }
    }
    without_ammonium(&mut voices);
    if ground.pass.carrier_kind == CarrierKind::UreaAmmoniumNitrate {
        // The carrier serves whoever would take it as an additive.
        for voice in &mut voices {
            voice.required.retain(|group| !group.classes.contains(&AdjuvantClass::UreaAmmoniumNitrate));
            voice.preferred.retain(|group| !group.classes.contains(&AdjuvantClass::UreaAmmoniumNitrate));
        }
    }
    voices
}

/// Where one product forbids ammonium and another wants it for the water's sake, a conditioner without ammonium will do.
fn without_ammonium(voices: &mut [Voice]) {
    let ammonium = AdjuvantClass::AmmoniumSulfate;
    let forbidden =
        voices.iter().any(|voice| voice.on(ammonium).is_some_and(|claim| claim.stance == Stance::Forbidden));
    if !forbidden {
        return;
    }
    let class = AdjuvantClass::ConditionerWithoutAmmonium;
    for voice in voices {
        let wants =
            voice.on(ammonium).is_some_and(|claim| matches!(claim.stance, Stance::Required | Stance::Preferred));
        if wants && voice.on(class).is_none() {
            let claim = Claim {
                class,
                stance: Stance::Preferred,
                authority: Authority::Practice,
                particular: 0,
                least: None,
                most: None,
                at_least: None,
                at_most: None,
                says: t!("mix-where-a-partner-forbids-ammonium-a").to_owned(),
                doubt: String::new(),
                basis: Basis::Practice,
            };
            add(&mut voice.preferred, &claim);
            voice.claims.push(claim);
        }
    }
}

/// Everything that is said for a product on a field.
fn claims(ground: &Ground<'_>, product: &Product, field: &Field) -> Vec<Claim> {
    // The adjuvants are what is asked for, so no condition may hang on those that stand in the mix by chance.
    let partners = ground
        .products
        .iter()
        .map(|(_, partner)| *partner)
        .filter(|partner| partner.adjuvant_class().is_none() && !std::ptr::eq(*partner, product))
        .collect();
    let situation =
        Situation { farm: ground.farm, pass: ground.pass, product, partners, carrier: Some(ground.carrier) };
    let mut claims = Vec::new();
    for statement in &product.label {
        let basis = || Basis::Label(place(product, statement));
        claims.extend(claim(statement, field, &situation, Authority::Label, 4, "", basis));
        claims.extend(bans(statement, field, &situation, Authority::Label, basis));
    }
    let heard = |advice: &Advice| advice.water.is_empty() || advice.water == ground.pass.water;
    for advice in ground.farm.advice.values().filter(|advice| heard(advice) && advises(advice, product)) {
        let basis = || Basis::Local(advice.source());
        claims.extend(claim(&advice.says, field, &situation, Authority::Local, 4, "", basis));
        claims.extend(bans(&advice.says, field, &situation, Authority::Local, basis));
    }
    for (guidance, particular) in guidance::on(product) {
        let authority = if guidance.basis == Basis::Practice { Authority::Practice } else { Authority::Published };
        for statement in &guidance.statements {
            let basis = || guidance.basis.clone();
            // What is published of conditioners and nitrogen as additives is said of water, unless it names the carrier.
            let of_water = ground.pass.carrier_kind != CarrierKind::Water
                && !statement.when.iter().any(|when| matches!(when, When::Carrier(_)))
                && matches!(&statement.says, Says::Adjuvant { class, .. } if Role::of(*class) == Role::WaterAndNitrogen);
            if of_water {
                continue;
            }
            claims.extend(claim(
                statement,
                field,
                &situation,
                authority,
                particular,
                language::row(&guidance.says),
                basis,
            ));
        }
    }
    claims
}

/// The adjuvant classes that a statement bars by naming what may not go into the mix.
fn bans(
    statement: &Statement,
    field: &Field,
    situation: &Situation,
    authority: Authority,
    basis: impl Fn() -> Basis,
) -> Vec<Claim> {
    let Says::NotWith { what, .. } = &statement.says else { return Vec::new() };
    let here = matches!(speaks(statement, field), Speaks::Yes | Speaks::Unclear);
    if !here || holds(&statement.when, situation) == Some(false) {
        return Vec::new();
    }
    let doubt = doubt(statement, field, situation);
    let barred = AdjuvantClass::ALL.into_iter().filter(|class| list(what, &of_class(*class)));
    barred
        .map(|class| Claim {
            class,
            stance: Stance::Forbidden,
            authority,
            particular: u32::MAX,
            least: None,
            most: None,
            at_least: None,
            at_most: None,
            says: String::new(),
            doubt: doubt.clone(),
            basis: basis(),
        })
        .collect()
}

/// What cannot be told about the crop, the stages and the conditions of a statement, in words.
fn doubt(statement: &Statement, field: &Field, situation: &Situation) -> String {
    all_of(unclear(statement, field).into_iter().chain(doubts(&statement.when, situation)))
}

/// A statement as a claim, where it speaks of adjuvants on this field in this situation. A condition that is not known lets
/// what a label or local advice objects to stand, and all else rest.
fn claim(
    statement: &Statement,
    field: &Field,
    situation: &Situation,
    authority: Authority,
    particular: u32,
    says: &str,
    basis: impl Fn() -> Basis,
) -> Option<Claim> {
    let Says::Adjuvant { class, stance, least, most, at_least, at_most } = &statement.says else { return None };
    let objects = matches!(stance, Stance::Discouraged | Stance::Forbidden);
    let here = match speaks(statement, field) {
        Speaks::Yes => true,
        // What is published for a crop rests where the crop is not typed.
        Speaks::Unclear if crop_doubt(statement, field).is_some() && !authority.binds() => false,
        Speaks::Unclear => objects || *stance == Stance::Required,
        Speaks::OtherCrop | Speaks::OtherStage => false,
    };
    if !here || !holds(&statement.when, situation).unwrap_or(objects && authority.binds()) {
        return None;
    }
    let set = |text: &str| u32::from(!text.trim().is_empty());
    let stages = set(&statement.from_stage).max(set(&statement.to_stage));
    let conditions = u32::try_from(statement.when.len()).unwrap_or(u32::MAX).min(9);
    Some(Claim {
        class: *class,
        stance: *stance,
        authority,
        particular: particular * 100 + set(&statement.crop) * 60 + stages * 30 + conditions * 20,
        least: least.clone(),
        most: most.clone(),
        at_least: at_least.clone(),
        at_most: at_most.clone(),
        says: says.to_owned(),
        doubt: doubt(statement, field, situation),
        basis: basis(),
    })
}

/// A bare product of a class, to ask whether words speak of it.
pub(crate) fn of_class(class: AdjuvantClass) -> Product {
    use crate::farm::{Formulation, ProductKind};
    let (kind, formulation) = match class {
        AdjuvantClass::AmmoniumSulfate => (ProductKind::Conditioner, Formulation::SG),
        class if class.is_oil() => (ProductKind::Adjuvant, Formulation::EC),
        _ => (ProductKind::Adjuvant, Formulation::SL),
    };
    let mut product = Product::new(class.name(), kind, formulation);
    product.class = Some(class);
    product
}

/// How strict a stance is: what forbids before what requires before what advises against.
const fn strictness(stance: Stance) -> u8 {
    match stance {
        Stance::Forbidden => 0,
        Stance::Required => 1,
        Stance::Discouraged => 2,
        Stance::Preferred => 3,
        Stance::Allowed => 4,
    }
}

/// Whether a stance has a good word for a class.
pub(crate) const fn is_good(stance: Stance) -> bool {
    matches!(stance, Stance::Required | Stance::Preferred | Stance::Allowed)
}

fn add(groups: &mut Vec<Group>, claim: &Claim) {
    let role = Role::of(claim.class);
    match groups.iter_mut().find(|group| group.role == role && group.authority == claim.authority) {
        Some(group) if group.classes.contains(&claim.class) => {}
        Some(group) => {
            group.classes.push(claim.class);
            group.claims.push(claim.clone());
        }
        None => groups.push(Group {
            role,
            authority: claim.authority,
            classes: vec![claim.class],
            claims: vec![claim.clone()],
        }),
    }
}

/// For each class the claim that counts: of the weightiest authority, the most particular, the strictest.
fn weigh(id: &Id, product: &Product, field: &Field, mut all: Vec<Claim>) -> Voice {
    all.sort_by(|a, b| {
        let key = |claim: &Claim| {
            (claim.class, claim.authority, std::cmp::Reverse(claim.particular), strictness(claim.stance))
        };
        key(a).cmp(&key(b)).then_with(|| a.basis.source().cmp(b.basis.source()))
    });
    let mut claims: Vec<Claim> = Vec::new();
    let mut others = Vec::new();
    for claim in all {
        match claims.iter().find(|counted| counted.class == claim.class) {
            Some(_) => others.push(claim),
            None => claims.push(claim),
        }
    }
    // Where a weightier voice has said what will do in a role, a lesser one can still wish, and no longer require.
    let spoken = |role: Role| {
        claims
            .iter()
            .filter(|claim| Role::of(claim.class) == role && is_good(claim.stance))
            .map(|claim| claim.authority)
            .min()
    };
    let weightiest: Vec<(Role, Option<Authority>)> = Role::ALL.into_iter().map(|role| (role, spoken(role))).collect();
    for claim in claims.iter_mut().filter(|claim| claim.stance == Stance::Required) {
        let role = Role::of(claim.class);
        let first = weightiest.iter().find(|(known, _)| *known == role).and_then(|(_, first)| *first);
        if first.is_some_and(|first| first < claim.authority) {
            claim.stance = Stance::Preferred;
        }
    }
    let mut required: Vec<Group> = Vec::new();
    let mut preferred: Vec<Group> = Vec::new();
    for claim in claims.iter().filter(|claim| claim.stance == Stance::Required) {
        add(&mut required, claim);
    }
    let refines = |other: &&Claim| {
        let counted = claims.iter().find(|claim| claim.class == other.class);
        counted.is_some_and(|claim| claim.authority < other.authority && is_good(claim.stance))
            && matches!(other.stance, Stance::Required | Stance::Preferred)
    };
    for claim in claims.iter().filter(|claim| claim.stance == Stance::Preferred).chain(others.iter().filter(refines)) {
        add(&mut preferred, claim);
    }
    // A lesser voice may narrow what a weightier one wants; where it wants something else, that will do as well.
    preferred.sort_by_key(|group| group.authority);
    let weightier: Vec<Group> = required.iter().chain(&preferred).cloned().collect();
    for group in &mut preferred {
        let above: Vec<AdjuvantClass> = weightier
            .iter()
            .filter(|other| other.role == group.role && other.authority < group.authority)
            .flat_map(|other| other.classes.clone())
            .collect();
        if !above.iter().any(|class| group.classes.contains(class)) {
            group.classes.extend(above);
        }
    }
    Voice {
        product: id.clone(),
        name: product.name.clone(),
        crop: field.crop.trim().to_owned(),
        surfactant: product.surfactant.filter(|_| product.kind.is_pesticide()),
        claims,
        others,
        required,
        preferred,
    }
}
