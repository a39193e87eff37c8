#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Every C++ file of ours as .clang-format has it; `format.sh --fix` makes it so.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
mapfile -t files < <(find core platform qml tests -name '*.cpp' -o -name '*.hpp' -o -name '*.h' | sort)
echo "${#files[@]} files"
if [ "${1:-}" = --fix ]; then
    clang-format -i "${files[@]}"
else
    clang-format --dry-run -Werror "${files[@]}"
fi
