// SPDX-License-Identifier: Apache-2.0
// From a hash to pixels.
#include "photo_provider.hpp"

#include <optional>

#include <QBuffer>
#include <QFile>
#include <QImageReader>
#include <QUrl>

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

constexpr qint64 mostBytes = 64LL << 20; // as a photo that is written down may have

// A photo that is not written down yet, by the address that its picker gave.
std::optional<std::string> chosenFile(const QString &code)
{
    const QString address = QString::fromUtf8(QByteArray::fromBase64(
        code.toLatin1(), QByteArray::Base64UrlEncoding | QByteArray::OmitTrailingEquals));
    if (address.isEmpty())
        return std::nullopt;
    const QUrl url(address);
    QFile file(url.isLocalFile() ? url.toLocalFile() : address);
    if (!file.open(QIODevice::ReadOnly) || file.size() > mostBytes)
        return std::nullopt;
    return file.read(mostBytes).toStdString();
}

} // namespace

PhotoProvider::PhotoProvider(std::filesystem::path folder)
    : QQuickImageProvider(QQuickImageProvider::Image, QQmlImageProviderBase::ForceAsynchronousImageLoading),
      m_folder(std::move(folder))
{}

QImage PhotoProvider::requestImage(const QString &id, QSize *size, const QSize &requested)
{
    const QString kind = id.section(u'/', 0, 0);
    if (kind == QStringLiteral("file")) {
        const auto bytes = chosenFile(id.section(u'/', 1));
        const QImage image = bytes ? decode(*bytes, requested) : QImage();
        if (size != nullptr)
            *size = image.size();
        return image;
    }
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
