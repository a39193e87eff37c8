// SPDX-License-Identifier: Apache-2.0
// What kind of thing a number measures. Declared before the quantity types on purpose: GCC 12's
// -Wshadow takes an enumerator for a redeclaration of a type of the same name declared earlier.
#pragma once

namespace snugwalk {

enum class Dimension {
    Length,
    Distance,
    Mass,
    Force,
    Pressure,
    Torque,
    Temperature,
    TemperatureDifference,
    Speed,
    Area,
    Volume,
    Angle,
    Duration,
    Voltage,
    Current,
    Resistance,
    Charge,
    Count,   ///< a plain number of things
    Fraction ///< held as 0.18, shown as 18 %
};

} // namespace snugwalk
