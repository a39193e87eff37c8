// SPDX-License-Identifier: Apache-2.0
// Taking over what is known to be needed, so that a kind of note nobody thought of stays behind.
#include "logbook/photo_copy.hpp"

#include <array>
#include <cstdint>

#include "logbook/photo_bytes.hpp"
#include "logbook/photo_parts.hpp"

namespace snugwalk {
namespace {

using namespace std::string_view_literals;

// A TIFF block with one field: Orientation (0x0112), one SHORT.
std::string orientationBlock(int orientation)
{
    return std::string("MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0"sv) + static_cast<char>(orientation) +
           std::string(6, '\0');
}

std::string segment(std::uint8_t code, std::string_view content)
{
    return std::string("\xff") + static_cast<char>(code) +
           bigEndian(static_cast<std::uint32_t>(content.size() + 2), 2) + std::string(content);
}

// JFIF without its little picture: version, density, and no pixels.
std::string plainJfif(std::string_view content)
{
    constexpr std::size_t fixedPart = 12;
    return segment(0xe0, std::string(content.substr(0, fixedPart)) + std::string(2, '\0'));
}

bool isNeeded(std::uint8_t code, std::string_view content)
{
    constexpr std::uint8_t comment = 0xfe;
    const bool isNote = (code >= 0xe0 && code <= 0xef) || code == comment;
    return !isNote || (code == 0xe2 && content.starts_with("ICC_PROFILE\0"sv)) ||
           (code == 0xee && content.starts_with("Adobe"sv));
}

// `readPhotoParts` has found every length within the bytes and an end mark.
std::string bareJpeg(std::string_view bytes, int orientation)
{
    constexpr std::uint8_t endOfImage = 0xd9;
    constexpr std::uint8_t startOfScan = 0xda;
    std::string jfif;
    std::string rest;
    bool inScan = false;
    std::size_t at = 2;
    while (true) {
        std::size_t mark = bytes.find('\xff', at);
        while (byteAt(bytes, mark + 1) <= 0x01 || byteAt(bytes, mark + 1) == 0xff ||
               (byteAt(bytes, mark + 1) >= 0xd0 && byteAt(bytes, mark + 1) <= 0xd7))
            mark = bytes.find('\xff', mark + 1);
        if (inScan) // its data; between segments nothing may stand but fill bytes
            rest += bytes.substr(at, mark - at);
        const std::uint8_t code = byteAt(bytes, mark + 1);
        if (code == endOfImage)
            break;
        const std::size_t length = bigEndian(bytes.substr(mark + 2, 2));
        const std::string_view content = bytes.substr(mark + 4, length - 2);
        if (code == 0xe0 && content.starts_with("JFIF\0"sv) && content.size() >= 12 && jfif.empty())
            jfif = plainJfif(content);
        else if (isNeeded(code, content))
            rest += bytes.substr(mark, 2 + length);
        inScan = code == startOfScan;
        at = mark + 2 + length;
    }
    const std::string turn = orientation == 1
                                 ? std::string()
                                 : segment(0xe1, std::string("Exif\0\0"sv) + orientationBlock(orientation));
    return "\xff\xd8" + jfif + turn + rest + "\xff\xd9";
}

// PNG, annex D: the checksum of a chunk's name and data.
std::uint32_t checksum(std::string_view bytes)
{
    std::uint32_t sum = 0xffffffffU;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        sum ^= byteAt(bytes, i);
        for (int bit = 0; bit < 8; ++bit)
            sum = (sum & 1U) != 0 ? sum >> 1 ^ 0xedb88320U : sum >> 1;
    }
    return ~sum;
}

std::string barePng(std::string_view bytes, int orientation)
{
    constexpr std::array needed = {"IHDR"sv, "PLTE"sv, "IDAT"sv, "IEND"sv, "tRNS"sv, "gAMA"sv,
                                   "cHRM"sv, "sRGB"sv, "iCCP"sv, "sBIT"sv, "bKGD"sv, "pHYs"sv};
    constexpr std::size_t frame = 12;
    std::string out(bytes.substr(0, 8));
    std::string_view rest = bytes.substr(8);
    while (true) {
        const std::size_t whole = frame + bigEndian(rest.substr(0, 4));
        const std::string_view name = rest.substr(4, 4);
        for (const std::string_view one : needed) {
            if (one == name)
                out += rest.substr(0, whole);
        }
        if (name == "IHDR"sv && orientation != 1) {
            const std::string chunk = "eXIf" + orientationBlock(orientation);
            out += bigEndian(static_cast<std::uint32_t>(chunk.size() - 4), 4) + chunk +
                   bigEndian(checksum(chunk), 4);
        }
        if (name == "IEND"sv)
            return out;
        rest.remove_prefix(whole);
    }
}

} // namespace

Result<std::string> bareCopy(std::string_view bytes, int orientation)
{
    const Result<PhotoParts> parts = readPhotoParts(bytes);
    if (!parts)
        return parts.error();
    const int turn = orientation >= 1 && orientation <= 8 ? orientation : 1;
    return parts->kind == PhotoKind::Jpeg ? bareJpeg(bytes, turn) : barePng(bytes, turn);
}

} // namespace snugwalk
