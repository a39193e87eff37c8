// SPDX-License-Identifier: Apache-2.0
// points add, hide, show, every: what the owner of a rig changes in the catalogue.
#include "base/text.hpp"
#include "catalogue/own_value.hpp"
#include "cli/commands.hpp"
#include "cli/point_answers.hpp"
#include "data/embedded.hpp"
#include "logbook/own_points.hpp"

namespace snugwalk::cli {
namespace {

struct AddOptions {
    OwnPoint point;
    std::string consequence = "C";
    int months = 0;
    std::string distance;
    std::vector<std::string> each;
    std::vector<std::string> readings;
};

struct EveryOptions {
    std::string point;
    int months = 0;
    std::string distance;
    bool usual = false;
};

Status readInterval(int months, const std::string &typed, std::optional<int> &to,
                    std::optional<Distance> &distance)
{
    if (months != 0)
        to = months;
    if (typed.empty())
        return done();
    const Result<Distance> read = parseQuantity<Distance>(typed);
    if (!read)
        return read.error();
    distance = *read;
    return done();
}

std::optional<Unit> anyUnit(std::string_view name)
{
    for (const Unit &unit : allUnits()) {
        if (const auto found = findUnit(unit.dimension, name))
            return found;
    }
    return std::nullopt;
}

// "Lamp voltage, V, 11, 14": title, unit, low, high; a limit or the unit may be left empty.
Result<OwnReading> readingFrom(const std::string &typed)
{
    const auto parts = split(typed, ',');
    const auto part = [&](std::size_t i) { return i < parts.size() ? trim(parts[i]) : std::string_view(); };
    OwnReading reading{std::string(part(0)), {}};
    reading.spec.slug = ownSlug(reading.title);
    reading.spec.unit = std::string(part(1));
    reading.spec.setBy = "common_practice";
    reading.spec.source = "CP";
    const auto unit = reading.spec.unit.empty() ? std::nullopt : anyUnit(reading.spec.unit);
    const auto low = parseDouble(part(2));
    const auto high = parseDouble(part(3));
    const bool odd =
        (!low && !part(2).empty()) || (!high && !part(3).empty()) || (low && high && *low >= *high);
    if (reading.title.empty() || parts.size() > 4 || odd || (!unit && !reading.spec.unit.empty()))
        return Error{Errc::Usage, "not a reading: \"" + typed + "\"", "--reading",
                     "write title, unit, low, high, such as \"Lamp voltage, V, 11, 14\""};
    reading.spec.dimension = unit ? unit->dimension : Dimension::Count;
    reading.spec.lowSi = low && unit ? toSi(*unit, *low) : low;
    reading.spec.highSi = high && unit ? toSi(*unit, *high) : high;
    return reading;
}

Result<Answer> add(Session &session, const AddOptions &o)
{
    OwnPoint point = o.point;
    for (const std::string_view letter : split(o.consequence, ','))
        point.consequence.emplace_back(trim(letter));
    SNUG_TRY(readInterval(o.months, o.distance, point.interval.months, point.interval.distance));
    point.interval.uses = o.each;
    for (const std::string &typed : o.readings) {
        Result<OwnReading> reading = readingFrom(typed);
        if (!reading)
            return reading.error();
        point.readings.push_back(std::move(reading).value());
    }
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    const auto slug = addOwnPoint(**session.book(), session.catalogue(), rig->id, point, *doer);
    if (!slug)
        return slug.error();
    SNUG_TRY(session.takeOwn(rig->id));
    const Point &added = *session.catalogue().find(*slug);
    return Answer{pointValue(added, session.catalogue(), session.texts()),
                  "added\n" + pointWords(added, session, session.texts())};
}

// What hide, show and every have in common: the rig, the act, and the point as it stands afterwards.
template <typename Change>
Result<Answer> change(Session &session, const std::string &point, const std::string &told, Change act)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    SNUG_TRY(act(**session.book(), rig->id, *doer));
    SNUG_TRY(session.takeOwn(rig->id));
    const Point *now = session.catalogue().find(point);
    if (now == nullptr)
        return Error{Errc::NotFound, "no such point", point, "see `snugwalk points`"};
    return Answer{pointValue(*now, session.catalogue(), session.texts()),
                  session.texts().point(point).title + ": " + told +
                      intervalWords(*now, session.texts(), session.units()) + "\n"};
}

Result<Answer> hide(Session &session, const std::string &point, const std::string &note)
{
    return change(session, point, "hidden; ", [&](Logbook &book, const Id &rig, const Doer &doer) {
        return hidePoint(book, session.catalogue(), rig, point, note, doer);
    });
}

Result<Answer> show(Session &session, const std::string &point)
{
    return change(session, point, "shown again; ", [&](Logbook &book, const Id &rig, const Doer &doer) {
        return showPoint(book, session.catalogue(), rig, point, doer);
    });
}

// Held against the catalogue with the owner's points but the product's own intervals.
Result<Answer> every(Session &session, const EveryOptions &o)
{
    OwnInterval interval{o.point, {}, {}, {}, {}};
    SNUG_TRY(readInterval(o.months, o.distance, interval.months, interval.distance));
    return change(session, o.point, "", [&](Logbook &book, const Id &rig, const Doer &doer) -> Status {
        if (o.usual)
            return clearOwnInterval(book, rig, o.point, doer);
        const auto own = ownChoicesOf(book, rig);
        if (!own)
            return own.error();
        const Catalogue usual = productCatalogue().withOwn({own->added, {}, {}});
        return setOwnInterval(book, usual, rig, interval, doer);
    });
}

void addAdd(CLI::App &points, Registry &registry)
{
    auto o = std::make_shared<AddOptions>();
    CLI::App *adding = points.add_subcommand("add", "add a point of your own to this rig");
    adding->add_option("title", o->point.title, "what it is called")->required();
    adding->add_option("--zone", o->point.zone, "its subject, such as inside")->required();
    adding->add_option("--stand", o->point.stand, "where one stands to look, such as kerb-front")->required();
    adding->add_option("--look", o->point.look, "what to do");
    adding->add_option("--pass", o->point.pass, "when it passes");
    adding->add_option("--consequence", o->consequence,
                       "what happens when it fails: W water, T road, F fire, H health, P injury, C comfort, "
                       "K looks; the first counts (default: C)");
    adding->add_option("--months", o->months, "look at it every so many months");
    adding->add_option("--distance", o->distance, "or after this distance, such as \"3000 mi\"");
    adding->add_option("--each", o->each, "a set or event that asks for it, such as every_move or hail");
    adding->add_option("--takes", o->point.minutes, "minutes that a look takes (default: 2)")
        ->check(CLI::Range(0.1, 240.0));
    adding->add_option("--reading", o->readings, "\"title, unit, low, high\"");
    registry.add(*adding,
                 "  snugwalk points add \"Step light\" --zone inside --stand kerb-front --months 3\n"
                 "  snugwalk points add \"Water pump voltage\" --zone water --stand inside --months 6 \\\n"
                 "    --reading \"Pump voltage, V, 11.5, 14.8\"",
                 [o](Session &s) { return add(s, *o); });
}

} // namespace

void addOwnCommands(CLI::App &points, Registry &registry)
{
    addAdd(points, registry);
    auto point = std::make_shared<std::string>();
    auto note = std::make_shared<std::string>();
    CLI::App *hiding = points.add_subcommand(
        "hide", "leave a point out of this rig's walks; one of the road, of fire or of the hold list stays "
                "named as hidden");
    hiding->add_option("point", *point, "a point's slug")->required();
    hiding->add_option("--note", *note, "why");
    registry.add(*hiding, "  snugwalk --by \"M. Rata\" points hide screen-door --note \"taken off\"",
                 [point, note](Session &s) { return hide(s, *point, *note); });
    CLI::App *showing = points.add_subcommand("show", "ask for a hidden point again");
    showing->add_option("point", *point, "a point's slug")->required();
    registry.add(*showing, "  snugwalk points show screen-door",
                 [point](Session &s) { return show(s, *point); });
    auto o = std::make_shared<EveryOptions>();
    CLI::App *timing =
        points.add_subcommand("every", "look at a point more often, or where allowed less often");
    timing->add_option("point", o->point, "a point's slug")->required();
    timing->add_option("--months", o->months, "every so many months");
    timing->add_option("--distance", o->distance, "or after this distance, such as \"3000 mi\"");
    timing->add_flag("--usual", o->usual, "back to the catalogue's interval");
    registry.add(*timing,
                 "  snugwalk points every roof-membrane --months 2\n"
                 "  snugwalk points every roof-membrane --usual",
                 [o](Session &s) { return every(s, *o); });
}

} // namespace snugwalk::cli
