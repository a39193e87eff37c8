# SPDX-License-Identifier: Apache-2.0
"""The WebDAV store against a real server from Debian: exchange, kill and restart, a full disk, passwords,
certificates, a proxy that cuts. usage: real.py PROBE apache|nginx"""
import json
import os
import random
import subprocess
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from servers import PASSWORD, USER, Authority, CuttingProxy, Server, remove, run, scratch, tree  # noqa: E402

PROBE, KIND = sys.argv[1], sys.argv[2]
FAULTS = []
random.seed(7)


def words(address, authority, tries=3, user=USER, password=PASSWORD):
    return [PROBE, "--address", address, "--authority", str(authority), "--user", user, "--password", password,
            "--idle", "5000", "--total", "20000", "--tries", str(tries)]


def call(address, authority, *command, **more):
    done = subprocess.run([*words(address, authority, **more), *map(str, command)], capture_output=True, text=True,
                          timeout=300, check=False)
    if done.returncode < 0 or not done.stdout.strip():
        sys.exit(f"the probe ended with {done.returncode}: {done.stderr}")
    return json.loads(done.stdout)


def note(ok, *what):
    print(("  ok   " if ok else "  FAIL ") + " ".join(str(w) for w in what)[:300])
    if not ok:
        FAULTS.append(what)


def make_files(folder, count, largest):
    for i in range(count):
        path = folder / f"snugwalk1/{folder.name}{i % 3}/dev{i % 2}/{i:06d}.seg"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_bytes(random.randbytes(random.randint(0 if i else 1, largest)))
    return folder


def kept(server):
    """What the server has under final names."""
    return {name: value for name, value in tree(server.data).items()
            if "/tmp/" not in name and not name.startswith(".tmp/") and ".davfs" not in name and "/.DAV/" not in name
            and not name.startswith(".DAV")}


def exchange(server, authority, base):
    mine, theirs = make_files(base / "mine", 24, 200_000), base / "theirs"
    note(call(server.address, authority.file, "probe")["ok"], "first contact")
    answer = call(server.address, authority.file, "publish-all", mine)
    note(answer == {"ok": True, "published": 24} and kept(server) == tree(mine), "24 files there, byte for byte", answer)
    answer = call(server.address, authority.file, "publish-all", mine)
    note(answer.get("published") == 24 and kept(server) == tree(mine), "again changes nothing", answer)
    answer = call(server.address, authority.file, "fetch-all", theirs)
    note(answer.get("fetched") == 24 and tree(theirs) == tree(mine), "and back", answer)
    name = "snugwalk1/mine0/dev0/000000.seg"
    (base / "other").write_bytes(b"other bytes")
    before = tree(server.data)
    answer = call(server.address, authority.file, "publish", name, base / "other")
    note(answer.get("code") == "conflict" and kept(server)[name] == before[name], "other bytes are a conflict", answer)
    note(call(server.address, authority.file, "list", "snugwalk1/no")["files"] == [], "a folder that is not there")
    note(call(server.address, authority.file, "read", "snugwalk1/no", 5).get("code") == "not_found", "nor a file")
    left = [n for n in tree(server.data) if n.endswith(".part")]
    note(not left, "no part is left over", left)


def killed(server, authority, base):
    files = make_files(base / "killed", 60, 60_000)
    total, rounds, seen = len(tree(files)), 0, 0
    while rounds < 30:
        rounds += 1
        probe = subprocess.Popen([*words(server.address, authority.file, tries=2), "publish-all", str(files)],
                                 stdout=subprocess.PIPE, stderr=subprocess.PIPE, text=True)
        for _ in range(7):  # so many are acknowledged, then the power goes
            line = probe.stderr.readline()
            seen += bool(line)
        # what is there already is acknowledged again at the start of each round, so go further each time
        for _ in range(7 * (rounds - 1)):
            probe.stderr.readline()
        if probe.poll() is None and rounds < 8:
            server.kill()
            server_was_killed = True
        else:
            server_was_killed = False
        out, _ = probe.communicate(timeout=300)
        answer = json.loads(out)
        if server_was_killed:
            server.start()
        if answer["ok"]:
            break
        if answer["code"] != "network":
            note(False, "an error that is none of the network", answer)
            return
    wrong = {n: h for n, h in kept(server).items() if n in tree(files) and tree(files)[n] != h}
    note(not wrong, "no file is there in part under its name", list(wrong))
    missing = [n for n in tree(files) if n not in kept(server)]
    note(answer["ok"] and not missing, f"{total} files after {rounds} rounds with the server killed in between",
         missing)


def passwords(server, authority, base):
    (base / "file").write_bytes(b"x")
    for user, password in [(USER, "wrong"), ("nobody", PASSWORD)]:
        answer = call(server.address, authority.file, "publish", "snugwalk1/p", base / "file", user=user,
                      password=password)
        note(answer.get("code") == "network" and "let you in" in answer["what"], "a wrong password", answer)
        note(not call(server.address, authority.file, "list", user=user, password=password)["ok"], "nor a list")
    note("snugwalk1/p" not in kept(server), "nothing was written")


def certificates(server, authority, base):
    (base / "file").write_bytes(b"x")
    for cert, trusted, what in [("over", authority.file, "expired"), ("other", authority.file, "of another host"),
                                ("good", authority.stranger, "of an authority that is not ours")]:
        server.kill()
        server.start(cert)
        answer = call(server.address, trusted, "publish", "snugwalk1/c", base / "file")
        note(answer.get("code") == "network" and "prove" in answer["what"], "a certificate", what, answer)
        note("snugwalk1/c" not in kept(server), "nothing was written")
    server.kill()
    server.start()
    note(call(server.address, authority.file, "publish", "snugwalk1/c", base / "file")["ok"], "with the right one it is")


def cut(server, authority, base):
    files = make_files(base / "cut", 20, 30_000)
    proxy = CuttingProxy(server.port, lambda: random.choice([0, 300, 2_000, 6_000, 15_000, 50_000]))
    rounds = 0
    for rounds in range(1, 200):
        answer = call(proxy.address, authority.file, "publish-all", files, tries=4)
        there = kept(server)
        for name, value in tree(files).items():
            if name in there and there[name] != value:
                note(False, "a file is there in part", name)
        if answer["ok"]:
            break
    note(answer["ok"] and all(kept(server).get(n) == h for n, h in tree(files).items()),
         f"20 files through a proxy that cut {proxy.cuts} times, {rounds} rounds")
    note(proxy.cuts > 5, f"the proxy did cut, {proxy.cuts} times")
    proxy = CuttingProxy(server.port, lambda: random.choice([0, 300, 2_000, 6_000, 15_000, 60_000, 400_000]))
    for rounds in range(1, 200):
        answer = call(proxy.address, authority.file, "fetch-all", base / "fetched", tries=4)
        if answer["ok"]:
            break
    got = tree(base / "fetched")
    note(answer["ok"] and all(got.get(n) == h for n, h in tree(files).items()), "and back through it", rounds)
    note(proxy.cuts > 1, f"the proxy did cut, {proxy.cuts} times")


def full_disk(authority, base):
    """A disk of 2 MiB for the server's data; needs the right to mount one."""
    small = base / "small"
    (small / "data").mkdir(parents=True)
    mounted = subprocess.run(["mount", "-t", "tmpfs", "-o", "size=2m,mode=0777", "tmpfs", str(small / "data")],
                             capture_output=True, text=True, check=False)
    limited = mounted.returncode != 0
    if limited:
        print(f"  (no tmpfs here: {mounted.stderr.strip()}; the server's files are limited by RLIMIT_FSIZE instead)")
    server = Server(KIND, small, authority)
    try:
        server.start()
        if limited:
            run("prlimit", f"--pid={server.process.pid}", "--fsize=400000")
            for pid in run("pgrep", "-g", str(server.process.pid)).split():
                run("prlimit", f"--pid={pid}", "--fsize=400000")
        files = base / "fill"
        for i in range(12):
            path = files / f"snugwalk1/f/{i:02d}.chk"
            path.parent.mkdir(parents=True, exist_ok=True)
            path.write_bytes(random.randbytes(500_000 if limited else 300_000))
        answer = call(server.address, authority.file, "publish-all", files)
        there = kept(server)
        whole = sum(there.get(n) == h for n, h in tree(files).items())
        note(not answer["ok"] and answer["code"] in ("storage", "network"), "a full disk is told", answer)
        note(whole == len([n for n in there if n.startswith("snugwalk1/f/")]), f"{whole} files whole, none in part")
        if not limited:
            for name in list(there)[:]:
                (server.data / name).unlink()
            for part in server.data.rglob("*"):
                if part.is_file() and (part.name.endswith(".part") or ".davfs" in part.name or ".tmp" in str(part)):
                    part.unlink()
            (base / "small-file").write_bytes(b"x" * 1000)
            note(call(server.address, authority.file, "publish", "snugwalk1/f/after", base / "small-file")["ok"],
                 "after freeing it goes on")
    finally:
        server.kill()
        if not limited:
            subprocess.run(["umount", str(small / "data")], check=False)


def main():
    base = scratch()
    authority = Authority(base)
    server = Server(KIND, base / "server", authority)
    try:
        server.start()
        for part in (exchange, passwords, certificates, killed, cut):
            print(f"{KIND}: {part.__name__}")
            part(server, authority, base)
        print(f"{KIND}: full disk")
        full_disk(authority, base)
    finally:
        server.kill()
        remove(base)
    print(f"{KIND}: {len(FAULTS)} wrong")
    sys.exit(1 if FAULTS else 0)


if os.uname().sysname == "Linux":
    main()
