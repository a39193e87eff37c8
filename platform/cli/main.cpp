// SPDX-License-Identifier: Apache-2.0
// The command line: options, one command, its answer on standard output, its error in one line.
#include <csignal>
#include <cstdio>
#include <exception>
#include <iostream>

#include <CLI/CLI.hpp>

#include "cli/commands.hpp"
#include "data/embedded.hpp"

namespace {

using namespace snugwalk;
using namespace snugwalk::cli;

constexpr const char *about =
    "Snugwalk: a walk round the rig, point by point; what was found, what is due, what changed.\n"
    "It says what was looked at and found, not that nothing will fail. Maker's figures, local law and "
    "licensed\n"
    "people decide.";

constexpr const char *exitCodes =
    "Exit codes: 0 done, 2 usage, 3 input, 4 not found, 5 storage, 6 conflict, 7 network, 70 a bug of ours.\n"
    "With --json, errors are one object on standard error: {\"error\": {\"code\", \"what\", \"where\", "
    "\"do\"}}.";

void addGlobals(cli::CLI::App &app, Globals &globals)
{
    std::vector<std::string> languages;
    for (const Language &one : productLanguages())
        languages.push_back(one.slug);
    app.add_option("--book", globals.book, "logbook file (default: logbook.snugwalk in your data folder)");
    app.add_flag("--json", globals.json, "answer and errors as JSON, in SI with units");
    app.add_option("--units", globals.units, "units of texts: si or us")
        ->check(cli::CLI::IsMember({"si", "us"}));
    app.add_option("--language", globals.language, "language of the catalogue's texts")
        ->check(cli::CLI::IsMember(languages));
    app.add_option("--rig", globals.rig, "name or id of the rig (not needed when there is one)");
    app.add_option("--by", globals.by, "who does it");
    app.add_option("--at", globals.at, "when it was done, such as 2026-11-24T08:10:00+13:00 (default: now)");
    app.add_option("--where", globals.where, "where on earth: \"latitude, longitude[, altitude in m]\"");
}

int fail(const Error &error, bool json)
{
    if (json) {
        const Value object = Value::Map{{"error", Value::Map{{"code", codeName(error.code)},
                                                             {"what", error.what},
                                                             {"where", error.where},
                                                             {"do", error.act}}}};
        std::cerr << toJson(object, false) << '\n';
        return exitCode(error.code);
    }
    std::string line = "snugwalk: " + error.what;
    if (!error.where.empty())
        line += " (" + error.where + ")";
    if (!error.act.empty())
        line += "; " + error.act;
    std::cerr << line << '\n';
    return exitCode(error.code);
}

bool names(std::string_view word, int argc, char **argv)
{
    for (int i = 1; i < argc; ++i) {
        if (std::string_view(argv[i]) == word)
            return true;
    }
    return false;
}

// CLI11 reports by exceptions; help is one of them and no error.
int parseFailed(const ::CLI::App &app, const ::CLI::ParseError &fault, bool json)
{
    if (fault.get_exit_code() == 0)
        return app.exit(fault);
    std::string what = fault.what();
    for (char &c : what) {
        if (c == '\n')
            c = ' ';
    }
    return fail({Errc::Usage, what, "", "see `snugwalk --help`"}, json);
}

int run(int argc, char **argv)
{
    Globals globals;
    Registry registry;
    ::CLI::App line(about, "snugwalk");
    line.footer(exitCodes);
    line.require_subcommand(1);
    line.fallthrough();
    cli::CLI::App app(line);
    addGlobals(app, globals);
    addRigCommands(app, registry);
    addPointCommands(app, registry);
    addWalkCommands(app, registry);
    addFindingCommands(app, registry);
    addMendCommands(app, registry);
    addTripCommands(app, registry);
    addPhotoCommands(app, registry);
    addDueCommands(app, registry);
    addCompareCommand(app, registry);
    addTrendCommand(app, registry);
    addPlotCommand(app, registry);
    addSearchCommand(app, registry);
    addWhereCommand(app, registry);
    addUndoCommand(app, registry);
    addReportCommand(app, registry);
    addKeepingCommands(app, registry);
    addDemoCommand(app, registry);
    addSupplyCommands(app, registry);
    addStateCommands(app, registry);
    addHoldCommands(app, registry);
    addRoadCommands(app, registry);
    addWeatherCommands(app, registry);
    addBenchCommands(app, registry, names("bench", argc, argv));
    addShareCommand(app, registry);
    addDeviceCommands(app, registry);
    addKeyCommands(app, registry);
    addStoreCommands(app, registry);
    addSyncCommand(app, registry);
    addAsideCommands(app, registry);
    addConflictCommands(app, registry);
    addExportCommands(app, registry);
    try {
        line.parse(argc, argv);
    } catch (const ::CLI::ParseError &fault) {
        return parseFailed(line, fault, names("--json", argc, argv));
    }
    Session session(globals);
    const Result<Answer> answer = registry.chosen()(session);
    if (!answer)
        return fail(answer.error(), globals.json);
    std::cout << (globals.json ? toJson(answer->json, true) + "\n" : answer->text);
    std::cout.flush();
    if (!std::cout)
        return fail({Errc::Io, "the answer could not be written", "standard output", ""}, false);
    return answer->fault ? fail(*answer->fault, globals.json) : 0;
}

} // namespace

int main(int argc, char **argv)
{
    // a file-size limit must come back as an error of the write, not end the process before it can be told
    std::signal(SIGXFSZ, SIG_IGN);
    try {
        return run(argc, argv);
    } catch (const std::exception &bug) {
        std::fprintf(stderr, "snugwalk: a bug of ours: %s\n", bug.what());
        return 70;
    }
}
