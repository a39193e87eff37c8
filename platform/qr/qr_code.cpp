// SPDX-License-Identifier: Apache-2.0
// The code by libqrencode, the picture by libpng.
#include "qr/qr_code.hpp"

#include <cstring>
#include <filesystem>
#include <memory>
#include <png.h>
#include <qrencode.h>

#include "base/text.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

constexpr int quiet = 4; // modules, [ISO18004] 9.1
constexpr std::size_t maxBytes = 1024;

} // namespace

Result<QrCode> qrFrom(std::string_view bytes)
{
    const Error fault{Errc::OutOfRange, "this does not go into a QR code",
                      std::to_string(bytes.size()) + " bytes", "use the words"};
    if (bytes.empty() || bytes.size() > maxBytes)
        return fault;
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> made(
        QRcode_encodeData(static_cast<int>(bytes.size()),
                          reinterpret_cast<const unsigned char *>(bytes.data()), 0, QR_ECLEVEL_M),
        &QRcode_free);
    if (!made)
        return fault;
    QrCode code;
    code.size = made->width;
    const auto area = static_cast<std::size_t>(made->width) * static_cast<std::size_t>(made->width);
    for (std::size_t i = 0; i < area; ++i)
        code.dark.push_back(made->data[i] & 1U);
    return code;
}

std::string qrText(const QrCode &code, bool coloured)
{
    std::string out;
    for (int y = -quiet; y < code.size + quiet; y += 2) {
        out += coloured ? "\x1b[40;97m" : "";
        for (int x = -quiet; x < code.size + quiet; ++x) {
            const bool upper = !code.isDark(x, y);
            const bool lower = !code.isDark(x, y + 1) && y + 1 < code.size + quiet;
            out += upper && lower ? "\u2588" : upper ? "\u2580" : lower ? "\u2584" : " ";
        }
        out += coloured ? "\x1b[0m\n" : "\n";
    }
    return out;
}

std::string qrSvg(const QrCode &code)
{
    const std::string side = std::to_string(code.size + 2 * quiet);
    std::string out = R"(<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 )" + side + " " + side +
                      "\" shape-rendering=\"crispEdges\">\n<rect width=\"" + side + "\" height=\"" + side +
                      "\" fill=\"#fff\"/>\n<path fill=\"#000\" d=\"";
    for (int y = 0; y < code.size; ++y) {
        for (int x = 0; x < code.size; ++x) {
            if (code.isDark(x, y))
                out += "M" + std::to_string(x + quiet) + " " + std::to_string(y + quiet) + "h1v1h-1z";
        }
    }
    return out + "\"/>\n</svg>\n";
}

Result<std::string> qrPng(const QrCode &code, int scale)
{
    const int side = (code.size + 2 * quiet) * scale;
    std::vector<unsigned char> grey;
    grey.reserve(static_cast<std::size_t>(side) * static_cast<std::size_t>(side));
    for (int y = 0; y < side; ++y) {
        for (int x = 0; x < side; ++x)
            grey.push_back(code.isDark(x / scale - quiet, y / scale - quiet) ? 0 : 255);
    }
    png_image image{};
    image.version = PNG_IMAGE_VERSION;
    image.width = static_cast<png_uint_32>(side);
    image.height = image.width;
    image.format = PNG_FORMAT_GRAY;
    png_alloc_size_t size = PNG_IMAGE_PNG_SIZE_MAX(image);
    std::string bytes(size, '\0');
    if (png_image_write_to_memory(&image, bytes.data(), &size, 0, grey.data(), 0, nullptr) == 0)
        return Error{Errc::Io, "the picture could not be made", image.message, "use the words"};
    bytes.resize(size);
    return bytes;
}

Status writeQr(const QrCode &code, const std::string &file)
{
    constexpr int scale = 8;
    const std::string ending = lowerAscii(std::filesystem::path(file).extension().string());
    if (ending == ".svg")
        return writeNewFile(file, qrSvg(code));
    if (ending != ".png")
        return Error{Errc::InvalidInput, "not a kind of picture we make", file,
                     "end the name in .png or .svg"};
    const auto bytes = qrPng(code, scale);
    return bytes ? writeNewFile(file, *bytes) : Status(bytes.error());
}

} // namespace snugwalk
