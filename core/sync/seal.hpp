// SPDX-License-Identifier: Apache-2.0
// Ciphers by libsodium, each under a purpose of its own: XChaCha20-Poly1305, keyed BLAKE2b, sealed boxes.
#pragma once

#include <array>
#include <cstdint>
#include <string>
#include <string_view>

#include "keys/device_key.hpp"

namespace snugwalk {

/// 32 secret bytes; wiped when they go.
class Secret {
public:
    Secret() = default;
    Secret(const Secret &) = default;
    Secret &operator=(const Secret &) = default;
    ~Secret();
    [[nodiscard]] static Secret random();
    /// `InvalidInput` unless there are 32 bytes.
    [[nodiscard]] static Result<Secret> fromBytes(std::string_view bytes);
    [[nodiscard]] std::string_view view() const
    {
        return {reinterpret_cast<const char *>(m_bytes.data()), m_bytes.size()};
    }

private:
    std::array<std::uint8_t, 32> m_bytes{};
};

/// XChaCha20-Poly1305 (libsodium's IETF variant) with a nonce of 24 bytes; the answer is 16 bytes longer.
[[nodiscard]] std::string seal(const Secret &key, std::string_view nonce, std::string_view plain,
                               std::string_view bound);
/// `Corrupt` when key, nonce, bound bytes or a single bit differ.
[[nodiscard]] Result<std::string> unseal(const Secret &key, std::string_view nonce, std::string_view cipher,
                                         std::string_view bound);

/// Keyed BLAKE2b-256 over a purpose and bytes, both with their lengths.
[[nodiscard]] std::string keyedHash(const Secret &key, std::string_view purpose, std::string_view bytes);

/// The X25519 pair of a device, made from its signing seed: what others seal keys to.
class SealPair {
public:
    explicit SealPair(const Secret &seed);
    [[nodiscard]] static SealPair of(const DeviceKey &device);
    [[nodiscard]] const std::string &publicKey() const { return m_public; } ///< 32 bytes
    /// Opens what was sealed to `publicKey`; `Corrupt` when it was not.
    [[nodiscard]] Result<std::string> open(std::string_view sealed) const;

private:
    std::string m_public;
    Secret m_secret;
};

/// Anonymous sealed box (X25519, XSalsa20-Poly1305), 48 bytes longer. `InvalidInput` for a key that is none.
[[nodiscard]] Result<std::string> sealTo(std::string_view publicKey, std::string_view plain);

} // namespace snugwalk
