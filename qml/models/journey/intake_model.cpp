// SPDX-License-Identifier: Apache-2.0
// A file's way: chosen, read beside, written by the worker.
#include "intake_model.hpp"

#include <algorithm>

#include "intake_words.hpp"
#include "leg_form.hpp"

namespace snugwalk {
namespace {

constexpr int lookMilliseconds = 100;
constexpr std::size_t tripsOffered = 12;

} // namespace

IntakeModel::IntakeModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk)
{
    m_look.setInterval(lookMilliseconds);
    connect(&m_look, &QTimer::timeout, this, &IntakeModel::progressed);
}

IntakeModel::~IntakeModel()
{
    if (m_watch)
        m_watch->stop = true;
    if (m_thread)
        m_thread->wait();
}

double IntakeModel::share() const
{
    if (!m_watch || m_watch->size <= 0)
        return 0.0;
    return std::min(1.0, static_cast<double>(m_watch->read) / static_cast<double>(m_watch->size));
}

QString IntakeModel::progress() const
{
    return m_watch ? bytesText(*m_shown.voice, m_watch->read, m_watch->size) : QString();
}

QStringList IntakeModel::outcome() const
{
    return m_found ? intakeOutcome(*m_shown.voice, *m_found) : QStringList();
}

QVariantMap IntakeModel::fault() const { return m_error ? intakeFault(*m_error, m_fileName) : QVariantMap(); }

QVariantList IntakeModel::roads() const { return roadChoices(); }

QVariantList IntakeModel::trips() const
{
    QVariantList list;
    if (m_shown.history() == nullptr)
        return list;
    const std::vector<Trip> &trips = m_shown.history()->trips;
    for (auto trip = trips.rbegin(); trip != trips.rend() && list.size() < static_cast<int>(tripsOffered);
         ++trip) {
        const QString title = trip->title.empty() ? tr("a trip") : Voice::text(trip->title);
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(trip->id.text())},
                            {QStringLiteral("name"),
                             tr("%1, %2", "trip, date").arg(title, m_shown.voice->date(trip->start))}};
    }
    return list;
}

void IntakeModel::show(const Shown &shown)
{
    m_shown = shown;
    Q_EMIT this->shown();
    Q_EMIT changed();
}

IntakeWish IntakeModel::wishOf(const QString &kind, const QUrl &file, const QVariantMap &map) const
{
    const auto text = [&](const char *key) { return map.value(QLatin1String(key)).toString(); };
    IntakeWish wish;
    wish.kind = kind == QStringLiteral("shake")     ? IntakeKind::Shake
                : kind == QStringLiteral("weather") ? IntakeKind::Weather
                                                    : IntakeKind::Track;
    wish.file = file.toLocalFile().toStdString();
    wish.road = findRoadClass(text("road").toStdString()).value_or(RoadClass::Unknown);
    wish.speedFile = QUrl(text("speedFile")).toLocalFile().toStdString();
    wish.sensor = text("sensor").isEmpty() ? "unknown" : text("sensor").toStdString();
    const Id trip = Id::parse(text("trip").toStdString()).value_or(Id());
    for (const Trip &one : m_shown.history()->trips) {
        if (one.id == trip)
            wish.trip = one;
    }
    bool isNumber = false;
    const std::vector<KnownPlace> places = knownPlaces(m_shown);
    const std::size_t at = text("stay").toULongLong(&isNumber);
    wish.place = isNumber && at < places.size() ? std::optional(places[at].place) : readPlace(text("place"));
    const int year = text("year").toInt(&isNumber);
    if (isNumber)
        wish.year = year;
    wish.offset = m_shown.snapshot->now.offset;
    return wish;
}

void IntakeModel::begin(const QString &kind, const QUrl &file, const QVariantMap &map)
{
    if (m_busy || m_shown.history() == nullptr)
        return;
    clear();
    m_kind = kind;
    m_fileName = file.fileName();
    m_busy = true;
    m_watch = std::make_shared<IntakeWatch>();
    const auto answer = std::make_shared<std::optional<Result<IntakeFound>>>();
    m_thread.reset(QThread::create([wish = wishOf(kind, file, map), watch = m_watch, answer] {
        answer->emplace(readIntake(wish, *watch));
    }));
    m_thread->setObjectName(QStringLiteral("intake"));
    connect(m_thread.get(), &QThread::finished, this, [this, answer] { takeRead(**answer); });
    m_look.start();
    m_thread->start();
    Q_EMIT changed();
}

void IntakeModel::takeRead(const Result<IntakeFound> &found)
{
    m_thread->wait(); // it says that it is finished a moment before it is
    m_look.stop();
    Q_EMIT progressed();
    if (m_watch->stop) {
        m_stopped = true;
        return finish();
    }
    if (found)
        return write(*found);
    m_error = found.error();
    finish();
}

void IntakeModel::write(const IntakeFound &found)
{
    const auto act = [found, rig = m_shown.history()->rig.id, doer = m_desk->doer()](Logbook &book) {
        return writeIntake(book, found, rig, doer);
    };
    m_desk->worker->run<Id>(this, act, [this, found](Result<Id> written) {
        if (written) {
            m_found = found;
            Q_EMIT added(m_kind);
            m_desk->changed(true);
        } else {
            m_error = written.error();
        }
        finish();
    });
}

void IntakeModel::finish()
{
    m_busy = false;
    Q_EMIT changed();
}

void IntakeModel::stop()
{
    if (m_watch)
        m_watch->stop = true;
}

void IntakeModel::clear()
{
    if (m_busy)
        return;
    m_found.reset();
    m_error.reset();
    m_watch.reset();
    m_stopped = false;
    Q_EMIT changed();
    Q_EMIT progressed();
}

} // namespace snugwalk
