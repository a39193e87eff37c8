// SPDX-License-Identifier: Apache-2.0
// Members and words of a point.
#include "cli/point_answers.hpp"

#include "base/text.hpp"
#include "rig/rig_value.hpp"

namespace snugwalk::cli {
namespace {

Value stringList(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Value readingValue(const ReadingSpec &spec, const Texts &texts)
{
    return Value::Map{{"reading", spec.slug},
                      {"title", texts.word("readings", spec.slug)},
                      {"quantity", dimensionName(spec.dimension)},
                      {"unit", siSymbol(spec.dimension)},
                      {"low", Value(spec.lowSi)},
                      {"high", Value(spec.highSi)},
                      {"set_by", spec.setBy},
                      {"source", spec.source},
                      {"typed_in", spec.unit}};
}

Value sourcesValue(const Point &point, const Catalogue &catalogue)
{
    Value::List list;
    for (const std::string &key : point.sourceKeys) {
        const auto found = catalogue.sources().find(key);
        const bool known = found != catalogue.sources().end();
        list.push_back(Value::Map{{"key", key},
                                  {"title", known ? found->second.title : key},
                                  {"full", known ? found->second.full : key}});
    }
    return list;
}

Value hiddenValue(const std::optional<HiddenBy> &hidden)
{
    if (!hidden)
        return {};
    return Value::Map{{"by", hidden->by}, {"date", formatDate(hidden->date)}, {"note", hidden->note}};
}

Value gradesValue(const Point &point, const Texts &texts)
{
    Value::Map grades;
    for (int grade = 1; grade <= 5; ++grade)
        grades[std::to_string(grade)] = texts.grade(point.slug, grade);
    return grades;
}

// " in °C": the symbol people read, whatever spelling the data has; nothing for a bare count.
std::string unitWords(const ReadingSpec &spec)
{
    const auto unit = findUnit(spec.dimension, spec.unit);
    return unit && !unit->symbol.empty() ? " in " + std::string(unit->symbol) : std::string();
}

} // namespace

Value pointValue(const Point &point, const Catalogue &catalogue, const Texts &texts)
{
    const PointText text = texts.point(point.slug);
    Value::List readings;
    for (const ReadingSpec &spec : point.readings)
        readings.push_back(readingValue(spec, texts));
    return Value::Map{{"point", point.slug},
                      {"code", point.code},
                      {"zone", point.zone},
                      {"stand", point.stand},
                      {"title", text.title},
                      {"look", text.look},
                      {"pass", text.pass},
                      {"grades", gradesValue(point, texts)},
                      {"consequence", stringList(point.consequence)},
                      {"hold", Value(point.hold)},
                      {"forbids", point.forbids},
                      {"months", Value(point.interval.months)},
                      {"distance", quantityValue(point.interval.distance)},
                      {"uses", stringList(point.interval.uses)},
                      {"drivers", stringList(point.drivers)},
                      {"kinds", stringList(point.applies.kinds)},
                      {"practices", stringList(point.applies.practices)},
                      {"needs", stringList(point.applies.needs)},
                      {"without", stringList(point.applies.without)},
                      {"repeat", point.repeat},
                      {"readings", readings},
                      {"defects", stringList(point.defects)},
                      {"photos", point.photos},
                      {"tools", stringList(point.tools)},
                      {"minutes", point.minutes},
                      {"cautions", stringList(point.cautions)},
                      {"source_tag", point.sourceTag},
                      {"sources", stringList(point.sourceKeys)},
                      {"sources_full", sourcesValue(point, catalogue)},
                      {"own", point.own},
                      {"hidden", hiddenValue(point.hidden)}};
}

std::string intervalWords(const Point &point, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> limits;
    if (point.interval.months)
        limits.push_back(texts.phrase(*point.interval.months == 1 ? "months_1" : "months_n",
                                      {std::to_string(*point.interval.months)}));
    if (point.interval.distance)
        limits.push_back(format(*point.interval.distance, units));
    for (const std::string &use : point.interval.uses)
        limits.push_back(texts.word("events", use));
    return join(limits, ", ");
}

std::string pointWords(const Point &point, const Session &session, const Texts &texts)
{
    const PointText text = texts.point(point.slug);
    std::string out =
        text.title + " (" + point.slug + ")\n  look: " + text.look + "\n  passes when: " + text.pass + "\n";
    if (point.hidden)
        out += "  " + texts.phrase("hidden_by", {point.hidden->by, formatDate(point.hidden->date)}) +
               (point.hidden->note.empty() ? "" : ": " + point.hidden->note) + "\n";
    for (const std::string &code : point.cautions)
        out += "  caution: " + texts.cautionFull(code) + "\n";
    out += "  due: " + intervalWords(point, texts, session.units()) + "\n";
    for (const ReadingSpec &spec : point.readings)
        out += "  reading " + spec.slug + unitWords(spec) + "\n";
    for (int grade = 1; grade <= 5; ++grade)
        out += "  grade " + std::to_string(grade) + ": " + texts.grade(point.slug, grade) + "\n";
    const auto &sources = session.catalogue().sources();
    for (const std::string &key : point.sourceKeys) {
        if (const auto found = sources.find(key); found != sources.end())
            out += "  source: " + found->second.full + "\n";
    }
    return out;
}

} // namespace snugwalk::cli
