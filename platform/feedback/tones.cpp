// SPDX-License-Identifier: Apache-2.0
// Sines under an envelope. Pitches and lengths: common practice, no source.
#include "feedback/tones.hpp"

#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double loudest = 0.2 * 32767.0;
constexpr double tickSeconds = 0.04;
constexpr double pauseSeconds = 0.03;

void addTick(std::vector<std::int16_t> &samples, double hertz)
{
    const int count = static_cast<int>(tickSeconds * toneRate);
    for (int i = 0; i < count; ++i) {
        const double along = static_cast<double>(i) / (count - 1);
        const double swell = std::sin(std::numbers::pi * along); // 0 at both ends
        const double wave = std::sin(2.0 * std::numbers::pi * hertz * i / toneRate);
        samples.push_back(static_cast<std::int16_t>(std::lround(loudest * swell * swell * wave)));
    }
}

} // namespace

std::vector<std::int16_t> tone(Cue cue)
{
    std::vector<std::int16_t> samples;
    if (cue == Cue::Written) {
        addTick(samples, 1320.0);
        return samples;
    }
    addTick(samples, 660.0);
    samples.insert(samples.end(), static_cast<std::size_t>(pauseSeconds * toneRate), 0);
    addTick(samples, 440.0);
    return samples;
}

} // namespace snugwalk
