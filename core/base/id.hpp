// SPDX-License-Identifier: Apache-2.0
// The name of a thing in the logbook: 16 random bytes, made on the device without asking anyone.
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace snugwalk {

struct Id {
    std::array<std::uint8_t, 16> bytes{};

    friend constexpr auto operator<=>(const Id &, const Id &) = default;
    [[nodiscard]] bool isNull() const { return *this == Id{}; }
    /// 32 hexadecimal digits.
    [[nodiscard]] std::string text() const;
    /// The first 8 digits: what people see and type; unique enough within a logbook.
    [[nodiscard]] std::string shortText() const;
    [[nodiscard]] static std::optional<Id> parse(std::string_view hex);
    [[nodiscard]] std::string_view view() const
    {
        return {reinterpret_cast<const char *>(bytes.data()), bytes.size()};
    }
    [[nodiscard]] static Id fromBytes(std::string_view raw);
};

/// Where new ids come from; tests and the demo give a counting one.
class IdSource {
public:
    IdSource() = default;
    IdSource(const IdSource &) = delete;
    IdSource &operator=(const IdSource &) = delete;
    virtual ~IdSource() = default;
    [[nodiscard]] virtual Id next() = 0;
};

} // namespace snugwalk
