"""Writes tests/reference/shopping.csv: what to buy for a shortfall, by SciPy 1.17.1 (HiGHS; pip install scipy==1.17.1).

    python shopping.py > ../reference/shopping.csv

Two integer programs a row: the least amount that covers the shortfall, then the fewest containers that hold no more than that.
"""

import random

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp

GALLON = 3785.411784
UNITS = {"mL": 1.0, "L": 1000.0, "fl oz": GALLON / 128, "pt": GALLON / 8, "qt": GALLON / 4, "gal": GALLON}
MASSES = {"g": 1.0, "kg": 1000.0, "oz": 28.349523125, "lb": 453.59237}
SHELVES = [
    ("gal", UNITS, ["1 qt", "1 gal", "2.5 gal", "15 gal", "30 gal", "110 gal", "275 gal"]),
    ("L", UNITS, ["500 mL", "1 L", "3 L", "5 L", "10 L", "20 L", "640 L", "1000 L"]),
    ("L", UNITS, ["2.5 gal", "10 L", "20 L", "30 gal"]),
    ("lb", MASSES, ["20 oz", "1 lb", "5 lb", "6 lb", "50 lb", "51 lb"]),
    ("kg", MASSES, ["250 g", "600 g", "1 kg", "5 kg", "12.5 kg", "25 kg"]),
]


def size_of(text, units):
    number, unit = text.split(" ", 1)
    return float(number) * units[unit]


def solve(sizes, short):
    """The least amount and the fewest containers."""
    sizes = np.array(sizes)
    tight = {"mip_rel_gap": 0.0}
    cover = LinearConstraint(sizes, lb=short)
    free = Bounds(0, np.inf)
    whole = np.ones(len(sizes))
    least = milp(sizes, constraints=cover, bounds=free, integrality=whole, options=tight)
    assert least.success, least.message
    amount = float(sizes @ np.round(least.x))
    held = LinearConstraint(sizes, lb=short, ub=amount * (1 + 1e-10))
    fewest = milp(whole, constraints=held, bounds=free, integrality=whole, options=tight)
    assert fewest.success, fewest.message
    counts = np.round(fewest.x)
    assert abs(float(sizes @ counts) - amount) <= 1e-9 * amount
    return amount, int(counts.sum())


def main():
    rng = random.Random(20310612)
    print("# Made by tests/scripts/shopping.py with SciPy 1.17.1: a general library, not a publication.")
    print("id,check,input,with,expected,tolerance,unit,mark,source,at,deviation")
    for number in range(1, 241):
        unit, units, shelf = SHELVES[number % len(SHELVES)]
        texts = rng.sample(shelf, rng.randint(1, min(4, len(shelf))))
        sizes = [size_of(text, units) for text in texts]
        # Up to forty of the smallest or six of the largest, so that no row asks for a shed full of small jugs.
        most = min(max(sizes) * 6, min(sizes) * 40)
        short = round(rng.uniform(0.02, 1.0) * most / units[unit], rng.choice([0, 1, 2]))
        short = max(short, 0.1)
        amount, count = solve(sizes, short * units[unit])
        print(
            f"shop-{number:03},shopping,{short:g} {unit},\"sizes={', '.join(texts)}; count={count}\","
            f"{amount / units[unit]:.9g},0.000001%,{unit},derived,scipy,,"
        )


main()
