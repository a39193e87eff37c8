// SPDX-License-Identifier: Apache-2.0
// points: what this rig has to be looked at, and one of them in full.
#include "cli/commands.hpp"
#include "data/embedded.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

Value stringList(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value readingValue(const ReadingSpec &spec)
{
    return Value::Map{{"reading", spec.slug},
                      {"quantity", dimensionName(spec.dimension)},
                      {"unit", siSymbol(spec.dimension)},
                      {"low", Value(spec.lowSi)},
                      {"high", Value(spec.highSi)},
                      {"set_by", spec.setBy},
                      {"source", spec.source},
                      {"typed_in", spec.unit}};
}

Value pointValue(const Point &point, const Texts &texts)
{
    const PointText text = texts.point(point.slug);
    Value::List readings;
    for (const ReadingSpec &spec : point.readings)
        readings.push_back(readingValue(spec));
    return Value::Map{
        {"point", point.slug},
        {"code", point.code},
        {"zone", point.zone},
        {"stand", point.stand},
        {"title", text.title},
        {"look", text.look},
        {"pass", text.pass},
        {"consequence", stringList(point.consequence)},
        {"forbids", point.forbids},
        {"defects", stringList(point.defects)},
        {"cautions", stringList(point.cautions)},
        {"readings", readings},
        {"months", Value(point.interval.months)},
        {"distance", point.interval.distance
                         ? Value(Value::Map{{"value", point.interval.distance->si()}, {"unit", "m"}})
                         : Value()},
        {"source_tag", point.sourceTag},
        {"sources", stringList(point.sourceKeys)}};
}

// " in °C": the symbol people read, whatever spelling the data has; nothing for a bare count.
std::string unitWords(const ReadingSpec &spec)
{
    const auto unit = findUnit(spec.dimension, spec.unit);
    return unit && !unit->symbol.empty() ? " in " + std::string(unit->symbol) : std::string();
}

std::string pointWords(const Point &point, const Texts &texts)
{
    const PointText text = texts.point(point.slug);
    std::string out =
        text.title + " (" + point.slug + ")\n  look: " + text.look + "\n  passes when: " + text.pass + "\n";
    for (const std::string &code : point.cautions)
        out += "  caution: " + texts.cautionFull(code) + "\n";
    for (const ReadingSpec &spec : point.readings)
        out += "  reading " + spec.slug + unitWords(spec) + "\n";
    for (int grade = 1; grade <= 5; ++grade)
        out += "  grade " + std::to_string(grade) + ": " + texts.grade(point.slug, grade) + "\n";
    const auto &sources = productCatalogue().sources();
    for (const std::string &key : point.sourceKeys) {
        if (const auto found = sources.find(key); found != sources.end())
            out += "  source: " + found->second.full + "\n";
    }
    return out;
}

Result<Answer> listPoints(Session &session, const std::string &zone)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Value::List json;
    std::string text;
    for (const std::string &slug : pointsFor(productCatalogue(), *rig)) {
        const Point &point = *productCatalogue().find(slug);
        if (!zone.empty() && point.zone != zone)
            continue;
        json.push_back(pointValue(point, session.texts()));
        text += padded(slug, 28) + padded(session.texts().standName(point.stand), 22) +
                session.texts().point(slug).title + "\n";
    }
    if (json.empty())
        return Error{Errc::NotFound, "no point of this rig lies there", "zone " + zone,
                     "see `snugwalk points`"};
    text += std::to_string(json.size()) + (json.size() == 1 ? " point\n" : " points\n");
    return Answer{Value::Map{{"points", json}}, text};
}

Result<Answer> onePoint(Session &session, const std::string &slug)
{
    const Point *point = productCatalogue().find(slug);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", slug, "see `snugwalk points`"};
    return Answer{pointValue(*point, session.texts()), pointWords(*point, session.texts())};
}

} // namespace

void addPointCommands(CLI::App &app, Registry &registry)
{
    CLI::App *points = app.add_subcommand("points", "the points this rig has, or one of them in full");
    auto slug = std::make_shared<std::string>();
    auto zone = std::make_shared<std::string>();
    points->add_option("point", *slug, "a point's slug");
    points->add_option("--zone", *zone, "only this zone, such as tires-and-wheels");
    registry.add(
        *points, "  snugwalk points --zone roof\n  snugwalk points belly-pan-sheet",
        [slug, zone](Session &s) { return slug->empty() ? listPoints(s, *zone) : onePoint(s, *slug); });
}

} // namespace snugwalk::cli
