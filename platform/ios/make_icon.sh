#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Draws the icon that Xcode's catalogue names, without transparency as its rules want: make_icon.sh [FILE]
set -euo pipefail
here="$(cd "$(dirname "${BASH_SOURCE[0]}")" && pwd)"
out="${1:-$here/Images.xcassets/AppIcon.appiconset/icon.png}"
# square corners: the system rounds them itself
sed 's/ rx="24"//' "$here/../linux/org.snugwalk.Snugwalk.svg" |
    rsvg-convert --width 1024 --height 1024 --background-color '#FBFAF7' --output "$out"
