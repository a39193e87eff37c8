// SPDX-License-Identifier: Apache-2.0
// Joining what is open to the tape.
#include "round/tape.hpp"

#include <algorithm>

#include "due/clock.hpp"
#include "due/events.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t mostLines = 16; // of a move

bool isOn(const std::vector<TapeLine> &tape, const std::string &point)
{
    return std::any_of(tape.begin(), tape.end(), [&](const TapeLine &line) {
        return std::find(line.points.begin(), line.points.end(), point) != line.points.end();
    });
}

void join(std::vector<TapeLine> &tape, const std::string &point)
{
    const auto wheels =
        std::find_if(tape.begin(), tape.end(), [](const TapeLine &line) { return line.slug == "wheels"; });
    if (wheels == tape.end())
        tape.insert(tape.begin(), {point, {point}});
    else if (tape.size() < mostLines)
        tape.insert(wheels + 1, {point, {point}});
    else
        wheels->points.push_back(point);
}

} // namespace

std::vector<std::string> openPoints(const Catalogue &catalogue, const RigHistory &history,
                                    std::string_view kindSlug, LocalTime now)
{
    const WalkKind *kind = catalogue.kind(kindSlug);
    if (kind == nullptr || history.happenings.empty())
        return {};
    const auto clocks = clocksOf(history, now);
    std::vector<std::string> open;
    for (const std::string &slug : kind->whileOpen) {
        const Point &point = *catalogue.find(slug);
        const auto found = clocks.find(slug);
        const PointClock clock = found == clocks.end() ? PointClock() : found->second;
        if (applies(point, history.rig) && !clock.notFitted &&
            (openRung(catalogue, history, point, clock, now) ||
             unanswered(catalogue, history, point, clock, now) != nullptr))
            open.push_back(slug);
    }
    return open;
}

Result<std::vector<TapeLine>> tapeForWalk(const Catalogue &catalogue, const RigHistory &history,
                                          std::string_view kind, const std::vector<std::string> &extraSets,
                                          const std::vector<std::string> &extraPoints, LocalTime now)
{
    auto tape = tapeFor(catalogue, history.rig, kind, extraSets, extraPoints);
    if (!tape)
        return tape;
    // from the last to the first, so that they stand behind the wheels in their own order
    const std::vector<std::string> open = openPoints(catalogue, history, kind, now);
    for (auto slug = open.rbegin(); slug != open.rend(); ++slug) {
        if (!isOn(*tape, *slug))
            join(*tape, *slug);
    }
    return tape;
}

} // namespace snugwalk
