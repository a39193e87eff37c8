// SPDX-License-Identifier: Apache-2.0
// A device signs what it wrote; nobody else can, and nothing can be changed afterwards.
#include <doctest/doctest.h>

#include "keys/device_key.hpp"
#include "keys/hash.hpp"

using namespace snugwalk;

TEST_CASE("the same seed is the same device")
{
    const std::string seed(32, 's');
    const DeviceKey key = DeviceKey::fromSeed(seed);
    CHECK(key.seed() == seed);
    CHECK(key.publicKey() == DeviceKey::fromSeed(seed).publicKey());
    CHECK(key.publicKey() != DeviceKey::fromSeed(std::string(32, 't')).publicKey());
    CHECK(key.deviceId().view() == blake2b(key.publicKey()).view().substr(0, 16));
    CHECK(DeviceKey::random().publicKey() != DeviceKey::random().publicKey());
}

TEST_CASE("a signature holds for its message and its key alone")
{
    const DeviceKey key = DeviceKey::fromSeed(std::string(32, 's'));
    const std::string message = "mark 17: attention";
    const std::string signature = key.sign(message);
    CHECK(signature.size() == 64);
    CHECK(verifySignature(key.publicKey(), message, signature));
    CHECK_FALSE(verifySignature(key.publicKey(), "mark 17: pass", signature));
    CHECK_FALSE(verifySignature(DeviceKey::random().publicKey(), message, signature));
    for (std::size_t i = 0; i < signature.size(); ++i) {
        CAPTURE(i);
        std::string changed = signature;
        changed[i] = static_cast<char>(changed[i] ^ 1);
        CHECK_FALSE(verifySignature(key.publicKey(), message, changed));
    }
}

TEST_CASE("a key or signature of another length is no signature")
{
    const DeviceKey key = DeviceKey::fromSeed(std::string(32, 's'));
    const std::string signature = key.sign("m");
    CHECK_FALSE(verifySignature("", "m", signature));
    CHECK_FALSE(verifySignature(key.publicKey().substr(1), "m", signature));
    CHECK_FALSE(verifySignature(key.publicKey(), "m", signature.substr(1)));
    CHECK_FALSE(verifySignature(key.publicKey(), "m", signature + "x"));
    CHECK_FALSE(verifySignature(key.publicKey(), "m", ""));
}

TEST_CASE("a stream is a device and its incarnation, 24 bytes")
{
    StreamId stream;
    stream.device = DeviceKey::fromSeed(std::string(32, 's')).deviceId();
    stream.incarnation = {1, 2, 3, 4, 5, 6, 7, 255};
    const std::string bytes = stream.bytes();
    CHECK(bytes.size() == 24);
    CHECK(streamFromBytes(bytes).value() == stream);
    CHECK(stream.text() == stream.device.shortText() + "-01020304050607ff");
    CHECK(streamFromBytes(bytes.substr(1)).error().code == Errc::Corrupt);
    CHECK(streamFromBytes(bytes + "x").error().code == Errc::Corrupt);
}
