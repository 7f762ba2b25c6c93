//! Where the farm lies: latitude and longitude in each other's box, or with the wrong sign, against the time zone and the boundaries.

use jiff::civil::Date;

use super::{Offer, Set, Slot, either, hint};
use crate::farm::{Farm, Field, Place, Position};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;
use crate::quantity::number::show;
use crate::weather::sun;

/// Farther from its fields than so many degrees no farm lies. Common practice, no source.
const FAR: f64 = 5.0;
/// A place that may have been meant lies no farther from them than so many degrees.
const NEAR: f64 = 1.0;

/// The place, against the first boundary that is drawn. That the time zone speaks against it is said with the hours of a pass.
pub(super) fn judge<'a>(farm: &Farm, day: Date, fields: impl Iterator<Item = &'a Field>) -> Option<Finding> {
    let place = farm.place.as_ref()?;
    if place.latitude.trim().is_empty() || place.longitude.trim().is_empty() {
        return None;
    }
    let Ok(position) = place.position() else {
        let offers: Vec<Offer> = turned(place)
            .into_iter()
            .filter(|(_, place)| place.position().is_ok())
            .map(|(offer, _)| offer)
            .take(1)
            .collect();
        let texts: Vec<String> = offers.iter().map(Offer::text).collect();
        let text = t!(
            "plausible-is-no-latitude-and-may-be",
            latitude = place.latitude.trim(),
            longitude = place.longitude.trim(),
            texts = either(&texts)
        );
        let found = Finding::check(Subject::Farm, text, Basis::Arithmetic).hint(hint());
        return (!offers.is_empty()).then(|| found.offering(offers));
    };
    if sun::misfit(place, day).is_some() {
        return None;
    }
    let mut fields = fields;
    let (name, centre) = fields.find_map(|field| Some((&field.name, field.boundary.as_ref()?.bounds().center())))?;
    let off = |position: &Position| {
        let east = (position.longitude.to_degrees() - centre.x + 540.0).rem_euclid(360.0) - 180.0;
        (position.latitude.to_degrees() - centre.y).abs().max(east.abs())
    };
    if off(&position) <= FAR {
        return None;
    }
    let is_near = |place: &Place| place.position().is_ok_and(|position| off(&position) <= NEAR);
    let offers: Vec<Offer> =
        turned(place).into_iter().filter(|(_, place)| is_near(place)).map(|(offer, _)| offer).take(1).collect();
    let texts: Vec<String> = offers.iter().map(Offer::text).collect();
    let text = t!(
        "plausible-the-farm-is-typed-to-lie",
        latitude = place.latitude.trim(),
        longitude = place.longitude.trim(),
        name = name,
        show = show(off(&position), 0),
        texts = either(&texts)
    );
    let found = Finding::check(Subject::Farm, text, Basis::Arithmetic).hint(hint());
    (!offers.is_empty()).then(|| found.offering(offers))
}

/// A place that does not go with its time zone, where another is offered.
pub(super) fn against_zone(farm: &Farm, day: Date) -> Option<Finding> {
    let place = farm.place.as_ref()?;
    let misfit = sun::misfit(place, day)?;
    let offers = for_zone(place, day);
    let found = Finding::check(Subject::Farm, misfit.text, Basis::Arithmetic).hint(misfit.hint);
    (!offers.is_empty()).then(|| found.offering(offers))
}

/// What to offer for a place that does not go with its time zone.
pub(crate) fn for_zone(place: &Place, day: Date) -> Vec<Offer> {
    let fits = |place: &Place| place.position().is_ok() && sun::misfit(place, day).is_none();
    turned(place).into_iter().filter(|(_, place)| fits(place)).map(|(offer, _)| offer).take(1).collect()
}

/// The place with another sign, and with its figures in each other's box.
fn turned(place: &Place) -> Vec<(Offer, Place)> {
    let (north, east) = (place.latitude.trim(), place.longitude.trim());
    let mut all = Vec::new();
    let mut add = |latitude: &str, longitude: &str, why: &str| {
        let mut sets = Vec::new();
        for (slot, was, text) in [(Slot::Latitude, north, latitude), (Slot::Longitude, east, longitude)] {
            if was != text {
                sets.push(Set { slot, text: text.to_owned() });
            }
        }
        let place = Place { latitude: latitude.to_owned(), longitude: longitude.to_owned(), ..place.clone() };
        all.push((Offer { sets, why: why.to_owned() }, place));
    };
    let (south, west) = (flipped(north, 'N', 'S'), flipped(east, 'E', 'W'));
    add(north, &west, t!("plausible-east-for-west"));
    add(&south, east, t!("plausible-north-for-south"));
    add(&south, &west, t!("plausible-both-signs"));
    add(east, north, t!("plausible-each-in-the-others-box"));
    add(east, &flipped(north, 'E', 'W'), t!("plausible-each-in-the-others-box-and"));
    add(&flipped(east, 'N', 'S'), north, t!("plausible-each-in-the-others-box-and-north-for-south"));
    all
}

/// Degrees with the other sign, or the other letter.
fn flipped(text: &str, plus: char, minus: char) -> String {
    match text.chars().last().map(|letter| letter.to_ascii_uppercase()) {
        Some(letter) if letter == plus => format!("{} {minus}", text.trim_end_matches(char::is_alphabetic).trim_end()),
        Some(letter) if letter == minus => format!("{} {plus}", text.trim_end_matches(char::is_alphabetic).trim_end()),
        _ => {
            text.strip_prefix(['-', '\u{2212}']).map_or_else(|| format!("-{text}"), |bare| bare.trim_start().to_owned())
        }
    }
}
