"""Prints, as JSON, what an ordinary database says of a log: SQLite loads the file a line a row, folds the corrections
in and sums up the concentrate measured of each product. Beside it the hash of every record, put together from the
documentation alone with hashlib and the library rfc8785."""

import hashlib
import json
import sqlite3
import sys

import rfc8785

# Line by line, as SQLite's own shell would import it: the first line says what the file is.
header, *lines = open(sys.argv[1], encoding="utf-8").read().splitlines()
header = json.loads(header)
assert header["brimline"] == "log" and header["schema"] <= 2, header

database = sqlite3.connect(":memory:")
database.execute("CREATE TABLE log (record TEXT)")
database.executemany("INSERT INTO log VALUES (?)", ([line] for line in lines))
database.execute("""
    CREATE VIEW correction AS
    SELECT json_extract(record, '$.of') AS of, datetime(json_extract(record, '$.when')) AS at,
           json_extract(record, '$.number') AS number, json_extract(record, '$.changes') AS changes
    FROM log WHERE json_extract(record, '$.kind') = 'correction'""")
# The last correction that says anything of a field counts.
CORRECTED = """
    SELECT json_extract(changes, '{path}') FROM correction
    WHERE of = id AND json_type(changes, '{field}') IS NOT NULL ORDER BY at DESC, number DESC LIMIT 1"""


def corrected(field, path, otherwise):
    last = CORRECTED.format(path=path, field=field)
    return f"CASE WHEN EXISTS ({last}) THEN ({last}) ELSE {otherwise} END"


database.execute(f"""
    CREATE VIEW fill AS
    SELECT product, {corrected('$.measured', '$.measured.si', 'measured')} AS measured,
           {corrected('$.struck', '$.struck', 'struck')} AS struck
    FROM (SELECT json_extract(record, '$.device') || '/' || json_extract(record, '$.number') AS id,
                 coalesce(json_extract(record, '$.fill.product.id'), '') AS product,
                 json_extract(record, '$.fill.measured.si') AS measured,
                 coalesce(json_extract(record, '$.fill.struck'), 0) AS struck
          FROM log WHERE json_extract(record, '$.kind') = 'fill')""")
products = database.execute("""
    SELECT product, count(*), sum(measured) FROM fill WHERE NOT struck GROUP BY product ORDER BY product""")


def digest(line):
    record = {key: value for key, value in json.loads(line).items() if key not in ("own", "words")}
    return hashlib.sha256(b"brimline log record 1\0" + rfc8785.dumps(record)).hexdigest()


def seals_hold(line):
    """Each text that was not blanked is the one that was sealed."""
    record = json.loads(line)
    for part, text in record.get("words", {}).items():
        sealed = "\0".join(["brimline log words 1", part, text["salt"], text["text"]]).encode()
        assert hashlib.sha256(sealed).hexdigest() == record["seals"][part], (part, record)


for line in lines:
    seals_hold(line)
before = {}
for line in lines:
    record = json.loads(line)
    assert record.get("before", "") == before.get(record["device"], ""), record
    before[record["device"]] = record["own"]
assert before == {head["device"]: head["own"] for head in header["heads"]}
print(json.dumps({
    "products": [{"id": id, "fills": fills, "measured": measured} for id, fills, measured in products],
    "hashes": [digest(line) for line in lines],
}))
