# SPDX-License-Identifier: Apache-2.0
"""EXIF by hand, little-endian TIFF: orientation, time with offset, position, altitude, caption."""
import struct

BYTE, ASCII, SHORT, LONG, RATIONAL, UNDEFINED = 1, 2, 3, 4, 5, 7
SIZE = {BYTE: 1, ASCII: 1, SHORT: 2, LONG: 4, RATIONAL: 8, UNDEFINED: 1}


def text(s):
    return ASCII, s.encode("ascii") + b"\0"


def rational(*pairs):
    return RATIONAL, b"".join(struct.pack("<II", a, b) for a, b in pairs)


def directory(tags, at):
    """One directory at offset `at`, its long values right behind it."""
    rows, tail = b"", b""
    after = at + 2 + 12 * len(tags) + 4
    for tag in sorted(tags):
        kind, data = tags[tag]
        rows += struct.pack("<HHI", tag, kind, len(data) // SIZE[kind])
        if len(data) <= 4:
            rows += data.ljust(4, b"\0")
        else:
            rows += struct.pack("<I", after + len(tail))
            tail += data + b"\0" * (len(data) % 2)
    return struct.pack("<H", len(tags)) + rows + struct.pack("<I", 0) + tail


def degrees(value):
    whole = round(abs(value) * 3600 * 1000)
    return rational((whole // 3600000, 1), (whole // 60000 % 60, 1), (whole % 60000, 1000))


def exif(when, offset, utc, place, orientation, words, size):
    """Bytes for the APP1 segment; `place` = latitude, longitude, metres above the sea."""
    lat, lon, ele = place
    stamp = when.strftime("%Y:%m:%d %H:%M:%S")
    gps = {0: (BYTE, bytes([2, 3, 0, 0])), 1: text("S" if lat < 0 else "N"), 2: degrees(lat),
           3: text("W" if lon < 0 else "E"), 4: degrees(lon), 5: (BYTE, b"\0"), 6: rational((round(ele * 10), 10)),
           7: rational((utc.hour, 1), (utc.minute, 1), (utc.second, 1)), 18: text("WGS-84"),
           29: text(utc.strftime("%Y:%m:%d"))}
    inner = {0x9000: (UNDEFINED, b"0232"), 0x9003: text(stamp), 0x9004: text(stamp), 0x9010: text(offset),
             0x9011: text(offset), 0xA001: (SHORT, struct.pack("<H", 1)),
             0xA002: (LONG, struct.pack("<I", size[0])), 0xA003: (LONG, struct.pack("<I", size[1]))}
    outer = {0x010E: text(words), 0x0112: (SHORT, struct.pack("<H", orientation)),
             0x0131: text("drawn for the demo"), 0x0132: text(stamp),
             0x8769: (LONG, struct.pack("<I", 0)), 0x8825: (LONG, struct.pack("<I", 0))}
    first = len(directory(outer, 8))
    outer[0x8769] = (LONG, struct.pack("<I", 8 + first))
    second = len(directory(inner, 8 + first))
    outer[0x8825] = (LONG, struct.pack("<I", 8 + first + second))
    return (b"Exif\0\0" + b"II*\0" + struct.pack("<I", 8) + directory(outer, 8)
            + directory(inner, 8 + first) + directory(gps, 8 + first + second))
