#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Installs what is missing from the package lists named: bash platform/install.sh build app test
set -euo pipefail

lists="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)/packages"
if [ $# -eq 0 ]; then
    echo "usage: install.sh LIST...   lists: $(cd "$lists" && echo *.txt | sed 's/\.txt//g')" >&2
    exit 2
fi

missing=()
for list in "$@"; do
    if [ ! -f "$lists/$list.txt" ]; then
        echo "install.sh: no list named $list in platform/packages" >&2
        exit 2
    fi
    # a second word on a line is a command that will do instead of the package
    while read -r package command; do
        if [ -n "$command" ] && command -v "$command" >/dev/null; then
            continue
        fi
        state="$(dpkg-query -W -f='${db:Status-Status}' "$package" 2>/dev/null || true)"
        if [ "$state" != installed ]; then
            missing+=("$package")
        fi
    done < <(sed -e 's/#.*//' -e '/^[[:space:]]*$/d' "$lists/$list.txt")
done

if [ ${#missing[@]} -eq 0 ]; then
    exit 0
fi
echo "Installing from Debian: ${missing[*]}"

as_root=()
if [ "$(id -u)" -ne 0 ]; then
    if ! command -v sudo >/dev/null; then
        echo "install.sh: not root and no sudo; as root, run: apt-get install ${missing[*]}" >&2
        exit 1
    fi
    as_root=(sudo)
fi
"${as_root[@]}" apt-get update -q
"${as_root[@]}" env DEBIAN_FRONTEND=noninteractive \
    apt-get install -y -q --no-install-recommends "${missing[@]}"
