//! Records from a file into a farm: those that are there already are not entered twice.

use tankard_core::farm::{Farm, Id, Record, id};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::season::seal;
use tankard_core::t;

use super::read::Coming;
use crate::alike::{self, Log};

/// What the farm has under the id of a record that comes.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Meets {
    /// Nothing.
    Nothing,
    /// The same record.
    Same,
    /// Another record.
    Another,
}

/// What the farm has under the id of a record.
pub fn meets(farm: &Farm, coming: &Coming) -> Meets {
    match farm.records.get(&coming.id) {
        None => Meets::Nothing,
        Some(own) if is_same(own, &coming.record) => Meets::Same,
        Some(_) => Meets::Another,
    }
}

/// Which of the records that the farm has nothing under the id of look like one that it has: the same day, field and product. A
/// sentence each.
pub fn alike(farm: &Farm, records: &[Coming]) -> Vec<String> {
    alike_told(farm, records, &untold).unwrap_or_default()
}

/// The same, told how many are looked at.
///
/// # Errors
/// [`Cancelled`] where it is ended.
pub fn alike_told(farm: &Farm, records: &[Coming], tell: &Tell<'_>) -> Result<Vec<String>, Cancelled> {
    let log = Log::of(farm);
    let say = |coming: &Coming| {
        let own = log.like(&coming.record)?;
        Some(t!("file-line-looks-like-one-in-the", line = coming.line, id = coming.id, own = alike::named(own)))
    };
    let mut alike = Vec::new();
    for (at, coming) in records.iter().enumerate() {
        tell(at, Some(records.len()))?;
        if meets(farm, coming) == Meets::Nothing {
            alike.extend(say(coming));
        }
    }
    Ok(alike)
}

/// Whether two records say the same, but for the line ends of their texts.
fn is_same(own: &Record, other: &Record) -> bool {
    own == other
        || own.date == other.date
            && own.lines.len() == other.lines.len()
            && seal::with_line_feeds(own).as_ref() == Some(other)
}

/// What became of the records of a file.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Entered {
    /// The ids of those entered.
    pub entered: Vec<Id>,
    /// How many were there already, word for word.
    pub same: usize,
    /// The ids of those left out because another record has their id.
    pub others: Vec<Id>,
}

/// Enters records. One that is there already is skipped; one whose id another record has is left out, or entered under an id
/// of its own.
pub fn enter(farm: &mut Farm, records: &[Coming], others_as_new: bool) -> Entered {
    let mut done = Entered::default();
    for coming in records {
        let own = match meets(farm, coming) {
            Meets::Nothing => coming.id.clone(),
            Meets::Same => {
                done.same += 1;
                continue;
            }
            // Entered under another id before.
            Meets::Another if others_as_new && farm.records.values().any(|own| is_same(own, &coming.record)) => {
                done.same += 1;
                continue;
            }
            Meets::Another if others_as_new => id::fresh(&farm.records, &coming.id),
            Meets::Another => {
                done.others.push(coming.id.clone());
                continue;
            }
        };
        farm.records.insert(own.clone(), coming.record.clone());
        done.entered.push(own);
    }
    done
}
