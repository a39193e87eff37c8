// SPDX-License-Identifier: Apache-2.0
// Thumbnails by QImageReader, with its size looked at before it may allocate.
#include "image/qt_codec.hpp"

#include <QBuffer>
#include <QImage>
#include <QImageReader>
#include <QImageWriter>
#include <QPainter>
#include <QTransform>

#include "base/contract.hpp"
#include "logbook/photo_parts.hpp"

namespace snugwalk {
namespace {

constexpr int allocationLimitMb =
    512; // 64 million pixels of four bytes fit; Qt's own limit of 128 would not do

// Qt reads from a device; neither copies the bytes.
class Source {
public:
    explicit Source(std::string_view bytes)
        : m_bytes(QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size())))
    {
        m_buffer.setBuffer(&m_bytes);
        m_buffer.open(QIODevice::ReadOnly);
        m_reader.setDevice(&m_buffer);
        m_reader.setDecideFormatFromContent(false);
        m_reader.setFormat(bytes.starts_with("\x89PNG") ? "png" : "jpeg");
        m_reader.setAutoTransform(false); // the orientation is given to us, for both codecs alike
    }
    [[nodiscard]] QImageReader &reader() { return m_reader; }
    [[nodiscard]] Error error() const
    {
        return {Errc::InvalidInput, "the photo is damaged or cut short", m_reader.errorString().toStdString(),
                "copy it again from where it came from"};
    }
    [[nodiscard]] Result<ImageSize> size()
    {
        const QSize size = m_reader.size();
        return size.isValid() ? Result<ImageSize>(ImageSize{size.width(), size.height()}) : error();
    }

private:
    QByteArray m_bytes;
    QBuffer m_buffer;
    QImageReader m_reader;
};

QTransform turn(int orientation)
{
    switch (orientation) { // m11 m12 m21 m22: x' = m11 x + m21 y, y' = m12 x + m22 y
    case 2:
        return {-1, 0, 0, 1, 0, 0};
    case 3:
        return {-1, 0, 0, -1, 0, 0};
    case 4:
        return {1, 0, 0, -1, 0, 0};
    case 5:
        return {0, 1, 1, 0, 0, 0};
    case 6:
        return {0, 1, -1, 0, 0, 0};
    case 7:
        return {0, -1, -1, 0, 0, 0};
    case 8:
        return {0, -1, 1, 0, 0, 0};
    default:
        return {};
    }
}

// A fresh picture on white: no transparency, and none of the original's texts and profiles.
QImage bare(const QImage &image)
{
    QImage plain(image.size(), QImage::Format_RGB32);
    plain.fill(Qt::white);
    QPainter(&plain).drawImage(QPoint(0, 0), image);
    return plain;
}

Result<std::string> encode(const QImage &image, std::size_t maxBytes)
{
    constexpr int step = 12;
    for (int quality = thumbnailQuality;; quality -= step) {
        QByteArray bytes;
        QBuffer buffer(&bytes);
        buffer.open(QIODevice::WriteOnly);
        QImageWriter writer(&buffer, "jpeg");
        writer.setQuality(quality);
        writer.setOptimizedWrite(true);
        if (!writer.write(image))
            return Error{Errc::Io, "the thumbnail could not be made", writer.errorString().toStdString(),
                         "close something and try again"};
        if (static_cast<std::size_t>(bytes.size()) <= maxBytes || quality <= step)
            return bytes.toStdString();
    }
}

} // namespace

Result<ImageSize> QtCodec::probe(std::string_view bytes) const { return Source(bytes).size(); }

Result<std::string> QtCodec::thumbnail(std::string_view bytes, int orientation, int maxEdge) const
{
    return shrunk(bytes, orientation, maxEdge, maxThumbnailBytes);
}

Result<std::string> QtCodec::shrunk(std::string_view bytes, int orientation, int maxEdge,
                                    std::size_t maxBytes)
{
    SNUG_ASSERT(maxEdge >= 1);
    if (const auto parts = readPhotoParts(bytes); !parts) // Qt shows half a photo without a word
        return parts.error();
    Source source(bytes);
    const auto size = source.size();
    if (!size)
        return size.error();
    SNUG_TRY(checkPhotoSize(*size));
    QImageReader::setAllocationLimit(allocationLimitMb);
    const ImageSize wanted = fitted(*size, maxEdge);
    const QSize target(wanted.width, wanted.height);
    if (source.reader().format() == "jpeg" && size->width > 2 * wanted.width)
        source.reader().setScaledSize(target * 2); // lets the decoder do the first halvings
    const QImage image = source.reader().read();
    if (image.isNull())
        return source.error();
    const QImage small = bare(image).scaled(target, Qt::IgnoreAspectRatio, Qt::SmoothTransformation);
    return encode(small.transformed(turn(orientation)), maxBytes);
}

} // namespace snugwalk
