# SPDX-License-Identifier: Apache-2.0
"""Ticks against those of d3-array, a plotting library that others wrote (Debian: node-d3-array): the same
numbers, to the last bit, over ranges that readings, distances, costs and concerns have.
usage: ticks_d3.py PROBE NODE"""
import os
import random
import subprocess
import sys

SCRIPT = """
const {ticks} = require('d3-array');
const lines = require('fs').readFileSync(0, 'utf8').trim().split('\\n');
console.log(JSON.parse(require('fs').readFileSync('/usr/share/nodejs/d3-array/package.json', 'utf8')).version);
for (const line of lines) {
    const [from, to, count] = line.split(' ').map(Number);
    console.log(ticks(from, to, count).join(' '));
}
"""
ROUNDS = 20000


def main():
    probe, node = sys.argv[1:3]
    draw = random.Random(7)
    lines = ["0 100 5", "0 0.3 3", "-1.7 4 5", "2.5 7.5 5", "0 131000 8", "-17 4 4", "1e-7 9e-7 5"]
    for _ in range(ROUNDS):
        size = 10.0 ** draw.uniform(-6, 7)
        from_ = draw.choice([0.0, draw.uniform(-size, size)])
        lines.append(f"{from_!r} {from_ + draw.uniform(0.01, 1.0) * size!r} {draw.choice([2, 3, 5, 8])}")
    text = "\n".join(lines) + "\n"
    ours = subprocess.run([probe], input=text, capture_output=True, text=True, check=True).stdout.split("\n")
    theirs = subprocess.run([node, "-e", SCRIPT], input=text, capture_output=True, text=True, check=True,
                            env=dict(os.environ, NODE_PATH="/usr/share/nodejs")).stdout.split("\n")
    version = theirs.pop(0)
    compared = 0
    for line, a, b in zip(lines, ours, theirs):
        a, b = list(map(float, a.split())), list(map(float, b.split()))
        if a != b:
            print(f"failed: {line}: ours {a}, d3-array {version} {b}")
            return 1
        compared += len(a)
    if compared < ROUNDS * 2:
        print(f"failed: only {compared} ticks were compared")
        return 1
    print(f"{compared} ticks of {len(lines)} ranges are those of d3-array {version}")
    return 0


if __name__ == "__main__":
    sys.exit(main())
