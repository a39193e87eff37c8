# SPDX-License-Identifier: Apache-2.0
"""Language and units changed while the app runs. What each page must then say is read from the files of translations."""
import json
import os
import re
import sys
import tempfile
import xml.etree.ElementTree as ElementTree

from app_life import live
from program import Failed, Program, check

NOW = "2026-11-20T08:10:00+13:00"
# word for the journey: (page, what it says in English)
WORDS = {"title": ("SettingsPage", "Settings"), "units": ("SettingsPage", "Units shown; typing takes either"),
         "size": ("SettingsPage", "Size of words"), "rig": ("PlaceBar", "Rig"),
         "due": ("PlaceBar", "Due"), "settings": ("RigHead", "settings"), "back": ("PageFoot", "back"),
         "language": ("SettingsPage", "Language"), "answer": ("Choice", "%1: %2")}
ORDER = ["es", "fr", "de", "en"]


def translations(source, language):
    tree = ElementTree.parse(os.path.join(source, "translations", f"snugwalk_{language}.ts"))
    found = {}
    for context in tree.iter("context"):
        for message in context.iter("message"):
            key = (context.findtext("name"), message.findtext("source"))
            found.setdefault(key, message.findtext("translation") or key[1])
    return found


def words_of(source, language):
    known = translations(source, language) if language != "en" else {}
    return {name: known.get((page, text), text) for name, (page, text) in WORDS.items()}


def point_of(source, language, point):
    folder = os.path.join(source, "core", "catalogue", "data", "texts", language)
    for name in sorted(os.listdir(folder)):
        with open(os.path.join(folder, name), encoding="utf-8") as file:
            points = json.load(file)
        if point in points.get("points", points):
            return points.get("points", points)[point]["title"]
    raise Failed(f"{point} has no title in {language}")


def main():
    app, program, source, shots = sys.argv[1:5]
    with tempfile.TemporaryDirectory(prefix="snugwalk-settings-") as folder:
        try:
            line = Program(program, folder)
            line.run("demo", "--from", os.path.join(source, "demo-rig"))
            with open(os.path.join(source, "core", "catalogue", "data", "languages.json"), encoding="utf-8") as file:
                names = json.load(file)
            first = line.json("--at", NOW, "due")["due"][0]["point"]
            given = {"languages": ",".join(ORDER)}
            before = words_of(source, "en")
            for language in ORDER:
                words = words_of(source, language)
                given[language + "-chooses"] = before["answer"].replace("%1", before["language"]).replace(
                    "%2", names[language])
                for name, word in words.items():
                    given[f"{language}-{name}"] = word
                given[language + "-point"] = point_of(source, language, first)
                before = words
            live(app, "languages", line.book, shots, NOW, **given)
            said = live(app, "units", line.book, shots, NOW)
            metric, customary = re.findall(r"^about (.*)$", said, re.M)
            length = line.json("rig", "show")["measures"]["length"]["value"]
            feet = length / 0.3048  # NIST SP 811 appendix B.8
            shown = float(re.search(r"([\d.]+)\sft", customary).group(1))
            check(abs(shown - feet) <= 0.5 and re.search(r"\d\sm\b", metric), f"{metric}; {customary}; {feet:.2f} ft")
        except Failed as fault:
            print("failed:", fault)
            return 1
    print(f"four languages; {metric} is {customary}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
