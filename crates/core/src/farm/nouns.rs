//! The farm's collections: things by id, in the order that people gave them. Copies share what they hold, so that a point for undo
//! or a state to save costs next to nothing however large the farm is, and what changes is copied alone.

use std::collections::hash_map::RandomState;
use std::fmt;
use std::hash::BuildHasher;
use std::iter::FusedIterator;
use std::ops::{Index, IndexMut};
use std::sync::Arc;

use hashbrown::HashTable;
use serde::de::{Deserialize, Deserializer};
use serde::ser::{Serialize, Serializer};

use super::Id;
use super::unique::{self, ById};

/// How many entries lie together: an edit copies the pointers of so many, and a copy of the collection holds one pointer for them.
const TOGETHER: usize = 64;

type Entry<T> = (Id, Arc<T>);

/// Things by id, in an order that means something. It is used like an ordered map; a copy shares all entries until one is changed.
///
/// # Examples
/// ```
/// use tankard_core::farm::Nouns;
/// let mut names: Nouns<String> = Nouns::new();
/// names.insert("mill".to_owned(), "Mill field".to_owned());
/// let before = names.clone();
/// assert!(names.is_same(&before));
/// names["mill"].push_str(", south");
/// assert_eq!((before["mill"].as_str(), names["mill"].as_str()), ("Mill field", "Mill field, south"));
/// ```
pub struct Nouns<T> {
    /// All of [`TOGETHER`] entries but the last.
    parts: Vec<Arc<Vec<Entry<T>>>>,
    /// The place of each id.
    places: Arc<HashTable<usize>>,
    hasher: RandomState,
}

impl<T> Nouns<T> {
    /// None yet.
    pub fn new() -> Self {
        Self { parts: Vec::new(), places: Arc::new(HashTable::new()), hasher: RandomState::new() }
    }

    /// How many.
    pub fn len(&self) -> usize {
        self.parts.last().map_or(0, |last| (self.parts.len() - 1) * TOGETHER + last.len())
    }

    /// Whether there are none.
    pub fn is_empty(&self) -> bool {
        self.parts.is_empty()
    }

    /// Whether both share all their entries, in the same order: then nothing was changed since one was copied from the other. `false`
    /// says nothing.
    pub fn is_same(&self, other: &Self) -> bool {
        self.parts.len() == other.parts.len()
            && self.parts.iter().zip(&other.parts).all(|(own, other)| Arc::ptr_eq(own, other))
    }

    fn entry(&self, place: usize) -> Option<&Entry<T>> {
        self.parts.get(place / TOGETHER)?.get(place % TOGETHER)
    }

    /// The thing of an id, as it is shared with copies.
    pub fn shared(&self, id: &str) -> Option<&Arc<T>> {
        self.entry(self.get_index_of(id)?).map(|(_, thing)| thing)
    }

    /// The place of an id.
    pub fn get_index_of(&self, id: &str) -> Option<usize> {
        let is_it = |place: &usize| self.entry(*place).is_some_and(|(own, _)| own == id);
        self.places.find(self.hasher.hash_one(id), is_it).copied()
    }

    /// Whether an id is there.
    pub fn contains_key(&self, id: &str) -> bool {
        self.get_index_of(id).is_some()
    }

    /// The thing of an id.
    pub fn get(&self, id: &str) -> Option<&T> {
        self.shared(id).map(AsRef::as_ref)
    }

    /// An id, as it stands here, and its thing.
    pub fn get_key_value(&self, id: &str) -> Option<(&Id, &T)> {
        self.get_index(self.get_index_of(id)?)
    }

    /// The same, and its place.
    pub fn get_full(&self, id: &str) -> Option<(usize, &Id, &T)> {
        let place = self.get_index_of(id)?;
        self.get_index(place).map(|(id, thing)| (place, id, thing))
    }

    /// What stands at a place.
    pub fn get_index(&self, place: usize) -> Option<(&Id, &T)> {
        self.entry(place).map(|(id, thing)| (id, thing.as_ref()))
    }

    /// The first.
    pub fn first(&self) -> Option<(&Id, &T)> {
        self.get_index(0)
    }

    /// The last.
    pub fn last(&self) -> Option<(&Id, &T)> {
        self.get_index(self.len().checked_sub(1)?)
    }

    /// All of them, in order.
    pub fn iter(&self) -> Iter<'_, T> {
        Iter { nouns: self, from: 0, to: self.len() }
    }

    /// The places of what was changed in a later state that has the same ids in the same places, and perhaps more behind them; `None`
    /// where it has not. What both share is not looked at.
    pub fn changed_in(&self, later: &Self) -> Option<Vec<usize>> {
        if later.len() < self.len() {
            return None;
        }
        let mut changed = Vec::new();
        for (number, (own, other)) in self.parts.iter().zip(&later.parts).enumerate() {
            if Arc::ptr_eq(own, other) {
                continue;
            }
            for (at, ((id, was), (other_id, is))) in own.iter().zip(other.iter()).enumerate() {
                if id != other_id {
                    return None;
                }
                if !Arc::ptr_eq(was, is) {
                    changed.push(number * TOGETHER + at);
                }
            }
        }
        Some(changed)
    }

    /// The ids, in order.
    pub fn keys(&self) -> impl ExactSizeIterator<Item = &Id> + DoubleEndedIterator + Clone {
        self.iter().map(|(id, _)| id)
    }

    /// The things, in order.
    pub fn values(&self) -> impl ExactSizeIterator<Item = &T> + DoubleEndedIterator + Clone {
        self.iter().map(|(_, thing)| thing)
    }

    /// Takes all out.
    pub fn clear(&mut self) {
        *self = Self::new();
    }

    /// Finds all places anew.
    fn place_all(&mut self) {
        let mut places = HashTable::with_capacity(self.len());
        for (place, (id, _)) in self.iter().enumerate() {
            let hash = |place: &usize| self.entry(*place).map_or(0, |(id, _)| self.hasher.hash_one(id));
            places.insert_unique(self.hasher.hash_one(id), place, hash);
        }
        self.places = Arc::new(places);
    }

    /// Puts what has a new id behind all others.
    fn push(&mut self, id: Id, thing: Arc<T>) {
        let place = self.len();
        let hash = self.hasher.hash_one(&id);
        if place.is_multiple_of(TOGETHER) {
            self.parts.push(Arc::new(Vec::new()));
        }
        if let Some(last) = self.parts.last_mut() {
            Arc::make_mut(last).push((id, thing));
        }
        let parts = &self.parts;
        let hash_of = |place: &usize| {
            let entry = parts.get(place / TOGETHER).and_then(|part| part.get(place % TOGETHER));
            entry.map_or(0, |(id, _)| self.hasher.hash_one(id))
        };
        Arc::make_mut(&mut self.places).insert_unique(hash, place, hash_of);
    }

    /// Changes the order or takes some out: each entry is moved, none is copied.
    fn rearrange<R>(&mut self, change: impl FnOnce(&mut Vec<Entry<T>>) -> R) -> R {
        let parts = std::mem::take(&mut self.parts);
        let mut all: Vec<Entry<T>> = parts.into_iter().flat_map(Arc::unwrap_or_clone).collect();
        let result = change(&mut all);
        let mut all = all.into_iter();
        loop {
            let part: Vec<Entry<T>> = all.by_ref().take(TOGETHER).collect();
            if part.is_empty() {
                break;
            }
            self.parts.push(Arc::new(part));
        }
        self.place_all();
        result
    }

    /// Lets two change places.
    pub fn swap_indices(&mut self, one: usize, other: usize) {
        if one.max(other) < self.len() {
            self.rearrange(|all| all.swap(one, other));
        }
    }

    /// Moves one to a place; those between make room.
    pub fn move_index(&mut self, from: usize, to: usize) {
        if from.max(to) < self.len() {
            self.rearrange(|all| {
                let moved = all.remove(from);
                all.insert(to, moved);
            });
        }
    }

    /// Puts them in the order of their ids.
    pub fn sort_unstable_keys(&mut self) {
        self.rearrange(|all| all.sort_unstable_by(|(one, _), (other, _)| one.cmp(other)));
    }
}

impl<T: Clone> Nouns<T> {
    fn entry_mut(&mut self, place: usize) -> Option<(&Id, &mut T)> {
        let part = Arc::make_mut(self.parts.get_mut(place / TOGETHER)?);
        part.get_mut(place % TOGETHER).map(|(id, thing)| (&*id, Arc::make_mut(thing)))
    }

    /// The thing of an id, to change it.
    pub fn get_mut(&mut self, id: &str) -> Option<&mut T> {
        self.entry_mut(self.get_index_of(id)?).map(|(_, thing)| thing)
    }

    /// What stands at a place, to change it.
    pub fn get_index_mut(&mut self, place: usize) -> Option<(&Id, &mut T)> {
        self.entry_mut(place)
    }

    /// The first, to change it.
    pub fn first_mut(&mut self) -> Option<(&Id, &mut T)> {
        self.entry_mut(0)
    }

    /// The last, to change it.
    pub fn last_mut(&mut self) -> Option<(&Id, &mut T)> {
        self.entry_mut(self.len().checked_sub(1)?)
    }

    /// All of them, to change them. Each is copied that a copy of the collection has too.
    pub fn iter_mut(&mut self) -> impl ExactSizeIterator<Item = (&Id, &mut T)> + DoubleEndedIterator {
        let entries = self.parts.iter_mut().flat_map(|part| Arc::make_mut(part).iter_mut());
        let all: Vec<(&Id, &mut T)> = entries.map(|(id, thing)| (&*id, Arc::make_mut(thing))).collect();
        all.into_iter()
    }

    /// The things, to change them, as [`Nouns::iter_mut`].
    pub fn values_mut(&mut self) -> impl ExactSizeIterator<Item = &mut T> + DoubleEndedIterator {
        self.iter_mut().map(|(_, thing)| thing)
    }

    /// Puts a thing in the place of what has its id, which it gives, or behind all others.
    pub fn insert(&mut self, id: Id, thing: T) -> Option<T> {
        self.insert_shared(id, Arc::new(thing)).map(Arc::unwrap_or_clone)
    }

    /// The same, of a thing that is shared.
    pub fn insert_shared(&mut self, id: Id, thing: Arc<T>) -> Option<Arc<T>> {
        let Some(place) = self.get_index_of(&id) else {
            self.push(id, thing);
            return None;
        };
        let part = Arc::make_mut(self.parts.get_mut(place / TOGETHER)?);
        part.get_mut(place % TOGETHER).map(|(_, own)| std::mem::replace(own, thing))
    }

    /// Puts a thing before what stands at a place; one that has its id is moved there.
    pub fn shift_insert(&mut self, place: usize, id: Id, thing: T) {
        self.shift_remove(&id);
        self.rearrange(|all| all.insert(place.min(all.len()), (id, Arc::new(thing))));
    }

    /// Takes out the thing of an id.
    pub fn shift_remove(&mut self, id: &str) -> Option<T> {
        self.shift_remove_index(self.get_index_of(id)?).map(|(_, thing)| thing)
    }

    /// Takes out what stands at a place.
    pub fn shift_remove_index(&mut self, place: usize) -> Option<(Id, T)> {
        if place >= self.len() {
            return None;
        }
        let (id, thing) = self.rearrange(|all| all.remove(place));
        Some((id, Arc::unwrap_or_clone(thing)))
    }

    /// Keeps those that fit.
    pub fn retain(&mut self, mut fits: impl FnMut(&Id, &T) -> bool) {
        self.rearrange(|all| all.retain(|(id, thing)| fits(id, thing)));
    }
}

/// Things of a collection, in order.
pub struct Iter<'a, T> {
    nouns: &'a Nouns<T>,
    from: usize,
    to: usize,
}

impl<T> Clone for Iter<'_, T> {
    fn clone(&self) -> Self {
        Self { ..*self }
    }
}

impl<'a, T> Iterator for Iter<'a, T> {
    type Item = (&'a Id, &'a T);

    fn next(&mut self) -> Option<Self::Item> {
        self.nth(0)
    }

    fn nth(&mut self, skip: usize) -> Option<Self::Item> {
        let at = self.from.saturating_add(skip);
        if at >= self.to {
            self.from = self.to;
            return None;
        }
        self.from = at + 1;
        self.nouns.get_index(at)
    }

    fn size_hint(&self) -> (usize, Option<usize>) {
        (self.to - self.from, Some(self.to - self.from))
    }
}

impl<T> DoubleEndedIterator for Iter<'_, T> {
    fn next_back(&mut self) -> Option<Self::Item> {
        if self.from >= self.to {
            return None;
        }
        self.to -= 1;
        self.nouns.get_index(self.to)
    }
}

impl<T> ExactSizeIterator for Iter<'_, T> {}
impl<T> FusedIterator for Iter<'_, T> {}

impl<'a, T> IntoIterator for &'a Nouns<T> {
    type Item = (&'a Id, &'a T);
    type IntoIter = Iter<'a, T>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter()
    }
}

impl<'a, T: Clone> IntoIterator for &'a mut Nouns<T> {
    type Item = (&'a Id, &'a mut T);
    type IntoIter = std::vec::IntoIter<Self::Item>;

    fn into_iter(self) -> Self::IntoIter {
        self.iter_mut().collect::<Vec<_>>().into_iter()
    }
}

impl<T: Clone> IntoIterator for Nouns<T> {
    type Item = (Id, T);
    type IntoIter = std::vec::IntoIter<Self::Item>;

    fn into_iter(self) -> Self::IntoIter {
        let entries = self.parts.into_iter().flat_map(Arc::unwrap_or_clone);
        let all: Vec<(Id, T)> = entries.map(|(id, thing)| (id, Arc::unwrap_or_clone(thing))).collect();
        all.into_iter()
    }
}

impl<T: Clone> Extend<(Id, T)> for Nouns<T> {
    fn extend<I: IntoIterator<Item = (Id, T)>>(&mut self, entries: I) {
        for (id, thing) in entries {
            self.insert(id, thing);
        }
    }
}

impl<T: Clone> FromIterator<(Id, T)> for Nouns<T> {
    fn from_iter<I: IntoIterator<Item = (Id, T)>>(entries: I) -> Self {
        let mut nouns = Self::new();
        nouns.extend(entries);
        nouns
    }
}

impl<T: Clone, const N: usize> From<[(Id, T); N]> for Nouns<T> {
    fn from(entries: [(Id, T); N]) -> Self {
        entries.into_iter().collect()
    }
}

// By hand, since neither needs anything of what is shared.
impl<T> Clone for Nouns<T> {
    fn clone(&self) -> Self {
        Self { parts: self.parts.clone(), places: Arc::clone(&self.places), hasher: self.hasher.clone() }
    }
}

impl<T> Default for Nouns<T> {
    fn default() -> Self {
        Self::new()
    }
}

impl<T: fmt::Debug> fmt::Debug for Nouns<T> {
    fn fmt(&self, f: &mut fmt::Formatter<'_>) -> fmt::Result {
        f.debug_map().entries(self).finish()
    }
}

/// The same things under the same ids, in whatever order.
impl<T: PartialEq> PartialEq for Nouns<T> {
    fn eq(&self, other: &Self) -> bool {
        let has =
            |(id, own): &Entry<T>| other.shared(id).is_some_and(|theirs| Arc::ptr_eq(own, theirs) || own == theirs);
        self.is_same(other) || self.len() == other.len() && self.parts.iter().flat_map(|part| part.iter()).all(has)
    }
}

impl<T: Eq> Eq for Nouns<T> {}

#[expect(clippy::expect_used, reason = "an index asks for it, as that of any map; the house has none outside tests")]
mod index {
    use super::{Index, IndexMut, Nouns};

    impl<T, Q: AsRef<str> + ?Sized> Index<&Q> for Nouns<T> {
        type Output = T;

        fn index(&self, id: &Q) -> &T {
            self.get(id.as_ref()).expect("the id is there")
        }
    }

    impl<T: Clone, Q: AsRef<str> + ?Sized> IndexMut<&Q> for Nouns<T> {
        fn index_mut(&mut self, id: &Q) -> &mut T {
            self.get_mut(id.as_ref()).expect("the id is there")
        }
    }

    impl<T> Index<usize> for Nouns<T> {
        type Output = T;

        fn index(&self, place: usize) -> &T {
            self.get_index(place).expect("the place is there").1
        }
    }

    impl<T: Clone> IndexMut<usize> for Nouns<T> {
        fn index_mut(&mut self, place: usize) -> &mut T {
            self.get_index_mut(place).expect("the place is there").1
        }
    }
}

impl<T: Serialize> Serialize for Nouns<T> {
    fn serialize<S: Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
        serializer.collect_map(self)
    }
}

impl<T> ById<T> for Nouns<T> {
    fn holds(&self, id: &Id) -> bool {
        self.contains_key(id)
    }

    fn put(&mut self, id: Id, thing: T) {
        self.push(id, Arc::new(thing));
    }
}

impl<'de, T: Deserialize<'de>> Deserialize<'de> for Nouns<T> {
    fn deserialize<D: Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
        unique::map(deserializer)
    }
}

#[cfg(test)]
mod tests {
    use indexmap::IndexMap;

    use super::{Nouns, TOGETHER};

    /// What is done to a collection and to an ordered map of the library, from numbers that look like chance.
    fn step(nouns: &mut Nouns<u64>, map: &mut IndexMap<String, u64>, mut number: u64) {
        let mut next = |end: usize| {
            number = number.wrapping_mul(6_364_136_223_846_793_005).wrapping_add(1_442_695_040_888_963_407);
            usize::try_from(number >> 33).unwrap() % end.max(1)
        };
        let (what, id, place, other) = (next(12), format!("{}", next(300)), next(map.len()), next(map.len()));
        match what {
            0 => assert_eq!(nouns.shift_remove(&id), map.shift_remove(&id)),
            1 => assert_eq!(nouns.shift_remove_index(place), map.shift_remove_index(place)),
            2 if !map.is_empty() => {
                nouns.swap_indices(place, other);
                map.swap_indices(place, other);
            }
            3 if !map.is_empty() => {
                nouns.move_index(place, other);
                map.move_index(place, other);
            }
            4 if !map.contains_key(&id) => {
                nouns.shift_insert(place, id.clone(), number);
                map.shift_insert(place, id, number);
            }
            5 => assert_eq!(nouns.get_mut(&id).map(|it| *it += 1), map.get_mut(&id).map(|it| *it += 1)),
            6 if next(40) == 0 => {
                nouns.retain(|_, it| *it % 3 != 0);
                map.retain(|_, it| *it % 3 != 0);
            }
            _ => assert_eq!(nouns.insert(id.clone(), number), map.insert(id, number)),
        }
    }

    // Checked against the ordered map of the crate `indexmap`.
    #[test]
    fn it_does_what_an_ordered_map_does_and_leaves_copies_alone() {
        let (mut nouns, mut map) = (Nouns::new(), IndexMap::new());
        let mut copies: Vec<(Nouns<u64>, IndexMap<String, u64>)> = Vec::new();
        for number in 0..3_000 {
            if number % 251 == 0 {
                copies.push((nouns.clone(), map.clone()));
            }
            step(&mut nouns, &mut map, number);
            assert_eq!(nouns.len(), map.len());
        }
        assert!(copies.iter().any(|(nouns, _)| nouns.len() > 2 * TOGETHER));
        copies.push((nouns, map));
        for (nouns, map) in &copies {
            assert!(nouns.iter().eq(map) && nouns.iter().rev().eq(map.iter().rev()));
            for (place, (id, thing)) in map.iter().enumerate() {
                assert_eq!(nouns.get_full(id), Some((place, id, thing)));
            }
            assert_eq!((nouns.first(), nouns.last()), (map.first(), map.last()));
            assert_eq!(nouns.clone().into_iter().collect::<IndexMap<_, _>>(), *map);
            let mut sorted = nouns.clone();
            sorted.sort_unstable_keys();
            assert!(sorted == *nouns && sorted.keys().is_sorted());
        }
    }

    #[test]
    fn a_copy_is_the_same_until_one_is_changed() {
        let mut nouns: Nouns<u64> = (0..200).map(|n| (n.to_string(), n)).collect();
        let copy = nouns.clone();
        assert!(nouns.is_same(&copy) && nouns == copy);
        nouns["7"] = 8;
        assert!(!nouns.is_same(&copy) && nouns != copy && copy["7"] == 7);
        // What was not changed is shared still.
        let shared = |id: &str| std::sync::Arc::ptr_eq(nouns.shared(id).unwrap(), copy.shared(id).unwrap());
        assert!(shared("6") && shared("199") && !shared("7"));
    }
}
