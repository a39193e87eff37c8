// SPDX-License-Identifier: Apache-2.0
// Hashes and random bytes by libsodium.
#include "keys/hash.hpp"

#include <algorithm>
#include <sodium.h>

#include "base/contract.hpp"
#include "base/text.hpp"
#include "keys/sodium_ready.hpp"

namespace snugwalk {
namespace {

const unsigned char *raw(std::string_view bytes)
{
    return reinterpret_cast<const unsigned char *>(bytes.data());
}

} // namespace

std::string Hash::text() const { return toHex(view()); }

std::optional<Hash> Hash::fromBytes(std::string_view raw)
{
    Hash hash;
    if (raw.size() != hash.bytes.size())
        return std::nullopt;
    std::transform(raw.begin(), raw.end(), hash.bytes.begin(),
                   [](char c) { return static_cast<std::uint8_t>(c); });
    return hash;
}

std::optional<Hash> Hash::parse(std::string_view hex)
{
    const auto bytes = fromHex(hex);
    return bytes ? fromBytes(*bytes) : std::nullopt;
}

struct Hasher::State {
    crypto_generichash_state sodium;
};

Hasher::Hasher() : m_state(std::make_unique<State>())
{
    detail::sodiumReady();
    crypto_generichash_init(&m_state->sodium, nullptr, 0, 32);
}

Hasher::~Hasher() = default;

void Hasher::add(std::string_view bytes)
{
    crypto_generichash_update(&m_state->sodium, raw(bytes), bytes.size());
}

Hash Hasher::finish()
{
    Hash hash;
    crypto_generichash_final(&m_state->sodium, hash.bytes.data(), hash.bytes.size());
    return hash;
}

Hash blake2b(std::string_view bytes)
{
    Hasher hasher;
    hasher.add(bytes);
    return hasher.finish();
}

Id derivedId(std::string_view purpose, std::string_view a, std::string_view b)
{
    // lengths are part of the input, so that ("ab","c") and ("a","bc") differ
    std::string input;
    for (const std::string_view part : {purpose, a, b}) {
        input += std::to_string(part.size());
        input += ':';
        input += part;
    }
    return Id::fromBytes(blake2b(input).view().substr(0, 16));
}

std::string randomBytes(std::size_t size)
{
    detail::sodiumReady();
    std::string bytes(size, '\0');
    randombytes_buf(bytes.data(), size);
    return bytes;
}

Id RandomIds::next() { return Id::fromBytes(randomBytes(16)); }

Id CountingIds::next() { return derivedId("counting", m_seed, std::to_string(++m_count)); }

} // namespace snugwalk
