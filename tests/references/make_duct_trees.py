"""Makes tests/references/duct-trees.jsonl with general-purpose libraries.

Run with Python 3, fluids 1.3.1, scipy 1.17.1, numpy 2.4.6, all from PyPI:
    python make_duct_trees.py > duct-trees.jsonl

Trees of ducts in SI units: Colebrook's equation by fluids, the flows by scipy's root finder over
the logarithms of the flows. Slack by ASHRAE's correction, rectangular ducts by its equivalent
diameter, blocked openings as thin plates. Only trees whose ducts are all turbulent: between the
regimes no published formula holds.
"""

import json
import random
from math import exp, pi, sqrt
import numpy
import fluids
from fluids.friction import friction_factor
from scipy.optimize import root

assert fluids.__version__.startswith("1.3"), fluids.__version__
DENSITY = 0.075 * 0.45359237 / 0.3048**3  # kg/m3
CFM = 0.3048**3 / 60  # m3/s
IN_WC = 249.08891  # Pa
random.seed(20261126)


def losses(piece, q):
    """Pascals lost at q m3/s, and Re."""
    if piece["kind"] == "rectangular":
        a, b = piece["wide"] * 0.0254, piece["high"] * 0.0254
        d, area = 1.30 * (a * b) ** 0.625 / (a + b) ** 0.25, a * b
    else:
        d = piece["inches"] * 0.0254
        area = pi * d * d / 4
    v = q / (pi * d * d / 4)
    re = 66.4 * (d * 1000) * v
    rough = (0.003 if piece["kind"] == "flex" else 0.0003) * 0.3048
    f = friction_factor(Re=re, eD=rough / d, Method="Colebrook")
    times = 1 + 0.58 * piece.get("slack", 0) * exp(-0.00496 * d * 1000)
    drop = f * times * piece["feet"] * 0.3048 / d * DENSITY * v * v / 2
    b = piece.get("open", 100) / 100
    if b < 1:
        zeta = ((1 - b) + sqrt(0.5) * (1 - b) ** 0.375) ** 2 / b**2
        drop += zeta * DENSITY * (q / area) ** 2 / 2
    return drop, re


def a_piece(what):
    kind = random.choice(["round", "rectangular", "flex"])
    piece = {"what": what, "kind": kind, "feet": random.randint(5, 120)}
    least, most = (8, 14) if what == "trunk" else (4, 8)
    if kind == "rectangular":
        piece["wide"], piece["high"] = random.randint(least, most), random.randint(least, most)
    else:
        piece["inches"] = random.randint(least, most)
    if kind == "flex" and random.random() < 0.6:
        piece["slack"] = random.choice([4, 8, 15, 30])
    if what == "branch" and random.random() < 0.3:
        piece["open"] = random.choice([25, 40, 50, 75, 90])
    return piece


def a_tree():
    pieces, ways, start, end = [], [], [], []
    for at in range(random.randint(2, 11)):
        what = "trunk" if random.random() < 0.3 else "branch"
        piece = a_piece(what)
        if what == "trunk":
            piece["from"] = random.choice(["end", "beside", "handler"])
            start = end if piece["from"] == "end" else [] if piece["from"] == "handler" else start
            end = start + [at]
        else:
            ways.append(end + [at])
        pieces.append(piece)
    used = {at for way in ways for at in way}
    ok = 2 <= len(ways) <= 8 and used == set(range(len(pieces)))
    return (pieces, ways) if ok else None


made = 0
while made < 40:
    tree = a_tree()
    if not tree:
        continue
    pieces, ways = tree
    total = float(random.randint(60, 140) * len(ways))

    def state(ends):
        through = [sum(q for q, way in zip(ends, ways) if at in way) for at in range(len(pieces))]
        lost = [losses(piece, q) for piece, q in zip(pieces, through)]
        return [sum(lost[at][0] for at in way) for way in ways], min(re for _, re in lost)

    def equations(logs):
        ends = numpy.exp(logs[:-1]) * CFM
        pressure = numpy.exp(logs[-1])
        drops, _ = state(ends)
        return [drop / pressure - 1 for drop in drops] + [sum(ends) / (total * CFM) - 1]

    guess = numpy.log([total / len(ways)] * len(ways) + [40.0])
    found = root(equations, guess, method="hybr", tol=1e-12)
    if not found.success or max(abs(x) for x in equations(found.x)) > 1e-9:
        continue
    ends = numpy.exp(found.x[:-1])
    if state(ends * CFM)[1] < 4200:
        continue
    case = {"pieces": pieces, "flows": [round(float(q), 5) for q in ends],
            "pressure": round(float(numpy.exp(found.x[-1]) / IN_WC), 7)}
    if case["pressure"] > 1.9 or case["pressure"] < 0.011:
        continue
    # Every other one is driven by its pressure.
    if made % 2 == 0:
        case["total"] = total
    print(json.dumps(case, separators=(",", ":")))
    made += 1
