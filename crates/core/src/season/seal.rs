//! The seal under a signed record, and whether it still holds.
//!
//! What is signed is the record without its signature, amendments and outcomes. The seal is SHA-256 (FIPS 180-4) over the
//! canonical JSON (RFC 8785) of that together with who signed and when. The seal of an amendment is the same over the seal
//! before it, who, when and why, the changes, and the record as it then stood. So the seals make a chain, and a value, a name, a
//! date or a reason changed by hand breaks it.
//!
//! What a seal cannot notice:
//! - Someone who makes all seals anew. They are sums and no keys: whoever can write the file can reckon them.
//! - A signed record that is taken out whole, or put back whole as it stood at an earlier seal.
//! - A signature that is taken out together with all amendments: the record then is one that was never signed.
//! - A signed record that is copied whole under another name. Its seal then stands twice, which [`findings`] tells.
//! - In which order the fields of a record stand, since canonical JSON sorts names.
//!
//! Against these help prints, copies, and the first digits of the seal written down elsewhere.

use std::collections::HashMap;

use jiff::civil::DateTime;
use serde::Serialize;
use serde_json::Value;
use sha2::{Digest, Sha256};
use thiserror::Error;

use super::amend::changes::{self, Misfit};
use super::amend::words;
use crate::farm::{Amendment, Change, Farm, Record, Signature};
use crate::finding::{Basis, Finding, Subject};
use crate::language::t;

/// Why a record is not signed or not amended.
#[derive(Clone, Debug, PartialEq, Eq, Error)]
pub enum Refusal {
    /// Nobody is named.
    #[error("{}", t!("season-who-does-it-is-not-typed"))]
    NoName,
    /// No reason is given.
    #[error("{}", t!("season-why-it-is-changed-is-not"))]
    NoReason,
    /// Nothing differs.
    #[error("{}", t!("season-nothing-differs-from-what-stands-there"))]
    NoChange,
    /// It is not signed.
    #[error("{}", t!("season-the-record-is-not-signed-so"))]
    Unsigned,
    /// It is signed already.
    #[error("{}", t!("season-the-record-is-signed-already-what"))]
    AlreadySigned,
    /// Its day is still to come.
    #[error("{}", t!("season-the-day-of-the-record-is-still-to-come", date = .0))]
    StillToCome(jiff::civil::Date),
    /// Its seals do not hold.
    #[error("{}", t!("season-the-record-was-changed-outside-of"))]
    Broken,
    /// Its seals hold.
    #[error("{}", t!("season-the-seals-of-the-record-hold"))]
    NotBroken,
    /// What stood there before cannot be told.
    #[error("{}", t!("season-what-was-signed-cannot-be-told", it = .0))]
    NotTold(String),
}

/// One seal of a record.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Link {
    /// That of the signature.
    Signature,
    /// That of an amendment, by its place from 0.
    Amendment(usize),
}

/// Whether the seals of a record hold.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// It was not signed.
    Unsigned,
    /// All of them hold.
    Intact,
    /// They did not, and an amendment took the record as it was. All seals from that one on hold.
    Taken {
        /// The place of that amendment, from 0.
        amendment: usize,
    },
    /// One does not.
    Broken {
        /// The first that does not.
        link: Link,
        /// What can be told of it.
        said: String,
    },
}

/// Whether a record is signed, so that it is amended and not edited. One whose signature alone was taken out counts too.
pub fn is_signed(record: &Record) -> bool {
    record.signed.is_some() || !record.amendments.is_empty()
}

/// What may be put in the place of a record: anything where it is not signed, and only other outcomes where it is.
#[must_use]
pub fn respecting(before: &Record, after: Record) -> Record {
    if is_signed(before) { Record { outcomes: after.outcomes, ..before.clone() } } else { after }
}

/// Signs a record. Its line ends become line feeds first, so that a file saved with other ones can be read back to what was
/// signed.
///
/// # Errors
/// Where nobody is named, where it is signed already, or where its day comes after that of the signature.
pub fn sign(record: &Record, by: &str, at: DateTime) -> Result<Record, Refusal> {
    let by = by.trim();
    if by.is_empty() {
        return Err(Refusal::NoName);
    }
    if is_signed(record) {
        return Err(Refusal::AlreadySigned);
    }
    if record.date > at.date() {
        return Err(Refusal::StillToCome(record.date));
    }
    let record = with_line_feeds(record).ok_or_else(no_seal)?;
    let hash = of_signature(by, at, &content(&record)).ok_or_else(no_seal)?;
    Ok(Record { signed: Some(Box::new(Signature { by: by.into(), at, hash })), ..record })
}

/// A record with a line feed at each line end of its texts, where a carriage return and a line feed stood. Its signature, its
/// amendments and its outcomes stay as they are; `None` where it cannot be written as JSON, which no record is.
pub fn with_line_feeds(record: &Record) -> Option<Record> {
    fn mend(value: &mut Value) {
        match value {
            Value::String(text) if text.contains("\r\n") => *text = text.replace("\r\n", "\n"),
            Value::Array(all) => all.iter_mut().for_each(mend),
            Value::Object(all) => all.values_mut().for_each(mend),
            _ => {}
        }
    }
    let mut own = value(record)?;
    mend(&mut own);
    let mended: Record = serde_json::from_value(own).ok()?;
    let Record { signed, amendments, outcomes, .. } = record.clone();
    Some(Record { signed, amendments, outcomes, ..mended })
}

/// Looks whether the seals of a record hold.
pub fn verify(record: &Record) -> Verdict {
    if !is_signed(record) {
        return Verdict::Unsigned;
    }
    let chain = Chain::of(record);
    if let Some(amendment) = chain.taken {
        return Verdict::Taken { amendment };
    }
    if chain.links.iter().all(|link| link.as_ref().is_some_and(|link| link.holds)) {
        return Verdict::Intact;
    }
    // Where the way back ends early, nothing before that is known, and the seal at which it ended does not hold.
    let at = chain.links.iter().position(|link| link.as_ref().is_some_and(|link| !link.holds)).unwrap_or_default();
    Verdict::Broken { link: at.checked_sub(1).map_or(Link::Signature, Link::Amendment), said: chain.said(record, at) }
}

/// What there is to say of the seals of all records.
///
/// A broken seal is a Check and not a Stop: a person must find out what happened and decide; no label, law or physics forbids
/// the next pass because of it. One that was taken as it is, is a Note.
pub fn findings(farm: &Farm) -> Vec<Finding> {
    let each = farm.records.iter().filter_map(|(id, record)| finding(id, record, &verify(record)));
    each.chain(copies(farm)).collect()
}

/// Records under whose signature the seal of one before them stands. A seal holds who signed and when to the second beside all that the record
/// says, so that two records come by one seal only where one is a copy of the other.
fn copies(farm: &Farm) -> Vec<Finding> {
    let mut first: HashMap<&str, &Record> = HashMap::new();
    let mut out = Vec::new();
    for (id, record) in &farm.records {
        let Some(hash) =
            record.signed.as_ref().map(|signature| signature.hash.as_str()).filter(|hash| !hash.is_empty())
        else {
            continue;
        };
        let Some(other) = first.get(hash) else {
            first.insert(hash, record);
            continue;
        };
        let text = t!(
            "season-the-signed-record-of-has-the",
            name = record.name,
            date = record.date,
            name2 = other.name,
            date2 = other.date
        );
        out.push(
            Finding::check(Subject::Record(id.clone()), text, Basis::Arithmetic)
                .hint(t!("season-it-was-sprayed-once-take-out")),
        );
    }
    out
}

/// What there is to say of the seals of a record.
pub fn finding(id: &str, record: &Record, verdict: &Verdict) -> Option<Finding> {
    let about = Subject::Record(id.to_owned());
    let name = t!("season-name-of-date", name = record.name, date = record.date);
    match verdict {
        Verdict::Unsigned | Verdict::Intact => None,
        Verdict::Taken { amendment } => {
            let by = record.amendments.get(*amendment).map(|by| t!("season-by-on", by = by.by, date = by.at.date()));
            let text = t!("season-the-signed-record-was-changed-outside", name = name, by = by.unwrap_or_default());
            Some(Finding::note(about, text, Basis::Arithmetic))
        }
        Verdict::Broken { said, .. } => Some(
            Finding::check(
                about,
                t!("season-the-signed-record-name-was-changed-outside-of-an", name = name, said = said),
                Basis::Arithmetic,
            )
            .hint(t!("season-compare-it-with-a-print-or")),
        ),
    }
}

/// What is signed of a record.
pub(super) fn content(record: &Record) -> Record {
    Record { signed: None, amendments: Vec::new(), outcomes: Vec::new(), ..record.clone() }
}

/// The same as a value; `None` where it cannot be written as JSON, which no record is.
pub(super) fn value(record: &Record) -> Option<Value> {
    serde_json::to_value(content(record)).ok()
}

/// For what no record does.
pub(super) fn no_seal() -> Refusal {
    Refusal::NotTold(t!("season-the-record-cannot-be-written-as").to_owned())
}

/// The seal of a signature.
fn of_signature(by: &str, at: DateTime, content: &impl Serialize) -> Option<String> {
    #[derive(Serialize)]
    struct Signed<'a, T> {
        by: &'a str,
        at: DateTime,
        content: &'a T,
    }
    digest(&Signed { by, at, content })
}

/// The seal of an amendment, which holds the one before it, whatever seal stands in the amendment itself.
pub(super) fn of_amendment(previous: &str, amendment: &Amendment, content: &Value) -> Option<String> {
    #[derive(Serialize)]
    struct Amended<'a> {
        previous: &'a str,
        by: &'a str,
        at: DateTime,
        why: &'a str,
        changes: &'a [Change],
        content: &'a Value,
    }
    let Amendment { by, at, why, changes, .. } = amendment;
    digest(&Amended { previous, by, at: *at, why, changes, content })
}

/// The seal over a signature and amendments as they are found, which stands for the seal before an amendment that takes a
/// record as it is: what the broken chain holds cannot be changed unnoticed after that either.
pub(super) fn of_found(signed: Option<&Signature>, amendments: &[Amendment]) -> Option<String> {
    #[derive(Serialize)]
    struct Found<'a> {
        signed: Option<&'a Signature>,
        amendments: &'a [Amendment],
    }
    digest(&Found { signed, amendments })
}

/// SHA-256 over canonical JSON, in hexadecimal digits.
fn digest(what: &impl Serialize) -> Option<String> {
    serde_json_canonicalizer::to_vec(what).ok().map(|bytes| sha_256(&bytes))
}

fn sha_256(bytes: &[u8]) -> String {
    const DIGITS: [char; 16] = ['0', '1', '2', '3', '4', '5', '6', '7', '8', '9', 'a', 'b', 'c', 'd', 'e', 'f'];
    let digit = |value: u8| DIGITS.get(usize::from(value)).copied().unwrap_or('0');
    Sha256::digest(bytes).iter().flat_map(|byte| [digit(byte >> 4), digit(byte & 15)]).collect()
}

/// The seals of a record, reckoned anew.
struct Chain {
    /// The signature's first, then those of the amendments; `None` before where the way back ends.
    links: Vec<Option<Reckoned>>,
    /// The last amendment that took the record as it was, where all seals from there on hold.
    taken: Option<usize>,
}

struct Reckoned {
    /// The seal as it should be.
    seal: String,
    holds: bool,
    /// Where what an amendment says is not what stands there.
    misfit: Option<Misfit>,
    /// The record as it then stood, for words. Kept only where something does not fit.
    stood: Option<Value>,
}

impl Chain {
    fn of(record: &Record) -> Self {
        let mut links: Vec<Option<Reckoned>> = Vec::with_capacity(record.amendments.len() + 1);
        links.resize_with(record.amendments.len() + 1, || None);
        let mut chain = Self { links, taken: None };
        let reckoned = |seal: Option<String>, stands: &str| {
            seal.map(|seal| Reckoned { holds: seal == stands, seal, misfit: None, stood: None })
        };
        let signed = |content: &dyn Fn(&Signature) -> Option<String>| match &record.signed {
            Some(signature) => reckoned(content(signature), &signature.hash),
            None => Some(Reckoned { seal: String::new(), holds: false, misfit: None, stood: None }),
        };
        if record.amendments.is_empty() {
            // Most are never amended, and go without the detour.
            let content = content(record);
            let link = signed(&|signature| of_signature(&signature.by, signature.at, &content));
            chain.links = vec![link];
            return chain;
        }
        let Some(mut content) = value(record) else { return chain };
        let mut all_hold = true;
        for (at, amendment) in record.amendments.iter().enumerate().rev() {
            let previous = before(record, at);
            let mut link =
                reckoned(previous.and_then(|seal| of_amendment(&seal, amendment, &content)), &amendment.hash);
            all_hold &= link.as_ref().is_some_and(|link| link.holds);
            if amendment.changes.is_empty() && all_hold {
                chain.taken = Some(at);
            }
            // What was before one that took the record as it was, is broken and known to be.
            let mut ends = amendment.changes.is_empty() && link.as_ref().is_some_and(|link| link.holds);
            for change in amendment.changes.iter().rev() {
                if let Err(misfit) = changes::back(&mut content, change) {
                    // A seal that fits over what cannot have been was made for it: what it tells leads nowhere.
                    ends |= !misfit.is_overcome || link.as_ref().is_some_and(|link| link.holds);
                    if let Some(link) = link.as_mut().filter(|link| link.misfit.is_none()) {
                        // A seal over what cannot have been is none.
                        link.holds = false;
                        link.misfit = Some(misfit);
                        link.stood = Some(content.clone());
                    }
                }
            }
            all_hold &= link.as_ref().is_some_and(|link| link.holds);
            if let Some(place) = chain.links.get_mut(at + 1) {
                *place = link;
            }
            if ends {
                return chain;
            }
        }
        let link = signed(&|signature| of_signature(&signature.by, signature.at, &content));
        if let Some(first) = chain.links.first_mut() {
            *first = link;
        }
        chain
    }

    /// What can be told of the first seal that does not hold.
    fn said(&self, record: &Record, at: usize) -> String {
        let link = self.links.get(at).and_then(Option::as_ref);
        let next = self.links.get(at + 1).and_then(Option::as_ref);
        let (which, what) = if at == 0 {
            (t!("season-the-signature").to_owned(), t!("season-who-signed-or-when").to_owned())
        } else {
            (t!("season-amendment", at = at), t!("season-who-when-why-or-what-of", at = at))
        };
        if at == 0 && record.signed.is_none() {
            return t!("season-the-signature-was-taken-out-while").to_owned();
        }
        // The next seal holds the record after it, and this seal as it stands.
        if next.is_some_and(|next| next.holds) {
            return t!("season-is-not-what-was-sealed-the", what = what);
        }
        let with_own_seal = || {
            let (link, amendment) = (link?, record.amendments.get(at)?);
            let content = content_at(record, at + 1)?;
            (of_amendment(&link.seal, amendment, &content)? == amendment.hash).then_some(())
        };
        if with_own_seal().is_some() {
            return t!("season-the-seal-of-was-changed-and", which = which);
        }
        if let Some((misfit, stood)) = link.and_then(|link| link.misfit.as_ref().zip(link.stood.as_ref())) {
            return t!("season-says", which = which, misfit = words::misfit(misfit, stood));
        }
        if at == 0 {
            t!("season-what-stands-there-or-who-signed").to_owned()
        } else {
            t!("season-what-stands-there-or-itself-is", which = which)
        }
    }
}

/// The record as it stood after the seal at a place, as far as it can be told.
fn content_at(record: &Record, at: usize) -> Option<Value> {
    let mut content = value(record)?;
    for change in record.amendments.get(at..)?.iter().rev().flat_map(|amendment| amendment.changes.iter().rev()) {
        changes::back(&mut content, change).ok()?;
    }
    Some(content)
}

/// The seal before an amendment, as it stands.
fn before(record: &Record, amendment: usize) -> Option<String> {
    if record.amendments.get(amendment)?.changes.is_empty() {
        return of_found(record.signed.as_deref(), record.amendments.get(..amendment)?);
    }
    match amendment.checked_sub(1) {
        Some(last) => record.amendments.get(last).map(|last| last.hash.clone()),
        None => record.signed.as_ref().map(|signature| signature.hash.clone()),
    }
}

#[cfg(test)]
mod tests {
    use super::{Link, Refusal, Verdict, digest, of_amendment, respecting, sha_256, sign, value, verify};
    use crate::farm::{Amendment, Change, Record, Said};
    use jiff::civil::{date, datetime};
    use serde_json::{Value, json};

    /// FIPS 180-4, example of SHA-256 for the message "abc" (NIST, Cryptographic Standards and Guidelines: Examples with
    /// Intermediate Values), and that for the empty message, of the same collection.
    #[test]
    fn the_sum_is_sha_256() {
        assert_eq!(sha_256(b"abc"), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        assert_eq!(sha_256(b""), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    /// RFC 8785, sections 3.2.2 to 3.2.4: the example with its canonical form, and the example of sorting.
    #[test]
    fn the_form_is_canonical() {
        let text = r#"{
            "numbers": [333333333.33333329, 1E30, 4.50, 2e-3, 0.000000000000000000000000001],
            "string": "\u20ac$\u000F\u000aA'\u0042\u0022\u005c\\\"\/",
            "literals": [null, true, false]
        }"#;
        let value: Value = serde_json::from_str(text).unwrap();
        let canonical = serde_json_canonicalizer::to_vec(&value).unwrap();
        let expected = "{\"literals\":[null,true,false],\"numbers\":[333333333.3333333,1e+30,4.5,0.002,1e-27],\
                        \"string\":\"€$\\u000f\\nA'B\\\"\\\\\\\\\\\"/\"}";
        assert_eq!(String::from_utf8(canonical).unwrap(), expected);
        let text = r#"{"\u20ac":"Euro Sign","\r":"Carriage Return","\ufb33":"Hebrew Letter Dalet With Dagesh","1":"One",
            "\ud83d\ude00":"Emoji: Grinning Face","\u0080":"Control","\u00f6":"Latin Small Letter O With Diaeresis"}"#;
        let value: Value = serde_json::from_str(text).unwrap();
        let canonical = serde_json_canonicalizer::to_string(&value).unwrap();
        let places: Vec<_> =
            ["Carriage", "One", "Control", "Latin", "Euro", "Emoji", "Hebrew"].map(|word| canonical.find(word)).into();
        assert!(places.iter().all(Option::is_some) && places.is_sorted(), "{canonical}");
    }

    #[test]
    fn the_order_of_names_changes_no_seal() {
        let one = json!({"b": 1, "a": {"d": "x", "c": []}});
        let other = json!({"a": {"c": [], "d": "x"}, "b": 1});
        assert_eq!(digest(&one), digest(&other));
    }

    #[test]
    fn a_record_is_signed_once_and_by_somebody() {
        let record = Record::new("Corn", date(2031, 6, 12));
        let at = datetime(2031, 6, 12, 20, 14, 0, 0);
        assert_eq!(sign(&record, "  ", at), Err(Refusal::NoName));
        let signed = sign(&record, " A. Demo ", at).unwrap();
        assert_eq!(signed.signed.as_ref().unwrap().by, "A. Demo");
        assert_eq!((verify(&record), verify(&signed)), (Verdict::Unsigned, Verdict::Intact));
        assert_eq!(sign(&signed, "B. Demo", at), Err(Refusal::AlreadySigned));
    }

    /// A seal made anew over an amendment that tells of what never stood there.
    #[test]
    fn an_amendment_that_cannot_have_been_does_not_hold() {
        let at = datetime(2031, 6, 12, 20, 14, 0, 0);
        let mut record = sign(&Record::new("Corn", date(2031, 6, 12)), "A. Demo", at).unwrap();
        let text = |text: &str| Some(Said::Text(text.to_owned()));
        let change = |is| Change { what: "/name".to_owned(), was: text("Wheat"), is: text(is) };
        for (is, holds) in [("Maize", false), ("Corn", true)] {
            let changes = vec![change(is)];
            let mut forged = Amendment { by: "B".to_owned(), at, why: "x".to_owned(), changes, hash: String::new() };
            let content = value(&record).unwrap();
            forged.hash = of_amendment(&record.signed.as_ref().unwrap().hash, &forged, &content).unwrap();
            record.amendments = vec![forged];
            let Verdict::Broken { link, said } = verify(&record) else { panic!("{is}") };
            // One that tells of what could have been leads back to what was not signed.
            assert_eq!(link, if holds { Link::Signature } else { Link::Amendment(0) }, "{said}");
        }
    }

    #[test]
    fn only_outcomes_are_put_into_a_signed_record() {
        let record = Record::new("Corn", date(2031, 6, 12));
        let mut other = record.clone();
        other.note = "another".into();
        assert_eq!(respecting(&record, other.clone()).note, "another");
        let signed = sign(&record, "A. Demo", datetime(2031, 6, 12, 20, 14, 0, 0)).unwrap();
        assert_eq!(respecting(&signed, other), signed);
    }
}
