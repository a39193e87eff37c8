// SPDX-License-Identifier: Apache-2.0
// Names of members: first whether they are honest, then whether they are ours.
#include "exchange/archive_names.hpp"

#include <algorithm>
#include <array>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view photoFolder = "photos/";
constexpr std::string_view thumbnailFolder = "thumbnails/";

// Names of devices on systems that know drive letters; with any ending too. From memory.
bool isDeviceName(std::string_view part)
{
    constexpr std::array<std::string_view, 6> plain = {"con", "prn", "aux", "nul", "conin$", "conout$"};
    const std::string stem = lowerAscii(trim(part.substr(0, part.find('.'))));
    if (std::find(plain.begin(), plain.end(), stem) != plain.end())
        return true;
    const bool numbered = stem.size() == 4 && (stem.starts_with("com") || stem.starts_with("lpt"));
    return numbered && stem[3] >= '0' && stem[3] <= '9';
}

// U+200E, U+200F, U+202A to U+202E and U+2066 to U+2069: they make a name read as another one.
bool hasDirectionMark(std::string_view name)
{
    for (std::size_t at = name.find("\xE2"); at != std::string_view::npos; at = name.find("\xE2", at + 1)) {
        const std::string_view three = name.substr(at, 3);
        if (three.size() == 3 && three[1] == '\x80' &&
            (three[2] == '\x8E' || three[2] == '\x8F' || (three[2] >= '\xAA' && three[2] <= '\xAE')))
            return true;
        if (three.size() == 3 && three[1] == '\x81' && three[2] >= '\xA6' && three[2] <= '\xA9')
            return true;
    }
    return false;
}

bool isHonestPart(std::string_view part)
{
    return !part.empty() && part.back() != '.' && part.back() != ' ' && part.front() != ' ' &&
           !isDeviceName(part);
}

bool isHonest(std::string_view name)
{
    const bool hasBadByte = std::any_of(name.begin(), name.end(), [](char c) {
        const auto byte = static_cast<unsigned char>(c);
        return byte < 0x20 || byte == 0x7F ||
               std::string_view("\\:*?\"<>|").find(c) != std::string_view::npos;
    });
    if (name.empty() || name.size() > 255 || hasBadByte || !isUtf8(name) || hasDirectionMark(name))
        return false;
    std::string_view parts = name;
    if (parts.back() == '/')
        parts.remove_suffix(1);
    const std::vector<std::string_view> all = split(parts, '/');
    return std::all_of(all.begin(), all.end(), [](std::string_view part) { return isHonestPart(part); });
}

// What an error may show of a name that is not to be trusted.
std::string shown(std::string_view name)
{
    std::string out;
    for (const char c : name.substr(0, 80))
        out += c >= 0x20 && c < 0x7F ? c : '?';
    return out;
}

std::optional<Hash> hashIn(std::string_view name, std::string_view folder, std::string_view ending)
{
    if (!name.starts_with(folder) || !name.ends_with(ending))
        return std::nullopt;
    const std::string_view digits = name.substr(folder.size(), name.size() - folder.size() - ending.size());
    const auto hash = Hash::parse(digits);
    return hash && hash->text() == digits ? hash : std::nullopt;
}

std::optional<Hash> photoOf(std::string_view name)
{
    const auto jpeg = hashIn(name, photoFolder, ".jpg");
    return jpeg ? jpeg : hashIn(name, photoFolder, ".png");
}

} // namespace

std::string photoMemberName(const Hash &hash, std::string_view ending)
{
    return std::string(photoFolder) + hash.text() + std::string(ending);
}

std::string thumbnailMemberName(const Hash &hash)
{
    return std::string(thumbnailFolder) + hash.text() + ".jpg";
}

Result<MemberName> memberName(std::string_view name)
{
    if (!isHonest(name))
        return Error{Errc::InvalidInput, "the archive has a name that no honest archive has", shown(name),
                     "do not open it; ask who made it"};
    if (name.back() == '/')
        return MemberName{MemberKind::Folder, {}};
    constexpr std::array<std::pair<std::string_view, MemberKind>, 5> ours = {
        {{readmeName, MemberKind::Readme},
         {manifestName, MemberKind::Manifest},
         {entriesName, MemberKind::Entries},
         {thingsName, MemberKind::Things},
         {sharingName, MemberKind::Sharing}}};
    const auto *found =
        std::find_if(ours.begin(), ours.end(), [&](const auto &item) { return item.first == name; });
    if (found != ours.end())
        return MemberName{found->second, {}};
    if (const auto thumbnail = hashIn(name, thumbnailFolder, ".jpg"))
        return MemberName{MemberKind::Thumbnail, *thumbnail};
    const auto photo = photoOf(name);
    return photo ? MemberName{MemberKind::Photo, *photo} : MemberName{};
}

} // namespace snugwalk
