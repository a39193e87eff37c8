// SPDX-License-Identifier: Apache-2.0
// Scalars that know their dimension, so that a pressure can never be added to a torque.
#pragma once

#include <compare>

#include "base/dimension.hpp"

namespace snugwalk {

/// A scalar of dimension `Dim`, held in that dimension's SI unit.
/// Two dimensions never mix: `Pressure + Torque` does not compile.
template <typename Dim>
class Quantity {
public:
    constexpr Quantity() = default;
    [[nodiscard]] static constexpr Quantity fromSi(double value) { return Quantity(value); }
    [[nodiscard]] constexpr double si() const { return m_si; }

    friend constexpr auto operator<=>(Quantity, Quantity) = default;
    friend constexpr Quantity operator+(Quantity a, Quantity b) { return Quantity(a.m_si + b.m_si); }
    friend constexpr Quantity operator-(Quantity a, Quantity b) { return Quantity(a.m_si - b.m_si); }
    friend constexpr Quantity operator*(Quantity a, double k) { return Quantity(a.m_si * k); }
    friend constexpr Quantity operator*(double k, Quantity a) { return Quantity(a.m_si * k); }
    friend constexpr Quantity operator/(Quantity a, double k) { return Quantity(a.m_si / k); }
    friend constexpr double operator/(Quantity a, Quantity b) { return a.m_si / b.m_si; }

private:
    explicit constexpr Quantity(double si) : m_si(si) {}
    double m_si = 0.0;
};

using Length = Quantity<struct LengthDim>;     ///< metre; sizes on the rig
using Distance = Quantity<struct DistanceDim>; ///< metre; travelled on the road, never mixed with a size
using Mass = Quantity<struct MassDim>;         ///< kilogram
using Force = Quantity<struct ForceDim>;       ///< newton
using Pressure = Quantity<struct PressureDim>; ///< pascal, gauge: what a tire gauge shows
using AbsolutePressure = Quantity<struct AbsolutePressureDim>;           ///< pascal above vacuum
using Torque = Quantity<struct TorqueDim>;                               ///< newton metre
using TemperatureDifference = Quantity<struct TemperatureDifferenceDim>; ///< kelvin
using Speed = Quantity<struct SpeedDim>;                                 ///< metre a second
using Area = Quantity<struct AreaDim>;                                   ///< square metre
using Volume = Quantity<struct VolumeDim>;                               ///< cubic metre
using Angle = Quantity<struct AngleDim>;                                 ///< radian
using Duration = Quantity<struct DurationDim>;                           ///< second
using Voltage = Quantity<struct VoltageDim>;                             ///< volt
using Current = Quantity<struct CurrentDim>;                             ///< ampere
using Resistance = Quantity<struct ResistanceDim>;                       ///< ohm
using Charge = Quantity<struct ChargeDim>;                               ///< coulomb; what a battery holds

/// A point on the thermometer, in kelvin. Points do not add; their difference is a
/// `TemperatureDifference`.
class Temperature {
public:
    constexpr Temperature() = default;
    [[nodiscard]] static constexpr Temperature fromSi(double kelvin) { return Temperature(kelvin); }
    [[nodiscard]] constexpr double si() const { return m_kelvin; }

    friend constexpr auto operator<=>(Temperature, Temperature) = default;
    friend constexpr TemperatureDifference operator-(Temperature a, Temperature b)
    {
        return TemperatureDifference::fromSi(a.m_kelvin - b.m_kelvin);
    }
    friend constexpr Temperature operator+(Temperature t, TemperatureDifference d)
    {
        return Temperature(t.m_kelvin + d.si());
    }

private:
    explicit constexpr Temperature(double kelvin) : m_kelvin(kelvin) {}
    double m_kelvin = 0.0;
};

/// Gauge to absolute and back, at the local air pressure.
[[nodiscard]] constexpr AbsolutePressure absolute(Pressure gauge, AbsolutePressure air)
{
    return AbsolutePressure::fromSi(gauge.si() + air.si());
}
[[nodiscard]] constexpr Pressure gauge(AbsolutePressure pressure, AbsolutePressure air)
{
    return Pressure::fromSi(pressure.si() - air.si());
}

/// A rectangle of two lengths, and a prism over an area.
[[nodiscard]] constexpr Area operator*(Length a, Length b) { return Area::fromSi(a.si() * b.si()); }
[[nodiscard]] constexpr Volume operator*(Area a, Length b) { return Volume::fromSi(a.si() * b.si()); }

/// Torque of a force on a lever arm.
[[nodiscard]] constexpr Torque torque(Force force, Length arm)
{
    return Torque::fromSi(force.si() * arm.si());
}

} // namespace snugwalk
