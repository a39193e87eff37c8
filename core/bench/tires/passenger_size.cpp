// SPDX-License-Identifier: Apache-2.0
// Reading a size and working out its load.
#include "bench/tires/passenger_size.hpp"

#include <cmath>
#include <string>

#include "base/text.hpp"
#include "base/units.hpp"

namespace snugwalk {

Result<Mass> passengerLoad(std::string_view typed, Pressure pressure)
{
    const std::string text = lowerAscii(trim(typed));
    const std::string plain = text.starts_with('p') ? text.substr(1) : text;
    const auto sides = split(plain, '/');
    const auto rest = sides.size() == 2 ? split(sides.back(), 'r') : std::vector<std::string_view>();
    const auto width = parseDouble(trim(sides.front()));
    const auto aspect = rest.size() == 2 ? parseDouble(trim(rest.front())) : std::nullopt;
    const auto rim = rest.size() == 2 ? parseDouble(trim(rest.back())) : std::nullopt;
    const bool fits = width && aspect && rim && *width >= 125.0 && *width <= 405.0 && *aspect >= 25.0 &&
                      *aspect <= 90.0 && *rim >= 10.0 && *rim <= 30.0;
    if (!fits)
        return Error{Errc::InvalidInput,
                     "not a passenger tire's size: \"" + std::string(typed.substr(0, 40)) + "\"", "size",
                     "write it as on the sidewall, such as P235/75R15"};
    const double section = (0.34848 + 0.6497 * *aspect / 100.0) * *width;
    return kilograms(6.67e-5 * std::sqrt(pressure.si() / 1000.0) * std::pow(section, 1.39) *
                     (25.4 * *rim + section));
}

} // namespace snugwalk
