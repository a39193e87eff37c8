// SPDX-License-Identifier: Apache-2.0
// The peers of merge_replicas.py: Yjs and Automerge merge the updates of three replicas, in memory and unsigned.
// usage: node merge_replicas.cjs OPS.jsonl LIBRARIES, then lines "yjs" or "automerge" on standard input; each is
// answered by "SECONDS BYTES CELLS" of one merge into an empty document.
"use strict";
const fs = require("fs");
const path = require("path");
const readline = require("readline");
const { createRequire } = require("module");

const [, , opsFile, libraries] = process.argv;
const load = createRequire(path.join(path.resolve(libraries), "node_modules", "here.js"));
const ops = fs.readFileSync(opsFile, "utf8").split("\n").filter(Boolean).map((line) => JSON.parse(line));
const replicas = [...new Set(ops.map((op) => op.replica))].sort();
const seconds = (begun) => Number(process.hrtime.bigint() - begun) / 1e9;

// Nested: a map of things, each a map of its fields. A replica writes without knowing of the others.
function yjs() {
    const Y = load("yjs");
    const updates = replicas.map((replica) => {
        const doc = new Y.Doc();
        doc.clientID = replica + 1;
        for (const op of ops) {
            if (op.replica !== replica) continue;
            let thing = doc.getMap("things").get(op.entity);
            if (!thing) thing = doc.getMap("things").set(op.entity, new Y.Map());
            thing.set(op.field, op.value);
        }
        return Y.encodeStateAsUpdate(doc);
    });
    return () => {
        const doc = new Y.Doc();
        const begun = process.hrtime.bigint();
        for (const update of updates) Y.applyUpdate(doc, update);
        const took = seconds(begun);
        let cells = 0;
        doc.getMap("things").forEach((thing) => (cells += thing.size));
        return [took, updates.reduce((sum, update) => sum + update.length, 0), cells];
    };
}

function automerge() {
    const A = load("@automerge/automerge");
    const base = A.from({ things: {} }, { actor: "00" });
    const saved = replicas.map((replica) => {
        let doc = A.clone(base, { actor: (replica + 1).toString(16).padStart(2, "0") });
        const own = ops.filter((op) => op.replica === replica);
        for (let from = 0; from < own.length; from += 100) {
            doc = A.change(doc, (draft) => {
                for (const op of own.slice(from, from + 100)) {
                    if (!draft.things[op.entity]) draft.things[op.entity] = {};
                    draft.things[op.entity][op.field] = op.value;
                }
            });
        }
        return A.save(doc);
    });
    return () => {
        const begun = process.hrtime.bigint();
        let doc = A.init();
        for (const bytes of saved) doc = A.loadIncremental(doc, bytes);
        const took = seconds(begun);
        const cells = Object.values(doc.things).reduce((sum, thing) => sum + Object.keys(thing).length, 0);
        return [took, saved.reduce((sum, bytes) => sum + bytes.length, 0), cells];
    };
}

const peers = {};
readline.createInterface({ input: process.stdin }).on("line", (line) => {
    const make = { yjs, automerge }[line];
    if (!make) process.exit(2);
    peers[line] = peers[line] || make();
    process.stdout.write(peers[line]().join(" ") + "\n");
});
