// SPDX-License-Identifier: Apache-2.0
// From a wish to a document, and from it to pages and bytes.
#include "desk/paper_desk.hpp"

#include <algorithm>
#include <map>

#include "base/text.hpp"
#include "desk/plot_file.hpp"
#include "html/document_html.hpp"
#include "image/qt_codec.hpp"
#include "logbook/chain_heads.hpp"
#include "logbook/query.hpp"
#include "papers/choices.hpp"
#include "papers/due_calendar.hpp"
#include "papers/papers.hpp"
#include "papers/plain_text.hpp"
#include "pdf/document_pdf.hpp"
#include "report/csv_tables.hpp"
#include "report/geojson.hpp"

namespace snugwalk {
namespace {

constexpr int mostPages = 12; // to look at; a file has them all
constexpr int calendarDays = 366;
constexpr std::size_t unbroken = 100'000; // characters a line: whoever reads aloud breaks none

std::string languageOf(const Voice &voice) { return voice.locale.name().section(u'_', 0, 0).toStdString(); }

Error noRig() { return {Errc::NotFound, "there is no rig yet", "", "describe one first"}; }

/// A document with what it is drawn from.
struct Sheaf {
    Standing standing;
    Document document;
};

Result<Sheaf> sheafOf(Logbook &book, const Shown &shown, const ReportWish &wish, const SupplyList &supplies)
{
    const Snapshot &snapshot = *shown.snapshot;
    if (!snapshot.history || !snapshot.catalogue)
        return noRig();
    const auto kind = papers::parsePaperKind(wish.kind);
    const auto place = parsePlaceDetail(wish.place);
    if (!kind || !place)
        return Error{Errc::InvalidInput, "no such report or place", wish.kind + " " + wish.place,
                     "choose one of those offered"};
    Sheaf sheaf{{*snapshot.history, snapshot.bands, snapshot.state, snapshot.now}, {}};
    const Id rig = sheaf.standing.history.rig.id;
    Result<std::vector<Photo>> photos = photosOf(book, rig);
    if (!photos)
        return photos.error();
    Result<std::vector<ChainHead>> chains = chainHeads(book);
    if (!chains)
        return chains.error();
    papers::PaperOptions options;
    options.units = shown.voice->units;
    options.language = languageOf(*shown.voice);
    options.place = *place;
    options.by = wish.by;
    options.walk = wish.walk;
    options.other = wish.other;
    options.findings = wish.findings;
    options.site = {std::string(trim(wish.access)), std::string(trim(wish.power)),
                    std::string(trim(wish.key))};
    Result<Document> document = papers::compose(
        *kind,
        {*snapshot.catalogue, shown.voice->texts, supplies, sheaf.standing, std::move(photos).value(),
         std::move(chains).value(), snapshot.world ? snapshot.world->placesOrNull() : nullptr},
        options);
    if (!document)
        return document.error();
    sheaf.document = std::move(document).value();
    papers::signDocument(sheaf.document, wish.signatures);
    return sheaf;
}

html::PageParts partsOf(const Logbook &book, const Shown &shown, html::OwnData ownData)
{
    const World *world = shown.snapshot->world.get();
    return {shown.voice->texts, shown.voice->units,
            html::pagePhotos(PhotoStore(book.photoFolder()), &QtCodec::shrunk, ownData),
            world != nullptr ? world->coastOrNull() : nullptr,
            world != nullptr ? world->placesOrNull() : nullptr};
}

pdf::SheetSize sizeOf(const ReportWish &wish)
{
    return pdf::parseSheetSize(wish.sheet).value_or(pdf::SheetSize::A4);
}

Result<std::string> calendarOf(const Standing &standing, const Texts &texts)
{
    const std::vector<CalendarEntry> entries = papers::dueCalendar(standing, texts, calendarDays);
    if (entries.empty())
        return Error{Errc::NotFound, "nothing has a date, and a calendar holds one at least", "",
                     "look at some points first"};
    return calendarText(entries, standing.now);
}

// The list that a kind of report is about.
CsvTable tableOf(const Standing &standing, const Texts &texts, papers::PaperKind kind, PlaceDetail place,
                 const std::optional<Id> &walk)
{
    using papers::PaperKind;
    if (kind == PaperKind::WorkDone || kind == PaperKind::SealsAndDamp)
        return mendsTable(standing.history, texts);
    if (kind == PaperKind::Dates || kind == PaperKind::LayingUp || kind == PaperKind::Shopping)
        return datesTable(standing, texts);
    const bool isOfAWalk =
        kind == PaperKind::Walk || kind == PaperKind::RoadSlip || kind == PaperKind::OutAndBack;
    const auto &walks = standing.history.walks;
    if (isOfAWalk && !walks.empty()) {
        const auto named = std::find_if(walks.begin(), walks.end(), [&](const WalkRecord &record) {
            return walk && record.walk.id == *walk;
        });
        return marksTable(named == walks.end() ? walks.back() : *named, texts);
    }
    return findingsTable(standing, texts, place);
}

std::vector<ReportChoices::One> namedWalks(const Voice &voice, const RigHistory &history,
                                           const std::vector<Id> &ids)
{
    std::map<Id, const Walk *> walks;
    for (const WalkRecord &record : history.walks)
        walks[record.walk.id] = &record.walk;
    std::vector<ReportChoices::One> named;
    named.reserve(ids.size());
    for (const Id &id : ids) {
        const Walk &walk = *walks.at(id);
        named.push_back({id, Voice::text(voice.texts.kindName(walk.kind)) + QStringLiteral(", ") +
                                 voice.date(walk.started)});
    }
    return named;
}

} // namespace

std::vector<ReportKind> PaperDesk::kinds(const Texts &texts) const
{
    std::vector<ReportKind> out;
    for (const papers::PaperKind kind : papers::allPaperKinds())
        out.push_back({std::string(papers::slug(kind)), papers::paperTitle(kind, texts)});
    return out;
}

std::vector<std::string> PaperDesk::endings() const { return {"pdf", "html", "csv", "geojson", "ics"}; }

ReportChoices PaperDesk::choices(const Shown &shown, const std::string &slug) const
{
    ReportChoices named;
    const RigHistory *history = shown.history();
    const auto kind = papers::parsePaperKind(slug);
    if (history == nullptr || !kind)
        return named;
    const Voice &voice = *shown.voice;
    const papers::PaperChoices choices = papers::choicesFor(*kind, *history, shown.snapshot->state);
    named.access = choices.access;
    named.walks = namedWalks(voice, *history, choices.walks);
    named.earlier = namedWalks(voice, *history, choices.earlier);
    for (const Id &id : choices.findings) {
        const FindingHistory *finding = shown.snapshot->finding(id);
        if (finding != nullptr)
            named.findings.push_back({id, voice.point(finding->finding.point) + QStringLiteral(": ") +
                                              voice.word("defects", finding->finding.defect)});
    }
    return named;
}

Result<ReportLook> PaperDesk::look(Logbook &book, const Shown &shown, const ReportWish &wish, int width) const
{
    const Result<Sheaf> sheaf = sheafOf(book, shown, wish, m_supplies);
    if (!sheaf)
        return sheaf.error();
    pdf::Pictures pictures = pdf::documentPictures(
        sheaf->document, partsOf(book, shown, html::OwnData::LeftOut), sizeOf(wish), width, mostPages);
    ReportLook look{Voice::text(sheaf->document.title),
                    Voice::text(papers::plainText(sheaf->document, shown.voice->texts, unbroken)),
                    std::move(pictures.pages),
                    pictures.pageCount,
                    {}};
    for (const std::string &who : papers::signersOf(sheaf->document))
        look.signers.push_back(Voice::text(who));
    return look;
}

Result<std::string> PaperDesk::bytes(Logbook &book, const Shown &shown, const ReportWish &wish,
                                     const std::string &ending) const
{
    const Texts &texts = shown.voice->texts;
    const Snapshot &snapshot = *shown.snapshot;
    const auto kind = papers::parsePaperKind(wish.kind);
    const auto place = parsePlaceDetail(wish.place);
    if (snapshot.history && kind && place) {
        const Standing standing{*snapshot.history, snapshot.bands, snapshot.state, snapshot.now};
        if (ending == "ics")
            return calendarOf(standing, texts);
        if (ending == "csv")
            return csvText(tableOf(standing, texts, *kind, *place, wish.walk));
        if (ending == "geojson")
            return geoJsonText(standing, texts, *place);
    }
    const Result<Sheaf> sheaf = sheafOf(book, shown, wish, m_supplies);
    if (!sheaf)
        return sheaf.error();
    if (ending == "pdf")
        return pdf::documentPdf(sheaf->document, partsOf(book, shown, html::OwnData::LeftOut), sizeOf(wish));
    if (ending == "html")
        return html::documentPage(
            sheaf->document,
            partsOf(book, shown, wish.ownData ? html::OwnData::Kept : html::OwnData::LeftOut));
    return Error{Errc::Unsupported, "no such kind of file", ending, "take pdf, html, csv, geojson or ics"};
}

Result<std::string> PaperDesk::plotBytes(const Plot &plot, const std::string &ending) const
{
    return plotFile(plot, ending);
}

} // namespace snugwalk
