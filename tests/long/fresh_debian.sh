#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# The two commands on a bare Debian 12: fresh_debian.sh FOLDER [--core]
# Makes a minimal tree in FOLDER with debootstrap, clones the last commit into it and runs
# platform/run.sh twice and tests/run.sh inside. Needs root; exit 77 where a tree cannot be made.
set -euo pipefail

if [ $# -lt 1 ]; then
    echo "usage: fresh_debian.sh FOLDER [--core]" >&2
    exit 2
fi
mkdir -p "$1"
folder="$(cd "$1" && pwd)"
scope=${2:-}
cd "$(dirname "${BASH_SOURCE[0]}")/../.."

skip() {
    echo "skipped: $1" >&2
    exit 77
}
[ "$(id -u)" -eq 0 ] || skip "a tree can only be made as root"
command -v debootstrap >/dev/null || skip "debootstrap is not installed"

# The mirror that this machine's own apt uses, whatever it is.
# shellcheck disable=SC2016
mirror="$(apt-get indextargets --format '$(REPO_URI)' 'Created-By: Packages' 'Codename: bookworm' 'Component: main' |
    head -n 1)"
[ -n "$mirror" ] || skip "apt names no mirror for bookworm"

tree="$folder/tree"
release() {
    local place
    for place in "$tree/proc" "$tree/dev/shm"; do
        if mountpoint -q "$place"; then
            umount "$place"
        fi
    done
}
trap release EXIT

if [ ! -f "$folder/bare.tar" ]; then
    rm -rf "$tree"
    debootstrap --variant=minbase --include=ca-certificates bookworm "$tree" "$mirror" >"$folder/debootstrap.log" 2>&1
    tar -C "$folder" -cf "$folder/bare.tar" tree
fi
rm -rf "$tree"
tar -C "$folder" -xf "$folder/bare.tar"
cp /etc/resolv.conf "$tree/etc/resolv.conf"
mount -t proc proc "$tree/proc" || echo "no /proc inside: going on without"
mkdir -p "$tree/dev/shm"
mount -t tmpfs tmpfs "$tree/dev/shm" || echo "no /dev/shm inside: going on without"

git clone -q --no-local . "$tree/root/snugwalk"

inside() {
    local before=$SECONDS
    echo "== $*"
    chroot "$tree" /usr/bin/env -i HOME=/root LANG=C.UTF-8 PATH=/usr/sbin:/usr/bin:/sbin:/bin \
        ${CI:+CI="$CI"} ${http_proxy:+http_proxy="$http_proxy"} ${https_proxy:+https_proxy="$https_proxy"} \
        bash -c "cd /root/snugwalk && $*" 2>&1 | tee -a "$folder/inside.log"
    echo "== took $((SECONDS - before)) s"
}
: >"$folder/inside.log"
inside "bash platform/run.sh $scope"
inside "bash platform/run.sh $scope"
inside "bash tests/run.sh $scope"
