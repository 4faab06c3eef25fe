#!/usr/bin/env python3
"""Writes plans.json beside this file: invented lists of trees, with what SciPy's HiGHS finds for each: the value of the
linear relaxation, and the best whole plan within 40 seconds with the bound that it proved.
A separate command, not part of the checks:

    python3 tests/published/vectors/plan/plans.py

SciPy 1.17 wrote the committed file. It shares no code with the planner. Every tree, window and hour is invented.
"""
import json
import pathlib
import random

import numpy
import scipy
from scipy.optimize import Bounds, LinearConstraint, linprog, milp
from scipy.sparse import coo_matrix

HERE = pathlib.Path(__file__).parent


def instance(seed, trees, rings, later, load, pacing):
    """An invented list: `load` is the hours there are over those that all rings and visits would take."""
    r = random.Random(seed)
    days = rings + later
    classes = []
    for _ in range(6):
        middle, width = r.uniform(0, rings - 1), r.uniform(1.5, rings / 1.5)
        row = []
        for day in range(rings):
            p = max(0.0, 1 - ((day - middle) / width) ** 2 / 2)
            p = round(round(min(0.97, p) / 0.005) * 0.005, 3)
            if p >= 0.4 and r.random() > 0.1:
                row.append([day, p])
        classes.append(row)
    profiles = []
    for kind in range(3):
        after = []
        for day in range(rings):
            needs = [[0, min(day + 1, days), min(day + 3, days), 1]]
            first = rings
            for k in range(kind + 1):
                a = first + k * (later // 3)
                needs.append([k + 1, min(a, days), min(a + max(1, later // 4), days), 0])
            after.append(needs)
        after += [[] for _ in range(later)]
        profiles.append(after)
    units = 3
    rows = []
    for _ in range(trees):
        slip = round(r.lognormvariate(2.0, 0.6), 3)
        dbh = r.lognormvariate(2.1, 0.45) * 0.0254
        rows.append({
            "unit": r.randrange(units), "class": r.randrange(6), "profile": r.randrange(3),
            "value": r.choice([1, 1, 2, 4]) * r.choice([1, 1.2, 1.5]),
            "work": [slip, round(slip * 2.4, 3), 2.0],
            "visits": [round(1.5 + 2, 3), round(0.27 * slip + 2, 3)],
            "basal_m2": round(3.14159265 / 4 * dbh * dbh, 6),
        })
    need = sum(t["work"][0] + 2 + t["visits"][0] + t["visits"][1] * 2 for t in rows)
    minutes = [round(need * load / days, 3)] * days
    limits = []
    for unit in range(units):
        basal = [t["basal_m2"] for t in rows if t["unit"] == unit]
        limits.append(round(max(pacing * sum(basal), max(basal)), 6) if pacing else None)
    return {"seed": seed, "rings": rings, "trees": rows, "classes": classes, "profiles": profiles,
            "minutes": minutes, "limits": limits}


def solved(it):
    """LP value, best whole plan, and the bound proved for it."""
    columns, gain = [], []
    entries = []  # row, column, amount
    rows = []     # lower, upper
    def row(low, high):
        rows.append((low, high))
        return len(rows) - 1
    hours = [row(-numpy.inf, m) for m in it["minutes"]]
    area = [row(-numpy.inf, l) if l is not None else None for l in it["limits"]]
    for tree in it["trees"]:
        once = row(-numpy.inf, 1)
        for day, p in it["classes"][tree["class"]]:
            x = len(columns)
            columns.append("x")
            gain.append(tree["value"] * p)
            entries.append((once, x, 1.0))
            slip, tight, walk = tree["work"]
            entries.append((hours[day], x, p * slip + (1 - p) * tight + walk))
            if area[tree["unit"]] is not None:
                entries.append((area[tree["unit"]], x, tree["basal_m2"]))
            for _, a, b, first in it["profiles"][tree["profile"]][day]:
                if a >= b:
                    continue
                link = row(0, 0)
                entries.append((link, x, -1.0))
                for visit_day in range(a, b):
                    z = len(columns)
                    columns.append("z")
                    gain.append(0.0)
                    entries.append((link, z, 1.0))
                    entries.append((hours[visit_day], z, tree["visits"][0 if first else 1]))
    r, c, v = zip(*entries)
    matrix = coo_matrix((v, (r, c)), shape=(len(rows), len(columns))).tocsr()
    low, high = (numpy.array(side) for side in zip(*rows))
    cost = -numpy.array(gain)
    constraint = LinearConstraint(matrix, low, high)
    bounds = Bounds(0, 1)
    lp = milp(cost, constraints=constraint, bounds=bounds, integrality=numpy.zeros(len(columns)))
    whole = milp(cost, constraints=constraint, bounds=bounds, integrality=numpy.ones(len(columns)),
                 options={"time_limit": 40, "mip_rel_gap": 1e-4})
    return {"lp": -lp.fun, "whole": -whole.fun, "proved": -whole.mip_dual_bound}


def main():
    out = []
    for seed, trees, rings, later, load, pacing in [
        (1, 60, 8, 6, 0.3, None), (2, 60, 8, 6, 0.6, None), (3, 60, 8, 6, 1.2, None),
        (4, 60, 8, 6, 1.2, 0.3), (5, 100, 10, 9, 0.3, None), (6, 100, 10, 9, 0.6, 0.5),
        (7, 100, 6, 9, 0.5, None), (8, 40, 12, 6, 0.4, 0.4),
    ]:
        it = instance(seed, trees, rings, later, load, pacing)
        it.update(solved(it))
        print(seed, trees, it["lp"], it["whole"], it["proved"], flush=True)
        out.append(it)
    text = ",\n".join(json.dumps(it, separators=(",", ":")) for it in out)
    (HERE / "plans.json").write_text(f'{{"scipy":"{scipy.__version__}","lists":[\n{text}\n]}}\n')


main()
