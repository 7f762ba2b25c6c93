//! The open document: the farm, where it lives, what was undone, and the plans of its passes.

use std::collections::HashMap;
use std::mem;
use std::path::{Path, PathBuf};
use std::sync::Arc;

use jiff::civil::Date;
use tankard_core::day::{DayPlan, plan_day_of};
use tankard_core::farm::{Card, Farm, Id};
use tankard_core::language::{Language, spoken};
use tankard_core::plan::{Plan, plan_of};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::season::Log;
use tankard_file::store::{self, Stamp, StoreError};

/// How many steps can be undone.
const STEPS: usize = 200;

/// A farm being worked on.
pub struct Document {
    farm: Farm,
    /// Where it is saved; none for a farm that never was.
    path: Option<PathBuf>,
    stamp: Option<Stamp>,
    /// Rises with every change; plans are kept by it.
    revision: u64,
    saved_revision: Option<u64>,
    /// How many issued cards are on disk. Cards are only ever added, so a count tells.
    saved_cards: usize,
    /// States of the farm, the present one at `at`.
    history: Vec<Point>,
    at: usize,
    log: Arc<Log>,
    /// Of which revision it is.
    log_revision: Option<u64>,
    plans: HashMap<Id, Arc<Plan>>,
    days: HashMap<Date, Arc<DayPlan>>,
    plans_revision: u64,
}

/// A state of the farm that undo comes back to. It shares all nouns that are as they are now.
struct Point {
    revision: u64,
    farm: Farm,
}

impl Document {
    /// A document of a farm that is not on disk.
    pub fn new(farm: Farm) -> Self {
        let first = Point { revision: 0, farm: farm.clone() };
        Self {
            saved_cards: farm.cards.len(),
            farm,
            path: None,
            stamp: None,
            revision: 0,
            saved_revision: None,
            history: vec![first],
            at: 0,
            log: Arc::default(),
            log_revision: None,
            plans: HashMap::new(),
            days: HashMap::new(),
            plans_revision: 0,
        }
    }

    /// A document that nobody misses when it is closed unchanged: a new farm, or a copy of the demo.
    pub fn copy(farm: Farm) -> Self {
        Self { saved_revision: Some(0), ..Self::new(farm) }
    }

    /// Opens a farm from disk.
    ///
    /// # Errors
    /// As [`store::open`].
    pub fn open(path: PathBuf) -> Result<Self, StoreError> {
        Self::open_told(path, &untold)
    }

    /// The same, which tells how far it is.
    ///
    /// # Errors
    /// As [`store::open_told`].
    pub fn open_told(path: PathBuf, tell: &Tell<'_>) -> Result<Self, StoreError> {
        let (farm, stamp) = store::open_told(&path, tell)?;
        let mut document = Self::new(farm);
        document.path = Some(path);
        document.stamp = Some(stamp);
        document.saved_revision = Some(0);
        Ok(document)
    }

    /// The farm.
    pub fn farm(&self) -> &Farm {
        &self.farm
    }

    /// Where it is saved.
    pub fn path(&self) -> Option<&PathBuf> {
        self.path.as_ref()
    }

    /// Which state of the document this is, and in which language it is spoken of: what was made for one is made anew for another.
    pub fn revision(&self) -> u64 {
        self.revision * Language::ALL.len() as u64 + spoken() as u64
    }

    /// What the file held when it was last read or written.
    pub fn stamp(&self) -> Option<Stamp> {
        self.stamp
    }

    /// Whether there is work that is not on disk. Undoing back to what was saved is clean again, unless cards were issued.
    pub fn is_unsaved(&self) -> bool {
        self.saved_revision != Some(self.revision) || self.unsaved_cards() > 0
    }

    /// How many cards were issued that are not on disk.
    pub fn unsaved_cards(&self) -> usize {
        self.farm.cards.len().saturating_sub(self.saved_cards)
    }

    /// Keeps cards that were handed out. That cannot be undone, or a number would be given to two papers; so it is no step
    /// for undo, and no card issued before is touched.
    pub fn issue(&mut self, cards: impl IntoIterator<Item = (Id, Card)>) {
        for (number, card) in cards {
            if !self.farm.cards.contains_key(&number) {
                self.farm.cards.insert(number, card);
            }
        }
    }

    /// Takes up work of an earlier run in the place of the present. Cards issued in either were handed out.
    pub fn take_up(&mut self, work: Farm) {
        let cards = std::mem::take(&mut self.farm.cards);
        self.edit(|farm| *farm = work);
        self.issue(cards);
    }

    /// Changes the farm.
    pub fn edit(&mut self, change: impl FnOnce(&mut Farm)) {
        change(&mut self.farm);
        self.revision = self.history.iter().map(|point| point.revision).max().unwrap_or(0).max(self.revision) + 1;
    }

    /// Takes a point to which undo comes back, where anything changed since the last one.
    pub fn take_point(&mut self) {
        if self.is_at_point() {
            return;
        }
        self.history.truncate(self.at + 1);
        self.history.push(Point { revision: self.revision, farm: self.farm.clone() });
        if self.history.len() > STEPS {
            self.history.remove(0);
        }
        self.at = self.history.len() - 1;
    }

    /// Whether nothing changed since the last point.
    fn is_at_point(&self) -> bool {
        self.history.get(self.at).is_some_and(|point| point.revision == self.revision)
    }

    /// Whether there is something to undo.
    pub fn can_undo(&self) -> bool {
        self.at > 0 || !self.is_at_point()
    }

    /// Whether there is something to redo.
    pub fn can_redo(&self) -> bool {
        self.at + 1 < self.history.len()
    }

    /// One step back.
    pub fn undo(&mut self) {
        self.take_point();
        if self.at > 0 {
            self.restore(self.at - 1);
        }
    }

    /// One step forward.
    pub fn redo(&mut self) {
        if self.can_redo() {
            self.restore(self.at + 1);
        }
    }

    fn restore(&mut self, to: usize) {
        let Some(point) = self.history.get(to) else { return };
        self.revision = point.revision;
        let cards = mem::take(&mut self.farm.cards);
        self.farm = Farm { cards, ..point.farm.clone() };
        self.at = to;
    }

    /// Which records lie on a field and are of a pass; what changed is looked up once a revision.
    pub fn log(&mut self) -> Arc<Log> {
        self.forget_old();
        if self.log_revision != Some(self.revision) {
            // Where nobody holds the one before, nothing of it is copied.
            Arc::make_mut(&mut self.log).catch_up(&self.farm);
            self.log_revision = Some(self.revision);
        }
        Arc::clone(&self.log)
    }

    /// The plan of a pass, reckoned once a revision.
    pub fn plan(&mut self, pass: &str) -> Option<Arc<Plan>> {
        self.forget_old();
        if let Some(known) = self.plans.get(pass) {
            return Some(Arc::clone(known));
        }
        let log = self.log();
        let made = Arc::new(plan_of(&self.farm, &log, pass)?);
        self.plans.insert(pass.to_owned(), Arc::clone(&made));
        Some(made)
    }

    /// The plan of a pass, where it is reckoned already.
    pub fn known_plan(&mut self, pass: &str) -> Option<Arc<Plan>> {
        self.forget_old();
        self.plans.get(pass).cloned()
    }

    /// Plans all passes, so that the first frame finds their plans.
    ///
    /// # Errors
    /// [`Cancelled`] where it is ended.
    pub fn plan_ahead(&mut self, tell: &Tell<'_>) -> Result<(), Cancelled> {
        let ids: Vec<Id> = self.farm.passes.keys().cloned().collect();
        for (at, id) in ids.iter().enumerate() {
            tell(at, Some(ids.len()))?;
            self.plan(id);
        }
        Ok(())
    }

    /// The plans of the passes of a day.
    pub fn plans_of(&mut self, day: Date) -> Vec<Arc<Plan>> {
        let of_day = self.farm.passes.iter().filter(|(_, pass)| pass.date == day);
        let ids: Vec<Id> = of_day.map(|(id, _)| id.clone()).collect();
        ids.iter().filter_map(|id| self.plan(id)).collect()
    }

    /// The plan of a day, reckoned once a revision.
    pub fn day(&mut self, day: Date) -> Arc<DayPlan> {
        self.forget_old();
        if let Some(known) = self.days.get(&day) {
            return Arc::clone(known);
        }
        let plans = self.plans_of(day);
        let plans: Vec<&Plan> = plans.iter().map(AsRef::as_ref).collect();
        let log = self.log();
        let made = Arc::new(plan_day_of(&self.farm, &log, day, &plans));
        self.days.insert(day, Arc::clone(&made));
        made
    }

    /// The plan of a day, where it is reckoned already.
    pub fn known_day(&mut self, day: Date) -> Option<Arc<DayPlan>> {
        self.forget_old();
        self.days.get(&day).cloned()
    }

    /// Takes the plan of a day that was reckoned elsewhere for the present revision.
    pub fn know_day(&mut self, day: DayPlan) {
        self.forget_old();
        self.days.insert(day.date, Arc::new(day));
    }

    /// Forgets what was reckoned for another revision.
    fn forget_old(&mut self) {
        if self.plans_revision != self.revision() {
            self.plans.clear();
            self.days.clear();
            self.plans_revision = self.revision();
        }
    }

    /// Which state it is, whatever language it is spoken of in.
    pub fn state(&self) -> Saved {
        Saved { revision: self.revision, cards: self.farm.cards.len() }
    }

    /// The present state, to be saved on another thread while edits go on.
    pub fn snapshot(&self) -> Snapshot {
        Snapshot { revision: self.revision, farm: self.farm.clone() }
    }

    /// Takes note that a state is on disk, under this name. What was edited since is not.
    pub fn is_on_disk(&mut self, state: &Saved, path: &Path, stamp: Stamp) {
        self.path = Some(path.to_owned());
        self.stamp = Some(stamp);
        self.saved_revision = Some(state.revision);
        self.saved_cards = state.cards;
    }

    /// Takes up what the file holds now in the place of the present; one step of undo comes back.
    pub fn take_theirs(&mut self, theirs: Farm, stamp: Stamp) {
        self.take_point();
        self.take_up(theirs);
        self.take_point();
        let state = Saved { revision: self.revision, cards: self.farm.cards.len() };
        if let Some(path) = self.path.clone() {
            self.is_on_disk(&state, &path, stamp);
        }
    }

    /// A document of what was recovered for a file that does not read. It is not saved; `stamp` is what the file holds.
    pub fn recovered(farm: Farm, path: PathBuf, stamp: Option<Stamp>) -> Self {
        let mut document = Self::new(farm);
        document.path = Some(path);
        document.stamp = stamp;
        document.saved_cards = 0;
        document
    }
}

/// Which state of a document is on disk.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Saved {
    /// Its revision.
    pub revision: u64,
    /// How many cards were issued.
    pub cards: usize,
}

/// A state of a document by itself. It costs little to make, since it shares the nouns.
pub struct Snapshot {
    revision: u64,
    farm: Farm,
}

impl Snapshot {
    /// Which state it is.
    pub fn state(&self) -> Saved {
        Saved { revision: self.revision, cards: self.farm.cards.len() }
    }

    /// The farm, whole.
    pub fn into_farm(self) -> Farm {
        self.farm
    }
}

#[cfg(test)]
mod tests {
    use super::Document;
    use jiff::civil::date;
    use tankard_core::farm::{Farm, Record};

    #[test]
    fn a_snapshot_is_the_farm_as_it_stood() {
        let mut farm = Farm::new("a");
        for name in ["one", "two"] {
            farm.records.insert(name.to_owned(), Record::new(name, date(2031, 6, 1)));
        }
        let mut document = Document::new(farm);
        // At a point, in the middle of something, and with what is edited afterwards.
        let at_point = document.snapshot();
        document.edit(|farm| farm.records["two"].note = "windy".into());
        let between = document.snapshot();
        let then = document.farm().clone();
        document.edit(|farm| farm.name = "b".to_owned());
        assert_eq!(at_point.into_farm().records["two"].note, "");
        assert_eq!((between.state().revision, between.into_farm()), (1, then));
        let state = document.snapshot().state();
        document.edit(|farm| farm.name = "c".to_owned());
        let stamp = tankard_file::store::stamp(b"b");
        document.is_on_disk(&state, std::path::Path::new("farm.ron"), stamp);
        assert!(document.is_unsaved(), "what was edited while it was being saved is not on disk");
        document.take_point();
        document.take_theirs(Farm::new("theirs"), stamp);
        assert!(!document.is_unsaved() && document.farm().name == "theirs");
        document.undo();
        assert!(document.is_unsaved() && document.farm().name == "c");
    }

    #[test]
    fn undo_comes_back_to_each_point_and_to_clean() {
        let mut document = Document::new(Farm::new("a"));
        document.saved_revision = Some(0);
        for name in ["b", "c"] {
            document.edit(|farm| farm.name = name.to_owned());
            document.take_point();
        }
        assert!(document.is_unsaved());
        document.undo();
        assert_eq!(document.farm().name, "b");
        document.undo();
        assert_eq!(document.farm().name, "a");
        assert!(!document.is_unsaved() && !document.can_undo());
        document.redo();
        assert_eq!(document.farm().name, "b");
        document.edit(|farm| farm.name = "d".to_owned());
        assert!(document.can_undo());
        document.undo();
        assert_eq!(document.farm().name, "b");
        document.redo();
        assert_eq!(document.farm().name, "d");
        assert!(!document.can_redo());
    }

    /// A point that shares records with the one before gives back each state as it was.
    #[test]
    fn records_come_back_with_each_point() {
        let mut farm = Farm::new("a");
        for name in ["one", "two", "three"] {
            farm.records.insert(name.to_owned(), Record::new(name, date(2031, 6, 1)));
        }
        let mut document = Document::new(farm);
        let mut states = vec![document.farm().clone()];
        let edits: [fn(&mut Farm); 5] = [
            |farm| farm.name = "b".to_owned(),
            |farm| farm.records["two"].note = "windy".into(),
            |farm| {
                farm.records.shift_remove("one");
            },
            |farm| {
                farm.records.shift_insert(0, "new".to_owned(), Record::new("new", date(2031, 6, 2)));
            },
            |farm| farm.records.swap_indices(0, 2),
        ];
        for edit in edits {
            document.edit(edit);
            document.take_point();
            states.push(document.farm().clone());
        }
        let same = |one: &Farm, other: &Farm| one == other && one.records.keys().eq(other.records.keys());
        for state in states.iter().rev().skip(1) {
            document.undo();
            assert!(same(document.farm(), state));
        }
        for state in states.iter().skip(1) {
            document.redo();
            assert!(same(document.farm(), state));
        }
        // Without a point taken, a change goes when another state is come back to.
        document.undo();
        document.edit(|farm| farm.records["new"].note = "gone".into());
        document.redo();
        assert!(states.last().is_some_and(|last| same(document.farm(), last)));
    }
}
