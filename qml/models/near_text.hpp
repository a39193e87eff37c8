// SPDX-License-Identifier: Apache-2.0
// Where somewhere is, from the nearest named place, as the app says it.
#pragma once

#include <QString>

#include "report/near_words.hpp"
#include "snapshot.hpp"

namespace snugwalk {

/// "7 km north of Twizel" in the person's units; "" where the place or the names are not known.
[[nodiscard]] inline QString nearText(const Shown &shown, const std::optional<GeoPoint> &place)
{
    const World *world = shown.snapshot->world.get();
    const auto near =
        nearToTell(world == nullptr ? nullptr : world->placesOrNull(), place, PlaceDetail::Exact);
    if (!near)
        return {};
    const Voice &voice = *shown.voice;
    const auto number = [&](double value, int decimals) {
        return voice.number(value, decimals).toStdString();
    };
    return Voice::text(nearWords(*near, PlaceDetail::Exact, voice.texts, voice.units, number));
}

} // namespace snugwalk
