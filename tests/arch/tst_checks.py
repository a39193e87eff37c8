# SPDX-License-Identifier: Apache-2.0
"""The checks find faults: each one is run over a small tree with one fault planted in it."""
import pathlib
import subprocess
import sys
import tempfile
import unittest

HERE = pathlib.Path(__file__).parent
SPDX = "SPDX-License-Identifier: Apache-2.0\n"
CPP = "// " + SPDX
CMAKE = "# " + SPDX


def run(check, files):
    """Exit code and output of a check over a tree of these files."""
    with tempfile.TemporaryDirectory() as folder:
        for name, body in files.items():
            path = pathlib.Path(folder, name)
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_text(body, encoding="utf-8")
        done = subprocess.run([sys.executable, "-B", HERE / f"check_{check}.py", folder],
                              capture_output=True, text=True, check=False)
        return done.returncode, done.stdout + done.stderr


class Checks(unittest.TestCase):
    def refuses(self, check, files, words):
        code, output = run(check, files)
        self.assertEqual(code, 1, output)
        self.assertIn(words, output)

    def accepts(self, check, files):
        code, output = run(check, files)
        self.assertEqual(code, 0, output)

    def test_includes(self):
        self.accepts("includes", {"core/rig/a.cpp": CPP + '#include "base/id.hpp"\n#include <vector>\n'})
        for line, words in {
            '#include "logbook/x.hpp"': "no arrow from rig to logbook",
            '#include "rig.hpp"': "not written from the core's root",
            '#include "../base/id.hpp"': "not written from the core's root",
            '#include "shed/x.hpp"': "no known folder",
            "#include <QString>": "Qt",
            "#include <base/id.hpp>": "in quotes",
        }.items():
            self.refuses("includes", {"core/rig/a.cpp": CPP + line + "\n"}, words)
        self.refuses("includes", {"core/shed/a.cpp": CPP}, "not in the table")
        self.refuses("includes", {"core/rig/a.cpp": CPP,
                                  "core/rig/CMakeLists.txt": "snugwalk_core_library(rig LINKS base due SOURCES a.cpp)"},
                     "no arrow from rig to due")

    def test_files(self):
        top = {"README.md": "", "DEVELOPERS.md": "", "LICENSE": "", "CMakeLists.txt": CMAKE,
               **{f"{name}/keep.txt": "" for name in ("core", "qml", "platform", "tests", "translations",
                                                      "demo-rig")}}
        self.accepts("files", top)
        self.refuses("files", {**top, "docs/a.md": ""}, "not among the names of the top level")
        self.refuses("files", {**top, "core/a.cpp": "int a;\n"}, "does not say SPDX")
        self.refuses("files", {**top, "core/a.cpp": CPP + "\n" * 600}, "601 lines")
        self.refuses("files", {**top, "tests/a.sh": "#!/bin/sh\n# " + SPDX}, "set -euo pipefail")
        self.refuses("files", {**top, "core/a.md": "see .." + "/shared/x"}, "a folder outside")
        self.refuses("files", {name: body for name, body in top.items() if name != "LICENSE"}, "LICENSE: missing")

    def test_sources(self):
        tree = {"core/SOURCES.md": "| KEY-1 | a |\n", "core/rig/a.hpp": "/// Source [KEY-1]\n", "tests/t.cpp": "// KEY-1\n"}
        self.accepts("sources", tree)
        self.refuses("sources", {**tree, "core/rig/b.hpp": "/// Source [Y-22] 3\n"}, "[Y-22] is not in")
        self.refuses("sources", {**tree, "tests/t.cpp": ""}, "no test names it")

    def test_words(self):
        self.accepts("words", {"qml/a.qml": 'text: qsTr("not yet looked at")\n'})
        for text in ("The rig is safe", "Tires OK", "Roadworthy", "health score 3", "brakes ✓"):
            self.refuses("words", {"qml/a.qml": f'text: qsTr("{text}")\n'}, "says")
        self.refuses("words", {"core/catalogue/data/texts/en.json": '{"a": "it is safe"}\n'}, "says")

    def test_packages(self):
        lists = {"platform/packages/build.txt": "libexpat1-dev\n", "platform/packages/app.txt": "qt6-base-dev\n"}
        asks = "pkg_check_modules(A REQUIRED IMPORTED_TARGET expat)\n"
        self.accepts("packages", {**lists, "core/CMakeLists.txt": asks})
        self.refuses("packages", {**lists, "core/CMakeLists.txt": "find_package(PNG REQUIRED)\n"}, "needs libpng-dev")
        self.refuses("packages", {**lists, "core/CMakeLists.txt": "find_package(Frob)\n"}, "packages_table.py")
        self.refuses("packages", {**lists, "qml/CMakeLists.txt": "find_package(Qt6 6.4 REQUIRED COMPONENTS Quick)\n"},
                     "needs qt6-declarative-dev")
        self.refuses("packages", {**lists, "qml/a.qml": "import QtQuick.Shapes\n"}, "qml6-module-qtquick-shapes")


if __name__ == "__main__":
    unittest.main()
