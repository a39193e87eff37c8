// SPDX-License-Identifier: Apache-2.0
// --keep as an act of the round, and what it says.
#include "cli/bench/bench_keep.hpp"

#include "round/keep_figure.hpp"

namespace snugwalk::cli {

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
    const BenchFigureToKeep figure{&question, &answer, texts, session.units(), options.point, options.place};
    const Result<TypedReading> reading =
        keepFigure(**session.book(), session.catalogue(), *rig, *walk, figure, *doer);
    if (!reading)
        return reading.error();
    told.json.member("kept") = Value::Map{{"point", options.point},
                                          {"reading", reading->slug},
                                          {"place", reading->place},
                                          {"text", reading->text}};
    told.text +=
        session.texts().phrase("bench_kept", {session.texts().point(options.point).title, reading->text}) +
        "\n";
    return done();
}

} // namespace snugwalk::cli
