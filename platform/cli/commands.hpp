// SPDX-License-Identifier: Apache-2.0
// Every command of the command line; one file a subject adds its own.
#pragma once

#include <memory>

#include "cli/app.hpp"
#include "cli/session.hpp"

namespace snugwalk::cli {

/// Remembers which command was asked for; it runs after all options are read.
class Registry {
public:
    /// \param examples one a line, shown by --help.
    void add(CLI::App &sub, const std::string &examples, Command command)
    {
        sub.footer("Examples:\n" + examples);
        sub.callback([this, command = std::move(command)] { m_chosen = command; });
    }
    [[nodiscard]] const Command &chosen() const { return m_chosen; }

private:
    Command m_chosen;
};

struct DueFilter;

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
/// The due list and what goes with it: jobs, calendar, why, whatif, fit, posterior.
void addDueCommands(CLI::App &app, Registry &registry);
void addDueJobCommands(CLI::App &due, Registry &registry, const std::shared_ptr<DueFilter> &filter);
void addDueWhyCommand(CLI::App &due, Registry &registry);
void addDueWhatifCommand(CLI::App &due, Registry &registry, const std::shared_ptr<DueFilter> &filter);
/// due fit, due posterior.
void addDueFitCommands(CLI::App &due, Registry &registry);
void addCompareCommand(CLI::App &app, Registry &registry);
void addPlotCommand(CLI::App &app, Registry &registry);
void addTrendCommand(CLI::App &app, Registry &registry);
void addReportCommand(CLI::App &app, Registry &registry);
void addSearchCommand(CLI::App &app, Registry &registry);
void addWhereCommand(CLI::App &app, Registry &registry);
void addUndoCommand(CLI::App &app, Registry &registry);
void addKeepingCommands(CLI::App &app, Registry &registry);
void addDemoCommand(CLI::App &app, Registry &registry);
void addSupplyCommands(CLI::App &app, Registry &registry);
void addStateCommands(CLI::App &app, Registry &registry);
void addHoldCommands(CLI::App &app, Registry &registry);
void addRoadCommands(CLI::App &app, Registry &registry);
/// iri, class, synth.
void addRoadProfileCommands(CLI::App &road, Registry &registry);
/// psd, rainflow.
void addRoadSeriesCommands(CLI::App &road, Registry &registry);
/// road and shake of a trip.
void addTripRoadCommands(CLI::App &trip, Registry &registry);
/// One command a question of the bench; only `asked` for are its table and words read.
void addBenchCommands(CLI::App &app, Registry &registry, bool asked);
void addWeatherCommands(CLI::App &app, Registry &registry);
/// at, and rig by the second.
void addWeatherPlaceCommands(CLI::App &weather, Registry &registry);
void addWeatherRigCommand(CLI::App &weather, Registry &registry);
/// sun, uv, heat, dew.
void addWeatherSunCommands(CLI::App &weather, Registry &registry);
/// frost, corrosion, class, coast.
void addWeatherMetalCommands(CLI::App &weather, Registry &registry);
void addShareCommand(CLI::App &app, Registry &registry);
void addDeviceCommands(CLI::App &app, Registry &registry);
/// offer, answer, enroll.
void addOfferCommands(CLI::App &device, Registry &registry);
void addKeyCommands(CLI::App &app, Registry &registry);
void addStoreCommands(CLI::App &app, Registry &registry);
void addSyncCommand(CLI::App &app, Registry &registry);
void addAsideCommands(CLI::App &app, Registry &registry);
void addConflictCommands(CLI::App &app, Registry &registry);
void addPhotoWantCommand(CLI::App &photo, Registry &registry);
void addExportCommands(CLI::App &app, Registry &registry);

} // namespace snugwalk::cli
