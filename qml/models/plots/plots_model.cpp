// SPDX-License-Identifier: Apache-2.0
// Asking for plots, and having them written.
#include "plots_model.hpp"

#include <algorithm>
#include <set>

#include "error_text.hpp"
#include "file_names.hpp"
#include "plot_picture.hpp"
#include "report_desk.hpp"

namespace snugwalk {
namespace {

constexpr int monthsShown = 24;
constexpr std::size_t mostSubjects = 12;

QVariantMap choice(const std::string &slug, const QString &name)
{
    return {{QStringLiteral("slug"), Voice::text(slug)}, {QStringLiteral("name"), name}};
}

QStringList texts(const std::vector<std::string> &list)
{
    QStringList out;
    for (const std::string &one : list)
        out << Voice::text(one);
    return out;
}

QVariantMap plotMap(const Plot &plot)
{
    QVariantList rows;
    for (const PlotRow &row : plot.rows)
        rows << QVariantMap{{QStringLiteral("cells"), texts(row.cells)},
                            {QStringLiteral("words"), Voice::text(rowWords(plot, row))}};
    return {{QStringLiteral("slug"), Voice::text(plot.slug)},
            {QStringLiteral("title"), Voice::text(plot.title)},
            {QStringLiteral("about"), Voice::text(plot.about)},
            {QStringLiteral("notes"), texts(plot.notes)},
            {QStringLiteral("empty"), Voice::text(plot.empty)},
            {QStringLiteral("head"), texts(plot.head)},
            {QStringLiteral("rows"), rows}};
}

QVariantList openFindings(const Shown &shown)
{
    QVariantList list{choice({}, PlotsModel::tr("the worst of the rig"))};
    for (const OpenFinding &open : shown.snapshot->state.open) {
        if (static_cast<std::size_t>(list.size()) > mostSubjects)
            break;
        list << choice(open.id.text(),
                       PlotsModel::tr("%1: %2", "point: defect")
                           .arg(shown.voice->point(open.point), shown.voice->word("defects", open.defect)));
    }
    return list;
}

QVariantList readPoints(const Shown &shown)
{
    std::set<std::string> points;
    const std::string most = mostReadPoint(*shown.history());
    for (const WalkRecord &record : shown.history()->walks) {
        for (const Mark &mark : record.marks) {
            if (!mark.readings.empty() && mark.point != most)
                points.insert(mark.point);
        }
    }
    QVariantList list;
    if (!most.empty())
        list << choice({}, shown.voice->point(most));
    for (const std::string &point : points) {
        if (static_cast<std::size_t>(list.size()) < mostSubjects)
            list << choice(point, shown.voice->point(point));
    }
    return list;
}

} // namespace

QVariantList PlotsModel::kinds() const
{
    QVariantList list;
    for (const PlotKind kind : allPlotKinds())
        list << choice(std::string(snugwalk::slug(kind)), Voice::text(plotTitle(kind, m_shown.voice->texts)));
    return list;
}

QVariantList PlotsModel::subjects() const
{
    if (m_shown.history() == nullptr)
        return {};
    if (m_ask.kind == PlotKind::Concern)
        return openFindings(m_shown);
    return m_ask.kind == PlotKind::Reading ? readPoints(m_shown) : QVariantList();
}

bool PlotsModel::hasMore() const
{
    const bool byMonth = m_ask.kind == PlotKind::Weathering || m_ask.kind == PlotKind::Shake;
    if (!byMonth || m_plots.empty())
        return false;
    return m_ask.months == 0 ? m_plots.front().rows.size() > monthsShown : m_plots.front().cut;
}

void PlotsModel::setKind(const QString &kind)
{
    const auto parsed = parsePlotKind(kind.toStdString());
    if (!parsed || (*parsed == m_ask.kind && m_subject.isEmpty()))
        return;
    m_ask.kind = *parsed;
    setSubject({});
}

void PlotsModel::setSubject(const QString &subject)
{
    m_subject = subject;
    m_ask.point.clear();
    m_ask.finding = Id();
    const auto id = Id::parse(subject.toStdString());
    if (m_ask.kind == PlotKind::Concern && id)
        m_ask.finding = *id;
    else
        m_ask.point = subject.toStdString();
    m_which = 0;
    ask();
}

void PlotsModel::setAll(bool all)
{
    m_ask.months = all ? 0 : monthsShown;
    ask();
}

void PlotsModel::setWhich(int which)
{
    if (which < 0 || which >= static_cast<int>(m_plots.size()) || which == m_which)
        return;
    m_which = which;
    m_saved.clear();
    ++m_serial;
    Q_EMIT changed();
}

const Plot *PlotsModel::current() const
{
    const auto at = static_cast<std::size_t>(m_which);
    return at < m_plots.size() ? &m_plots[at] : nullptr;
}

void PlotsModel::show(const Shown &shown)
{
    m_shown = shown;
    ask();
}

void PlotsModel::open(const QString &thing)
{
    m_open = true;
    m_fault.clear();
    m_ask = {};
    m_ask.months = monthsShown;
    m_ask.kind = parsePlotKind(thing.section(u'/', 0, 0).toStdString()).value_or(PlotKind::Weathering);
    m_plots.clear();
    m_rows.clear();
    setSubject(thing.section(u'/', 1));
}

void PlotsModel::ask()
{
    m_saved.clear();
    if (!m_open || m_shown.history() == nullptr) {
        Q_EMIT changed();
        return;
    }
    ++m_waiting;
    Q_EMIT changed();
    const auto work = [shown = m_shown, asked = m_ask](Logbook &) {
        const Snapshot &snapshot = *shown.snapshot;
        const PlotVoice voice = screenVoice(*shown.voice);
        return Result<std::vector<Plot>>(
            plotsFor(asked, *snapshot.catalogue, *snapshot.history, snapshot.now, voice));
    };
    m_desk->worker->run<std::vector<Plot>>(this, work, [this](Result<std::vector<Plot>> plots) {
        --m_waiting;
        if (m_waiting == 0 && plots) // what was asked for meanwhile comes after it
            take(std::move(plots).value());
        Q_EMIT changed();
    });
}

void PlotsModel::take(std::vector<Plot> plots)
{
    m_plots = std::move(plots);
    m_rows.clear();
    for (const Plot &plot : m_plots)
        m_rows << plotMap(plot);
    m_which = std::min(m_which, std::max(0, static_cast<int>(m_plots.size()) - 1));
    ++m_serial;
}

QVariantMap PlotsModel::picture(double width, double height, double letter, double stroke,
                                const QString &family) const
{
    const Plot *plot = current();
    return plot == nullptr ? QVariantMap() : plotPicture(*plot, {width, height, letter, stroke, family});
}

QVariantList PlotsModel::forms() const
{
    QVariantList list;
    if (m_desk->parts->reports == nullptr)
        return list;
    const auto add = [&](const char *ending, const QString &name) {
        const QString slug = QString::fromLatin1(ending);
        list << QVariantMap{{QStringLiteral("slug"), slug},
                            {QStringLiteral("name"), name},
                            {QStringLiteral("filter"), name + QStringLiteral(" (*.") + slug + u')'}};
    };
    add("png", tr("picture, PNG", "kind of file"));
    add("svg", tr("drawing, SVG", "kind of file"));
    add("csv", tr("table, CSV", "kind of file"));
    return list;
}

void PlotsModel::tell(const Error &error)
{
    const ErrorText text = errorText(error);
    m_fault = {{QStringLiteral("what"), text.what}, {QStringLiteral("act"), text.act}};
}

QString PlotsModel::suggested(const QString &ending) const
{
    const RigHistory *history = m_shown.history();
    const Plot *plot = current();
    const QString rig = history == nullptr ? QString() : Voice::text(history->rig.name);
    const QString what = plot == nullptr ? kind() : Voice::text(plot->slug);
    return homeFile({rig, what, Voice::text(formatDate(civilDate(m_desk->parts->clock->now())))}, ending);
}

void PlotsModel::save(const QString &ending, const QString &file)
{
    const Plot *plot = current();
    if (m_desk->parts->reports == nullptr || plot == nullptr)
        return;
    ++m_saving;
    m_saved.clear();
    m_fault.clear();
    Q_EMIT changed();
    const auto work = [reports = m_desk->parts->reports, plot = *plot, form = ending.toStdString(),
                       file](Logbook &) -> Result<std::string> {
        const Result<std::string> bytes = reports->plotBytes(plot, form);
        if (!bytes)
            return bytes.error();
        return writeToFile(file, *bytes);
    };
    m_desk->worker->run<std::string>(this, work, [this](Result<std::string> name) {
        --m_saving;
        if (name)
            m_saved = Voice::text(*name);
        else
            tell(name.error());
        Q_EMIT changed();
    });
}

} // namespace snugwalk
