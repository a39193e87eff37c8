# SPDX-License-Identifier: Apache-2.0
"""Short ways to write a mark of a walk."""
from .clock import iso
from .places import P

TOM, MIA, JUN = "T. Harrowfell", "M. Ostrade", "J. Quillmere"
WHEELS = ("wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R")


def reading(slug, value, place=None):
    out = {"reading": slug}
    if place:
        out["place"] = place
    out["value"] = value
    return out


def measured(point, *readings):
    return {"point": point, "mark": "pass", "look": "measured", "readings": list(readings)}


def four(point, slug, unit, values):
    """One reading a wheel, in walking order."""
    return measured(point, *[reading(slug, "%g %s" % (v, unit), w) for v, w in zip(values, WHEELS)])


def cold(air, values):
    row = four("tire-pressure", "cold-pressure", "kPa", values)
    row["readings"].append(reading("air-temperature", "%g °C" % air))
    return row


def torque(*values):
    return four("wheel-nut-torque", "nut-torque", "N·m", values)


def unseen(point, reason, note):
    return {"point": point, "mark": "could_not_look", "reason": reason, "note": note}


def seen(point):
    return {"point": point, "mark": "pass", "look": "looked"}


def spot(face, x, y, z):
    return {"face": face, "x": "%g m" % x, "y": "%g m" % y, "z": "%g m" % z}


def found(point, fid, defect, grade, place, extent, note, photos=(), readings=()):
    finding = {"id": fid, "defect": defect, "grade": grade, "place": place}
    if extent:
        finding["extent"] = extent
    finding.update(note=note, photos=list(photos))
    out = {"point": point, "mark": "attention", "finding": finding}
    if readings:
        out["readings"] = list(readings)
    return out


def again(point, fid, grade, extent, note, photos=(), readings=()):
    out = {"point": point, "mark": "attention", "same": fid, "grade": grade}
    if extent:
        out["extent"] = extent
    out.update(note=note, photos=list(photos))
    if readings:
        out["readings"] = list(readings)
    return out


def length(value):
    return {"kind": "length", "value": value}


def count(value):
    return {"kind": "count", "value": value}


def walk(number, kind, by, start, finish, place, marks, look="looked", sets=()):
    """`sets` are walked on top of the kind's own, such as those of a day's first move."""
    out = {"do": "walk", "id": "w%d" % number, "kind": kind, "by": by, "start": iso(start), "finish": iso(finish),
           "lat": P[place][0], "lon": P[place][1], "default": {"mark": "pass", "look": look}, "marks": marks}
    if sets:
        out["sets"] = list(sets)
    return out


def mend(number, at, by, closes, action, what, parts, cost, minutes):
    return {"do": "mend", "id": "m%d" % number, "at": iso(at), "by": by, "closes": closes, "action": action,
            "what": what, "parts": parts, "cost": "NZD %.2f" % cost, "minutes": minutes}


def drawn(mark, photo, *shapes):
    """Lines on a photo of the mark's finding: kind and spots as shares of the upright picture."""
    finding = mark["finding"] if "finding" in mark else mark
    finding.setdefault("drawings", {})[photo] = [{"kind": kind, "at": at} for kind, at in shapes]
    return mark


def stock(number, at, by, **on_hand):
    """What is on hand of supplies, counted at one moment: lap_sealant="3 cartridges"."""
    amounts = {}
    for slug, amount in on_hand.items():
        quantity, _, unit = amount.partition(" ")
        amounts[slug.replace("_", "-")] = {"quantity": float(quantity), "unit": unit}
    return {"do": "stock", "id": "k%d" % number, "at": iso(at), "by": by, "on_hand": amounts}
