// SPDX-License-Identifier: Apache-2.0
// Classes A to H, their relation to the roughness index, and made-up profiles.
#include "road/profile/iso8608.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace snugwalk {
namespace {

constexpr double reference = 0.1; // cycles a metre
constexpr double lowest = 0.011;
constexpr double highest = 2.83;
constexpr double iriOfMillionth = 0.543138; // m/km for 1e-6 m^3
constexpr int classes = 8;

int clampClass(int index) { return std::clamp(index, 0, classes - 1); }

} // namespace

char profileClassLetter(ProfileClass c) { return static_cast<char>('A' + static_cast<int>(c)); }

std::optional<ProfileClass> findProfileClass(std::string_view letter)
{
    if (letter.size() != 1)
        return std::nullopt;
    const int index = (letter[0] | 0x20) - 'a';
    if (index < 0 || index >= classes)
        return std::nullopt;
    return static_cast<ProfileClass>(index);
}

double classDensity(ProfileClass c) { return std::ldexp(16e-6, 2 * static_cast<int>(c)); }

ProfileClass classOf(double density)
{
    int index = 0;
    while (index < classes - 1 && density >= 2.0 * classDensity(static_cast<ProfileClass>(index)))
        ++index;
    return static_cast<ProfileClass>(index);
}

double iriOfDensity(double density) { return iriOfMillionth * std::sqrt(density / 1e-6); }

double densityOfIri(double iri) { return std::pow(iri / iriOfMillionth, 2) * 1e-6; }

ClassRange classFromIri(double iri)
{
    const ProfileClass likely = classOf(densityOfIri(iri));
    const int index = static_cast<int>(likely);
    return {likely, static_cast<ProfileClass>(clampClass(index - 1)),
            static_cast<ProfileClass>(clampClass(index + 1))};
}

Result<SynthRoad> synthesise(const SynthPlan &plan)
{
    const double dx = plan.spacing.si();
    if (!(dx >= 0.01 && dx <= 0.6))
        return Error{Errc::OutOfRange, "a spacing outside 0.01 to 0.6 m", "dx",
                     "give the metres between two points"};
    if (plan.points == 0 || plan.points > 10'000'000)
        return Error{Errc::OutOfRange, "a road of no or too many points", "length",
                     "give up to ten million points"};
    if (!(plan.density > 0.0 && plan.density < 1.0))
        return Error{Errc::OutOfRange, "no such unevenness", "density",
                     "give m^3 at 0.1 cycles a metre, such as 64e-6"};
    const double length = static_cast<double>(plan.points) * dx;
    const double band = highest - lowest;
    const std::size_t bins =
        plan.bins > 0 ? plan.bins
                      : std::max<std::size_t>(400, static_cast<std::size_t>(std::ceil(band * length)));
    if (bins < 200)
        return Error{Errc::OutOfRange, "under 200 bins", "bins", "give 200 or more"};
    if (static_cast<double>(bins) * static_cast<double>(plan.points) > 4e9)
        return Error{Errc::OutOfRange, "too long a road for so many bins", "length",
                     "make a shorter one, or give fewer bins"};
    const double width = band / static_cast<double>(bins);
    SynthRoad road;
    road.bins = bins;
    road.repeatsAfter = Distance::fromSi(1.0 / width);
    road.rms = std::sqrt(plan.density * reference * reference * (1.0 / lowest - 1.0 / highest));
    road.elevations.assign(plan.points, 0.0);
    Lcg lcg(plan.seed);
    double squares = 0.0;
    for (std::size_t i = 0; i < bins; ++i) {
        const double waves = lowest + (static_cast<double>(i) + 0.5) * width;
        const double amplitude = std::sqrt(2.0 * plan.density * std::pow(waves / reference, -2) * width);
        squares += amplitude * amplitude;
        const double phase = 2.0 * std::numbers::pi * lcg.next();
        const double omega = 2.0 * std::numbers::pi * waves;
        for (std::size_t j = 0; j < plan.points; ++j)
            road.elevations[j] += amplitude * std::cos(omega * (static_cast<double>(j) * dx) + phase);
    }
    road.wavesRms = std::sqrt(squares / 2.0);
    return road;
}

} // namespace snugwalk
