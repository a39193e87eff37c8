// SPDX-License-Identifier: Apache-2.0
// A tree of plain values: what an entry carries, and what JSON output is made from.
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

#include "base/result.hpp"

namespace snugwalk {

/// Bytes that are not text, kept apart from strings.
struct Bytes {
    std::string data;
    friend bool operator==(const Bytes &, const Bytes &) = default;
};

class Value {
public:
    using List = std::vector<Value>;
    using Map = std::map<std::string, Value>;
    using Variant = std::variant<std::monostate, bool, std::int64_t, double, std::string, Bytes, List, Map>;

    Value() = default;
    // NOLINTBEGIN(google-explicit-constructor): trees are written as plain values
    Value(bool v) : m_v(v) {}
    Value(int v) : m_v(static_cast<std::int64_t>(v)) {}
    Value(std::int64_t v) : m_v(v) {}
    Value(long long v) : m_v(static_cast<std::int64_t>(v)) {}
    Value(std::size_t v) : m_v(static_cast<std::int64_t>(v)) {}
    Value(double v) : m_v(v) {}
    Value(std::string v) : m_v(std::move(v)) {}
    Value(std::string_view v) : m_v(std::string(v)) {}
    Value(const char *v) : m_v(std::string(v)) {}
    Value(Bytes v) : m_v(std::move(v)) {}
    Value(List v) : m_v(std::move(v)) {}
    Value(Map v) : m_v(std::move(v)) {}
    template <typename T>
    Value(const std::optional<T> &v)
    {
        if (v)
            *this = Value(*v);
    }
    // NOLINTEND(google-explicit-constructor)

    [[nodiscard]] bool isNull() const { return std::holds_alternative<std::monostate>(m_v); }
    [[nodiscard]] bool isMap() const { return std::holds_alternative<Map>(m_v); }
    [[nodiscard]] bool isList() const { return std::holds_alternative<List>(m_v); }
    [[nodiscard]] bool isString() const { return std::holds_alternative<std::string>(m_v); }
    [[nodiscard]] const Variant &variant() const { return m_v; }

    // Readers give nothing on another type: stored data from a newer version must not stop us.
    [[nodiscard]] std::optional<bool> asBool() const;
    [[nodiscard]] std::optional<std::int64_t> asInt() const;
    /// Integers read as numbers too.
    [[nodiscard]] std::optional<double> asDouble() const;
    [[nodiscard]] std::optional<std::string> asString() const;
    [[nodiscard]] std::optional<std::string> asBytes() const;
    /// An empty list or map on another type.
    [[nodiscard]] const List &list() const;
    [[nodiscard]] const Map &map() const;
    /// The member `key` of a map, or null.
    [[nodiscard]] const Value &operator[](std::string_view key) const;
    /// Makes this a map if it is not, and gives the member.
    Value &member(std::string_view key);

    friend bool operator==(const Value &, const Value &) = default;

private:
    Variant m_v;
};

/// Deterministic CBOR, [RFC8949] section 4.2.1: shortest integers, doubles always 8 bytes, map keys
/// in bytewise order of their encoding, definite lengths only.
[[nodiscard]] std::string encodeCbor(const Value &value);

/// Whether `value` could be read back once written: no NaN, no text that is not UTF-8, not nested
/// more than 16 deep. Ask before storing anything that came from outside.
/// \returns `InvalidInput` with what stands in the way.
[[nodiscard]] Status checkEncodable(const Value &value);

/// Strict reader of what `encodeCbor` writes and nothing else: refuses depth over 16, trailing
/// bytes, indefinite lengths, non-shortest forms, duplicate or unsorted keys, bad UTF-8.
/// \returns `Corrupt` with the byte offset in `where`.
[[nodiscard]] Result<Value> decodeCbor(std::string_view bytes);

/// One-line or indented JSON, [RFC8259]; bytes become lower-case hexadecimal.
[[nodiscard]] std::string toJson(const Value &value, bool indented);
/// `InvalidInput` with line and column in `where`; depth at most 64.
[[nodiscard]] Result<Value> parseJson(std::string_view text);

} // namespace snugwalk
