//! What labels and laws ask of the weather. A temperature is judged where that of the day is typed; the rest is held against the
//! forecast, hour by hour, and stands in one Note with the tightest of each where there is none for the day. A statement that speaks
//! in warm or cold air alone goes by the air of the hour, not by that of the day.

use super::when::{self, Situation};
use super::{Here, Speaker, Spoken, forbid, laws, who};
use crate::farm::label::{Says, When};
use crate::farm::{Farm, Field, Id, Pass, Product, Statement};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::{AsTyped, Quantity};
use crate::weather::Limit;
use crate::weather::limits::{self, Kind};

/// Judges the temperature of a product on a field.
pub(crate) fn temperature(here: &Here, findings: &mut Vec<Finding>) {
    let Some(air) = here.pass.growing.air.as_ref().map(AsTyped::value) else { return };
    let units = here.farm.units;
    for spoken in here.asked(|says| matches!(says, Says::Temperature { .. })) {
        let Says::Temperature { least, most } = &spoken.statement.says else { continue };
        let (speaker, expected) = (spoken.speaker.name(), air.show(units));
        let mut broken = |text: String, hint: &str| {
            findings.push(spoken.forbid(spoken.about(here), text).hint(hint));
        };
        if let Some(most) = most
            && air > most.value()
        {
            let limit = most.show(units);
            let text = t!("label-asks-for-cooler-air", speaker = speaker, limit = limit, air = expected);
            broken(text, t!("label-spray-on-a-cooler-day-or"));
        }
        if let Some(least) = least
            && air < least.value()
        {
            let limit = least.show(units);
            let text = t!("label-asks-for-warmer-air", speaker = speaker, limit = limit, air = expected);
            broken(text, t!("label-spray-on-a-warmer-day-or"));
        }
    }
}

/// A statement on the weather that speaks of a pass, or may.
#[derive(Clone, Debug)]
pub(crate) struct Asked<'a> {
    pub(crate) says: &'a Says,
    /// The air in which alone it speaks.
    pub(crate) air: Vec<When>,
    /// What cannot be told about its crop, its stages and its other conditions, in words; empty where it surely speaks.
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
    let mut all: Vec<Asked<'a>> = Vec::new();
    for (id, product) in mix {
        let situation = Situation::new(farm, pass, id, product);
        for (speaker, statement) in laws::binding(farm, product, pass.date, wanted) {
            speak(speaker, statement, fields, &situation, &mut all);
        }
    }
    all.sort_by_key(|asked| matches!(asked.basis, Basis::Law(_)));
    all
}

/// Adds a statement once where it surely speaks on a field, and once for each doubt.
fn speak<'a>(
    speaker: Speaker<'a>,
    statement: &'a Statement,
    fields: &[&Field],
    situation: &Situation,
    all: &mut Vec<Asked<'a>>,
) {
    for field in fields {
        let Some(spoken) = Spoken::but_for(speaker, statement, field, situation, when::is_on_air) else { continue };
        if !all.iter().any(|other| std::ptr::eq(other.says, &raw const statement.says) && other.doubt == spoken.doubt) {
            let air = statement.when.iter().filter(|when| when::is_on_air(when)).cloned().collect();
            all.push(Asked { says: &statement.says, air, basis: spoken.basis(), doubt: spoken.doubt });
        }
    }
}

/// Whether a statement is one that the hours of a day are held against.
pub(crate) const fn on_weather(says: &Says) -> bool {
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
    let open = Limit::doubts;
    let pairs = limits.iter().flat_map(|least| limits.iter().map(move |most| (least, most)));
    let clash = pairs.filter_map(|(least, most)| match (&least.kind, &most.kind) {
        (Kind::LeastWind(low), Kind::MostWind(high)) if low.exceeds(*high) => Some((least, most, low, high)),
        _ => None,
    });
    if let Some((least, most, low, high)) =
        clash.min_by_key(|(least, most, ..)| !(open(least).is_empty() && open(most).is_empty()))
    {
        let doubtful = if open(least).is_empty() { most } else { least };
        let whose = |limit: &Limit| if matches!(limit.basis, Basis::Law(_)) { "law" } else { "label" };
        let text = t!(
            "label-no-wind-suits-this-mix-asks",
            least = whose(least),
            low = low.show(farm.units),
            most = whose(most),
            high = high.show(farm.units)
        );
        let basis = Basis::of_all(&[least.basis.clone(), most.basis.clone()]);
        let found = forbid(&open(doubtful), about(), text, doubtful.basis.clone());
        findings.push(Finding { basis, ..found }.hint(t!("label-split-the-pass")));
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
        let places: Vec<Basis> = said.iter().map(|limit| limit.basis.clone()).collect();
        let words: Vec<String> = said.iter().map(|limit| limit.text()).collect();
        findings.push(
            Finding::note(
                about(),
                t!("label-ask-on-the-day", who = who(&places), words = words.join(", ")),
                Basis::of_all(&places),
            )
            .hint(t!("label-measure-at-the-boom-before-starting")),
        );
    }
}
