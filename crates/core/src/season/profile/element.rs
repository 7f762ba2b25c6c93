//! The elements of a record that a rule may ask for, each reading one fact of the record.

use crate::language::days::{clock, short_date};
use crate::language::{plain, t};
use serde::Deserialize;

use super::asked::is_spot;
use crate::farm::{Farm, Record, RecordField, RecordLine, Text};
use crate::label::stage::Stage;
use crate::quantity::{AsTyped, Quantity};
use crate::season::driven_over;
use crate::season::worker_protection::is_pesticide;

/// One fact of a record.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash, Deserialize)]
#[serde(try_from = "String")]
pub enum Element {
    /// The fields.
    Fields,
    /// The area of each field.
    Area,
    /// The same with the ground between the bands.
    CoveredArea,
    /// Where each field lies, in any of the ways a rule names.
    Location,
    /// The reference of each parcel.
    Parcel,
    /// The crop of each field.
    Crop,
    /// Its EPPO code.
    CropCode,
    /// Its stage by BBCH.
    Bbch,
    /// Its day of planting.
    Planted,
    /// The names of the products.
    Product,
    /// The registration number of each pesticide.
    Registration,
    /// The actives of each pesticide.
    Actives,
    /// How much of each product.
    Amount,
    /// How much of each product over ground.
    Dose,
    /// How much of each product on each field.
    FieldAmounts,
    /// The time before people may enter, of each pesticide.
    Entry,
    /// All that was in the tank, with the registration number of each pesticide.
    Mix,
    /// What was treated: surface, closed space, seed.
    TypeOfUse,
    /// The day.
    Date,
    /// When spraying began.
    Start,
    /// When it ended.
    End,
    /// Wind at the start.
    Wind,
    /// From where it blew.
    WindFrom,
    /// Wind and its direction at the end.
    WindAtEnd,
    /// Temperature at the start.
    Temperature,
    /// Temperature at the end.
    TemperatureAtEnd,
    /// Humidity.
    Humidity,
    /// Wind and its direction in each later reading.
    WindChanges,
    /// The weather, in any of what is measured of it.
    Weather,
    /// The weeds or pests.
    Pest,
    /// How it was put out.
    Method,
    /// The nozzles.
    Nozzles,
    /// The pressure.
    Pressure,
    /// The clean-out.
    CleanOut,
    /// Who sprayed.
    Operator,
    /// The certified applicator: who supervised, or who sprayed.
    Applicator,
    /// The certificate.
    Certificate,
    /// Who worked under the one who supervised.
    Uncertified,
    /// All who took part: who sprayed, who supervised, who helped.
    Involved,
    /// The certificates of all who took part.
    Certificates,
    /// Who signed.
    Signature,
    /// For whom it was sprayed.
    Customer,
    /// The address of that person.
    CustomerAddress,
    /// The telephone of that person.
    CustomerPhone,
    /// The day on which a copy was handed over.
    CustomerCopy,
    /// Who keeps the records.
    Holder,
    /// The address.
    HolderAddress,
    /// The number with the authority.
    HolderNumber,
    /// What has no box of its own: its place in `MORE`.
    More(usize),
}

/// What has no box of its own and stands in [`Record::more`]: by its key, with its short name.
const MORE: [(&str, &str); 21] = [
    ("displayed", "season-element-displayed"),
    ("sds", "season-element-sds"),
    ("machine-readable", "season-element-machine-readable"),
    ("training", "season-element-training"),
    ("receipts", "season-element-receipts"),
    ("label-copy", "season-element-label-copy"),
    ("buffer", "season-element-buffer"),
    ("sensitive-survey", "season-element-sensitive-survey"),
    ("emergence", "season-element-emergence"),
    ("runoff-points", "season-element-runoff-points"),
    ("bulletin", "season-element-bulletin"),
    ("forecast-temperature", "season-element-forecast-temperature"),
    ("maker", "season-element-maker"),
    ("recommended-by", "season-element-recommended-by"),
    ("exchange", "season-element-exchange"),
    ("planted-area", "season-element-planted-area"),
    ("site-id", "season-element-site-id"),
    ("reported", "season-element-reported"),
    ("mix-site", "season-element-mix-site"),
    ("supplier", "season-element-supplier"),
    ("rain", "season-element-rain"),
];

/// The elements with a box of their own: key, short name.
const OWN: [(&str, &str, Element); 48] = [
    ("fields", "season-element-fields", Element::Fields),
    ("area", "season-element-area", Element::Area),
    ("covered-area", "season-element-covered-area", Element::CoveredArea),
    ("location", "season-element-location", Element::Location),
    ("parcel", "season-element-parcel", Element::Parcel),
    ("crop", "season-element-crop", Element::Crop),
    ("crop-code", "season-element-crop-code", Element::CropCode),
    ("bbch", "season-element-bbch", Element::Bbch),
    ("planted", "season-element-planted", Element::Planted),
    ("product", "season-element-product", Element::Product),
    ("registration", "season-element-registration", Element::Registration),
    ("actives", "season-element-actives", Element::Actives),
    ("amount", "season-element-amount", Element::Amount),
    ("dose", "season-element-dose", Element::Dose),
    ("field-amounts", "season-element-field-amounts", Element::FieldAmounts),
    ("entry", "season-element-entry", Element::Entry),
    ("mix", "season-element-mix", Element::Mix),
    ("type-of-use", "season-element-type-of-use", Element::TypeOfUse),
    ("date", "season-element-date", Element::Date),
    ("start", "season-element-start", Element::Start),
    ("end", "season-element-end", Element::End),
    ("wind", "season-element-wind", Element::Wind),
    ("wind-from", "season-element-wind-from", Element::WindFrom),
    ("wind-at-end", "season-element-wind-at-end", Element::WindAtEnd),
    ("temperature", "season-element-temperature", Element::Temperature),
    ("temperature-at-end", "season-element-temperature-at-end", Element::TemperatureAtEnd),
    ("humidity", "season-element-humidity", Element::Humidity),
    ("wind-changes", "season-element-wind-changes", Element::WindChanges),
    ("weather", "season-element-weather", Element::Weather),
    ("pest", "season-element-pest", Element::Pest),
    ("method", "season-element-method", Element::Method),
    ("nozzles", "season-element-nozzles", Element::Nozzles),
    ("pressure", "season-element-pressure", Element::Pressure),
    ("clean-out", "season-element-clean-out", Element::CleanOut),
    ("operator", "season-element-operator", Element::Operator),
    ("applicator", "season-element-applicator", Element::Applicator),
    ("certificate", "season-element-certificate", Element::Certificate),
    ("uncertified", "season-element-uncertified", Element::Uncertified),
    ("involved", "season-element-involved", Element::Involved),
    ("certificates", "season-element-certificates", Element::Certificates),
    ("signature", "season-element-signature", Element::Signature),
    ("customer", "season-element-customer", Element::Customer),
    ("customer-address", "season-element-customer-address", Element::CustomerAddress),
    ("customer-phone", "season-element-customer-phone", Element::CustomerPhone),
    ("customer-copy", "season-element-customer-copy", Element::CustomerCopy),
    ("holder", "season-element-holder", Element::Holder),
    ("holder-address", "season-element-holder-address", Element::HolderAddress),
    ("holder-number", "season-element-holder-number", Element::HolderNumber),
];

/// What an element lacks.
#[derive(Clone, Debug, PartialEq, Eq, Hash)]
pub enum Lack {
    /// The thing itself.
    Itself,
    /// It, of these fields or products.
    Of(Vec<String>),
    /// There is no field to which it could belong.
    NoField,
    /// There is no product to which it could belong.
    NoProduct,
}

/// Where an element is typed.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Place {
    /// In a box of the record.
    Record,
    /// Under its key among what else a place asks for.
    More(&'static str),
    /// In the shed, on the page Records.
    Keeping,
}

impl TryFrom<String> for Element {
    type Error = String;

    fn try_from(key: String) -> Result<Self, String> {
        let own = OWN.iter().find(|(known, ..)| *known == key).map(|(_, _, element)| *element);
        own.or_else(|| MORE.iter().position(|(known, _)| *known == key).map(Self::More))
            .ok_or_else(|| t!("season-is-no-element-of-a-record", key = key))
    }
}

impl Element {
    /// Its key in the table.
    pub fn key(self) -> &'static str {
        self.named().0
    }

    /// A word or two, for a list.
    pub fn short(self) -> &'static str {
        plain(self.named().1)
    }

    fn named(self) -> (&'static str, &'static str) {
        let own = || OWN.iter().find(|(.., element)| *element == self).map(|(key, short, _)| (*key, *short));
        match self {
            Self::More(at) => MORE.get(at).copied(),
            _ => own(),
        }
        .unwrap_or_default()
    }

    /// Where it is typed.
    pub fn place(self) -> Place {
        match self {
            Self::Holder | Self::HolderAddress | Self::HolderNumber => Place::Keeping,
            Self::More(_) | Self::TypeOfUse | Self::Certificates => Place::More(self.key()),
            _ => Place::Record,
        }
    }

    /// What the record holds of it, as far as these lines go.
    ///
    /// # Errors
    /// What of it is lacking.
    pub fn text(self, farm: &Farm, record: &Record, lines: &[&RecordLine]) -> Result<String, Lack> {
        let units = farm.units;
        let keeping = &farm.keeping;
        let customer = |of: fn(&crate::farm::Customer) -> &Text| word(record.customer.as_ref().map_or("", |c| of(c)));
        match self {
            Self::Fields => {
                by_field(record, |field| Some(field.name.to_string()).filter(|name| !name.trim().is_empty()))
            }
            Self::Area => by_field(record, |field| sprayed(field).map(|area| area.text().to_owned())),
            Self::CoveredArea => covered(farm, record),
            Self::Location => by_field(record, |field| {
                let spot = if is_spot(record) { format!("{}, ", field.part.trim()) } else { String::new() };
                filled(&field.location).map(|location| format!("{spot}{location}"))
            }),
            Self::Parcel => by_field(record, |field| filled(&field.parcel)),
            Self::Crop => by_field(record, |field| filled(&field.crop)),
            Self::CropCode => by_field(record, |field| filled(&field.crop_code)),
            Self::Bbch => by_field(record, |field| {
                filled(&field.stage).filter(|stage| matches!(Stage::read(stage), Some(Stage::Bbch(_))))
            }),
            Self::Planted => by_field(record, |field| field.planted.map(short_date)),
            Self::Product => by_line(lines, |line| Some(line.name.to_string()).filter(|name| !name.trim().is_empty())),
            Self::Registration => of_pesticides(farm, lines, |line| filled(&line.registration)),
            Self::Actives => of_pesticides(farm, lines, |line| {
                let names: Vec<&str> = line.actives.iter().map(|active| active.name.as_str()).collect();
                filled(&names.join(", "))
            }),
            Self::Amount => by_line(lines, |line| (!line.amount.is_zero()).then(|| line.amount.text().to_owned())),
            Self::Dose => by_line(lines, |line| {
                let dose = line.amount.value().spread(record.area())?;
                (!line.amount.is_zero()).then(|| dose.show(units))
            }),
            Self::FieldAmounts => by_line(lines, |line| {
                let area = record.area();
                let parts = record.fields.values().map(|field| {
                    let share = field.area.ratio(area).filter(|_| !line.amount.is_zero())?;
                    Some(format!("{} {}", field.name, line.amount.value().times(share).show(units)))
                });
                parts.collect::<Option<Vec<_>>>().filter(|parts| !parts.is_empty()).map(|parts| parts.join(", "))
            }),
            Self::Entry => of_pesticides(farm, lines, |line| line.entry.map(|hours| format!("{hours} h"))),
            Self::Mix => {
                let all: Vec<&RecordLine> = record.lines.iter().collect();
                by_line(&all, |line| match filled(&line.registration) {
                    None if is_pesticide(farm, line) => None,
                    number => Some(number.unwrap_or_else(|| t!("season-in-the-tank").to_owned())),
                })
            }
            // Fields are surfaces; another use is typed.
            Self::TypeOfUse => match more(record, self.key()) {
                Err(_) if !record.fields.is_empty() => Ok(t!("season-surface").to_owned()),
                typed => typed,
            },
            Self::Date => Ok(short_date(record.date)),
            Self::Start => record.start.map(clock).ok_or(Lack::Itself),
            Self::End => record.end.map(clock).ok_or(Lack::Itself),
            Self::Wind => typed(record.wind.as_ref()),
            Self::WindFrom => word(&record.wind_from),
            Self::WindAtEnd => {
                let last = record.readings.iter().rev();
                let last = last.filter(|reading| !reading.wind_from.trim().is_empty()).find_map(|reading| {
                    reading
                        .wind
                        .as_ref()
                        .map(|wind| t!("season-from", wind = wind, wind_from = reading.wind_from.trim()))
                });
                last.ok_or(Lack::Itself)
            }
            Self::Temperature => typed(record.temperature.as_ref()),
            Self::TemperatureAtEnd => {
                typed(record.readings.iter().rev().find_map(|reading| reading.temperature.as_ref()))
            }
            Self::Humidity => typed(record.humidity.as_ref()),
            Self::WindChanges => wind_changes(record),
            Self::Weather => {
                let wind = record.wind.as_ref().map(|wind| match record.wind_from.trim() {
                    "" => t!("season-wind", wind = wind),
                    from => t!("season-wind-from", wind = wind, from = from),
                });
                let temperature = record.temperature.as_ref().map(|it| it.text().to_owned());
                let humidity = record.humidity.as_ref().map(|it| it.text().to_owned());
                word(&[wind, temperature, humidity].into_iter().flatten().collect::<Vec<_>>().join(", "))
            }
            Self::Pest => word(&record.weeds.join(", ")),
            // Left empty it stands for a ground boom.
            Self::Method => Ok(filled(&record.method).unwrap_or_else(|| t!("season-ground-boom").to_owned())),
            Self::Nozzles => word(&record.nozzles),
            Self::Pressure => typed(record.pressure.as_ref()),
            Self::CleanOut => word(&record.clean_out),
            Self::Operator => word(&record.operator),
            Self::Applicator => word(&record.supervisor).or_else(|_| word(&record.operator)),
            Self::Certificate => word(&record.certificate),
            Self::Uncertified => {
                let names = [&record.operator, &record.helpers].into_iter().filter_map(|name| filled(name));
                word(&names.collect::<Vec<_>>().join(", "))
            }
            Self::Involved => {
                let sprayed = word(&record.operator)?;
                let others = [&record.supervisor, &record.helpers].into_iter().filter_map(|name| filled(name));
                Ok([sprayed].into_iter().chain(others).collect::<Vec<_>>().join(", "))
            }
            // Where one did it alone, the record's own certificate is all of them.
            Self::Certificates => match more(record, self.key()) {
                Err(_) if filled(&record.supervisor).or_else(|| filled(&record.helpers)).is_none() => {
                    word(&record.certificate)
                }
                typed => typed,
            },
            Self::Signature => word(record.signed.as_ref().map_or("", |signed| &signed.by)),
            Self::Customer => customer(|customer| &customer.name),
            Self::CustomerAddress => customer(|customer| &customer.address),
            Self::CustomerPhone => customer(|customer| &customer.phone),
            Self::CustomerCopy => {
                let copied = record.customer.as_ref().and_then(|customer| customer.copied);
                copied.map(short_date).ok_or(Lack::Itself)
            }
            Self::Holder => word(&keeping.holder),
            Self::HolderAddress => word(&keeping.address),
            Self::HolderNumber => word(&keeping.number),
            Self::More(_) => more(record, self.key()),
        }
    }
}

/// Wind and its direction of each later reading; of those that lack one of them, when they were taken.
fn wind_changes(record: &Record) -> Result<String, Lack> {
    let (mut held, mut lacking) = (Vec::new(), Vec::new());
    for reading in &record.readings {
        let at = reading.at.map_or(t!("season-a-later-reading").to_owned(), clock);
        match (&reading.wind, filled(&reading.wind_from)) {
            (Some(wind), Some(from)) => held.push(t!("season-at-wind-from-from", at = at, wind = wind, from = from)),
            _ => lacking.push(at),
        }
    }
    match (held.is_empty(), lacking.is_empty()) {
        (true, _) => Err(Lack::Itself),
        (false, true) => Ok(held.join("; ")),
        (false, false) => Err(Lack::Of(lacking)),
    }
}

/// What stands under a key among what else is asked for.
pub(super) fn more(record: &Record, key: &str) -> Result<String, Lack> {
    word(record.more.get(key).map_or("", String::as_str))
}

fn filled(text: &str) -> Option<String> {
    Some(text.trim()).filter(|text| !text.is_empty()).map(str::to_owned)
}

fn word(text: &str) -> Result<String, Lack> {
    filled(text).ok_or(Lack::Itself)
}

fn typed<Q: Quantity>(value: Option<&AsTyped<Q>>) -> Result<String, Lack> {
    value.map(|value| value.text().to_owned()).ok_or(Lack::Itself)
}

/// The area of a field, where it is any.
fn sprayed(field: &RecordField) -> Option<&AsTyped<crate::quantity::Area>> {
    Some(&field.area).filter(|area| !area.is_zero())
}

/// The ground driven over: in bands and alternate rows the whole field is recorded, and what was sprayed of it beside it.
fn covered(farm: &Farm, record: &Record) -> Result<String, Lack> {
    let mut ids = record.fields.keys();
    by_field(record, |field| {
        let driven = ids.next().and_then(|id| driven_over(farm, record, id));
        let sprayed = sprayed(field)?;
        Some(match driven {
            Some(driven) if driven.exceeds(sprayed.value()) => {
                t!("season-of-which-in-bands", driven = driven.show(farm.units), sprayed = sprayed.text())
            }
            _ => sprayed.text().to_owned(),
        })
    })
}

fn by_field(record: &Record, text: impl FnMut(&RecordField) -> Option<String>) -> Result<String, Lack> {
    each(record.fields.values(), |field| &field.name, text, Lack::NoField)
}

fn by_line(lines: &[&RecordLine], text: impl FnMut(&RecordLine) -> Option<String>) -> Result<String, Lack> {
    each(lines.iter().copied(), |line| &line.name, text, Lack::NoProduct)
}

/// The same of the pesticides alone: adjuvants and conditioners have neither a number that a rule asks for nor a re-entry time.
fn of_pesticides(
    farm: &Farm,
    lines: &[&RecordLine],
    text: impl FnMut(&RecordLine) -> Option<String>,
) -> Result<String, Lack> {
    each(lines.iter().copied().filter(|line| is_pesticide(farm, line)), |line| &line.name, text, Lack::NoProduct)
}

/// The text of one; of several each with its name.
fn each<'a, T: 'a>(
    all: impl Iterator<Item = &'a T>,
    name: impl Fn(&T) -> &Text,
    mut text: impl FnMut(&T) -> Option<String>,
    none: Lack,
) -> Result<String, Lack> {
    let (mut held, mut lacking) = (Vec::new(), Vec::new());
    for one in all {
        match text(one) {
            Some(text) => held.push((name(one).to_string(), text)),
            None => lacking.push(name(one).to_string()),
        }
    }
    if !lacking.is_empty() {
        // Of all there is, or of the only one, needs no names.
        return Err(if held.is_empty() { Lack::Itself } else { Lack::Of(lacking) });
    }
    match held.as_slice() {
        [] => Err(none),
        [(_, only)] => Ok(only.clone()),
        several => {
            let say = |(name, text): &(String, String)| {
                if name == text { name.clone() } else { format!("{name}: {text}") }
            };
            Ok(several.iter().map(say).collect::<Vec<_>>().join("; "))
        }
    }
}

#[cfg(test)]
mod tests {
    use super::{Element, MORE, OWN};

    #[test]
    fn every_element_is_found_by_its_key() {
        for (key, id, element) in OWN {
            assert_eq!(Element::try_from(key.to_owned()), Ok(element));
            assert_eq!(element.key(), key);
            assert_ne!(element.short(), id);
        }
        for (at, (key, _)) in MORE.iter().enumerate() {
            assert_eq!(Element::try_from((*key).to_owned()).unwrap().key(), *key);
            assert_eq!(Element::More(at).key(), *key);
        }
        assert!(Element::try_from("wnd".to_owned()).is_err());
    }
}
