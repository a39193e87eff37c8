// SPDX-License-Identifier: Apache-2.0
// Digits and units of the bench's figures.
#include "bench/ask/show.hpp"

#include <algorithm>
#include <array>
#include <cmath>

#include "base/text.hpp"

namespace snugwalk {
namespace {

constexpr int digits = 4;

std::string significant(double value)
{
    const double size = std::fabs(value);
    const int before = size > 0.0 && std::isfinite(size) ? static_cast<int>(std::floor(std::log10(size))) : 0;
    std::string text = fixed(value, std::clamp(digits - 1 - before, 0, 9));
    if (text.find('.') == std::string::npos)
        return text;
    while (text.back() == '0')
        text.pop_back();
    if (text.back() == '.')
        text.pop_back();
    return text == "-0" ? "0" : text;
}

// As many digits as the doubt leaves: its fifth, rounded down to a power of ten, is the last place shown.
std::string withinDoubt(double value, double half)
{
    if (!(half > 0.0) || !std::isfinite(half))
        return significant(value);
    const int place = static_cast<int>(std::floor(std::log10(half / 5.0)));
    const double step = std::pow(10.0, place);
    const double rounded = place > 0 ? std::round(value / step) * step : value;
    const std::string text = fixed(rounded, std::clamp(-place, 0, 9));
    const std::string most = significant(value);
    const std::string shorter = text.size() <= most.size() ? text : most;
    return shorter.find_first_of("123456789") == std::string::npos ? "0" : shorter; // never "-0.0"
}

bool isUs(const Unit &unit)
{
    constexpr auto symbols =
        std::to_array<std::string_view>({"in", "ft", "mi", "lb", "oz", "lbf", "psi", "lb·ft", "lb·in", "°F",
                                         "mph", "in²", "ft²", "gal", "fl oz"});
    return std::find(symbols.begin(), symbols.end(), unit.symbol) != symbols.end();
}

std::string withUnit(const std::string &number, const Unit &unit)
{
    if (unit.symbol.empty())
        return number;
    return number + (unit.symbol == "°" ? "" : "\u00a0") + std::string(unit.symbol);
}

} // namespace

std::string showIn(const Unit &unit, double si) { return withUnit(significant(fromSi(unit, si)), unit); }

std::string showFor(Dimension dimension, double si, UnitSystem units)
{
    return showIn(displayUnit(dimension, units, si), si);
}

std::string showBoth(const Unit &written, double si)
{
    const std::string first = showIn(written, si);
    const std::string metric = showFor(written.dimension, si, UnitSystem::Si);
    const std::string us = showFor(written.dimension, si, UnitSystem::Us);
    const std::string &other = isUs(written) ? metric : us;
    // nothing is nothing in every unit
    return si == 0.0 || metric == us || other == first ? first : first + " = " + other;
}

std::string showFigure(const BenchFigure &figure, double value, UnitSystem units)
{
    const double half = (figure.estimate.high - figure.estimate.low) / 2.0;
    if (!figure.dimension)
        return withinDoubt(value, half) +
               (figure.estimate.unit.empty() ? "" : "\u00a0" + figure.estimate.unit);
    const Unit unit = displayUnit(*figure.dimension, units, value);
    return withUnit(withinDoubt(fromSi(unit, value), fromSi(unit, value + half) - fromSi(unit, value)), unit);
}

} // namespace snugwalk
