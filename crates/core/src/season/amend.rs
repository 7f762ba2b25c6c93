//! A signed record is amended: who, when, why, and what stood there before. Nothing of what was signed goes.

pub(super) mod changes;
pub(super) mod words;

pub use words::words;

use jiff::civil::DateTime;
use serde_json::Value;

use super::seal::{Refusal, Verdict, is_signed, no_seal, of_amendment, of_found, value, verify};
use crate::farm::{Amendment, Record};
use crate::language::t;

/// Changes a signed record into another one, and keeps what stood there. Of the other one only what is signed counts.
///
/// # Errors
/// Where nobody is named, no reason is given, nothing differs, or the record is not signed or its seals do not hold.
pub fn amend(record: &Record, changed: &Record, by: &str, at: DateTime, why: &str) -> Result<Record, Refusal> {
    let (by, why) = named(by, why)?;
    match verify(record) {
        Verdict::Unsigned => return Err(Refusal::Unsigned),
        Verdict::Broken { .. } => return Err(Refusal::Broken),
        Verdict::Intact | Verdict::Taken { .. } => {}
    }
    let (was, is) = value(record).zip(value(changed)).ok_or_else(no_seal)?;
    let changes = changes::between(&was, &is);
    if changes.is_empty() {
        return Err(Refusal::NoChange);
    }
    let seal = match record.amendments.last() {
        Some(last) => &last.hash,
        None => &record.signed.as_ref().ok_or(Refusal::Unsigned)?.hash,
    };
    let mut amendment = Amendment { by, at, why, changes, hash: String::new() };
    amendment.hash = of_amendment(seal, &amendment, &is).ok_or_else(no_seal)?;
    let mut amended = Record {
        signed: record.signed.clone(),
        amendments: record.amendments.clone(),
        outcomes: record.outcomes.clone(),
        ..changed.clone()
    };
    amended.amendments.push(amendment);
    Ok(amended)
}

/// Takes a record as it is, where its seals do not hold, so that the farm goes on: by an amendment without changes that says so.
/// What stands in the broken chain stays, and the new seal covers all of it.
///
/// # Errors
/// Where nobody is named, no reason is given, or the record is not signed or its seals hold.
pub fn take_as_it_is(record: &Record, by: &str, at: DateTime, why: &str) -> Result<Record, Refusal> {
    let (by, why) = named(by, why)?;
    match verify(record) {
        Verdict::Unsigned => return Err(Refusal::Unsigned),
        Verdict::Intact | Verdict::Taken { .. } => return Err(Refusal::NotBroken),
        Verdict::Broken { .. } => {}
    }
    let why = t!("season-what-stands-here-was-changed-outside", by = by, why = why);
    let found = of_found(record.signed.as_deref(), &record.amendments).ok_or_else(no_seal)?;
    let content = value(record).ok_or_else(no_seal)?;
    let mut amendment = Amendment { by, at, why, changes: Vec::new(), hash: String::new() };
    amendment.hash = of_amendment(&found, &amendment, &content).ok_or_else(no_seal)?;
    let mut taken = record.clone();
    taken.amendments.push(amendment);
    Ok(taken)
}

fn named(by: &str, why: &str) -> Result<(String, String), Refusal> {
    let (by, why) = (by.trim(), why.trim());
    if by.is_empty() {
        Err(Refusal::NoName)
    } else if why.is_empty() {
        Err(Refusal::NoReason)
    } else {
        Ok((by.to_owned(), why.to_owned()))
    }
}

/// The record as it was signed, with its signature and its outcomes and no amendments.
///
/// # Errors
/// Where it is not signed, or its seals do not hold or once did not.
pub fn original(record: &Record) -> Result<Record, Refusal> {
    match verify(record) {
        Verdict::Unsigned => return Err(Refusal::Unsigned),
        Verdict::Broken { .. } => return Err(Refusal::Broken),
        Verdict::Taken { .. } => {
            return Err(Refusal::NotTold(t!("season-it-was-changed-outside-of-an").to_owned()));
        }
        Verdict::Intact => {}
    }
    let mut content = value(record).ok_or_else(no_seal)?;
    for change in record.amendments.iter().rev().flat_map(|amendment| amendment.changes.iter().rev()) {
        changes::back(&mut content, change).map_err(|misfit| Refusal::NotTold(words::misfit(&misfit, &content)))?;
    }
    Ok(Record { signed: record.signed.clone(), outcomes: record.outcomes.clone(), ..read(content)? })
}

/// A signed record with amendments done to it one after another.
///
/// # Errors
/// Where it is not signed, or an amendment does not fit to it.
pub fn replay(original: &Record, amendments: &[Amendment]) -> Result<Record, Refusal> {
    if !is_signed(original) {
        return Err(Refusal::Unsigned);
    }
    let mut content = value(original).ok_or_else(no_seal)?;
    for change in amendments.iter().flat_map(|amendment| &amendment.changes) {
        changes::forward(&mut content, change).map_err(|misfit| Refusal::NotTold(words::misfit(&misfit, &content)))?;
    }
    Ok(Record {
        signed: original.signed.clone(),
        amendments: original.amendments.iter().chain(amendments).cloned().collect(),
        outcomes: original.outcomes.clone(),
        ..read(content)?
    })
}

/// What the amendments of a record changed, in words, each in the words of the record as it then stood. It reads broken chains
/// as well, as far as they can be read.
pub fn history(record: &Record) -> Vec<Vec<String>> {
    let mut all = Vec::with_capacity(record.amendments.len());
    let mut content = value(record).unwrap_or(Value::Null);
    for amendment in record.amendments.iter().rev() {
        let mut told = Vec::with_capacity(amendment.changes.len());
        for change in amendment.changes.iter().rev() {
            told.push(words::told(change, &content));
            // What does not fit is told by the seal.
            let _ = changes::back(&mut content, change);
        }
        told.reverse();
        all.push(told);
    }
    all.reverse();
    all
}

/// What differs between a record and what it is to become, in words. Outcomes are not looked at.
pub fn differences(record: &Record, changed: &Record) -> Vec<String> {
    let Some((mut stands, is)) = value(record).zip(value(changed)) else { return Vec::new() };
    let mut told = Vec::new();
    for change in changes::between(&stands, &is) {
        let _ = changes::forward(&mut stands, &change);
        told.push(words::told(&change, &stands));
    }
    told
}

fn read(content: Value) -> Result<Record, Refusal> {
    serde_json::from_value(content).map_err(|error| Refusal::NotTold(error.to_string()))
}
