// SPDX-License-Identifier: Apache-2.0
// demo: an invented rig with two years of history, to try everything on.
#include "cli/commands.hpp"
#include "demo/load_demo.hpp"

namespace snugwalk::cli {
namespace {

Result<Answer> demo(Session &session, const std::string &from)
{
    if (session.globals().book.empty())
        return Error{Errc::Usage, "which logbook? the demo never goes into your own", "--book",
                     "name a new file with --book"};
    const Result<DemoReport> report =
        loadDemo(session.globals().book, from.empty() ? builtInDemo() : demoFolder(from), session.codec());
    if (!report)
        return report.error();
    return Answer{Value::Map{{"rig", report->rig},
                             {"walks", report->walks},
                             {"trips", report->trips},
                             {"mends", report->mends},
                             {"photos", report->photos},
                             {"last_hash", report->lastHash}},
                  report->rig + ": " + std::to_string(report->walks) + " walks, " +
                      std::to_string(report->trips) + " trips, " + std::to_string(report->mends) +
                      " mends, " + std::to_string(report->photos) +
                      " photos (all made for the demo)\nlast entry " + report->lastHash + "\n"};
}

} // namespace

void addDemoCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand("demo", "fill a new logbook with the demo rig");
    auto from = std::make_shared<std::string>();
    sub->add_option("--from", *from, "a folder with a scenario of your own; without it the demo built in");
    registry.add(*sub, "  snugwalk --book demo.snugwalk demo", [from](Session &s) { return demo(s, *from); });
}

} // namespace snugwalk::cli
