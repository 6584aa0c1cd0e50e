"""Prints, as JSON, what scipy says about lines through catch tests and fluids about holes in tanks."""

import json
import math
import random

from fluids.constants import g
from fluids.flow_meter import flow_meter_discharge
from scipy.integrate import quad
from scipy.optimize import curve_fit
from scipy.stats import t

random.seed(4)
lines = []
for _ in range(40):
    count = random.randint(3, 12)
    x = [float(random.randint(1, 6)) for _ in range(count)]
    x[0], x[1] = 1.0, 5.0
    y = [0.02 + 0.13 * one + random.gauss(0, 0.02) for one in x]
    error = [random.uniform(0.005, 0.04) for _ in x]
    fit = lambda absolute: curve_fit(lambda t, a, b: a + b * t, x, y, p0=(0, 0.1), sigma=error, absolute_sigma=absolute)
    (a, b), covariance = fit(True)
    _, scaled = fit(False)
    lines.append(
        {
            "points": list(zip(x, y, error)),
            "line": [a, b],
            "errors": [math.sqrt(covariance[0, 0]), math.sqrt(covariance[1, 1]), covariance[0, 1]],
            "scaled": [math.sqrt(scaled[0, 0]), math.sqrt(scaled[1, 1])],
        }
    )

drains = []
for surface in (0.05, 0.2, 0.5):
    for diameter in (0.003, 0.006, 0.012):
        for start, end in ((0.4, 0.1), (0.3, 0.02), (0.15, 0.05)):
            hole = 0.62 * math.pi * diameter**2 / 4
            time, _ = quad(lambda h: surface / (hole * math.sqrt(2 * g * h)), end, start)
            drains.append({"given": [surface, hole, start, end], "time": time})

# A hole in a wall that is very wide beside it.
holes = []
for diameter in (0.003, 0.006, 0.012):
    for head in (0.02, 0.1, 0.4):
        mass = flow_meter_discharge(
            D=1000 * diameter, Do=diameter, P1=1e5 + 1000 * g * head, P2=1e5, rho=1000.0, C=0.62, expansibility=1.0
        )
        holes.append({"given": [math.pi * diameter**2 / 4, head], "flow": mass / 1000.0})

student = [float(t.ppf(0.975, freedom)) for freedom in range(1, 31)]

print(json.dumps({"lines": lines, "drains": drains, "holes": holes, "student": student}))
