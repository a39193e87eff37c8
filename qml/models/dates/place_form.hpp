// SPDX-License-Identifier: Apache-2.0
// Places as a person tells them: coordinates typed, or one where the rig stood before.
#pragma once

#include <optional>
#include <vector>

#include <QVariantList>

#include "base/geo.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// "-44.27, 170.10" or "44.27 S, 170.10 E"; nothing when it is no place on earth.
[[nodiscard]] std::optional<GeoPoint> readPlace(const QString &typed);

struct KnownPlace {
    QString name;
    GeoPoint place;
    bool covered = false;
};
/// Where the rig stood, each once, the last first.
[[nodiscard]] std::vector<KnownPlace> knownPlaces(const Shown &shown);
/// [{slug, name}]; the slug is the place's number in the list.
[[nodiscard]] QVariantList placeChoices(const std::vector<KnownPlace> &places);

} // namespace snugwalk
