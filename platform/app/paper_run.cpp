// SPDX-License-Identifier: Apache-2.0
// Logbook, snapshot and words put together once, for one file.
#include "paper_run.hpp"

#include <QFileInfo>

#include "app_fonts.hpp"
#include "data/embedded.hpp"
#include "data/product_world.hpp"
#include "desk/paper_desk.hpp"
#include "device/device.hpp"
#include "logbook/files.hpp"
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

} // namespace

Status writePaper(const Options &options)
{
    std::unique_ptr<Clock> clock = std::make_unique<SystemClock>();
    if (options.now)
        clock = std::make_unique<FixedClock>(*options.now);
    RandomIds ids;
    loadFonts();
    Result<Logbook> book = openBook(options.book.isEmpty() ? usualBook() : options.book, *clock, ids);
    if (!book)
        return book.error();
    const Result<Shown> shown = shownOf(*book, options);
    if (!shown)
        return shown.error();
    const PaperDesk desk(productSupplies());
    ReportWish wish;
    wish.kind = options.paper.toStdString();
    wish.sheet = options.paperSize.toStdString();
    wish.place = options.paperPlace.toStdString();
    wish.ownData = options.ownData;
    const std::string ending = QFileInfo(options.paperFile).suffix().toLower().toStdString();
    const Result<std::string> bytes = desk.bytes(*book, *shown, wish, ending);
    if (!bytes)
        return bytes.error();
    return replaceFile(options.paperFile.toStdString(), *bytes);
}

} // namespace snugwalk
