// SPDX-License-Identifier: Apache-2.0
// How much faster warm things age: Arrhenius, the rule of ten degrees, and surfaces in the sun.
#pragma once

#include <span>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"
#include "base/units.hpp"

namespace snugwalk {

/// eV/K: quotient of the two constants that define the kelvin and the coulomb since 2019.
inline constexpr double boltzmannElectronvolts = 8.617333262e-5;

/// What ageing is measured against.
inline constexpr Temperature ageingReference = celsius(20.0);

/// AF = exp(Ea/k (1/Tref - 1/T)): speed of ageing relative to the reference temperature.
///
/// \param activation energy in eV: 0.7 to 1.0 for the oxidation of rubber, often unknown for sealants;
///                   carry 0.5, 0.7 and 0.9 (common practice)
/// \returns `OutOfRange` for temperatures outside 223 K to 373 K (a figure in °C taken for K is caught here)
///          and energies outside 0 to 3 eV.
/// Source:   [ARRHENIUS-1889]
/// Accuracy: ± 0.2 eV in the energy is a factor of 1.4 to 2 at 10 to 25 K from the reference
/// Tests:    tests/published/weather/tst_heat_ageing.cpp
[[nodiscard]] Result<double> ageingFactor(Temperature at, double activation,
                                          Temperature reference = ageingReference);

/// AF = Q10^((T - Tref)/10 K). Common practice.
[[nodiscard]] Result<double> ageingFactorQ10(Temperature at, double q10,
                                             Temperature reference = ageingReference);

/// The activation energy in eV by which Arrhenius gives `q10` between the two temperatures.
[[nodiscard]] double activationOfQ10(double q10, Temperature cooler, Temperature warmer);

/// Mean of the factors, not the factor of the mean: averaging temperature first tells too little.
/// `InvalidInput` for an empty list.
[[nodiscard]] Result<double> meanAgeing(std::span<const Temperature> temperatures, double activation,
                                        Temperature reference = ageingReference);

/// The steady temperature that ages as fast: 1/(1/Tref - k ln(mean AF)/Ea).
[[nodiscard]] Result<Temperature> equivalentTemperature(double meanFactor, double activation,
                                                        Temperature reference = ageingReference);

/// Mean factor over a day that swings between its low and high like a cosine. Both are held within
/// 223 K to 373 K.
[[nodiscard]] double dayAgeing(Temperature low, Temperature high, double activation,
                               Temperature reference = ageingReference);

/// A dark roof in the sun: the air's temperature and 0.028 to 0.033 K for each W/m² (25 to 30 K at 900 W/m²).
/// Basis: common practice; wind and color move it more than that. `OutOfRange` outside 0 to 1,400 W/m².
[[nodiscard]] Result<Estimate> darkSurface(Temperature air, double irradiance);

} // namespace snugwalk
