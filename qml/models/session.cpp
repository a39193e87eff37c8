// SPDX-License-Identifier: Apache-2.0
// Reading the logbook and handing what was read to the models.
#include "session.hpp"

#include "error_text.hpp"
#include "logbook/acts.hpp"
#include "rig_form.hpp"

namespace snugwalk {
namespace {

constexpr int idleMilliseconds = 250;

QStringList rigNumbers()
{
    return {QStringLiteral("length"),       QStringLiteral("width"),        QStringLiteral("height"),
            QStringLiteral("floor_height"), QStringLiteral("hitch_length"), QStringLiteral("axles")};
}

} // namespace

Session::Session(AppParts parts, QObject *parent)
    : QObject(parent),
      m_parts(std::move(parts)),
      m_preferences(m_parts.preferences),
      m_worker(new Worker(m_parts.openBook)),
      m_position(new PositionModel(m_parts.position, *m_parts.clock, this))
{
    m_desk = {m_worker, &m_parts, [this] { return doer(); }, [this](const Error &error) { refuse(error); },
              [this](bool atOnce) { noteChange(atOnce); }};
    m_walk = new WalkModel(&m_desk, this);
    m_rig = new RigModel(&m_desk, m_walk, this);
    m_due = new DueModel(&m_desk, this);
    m_book = new BookModel(&m_desk, this);
    m_books = new BooksModel(&m_desk, this);
    m_bench = new BenchModel(&m_desk, this);
    m_drawing = new DrawingModel(&m_desk, this);
    m_camera = new CameraModel(&m_desk, this);
    m_points = new PointsModel(&m_desk, this);
    m_supplies = new SuppliesModel(&m_desk, this);
    m_trends = new TrendModel(&m_desk, this);
    m_why = new WhyModel(&m_desk, this);
    m_whatIf = new WhatIfModel(&m_desk, this);
    m_trip = new TripModel(&m_desk, this);
    m_map = new MapModel(&m_desk, this);
    m_intake = new IntakeModel(&m_desk, this);
    m_unmade = m_parts.bookMissing;
    connect(m_books, &BooksModel::changed, this, &Session::busyChanged);
    connect(m_bench, &BenchModel::changed, this, &Session::busyChanged);
    m_sync = new SyncModel(&m_desk, this);
    m_search = new SearchModel(&m_desk, this);
    m_lastAct = new LastActModel(&m_desk, this);
    connect(m_search, &SearchModel::changed, this, &Session::busyChanged);
    connect(m_lastAct, &LastActModel::changed, this, &Session::busyChanged);
    m_reports = new ReportModel(&m_desk, this);
    connect(m_reports, &ReportModel::changed, this, &Session::busyChanged);
    m_plots = new PlotsModel(&m_desk, this);
    connect(m_plots, &PlotsModel::changed, this, &Session::busyChanged);
    connect(m_due, &DueModel::changed, this, &Session::busyChanged);
    connect(m_why, &WhyModel::changed, this, &Session::busyChanged);
    connect(m_whatIf, &WhatIfModel::changed, this, &Session::busyChanged);
    connect(m_trip, &TripModel::changed, this, &Session::busyChanged);
    connect(m_map, &MapModel::changed, this, &Session::busyChanged);
    connect(m_intake, &IntakeModel::changed, this, &Session::busyChanged);
    connect(m_sync, &SyncModel::changed, this, &Session::busyChanged);
    connect(m_supplies, &SuppliesModel::changed, this, &Session::busyChanged);
    connect(m_trends, &TrendModel::changed, this, &Session::busyChanged);
    connect(m_drawing, &DrawingModel::written, m_walk, &WalkModel::noteAct);
    connect(m_walk, &WalkModel::marked, this, [this] { cue(Cue::Written); });
    connect(m_walk, &WalkModel::undone, this, [this] { cue(Cue::Undone); });
    m_idle.setSingleShot(true);
    m_idle.setInterval(idleMilliseconds);
    connect(&m_idle, &QTimer::timeout, this, &Session::refresh);
    connect(m_walk, &WalkModel::progressChanged, this, &Session::busyChanged);
    if (m_preferences.language.isEmpty())
        m_preferences.language = QStringLiteral("en");
    speakAgain();
    refresh();
}

Session::~Session()
{
    m_sync->stop(); // the exchange may hold the lock that a tap waits for
    // First of all: no answer may reach a model that is being taken down, and no tap may be lost.
    delete m_worker;
}

Doer Session::doer() const { return {m_preferences.person.toStdString(), std::nullopt, m_position->where()}; }

void Session::refuse(const Error &error)
{
    const ErrorText text = errorText(error);
    m_errorWhat = text.what;
    m_errorDo = text.act;
    Q_EMIT errorChanged();
}

void Session::clearError()
{
    m_errorWhat.clear();
    m_errorDo.clear();
    Q_EMIT errorChanged();
}

void Session::noteChange(bool atOnce)
{
    m_unmade = false;
    if (atOnce)
        refresh();
    else
        m_idle.start();
}

void Session::refresh()
{
    m_idle.stop();
    if (m_reading) {
        m_readAgain = true;
        return;
    }
    m_reading = true;
    Q_EMIT busyChanged();
    if (m_unmade) { // nothing to read, and opening it would make it
        auto empty = std::make_shared<Snapshot>();
        empty->now = m_parts.clock->now();
        const auto answer = [this, empty] { takeAnswer(std::shared_ptr<const Snapshot>(empty)); };
        QMetaObject::invokeMethod(this, answer, Qt::QueuedConnection);
        return;
    }
    const Id chosen = Id::parse(m_preferences.rig.toStdString()).value_or(Id{});
    m_worker->run<std::shared_ptr<const Snapshot>>(
        this,
        [chosen, catalogue = m_parts.catalogue, world = m_parts.world](Logbook &book) {
            return takeSnapshot(book, *catalogue, chosen, world ? world() : nullptr);
        },
        [this](Result<std::shared_ptr<const Snapshot>> answer) { takeAnswer(std::move(answer)); });
}

void Session::takeAnswer(Result<std::shared_ptr<const Snapshot>> answer)
{
    m_reading = false;
    m_loaded = true;
    if (answer)
        adopt(std::move(answer).value());
    else
        refuse(answer.error());
    showAll();
    if (!m_unmade)
        m_camera->refresh();
    Q_EMIT snapshotChanged();
    Q_EMIT busyChanged();
    const bool moved = leavePutAway();
    if (std::exchange(m_readAgain, false) || moved)
        refresh();
}

void Session::showAll()
{
    m_walk->show(m_shown);
    m_rig->show(m_shown);
    m_due->show(m_shown);
    m_book->show(m_shown);
    m_bench->show(m_shown);
    m_drawing->show(m_shown);
    m_trends->show(m_shown);
    m_supplies->show(m_shown);
    m_points->show(m_shown);
    m_why->show(m_shown);
    m_whatIf->show(m_shown);
    m_trip->show(m_shown);
    m_map->show(m_shown);
    m_intake->show(m_shown);
    m_sync->show(m_shown);
    m_search->show(m_shown);
    m_lastAct->show(m_shown);
    m_reports->show(m_shown);
    m_plots->show(m_shown);
    m_walk->setNumbered(m_rig->numbered());
}

QVariantList Session::rigs() const
{
    QVariantList list;
    for (const Rig &rig : m_shown.snapshot->rigs) {
        const bool isCurrent = hasRig() && rig.id == m_shown.history()->rig.id;
        list << QVariantMap{{QStringLiteral("id"), Voice::text(rig.id.text())},
                            {QStringLiteral("name"), Voice::text(rig.name)},
                            {QStringLiteral("current"), isCurrent},
                            {QStringLiteral("archived"), isPutAway(rig)}};
    }
    return list;
}

void Session::chooseRig(const QString &id)
{
    m_preferences.rig = id;
    keepPreferences();
    refresh();
}

void Session::addRig(const QVariantMap &map)
{
    RigForm form = readRigForm(m_shown.voice->plainTexts(map, rigNumbers()), m_preferences.units);
    m_rigProblems = form.problems;
    Q_EMIT rigProblemsChanged();
    if (m_rigProblems.isEmpty())
        writeRig(form.rig);
}

void Session::changeRig(const QVariantMap &map)
{
    if (!hasRig())
        return;
    RigForm form = readRigForm(map, m_shown.history()->rig, *m_shown.voice);
    m_rigProblems = form.problems;
    Q_EMIT rigProblemsChanged();
    if (m_rigProblems.isEmpty())
        writeRig(form.rig);
}

void Session::archiveRig(const QString &id, bool archived)
{
    m_preferences.putAway.removeAll(id);
    if (archived)
        m_preferences.putAway << id;
    else
        m_preferences.rig = id; // brought back to be looked after
    keepPreferences();
    refresh();
}

bool Session::isPutAway(const Rig &rig) const
{
    return m_preferences.putAway.contains(Voice::text(rig.id.text()));
}

// Another rig comes to the front where the one under care was put away; the last one stays.
bool Session::leavePutAway()
{
    if (!hasRig() || !isPutAway(m_shown.history()->rig))
        return false;
    for (const Rig &rig : m_shown.snapshot->rigs) {
        if (isPutAway(rig))
            continue;
        m_preferences.rig = Voice::text(rig.id.text());
        keepPreferences();
        return true;
    }
    return false;
}

void Session::writeRig(const Rig &rig)
{
    m_unmade = false;
    m_worker->run<Id>(
        this, [rig, doer = doer()](Logbook &book) { return saveRig(book, rig, doer); },
        [this](Result<Id> written) {
            if (!written) {
                refuse(written.error());
                return;
            }
            Q_EMIT rigAdded();
            chooseRig(Voice::text(written->text()));
        });
}

QVariantMap Session::emergency() const
{
    QVariantMap map;
    for (const char *part : {"title", "gas", "co", "fire", "tingle"})
        map[QLatin1String(part)] = m_shown.voice->word("emergency", part);
    return map;
}

QString Session::footer() const
{
    const QString who =
        m_preferences.person.isEmpty() ? tr("one person", "who looked") : m_preferences.person;
    return Voice::text(m_shown.voice->texts.text("report_footer")).replace(QStringLiteral("{who}"), who);
}

QString Session::today() const { return m_shown.voice->date(m_parts.clock->now()); }

} // namespace snugwalk
