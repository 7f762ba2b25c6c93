//! The open document: the farm, where it lives, what was undone, and the plans of its passes.

use std::collections::HashMap;
use std::path::PathBuf;
use std::sync::Arc;

use jiff::civil::Date;
use tankard_core::day::{DayPlan, plan_day};
use tankard_core::farm::{Card, Farm, Id};
use tankard_core::plan::{Plan, plan};
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
    /// States of the farm with their revisions, the present one at `at`.
    history: Vec<(u64, Arc<Farm>)>,
    at: usize,
    plans: HashMap<Id, Arc<Plan>>,
    days: HashMap<Date, Arc<DayPlan>>,
    plans_revision: u64,
}

impl Document {
    /// A document of a farm that is not on disk.
    pub fn new(farm: Farm) -> Self {
        let first = Arc::new(farm.clone());
        Self {
            saved_cards: farm.cards.len(),
            farm,
            path: None,
            stamp: None,
            revision: 0,
            saved_revision: None,
            history: vec![(0, first)],
            at: 0,
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
        let (farm, stamp) = store::open(&path)?;
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

    /// Which state of the document this is.
    pub fn revision(&self) -> u64 {
        self.revision
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
            self.farm.cards.entry(number).or_insert(card);
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
        self.revision = self.history.iter().map(|(revision, _)| *revision).max().unwrap_or(0).max(self.revision) + 1;
    }

    /// Takes a point to which undo comes back, where anything changed since the last one.
    pub fn take_point(&mut self) {
        if self.history.get(self.at).is_some_and(|(revision, _)| *revision == self.revision) {
            return;
        }
        self.history.truncate(self.at + 1);
        self.history.push((self.revision, Arc::new(self.farm.clone())));
        if self.history.len() > STEPS {
            self.history.remove(0);
        }
        self.at = self.history.len() - 1;
    }

    /// Whether there is something to undo.
    pub fn can_undo(&self) -> bool {
        self.at > 0 || self.history.get(self.at).is_some_and(|(revision, _)| *revision != self.revision)
    }

    /// Whether there is something to redo.
    pub fn can_redo(&self) -> bool {
        self.at + 1 < self.history.len()
    }

    /// One step back.
    pub fn undo(&mut self) {
        self.take_point();
        if self.at > 0 {
            self.at -= 1;
            self.restore();
        }
    }

    /// One step forward.
    pub fn redo(&mut self) {
        if self.can_redo() {
            self.at += 1;
            self.restore();
        }
    }

    fn restore(&mut self) {
        if let Some((revision, farm)) = self.history.get(self.at) {
            self.revision = *revision;
            let cards = std::mem::take(&mut self.farm.cards);
            self.farm = Farm { cards, ..Farm::clone(farm) };
        }
    }

    /// The plan of a pass, reckoned once a revision.
    pub fn plan(&mut self, pass: &str) -> Option<Arc<Plan>> {
        self.forget_old();
        if let Some(known) = self.plans.get(pass) {
            return Some(Arc::clone(known));
        }
        let made = Arc::new(plan(&self.farm, pass)?);
        self.plans.insert(pass.to_owned(), Arc::clone(&made));
        Some(made)
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
        let made = Arc::new(plan_day(&self.farm, day, &plans));
        self.days.insert(day, Arc::clone(&made));
        made
    }

    /// Forgets what was reckoned for another revision.
    fn forget_old(&mut self) {
        if self.plans_revision != self.revision {
            self.plans.clear();
            self.days.clear();
            self.plans_revision = self.revision;
        }
    }

    /// Saves to where it came from.
    ///
    /// # Errors
    /// As [`store::save`].
    pub fn save(&mut self) -> Result<(), StoreError> {
        match self.path.clone() {
            Some(path) => self.save_to(path, self.stamp),
            None => Ok(()),
        }
    }

    /// Saves under another name, whatever is there.
    ///
    /// # Errors
    /// As [`store::save`].
    pub fn save_as(&mut self, path: PathBuf) -> Result<(), StoreError> {
        self.save_to(path, None)
    }

    fn save_to(&mut self, path: PathBuf, stamp: Option<Stamp>) -> Result<(), StoreError> {
        self.stamp = Some(store::save(&path, &self.farm, stamp)?);
        self.path = Some(path);
        self.take_point();
        self.saved_revision = Some(self.revision);
        self.saved_cards = self.farm.cards.len();
        Ok(())
    }
}

#[cfg(test)]
mod tests {
    use super::Document;
    use tankard_core::farm::Farm;

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
}
