#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Rebuilds tracks, photos and scenario.json into a folder (default: in place).
# With --check: rebuilds into a temporary folder and compares byte for byte.
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd)
python=/usr/bin/python3

build() {
    cd "$here/make"
    local script
    for script in make_tracks make_scenario make_photos; do
        "$python" -B "$script.py" "$1"
    done
}

if [ "${1:-}" != --check ]; then
    mkdir -p "${1:-$here}"
    build "$(cd "${1:-$here}" && pwd)"
    exit 0
fi

fresh=$(mktemp -d)
trap 'rm -rf "$fresh"' EXIT
build "$fresh"

# Every file that is there or comes out of the scripts, on either side.
listed() {
    (cd "$1" && find scenario.json tracks photos -type f)
}

differs=0
while read -r file; do
    if ! cmp -s "$here/$file" "$fresh/$file"; then
        echo "differs from a rebuild: demo-rig/$file"
        differs=1
    fi
done < <({ listed "$here"; listed "$fresh"; } | sort -u)
exit $differs
