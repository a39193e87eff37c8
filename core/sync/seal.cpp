// SPDX-License-Identifier: Apache-2.0
// Thin over libsodium: lengths checked, nothing of our own.
#include "sync/seal.hpp"

#include <algorithm>
#include <sodium.h>

#include "base/contract.hpp"
#include "keys/hash.hpp"
#include "keys/sodium_ready.hpp"

namespace snugwalk {
namespace {

const unsigned char *raw(std::string_view bytes)
{
    return reinterpret_cast<const unsigned char *>(bytes.data());
}

unsigned char *raw(std::string &bytes) { return reinterpret_cast<unsigned char *>(bytes.data()); }

constexpr std::size_t nonceBytes = crypto_aead_xchacha20poly1305_ietf_NPUBBYTES;
constexpr std::size_t tagBytes = crypto_aead_xchacha20poly1305_ietf_ABYTES;

} // namespace

Secret::~Secret() { sodium_memzero(m_bytes.data(), m_bytes.size()); }

Secret Secret::random() { return fromBytes(randomBytes(32)).value(); }

Result<Secret> Secret::fromBytes(std::string_view bytes)
{
    Secret secret;
    if (bytes.size() != secret.m_bytes.size())
        return Error{Errc::InvalidInput, "a key is 32 bytes", "", ""};
    std::transform(bytes.begin(), bytes.end(), secret.m_bytes.begin(),
                   [](char c) { return static_cast<std::uint8_t>(c); });
    return secret;
}

std::string seal(const Secret &key, std::string_view nonce, std::string_view plain, std::string_view bound)
{
    SNUG_ASSERT(nonce.size() == nonceBytes);
    detail::sodiumReady();
    std::string cipher(plain.size() + tagBytes, '\0');
    crypto_aead_xchacha20poly1305_ietf_encrypt(raw(cipher), nullptr, raw(plain), plain.size(), raw(bound),
                                               bound.size(), nullptr, raw(nonce), raw(key.view()));
    return cipher;
}

Result<std::string> unseal(const Secret &key, std::string_view nonce, std::string_view cipher,
                           std::string_view bound)
{
    detail::sodiumReady();
    const Error wrong{Errc::Corrupt, "these bytes do not open with this key", "", ""};
    if (nonce.size() != nonceBytes || cipher.size() < tagBytes)
        return wrong;
    std::string plain(cipher.size() - tagBytes, '\0');
    if (crypto_aead_xchacha20poly1305_ietf_decrypt(raw(plain), nullptr, nullptr, raw(cipher), cipher.size(),
                                                   raw(bound), bound.size(), raw(nonce),
                                                   raw(key.view())) != 0)
        return wrong;
    return plain;
}

std::string keyedHash(const Secret &key, std::string_view purpose, std::string_view bytes)
{
    detail::sodiumReady();
    const std::string input = std::to_string(purpose.size()) + ":" + std::string(purpose) +
                              std::to_string(bytes.size()) + ":" + std::string(bytes);
    std::string out(32, '\0');
    crypto_generichash(raw(out), out.size(), raw(input), input.size(), raw(key.view()), 32);
    return out;
}

SealPair::SealPair(const Secret &seed) : m_public(32, '\0')
{
    detail::sodiumReady();
    std::string secret(32, '\0');
    crypto_box_seed_keypair(raw(m_public), raw(secret), raw(seed.view()));
    m_secret = Secret::fromBytes(secret).value();
    sodium_memzero(secret.data(), secret.size());
}

SealPair SealPair::of(const DeviceKey &device)
{
    const Secret seed = Secret::fromBytes(device.seed()).value();
    return SealPair(Secret::fromBytes(keyedHash(seed, "snugwalk seal pair", "")).value());
}

Result<std::string> SealPair::open(std::string_view sealed) const
{
    const Error wrong{Errc::Corrupt, "this was not sealed to this device", "", ""};
    if (sealed.size() < crypto_box_SEALBYTES)
        return wrong;
    std::string plain(sealed.size() - crypto_box_SEALBYTES, '\0');
    if (crypto_box_seal_open(raw(plain), raw(sealed), sealed.size(), raw(m_public), raw(m_secret.view())) !=
        0)
        return wrong;
    return plain;
}

Result<std::string> sealTo(std::string_view publicKey, std::string_view plain)
{
    detail::sodiumReady();
    std::string sealed(plain.size() + crypto_box_SEALBYTES, '\0');
    if (publicKey.size() != 32 || crypto_box_seal(raw(sealed), raw(plain), plain.size(), raw(publicKey)) != 0)
        return Error{Errc::InvalidInput, "this is not a key that can be sealed to", "",
                     "show the code of the new device again"};
    return sealed;
}

} // namespace snugwalk
