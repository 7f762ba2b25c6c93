//! What was changed in a record, in words for people.

use crate::language::t;
use serde_json::Value;

use super::changes::{Misfit, parts, value_of};
use crate::farm::{Change, Record, Said};
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
    let shown = |value: &Option<Value>| value.as_ref().map_or_else(|| "nothing".to_owned(), text);
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
    let shown =
        |said: &Option<Said>| said.as_ref().and_then(value_of).as_ref().map_or_else(|| "nothing".to_owned(), text);
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
                ([_, "mass"], Some(active)) => format!("{} in {line}", capital(&active)),
                ([_, what], Some(active)) => {
                    t!("season-of-in", what = capital(&plain(what)), active = active, line = line)
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
        ["customer", what] => t!("season-of-the-customer", what = capital(&plain(what))),
        ["more", key] => capital(&plain(key)),
        ["expected", what, ..] => t!("season-in-the-forecast", what = of_record(what)),
        [what, ..] => of_record(what),
        [] => t!("season-record").to_owned(),
    }
}

fn plain(name: &str) -> String {
    name.replace(['_', '-'], " ")
}

fn of_record(name: &str) -> String {
    let words = match name {
        "pass" => t!("season-planned-as"),
        "volume" => t!("season-spray-volume"),
        "planned" => t!("season-planned-spray-volume"),
        "left" => t!("season-left-over-31a"),
        "lines" => "products",
        "weeds" => t!("season-weeds-or-pests"),
        "height" => t!("season-height-of-the-nozzles"),
        "expected" => "forecast",
        "at" => "time",
        other => return capital(&plain(other)),
    };
    capital(words)
}

fn of_field(name: &str) -> String {
    let words = match name {
        "planned" => t!("season-planned-area"),
        "planted" => t!("season-day-of-planting"),
        "crop_code" => t!("season-eppo-code-of-the-crop"),
        other => return capital(&plain(other)),
    };
    capital(words)
}

fn of_line(name: &str) -> String {
    let words = match name {
        "registration" => t!("season-registration-number"),
        "planned" => t!("season-planned-amount"),
        "class" => t!("season-adjuvant-class"),
        "restricted" => t!("season-restricted-use"),
        "entry" => t!("season-hours-before-entry"),
        "harvest" => t!("season-days-before-harvest"),
        other => return capital(&plain(other)),
    };
    capital(words)
}

/// A value in words. Of a field or a product its name and how much of it.
fn text(value: &Value) -> String {
    match value {
        Value::Null => "nothing".to_owned(),
        Value::Bool(yes) => if *yes { "yes" } else { "no" }.to_owned(),
        Value::Number(number) => number.to_string(),
        Value::String(text) if text.is_empty() => "nothing".to_owned(),
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

/// A time of day without seconds that are none, a moment with a space in it; any other text as it is.
fn clock(text: &str) -> String {
    use jiff::civil::{DateTime, Time};
    let bytes = text.len();
    if bytes == 8 && text.parse::<Time>().is_ok() {
        return text.strip_suffix(":00").unwrap_or(text).to_owned();
    }
    if bytes >= 19 && text.contains('T') && text.parse::<DateTime>().is_ok() {
        let text = text.replacen('T', " ", 1);
        return text.strip_suffix(":00").unwrap_or(&text).to_owned();
    }
    text.to_owned()
}
