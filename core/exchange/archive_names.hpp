// SPDX-License-Identifier: Apache-2.0
// What a name inside an archive stands for. Names are looked up in a short list and never used as paths.
#pragma once

#include <string>
#include <string_view>

#include "base/result.hpp"
#include "keys/hash.hpp"

namespace snugwalk {

enum class MemberKind {
    Readme,
    Manifest,
    Entries,
    Things,
    Sharing,
    Photo,
    Thumbnail,
    Folder, ///< ends in '/', holds nothing
    Other   ///< a plain name that is not ours: left alone
};

struct MemberName {
    MemberKind kind = MemberKind::Other;
    Hash photo; ///< of a photo or thumbnail only
};

inline constexpr std::string_view readmeName = "README.txt";
inline constexpr std::string_view manifestName = "manifest.json";
inline constexpr std::string_view entriesName = "entries.jsonl";
inline constexpr std::string_view thingsName = "things.jsonl";
inline constexpr std::string_view sharingName = "sharing.jsonl"; ///< only where a rig is shared
/// `photos/<hash>.jpg`; \param ending with its dot.
[[nodiscard]] std::string photoMemberName(const Hash &hash, std::string_view ending);
/// `thumbnails/<hash>.jpg`, of an original that is elsewhere.
[[nodiscard]] std::string thumbnailMemberName(const Hash &hash);

/// \returns `InvalidInput` for a name that no honest archive has: absolute, with `..`, `.`, an empty part,
/// backslash, colon, a control or direction character, a wildcard, a name that a system keeps for itself
/// (CON, NUL ...), a part that ends in a dot or blank, more than 255 bytes, not UTF-8.
[[nodiscard]] Result<MemberName> memberName(std::string_view name);

} // namespace snugwalk
