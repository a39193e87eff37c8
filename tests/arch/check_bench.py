# SPDX-License-Identifier: Apache-2.0
"""Words of the bench: every language has the same slugs, and every warning and caution that the core names."""
import json
import re

import repo

TEXTS = "core/catalogue/data/texts/bench"
WARNINGS = re.compile(r'warnings\.(?:emplace_back|push_back)\("([a-z0-9_]+)"\)')
CAUTIONS = re.compile(r'\.cautions = "([^"]*)"')


def shape(value, path=""):
    """Every place in a tree of texts, with the %1, %2 … of the text there."""
    if not isinstance(value, dict):
        return {path: tuple(sorted(set(re.findall(r"%\d", value))))}
    return {key: marks for name, part in value.items() for key, marks in shape(part, f"{path}/{name}").items()}


def main():
    base = repo.root()
    faults, checked = [], 0
    files = {folder.name: {path.name: json.loads(repo.text(path)) for path in sorted(folder.glob("*.json"))}
             for folder in sorted((base / TEXTS).iterdir())}
    for language in sorted(set(repo.languages(base)) | set(files)):
        words = files.get(language, {})
        for name in sorted(set(files["en"]) | set(words)):
            one, other = shape(files["en"].get(name, {})), shape(words.get(name, {}))
            checked += len(one)
            faults += [f"{TEXTS}: {name}{place} differs between en and {language}: it is missing or has other %"
                       for place in sorted(set(one) | set(other)) if one.get(place) != other.get(place)]
    known = {group: {slug for file in files["en"].values() for slug in file[group]} for group in ("warnings", "cautions")}
    for path in sorted((base / "core" / "bench").rglob("*.cpp")):
        body, where = repo.text(path), repo.name(base, path)
        named = [("warnings", slug) for slug in WARNINGS.findall(body)]
        named += [("cautions", slug) for slugs in CAUTIONS.findall(body) for slug in slugs.split()]
        checked += len(named)
        faults += [f"{where}: no words for '{slug}' among the {group}" for group, slug in named if slug not in known[group]]
    # Refusals are found by the core's own sentence; one that the core no longer says is left over.
    sentences = re.sub(r'"\s*"', "", "".join(repo.text(path) for path in sorted((base / "core" / "bench").rglob("*.cpp"))))
    for name, file in files["en"].items():
        checked += len(file.get("refusals", {}))
        faults += [f"{TEXTS}: {name}: the core refuses nothing with '{what}'" for what in file.get("refusals", {})
                   if f'"{what}"' not in sentences]
    repo.report(faults, checked)


main()
