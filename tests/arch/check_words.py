# SPDX-License-Identifier: Apache-2.0
"""What people read never says that a rig is safe: texts of the app, the catalogue, the command line
and the report, in each language we have."""
import re

import repo

NEVER = re.compile(r"(?i:\b(?:safe|safely|okay|road-?worthy|health[ -]score|seguro para circular)\b)"
                   r"|\bO[Kk]\b|[✓✔✅✗✘❌👍👎🚩]")
# Words that need a second look, not a ban: "fit a new gasket" is a plain instruction.
REVIEW = re.compile(r"\b(good|cleared|ready|all clear|passed its)\b", re.I)
STRINGS = re.compile(r'"((?:[^"\\\n]|\\.)*)"')
CODE = ("platform/cli/", "core/report/", "core/round/", "core/due/", "core/concern/", "core/walk/",
        "core/compare/", "qml/models/", "platform/app/")


def texts(where, path):
    """(line, text) of everything in a file that a person may read."""
    lines = repo.text(path).splitlines()
    if where.startswith("core/catalogue/data/texts/") or path.suffix == ".ts":
        return list(enumerate(lines, 1))
    if path.suffix == ".qml" or (path.suffix in (".cpp", ".hpp") and where.startswith(CODE)):
        return [(number, found) for number, line in enumerate(lines, 1)
                if not line.lstrip().startswith(("//", "#include", "import "))
                for found in STRINGS.findall(line)]
    return []


def main():
    base = repo.root()
    faults, checked = [], 0
    for path in repo.files(base):
        where = repo.name(base, path)
        if where.startswith("tests/"):
            continue
        for number, line in texts(where, path):
            checked += 1
            faults += [f'{where}:{number}: says "{hit.group(0)}"' for hit in NEVER.finditer(line)]
            for hit in REVIEW.finditer(line):
                print(f'note: {where}:{number}: says "{hit.group(0)}"')
    repo.report(faults, checked)


main()
