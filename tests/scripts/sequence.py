"""Writes tests/reference/sequence.csv: the best orders of small days by HiGHS in SciPy 1.17 (pip install scipy==1.17.1 numpy).

    python sequence.py ../reference/sequence.csv

Each case is solved as a mixed integer program with big constants, by parts: first the four counts in one sum, then the time of
the changes with the counts held, then the end with the changes held too. Nothing of it is shared with the program.

One line a case: jobs apart by "/", each "takes;not before;allowed runs;runs possible;held"; changes from the beginning and from
each job apart by "/", each "takes" with c for a clean-out and h for traces that hurt; ways home; from; to; the cost.
"""

import random
import sys

import numpy
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_matrix

CASES = 1000
DAY = 160
BIG = 400
DICE = random.Random(20310612)


def runs(dice):
    cuts = sorted(dice.sample(range(DAY), 2 * dice.randint(0, 2)))
    return list(zip(cuts[::2], cuts[1::2]))


def joined(some):
    all_of = []
    for begin, end in sorted(some):
        if all_of and all_of[-1][1] >= begin:
            all_of[-1] = (all_of[-1][0], max(end, all_of[-1][1]))
        else:
            all_of.append((begin, end))
    return all_of


def case(dice, n):
    mixes = [dice.randint(0, 2) for _ in range(n)]
    hurts = {pair for pair in ((a, b) for a in range(3) for b in range(3) if a != b) if dice.random() < 0.3}
    spot = [(dice.randint(0, 9), dice.randint(0, 9)) for _ in range(n)]
    jobs = []
    for _ in range(n):
        allowed = [(0, DAY)] if dice.random() < 0.3 else runs(dice)
        not_before = dice.randint(0, 90) if dice.random() < 0.2 else None
        jobs.append([dice.randint(5, 30), not_before, allowed, joined(allowed + runs(dice)), None])
    if dice.random() < 0.35:
        for job, place in zip(dice.sample(range(n), min(n, 2)), dice.sample(range(1, n + 1), 2)):
            jobs[job][4] = place

    def change(before, after):
        x, y = spot[after]
        if before is None:
            return (x + y, False, False)
        clean = mixes[before] != mixes[after]
        road = abs(x - spot[before][0]) + abs(y - spot[before][1])
        return (road + 8 * clean, clean, clean and (mixes[before], mixes[after]) in hurts)

    changes = [[change(before, after) for after in range(n)] for before in [None, *range(n)]]
    to = dice.randint(80, DAY) if dice.random() < 0.4 else None
    return jobs, changes, [x + y for x, y in spot], dice.randint(0, 20), to


def solve(jobs, changes, home, begin, to):
    n = len(jobs)
    names = {}

    def var(*name):
        return names.setdefault(name, len(names))

    arcs = [(i, j) for i in range(n + 1) for j in range(n) if i != j + 1]  # 0 is the beginning
    for i, j in arcs:
        var("arc", i, j)
    for i in range(n + 1):
        var("last", i)
    windows = [(j, w, run, d) for j, job in enumerate(jobs) for d, of in enumerate((job[2], job[3])) for w, run in enumerate(of)]
    for j, w, _, d in windows:
        var("in", j, w, d)
    binaries = len(names)
    for j in range(n):
        var("start", j)
    var("end")
    held = any(job[4] for job in jobs)
    if held:
        for j in range(n):
            for k in range(n):
                var("place", j, k)
    rows, low, high = [], [], []

    def row(terms, least, most):
        rows.append(terms)
        low.append(least)
        high.append(most)

    inf = numpy.inf
    # The path: one way out of the beginning and out of each job that is done, one end.
    row([(var("arc", 0, j), 1) for j in range(n)] + [(var("last", 0), 1)], 1, 1)
    row([(var("last", i), 1) for i in range(n + 1)], 1, 1)
    for j in range(n):
        into = [(var("arc", i, j), 1) for i in range(n + 1) if i != j + 1]
        out = [(var("arc", j + 1, k), -1) for k in range(n) if k != j] + [(var("last", j + 1), -1)]
        row(into + out, 0, 0)
        mine = [(var("in", *window[:2], window[3]), -1) for window in windows if window[0] == j]
        row(into + mine, 0, 0)
        row(into, 0, 1)
        takes, not_before = jobs[j][:2]
        row([(var("start", j), 1)], max(begin, not_before or 0), inf)
        for of, w, (a, b), d in windows:
            if of == j:
                row([(var("start", j), 1), (var("in", j, w, d), -BIG)], a - BIG, inf)
                row([(var("start", j), 1), (var("in", j, w, d), BIG)], -inf, b - takes + BIG)
        row([(var("start", j), 1), (var("arc", 0, j), -BIG)], begin + changes[0][j][0] - BIG, inf)
        for k in range(n):
            if k != j:
                gap = takes + changes[j + 1][k][0]
                row([(var("start", k), 1), (var("start", j), -1), (var("arc", j + 1, k), -BIG)], gap - BIG, inf)
        row([(var("end"), 1), (var("start", j), -1), (var("last", j + 1), -BIG)], takes + home[j] - BIG, inf)
    row([(var("end"), 1)], begin, to if to is not None else inf)
    if held:
        for j in range(n):
            row([(var("place", j, k), 1) for k in range(n)], 1, 1)
            row([(var("place", k, j), 1) for k in range(n)], 1, 1)
            if jobs[j][4]:
                row([(var("place", j, jobs[j][4] - 1), 1)], 1, 1)
            for k in range(n):
                if k != j:
                    later = [(var("place", k, p), p) for p in range(n)] + [(var("place", j, p), -p) for p in range(n)]
                    row(later + [(var("arc", j + 1, k), -(n + 1))], 1 - (n + 1), inf)
    size = len(names)
    whole = numpy.zeros(size)
    whole[:binaries] = 1
    upper = numpy.full(size, float(BIG))
    upper[:binaries] = 1
    for name, at in names.items():
        if name[0] == "place":
            whole[at] = upper[at] = 1

    def least(terms):
        cost = numpy.zeros(size)
        for at, by in terms:
            cost[at] += by
        index = [(r, at, by) for r, terms_of in enumerate(rows) for at, by in terms_of]
        matrix = csr_matrix(([i[2] for i in index], ([i[0] for i in index], [i[1] for i in index])), (len(rows), size))
        found = milp(cost, integrality=whole, bounds=Bounds(0, upper), constraints=LinearConstraint(matrix, low, high),
                     options={"mip_rel_gap": 0})
        assert found.status == 0, found.message
        return found.x, round(found.fun)

    done = [(var("arc", i, j), i, j) for i, j in arcs]
    parts = [
        [(at, -1) for at, _, _ in done],
        [(var("in", j, w, d), d) for j, w, _, d in windows],
        [(at, changes[i][j][2]) for at, i, j in done],
        [(at, changes[i][j][1]) for at, i, j in done],
    ]
    x, _ = least([(at, by * weight) for part, weight in zip(parts, (512, 64, 8, 1)) for at, by in part])
    counts = [round(sum(x[at] * by for at, by in part)) for part in parts]
    for part, count in zip(parts, counts):
        row(part, count, count)
    time = [(at, changes[i][j][0]) for at, i, j in done] + [(var("last", j + 1), home[j]) for j in range(n)]
    _, spent = least(time)
    row(time, -inf, spent)
    _, end = least([(var("end"), 1)])
    return [n + counts[0], *counts[1:], spent, end]


def text(jobs, changes, home, begin, to, cost):
    none = lambda value: "" if value is None else str(value)
    span = lambda some: " ".join(f"{a}-{b}" for a, b in some)
    jobs = "/".join(f"{t};{none(b)};{span(a)};{span(p)};{none(h)}" for t, b, a, p, h in jobs)
    changes = "/".join(" ".join(f"{t}{'c' * c}{'h' * h}" for t, c, h in line) for line in changes)
    return ",".join([jobs, changes, " ".join(map(str, home)), str(begin), none(to), " ".join(map(str, cost))])


# The solver now and then says something on its own, so the table is not printed.
with open(sys.argv[1], "w", encoding="utf-8") as table:
    print("# Made by tests/scripts/sequence.py with HiGHS in SciPy 1.17.1: a general solver, not a publication.", file=table)
    print("jobs,changes,home,from,to,cost", file=table)
    for number in range(CASES):
        some = case(DICE, 3 + number % 5)
        print(text(*some, solve(*some)), file=table)
