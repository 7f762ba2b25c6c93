//! What was changed in a record, in words for people.

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
            (None, Some(is)) => return format!("{what}: {} put in", text(is)),
            (Some(was), None) => return format!("{what}: {} taken out", text(was)),
            _ => {}
        }
    }
    format!("{what}: {}, now {}", shown(&was), shown(&is))
}

/// What an amendment says and what stands there: "that Area of Mill field is 70 ac, and 71 ac stands there".
pub(in crate::season) fn misfit(misfit: &Misfit, content: &Value) -> String {
    let shown =
        |said: &Option<Said>| said.as_ref().and_then(value_of).as_ref().map_or_else(|| "nothing".to_owned(), text);
    let what = place(&misfit.what, content);
    format!("that {what} is {}, and {} stands there", shown(&misfit.said), shown(&misfit.stands))
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
        ["fields", _] => "Field".to_owned(),
        ["fields", id, what] => {
            let field = called(&format!("{}/name", up(1))).unwrap_or_else(|| (*id).to_owned());
            format!("{} of {field}", of_field(what))
        }
        ["lines", _] => "Product".to_owned(),
        ["lines", at, what] => {
            let line = called(&format!("{}/name", up(1))).unwrap_or_else(|| format!("product {}", number(at)));
            format!("{} of {line}", of_line(what))
        }
        ["lines", at, "actives", rest @ ..] => {
            let line = content.pointer(&format!("/lines/{at}/name")).and_then(Value::as_str);
            let line = line.map_or_else(|| format!("product {}", number(at)), str::to_owned);
            let active = rest.first().and_then(|place| called(&format!("/lines/{at}/actives/{place}/name")));
            match (rest, active) {
                ([_, "mass"], Some(active)) => format!("{} in {line}", capital(&active)),
                ([_, what], Some(active)) => format!("{} of {active} in {line}", capital(&plain(what))),
                _ => format!("Active in {line}"),
            }
        }
        ["weeds", _] => "Weed or pest".to_owned(),
        ["readings", _] => "Reading".to_owned(),
        ["readings", at, what] => {
            let time = called(&format!("{}/at", up(1))).filter(|_| *what != "at").map(|time| clock(&time));
            let reading = time.map_or_else(|| number(at), |time| format!("at {time}"));
            format!("{} of reading {reading}", of_record(what))
        }
        ["left", "volume"] => "Left over".to_owned(),
        ["left", "went"] => "Where the rest went".to_owned(),
        ["customer", "name"] => "Customer".to_owned(),
        ["customer", what] => format!("{} of the customer", capital(&plain(what))),
        ["more", key] => capital(&plain(key)),
        ["expected", what, ..] => format!("{} in the forecast", of_record(what)),
        [what, ..] => of_record(what),
        [] => "Record".to_owned(),
    }
}

fn plain(name: &str) -> String {
    name.replace(['_', '-'], " ")
}

fn of_record(name: &str) -> String {
    let words = match name {
        "pass" => "planned as",
        "volume" => "spray volume",
        "planned" => "planned spray volume",
        "left" => "left over",
        "lines" => "products",
        "weeds" => "weeds or pests",
        "height" => "height of the nozzles",
        "expected" => "forecast",
        "at" => "time",
        other => return capital(&plain(other)),
    };
    capital(words)
}

fn of_field(name: &str) -> String {
    let words = match name {
        "planned" => "planned area",
        "planted" => "day of planting",
        "crop_code" => "EPPO code of the crop",
        other => return capital(&plain(other)),
    };
    capital(words)
}

fn of_line(name: &str) -> String {
    let words = match name {
        "registration" => "registration number",
        "planned" => "planned amount",
        "class" => "adjuvant class",
        "restricted" => "restricted use",
        "entry" => "hours before entry",
        "harvest" => "days before harvest",
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
