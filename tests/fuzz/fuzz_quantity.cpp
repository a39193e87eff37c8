// SPDX-License-Identifier: Apache-2.0
// Any text as a quantity of each dimension; what is understood is printed, and read back the same.
#include <cmath>

#include "base/units.hpp"
#include "fuzz.hpp"

namespace {

using namespace snugwalk;

void checkReading(const Unit &unit, std::string_view text)
{
    const auto si = parseSi(unit.dimension, text);
    if (!si) {
        SNUG_ASSERT(!si.error().what.empty() && !si.error().act.empty());
        return;
    }
    SNUG_ASSERT(std::isfinite(*si));
    if (std::abs(*si) > 1e9)
        return; // beyond what anyone shows
    const auto again = parseSi(unit.dimension, formatSi(unit, *si, 9));
    SNUG_ASSERT(again && std::abs(*again - *si) <= 1e-9 + 1e-12 * std::abs(*si));
    if (unit.dimension == Dimension::Temperature && *si < 1.0)
        return; // rounding may lead below absolute zero, which is refused
    for (const UnitSystem system : {UnitSystem::Si, UnitSystem::Us})
        SNUG_ASSERT(parseSi(unit.dimension, formatFor(unit.dimension, *si, system)));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    const std::string_view text = asText(data, size);
    std::optional<Dimension> last;
    for (const Unit &unit : allUnits()) {
        if (unit.symbol.empty() && unit.dimension == Dimension::Fraction)
            continue;               // a bare number is read as percent, so only percent comes back the same
        if (last != unit.dimension) // the first of each is the SI unit
            checkReading(unit, text);
        last = unit.dimension;
    }
    return 0;
}
