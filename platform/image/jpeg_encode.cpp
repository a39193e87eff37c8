// SPDX-License-Identifier: Apache-2.0
// A thumbnail as JPEG; the same pixels give the same bytes.
#include "image/jpeg_encode.hpp"

#include <cstdlib>

#include "image/jpeg_guard.hpp"

namespace snugwalk {
namespace {

class Writer {
public:
    Writer() = default;
    Writer(const Writer &) = delete;
    Writer &operator=(const Writer &) = delete;
    ~Writer()
    {
        jpeg_destroy_compress(&m_codec);
        std::free(m_out); // made by libjpeg with malloc
    }

    [[nodiscard]] bool write(const Pixels &pixels, int quality);
    [[nodiscard]] std::string bytes() const { return {reinterpret_cast<const char *>(m_out), m_size}; }
    [[nodiscard]] Error error() const
    {
        return {Errc::Io, "the thumbnail could not be made", m_errors.message,
                "close something and try again"};
    }

private:
    JpegErrors m_errors;
    jpeg_compress_struct m_codec{};
    unsigned char *m_out = nullptr;
    unsigned long m_size = 0;
};

bool Writer::write(const Pixels &pixels, int quality)
{
    m_codec.err = &m_errors.manager;
    if (setjmp(m_errors.back) != 0)
        return false;
    jpeg_create_compress(&m_codec);
    jpeg_mem_dest(&m_codec, &m_out, &m_size);
    m_codec.image_width = static_cast<JDIMENSION>(pixels.size.width);
    m_codec.image_height = static_cast<JDIMENSION>(pixels.size.height);
    m_codec.input_components = 3;
    m_codec.in_color_space = JCS_RGB;
    jpeg_set_defaults(&m_codec);
    jpeg_set_quality(&m_codec, quality, TRUE);
    m_codec.dct_method = JDCT_ISLOW;
    m_codec.optimize_coding = TRUE;
    jpeg_start_compress(&m_codec, TRUE);
    const std::size_t stride = std::size_t{m_codec.image_width} * 3;
    while (m_codec.next_scanline < m_codec.image_height) {
        // libjpeg only reads; its row type has no const
        JSAMPROW row = const_cast<JSAMPROW>(pixels.rgb.data() + m_codec.next_scanline * stride);
        jpeg_write_scanlines(&m_codec, &row, 1);
    }
    jpeg_finish_compress(&m_codec);
    return true;
}

} // namespace

Result<std::string> encodeJpeg(const Pixels &pixels, std::size_t maxBytes)
{
    constexpr int step = 12;
    for (int quality = thumbnailQuality;; quality -= step) {
        Writer writer;
        if (!writer.write(pixels, quality))
            return writer.error();
        std::string bytes = writer.bytes();
        if (bytes.size() <= maxBytes || quality <= step)
            return bytes;
    }
}

} // namespace snugwalk
