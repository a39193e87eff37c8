# SPDX-License-Identifier: Apache-2.0
"""Wire, screws, cartridges and gas pressure beside GNU units, which knows gauges and inches of water itself."""
import json
import subprocess
import sys

SNUGWALK, UNITS = sys.argv[1:3]
faults, checked = [], 0


def by_units(have, want):
    out = subprocess.run([UNITS, "-t", "-d", "12", have, want], capture_output=True, text=True, check=True)
    return float(out.stdout)


def bench(name, *flags):
    out = subprocess.run([SNUGWALK, "bench", name, *flags, "--json"], capture_output=True, text=True)
    if out.returncode:
        sys.exit(f"bench {name} {' '.join(flags)}: {out.stderr}")
    return json.loads(out.stdout)


def compare(what, ours, theirs, relative):
    global checked
    checked += 1
    if not abs(ours - theirs) <= relative * abs(theirs):
        faults.append(f"{what}: {ours} here, {theirs} by units")


for gauge in ["4/0", "3/0", "2/0", "1/0", *map(str, range(1, 25))]:
    number = 1 - int(gauge[0]) if "/" in gauge else int(gauge)
    ours = bench("wire", "--gauge", gauge, "--length", "25 ft", "--current", "13 A")
    area = f"circlearea(awg({number}) / 2)"
    ohms = by_units(f"50 ft * (1|58 ohm mm^2 / m) / {area}", "ohm")
    compare(f"{gauge} AWG", ours["figures"]["resistance"]["value"], ohms, 1e-9)
    compare(f"{gauge} AWG, 13 A", ours["value"], 13 * ohms, 1e-9)

for number in (4, 6, 8, 10, 12, 14):
    ours = bench("screw", f"#{number}", "--thread", "1 in", "--wood", "0.5")
    force = by_units(f"15700 lbf/in^2 * 0.5^2 * screwgauge({number}) * 1 in", "newton")
    compare(f"screw #{number}", ours["figures"]["pull-out"]["value"], force, 1e-9)

for size, width in (("1/4 in round", "1|4 in"), ("3/8 in round", "3|8 in"), ("10 mm round", "10 mm")):
    ours = bench("sealant", "--bead", size, "--length", "20 ft", "--cartridge", "10.1 fl oz", "--waste", "0 %")
    compare(size, ours["figures"]["volume"]["value"], by_units(f"circlearea({width} / 2) * 20 ft", "m^3"), 1e-9)
    compare(f"{size}, a cartridge", ours["figures"]["yield"]["value"],
            by_units(f"10.1 floz / circlearea({width} / 2)", "m"), 1e-9)

for start, end in ((9, 8), (9.5, 9), (11, 10.25)):
    ours = bench("gas-hold", "--start", f"{start} inWC", "--end", f"{end} inWC", "--piping", "0.5 L",
                 "--temperature", "20 °C", "--end-temperature", "20 °C")
    compare(f"{start} to {end} inWC", ours["value"], by_units(f"{start - end} inH2O", "Pa"), 1e-6)
    flow = by_units(f"0.5 L * {start - end} inH2O / (1 atm + {end} inH2O) / 3 min", "m^3/s")
    compare(f"flow of {start} to {end} inWC", ours["figures"]["flow"]["value"], flow, 1e-6)

print(f"sourced units {checked}")
print(*faults, sep="\n")
print(f"{checked} compared, {len(faults)} faults")
sys.exit(bool(faults))
