// SPDX-License-Identifier: Apache-2.0
// Pieces of deterministic CBOR ([RFC8949] section 4.2.1) for those who write many items and build no tree for
// each.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

#include "base/value.hpp"

namespace snugwalk {

/// Nested so deep and no deeper, the outermost item being at 0.
inline constexpr int maxCborDepth = 16;
inline constexpr std::string_view cborNull{"\xF6", 1}; ///< section 3.3

/// The beginning of an item of a major type (section 3.1): 0 a number, 2 bytes, 3 text, 4 a list, 5 a map.
void putCborHead(std::string &out, int major, std::uint64_t value);
void putCborBytes(std::string &out, std::string_view bytes);
void putCborText(std::string &out, std::string_view text);
void putCborNumber(std::string &out, std::int64_t number);
/// What `encodeCbor` gives, at the end of `out`.
void putCbor(std::string &out, const Value &value);
void putCborMap(std::string &out, const Value::Map &map);

/// The order of text keys in a map: bytewise of their encoding, so the shorter first.
[[nodiscard]] inline bool cborKeyBefore(std::string_view a, std::string_view b)
{
    return a.size() != b.size() ? a.size() < b.size() : a < b;
}

/// The text of one encoded item; nothing when it is of another kind.
[[nodiscard]] std::optional<std::string_view> cborText(std::string_view item);

/// Reads one item off the front as strictly as `decodeCbor`; `deep` is how deep it will stand in what is made
/// of it.
[[nodiscard]] Result<Value> takeCbor(std::string_view &bytes, int deep = 0);

} // namespace snugwalk
