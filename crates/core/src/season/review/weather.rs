//! The weather at application. Holding a record against its labels takes about as long as all pages together, so it is asked
//! record by record: keep what comes back as long as the farm does not change.

use super::Picked;
use crate::farm::{Farm, Id};
use crate::finding::{Finding, Level};
use crate::season::outside::judge;

/// What of the weather was not measured: how many records lack it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Unmeasured {
    /// Wind.
    pub wind: usize,
    /// Air temperature.
    pub temperature: usize,
    /// Humidity.
    pub humidity: usize,
}

/// What of the weather was not measured, of what is picked.
pub fn unmeasured(picked: &Picked<'_>) -> Unmeasured {
    picked.entries().fold(Unmeasured::default(), |sum, (_, entry)| {
        let [wind, temperature, humidity] = entry.unmeasured.map(usize::from);
        Unmeasured {
            wind: sum.wind + wind,
            temperature: sum.temperature + temperature,
            humidity: sum.humidity + humidity,
        }
    })
}

/// What of a record's weather lay outside a limit; nothing where there is no such record.
pub fn of_record(farm: &Farm, id: &Id) -> Vec<Finding> {
    farm.records.get(id).map(|record| judge(farm, id, record)).unwrap_or_default()
}

/// How many records lay outside.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Outside {
    /// How many records were held against limits.
    pub judged: usize,
    /// Outside what a label or a law asks.
    pub of_label_or_law: usize,
    /// Outside what the farm keeps to, or what is usual, and nothing more.
    pub of_practice: usize,
}

/// Sums up what [`of_record`] told of some records.
pub fn outside<'a>(judged: impl Iterator<Item = &'a [Finding]>) -> Outside {
    judged.fold(Outside::default(), |sum, findings| {
        let worst = findings.iter().map(|finding| finding.level).max();
        Outside {
            judged: sum.judged + 1,
            of_label_or_law: sum.of_label_or_law + usize::from(worst >= Some(Level::Check)),
            of_practice: sum.of_practice + usize::from(worst == Some(Level::Note)),
        }
    })
}
