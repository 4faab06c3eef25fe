#!/usr/bin/env python3
"""Writes heights.csv beside this file: heights from the published coefficients, by Python's own mathematics.
A separate command, not part of the checks:

    python3 tests/published/vectors/heights.py

Python 3.11.7 wrote the committed file. It reads content/evidence/height.csv as printed (sources S4, S5) and uses the
forms of content/evidence/allometry.md; it shares no code with the calculator.
"""
import csv
import math
import pathlib

HERE = pathlib.Path(__file__).parent
TABLE = HERE.parent.parent.parent / "content/evidence/height.csv"
JOIN = HERE.parent.parent.parent / "content/evidence/species_join.csv"
INCHES = [2, 8, 12, 30]
FOOT, INCH = 0.3048, 2.54


def weight(kind, d):
    return {"1": 1.0, "2": math.sqrt(d), "3": d, "4": d * d}[kind]


def metres(row, inches):
    """Height in metres at a diameter in inches."""
    b = [float(row[f"b{i}"] or 0) for i in range(1, 6)]
    form = row["form"]
    if form == "WYKOFF":
        return FOOT * (4.5 + math.exp(b[0] + b[1] / (inches + 1)))
    if form == "CURTIS_ARNEY":
        at = lambda d: 4.5 + b[0] * math.exp(-b[1] * d ** b[2])
        if inches >= 3:
            return FOOT * at(inches)
        # From 4.51 ft at the width of a bud straight to the height at 3 in.
        return FOOT * (4.51 + (at(3) - 4.51) * max(0.0, (inches - b[3]) / (3 - b[3])))
    cm = inches * INCH
    if row["peak_dbh"]:
        # Centimetres: the curve turns down there and is held.
        cm = min(cm, float(row["peak_dbh"]))
    kind = form.removeprefix("UTD_")
    if kind in ("lin", "quad", "cub", "quart"):
        value = sum(c * cm**i for i, c in enumerate(b))
    elif kind == "loglogw1":
        # Printed with the correction inside the outer logarithm, unlike the other three.
        value = math.exp(b[0] + b[1] * math.log(math.log(cm + 1) + b[2] / 2))
    elif kind.startswith("loglogw"):
        value = math.exp(b[0] + b[1] * math.log(math.log(cm + 1)) + weight(kind[-1], cm) * b[2] / 2)
    elif kind.startswith("expow"):
        value = math.exp(b[0] + b[1] * cm + weight(kind[-1], cm) * b[2] / 2)
    else:
        raise ValueError(form)
    if row["out_min"]:
        value = max(value, float(row["out_min"]))
    if row["out_max"]:
        value = min(value, float(row["out_max"]))
    return value


known = {}
for line in csv.DictReader(open(JOIN, newline="")):
    pairs = [p.strip() for p in line["height_rows"].split(";") if p.strip()]
    known[line["scientific_name"]] = pairs

with open(HERE / "heights.csv", "w", newline="") as f:
    out = csv.writer(f, lineterminator="\n")
    out.writerow(["scientific_name", "form", "region", "dbh_in", "height_m"])
    for row in csv.DictReader(open(TABLE, newline="")):
        pair = f"{row['form']}@{row['region']}"
        if pair not in known.get(row["scientific_name"], []):
            continue
        for inches in INCHES:
            out.writerow([row["scientific_name"], row["form"], row["region"], inches, f"{metres(row, inches):.6f}"])
