// SPDX-License-Identifier: Apache-2.0
// What makes a point age faster than the calendar, and how strongly.
#pragma once

#include <array>
#include <optional>
#include <string_view>

#include "catalogue/catalogue.hpp"

namespace snugwalk {

/// The first five are weather, the last is the road.
enum class AgeDriver { Sun, Heat, Wetness, Frost, Salt, Shake };
inline constexpr std::size_t ageDriverCount = 6;

/// The catalogue's own slugs (sun, heat, wetness, frost, salt, vibration); nothing for what is no rate,
/// such as distance, age or uses.
[[nodiscard]] std::optional<AgeDriver> findAgeDriver(std::string_view slug);
/// sun, heat, wetness, frost, salt, shake.
[[nodiscard]] std::string_view slug(AgeDriver driver);

/// Exponent of each driver's rate in a point's clock.
struct AgeWeights {
    std::array<double, ageDriverCount> gamma{};
    friend bool operator==(const AgeWeights &, const AgeWeights &) = default;
    friend auto operator<=>(const AgeWeights &, const AgeWeights &) = default;
};

/// Half a power for the strongest driver, a quarter for the second, none beyond: drivers that act at once
/// share much of their harm. The catalogue lists a point's drivers strongest first. Common practice.
[[nodiscard]] AgeWeights weightsOf(const Point &point);

/// By how much the exponents may be off either way; common practice.
inline constexpr double gammaDoubt = 0.15;

} // namespace snugwalk
