#!/usr/bin/env python3
"""Writes the timing vectors beside this file. A separate command, not part of the checks:

    python3 -m venv .venv && .venv/bin/pip install scipy==1.17.1 gddpy==1.0.3
    .venv/bin/python tests/published/vectors/timing/make.py

SciPy integrates; gddPy (MIT, a general-purpose degree-day library) gives degree-days by its own code; Python's
datetime and calendar give days of the year. Each file's first column set says what was put in, the rest what came out.
The versions that wrote the committed files stand in versions.csv.
"""
import calendar
import csv
import datetime
import importlib.metadata
import math
import pathlib
import platform
import random

from gddPy import GDD
from scipy import integrate, stats

HERE = pathlib.Path(__file__).parent


def write(name, header, rows):
    with open(HERE / name, "w", newline="") as f:
        w = csv.writer(f, lineterminator="\n")
        w.writerow(header)
        w.writerows(rows)


def expected():
    """Expected degree-days: the integral of max(T - base, 0) over a normal T, by adaptive quadrature (closed_form's
    own integral), and over the day's sine and a normal scatter about it (what the closed form stands in for)."""
    rng = random.Random(20270301)
    rows = [(0.0, 10.0, 5.0, 5.5)]
    for _ in range(200):
        tn = round(rng.uniform(-20, 18), 1)
        rows.append((tn, round(tn + rng.uniform(2, 20), 1), rng.choice([0.0, 5.0, 10.0]), rng.choice([3.0, 4.5, 5.5, 7.0])))
    out = []
    for tn, tx, base, sd in rows:
        mean, amp = (tn + tx) / 2, (tx - tn) / 2
        s = math.sqrt(sd * sd + amp * amp / 2)
        lo, hi = max(base, mean - 12 * s), max(base, mean) + 12 * s
        normal, _ = integrate.quad(lambda t: (t - base) * stats.norm.pdf(t, mean, s), lo, hi, epsabs=1e-12, epsrel=1e-12, limit=400, points=[max(base, mean)])

        def at_phase(theta):
            m = mean + amp * math.sin(theta)
            z = (m - base) / sd
            return sd * stats.norm.pdf(z) + (m - base) * stats.norm.cdf(z)

        sine, _ = integrate.quad(at_phase, -math.pi / 2, math.pi / 2, epsabs=1e-11, epsrel=1e-11)
        out.append((tn, tx, base, sd, f"{normal:.12g}", f"{sine / math.pi:.12g}"))
    write("expected_degree_days.csv", ["tmin", "tmax", "base", "sd", "normal_integral", "sine_and_scatter"], out)


def single_day():
    """Degree-days of one day: the sine integrated by quadrature, and gddPy's methods where they answer.
    gddPy 1.0.3 raises a TypeError by the sine method once tmin >= base (it averages the functions min and max):
    those cells are empty."""
    rng = random.Random(20270302)
    out = []
    for _ in range(200):
        tn = round(rng.uniform(-15, 25), 1)
        tx = round(tn + rng.uniform(0.1, 22), 1)
        base = rng.choice([0.0, 4.0, 5.0, 10.0, 12.0])
        mean, amp = (tn + tx) / 2, (tx - tn) / 2
        kink = [math.asin((base - mean) / amp)] if abs(base - mean) < amp else None
        area, _ = integrate.quad(lambda a: max(mean + amp * math.sin(a) - base, 0.0), -math.pi / 2, math.pi / 2, epsabs=1e-12, points=kink)
        g = GDD({"min_temp": tn, "max_temp": tx, "threshold_low": base, "min_temp_cutoff": base})
        sine = "" if tn >= base else f"{g.calcBaskervilleEmin():.12g}"
        modified = "" if tx <= base else f"{g.calcDailyAverage(cutoff_min_temp=True):.12g}"
        out.append((tn, tx, base, f"{area / math.pi:.12g}", sine, f"{g.calcDailyAverage():.12g}", modified))
    write("single_day.csv", ["tmin", "tmax", "base", "sine_integral", "gddpy_sine", "gddpy_average", "gddpy_modified_average"], out)


def calendar_days():
    """Dates with datetime's day of the year and calendar's leap years; day_365 takes 29 February as the 28th."""
    out = []
    for year in (1899, 1900, 1904, 1999, 2000, 2023, 2024, 2026, 2027, 2028, 2099, 2100):
        for date in (datetime.date(year, 1, 1) + datetime.timedelta(n) for n in range(366 if calendar.isleap(year) else 365)):
            near = (date.month, date.day) in {(2, 27), (2, 28), (2, 29), (3, 1), (3, 2), (12, 30), (12, 31), (1, 1)}
            if not near and date.day not in (1, 10, 20, calendar.monthrange(year, date.month)[1]):
                continue
            n = date.timetuple().tm_yday
            after = calendar.isleap(year) and n >= datetime.date(year, 2, 29).timetuple().tm_yday
            out.append((date.isoformat(), n, int(calendar.isleap(year)), n - 1 if after else n))
    write("calendar.csv", ["date", "day_of_year", "leap", "day_365"], out)


def normal_distribution():
    """The normal distribution function by SciPy."""
    out = [(z / 8, f"{stats.norm.cdf(z / 8):.15g}") for z in range(-64, 65)]
    write("normal.csv", ["z", "cdf"], out)


expected()
single_day()
calendar_days()
normal_distribution()
write("versions.csv", ["library", "version"], [("python", platform.python_version())]
      + [(n, importlib.metadata.version(n)) for n in ("scipy", "gddpy", "numpy")])
