#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Two libraries that merge replicas, which others wrote, for tests/speed/merge_replicas.py:
# bash tests/real/fetch_merge_libraries.sh FOLDER. Fetches by package name, once; prints what it has.
set -euo pipefail

if [ $# -ne 1 ]; then
    echo "usage: fetch_merge_libraries.sh FOLDER" >&2
    exit 2
fi
folder="$1/merge-libraries"
list="$folder/list.tsv"

# package, version, licence; what they need themselves comes along
npm_libraries=(
    "yjs|13.6.33|MIT"
    "@automerge/automerge|3.5.0|MIT"
)

if [ -f "$list" ]; then
    echo "merge libraries are there already:"
    cat "$list"
    exit 0
fi

work="$(mktemp -d)"
trap 'rm -rf "$work"' EXIT
named=()
for line in "${npm_libraries[@]}"; do
    IFS='|' read -r package version licence <<<"$line"
    named+=("$package@$version")
    printf '%s\t%s\t%s\n' "$package" "$version" "$licence" >>"$work/list.tsv"
done
(cd "$work" && npm install --silent --no-audit --no-fund --ignore-scripts --no-package-lock "${named[@]}")
mkdir -p "$1"
rm -rf "$folder"
mv "$work" "$folder"
trap - EXIT
echo "merge libraries fetched (package, version, licence):"
cat "$list"
