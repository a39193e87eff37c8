# SPDX-License-Identifier: Apache-2.0
"""Whatever CMake, QML or a script of ours asks for is in a package list, so that a bare Debian 12
with those packages builds and runs the project."""
import re

import repo
from packages_table import CMAKE_PACKAGES, PKG_CONFIG, PROGRAMS, QML_MODULES, QT_COMPONENTS

FIND = re.compile(r"find_package\(\s*(\w+)([^)]*)\)", re.S)
PKG = re.compile(r"pkg_(?:check|search)_modules?\(\s*\w+([^)]*)\)", re.S)
PROGRAM = re.compile(r"find_program\(\s*\w+\s+(?:NAMES\s+)?([\w.+-]+)")
IMPORT = re.compile(r"^\s*import\s+([A-Z][\w.]*)", re.M)
OPTIONS = {"REQUIRED", "QUIET", "IMPORTED_TARGET", "CONFIG", "COMPONENTS", "OPTIONAL_COMPONENTS", "GLOBAL",
           "EXACT", "NO_MODULE"}


def plain_cmake(path):
    return re.sub(r"#.*", "", repo.text(path))


def wanted_by_cmake(body):
    """Yields (what is asked for, packages that provide it or None)."""
    for name, rest in FIND.findall(body):
        words = [word for word in rest.split() if re.match(r"^[A-Za-z]\w*$", word) and word not in OPTIONS]
        if name.startswith("Qt6"):
            for component in words or ([name[3:]] if name != "Qt6" else []):
                yield f"Qt6 {component}", QT_COMPONENTS.get(component)
        else:
            yield f"find_package({name})", CMAKE_PACKAGES.get(name)
    for rest in PKG.findall(body):
        for word in rest.split():
            module = re.split(r"[<>=]", word)[0]
            if module and module not in OPTIONS:
                yield f"pkg-config {module}", PKG_CONFIG.get(module)
    for program in PROGRAM.findall(body):
        yield f"program {program}", PROGRAMS.get(program)


def wanted_by_qml(body):
    for module in IMPORT.findall(body):
        if not module.startswith("Snugwalk"):
            yield f"import {module}", QML_MODULES.get(module)


def lists_for(where, what):
    """Which package lists are installed when this file is used; only the app's build asks for Qt."""
    if where.startswith(("tests/", "platform/cmake/SnugwalkTests")):
        return ("build", "app", "test", "speed")
    if what.startswith("Qt6") or where.startswith(("qml/", "platform/app", "platform/places", "translations/")):
        return ("build", "app")
    return ("build",)


def main():
    base = repo.root()
    lists = {path.stem: set(re.sub(r"#.*", "", repo.text(path)).split())
             for path in (base / "platform/packages").glob("*.txt")}
    faults, checked = [], 0
    for path in repo.files(base):
        where = repo.name(base, path)
        if path.name == "CMakeLists.txt" or path.suffix == ".cmake":
            wanted = wanted_by_cmake(plain_cmake(path))
        elif path.suffix == ".qml":
            wanted = wanted_by_qml(repo.text(path))
        else:
            continue
        for what, packages in wanted:
            checked += 1
            chosen = lists_for(where, what)
            installed = set().union(*(lists.get(name, set()) for name in chosen))
            if packages is None:
                faults.append(f"{where}: {what} is not in tests/arch/packages_table.py")
            else:
                faults += [f"{where}: {what} needs {package}, which no list of {chosen} has"
                           for package in packages if package not in installed]
    repo.report(faults, checked)


main()
