//! The columns of the records CSV. Their names and their order are what spreadsheets of people rely on: a column may be
//! added at the end, none may be renamed.

/// To what a column belongs, and so on which rows it must say the same.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Of {
    /// The record: the same on all its rows.
    Record,
    /// The field: the same on all rows of a field of a record.
    Field,
    /// The product: the same in each field of a record.
    Line,
    /// Reckoned for sums, from the other columns; not read back.
    Sum,
}

impl Of {
    /// In a word, as the table of the columns has it.
    pub const fn words(self) -> &'static str {
        match self {
            Self::Record => "record",
            Self::Field => "field",
            Self::Line => "product",
            Self::Sum => "sums",
        }
    }
}

/// A column.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Column {
    /// Its heading.
    pub name: &'static str,
    /// To what it belongs.
    pub of: Of,
    /// What it holds, in a sentence; the README has the same.
    pub meaning: &'static str,
}

const fn column(name: &'static str, of: Of, meaning: &'static str) -> Column {
    Column { name, of, meaning }
}

/// All columns in their order.
pub const COLUMNS: [Column; 70] = [
    column("record", Of::Record, "the record's id"),
    column("pass", Of::Record, "id of the pass it was planned as"),
    column("name", Of::Record, "what the pass was called"),
    column("date", Of::Record, "the day, year-month-day"),
    column("start", Of::Record, "when spraying began, 24 hours"),
    column("end", Of::Record, "when it ended; before the start: on the next day"),
    column("field", Of::Field, "the field's id"),
    column("field_name", Of::Field, "its name then"),
    column("part", Of::Field, "which part of it; empty for all of it"),
    column("crop", Of::Field, "its crop"),
    column("crop_code", Of::Field, "the EPPO code of the crop"),
    column("stage", Of::Field, "its growth stage"),
    column("variety", Of::Field, "its variety"),
    column("planted", Of::Field, "day of planting"),
    column("location", Of::Field, "where it lies"),
    column("parcel", Of::Field, "reference of the parcel in the aid claim"),
    column("area", Of::Field, "the area sprayed, as typed"),
    column("area_ha", Of::Sum, "hectares sprayed; in the first row of a field and record only"),
    column("planned_area", Of::Field, "the area that was planned, as typed"),
    column("product", Of::Line, "the product's id"),
    column("product_name", Of::Line, "its name then"),
    column("registration", Of::Line, "its registration number then"),
    column("kind", Of::Line, "what it was for: Herbicide, Fungicide, Adjuvant and so on, as in the farm's file"),
    column("class", Of::Line, "its adjuvant class, as in the farm's file"),
    column("restricted", Of::Line, "yes where only a certified applicator might use it"),
    column("lot", Of::Line, "the lots it came from"),
    column("amount", Of::Line, "how much of it went out on all fields of the record, as typed"),
    column("amount_l", Of::Sum, "this field's share of it by area, in litres, where it is a volume"),
    column("amount_kg", Of::Sum, "this field's share of it by area, in kilograms, where it is a mass"),
    column("planned_amount", Of::Line, "how much was planned, as typed"),
    column("price", Of::Line, "its price then, as typed"),
    column("cost", Of::Sum, "what this field's share cost, in the farm's currency"),
    column("entry_hours", Of::Line, "hours before people might enter"),
    column("harvest_days", Of::Line, "days before harvest"),
    column("actives", Of::Line, "its actives in the whole amount, as JSON"),
    column("actives_kg", Of::Sum, "this field's share of the actives: name|ae or ai|group=kilograms, apart by \"; \""),
    column("spray_volume", Of::Record, "the spray volume used, as typed"),
    column(
        "spray_volume_l",
        Of::Sum,
        "this field's share of it, in litres; in the first row of a field and record only",
    ),
    column("planned_volume", Of::Record, "the spray volume that was planned, as typed"),
    column("loads", Of::Record, "how many loads"),
    column("left", Of::Record, "how much spray was left over, as typed"),
    column("left_went", Of::Record, "where that went"),
    column("water", Of::Record, "the water"),
    column("rig", Of::Record, "the rig"),
    column("method", Of::Record, "how it was put out; empty for a ground boom"),
    column("nozzles", Of::Record, "the nozzles"),
    column("pressure", Of::Record, "pressure at the boom, as typed"),
    column("speed", Of::Record, "speed over ground, as typed"),
    column("height", Of::Record, "height of the nozzles, as typed"),
    column("droplets", Of::Record, "droplet class, as in the farm's file"),
    column("clean_out", Of::Record, "how the rig was cleaned out"),
    column("wind", Of::Record, "wind at the start, as typed"),
    column("wind_from", Of::Record, "from where it blew"),
    column("gust", Of::Record, "strongest gust, as typed"),
    column("temperature", Of::Record, "air temperature, as typed"),
    column("humidity", Of::Record, "relative humidity, as typed"),
    column("readings", Of::Record, "weather measured later, as JSON"),
    column("expected", Of::Record, "weather that was forecast, as JSON"),
    column("operator", Of::Record, "who sprayed"),
    column("certificate", Of::Record, "certificate number of the applicator"),
    column("supervisor", Of::Record, "who supervised"),
    column("helpers", Of::Record, "others who worked on it"),
    column("customer", Of::Record, "for whom, as JSON"),
    column(
        "weeds",
        Of::Record,
        "weeds or pests it was meant for, apart by \"; \" (as JSON where one holds a semicolon)",
    ),
    column("more", Of::Record, "what else a place or the farm asks for, as JSON"),
    column("made", Of::Record, "when the record was made"),
    column("note", Of::Record, "anything else"),
    column("signed", Of::Record, "the signature, as JSON"),
    column("amendments", Of::Record, "what was changed after it was signed, as JSON"),
    column("outcomes", Of::Record, "what came of it, as JSON"),
];
