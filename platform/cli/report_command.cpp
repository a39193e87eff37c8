// SPDX-License-Identifier: Apache-2.0
// report: any kind of document as a page or as text, and the lists behind it in open formats.
#include "base/text.hpp"
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "html/document_html.hpp"
#include "image/plain_codec.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "papers/due_calendar.hpp"
#include "papers/papers.hpp"
#include "papers/plain_text.hpp"
#include "report/csv_tables.hpp"
#include "report/geojson.hpp"

namespace snugwalk::cli {
namespace {

struct ReportOptions {
    std::string file;
    std::string kind = "walk";
    std::string format = "html";
    std::string list = "findings";
    std::string place = "left_out";
    std::string walk;
    std::string other;
    std::vector<std::string> findings;
    int days = 90;
    papers::SiteWords site;
    bool ownData = false; ///< whether photos keep what the camera wrote into them
};

Result<std::optional<Id>> walkNamed(Session &session, const std::string &typed)
{
    if (typed.empty())
        return std::optional<Id>();
    const Result<Id> id = idOf(**session.book(), "walk", typed);
    if (!id)
        return id.error();
    return std::optional<Id>(*id);
}

Result<papers::PaperOptions> paperOptions(Session &session, const ReportOptions &o)
{
    papers::PaperOptions options;
    options.units = session.units();
    options.language = session.globals().language;
    options.place = *parsePlaceDetail(o.place);
    options.by = session.globals().by;
    options.days = o.days;
    options.site = o.site;
    const auto walk = walkNamed(session, o.walk);
    const auto other = walkNamed(session, o.other);
    if (!walk || !other)
        return walk ? other.error() : walk.error();
    options.walk = *walk;
    options.other = *other;
    for (const std::string &typed : o.findings) {
        const Result<Id> id = idOf(**session.book(), "finding", typed);
        if (!id)
            return id.error();
        options.findings.push_back(*id);
    }
    return options;
}

Result<Document> document(Session &session, const Standing &now, const ReportOptions &o)
{
    const Result<papers::PaperOptions> options = paperOptions(session, o);
    if (!options)
        return options.error();
    const auto photos = photosOf(**session.book(), now.history.rig.id);
    const auto chains = chainHeads(**session.book());
    if (!photos || !chains)
        return photos ? chains.error() : photos.error();
    return papers::compose(*papers::parsePaperKind(o.kind),
                           {session.catalogue(), session.texts(), productSupplies(), now, *photos, *chains,
                            session.world().placesOrNull()},
                           *options);
}

Result<std::string> page(Session &session, const Standing &now, const ReportOptions &o)
{
    const Result<Document> composed = document(session, now, o);
    if (!composed)
        return composed.error();
    const html::OwnData ownData = o.ownData ? html::OwnData::Kept : html::OwnData::LeftOut;
    return html::documentPage(*composed, {session.texts(), session.units(),
                                          html::pagePhotos(PhotoStore((*session.book())->photoFolder()),
                                                           &PlainCodec::shrunk, ownData),
                                          session.world().coastOrNull(), session.world().placesOrNull()});
}

// The walk named, else the last one.
Result<CsvTable> marks(Session &session, const Standing &now, const ReportOptions &o)
{
    const auto named = walkNamed(session, o.walk);
    if (!named)
        return named.error();
    const WalkRecord *record = nullptr;
    for (const WalkRecord &walk : now.history.walks) {
        if (!*named || walk.walk.id == **named)
            record = &walk;
    }
    if (record == nullptr)
        return Error{Errc::NotFound, "no such walk of this rig", now.history.rig.name,
                     "begin one with `snugwalk walk start full_round`"};
    return marksTable(*record, session.texts());
}

Result<std::string> csv(Session &session, const Standing &now, const ReportOptions &o)
{
    if (o.list == "marks") {
        const Result<CsvTable> table = marks(session, now, o);
        if (!table)
            return table.error();
        return csvText(*table);
    }
    if (o.list == "mends")
        return csvText(mendsTable(now.history, session.texts()));
    if (o.list == "dates")
        return csvText(datesTable(now, session.texts()));
    return csvText(findingsTable(now, session.texts(), *parsePlaceDetail(o.place)));
}

Result<std::string> dates(Session &session, const Standing &now, const ReportOptions &o)
{
    const std::vector<CalendarEntry> entries = papers::dueCalendar(now, session.texts(), o.days);
    if (entries.empty())
        return Error{Errc::NotFound, "nothing has a date, and a calendar holds one at least", "report",
                     "take more days with --days"};
    return calendarText(entries, now.now);
}

Result<std::string> made(Session &session, const Standing &now, const ReportOptions &o)
{
    if (o.format == "html")
        return page(session, now, o);
    if (o.format == "csv")
        return csv(session, now, o);
    if (o.format == "geojson")
        return geoJsonText(now, session.texts(), *parsePlaceDetail(o.place));
    if (o.format == "ics")
        return dates(session, now, o);
    const Result<Document> composed = document(session, now, o);
    if (!composed)
        return composed.error();
    return papers::plainText(*composed, session.texts());
}

Result<Answer> report(Session &session, const ReportOptions &o)
{
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    const Result<std::string> text = made(session, *now, o);
    if (!text)
        return text.error();
    const std::string file = o.file.empty() && o.format == "html" ? "report.html" : o.file;
    if (file.empty())
        return Answer{Value::Map{{"kind", o.kind}, {"format", o.format}, {"text", *text}}, *text};
    SNUG_TRY(replaceFile(file, *text));
    return Answer{Value::Map{{"report", file},
                             {"kind", o.kind},
                             {"format", o.format},
                             {"bytes", text->size()},
                             {"findings", now->state.open.size()}},
                  "written to " + file + "\n"};
}

std::vector<std::string> kindSlugs()
{
    std::vector<std::string> slugs;
    for (const papers::PaperKind kind : papers::allPaperKinds())
        slugs.emplace_back(papers::slug(kind));
    return slugs;
}

} // namespace

void addReportCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub =
        app.add_subcommand("report", "a document of any kind as a page or text, or its lists as CSV, "
                                     "GeoJSON or iCalendar");
    auto o = std::make_shared<ReportOptions>();
    sub->add_option("--kind", o->kind, join(kindSlugs(), ", ") + " (default: walk); of pages and text")
        ->check(CLI::IsMember(kindSlugs()));
    sub->add_option("--format", o->format, "html (default), text, csv, geojson or ics; PDF is the app's")
        ->check(CLI::IsMember({"html", "text", "csv", "geojson", "ics"}));
    sub->add_option("--list", o->list, "of csv: findings (default), marks, mends or dates")
        ->check(CLI::IsMember({"findings", "marks", "mends", "dates"}));
    sub->add_option("--place", o->place, "places on earth: left_out (default), coarse (about 5 km) or exact")
        ->check(CLI::IsMember({"left_out", "coarse", "exact"}));
    sub->add_flag("--photo-data", o->ownData,
                  "of html: photos keep what the camera wrote into them, places too");
    sub->add_option("--walk", o->walk, "this walk instead of the last that suits");
    sub->add_option("--other", o->other, "the earlier walk of then_and_now");
    sub->add_option("--finding", o->findings, "of work_order, work_done and damage; all when not given")
        ->allow_extra_args(false);
    sub->add_option("--access", o->site.access, "of work_order: where the rig stands, how to get there");
    sub->add_option("--power", o->site.power, "of work_order: power at the place");
    sub->add_option("--key", o->site.key, "of work_order: the key, and who has it");
    sub->add_option("--days", o->days, "how far dates and shopping look ahead (default: 90)")
        ->check(CLI::Range<int>(1, 3660));
    sub->add_option("--out", o->file, "where to write it (default: report.html; other formats are printed)");
    registry.add(*sub,
                 "  snugwalk report --out heron.html --units us\n"
                 "  snugwalk report --kind work_order --format text\n"
                 "  snugwalk report --format csv --list mends --out mends.csv\n"
                 "  snugwalk report --format geojson --place coarse",
                 [o](Session &s) { return report(s, *o); });
}

} // namespace snugwalk::cli
