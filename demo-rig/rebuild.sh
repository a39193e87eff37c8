#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Rebuilds tracks, photos and scenario.json into a folder (default: in place).
# With --check: rebuilds into a temporary folder and compares byte for byte; names after it (such as
# rivet-2026-09) keep it to those photos, since all twelve take minutes.
set -euo pipefail

here=$(cd "$(dirname "$0")" && pwd)
python=/usr/bin/python3

# folder [photo ...]
build() {
    cd "$here/make"
    "$python" -B make_tracks.py "$1"
    "$python" -B make_scenario.py "$1"
    "$python" -B make_photos.py "$@"
}

if [ "${1:-}" != --check ]; then
    mkdir -p "${1:-$here}"
    build "$(cd "${1:-$here}" && pwd)"
    exit 0
fi

shift
fresh=$(mktemp -d)
trap 'rm -rf "$fresh"' EXIT
build "$fresh" "$@"
chosen=" $* "

# Every file that is there or comes out of the scripts, on either side.
listed() {
    (cd "$1" && find scenario.json tracks photos -type f)
}

differs=0
while read -r file; do
    photo=$(basename "$file" .jpg)
    if [ $# -gt 0 ] && [ "$photo.jpg" = "$(basename "$file")" ] && [[ $chosen != *" $photo "* ]]; then
        continue
    fi
    if ! cmp -s "$here/$file" "$fresh/$file"; then
        echo "differs from a rebuild: demo-rig/$file"
        differs=1
    fi
done < <({ listed "$here"; listed "$fresh"; } | sort -u)
exit $differs
