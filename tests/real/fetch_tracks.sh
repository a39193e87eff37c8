#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Tracks that receivers recorded, as Debian source packages carry them, for tst_real_tracks:
# bash tests/real/fetch_tracks.sh FOLDER. Fetches by package name, once; prints what it has.
set -euo pipefail

if [ $# -ne 1 ]; then
    echo "usage: fetch_tracks.sh FOLDER" >&2
    exit 2
fi
folder="$1/tracks"
list="$folder/list.tsv"

# package|licence of the files|files in its source; the .chk beside a log is what the package's own
# reader made of it
deb_tracks=(
    "gpsd|BSD-2-Clause|test/daemon/bt451.log test/daemon/bundg_zeus_9.log test/daemon/haicom-305N.log test/daemon/rx210.log test/daemon/sirfstarv-nmea.log test/daemon/skytraq-dgps.log test/daemon/telit-he910.log test/daemon/ublox-lea-4h.log"
    "libimage-exiftool-perl|Artistic or GPL-1+|t/images/Geotag.gpx"
    "exiv2|GPL-2+|test/data/FurnaceCreekInn.gpx"
)

if [ -f "$list" ]; then
    echo "tracks are there already:"
    cat "$list"
    exit 0
fi

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/out" "$work/parts" "$work/lists/partial"

# The machine's own Debian sources, asked for source packages, in lists of our own.
for source in /etc/apt/sources.list.d/*.sources /etc/apt/sources.list.d/*.list /etc/apt/sources.list; do
    [ ! -f "$source" ] || case "$source" in
    *.sources) sed 's/^Types:.*/Types: deb-src/' "$source" >>"$work/parts/src.sources" && echo >>"$work/parts/src.sources" ;;
    *) sed -n 's/^deb /deb-src /p' "$source" >>"$work/parts/src.list" ;;
    esac
done
apt=(-q -o Dir::Etc::sourcelist=/dev/null -o "Dir::Etc::sourceparts=$work/parts" -o "Dir::State::lists=$work/lists"
    -o APT::Sandbox::User=root)
# a further source of this machine may have no source packages; what counts is whether ours come
apt-get "${apt[@]}" update >"$work/apt.log" 2>&1 || true

for line in "${deb_tracks[@]}"; do
    IFS='|' read -r package licence files <<<"$line"
    mkdir -p "$work/$package/tree"
    (cd "$work/$package" && apt-get "${apt[@]}" source --download-only "$package" >>"$work/apt.log" 2>&1) ||
        { cat "$work/apt.log" >&2 && exit 1; }
    original="$(find "$work/$package" -maxdepth 1 -name '*.orig.tar.*' ! -name '*.asc')"
    version="$(basename "$original" | sed 's/.*_\(.*\)\.orig\.tar.*/\1/')"
    wanted=()
    for file in $files; do
        wanted+=("*/$file" "*/$file.chk")
    done
    tar -xf "$original" -C "$work/$package/tree" --strip-components=1 --wildcards "${wanted[@]}" 2>/dev/null || true
    for file in $files; do
        name="$(basename "$file")"
        cp "$work/$package/tree/$file" "$work/out/$name"
        [ ! -f "$work/$package/tree/$file.chk" ] || cp "$work/$package/tree/$file.chk" "$work/out/$name.chk"
        printf '%s\t%s\t%s\t%s\t%s\n' "$name" "$package" "$version" "$file" "$licence" >>"$work/out/list.tsv"
    done
done

mkdir -p "$1"
rm -rf "$folder"
mv "$work/out" "$folder"
echo "tracks fetched (file, package, version, place in it, licence):"
cat "$list"
