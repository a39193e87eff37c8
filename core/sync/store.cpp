// SPDX-License-Identifier: Apache-2.0
// Names that mean the same on every disk and server, and lead nowhere else.
#include "sync/store.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxPart = 100;
constexpr std::size_t maxParts = 12;

// Device names of DOS, which its descendants still open in any folder and with any ending.
// Source: Microsoft, Naming Files, Paths, and Namespaces (from memory).
bool isReserved(std::string_view part)
{
    constexpr std::array plain = {"con", "prn", "aux", "nul"};
    const std::string_view stem = part.substr(0, part.find('.'));
    if (std::find(plain.begin(), plain.end(), stem) != plain.end())
        return true;
    return stem.size() == 4 && (stem.starts_with("com") || stem.starts_with("lpt")) && stem[3] >= '0' &&
           stem[3] <= '9';
}

bool partIsFine(std::string_view part)
{
    if (part.empty() || part.size() > maxPart || part.front() == '.' || part.back() == '.')
        return false;
    const auto isAllowed = [](char c) {
        return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '.' || c == '_' || c == '-';
    };
    return std::all_of(part.begin(), part.end(), isAllowed) && !isReserved(part);
}

} // namespace

bool nameIsFine(std::string_view name)
{
    if (name.size() > maxParts * (maxPart + 1))
        return false;
    const auto parts = split(name, '/');
    return parts.size() <= maxParts && std::all_of(parts.begin(), parts.end(), partIsFine);
}

Status checkStoreName(std::string_view name)
{
    if (nameIsFine(name))
        return done();
    return Error{Errc::InvalidInput, "a name that no store of ours has", toHex(name.substr(0, 100)),
                 "this is a fault of the program or of who made the file"};
}

} // namespace snugwalk
