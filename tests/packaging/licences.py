# SPDX-License-Identifier: Apache-2.0
"""The licences on the about page against what Debian's own copyright files of those packages say.

Source: /usr/share/doc/PACKAGE/copyright of each installed package (Debian policy 12.5); Debian calls MIT `Expat`.

usage: licences.py ROOT"""
import glob
import re
import sys

# name on the page -> package, by a pattern since the number in its name follows the release
PACKAGES = {
    "Qt 6": "libqt6core6", "SQLite": "libsqlite3-0", "libsodium": "libsodium[0-9]*", "Zstandard": "libzstd1",
    "libzip": "libzip[0-9]*", "zlib": "zlib1g", "zxing-cpp": "libzxing[0-9]*",
    "GeographicLib": "libgeographiclib[0-9]*", "JSON for Modern C++": "nlohmann-json3-dev", "Expat": "libexpat1",
    "libexif": "libexif[0-9]*", "libsecret": "libsecret-1-0",
}
# words of the page -> what a copyright file says for it
WORDS = {
    "LGPL-3.0": r"^License: LGPL-3\b", "public domain": r"^License: public-domain", "ISC": r"^License: ISC",
    "BSD-3-Clause": r"^License: BSD-3-clause|The names of the authors may not be used to endorse or promote",
    "Zlib": r"^License: Zlib", "Apache-2.0": r"^License: Apache-2.0", "MIT": r"^License: (Expat|MIT)\b",
    "LGPL-2.1": r"^License: LGPL-2\.1\+",
}
OWN = {"OFL-1.1"}  # fonts that the project carries with their own licence file


def main():
    root = sys.argv[1]
    with open(f"{root}/qml/app/AboutPage.qml", encoding="utf-8") as page:
        named = re.findall(r'\{ name: "([^"]+)", licence: (?:qsTr\()?"([^"]+)"', page.read())
    faults = [f"{name}: on no page" for name in PACKAGES if name not in dict(named)]
    checked = 0
    for name, licence in named:
        if licence in OWN:
            continue
        files = glob.glob(f"/usr/share/doc/{PACKAGES.get(name, 'none')}/copyright")
        if not files or licence not in WORDS:
            faults.append(f"{name}, {licence}: nothing to compare with")
            continue
        with open(files[0], encoding="utf-8", errors="replace") as file:
            said = re.search(WORDS[licence], file.read(), re.M)
        checked += 1
        if not said:
            faults.append(f"{name}: {files[0]} does not say {licence}")
    for fault in faults:
        print("failed:", fault)
    print(f"{checked} licences compared")
    return 1 if faults or checked < len(PACKAGES) else 0


if __name__ == "__main__":
    sys.exit(main())
