// SPDX-License-Identifier: Apache-2.0
// The longest that the thread which draws is kept while files come in: by the events it handles, and by a
// heartbeat that should come every two milliseconds.
#include <algorithm>

#include <QDir>
#include <QTimer>

#include "app_steps.hpp"
#include "runs.hpp"

namespace snugwalk::speed {
namespace {

class Heartbeat {
public:
    explicit Heartbeat(const WatchedApp &watch) : m_watch(watch), m_last(watch.clock())
    {
        m_timer.setTimerType(Qt::PreciseTimer);
        QObject::connect(&m_timer, &QTimer::timeout, [this] { beat(); });
        m_timer.start(2);
    }
    [[nodiscard]] double longest() const { return m_longest; }

private:
    void beat()
    {
        const double now = m_watch.clock();
        m_longest = std::max(m_longest, now - m_last);
        m_last = now;
    }

    const WatchedApp &m_watch;
    QTimer m_timer;
    double m_last;
    double m_longest = 0.0;
};

void tellBlocks(const char *what, const Heartbeat &heart, WatchedApp &watch)
{
    tell(what, watch.take(), longBlock);
    std::printf("%-34s        longest without a heartbeat %6.1f ms\n", "", heart.longest());
}

} // namespace

void importTrack(journey::Life &life, WatchedApp &watch)
{
    life.finger().tap(QStringLiteral("Logbook"));
    life.finger().tap(QStringLiteral("trips"));
    life.finger().tapStarting(QStringLiteral("Take a file in"));
    life.finger().tap(QStringLiteral("Choose the file"));
    (void)watch.take();
    watch.nowDoing(QStringLiteral("the track comes in"));
    const double from = watch.clock();
    const Heartbeat heart(watch);
    journey::chooseFile(life, life.given(QStringLiteral("track")));
    life.finger().waitFor([&] { return !life.session().intake()->isBusy(); }, QStringLiteral("the track"),
                          300'000);
    journey::expect(!life.session().intake()->outcome().isEmpty(), QStringLiteral("the track was refused"));
    const double taken = watch.clock();
    watch.nowDoing(QStringLiteral("the logbook is read again"));
    life.settle();
    std::printf("track taken in %.1f s\n", (taken - from) * 1e-3);
    tellBlocks("import of a track, blocks", heart, watch);
}

void importPhotos(journey::Life &life, WatchedApp &watch)
{
    WalkModel &walk = journey::startWalk(life, QStringLiteral("Full round."));
    journey::readCautions(life);
    life.finger().tap(QStringLiteral("Attention"));
    life.finger().tapStarting(QStringLiteral("What: "));
    life.finger().tapStarting(QStringLiteral("grade 2:"));
    life.finger().tap(QStringLiteral("photo from a file"));
    const QDir folder(life.given(QStringLiteral("photos")));
    QStringList files;
    for (const QString &name : folder.entryList({QStringLiteral("*.jpg")}, QDir::Files))
        files << folder.filePath(name);
    life.settle();
    (void)watch.take();
    {
        watch.nowDoing(QStringLiteral("%1 photos are chosen").arg(files.size()));
        const Heartbeat heart(watch);
        journey::chooseFiles(life, files);
        life.settle();
        tellBlocks("choosing photos, blocks", heart, watch);
    }
    watch.nowDoing(QStringLiteral("the photos go into the logbook"));
    const double from = watch.clock();
    const Heartbeat heart(watch);
    bool marked = false;
    const auto heard = QObject::connect(&walk, &WalkModel::marked, &walk, [&] { marked = true; });
    life.finger().tap(QStringLiteral("Write down"));
    life.finger().waitFor([&] { return marked; }, QStringLiteral("the photos in the logbook"), 300'000);
    QObject::disconnect(heard);
    life.settle();
    std::printf("%d photos taken in %.1f s\n", static_cast<int>(files.size()), (watch.clock() - from) * 1e-3);
    tellBlocks("import of photos, blocks", heart, watch);
}

} // namespace snugwalk::speed
