// SPDX-License-Identifier: Apache-2.0
// Bands and cells.
#include "concern/matrix.hpp"

#include <array>

namespace snugwalk {
namespace {

using L = MatrixLevel;
// rows A to E, columns severity I to IV
constexpr std::array<std::array<L, 4>, 5> cells = {{{L::High, L::High, L::Serious, L::Medium},
                                                    {L::High, L::High, L::Serious, L::Medium},
                                                    {L::High, L::Serious, L::Medium, L::Low},
                                                    {L::Serious, L::Medium, L::Medium, L::Low},
                                                    {L::Medium, L::Medium, L::Medium, L::Low}}};
constexpr double floorChance = 0.01;

} // namespace

ProbabilityBand probabilityBand(double chance)
{
    if (chance <= 0.0)
        return ProbabilityBand::F;
    if (chance >= 1e-1)
        return ProbabilityBand::A;
    if (chance >= 1e-2)
        return ProbabilityBand::B;
    if (chance >= 1e-3)
        return ProbabilityBand::C;
    return chance >= 1e-6 ? ProbabilityBand::D : ProbabilityBand::E;
}

std::string_view slug(ProbabilityBand band)
{
    constexpr std::array<std::string_view, 6> names = {"a", "b", "c", "d", "e", "f"};
    return names[static_cast<std::size_t>(band)];
}

std::string_view slug(MatrixLevel level)
{
    constexpr std::array<std::string_view, 5> names = {"none", "low", "medium", "serious", "high"};
    return names[static_cast<std::size_t>(level)];
}

MatrixLevel matrixLevel(Severity severity, ProbabilityBand band)
{
    if (band == ProbabilityBand::F)
        return MatrixLevel::None;
    return cells[static_cast<std::size_t>(band)][static_cast<std::size_t>(severity)];
}

bool isAtLeastMendSoon(Severity severity, double chance)
{
    return severity == Severity::I && chance >= floorChance;
}

} // namespace snugwalk
