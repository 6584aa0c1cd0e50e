"""Prints, as JSON, the pH of solutions by PHREEQC, by pHcalc and by scipy, and the constants that PHREEQC ships.

With the word "time" also how long PHREEQC and pHcalc take for a solution, in seconds.
"""

import json
import random
import sys
import tempfile
import time
from pathlib import Path

import numpy as np

# pHcalc 0.2.0 calls a name that numpy 2 dropped.
np.cumproduct = np.cumprod

from chemicals import MW
from pHcalc import Acid, Inert, System
from phreeqpython import PhreeqPython
from scipy.optimize import brentq

PKW = 14.0

# The charge of each acid with all its protons, and its pKa at 25 °C and no ionic strength.
ACIDS = {
    "carbonic acid": (0, [6.352, 10.329]),
    "acetic acid": (0, [4.757]),
    "citric acid": (0, [3.128, 4.761, 6.396]),
    "formic acid": (0, [3.745]),
    "lactic acid": (0, [3.857]),
    "glycolic acid": (0, [3.83]),
    "gluconic acid": (0, [3.92]),
    "tartaric acid": (0, [3.036, 4.366]),
    "oxalic acid": (0, [1.25, 3.81]),
    "sulfamic acid": (0, [0.987]),
    "hydrogen sulfate": (-1, [1.988]),
    "phosphoric acid": (0, [2.168, 7.207, 12.346]),
    "pyrophosphoric acid": (0, [0.91, 2.10, 6.70, 9.32]),
    "silicic acid": (0, [9.83, 13.17]),
    "boric acid": (0, [9.24]),
    "hypochlorous acid": (0, [7.53]),
    "hydrogen peroxide": (0, [11.7]),
    "ammonium": (1, [9.252]),
    "ethanolammonium": (1, [9.498]),
    "diethanolammonium": (1, [8.883]),
    "triethanolammonium": (1, [7.76]),
    "hydroxyammonium of an amine oxide": (1, [4.65]),
    "ethylenediaminetetraacetic acid": (1, [1.5, 2.16, 3.119, 6.273, 10.948]),
    "nitrilotriacetic acid": (1, [1.0, 2.0, 2.942, 10.278]),
}


def element(name):
    """What PHREEQC calls an acid: it wants a capital and small letters."""
    if name == "carbonic acid":
        return "C"
    return "W" + "abcdefghijklmnopqrstuvwxyz"[list(ACIDS).index(name)]


def ion(symbol, charge):
    return symbol + ("" if charge == 0 else f"{charge:+d}".replace("+1", "+").replace("-1", "-"))


def database():
    """The acids above and strong ions; without ion sizes, so that PHREEQC takes the equation of Davies."""
    masters = [
        "H H+ -1 H 1.008", "H(0) H2 0 H", "H(1) H+ -1 0", "E e- 0 0 0", "O H2O 0 O 16", "O(0) O2 0 O", "O(-2) H2O 0 0",
        "Na Na+ 0 Na 22.99", "Cl Cl- 0 Cl 35.45", "Ca Ca+2 0 Ca 40.08", "C CO3-2 2 HCO3 12.011",
        "Alkalinity CO3-2 1 Ca0.5(CO3)0.5 50.05",
    ]
    species = [f"{one} = {one}\n log_k 0" for one in ("H+", "e-", "H2O", "Na+", "Cl-", "Ca+2", "CO3-2")]
    species += [f"H2O = OH- + H+\n log_k {-PKW}", "2 H2O = O2 + 4 H+ + 4 e-\n log_k -86.08", "2 H+ + 2 e- = H2\n log_k -3.15"]
    first, second = ACIDS["carbonic acid"][1]
    species += [f"CO3-2 + H+ = HCO3-\n log_k {second}", f"CO3-2 + 2 H+ = CO2 + H2O\n log_k {first + second}"]
    for name, (charge, constants) in ACIDS.items():
        if name == "carbonic acid":
            continue
        symbol, bare = element(name), charge - len(constants)
        masters.append(f"{symbol} {ion(symbol, bare)} 0 {symbol} 100")
        species.append(f"{ion(symbol, bare)} = {ion(symbol, bare)}\n log_k 0")
        for protons in range(1, len(constants) + 1):
            made = ion(f"H{protons if protons > 1 else ''}{symbol}", bare + protons)
            log_k = sum(constants[-protons:])
            species.append(f"{ion(symbol, bare)} + {protons} H+ = {made}\n log_k {log_k:.6f}")
    return "SOLUTION_MASTER_SPECIES\n" + "\n".join(masters) + "\nSOLUTION_SPECIES\n" + "\n".join(species) + "\nEND\n"


with tempfile.TemporaryDirectory() as folder:
    (Path(folder) / "acids.dat").write_text(database())
    phreeqc = PhreeqPython(database="acids.dat", database_directory=Path(folder))
# A database that PHREEQC cannot read is not an error to the library.
assert "ERROR" not in phreeqc.ip.get_error_string(), phreeqc.ip.get_error_string()


def by_phreeqc(given):
    amounts = {name if name in ("Na", "Cl") else element(name): amount for name, amount in given.items()}
    solution = phreeqc.add_solution({"units": "mol/kgw", "temp": 25, "pH": "7 charge", **amounts})
    ph, strength = solution.pH, solution.I
    solution.forget()
    return ph, strength


def by_phcalc(given):
    parts = [Acid(pKa=ACIDS[name][1], charge=ACIDS[name][0], conc=amount) for name, amount in given.items() if name in ACIDS]
    parts += [Inert(charge=charge, conc=given[name]) for name, charge in (("Na", 1), ("Cl", -1)) if given.get(name)]
    system = System(*parts, Kw=10.0**-PKW)
    system.pHsolve(guess_est=True, tol=1e-10)
    return float(system.pH)


def by_root(given):
    def charge(ph):
        total = 10.0**-ph - 10.0 ** (ph - PKW) + given.get("Na", 0) - given.get("Cl", 0)
        for name, amount in given.items():
            if name in ACIDS:
                full, constants = ACIDS[name]
                shares = [1.0]
                for constant in constants:
                    shares.append(shares[-1] * 10.0 ** (ph - constant))
                total += amount * sum((full - lost) * share for lost, share in enumerate(shares)) / sum(shares)
        return total

    return brentq(charge, -2, 16, xtol=1e-12)


BLEACH = 0.2 / 70.906
TAP = {"Na": 0.00199826, "carbonic acid": 0.0021367}
named = [
    {"acetic acid": 0.833}, {"acetic acid": 0.1}, {"acetic acid": 0.001}, {"citric acid": 0.01},
    {"citric acid": 0.005, "Na": 0.002}, {"Na": 0.001}, {"Na": 0.1}, {"Cl": 0.01}, {"Cl": 0.1}, {"ammonium": 0.01},
    {"Na": 0.02, "carbonic acid": 0.01}, {"Na": 0.01, "carbonic acid": 0.01}, {"Na": 0.02, "silicic acid": 0.01},
    {"Na": 0.002, "silicic acid": 0.001}, {"phosphoric acid": 0.01}, {"Na": 0.03, "phosphoric acid": 0.01},
    {"Na": 0.075, "phosphoric acid": 0.05}, {"Na": BLEACH, "hypochlorous acid": BLEACH},
    {"Na": BLEACH + 1e-4, "hypochlorous acid": BLEACH}, {"Na": 0.01, "acetic acid": 0.01},
    {"Na": 0.05, "citric acid": 0.05}, {"Na": 0.075, "carbonic acid": 0.05}, TAP, {**TAP, "citric acid": 0.002},
    {**TAP, "Cl": 0.003}, {**TAP, "ethanolammonium": 0.004, "ethylenediaminetetraacetic acid": 0.001},
]

# Every acid with others, from traces to the ionic strength of a strong use solution.
random.seed(7)
drawn = []
while len(drawn) < 400:
    names = random.sample(list(ACIDS), random.randint(1, 4))
    given = {name: 10 ** random.uniform(-5, -1.3) for name in names}
    for name in ("Na", "Cl"):
        if random.random() < 0.6:
            given[name] = 10 ** random.uniform(-5, -0.8)
    drawn.append(given)


def shipped():
    """The constants of PHREEQC's own database that the table says are from there."""
    import phreeqpython

    lines = (Path(phreeqpython.__file__).parent / "database" / "phreeqc.dat").read_text(errors="replace").splitlines()

    def log_k(reaction):
        at = next(place for place, line in enumerate(lines) if line.split("#")[0].split() == reaction.split())
        return next(float(line.split()[1]) for line in lines[at + 1 :] if line.split()[0].lstrip("-") == "log_k")

    carbonate = log_k("CO3-2 + H+ = HCO3-")
    phosphate = [log_k("PO4-3 + H+ = HPO4-2"), log_k("PO4-3 + 2 H+ = H2PO4-"), log_k("PO4-3 + 3H+ = H3PO4")]
    silicate = -log_k("H4SiO4 = H3SiO4- + H+")
    return {
        "carbonic acid": [log_k("CO3-2 + 2 H+ = CO2 + H2O") - carbonate, carbonate],
        "phosphoric acid": [phosphate[2] - phosphate[1], phosphate[1] - phosphate[0], phosphate[0]],
        "silicic acid": [silicate, -log_k("H4SiO4 = H2SiO4-2 + 2 H+") - silicate],
        "boric acid": [-log_k("H3BO3 = H2BO3- + H+")],
        "ammonium": [-log_k("NH4+ = NH3 + H+")],
        "hydrogen sulfate": [log_k("SO4-2 + H+ = HSO4-")],
    }


def seconds(solve, cases, rounds):
    """The mean of the fastest round, so that a slow moment of the machine is not counted."""
    best = float("inf")
    for _ in range(rounds):
        began = time.perf_counter()
        for given in cases:
            solve(given)
        best = min(best, time.perf_counter() - began)
    return best / len(cases)


cases = []
for given in named + drawn:
    davies, strength = by_phreeqc(given)
    cases.append({"given": given, "ideal": by_root(given), "davies": davies, "ionic_strength": strength})
for case in cases[: len(named)]:
    case["phcalc"] = by_phcalc(case["given"])

numbers = sys.argv[1].split(",") if len(sys.argv) > 1 and sys.argv[1] != "time" else []
masses = {}
for number in numbers:
    try:
        masses[number] = MW(number)
    except ValueError:
        masses[number] = None

answer = {"acids": ACIDS, "shipped": shipped(), "cases": cases, "masses": masses}
if "time" in sys.argv[1:]:
    answer["named"] = len(named)
    answer["seconds"] = {"phreeqc": seconds(by_phreeqc, named, 20), "phcalc": seconds(by_phcalc, named, 5)}
print(json.dumps(answer))
