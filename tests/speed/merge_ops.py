# SPDX-License-Identifier: Apache-2.0
"""One op file that both sides of merge_replicas.py read: what three devices wrote on one rig, seeded.

A line is an update: one entity and the fields it sets, as the program's own acts write them (core/walk/walk_write.cpp);
updates of one `act` are written together. `phase` 0 was written by replica 0 and is known to all; in phase 1 the three
write without knowing of each other, now and then about the same mark. Times never come twice, so that "the latest" is
one. `plain` makes updates of one field each instead, the hardest case for a record of who wrote what and when."""
import datetime
import hashlib
import json
import random

PEOPLE = ["Ada", "Ben", "Cleo"]
STATES = ["pass"] * 90 + ["attention"] * 5 + ["could_not_look"] * 3 + ["not_fitted"] * 2
WORDS = ("crack near the corner of front left rear right seam sealant lifted water stain soft spot rust on bracket loose "
         "screw missing worn to the cord play in hinge rubs against hose drips when pump runs dry again after rain about "
         "two fingers wide same as last time slightly longer now covered with tape until mended").split()
GAP = 45_000  # ms between two marks, in the mean


def mark_id(walk, point):
    """As core/logbook derives it: BLAKE2b-256 over the parts with their lengths, the first half."""
    walk = bytes.fromhex(walk)
    parts = b"4:mark16:" + walk + f"{len(point)}:{point}".encode()
    return hashlib.blake2b(parts, digest_size=32).hexdigest()[:32]


class Maker:
    def __init__(self, seed, slugs, first):
        self.random = random.Random(seed)
        self.slugs = slugs
        self.rig = self.new_id()
        self.acts = 0
        self.lines = []
        self.now = [first, first + 1, first + 2]  # each replica has its own remainder by 3: no time comes twice
        self.tape = {}
        self.marks = [[], [], []]  # (walk, point) a replica may go back to
        self.shared = []

    def new_id(self):
        return self.random.getrandbits(128).to_bytes(16, "big").hex()

    def tick(self, replica, mean):
        self.now[replica] += 3 * int(self.random.expovariate(3 / mean) + 1)

    def at(self, replica):
        when = datetime.datetime.fromtimestamp(self.now[replica] // 1000 * 1000 / 1000, datetime.timezone.utc)
        return (when + datetime.timedelta(hours=13)).strftime("%Y-%m-%dT%H:%M:%S+13:00")

    def put(self, replica, phase, entity, kind, fields, scope=""):
        self.lines.append({"replica": replica, "phase": phase, "act": self.acts, "at": self.now[replica],
                           "by": PEOPLE[replica], "scope": scope, "entity": entity, "type": kind, "fields": fields})

    def act(self, replica, mean=GAP):
        self.acts += 1
        self.tick(replica, mean)

    def text(self):
        return " ".join(self.random.choices(WORDS, k=self.random.randint(4, 12)))

    def readings(self):
        wheels = self.random.random() < 0.5
        places = ["wheel 1L", "wheel 1R", "wheel 2L", "wheel 2R"] if wheels else [""]
        return [{"reading": "tire-pressure" if wheels else "moisture", "place": place,
                 "quantity": "pressure" if wheels else "share",
                 "value": self.random.randint(300, 460) * 1000 if wheels else self.random.randint(8, 24) / 100,
                 "unit": "Pa" if wheels else "1", "read_in": "kPa" if wheels else "%"} for place in places]

    def walk(self, replica, phase):
        self.act(replica, 4 * 86_400_000)
        walk, points = self.new_id(), self.random.sample(self.slugs, self.random.randint(20, 60))
        points.sort(key=self.slugs.index)
        self.tape[walk] = points
        self.put(replica, phase, walk, "walk",
                 {"rig": self.rig, "kind": "before_road", "by": PEOPLE[replica], "started": self.at(replica),
                  "tape": [{"line": point, "points": [point]} for point in points]})
        return walk

    def mark(self, replica, phase, walk, point):
        self.act(replica)
        state, entity = self.random.choice(STATES), mark_id(walk, point)
        measured = self.random.random() < 0.12
        self.put(replica, phase, entity, "mark",
                 {"walk": walk, "point": point, "state": state, "how": "measured" if measured else "looked",
                  "reason": "locked" if state == "could_not_look" else "", "note": "",
                  "readings": self.readings() if measured else [], "at": self.at(replica),
                  "by": PEOPLE[replica]}, walk)
        self.marks[replica].append((walk, point))
        if state == "attention":
            self.finding(replica, phase, walk, point)

    def finding(self, replica, phase, walk, point):
        finding = self.new_id()
        self.put(replica, phase, finding, "finding",
                 {"rig": self.rig, "point": point, "defect": "other", "opened_on": walk, "opened": self.at(replica),
                  "place": {"side": self.random.choice(["left", "right"]), "note": self.text()}}, walk)
        self.put(replica, phase, self.new_id(), "look",
                 {"finding": finding, "walk": walk, "at": self.at(replica), "by": PEOPLE[replica],
                  "grade": self.random.randint(1, 3), "note": self.text()}, walk)

    def correct(self, replica, phase, walk, point):
        self.act(replica)
        self.put(replica, phase, mark_id(walk, point), "mark",
                 {"state": self.random.choice(STATES), "note": self.text(), "at": self.at(replica),
                  "by": PEOPLE[replica]}, walk)

    def write(self, replica, phase, count):
        end = len(self.lines) + count
        while len(self.lines) < end:
            walk = self.walk(replica, phase)
            for point in self.tape[walk]:
                self.mark(replica, phase, walk, point)
                if phase == 1 and self.shared and self.random.random() < 0.03:
                    self.correct(replica, phase, *self.random.choice(self.shared))
                elif self.random.random() < 0.02:
                    self.correct(replica, phase, *self.random.choice(self.marks[replica][-200:]))
            self.act(replica)
            self.put(replica, phase, walk, "walk", {"finished": self.at(replica)})
        del self.lines[end:]


def write_mix(path, seed, slugs, count, replicas=3, first=1_700_000_000_000):
    """`count` updates as the program writes them."""
    maker = Maker(seed, slugs, first - first % 3)
    maker.acts += 1
    maker.put(0, 0, maker.rig, "rig", {"name": "Rig"})
    base = count // 10 if replicas > 1 else 1
    maker.write(0, 0, base - 1)
    maker.shared = list(maker.marks[0])
    for replica in range(replicas):
        maker.now[replica] = max(maker.now) // 3 * 3 + 3 + replica
    for replica in range(replicas):
        share = (count - base) // replicas
        maker.write(replica, 1, share if replica > 0 else count - base - share * (replicas - 1))
    save(path, maker.lines)


def write_plain(path, seed, count, fields=20):
    """`count` updates of one field each, nearly all of another entity's or field's: one cell an update."""
    maker = Maker(seed, ["p"], 1_700_000_000_000 - 1_700_000_000_000 % 3)
    maker.acts += 1
    maker.put(0, 0, maker.rig, "rig", {"name": "Rig"})
    entities = [maker.new_id() for _ in range(count // fields)]
    for number in range(1, count):
        replica = number % 3
        maker.act(replica)
        entity = entities[maker.random.randrange(replica, len(entities), 3)]
        maker.put(replica, 1, entity, "stock", {f"field {maker.random.randrange(fields)}":
                                                maker.random.randrange(1_000_000)}, maker.rig)
    maker.lines.sort(key=lambda line: (line["replica"], line["act"]))
    save(path, maker.lines)


def save(path, lines):
    with open(path, "w", encoding="utf-8") as out:
        for line in lines:
            out.write(json.dumps(line, separators=(",", ":")) + "\n")


def merged(lines):
    """What the logbook's rules make of the op file, worked out anew (core/logbook/FORMAT.md): a value stands until
    somebody who had seen it writes over it; of those that did not know of each other the latest, of a mark's state
    the worst. Returns the shown value, all that stand by entity and field, and how many updates said anything new:
    the logbook writes no entry of the others."""
    rank = {"not_fitted": 1, "pass": 2, "could_not_look": 3, "attention": 4}
    base, seen, written = {}, {}, 0
    for line in lines:
        is_news = False
        for field, value in line["fields"].items():
            cell, replica = (line["entity"], field), line["replica"]
            own = base if line["phase"] == 0 else seen.setdefault(cell, {})
            key = cell if line["phase"] == 0 else replica
            before = own.get(key, base.get(cell))
            if before is None or before[1] != value:
                own[key] = (line["at"], value, line["type"])
                is_news = True
        written += is_news
    cells = {cell: [head] for cell, head in base.items()}
    cells.update({cell: list(heads.values()) for cell, heads in seen.items() if heads})
    shown = {}
    for (entity, field), heads in cells.items():
        worst = field == "state" and heads[0][2] == "mark"
        best = max(heads, key=lambda head: (rank[head[1]] if worst else 0, head[0]))
        shown.setdefault(entity, {})[field] = best[1]
    return shown, cells, written
