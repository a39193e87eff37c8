// SPDX-License-Identifier: Apache-2.0
// Sentences of a comparison.
#include "words/compare_words.hpp"

#include <algorithm>

#include "base/text.hpp"

namespace snugwalk {
namespace {

// A word of a group, or the slug made readable where the group does not have it.
std::string wordOr(const Texts &texts, const char *group, const std::string &slug)
{
    const std::string word = texts.word(group, slug);
    return word == slug ? replaceAll(replaceAll(slug, "_", " "), ".", " ") : word;
}

// The dimension of a stored quantity by its SI unit; sizes on the rig are lengths.
std::string quantityWords(const Value &v, UnitSystem units)
{
    const std::string unit = v["unit"].asString().value_or("");
    for (const Dimension d : {Dimension::Length, Dimension::Mass, Dimension::Pressure, Dimension::Torque}) {
        if (siSymbol(d) == unit)
            return formatFor(d, v["value"].asDouble().value_or(0.0), units);
    }
    return fixed(v["value"].asDouble().value_or(0.0), 2);
}

std::string valueWords(const Value &v, UnitSystem units)
{
    if (v.isNull())
        return "-";
    if (const auto text = v.asString())
        return text->empty() ? "-" : replaceAll(*text, "_", " ");
    if (const auto number = v.asInt())
        return std::to_string(*number);
    if (v.isMap())
        return quantityWords(v, units);
    std::vector<std::string> parts;
    for (const Value &item : v.list())
        parts.push_back(valueWords(item, units));
    return std::to_string(parts.size()) + (parts.empty() ? "" : " (" + join(parts, ", ") + ")");
}

std::string thingWords(const RigChange &change, const Texts &texts)
{
    if (change.what == "fitting")
        return wordOr(texts, "fittings", change.name);
    return change.what == "opening" ? change.name : wordOr(texts, "rig_members", change.what);
}

bool isThing(const RigChange &change) { return change.what == "fitting" || change.what == "opening"; }

std::string titles(const Texts &texts, const std::vector<std::string> &points)
{
    std::vector<std::string> out;
    out.reserve(points.size());
    for (const std::string &point : points)
        out.push_back(texts.point(point).title);
    return join(out, ", ");
}

} // namespace

std::string rigChangesWords(const std::vector<RigChange> &changes, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> added;
    std::vector<std::string> removed;
    std::vector<std::string> rest;
    for (const RigChange &c : changes) {
        if (isThing(c) && c.kind == RigChangeKind::Added)
            added.push_back(thingWords(c, texts));
        else if (isThing(c) && c.kind == RigChangeKind::Removed)
            removed.push_back(thingWords(c, texts));
        else if (c.what == "opening")
            rest.push_back(texts.phrase("rig_moved", {c.name}));
        else
            rest.push_back(texts.phrase(
                "rig_changed", {thingWords(c, texts), valueWords(c.then, units), valueWords(c.now, units)}));
    }
    std::vector<std::string> parts;
    if (!added.empty())
        parts.push_back(texts.phrase("rig_added", {join(added, ", ")}));
    if (!removed.empty())
        parts.push_back(texts.phrase("rig_removed", {join(removed, ", ")}));
    parts.insert(parts.end(), rest.begin(), rest.end());
    return join(parts, "; ");
}

bool isTold(const ReadingChange &r) { return r.changed || r.faster || r.replaced || r.ask; }

std::string readingChangeWords(const ReadingChange &r, const Texts &texts, UnitSystem units)
{
    const auto amount = [&](double si) { return formatFor(r.dimension, si, units); };
    std::vector<std::string> parts = {texts.word("readings", r.slug) +
                                      (r.place.empty() ? "" : " " + r.place) + ": " +
                                      texts.phrase("from_to", {amount(r.thenSi), amount(r.nowSi)})};
    if (r.faster && r.expected)
        parts.push_back(
            texts.phrase("faster", {amount(std::abs(r.nowSi - r.thenSi)), amount(std::abs(*r.expected)),
                                    texts.phrase("expected_" + r.expectedFrom)}));
    if (r.replaced)
        parts.push_back(texts.phrase("reading_replaced"));
    if (r.ask)
        parts.push_back(texts.phrase("reading_ask"));
    for (const std::string &why : r.doubled)
        parts.push_back(texts.phrase("other_" + why));
    if (r.changed && !r.stands)
        parts.push_back(texts.phrase("among_many"));
    return join(parts, "; ");
}

std::string pointListsWords(const Comparison &c, const Texts &texts)
{
    std::string out;
    const auto add = [&](const char *phrase, const std::vector<std::string> &points) {
        if (!points.empty())
            out += texts.phrase(phrase, {std::to_string(points.size()), titles(texts, points)}) + "\n";
    };
    add("list_only_then", c.onlyThen);
    add("list_only_now", c.onlyNow);
    add("list_not_fitted", c.noLongerFitted);
    add("list_fitted_since", c.fittedSince);
    return out;
}

std::string ratesWords(const PairedRates &r, const Texts &texts)
{
    const auto n = [](int count) { return std::to_string(count); };
    std::string out =
        texts.phrase("rates", {n(r.worse), n(r.better), fixed(r.mcnemarP, 4), fixed(100.0 * r.chanceUp, 1)}) +
        "\n";
    if (r.readings > 0)
        out +=
            texts.phrase("rates_readings", {n(r.readings), n(r.readingsChanged), n(r.readingsStand)}) + "\n";
    return out;
}

} // namespace snugwalk
