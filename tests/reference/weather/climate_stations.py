# SPDX-License-Identifier: Apache-2.0
"""How far the climate table lies from stations, wherever packages carry any, as a table; and that no error is
larger than the program declares. climate_stations.py PROBE FOLDER (of tests/real/fetch_climate.sh).

The table: [LEGATES-WILLMOTT-1989] and [CRU-CL2], [COADS], [ETOPO5], [KIMBALL-1997]; radiation by [FAO-56]."""
import math
import pathlib
import subprocess
import sys

import stations

MEAN, LOW, HIGH, RAIN, HUMIDITY = range(5)
NOT_CHECKED = ["Africa", "Asia", "Australia and Oceania", "Europe beyond France and England", "Latin America"]
MIDDLE = [15, 45, 74, 105, 135, 166, 196, 227, 258, 288, 319, 349]


class Probe:
    """The program's answers, many questions at once."""

    def __init__(self, path):
        self.path = path

    def ask(self, questions):
        done = subprocess.run([self.path], input="\n".join(questions) + "\n", text=True, capture_output=True,
                              check=True)
        return [line.split() for line in done.stdout.splitlines()]

    def normals(self, places):
        """For each (latitude, longitude[, altitude]) twelve lists of mean, low, high, rain, humidity."""
        answers = self.ask("normals " + " ".join(str(value) for value in place) for place in places)
        for place, answer in zip(places, answers, strict=True):
            if answer == ["none"]:
                sys.exit(f"no climate at {place}, where a station stands")
        return [[[float(value) for value in answer[2 + 5 * m:7 + 5 * m]] for m in stations.MONTHS]
                for answer in answers]


class Table:
    """Lines of the table and what they must not pass."""

    def __init__(self):
        self.faults = []
        print(f"{'where':<36}{'what':<36}{'n':>6}{'bias':>8}{'rms':>8}{'limit':>8}")

    def line(self, where, what, errors, limit, bias_limit=None, base=None):
        errors = list(errors)
        bias = math.fsum(errors) / len(errors)
        rms = math.sqrt(math.fsum(error * error for error in errors) / len(errors))
        shown = [math.exp(bias), math.exp(rms), math.exp(limit)] if base == "factor" else [bias, rms, limit]
        print(f"{where:<36}{what:<36}{len(errors):>6}" + "".join(f"{value:>8.2f}" for value in shown))
        if not rms <= limit:
            self.faults.append(f"{where}, {what}: rms {rms:.3f} over {limit:.3f}")
        if bias_limit is not None and not abs(bias) <= bias_limit:
            self.faults.append(f"{where}, {what}: bias {bias:.3f} over {bias_limit:.3f}")
        return rms


def check_temperature(table, probe, folder, declared):
    """A bias of 1 K is declared for the table as a whole. One station of other years than the table's, which have
    warmed, may lie a third further off."""
    limit, bias = declared["mean"], 1.0
    cities = list(stations.us_cities(folder))
    years = probe.normals([city[:2] for city in cities])
    table.line("United States, 41 cities", "year's mean, K",
               [stations.mean(m[MEAN] for m in year) - city[2] for year, city in zip(years, cities)], limit, bias)
    french = list(stations.france(folder))
    table.line("France, 30 cities", "month's mean, K",
               [month[MEAN] - city[2][m] for year, city in zip(probe.normals([c[:2] for c in french]), french)
                for m, month in enumerate(year)], limit, bias)
    for where, place, means in (
            ("England, Nottingham 1920-39", (52.95, -1.15), stations.nottingham(folder)),
            ("United States, Seattle 1981-2010", (47.449, -122.309), stations.seattle_normals(folder)),
            ("United States, Seattle 2012-15", (47.449, -122.309),
             [m[0] for m in stations.daily(folder, "Seattle")]),
            ("United States, New York 2012-15", (40.78, -73.97),
             [m[0] for m in stations.daily(folder, "New York")])):
        table.line(where, "month's mean, K", [m[MEAN] - v for m, v in zip(probe.normals([place])[0], means)],
                   4.0 / 3.0 * limit)


def check_mountains(table, probe, folder, declared):
    found = list(stations.colorado(folder))
    years = probe.normals([station[:3] for station in found])
    where = f"United States, Colorado, {len(found)}"

    def errors(ours, theirs):
        return [ours(month) - theirs(station, m) for year, station in zip(years, found)
                for m, month in enumerate(year)]
    known = table.line(where, "month's mean, K", errors(lambda x: x[MEAN], lambda s, m: s[3][m]),
                       declared["mean"], 1.0)
    table.line(where, "half the day's range, K",
               errors(lambda x: (x[HIGH] - x[LOW]) / 2, lambda s, m: (s[5][m] - s[4][m]) / 2), declared["half"])
    table.line(where, "month's rain, factor",
               errors(lambda x: math.log(x[RAIN] + 5), lambda s, m: math.log(s[6][m] + 5)),
               math.log(declared["rain"]), base="factor")
    table.line(where, "year's rain, factor",
               [math.log(sum(m[RAIN] for m in year) / sum(s[6])) for year, s in zip(years, found)],
               math.log(declared["rain"]), base="factor")
    flat = probe.normals([station[:2] for station in found])
    unknown = table.line(where, "month's mean, altitude not given",
                         [month[MEAN] - s[3][m] for year, s in zip(flat, found) for m, month in enumerate(year)],
                         4.0 / 3.0 * declared["mean"])
    if known >= unknown:
        table.faults.append("the station's altitude makes the error no smaller")


def check_days(table, probe, folder, declared):
    for city, place in (("Seattle", (47.449, -122.309)), ("New York", (40.78, -73.97))):
        months = list(zip(probe.normals([place])[0], stations.daily(folder, city)))
        table.line(f"United States, {city} 2012-15", "half the day's range, K",
                   [(x[HIGH] - x[LOW]) / 2 - (high - low) / 2 for x, (_, low, high, _) in months], declared["half"])
        table.line(f"United States, {city} 2012-15", "month's rain, factor",
                   [math.log((x[RAIN] + 5) / (rain + 5)) for x, (_, _, _, rain) in months],
                   math.log(declared["rain"]), base="factor")
    cities = list(stations.us_cities(folder))
    table.line("United States, 41 cities", "year's rain, factor",
               [math.log(sum(m[RAIN] for m in year) / city[3])
                for year, city in zip(probe.normals([c[:2] for c in cities]), cities)],
               math.log(declared["rain"]), base="factor")
    capitals = list(stations.frost_days(folder))
    # days whose minimum is under 0 when minima scatter by 4.5 K about the month's (common practice)
    table.line("United States, 50 capitals", "days with frost a year",
               [sum(30.4 * 0.5 * math.erfc(m[LOW] / 4.5 / math.sqrt(2.0)) for m in year) - days
                for year, (_, _, days) in zip(probe.normals([c[:2] for c in capitals]), capitals)], 30.0, 15.0)


def extraterrestrial(latitude, day):
    """MJ m⁻² d⁻¹, [FAO-56] equations 21 to 25."""
    phi = math.radians(latitude)
    delta = 0.409 * math.sin(2 * math.pi * day / 365 - 1.39)
    sunset = math.acos(max(-1.0, min(1.0, -math.tan(phi) * math.tan(delta))))
    return 24 * 60 / math.pi * 0.0820 * (1 + 0.033 * math.cos(2 * math.pi * day / 365)) * \
        (sunset * math.sin(phi) * math.sin(delta) + math.cos(phi) * math.cos(delta) * math.sin(sunset))


def check_vapor(table, probe, folder, declared):
    """One day of spring, 5 K warmer than usual: a station's own humidity against the month's, and its dew point
    against the law from its own minimum and maximum."""
    for country in ("United States", "Canada"):
        found = [r for r in stations.reports(folder) if r["country"] == country]
        years = probe.normals([(r["latitude"], r["longitude"], r["altitude"]) for r in found])
        march = [year[2] for year in years]
        where = f"{country}, {len(found)} on 18 March 1995"
        table.line(where, "half the day's range, K",
                   [(x[HIGH] - x[LOW]) / 2 - (r["high"] - r["low"]) / 2 for x, r in zip(march, found)],
                   2.2)  # one day's range scatters about its month's
        table.line(where, "humidity, %", [x[HUMIDITY] - r["humidity"] for x, r in zip(march, found)],
                   declared["humidity"], declared["humidity"] / 2)
        questions = []
        for year, r in zip(years, found):
            evaporation = 0.0023 * max(0.0, r["mean"] + 17.8) * math.sqrt(r["high"] - r["low"]) * \
                extraterrestrial(r["latitude"], 77) / 2.45
            questions.append(f"dew {r['low']} {r['high']} {evaporation} {sum(m[RAIN] for m in year)}")
        dew = [float(answer[0]) for answer in probe.ask(questions)]
        table.line(where, "dew point from the day's minimum, K", [d - r["dew"] for d, r in zip(dew, found)],
                   3.3, 1.5)


def main():
    probe, folder = Probe(sys.argv[1]), pathlib.Path(sys.argv[2])
    if not (folder / "list.tsv").exists():
        print(f"{folder} is empty: bash tests/real/fetch_climate.sh build/real-data")
        sys.exit(77)
    declared = dict(zip(("mean", "half", "rain", "humidity"), map(float, probe.ask(["error"])[0]), strict=True))
    print("declared by the program:", declared)
    table = Table()
    check_temperature(table, probe, folder, declared)
    check_mountains(table, probe, folder, declared)
    check_days(table, probe, folder, declared)
    check_vapor(table, probe, folder, declared)
    for continent in NOT_CHECKED:
        print(f"{continent:<36}not checked: no package carries stations there")
    for fault in table.faults:
        print(fault)
    sys.exit(1 if table.faults else 0)


main()
