"""Writes tests/reference/season/sums.json: what the records of tests/reference/season/log.csv come to, reckoned apart from the
program in exact fractions.

    python season_sums.py < ../reference/season/log.csv > ../reference/season/sums.json

The CSV is an export of records as docs/records.md tells it. All is reckoned from what was typed (areas, amounts, prices, masses),
and the columns made for sums must say the same. Of a product whose kind the record does not tell, the kind stays "" here, and what
it cost stands under "not_told". Of the standard library alone. Units: NIST Special Publication 811 (2008), Appendix B (the
international acre, as farms use it).
"""

import csv
import json
import re
import sys
from collections import defaultdict
from fractions import Fraction

GALLON = Fraction("3.785411784")
POUND = Fraction("0.45359237")
UNITS = {
    "L": ("l", Fraction(1)), "gal": ("l", GALLON), "qt": ("l", GALLON / 4), "pt": ("l", GALLON / 8),
    "fl oz": ("l", GALLON / 128), "kg": ("kg", Fraction(1)), "g": ("kg", Fraction(1, 1000)), "lb": ("kg", POUND),
    "oz": ("kg", POUND / 16), "ac": ("ha", Fraction("0.40468564224")), "ha": ("ha", Fraction(1)),
}  # fmt: skip
PESTICIDES = {"Herbicide", "Fungicide", "Insecticide", "GrowthRegulator"}
HELPS = {"Adjuvant", "Conditioner"}
# Of these the name alone tells that they are herbicides, and the old numbers of their groups: HRAC, mode of action classification.
HERBICIDES = {"glyphosate", "metolachlor", "S-metolachlor", "atrazine", "mesotrione", "linuron", "2,4-D"}
OLD_GROUPS = {("Herbicide", "7"): "5", ("Herbicide", "8"): "15"}
BASES = {"AcidEquivalent": "ae", "ActiveIngredient": "ai"}


def typed(text):
    """What and how much of it: ("l", 3.8) of "1 gal"."""
    number, unit = re.fullmatch(r"([0-9.]+) (.+)", text).groups()
    what, factor = UNITS[unit]
    return what, Fraction(number) * factor


def cost(price, amount):
    """Nothing where the price is of a volume and the amount a mass."""
    if not price:
        return None
    money, unit = re.fullmatch(r"([0-9.]+) / (.+)", price).groups()
    what, factor = UNITS[unit]
    return Fraction(money) * amount[1] / factor if what == amount[0] else None


def same(cell, expected, where):
    """The column for sums says what was reckoned; empty where that is nothing."""
    found = Fraction(cell) if cell else None
    if (found is None) != (expected is None) or found is not None and abs(found - expected) > 1e-9 * max(1, expected):
        sys.exit(f"{where}: {cell} in the file, {expected} reckoned")


def minutes(text):
    return int(text[:2]) * 60 + int(text[3:])


def lasted(row):
    if not row["start"] or not row["end"]:
        return None
    return Fraction((minutes(row["end"]) - minutes(row["start"])) % (24 * 60), 60) or None


def line_of(row):
    amount = typed(row["amount"])
    kind = row["kind"]
    actives = json.loads(row["actives"] or "[]")
    return {
        "product": row["product"],
        "kind": kind,
        "class": "" if kind in PESTICIDES else row["class"],
        "amount": amount,
        "cost": cost(row["price"], amount),
        "actives": [(one["name"], BASES[one["basis"]], one.get("group", ""), typed(one["mass"])[1]) for one in actives],
    }


def records():
    rows = defaultdict(lambda: defaultdict(list))
    for row in csv.DictReader(sys.stdin):
        rows[row["record"]][row["field"]].append(row)
    for record, fields in rows.items():
        areas = {field: typed(of[0]["area"])[1] if of[0]["area"] else Fraction(0) for field, of in fields.items()}
        whole = sum(areas.values())
        first = next(iter(fields.values()))
        lines = [line_of(row) for row in first if row["amount"]]
        spray = typed(first[0]["spray_volume"])[1] if first[0]["spray_volume"] else None
        ground = {field: area / whole if whole else Fraction(1, len(fields)) for field, area in areas.items()}
        for field, of in fields.items():
            share = ground[field]
            for at, row in enumerate(of):
                where = f"{record}, {field}, row {at}"
                is_first = at == 0
                same(row["area_ha"], areas[field] if is_first and row["area"] else None, f"{where}, area_ha")
                same(row["spray_volume_l"], spray * share if is_first and spray is not None else None, f"{where}, spray")
                line = lines[at] if lines else None
                for what in ("l", "kg"):
                    own = line["amount"][1] * share if line and line["amount"][0] == what else None
                    same(row[f"amount_{what}"], own, f"{where}, amount")
                same(row["cost"], line["cost"] * share if line and line["cost"] is not None else None, f"{where}, cost")
                cells = list(filter(None, row["actives_kg"].split("; ")))
                for cell, active in zip(cells, line["actives"] if line else [], strict=True):
                    name, mass = cell.rsplit("=", 1)
                    if name != "|".join(active[:3]):
                        sys.exit(f"{where}: {name}")
                    same(mass, active[3] * share, f"{where}, {name}")
        yield {
            "id": record,
            "date": first[0]["date"],
            "water": first[0]["water"],
            "rig": first[0]["rig"],
            "hours": lasted(first[0]),
            "spray": spray,
            "fields": [(field, of[0]["crop"], areas[field], ground[field]) for field, of in fields.items()],
            # Nothing of a product is no use of it.
            "lines": [line for line in lines if line["amount"][1]],
        }


RECORDS = list(records())


def groups_of(line):
    for name, _, group, _ in line["actives"]:
        kind = line["kind"] or ("Herbicide" if name in HERBICIDES else "")
        if kind in PESTICIDES and group:
            yield f"{kind} {OLD_GROUPS.get((kind, group), group)}"


class Part:
    """Cost, ground and records of a part; ground counts once for a record."""

    def __init__(self):
        self.cost, self.without, self.seen, self.ground, self.times = Fraction(0), 0, set(), Fraction(0), set()

    def on(self, record, field, area):
        self.times.add(record)
        if (record, field) not in self.seen:
            self.seen.add((record, field))
            self.ground += area

    def use(self, record, field, area, line, share):
        self.on(record, field, area)
        if line["cost"] is None:
            self.without += 1
        else:
            self.cost += line["cost"] * share

    def plain(self, *keys):
        all = {"cost": self.cost, "without_price": self.without, "treated_ha": self.ground, "times": len(self.times)}
        return {key: all[key] for key in keys}


SPENT = ("cost", "without_price", "treated_ha")


def plain(value):
    if isinstance(value, Fraction):
        return float(value)
    if isinstance(value, dict):
        return {key: plain(inner) for key, inner in sorted(value.items())}
    return value


def sums(name, takes):
    months, fields, crops, kinds, classes, products, adjuvants, untold = (defaultdict(Part) for _ in range(8))
    amounts = defaultdict(lambda: {"l": Fraction(0), "kg": Fraction(0)})
    actives = defaultdict(lambda: {"kg": Fraction(0), "times": set(), "fields": defaultdict(lambda: [Fraction(0), set()])})
    waters = defaultdict(lambda: {"litres": Fraction(0), "times": 0, "without": 0})
    rigs = defaultdict(lambda: {"hours": Fraction(0), "timed_ha": Fraction(0), "treated_ha": Fraction(0), "times": 0, "without": 0})
    groups = defaultdict(lambda: defaultdict(lambda: defaultdict(set)))
    passes, bare = 0, Fraction(0)
    for record in RECORDS:
        ground = [piece for piece in record["fields"] if takes(record, piece)]
        if not ground:
            continue
        passes += 1
        id, water, rig = record["id"], waters[record["water"]], rigs[record["rig"]]
        for row, what in [(water, record["spray"]), (rig, record["hours"])]:
            row["times"] += 1
            row["without"] += what is None
        for field, crop, area, share in ground:
            months[record["date"][:7]].on(id, field, area)
            rig["treated_ha"] += area
            water["litres"] += (record["spray"] or 0) * share
            rig["hours"] += (record["hours"] or 0) * share
            rig["timed_ha"] += area if record["hours"] else 0
            # Ground counts in its field and crop also where nothing went out on it.
            fields[field].on(id, field, area)
            crops[crop.lower()].on(id, field, area)
            helped = False
            for line in record["lines"]:
                use = (id, field, area, line, share)
                what, how_much = line["amount"]
                amounts[line["product"]][what] += how_much * share
                parts = [products[line["product"]], fields[field], crops[crop.lower()], kinds[line["kind"]]]
                if line["class"]:
                    parts.append(classes[line["class"]])
                if line["kind"] in HELPS or line["class"]:
                    parts.append(adjuvants[line["class"]])
                    helped = True
                if not line["kind"]:
                    parts.append(untold[line["product"]])
                for part in parts:
                    part.use(*use)
                for active, basis, _, mass in line["actives"]:
                    entry = actives[f"{active}|{basis}"]
                    entry["kg"] += mass * share
                    entry["times"].add(id)
                    entry["fields"][field][0] += mass * share
                    entry["fields"][field][1].add(id)
                for group in groups_of(line) if field else ():
                    groups[field][group][record["date"][:4]].add(id)
            bare += 0 if helped else area
    so_far = defaultdict(Fraction)
    by_month = {}
    for month, part in sorted(months.items()):
        so_far[month[:4]] += part.ground
        by_month[month] = {"passes": len(part.times), "treated_ha": part.ground, "so_far_ha": so_far[month[:4]]}
    return plain({
        "name": name,
        "passes": passes,
        "treated_ha": sum((part.ground for part in months.values()), Fraction(0)),
        "months": by_month,
        "products": {key: {"litres": amounts[key]["l"], "kg": amounts[key]["kg"], **part.plain(*SPENT, "times")} for key, part in products.items()},
        "actives": {
            key: {"kg": entry["kg"], "times": len(entry["times"]), "fields": {field: {"kg": mass, "times": len(times)} for field, (mass, times) in entry["fields"].items()}}
            for key, entry in actives.items()
        },
        "adjuvants": {key: part.plain(*SPENT, "times") for key, part in adjuvants.items()},
        "without_adjuvant_ha": bare,
        "fields": {key: part.plain(*SPENT) for key, part in fields.items()},
        "crops": {key: part.plain(*SPENT) for key, part in crops.items()},
        "kinds": {key: part.plain(*SPENT) for key, part in kinds.items()},
        "classes": {key: part.plain(*SPENT) for key, part in classes.items()},
        "not_told": {key: part.plain("cost", "without_price") for key, part in untold.items()},
        "waters": waters,
        "rigs": rigs,
        "groups": {field: {group: {year: len(at) for year, at in years.items()} for group, years in all.items()} for field, all in groups.items()},
    })  # fmt: skip


json.dump(
    [
        sums("all", lambda record, piece: True),
        sums("season 2032", lambda record, piece: record["date"].startswith("2032")),
        sums("field 3", lambda record, piece: piece[0] == "field-3"),
        sums("corn in 2031 and 2032", lambda record, piece: record["date"][:4] in ("2031", "2032") and piece[1].lower() == "corn"),
        sums("crop not typed", lambda record, piece: not piece[1]),
    ],
    sys.stdout,
    indent=1,
)
