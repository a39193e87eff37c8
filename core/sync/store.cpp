// SPDX-License-Identifier: Apache-2.0
// Names that every file system and server keeps as they are.
#include "sync/store.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace snugwalk {

bool nameIsFine(std::string_view name)
{
    const std::vector<std::string_view> parts = split(name, '/');
    return std::all_of(parts.begin(), parts.end(), [](std::string_view part) {
        const bool isPlain = std::all_of(part.begin(), part.end(), [](char c) {
            return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '_' || c == '-';
        });
        return isPlain && !part.empty() && part.size() <= 100 && part != "." && part != "..";
    });
}

} // namespace snugwalk
