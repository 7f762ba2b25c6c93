"""Makes tests/reference/sizing.csv: random stretches, and what the best loads come to, found by integer programming.

Independent of the program: no way is enumerated. For each number of loads in turn the size of the loads, the amounts to marks, the
containers and what is measured are variables of a mixed-integer program, and the aims are met one after the other, each with the
earlier ones held at their best. Solved by HiGHS through scipy.optimize.milp.

Made with Python 3.11.7, numpy and scipy 1.17.1 (which bundles HiGHS), seed 20310612. Run from the root of the repository:
    python tests/scripts/sizing.py 1200 tests/reference/sizing.csv
All volumes are litres, rates litres per hectare. Cases in which a rounding stands on the edge are passed over.
"""

import math
import random
import sys
from concurrent.futures import ProcessPoolExecutor

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_matrix

SEED = 20310612
AIMS = "LAFOMR"  # left, agitation, fillings, opened, measured, rounding
SPECK = 1e-4


class Program:
    """A mixed-integer program, row by row."""

    def __init__(self):
        self.low, self.high, self.integer, self.rows = [], [], [], []

    def var(self, low, high, integer=False):
        self.low.append(low)
        self.high.append(high)
        self.integer.append(1 if integer else 0)
        return len(self.low) - 1

    def row(self, terms, low=-np.inf, high=np.inf):
        self.rows.append((terms, low, high))

    def solve(self, aim, held):
        rows = self.rows + [([(var, 1.0)], -np.inf, best + 1e-6) for var, best in held]
        data, at, col = [], [], []
        for number, (terms, _, _) in enumerate(rows):
            for var, factor in terms:
                at.append(number)
                col.append(var)
                data.append(factor)
        matrix = csr_matrix((data, (at, col)), shape=(len(rows), len(self.low)))
        cost = np.zeros(len(self.low))
        cost[aim] = 1.0
        # Where the presolve stumbles over the numbers, the solver goes without it.
        for presolve in [True, False]:
            result = milp(
                cost,
                integrality=np.array(self.integer),
                bounds=Bounds(self.low, self.high),
                constraints=LinearConstraint(matrix, [row[1] for row in rows], [row[2] for row in rows]),
                options={"mip_rel_gap": 0.0, "presolve": presolve},
            )
            if result.status in [0, 2]:
                break
        if result.status == 2:
            return None
        if result.status != 0:
            raise RuntimeError(result.message)
        return round(result.fun), result.x


def programs(case):
    """A program for each number of loads and each way to come to a size, with or without topping up."""
    volume = case["area"] * case["carrier"] + case["extra"]
    fill, least = case["tank"], case["least"]
    fewest = max(1, math.ceil(volume / fill - 1e-9))
    for count in range(fewest, 2 * fewest + 2):
        ways = []
        if count == 1:
            ways.append((volume, volume))
        else:
            ways += ["mark", (volume / count, volume / count)]
            if count == fewest:
                ways.append((fill, volume - fill * (count - 1)))
                if case["extra"] > 0:
                    ways.append(((volume - fill) / (count - 1), fill))
        for way in ways:
            for topped in [False, True] if least else [False]:
                yield program(case, volume, count, way, topped)


def program(case, volume, count, way, topped):
    fill, least, mark, carried, extra = (case[name] for name in ["tank", "least", "mark", "carried", "extra"])
    p = Program()
    if way == "mark":
        marks = p.var(1, math.floor(fill / mark), True)
        alike = p.var(0, fill)
        p.row([(alike, 1.0), (marks, -mark)], 0, 0)
    else:
        alike = p.var(way[0], way[0])
    # The last load before topping up, which covers some ground.
    rest = p.var(extra + SPECK, fill)
    if way == "mark":
        p.row([(rest, 1.0), (alike, float(count - 1))], volume, volume)
    else:
        p.row([(rest, 1.0)], way[1], way[1])
    first = alike if count > 1 else rest
    p.row([(first, 1.0)], carried, fill)
    left = p.var(0, 1e9, True)
    if topped:
        p.row([(rest, 1.0)], -np.inf, least - SPECK)
        last = p.var(least, least)
        p.row([(left, 1.0), (rest, 1000.0)], 1000 * (extra + least) - 0.5)
    else:
        last = rest
        p.row([(left, 1.0)], 1000 * extra - 0.5)
    small = p.var(0, count, True)
    if least:
        few, end = p.var(0, 1, True), p.var(0, 1, True)
        if count > 1:
            p.row([(alike, 1.0), (few, least)], least)
        p.row([(last, 1.0), (end, least)], least)
        p.row([(small, 1.0), (few, -(count - 1.0)), (end, -1.0)], 0)
    fills = p.var(count, count, True)
    opened, measured, rounding = p.var(0, 1e6, True), p.var(0, 1e6, True), p.var(0, 1e9, True)
    opened_terms, measured_terms, rounding_terms = [(opened, 1.0)], [(measured, 1.0)], [(rounding, 1.0)]
    for product in case["products"]:
        # Marks for each litre of spray.
        marks = product["rate"] / case["carrier"] / product["step"]
        need = (volume - carried) * marks
        big = math.ceil(fill * marks) + 5

        def amount(load, less):
            """The marks of a load: the nearest, and no more than the label lets."""
            nearest, apart = p.var(0, big, True), p.var(0, big)
            p.row([(nearest, 1.0), (load, -marks)], -0.5 - less * marks, 0.5 - less * marks)
            taken = nearest
            if product["most"]:
                top = product["most"] / case["carrier"] / product["step"]
                most, taken, held = p.var(0, 2 * big, True), p.var(0, big, True), p.var(0, 1, True)
                p.row([(most, 1.0), (load, -top)], -1 + 1e-5 - less * top, 1e-6 - less * top)
                p.row([(taken, 1.0), (nearest, -1.0)], -np.inf, 0)
                p.row([(taken, 1.0), (most, -1.0)], -np.inf, 0)
                p.row([(taken, 1.0), (nearest, -1.0), (held, float(big))], 0)
                p.row([(taken, 1.0), (most, -1.0), (held, -2.0 * big)], -2.0 * big)
            for sign in [1.0, -1.0]:
                p.row([(apart, 1.0), (taken, -sign), (load, sign * marks)], sign * less * marks)
            return taken, apart

        loads = []
        if count == 1:
            loads = [amount(last, carried)]
        else:
            one = amount(alike, 0.0)
            loads = [one] * (count - 1) + [amount(last, 0.0)]
            if carried:
                loads[0] = amount(alike, carried)
        so_far = []
        for taken, apart in loads:
            rounding_terms.append((apart, -1e6 / need))
            so_far.append((taken, 1.0))
            poured = p.var(0, 1, True)
            measured_terms.append((poured, -1.0))
            if not product["size"]:
                p.row([(poured, float(big)), (taken, -1.0)], 0)
                continue
            size, rest_of = product["size"], product["opened"]
            whole, emptied = p.var(0, 1, True), p.var(0, 1, True)
            jugs, all_jugs = p.var(0, big, True), p.var(-1, big * count, True)
            p.row([(poured, 1.0), (whole, 1.0), (emptied, 1.0)], 1)
            for terms, number, binary, offset, bound in [
                ([(taken, 1.0)], jugs, whole, 0, big),
                (list(so_far), all_jugs, emptied, rest_of, big * count + rest_of),
            ]:
                terms = terms + [(number, -float(size))]
                p.row(terms + [(binary, float(bound))], -np.inf, offset + bound)
                # Below it may be as low as all jugs that there could be.
                low = float(size * big * count + bound)
                p.row(terms + [(binary, -low)], offset - low)
        if product["size"]:
            jugs = p.var(0, 1e6, True)
            size = float(product["size"])
            p.row([(jugs, size)] + [(taken, -1.0) for taken, _ in loads], -float(product["opened"]))
            opened_terms.append((jugs, -1.0))
    p.row(opened_terms, 0)
    p.row(measured_terms, 0)
    p.row(rounding_terms, -0.5)
    return p, dict(zip(AIMS, [left, small, fills, opened, measured, rounding])), rounding, rounding_terms


def best(case):
    """The best figures by the case's order; None where a rounding stands on the edge."""
    live = [(*made, []) for made in programs(case)]
    figures = {}
    for aim in case["aims"]:
        values = []
        for p, names, rounding, terms, held in live:
            found = p.solve(names[aim], held)
            if found is None:
                continue
            value, x = found
            if aim == "R":
                exact = -sum(x[var] * factor for var, factor in terms if var != rounding)
                if abs(exact - math.floor(exact) - 0.5) < 0.01:
                    return None
            values.append((value, p, names, rounding, terms, held + [(names[aim], value)]))
        if not values:
            return None
        least = min(value[0] for value in values)
        figures[aim] = least
        live = [value[1:] for value in values if value[0] == least]
    return [figures[aim] for aim in AIMS]


def on_edge(case):
    """Whether an amount of any way lies between two marks, or a most on one."""
    volume = case["area"] * case["carrier"] + case["extra"]
    fewest = max(1, math.ceil(volume / case["tank"] - 1e-9))
    if abs(volume / case["tank"] - round(volume / case["tank"])) < 1e-6:
        return True
    sizes = [case["least"] or 1.0]
    for count in range(fewest, 2 * fewest + 2):
        alike = np.arange(1, case["tank"] // case["mark"] + 1) * case["mark"]
        sizes += [*alike, *(volume - alike * (count - 1)), volume / count]
    sizes += [case["tank"], volume - case["tank"] * (fewest - 1)]
    sizes = np.array(sizes)
    sizes = np.concatenate([sizes, sizes - case["carried"]])
    sizes = sizes[(sizes > 0) & (sizes <= case["tank"])]
    if case["least"] and np.any((np.abs(sizes - case["least"]) < 1e-3) & (sizes != case["least"])):
        return True
    for product in case["products"]:
        marks = sizes * product["rate"] / case["carrier"] / product["step"]
        if np.any(np.abs(marks - np.floor(marks) - 0.5) < SPECK):
            return True
        if product["most"]:
            top = sizes * product["most"] / case["carrier"] / product["step"]
            if np.any(np.abs(top - np.round(top)) < SPECK):
                return True
    return False


def draw(random):
    tank = random.choice([400, 600, 800, 1000, 1200])
    mark = random.choice([20, 25, 50, 100])
    carrier = random.choice([80, 100, 120, 150, 200])
    volume = random.choice([random.uniform(0.3, 1), random.uniform(1, 2), random.uniform(1, 2), random.uniform(2, 3)]) * tank
    case = {
        "tank": tank,
        "mark": mark,
        "least": random.choice([None, round(tank * random.uniform(0.05, 0.3))]),
        "carrier": carrier,
        "area": round(volume / carrier, 2),
        "extra": random.choice([0, 0, 0, random.randint(5, 60)]),
        "carried": 0,
        "aims": "".join(random.sample(AIMS, 6)),
        "products": [],
    }
    if random.random() < 0.25:
        case["carried"] = random.randint(20, round(min(tank, volume) * 0.6))
    for _ in range(random.choice([1, 1, 2])):
        step = random.choice([0.1, 0.25, 0.5, 1.0])
        size = random.choice([None, 5, 10, 20])
        rate = round(random.uniform(0.4, 4.0), 3)
        marks = round(size / step) if size else None
        case["products"].append({
            "rate": rate,
            "step": step,
            "size": marks,
            "opened": random.choice([0, random.randint(0, marks - 1)]) if marks else 0,
            "most": random.choice([None, None, round(rate * random.uniform(1.0, 1.03), 4)]),
        })
    return case


def solved(seed):
    """The first case of a seed that stands on no edge, with its figures."""
    draws = random.Random(seed)
    while True:
        case = draw(draws)
        if on_edge(case):
            continue
        figures = best(case)
        if figures is not None:
            return case, figures


def text(number, case, figures):
    products = ";".join(
        "|".join([
            f"{product['rate']}",
            f"{product['step']}",
            f"{product['size'] * product['step']:g}" if product["size"] else "",
            f"{product['opened'] * product['step']:g}" if product["opened"] else "",
            f"{product['most']}" if product["most"] else "",
        ])
        for product in case["products"]
    )
    fields = [number, case["tank"], case["mark"], case["least"] or "", case["carrier"], case["area"]]
    fields += [case["extra"], case["carried"], case["aims"], products, *figures]
    return ",".join(str(field) for field in fields)


def main():
    # The solver may write to the standard output, so the table goes into a file.
    count, path = int(sys.argv[1]), sys.argv[2]
    with ProcessPoolExecutor(2) as pool, open(path, "w", encoding="utf-8") as table:
        table.write("# Made by tests/scripts/sizing.py\n")
        table.write("id,tank,mark,least,carrier,area,extra,carried,aims,products,")
        table.write("left,agitation,fills,opened,measured,rounding\n")
        for number, (case, figures) in enumerate(pool.map(solved, [SEED + n for n in range(count)], chunksize=4)):
            table.write(text(number, case, figures) + "\n")


if __name__ == "__main__":
    main()
