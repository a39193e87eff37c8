// SPDX-License-Identifier: Apache-2.0
// Pictures by libjpeg and libpng, called the shortest way their manuals show.
#include "pictures.hpp"

#include <algorithm>
#include <cstdio>
#include <cstdlib>
#include <png.h>

#include <jpeglib.h>

namespace snugwalk::test {
namespace {

std::vector<std::uint8_t> paintedRow(int width, int y, const Paint &paint, int alpha)
{
    std::vector<std::uint8_t> row;
    for (int x = 0; x < width; ++x) {
        for (const int channel : paint(x, y))
            row.push_back(static_cast<std::uint8_t>(channel));
        if (alpha >= 0)
            row.push_back(static_cast<std::uint8_t>(alpha));
    }
    return row;
}

void append(png_structp png, png_bytep bytes, png_size_t size)
{
    static_cast<std::string *>(png_get_io_ptr(png))->append(reinterpret_cast<const char *>(bytes), size);
}

void flushNothing(png_structp) {}

} // namespace

std::string makeJpeg(int width, int height, const Paint &paint, int quality, Scans scans)
{
    jpeg_compress_struct codec{};
    jpeg_error_mgr errors{};
    unsigned char *out = nullptr;
    unsigned long size = 0;
    codec.err = jpeg_std_error(&errors);
    jpeg_create_compress(&codec);
    jpeg_mem_dest(&codec, &out, &size);
    codec.image_width = static_cast<JDIMENSION>(width);
    codec.image_height = static_cast<JDIMENSION>(height);
    codec.input_components = 3;
    codec.in_color_space = JCS_RGB;
    jpeg_set_defaults(&codec);
    jpeg_set_quality(&codec, quality, TRUE);
    if (scans == Scans::Progressive)
        jpeg_simple_progression(&codec);
    jpeg_start_compress(&codec, TRUE);
    for (int y = 0; y < height; ++y) {
        auto row = paintedRow(width, y, paint, -1);
        JSAMPROW rows = row.data();
        jpeg_write_scanlines(&codec, &rows, 1);
    }
    jpeg_finish_compress(&codec);
    jpeg_destroy_compress(&codec);
    std::string bytes(reinterpret_cast<char *>(out), size);
    std::free(out);
    return bytes;
}

std::string makePng(int width, int height, const Paint &paint, int alpha, Rows rows)
{
    std::string bytes;
    png_structp png = png_create_write_struct(PNG_LIBPNG_VER_STRING, nullptr, nullptr, nullptr);
    png_infop info = png_create_info_struct(png);
    png_set_write_fn(png, &bytes, append, flushNothing);
    png_set_IHDR(png, info, static_cast<png_uint_32>(width), static_cast<png_uint_32>(height), 8,
                 PNG_COLOR_TYPE_RGB_ALPHA,
                 rows == Rows::Interlaced ? PNG_INTERLACE_ADAM7 : PNG_INTERLACE_NONE,
                 PNG_COMPRESSION_TYPE_DEFAULT, PNG_FILTER_TYPE_DEFAULT);
    png_write_info(png, info);
    const int passes = png_set_interlace_handling(png);
    for (int pass = 0; pass < passes; ++pass)
        for (int y = 0; y < height; ++y)
            png_write_row(png, paintedRow(width, y, paint, alpha).data());
    png_write_end(png, info);
    png_destroy_write_struct(&png, &info);
    return bytes;
}

Picture decodedJpeg(std::string_view bytes)
{
    jpeg_decompress_struct codec{};
    jpeg_error_mgr errors{};
    codec.err = jpeg_std_error(&errors);
    jpeg_create_decompress(&codec);
    jpeg_mem_src(&codec, reinterpret_cast<const unsigned char *>(bytes.data()), bytes.size());
    jpeg_read_header(&codec, TRUE);
    codec.out_color_space = JCS_RGB;
    jpeg_start_decompress(&codec);
    Picture picture{static_cast<int>(codec.output_width), static_cast<int>(codec.output_height), {}};
    std::vector<std::uint8_t> row(codec.output_width * std::size_t{3});
    while (codec.output_scanline < codec.output_height) {
        JSAMPROW rows = row.data();
        jpeg_read_scanlines(&codec, &rows, 1);
        for (std::size_t i = 0; i < row.size(); i += 3)
            picture.pixels.push_back({row[i], row[i + 1], row[i + 2]});
    }
    jpeg_finish_decompress(&codec);
    jpeg_destroy_decompress(&codec);
    return picture;
}

int difference(Colour a, Colour b)
{
    int largest = 0;
    for (std::size_t i = 0; i < a.size(); ++i)
        largest = std::max(largest, std::abs(a[i] - b[i]));
    return largest;
}

Colour noise(int x, int y)
{
    auto n = static_cast<std::uint32_t>(x) * 374761393U + static_cast<std::uint32_t>(y) * 668265263U;
    n = (n ^ (n >> 13U)) * 1274126177U;
    return {static_cast<int>(n & 255U), static_cast<int>(n >> 8U & 255U), static_cast<int>(n >> 16U & 255U)};
}

ScratchFolder::ScratchFolder()
{
    std::string pattern = (std::filesystem::temp_directory_path() / "snugwalk-photo-XXXXXX").string();
    if (::mkdtemp(pattern.data()) == nullptr)
        std::abort();
    m_path = pattern;
}

ScratchFolder::~ScratchFolder()
{
    std::error_code ec;
    std::filesystem::remove_all(m_path, ec);
}

std::vector<std::string> ScratchFolder::content() const
{
    std::vector<std::string> names;
    for (const auto &entry : std::filesystem::recursive_directory_iterator(m_path))
        names.push_back(entry.path().lexically_relative(m_path).string());
    std::sort(names.begin(), names.end());
    return names;
}

} // namespace snugwalk::test
