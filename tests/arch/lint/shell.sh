#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Every shell script of ours through shellcheck.
set -euo pipefail
cd "$(dirname "${BASH_SOURCE[0]}")/../../.."
mapfile -t files < <(find .ci platform tests demo-rig -name '*.sh' -o -path .ci/run | sort)
echo "${#files[@]} files"
shellcheck "${files[@]}"
