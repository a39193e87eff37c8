#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Every C++ file of ours as .clang-format has it.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
mapfile -t files < <(find core platform qml tests -name '*.cpp' -o -name '*.hpp' -o -name '*.h' | sort)
echo "${#files[@]} files"
clang-format --dry-run -Werror "${files[@]}"
