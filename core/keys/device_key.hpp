// SPDX-License-Identifier: Apache-2.0
// The key pair that names a device (Ed25519, [RFC8032]) and the stream its entries go to.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <string>
#include <string_view>

#include "base/id.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// A device that writes: its name is the hash of its public key.
class DeviceKey {
public:
    /// From 32 secret bytes; the same bytes give the same key.
    [[nodiscard]] static DeviceKey fromSeed(std::string_view seed);
    [[nodiscard]] static DeviceKey random();

    [[nodiscard]] std::string publicKey() const; ///< 32 bytes
    [[nodiscard]] std::string seed() const;      ///< 32 bytes, secret
    /// First 16 bytes of BLAKE2b-256 of the public key.
    [[nodiscard]] Id deviceId() const;
    [[nodiscard]] std::string sign(std::string_view message) const; ///< 64 bytes

private:
    DeviceKey() = default;
    std::array<std::uint8_t, 64> m_secret{};
};

/// True when `signature` over `message` was made by the owner of `publicKey`.
[[nodiscard]] bool verifySignature(std::string_view publicKey, std::string_view message,
                                   std::string_view signature);

/// One writer of entries: a device since its last restore. 16 + 8 bytes.
struct StreamId {
    Id device;
    std::array<std::uint8_t, 8> incarnation{};

    friend constexpr auto operator<=>(const StreamId &, const StreamId &) = default;
    [[nodiscard]] std::string bytes() const; ///< 24 bytes
    [[nodiscard]] std::string text() const { return device.shortText() + "-" + bytesHex(); }

private:
    [[nodiscard]] std::string bytesHex() const;
};

/// From 24 bytes; `Corrupt` otherwise.
[[nodiscard]] Result<StreamId> streamFromBytes(std::string_view bytes);

} // namespace snugwalk
