// SPDX-License-Identifier: Apache-2.0
// Slugs and exponents of what ages a point.
#include "due/aging/age_drivers.hpp"

#include <utility>

namespace snugwalk {
namespace {

constexpr std::array<std::pair<std::string_view, std::string_view>, ageDriverCount> slugs = {{
    {"sun", "sun"},
    {"heat", "heat"},
    {"wetness", "wetness"},
    {"frost", "frost"},
    {"salt", "salt"},
    {"vibration", "shake"},
}};

constexpr std::array strengths = {0.5, 0.25};

} // namespace

std::optional<AgeDriver> findAgeDriver(std::string_view slug)
{
    for (std::size_t i = 0; i < slugs.size(); ++i) {
        if (slugs[i].first == slug)
            return static_cast<AgeDriver>(i);
    }
    return std::nullopt;
}

std::string_view slug(AgeDriver driver) { return slugs[static_cast<std::size_t>(driver)].second; }

AgeWeights weightsOf(const Point &point)
{
    AgeWeights weights;
    std::size_t rank = 0;
    for (const std::string &name : point.drivers) {
        const auto driver = findAgeDriver(name);
        if (driver && rank < strengths.size())
            weights.gamma[static_cast<std::size_t>(*driver)] = strengths[rank++];
    }
    return weights;
}

} // namespace snugwalk
