// SPDX-License-Identifier: Apache-2.0
// Ids as text and back.
#include "base/id.hpp"

#include <algorithm>

#include "base/contract.hpp"
#include "base/text.hpp"

namespace snugwalk {

std::string Id::text() const { return toHex(view()); }

std::string Id::shortText() const { return text().substr(0, 8); }

Id Id::fromBytes(std::string_view raw)
{
    SNUG_ASSERT(raw.size() == 16);
    Id id;
    std::transform(raw.begin(), raw.end(), id.bytes.begin(),
                   [](char c) { return static_cast<std::uint8_t>(c); });
    return id;
}

std::optional<Id> Id::parse(std::string_view hex)
{
    const auto raw = fromHex(hex);
    if (!raw || raw->size() != 16)
        return std::nullopt;
    return fromBytes(*raw);
}

} // namespace snugwalk
