"""Writes tests/reference/accounts.json: the accounts of made-up products, reckoned in exact fractions (Python's standard library alone).

    python accounts.py > ../reference/accounts.json

It keeps each container by itself, a list of [kind, size, lot, what is in it, whether it is opened], where the program keeps rows of
them; litres and kilograms are exact (the US gallon of 231 cubic inches and the pound of 0.45359237 kg, NIST Handbook 44, appendix C).
"""

import json
import random
from fractions import Fraction as F

LITRES = {"mL": F(1, 1000), "L": F(1), "gal": F("3.785411784"), "qt": F("3.785411784") / 4, "fl oz": F("3.785411784") / 128}
KILOS = {"g": F(1, 1000), "kg": F(1), "lb": F("0.45359237"), "oz": F("0.45359237") / 16}
DAYS = [f"2031-{month:02}-{day:02}" for month in (4, 5, 6) for day in (3, 9, 14, 20, 27)]


def exact(text, liquid, density):
    """Litres of a liquid, kilograms of a dry product; None where that takes a density that is not typed."""
    number, unit = text.split(" ", 1)
    if unit in LITRES:
        litres = F(number) * LITRES[unit]
        return litres if liquid else None if density is None else litres * density
    kilos = F(number) * KILOS[unit]
    return kilos if not liquid else None if density is None else kilos / density


def number(low, high):
    return f"{random.randint(low * 1000, high * 1000) / 1000:g}"


def make():
    liquid = random.random() < 0.6
    density = random.choice([None, F("1.15"), F("0.92")])
    own, other = (["L", "gal", "qt"], ["kg", "lb"]) if liquid else (["kg", "lb"], ["L", "gal"])
    units = own + (other if density is not None or random.random() < 0.04 else [])
    lots = random.choice([[""], ["", "A-1"], ["A-1", "B-2"], ["A-1", "B-2", "C 3", ""]])
    sizes = [(random.choice(["Jug", "Bag", "Drum"]), f"{random.choice(['1', '2.5', '5', '10', '30'])} {random.choice(units)}")
             for _ in range(random.randint(1, 3))]
    # Two texts of one size are one size to the program; here they would be two.
    sizes = list({exact(size, liquid, density or F(1)): (kind, size) for kind, size in sizes}.values())
    amount = lambda high: f"{number(0, high)} {random.choice(units)}"

    def row():
        kind, size = random.choice(sizes)
        opened = f"{number(0, 1)} {random.choice(own)}" if random.random() < 0.5 else None
        return {"kind": kind, "size": size, "full": random.randint(0, 4), "opened": opened, "lot": random.choice(lots)}

    case = {
        "liquid": liquid,
        "density": None if density is None else f"{float(density):g} kg/L",
        "counted": random.choice(DAYS[2:8]),
        "after": random.random() < 0.4,
        "containers": [row() for _ in range(random.randint(0, 4))],
        "movements": [],
        "records": [],
    }
    for _ in range(random.randint(0, 9)):
        what = random.choices(["Bought", "In", "Out", "Returned"], [5, 1, 2, 2])[0]
        kind, size = random.choice(sizes)
        case["movements"].append({
            "what": what, "date": random.choice(DAYS), "kind": kind, "size": size, "count": random.randint(1, 6),
            "amount": amount(6), "lot": random.choice(lots + ["Z-9"] * (random.random() < 0.1)),
        })
    for _ in range(random.randint(0, 12)):
        named = random.sample(lots, random.randint(0, min(2, len(lots))))
        whole = random.random() < 0.3
        size = random.choice(sizes)[1]
        text = f"{float(size.split(' ')[0]) * random.randint(1, 3):g} {size.split(' ')[1]}" if whole else amount(14)
        case["records"].append({
            "date": random.choice(DAYS),
            "start": random.choice([None, "06:10:00", "09:30:00", "17:45:00"]),
            "amount": text,
            "lot": ", ".join(lot for lot in named if lot) + (", Z-9" if random.random() < 0.05 else ""),
        })
        case["records"][-1]["lot"] = case["records"][-1]["lot"].strip(", ")
    return case, density


def happened(case):
    """What happened, in order of time: (day, part of the day, ...)."""
    out = []
    for at, movement in enumerate(case["movements"]):
        part = 1 if movement["what"] in ("Bought", "In") else 3
        out.append(((movement["date"], part, "", at), movement, None))
    for at, record in enumerate(case["records"]):
        out.append(((record["date"], 2, record["start"] or "99", at), None, (at, record)))
    out.sort(key=lambda one: one[0])
    moment = (case["counted"], 4 if case["after"] else 0)
    return [one for one in out if one[0][:2] > moment]


def solve(case, density):
    value = lambda text: exact(text, case["liquid"], density)
    there, empties, known = [], {}, set()
    dark = False
    for row in case["containers"]:
        if not row["full"] and row["opened"] is None:
            continue
        known.add(row["lot"])
        size, opened = value(row["size"]), None if row["opened"] is None else value(row["opened"])
        if size is None or row["opened"] is not None and opened is None:
            dark = True
            continue
        key = (row["kind"], row["size"], row["lot"])
        there += [[*key, size, False] for _ in range(row["full"])]
        if opened:
            there.append([*key, opened, True])
    counted = sum(one[3] for one in there)
    balance, owed, most, first = counted, F(0), F(0), None
    came = used = went = F(0)
    balances, back, strange = [], 0, 0

    def take(wanted, eligible, sprayed):
        while wanted > 0:
            of = [one for one in there if eligible(one[2])]
            opened = [one for one in of if one[4]]
            full = [one for one in of if not one[4]]
            if opened:
                one = min(opened, key=lambda one: one[3])
            elif full:
                one = min(full, key=lambda one: one[3])
            else:
                break
            part = min(one[3], wanted)
            one[3] -= part
            one[4] = True
            wanted -= part
            if one[3] == 0:
                there[:] = [other for other in there if other is not one]
                if sprayed and one[0] is not None:
                    empties[one[0], one[1]] = empties.get((one[0], one[1]), 0) + 1
        return wanted

    for (date, *_), movement, record in happened(case):
        what = movement["what"] if movement else "Record"
        if what == "Returned":
            key = (movement["kind"], movement["size"])
            had = empties.get(key, 0)
            empties[key] = max(0, had - movement["count"])
            back += max(0, movement["count"] - had)
            balances.append(balance)
            continue
        text = movement["size"] if what == "Bought" else movement["amount"] if movement else record[1]["amount"]
        amount = value(text)
        if amount is None:
            dark = True
            balances.append(None)
            continue
        if what in ("Bought", "In"):
            known.add(movement["lot"])
            if what == "Bought":
                there += [[movement["kind"], movement["size"], movement["lot"], amount, False] for _ in range(movement["count"])]
                amount *= movement["count"]
            elif amount:
                there.append([None, None, movement["lot"], amount, True])
            balance += amount
            came += amount
            owed = take(owed, lambda lot: True, True)
        else:
            lots = [lot.strip() for lot in (movement or record[1])["lot"].split(",") if lot.strip()]
            sprayed = record is not None
            rest = amount
            for lot in lots:
                rest = take(rest, lambda own: own == lot, sprayed)
                strange += "" not in known and lot not in known
            if lots:
                rest = take(rest, lambda own: own == "", sprayed)
            rest = take(rest, lambda lot: True, sprayed)
            owed += rest
            balance -= amount
            used, went = used + (amount if sprayed else 0), went + (0 if sprayed else amount)
            if rest and first is None:
                first = [date, record[0] if sprayed else None]
            most = max(most, owed)
        balances.append(balance)
    rows = {}
    for kind, size, lot, holds, opened in there:
        row = rows.setdefault((kind or "", size or "", lot), {"full": 0, "opened": []})
        if opened:
            row["opened"].append(float(holds))
        else:
            row["full"] += 1
    # What an amount that cannot be told leaves is not known from then on.
    seen = False
    for at, each in enumerate(balances):
        seen |= each is None
        balances[at] = None if seen or value_of_count_is_dark(case, value) else float(each)
    return {
        "known": not dark,
        "counted": float(counted), "came": float(came), "used": float(used), "went": float(went), "balance": float(balance),
        "on_hand": float(sum(one[3] for one in there)), "owed": float(owed), "most": float(most), "first": first,
        "held": [[*key, row["full"], sorted(row["opened"])] for key, row in sorted(rows.items())],
        "empties": sorted([*key, count] for key, count in empties.items() if count),
        "too_many_back": back, "lots_that_do_not_exist": strange, "balances": balances,
    }


def value_of_count_is_dark(case, value):
    rows = [row for row in case["containers"] if row["full"] or row["opened"] is not None]
    return any(value(row["size"]) is None or row["opened"] is not None and value(row["opened"]) is None for row in rows)


def main():
    random.seed(20310612)
    cases = []
    for _ in range(160):
        case, density = make()
        case["expected"] = solve(case, density)
        cases.append(case)
    lines = ",\n".join(json.dumps(case) for case in cases)
    print(f"[\n{lines}\n]")


main()
