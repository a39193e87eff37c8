// SPDX-License-Identifier: Apache-2.0
// Road classes by the spectrum of their unevenness, and roads made up to a class.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>
#include <vector>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

enum class ProfileClass { A, B, C, D, E, F, G, H };
[[nodiscard]] char profileClassLetter(ProfileClass c);
[[nodiscard]] std::optional<ProfileClass> findProfileClass(std::string_view letter);

/// Displacement spectral density at 0.1 cycles a metre, in m^3: geometric mean of a class, 16e-6 times
/// 4 for each class from A. Source [ISO-8608], from memory.
[[nodiscard]] double classDensity(ProfileClass c);
/// Limits halve and double the mean; A has no lower, H no upper one.
[[nodiscard]] ProfileClass classOf(double density);

/// Roughness index of a road whose spectrum falls with the square of the wave number, 0.543138 m/km for
/// a density of 1e-6 m^3 with the 250 mm filter, growing with its root; and back.
///
/// Source:   derived: sigma^2 = integral of |gain|^2 sinc^2(0.25 n) (2 pi n0)^2 G, index = sqrt(2/pi) sigma;
///           without the filter 0.5546, [KROPAC-MUCKA-2004] 2.21 sqrt(C) to 0.3 %, from memory
/// Accuracy: 1e-6 as derived; real roads do not fall with the square: a class told from an index is
///           good to one class either way
/// Tests:    tests/published/road/tst_road_iso8608.cpp
[[nodiscard]] double iriOfDensity(double density);
[[nodiscard]] double densityOfIri(double iri);

/// A class with its neighbours, within which it lies.
struct ClassRange {
    ProfileClass likely, low, high;
};
[[nodiscard]] ClassRange classFromIri(double iri);

/// The generator of the made-up roads' phases: s = (1103515245 s + 12345) mod 2^31, then s / 2^31.
class Lcg {
public:
    explicit Lcg(std::uint32_t seed) : m_state(seed & 0x7FFFFFFFU) {}
    [[nodiscard]] double next()
    {
        m_state = static_cast<std::uint32_t>((1103515245ULL * m_state + 12345ULL) & 0x7FFFFFFFULL);
        return static_cast<double>(m_state) / 2147483648.0;
    }

private:
    std::uint32_t m_state;
};

/// A sum of cosines with mid-bin wave numbers between 0.011 and 2.83 cycles a metre.
struct SynthPlan {
    double density = 16e-6; ///< at 0.1 cycles a metre, m^3
    Length spacing = Length::fromSi(0.25);
    std::size_t points = 8000;
    std::size_t bins = 0; ///< 0: as many as it takes not to repeat, 400 at least
    std::uint32_t seed = 1;
};
struct SynthRoad {
    std::vector<double> elevations; ///< metres
    double rms = 0.0;               ///< of the band, by theory
    double wavesRms = 0.0;          ///< of these waves: half the sum of their squared amplitudes, rooted
    std::size_t bins = 0;
    Distance repeatsAfter;
};
/// \returns `OutOfRange` for a spacing outside 0.01 to 0.6 m, under 200 bins, none or over ten million
/// points, or more work than a few minutes.
[[nodiscard]] Result<SynthRoad> synthesise(const SynthPlan &plan);

} // namespace snugwalk
