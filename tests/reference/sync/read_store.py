# SPDX-License-Identifier: Apache-2.0
"""A store read from core/sync/FORMAT.md alone: cbor2 (RFC 8949), PyNaCl (Ed25519, XChaCha20-Poly1305,
X25519 boxes, Argon2id of RFC 9106 [RFC9106]), zstandard (RFC 8878), hashlib (BLAKE2b). Nothing of ours but
the program that wrote it."""
import hashlib
import io
import json
import pathlib
import subprocess
import sys
import tempfile

import cbor2
import nacl.bindings as sodium
import nacl.public
import nacl.pwhash
import nacl.signing
import zstandard

checks = 0


def check(what, found, wanted):
    global checks
    checks += 1
    if found != wanted:
        sys.exit(f"{what}: {found!r}, not {wanted!r}")


def blake(data):
    return hashlib.blake2b(data, digest_size=32).digest()


def keyed(key, purpose, data):
    text = f"{len(purpose)}:{purpose}".encode() + f"{len(data)}:".encode() + data
    return hashlib.blake2b(text, digest_size=32, key=key).digest()


def opened(path, purpose):
    """Members of a COSE_Sign1 file whose name, signature and form are right."""
    data = path.read_bytes()
    check(f"{path.name} is named by its hash", path.name.split(".")[0].split("-")[1], blake(data).hex()[:20])
    tagged = cbor2.loads(data)
    check("tag of COSE_Sign1", tagged.tag, 18)
    protected, unprotected, payload, signature = tagged.value
    check("algorithm", cbor2.loads(protected), {1: -8})
    check("unprotected", unprotected, {})
    members = cbor2.loads(payload)
    check("deterministic", cbor2.dumps(members, canonical=True), payload)
    to_sign = cbor2.dumps(["Signature1", protected, purpose.encode(), payload])
    nacl.signing.VerifyKey(members["key"]).verify(to_sign, signature)
    return members, data


def varints(data):
    numbers, value, shift = [], 0, 0
    for byte in data:
        value |= (byte & 127) << shift
        shift += 7
        if byte < 128:
            numbers.append(value)
            value = shift = 0
    return numbers


def unzigzag(n):
    return (n >> 1) ^ -(n & 1)


def read_segments(base, epoch):
    titles, previous = [], bytes(32)
    for path in sorted((base / "s").glob("*/*.seg")):
        members, data = opened(path, "snugwalk segment 1")
        check("chain of files", members["prev"], previous)
        previous = blake(data)
        check("device", blake(members["key"])[:16], members["stream"][:16])
        check("name of the key", members["epoch"], keyed(epoch, "snugwalk epoch", b"")[:8])
        bound = cbor2.dumps({k: v for k, v in members.items() if k != "cipher"}, canonical=True)
        squeezed = sodium.crypto_aead_xchacha20poly1305_ietf_decrypt(members["cipher"], bound,
                                                                      members["nonce"], epoch)
        plain = zstandard.ZstdDecompressor().decompress(squeezed)
        check("plain size", len(plain), members["plain"])
        columns = cbor2.loads(plain)
        check("number of entries", columns["count"], members["count"])
        shapes, names = [], []
        steps = varints(columns["columns"]["seq"])
        check("a step an entry", len(steps), members["count"])
        for step, ago in zip(steps, varints(columns["columns"]["shape"])):
            check("numbers rise by one in this logbook", unzigzag(step), 1)
            if ago == 0:
                shapes.append(columns["shapes"][len(shapes)])
            shape = shapes[-1] if ago == 0 else shapes[len(shapes) - ago]
            # a name in a list stands for a value that the entry tells itself
            names += [name for name in shape if isinstance(name, str) and name not in names]
        titles += sequence(columns["values"][names.index("title")])
    return titles


def sequence(data):
    """CBOR items, one after another (RFC 8742)."""
    items, file = [], io.BytesIO(data)
    while file.tell() < len(data):
        items.append(cbor2.load(file))
    return items


def read_photo(base, epoch, photo):
    name = keyed(epoch, "snugwalk manifest name", photo).hex()
    key = keyed(epoch, "snugwalk photo", photo)

    def unsealed(data, place):
        return sodium.crypto_aead_xchacha20poly1305_ietf_decrypt(data[24:], place, data[:24], key)

    manifest = cbor2.loads(unsealed((base / "m" / name[0] / f"{name}.man").read_bytes(), b"snugwalk manifest 1"))
    whole = b""
    for index, chunk in enumerate(manifest["chunks"]):
        data = (base / "b" / chunk.hex()[:2] / f"{chunk.hex()}.chk").read_bytes()
        check("a piece is named by its hash", blake(data), chunk)
        whole += unsealed(data, f"snugwalk chunk {index}".encode())
    check("size of the photo", len(whole), manifest["size"])
    check("the photo", blake(whole), photo)


def read_records(base, seed, epoch):
    paths = sorted((base / "c").glob("*/*.ctl"))
    check("one founding record", len(paths), 1)
    members, _ = opened(paths[0], "snugwalk control 1")
    check("action", members["action"], "found")
    pair_seed = keyed(seed, "snugwalk seal pair", b"")
    public, secret = sodium.crypto_box_seed_keypair(pair_seed)
    check("X25519 key", members["body"]["seal"], public)
    box = nacl.public.SealedBox(nacl.public.PrivateKey(secret))
    check("the rig's key", box.decrypt(members["body"]["sealed"][0]["sealed"]), epoch)


def read_secret(path, seed):
    members = cbor2.loads(path.read_bytes())
    key = nacl.pwhash.argon2id.kdf(32, b"a passphrase", members["salt"], opslimit=members["passes"],
                                   memlimit=members["memory"])
    plain = sodium.crypto_aead_xchacha20poly1305_ietf_decrypt(members["cipher"], b"snugwalk secret 1",
                                                              members["nonce"], key)
    check("the secret behind a passphrase", plain, seed)


def main():
    with tempfile.TemporaryDirectory() as folder:
        told = json.loads(subprocess.run([sys.argv[1], folder], check=True, capture_output=True).stdout)
        epoch, seed = bytes.fromhex(told["epoch"]), bytes.fromhex(told["seed"])
        base = pathlib.Path(folder) / "store" / "snugwalk1" / told["rig"]
        titles = read_segments(base, epoch)
        check("every trip", sorted(titles), sorted(f"trip {i}" for i in range(500)))
        read_photo(base, epoch, bytes.fromhex(told["photo"]))
        read_records(base, seed, epoch)
        read_secret(pathlib.Path(folder) / "secret", seed)
    print(f"{checks} checks held")


main()
