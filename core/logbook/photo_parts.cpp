// SPDX-License-Identifier: Apache-2.0
// Walking JPEG segments and PNG chunks with every length checked.
#include "logbook/photo_parts.hpp"

#include <cstddef>
#include <cstdint>
#include <optional>

#include "logbook/photo_bytes.hpp"

namespace snugwalk {
namespace {

using namespace std::string_view_literals;

constexpr auto jpegStart = "\xff\xd8\xff"sv;
constexpr auto pngStart = "\x89PNG\r\n\x1a\n"sv;
constexpr auto exifName = "Exif\0\0"sv;

Error cutShort()
{
    return {Errc::InvalidInput, "the photo is cut short", "", "copy it again from where it came from"};
}

Error withoutPicture()
{
    return {Errc::InvalidInput, "the file holds no picture", "", "choose another photo"};
}

// The next marker at or after `at`, and where its content starts; skips fill bytes, stuffed zeros and
// the restart marks inside a scan.
struct Marker {
    std::uint8_t code;
    std::size_t after;
};

std::optional<Marker> nextMarker(std::string_view bytes, std::size_t at)
{
    while ((at = bytes.find('\xff', at)) != std::string_view::npos) {
        while (at < bytes.size() && byteAt(bytes, at) == 0xff)
            ++at;
        if (at == bytes.size())
            return std::nullopt;
        const std::uint8_t code = byteAt(bytes, at++);
        const bool isRestart = code >= 0xd0 && code <= 0xd7;
        if (code > 0x01 && !isRestart)
            return Marker{code, at};
    }
    return std::nullopt;
}

Result<PhotoParts> walkJpeg(std::string_view bytes)
{
    constexpr std::uint8_t endOfImage = 0xd9;
    constexpr std::uint8_t startOfScan = 0xda;
    constexpr std::uint8_t app1 = 0xe1;
    PhotoParts parts{PhotoKind::Jpeg, {}};
    bool hasScan = false;
    std::size_t at = 2;
    while (const auto marker = nextMarker(bytes, at)) {
        if (marker->code == endOfImage)
            return hasScan ? Result<PhotoParts>(parts) : withoutPicture();
        if (bytes.size() - marker->after < 2)
            return cutShort();
        const std::size_t length = bigEndian(bytes.substr(marker->after, 2));
        if (length < 2 || length > bytes.size() - marker->after)
            return cutShort();
        const std::string_view content = bytes.substr(marker->after + 2, length - 2);
        if (marker->code == app1 && parts.exif.empty() && content.starts_with(exifName))
            parts.exif = content.substr(exifName.size());
        hasScan = hasScan || marker->code == startOfScan;
        at = marker->after + length;
    }
    return cutShort();
}

Result<PhotoParts> walkPng(std::string_view bytes)
{
    constexpr std::size_t frame = 12; // length, name, checksum
    PhotoParts parts{PhotoKind::Png, {}};
    bool hasData = false;
    std::string_view rest = bytes.substr(pngStart.size());
    while (rest.size() >= frame) {
        const std::size_t length = bigEndian(rest.substr(0, 4));
        if (length > rest.size() - frame)
            return cutShort();
        const std::string_view name = rest.substr(4, 4);
        if (name == "IEND"sv)
            return hasData ? Result<PhotoParts>(parts) : withoutPicture();
        if (name == "eXIf"sv && parts.exif.empty())
            parts.exif = rest.substr(8, length);
        hasData = hasData || name == "IDAT"sv;
        rest.remove_prefix(frame + length);
    }
    return cutShort();
}

} // namespace

Result<PhotoParts> readPhotoParts(std::string_view bytes)
{
    if (bytes.empty())
        return Error{Errc::InvalidInput, "the photo is empty", "", "copy it again from where it came from"};
    if (bytes.starts_with(jpegStart))
        return walkJpeg(bytes);
    if (bytes.starts_with(pngStart))
        return walkPng(bytes);
    if (jpegStart.starts_with(bytes) || pngStart.starts_with(bytes))
        return cutShort();
    return Error{Errc::Unsupported, "only JPEG and PNG photos", "", "save the photo as JPEG and try again"};
}

const char *mimeType(PhotoKind kind) { return kind == PhotoKind::Jpeg ? "image/jpeg" : "image/png"; }

const char *fileExtension(PhotoKind kind) { return kind == PhotoKind::Jpeg ? ".jpg" : ".png"; }

} // namespace snugwalk
