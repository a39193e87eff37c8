// SPDX-License-Identifier: Apache-2.0
// Mean and spread of what the dial moved.
#include "bench/hubs/end_play.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/units.hpp"
#include "bench/make_estimate.hpp"

namespace snugwalk {
namespace {

constexpr auto callSlugs = std::to_array<std::string_view>({"within", "over", "under", "undecided"});
constexpr double dialDoubt = 0.0005 * 0.0254; // common practice, no source
constexpr double mostRead = 0.010;
constexpr double mostPlay = 0.020 * 0.0254;
constexpr std::size_t mostTrials = 50;
constexpr double rounding = 1e-9; // in m, so that a limit typed in inches is met by the same in mm

Status checkTrials(std::span<const PlayTrial> trials)
{
    if (trials.empty() || trials.size() > mostTrials)
        return Error{Errc::InvalidInput, "no dial readings, or more than 50", "push",
                     "give one reading pushed and one pulled for each trial"};
    for (const PlayTrial &t : trials) {
        SNUG_TRY(within(-mostRead, t.pushed.si(), mostRead,
                        {Errc::OutOfRange, "no dial reads that far", "push", "give it with its unit"}));
        SNUG_TRY(within(-mostRead, t.pulled.si(), mostRead,
                        {Errc::OutOfRange, "no dial reads that far", "pull", "give it with its unit"}));
        if (t.pulled < t.pushed)
            return Error{Errc::InvalidInput, "the dial reads less pulled than pushed", "pull",
                         "set the dial so that it reads more as the hub comes out, and read again"};
    }
    return done();
}

PlayCall callOf(const Estimate &play, const PlayLimits &limits)
{
    if (play.low > limits.most.si() + rounding)
        return PlayCall::Over;
    if (play.high < limits.least.si() - rounding)
        return PlayCall::Under;
    const bool inside =
        play.value >= limits.least.si() - rounding && play.value <= limits.most.si() + rounding;
    return inside ? PlayCall::Within : PlayCall::Undecided;
}

} // namespace

std::string_view slug(PlayCall call) { return callSlugs.at(static_cast<std::size_t>(call)); }

Result<EndPlay> endPlay(std::span<const PlayTrial> trials, std::optional<PlayLimits> maker)
{
    SNUG_TRY(checkTrials(trials));
    const PlayLimits limits = maker.value_or(publishedPlay);
    if (!(limits.least.si() >= 0.0 && limits.least <= limits.most))
        return Error{Errc::InvalidInput, "the least end play is above the most", "least",
                     "read the axle maker's two figures again"};
    double sum = 0.0;
    double smallest = mostRead * 2.0;
    double largest = 0.0;
    for (const PlayTrial &t : trials) {
        const double moved = (t.pulled - t.pushed).si();
        sum += moved;
        smallest = std::min(smallest, moved);
        largest = std::max(largest, moved);
    }
    const double play = sum / static_cast<double>(trials.size());
    SNUG_TRY(within(0.0, play, mostPlay + rounding,
                    {Errc::OutOfRange, "more than 0.020 in (0.5 mm) is no end play of a bearing in place",
                     "pull", "see that the dial sits on the hub and its foot on the spindle"}));
    EndPlay out;
    const double doubt = std::hypot((largest - smallest) / 2.0, dialDoubt);
    out.play = around(play, doubt, {"m", "measured", maker ? "maker" : "TMC-RP618"});
    out.play.low = std::max(0.0, out.play.low);
    out.call = callOf(out.play, limits);
    if (out.call != PlayCall::Within)
        out.play.warnings.push_back("play_" + std::string(slug(out.call)));
    if (trials.size() == 1)
        out.play.warnings.emplace_back("one_reading");
    return out;
}

} // namespace snugwalk
