# SPDX-License-Identifier: Apache-2.0
"""Every fault at every step of writing, reading and listing: the store never calls it a success.
A success is checked on the server's side: the bytes are there, whole, under the name.
usage: matrix.py PROBE scripted"""
import hashlib
import json
import subprocess
import sys
import tempfile
from pathlib import Path

sys.path.insert(0, str(Path(__file__).parent))
from scripted import Plan, Server  # noqa: E402

PROBE = sys.argv[1]
STATUS = [400, 401, 403, 404, 405, 409, 412, 413, 415, 422, 423, 429, 500, 501, 502, 503, 504, 507, 200, 202, 204, 206,
          207, 299, 100 + 499]
WORDS = ["timeout", "trickle", "reset", "close", "cut body", "cut header", "portal", "plain portal", "portal 201",
         "huge", "garbage", (301, "/elsewhere/"), (302, "http://127.0.0.1:1/"), (303, "/dav/other"), (307, "/dav/other"),
         (308, "/dav/other"), (304, "/")]
NAME, CONTENT = "snugwalk1/a/0001.seg", b"a segment " * 50
# Faults that may pass: after one of them the next try must go through.
PASSING = [429, 500, 502, 503, 504, 423, "reset", "close", "cut header", "garbage", "timeout", "done but lost"]


def call(server, *words, tries=2):
    run = subprocess.run([PROBE, "--address", server.address, "--idle", "300", "--total", "700",
                          "--tries", str(tries), *words], capture_output=True, text=True, timeout=120, check=False)
    if run.returncode < 0 or not run.stdout.strip():
        sys.exit(f"the probe ended with {run.returncode} for {words}: {run.stderr}")
    answer = json.loads(run.stdout)
    if not answer["ok"] and not (answer["what"] and "code" in answer):
        sys.exit(f"an error without words: {answer}")
    return answer


def main():
    server = Server()
    here = Path(tempfile.mkdtemp())
    (here / "file").write_bytes(CONTENT)
    false, wrong, cells, passed = [], [], 0, 0
    call(server, "probe")

    def note(ok, *what):
        if not ok:
            wrong.append(what)

    for verb in ["HEAD", "MKCOL", "PUT", "MOVE"]:
        for fault in STATUS + WORDS + ["half kept"]:
            if fault == "half kept" and verb != "PUT":
                continue
            server.clear(Plan(verb, fault))
            answer = call(server, "publish", NAME, str(here / "file"))
            cells += 1
            if answer["ok"] and server.files.get("/dav/" + NAME) != CONTENT:
                false.append((verb, fault, answer))
    for verb, words in [("GET", ("read", NAME, "100000")), ("PROPFIND", ("list", "snugwalk1/a"))]:
        for fault in STATUS + WORDS:
            if (verb, fault) == ("GET", 200):
                continue  # no fault: whole bytes of someone, which who reads compares with a hash
            server.clear(Plan(verb, fault))
            server.folders |= {"/dav/snugwalk1/", "/dav/snugwalk1/a/"}
            server.files["/dav/" + NAME] = CONTENT
            answer = call(server, *words)
            cells += 1
            right = answer["ok"] and (answer.get("hash") == hashlib.blake2b(CONTENT, digest_size=32).hexdigest()
                                      or answer.get("files") == [["0001.seg", len(CONTENT)]])
            # a folder that is not there is an empty list, which is what 404 says
            empty = verb == "PROPFIND" and fault == 404 and answer == {"ok": True, "files": []}
            if answer["ok"] and not right and not empty:
                false.append((verb, fault, answer))

    # the right class: what may pass is tried again and goes through, what does not is told at once
    for verb in ["HEAD", "MKCOL", "PUT", "MOVE"]:
        for fault in PASSING:
            if fault == "done but lost" and verb not in ("PUT", "MOVE", "MKCOL"):
                continue
            server.clear(Plan(verb, fault, times=1))
            answer = call(server, "publish", NAME, str(here / "file"), tries=3)
            cells += 1
            passed += 1
            note(answer["ok"] and server.files.get("/dav/" + NAME) == CONTENT, "did not go through", verb, fault, answer)
    for fault, code in [(401, "network"), (403, "network"), (413, "storage"), (507, "storage"), ((302, "/x"), "network"),
                        ("portal", "network")]:
        server.clear(Plan("PUT", fault, only_part=True))
        answer = call(server, "publish", NAME, str(here / "file"), tries=5)
        cells += 1
        puts = sum(1 for verb, path in server.plan.seen if verb == "PUT" and path.endswith(".part"))
        note(not answer["ok"] and answer["code"] == code and puts == 1, "tried again", fault, answer, puts)
    # MOVE that the server does not do: written in place
    for fault in [403, 405, 501]:
        server.clear(Plan("MOVE", fault))
        answer = call(server, "publish", NAME, str(here / "file"))
        cells += 1
        note(answer["ok"] and server.files.get("/dav/" + NAME) == CONTENT, "not written in place", fault, answer)
    # something has the name: the same is done, other bytes are a conflict and stay
    for there in [CONTENT, CONTENT[:-1], CONTENT[:-1] + b"?", CONTENT * 3]:
        server.clear(Plan())
        server.folders |= {"/dav/snugwalk1/", "/dav/snugwalk1/a/"}
        server.files["/dav/" + NAME] = there
        answer = call(server, "publish", NAME, str(here / "file"))
        cells += 1
        note(answer["ok"] == (there == CONTENT) and server.files["/dav/" + NAME] == there
             and answer.get("code", "conflict") == "conflict", "overwritten or not told", answer)
    # limits of an answer
    server.clear(Plan())
    server.files["/dav/big"] = b"x" * 2000
    note(call(server, "read", "big", "1999").get("code") == "out_of_range", "limit of a file")
    note(call(server, "read", "big", "2000")["ok"], "a file at the limit")
    note(call(server, "read", "gone", "1").get("code") == "not_found", "a missing file")
    note(call(server, "probe")["ok"] and not [f for f in server.files if "probe" in f or f.endswith(".part")],
         "the first contact leaves something", list(server.files))
    # addresses and passwords that are never used
    for words in [("--address", "http://192.0.2.1/dav/"), ("--address", "ftp://127.0.0.1/"), ("--address", "nonsense"),
                  ("--address", server.address, "--user", "u", "--password", "p"),
                  ("--address", "https://u:p@127.0.0.1/"), ("--address", "https://127.0.0.1/?x")]:
        run = subprocess.run([PROBE, *words, "list"], capture_output=True, text=True, timeout=60, check=False)
        note(json.loads(run.stdout).get("code") == "invalid_input", "an address that must not be used", words)
        cells += 1
    server.stalled.set()

    print(f"{cells} cells: {len(false)} false successes, {passed} faults that pass, {len(wrong)} wrong classes")
    for fault in false + wrong:
        print("  ", *fault)
    sys.exit(1 if false or wrong else 0)


main()
