#!/usr/bin/env bash
# SPDX-License-Identifier: Apache-2.0
# Installs what is missing, builds, loads the demo rig and opens the field app; without a display the
# same job runs on the command line and leaves its pictures in a folder.
set -euo pipefail

usage() {
    cat <<'TEXT'
usage: bash platform/run.sh [--core] [--fresh]
  --core    build without Qt and run the demo on the command line only
  --fresh   throw the demo logbook away and load it again
TEXT
}

core=0
fresh=0
for option in "$@"; do
    case "$option" in
    --core) core=1 ;;
    --fresh) fresh=1 ;;
    --help | -h) usage && exit 0 ;;
    *) usage >&2 && exit 2 ;;
    esac
done

cd "$(dirname "${BASH_SOURCE[0]}")/.."
build=build/release
lists=(build app)
targets=(snugwalk snugwalk-app)
app=ON
if [ $core -eq 1 ]; then
    build=build/release-core
    lists=(build)
    targets=(snugwalk)
    app=OFF
fi

bash platform/install.sh "${lists[@]}"
if [ ! -f $build/build.ninja ]; then
    launcher=()
    if command -v ccache >/dev/null; then
        launcher=(-DCMAKE_CXX_COMPILER_LAUNCHER=ccache)
    fi
    cmake -S . -B $build -G Ninja -DCMAKE_BUILD_TYPE=Release -DSNUGWALK_APP=$app \
        -DSNUGWALK_TESTS=OFF "${launcher[@]}"
fi
cmake --build $build --target "${targets[@]}"

# A demo that was only half loaded is never mistaken for a whole one: it is made aside, then moved.
demo=build/demo
book=$demo/demo.snugwalk
if [ $fresh -eq 1 ] || [ ! -f $book ]; then
    rm -rf $demo $demo.new
    mkdir -p $demo.new
    $build/bin/snugwalk --book $demo.new/demo.snugwalk demo --from demo-rig
    mv $demo.new $demo
else
    echo "Going on with the demo logbook of the last run; --fresh loads it again."
fi

if [ $core -eq 0 ] && [ -n "${DISPLAY:-}${WAYLAND_DISPLAY:-}" ]; then
    exec $build/bin/snugwalk-app --book $book
fi

shown=$demo/shown
rm -rf $shown
mkdir -p $shown
for question in state due compare; do
    echo
    echo "== snugwalk $question"
    $build/bin/snugwalk --book $book $question | tee $shown/$question.txt
done
$build/bin/snugwalk --book $book report --out $shown/report.html
if [ $core -eq 0 ]; then
    QT_QPA_PLATFORM=offscreen $build/bin/snugwalk-app --book $book --screens $shown/screens
fi
echo
echo "No display: the answers, the report and the screenshots are in $shown"
