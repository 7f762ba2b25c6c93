//! What a column of a spreadsheet may hold, by what headings it is known, and in which units.

use tankard_core::quantity::{
    Amount, Area, CarrierRate, Length, Pressure, Quantity, Rate, Share, Speed, Temperature, Volume,
};
use tankard_core::t;

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Hash)]
#[allow(missing_docs)] // Their names say it; see `name`.
pub enum Holds {
    Date,
    Start,
    End,
    Name,
    Field,
    Area,
    AreaUnit,
    Crop,
    Variety,
    Stage,
    Parcel,
    Product,
    Registration,
    Lot,
    Rate,
    RateUnit,
    Amount,
    AmountUnit,
    Carrier,
    Volume,
    Water,
    Rig,
    Nozzles,
    Pressure,
    Speed,
    Height,
    Operator,
    Certificate,
    Supervisor,
    Customer,
    Wind,
    WindFrom,
    Gust,
    Temperature,
    Humidity,
    Weeds,
    Note,
}

impl Holds {
    /// All of them, in the order in which people look for them.
    pub const ALL: [Self; 37] = [
        Self::Date,
        Self::Start,
        Self::End,
        Self::Name,
        Self::Field,
        Self::Area,
        Self::AreaUnit,
        Self::Crop,
        Self::Variety,
        Self::Stage,
        Self::Parcel,
        Self::Product,
        Self::Registration,
        Self::Lot,
        Self::Rate,
        Self::RateUnit,
        Self::Amount,
        Self::AmountUnit,
        Self::Carrier,
        Self::Volume,
        Self::Water,
        Self::Rig,
        Self::Nozzles,
        Self::Pressure,
        Self::Speed,
        Self::Height,
        Self::Operator,
        Self::Certificate,
        Self::Supervisor,
        Self::Customer,
        Self::Wind,
        Self::WindFrom,
        Self::Gust,
        Self::Temperature,
        Self::Humidity,
        Self::Weeds,
        Self::Note,
    ];

    /// In words.
    pub fn name(self) -> &'static str {
        match self {
            Self::Date => t!("file-holds-day"),
            Self::Start => t!("file-holds-start"),
            Self::End => t!("file-holds-end"),
            Self::Name => t!("file-pass-or-mix"),
            Self::Field => t!("file-holds-field"),
            Self::Area => t!("file-holds-area"),
            Self::AreaUnit => t!("file-unit-of-the-area"),
            Self::Crop => t!("file-holds-crop"),
            Self::Variety => t!("file-holds-variety"),
            Self::Stage => t!("file-holds-stage"),
            Self::Parcel => t!("file-holds-parcel"),
            Self::Product => t!("file-holds-product"),
            Self::Registration => t!("file-holds-registration"),
            Self::Lot => t!("file-holds-lot"),
            Self::Rate => t!("file-holds-rate"),
            Self::RateUnit => t!("file-unit-of-the-rate"),
            Self::Amount => t!("file-holds-amount"),
            Self::AmountUnit => t!("file-unit-of-the-amount"),
            Self::Carrier => t!("file-spray-over-ground"),
            Self::Volume => t!("file-spray-volume"),
            Self::Water => t!("file-holds-water"),
            Self::Rig => t!("file-holds-rig"),
            Self::Nozzles => t!("file-holds-nozzles"),
            Self::Pressure => t!("file-holds-pressure"),
            Self::Speed => t!("file-holds-speed"),
            Self::Height => t!("file-boom-height"),
            Self::Operator => t!("file-holds-operator"),
            Self::Certificate => t!("file-holds-certificate"),
            Self::Supervisor => t!("file-holds-supervisor"),
            Self::Customer => t!("file-holds-customer"),
            Self::Wind => t!("file-holds-wind"),
            Self::WindFrom => t!("file-wind-from"),
            Self::Gust => t!("file-holds-gust"),
            Self::Temperature => t!("file-holds-temperature"),
            Self::Humidity => t!("file-holds-humidity"),
            Self::Weeds => t!("file-weeds-or-pests"),
            Self::Note => t!("file-holds-note"),
        }
    }

    /// The units offered for its figures; none where it holds words.
    pub const fn units(self) -> &'static [&'static str] {
        match self {
            Self::Area => &["ac", "ha", "m2"],
            Self::Rate => &[
                "fl oz/ac",
                "pt/ac",
                "qt/ac",
                "gal/ac",
                "oz wt/ac",
                "lb/ac",
                "L/ha",
                "mL/ha",
                "kg/ha",
                "g/ha",
                "% v/v",
                "fl oz/100 gal",
                "lb/100 gal",
            ],
            Self::Amount => &["gal", "qt", "pt", "fl oz", "lb", "oz wt", "L", "mL", "kg", "g"],
            Self::Carrier => &["gal/ac", "L/ha", "imp gal/ac"],
            Self::Volume => &["gal", "L", "imp gal"],
            Self::Pressure => &["psi", "bar", "kPa"],
            Self::Speed => &["mph", "km/h"],
            Self::Height => &["in", "cm", "ft", "m"],
            Self::Wind | Self::Gust => &["mph", "km/h", "m/s", "kn"],
            Self::Temperature => &["°F", "°C"],
            Self::Humidity => &["%"],
            _ => &[],
        }
    }

    /// The column that may hold its unit.
    pub const fn unit_column(self) -> Option<Self> {
        match self {
            Self::Area => Some(Self::AreaUnit),
            Self::Rate => Some(Self::RateUnit),
            Self::Amount => Some(Self::AmountUnit),
            _ => None,
        }
    }

    /// A unit as it is offered, where one of those means the same: "ac" for "Acres".
    pub(super) fn offered(self, unit: &str) -> String {
        let Some(is_same) = self.is_same_unit() else { return unit.to_owned() };
        // Ounces alone are a mass by arithmetic only; what they mean is asked.
        let is_bare_ounce = unit.to_lowercase().starts_with("oz") && !unit.to_lowercase().contains("wt");
        let own = self.units().iter().find(|own| !is_bare_ounce && is_same(own, unit));
        own.map_or_else(|| unit.to_owned(), |own| (*own).to_owned())
    }

    /// Whether a text is a unit of its figures.
    pub fn is_unit(self, unit: &str) -> bool {
        let unit = unit.trim();
        // A figure in front would be read with the one that stands for the cell.
        if unit.is_empty()
            || unit.starts_with(|c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '/' | '½' | '¼' | '¾'))
        {
            return false;
        }
        // What means the same as itself can be read.
        self.is_same_unit().is_some_and(|is_same| is_same(unit, unit))
    }

    /// Tells whether two texts are units of its figures and mean the same; `None` where its figures have no unit.
    fn is_same_unit(self) -> Option<fn(&str, &str) -> bool> {
        fn same<Q: Quantity + PartialEq>(one: &str, other: &str) -> bool {
            let read = |unit: &str| Q::parse(&format!("1 {unit}")).ok();
            read(one).is_some_and(|one| read(other) == Some(one))
        }
        match self {
            Self::Area => Some(same::<Area>),
            Self::Rate => Some(same::<Rate>),
            Self::Amount => Some(same::<Amount>),
            Self::Carrier => Some(same::<CarrierRate>),
            Self::Volume => Some(same::<Volume>),
            Self::Pressure => Some(same::<Pressure>),
            Self::Speed | Self::Wind | Self::Gust => Some(same::<Speed>),
            Self::Height => Some(same::<Length>),
            Self::Temperature => Some(same::<Temperature>),
            Self::Humidity => Some(same::<Share>),
            _ => None,
        }
    }
}

/// By what words a heading is known: each alternative is one or several words that must all stand in it, whole or as their
/// beginning (`temp*`). The first row that fits counts. `None` is for what sounds near and is something else. The languages
/// are English, German, French and Spanish.
pub(super) const WORDS: [(Option<Holds>, &[&str]); 42] = [
    (
        None,
        &[
            "harvest*",
            "plant*",
            "expir*",
            "due",
            "invoice*",
            "price*",
            "cost*",
            "total cost",
            "rei",
            "phi",
            "entry",
            "group",
            "moa",
        ],
    ),
    (Some(Holds::Certificate), &["certif*", "cert", "licen*", "sachkunde*"]),
    (Some(Holds::Registration), &["registration*", "reg", "epa*", "pcp", "mapp", "authori*", "zulassung*", "registro"]),
    (Some(Holds::WindFrom), &["wind dir*", "wind from", "winddir*", "wdir", "windrichtung", "direction"]),
    (Some(Holds::Gust), &["gust*", "böe*", "rafale*", "racha*"]),
    (Some(Holds::Wind), &["wind*", "vent", "viento*"]),
    (Some(Holds::Temperature), &["temp*", "lufttemp*", "air"]),
    (Some(Holds::Humidity), &["humid*", "rh", "luftfeucht*", "humedad"]),
    (Some(Holds::AreaUnit), &["area unit*", "acre* unit*", "unit* area", "flächeneinheit"]),
    (Some(Holds::RateUnit), &["rate unit*", "unit* rate", "dose unit*", "unit* dose", "rate uom", "uom rate"]),
    (Some(Holds::AmountUnit), &["unit*", "uom", "einheit*", "unidad*", "unité*"]),
    (Some(Holds::Date), &["date*", "day", "datum", "fecha", "jour", "tag"]),
    (Some(Holds::End), &["end*", "finish*", "stop*", "time out", "ende", "fin"]),
    (Some(Holds::Start), &["start*", "begin*", "time*", "uhrzeit", "beginn", "hora", "heure"]),
    (Some(Holds::Supervisor), &["supervis*"]),
    (
        Some(Holds::Operator),
        &["operator*", "applicator*", "applied by", "sprayed by", "driver*", "fahrer*", "anwender*", "operador*"],
    ),
    (Some(Holds::Customer), &["customer*", "client*", "kunde*", "cliente"]),
    (Some(Holds::Variety), &["variety", "hybrid*", "sorte", "variedad"]),
    (Some(Holds::Stage), &["stage*", "bbch", "growth*", "stadium", "estadio"]),
    (Some(Holds::Parcel), &["parcel*", "flik"]),
    (Some(Holds::Crop), &["crop*", "kultur*", "cultivo", "culture"]),
    (Some(Holds::Carrier), &["carrier*", "gpa", "water rate", "spray rate", "volume per*", "wasseraufwand*"]),
    (Some(Holds::Rate), &["rate*", "dose*", "dosage", "dosier*", "aufwand*", "dosis"]),
    (
        Some(Holds::Amount),
        &["amount*", "quantity", "qty", "total product", "menge*", "cantidad", "quantité", "total applied"],
    ),
    (Some(Holds::Volume), &["volume*", "gallons", "spray total", "brühe*", "spritzbrühe*", "volumen"]),
    (
        Some(Holds::Area),
        &["area*", "acre*", "ac", "ha", "hectare*", "size", "fläche*", "hektar", "superficie", "hectárea*"],
    ),
    (Some(Holds::Lot), &["lot", "lots", "batch*", "charge*", "lote"]),
    (Some(Holds::Weeds), &["weed*", "target*", "pest", "pests", "unkraut*", "unkräuter", "maleza*"]),
    (
        Some(Holds::Product),
        &[
            "product*",
            "chemical*",
            "herbicide*",
            "pesticide*",
            "material*",
            "mittel",
            "produkt*",
            "producto*",
            "produit*",
            "trade",
        ],
    ),
    (Some(Holds::Amount), &["total*", "used"]),
    (
        Some(Holds::Field),
        &["field*", "schlag*", "feld*", "block*", "paddock*", "parcela", "lugar", "location", "site", "parcelle"],
    ),
    (Some(Holds::Nozzles), &["nozzle*", "tip", "tips", "düse*", "boquilla*"]),
    (Some(Holds::Pressure), &["pressure*", "psi", "druck*", "presión"]),
    (Some(Holds::Height), &["height*", "höhe*"]),
    (Some(Holds::Speed), &["speed*", "geschwindigkeit", "velocidad"]),
    (Some(Holds::Water), &["water*", "wasser*", "agua"]),
    (Some(Holds::Rig), &["rig", "sprayer*", "machine*", "equipment*", "spritze*", "gerät*"]),
    (Some(Holds::Note), &["note*", "comment*", "remark*", "bemerkung*", "nota*", "observacion*"]),
    (Some(Holds::Name), &["pass", "job", "mix", "tank mix", "tankmix", "application*", "treatment*", "trip", "task"]),
    (Some(Holds::Start), &["when"]),
    (Some(Holds::Operator), &["who", "person", "name", "user"]),
    (Some(Holds::Field), &["where"]),
];

/// What a heading speaks of, without the unit in it.
pub(super) fn of_words(heading: &str) -> Option<Holds> {
    let lower = heading.to_lowercase();
    let own: Vec<&str> = lower.split(|c: char| !c.is_alphanumeric()).filter(|word| !word.is_empty()).collect();
    let has = |word: &str| match word.strip_suffix('*') {
        Some(start) => own.iter().any(|own| own.starts_with(start)),
        None => own.contains(&word),
    };
    WORDS
        .iter()
        .find(|(_, alternatives)| alternatives.iter().any(|words| words.split(' ').all(has)))
        .and_then(|(holds, _)| *holds)
}
