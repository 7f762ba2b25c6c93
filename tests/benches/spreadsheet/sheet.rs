//! A pass as an adviser's sheet: what is typed, and formulas from it. Factors are written down here once more, so that both sides
//! have their own.

use std::fmt::Write as _;

use rust_decimal::prelude::ToPrimitive;
use serde_json::{Value, json};
use tankard_core::farm::{Farm, Id, LoadSplit, Pass, Rig};
use tankard_core::plan::Plan;
use tankard_core::quantity::{Amount, AsTyped, Quantity, Rate};

use crate::Problem;

// NIST Special Publication 811 (2008), appendix B: exact by definition, in litres, kilograms and hectares.
const GALLON: f64 = 3.785_411_784;
const POUND: f64 = 0.453_592_37;
const ACRE: f64 = 0.404_685_642_24;

/// A cell by column and row, from 0.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Place {
    pub(crate) column: usize,
    pub(crate) row: usize,
}

const fn at(column: usize, row: usize) -> Place {
    Place { column, row }
}

/// What a cell holds: a number, a text, or a formula with its sign of equality.
#[derive(Clone, Debug)]
pub(crate) struct Cell {
    pub(crate) sheet: usize,
    pub(crate) at: Place,
    pub(crate) holds: Value,
}

/// An input that is changed.
pub(crate) struct Change {
    /// In words.
    pub(crate) what: String,
    input: Input,
    /// The new text on the farm's side.
    text: String,
    /// Where it stands.
    pub(crate) cell: Place,
    /// What stood there.
    pub(crate) before: f64,
    /// What stands there then.
    pub(crate) value: f64,
}

enum Input {
    Area(Id),
    Part(Id, Id),
    Rate(Id, Id),
    SprayVolume(Id),
    Tank(Id),
    FillTo(Id),
    Calcium(Id),
}

/// The farm before a change.
pub(crate) struct Before(Farm);

impl Before {
    pub(crate) fn undo(self, farm: &mut Farm) {
        *farm = self.0;
    }
}

impl Change {
    /// Makes the change on the farm's side, as one who types it would.
    pub(crate) fn apply(&self, farm: &mut Farm) -> Result<Before, Problem> {
        let before = Before(farm.clone());
        match &self.input {
            Input::Area(id) => farm.fields.get_mut(id).ok_or("no field")?.area = AsTyped::parse(&self.text)?,
            Input::Part(pass, id) => {
                let part = farm.passes.get_mut(pass).and_then(|pass| pass.parts.get_mut(id));
                *part.ok_or("no part")? = AsTyped::parse(&self.text)?;
            }
            Input::FillTo(pass) => {
                farm.passes.get_mut(pass).ok_or("no pass")?.fill_to = Some(AsTyped::parse(&self.text)?);
            }
            Input::Rate(pass, product) => {
                let mix = &mut farm.passes.get_mut(pass).ok_or("no pass")?.mix;
                mix.iter_mut().find(|line| line.product == *product).ok_or("no line")?.rate =
                    AsTyped::parse(&self.text)?;
            }
            Input::SprayVolume(pass) => {
                farm.passes.get_mut(pass).ok_or("no pass")?.carrier = Some(AsTyped::parse(&self.text)?);
            }
            Input::Tank(rig) => farm.rigs.get_mut(rig).ok_or("no rig")?.tank = AsTyped::parse(&self.text)?,
            Input::Calcium(water) => {
                farm.waters.get_mut(water).ok_or("no water")?.calcium = Some(AsTyped::parse(&self.text)?);
            }
        }
        Ok(before)
    }
}

/// A number as typed, with its unit: "22 fl oz/ac" is 22 and "fl oz/ac".
fn typed<Q: Quantity>(quantity: &AsTyped<Q>) -> Option<(f64, String)> {
    let text = quantity.text().trim().trim_start_matches('$').trim();
    let end = text.find(|letter: char| !letter.is_ascii_digit() && letter != '.').unwrap_or(text.len());
    let (number, unit) = text.split_at_checked(end)?;
    Some((number.parse().ok()?, unit.trim().to_owned()))
}

/// Litres or kilograms in a unit.
fn factor(unit: &str) -> Option<f64> {
    Some(match unit {
        "gal" => GALLON,
        "qt" => GALLON / 4.0,
        "pt" => GALLON / 8.0,
        "fl oz" => GALLON / 128.0,
        "L" | "kg" => 1.0,
        "lb" => POUND,
        "oz" | "oz wt" => POUND / 16.0,
        "g" => 0.001,
        _ => return None,
    })
}

fn hectares(unit: &str) -> Option<f64> {
    Some(match unit {
        "ac" => ACRE,
        "ha" => 1.0,
        _ => return None,
    })
}

/// By what a rate is multiplied.
#[derive(Clone, Copy)]
enum By {
    Ground,
    Spray,
    /// Ground, and divided by the content.
    Active,
}

/// What a unit of a rate is, in litres or kilograms on a hectare or in a litre of spray.
fn rate(unit: &str) -> Option<(f64, By)> {
    if unit == "% v/v" {
        return Some((0.01, By::Spray));
    }
    let (amount, over) = unit.split_once('/')?;
    if over == "100 gal" {
        return Some((factor(amount)? / (100.0 * GALLON), By::Spray));
    }
    let per = hectares(over)?;
    let bare = amount.strip_suffix(" ae").or_else(|| amount.strip_suffix(" ai"));
    Some(match bare {
        Some(bare) => (factor(bare)? / per, By::Active),
        None => (factor(amount)? / per, By::Ground),
    })
}

/// A sheet.
pub(crate) struct Sheet {
    /// From 0.
    pub(crate) number: usize,
    /// Its pass.
    pub(crate) pass: Id,
    /// The fields that share its loads.
    pub(crate) fields: Vec<Id>,
    /// Whether these are all of the pass.
    is_whole: bool,
    /// The products in the order of the sheet.
    lines: Vec<Id>,
    pub(crate) cells: Vec<Cell>,
    pub(crate) changes: Vec<Change>,
    /// Where its answers stand.
    pub(crate) block: (Place, Place),
}

/// The heads of a sheet that are no list: each row has what it is, a number, and its unit in litres and hectares.
const SPRAY: usize = 1;
const TANK: usize = 2;
const EVEN: usize = 3;
const IONS: usize = 4;
const FIELDS: usize = 12;

/// Pounds in 100 gallons that a part per million ties up. Source: Zollinger, NDSU Extension, Crop & Pest Report, 2 July 2015.
const TIED_UP: [(&str, f64); 5] =
    [("calcium", 0.009), ("magnesium", 0.014), ("sodium", 0.005), ("potassium", 0.002), ("iron", 0.042)];

impl Sheet {
    /// A stretch of a pass as a sheet; `None` where the pass has what such a sheet has no place for: loads by hand or by aims, spray in
    /// the tank; and where something is typed in a unit that has no factor here.
    pub(crate) fn of(farm: &Farm, plan: &Plan, fields: &[Id], number: usize) -> Option<Self> {
        let pass = farm.passes.get(&plan.pass)?;
        let rig = farm.rigs.get(&pass.rig)?;
        if !is_plain(pass) {
            return None;
        }
        let mut sheet = Self {
            number,
            pass: plan.pass.clone(),
            fields: fields.to_vec(),
            is_whole: fields.len() == plan.fields.len(),
            lines: Vec::new(),
            cells: Vec::new(),
            changes: Vec::new(),
            block: (at(0, 0), at(0, 0)),
        };
        sheet.put(0, 0, pass.name.as_str());
        sheet.head(farm, pass, rig)?;
        let last_field = FIELDS + fields.len() - 1;
        for (row, id) in (FIELDS..).zip(fields) {
            let field = farm.fields.get(id)?;
            let (typed_area, input) = match pass.parts.get(id) {
                Some(part) => (part, Input::Part(plan.pass.clone(), id.clone())),
                None => (&field.area, Input::Area(id.clone())),
            };
            let (area, unit) = typed(typed_area)?;
            let planned = plan.fields.iter().find(|planned| planned.field == *id)?;
            sheet.put(0, row, field.name.as_str());
            // Less, since a part may not be more than its field.
            sheet.input(input, at(1, row), area, rounded(area - 1.7), &unit);
            sheet.put(2, row, hectares(&unit)?);
            // What stays unsprayed is measured on the map; a sheet takes it as it is told.
            sheet.put(3, row, area * hectares(&unit)? - planned.area.to_hectares());
            sheet.put(4, row, format!("=B{0}*C{0}-D{0}", row + 1));
        }
        let top = last_field + 2;
        let first = top + 8;
        let products: Vec<_> = plan.lines.iter().map(|line| line.product.clone()).collect();
        let last = first + products.len() - 1;
        let (ground, spray, loads, full, rest) = (top + 1, top + 2, top + 3, top + 4, top + 5);
        for (row, (what, formula)) in (top..).zip([
            ("ground, ha", format!("=SUM(E{}:E{})", FIELDS + 1, last_field + 1)),
            ("spray, L", format!("=D{}*E{ground}", SPRAY + 1)),
            ("loads", format!("=CEILING(E{spray}/D{}-0.000000001;1)", TANK + 1)),
            ("a full load, L", format!("=IF(B{}=1;E{spray}/E{loads};MIN(D{};E{spray}))", EVEN + 1, TANK + 1)),
            ("the last load, L", format!("=E{spray}-(E{loads}-1)*E{full}")),
            ("conditioner that the water ties up, kg", format!("=B{}*{POUND}/(100*{GALLON})*E{spray}", IONS + 6)),
            ("cost", format!("=SUM(H{}:H{})", first + 1, last + 1)),
        ]) {
            sheet.put(0, row, what);
            sheet.put(4, row, formula);
        }
        for (row, id) in (first..).zip(&products) {
            let product = farm.products.get(id)?;
            let line = pass.mix.iter().find(|line| line.product == *id)?;
            let (amount, unit) = typed(&line.rate)?;
            let (per, by) = rate(&unit)?;
            let here = row + 1;
            sheet.put(0, row, product.name.as_str());
            sheet.input(Input::Rate(sheet.pass.clone(), id.clone()), at(1, row), amount, rounded(amount * 1.07), &unit);
            sheet.put(2, row, per);
            let total = match by {
                By::Ground => format!("=B{here}*C{here}*E{ground}"),
                By::Spray => format!("=B{here}*C{here}*E{spray}"),
                By::Active => {
                    let (content, unit) = typed(&product.actives.first()?.content)?;
                    let (unit, over) = unit.split_once('/')?;
                    sheet.put(3, row, content * factor(unit.split(' ').next()?)? / factor(over)?);
                    format!("=B{here}*C{here}*E{ground}/D{here}")
                }
            };
            // "…, but at least" and "at most" are typed over ground.
            let bound = |typed_rate: &AsTyped<Rate>| {
                let (amount, unit) = typed(typed_rate)?;
                let (per, by) = rate(&unit)?;
                matches!(by, By::Ground).then(|| format!("{amount}*{per}*E{ground}"))
            };
            let mut total = total;
            if let Some(most) = &line.at_most {
                total = format!("=MIN({};{})", total.trim_start_matches('='), bound(most)?);
            }
            if let Some(least) = &line.at_least {
                total = format!("=MAX({};{})", total.trim_start_matches('='), bound(least)?);
            }
            sheet.put(4, row, total);
            sheet.put(5, row, format!("=E{here}*E{full}/E{spray}"));
            sheet.put(6, row, format!("=E{here}*E{rest}/E{spray}"));
            if let Some(price) = &product.price {
                let (money, unit) = typed(price)?;
                let per = factor(unit.strip_prefix('/')?.trim())?;
                sheet.put(7, row, format!("=E{here}/{per}*{money}"));
            }
        }
        sheet.lines = products;
        sheet.block = (at(4, top), at(7, last));
        Some(sheet)
    }

    fn head(&mut self, farm: &Farm, pass: &Pass, rig: &Rig) -> Option<()> {
        let (volume, unit) = typed(pass.carrier.as_ref()?)?;
        let (per, over) = unit.split_once('/')?;
        self.put(0, SPRAY, "spray volume");
        self.input(Input::SprayVolume(self.pass.clone()), at(1, SPRAY), volume, volume + 2.0, &unit);
        self.put(2, SPRAY, factor(per)? / hectares(over)?);
        self.put(3, SPRAY, format!("=B{0}*C{0}", SPRAY + 1));
        let (tank, input) = match &pass.fill_to {
            Some(mark) => (mark, Input::FillTo(self.pass.clone())),
            None => (&rig.tank, Input::Tank(pass.rig.clone())),
        };
        let (tank, unit) = typed(tank)?;
        self.put(0, TANK, "tank");
        self.input(input, at(1, TANK), tank, rounded(tank * 0.9), &unit);
        self.put(2, TANK, factor(&unit)?);
        self.put(3, TANK, format!("=B{0}*C{0}", TANK + 1));
        self.put(0, EVEN, "even loads");
        self.put(1, EVEN, if pass.split == LoadSplit::EvenLoads { 1.0 } else { 0.0 });
        let water = farm.waters.get(&pass.water)?;
        let ions = [&water.calcium, &water.magnesium, &water.sodium, &water.potassium, &water.iron];
        let mut tied_up = "=0".to_owned();
        for (row, ((name, share), ion)) in (IONS..).zip(TIED_UP.into_iter().zip(ions)) {
            let (content, unit) = ion.as_ref().map_or(Some((0.0, "ppm".to_owned())), typed)?;
            self.put(0, row, name);
            if name == "calcium" && ion.is_some() {
                self.input(Input::Calcium(pass.water.clone()), at(1, row), content, content + 9.0, &unit);
            } else {
                self.put(1, row, content);
            }
            // Writing to a text cannot fail.
            let _ = write!(tied_up, "+{share}*B{}", row + 1);
        }
        self.put(0, IONS + 5, "lb of ammonium sulfate in 100 gal");
        self.put(1, IONS + 5, tied_up);
        Some(())
    }

    fn put(&mut self, column: usize, row: usize, holds: impl Into<Value>) {
        self.cells.push(Cell { sheet: self.number, at: at(column, row), holds: holds.into() });
    }

    fn input(&mut self, input: Input, cell: Place, before: f64, value: f64, unit: &str) {
        self.put(cell.column, cell.row, json!(before));
        let what = match &input {
            Input::Area(id) | Input::Part(_, id) => format!("the area of {id}"),
            Input::Rate(_, id) => format!("the rate of {id}"),
            Input::SprayVolume(_) => "the spray volume".to_owned(),
            Input::Tank(_) | Input::FillTo(_) => "the tank".to_owned(),
            Input::Calcium(_) => "the calcium".to_owned(),
        };
        self.changes.push(Change { what, input, text: format!("{value} {unit}"), cell, before, value });
    }
}

fn is_plain(pass: &Pass) -> bool {
    pass.split != LoadSplit::ByAims
        && pass.sizes.is_empty()
        && pass.rest_of.is_empty()
        && pass.in_tank.is_none()
        && pass.extra.is_none()
}

/// To four digits after the point, so that what is typed is what is reckoned with.
fn rounded(value: f64) -> f64 {
    (value * 1e4).round() / 1e4
}

/// What each product's row answers, column by column.
const COLUMNS: [&str; 3] = ["in all", "in a full load", "in the last load"];

/// The answers for a sheet, each with what it is.
pub(crate) struct Values(Vec<(String, f64)>);

impl Values {
    /// From the plan: its loads over the fields of the sheet, in litres, kilograms and hectares.
    pub(crate) fn of_plan(plan: &Plan, sheet: &Sheet) -> Self {
        let loads: Vec<_> =
            plan.loads.iter().filter(|load| load.fields.iter().all(|(id, _)| sheet.fields.contains(id))).collect();
        let plain = |amount: Amount| match amount {
            Amount::Volume(volume) => volume.to_litres(),
            Amount::Mass(mass) => mass.to_kilograms(),
        };
        let spray: f64 = loads.iter().map(|load| load.volume.to_litres()).sum();
        let litres = |load: Option<&&tankard_core::loads::Load>| load.map_or(f64::NAN, |load| load.volume.to_litres());
        let mut all = vec![
            ("ground".to_owned(), loads.iter().map(|load| load.area.to_hectares()).sum()),
            ("spray".to_owned(), spray),
            ("loads".to_owned(), loads.len() as f64),
            ("a full load".to_owned(), litres(loads.first())),
            ("the last load".to_owned(), litres(loads.last())),
        ];
        if let Some(need) = &plan.water.need {
            all.push(("conditioner".to_owned(), need.most().to_grams_per_litre() / 1000.0 * spray));
        }
        if let Some(cost) = plan.cost.filter(|_| sheet.is_whole) {
            all.push(("cost".to_owned(), cost.amount().to_f64().unwrap_or(f64::NAN)));
        }
        for id in &sheet.lines {
            let exact = |load: &&tankard_core::loads::Load| {
                let item = load.items.iter().find(|item| item.product == *id);
                item.map_or(f64::NAN, |item| plain(item.measured.exact))
            };
            let [all_of, first, last] = COLUMNS.map(|column| format!("{id} {column}"));
            all.push((all_of, loads.iter().map(exact).sum()));
            all.push((first, loads.first().map_or(f64::NAN, exact)));
            all.push((last, loads.last().map_or(f64::NAN, exact)));
        }
        Self(all)
    }

    /// From the block of a sheet.
    pub(crate) fn of_sheet(sheet: &Sheet, block: &[Vec<Value>]) -> Self {
        let value = |row: usize, column: usize| {
            block.get(row).and_then(|row| row.get(column)).and_then(Value::as_f64).unwrap_or(f64::NAN)
        };
        let heads = ["ground", "spray", "loads", "a full load", "the last load", "conditioner", "cost"];
        let mut all: Vec<(String, f64)> =
            heads.into_iter().map(str::to_owned).zip((0..).map(|row| value(row, 0))).collect();
        for (id, row) in sheet.lines.iter().zip(heads.len() + 1..) {
            all.extend(COLUMNS.into_iter().zip(0..).map(|(name, column)| (format!("{id} {name}"), value(row, column))));
        }
        Self(all)
    }

    /// Each answer beside that of the sheet.
    pub(crate) fn beside<'a>(&'a self, sheet: &'a Self) -> impl Iterator<Item = (&'a str, f64, f64)> {
        let theirs = |name: &str| sheet.0.iter().find(|(own, _)| own == name).map_or(f64::NAN, |(_, value)| *value);
        self.0.iter().map(move |(name, own)| (name.as_str(), *own, theirs(name)))
    }
}
