//! What can be found, by words and parts of words: made once for a state of the farm, piece by piece where the farm is large, and looked
//! through once a letter.

use jiff::civil::Date;
use memchr::memmem::Finder;
use tankard_core::farm::{Farm, Field, Pass, Product, Record, Rig, Water};
use tankard_core::fold::{fold_into, folded};
use tankard_core::language::days::short_date;
use tankard_core::quantity::Quantity;

use crate::command::Command;
use crate::guide::markdown::{Block, plain};
use crate::guide::{Place, pages};

/// How many of a kind are listed; more letters bring the others.
pub const LISTED: usize = 8;

/// How many things are taken up in one go, so that a frame is not held up: about two milliseconds.
pub const AT_ONCE: usize = 4_000;

/// What something is, in the order of the list where two are found alike.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// A piece of ground.
    Field,
    /// A planned pass.
    Pass,
    /// Of the shed.
    Product,
    /// Of the shed.
    Water,
    /// Of the shed.
    Rig,
    /// Something to do, or a page to go to.
    Command,
    /// A page of the guide, or a heading in it.
    Guide,
    /// What was sprayed.
    Record,
}

impl Kind {
    /// All of them.
    pub const ALL: [Self; 8] =
        [Self::Field, Self::Pass, Self::Product, Self::Water, Self::Rig, Self::Command, Self::Guide, Self::Record];

    /// One of it, in words.
    pub const fn word(self) -> &'static str {
        match self {
            Self::Field => "field",
            Self::Pass => "pass",
            Self::Product => "product",
            Self::Water => "water",
            Self::Rig => "rig",
            Self::Command => "command",
            Self::Guide => "guide",
            Self::Record => "record",
        }
    }

    const fn at(self) -> usize {
        match self {
            Self::Field => 0,
            Self::Pass => 1,
            Self::Product => 2,
            Self::Water => 3,
            Self::Rig => 4,
            Self::Command => 5,
            Self::Guide => 6,
            Self::Record => 7,
        }
    }
}

/// Something that can be found: its kind, and its place among those of its kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Thing {
    /// What it is.
    pub kind: Kind,
    /// Its place in the farm, in the list of commands, or among the headings of the guide.
    pub at: usize,
}

/// Where the text of a thing ends, and where its name does; it begins where that of the thing before ends.
#[derive(Clone, Copy, Debug)]
struct Entry {
    thing: Thing,
    name_end: usize,
    end: usize,
}

/// What can be found.
#[derive(Debug)]
pub struct Index {
    /// All texts behind one another, so that nothing is looked up in many places of memory.
    text: String,
    entries: Vec<Entry>,
    /// How many records are taken up, the last of the farm first.
    records: usize,
    /// How many fields are taken up.
    fields: usize,
    of_records: usize,
    of_fields: usize,
}

/// How well something fits: the less, the better.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Fit {
    /// The name begins so.
    Beginning,
    /// A word of the name begins so.
    Word,
    /// It stands inside a word of the name.
    Inside,
    /// A word of what else is said of it begins so.
    Beside,
    /// It stands inside such a word.
    InsideBeside,
}

impl Fit {
    const ALL: [Self; 5] = [Self::Beginning, Self::Word, Self::Inside, Self::Beside, Self::InsideBeside];

    const fn at(self) -> usize {
        match self {
            Self::Beginning => 0,
            Self::Word => 1,
            Self::Inside => 2,
            Self::Beside => 3,
            Self::InsideBeside => 4,
        }
    }
}

/// What was found.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Found {
    /// The best, of each kind no more than [`LISTED`].
    pub things: Vec<Thing>,
    /// How many there are of each kind, in the order of [`Kind::ALL`].
    pub counts: [usize; Kind::ALL.len()],
}

impl Found {
    /// How many there are.
    pub fn count(&self) -> usize {
        self.counts.iter().sum()
    }
}

impl Index {
    /// Of a farm, without its fields and records yet.
    pub fn new(farm: &Farm) -> Self {
        let mut index = Self {
            text: String::new(),
            entries: Vec::new(),
            records: 0,
            fields: 0,
            of_records: farm.records.len(),
            of_fields: farm.fields.len(),
        };
        for (at, pass) in farm.passes.values().enumerate() {
            index.put(Kind::Pass, at, &pass.name, |text| beside_pass(text, pass, farm));
        }
        for (at, product) in farm.products.values().enumerate() {
            index.put(Kind::Product, at, &product.name, |text| beside_product(text, product));
        }
        for (at, water) in farm.waters.values().enumerate() {
            index.put(Kind::Water, at, &water.name, |_| ());
        }
        for (at, rig) in farm.rigs.values().enumerate() {
            index.put(Kind::Rig, at, &rig.name, |_| ());
        }
        for (at, command) in Command::LISTED.iter().enumerate() {
            index.put(Kind::Command, at, &command.text(), |text| {
                if let Command::Show(spot) = command {
                    fold_into(text, spot.view().name());
                }
            });
        }
        for (at, heading) in headings().enumerate() {
            index.put(Kind::Guide, at, &heading.words, |text| fold_into(text, heading.title));
        }
        index
    }

    /// Of a farm, with all of it.
    pub fn whole(farm: &Farm) -> Self {
        let mut index = Self::new(farm);
        while !index.is_whole() {
            index.go_on(farm);
        }
        index
    }

    /// Whether all of the farm is in it.
    pub const fn is_whole(&self) -> bool {
        self.records >= self.of_records && self.fields >= self.of_fields
    }

    /// How many things are in it.
    pub fn len(&self) -> usize {
        self.entries.len()
    }

    /// Whether there is nothing in it.
    pub fn is_empty(&self) -> bool {
        self.entries.is_empty()
    }

    /// Takes up more of the same state of the farm: its fields, then its records from the last on.
    pub fn go_on(&mut self, farm: &Farm) {
        let mut room = AT_ONCE;
        while room > 0 && self.fields < self.of_fields {
            if let Some((_, field)) = farm.fields.get_index(self.fields) {
                self.put(Kind::Field, self.fields, &field.name, |text| beside_field(text, field));
            }
            self.fields += 1;
            room -= 1;
        }
        while room > 0 && self.records < self.of_records {
            let at = self.of_records - 1 - self.records;
            if let Some((_, record)) = farm.records.get_index(at) {
                self.put_record(at, record);
            }
            self.records += 1;
            room -= 1;
        }
    }

    fn put(&mut self, kind: Kind, at: usize, name: &str, beside: impl FnOnce(&mut String)) {
        fold_into(&mut self.text, name);
        let name_end = self.text.len();
        // No word looked for holds a line break, so none is found across two parts.
        self.text.push('\n');
        beside(&mut self.text);
        self.entries.push(Entry { thing: Thing { kind, at }, name_end, end: self.text.len() });
    }

    /// A record is called by its day, and found by what it was and where as well.
    fn put_record(&mut self, at: usize, record: &Record) {
        let date = record.date;
        push_date(&mut self.text, date);
        let name_end = self.text.len();
        self.text.push('\n');
        fold_into(&mut self.text, &record.name);
        for field in record.fields.values() {
            self.text.push('\n');
            fold_into(&mut self.text, &field.name);
        }
        self.entries.push(Entry { thing: Thing { kind: Kind::Record, at }, name_end, end: self.text.len() });
    }

    /// The entries that hold all terms, in their order, with how well they fit. The longest term is looked for in all texts at one go, the
    /// others where it stands.
    fn fitting(&self, whole: &str, terms: &[&str]) -> Vec<(usize, Fit)> {
        let Some(longest) = terms.iter().copied().max_by_key(|term| term.len()) else { return Vec::new() };
        let others: Vec<Term> = terms.iter().filter(|term| **term != longest).map(|term| Term::new(term)).collect();
        let term = Term::new(longest);
        let text = self.text.as_bytes();
        let mut fitting = Vec::new();
        let (mut at, mut from) = (0, 0);
        while let Some(place) = term.next(text, from) {
            while self.entries.get(at).is_some_and(|entry| entry.end <= place) {
                at += 1;
            }
            let Some(entry) = self.entries.get(at) else { break };
            let begin = at.checked_sub(1).and_then(|before| self.entries.get(before)).map_or(0, |before| before.end);
            from = entry.end;
            let (Some(own), name_end) = (text.get(begin..entry.end), entry.name_end - begin) else { break };
            let fit = if own.starts_with(whole.as_bytes()) && whole.len() <= name_end {
                Some(Fit::Beginning)
            } else {
                others
                    .iter()
                    .chain([&term])
                    .try_fold(Fit::Word, |worst, term| Some(worst.max(term.fit(own, name_end)?)))
            };
            if let Some(fit) = fit {
                fitting.push((at, fit));
            }
            at += 1;
        }
        fitting
    }

    /// The best things that hold all words, the best first.
    pub fn find(&self, query: &str) -> Found {
        let whole = folded(query);
        let terms: Vec<&str> = whole.split_whitespace().collect();
        let whole = terms.join(" ");
        let mut found = Found::default();
        if terms.is_empty() {
            return found;
        }
        let mut best: [[Vec<Thing>; Fit::ALL.len()]; Kind::ALL.len()] = Default::default();
        for (at, fit) in self.fitting(&whole, &terms) {
            let Some(entry) = self.entries.get(at) else { continue };
            let kind = entry.thing.kind.at();
            if let Some(count) = found.counts.get_mut(kind) {
                *count += 1;
            }
            if let Some(alike) = best.get_mut(kind).and_then(|of_kind| of_kind.get_mut(fit.at()))
                && alike.len() < LISTED
            {
                alike.push(entry.thing);
            }
        }
        let mut left = [LISTED; Kind::ALL.len()];
        for fit in Fit::ALL {
            for (of_kind, left) in best.iter().zip(&mut left) {
                let alike = of_kind.get(fit.at()).map(Vec::as_slice).unwrap_or_default();
                let taken = alike.len().min(*left);
                found.things.extend(alike.iter().take(taken));
                *left -= taken;
            }
        }
        found
    }
}

/// A term, made ready once for all texts.
struct Term<'t>(Finder<'t>);

impl<'t> Term<'t> {
    fn new(term: &'t str) -> Self {
        Self(Finder::new(term))
    }

    /// Where it stands next, from a place on.
    fn next(&self, text: &[u8], from: usize) -> Option<usize> {
        self.0.find(text.get(from..)?).map(|at| from + at)
    }

    /// How well it fits a text of which the name is the first part; none where it stands nowhere in it.
    fn fit(&self, text: &[u8], name_end: usize) -> Option<Fit> {
        let mut best = None;
        let mut from = 0;
        while let Some(at) = self.next(text, from) {
            let fit = fit_at(text, at, name_end);
            best = best.min_known(fit);
            // What follows in the same part may begin a word; once it does, nothing there is better.
            from = match fit {
                Fit::Beginning | Fit::Word | Fit::Beside => return best,
                Fit::Inside | Fit::InsideBeside => at + 1,
            };
        }
        best
    }
}

trait MinKnown {
    fn min_known(self, other: Fit) -> Self;
}

impl MinKnown for Option<Fit> {
    fn min_known(self, other: Fit) -> Self {
        Some(self.map_or(other, |known| known.min(other)))
    }
}

/// How well it fits where it stands.
fn fit_at(text: &[u8], at: usize, name_end: usize) -> Fit {
    let begins = at.checked_sub(1).and_then(|before| text.get(before)).is_none_or(|before| {
        // A byte of a letter beyond ASCII is part of a word.
        before.is_ascii() && !before.is_ascii_alphanumeric()
    });
    match (at < name_end, begins) {
        (true, true) => Fit::Word,
        (true, false) => Fit::Inside,
        (false, true) => Fit::Beside,
        (false, false) => Fit::InsideBeside,
    }
}

const MONTHS: [&str; 12] = [
    "january",
    "february",
    "march",
    "april",
    "may",
    "june",
    "july",
    "august",
    "september",
    "october",
    "november",
    "december",
];

/// A day as it is typed in one way and another: "2031-06-12 12 june 2031".
fn push_date(text: &mut String, date: Date) {
    use std::fmt::Write;
    let month = usize::try_from(date.month() - 1).ok().and_then(|at| MONTHS.get(at)).copied().unwrap_or_default();
    // Into a text nothing fails.
    let _ = write!(
        text,
        "{:04}-{:02}-{:02} {} {month} {:04}",
        date.year(),
        date.month(),
        date.day(),
        date.day(),
        date.year()
    );
}

fn beside_field(text: &mut String, field: &Field) {
    fold_into(text, &field.crop);
    text.push('\n');
    fold_into(text, &field.variety);
    text.push('\n');
    fold_into(text, &field.note);
}

fn beside_pass(text: &mut String, pass: &Pass, farm: &Farm) {
    push_date(text, pass.date);
    for field in pass.fields.iter().filter_map(|id| farm.fields.get(id)) {
        text.push('\n');
        fold_into(text, &field.name);
    }
    for product in pass.mix.iter().filter_map(|line| farm.products.get(&line.product)) {
        text.push('\n');
        fold_into(text, &product.name);
    }
}

fn beside_product(text: &mut String, product: &Product) {
    for active in &product.actives {
        fold_into(text, &active.name);
        text.push('\n');
    }
    fold_into(text, &product.registration);
}

/// A heading of the guide.
#[derive(Debug)]
pub struct Heading {
    /// Its words.
    pub words: String,
    /// The title of its page.
    pub title: &'static str,
    /// Where it is.
    pub place: Place,
}

/// All headings of the guide, those of pages among them.
pub fn headings() -> impl Iterator<Item = Heading> {
    pages::all().iter().flat_map(|page| {
        page.blocks.iter().filter_map(move |block| {
            let Block::Heading { level, anchor, runs } = block else { return None };
            let anchor = if *level == 1 { String::new() } else { anchor.clone() };
            let place = Place { page: page.name.to_owned(), anchor };
            Some(Heading { words: plain(runs), title: &page.title, place })
        })
    })
}

/// What a thing is called, and what is said of it in less weight; none where it is gone.
pub fn words(farm: &Farm, thing: Thing) -> Option<(String, String)> {
    let units = farm.units;
    Some(match thing.kind {
        Kind::Field => {
            let (_, field) = farm.fields.get_index(thing.at)?;
            let crop = [field.crop.as_str(), field.stage.as_str()].join(" ");
            (field.name.clone(), format!("{} {}", field.area.value().show(units), crop.trim()).trim().to_owned())
        }
        Kind::Pass => {
            let (_, pass) = farm.passes.get_index(thing.at)?;
            let fields: Vec<&str> =
                pass.fields.iter().filter_map(|id| farm.fields.get(id)).map(|field| field.name.as_str()).collect();
            (pass.name.clone(), format!("{}, {}", short_date(pass.date), fields.join(", ")))
        }
        Kind::Product => {
            let (_, product) = farm.products.get_index(thing.at)?;
            let actives: Vec<&str> = product.actives.iter().map(|active| active.name.as_str()).collect();
            (product.name.clone(), actives.join(", "))
        }
        Kind::Water => named(farm.waters.get_index(thing.at).map(|(_, water): (_, &Water)| &water.name)?),
        Kind::Rig => named(farm.rigs.get_index(thing.at).map(|(_, rig): (_, &Rig)| &rig.name)?),
        Kind::Command => {
            let command = Command::LISTED.get(thing.at)?;
            let beside = match command {
                Command::Show(spot) => spot.view().name().to_owned(),
                command => crate::keys::any_of(command.keys()),
            };
            (command.text(), beside)
        }
        Kind::Guide => {
            let heading = headings().nth(thing.at)?;
            let beside = if heading.words == heading.title { String::new() } else { heading.title.to_owned() };
            (heading.words, beside)
        }
        Kind::Record => {
            let (_, record) = farm.records.get_index(thing.at)?;
            let fields: Vec<&str> = record.fields.values().map(|field| field.name.as_str()).collect();
            (format!("{}, {}", short_date(record.date), record.name), fields.join(", "))
        }
    })
}

fn named(name: &str) -> (String, String) {
    (name.to_owned(), String::new())
}

#[cfg(test)]
mod tests {
    use tankard_core::farm::Farm;

    use super::{Entry, Fit, Index, Kind, Thing};

    fn fit(name: &str, beside: &str, query: &str) -> Option<Fit> {
        let mut index = Index::new(&Farm::new("Empty"));
        index.text = format!("{name}\n{beside}");
        let thing = Thing { kind: Kind::Field, at: 0 };
        index.entries = vec![Entry { thing, name_end: name.len(), end: index.text.len() }];
        let terms: Vec<&str> = query.split(' ').collect();
        index.fitting(query, &terms).first().map(|(_, fit)| *fit)
    }

    #[test]
    fn beginning_comes_before_a_word_before_inside() {
        let of = |name: &str, query: &str| fit(name, "beside it", query);
        assert_eq!(of("mill field", "mill"), Some(Fit::Beginning));
        assert_eq!(of("mill field", "mill fi"), Some(Fit::Beginning));
        assert_eq!(of("mill field", "field mill"), Some(Fit::Word));
        assert_eq!(of("old mill field", "mill"), Some(Fit::Word));
        assert_eq!(of("windmill", "mill"), Some(Fit::Inside));
        assert_eq!(of("windmill", "besi"), Some(Fit::Beside));
        assert_eq!(of("windmill", "side"), Some(Fit::InsideBeside));
        assert_eq!(of("windmill", "mill side"), Some(Fit::InsideBeside));
        assert_eq!(of("windmill", "mill hail"), None);
    }

    /// The beginning of a later word counts, though an earlier one has it inside; a letter beyond ASCII is part of a word.
    #[test]
    fn a_later_word_may_begin_so() {
        assert_eq!(fit("windmill mill", "", "mill"), Some(Fit::Word));
        assert_eq!(fit("3-way valve", "", "way"), Some(Fit::Word));
        assert_eq!(fit("αmill", "", "mill"), Some(Fit::Inside));
        assert_eq!(fit("windmill", "mill", "mill"), Some(Fit::Inside));
    }

    /// What one entry ends with and the next begins with is no word.
    #[test]
    fn nothing_is_found_across_two_entries() {
        let mut index = Index::new(&Farm::new("Empty"));
        index.text.clear();
        index.entries.clear();
        for (at, name) in ["mill", "field", "mill field"].iter().enumerate() {
            index.put(Kind::Field, at, name, |_| ());
        }
        let found = |query: &str| index.find(query).things.iter().map(|thing| thing.at).collect::<Vec<_>>();
        assert_eq!((found("millf"), found("mill field"), found("l")), (vec![], vec![2], vec![0, 1, 2]));
    }
}
