// SPDX-License-Identifier: Apache-2.0
// BLAKE2b-256 (RFC 7693): the name of a photo and the link of the entry chain.
#pragma once

#include <array>
#include <compare>
#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>

#include "base/id.hpp"

namespace snugwalk {

struct Hash {
    std::array<std::uint8_t, 32> bytes{};

    friend constexpr auto operator<=>(const Hash &, const Hash &) = default;
    [[nodiscard]] std::string text() const; ///< 64 hexadecimal digits
    [[nodiscard]] static std::optional<Hash> parse(std::string_view hex);
    [[nodiscard]] static std::optional<Hash> fromBytes(std::string_view raw);
    [[nodiscard]] std::string_view view() const
    {
        return {reinterpret_cast<const char *>(bytes.data()), bytes.size()};
    }
};

/// BLAKE2b with 32 bytes of output, no key. Source [RFC7693].
[[nodiscard]] Hash blake2b(std::string_view bytes);

/// The same over bytes that arrive in parts.
class Hasher {
public:
    Hasher();
    ~Hasher();
    Hasher(const Hasher &) = delete;
    Hasher &operator=(const Hasher &) = delete;
    void add(std::string_view bytes);
    [[nodiscard]] Hash finish();

private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// An id that two devices find alike from the same parts, for instance the mark of one point on one
/// walk.
[[nodiscard]] Id derivedId(std::string_view purpose, std::string_view a, std::string_view b);

/// `size` bytes from the system's random source.
[[nodiscard]] std::string randomBytes(std::size_t size);

/// Ids of 16 random bytes.
class RandomIds final : public IdSource {
public:
    [[nodiscard]] Id next() override;
};

/// Ids that come out the same every time, from a seed: for the demo and for tests.
class CountingIds final : public IdSource {
public:
    explicit CountingIds(std::string seed) : m_seed(std::move(seed)) {}
    [[nodiscard]] Id next() override;

private:
    std::string m_seed;
    unsigned long m_count = 0;
};

} // namespace snugwalk
