// SPDX-License-Identifier: Apache-2.0
// Asking the worker, exchanging beside it, and telling.
#include "sync_model.hpp"

#include <algorithm>

#include <QUrl>

#include "logbook/want_photos.hpp"
#include "sync/share.hpp"
#include "sync_words.hpp"

namespace snugwalk {
namespace {

constexpr int lookMilliseconds = 100;

} // namespace

SyncModel::SyncModel(const ActDesk *desk, QObject *parent)
    : QObject(parent),
      m_desk(desk),
      m_share(new ShareModel(desk, this)),
      m_conflicts(new ConflictsModel(desk, this)),
      m_paper(new PaperModel(desk, this)),
      m_reader(new CodeReader(desk, this))
{
    m_look.setInterval(lookMilliseconds);
    connect(&m_look, &QTimer::timeout, this, &SyncModel::progressed);
    connect(m_share, &ShareModel::changed, this, &SyncModel::changed);
    connect(m_share, &ShareModel::acted, this, &SyncModel::readAgain);
    connect(m_paper, &PaperModel::changed, this, &SyncModel::changed);
    connect(m_paper, &PaperModel::acted, this, &SyncModel::readAgain);
    connect(m_reader, &CodeReader::changed, this, &SyncModel::changed);
    connect(m_conflicts, &ConflictsModel::changed, this, &SyncModel::changed);
    connect(m_conflicts, &ConflictsModel::acted, this, [this] { m_desk->changed(true); });
}

SyncModel::~SyncModel() { stop(); }

bool SyncModel::isBusy() const
{
    return m_reading || m_acting || !m_with.isEmpty() || m_share->isBusy() || m_conflicts->isBusy() ||
           m_paper->isBusy() || m_reader->isBusy();
}

QString SyncModel::progress() const
{
    if (!m_watch)
        return {};
    const ExchangeStep step = m_watch->step();
    return exchangeProgress(step.what, step.done, step.of);
}

double SyncModel::done() const
{
    const ExchangeStep step = m_watch ? m_watch->step() : ExchangeStep();
    return step.of <= 0 ? 0.0
                        : std::clamp(static_cast<double>(step.done) / static_cast<double>(step.of), 0.0, 1.0);
}

QString SyncModel::standing() const { return standingText(m_state); }

QStringList SyncModel::waiting() const { return waitingLines(m_state); }

QString SyncModel::mark() const { return waitingMark(m_state); }

QStringList SyncModel::elsewhere() const
{
    QStringList list;
    for (const Photo &photo : m_state.elsewhere)
        list << Voice::text(photo.hash);
    return list;
}

QVariantList SyncModel::stores() const
{
    QVariantList list;
    for (const KnownStore &store : m_state.stores)
        list << storeRow(*m_shown.voice, store, m_state.shared);
    return list;
}

QVariantList SyncModel::devices() const
{
    QVariantList list;
    for (const Member &member : m_state.members)
        list << deviceRow(*m_shown.voice, m_state, member);
    return list;
}

void SyncModel::show(const Shown &shown)
{
    m_shown = shown;
    m_share->show(shown);
    m_paper->show(shown);
    m_conflicts->show(shown, m_state);
    // before there is a rig nothing waits, and looking would make the file
    if (shown.history() != nullptr || !m_desk->parts->bookMissing)
        readAgain();
}

void SyncModel::readAgain()
{
    if (m_reading) {
        m_readAgain = true;
        return;
    }
    m_reading = true;
    Q_EMIT changed();
    const Id rig = m_shown.history() != nullptr ? m_shown.history()->rig.id : Id{};
    m_desk->worker->run<SyncState>(
        this,
        [rig, places = m_desk->parts->places](Logbook &book) { return readSyncState(book, places, rig); },
        [this](Result<SyncState> state) { takeState(std::move(state)); });
}

void SyncModel::takeState(Result<SyncState> state)
{
    m_reading = false;
    if (state)
        m_state = std::move(state).value();
    else
        m_fault = syncFault(state.error());
    m_conflicts->show(m_shown, m_state);
    Q_EMIT changed();
    if (std::exchange(m_readAgain, false))
        readAgain();
}

void SyncModel::act(std::function<Status(Logbook &)> job, std::function<void()> then)
{
    if (m_acting)
        return;
    m_acting = true;
    clear();
    m_desk->worker->run<std::monostate>(this, std::move(job),
                                        [this, then = std::move(then)](const Status &status) {
                                            m_acting = false;
                                            if (status)
                                                then();
                                            else
                                                m_fault = syncFault(status.error());
                                            readAgain();
                                            Q_EMIT changed();
                                        });
}

void SyncModel::add(const QVariantMap &map)
{
    const auto text = [&](const char *key) { return map.value(QLatin1String(key)).toString().trimmed(); };
    const QUrl url(text("place"));
    NewPlace place;
    place.name = text("name").toStdString();
    place.kind = text("kind").toStdString();
    place.where = (url.isLocalFile() ? url.toLocalFile() : text("place")).toStdString();
    place.user = text("user").toStdString();
    place.password = map.value(QStringLiteral("password")).toString().toStdString();
    place.authority = text("authority").toStdString();
    if (m_desk->parts->places != nullptr)
        act([places = m_desk->parts->places, place](Logbook &) { return places->add(place); },
            [this] { Q_EMIT storeAdded(); });
}

void SyncModel::remove(const QString &store)
{
    if (m_desk->parts->places != nullptr)
        act([places = m_desk->parts->places,
             name = store.toStdString()](Logbook &) { return places->remove(name); },
            [] {});
}

void SyncModel::revoke(const QString &device, const QString &reason)
{
    const auto id = Id::parse(device.toStdString());
    if (!id)
        return;
    act([id = *id, rig = m_state.rig, why = reason.trimmed().toStdString()](
            Logbook &book) { return revokeDevice(book, Keys(book.device()), rig, id, why); },
        [this] { m_desk->changed(true); }); // some entries may count no more
}

void SyncModel::ask(const QString &photo)
{
    std::vector<Photo> photos = m_state.elsewhere;
    if (!photo.isEmpty())
        std::erase_if(photos, [name = photo.toStdString()](const Photo &one) { return one.hash != name; });
    const auto count = static_cast<std::int64_t>(photos.size());
    act(
        [photos](Logbook &book) {
            const auto wanted = wantPhotos(book, photos);
            return wanted ? snugwalk::done() : Status(wanted.error());
        },
        [this, count] { m_asked = askedText(count); });
}

void SyncModel::exchangeNow(const QString &store, bool all)
{
    if (!m_with.isEmpty() || m_desk->parts->places == nullptr)
        return;
    clear();
    m_with = store;
    m_watch = std::make_shared<ExchangeWatch>();
    if (!m_beside)
        m_beside = std::make_unique<Worker>(m_desk->parts->openBook);
    m_beside->run<ExchangeSummary>(
        this,
        [places = m_desk->parts->places, name = store.toStdString(),
         originals = all ? Originals::All : Originals::Wanted,
         watch = m_watch](Logbook &book) { return runExchange(book, *places, name, originals, *watch); },
        [this](const Result<ExchangeSummary> &met) { finishExchange(met); });
    m_look.start();
    Q_EMIT changed();
    Q_EMIT progressed();
}

void SyncModel::finishExchange(const Result<ExchangeSummary> &met)
{
    m_look.stop();
    m_with.clear();
    m_stopped = !met && m_watch->stop;
    if (met)
        m_outcome = exchangeOutcome(*met);
    else if (!m_stopped)
        m_fault = syncFault(met.error());
    m_watch.reset();
    m_desk->changed(true); // also after a fault: what came until then is here
    Q_EMIT changed();
    Q_EMIT progressed();
}

void SyncModel::stop()
{
    if (m_watch)
        m_watch->stop = true;
}

void SyncModel::clear()
{
    m_outcome.clear();
    m_asked.clear();
    m_fault.clear();
    m_stopped = false;
    Q_EMIT changed();
}

} // namespace snugwalk
