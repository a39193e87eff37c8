# SPDX-License-Identifier: Apache-2.0
"""Due dates of the demo rig: every sentence equals its decomposition; orders, jobs, what-if, bad plans."""
import datetime
import hashlib
import json
import os
import sys
import tempfile

from program import Failed, Program, check

NOW = ("--at", "2026-11-20T08:10:00+13:00")
TODAY = datetime.date(2026, 11, 20)
MONTH = 30.4375
SOONER = {"sun": "by sun", "heat": "by heat", "wetness": "by wetness", "frost": "by frost", "salt": "by salt",
          "shake": "by rough roads", "use": "by how far it goes", "history": "by what earlier looks found"}
LATER = {"sun": "by little sun", "heat": "by little heat", "wetness": "by little wetness", "frost": "by little frost",
         "salt": "by little salt", "shake": "by few rough roads", "use": "by how far it goes",
         "history": "by what earlier looks found"}
MONTHS = ("January February March April May June July August September October November December").split()


def day(text):
    return datetime.date.fromisoformat(text)


def told(part, rule):
    """One cause as the sentence has to say it."""
    later = part["months"] > 0
    if part["cause"] == "limit":
        cause = ("because something happened that calls for a look" if rule.startswith("event:") else
                 "because its readings are heading for their limit" if rule.startswith("reading:") else
                 "because the interval may not grow any further")
    else:
        cause = (LATER if later else SOONER)[part["cause"]]
    size = abs(part["months"])
    number = "under 0.1" if size < 0.05 else f"{size:.1f}"
    return f"{number} months {'later' if later else 'sooner'} {cause}"


def expected_sentence(band):
    parts = sorted(band["parts"], key=lambda part: -abs(part["months"]))
    causes = ", ".join([told(p, band["rule"]) for p in parts if abs(p["months"]) * MONTH >= 1e-6][:2])
    likely, nominal = day(band["likely"]), day(band["nominal"])
    if not causes:
        return f"Likely on {likely}, as by the catalogue alone: nothing moved it."
    if likely == nominal:
        return f"Likely on {likely}, as by the catalogue alone: {causes}."
    if (likely.year, likely.month) == (nominal.year, nominal.month):
        return f"Likely on {likely} instead of {nominal}: {causes}."
    return (f"Likely in {MONTHS[likely.month - 1]} {likely.year} instead of {MONTHS[nominal.month - 1]} {nominal.year}: "
            f"{causes}.")


def every_sentence(program):
    """Each point's sentence names its two largest causes with the decomposition's own numbers."""
    due = program.json(*NOW, "due", "--all")["due"]
    explained = [band for band in due if band["parts"]]
    check(len(explained) > 80, f"only {len(explained)} of {len(due)} points have a decomposition")
    for band in explained:
        moved = (day(band["likely"]) - day(band["nominal"])).days
        total = sum(part["months"] for part in band["parts"]) * MONTH
        check(abs(total - moved) < 1e-6, f"{band['point']}: parts come to {total} days, the date moved {moved}")
        check(band["sentence"] == expected_sentence(band), f"{band['point']}: {band['sentence']}\n  not "
              f"{expected_sentence(band)}")
        check(band["early"] <= band["likely"] <= band["late"], f"{band['point']}: band out of order")
    causes = {part["cause"] for band in explained for part in band["parts"] if abs(part["months"]) > 0.1}
    check({"sun", "shake"} <= causes, f"weather and road move nothing here: {causes}")
    for band in due:
        check(band["parts"] or band["nominal"] is None, f"{band['point']} has a nominal date without parts")


def opened(program):
    band = next(b for b in program.json(*NOW, "due")["due"] if b["point"] == "roof-membrane")
    why = program.json(*NOW, "due", "why", "roof-membrane")
    check(why["parts"] == band["parts"] and why["sentence"] == band["sentence"], "due and due why differ")
    check(why["looks"] and why["looks"] == sorted(why["looks"], key=lambda look: look["at"]), "looks of the point")
    check(why["sources"] and why["usage"]["level"] == "season", f"sources or usage: {why['usage']}")
    check(why["days"]["value"] == (TODAY - day(why["since"])).days and why["aged"]["value"] > 0.0, "days since the look")
    text = program.run(*NOW, "due", "why", "roof-membrane")
    check(band["sentence"] in text and "aged it like" in text, text)
    spanish = program.run(*NOW, "--language", "es", "due", "why", "roof-membrane")
    check("Probable" in spanish and "meses" in spanish, spanish)
    program.refused(*NOW, "due", "why", "no-such-point", code=4, saying=["no such point", "no-such-point", "points"])


def orders_and_filters(program):
    bands = program.json(*NOW, "due")["due"]
    roof = program.json(*NOW, "due", "--zone", "roof", "--by", "concern")["due"]
    numbers = {p["point"]: p["concern"]["value"] for p in program.json(*NOW, "state")["points"]}
    order = [numbers.get(b["point"], 0.0) for b in roof]
    check(order == sorted(order, reverse=True) and len(roof) > 5, f"not by concern: {order}")
    zones = {p["point"]: p["zone"] for p in program.json("points")["points"]}
    check({b["point"] for b in roof} == {b["point"] for b in bands if zones[b["point"]] == "roof"}, "zone filter")
    soon = program.json(*NOW, "due", "--within", "2")["due"]
    check({b["point"] for b in soon} == {b["point"] for b in bands if b["early"] <= "2027-01-20"}, "within two months")
    program.refused(*NOW, "due", "--zone", "cellar", code=4, saying=["no such zone", "roof"])


def jobs_hold_each_point_once(program):
    bands = {b["point"]: b for b in program.json(*NOW, "due")["due"]}
    jobs = program.json(*NOW, "due", "jobs")["jobs"]
    points = [point for job in jobs for point in job["points"]]
    check(sorted(points) == sorted(bands), "a dated point is in no job, or in two")
    minutes = {p["point"]: p["minutes"] for p in program.json("points")["points"]}
    for job in jobs:
        check(day(job["day"]) >= TODAY, f"a job in the past: {job}")
        check(abs(job["minutes"] - sum(minutes[p] for p in job["points"])) < 1e-9, f"minutes of {job}")
        for point in job["points"]:
            check(day(job["day"]) <= max(day(bands[point]["alert"]), TODAY), f"{point} comes too late in {job}")
    check(len(jobs) < len(points) / 2, f"{len(jobs)} jobs for {len(points)} points put nothing together")


def plan_file(program, legs):
    path = os.path.join(program.folder, "plan.json")
    with open(path, "w", encoding="utf-8") as out:
        json.dump({"legs": legs}, out)
    return path


def book_bytes(program):
    digest = hashlib.sha256()
    with open(program.book, "rb") as book:
        digest.update(book.read())
    return digest.hexdigest()


def what_if(program):
    """Three months on the coast with gravel: salt and road pull dates, and nothing is written."""
    before = book_bytes(program)
    entries = program.json("check")["entries"]
    coast = {"from": "2026-12-01", "until": "2027-02-28", "lat": -45.356, "lon": 170.829, "name": "coast"}
    standing = {b["point"]: b for b in program.json(*NOW, "due", "whatif", plan_file(program, [coast]))["due"]}
    rough = dict(coast, distance="4,000 km", road="gravel")
    driven = program.json(*NOW, "due", "whatif", plan_file(program, [rough]))
    check(driven["plan"][0]["distance"] == {"value": 4e6, "unit": "m"}, f"plan {driven['plan']}")
    for band in driven["due"]:
        other = standing[band["point"]]
        check(band["now"] == other["now"], f"{band['point']}: the plan changed today's date")
        for name in ("early", "likely", "late"):
            check(band["planned"][name] <= other["planned"][name], f"{band['point']}: later by more road")
        moved = (day(band["planned"]["likely"]) - day(band["now"]["likely"])).days
        check(moved == band["days"], f"{band['point']}: {moved} days, told {band['days']}")
    check(any(band["days"] < -14 for band in driven["due"]), "4,000 km of gravel move nothing by two weeks")
    text = program.run(*NOW, "due", "whatif", plan_file(program, [rough]))
    check("days sooner" in text and "Nothing is written" in text, text)
    check(book_bytes(program) == before and program.json("check")["entries"] == entries, "what-if wrote something")


def bad_plans(program):
    good = {"from": "2026-12-01", "until": "2026-12-09", "lat": -45.0, "lon": 170.0}

    def refused(legs, *saying):
        program.refused(*NOW, "due", "whatif", plan_file(program, legs), code=3, saying=["plan.json", *saying])

    refused([], "no legs")
    refused([dict(good, distance="900")], "legs[1].distance", "4000 km")
    refused([good, {"from": "2026-12-05", "until": "2026-12-20", "lat": 1, "lon": 1}], "2026-12-05")
    refused([dict(good, until="2026-11-30")], "legs[1].until")
    refused([dict(good, lat=-95)], "legs[1].lat", "degrees")
    refused([dict(good, road="ice")], "legs[1].road", "washboard")
    refused([dict(good, wheels=4)], "legs[1].wheels")
    refused([dict(good, **{"from": "2025-01-01", "until": "2025-02-01"})], "past")
    with open(os.path.join(program.folder, "plan.json"), "w", encoding="utf-8") as out:
        out.write('{"legs": [\n {"from": }]}')
    program.refused(*NOW, "due", "whatif", os.path.join(program.folder, "plan.json"), code=3, saying=["line 2"])
    program.refused(*NOW, "due", "whatif", os.path.join(program.folder, "none.json"), code=4, saying=["none.json"])


def without_tables(program):
    """A missing climate stops nothing; the dates say what they lack."""
    empty = os.path.join(program.folder, "empty")
    os.makedirs(empty)
    program.environment["SNUGWALK_DATA"] = empty
    due = program.json(*NOW, "due")
    check(len(due["due"]) > 80 and any("climate" in warning for warning in due["warnings"]), f"{due['warnings']}")
    check("Note: " in program.run(*NOW, "due"), "the list does not say that the climate is missing")
    del program.environment["SNUGWALK_DATA"]


def main():
    with tempfile.TemporaryDirectory() as folder:
        program = Program(sys.argv[1], folder)
        program.run("demo", "--from", sys.argv[2] + "/demo-rig")
        every_sentence(program)
        opened(program)
        orders_and_filters(program)
        jobs_hold_each_point_once(program)
        what_if(program)
        bad_plans(program)
        without_tables(program)


if __name__ == "__main__":
    try:
        main()
    except Failed as fault:
        print(fault)
        sys.exit(1)
