// SPDX-License-Identifier: Apache-2.0
// Every command of the command line; one file a subject adds its own.
#pragma once

#include <CLI/CLI.hpp>

#include "cli/session.hpp"

namespace snugwalk::cli {

/// Remembers which command was asked for; it runs after all options are read.
class Registry {
public:
    /// \param examples one a line, shown by --help.
    void add(CLI::App &sub, const std::string &examples, Command command)
    {
        sub.footer("Examples:\n" + examples);
        // of a command with subcommands, the callback comes after theirs
        sub.callback([this, &sub, command = std::move(command)] {
            if (sub.get_subcommands().empty())
                m_chosen = command;
        });
    }
    [[nodiscard]] const Command &chosen() const { return m_chosen; }

private:
    Command m_chosen;
};

void addRigCommands(CLI::App &app, Registry &registry);
void addPointCommands(CLI::App &app, Registry &registry);
void addOwnCommands(CLI::App &points, Registry &registry);
void addWalkCommands(CLI::App &app, Registry &registry);
void addMarkCommands(CLI::App &walk, Registry &registry);
void addStartCommand(CLI::App &walk, Registry &registry);
void addFindingCommands(CLI::App &app, Registry &registry);
/// The verbs of a single finding: add, worse, better, same, gone.
void addFindingLookCommands(CLI::App &finding, Registry &registry);
void addMendCommands(CLI::App &app, Registry &registry);
void addTripCommands(CLI::App &app, Registry &registry);
void addPhotoCommands(CLI::App &app, Registry &registry);
/// draw, measure, caption, move.
void addPhotoDrawCommands(CLI::App &photo, Registry &registry);
void addQuestionCommands(CLI::App &app, Registry &registry);
void addCompareCommand(CLI::App &app, Registry &registry);
void addTrendCommand(CLI::App &app, Registry &registry);
void addReportCommand(CLI::App &app, Registry &registry);
void addKeepingCommands(CLI::App &app, Registry &registry);
void addDemoCommand(CLI::App &app, Registry &registry);
void addSupplyCommands(CLI::App &app, Registry &registry);
void addStateCommands(CLI::App &app, Registry &registry);
void addHoldCommands(CLI::App &app, Registry &registry);

} // namespace snugwalk::cli
