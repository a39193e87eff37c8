# SPDX-License-Identifier: Apache-2.0
"""Owner, helper and technician share the demo rig over a real WebDAV server from Debian with TLS: wrong password, wrong
certificates, the server killed in the middle, a proxy that cuts, a full disk. Each fault is told, the next sync goes on,
and the three logbooks end alike. usage: sync_webdav.py PROGRAM SOURCE apache|nginx"""
import hashlib
import json
import os
import random
import subprocess
import sys
from pathlib import Path

from party import Device, enrolls, expect_alike, projection, rig_of, round_of
from program import Failed, check

sys.path.insert(0, str(Path(__file__).parent.parent / "fault" / "webdav"))
from servers import PASSWORD, USER, Authority, CuttingProxy, Server, remove, run, scratch, tree  # noqa: E402

DAY = "2026-12-{:02d}T08:10:00+13:00"
NETWORK, STORAGE = 7, 5


def knows(device, name, address, authority, password=PASSWORD):
    """The store as a person adds it, with the private authority's certificate."""
    words = ["--user", USER, "--password-file", device.writes("password.txt", password + "\n")]
    words += ["--authority", str(authority)] if authority else []
    return device.json("store", "add", name, "webdav", address, *words)


def told(device, store, code, *words):
    """A sync that must fail with this exit code, in an error that says what, where and what to do."""
    device.run("--json", "sync", "--store", store, expect=code)
    error = json.loads(device.error)["error"]
    check(error["where"].startswith(store) and error["what"] and error["do"], f"not what, where, what to do: {error}")
    check(all(word in error["what"] + error["do"] for word in words), f"{words} are not in {error}")
    check(PASSWORD not in device.error, "an error shows a password")
    return error


def picture(device, source, dice, kilobytes):
    """A photo nobody else has: a picture of the demo with comments [T.81 B.2.4.5] of random bytes in front."""
    with open(os.path.join(source, "demo-rig", "photos", "rivet-2026-11.jpg"), "rb") as file:
        whole = file.read()
    parts = [b"\xff\xfe\xff\xff" + dice.randbytes(65_533) for _ in range(kilobytes // 64)]
    data = whole[:2] + b"".join(parts) + b"\xff\xfe\x00\x12" + dice.randbytes(16) + whole[2:]
    name = os.path.join(device.folder, f"photo-{dice.randrange(10**9)}.jpg")
    with open(name, "wb") as file:
        file.write(data)
    return name, hashlib.blake2b(data, digest_size=32).hexdigest()


def originals(device):
    """Hashes of the originals that lie on a device, each computed from its bytes."""
    found = set()
    for where, _, names in os.walk(device.book + ".photos"):
        for name in names:
            if name.endswith((".jpg", ".png")) and ".thumb" not in name:
                with open(os.path.join(where, name), "rb") as file:
                    digest = hashlib.blake2b(file.read(), digest_size=32).hexdigest()
                check(name.startswith(digest), f"{device.name}: {name} is not what its name says")
                found.add(digest)
    return found


def kept(server):
    return {name: value for name, value in tree(server.data).items() if name.startswith("snugwalk1/") and
            not name.startswith("snugwalk1/tmp/") and "/.DAV/" not in name}


def wrong_password(owner, server, authority):
    knows(owner, "locked", server.address, authority.file, "three wrong words")
    told(owner, "locked", NETWORK, "let you in", "password")
    check(kept(server) == {}, f"something was written without the password: {kept(server)}")
    owner.json("store", "remove", "locked")
    owner.refused("store", "add", "plain", "webdav", server.address.replace("https", "http"), "--user", USER,
                  "--password-file", os.path.join(owner.folder, "password.txt"), code=3, saying=["https"])


def certificates(owner, server, authority):
    """An expired certificate, one of another host, and authorities that are not ours: nothing is sent, nor read."""
    for cert in ("over", "other"):
        server.kill()
        server.start(cert)
        told(owner, "web", NETWORK, "cannot prove", "date", "certificate")
    server.kill()
    server.start()
    for name, file in (("stranger", authority.stranger), ("system", None)):
        knows(owner, name, server.address, file)
        told(owner, name, NETWORK, "cannot prove")
        owner.json("store", "remove", name)
    check(kept(server) == {}, "something was sent to a server that could not prove itself")
    help_text = owner.run("store", "add", "--help") + owner.run("sync", "--help")
    check(not any(word in help_text for word in ("insecure", "no-verify", "no-check")), "checking can be switched off")
    # a file that somebody puts in the authority's place later changes nothing
    copy = owner.writes("authority.pem", authority.file.read_text(encoding="ascii"))
    knows(owner, "pinned", server.address, copy)
    os.replace(owner.writes("other.pem", authority.stranger.read_text(encoding="ascii")), copy)
    owner.refused("store", "add", "none", "webdav", server.address, "--authority", owner.writes("none.pem", ""), code=3,
                  saying=["certificate"])


def killed_server(device, server, dice, again):
    """Kills the server after some steps of a sync; `again` starts it at once, else the sync has to end by itself."""
    process = device.start("--json", "sync", "--store", "web", "--progress", "--originals", "all")
    for _ in range(dice.randrange(2, 12)):
        process.stderr.readline()
    middle = process.poll() is None
    server.kill()
    if again:
        server.start()
    out, err = process.communicate(timeout=300)
    if not again:
        server.start()
    if process.returncode == 0:
        return middle and again
    check(process.returncode == NETWORK, f"{device.name}: exit {process.returncode} after the server died: {out}{err}")
    error = json.loads(err.strip().split("\n")[-1])["error"]
    check(error["code"] == "network" and error["where"].startswith("web") and error["do"], f"told {error}")
    return middle


def all_write(devices, source, dice, day):
    """Each marks points, writes a finding and adds a photo; gives the photos' hashes."""
    added = set()
    for place, device in enumerate(devices):
        finding = device.acted("--at", DAY.format(day), "finding", "add", "window-frames", "--new", "--defect", "gap",
                               "--grade", "2", "--place", f"window {place + 1}")
        name, digest = picture(device, source, dice, 1600 if place == day % 3 else 64)
        device.acted("--at", DAY.format(day), "photo", "add", name, "--finding", finding["id"][:8])
        added.add(digest)
    return added


def killed_in_the_middle(devices, server, source, dice):
    photos, interrupted = set(), 0
    for turn in range(3):
        photos |= all_write(devices, source, dice, turn + 2)
        for place, device in enumerate(devices):
            interrupted += killed_server(device, server, dice, again=(turn + place) % 3 != 0)
            device.syncs(store="web")  # what broke off goes on
    check(interrupted >= 5, f"only {interrupted} of 9 syncs were interrupted")
    return photos, interrupted


def cut_on_the_way(devices, server, authority, source, dice):
    """All over a proxy that breaks connections off: each sync either ends whole or says that the network failed."""
    proxy = CuttingProxy(server.port, lambda: dice.choice([300, 3_000, 20_000, 100_000, 600_000, 5_000_000]))
    photos = all_write(devices, source, dice, 8)
    failed = 0
    for device in devices:
        knows(device, "shaky", proxy.address, authority.file)
        for _ in range(40):
            process = device.start("--json", "sync", "--store", "shaky", "--originals", "all")
            _, err = process.communicate(timeout=300)
            if process.returncode == 0:
                break
            check(process.returncode == NETWORK and '"network"' in err, f"exit {process.returncode}: {err}")
            failed += 1
        check(process.returncode == 0, f"{device.name} never got through the proxy: {err}")
    check(proxy.cuts > 5, f"the proxy cut {proxy.cuts} times only")
    return photos, proxy.cuts, failed


def full_disk(owner, base, kind, authority):
    """A server whose disk takes 2 MiB: it is told, nothing is lost here, and once there is room the next sync ends."""
    small = base / "small"
    (small / "data").mkdir(parents=True)
    mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=2m,mode=0777", "tmpfs", str(small / "data")],
                             capture_output=True, text=True, check=False).returncode == 0
    server = Server(kind, small, authority)
    try:
        server.start()
        if not mounted:  # no right to mount: each of the server's files is held to 400 kB instead
            for pid in [str(server.process.pid), *run("pgrep", "-g", server.process.pid).split()]:
                run("prlimit", f"--pid={pid}", "--fsize=400000")
        before = projection(owner)
        knows(owner, "small", server.address, authority.file)
        process = owner.start("--json", "sync", "--store", "small")
        _, err = process.communicate(timeout=300)
        error = json.loads(err)["error"]
        check((process.returncode, error["code"]) in ((STORAGE, "storage"), (NETWORK, "network")), f"told {error}")
        check("room" in error["what"] + error["do"] and error["where"].startswith("small"), f"told {error}")
        check(projection(owner) == before, "a full disk there changed the logbook here")
        check(owner.json("check", "--deep")["faults"] == [], "a full disk there harmed the logbook here")
        # a name that readers see holds a whole file
        owner.run("check", "--store", "small", expect=STORAGE)
        check("damaged" not in owner.error, f"a file was left in part: {owner.error}")
        if mounted:
            run("mount", "-o", "remount,size=64m", small / "data")
        else:
            server.kill()
            server.start()
        owner.syncs(store="small")
        check(owner.json("check", "--store", "small")["faults"] == [], "after there was room something is missing")
        return process.returncode, error["what"]
    finally:
        server.kill()
        if mounted:
            subprocess.run(["umount", str(small / "data")], check=False)


def journey(program, source, kind, base):
    dice = random.Random(20261130)
    authority = Authority(base)
    folder = base / "devices"
    folder.mkdir(mode=0o700)
    owner, helper, technician = devices = [Device(program, str(folder), name)
                                           for name in ("owner", "helper", "technician")]
    owner.run("demo", "--from", os.path.join(source, "demo-rig"))
    photos = originals(owner)
    server = Server(kind, base / "server", authority)
    try:
        server.start()
        for device in devices:
            knows(device, "web", server.address, authority.file)
        owner.json("share", rig_of(owner))
        wrong_password(owner, server, authority)
        certificates(owner, server, authority)
        enrolls(owner, helper, "helper")
        enrolls(owner, technician, "technician")
        check(killed_server(owner, server, dice, again=False), "the first sync ended before the server did")
        owner.syncs(store="pinned")
        for device in devices[1:]:
            killed_server(device, server, dice, again=True)
            device.syncs(store="web")
        expect_alike(devices)
        added, interrupted = killed_in_the_middle(devices, server, source, dice)
        through, cuts, failed = cut_on_the_way(devices, server, authority, source, dice)
        photos |= added | through
        round_of(devices, store="web")
        expect_alike(devices)
        helper.json("photo", "want", "--all")
        helper.syncs(store="web")
        for device in (owner, technician):
            device.syncs("--originals", "all", store="web")
        for device in devices:
            check(originals(device) == photos, f"{device.name} has {len(originals(device))} originals of {len(photos)}")
            check(device.json("check", "--deep")["faults"] == [], f"{device.name} is damaged")
            check(device.json("aside", "list")["aside"] == [], "an entry was set aside")
        check(owner.json("check", "--store", "web")["faults"] == [], "the server's copy is damaged")
        code, what = full_disk(owner, base, kind, authority)
        expect_alike(devices)
    finally:
        server.kill()
    print(f"  {kind}: {interrupted} of 9 syncs interrupted by a dead server, {cuts} connections cut ({failed} syncs told), "
          f"{len(photos)} photos on three devices, full disk: exit {code}, \"{what}\"")


def main():
    base = scratch()
    try:
        journey(sys.argv[1], sys.argv[2], sys.argv[3], base)
    except Failed as fault:
        print("failed:", fault)
        return 1
    finally:
        remove(base)
    print("three logbooks ended alike")
    return 0


if __name__ == "__main__":
    sys.exit(main())
