//! What was changed in a record, in words for people.

use serde_json::Value;

use super::changes::{Misfit, parts, value_of};
use crate::farm::{Change, Record, Said};
use crate::language::{days, t};
use crate::season::seal;
use crate::words::capital;

/// A change in words: "Area of Mill field: 74.6 ac, now 70 ac". Names are those of the record as it stands after the change.
pub fn words(change: &Change, record: &Record) -> String {
    told(change, &seal::value(record).unwrap_or(Value::Null))
}

/// The same over the content of a record.
pub(super) fn told(change: &Change, content: &Value) -> String {
    let was = change.was.as_ref().and_then(value_of);
    let is = change.is.as_ref().and_then(value_of);
    let what = place(&change.what, content);
    let shown = |value: &Option<Value>| {
        value.as_ref().map_or_else(|| t!("season-it-is-nothing").to_owned(), |value| text_of(&change.what, value))
    };
    if is_part_of_a_list(&change.what) {
        match (&was, &is) {
            (None, Some(is)) => return t!("season-put-in", what = what, is = text(is)),
            (Some(was), None) => return t!("season-taken-out", what = what, was = text(was)),
            _ => {}
        }
    }
    t!("season-now", what = what, was = shown(&was), is = shown(&is))
}

/// What an amendment says and what stands there: "that Area of Mill field is 70 ac, and 71 ac stands there".
pub(in crate::season) fn misfit(misfit: &Misfit, content: &Value) -> String {
    let shown = |said: &Option<Said>| {
        let value = said.as_ref().and_then(value_of);
        value.map_or_else(|| t!("season-it-is-nothing").to_owned(), |value| text_of(&misfit.what, &value))
    };
    let what = place(&misfit.what, content);
    t!("season-that-is-and-stands-there", what = what, said = shown(&misfit.said), stands = shown(&misfit.stands))
}

/// Whether it is a whole field, product, weed or reading.
fn is_part_of_a_list(pointer: &str) -> bool {
    let parts = parts(pointer);
    let [.., list, _] = parts.as_slice() else { return false };
    matches!(list.as_str(), "fields" | "lines" | "weeds" | "readings" | "actives")
}

/// A place in words.
fn place(pointer: &str, content: &Value) -> String {
    let parts = parts(pointer);
    let parts: Vec<&str> = parts.iter().map(String::as_str).collect();
    let called = |pointer: &str| content.pointer(pointer).and_then(Value::as_str).map(str::to_owned);
    // The pointer without its last parts leads to the thing that has a name.
    let up = |levels: usize| pointer.rsplitn(levels + 1, '/').last().unwrap_or_default().to_owned();
    let number =
        |place: &str| place.parse::<usize>().map_or_else(|_| place.to_owned(), |place| (place + 1).to_string());
    match parts.as_slice() {
        ["fields", _] => t!("season-field").to_owned(),
        ["fields", id, what] => {
            let field = called(&format!("{}/name", up(1))).unwrap_or_else(|| (*id).to_owned());
            t!("season-of", what = of_field(what), field = field)
        }
        ["lines", _] => t!("season-product").to_owned(),
        ["lines", at, what] => {
            let line = called(&format!("{}/name", up(1))).unwrap_or_else(|| t!("season-product-at", at = number(at)));
            t!("season-what-of-line", what = of_line(what), line = line)
        }
        ["lines", at, "actives", rest @ ..] => {
            let line = content.pointer(&format!("/lines/{at}/name")).and_then(Value::as_str);
            let line = line.map_or_else(|| t!("season-product-at", at = number(at)), str::to_owned);
            let active = rest.first().and_then(|place| called(&format!("/lines/{at}/actives/{place}/name")));
            match (rest, active) {
                ([_, "mass"], Some(active)) => t!("season-what-in-line", what = capital(&active), line = line),
                ([_, what], Some(active)) => {
                    t!("season-of-in", what = of_active(what), active = active, line = line)
                }
                _ => t!("season-active-in", line = line),
            }
        }
        ["weeds", _] => t!("season-weed-or-pest").to_owned(),
        ["readings", _] => t!("season-reading").to_owned(),
        ["readings", at, what] => {
            let time = called(&format!("{}/at", up(1))).filter(|_| *what != "at").map(|time| clock(&time));
            let reading = time.map_or_else(|| number(at), |time| t!("season-at", time = time));
            t!("season-of-reading", what = of_record(what), reading = reading)
        }
        ["left", "volume"] => t!("season-left-over").to_owned(),
        ["left", "went"] => t!("season-where-the-rest-went").to_owned(),
        ["customer", "name"] => t!("season-customer").to_owned(),
        ["customer", what] => t!("season-of-the-customer", what = of_customer(what)),
        ["more", key] => capital(&plain(key)),
        ["expected", what, ..] => t!("season-in-the-forecast", what = of_record(what)),
        [what, ..] => of_record(what),
        [] => t!("season-record").to_owned(),
    }
}

fn plain(name: &str) -> String {
    name.replace(['_', '-'], " ")
}

/// What of a record, of a reading or of the forecast.
fn of_record(name: &str) -> String {
    match name {
        "pass" => t!("season-changed-planned-as").to_owned(),
        "name" => t!("season-changed-name").to_owned(),
        "date" => t!("season-changed-date").to_owned(),
        "start" => t!("season-changed-start").to_owned(),
        "end" => t!("season-changed-end").to_owned(),
        "fields" => t!("season-changed-fields").to_owned(),
        "volume" => t!("season-changed-spray-volume").to_owned(),
        "planned" => t!("season-changed-planned-spray-volume").to_owned(),
        "loads" => t!("season-changed-loads").to_owned(),
        "left" => t!("season-changed-left-over").to_owned(),
        "lines" => t!("season-changed-products").to_owned(),
        "weeds" => t!("season-changed-weeds-or-pests").to_owned(),
        "water" => t!("season-changed-water").to_owned(),
        "rig" => t!("season-changed-rig").to_owned(),
        "method" => t!("season-changed-method").to_owned(),
        "nozzles" => t!("season-changed-nozzles").to_owned(),
        "pressure" => t!("season-changed-pressure").to_owned(),
        "speed" => t!("season-changed-speed").to_owned(),
        "height" => t!("season-changed-height-of-the-nozzles").to_owned(),
        "clean_out" => t!("season-changed-clean-out").to_owned(),
        "wind" => t!("season-changed-wind").to_owned(),
        "wind_from" => t!("season-changed-wind-from").to_owned(),
        "gust" => t!("season-changed-gust").to_owned(),
        "temperature" => t!("season-changed-temperature").to_owned(),
        "humidity" => t!("season-changed-humidity").to_owned(),
        "readings" => t!("season-changed-readings").to_owned(),
        "droplets" => t!("season-changed-droplets").to_owned(),
        "expected" => t!("season-changed-forecast").to_owned(),
        "operator" => t!("season-changed-operator").to_owned(),
        "certificate" => t!("season-changed-certificate").to_owned(),
        "supervisor" => t!("season-changed-supervisor").to_owned(),
        "helpers" => t!("season-changed-helpers").to_owned(),
        "customer" => t!("season-changed-customer").to_owned(),
        "made" => t!("season-changed-made").to_owned(),
        "note" => t!("season-changed-note").to_owned(),
        "at" => t!("season-changed-time").to_owned(),
        "source" => t!("season-changed-source").to_owned(),
        other => capital(&plain(other)),
    }
}

/// What of a field.
fn of_field(name: &str) -> String {
    match name {
        "name" => t!("season-changed-name").to_owned(),
        "area" => t!("season-changed-area").to_owned(),
        "crop" => t!("season-changed-crop").to_owned(),
        "stage" => t!("season-changed-stage").to_owned(),
        "planned" => t!("season-changed-planned-area").to_owned(),
        "part" => t!("season-changed-part").to_owned(),
        "variety" => t!("season-changed-variety").to_owned(),
        "planted" => t!("season-changed-day-of-planting").to_owned(),
        "location" => t!("season-changed-location").to_owned(),
        "parcel" => t!("season-changed-parcel").to_owned(),
        "crop_code" => t!("season-changed-eppo-code-of-the-crop").to_owned(),
        other => capital(&plain(other)),
    }
}

/// What of a product.
fn of_line(name: &str) -> String {
    match name {
        "product" => t!("season-changed-product").to_owned(),
        "name" => t!("season-changed-name").to_owned(),
        "registration" => t!("season-changed-registration-number").to_owned(),
        "amount" => t!("season-changed-amount").to_owned(),
        "planned" => t!("season-changed-planned-amount").to_owned(),
        "lot" => t!("season-changed-lot").to_owned(),
        "price" => t!("season-changed-price").to_owned(),
        "kind" => t!("season-changed-kind").to_owned(),
        "class" => t!("season-changed-adjuvant-class").to_owned(),
        "restricted" => t!("season-changed-restricted-use").to_owned(),
        "entry" => t!("season-changed-hours-before-entry").to_owned(),
        "harvest" => t!("season-changed-days-before-harvest").to_owned(),
        other => capital(&plain(other)),
    }
}

/// What of an active.
fn of_active(name: &str) -> String {
    match name {
        "name" => t!("season-changed-name").to_owned(),
        "group" => t!("season-changed-group").to_owned(),
        "basis" => t!("season-changed-basis").to_owned(),
        "mass" => t!("season-changed-mass").to_owned(),
        other => capital(&plain(other)),
    }
}

/// What of a customer.
fn of_customer(name: &str) -> String {
    match name {
        "address" => t!("season-changed-address").to_owned(),
        "phone" => t!("season-changed-phone").to_owned(),
        "copied" => t!("season-changed-copied").to_owned(),
        other => capital(&plain(other)),
    }
}

/// A value in words. A day is told by its place: a person may have typed one as a lot.
fn text_of(pointer: &str, value: &Value) -> String {
    let is_day = matches!(pointer.rsplit('/').next(), Some("date" | "planted" | "copied"));
    let day = value.as_str().filter(|_| is_day).and_then(|text| text.parse::<jiff::civil::Date>().ok());
    day.map_or_else(|| text(value), days::short_date)
}

/// A value in words. Of a field or a product its name and how much of it.
fn text(value: &Value) -> String {
    match value {
        Value::Null => t!("season-it-is-nothing").to_owned(),
        Value::Bool(true) => t!("season-it-is-yes").to_owned(),
        Value::Bool(false) => t!("season-it-is-no").to_owned(),
        Value::Number(number) => number.to_string(),
        Value::String(text) if text.is_empty() => t!("season-it-is-nothing").to_owned(),
        Value::String(text) => clock(text),
        Value::Array(list) => list.iter().map(text).collect::<Vec<_>>().join(", "),
        Value::Object(map) => {
            let named = ["area", "amount", "mass"].iter().find_map(|key| map.get("name").zip(map.get(*key)));
            match named {
                Some((name, much)) => format!("{}, {}", text(name), text(much)),
                None => map.values().map(text).collect::<Vec<_>>().join(", "),
            }
        }
    }
}

/// A time of day or a moment as people read it; with seconds where it has some, and any other text as it is.
fn clock(text: &str) -> String {
    use jiff::civil::{DateTime, Time};
    let is_whole = text.ends_with(":00");
    if text.len() == 8 && is_whole {
        return text.parse::<Time>().map_or_else(|_| text.to_owned(), days::clock);
    }
    match text.parse::<DateTime>() {
        Ok(at) if text.len() == 19 && is_whole => days::moment(at),
        Ok(_) if text.len() >= 19 => text.replacen('T', " ", 1),
        _ => text.to_owned(),
    }
}
