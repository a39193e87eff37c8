// SPDX-License-Identifier: Apache-2.0
// due whatif: dates as they are against dates as a plan would make them. Writes nothing.
#include <algorithm>
#include <cstdlib>

#include "cli/commands.hpp"
#include "cli/due_answers.hpp"
#include "logbook/files.hpp"
#include "round/plan.hpp"
#include "words/due_words.hpp"

namespace snugwalk::cli {
namespace {

constexpr std::size_t planBytesAtMost = std::size_t{1} << 20;

/// A point's dates without and with the plan.
struct Moved {
    const DueBand *now = nullptr;
    const DueBand *planned = nullptr;
    long long days = 0; ///< the likely date's; negative is sooner
};

Result<std::vector<PlanLeg>> readPlan(const std::string &file)
{
    const Result<std::string> bytes = readFile(file, planBytesAtMost);
    if (!bytes)
        return bytes.error();
    Result<std::vector<PlanLeg>> plan = parsePlan(*bytes);
    if (plan)
        return plan;
    Error error = plan.error();
    error.where = error.where.empty() ? file : file + ", " + error.where;
    return error;
}

std::vector<Moved> movedBy(const std::vector<const DueBand *> &now, const std::vector<DueBand> &planned)
{
    std::vector<Moved> all;
    for (const DueBand *band : now) {
        const DueBand *then = findBand(planned, band->point);
        if (band->likely && then != nullptr && then->likely)
            all.push_back({band, then, daysBetween(*band->likely, *then->likely)});
    }
    std::stable_sort(all.begin(), all.end(), [](const Moved &a, const Moved &b) { return a.days < b.days; });
    return all;
}

Value datesJson(const DueBand &band)
{
    return Value::Map{{"early", dateValue(band.early)},
                      {"likely", dateValue(band.likely)},
                      {"late", dateValue(band.late)},
                      {"rule", band.rule}};
}

Value movedJson(const Moved &moved)
{
    return Value::Map{{"point", moved.now->point},
                      {"now", datesJson(*moved.now)},
                      {"planned", datesJson(*moved.planned)},
                      {"days", moved.days}};
}

Value legJson(const PlanLeg &leg)
{
    return Value::Map{{"name", leg.name},
                      {"from", formatDate(leg.from)},
                      {"until", formatDate(leg.until)},
                      {"lat", leg.place.latitude},
                      {"lon", leg.place.longitude},
                      {"covered", leg.covered},
                      {"distance", Value::Map{{"value", leg.distance.si()}, {"unit", "m"}}},
                      {"road", roadClassName(leg.road)}};
}

std::string movedLine(const Moved &moved, const Texts &texts)
{
    return texts.phrase(moved.days > 0 ? "due_moved_later" : "due_moved",
                        {texts.point(moved.now->point).title, formatDate(*moved.planned->likely),
                         formatDate(*moved.now->likely), std::to_string(std::llabs(moved.days))}) +
           "\n";
}

Result<Answer> whatif(Session &session, const std::string &file, const DueFilter &filter)
{
    const Result<std::vector<PlanLeg>> plan = readPlan(file);
    if (!plan)
        return plan.error();
    const Result<Standing> now = standing(session);
    if (!now)
        return now.error();
    if (plan->back().until < civilDate(now->now))
        return Error{Errc::OutOfRange, "the whole plan is past", file, "plan from today on, or give --at"};
    const auto bands = filtered(session, *now, filter);
    if (!bands)
        return bands.error();
    const Ahead ahead = aheadOf(*plan, now->history, &session.world(), now->now);
    const std::vector<DueBand> planned = dueBands(session.catalogue(), now->history, now->now, ahead);
    Value::List json;
    std::string text;
    std::size_t still = 0;
    const std::vector<Moved> all = movedBy(*bands, planned);
    for (const Moved &moved : all) {
        json.push_back(movedJson(moved));
        if (moved.days == 0)
            ++still;
        else
            text += movedLine(moved, session.texts());
    }
    Value::List legs;
    for (const PlanLeg &leg : *plan)
        legs.push_back(legJson(leg));
    const std::vector<std::string> warnings = dueWarnings(session, *now);
    text += session.texts().phrase("due_unmoved", {std::to_string(all.size()), std::to_string(still)}) +
            "\n" + session.texts().phrase("due_plan_only") + "\n" + warningLines(warnings, session.texts());
    return Answer{Value::Map{{"plan", legs}, {"due", json}, {"warnings", warningsJson(warnings)}}, text};
}

} // namespace

void addDueWhatifCommand(CLI::App &due, Registry &registry, const std::shared_ptr<DueFilter> &filter)
{
    CLI::App *sub =
        due.add_subcommand("whatif", "what a planned season would do to the dates; writes nothing");
    auto file = std::make_shared<std::string>();
    sub->add_option(
           "file", *file,
           "JSON: {\"legs\": [{\"from\": \"2027-01-05\", \"until\": \"2027-04-04\", \"lat\": -45.36, "
           "\"lon\": 170.83, \"covered\": false, \"distance\": \"4000 km\", \"road\": \"gravel\"}]}; days, "
           "degrees, distance with its unit")
        ->required();
    registry.add(*sub,
                 "  snugwalk due whatif coast.json\n  snugwalk due whatif coast.json --zone roof --json",
                 [file, filter](Session &s) { return whatif(s, *file, *filter); });
}

} // namespace snugwalk::cli
