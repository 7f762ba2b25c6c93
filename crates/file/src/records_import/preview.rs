//! The records that a spreadsheet gives, before they are taken.

use std::collections::{BTreeMap, BTreeSet, HashMap, HashSet};

use jiff::civil::{Date, Time};
use tankard_core::farm::{Farm, Id, Product, Record, RecordField, RecordLine, Text, id};
use tankard_core::progress::{Cancelled, Tell, untold};
use tankard_core::quantity::{Area, AsTyped, Quantity, Volume};
use tankard_core::season::record::{amount_text, area_text, of_product, volume_text};
use tankard_core::t;

use super::day::{Written, short_years};
use super::figure::Seen;
use super::holds::Holds;
use super::mapping::Mapping;
use super::row::Cells;
use super::scale::Scale;
use super::{Refused, Row, Table};
use crate::alike::{self, Log};
use crate::table::refuse_all;

/// So many names are told in a note.
const NAMES: usize = 8;
/// From this share on an amount that is off rate × area is told.
const FAR_OFF: f64 = 0.05;

/// A record that a spreadsheet gives.
#[derive(Clone, Debug, PartialEq)]
pub struct Coming {
    /// The record.
    pub record: Record,
    /// The lines it comes from.
    pub lines: Vec<u64>,
}

/// What a spreadsheet gives.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Preview {
    /// The records, in the order of the file.
    pub records: Vec<Coming>,
    /// The lines that are left out, in order.
    pub refused: Vec<Refused>,
    /// What a person should know of how it was read.
    pub notes: Vec<String>,
    /// What must be chosen first; there are no records while anything stands here.
    pub to_choose: Vec<String>,
    /// How many records look like one in the log, whether they are taken or not.
    pub alike: usize,
}

/// Reads a table by a mapping. Products and fields are those of the farm where their names are the same but for capitals;
/// others stay names. What a product of the shed holds is taken as it is now; its price and intervals of then are not known.
/// A record that looks like one in the log is left out, unless the mapping takes those too.
pub fn preview(table: &Table, mapping: &Mapping, farm: &Farm) -> Preview {
    preview_first(table, mapping, farm, usize::MAX)
}

/// The same of the first rows alone, to look at while columns are chosen. What must be chosen first is told of them alone too.
pub fn preview_first(table: &Table, mapping: &Mapping, farm: &Farm, most: usize) -> Preview {
    preview_told(table, mapping, farm, most, &untold).unwrap_or_default()
}

/// The same, told how many records are made.
///
/// # Errors
/// [`Cancelled`] where it is ended.
pub fn preview_told(
    table: &Table,
    mapping: &Mapping,
    farm: &Farm,
    most: usize,
    tell: &Tell<'_>,
) -> Result<Preview, Cancelled> {
    let rows = table.rows.get(..most).unwrap_or(&table.rows);
    let mut preview = Preview { to_choose: to_choose(table, rows, mapping), ..Preview::default() };
    if !preview.to_choose.is_empty() {
        return Ok(preview);
    }
    tell(0, None)?;
    let mut reader = Reader::of(farm, mapping.alike);
    let groups = groups(rows, mapping, &mut preview.refused);
    for (at, group) in groups.iter().enumerate() {
        tell(at, Some(groups.len()))?;
        let lines: Vec<u64> = group.rows.iter().map(|cells| cells.row.line).collect();
        match reader.record(group) {
            Ok(record) => preview.records.push(Coming { record, lines }),
            Err(wrong) => {
                let beside = |first: u64| t!("file-it-is-one-record-with-line", first = first);
                preview.refused.extend(refuse_all(lines, &wrong, beside));
            }
        }
    }
    preview.refused.sort_by_key(|refused| refused.line);
    preview.alike = reader.told.alike;
    preview.notes = reader.told.scale.notes(table, mapping, farm.units);
    preview.notes.extend(as_total(table, mapping));
    preview.notes.extend(reader.notes(&preview.records));
    let is_short = |row| Written::of(Cells { row, mapping }.text(Holds::Date)).is_some_and(|day| day.short_year);
    if rows.iter().any(is_short) {
        preview.notes.push(short_years());
    }
    Ok(preview)
}

/// Where a person takes for the amount what the heading calls one over ground.
fn as_total(table: &Table, mapping: &Mapping) -> Option<String> {
    let take = mapping.of(Holds::Amount).filter(|take| mapping.over(take.column).is_some())?;
    let heading = table.header.get(take.column)?;
    Some(t!("file-speaks-of-a-rate-over-ground", heading = heading))
}

/// Puts the records of a preview into the farm, each under an id of its own; gives the ids.
pub fn enter(farm: &mut Farm, records: &[Coming]) -> Vec<Id> {
    let mut entered = Vec::with_capacity(records.len());
    // The search for a free number would begin at 2 for each of a thousand alike.
    let mut used: HashMap<String, usize> = HashMap::new();
    for coming in records {
        let name = format!("{}-{}", coming.record.date, coming.record.name);
        let count = used.entry(name.clone()).and_modify(|count| *count += 1).or_insert(1);
        let wanted = if *count == 1 { name } else { format!("{name}-{count}") };
        let own = id::fresh(&farm.records, &wanted);
        farm.records.insert(own.clone(), coming.record.clone());
        entered.push(own);
    }
    entered
}

/// What a person has to choose before anything can be read.
fn to_choose(table: &Table, rows: &[Row], mapping: &Mapping) -> Vec<String> {
    let mut to_choose = Vec::new();
    for holds in [Holds::Date, Holds::Field, Holds::Product] {
        if mapping.of(holds).is_none() {
            to_choose.push(t!("file-choose-which-column-holds-the", holds = holds.name()));
        }
    }
    if mapping.of(Holds::Amount).is_none() && mapping.of(Holds::Rate).is_none() {
        let heading = |column: &usize| table.header.get(*column).cloned();
        let is_free = |column: &&usize| mapping.takes.iter().all(|take| take.column != **column);
        let doubtful: Vec<String> = mapping.doubtful.iter().filter(is_free).filter_map(heading).collect();
        for heading in &doubtful {
            to_choose.push(t!("file-choose-what-holds-the-amount-on", heading = heading));
        }
        if doubtful.is_empty() {
            to_choose.push(t!("file-choose-which-column-holds-the-amount").to_owned());
        }
    }
    let cells = || rows.iter().map(|row| Cells { row, mapping });
    for take in &mapping.takes {
        if !take.holds.units().is_empty() && cells().any(|cells| cells.lacks_unit(take.holds)) {
            let heading = table.header.get(take.column).map_or("", String::as_str);
            to_choose.push(t!("file-choose-the-unit-of-heading-the-file-does-not", heading = heading));
        }
    }
    let doubtful = |cells: &Cells<'_>| Written::of(cells.text(Holds::Date)).is_some_and(|day| day.is_ambiguous());
    if let Some(cells) = cells().find(doubtful).filter(|_| mapping.days.is_none()) {
        let cell = cells.text(Holds::Date);
        to_choose.push(t!("file-choose-how-days-are-written-on", cell = cell, line = cells.row.line));
    }
    if let Some((cell, [one, other])) = Seen::of(rows, mapping).doubtful.filter(|_| mapping.comma.is_none()) {
        to_choose.push(t!("file-choose-how-figures-are-written-may", cell = cell, one = one, other = other));
    }
    to_choose
}

/// The rows of one record.
struct Group<'a> {
    date: Date,
    start: Option<Time>,
    rows: Vec<Cells<'a>>,
}

/// Rows of one day, start, field and pass, in the order of their first ones.
fn groups<'a>(rows: &'a [Row], mapping: &'a Mapping, refused: &mut Vec<Refused>) -> Vec<Group<'a>> {
    let mut groups: Vec<Group<'a>> = Vec::new();
    let mut known: HashMap<(Date, Option<Time>, String, String), usize> = HashMap::new();
    for row in rows {
        let cells = Cells { row, mapping };
        let when = cells.day().and_then(|(date, time)| Ok((date, cells.time(Holds::Start)?.or(time))));
        let (date, start) = match when {
            Ok(when) => when,
            Err(why) => {
                refused.push(Refused { line: row.line, why });
                continue;
            }
        };
        let field = cells.text(Holds::Field);
        if field.is_empty() {
            refused.push(Refused { line: row.line, why: t!("file-there-is-no-field").to_owned() });
            continue;
        }
        let key = (date, start, field.to_lowercase(), cells.text(Holds::Name).to_lowercase());
        let at = *known.entry(key).or_insert_with(|| {
            groups.push(Group { date, start, rows: Vec::new() });
            groups.len() - 1
        });
        if let Some(group) = groups.get_mut(at) {
            group.rows.push(cells);
        }
    }
    groups
}

/// What is told of how records were read.
#[derive(Default)]
struct Told {
    /// Amounts reckoned from rates.
    reckoned: usize,
    /// Spray volumes reckoned over areas.
    spread: usize,
    /// Records without an area.
    no_area: usize,
    /// Lines of which the amount is off the rate.
    far_off: Vec<u64>,
    /// Lines with a product that their record has already.
    twice: Vec<u64>,
    /// Records that look like one in the log.
    alike: usize,
    /// What is far from the labels' rates.
    scale: Scale,
}

/// What is gathered while records are read.
struct Reader<'a> {
    farm: &'a Farm,
    products: HashMap<String, (&'a Id, &'a Product)>,
    fields: HashMap<String, Id>,
    /// Ids made up for products that the shed does not have, by their names in small letters.
    foreign: HashMap<String, Id>,
    /// The ids of both that are given.
    taken_fields: HashSet<Id>,
    taken_products: HashSet<Id>,
    log: Log<'a>,
    /// Whether records are taken that look like one of these.
    takes_alike: bool,
    told: Told,
    new_fields: BTreeSet<String>,
    new_products: BTreeSet<String>,
    matched: BTreeSet<String>,
}

impl<'a> Reader<'a> {
    fn of(farm: &'a Farm, takes_alike: bool) -> Self {
        let mut fields: HashMap<String, Id> = HashMap::new();
        let mut foreign: HashMap<String, Id> = HashMap::new();
        // What older records call by a name keeps its id; the farm's own fields come before them.
        for record in farm.records.values() {
            for (id, field) in &record.fields {
                fields.insert(field.name.trim().to_lowercase(), id.clone());
            }
            for line in record.lines.iter().filter(|line| !farm.products.contains_key(&line.product)) {
                foreign.insert(line.name.trim().to_lowercase(), line.product.to_string());
            }
        }
        fields.extend(farm.fields.iter().map(|(id, field)| (field.name.trim().to_lowercase(), id.clone())));
        Self {
            farm,
            products: farm
                .products
                .iter()
                .map(|(id, product)| (product.name.trim().to_lowercase(), (id, product)))
                .collect(),
            taken_fields: fields.values().cloned().collect(),
            taken_products: foreign.values().cloned().collect(),
            fields,
            foreign,
            log: Log::of(farm),
            takes_alike,
            told: Told::default(),
            new_fields: BTreeSet::new(),
            new_products: BTreeSet::new(),
            matched: BTreeSet::new(),
        }
    }

    fn record(&mut self, group: &Group<'_>) -> Result<Record, Vec<Refused>> {
        let mut wrong: Vec<Refused> = Vec::new();
        let Some(first) = group.rows.first() else { return Err(wrong) };
        let area = keep(&mut wrong, agree(group, Holds::Area, |cells| cells.quantity(Holds::Area))).flatten();
        let ground = area.as_ref().map(AsTyped::value);
        let spray = keep(&mut wrong, agree(group, Holds::Volume, |cells| cells.spray(ground))).flatten();
        let mut record = Record::new("", group.date);
        record.start = group.start;
        if let Err(why) = whole(group, &mut record) {
            wrong.push(why);
        }
        let mut seen = BTreeSet::new();
        let mut told = Told::default();
        for cells in &group.rows {
            match self.line(cells, ground, spray.as_ref().map(|spray| spray.volume), &mut told) {
                Ok(line) => {
                    if !seen.insert(line.name.to_lowercase()) {
                        told.twice.push(cells.row.line);
                    }
                    record.lines.push(line);
                }
                Err(why) => wrong.push(Refused { line: cells.row.line, why }),
            }
        }
        let name = first.text(Holds::Field);
        let id = self.field_id(name);
        let field = RecordField {
            crop: keep(&mut wrong, words(group, Holds::Crop)).unwrap_or_default(),
            variety: keep(&mut wrong, words(group, Holds::Variety)).unwrap_or_default(),
            stage: keep(&mut wrong, words(group, Holds::Stage)).unwrap_or_default(),
            parcel: keep(&mut wrong, words(group, Holds::Parcel)).unwrap_or_default(),
            ..RecordField::new(
                self.farm.fields.get(&id).map_or(name, |field| &field.name),
                area.clone().unwrap_or_else(|| area_text(Area::ZERO, self.farm.units)),
            )
        };
        if record.name.is_empty() {
            record.name.clone_from(&field.name);
        }
        record.fields.insert(id.clone(), field);
        record.volume = spray
            .as_ref()
            .map(|spray| spray.typed.clone().unwrap_or_else(|| volume_text(spray.volume, self.farm.units)));
        if wrong.is_empty()
            && let Some(own) = self.log.same(&record)
        {
            wrong.push(Refused { line: first.row.line, why: t!("file-the-log-has-it-already-as", own = own) });
        }
        if wrong.is_empty()
            && let Some(own) = self.log.like(&record)
        {
            self.told.alike += 1;
            if !self.takes_alike {
                wrong.push(Refused {
                    line: first.row.line,
                    why: t!("file-looks-like-one-in-the-log", own = alike::named(own)),
                });
            }
        }
        if !wrong.is_empty() {
            wrong.sort_by_key(|wrong| wrong.line);
            return Err(wrong);
        }
        // What is told of how it was read is told of what is taken.
        self.told.no_area += usize::from(area.is_none());
        self.told.spread += usize::from(spray.is_some_and(|spray| spray.typed.is_none()));
        self.told.reckoned += told.reckoned;
        self.told.far_off.extend(told.far_off);
        self.told.twice.extend(told.twice);
        self.told.scale.join(told.scale);
        if !self.farm.fields.contains_key(&id) {
            self.new_fields.insert(name.to_owned());
        }
        for line in &record.lines {
            let names =
                if self.farm.products.contains_key(&line.product) { &mut self.matched } else { &mut self.new_products };
            names.insert(line.name.to_string());
        }
        Ok(record)
    }

    fn line(
        &mut self,
        cells: &Cells<'_>,
        area: Option<Area>,
        volume: Option<Volume>,
        told: &mut Told,
    ) -> Result<RecordLine, String> {
        let name = cells.text(Holds::Product);
        if name.is_empty() {
            return Err(t!("file-there-is-no-product").to_owned());
        }
        let own = self.products.get(&name.to_lowercase()).copied();
        let product = own.map(|(_, product)| product);
        let amount = if let Some(amount) = cells.amount(product)? {
            // A rate beside it is a check, not a condition.
            let by_rate = cells.amount_by_rate(product, area, volume).ok().flatten();
            if by_rate.and_then(|rate| amount.value().ratio(rate)).is_some_and(|ratio| (ratio - 1.0).abs() > FAR_OFF) {
                told.far_off.push(cells.row.line);
            }
            amount
        } else {
            let by_rate = cells.amount_by_rate(product, area, volume)?;
            told.reckoned += 1;
            amount_text(by_rate.ok_or(t!("file-there-is-no-amount-and-no"))?, self.farm.units)
        };
        if let Some((product, area)) = product.zip(area) {
            told.scale.look(product, amount.value(), area, cells.row.line);
        }
        let mut line = match own {
            Some((id, product)) => RecordLine {
                price: None,
                entry: None,
                harvest: None,
                ..of_product(id, product, amount, self.farm.units)
            },
            None => RecordLine::new(&self.product_id(name), name, amount),
        };
        let registration = cells.text(Holds::Registration);
        if !registration.is_empty() {
            line.registration = registration.into();
        }
        line.lot = cells.text(Holds::Lot).into();
        Ok(line)
    }

    fn product_id(&mut self, name: &str) -> Id {
        let farm = self.farm;
        let key = name.to_lowercase();
        if let Some(own) = self.foreign.get(&key) {
            return own.clone();
        }
        let own = id::fresh_where(name, |id| !farm.products.contains_key(id) && !self.taken_products.contains(id));
        self.taken_products.insert(own.clone());
        self.foreign.insert(key, own.clone());
        own
    }

    fn field_id(&mut self, name: &str) -> Id {
        let farm = self.farm;
        let key = name.to_lowercase();
        if let Some(own) = self.fields.get(&key) {
            return own.clone();
        }
        let own = id::fresh_where(name, |id| !farm.fields.contains_key(id) && !self.taken_fields.contains(id));
        self.taken_fields.insert(own.clone());
        self.fields.insert(key, own.clone());
        own
    }

    /// What a person should know of how it was read.
    fn notes(&self, records: &[Coming]) -> Vec<String> {
        let mut notes = Vec::new();
        if self.told.reckoned > 0 {
            notes.push(t!("file-amounts-are-reckoned", count = self.told.reckoned));
        }
        if self.told.spread > 0 {
            notes.push(t!("file-spray-volumes-are-reckoned", count = self.told.spread));
        }
        if self.told.no_area > 0 {
            notes.push(t!("file-records-have-no-area", count = self.told.no_area));
        }
        if !self.matched.is_empty() {
            notes.push(t!("file-products-of-the-shed-with-the", names = some(&self.matched)));
        }
        if !self.new_products.is_empty() {
            notes.push(t!("file-products-that-the-shed-does-not", names = some(&self.new_products)));
        }
        if !self.new_fields.is_empty() {
            notes.push(t!("file-fields-that-the-farm-does-not", names = some(&self.new_fields)));
        }
        if !self.told.far_off.is_empty() {
            notes.push(t!("file-the-amount-is-more-than-5", lines = lines(&self.told.far_off)));
        }
        if !self.told.twice.is_empty() {
            notes.push(t!("file-a-product-stands-again-in-the", lines = lines(&self.told.twice)));
        }
        let mut closed: BTreeMap<i16, usize> = BTreeMap::new();
        for coming in
            records.iter().filter(|coming| self.farm.closed.contains_key(&coming.record.date.year().to_string()))
        {
            *closed.entry(coming.record.date.year()).or_default() += 1;
        }
        for (year, count) in closed {
            notes.push(t!("file-the-season-is-closed-and-of", year = year, count = count));
        }
        notes
    }
}

fn some(names: &BTreeSet<String>) -> String {
    first_of(names.iter())
}

fn lines(lines: &[u64]) -> String {
    t!("file-on-lines", count = lines.len(), lines = first_of(lines.iter()))
}

fn first_of(all: impl ExactSizeIterator<Item: ToString>) -> String {
    let more = all.len().saturating_sub(NAMES);
    let first = all.take(NAMES).map(|one| one.to_string()).collect::<Vec<_>>().join(", ");
    if more == 0 { first } else { t!("file-and-more", first = first, more = more) }
}

/// Keeps what was read, or why it was not.
fn keep<T>(wrong: &mut Vec<Refused>, read: Result<T, Refused>) -> Option<T> {
    read.map_err(|refused| wrong.push(refused)).ok()
}

/// What all rows of a record say that say anything; they must agree.
fn agree<T: PartialEq>(
    group: &Group<'_>,
    holds: Holds,
    read: impl Fn(&Cells<'_>) -> Result<Option<T>, String>,
) -> Result<Option<T>, Refused> {
    let mut found: Option<(T, u64)> = None;
    for cells in &group.rows {
        let line = cells.row.line;
        let own = read(cells).map_err(|why| Refused { line, why })?;
        match (&found, own) {
            (Some((said, before)), Some(own)) if *said != own => {
                let why = t!("file-is-not-as-on-line-which", holds = holds.name(), before = before);
                return Err(Refused { line, why });
            }
            (None, Some(own)) => found = Some((own, line)),
            _ => {}
        }
    }
    Ok(found.map(|(said, _)| said))
}

fn words(group: &Group<'_>, holds: Holds) -> Result<Text, Refused> {
    let text = |cells: &Cells<'_>| Ok(Some(Text::from(cells.text(holds))).filter(|text| !text.is_empty()));
    agree(group, holds, text).map(Option::unwrap_or_default)
}

fn figure<Q: Quantity>(group: &Group<'_>, holds: Holds) -> Result<Option<AsTyped<Q>>, Refused> {
    agree(group, holds, |cells| cells.quantity(holds))
}

/// What the rows say of their record as a whole.
fn whole(group: &Group<'_>, record: &mut Record) -> Result<(), Refused> {
    record.name = words(group, Holds::Name)?;
    record.end = agree(group, Holds::End, |cells| cells.time(Holds::End))?;
    record.water = words(group, Holds::Water)?;
    record.rig = words(group, Holds::Rig)?;
    record.nozzles = words(group, Holds::Nozzles)?;
    record.pressure = figure(group, Holds::Pressure)?;
    record.speed = figure(group, Holds::Speed)?;
    record.height = figure(group, Holds::Height)?;
    record.operator = words(group, Holds::Operator)?;
    record.certificate = words(group, Holds::Certificate)?;
    record.supervisor = words(group, Holds::Supervisor)?;
    let customer = words(group, Holds::Customer)?;
    record.customer =
        (!customer.is_empty()).then(|| Box::new(tankard_core::farm::Customer { name: customer, ..Default::default() }));
    record.wind = figure(group, Holds::Wind)?;
    record.wind_from = words(group, Holds::WindFrom)?;
    record.gust = figure(group, Holds::Gust)?;
    record.temperature = figure(group, Holds::Temperature)?;
    record.humidity = figure(group, Holds::Humidity)?;
    // Weeds and notes may differ from product to product.
    let (mut weeds, mut notes, mut all_notes) = (HashSet::new(), HashSet::new(), Vec::new());
    for cells in &group.rows {
        for weed in cells.text(Holds::Weeds).split([',', ';']).map(str::trim).filter(|weed| !weed.is_empty()) {
            if weeds.insert(weed) {
                record.weeds.push(weed.into());
            }
        }
        let note = cells.text(Holds::Note);
        // What a longer note says already is not said again.
        if !note.is_empty() && notes.insert(note) {
            notes.extend(note.split("; "));
            all_notes.push(note);
        }
    }
    record.note = all_notes.join("; ").into();
    Ok(())
}
