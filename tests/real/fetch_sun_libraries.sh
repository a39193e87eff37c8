#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Two libraries of the sun's position that others wrote, for sun_libraries.py:
# bash tests/real/fetch_sun_libraries.sh FOLDER. Fetches by package name, once; prints what it has.
set -euo pipefail

if [ $# -ne 1 ]; then
    echo "usage: fetch_sun_libraries.sh FOLDER" >&2
    exit 2
fi
folder="$1/sun-libraries"
list="$folder/list.tsv"

# package version, licence, the file that is read
npm_libraries=(
    "suncalc 1.9.0|BSD-2-Clause|suncalc.js"
    "solar-calculator 0.3.0|ISC|dist/solar-calculator.js"
)

if [ -f "$list" ]; then
    echo "sun libraries are there already:"
    cat "$list"
    exit 0
fi

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/out"
for line in "${npm_libraries[@]}"; do
    IFS='|' read -r named licence file <<<"$line"
    read -r package version <<<"$named"
    mkdir -p "$work/$package"
    tarball="$(cd "$work" && npm pack --silent "$package@$version")"
    tar -xzf "$work/$tarball" -C "$work/$package"
    # CommonJS whatever the package's own package.json says, which is not kept
    cp "$work/$package/package/$file" "$work/out/$package.cjs"
    printf '%s\t%s\t%s\t%s\t%s\n' "$package.cjs" "$package" "$version" "$file" "$licence" >>"$work/out/list.tsv"
done
mkdir -p "$1"
rm -rf "$folder"
mv "$work/out" "$folder"
echo "sun libraries fetched (file, package, version, place in it, licence):"
cat "$list"
