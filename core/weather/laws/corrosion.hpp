// SPDX-License-Identifier: Apache-2.0
// What the air takes off bare metal in a year, its class, and how that grows.
#pragma once

#include <array>
#include <string_view>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class Metal { Steel, Zinc, Copper, Aluminium };
inline constexpr std::array metals = {Metal::Steel, Metal::Zinc, Metal::Copper, Metal::Aluminium};
[[nodiscard]] std::string_view metalName(Metal metal); ///< `steel`, `zinc`, `copper`, `aluminium`

/// Very low, low, medium, high, very high, extreme.
enum class Corrosivity { C1, C2, C3, C4, C5, CX };
[[nodiscard]] std::string_view corrosivityName(Corrosivity category);

/// A year of air. Depositions in mg m⁻² d⁻¹.
struct CorrosiveAir {
    Temperature temperature;
    double humidity = 75.0; ///< percent
    double sulfur = 0.0;    ///< SO2
    double chloride = 0.0;
};

struct CorrosionRate {
    Estimate firstYear; ///< µm/a; of aluminium g m⁻² a⁻¹
    Corrosivity category = Corrosivity::C1;
    Corrosivity lowest = Corrosivity::C1;  ///< one lower or higher where the rate is within a factor of
    Corrosivity highest = Corrosivity::C1; ///< 1.5 of the bound
};

/// Loss of the first year by the standard's dose-response functions.
///
/// Air outside the table's range (-17 to 29 °C, 34 to 93 %, SO2 0.7 to 150, chloride 0.4 to 760) is held at
/// its upper ends, its temperatures and humidities at both, with the warning `outside_table`. The warning
/// `hot_coast` says that warm salty places have been found beyond these functions.
///
/// \returns `OutOfRange` for numbers that no air has.
/// Formula:  r = a Pd^b exp(c RH + f) + d Sd^e exp(g RH + h T); f = k (T - 10) up to 10 °C, -l (T - 10) above
/// Source:   [ISO-9223-2012], constants from memory
/// Accuracy: -33 to +50 %, of aluminium half to double; R² 0.65 to 0.88
/// Tests:    tests/published/weather/tst_corrosion.cpp
[[nodiscard]] Result<CorrosionRate> corrosionRate(Metal metal, const CorrosiveAir &air);

/// The class of a first year's loss. Source [ISO-9223-2012] table 2, from memory.
[[nodiscard]] Corrosivity corrosivityOf(Metal metal, double firstYear);

/// D = r t^b: loss after some years, under 20.
/// Source [ISO-9224-2012], exponents from memory. `OutOfRange` outside 0 to 20 years.
[[nodiscard]] Result<double> corrosionAfter(Metal metal, double firstYear, double years);

/// SO2 that is taken where nobody measured, mg m⁻² d⁻¹: between rural and town air. Common practice.
inline constexpr double usualSulfur = 3.0;

/// Chloride that comes down at a distance from surf: S (d / 10 m)^-p with a floor inland, mg m⁻² d⁻¹.
///
/// \returns S 600, p 0.8, floor 2; low 300, 1, 1; high 1,500, 0.6, 3; held within 0.4 to 760.
/// Source:   [FELIU-1999] has the form, from memory; the figures are common practice
/// Accuracy: an order of magnitude: wind, surf and cover decide; the bands (under 100 m, 1 km, 10 km) say as
///           much
/// Tests:    tests/unit/weather/tst_corrosion_edges.cpp
[[nodiscard]] Estimate chlorideNearCoast(Distance fromCoast);
/// From here on value, low and high stay at their floors.
inline constexpr Distance chlorideFlatFrom = Distance::fromSi(320e3);

} // namespace snugwalk
