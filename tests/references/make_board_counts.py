"""Makes tests/vectors/board-counts.csv with general-purpose solvers.

Run with Python 3, ortools 9.15.6755 and highspy 1.16.0, both from PyPI:
    python make_board_counts.py | grep -E '^(number|[0-9])' > ../vectors/board-counts.csv
Rooms come from random.Random(20261126), all drawn before any is solved; none is left out.

Lengths are tenths of an inch. Each row of boards is a path over the framing, each stock board a
pattern out of all that can be cut from it, so the method shares nothing with the program under
test, which searches. Objective A: fewest boards, then end joints. B: fewest end joints, then
boards. Each is solved by CP-SAT; every tenth room again by HiGHS, and the two must agree. A row
says `proven` only where the solver proved it within the time limit.
"""

import random
import sys
import time
from collections import defaultdict

import highspy
from ortools.sat.python import cp_model

LIMIT = 30


def rooms(count=150):
    draw = random.Random(20261126)
    for number in range(count):
        long, wide = draw.randint(960, 4800) // 10 * 10, draw.randint(960, 3600) // 10 * 10
        if draw.random() < 0.5:
            long, wide = wide, long
        space = draw.choice([120, 160, 192, 240])
        first = 0 if draw.random() < 0.5 else draw.randint(1, space // 10 - 1) * 10
        stock = draw.choice([960, 1080, 1200, 1440, 1680, 1920])
        yield number, long, wide, space, first, stock, draw.choice([480, 540])


def patterns(lengths, room):
    """All multisets of lengths that fit into room, as tuples."""
    def grow(at, left, taken):
        yield tuple(taken)
        for other in range(at, len(lengths)):
            if lengths[other] <= left:
                yield from grow(other, left - lengths[other], taken + [lengths[other]])
    yield from grow(0, room, [])


class Model:
    """Variables and rows of an integer program, for either solver."""

    def __init__(self):
        self.most, self.rows = [], []

    def var(self, most):
        self.most.append(most)
        return len(self.most) - 1

    def add(self, terms, low, high):
        self.rows.append((terms, low, high))


def build(long, wide, space, first, stock, width, least=240):
    full, strip = divmod(wide, width)
    rows = full + (strip > 0)
    paired = strip > 0 and 2 * strip <= width
    stops = [0] + [at for at in range(first, long, space) if at > 0] + [long]
    model = Model()
    joints, made = defaultdict(int), [defaultdict(list), defaultdict(list)]
    used = []
    for row in range(rows):
        kind = 1 if paired and row == rows - 1 else 0
        into, out = defaultdict(list), defaultdict(list)
        for start in stops:
            for end in stops:
                if least <= end - start <= stock:
                    arc = model.var(1)
                    out[start].append(arc), into[end].append(arc)
                    made[kind][end - start].append(arc)
                    if end != long:
                        joints[arc] = 1
        model.add([(arc, 1) for arc in out[0]], 1, 1)
        model.add([(arc, 1) for arc in into[long]], 1, 1)
        for at in stops[1:-1]:
            model.add([(a, 1) for a in into[at]] + [(a, -1) for a in out[at]], 0, 0)
        used.append(into)
    for row in range(rows - 1):
        for at in stops[1:-1]:
            model.add([(a, 1) for a in used[row][at] + used[row + 1][at]], 0, 1)
    boards, cuts, lanes = [], defaultdict(list), defaultdict(list)
    lengths = sorted(made[0])
    shortest = min(lengths) if lengths else stock + 1
    for cut in patterns(lengths, stock):
        left = stock - sum(cut)
        if not paired and left >= shortest:
            continue
        board = model.var(60)
        boards.append(board)
        for length in set(cut):
            cuts[length].append((board, cut.count(length)))
        if paired and left:
            lanes[left].append((board, 2))
    for length in lengths:
        model.add(cuts[length] + [(arc, -1) for arc in made[0][length]], 0, 60)
    if paired:
        # A board's rest is ripped into two lanes; a lane is crosscut freely.
        thin, cuts = sorted(made[1]), defaultdict(list)
        for left, board in lanes.items():
            fill = []
            for cut in patterns(thin, left):
                if cut and left - sum(cut) < min(thin):
                    lane = model.var(20)
                    fill.append((lane, -1))
                    for length in set(cut):
                        cuts[length].append((lane, cut.count(length)))
            model.add(board + fill, 0, 120)
        for length in thin:
            model.add(cuts[length] + [(arc, -1) for arc in made[1][length]], 0, 60)
    # Implied, and near the bound at once: what is cut is no longer than what it is cut from.
    terms = [(board, 2 * stock) for board in boards]
    for kind, factor in ((0, -2), (1, -1)):
        terms += [(arc, factor * length) for length, of in made[kind].items() for arc in of]
    model.add(terms, 0, 10**9)
    return model, boards, joints


def by_cp_sat(built, objective):
    """The first count at its least, then the second with the first held there."""
    model, *counts = built
    cp = cp_model.CpModel()
    vs = [cp.new_int_var(0, most, "") for most in model.most]
    for terms, low, high in model.rows:
        cp.add_linear_constraint(sum(k * vs[v] for v, k in terms), low, high)
    found, proven = [None, None], True
    for goal in objective:
        total = sum(vs[v] for v in counts[goal])
        cp.minimize(total)
        solver = cp_model.CpSolver()
        solver.parameters.num_workers = 4
        solver.parameters.linearization_level = 2
        solver.parameters.max_time_in_seconds = LIMIT
        status = solver.solve(cp)
        if status not in (cp_model.OPTIMAL, cp_model.FEASIBLE):
            return None, None, status == cp_model.INFEASIBLE
        proven &= status == cp_model.OPTIMAL
        found = [sum(solver.value(vs[v]) for v in of) for of in counts]
        cp.add(total <= found[goal])
        cp.clear_hints()
        for v in vs:
            cp.add_hint(v, solver.value(v))
    return *found, proven


def by_highs(built, objective):
    model, *counts = built
    h = highspy.Highs()
    h.setOptionValue("output_flag", False)
    h.setOptionValue("time_limit", float(LIMIT))
    h.setOptionValue("mip_rel_gap", 0.0)
    for v, most in enumerate(model.most):
        h.addVar(0, most)
        h.changeColIntegrality(v, highspy.HighsVarType.kInteger)
    for terms, low, high in model.rows:
        merged = defaultdict(int)
        for v, k in terms:
            merged[v] += k
        h.addRow(low, high, len(merged), list(merged), list(merged.values()))
    found = None
    for goal in objective:
        of = list(counts[goal])
        for v in range(len(model.most)):
            h.changeColCost(v, 0)
        for v in of:
            h.changeColCost(v, 1)
        h.run()
        if h.getModelStatus() != highspy.HighsModelStatus.kOptimal:
            return None
        value = h.getSolution().col_value
        found = tuple(round(sum(value[v] for v in of)) for of in counts)
        h.addRow(0, found[goal], len(of), of, [1.0] * len(of))
    return found


print("number,long,wide,space,first,stock,width,a_boards,a_joints,a_proven,b_boards,b_joints,b_proven")
for number, *room in list(rooms()):
    begun, found = time.time(), []
    built = build(*room)
    for objective in ((0, 1), (1, 0)):
        boards, joints, proven = by_cp_sat(built, objective)
        if number % 10 == 5:
            other = by_highs(built, objective)
            if proven and other is not None:
                assert other == (boards, joints), (number, other, boards, joints)
        found += [boards, joints, "proven" if proven else "found"]
        if not proven:
            print(number, objective, boards, joints, file=sys.stderr)
    print(number, *room, *found, sep=",", flush=True)
    print(number, round(time.time() - begun, 1), len(built[0].most), file=sys.stderr, flush=True)
