// SPDX-License-Identifier: Apache-2.0
// From a hash to pixels.
#include "photo_provider.hpp"

#include <QBuffer>
#include <QImageReader>

#include "logbook/photo_store.hpp"

namespace snugwalk {
namespace {

QImage decode(const std::string &bytes, const QSize &requested)
{
    QByteArray data = QByteArray::fromRawData(bytes.data(), static_cast<qsizetype>(bytes.size()));
    QBuffer buffer(&data);
    QImageReader reader(&buffer);
    reader.setAutoTransform(true);
    const QSize stored = reader.size();
    if (!checkPhotoSize({stored.width(), stored.height()}))
        return {};
    const bool lies = (reader.transformation() & QImageIOHandler::TransformationRotate90) != 0;
    QSize wanted = lies ? requested.transposed() : requested;
    if (wanted.width() <= 0)
        wanted.setWidth(stored.width());
    if (wanted.height() <= 0)
        wanted.setHeight(stored.height());
    const QSize scaled = stored.scaled(wanted, Qt::KeepAspectRatio);
    if (scaled.width() < stored.width())
        reader.setScaledSize(scaled);
    return reader.read();
}

} // namespace

PhotoProvider::PhotoProvider(std::filesystem::path folder)
    : QQuickImageProvider(QQuickImageProvider::Image, QQmlImageProviderBase::ForceAsynchronousImageLoading),
      m_folder(std::move(folder))
{}

QImage PhotoProvider::requestImage(const QString &id, QSize *size, const QSize &requested)
{
    const QString kind = id.section(u'/', 0, 0);
    const auto hash = Hash::parse(id.section(u'/', 1).toStdString());
    if (!hash)
        return {};
    const PhotoStore store(m_folder);
    Result<std::string> bytes =
        kind == QStringLiteral("full") ? store.original(*hash) : store.thumbnail(*hash);
    if (!bytes && kind == QStringLiteral("full"))
        bytes = store.thumbnail(*hash); // the original is on another device
    const QImage image = bytes ? decode(*bytes, requested) : QImage();
    if (size != nullptr)
        *size = image.size();
    return image;
}

} // namespace snugwalk
