// SPDX-License-Identifier: Apache-2.0
// From a figure to a reading.
#include "cli/bench/bench_keep.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "logbook/query.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {
namespace {

std::string exactly(const Unit &unit, double si)
{
    return fixed(snugwalk::fromSi(unit, si), 6) + (unit.symbol.empty() ? "" : " " + std::string(unit.symbol));
}

const BenchFigure *figureNamed(const BenchAnswer &answer, std::string_view name)
{
    const auto found = std::find_if(answer.figures.begin(), answer.figures.end(),
                                    [&](const BenchFigure &figure) { return figure.name == name; });
    return found == answer.figures.end() ? nullptr : &*found;
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

// The figure or input that the question names, else the first figure whose kind the reading measures.
Result<TypedReading> readingOf(const BenchQuestion &question, const BenchAnswer &answer,
                               const BenchTexts &texts, const Point &point, UnitSystem units)
{
    const bool named = point.slug == question.point;
    const auto measures = [&](const BenchFigure &figure, const ReadingSpec &spec) {
        return figure.dimension == spec.dimension && (!named || spec.slug == question.reading);
    };
    if (named) {
        const auto typed = texts.find(question.kept);
        const auto made = answer.extra[question.kept].asString();
        if (typed != texts.end() || made)
            return TypedReading{std::string(question.reading), "", made ? *made : typed->second};
    }
    for (const ReadingSpec &spec : point.readings) {
        const BenchFigure *figure = named ? figureNamed(answer, question.kept) : nullptr;
        if (figure == nullptr)
            figure = &answer.figures.front();
        if (!measures(*figure, spec))
            continue;
        const double si = figure->estimate.value;
        return TypedReading{spec.slug, "", exactly(displayUnit(spec.dimension, units, si), si)};
    }
    return noReading(point, question);
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

void addKeepOptions(CLI::App &sub, const BenchQuestion &question, KeepOptions &options)
{
    const std::string usual = question.point.empty() ? "" : ", such as " + std::string(question.point);
    sub.add_option("--keep", options.point,
                   "keep it as a reading on this point of the walk under way" + usual);
    sub.add_option("--keep-place", options.place, "where it was read, such as \"wheel 1L\"");
}

Status keepReading(Session &session, const BenchQuestion &question, const BenchAnswer &answer,
                   const BenchTexts &texts, const KeepOptions &options, Answer &told)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<Walk> walk = session.openWalk();
    const Result<Doer> doer = session.doer();
    if (!walk || !doer)
        return walk ? doer.error() : walk.error();
    const Point *point = session.catalogue().find(options.point);
    if (point == nullptr)
        return Error{Errc::NotFound, "no such point", options.point, "see `snugwalk points`"};
    Result<TypedReading> reading = readingOf(question, answer, texts, *point, session.units());
    if (!reading)
        return reading.error();
    reading->place = options.place;
    reading->tool = "bench " + std::string(question.name);
    const auto marks = marksOf(**session.book(), walk->id);
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
    MarkDraft draft{
        point->slug, mark->state, mark->how, mark->reason, mark->note, withOthers(*mark, *reading), {}};
    const Result<MarkReceipt> receipt =
        markPoint(**session.book(), session.catalogue(), *rig, *walk, draft, *doer);
    if (!receipt)
        return receipt.error();
    told.json.member("kept") = Value::Map{{"point", point->slug},
                                          {"reading", reading->slug},
                                          {"place", reading->place},
                                          {"text", reading->text}};
    told.text +=
        session.texts().phrase("bench_kept", {session.texts().point(point->slug).title, reading->text}) +
        "\n";
    return done();
}

} // namespace snugwalk::cli
