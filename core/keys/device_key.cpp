// SPDX-License-Identifier: Apache-2.0
// Ed25519 by libsodium.
#include "keys/device_key.hpp"

#include <algorithm>
#include <sodium.h>

#include "base/contract.hpp"
#include "base/text.hpp"
#include "keys/hash.hpp"
#include "keys/sodium_ready.hpp"

namespace snugwalk {
namespace {

const unsigned char *raw(std::string_view bytes)
{
    return reinterpret_cast<const unsigned char *>(bytes.data());
}

std::string asText(const std::uint8_t *bytes, std::size_t size)
{
    return {reinterpret_cast<const char *>(bytes), size};
}

} // namespace

DeviceKey DeviceKey::fromSeed(std::string_view seed)
{
    SNUG_ASSERT(seed.size() == crypto_sign_SEEDBYTES);
    detail::sodiumReady();
    DeviceKey key;
    std::array<unsigned char, crypto_sign_PUBLICKEYBYTES> ignored{};
    crypto_sign_seed_keypair(ignored.data(), key.m_secret.data(), raw(seed));
    return key;
}

DeviceKey DeviceKey::random() { return fromSeed(randomBytes(crypto_sign_SEEDBYTES)); }

std::string DeviceKey::publicKey() const
{
    // libsodium keeps the seed in the first half of the secret key and the public key in the second
    return asText(m_secret.data() + 32, 32);
}

std::string DeviceKey::seed() const { return asText(m_secret.data(), 32); }

Id DeviceKey::deviceId() const { return Id::fromBytes(blake2b(publicKey()).view().substr(0, 16)); }

std::string DeviceKey::sign(std::string_view message) const
{
    std::array<std::uint8_t, crypto_sign_BYTES> out{};
    crypto_sign_detached(out.data(), nullptr, raw(message), message.size(), m_secret.data());
    return asText(out.data(), out.size());
}

bool verifySignature(std::string_view publicKey, std::string_view message, std::string_view signature)
{
    detail::sodiumReady();
    return publicKey.size() == crypto_sign_PUBLICKEYBYTES && signature.size() == crypto_sign_BYTES &&
           crypto_sign_verify_detached(raw(signature), raw(message), message.size(), raw(publicKey)) == 0;
}

std::string StreamId::bytes() const
{
    return std::string(device.view()) + asText(incarnation.data(), incarnation.size());
}

std::string StreamId::bytesHex() const { return toHex(asText(incarnation.data(), incarnation.size())); }

Result<StreamId> streamFromBytes(std::string_view bytes)
{
    StreamId stream;
    if (bytes.size() != 24)
        return Error{Errc::Corrupt, "a stream name is 24 bytes", "", ""};
    stream.device = Id::fromBytes(bytes.substr(0, 16));
    std::transform(bytes.begin() + 16, bytes.end(), stream.incarnation.begin(),
                   [](char c) { return static_cast<std::uint8_t>(c); });
    return stream;
}

} // namespace snugwalk
