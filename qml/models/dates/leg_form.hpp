// SPDX-License-Identifier: Apache-2.0
// One leg of a plan, as typed.
#pragma once

#include <optional>

#include <QVariantMap>

#include "place_form.hpp"
#include "round/plan.hpp"

namespace snugwalk {

struct LegForm {
    std::optional<PlanLeg> leg;
    QVariantList problems; ///< [{field, what, act}]
};

/// \param map from, until (year-month-day), stay (number in `places`) or place (typed), covered, distance
///            (kilometres or miles without a unit), road (slug)
[[nodiscard]] LegForm readLeg(const QVariantMap &map, const std::vector<KnownPlace> &places,
                              UnitSystem units);
/// [{slug, name}] of roads.
[[nodiscard]] QVariantList roadChoices();
[[nodiscard]] QString roadWords(RoadClass road);

} // namespace snugwalk
