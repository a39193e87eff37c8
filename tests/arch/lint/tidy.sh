#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# clang-tidy over the sources of the core, the platform and the models: tidy.sh BUILD [PATH...]
# With paths, only the files whose name holds one of them.
set -euo pipefail
build="$(cd "$1" && pwd)"
shift
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
mapfile -t files < <(find core platform qml -name '*.cpp' | sort)
chosen=()
for file in "${files[@]}"; do
    # what this build does not compile (another system's maker, for instance) has no command
    grep -q "\"file\": \"$PWD/$file\"" "$build/compile_commands.json" || continue
    wanted=$(($# == 0))
    for part in "$@"; do
        [[ $file != *"$part"* ]] || wanted=1
    done
    [ $wanted -eq 0 ] || chosen+=("$file")
done
echo "${#chosen[@]} of ${#files[@]} files"
[ ${#chosen[@]} -gt 0 ]
printf '%s\n' "${chosen[@]}" | xargs -P 2 -n 4 clang-tidy -p "$build" --quiet
