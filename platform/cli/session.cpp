// SPDX-License-Identifier: Apache-2.0
// Opening things on first use.
#include "cli/session.hpp"

#include "base/text.hpp"
#include "data/embedded.hpp"
#include "device/device.hpp"
#include "image/plain_codec.hpp"
#include "logbook/own_points.hpp"
#include "logbook/query.hpp"

namespace snugwalk::cli {

Result<Logbook *> Session::book(bool create)
{
    if (m_book)
        return m_book.get();
    const Result<DeviceKey> key = deviceKey(dataFolder());
    if (!key)
        return key.error();
    const std::string file =
        m_globals.book.empty() ? (dataFolder() / "logbook.snugwalk").string() : m_globals.book;
    Result<Logbook> opened = Logbook::open(file, {*key, deviceLabel(), &m_clock, &m_ids, create});
    if (!opened)
        return opened.error();
    m_book = std::make_unique<Logbook>(std::move(opened).value());
    return m_book.get();
}

Result<Rig> Session::rig()
{
    Result<Rig> found = findRig();
    if (found)
        SNUG_TRY(takeOwn(found->id));
    return found;
}

Status Session::takeOwn(const Id &rig)
{
    const Result<OwnChoices> own = ownChoicesOf(*m_book, rig);
    if (!own)
        return own.error();
    m_catalogue.reset();
    if (own->isEmpty())
        return done();
    m_catalogue = productCatalogue().withOwn(*own);
    (void)texts(); // those of the language, which the owner's join in place
    *m_texts = m_texts->withOwn(*own);
    return done();
}

const Catalogue &Session::catalogue() const { return m_catalogue ? *m_catalogue : productCatalogue(); }

Result<Rig> Session::findRig()
{
    const auto opened = book();
    if (!opened)
        return opened.error();
    if (!m_globals.rig.empty())
        return snugwalk::findRig(**opened, m_globals.rig);
    const auto rigs = allRigs(**opened);
    if (!rigs)
        return rigs.error();
    if (rigs->size() == 1)
        return rigs->front();
    if (rigs->empty())
        return Error{Errc::NotFound, "no rig in this logbook", (*opened)->file(),
                     "add one with `snugwalk rig add`"};
    return Error{Errc::Usage, "more than one rig in this logbook", (*opened)->file(), "name one with --rig"};
}

Result<Walk> Session::openWalk()
{
    const Result<Rig> current = rig();
    if (!current)
        return current.error();
    const auto opened = book();
    if (!opened)
        return opened.error();
    const auto walk = snugwalk::openWalk(**opened, current->id);
    if (!walk)
        return walk.error();
    if (*walk)
        return **walk;
    return Error{Errc::NotFound, "no walk is under way", current->name,
                 "begin one with `snugwalk walk start full_round`"};
}

Result<LocalTime> Session::now() const
{
    if (m_globals.at.empty())
        return m_clock.now();
    const auto time = parseLocal(m_globals.at);
    if (!time)
        return Error{Errc::Usage, "not a time: \"" + m_globals.at + "\"", "--at",
                     "write it with its zone, such as 2026-11-24T08:10:00+13:00"};
    return *time;
}

Result<Doer> Session::doer() const
{
    Doer doer{m_globals.by, std::nullopt, std::nullopt};
    if (!m_globals.at.empty()) {
        const Result<LocalTime> at = now();
        if (!at)
            return at.error();
        doer.at = *at;
    }
    if (m_globals.where.empty())
        return doer;
    const auto parts = split(m_globals.where, ',');
    const auto latitude = parseDouble(trim(parts[0]));
    const auto longitude = parts.size() > 1 ? parseDouble(trim(parts[1])) : std::nullopt;
    const auto altitude = parts.size() > 2 ? parseDouble(trim(parts[2])) : std::nullopt;
    if (!latitude || !longitude || parts.size() > 3 || (parts.size() == 3 && !altitude) ||
        !isValid({*latitude, *longitude, altitude, std::nullopt}))
        return Error{Errc::Usage, "not a place on earth: \"" + m_globals.where + "\"", "--where",
                     "write latitude, longitude in degrees, such as \"-44.27, 170.10\""};
    doer.where = GeoPoint{*latitude, *longitude, altitude, std::nullopt};
    return doer;
}

UnitSystem Session::units() const { return m_globals.units == "us" ? UnitSystem::Us : UnitSystem::Si; }

const Texts &Session::texts()
{
    if (!m_texts) {
        Result<Texts> texts = productTexts(m_globals.language);
        SNUG_ASSERT(texts.has_value()); // the option's check lets only languages through that we have
        m_texts = std::make_unique<Texts>(std::move(texts).value());
    }
    return *m_texts;
}

const ImageCodec &Session::codec() const
{
    static const PlainCodec codec;
    return codec;
}

const ProductWorld &Session::productWorld()
{
    if (!m_world)
        m_world = snugwalk::productWorld();
    return *m_world;
}

Result<Id> idOf(Logbook &book, const char *type, const std::string &typed)
{
    const Result<Thing> found = thingByPrefix(book.db(), type, typed);
    if (!found)
        return found.error();
    return found->id;
}

} // namespace snugwalk::cli
