"""Prints, as JSON, what the library chemicals says of CAS numbers: those of a table, given as its argument, and
numbers drawn from a seed."""

import json
import random
import sys

from chemicals.identifiers import check_CAS, search_chemical


def number_of(name):
    try:
        return search_chemical(name).CASs
    except Exception:
        return None


table = json.loads(sys.argv[1])
draw = random.Random(20)
draws = []
for _ in range(5000):
    first = draw.randrange(10, 10 ** draw.randint(2, 7))
    text = f"{first}-{draw.randrange(100):02}-{draw.randrange(10)}"
    draws.append({"text": text, "right": bool(check_CAS(text))})

print(json.dumps({
    "table": [{"digit": bool(check_CAS(number)), "number": number_of(name)} for number, name in table],
    "draws": draws,
}))
