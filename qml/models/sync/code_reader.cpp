// SPDX-License-Identifier: Apache-2.0
// The worker reads: a frame takes longer than the screen has time for.
#include "code_reader.hpp"

#include <QBuffer>
#include <QFile>
#include <QImageReader>
#include <QUrl>

#include "sync/words.hpp"
#include "sync_words.hpp"

namespace snugwalk {
namespace {

constexpr qint64 maxPictureBytes = 40'000'000;
constexpr qint64 maxPixels = 50'000'000;

using Reader = std::function<std::optional<std::string>(const QImage &)>;

Result<std::string> wordsIn(const Reader &reader, const QImage &picture, const std::string &where)
{
    const auto bytes = reader(picture);
    if (!bytes || bytes->empty() || bytes->size() > 1024)
        return Error{Errc::NotFound, "no code is in this picture", where, ""};
    return wordsFrom(*bytes);
}

// Size before pixels: a picture that claims to be huge is refused by its header.
Result<QImage> pictureOf(const QString &name)
{
    const Error refused{Errc::InvalidInput, "this is no picture that can be read", name.toStdString(), ""};
    QFile file(name);
    if (!file.open(QIODevice::ReadOnly) || file.size() > maxPictureBytes)
        return refused;
    QByteArray bytes = file.readAll();
    const char *format = bytes.startsWith("\xff\xd8\xff") ? "jpeg"
                         : bytes.startsWith("\x89PNG")    ? "png"
                                                          : nullptr;
    if (format == nullptr)
        return refused;
    QBuffer buffer(&bytes);
    buffer.open(QIODevice::ReadOnly);
    QImageReader reader(&buffer, format);
    const QSize size = reader.size();
    if (!size.isValid() || qint64(size.width()) * size.height() > maxPixels)
        return refused;
    const QImage picture = reader.read();
    return picture.isNull() ? Result<QImage>(refused) : picture;
}

} // namespace

CodeReader::CodeReader(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk) {}

bool CodeReader::isAble() const { return static_cast<bool>(m_desk->parts->qrBytes); }

void CodeReader::take(const Result<std::string> &words, bool isTold)
{
    m_looking = false;
    if (words)
        Q_EMIT found(Voice::text(*words));
    else if (isTold)
        m_fault = syncFault(words.error());
    Q_EMIT changed();
}

void CodeReader::look(const CameraModel *camera)
{
    if (m_looking || !isAble() || camera == nullptr || !camera->isLive())
        return;
    m_looking = true;
    m_desk->worker->run<std::string>(
        this,
        [reader = m_desk->parts->qrBytes, frame = camera->frame()](Logbook &) {
            return wordsIn(reader, frame, "");
        },
        [this](const Result<std::string> &words) { take(words, false); });
}

void CodeReader::lookAtFile(const QString &file)
{
    if (m_looking || !isAble())
        return;
    clear();
    m_looking = true;
    const QUrl url(file);
    m_desk->worker->run<std::string>(
        this,
        [reader = m_desk->parts->qrBytes,
         name = url.isLocalFile() ? url.toLocalFile() : file](Logbook &) -> Result<std::string> {
            const auto picture = pictureOf(name);
            return picture ? wordsIn(reader, *picture, name.toStdString())
                           : Result<std::string>(picture.error());
        },
        [this](const Result<std::string> &words) { take(words, true); });
}

void CodeReader::clear()
{
    m_fault.clear();
    Q_EMIT changed();
}

} // namespace snugwalk
