#!/bin/sh
# SPDX-License-Identifier: Apache-2.0
# Rebuilds tracks, photos and scenario.json into a folder (default: in place).
# With --check: rebuilds into a temporary folder and compares byte for byte.
set -eu
here=$(cd "$(dirname "$0")" && pwd)
python=/usr/bin/python3

build() {
    cd "$here/make"
    PYTHONDONTWRITEBYTECODE=1 "$python" make_tracks.py "$1"
    PYTHONDONTWRITEBYTECODE=1 "$python" make_scenario.py "$1"
    PYTHONDONTWRITEBYTECODE=1 "$python" make_photos.py "$1"
}

if [ "${1:-}" != "--check" ]; then
    mkdir -p "${1:-$here}"
    build "$(cd "${1:-$here}" && pwd)"
    exit 0
fi

fresh=$(mktemp -d)
trap 'rm -rf "$fresh"' EXIT
build "$fresh"
differs=0
for folder in "$here" "$fresh"; do
    for file in $(cd "$folder" && find scenario.json tracks photos -type f | sort); do
        if ! cmp -s "$here/$file" "$fresh/$file"; then
            echo "differs from a rebuild: demo-rig/$file"
            differs=1
        fi
    done
done
exit $differs
