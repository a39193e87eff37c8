// SPDX-License-Identifier: Apache-2.0
// The peers of merge_replicas.py: Yjs and Automerge merge the updates of three replicas, in memory and unsigned.
// usage: node merge_replicas.cjs OPS.jsonl LIBRARIES, then lines "yjs" or "automerge" on standard input, each answered
// by "SECONDS BYTES CELLS" of one merge into an empty document; "yjs FILE" writes the merged map there, "automerge SHARE"
// takes one in SHARE of each replica's updates.
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
const base = ops.filter((op) => op.phase === 0);
const own = (replica) => ops.filter((op) => op.phase === 1 && op.replica === replica);
const shareOf = (list, share) => list.slice(0, Math.ceil(list.length / share));

// Nested: a map of things, each a map of its fields. All know the base; then each writes without the others.
function yjs() {
    const Y = load("yjs");
    const write = (doc, list) => doc.transact(() => {
        const things = doc.getMap("things");
        for (const op of list) {
            let thing = things.get(op.entity);
            if (!thing) thing = things.set(op.entity, new Y.Map());
            for (const field in op.fields) thing.set(field, op.fields[field]);
        }
    });
    const first = new Y.Doc();
    first.clientID = 1;
    write(first, base);
    const common = Y.encodeStateAsUpdate(first);
    const updates = [common].concat(replicas.map((replica) => {
        const doc = new Y.Doc();
        doc.clientID = replica + 2;
        Y.applyUpdate(doc, common);
        write(doc, own(replica));
        return Y.encodeStateAsUpdate(doc, Y.encodeStateVectorFromUpdate(common));
    }));
    return () => {
        const doc = new Y.Doc();
        const begun = process.hrtime.bigint();
        for (const update of updates) Y.applyUpdate(doc, update);
        const took = seconds(begun);
        return [took, updates.reduce((sum, update) => sum + update.length, 0), doc.getMap("things").toJSON()];
    };
}

function automerge(share) {
    const A = load("@automerge/automerge");
    const write = (doc, list) => {
        for (let from = 0; from < list.length; from += 100) {
            doc = A.change(doc, (draft) => {
                for (const op of list.slice(from, from + 100)) {
                    if (!draft.things[op.entity]) draft.things[op.entity] = {};
                    for (const field in op.fields) draft.things[op.entity][field] = op.fields[field];
                }
            });
        }
        return doc;
    };
    const first = write(A.from({ things: {} }, { actor: "00" }), shareOf(base, share));
    const saved = [A.save(first)].concat(replicas.map((replica) => {
        const before = A.clone(first, { actor: (replica + 2).toString(16).padStart(2, "0") });
        const since = A.getHeads(before);
        return A.saveSince(write(before, shareOf(own(replica), share)), since);
    }));
    return () => {
        const begun = process.hrtime.bigint();
        let doc = A.init();
        for (const bytes of saved) doc = A.loadIncremental(doc, bytes);
        const took = seconds(begun);
        return [took, saved.reduce((sum, bytes) => sum + bytes.length, 0), A.toJS(doc).things];
    };
}

const peers = {};
readline.createInterface({ input: process.stdin }).on("line", (line) => {
    const [name, what] = line.split(" ");
    const make = { yjs, automerge }[name];
    if (!make) process.exit(2);
    peers[name] = peers[name] || make(Number(what));
    const [took, bytes, things] = peers[name]();
    const cells = Object.values(things).reduce((sum, thing) => sum + Object.keys(thing).length, 0);
    if (name === "yjs" && what) fs.writeFileSync(what, JSON.stringify(things));
    process.stdout.write([took, bytes, cells].join(" ") + "\n");
});
