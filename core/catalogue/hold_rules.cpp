// SPDX-License-Identifier: Apache-2.0
// Reading holds.json: every fault names the rule and what is wrong with it.
#include "catalogue/hold_rules.hpp"

#include <algorithm>
#include <array>
#include <utility>

namespace snugwalk {
namespace {

Error wrong(const std::string &where, const std::string &what)
{
    return {Errc::Corrupt, "hold rules: " + what, where, "install the program again"};
}

std::vector<std::string> strings(const Value &list)
{
    std::vector<std::string> out;
    for (const Value &item : list.list()) {
        if (auto text = item.asString())
            out.push_back(std::move(*text));
    }
    return out;
}

std::string word(const Value &v, std::string_view key) { return v[key].asString().value_or(""); }

Result<HoldFigure> figureFrom(const Value &v, const std::string &name, const std::string &where)
{
    HoldFigure f;
    f.name = name;
    f.unit = word(v, "unit");
    f.setBy = word(v, "set_by");
    f.source = word(v, "source");
    const auto number = v["value"].asDouble();
    const auto dimension = findDimension(word(v, "quantity"));
    if (!number || !dimension)
        return wrong(where, "figure \"" + name + "\" without value or with an unknown quantity");
    f.printed = *number;
    f.dimension = *dimension;
    const auto unit = findUnit(f.dimension, f.unit);
    if (!unit && !f.unit.empty())
        return wrong(where, "unknown unit \"" + f.unit + "\"");
    f.si = unit ? toSi(*unit, f.printed) : f.printed;
    return f;
}

Result<ReadingHold> readingFrom(const Value &v, const std::string &where)
{
    ReadingHold hold{word(v, "point"),    word(v, "reading"),   {}, {},
                     strings(v["kinds"]), strings(v["places"]), {}};
    for (const auto &[name, to] : {std::pair("below", &hold.below), std::pair("above", &hold.above),
                                   std::pair("gross_over", &hold.grossOver)}) {
        if (v[name].isNull())
            continue;
        Result<HoldFigure> figure = figureFrom(v[name], name, where);
        if (!figure)
            return figure.error();
        *to = std::move(figure).value();
    }
    if (hold.point.empty() || hold.reading.empty() || (!hold.below && !hold.above))
        return wrong(where, "a reading without point, name or limit");
    return hold;
}

// What each test reads: the figures it cannot do without.
struct CheckShape {
    std::string_view name;
    std::vector<std::string_view> figures;
    bool byEvent = false;
};

const std::vector<CheckShape> &shapes()
{
    static const std::vector<CheckShape> all = {
        {"hub_too_hot", {"hot", "alike", "after_descent"}, true},
        {"hub_over_mates", {"warm", "over_mates"}, false},
        {"over_axle_rating", {}, false},
        {"over_gross_rating", {}, false},
        {"over_tire_rating", {"exponent"}, false},
        {"over_nose_rating", {}, false},
        {"under_nose_low_end", {"north_america", "australia_new_zealand", "europe", "europe_least"}, false},
        {"event_not_looked_at", {}, true}};
    return all;
}

Result<HoldCheck> checkFrom(const Value &v, const std::string &where)
{
    HoldCheck check{word(v, "check"),     strings(v["points"]),       word(v, "reading"),  {},
                    strings(v["events"]), strings(v["consequences"]), strings(v["except"])};
    for (const Value &item : v["figures"].list()) {
        Result<HoldFigure> figure = figureFrom(item, word(item, "name"), where);
        if (!figure)
            return figure.error();
        check.figures.push_back(std::move(figure).value());
    }
    const auto shape = std::find_if(shapes().begin(), shapes().end(),
                                    [&](const CheckShape &s) { return s.name == check.name; });
    if (shape == shapes().end())
        return wrong(where, "no test is called \"" + check.name + "\"");
    for (const std::string_view figure : shape->figures) {
        if (check.figure(figure) == nullptr)
            return wrong(where, check.name + " without its figure " + std::string(figure));
    }
    if (shape->byEvent ? check.events.empty() : check.points.empty() || check.reading.empty())
        return wrong(where, check.name + " without events, or without point and reading");
    return check;
}

Status addDefects(const Value &v, const std::string &where, HoldRule &rule)
{
    const std::string point = word(v, "point");
    for (const auto &[defect, grade] : v["defects"].map()) {
        const int least = static_cast<int>(grade.asInt().value_or(0));
        if (point.empty() || least < 1 || least > 5)
            return wrong(where, "a defect without point or with a grade outside 1 to 5");
        rule.defects.push_back({point, defect, least});
    }
    return done();
}

Result<HoldRule> ruleFrom(const Value &v)
{
    HoldRule rule;
    rule.key = word(v, "key");
    rule.forbids = word(v, "forbids");
    rule.missedLookHolds = v["missed_look_holds"].asBool().value_or(true);
    rule.sources = strings(v["sources"]);
    const std::string where = "rule " + rule.key;
    const std::array known = {"move", "sleep", "plug", "light"};
    if (rule.key.empty() || rule.sources.empty() ||
        std::find(known.begin(), known.end(), rule.forbids) == known.end())
        return wrong(where, "key, source or what it forbids is missing");
    for (const Value &item : v["defects"].list())
        SNUG_TRY(addDefects(item, where, rule));
    for (const Value &item : v["readings"].list()) {
        Result<ReadingHold> reading = readingFrom(item, where);
        if (!reading)
            return reading.error();
        rule.readings.push_back(std::move(reading).value());
    }
    for (const Value &item : v["checks"].list()) {
        Result<HoldCheck> check = checkFrom(item, where);
        if (!check)
            return check.error();
        rule.checks.push_back(std::move(check).value());
    }
    return rule;
}

} // namespace

const HoldFigure *HoldCheck::figure(std::string_view wanted) const
{
    const auto found =
        std::find_if(figures.begin(), figures.end(), [&](const HoldFigure &f) { return f.name == wanted; });
    return found == figures.end() ? nullptr : &*found;
}

int HoldRule::number() const
{
    const bool numbered = !key.empty() && key.front() >= '0' && key.front() <= '9';
    return numbered ? std::stoi(key) : 0;
}

const std::vector<std::string> &knownHoldChecks()
{
    static const std::vector<std::string> names = [] {
        std::vector<std::string> all;
        for (const CheckShape &shape : shapes())
            all.emplace_back(shape.name);
        return all;
    }();
    return names;
}

Result<HoldRules> HoldRules::load(std::string_view bytes)
{
    const Result<Value> file = parseJson(bytes);
    if (!file)
        return wrong("holds, " + file.error().where, file.error().what);
    HoldRules rules;
    for (const Value &item : (*file)["rules"].list()) {
        Result<HoldRule> rule = ruleFrom(item);
        if (!rule)
            return rule.error();
        if (rules.find(rule->key) != nullptr)
            return wrong("rule " + rule->key, "the key is used twice");
        rules.m_rules.push_back(std::move(rule).value());
    }
    rules.index();
    return rules;
}

void HoldRules::index()
{
    for (std::size_t r = 0; r < m_rules.size(); ++r) {
        const HoldRule &rule = m_rules[r];
        for (std::size_t t = 0; t < rule.defects.size(); ++t)
            m_defects.insert({rule.defects[t].point, {r, t}});
        for (std::size_t t = 0; t < rule.readings.size(); ++t)
            m_readings.insert({rule.readings[t].point, {r, t}});
        for (std::size_t t = 0; t < rule.checks.size(); ++t) {
            for (const std::string &point : rule.checks[t].points)
                m_checks.insert({point, {r, t}});
        }
    }
}

const HoldRule *HoldRules::find(std::string_view key) const
{
    const auto found =
        std::find_if(m_rules.begin(), m_rules.end(), [&](const HoldRule &r) { return r.key == key; });
    return found == m_rules.end() ? nullptr : &*found;
}

std::vector<HoldRules::Of<DefectHold>> HoldRules::defectsOf(std::string_view point) const
{
    std::vector<Of<DefectHold>> out;
    for (auto [at, end] = m_defects.equal_range(point); at != end; ++at)
        out.push_back({&m_rules[at->second.rule], &m_rules[at->second.rule].defects[at->second.trigger]});
    return out;
}

std::vector<HoldRules::Of<ReadingHold>> HoldRules::readingsOf(std::string_view point) const
{
    std::vector<Of<ReadingHold>> out;
    for (auto [at, end] = m_readings.equal_range(point); at != end; ++at)
        out.push_back({&m_rules[at->second.rule], &m_rules[at->second.rule].readings[at->second.trigger]});
    return out;
}

std::vector<HoldRules::Of<HoldCheck>> HoldRules::checksOf(std::string_view point) const
{
    std::vector<Of<HoldCheck>> out;
    for (auto [at, end] = m_checks.equal_range(point); at != end; ++at)
        out.push_back({&m_rules[at->second.rule], &m_rules[at->second.rule].checks[at->second.trigger]});
    return out;
}

std::vector<HoldRules::Of<HoldCheck>> HoldRules::eventChecks() const
{
    std::vector<Of<HoldCheck>> out;
    for (const HoldRule &rule : m_rules) {
        for (const HoldCheck &check : rule.checks) {
            if (check.name == "event_not_looked_at")
                out.push_back({&rule, &check});
        }
    }
    return out;
}

std::vector<std::string> HoldRules::points() const
{
    std::vector<std::string> all;
    for (const Index *index : {&m_defects, &m_readings, &m_checks}) {
        for (const auto &[point, watch] : *index)
            all.push_back(point);
    }
    std::sort(all.begin(), all.end());
    all.erase(std::unique(all.begin(), all.end()), all.end());
    return all;
}

} // namespace snugwalk
