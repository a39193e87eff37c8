# SPDX-License-Identifier: Apache-2.0
"""Bad numbers, gaps, unsorted times and wrong units through `snugwalk weather`: one line each that says where and what to do, the
documented exit code, nothing written."""
import json
import os
import sys
import tempfile

sys.path.insert(0, os.path.join(os.path.dirname(os.path.abspath(__file__)), "..", "..", "journey"))
from program import Failed, Program, check  # noqa: E402

RIG = ["name=Heron", "kind=travel_trailer", "measures.length=21 ft", "measures.width=96 in", "measures.height=2.2 m",
       "measures.floor_height=22 in", 'measures.axles=["11 ft", "14 ft"]', "fittings=leaf_springs,electric_brakes,lp_gas"]
PLACE = ["--where", "-44.27, 170.10"]


def write(folder, name, text):
    path = os.path.join(folder, name)
    with open(path, "w", encoding="utf-8") as file:
        file.write(text)
    return path


def records(program, folder):
    head = "date,tmin,tmax\n"
    cases = {"nan.csv": (head + "2026-01-01,nan,4\n", "line 2"),
             "unsorted.csv": (head + "2026-01-02,1,4\n2026-01-01,1,4\n", "line 3"),
             "twice.csv": (head + "2026-01-02,1,4\n2026-01-02,1,4\n", "twice"),
             "fahrenheit.csv": (head + "2026-07-01,70,95\n", "tmin_f"),
             "short.csv": (head + "2026-01-01,1\n", "line 2"),
             "header.csv": ("when,cold,warm\n2026-01-01,1,2\n", "date"),
             "typical.epw": ("LOCATION,a,b,c,d,e,-44,170,12,100\n" + "x\n" * 7 + "1999,1,1,1,0,?,4,1,60,1,1,1,1,0\n"
                             "1985,2,1,1,0,?,4,1,60,1,1,1,1,0\n", "typical year"),
             "empty.csv": ("", "no header")}
    for name, (text, words) in cases.items():
        program.refused(*PLACE, "weather", "add", write(folder, name, text), code=3, saying=[name, words, ";"])
    program.refused(*PLACE, "weather", "add", os.path.join(folder, "none.csv"), code=4, saying=["none.csv"])
    fine = write(folder, "fine.csv", head + "2026-01-01,1,4\n2026-01-04,1,4\n")
    program.refused("weather", "add", fine, code=2, saying=["--where"])
    check(program.json("weather", "list")["weather"] == [], "a refused record is in the logbook")
    added = program.json(*PLACE, "weather", "add", fine)
    check(added["gaps"] == [{"from": "2026-01-02", "to": "2026-01-03"}], f"gaps {added['gaps']}")
    program.refused(*PLACE, "weather", "add", fine, code=6, saying=["already"])
    program.refused(*PLACE, "weather", "note", "2026-02-30", "--low", "1", "--high", "2", code=3, saying=["2026-02-30"])
    program.refused(*PLACE, "weather", "note", "2026-02-01", "--low", "5", "--high", "2", code=3, saying=["--low"])
    program.refused(*PLACE, "weather", "note", "2026-02-01", "--low", "1", "--high", "2", "--humidity", "140", code=3,
                    saying=["--humidity"])


def formulas(program, folder):
    program.refused("weather", "sun", "--lat", "95", "--date", "2026-01-01", code=3, saying=["latitude"])
    program.refused("weather", "sun", "--lat", "nan", "--date", "2026-01-01", code=3, saying=["--lat"])
    program.refused("weather", "sun", "--lat", "5", "--date", "yesterday", code=3, saying=["--date", "2026-11-24"])
    program.refused("weather", "sun", "--lat", "5", code=2, saying=["--date"])
    program.refused("weather", "sun", "--lat", "5", "--date", "2026-01-01", "--altitude", "20 km", code=3, saying=["--altitude"])
    program.refused("weather", "uv", "--lat", "5", "--date", "2026-01-01", "--cloud", "thick", code=3, saying=["--cloud", "overcast"])
    program.refused("weather", "uv", "--lat", "5", "--date", "2026-01-01", "--ozone", "3", code=3, saying=["--ozone"])
    program.refused("weather", "dew", "--temperature", "20", "--humidity", "0", code=3, saying=["humidity"])
    program.refused("weather", "dew", "--temperature", "293 kg", "--humidity", "50", code=3, saying=["--temperature"])
    program.refused("weather", "dew", "--temperature", "293", "--humidity", "50", code=3, saying=["temperature"])
    program.refused("weather", "heat", "--temperature", "20", "--energy", "53", code=3, saying=["activation", "eV"])
    program.refused("weather", "corrosion", "--temperature", "10", "--humidity", "175", code=3, saying=["humidity"])
    program.refused("weather", "corrosion", "--temperature", "10", "--humidity", "75", "--years", "40", code=3, saying=["years"])
    program.refused("weather", "frost", write(folder, "f.csv", "tmin,tmax\n1,x\n"), code=3, saying=["line 2", "tmax"])
    frost = write(folder, "g.csv", "tmin,tmax\n-5,5\n")
    program.refused("weather", "frost", frost, "--low", "2", "--high", "-2", code=3, saying=["limits"])
    program.refused("weather", "class", write(folder, "m.csv", "t,p\n1,2\n"), code=3, saying=["1 months"])
    program.refused("weather", "coast", "91", "0", code=3, saying=["91"])
    program.refused("weather", "at", "0", "-140", "2026-07-01", code=4, saying=["land"])  # the Pacific
    program.refused("weather", "at", "-44.27", "170.10", "soon", code=3, saying=["soon", "2026"])
    program.run("--json", "weather", "dew", "--temperature", "20", "--humidity", "x", expect=3)
    fault = json.loads(program.error)["error"]
    check(set(fault) == {"code", "what", "where", "do"} and fault["where"] == "--humidity", f"JSON error {fault}")


def main():
    with tempfile.TemporaryDirectory(prefix="snugwalk-bad-weather-") as folder:
        program = Program(sys.argv[1], folder)
        try:
            program.run("rig", "add", *RIG)
            records(program, folder)
            formulas(program, folder)
        except Failed as fault:
            print("failed:", fault)
            return 1
    print("every refusal was clear and wrote nothing")
    return 0


if __name__ == "__main__":
    sys.exit(main())
