// SPDX-License-Identifier: Apache-2.0
// Decoding in bounded memory and work; the discrete cosine transform does the first halvings.
#include "image/jpeg_decode.hpp"

#include <algorithm>
#include <optional>

#include "image/jpeg_guard.hpp"

namespace snugwalk {
namespace {

constexpr long memoryLimit = 512L * 1024 * 1024; // a progressive photo of 64 million pixels needs 384 MiB
constexpr int mostScans = 100; // cameras write about ten; thousands are made to waste an hour

void stopEndlessScans(j_common_ptr codec)
{
    if (reinterpret_cast<j_decompress_ptr>(codec)->input_scan_number > mostScans)
        leaveJpeg(codec, "more than 100 scans");
}

// Everything that must outlive a jump.
class Reader {
public:
    explicit Reader(std::string_view bytes) : m_bytes(bytes) {}
    Reader(const Reader &) = delete;
    Reader &operator=(const Reader &) = delete;
    ~Reader() { jpeg_destroy_decompress(&m_codec); }

    [[nodiscard]] bool readHeader();
    [[nodiscard]] bool readPixels(int maxEdge);
    [[nodiscard]] ImageSize size() const
    {
        // libjpeg's own limit is 65,500, so both fit
        return {static_cast<int>(m_codec.image_width), static_cast<int>(m_codec.image_height)};
    }
    [[nodiscard]] Pixels take() { return m_scaler->take(); }
    [[nodiscard]] Error error() const
    {
        return {Errc::InvalidInput, "the photo is damaged or cut short", m_errors.message,
                "copy it again from where it came from"};
    }

private:
    void start();
    void prepare(int maxEdge);
    void addRow();

    std::string_view m_bytes;
    JpegErrors m_errors;
    jpeg_decompress_struct m_codec{};
    jpeg_progress_mgr m_progress{};
    std::optional<BoxScaler> m_scaler;
    std::vector<std::uint8_t> m_line;
    std::vector<std::uint8_t> m_rgb;
};

void Reader::start()
{
    m_codec.err = &m_errors.manager;
    jpeg_create_decompress(&m_codec);
    m_codec.mem->max_memory_to_use = memoryLimit;
    m_progress.progress_monitor = stopEndlessScans;
    m_codec.progress = &m_progress;
    jpeg_mem_src(&m_codec, reinterpret_cast<const unsigned char *>(m_bytes.data()),
                 static_cast<unsigned long>(m_bytes.size()));
    jpeg_read_header(&m_codec, TRUE);
}

bool Reader::readHeader()
{
    if (setjmp(m_errors.back) != 0)
        return false;
    start();
    return true;
}

// The smallest of 1/8, 1/4, 1/2, 1/1 that is still at least the wanted size.
void Reader::prepare(int maxEdge)
{
    const ImageSize wanted = fitted(size(), maxEdge);
    m_codec.scale_denom = 8;
    m_codec.scale_num = 1;
    const auto fits = [&] {
        jpeg_calc_output_dimensions(&m_codec);
        return static_cast<int>(m_codec.output_width) >= wanted.width &&
               static_cast<int>(m_codec.output_height) >= wanted.height;
    };
    m_codec.dct_method = JDCT_ISLOW; // exact, so alike on every processor
    const bool isFourColour = m_codec.num_components == 4;
    m_codec.out_color_space = isFourColour ? JCS_CMYK : JCS_RGB;
    while (!fits())
        m_codec.scale_num *= 2;
    const ImageSize decoded{static_cast<int>(m_codec.output_width), static_cast<int>(m_codec.output_height)};
    m_scaler.emplace(decoded, wanted);
    m_line.resize(m_codec.output_width * static_cast<std::size_t>(isFourColour ? 4 : 3));
    m_rgb.resize(m_codec.output_width * std::size_t{3});
}

void Reader::addRow()
{
    if (m_codec.out_color_space == JCS_RGB)
        return m_scaler->addRow(m_line.data());
    for (std::size_t i = 0; i < m_rgb.size(); ++i) { // inks as files have them: 255 is none
        const std::size_t pixel = i / 3 * 4;
        m_rgb[i] = static_cast<std::uint8_t>(m_line[pixel + i % 3] * m_line[pixel + 3] / 255);
    }
    m_scaler->addRow(m_rgb.data());
}

bool Reader::readPixels(int maxEdge)
{
    if (setjmp(m_errors.back) != 0)
        return false;
    prepare(maxEdge); // what it makes lives in this object, outside the jump
    jpeg_start_decompress(&m_codec);
    while (m_codec.output_scanline < m_codec.output_height) {
        JSAMPROW row = m_line.data();
        jpeg_read_scanlines(&m_codec, &row, 1);
        addRow();
    }
    jpeg_finish_decompress(&m_codec);
    return true;
}

} // namespace

Result<ImageSize> probeJpeg(std::string_view bytes)
{
    Reader reader(bytes);
    return reader.readHeader() ? Result<ImageSize>(reader.size()) : reader.error();
}

Result<Pixels> shrinkJpeg(std::string_view bytes, int maxEdge)
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
