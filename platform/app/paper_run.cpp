// SPDX-License-Identifier: Apache-2.0
// Logbook, snapshot and words put together once, for one file.
#include "paper_run.hpp"

#include <memory>
#include <optional>

#include <QFileInfo>

#include "app_fonts.hpp"
#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "desk/paper_desk.hpp"
#include "device/device.hpp"
#include "logbook/files.hpp"
#include "plot_picture.hpp"
#include "report/plot/plot_ask.hpp"
#include "wiring.hpp"

namespace snugwalk {
namespace {

Result<Logbook> openBook(const QString &file, const Clock &clock, IdSource &ids)
{
    if (!QFileInfo::exists(file))
        return Error{Errc::NotFound, "no such logbook", file.toStdString(), "name another with --book"};
    const Result<DeviceKey> key = deviceKey(dataFolder());
    if (!key)
        return key.error();
    return Logbook::open(file.toStdString(), {*key, deviceLabel(), &clock, &ids, false});
}

Result<Shown> shownOf(Logbook &book, const Options &options)
{
    const auto world = std::make_shared<const World>(productWorld().world);
    auto snapshot = takeSnapshot(book, productCatalogue(), Id{}, world);
    if (!snapshot)
        return snapshot.error();
    const std::string language = options.language.isEmpty() ? "en" : options.language.toStdString();
    Result<Texts> texts = productTexts(language);
    if (!texts)
        return texts.error();
    auto voice = std::make_shared<Voice>();
    voice->texts = (*snapshot)->history ? texts->withOwn((*snapshot)->history->own) : *texts;
    voice->locale = QLocale(Voice::text(language));
    voice->units = options.usUnits ? UnitSystem::Us : UnitSystem::Si;
    return Shown{*snapshot, voice};
}

/// What a file is made from; the clock and the ids outlive the logbook.
struct OpenBook {
    std::unique_ptr<Clock> clock;
    RandomIds ids;
    std::optional<Logbook> book;
    Shown shown;
};

Status openSource(const Options &options, OpenBook &source)
{
    source.clock = std::make_unique<SystemClock>();
    if (options.now)
        source.clock = std::make_unique<FixedClock>(*options.now);
    loadFonts();
    Result<Logbook> book =
        openBook(options.book.isEmpty() ? usualBook() : options.book, *source.clock, source.ids);
    if (!book)
        return book.error();
    source.book.emplace(std::move(book).value());
    Result<Shown> shown = shownOf(*source.book, options);
    if (!shown)
        return shown.error();
    source.shown = std::move(shown).value();
    return done();
}

std::string endingOf(const Options &options)
{
    return QFileInfo(options.paperFile).suffix().toLower().toStdString();
}

} // namespace

Status writePaper(const Options &options)
{
    OpenBook source;
    SNUG_TRY(openSource(options, source));
    const PaperDesk desk(productSupplies());
    ReportWish wish;
    wish.kind = options.paper.toStdString();
    wish.sheet = options.paperSize.toStdString();
    wish.place = options.paperPlace.toStdString();
    wish.ownData = options.ownData;
    const Result<std::string> bytes = desk.bytes(*source.book, source.shown, wish, endingOf(options));
    if (!bytes)
        return bytes.error();
    return replaceFile(options.paperFile.toStdString(), *bytes);
}

// "reading/tread-depth/1L": the kind, a point or a finding, words of the title.
Status writePlot(const Options &options)
{
    OpenBook source;
    SNUG_TRY(openSource(options, source));
    const Snapshot &snapshot = *source.shown.snapshot;
    if (!snapshot.history || !snapshot.catalogue)
        return Error{Errc::NotFound, "there is no rig yet", "", "describe one first"};
    const auto kind = parsePlotKind(options.plot.section(u'/', 0, 0).toStdString());
    if (!kind)
        return Error{Errc::Usage, "no such plot", options.plot.toStdString(), "see snugwalk-app --help"};
    const std::string subject = options.plot.section(u'/', 1, 1).toStdString();
    PlotAsk ask;
    ask.kind = *kind;
    if (const auto id = Id::parse(subject); id && *kind == PlotKind::Concern)
        ask.finding = *id;
    else
        ask.point = subject;
    const QString words = options.plot.section(u'/', 2);
    const PlotVoice voice = screenVoice(*source.shown.voice);
    for (const Plot &plot : plotsFor(ask, *snapshot.catalogue, *snapshot.history, snapshot.now, voice)) {
        if (!Voice::text(plot.title).contains(words, Qt::CaseInsensitive))
            continue;
        const Result<std::string> bytes = PaperDesk(productSupplies()).plotBytes(plot, endingOf(options));
        if (!bytes)
            return bytes.error();
        return replaceFile(options.paperFile.toStdString(), *bytes);
    }
    return Error{Errc::NotFound, "no plot has these words in its title", words.toStdString(),
                 "leave them out"};
}

} // namespace snugwalk
