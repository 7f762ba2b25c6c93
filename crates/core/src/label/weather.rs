//! Wind, air temperature and hours without rain that the labels name. A temperature is judged where that of the day is
//! typed; what only the day itself can tell stands in one Note with the tightest of each.

use super::{Here, Spoken, forbid};
use crate::farm::label::Says;
use crate::finding::{Basis, Finding, Subject};
use crate::quantity::{AsTyped, Quantity, Speed, Temperature};

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

/// The tightest limit of a kind, with the statement it comes from.
type Tightest<'a, T> = Option<(T, Spoken<'a>)>;

/// What the labels ask of the weather on the day: the tightest of each, in one Note.
pub(crate) fn on_the_day(all: &[Here], findings: &mut Vec<Finding>) {
    let Some(here) = all.first() else { return };
    let (units, air_known) = (here.farm.units, here.pass.growing.air.is_some());
    let (mut most_wind, mut least_wind): (Tightest<Speed>, Tightest<Speed>) = (None, None);
    let (mut coolest, mut warmest): (Tightest<Temperature>, Tightest<Temperature>) = (None, None);
    let mut rain_free: Tightest<u32> = None;
    for spoken in all.iter().flat_map(Here::spoken) {
        match &spoken.statement.says {
            Says::Wind { most, least, .. } => {
                tighter(&mut most_wind, most.value(), &spoken, |new, old| new < old);
                if let Some(least) = least {
                    tighter(&mut least_wind, least.value(), &spoken, |new, old| new > old);
                }
            }
            Says::Temperature { least, most } if !air_known => {
                if let Some(most) = most {
                    tighter(&mut coolest, most.value(), &spoken, |new, old| new < old);
                }
                if let Some(least) = least {
                    tighter(&mut warmest, least.value(), &spoken, |new, old| new > old);
                }
            }
            Says::RainFree { hours } => tighter(&mut rain_free, *hours, &spoken, |new, old| new > old),
            _ => {}
        }
    }
    let mut said = Vec::new();
    let mut places: Vec<String> = Vec::new();
    let mut say = |words: String, spoken: &Spoken| {
        said.push(if spoken.doubt.is_empty() { words } else { format!("{words} {}", spoken.doubt) });
        if !places.contains(&spoken.at()) {
            places.push(spoken.at());
        }
    };
    if let Some((wind, spoken)) = &most_wind {
        say(format!("wind at most {}", wind.show(units)), spoken);
    }
    if let Some((wind, spoken)) = &least_wind {
        say(format!("wind at least {}", wind.show(units)), spoken);
    }
    if let Some((air, spoken)) = &coolest {
        say(format!("air at most {}", air.show(units)), spoken);
    }
    if let Some((air, spoken)) = &warmest {
        say(format!("air at least {}", air.show(units)), spoken);
    }
    if let Some((hours, spoken)) = rain_free.as_ref().filter(|(hours, _)| *hours > 0) {
        say(format!("no rain for {hours} h after it"), spoken);
    }
    if let (Some((most, other)), Some((least, spoken))) = (&most_wind, &least_wind)
        && least > most
    {
        findings.push(
            forbid(
                if spoken.doubt.is_empty() { &other.doubt } else { &spoken.doubt },
                Subject::Pass(here.pass_id.clone()),
                format!(
                    "No wind suits this mix: one label asks for at least {}, another for at most {}",
                    least.show(units),
                    most.show(units)
                ),
                spoken.basis(),
            )
            .hint("Split the pass."),
        );
    }
    if !said.is_empty() {
        findings.push(
            Finding::note(
                Subject::Pass(here.pass_id.clone()),
                format!("The labels ask on the day: {}", said.join(", ")),
                Basis::Label(places.join("; ")),
            )
            .hint("Measure at the boom before starting."),
        );
    }
}

fn tighter<'a, T: Copy>(best: &mut Tightest<'a, T>, value: T, spoken: &Spoken<'a>, is_tighter: impl Fn(T, T) -> bool) {
    if best.as_ref().is_none_or(|(old, _)| is_tighter(value, *old)) {
        *best = Some((value, spoken.clone()));
    }
}
