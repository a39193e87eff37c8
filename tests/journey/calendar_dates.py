# SPDX-License-Identifier: Apache-2.0
"""Due dates handed to a calendar, read back by the icalendar library (Debian's python3-icalendar)."""
import datetime
import os
import sys
import tempfile

import icalendar

from program import Failed, Program, check

NOW = ("--at", "2026-11-20T08:10:00+13:00")
LATER = ("--at", "2026-11-21T08:10:00+13:00")
TODAY = datetime.date(2026, 11, 20)


def written(program, *arguments, at=NOW):
    path = os.path.join(program.folder, "due.ics")
    answer = program.json(*at, "due", "calendar", "--out", path, *arguments)
    with open(path, "rb") as file:
        data = file.read()
    check(data.endswith(b"\r\n") and b"\n" not in data.replace(b"\r\n", b""), "lines do not end in CRLF")
    check(max(map(len, data.split(b"\r\n"))) <= 75, "a line of over 75 octets")
    calendar = icalendar.Calendar.from_ical(data)
    events = calendar.walk("VEVENT")
    check(calendar["version"] == "2.0" and "Snugwalk" in calendar["prodid"], "version or maker")
    check(len(events) == answer["events"], f"{len(events)} events, told {answer['events']}")
    return {str(event["uid"]): event for event in events}


def every_date(program):
    rig = program.json("rig", "show")
    titles = {p["point"]: p["title"] for p in program.json("points")["points"]}
    bands = program.json(*NOW, "due")["due"]
    events = written(program)
    check(len(events) == len(bands), "not one event a point")
    for band in bands:
        event = events[f"{band['point']}.{rig['id']}@snugwalk"]
        start = event["dtstart"].dt
        check(start == max(datetime.date.fromisoformat(band["likely"]), TODAY), f"{band['point']}: on {start}")
        check(str(event["summary"]) == f"{rig['name']}: {titles[band['point']]}", f"summary {event['summary']}")
        told = str(event["description"])
        check(all(band[name] in told for name in ("early", "likely", "late")), f"band not told: {told}")
        check(band["sentence"] in told, f"sentence not told: {told}")
        check(event["dtstamp"].dt == datetime.datetime(2026, 11, 19, 19, 10, tzinfo=datetime.timezone.utc), "stamp")
        alarms = event.walk("VALARM")
        check(len(alarms) == 1 and alarms[0]["action"] == "DISPLAY", f"{band['point']}: alarms {alarms}")
        rings = datetime.datetime.combine(start, datetime.time()) + alarms[0]["trigger"].dt
        wanted = max(datetime.date.fromisoformat(band["alert"]), TODAY)
        check(rings == datetime.datetime.combine(wanted, datetime.time(9)), f"{band['point']}: rings {rings}")


def other_ways(program):
    check(set(written(program)) == set(written(program, at=LATER)), "names change from day to day")
    roof = written(program, "--zone", "roof", "--within", "12")
    check(0 < len(roof) < len(written(program)), "filters do not reach the calendar")
    jobs = program.json(*NOW, "due", "jobs")["jobs"]
    days = sorted(event["dtstart"].dt.isoformat() for event in written(program, "--jobs").values())
    check(days == sorted(job["day"] for job in jobs), "jobs are not the calendar's")
    program.run("--language", "es", *NOW, "due", "calendar", "--out", os.path.join(program.folder, "es.ics"))
    with open(os.path.join(program.folder, "es.ics"), "rb") as file:
        data = file.read()
    check(max(map(len, data.split(b"\r\n"))) <= 75, "a line of over 75 octets in Spanish")
    for line in data.split(b"\r\n"):
        line.decode("utf-8")  # no character is parted by folding
    icalendar.Calendar.from_ical(data)
    program.refused(*NOW, "due", "calendar", "--out", os.path.join(program.folder, "no", "such.ics"), code=4,
                    saying=["such.ics"])


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        program.run("demo", "--from", sys.argv[2] + "/demo-rig")
        every_date(program)
        other_ways(program)


if __name__ == "__main__":
    try:
        main()
    except Failed as fault:
        print(fault)
        sys.exit(1)
