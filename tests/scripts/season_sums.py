"""Writes tests/reference/season/sums.json: what the records of tests/reference/season/log.csv come to, summed apart from the
program in exact fractions.

    python season_sums.py < ../reference/season/log.csv > ../reference/season/sums.json

A row of the CSV is a product on a field in a record, with that field's share; the spray volume stands in the first row of a
field and record. Of the standard library alone.
"""

import csv
import json
import sys
from collections import defaultdict
from fractions import Fraction

OLD_GROUPS = {("herbicide", "7"): "5", ("herbicide", "8"): "15"}
GROUPED = {"herbicide", "fungicide", "insecticide", "growth regulator"}
HELPS = {"adjuvant", "water conditioner"}


def number(text):
    return Fraction(text) if text else None


def minutes(text):
    return int(text[:2]) * 60 + int(text[3:]) if text else None


def actives_of(row):
    for part in filter(None, row["actives_kg"].split("; ")):
        what, mass = part.rsplit("=", 1)
        name, basis, group = what.split("|")
        yield name, basis, group, Fraction(mass)


ROWS = list(csv.DictReader(sys.stdin))
GROUND = defaultdict(dict)
for row in ROWS:
    GROUND[row["record"]].setdefault(row["field"], number(row["area_ha"]))
# Nothing went out where nothing did on all fields of a record; ground without an area has no share, but was sprayed.
OUT = defaultdict(Fraction)
for row in ROWS:
    OUT[row["record"], row["product"]] += Fraction(row["amount_l"] or row["amount_kg"])
# Of a row without actives the groups are those of the product elsewhere.
GROUPS = {}
for row in ROWS:
    found = {group for _, _, group, _ in actives_of(row) if group}
    GROUPS.setdefault(row["product"], set()).update(found)


def hours(row):
    start, end = minutes(row["start"]), minutes(row["end"])
    if start is None or end is None or start == end:
        return None
    return Fraction((end - start) % (24 * 60), 60)


def share(row):
    ground = GROUND[row["record"]]
    whole = sum(ground.values())
    return ground[row["field"]] / whole if whole else Fraction(1, len(ground))


def plain(value):
    if isinstance(value, Fraction):
        return float(value)
    if isinstance(value, dict):
        return {key: plain(inner) for key, inner in sorted(value.items())}
    return value


def spent():
    return {"cost": Fraction(0), "without_price": 0, "treated_ha": Fraction(0)}


def sums(name, takes):
    rows = [row for row in ROWS if takes(row)]
    months = defaultdict(lambda: {"passes": set(), "treated_ha": Fraction(0)})
    products = defaultdict(lambda: {"litres": Fraction(0), "kg": Fraction(0), "times": set(), **spent()})
    actives = defaultdict(lambda: {"kg": Fraction(0), "times": set(), "fields": defaultdict(Fraction)})
    by = {part: defaultdict(spent) for part in ("field", "crop", "kind", "class")}
    adjuvants = defaultdict(lambda: {"times": set(), **spent()})
    waters = defaultdict(lambda: {"litres": Fraction(0), "times": set(), "without": set()})
    rigs = defaultdict(lambda: {"hours": Fraction(0), "timed_ha": Fraction(0), "treated_ha": Fraction(0), "times": set(), "without": set()})
    groups = defaultdict(lambda: defaultdict(lambda: defaultdict(set)))
    seen, on = set(), set()
    for row in rows:
        record, field, area = row["record"], row["field"], number(row["area_ha"])
        water, rig = waters[row["water"]], rigs[row["rig"]]
        if (record, field) not in seen:
            seen.add((record, field))
            month = months[row["date"][:7]]
            month["passes"].add(record)
            month["treated_ha"] += area
            by["field"][field]["treated_ha"] += area
            by["crop"][row["crop"].lower()]["treated_ha"] += area
            water["times"].add(record)
            rig["times"].add(record)
            rig["treated_ha"] += area
            lasted = hours(row)
            if lasted is None:
                rig["without"].add(record)
            else:
                rig["hours"] += lasted * share(row)
                rig["timed_ha"] += area
            if row["spray_volume_l"]:
                water["litres"] += Fraction(row["spray_volume_l"])
            else:
                water["without"].add(record)
        litres, kg = number(row["amount_l"]), number(row["amount_kg"])
        if not OUT[record, row["product"]]:
            continue
        product, kind = products[row["product"]], row["kind"]
        product["litres"] += litres or 0
        product["kg"] += kg or 0
        product["times"].add(record)
        product["treated_ha"] += area
        parts = [product, by["field"][field], by["crop"][row["crop"].lower()], by["kind"][kind]]
        helps = [adjuvants[row["class"]]] if kind in HELPS or row["class"] else []
        parts += [by["class"][row["class"]]] if row["class"] else []
        for part in parts + helps:
            if row["cost"]:
                part["cost"] += Fraction(row["cost"])
            else:
                part["without_price"] += 1
        for part, key in [("kind", kind), ("class", row["class"])]:
            if key or part == "kind":
                if (part, key, record, field) not in on:
                    on.add((part, key, record, field))
                    by[part][key]["treated_ha"] += area
        for part in helps:
            part["times"].add(record)
            if ("adjuvant", row["class"], record, field) not in on:
                on.add(("adjuvant", row["class"], record, field))
                part["treated_ha"] += area
        found = set()
        for active, basis, group, mass in actives_of(row):
            entry = actives[f"{active}|{basis}"]
            entry["kg"] += mass
            entry["times"].add(record)
            entry["fields"][field] += mass
            found.add(group)
        if not row["actives_kg"]:
            found = GROUPS[row["product"]]
        if kind in GROUPED and field:
            for group in filter(None, found):
                group = OLD_GROUPS.get((kind, group), group)
                groups[field][f"{kind} {group}"][row["date"][:4]].add(record)
    counted = lambda value: len(value) if isinstance(value, set) else value
    table = lambda all: {key: {what: counted(value) for what, value in entry.items()} for key, entry in all.items()}
    return plain({
        "name": name,
        "passes": len({row["record"] for row in rows}),
        "treated_ha": sum((month["treated_ha"] for month in months.values()), Fraction(0)),
        "months": table(months),
        "products": table(products),
        "actives": table(actives),
        "adjuvants": table(adjuvants),
        "fields": table(by["field"]),
        "crops": table(by["crop"]),
        "kinds": table(by["kind"]),
        "classes": table(by["class"]),
        "waters": table(waters),
        "rigs": table(rigs),
        "groups": {field: {group: {year: len(at) for year, at in years.items()} for group, years in all.items()} for field, all in groups.items()},
    })  # fmt: skip


json.dump(
    [
        sums("all", lambda row: True),
        sums("season 2032", lambda row: row["date"].startswith("2032")),
        sums("field 3", lambda row: row["field"] == "Field 3"),
        sums("corn in 2031 and 2032", lambda row: row["date"][:4] in ("2031", "2032") and row["crop"].lower() == "corn"),
        sums("crop not typed", lambda row: not row["crop"]),
    ],
    sys.stdout,
    indent=1,
)
