// SPDX-License-Identifier: Apache-2.0
// Triggers as lines of text.
#include "words/rule_words.hpp"

#include "base/text.hpp"
#include "walk/mend_part.hpp"
#include "words/state_words.hpp"

namespace snugwalk {
namespace {

// a plain number is told as the rule has it: 0.8 is no 1
std::string amount(const HoldFigure &f, UnitSystem units)
{
    return f.dimension == Dimension::Count ? amountText(f.printed) : formatFor(f.dimension, f.si, units);
}

std::vector<std::string> defectLines(const HoldRule &rule, const Texts &texts)
{
    std::vector<std::string> lines;
    std::string point;
    std::vector<std::string> parts;
    const auto flush = [&] {
        if (!parts.empty())
            lines.push_back(texts.phrase("rule_defects", {texts.point(point).title, join(parts, ", ")}));
        parts.clear();
    };
    for (const DefectHold &hold : rule.defects) {
        if (hold.point != point)
            flush();
        point = hold.point;
        const std::string defect = texts.word("defects", hold.defect);
        parts.push_back(hold.leastGrade == 1
                            ? texts.phrase("rule_any_grade", {defect})
                            : texts.phrase("rule_from_grade", {defect, std::to_string(hold.leastGrade)}));
    }
    flush();
    return lines;
}

std::string readingLine(const ReadingHold &hold, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> parts;
    for (const auto &[figure, phrase] : {std::pair(&hold.below, "rule_below"), {&hold.above, "rule_above"}}) {
        if (*figure)
            parts.push_back(
                texts.phrase(phrase, {texts.point(hold.point).title, texts.word("readings", hold.reading),
                                      amount(**figure, units), texts.phrase("set_by_" + (*figure)->setBy)}));
    }
    std::vector<std::string> only = hold.kinds;
    only.insert(only.end(), hold.places.begin(), hold.places.end());
    if (hold.grossOver)
        only.push_back(texts.phrase("rule_gross_over", {amount(*hold.grossOver, units)}));
    if (!only.empty())
        parts.push_back(texts.phrase("rule_only", {join(only, ", ")}));
    return join(parts, "; ");
}

std::string checkLine(const HoldCheck &check, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> arguments;
    if (check.name == "event_not_looked_at") {
        std::vector<std::string> events;
        for (const std::string &event : check.events)
            events.push_back(texts.word("events", event));
        arguments.push_back(join(events, ", "));
    } else {
        std::vector<std::string> points;
        for (const std::string &point : check.points)
            points.push_back(texts.point(point).title);
        arguments.push_back(join(points, ", "));
    }
    for (const HoldFigure &figure : check.figures)
        arguments.push_back(amount(figure, units));
    return texts.phrase("check_" + check.name, arguments);
}

} // namespace

std::vector<std::string> triggerLines(const HoldRule &rule, const Texts &texts, UnitSystem units)
{
    std::vector<std::string> lines = defectLines(rule, texts);
    for (const ReadingHold &hold : rule.readings)
        lines.push_back(readingLine(hold, texts, units));
    for (const HoldCheck &check : rule.checks)
        lines.push_back(checkLine(check, texts, units));
    if (!rule.missedLookHolds)
        lines.push_back(texts.phrase("rule_missed_not"));
    return lines;
}

std::vector<std::string> fullSources(const std::vector<std::string> &keys, const Catalogue &catalogue)
{
    std::vector<std::string> full;
    for (const std::string &key : keys) {
        const auto found = catalogue.sources().find(key);
        full.push_back(found == catalogue.sources().end() ? key : found->second.full);
    }
    return full;
}

std::string holdWords(const StateHold &hold, const Texts &texts)
{
    // an event, or a place as the rig names it
    const std::string place = hold.hit.place.empty() ? "" : ", " + texts.word("events", hold.hit.place);
    std::string out = texts.point(hold.hit.point).title + place + ": " + texts.word("holds", hold.hit.rule);
    return hold.accepted ? out + " " + acceptedWords(*hold.accepted, texts) : out;
}

} // namespace snugwalk
