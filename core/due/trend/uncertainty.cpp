// SPDX-License-Identifier: Apache-2.0
// One figure a dimension, as usual tools give it.
#include "due/trend/uncertainty.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {

double readingUncertainty(Dimension dimension, double si)
{
    const double size = std::abs(si);
    switch (dimension) {
    case Dimension::Length:
        return std::max(0.25e-3, 0.02 * size);
    case Dimension::Distance:
        return std::max(100.0, 0.01 * size);
    case Dimension::Mass:
    case Dimension::Force:
        return std::max(5.0, 0.01 * size);
    case Dimension::Pressure:
        return std::max(7.0e3, 0.01 * size); // a pocket gauge, about 1 psi
    case Dimension::Torque:
        return std::max(2.0, 0.04 * size); // a click wrench, 4 %
    case Dimension::Temperature:
    case Dimension::TemperatureDifference:
        return 2.0; // an infrared thermometer
    case Dimension::Voltage:
        return std::max(0.05, 0.005 * size);
    case Dimension::Current:
        return std::max(0.1, 0.02 * size);
    case Dimension::Resistance:
        return std::max(0.1, 0.02 * size);
    case Dimension::Charge:
        return std::max(3600.0, 0.05 * size); // a counter at the battery
    case Dimension::Fraction:
        return 0.02;
    case Dimension::Count:
        return 0.5;
    case Dimension::Speed:
    case Dimension::Area:
    case Dimension::Volume:
    case Dimension::Angle:
    case Dimension::Duration:
        break;
    }
    return std::max(1e-9, 0.05 * size);
}

} // namespace snugwalk
