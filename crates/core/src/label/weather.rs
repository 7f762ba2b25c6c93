//! What labels and laws ask of the weather. A temperature is judged where that of the day is typed; the rest is held against the
//! forecast, hour by hour, and stands in one Note with the tightest of each where there is none for the day.

use super::when::Situation;
use super::{Here, Spoken, forbid, names, once};
use crate::farm::label::Says;
use crate::farm::{Farm, Field, Id, Pass, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::quantity::{AsTyped, Quantity, Temperature};
use crate::weather::Limit;
use crate::weather::limits::{self, Kind};

/// Judges the temperature of a product on a field.
pub(crate) fn temperature(here: &Here, findings: &mut Vec<Finding>) {
    let Some(air) = here.pass.growing.air.as_ref().map(AsTyped::value) else { return };
    let units = here.farm.units;
    for spoken in here.spoken() {
        let Says::Temperature { least, most } = &spoken.statement.says else { continue };
        let mut broken = |word: &str, limit: &AsTyped<Temperature>, hint: &str| {
            let text = format!(
                "{} asks for air of {word} {}; {} is expected at the warmest",
                here.product.name,
                limit.show(units),
                air.show(units)
            );
            findings.push(spoken.forbid(here.about_product(), text).hint(hint));
        };
        if let Some(most) = most
            && air > most.value()
        {
            broken("at most", most, "Spray on a cooler day, or choose another product.");
        }
        if let Some(least) = least
            && air < least.value()
        {
            broken("at least", least, "Spray on a warmer day, or choose another product.");
        }
    }
}

/// A statement on the weather that speaks of a pass, or may.
#[derive(Clone, Debug)]
pub(crate) struct Asked<'a> {
    pub(crate) says: &'a Says,
    /// What cannot be told about its stages and conditions, in words; empty where it surely speaks.
    pub(crate) doubt: String,
    pub(crate) basis: Basis,
}

/// What the labels of a mix and the laws of its day say on the weather for some fields, the labels first.
pub(crate) fn asked<'a>(farm: &'a Farm, pass: &Pass, fields: &[&Field]) -> Vec<Asked<'a>> {
    spoken(farm, pass, fields, on_weather)
}

/// What they say on droplets.
pub(crate) fn asked_droplets<'a>(farm: &'a Farm, pass: &Pass, fields: &[&Field]) -> Vec<Asked<'a>> {
    spoken(farm, pass, fields, |says| matches!(says, Says::Droplets { .. }))
}

fn spoken<'a>(farm: &'a Farm, pass: &Pass, fields: &[&Field], wanted: fn(&Says) -> bool) -> Vec<Asked<'a>> {
    let mut mix: Vec<(&'a Id, &'a Product)> =
        pass.mix.iter().filter_map(|line| farm.products.get_key_value(&line.product)).collect();
    mix.dedup_by_key(|(id, _)| *id);
    let laws: Vec<_> = farm
        .laws
        .values()
        .filter(|law| wanted(&law.says.says) && law.holds_on(pass.date))
        .map(|law| {
            let since = law.since.map_or_else(String::new, |day| format!(", since {day}"));
            (law, Basis::Law(format!("{}{since}", law.source())))
        })
        .collect();
    let mut all: Vec<Asked<'a>> = Vec::new();
    let mut of_laws: Vec<Asked<'a>> = Vec::new();
    for (id, product) in mix {
        let situation = Situation::new(farm, pass, id, product);
        for statement in product.label.iter().filter(|statement| wanted(&statement.says)) {
            speak(product, statement, fields, &situation, None, &mut all);
        }
        for (law, basis) in &laws {
            if names::binds(law, product) {
                speak(product, &law.says, fields, &situation, Some(basis), &mut of_laws);
            }
        }
    }
    all.extend(of_laws);
    all
}

/// Adds a statement once where it surely speaks on a field, and once for each doubt.
fn speak<'a>(
    product: &'a Product,
    statement: &'a Statement,
    fields: &[&Field],
    situation: &Situation,
    law: Option<&Basis>,
    all: &mut Vec<Asked<'a>>,
) {
    for field in fields {
        let Some(spoken) = Spoken::of(product, statement, field, situation) else { continue };
        if !all.iter().any(|other| std::ptr::eq(other.says, &raw const statement.says) && other.doubt == spoken.doubt) {
            let basis = law.cloned().unwrap_or_else(|| spoken.basis());
            all.push(Asked { says: &statement.says, doubt: spoken.doubt, basis });
        }
    }
}

/// Whether a statement is one that the hours of a day are held against; of law no other is.
pub const fn on_weather(says: &Says) -> bool {
    matches!(
        says,
        Says::Wind { .. }
            | Says::NotToward { .. }
            | Says::NoInversion
            | Says::Humidity { .. }
            | Says::DeltaT { .. }
            | Says::Daylight { .. }
            | Says::Temperature { .. }
            | Says::RainFree { .. }
            | Says::Buffer { .. }
    )
}

/// What the labels ask of the weather on the day: the tightest of each, in one Note, where the forecast does not tell of the day.
pub(crate) fn on_the_day(all: &[Here], findings: &mut Vec<Finding>) {
    let Some(here) = all.first() else { return };
    let (farm, pass) = (here.farm, here.pass);
    let fields: Vec<&Field> = pass.fields.iter().filter_map(|id| farm.fields.get(id)).collect();
    let limits = limits::asked(farm, pass, &fields);
    let about = || Subject::Pass(here.pass_id.clone());
    // Limits that surely hold stand first.
    let pairs = limits.iter().flat_map(|least| limits.iter().map(move |most| (least, most)));
    let clash = pairs.filter_map(|(least, most)| match (&least.kind, &most.kind) {
        (Kind::LeastWind(low), Kind::MostWind(high)) if low.exceeds(*high) => Some((least, most, low, high)),
        _ => None,
    });
    if let Some((least, most, low, high)) =
        clash.min_by_key(|(least, most, ..)| !(least.doubt.is_empty() && most.doubt.is_empty()))
    {
        findings.push(
            forbid(
                if least.doubt.is_empty() { &most.doubt } else { &least.doubt },
                about(),
                format!(
                    "No wind suits this mix: one label asks for at least {}, another for at most {}",
                    low.show(farm.units),
                    high.show(farm.units)
                ),
                least.basis.clone(),
            )
            .hint("Split the pass."),
        );
    }
    if crate::weather::covers(farm, pass.date) {
        return;
    }
    let air_known = pass.growing.air.is_some();
    let said: Vec<&Limit> = limits
        .iter()
        .filter(|limit| limit.asks && !(air_known && matches!(limit.kind, Kind::LeastAir(_) | Kind::MostAir(_))))
        .collect();
    if !said.is_empty() {
        let places = once(said.iter().map(|limit| limit.basis.source()));
        let words: Vec<&str> = said.iter().map(|limit| limit.text.as_str()).collect();
        findings.push(
            Finding::note(
                about(),
                format!("The labels ask on the day: {}", words.join(", ")),
                Basis::Label(places.join("; ")),
            )
            .hint("Measure at the boom before starting."),
        );
    }
}
