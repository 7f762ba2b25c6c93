"""Writes tests/reference/statistics.json: what small data sets come to by SciPy.

    python statistics.py > ../reference/statistics.json

Mean, standard deviation, t interval, p of the paired t test and of Welch's test are SciPy's own. So is p of the signed-rank
test where no differences are tied; where some are, every choice of signs is counted here, one by one. The interval of
Hodges and Lehmann is made from the definition: the distribution of the rank sum by counting every choice of signs (up to
2**15) or, beyond, by multiplying out (1 + x)(1 + x**2)...(1 + x**n) in whole numbers.
"""

import itertools
import json
import random
from fractions import Fraction

import numpy
import scipy
from scipy import stats

# Student 1908 ("The probable error of a mean"): hours of sleep gained with either drug, ten patients.
SLEEP_ONE = [0.7, -1.6, -0.2, -1.2, -0.1, 3.4, 3.7, 0.8, 0.0, 2.0]
SLEEP_OTHER = [1.9, 0.8, 1.1, 0.1, -0.1, 4.4, 5.5, 1.6, 4.6, 3.4]
# Darwin 1876 as in Fisher 1935 ("The Design of Experiments", section 17): crossed less self-fertilised, eighths of an inch.
MAIZE = [49, -67, 8, 16, 6, 23, 28, 41, 14, 29, 56, 24, 75, 60, -48]
# Hollander and Wolfe 1973, Table 3.1, as in the examples of R's wilcox.test: depression scale before and after.
DEPRESSION_ONE = [1.83, 0.50, 1.62, 2.48, 1.68, 1.88, 1.55, 3.06, 1.30]
DEPRESSION_OTHER = [0.878, 0.647, 0.598, 2.05, 1.06, 1.29, 1.06, 3.14, 1.29]


def sums_of_ranks(n):
    if n <= 15:
        counts = [0] * (n * (n + 1) // 2 + 1)
        for signs in itertools.product((0, 1), repeat=n):
            counts[sum(rank for rank, sign in zip(range(1, n + 1), signs) if sign)] += 1
        return counts
    counts = [1]
    for rank in range(1, n + 1):
        longer = counts + [0] * rank
        for at, count in enumerate(counts):
            longer[at + rank] += count
        counts = longer
    return counts


def by_all_signs(differences):
    """p of the signed-rank test, counting every choice of signs of the ranks that are there."""
    apart = [d for d in differences if d != 0]
    ranks = [Fraction(int(2 * rank), 2) for rank in stats.rankdata(numpy.round(numpy.abs(apart), 9))]
    seen = sum((rank for rank, d in zip(ranks, apart) if d > 0), Fraction(0))
    sums = {Fraction(0): 1}
    for rank in ranks:
        more = dict(sums)
        for value, count in sums.items():
            more[value + rank] = more.get(value + rank, 0) + count
        sums = more
    below = sum(count for value, count in sums.items() if value <= seen)
    above = sum(count for value, count in sums.items() if value >= seen)
    return float(min(Fraction(1), Fraction(2 * min(below, above), 2 ** len(ranks)))), float(seen)


def ranked(differences):
    n = len(differences)
    apart = [d for d in differences if d != 0]
    sizes = numpy.round(numpy.abs(apart), 9)
    p, above = by_all_signs(differences)
    if len(set(sizes)) == len(sizes) == n:
        of_scipy = stats.wilcoxon(differences, method="exact")
        assert abs(of_scipy.pvalue - p) < 1e-12, (of_scipy.pvalue, p)
        p = float(of_scipy.pvalue)
    means = sorted((a + b) / 2 for at, a in enumerate(differences) for b in differences[at:])
    interval = None
    if n >= 6:
        counts, held, cut = sums_of_ranks(n), 0, 0
        for count in counts:
            held += count
            if Fraction(held, 2**n) > Fraction(25, 1000):
                break
            cut += 1
        interval = [means[cut], means[-1 - cut]]
    return {"above": above, "p": p, "estimate": float(numpy.median(means)), "interval": interval}


def summed(values):
    mean, sd = float(numpy.mean(values)), float(numpy.std(values, ddof=1))
    low, high = stats.t.interval(0.95, len(values) - 1, loc=mean, scale=stats.sem(values))
    return {"mean": mean, "median": float(numpy.median(values)), "sd": sd, "interval": [float(low), float(high)]}


def pairs(name, source, one, other):
    differences = [a - b for a, b in zip(one, other)]
    t = stats.ttest_rel(one, other)
    w = stats.ttest_ind(one, other, equal_var=False)
    low, high = t.confidence_interval(0.95)
    wlow, whigh = w.confidence_interval(0.95)
    return {
        "name": name,
        "source": source,
        "one": one,
        "other": other,
        "summary": summed(one),
        "paired": {
            "mean": float(numpy.mean(differences)),
            "sd": float(numpy.std(differences, ddof=1)),
            "interval": [float(low), float(high)],
            "p": float(t.pvalue),
        },
        "rank": ranked(differences) if len(differences) <= 25 else None,
        "welch": {
            "difference": float(numpy.mean(one) - numpy.mean(other)),
            "freedom": float(w.df),
            "interval": [float(wlow), float(whigh)],
            "p": float(w.pvalue),
        },
    }


def made(seed, n, whole):
    """Ratings in per cent: whole fives, as people rate (ties and zeros), or any."""
    draw = random.Random(seed)
    one, other = [], []
    for _ in range(n):
        field = draw.gauss(78, 9)
        a, b = field + draw.gauss(4, 6), field + draw.gauss(0, 6)
        step = 5 if whole else 0.001
        clip = lambda value: min(100.0, max(0.0, round(round(value / step) * step, 3)))
        one.append(clip(a))
        other.append(clip(b))
    return one, other


sets = [
    pairs("sleep", "Student 1908, Biometrika 6:1-25, from memory", SLEEP_ONE, SLEEP_OTHER),
    pairs("maize", "Darwin 1876 as in Fisher 1935, The Design of Experiments, from memory", [float(d) for d in MAIZE], [0.0] * 15),
    pairs("depression", "Hollander and Wolfe 1973, Table 3.1, as in R's help of wilcox.test, from memory", DEPRESSION_ONE, DEPRESSION_OTHER),
]
for seed, n, whole in [
    (1, 2, False), (2, 3, False), (3, 5, False), (4, 6, False), (5, 7, True), (6, 8, False), (7, 10, True),
    (8, 12, False), (9, 15, True), (10, 20, False), (11, 25, True), (12, 25, False), (13, 40, False), (14, 200, True),
]:  # fmt: skip
    sets.append(pairs(f"ratings-{seed}", f"made, seed {seed}", *made(seed, n, whole)))

print(json.dumps({
    "made_by": "tests/scripts/statistics.py",
    "scipy": scipy.__version__,
    "numpy": numpy.__version__,
    "sets": sets,
}, indent=1))  # fmt: skip
