// SPDX-License-Identifier: Apache-2.0
// Every unit people type or read, with its exact factor to SI. The only place with such factors.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// si = (value + offset) * factor. `symbol` is how it is printed; `names` is what people type,
/// lower case, separated by one space.
struct Unit {
    Dimension dimension;
    std::string_view symbol;
    std::string_view names;
    double factor;
    double offset = 0.0;
};

/// All units, SI first in each dimension. Factors are exact by definition (inch, pound, standard
/// gravity, US gallon) or derived from those; source [NIST-SP811] appendix B.8.
[[nodiscard]] std::span<const Unit> allUnits();

/// \returns the unit of `dimension` written `text` in any spelling people use, or nothing.
[[nodiscard]] std::optional<Unit> findUnit(Dimension dimension, std::string_view text);

[[nodiscard]] constexpr double toSi(const Unit &unit, double value)
{
    return (value + unit.offset) * unit.factor;
}
[[nodiscard]] constexpr double fromSi(const Unit &unit, double si) { return si / unit.factor - unit.offset; }

/// Which units a person wants to read.
enum class UnitSystem { Si, Us };

/// The unit a dimension is shown in: kPa, mm or m by size, km, kg, N·m, °C … or psi, in, ft, mi, lb …
/// `magnitudeSi` picks between a small and a large unit of the same system.
[[nodiscard]] Unit displayUnit(Dimension dimension, UnitSystem system, double magnitudeSi);

/// The name of a dimension in JSON and data files, and back.
[[nodiscard]] std::string_view dimensionName(Dimension dimension);
[[nodiscard]] std::optional<Dimension> findDimension(std::string_view name);
/// The SI unit symbol used in JSON for a dimension.
[[nodiscard]] std::string_view siSymbol(Dimension dimension);

/// What a person typed, understood: "65 psi", "4.5 bar", "100 lb·ft", "1/4 in", "3/32", "2 1/2 in",
/// "1,060 kg", "−10 °C", "4,5 bar". Without a unit, `assumed` is taken; a bare fraction of a length
/// (such as a tread depth "3/32") is inches.
/// \returns the value in SI; `InvalidInput` for anything not understood in full, with the text in
/// `where` and an example in `act`; `OutOfRange` for non-finite or impossible values (below 0 K).
[[nodiscard]] Result<double> parseSi(Dimension dimension, std::string_view text,
                                     std::optional<Unit> assumed = std::nullopt);

/// The unit that was written with the number, or meant by a bare fraction of a length; nothing when the
/// text has none or is not understood.
[[nodiscard]] std::optional<Unit> unitWritten(Dimension dimension, std::string_view text);

template <typename Q>
struct DimensionOf;
#define SNUG_DIMENSION(Type)                                                                                 \
    template <>                                                                                              \
    struct DimensionOf<Type> {                                                                               \
        static constexpr Dimension value = Dimension::Type;                                                  \
    };
SNUG_DIMENSION(Length)
SNUG_DIMENSION(Distance)
SNUG_DIMENSION(Mass)
SNUG_DIMENSION(Force)
SNUG_DIMENSION(Pressure)
SNUG_DIMENSION(Torque)
SNUG_DIMENSION(Temperature)
SNUG_DIMENSION(TemperatureDifference)
SNUG_DIMENSION(Speed)
SNUG_DIMENSION(Area)
SNUG_DIMENSION(Volume)
SNUG_DIMENSION(Angle)
SNUG_DIMENSION(Duration)
SNUG_DIMENSION(Voltage)
SNUG_DIMENSION(Current)
SNUG_DIMENSION(Resistance)
SNUG_DIMENSION(Charge)
#undef SNUG_DIMENSION

/// Typed reading of what a person wrote; errors as `parseSi`.
template <typename Q>
[[nodiscard]] Result<Q> parseQuantity(std::string_view text)
{
    const Result<double> si = parseSi(DimensionOf<Q>::value, text);
    if (!si)
        return si.error();
    return Q::fromSi(si.value());
}

/// "448.2 kPa", "65.0 psi": `decimals` digits after the point, a no-break space before the unit.
[[nodiscard]] std::string formatSi(const Unit &unit, double si, int decimals);

/// Chooses unit and digits for reading at arm's length.
[[nodiscard]] std::string formatFor(Dimension dimension, double si, UnitSystem system);

template <typename Q>
[[nodiscard]] std::string format(Q quantity, UnitSystem system)
{
    return formatFor(DimensionOf<Q>::value, quantity.si(), system);
}

[[nodiscard]] constexpr Length metres(double v) { return Length::fromSi(v); }
[[nodiscard]] constexpr Length millimetres(double v) { return Length::fromSi(v * 1e-3); }
[[nodiscard]] constexpr Distance kilometres(double v) { return Distance::fromSi(v * 1e3); }
[[nodiscard]] constexpr Distance miles(double v) { return Distance::fromSi(v * 1609.344); }
[[nodiscard]] constexpr Mass kilograms(double v) { return Mass::fromSi(v); }
[[nodiscard]] constexpr Pressure kilopascals(double v) { return Pressure::fromSi(v * 1e3); }
[[nodiscard]] constexpr Temperature celsius(double v) { return Temperature::fromSi(v + 273.15); }

/// lbf/in², from the exact pound, inch and standard gravity. Source [NIST-SP811] B.8.
inline constexpr double pascalsPerPsi = 0.45359237 * 9.80665 / (0.0254 * 0.0254);
[[nodiscard]] constexpr Pressure psi(double v) { return Pressure::fromSi(v * pascalsPerPsi); }
[[nodiscard]] constexpr double inPsi(Pressure p) { return p.si() / pascalsPerPsi; }

} // namespace snugwalk
