// SPDX-License-Identifier: Apache-2.0
// Asking for pages and files; the worker draws and writes them.
#include "report_model.hpp"

#include "error_text.hpp"
#include "file_names.hpp"

namespace snugwalk {
namespace {

constexpr int pagePixels = 1240; // A4 at 150 dots an inch: small print can be read when enlarged

QVariantMap formOf(const std::string &ending)
{
    const QString slug = Voice::text(ending);
    const QString name = ending == "pdf"    ? ReportModel::tr("PDF", "kind of file")
                         : ending == "html" ? ReportModel::tr("web page", "kind of file")
                         : ending == "csv"  ? ReportModel::tr("table, CSV", "kind of file")
                         : ending == "ics"  ? ReportModel::tr("calendar", "kind of file")
                                            : ReportModel::tr("map data, GeoJSON", "kind of file");
    return {{QStringLiteral("slug"), slug},
            {QStringLiteral("name"), name},
            {QStringLiteral("filter"), name + QStringLiteral(" (*.") + slug + u')'}};
}

} // namespace

ReportModel::ReportModel(const ActDesk *desk, QObject *parent) : QObject(parent), m_desk(desk)
{
    m_wish.kind = "walk";
}

QVariantList ReportModel::kinds() const
{
    QVariantList list;
    if (m_desk->parts->reports == nullptr)
        return list;
    for (const ReportKind &kind : m_desk->parts->reports->kinds(m_shown.voice->texts))
        list << QVariantMap{{QStringLiteral("slug"), Voice::text(kind.slug)},
                            {QStringLiteral("name"), Voice::text(kind.name)}};
    return list;
}

QVariantList ReportModel::forms() const
{
    QVariantList list;
    if (m_desk->parts->reports == nullptr)
        return list;
    for (const std::string &ending : m_desk->parts->reports->endings())
        list << formOf(ending);
    return list;
}

void ReportModel::wish(ReportWish wish)
{
    wish.signatures.clear(); // nobody signed that
    m_wish = std::move(wish);
    m_drawn = m_shown;
    m_look.signers.clear(); // those of another document
    offer();
    m_saved.clear();
    lookAgain();
}

void ReportModel::setKind(const QString &kind)
{
    ReportWish next = m_wish;
    if (next.kind != kind.toStdString()) {
        next.walk.reset();
        next.other.reset();
        next.findings.clear();
    }
    next.kind = kind.toStdString();
    wish(std::move(next));
}

void ReportModel::setSheet(const QString &sheet)
{
    ReportWish next = m_wish;
    next.sheet = sheet.toStdString();
    wish(std::move(next));
}

void ReportModel::setPlace(const QString &place)
{
    ReportWish next = m_wish;
    next.place = place.toStdString();
    wish(std::move(next));
}

void ReportModel::setOwnData(bool kept)
{
    m_wish.ownData = kept; // changes files alone: a page shows no such data
    m_saved.clear();
    Q_EMIT changed();
}

void ReportModel::show(const Shown &shown)
{
    m_shown = shown;
    if (!isSigned())
        m_drawn = shown;
    offer();
    lookAgain();
}

void ReportModel::open()
{
    m_open = true;
    m_saved.clear();
    offer();
    lookAgain();
}

void ReportModel::close()
{
    m_open = false;
    m_wish.signatures.clear();
    m_drawn = m_shown;
}

void ReportModel::lookAgain()
{
    if (!m_open || m_desk->parts->reports == nullptr || m_shown.history() == nullptr) {
        Q_EMIT changed();
        return;
    }
    m_again = m_looking;
    if (!m_looking) {
        m_looking = true;
        ReportWish asked = m_wish;
        asked.by = m_desk->doer().by;
        m_desk->worker->run<ReportLook>(
            this,
            [reports = m_desk->parts->reports, shown = m_drawn, asked](Logbook &book) {
                return reports->look(book, shown, asked, pagePixels);
            },
            [this](Result<ReportLook> look) { take(std::move(look)); });
    }
    Q_EMIT changed();
}

void ReportModel::take(Result<ReportLook> look)
{
    m_looking = false;
    if (std::exchange(m_again, false)) { // nobody wants these any more
        lookAgain();
        return;
    }
    m_fault.clear();
    m_pages.clear();
    m_look = {};
    if (look) {
        m_look = std::move(look).value();
        ++m_serial;
        for (std::size_t i = 0; i < m_look.pages.size(); ++i)
            m_pages << QStringLiteral("image://report/%1/%2").arg(m_serial).arg(i);
        m_sheets->put(m_serial, std::exchange(m_look.pages, {}));
    } else {
        tell(look.error());
    }
    Q_EMIT changed();
}

void ReportModel::tell(const Error &error)
{
    const ErrorText text = errorText(error);
    m_fault = {{QStringLiteral("what"), text.what}, {QStringLiteral("act"), text.act}};
}

QString ReportModel::suggested(const QString &ending) const
{
    const RigHistory *history = m_shown.history();
    return homeFile({history == nullptr ? QString() : Voice::text(history->rig.name), kind(),
                     Voice::text(formatDate(civilDate(m_desk->parts->clock->now())))},
                    ending);
}

void ReportModel::save(const QString &ending, const QString &file)
{
    if (m_desk->parts->reports == nullptr || m_shown.history() == nullptr)
        return;
    ++m_saving;
    m_saved.clear();
    m_fault.clear();
    Q_EMIT changed();
    ReportWish asked = m_wish;
    asked.by = m_desk->doer().by;
    m_desk->worker->run<std::string>(
        this,
        [reports = m_desk->parts->reports, shown = m_drawn, asked, form = ending.toStdString(),
         file](Logbook &book) -> Result<std::string> {
            const Result<std::string> bytes = reports->bytes(book, shown, asked, form);
            if (!bytes)
                return bytes.error();
            return writeToFile(file, *bytes);
        },
        [this](Result<std::string> name) {
            --m_saving;
            if (name)
                m_saved = Voice::text(*name);
            else
                tell(name.error());
            Q_EMIT changed();
        });
}

} // namespace snugwalk
