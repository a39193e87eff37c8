# SPDX-License-Identifier: Apache-2.0
"""Weather through the command line: published check values by their JSON names, a place, and a rig whose recorded winter replaces
the normals. Figures and their sources are those of tests/published/weather."""
import os
import sys
import tempfile

from program import Failed, Program, check

RIG = ["name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in", "measures.height=2.2 m",
       "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "fittings=leaf_springs,electric_brakes,lp_gas"]


def near(value, expected, tolerance, what):
    check(abs(value - expected) <= tolerance, f"{what}: {value}, expected {expected}")


def write(folder, name, text):
    path = os.path.join(folder, name)
    with open(path, "w", encoding="utf-8") as file:
        file.write(text)
    return path


def formulas(program, folder):
    sun = program.json("weather", "sun", "--lat", "-20", "--date", "2001-09-03")
    near(sun["extraterrestrial"], 32.193996, 1e-6, "Ra of FAO-56 example 8")
    near(sun["day_length"], 11.665592, 1e-6, "N of FAO-56 example 9")
    near(sun["clear_sky"], 0.75 * 32.193996, 1e-5, "clear sky at the sea")
    high = program.json("weather", "sun", "--lat", "-20", "--date", "2001-09-03", "--altitude", "1000")
    near(high["clear_sky"], 0.77 * 32.193996, 1e-5, "clear sky at 1,000 m")
    uv = program.json("weather", "uv", "--lat", "35", "--date", "2001-06-21")
    near(uv["index_hours"], 76.549615, 0.0077, "index hours")
    check(uv["inputs_defaulted"] == ["ozone"], f"defaulted {uv['inputs_defaulted']}")
    near(program.json("weather", "uv", "--lat", "35", "--date", "2001-06-21", "--zenith", "60")["value"], 2.335702, 1e-5, "UV index")
    near(program.json("weather", "heat", "--temperature", "55", "--reference", "25")["value"], 12.070952, 1e-5, "ageing")
    near(program.json("weather", "dew", "--temperature", "25", "--humidity", "60")["value"], 16.697664, 1e-5, "dew point")
    same = program.json("weather", "dew", "--temperature", "77 F", "--humidity", "60")
    near(same["value"], 16.697664, 1e-5, "dew point from Fahrenheit")
    check(same["sealant"]["within_limits"] and same["unit"] == "°C", "sealant at 25 °C and 60 %")
    air = program.json("weather", "corrosion", "--temperature", "10", "--humidity", "75", "--so2", "5", "--chloride", "3", "--years", "10")
    for metal, rate, category in (("steel", 21.89088336, "C2"), ("zinc", .96454538, "C3"), ("copper", 1.00753044, "C3"),
                                  ("aluminium", .12859772, "C2")):
        near(air[metal]["rate"], rate, 1e-4, metal)
        check(air[metal]["category"] == category, f"{metal} {air[metal]['category']}")
    near(air["steel"]["after"]["loss"], 21.89088336 * 10 ** 0.523, 1e-3, "ten years of steel")
    days = "tmin,tmax\n2,9\n-1,4\n-3,1\n-5,-1\n-8,-2\n-6,0.5\n-2,3\n0,6\n1,8\n-1,5\n-0.5,2\n3,10\n"
    winter = write(folder, "winter.csv", days)
    for limits, cycles in ((["--low", "0", "--high", "0"], 6), ([], 1), (["--low", "-2", "--high", "0"], 2)):
        got = program.json("weather", "frost", winter, *limits)
        check(got["cycles"] == got["value"] == cycles, f"cycles with {limits}: {got['cycles']}")
        check(got["low"] <= cycles <= got["high"] <= cycles + 1, f"range with {limits}: {got}")
    months = "t,p\n14.6,84\n14.9,92\n15.9,57\n17.2,18\n18.6,8\n20.6,2\n22.9,1\n23.6,0\n23.1,3\n20.9,15\n17.6,21\n14.5,64\n"
    climate = program.json("weather", "class", write(folder, "months.csv", months))
    check(climate["class"] == "BSh" and climate["runner_up"] == "Csa", f"class {climate}")
    check(climate["warnings"] == ["near_boundary"], f"no warning: {climate}")
    near(climate["rain"]["value"], 365, 1e-9, "rain")
    near(climate["arid_below"]["value"], 374, 1e-9, "arid below")


def places(program):
    near(program.json("weather", "coast", "39.74", "-104.99")["value"] / 1000, 1300, 200, "Denver to the Gulf of California")
    check(program.json("weather", "coast", "39.74", "-104.99")["band"] == "inland", "Denver is inland")
    check(not program.json("weather", "coast", "0", "-140")["on_land"], "the Pacific is no land")
    cell = program.json("weather", "coast", "33.4484", "-112.0740")["cell"]
    check(cell["geohash"] == "9tbq3" and cell["open_location_code"] == "8559CW00+", f"cell {cell}")
    july = program.json("weather", "at", "33.45", "-112.07", "2026-07-15")
    check(july["normal"]["mean"]["estimated"] and july["normal"]["mean"]["low"] < july["normal"]["mean"]["value"], "not estimated")
    for name, figure in july["normal"].items():
        check(figure["estimated"] and figure["low"] <= figure["value"] <= figure["high"], f"{name}: {figure}")
        check(figure["low"] < figure["high"] or name == "freeze_thaw", f"no range of {name}: {figure}")
    january = program.json("weather", "at", "33.45", "-112.07", "2026-01-15")
    check(july["rates"]["heat"]["value"] > 2 > 1 > january["rates"]["heat"]["value"], "Phoenix: July over January")
    check(july["rates"]["sun"]["value"] > january["rates"]["sun"]["value"], "Phoenix: sun")
    roof = program.json("weather", "at", "33.45", "-112.07", "2026-07-15", "--covered")
    near(roof["rates"]["sun"]["value"], 0.1 * july["rates"]["sun"]["value"], 1e-9, "a roof")
    year = program.json("weather", "at", "33.45", "-112.07", "2026")
    check(len(year["months"]) == 12 and year["class"] == "BWh", f"Phoenix is {year['class']}")
    for name in ("freeze_thaw", "wet_hours", "uv_index_hours"):
        check(year[name]["estimated"] and year[name]["low"] < year[name]["value"] < year[name]["high"], f"{name}: {year[name]}")
    cold = program.json("weather", "at", "46.8", "-100.8", "2026")
    check(cold["freeze_thaw"]["value"] > year["freeze_thaw"]["value"], "North Dakota thaws more often than Phoenix")
    low, high = (program.json("weather", "at", "39.5", "-106", "2026-07-15", "--altitude", h)["normal"]["mean"]["value"]
                 for h in ("1000 m", "3000 m"))
    near(low - high, 13.0, 1e-6, "6.5 K a kilometer")


def rig(program, folder):
    program.run("rig", "add", *RIG)
    where = ["--where", "46.8, -100.8"]
    program.run(*where, "trip", "stay", "--from", "2025-01-01T12:00:00-06:00", "--name", "yard")
    span = ["--from", "2025-06-01", "--until", "2025-06-30"]
    before = program.json("weather", "rig", *span)
    check(len(before["days"]) == 30 and len(before["usual"]) == 12, "thirty days, twelve months")
    check(all(day["known"] and not day["recorded"] for day in before["days"]), "normals only")
    hot = "date,tmin_f,tmax_f\n" + "".join(f"2025-06-{d:02},80,112\n" for d in range(10, 20))
    program.run(*where, "weather", "add", write(folder, "hot.csv", hot))
    program.run(*where, "weather", "note", "2025-06-20", "--low", "80 F", "--high", "112 F", "--rain", "0")
    after = program.json("weather", "rig", *span)
    for number, (a, b) in enumerate(zip(before["days"], after["days"]), 1):
        if 10 <= number <= 20:
            check(b["recorded"] and b["heat"]["value"] > a["heat"]["value"], f"June {number} is not the record's")
        else:
            check(a == b, f"June {number} changed without a record")
    check(after["usual"] == before["usual"], "what was changed what comes")
    check(len(program.json("weather", "list")["weather"]) == 2, "two records")
    program.run("check", "--deep")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-weather-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            formulas(program, folder)
            places(program)
            rig(program, folder)
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("formulas, places and records agree")
    return 0


if __name__ == "__main__":
    sys.exit(main())
