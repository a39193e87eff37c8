// SPDX-License-Identifier: Apache-2.0
// Everything written on a walk as trees of values: entries carry these, JSON prints these.
#pragma once

#include "base/value.hpp"
#include "walk/acceptance.hpp"
#include "walk/walk.hpp"

namespace snugwalk {

// Ids of the thing itself are not in its value (the logbook keys by id); ids of others are, as 32
// hexadecimal digits. Reading is lenient: unknown members are ignored, missing ones default.
[[nodiscard]] Value toValue(const Walk &walk);
[[nodiscard]] Value toValue(const WalkBudget &budget);
[[nodiscard]] Value toValue(const Mark &mark);
[[nodiscard]] Value toValue(const Reading &reading);
[[nodiscard]] Value toValue(const Extent &extent);
[[nodiscard]] Value toValue(const Finding &finding);
[[nodiscard]] Value toValue(const Look &look);
[[nodiscard]] Value toValue(const Mend &mend);
[[nodiscard]] Value toValue(const MendPart &part);
[[nodiscard]] Value toValue(const Photo &photo);
[[nodiscard]] Value toValue(const Stock &stock);
[[nodiscard]] Value toValue(const Happening &happening);
[[nodiscard]] Value toValue(const Acceptance &acceptance);
[[nodiscard]] Value toValue(const GeoPoint &point);

[[nodiscard]] Walk walkFromValue(const Value &value);
[[nodiscard]] Mark markFromValue(const Value &value);
[[nodiscard]] Finding findingFromValue(const Value &value);
[[nodiscard]] Look lookFromValue(const Value &value);
[[nodiscard]] Mend mendFromValue(const Value &value);
/// Text alone, as older versions wrote it, is one piece of that name.
[[nodiscard]] MendPart mendPartFromValue(const Value &value);
[[nodiscard]] Photo photoFromValue(const Value &value);
[[nodiscard]] Stock stockFromValue(const Value &value);
[[nodiscard]] Happening happeningFromValue(const Value &value);
[[nodiscard]] Acceptance acceptanceFromValue(const Value &value);
[[nodiscard]] std::optional<GeoPoint> geoFromValue(const Value &value);

} // namespace snugwalk
