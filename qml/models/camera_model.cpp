// SPDX-License-Identifier: Apache-2.0
// From a press to a file, and the list of files that wait.
#include "camera_model.hpp"

#include "camera_source.hpp"
#include "taken_photos.hpp"

namespace snugwalk {
namespace {

QString addressOf(const std::string &path)
{
    return QUrl::fromLocalFile(QString::fromStdString(path)).toString();
}

std::string pathOf(const QString &address) { return QUrl(address).toLocalFile().toStdString(); }

} // namespace

CameraModel::CameraModel(const ActDesk *desk, QObject *parent)
    : QObject(parent), m_desk(desk), m_source(desk->parts->camera)
{
    if (m_source == nullptr)
        return;
    connect(m_source, &CameraSource::thereChanged, this, &CameraModel::thereChanged);
    connect(m_source, &CameraSource::torchChanged, this, &CameraModel::torchChanged);
    connect(m_source, &CameraSource::frame, this, &CameraModel::noteFrame);
    connect(m_source, &CameraSource::taken, this, [this](const QString &file) {
        finish();
        m_waiting << QUrl::fromLocalFile(file).toString();
        Q_EMIT waitingChanged();
        Q_EMIT taken(m_waiting.last());
    });
    connect(m_source, &CameraSource::failed, this, [this] {
        finish();
        m_desk->refuse({Errc::Io, "the camera gave no photo", {}, "try once more, or take a file"});
    });
}

bool CameraModel::isThere() const { return m_source != nullptr && m_source->isThere(); }

bool CameraModel::hasTorch() const { return m_source != nullptr && m_source->hasTorch(); }

void CameraModel::setTorch(bool on)
{
    const bool shines = on && hasTorch();
    if (shines == m_torch)
        return;
    m_torch = shines;
    m_source->setTorch(shines);
    Q_EMIT torchChanged();
}

void CameraModel::noteFrame(const QImage &image)
{
    m_frame = image;
    Q_EMIT frameChanged();
}

void CameraModel::finish()
{
    m_taking = false;
    Q_EMIT busyChanged();
}

void CameraModel::refresh()
{
    m_desk->worker->run<TakenPhotos>(
        this,
        [folder = m_desk->parts->takenFolder](Logbook &) { return Result<TakenPhotos>(listTaken(folder)); },
        [this](Result<TakenPhotos> taken) {
            if (!taken)
                return;
            QStringList waiting;
            for (const std::string &path : taken->waiting)
                waiting << addressOf(path);
            if (waiting == m_waiting && taken->away == m_away)
                return;
            m_waiting = waiting;
            m_away = taken->away;
            Q_EMIT waitingChanged();
        });
}

void CameraModel::start()
{
    if (isThere())
        m_source->start();
}

void CameraModel::stop()
{
    if (m_source == nullptr)
        return;
    setTorch(false);
    m_source->stop();
    noteFrame({});
}

void CameraModel::take()
{
    if (m_taking || !isThere())
        return;
    m_taking = true;
    Q_EMIT busyChanged();
    std::error_code fault;
    std::filesystem::create_directories(m_desk->parts->takenFolder, fault); // `failed` tells
    const std::string name = std::to_string(toMillis(m_desk->parts->clock->now().instant)) + '-' +
                             std::to_string(++m_count) + ".jpg";
    m_source->take(QString::fromStdString((m_desk->parts->takenFolder / name).string()));
}

void CameraModel::keep(const QVariantList &files)
{
    std::vector<std::pair<std::string, std::string>> named; // path, stem
    for (const QVariant &file : files)
        named.emplace_back(pathOf(file.toString()),
                           std::to_string(toMillis(m_desk->parts->clock->now().instant)) + '-' +
                               std::to_string(++m_count));
    const auto act = [folder = m_desk->parts->takenFolder, named](Logbook &) -> Result<int> {
        for (const auto &[path, stem] : named)
            SNUG_TRY(keepTaken(folder, path, stem));
        return static_cast<int>(named.size());
    };
    m_desk->worker->run<int>(this, act, [this](Result<int> kept) {
        if (!kept)
            m_desk->refuse(kept.error());
        refresh();
    });
}

void CameraModel::putAway(const QString &file)
{
    m_desk->worker->runBeside(
        [folder = m_desk->parts->takenFolder, path = pathOf(file)] { putTakenAway(folder, path); });
    refresh();
}

void CameraModel::bringBack()
{
    m_desk->worker->runBeside([folder = m_desk->parts->takenFolder] { bringTakenBack(folder); });
    refresh();
}

} // namespace snugwalk
