// SPDX-License-Identifier: Apache-2.0
// Decoding row by row; only an interlaced picture is held whole.
#include "image/png_decode.hpp"

#include <algorithm>
#include <array>
#include <cstdio>
#include <cstring>
#include <optional>
#include <png.h>

namespace snugwalk {
namespace {

constexpr std::size_t channels = 4;

class Reader {
public:
    explicit Reader(std::string_view bytes) : m_rest(bytes) {}
    Reader(const Reader &) = delete;
    Reader &operator=(const Reader &) = delete;
    ~Reader() { png_destroy_read_struct(&m_png, &m_info, nullptr); }

    [[nodiscard]] bool readHeader();
    [[nodiscard]] bool readPixels(int maxEdge);
    [[nodiscard]] ImageSize size() const { return m_size; }
    [[nodiscard]] Pixels take() { return m_scaler->take(); }
    [[nodiscard]] Error error() const
    {
        return {Errc::InvalidInput, "the photo is damaged or cut short", m_message.data(),
                "copy it again from where it came from"};
    }

private:
    static void onError(png_structp png, png_const_charp message);
    static void onWarning(png_structp, png_const_charp) {}
    static void onRead(png_structp png, png_bytep out, png_size_t size);
    void addRow(const std::uint8_t *rgba);
    void readRows();

    std::string_view m_rest;
    png_structp m_png = nullptr;
    png_infop m_info = nullptr;
    ImageSize m_size;
    bool m_isInterlaced = false;
    std::array<char, 200> m_message{};
    std::optional<BoxScaler> m_scaler;
    std::vector<std::uint8_t> m_rows; // RGBA: one row, or all of them when interlaced
    std::vector<std::uint8_t> m_rgb;
};

void Reader::onError(png_structp png, png_const_charp message)
{
    auto *self = static_cast<Reader *>(png_get_error_ptr(png));
    std::snprintf(self->m_message.data(), self->m_message.size(), "%s", message);
    png_longjmp(png, 1);
}

void Reader::onRead(png_structp png, png_bytep out, png_size_t size)
{
    auto *self = static_cast<Reader *>(png_get_io_ptr(png));
    if (size > self->m_rest.size())
        png_error(png, "the bytes end too early");
    std::memcpy(out, self->m_rest.data(), size);
    self->m_rest.remove_prefix(size);
}

bool Reader::readHeader()
{
    m_png = png_create_read_struct(PNG_LIBPNG_VER_STRING, this, onError, onWarning);
    m_info = m_png != nullptr ? png_create_info_struct(m_png) : nullptr;
    if (m_info == nullptr)
        return false;
    if (setjmp(png_jmpbuf(m_png)) != 0)
        return false;
    png_set_user_limits(m_png, PNG_UINT_31_MAX, PNG_UINT_31_MAX); // our own limits have better words
    png_set_chunk_malloc_max(m_png, png_alloc_size_t{8} * 1024 * 1024);
    png_set_read_fn(m_png, this, onRead);
    png_read_info(m_png, m_info);
    constexpr png_uint_32 most = PNG_UINT_31_MAX;
    m_size = {static_cast<int>(std::min(png_get_image_width(m_png, m_info), most)),
              static_cast<int>(std::min(png_get_image_height(m_png, m_info), most))};
    m_isInterlaced = png_get_interlace_type(m_png, m_info) != PNG_INTERLACE_NONE;
    return true;
}

void Reader::addRow(const std::uint8_t *rgba)
{
    constexpr int white = 255;
    for (std::size_t i = 0; i < m_rgb.size(); ++i) {
        const std::uint8_t *pixel = rgba + i / 3 * channels;
        const int cover = pixel[3];
        m_rgb[i] =
            static_cast<std::uint8_t>((pixel[i % 3] * cover + white * (white - cover) + white / 2) / white);
    }
    m_scaler->addRow(m_rgb.data());
}

void Reader::readRows()
{
    png_set_expand(m_png);
    png_set_scale_16(m_png);
    png_set_gray_to_rgb(m_png);
    png_set_add_alpha(m_png, 0xff, PNG_FILLER_AFTER);
    const int passes = png_set_interlace_handling(m_png);
    png_read_update_info(m_png, m_info);
    const std::size_t stride = static_cast<std::size_t>(m_size.width) * channels;
    if (png_get_rowbytes(m_png, m_info) != stride)
        png_error(m_png, "rows of an unknown form");
    const auto rows = static_cast<std::size_t>(m_size.height);
    for (int pass = 0; pass < passes; ++pass) {
        for (std::size_t y = 0; y < rows; ++y) {
            std::uint8_t *row = m_rows.data() + (m_isInterlaced ? y * stride : 0);
            png_read_row(m_png, row, nullptr);
            if (!m_isInterlaced)
                addRow(row);
        }
    }
    for (std::size_t y = 0; m_isInterlaced && y < rows; ++y)
        addRow(m_rows.data() + y * stride);
    png_read_end(m_png, nullptr);
}

bool Reader::readPixels(int maxEdge)
{
    const auto width = static_cast<std::size_t>(m_size.width);
    const auto rowsHeld = static_cast<std::size_t>(m_isInterlaced ? m_size.height : 1);
    m_scaler.emplace(m_size, fitted(m_size, maxEdge));
    m_rows.resize(width * channels * rowsHeld); // at most 256 MB, the size has been checked
    m_rgb.resize(width * 3);
    if (setjmp(png_jmpbuf(m_png)) != 0)
        return false;
    readRows();
    return true;
}

} // namespace

Result<ImageSize> probePng(std::string_view bytes)
{
    Reader reader(bytes);
    return reader.readHeader() ? Result<ImageSize>(reader.size()) : reader.error();
}

Result<Pixels> shrinkPng(std::string_view bytes, int maxEdge)
{
    Reader reader(bytes);
    if (!reader.readHeader())
        return reader.error();
    SNUG_TRY(checkPhotoSize(reader.size()));
    if (!reader.readPixels(maxEdge))
        return reader.error();
    return reader.take();
}

} // namespace snugwalk
