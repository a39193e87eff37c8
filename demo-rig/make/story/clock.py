# SPDX-License-Identifier: Apache-2.0
"""New Zealand's wall clock: ISO times with the offset of the day, and UTC."""
from datetime import datetime, timedelta


def summer(day):
    """Daylight time runs from the last Sunday of September to the first of April."""
    start = datetime(day.year, 9, 30)
    start -= timedelta(days=(start.weekday() + 1) % 7)
    end = datetime(day.year, 4, 1)
    end += timedelta(days=(6 - end.weekday()) % 7)
    return day >= start + timedelta(hours=2) or day < end + timedelta(hours=2)


def offset(local):
    return 13 if summer(local) else 12


def local(text):
    """'2024-10-05 08:10' as a naive local time."""
    return datetime.strptime(text, "%Y-%m-%d %H:%M")


def iso(text):
    """'2024-10-05 08:10' -> '2024-10-05T08:10:00+13:00'."""
    t = local(text)
    return "%s+%02d:00" % (t.strftime("%Y-%m-%dT%H:%M:%S"), offset(t))


def utc(text):
    t = local(text)
    return t - timedelta(hours=offset(t))
