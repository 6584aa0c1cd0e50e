"""Prints, as JSON, what the uncertainties library says about doses and readings with errors."""

import json
import math
from statistics import NormalDist

from uncertainties import ufloat


def both(value):
    return [value.nominal_value, value.std_dev]


def grid():
    """Concentrate and water with their errors: errors up to 10 %, ratios from 1 to 1 up to 1 to 1000."""
    for parts in (1, 4, 9, 32, 64, 128, 256, 1000):
        for measure in (0.0005, 0.002, 0.01, 0.05, 0.1):
            for mark in (0.001, 0.01, 0.05):
                c, w = 0.0125, 0.0125 * parts
                yield c, c * measure, w, w * mark


doses = []
for c, c_error, w, w_error in grid():
    concentrate, water = ufloat(c, c_error), ufloat(w, w_error)
    on_top = concentrate / (concentrate + water)
    made_up = concentrate / ufloat(c + w, w_error)
    low, high = on_top.nominal_value * 0.9, on_top.nominal_value * 1.05
    normal = NormalDist(on_top.nominal_value, on_top.std_dev)
    doses.append(
        {
            "given": [c, c_error, w, w_error],
            "on_top": both(on_top),
            "made_up": both(made_up),
            "parts": both(water / concentrate),
            "window": [low, high],
            "chance": normal.cdf(high) - normal.cdf(low),
        }
    )

catches = []
for drawn in (2e-6, 1.7e-5, 3.1e-4):
    for times in (1.5, 20, 65, 512):
        for error in (0.001, 0.01, 0.08):
            total = drawn * times
            strength = ufloat(drawn, drawn * error) / ufloat(total, total * 0.03)
            given = [drawn, drawn * error, total, total * 0.03]
            catches.append({"given": given, "strength": both(strength)})

meters = []
for read in (310.0, 500.0, 900.0, 1400.0):
    for error in (0.5, 2.0, 15.0):
        water, solution, strength = ufloat(300, error), ufloat(1100, error), ufloat(0.02, 0.0003)
        found = strength * (ufloat(read, error) - water) / (solution - water)
        meters.append({"given": [read, error, 300.0, 1100.0, 0.02, 0.0003], "strength": both(found)})

assert all(math.isfinite(dose["chance"]) for dose in doses)
print(json.dumps({"doses": doses, "catches": catches, "meters": meters}))
