// SPDX-License-Identifier: Apache-2.0
// From a figure to a reading, and onto the mark.
#include "round/keep_figure.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

std::string exactly(const Unit &unit, double si)
{
    return fixed(fromSi(unit, si), 6) + (unit.symbol.empty() ? "" : " " + std::string(unit.symbol));
}

// An input that is kept as it was typed, with the unit it was read in.
std::string typedExactly(const BenchFigureToKeep &figure, const std::string &text)
{
    const auto &inputs = figure.question->inputs;
    const auto input = std::find_if(inputs.begin(), inputs.end(),
                                    [&](const BenchInput &one) { return one.name == figure.question->kept; });
    if (input == inputs.end() || unitWritten(input->dimension, text))
        return text;
    const Unit bare = displayUnit(input->dimension, figure.units, input->typical);
    const Result<double> si = parseSi(input->dimension, text, bare);
    return si ? exactly(bare, *si) : text;
}

Error noReading(const Point &point, const BenchQuestion &question)
{
    std::vector<std::string> slugs;
    for (const ReadingSpec &spec : point.readings)
        slugs.push_back(spec.slug);
    std::string act = "its readings are: " + join(slugs, ", ");
    if (!question.point.empty())
        act = "keep it with --keep " + std::string(question.point);
    return {Errc::NotFound, "this point has no reading for that figure", point.slug, act};
}

// Readings that the mark has already; one at the same place gives way.
std::vector<TypedReading> withOthers(const Mark &mark, const TypedReading &kept)
{
    std::vector<TypedReading> all;
    for (const Reading &r : mark.readings) {
        const auto unit = findUnit(r.dimension, r.unit);
        if ((r.slug != kept.slug || r.place != kept.place) && unit)
            all.push_back({r.slug, r.place, exactly(*unit, r.si), r.tool});
    }
    all.push_back(kept);
    return all;
}

std::string byHand(const std::string &point, const TypedReading &reading, const char *rest)
{
    return "`snugwalk walk mark " + point + " " + rest + " --reading \"" + reading.slug +
           (reading.place.empty() ? "" : "@" + reading.place) + "=" + reading.text + "\"`";
}

} // namespace

Result<TypedReading> readingToKeep(const BenchFigureToKeep &figure, const Point &point)
{
    const BenchQuestion &question = *figure.question;
    const BenchAnswer &answer = *figure.answer;
    const std::string tool = "bench " + std::string(question.name);
    const bool named = point.slug == question.point;
    if (named) {
        const auto typed = figure.texts.find(question.kept);
        if (const auto made = answer.extra[question.kept].asString())
            return TypedReading{std::string(question.reading), figure.place, *made, tool};
        if (typed != figure.texts.end())
            return TypedReading{std::string(question.reading), figure.place,
                                typedExactly(figure, typed->second), tool};
    }
    const BenchFigure *shown = &answer.figures.front();
    for (const BenchFigure &one : answer.figures) {
        if (named && one.name == question.kept)
            shown = &one;
    }
    for (const ReadingSpec &spec : point.readings) {
        if (shown->dimension != spec.dimension || (named && spec.slug != question.reading))
            continue;
        const double si = shown->estimate.value;
        return TypedReading{spec.slug, figure.place,
                            exactly(displayUnit(spec.dimension, figure.units, si), si), tool};
    }
    return noReading(point, question);
}

Result<TypedReading> keepFigure(Logbook &book, const Catalogue &catalogue, const Rig &rig, const Walk &walk,
                                const BenchFigureToKeep &figure, const Doer &doer)
{
    const Point *point = catalogue.find(figure.point);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", figure.point, "see `snugwalk points`"};
    const Result<TypedReading> reading = readingToKeep(figure, *point);
    if (!reading)
        return reading;
    const auto marks = marksOf(book, walk.id);
    if (!marks)
        return marks.error();
    const Mark *mark = findMark(*marks, point->slug);
    if (mark == nullptr)
        return Error{Errc::NotFound, "the point has no mark on this walk, and a figure gives it none",
                     point->slug,
                     "look at it and mark it: " + byHand(point->slug, *reading, "pass --how measured")};
    if (mark->state == MarkState::Attention)
        return Error{
            Errc::Conflict, "the point is on attention: its readings go with the finding", point->slug,
            "look at the finding again: " + byHand(point->slug, *reading, "attention --same ID --grade G")};
    const MarkDraft draft{
        point->slug, mark->state, mark->how, mark->reason, mark->note, withOthers(*mark, *reading), {}};
    const Result<MarkReceipt> receipt = markPoint(book, catalogue, rig, walk, draft, doer);
    if (!receipt)
        return receipt.error();
    return reading;
}

} // namespace snugwalk
