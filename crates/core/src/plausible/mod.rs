//! Wrong numbers: what hands get wrong when they type, each with the value that was probably meant.
//!
//! One file a thing that is checked. Each holds what is typed against something else that is known (a label's range, a boundary,
//! the other figures of an analysis, a published range) and is silent where there is nothing to hold it against. Where the figure does
//! not fit and one of the rows of `assets/confusions.csv` would make it fit, it gives a Check that offers that value. Where no row
//! would, it is silent too: that a limit is broken is said by the limit. Nothing is ever changed by itself; an [`Offer`] that is
//! taken is an edit.
//!
//! `text` takes a typed text apart, `confusions` makes of it what may have been meant, `ranges` and `salts` are tables.

mod area;
mod carrier;
pub mod confusions;
mod content;
mod dates;
mod named;
mod offer;
mod place;
pub mod ranges;
mod rate;
mod recorded;
mod rig;
pub mod salts;
mod text;
mod water;
mod weather;
mod zone;

pub use offer::{Measured, Offer, Set, Slot};
pub(crate) use place::for_zone;
pub(crate) use zone::suggested as suggested_zones;
pub use zone::zones;

use jiff::civil::Date;

use crate::farm::{Farm, Id, Pass, Record};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::plan::PlannedField;
use crate::quantity::{AsTyped, CarrierRate, Quantity, Units};
use crate::rig::setting::Setting;
use crate::season::Log;
use confusions::{Kind, meant};
use ranges::Ends;

/// What to do with every such finding.
fn hint() -> &'static str {
    t!("plausible-if-the-figure-is-right")
}

/// A value as it is typed, with where it stands and what it is called.
struct Held<'a, Q> {
    kind: Kind,
    typed: &'a AsTyped<Q>,
    slot: Slot,
    about: Subject,
    /// "The tank of Big boom".
    what: String,
    units: Units,
}

impl<Q: Quantity> Held<'_, Q> {
    /// What it may have been meant as, as far as that is likely.
    fn offers(&self, is_likely: impl Fn(&Q) -> bool) -> Vec<Offer> {
        meant::<Q>(self.kind, self.typed.text(), self.units)
            .into_iter()
            .filter(|meant| is_likely(&meant.value))
            .map(|meant| Offer::of(self.slot.clone(), meant.text.clone(), meant.why()))
            .collect()
    }

    /// A Check with what is offered; `None` where nothing is.
    fn doubted(&self, why: &str, would: &str, basis: Basis, offers: Vec<Offer>) -> Option<Finding> {
        doubted(
            self.about.clone(),
            &t!("plausible-what-is-typed-as-typed-why", what = self.what, typed = self.typed.text(), why = why),
            would,
            basis,
            offers,
        )
    }
}

impl<Q: Quantity + PartialOrd> Held<'_, Q> {
    /// Against a range outside of which nothing of the kind lies.
    fn against(&self, ends: Option<&Ends<Q>>) -> Option<Finding> {
        let ends = ends?;
        let value = self.typed.value();
        let why = if value > ends.most {
            t!("plausible-hardly-any-is-more-than", most = ends.most.show(self.units))
        } else if value < ends.least {
            t!("plausible-hardly-any-is-less-than", least = ends.least.show(self.units))
        } else {
            return None;
        };
        self.doubted(&why, t!("plausible-be-usual"), ends.basis.clone(), self.offers(|meant| ends.is_likely(meant)))
    }
}

/// A Check on a figure, with what is offered for it; `None` where nothing is.
fn doubted(about: Subject, text: &str, would: &str, basis: Basis, offers: Vec<Offer>) -> Option<Finding> {
    if offers.is_empty() {
        return None;
    }
    let all: Vec<String> = offers.iter().map(Offer::text).collect();
    Some(
        Finding::check(about, t!("plausible-would", text = text, all = either(&all), would = would), basis)
            .hint(hint())
            .offering(offers),
    )
}

/// "22 fl oz/ac", "22 fl oz/ac or 2.2 pt/ac".
pub fn either(all: &[String]) -> String {
    match all {
        [] => String::new(),
        [one] => one.clone(),
        [first @ .., last] => t!("plausible-or", first = first.join(", "), last = last),
    }
}

/// What there is to doubt of a pass and of what it takes: its rates and its setting, its products, its water, its rig, its fields.
pub(crate) fn judge(
    farm: &Farm,
    log: &Log,
    (pass_id, pass): (&Id, &Pass),
    fields: &[PlannedField],
    carrier: Option<CarrierRate>,
    setting: Option<&Setting>,
    findings: &mut Vec<Finding>,
) {
    findings.extend(carrier::judge(farm, pass_id, pass));
    if let Some(carrier) = carrier {
        rate::judge(farm, log, pass_id, pass, fields, carrier, findings);
    }
    rig::of_pass(farm, pass_id, pass, findings);
    findings.extend(setting.and_then(|setting| rig::of_setting(farm, pass_id, pass, setting)));
    area::of_pass(farm, pass_id, pass, findings);
    findings.extend(dates::of_pass(farm, pass_id, pass));
    findings.extend(weather::of_pass(farm, pass_id, pass));
    for line in &pass.mix {
        of_product(farm, &line.product, findings);
    }
    of_water(farm, &pass.water, findings);
    of_rig(farm, &pass.rig, findings);
    for id in &pass.fields {
        of_field(farm, id, findings);
    }
    findings.extend(place::judge(farm, pass.date, pass.fields.iter().filter_map(|id| farm.fields.get(id))));
}

/// What there is to doubt of a product: contents, density, its name.
pub fn of_product(farm: &Farm, id: &str, findings: &mut Vec<Finding>) {
    if let Some((id, product)) = farm.products.get_key_value(id) {
        content::judge(farm, id, product, findings);
        named::judge(id, product, findings);
    }
}

/// What there is to doubt of a water's analysis.
pub fn of_water(farm: &Farm, id: &str, findings: &mut Vec<Finding>) {
    if let Some((id, water)) = farm.waters.get_key_value(id) {
        water::judge(farm, id, water, findings);
    }
}

/// What there is to doubt of a rig: tank, boom, usual setting, nozzle sets.
pub fn of_rig(farm: &Farm, id: &str, findings: &mut Vec<Finding>) {
    if let Some((id, rig)) = farm.rigs.get_key_value(id) {
        rig::judge(farm, id, rig, findings);
    }
}

/// What there is to doubt of a field: its areas and its days.
pub fn of_field(farm: &Farm, id: &str, findings: &mut Vec<Finding>) {
    if let Some((id, field)) = farm.fields.get_key_value(id) {
        area::judge(farm, id, field, findings);
        findings.extend(dates::of_field(id, field));
    }
}

/// What there is to doubt of where the farm lies, its time zone on a day included.
pub fn of_place(farm: &Farm, today: Date, findings: &mut Vec<Finding>) {
    findings.extend(place::against_zone(farm, today));
    findings.extend(place::judge(farm, today, farm.fields.values()));
}

/// What there is to doubt of a record on a day: its date, what was used, and what was measured.
pub fn of_record(farm: &Farm, id: &Id, record: &Record, today: Date, findings: &mut Vec<Finding>) {
    findings.extend(dates::of_record(farm, id, record, today));
    recorded::judge(farm, id, record, findings);
    weather::of_record(farm, id, record, findings);
}

/// All that there is to doubt on a farm beside its passes, each with what it speaks of.
pub fn of_farm(farm: &Farm, today: Date) -> Vec<Finding> {
    let mut findings = Vec::new();
    for id in farm.products.keys() {
        of_product(farm, id, &mut findings);
    }
    for id in farm.waters.keys() {
        of_water(farm, id, &mut findings);
    }
    for id in farm.rigs.keys() {
        of_rig(farm, id, &mut findings);
    }
    for id in farm.fields.keys() {
        of_field(farm, id, &mut findings);
    }
    of_place(farm, today, &mut findings);
    findings
}
