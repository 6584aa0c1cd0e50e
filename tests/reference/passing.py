"""Prints, as JSON, what the library cryptography says of the signature of a site file, and what Python's own zlib
and base64 find in a link. The bytes that are signed are put together here from the documentation alone."""

import base64
import hashlib
import json
import sys
import zlib

from cryptography.exceptions import InvalidSignature
from cryptography.hazmat.primitives.asymmetric.ed25519 import Ed25519PublicKey


def decode(text):
    return base64.urlsafe_b64decode(text + "=" * (-len(text) % 4))


def signed(file):
    canonical = json.dumps(file["site"], sort_keys=True, separators=(",", ":"), ensure_ascii=False)
    schema, edition = file["schema"].to_bytes(4, "big"), file["signed"]["edition"].to_bytes(4, "big")
    message = b"brimline site 1\0" + schema + edition + canonical.encode()
    try:
        Ed25519PublicKey.from_public_bytes(decode(file["signed"]["by"])).verify(decode(file["signed"]["signature"]), message)
        return True
    except InvalidSignature:
        return False


def content(link):
    packed = decode(link)
    assert packed[0] == 1 and int.from_bytes(packed[1:3], "big") == len(packed) - 7
    assert zlib.crc32(packed[:3] + packed[7:]) == int.from_bytes(packed[3:7], "big")
    return json.loads(zlib.decompress(packed[7:], -15))


def fingerprint(key):
    digest = hashlib.sha256(decode(key)).hexdigest()[:20]
    return " ".join(digest[at:at + 4] for at in range(0, 20, 4))


asked = json.load(sys.stdin)
print(json.dumps({
    "signed": [signed(file) for file in asked["files"]],
    "fingerprints": [fingerprint(file["signed"]["by"]) for file in asked["files"]],
    "links": [content(link) for link in asked["links"]],
}))
