# SPDX-License-Identifier: Apache-2.0
"""Holds the catalogue data against the trade's own lists and words; a part of check_catalogue.py."""
import re

# The trade's own lists, by code: sets before and between moves, and what each happening makes due.
SETTLED = {
    "every_move": """IN-08 LP-13 LD-13 LD-01 LD-05 LD-07 LD-12 LD-14 LD-11 TW-05 TW-13 TW-18 UB-06 UB-18 HC-01 HC-04
     HC-14 HC-16 HC-07 HC-08 HC-21 HC-09 BR-08 HC-10 HC-22 EL-01 EL-02 EL-03 EL-04 EL-05 EL-23 LP-03 BR-14 OP-01 OP-02
     OP-04 OP-05 OP-07 OP-08 HC-18""",
    "first_of_day": "TW-01 BR-12 BR-01 MT-01 MT-03 MT-06",
    "first_of_trip": "SF-01 SF-02 SF-03 SF-06 SF-08 HC-02 WT-04 TW-06",
    "at_stop": "TW-14 TW-05 HC-01 HC-14 HC-08 HC-21 HC-10 LD-07 LD-11 LD-13",
    "wheel_fitted": "TW-12", "axle_work": "UB-07",
    "flood": "TW-16 TW-19 BR LP-07 LP-08 EL SW-12 UB-03",
    "kerb_strike": "TW-05 TW-11 UB-05 UB-06 UB-07 UB-10 UB-11 TW-03",
    "blow_out": "TW-05 TW-11 UB-13 SW-09 IN-04",
    "hail": "RF EL-17 LD-10 LD-11 EL-01 EL-02 EL-03 EL-04 EL-05 EL-06 EL-07 EL-08 EL-23",
    "impact": "RF SW-11 UB-04 HC-05 HC-06 LP-02 LP-03 LP-09 LD-12",
    "lightning": "EL-12 EL-13 EL-14 EL-15 EL-16 EL-17 EL-18 EL-19 EL-20 EL-21 EL-22 EL-23 SF-01 SF-02 SF-03",
    "frost_with_water": "WA-01 WA-03 WA-06 WA-11 WA-14", "overload": "TW-04 TW-05 TW-07 UB-05 UB-06 UB-10 HC-05 HC-06",
    "long_downhill": "BR-02 BR-03 TW-14 TW-15 HC",
    "six_months_standing": "TW-01 TW-04 TW-06 BR-01 BR-08 BR-09 LP-10 LP-11 EL-10 IN-07",
    "gas_opened": "LP-08 LP-14", "mouse": "EL-18 UB-02 IN-07", "new_pairing": "HC-02 HC-10 HC-12 HC-17 WT-03 BR-12",
    "ferry_or_tunnel": "LP-13"}


def check_settled(sets, points, expect):
    """No list of the trade's has lost a point; a bare "RF" is the whole zone."""
    codes = {point["code"]: slug for slug, point in points.items()}
    for name, words in SETTLED.items():
        listed = set(sets["events"].get(name, [])) | {s for line in sets["sets"].get(name, []) for s in line["points"]}
        for word in words.split():
            wanted = [slug for code, slug in codes.items() if code == word or code[:2] == word]
            expect(wanted, f"settled {name}", f"no point has the code {word}")
            for slug in set(wanted) - listed:
                expect(False, f"settled {name}", f"{word} {slug} is not in it")


def check_trade_words(root, points, expect):
    """Each row of the table says what its point says, and each loose word is explained."""
    folder = root / "core" / "catalogue"
    page = (folder / "TRADE_WORDS.md").read_text(encoding="utf-8")
    rows = [line.split("\t") for line in (folder / "data/trade_words.tsv").read_text(encoding="utf-8").splitlines()[1:]]
    slugs = [row[3] for row in rows if len(row) == 11]
    expect(sorted(slugs) == sorted(points), "trade words", f"points differ: {sorted(set(slugs) ^ set(points))}")
    for row in rows:
        expect(len(row) == 11, "trade words", f"{row[0]} has {len(row)} columns, not 11")
        point = points.get(row[3]) if len(row) == 11 else None
        if point is None:
            continue
        interval, wants = point["interval"], point["applies"]
        says = [point["code"], *row[1:4], str(interval["months"] or ""), str(interval["miles"] or ""),
                ",".join(interval["uses"]), *(",".join(wants[k]) for k in ("kinds", "practices", "needs", "without"))]
        expect(row == says, "trade words", f"{row[0]} says {row[4:]}, the point {says[4:]}")
        for word in row[1:3]:
            expect(f"`{word}`" in page, "trade words", f"TRADE_WORDS.md does not explain '{word}'")
        months, miles = re.search(r"\bM(\d+)\b", row[1]), re.search(r"\b(\d+)k\b", row[1])
        expect(not months or row[4] == months[1], "trade words", f"{row[0]}: {row[1]} is not {row[4]} months")
        expect(not miles or "–" in row[1] or row[5] == miles[1] + "000", "trade words", f"{row[0]}: {row[1]} is not {row[5]} mi")


def check_fittings(root, fittings, expect):
    """The core knows the fittings that the data use, and no other."""
    source = (root / "core" / "rig" / "rig.cpp").read_text(encoding="utf-8")
    known = set(re.findall(r'"([a-z0-9_]+)"', source[source.index("knownFittings()"):source.index("return slugs;")]))
    expect(known == set(fittings), "fittings", f"core and checker differ: {sorted(known ^ set(fittings))}")


def check(root, sets, points, fittings, expect):
    """`expect(held, where, what)` notes a fault unless `held`."""
    check_settled(sets, points, expect)
    check_trade_words(root, points, expect)
    check_fittings(root, fittings, expect)
