#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Installs what is missing, builds, runs every test through CTest and counts them:
# bash tests/run.sh [--long] [--core]. The last line is `N passed, N failed, N skipped`.
set -euo pipefail

long=0
app=1
for option in "$@"; do
    case "$option" in
    --long) long=1 ;;
    --core) app=0 ;;
    *) echo "usage: bash tests/run.sh [--long] [--core]" >&2 && exit 2 ;;
    esac
done

cd "$(dirname "${BASH_SOURCE[0]}")/.."
results=build/results
rm -rf $results
mkdir -p $results

# name command...: one line in the table of steps; a failed step never stops the others
step() {
    local name=$1 before=$SECONDS
    shift
    echo "== $name"
    if "$@"; then
        echo "passed $name" >>$results/steps.txt
    else
        echo "failed $name" >>$results/steps.txt
    fi
    echo "== $name took $((SECONDS - before)) s"
}

install() {
    local lists=(build test)
    [ $app -eq 0 ] || lists+=(app)
    [ $long -eq 0 ] || lists+=(speed)
    bash platform/install.sh "${lists[@]}"
}

# Files that nobody here made, for tests that read them: fetched now, never inside a test.
fetch() {
    local script
    for script in tests/real/fetch_*.sh; do
        [ ! -f "$script" ] || bash "$script" build/real-data || return 1
    done
}

launcher() {
    if command -v ccache >/dev/null; then
        echo -DCMAKE_CXX_COMPILER_LAUNCHER=ccache
    fi
}

# folder target cmake-options...
build() {
    local folder=$1 target=$2
    shift 2
    # shellcheck disable=SC2046
    cmake -S . -B "build/$folder" -G Ninja -DSNUGWALK_TESTS=ON $(launcher) "$@" &&
        cmake --build "build/$folder" --target "$target" 2>&1 | tee "$results/$folder.build.log"
}

# folder labels-left-out names: results land in one JUnit file a folder
run() {
    local folder=$1 without=$2 names=${3:-.}
    local file="$PWD/$results/$folder.xml"
    # two a core: many wait for a disk or a server
    ctest --test-dir "build/$folder" -j $((2 * $(nproc))) --output-on-failure --no-tests=error \
        -LE "$without" -R "$names" --output-junit "$file" || true
    [ -s "$file" ]
}

# What one build folder runs alone: long trials, linters, speed, and what reads the sources only.
everything='^(long)$'
[ $long -eq 0 ] || everything='^$'
again='^(long|lint|speed|arch)$'

step "install packages" install
step "fetch real data" fetch
if [ $app -eq 1 ]; then
    # by Clang in half of GCC's time; --long and --core take GCC, as platform/run.sh does
    step "build everything" build ci all -DCMAKE_BUILD_TYPE=Release -DSNUGWALK_APP=ON -DSNUGWALK_PCH=ON \
        -DCMAKE_CXX_COMPILER=clang++ -DCMAKE_EXE_LINKER_FLAGS=-fuse-ld=lld
    step "run everything" run ci "$everything"
fi
# The sanitized build is one without Qt as well; a plain one beside it is for --core and --long. Without --long
# it holds what reads from outside and writes to the disk, for a fresh machine compiles for minutes.
if [ $app -eq 0 ] || [ $long -eq 1 ]; then
    step "build without Qt" build core all -DCMAKE_BUILD_TYPE=Release -DSNUGWALK_APP=OFF
    step "run without Qt" run core "$([ $app -eq 1 ] && echo '^(long|lint|speed)$' || echo "$everything")"
fi
readers=snugwalk_readers
names='^(fuzz[.].*|unit[.](base|trip|logbook)|fault[.](image|logbook))$'
if [ $long -eq 1 ]; then
    readers=all
    names=.
fi
step "build without Qt, with sanitizers" build asan $readers -DCMAKE_BUILD_TYPE=Debug \
    -DCMAKE_CXX_FLAGS_DEBUG=-g1 -DCMAKE_CXX_COMPILER=clang++ -DSNUGWALK_APP=OFF -DSNUGWALK_PCH=ON \
    '-DSNUGWALK_SANITIZE=address;undefined'
step "run without Qt, with sanitizers" run asan "$again" "$names"

# What stopped a build stands far above by now: said again, where a reader of the end finds it.
grep -hs -m 12 -E 'FAILED: |error: ' $results/*.build.log || true

exec python3 tests/arch/tally.py $results
