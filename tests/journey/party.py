# SPDX-License-Identifier: Apache-2.0
"""Several devices, each with a data folder and so a key of its own, that share the demo rig."""
import os

from program import Program, check


class Device(Program):
    def __init__(self, path, folder, name):
        super().__init__(path, os.path.join(folder, name))
        os.makedirs(self.folder)
        self.name = name

    def acted(self, *arguments, **options):
        return self.json("--by", self.name, *arguments, **options)

    def meets_at(self, name, kind, place):
        return self.json("store", "add", name, kind, place)

    def syncs(self, *arguments, store="stick"):
        return self.json("sync", "--store", store, *arguments)["stores"][0]

    def writes(self, name, text):
        file = os.path.join(self.folder, name)
        with open(file, "w", encoding="utf-8") as out:
            out.write(text)
        return file


def enrolls(owner, fresh, role, *more):
    """An owner's device lets a fresh one in by typed words and the six digits; gives the new device's id."""
    offer = owner.json("share", rig_of(owner), "--role", role, *more)
    answer = fresh.json("device", "answer", "--role", role, "--from", fresh.writes("offer.txt", offer["offer"]))
    enrolled = owner.json("device", "enroll", "--from", owner.writes("answer.txt", answer["answer"]), "--code",
                          answer["code"], "--name", fresh.name)
    check(enrolled["role"] == role and enrolled["device"] == answer["device"], f"enrolled {enrolled}")
    return enrolled["device"]


def rig_of(device):
    return device.json("rig", "list")["rigs"][0]["name"]


def projection(device):
    """The hash over everything the device shows, after a look at every hash and chain."""
    found = device.json("check")
    check(found["faults"] == [], f"{device.name}: {found['faults']}")
    return found["projection"]


def expect_alike(devices):
    """Every device shows the same, to the byte and as people ask for it."""
    hashes = {device.name: projection(device) for device in devices}
    check(len(set(hashes.values())) == 1, f"devices differ: {hashes}")
    for words in (("walk", "list"), ("finding", "list"), ("due",), ("rig", "list")):
        answers = [device.json("--at", "2026-12-20T08:10:00+13:00", *words) for device in devices]
        check(all(without_places(answer) == without_places(answers[0]) for answer in answers),
              f"{' '.join(words)} differs between devices")


def without_places(value):
    """Whether an original lies on this device is the one thing that may differ."""
    if isinstance(value, dict):
        return {key: without_places(item) for key, item in value.items() if key != "original"}
    if isinstance(value, list):
        return [without_places(item) for item in value]
    return value


def round_of(devices, store="stick", times=2):
    """Everybody in turn, often enough for the first to hear of the last."""
    for _ in range(times):
        for device in devices:
            device.syncs(store=store)
