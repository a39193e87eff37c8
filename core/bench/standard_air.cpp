// SPDX-License-Identifier: Apache-2.0
// The barometric formula of the troposphere.
#include "bench/standard_air.hpp"

#include <cmath>

namespace snugwalk {
namespace {

constexpr double seaLevelPascals = 101325.0;
constexpr double seaLevelKelvin = 288.15;
constexpr double lapseKelvinPerMetre = 0.0065;
// g0 M / (R* L) with the constants of the 1976 tables: 9.80665, 0.0289644, 8.31432, 0.0065
constexpr double exponent = 5.25587611;
constexpr double earthRadiusMetres = 6356766.0;

} // namespace

Result<AbsolutePressure> standardAir(Length altitude)
{
    const double h = altitude.si();
    if (!(h >= -500.0 && h <= 11000.0)) // so that NaN is refused too
        return Error{Errc::OutOfRange, "the altitude is outside -500 m to 11,000 m", "altitude",
                     "give the altitude above sea level, such as 1,609 m or 5,280 ft"};
    return AbsolutePressure::fromSi(seaLevelPascals *
                                    std::pow(1.0 - lapseKelvinPerMetre * h / seaLevelKelvin, exponent));
}

Length geopotential(Length geometric)
{
    return Length::fromSi(earthRadiusMetres * geometric.si() / (earthRadiusMetres + geometric.si()));
}

} // namespace snugwalk
