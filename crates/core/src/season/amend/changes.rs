//! What differs between two values, and doing it forward and backward.
//!
//! A change names its place by a JSON Pointer (RFC 6901). In a list a value where nothing was is put in before what stands at that
//! place, and one that is taken out lets the rest move up; so changes hold for the value as it is when their turn comes.

use serde_json::Value;

use crate::farm::{Change, Said};

/// A change that does not fit to what stands there.
#[derive(Clone, Debug, PartialEq)]
pub(in crate::season) struct Misfit {
    /// The place.
    pub(in crate::season) what: String,
    /// What the change says stands there.
    pub(in crate::season) said: Option<Said>,
    /// What stands there.
    pub(in crate::season) stands: Option<Said>,
    /// Whether it was done all the same.
    pub(in crate::season) is_overcome: bool,
}

/// What leads from one value to another.
pub(in crate::season) fn between(was: &Value, is: &Value) -> Vec<Change> {
    let mut changes = Vec::new();
    compare(&mut changes, "", was, is);
    changes
}

/// Does a change.
pub(in crate::season) fn forward(value: &mut Value, change: &Change) -> Result<(), Misfit> {
    replace(value, &change.what, change.was.as_ref(), change.is.as_ref())
}

/// Takes a change back.
pub(in crate::season) fn back(value: &mut Value, change: &Change) -> Result<(), Misfit> {
    replace(value, &change.what, change.is.as_ref(), change.was.as_ref())
}

/// The parts of a pointer, as they were before they were written into it.
pub(super) fn parts(pointer: &str) -> Vec<String> {
    // In this order, so that "~01" is "~1" (RFC 6901, section 4).
    pointer.split('/').skip(1).map(|part| part.replace("~1", "/").replace("~0", "~")).collect()
}

fn join(pointer: &str, part: &str) -> String {
    format!("{pointer}/{}", part.replace('~', "~0").replace('/', "~1"))
}

fn said(value: &Value) -> Option<Said> {
    match value {
        Value::String(text) => Some(Said::Text(text.clone())),
        other => serde_json_canonicalizer::to_string(other).ok().map(Said::Json),
    }
}

pub(super) fn value_of(said: &Said) -> Option<Value> {
    match said {
        Said::Text(text) => Some(Value::String(text.clone())),
        Said::Json(text) => serde_json::from_str(text).ok(),
    }
}

fn push(changes: &mut Vec<Change>, what: String, was: Option<&Value>, is: Option<&Value>) {
    changes.push(Change { what, was: was.and_then(said), is: is.and_then(said) });
}

fn compare(changes: &mut Vec<Change>, at: &str, was: &Value, is: &Value) {
    match (was, is) {
        (Value::Object(before), Value::Object(after)) => {
            for (name, was) in before {
                match after.get(name) {
                    Some(is) => compare(changes, &join(at, name), was, is),
                    None => push(changes, join(at, name), Some(was), None),
                }
            }
            for (name, is) in after.iter().filter(|(name, _)| !before.contains_key(*name)) {
                push(changes, join(at, name), None, Some(is));
            }
        }
        (Value::Array(before), Value::Array(after)) => lists(changes, at, before, after),
        _ if was != is => push(changes, at.to_owned(), Some(was), Some(is)),
        _ => {}
    }
}

/// What is alike at both ends stays; then what goes by the same name at both ends is compared; what is left between is
/// replaced one by one, and the rest of it taken out or put in.
fn lists(changes: &mut Vec<Change>, at: &str, before: &[Value], after: &[Value]) {
    let same = |one: &Value, other: &Value| one == other;
    let kin = |one: &Value, other: &Value| name(one).is_some_and(|known| name(other) == Some(known));
    let (head, tail) = ends(before, after, same);
    let (was, is) = (inner(before, head, tail), inner(after, head, tail));
    let (kin_head, kin_tail) = ends(was, is, kin);
    for (place, (was, is)) in was.iter().zip(is).take(kin_head).enumerate() {
        compare(changes, &join(at, &(head + place).to_string()), was, is);
    }
    let first = head + kin_head;
    let (old, new) = (inner(was, kin_head, kin_tail), inner(is, kin_head, kin_tail));
    for (place, (was, is)) in old.iter().zip(new).enumerate() {
        let what = join(at, &(first + place).to_string());
        if was.is_object() && is.is_object() && name(was).is_none() && name(is).is_none() {
            compare(changes, &what, was, is);
        } else if was != is {
            push(changes, what, Some(was), Some(is));
        }
    }
    // From behind, so that each stands at the place which it had.
    for (place, was) in old.iter().enumerate().skip(new.len()).rev() {
        push(changes, join(at, &(first + place).to_string()), Some(was), None);
    }
    for (place, is) in new.iter().enumerate().skip(old.len()) {
        push(changes, join(at, &(first + place).to_string()), None, Some(is));
    }
    let last = first + new.len();
    for (place, (was, is)) in was.iter().rev().zip(is.iter().rev()).take(kin_tail).enumerate() {
        compare(changes, &join(at, &(last + kin_tail - 1 - place).to_string()), was, is);
    }
}

/// How many stand at the beginning and at the end of both lists that are alike in some way.
fn ends(one: &[Value], other: &[Value], alike: impl Fn(&Value, &Value) -> bool) -> (usize, usize) {
    let head = one.iter().zip(other).take_while(|(one, other)| alike(one, other)).count();
    let most = one.len().min(other.len()) - head;
    let tail = one.iter().rev().zip(other.iter().rev()).take(most).take_while(|(one, other)| alike(one, other)).count();
    (head, tail)
}

fn inner(list: &[Value], head: usize, tail: usize) -> &[Value] {
    list.get(head..list.len() - tail).unwrap_or_default()
}

/// By what a part of a list goes: a product, or a name.
fn name(value: &Value) -> Option<&str> {
    value.get("product").or_else(|| value.get("name"))?.as_str()
}

fn replace(value: &mut Value, what: &str, from: Option<&Said>, to: Option<&Said>) -> Result<(), Misfit> {
    let wanted = from.map(value_of);
    let put = to.map(value_of);
    let misfit = |stands: Option<&Value>, is_overcome| Misfit {
        what: what.to_owned(),
        said: from.cloned(),
        stands: stands.and_then(said),
        is_overcome,
    };
    // A text that is no JSON can be neither put there nor looked for.
    let (wanted, put) = match (wanted, put) {
        (Some(None), _) | (_, Some(None)) | (None, None) => return Err(misfit(value.pointer(what), false)),
        (wanted, put) => (wanted.flatten(), put.flatten()),
    };
    let Some((parent, part)) = what.rsplit_once('/') else { return Err(misfit(None, false)) };
    let part = part.replace("~1", "/").replace("~0", "~");
    match value.pointer_mut(parent) {
        Some(Value::Object(map)) => {
            let outcome = match map.get(&part) {
                stands if stands == wanted.as_ref() => Ok(()),
                stands => Err(misfit(stands, true)),
            };
            match put {
                Some(put) => drop(map.insert(part, put)),
                // Not `remove`, which may bring the last one forward.
                None => map.retain(|name, _| *name != part),
            }
            outcome
        }
        Some(Value::Array(list)) => {
            let Some(place) = place(&part) else { return Err(misfit(None, false)) };
            let stands = list.get(place);
            let outcome = match (&wanted, stands) {
                (None, _) if place <= list.len() => Ok(()),
                (Some(wanted), Some(stands)) if wanted == stands => Ok(()),
                (Some(_), Some(stands)) => Err(misfit(Some(stands), true)),
                _ => return Err(misfit(None, false)),
            };
            match (wanted, put) {
                (None, Some(put)) => list.insert(place, put),
                (Some(_), Some(put)) => {
                    if let Some(stands) = list.get_mut(place) {
                        *stands = put;
                    }
                }
                (_, None) => drop(list.remove(place)),
            }
            outcome
        }
        _ => Err(misfit(None, false)),
    }
}

/// A place in a list, written without a sign or zeros in front (RFC 6901, section 4).
fn place(part: &str) -> Option<usize> {
    let place = part.parse().ok()?;
    (usize::to_string(&place) == part).then_some(place)
}

#[cfg(test)]
mod tests {
    use super::{back, between, forward, join, parts};
    use crate::farm::Said;
    use serde_json::{Value, json};

    /// The changes between two values, which must lead there and back.
    fn places(was: &Value, is: &Value) -> Vec<String> {
        let changes = between(was, is);
        let mut value = was.clone();
        for change in &changes {
            forward(&mut value, change).unwrap();
        }
        assert_eq!(value, *is);
        for change in changes.iter().rev() {
            back(&mut value, change).unwrap();
        }
        assert_eq!(value, *was);
        changes.into_iter().map(|change| change.what).collect()
    }

    /// RFC 6901, section 5: the pointers of its example, which must lead to the same values.
    #[test]
    fn pointers_are_written_as_the_standard_has_them() {
        let document = json!({"foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4, "i\\j": 5, "k\"l": 6, " ": 7,
            "m~n": 8});
        for (name, pointer, value) in [
            ("", "/", 0),
            ("a/b", "/a~1b", 1),
            ("c%d", "/c%d", 2),
            ("e^f", "/e^f", 3),
            ("g|h", "/g|h", 4),
            ("i\\j", "/i\\j", 5),
            ("k\"l", "/k\"l", 6),
            (" ", "/ ", 7),
            ("m~n", "/m~0n", 8),
        ] {
            assert_eq!(join("", name), pointer);
            assert_eq!(parts(pointer), [name]);
            assert_eq!(document.pointer(pointer), Some(&json!(value)));
            let mut other = document.clone();
            other[name] = json!("another");
            assert_eq!(places(&document, &other), [pointer]);
        }
        // Section 4: "~01" is "~1", not "/".
        assert_eq!(parts("/~01"), ["~1"]);
    }

    #[test]
    fn a_part_taken_out_of_the_middle_is_one_change() {
        let line = |product: &str, amount: &str| json!({"product": product, "amount": amount});
        let (a, b, c) = (line("a", "1 gal"), line("b", "2 gal"), line("c", "3 gal"));
        assert_eq!(places(&json!([a, b, c]), &json!([a, c])), ["/1"]);
        // Also where another part of the list differs.
        assert_eq!(places(&json!([a, b, c]), &json!([b, line("c", "4 gal")])), ["/0", "/1/amount"]);
        assert_eq!(places(&json!([a, c]), &json!([a, b, c])), ["/1"]);
        assert_eq!(places(&json!([a, b, c]), &json!([])), ["/2", "/1", "/0"]);
        assert_eq!(places(&json!([a]), &json!([line("a", "9 gal"), b, c])), ["/0/amount", "/1", "/2"]);
        assert_eq!(places(&json!([a]), &json!([b])), ["/0"]);
    }

    #[test]
    fn readings_and_words_have_no_name_of_their_own() {
        let reading = |at: &str, wind: &str| json!({"at": at, "wind": wind});
        let (a, b, c) = (reading("06:00", "4 mph"), reading("07:00", "5 mph"), reading("08:00", "6 mph"));
        assert_eq!(places(&json!([a, c]), &json!([a, b, c])), ["/1"]);
        assert_eq!(places(&json!([a, b]), &json!([a, reading("07:00", "9 mph")])), ["/1/wind"]);
        assert_eq!(places(&json!(["x", "y", "z"]), &json!(["x", "w", "z"])), ["/1"]);
        assert_eq!(places(&json!(["x", "x", "x"]), &json!(["x"])), ["/2", "/1"]);
    }

    #[test]
    fn a_change_that_does_not_fit_says_so() {
        let change = &between(&json!({"area": "74.6 ac"}), &json!({"area": "70 ac"}))[0];
        let mut altered = json!({"area": "71 ac"});
        let misfit = back(&mut altered, change).unwrap_err();
        let text = |text: &str| Some(Said::Text(text.to_owned()));
        assert_eq!((misfit.said, misfit.stands), (text("70 ac"), text("71 ac")));
        assert!(misfit.is_overcome && altered == json!({"area": "74.6 ac"}));
        for (what, value) in [("/a/b", json!({})), ("/list/01", json!({"list": [1, 2]})), ("nowhere", json!({}))] {
            let mut change = change.clone();
            change.what = what.to_owned();
            let mut same = value.clone();
            assert!(!forward(&mut same, &change).unwrap_err().is_overcome, "{what}");
            assert_eq!(same, value);
        }
    }
}
