"""Days, weekdays and waits by Python's datetime (proleptic Gregorian calendar), as JSON."""

import datetime
import json
import random

random.seed(8601)
EPOCH = datetime.date(1970, 1, 1).toordinal()
rows = []
for _ in range(2000):
    day = datetime.date.fromordinal(random.randint(1, datetime.date(9998, 12, 31).toordinal()))
    minute = random.randint(0, 1439)
    start = datetime.datetime.combine(day, datetime.time(minute // 60, minute % 60))
    wait = random.randint(0, 200_000)
    then = start + datetime.timedelta(minutes=wait)
    rows.append(
        {
            "date": day.isoformat(),
            "days": day.toordinal() - EPOCH,
            "weekday": day.isoweekday(),
            "time": start.strftime("%H:%M"),
            "wait": wait,
            "then": then.isoformat(sep=" ", timespec="minutes"),
        }
    )
print(json.dumps(rows))
