# SPDX-License-Identifier: Apache-2.0
"""Checks the catalogue data: shape, texts in every language, limits, sets, cautions and words.

Run: python3 tests/arch/check_catalogue.py <repository root>
Prints one line a fault and exits 1 when there is any.
"""
import json
import re
import sys
from pathlib import Path

import catalogue_trade

ZONES = """roof walls-and-seals latches-and-doors lubrication underbody tires-and-wheels brakes hitch
 lights-and-electrics gas water alarms-and-exits inside weights motor-base fitted-extras""".split()
STANDS = """inside-front inside-rear inside nose kerb-front kerb-wheels kerb-rear rear road-rear road-wheels
 road-front roof underneath utilities scales tow-vehicle""".split()
KINDS = """full_round before_road at_stop on_arrival after_road parked laying_up bringing_out buying
 after_event handing_out taking_back""".split()
ROUTINE = "every_move first_of_day first_of_trip at_stop".split()
USES = ROUTINE + """wheel_fitted axle_work hookup load_change new_pairing tire_change before_frost bringing_out
 new_owner hail flood kerb_strike blow_out six_months_standing gas_opened mouse rain_trip on_arrival
 handing_out""".split()
DRIVERS = "sun heat frost wetness salt vibration distance age turns uses".split()
RIGS = "travel_trailer fifth_wheel folding_trailer teardrop truck_camper motorhome van".split()
PRACTICES = "north_america europe australia_new_zealand other".split()
FITTINGS = """slide_out awning lp_gas electric_brakes overrun_brakes weight_bars friction_coupling ball_coupling
 fifth_wheel_coupling jockey_wheel leaf_springs grease_fittings multi_axle adjustable_bearings sealed_bearings
 motor_mover seven_way_plug thirteen_pin_plug safety_chains breakaway_cable membrane_roof moulded_or_metal_roof
 rooflights solar roof_ac mains house_battery fresh_water waste_tanks ramp_door tie_down_rings flat_tow_bar
 camper_tie_downs rear_rack lift_roof entry_step baggage_doors belly_pan engine wide_body absorption_fridge
 screen_door shock_absorbers torsion_axle spare_wheel bolted_chassis generator leveling_system laminated_walls
 hydraulic_brakes water_heater toilet cassette_toilet loose_tanks heating_on_move fuel_heater lithium_battery
 tank_sensors hot_vents""".split()
DEFECTS = """crack gap lifted loose missing leaking worn corroded bent seized dead expired play delaminated
 soft other""".split()
TOOLS = """torch mirror tread-gauge pressure-gauge torque-wrench infrared-thermometer multimeter plug-tester
 voltage-pen moisture-meter ladder pole-camera grease-gun dial-gauge scales bubble-solution gloves stands
 chocks wire-brush tape-measure angle-gauge string-line straightedge pull-scale caliper kingpin-gauge
 co-meter refractometer water-gauge test-strips measuring-bucket screwdriver thermometer""".split()
QUANTITIES = """pressure length temperature temperature_difference mass voltage current torque duration count percent date
 force angle resistance""".split()
PLACES = """wheel axle roof kerb_side road_side front rear underside from_front ahead_of_front on_centre_line
 to_kerb_side to_road_side up""".split()
REASONS = """risky_to_reach wet_or_icy too_dark blocked_by_goods no_tool needs_licensed_person no_time
 other""".split()
# A plain North American travel trailer with two axles: its every-move set has 14 lines.
PLAIN_TANDEM = set("""ball_coupling weight_bars electric_brakes safety_chains seven_way_plug lp_gas leaf_springs
 multi_axle awning entry_step baggage_doors rooflights membrane_roof belly_pan fresh_water waste_tanks
 house_battery mains wide_body adjustable_bearings""".split())
# A word that promises more than a person looked at.
PROMISES = {
    "en": re.compile(r"\b(safe|safely|ok|okay|good|cleared|fit|ready|roadworthy)\b", re.I),
    "de": re.compile(r"\b(sicher|gefahrlos|in Ordnung|tauglich|verkehrssicher|freigegeben|einwandfrei|unbedenklich)\b", re.I),
    "fr": re.compile(r"\b(sûr(e|s|es)?|en bon état|apte|conforme|approuvé(e|s|es)?|prêt(e|s|es)? à rouler|sans danger)\b", re.I),
    "es": re.compile(r"\b(segur[oa]s?|apt[oa]s?|aprobad[oa]s?|list[oa]s? para|en buen estado|visto bueno)\b", re.I),
}
HOLDS = [str(number) for number in range(1, 16)] + ["sleep", "plug", "light"]
# Sources that the computation of concern cites.
OF_CONCERN = ("CP", "882E", "POD")
LONGEST = {"title": 34, "look": 170, "pass": 150}
FULL_SOURCE = 20  # characters; a shorter name of a publication cannot be looked up

faults = []


def expect(held, where, what):
    """Notes one fault unless `held`."""
    if not held:
        faults.append(f"{where}: {what}")


def only(values, allowed, where, what):
    """Every value must be one of the allowed ones, each once."""
    for value in values:
        expect(value in allowed, where, f"unknown {what} '{value}'")
    expect(len(values) == len(set(values)), where, f"a {what} is listed twice")


def load(root):
    """Reads all files; a file that does not parse is one fault and ends the check."""
    data = root / "core" / "catalogue" / "data"
    read = lambda path: json.loads(path.read_text(encoding="utf-8"), object_pairs_hook=once)
    zones = {path.stem: read(path) for path in sorted((data / "points").glob("*.json"))}
    texts = {language: texts_of(data / "texts", language, read)
             for language in read(data / "languages.json")}
    return zones, texts, read(data / "sets.json"), read(data / "sources.json"), read(data / "holds.json")["rules"]


def once(pairs):
    """An object whose keys each stand once; a plain parser keeps the last and says nothing."""
    for key in sorted({key for key, _ in pairs if [k for k, _ in pairs].count(key) > 1}):
        faults.append(f"key '{key}' stands twice in one object")
    return dict(pairs)


def texts_of(folder, language, read):
    """The words of one language: the common file and one file a zone."""
    words = read(folder / f"{language}.json")
    words["points"] = {}
    for path in sorted((folder / language).glob("*.json")):
        points = read(path)["points"]
        expect(not set(points) & set(words["points"]), path.stem, "a point has its words twice")
        words["points"].update(points)
    return words


def check_reading(reading, where, sources):
    where = f"{where}, reading {reading['slug']}"
    only([reading["quantity"]], QUANTITIES, where, "quantity")
    only([reading["set_by"]], ["maker", "published", "common_practice"], where, "set_by")
    limits = [limit for limit in (reading["low"], reading["high"]) if limit is not None]
    # A count has no unit: its title says what is counted, and over which time.
    counts = reading["quantity"] in ("count", "date")
    expect(counts or reading["unit"], where, f"{reading['quantity']} without a unit")
    expect(not counts or not reading["unit"], where, f"{reading['quantity']} with a unit")
    expect(reading["quantity"] != "date" or not limits, where, "a date with a limit")
    expect(len(limits) < 2 or limits[0] < limits[1], where, "low is not under high")
    expect(reading["source"] in sources or not reading["source"], where, f"unknown source '{reading['source']}'")
    expect(not limits or reading["source"], where, "a limit without a source")
    published = reading["set_by"] == "published"
    expect(not published or reading["source"] not in ("", "CP"), where, "published without a published source")


def read_in_full(key, sources):
    """A published source that can be found by its name and was read, if only as others restate it."""
    full = sources.get(key, {}).get("full", "")
    return key != "CP" and len(full) >= FULL_SOURCE and "not read" not in full


def check_enums(point, where, sources):
    only([point["stand"]], STANDS, where, "stand")
    only(point["consequence"], "WTFHPCK", where, "consequence")
    only(point["drivers"], DRIVERS, where, "driver")
    only(point["defects"], DEFECTS, where, "defect")
    expect(point["defects"][-1:] == ["other"], where, "'other' is not the last defect")
    only(point["tools"], TOOLS, where, "tool")
    only(point["cautions"], "abcdefghijklmnopq", where, "caution")
    only(point["interval"]["uses"], USES, where, "use")
    for name, allowed in (("kinds", RIGS), ("practices", PRACTICES), ("needs", FITTINGS), ("without", FITTINGS)):
        only(point["applies"][name], allowed, where, name)
    only([point["repeat"]], ["none", "wheel", "lamp", "door", "vent", "window", "hatch", "lock"], where, "repeat")
    only([point["source"]["tag"]], ["P", "FM", "CP", "calc"], where, "source tag")
    only(point["source"]["keys"], sources, where, "source key")
    expect(point["source"]["keys"], where, "no source key")
    expect(point["source"]["tag"] != "P" or any(read_in_full(key, sources) for key in point["source"]["keys"]), where,
           "tagged published, and no source of it was read")
    expect(point["photos"] in (0, 1, 2) and point["minutes"] > 0, where, "photos or minutes out of range")


def demanded_cautions(point, zone):
    """The caution codes that stand, tools, fittings and readings of a point ask for."""
    tools, needs = set(point["tools"]), set(point["applies"]["needs"])
    torqued = any(reading["quantity"] == "torque" for reading in point["readings"])
    return {code for code, wanted in {
        "a": point["stand"] == "roof" or "ladder" in tools,
        "b": point["stand"] == "underneath" or "stands" in tools,
        "c": zone == "gas" or "lp_gas" in needs,
        "d": torqued or "torque-wrench" in tools,
        "e": "mains" in needs or "voltage-pen" in tools,
        "f": needs & {"house_battery", "lithium_battery"},
        "g": needs & {"awning", "weight_bars"},
        "h": "slide_out" in needs,
        "i": needs & {"waste_tanks", "toilet", "cassette_toilet"},
        "l": point["stand"].startswith("road-"),
        "n": "generator" in needs or "co-meter" in tools,
    }.items() if wanted}


def check_rules(point, zone, where):
    """Cautions a place, a tool or a fitting demands, and what a hold forbids."""
    for code in sorted(demanded_cautions(point, zone) - set(point["cautions"])):
        expect(False, where, f"caution '{code}' is missing")
    expect(point["hold"] in (None, *range(1, 16)), where, "no such hold")
    expect(point["hold"] is None or point["forbids"] == "move", where, "a numbered hold forbids moving")
    expect(point["forbids"] in (None, "move", "sleep", "plug", "light"), where, "unknown forbids")
    expect(point["forbids"] != "move" or point["hold"], where, "forbids moving without a hold number")
    interval = point["interval"]
    expect(interval["months"] or interval["miles"] or interval["uses"], where, "nothing makes it due")


def figures_of(rule):
    """Every limit and figure of a hold rule."""
    for reading in rule["readings"]:
        yield from (reading[side] for side in ("below", "above", "gross_over") if reading.get(side))
    for check in rule["checks"]:
        yield from check.get("figures", [])


def check_hold_rule(rule, points, sets, sources):
    """Each trigger names what its point has; a figure has its unit and says who sets it."""
    where = f"hold rule {rule['key']}"
    only(rule["sources"], sources, where, "source key")
    expect(rule["sources"], where, "no source")
    expect(rule["forbids"] == ("move" if rule["key"].isdigit() else rule["key"]), where, "forbids something else")
    expect(rule["defects"] or rule["readings"] or rule["checks"], where, "nothing fires it")
    watched = [(t["point"], t.get("defects", {})) for t in rule["defects"] + rule["readings"]]
    watched += [(slug, {}) for check in rule["checks"] for slug in check.get("points", [])]
    for slug, defects in watched:
        listed = slug in points and (points[slug]["hold"] or points[slug]["forbids"])
        expect(listed, where, f"'{slug}' is not a point of the hold list")
        only(defects, points.get(slug, {}).get("defects", []), f"{where}, {slug}", "defect")
        expect(all(grade in (1, 2, 3, 4, 5) for grade in defects.values()), where, f"grade of {slug}")
    for reading in rule["readings"]:
        known = [r["slug"] for r in points.get(reading["point"], {}).get("readings", [])]
        only([reading["reading"]], known, f"{where}, {reading['point']}", "reading")
        only(reading.get("kinds", []), RIGS, where, "kind")
    for check in rule["checks"]:
        only(check.get("events", []), sets["events"], where, "event")
        only(check.get("except", []), points, where, "point")
    for figure in figures_of(rule):
        only([figure["quantity"]], QUANTITIES, where, "quantity")
        only([figure["set_by"]], ["maker", "published", "common_practice"], where, "set_by")
        only([figure["source"]], sources, where, "source")
        expect(bool(figure["unit"]) != (figure["quantity"] == "count"), where, f"unit of {figure['value']}")
        published = figure["set_by"] == "published"
        expect(not published or figure["source"] != "CP", where, "published without a published source")
    return {slug for slug, _ in watched}


def check_holds(rules, points, sets, sources):
    """Every number of the list is there, and every point that carries one is watched by its own rule."""
    only([rule["key"] for rule in rules], HOLDS, "hold rules", "key")
    expect(len(rules) == len(HOLDS), "hold rules", "one is missing")
    watched = {rule["key"]: check_hold_rule(rule, points, sets, sources) for rule in rules}
    for slug, point in points.items():
        key = str(point["hold"] or point["forbids"] or "")
        expect(not key or slug in watched.get(key, ()), f"point {slug}", f"no trigger of hold rule {key}")


def check_likes(likes, points):
    """Points that learn from each other share what ages them most and what their failing costs."""
    members = [slug for slugs in likes.values() for slug in slugs]
    only(members, points, "likes", "point")
    expect(len(members) == len(set(members)), "likes", "a point is in two classes")
    for name, slugs in likes.items():
        kinds = {(p["drivers"][0], p["consequence"][0], p["hold"]) for p in map(points.get, slugs) if p}
        expect(len(slugs) > 1, f"likes/{name}", "one point alone is like nothing")
        expect(len(kinds) == 1, f"likes/{name}", f"first driver, first consequence or hold differ: {kinds}")


def check_points(zones, sources, rules):
    """Returns the points by slug."""
    points, codes = {}, set()
    expect(sorted(zones) == sorted(ZONES), "points", f"zones differ: {sorted(set(zones) ^ set(ZONES))}")
    for zone, file in zones.items():
        expect(file["zone"] == zone and file["points"], zone, "wrong zone name or no point")
        for point in file["points"]:
            where = f"{zone}/{point['slug']}"
            expect(point["slug"] not in points and point["code"] not in codes, where, "slug or code used twice")
            expect(re.fullmatch(r"[a-z0-9]+(-[a-z0-9]+)*", point["slug"]), where, "slug is not lower-case-with-dashes")
            points[point["slug"]] = point
            codes.add(point["code"])
            check_enums(point, where, sources)
            check_rules(point, zone, where)
            for reading in point["readings"]:
                check_reading(reading, where, sources)
    expect(len(points) == 223, "points", f"{len(points)}, not 223")
    used = {key for p in points.values() for key in p["source"]["keys"] + [r["source"] for r in p["readings"]]}
    used |= {key for rule in rules for key in rule["sources"] + [f["source"] for f in figures_of(rule)]}
    for key, source in sources.items():
        expect(key in used or key in OF_CONCERN, f"source {key}", "no point or rule uses it")
        expect(source["title"].strip() and source["full"].strip(), f"source {key}", "empty")
    return points


def leaves(node, path=""):
    """Every text of a tree with its path."""
    if isinstance(node, dict):
        for key, child in node.items():
            yield from leaves(child, f"{path}/{key}")
    else:
        yield path, node


def wanted_texts(points, sets):
    lines = {line["line"] for all_lines in sets["sets"].values() for line in all_lines if len(line["points"]) > 1}
    return {"points": points, "zones": ZONES, "stands": STANDS, "kinds": KINDS, "lines": lines, "defects": DEFECTS,
            "drivers": DRIVERS, "tools": TOOLS, "reasons": REASONS, "cautions": "abcdefghijklmnopq",
            "readings": {r["slug"] for p in points.values() for r in p["readings"]},
            "events": set(sets["events"]) | set(USES), "emergency": ["title", "gas", "co", "fire", "tingle"],
            "holds": HOLDS + ["grade_5", "could_not_look"],
            "forbids": ["move", "sleep", "plug", "light"], "fittings": FITTINGS,
            "tanks": ["fresh_water", "grey_water", "black_water", "gas", "battery"],
            "places": PLACES, "statuses": ["open", "mended", "confirmed", "gone"],
            "own": ["look", "pass", *(f"grade_{grade}" for grade in range(1, 6))]}


def check_texts(language, texts, points, sets):
    for group, wanted in wanted_texts(points, sets).items():
        differ = set(wanted) ^ set(texts.get(group, {}))
        expect(not differ, f"{language}/{group}", f"keys differ: {sorted(differ)}")
    for path, text in leaves(texts):
        expect(isinstance(text, str) and text.strip(), language + path, "empty")
        promise = PROMISES[language].search(str(text))
        expect(not promise, language + path, f"says '{promise and promise.group()}'")
    titles = [text["title"].casefold() for text in texts["points"].values()]
    for title in sorted({title for title in titles if titles.count(title) > 1}):
        faults.append(f"{language}/points: two points have the title '{title}'")
    for slug in set(points) & set(texts["points"]):
        check_point_text(f"{language}/points/{slug}", texts["points"][slug], points[slug])


def check_point_text(where, text, point):
    expect(sorted(text["grades"]) == list("12345"), where, "grades are not 1 to 5")
    for part, longest in LONGEST.items():
        expect(len(text[part]) <= longest, where, f"{part} has {len(text[part])} of at most {longest} characters")
    said = (text["look"] + " " + text["pass"]).replace(",", ".")
    numbers = re.findall(r"\d+(?:\.\d+)?", said)
    for reading in point["readings"]:
        for limit in (reading["low"], reading["high"]):
            plain = limit in (None, 0) or (limit == 100 and reading["unit"] == "%")
            told = plain or any(tells(number, limit) for number in numbers)
            expect(told, where, f"the limit {limit} of {reading['slug']} is not told")


def tells(number, limit):
    """Whether a written number is the limit, or the limit rounded to the (at least one) decimals it is written with."""
    half = 0.5 * 10.0 ** -len(number.partition(".")[2]) if "." in number else 0
    return abs(float(number) - limit) <= half + 1e-9


def check_sets(sets, points):
    only([kind["slug"] for kind in sets["kinds"]], KINDS, "kinds", "walk kind")
    expect(len(sets["kinds"]) == len(KINDS), "kinds", "a walk kind is missing")
    for kind in sets["kinds"]:
        expect(kind.get("all") is True or kind.get("sets"), kind["slug"], "neither sets nor all")
        only(kind.get("sets", []), sets["sets"], kind["slug"], "set")
        only([kind["route"]], sets["routes"], kind["slug"], "route")
        twice = [kind["twice"]] if "twice" in kind else []
        only(kind.get("while_open", []) + twice, points, kind["slug"], "point")
    for route, stands in sets["routes"].items():
        expect(sorted(stands) == sorted(STANDS), f"route {route}", "does not pass every stand once")
    for name, lines in sets["sets"].items():
        slugs = [slug for line in lines for slug in line["points"]]
        only(slugs, points, f"set {name}", "point")
        only([line["line"] for line in lines], {line["line"] for line in lines}, f"set {name}", "line")
        for line in lines:
            single = len(line["points"]) == 1
            expect(not single or line["line"] == line["points"][0], f"set {name}", f"line {line['line']} of one point")
    for event, slugs in sets["events"].items():
        only(slugs, points, f"event {event}", "point")
        expect(slugs, f"event {event}", "makes nothing due")


def check_due_agrees(sets, points):
    """A point's uses and the sets and events that list it say the same."""
    for use in USES:
        if use in ROUTINE:
            listed = {slug for line in sets["sets"][use] for slug in line["points"]}
        else:
            listed = set(sets["events"].get(use, []))
        claimed = set(points) if use == "new_owner" else {s for s, p in points.items() if use in p["interval"]["uses"]}
        expect(listed == claimed, f"use {use}", f"points and sets differ: {sorted(listed ^ claimed)}")


def applies(point, kind, practice, fittings):
    wants = point["applies"]
    return ((not wants["kinds"] or kind in wants["kinds"]) and (not wants["practices"] or practice in wants["practices"])
            and set(wants["needs"]) <= fittings and not set(wants["without"]) & fittings)


def check_every_move(sets, points):
    lines = sets["sets"]["every_move"]
    expect(len(lines) <= 16, "every_move", f"{len(lines)} lines of at most 16")
    expect(lines[-1]["points"] == ["pull-away-lap"], "every_move", "the last lap is not last")
    plain = [[points[slug] for slug in line["points"] if slug in points
              and applies(points[slug], "travel_trailer", "north_america", PLAIN_TANDEM)] for line in lines]
    shown = [line for line in plain if line]
    minutes = sum(point["minutes"] for line in shown for point in line)
    expect(len(shown) == 14, "every_move", f"{len(shown)} lines on a plain tandem, not 14")
    expect(8 <= minutes <= 10, "every_move", f"{minutes:.1f} minutes on a plain tandem, not 8 to 10")


SUPPLY_RULES = {"bead": ("bead", "whole", "whole_m", "waste"), "length": ("whole", "whole_m", "waste"),
                "count": ("each", "waste"), "hub": ("each", "spare", "waste"), "fixed": ("each",)}
PACKS = "cartridge roll bottle box can piece tub tube pair set".split()


def check_supplies(supplies, points, sources, texts):
    """Items and needs: known units, points, defects; a basis each; words in every language."""
    items = {item["slug"]: item for item in supplies["items"]}
    expect(len(items) == len(supplies["items"]), "supplies", "an item twice")
    names = [name for item in supplies["items"] for name in item["names"]]
    only(names, set(names), "supplies", "name")
    for slug, item in items.items():
        where = f"supplies/{slug}"
        only([item["quantity"]], ["volume", "length", "mass", "count"], where, "quantity")
        expect((item["quantity"] == "count") != bool(item["unit"]), where, "unit and quantity do not agree")
        expect(item["pack"] > 0 and 0 < item["fill"] <= 1, where, "pack or fill out of range")
        only([item["pack_word"]], PACKS, where, "pack word")
        only(item["cautions"], "abcdefghijklmnopq", where, "caution")
        only([item["basis"]["tag"]], ["P", "FM", "CP", "calc"], where, "source tag")
        only(item["basis"]["keys"], sources, where, "source key")
        expect(item["basis"]["keys"] and item["names"], where, "no source key or no name")
        expect(all(name == name.lower() for name in item["names"]), where, "a name is not lower case")
    for number, need in enumerate(supplies["needs"]):
        where = f"supplies/need {number} {need['item']}"
        only([need["item"]], items, where, "item")
        only(need["points"], points, where, "point")
        expect(need["rule"] in SUPPLY_RULES, where, "unknown rule")
        expect(all(key in need for key in SUPPLY_RULES.get(need["rule"], ())), where, "a member of its rule is missing")
        expect(bool(need.get("due")) != bool(need.get("defects")), where, "neither or both of due and defects")
        for slug in need["points"]:
            offered = points[slug]["defects"] if slug in points else []
            expect(need.get("due") or set(need["defects"]) & set(offered), where, f"{slug} has none of the defects")
    expect({need["item"] for need in supplies["needs"]} == set(items), "supplies", "an item that nothing needs")
    for language, words in texts.items():
        for group, wanted in (("supplies", items), ("packs", PACKS)):
            differ = set(wanted) ^ set(words.get(group, {}))
            expect(not differ, f"{language}/{group}", f"keys differ: {sorted(differ)}")


def main():
    zones, texts, sets, sources, rules = load(Path(sys.argv[1]))
    points = check_points(zones, sources, rules)
    check_holds(rules, points, sets, sources)
    check_likes(sets["likes"], points)
    check_sets(sets, points)
    check_due_agrees(sets, points)
    catalogue_trade.check(Path(sys.argv[1]), sets, points, FITTINGS, expect)
    check_every_move(sets, points)
    supplies = Path(sys.argv[1]) / "core" / "catalogue" / "data" / "supplies.json"
    check_supplies(json.loads(supplies.read_text(encoding="utf-8")), points, sources, texts)
    paths = {language: {path for path, _ in leaves(texts[language])} for language in texts}
    for language in texts:
        differ = paths["en"] ^ paths[language]
        expect(not differ, "texts", f"en and {language} differ: {sorted(differ)}")
        expect((Path(sys.argv[1]) / "translations" / f"snugwalk_{language}.ts").exists(), language, "no snugwalk_*.ts")
        check_texts(language, texts[language], points, sets)
    for path, text in leaves(sources):
        expect(not PROMISES["en"].search(text), f"sources{path}", "promises too much")
    for fault in faults:
        print(fault)
    print(f"{len(points)} looked at, {len(faults)} faults")
    return 1 if faults else 0


if __name__ == "__main__":
    sys.exit(main())
