//! Which records the list shows: those of a season that hold every word looked for, the newest first.

use std::cell::{OnceCell, RefCell};
use std::cmp::Reverse;
use std::collections::HashMap;
use std::rc::Rc;

use jiff::civil::Date;
use tankard_core::farm::{Farm, Record};
use tankard_core::season::profile::{self, Open};
use tankard_core::season::{self, Totals, find};
use tankard_core::t;

/// Which season is shown.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Season {
    /// The present year, or the last one that has records.
    #[default]
    Newest,
    /// A calendar year.
    Year(i16),
    /// All of them.
    All,
}

impl Season {
    /// In words.
    pub(super) fn words(self) -> String {
        match self {
            Self::Newest => t!("season-log-newest-season").to_owned(),
            Self::Year(year) => year.to_string(),
            Self::All => t!("season-log-all-seasons").to_owned(),
        }
    }
}

/// The rows of the list, for one state of the farm and one question.
#[derive(Debug)]
pub(super) struct Listed {
    asked: (u64, String, Season, i16),
    /// Places in the farm's records.
    pub(super) rows: Vec<usize>,
    /// How many records the season has.
    pub(super) of: usize,
    /// The season in a few numbers, whatever is looked for.
    pub(super) totals: Totals,
    /// The years that have records, the newest first.
    pub(super) years: Vec<i16>,
    /// The year shown; `None` for all.
    pub(super) year: Option<i16>,
    /// What is open of the records that came into sight, by their place and the day.
    open: RefCell<HashMap<(usize, Date), Rc<Open>>>,
    /// What of each record is looked through, made when it is first asked for.
    texts: Rc<Vec<OnceCell<String>>>,
}

impl Listed {
    /// What is open of the record at a place, reckoned when it first comes into sight.
    pub(super) fn open(&self, farm: &Farm, at: usize, record: &Record, today: Date) -> Rc<Open> {
        let mut known = self.open.borrow_mut();
        Rc::clone(known.entry((at, today)).or_insert_with(|| Rc::new(profile::open(farm, record, today))))
    }
}

impl Listed {
    /// The state of the farm that it is of.
    pub(super) fn revision(&self) -> u64 {
        self.asked.0
    }
}

/// The rows as they were, where nothing that they depend on has changed, or else new ones.
pub(super) fn fresh(
    before: Option<Rc<Listed>>,
    farm: &Farm,
    revision: u64,
    filter: &str,
    season: Season,
    this_year: i16,
) -> Rc<Listed> {
    let asked = (revision, filter.to_owned(), season, this_year);
    match before {
        Some(before) if before.asked == asked => before,
        // Another question to the same state of the farm.
        Some(before) if before.revision() == revision => {
            Rc::new(Listed { open: before.open.clone(), ..list(farm, asked, Rc::clone(&before.texts)) })
        }
        _ => Rc::new(list(farm, asked, Rc::new(vec![OnceCell::new(); farm.records.len()]))),
    }
}

fn list(farm: &Farm, asked: (u64, String, Season, i16), texts: Rc<Vec<OnceCell<String>>>) -> Listed {
    let (_, filter, season, this_year) = &asked;
    let mut years: Vec<i16> = farm.records.values().map(|record| record.date.year()).collect();
    years.sort_unstable_by_key(|year| Reverse(*year));
    years.dedup();
    let year = match season {
        Season::All => None,
        Season::Year(year) => Some(*year),
        Season::Newest if years.contains(this_year) => Some(*this_year),
        Season::Newest => Some(years.first().copied().unwrap_or(*this_year)),
    };
    let in_season = |record: &Record| year.is_none_or(|year| record.date.year() == year);
    let totals = season::sum(farm.records.values().filter(|record| in_season(record)));
    let words = find::words(filter);
    let holds = |at: usize, record: &Record| {
        words.is_empty()
            || texts.get(at).is_some_and(|text| find::holds(text.get_or_init(|| find::text(record)), &words))
    };
    let mut rows: Vec<(usize, &Record)> = farm
        .records
        .values()
        .enumerate()
        .filter(|(_, record)| in_season(record))
        .filter(|(at, record)| holds(*at, record))
        .collect();
    rows.sort_by_key(|(at, record)| Reverse((record.date, record.start, *at)));
    let rows = rows.into_iter().map(|(at, _)| at).collect();
    Listed { rows, of: totals.passes, totals, years, year, asked, open: RefCell::default(), texts }
}
