// SPDX-License-Identifier: Apache-2.0
// What the logbook already knows of a bench question, for inputs that nobody typed.
#pragma once

#include "base/time.hpp"
#include "bench/ask/typed.hpp"
#include "due/rig_history.hpp"
#include "round/world.hpp"

namespace snugwalk {

/// The air of the seven days up to `today` where the rig stood.
struct WeekAir {
    Temperature mean;
    double humidity = 0.0;       ///< fraction
    double humidityWithin = 0.0; ///< fraction, either way: 0.05 where all seven days were recorded
};

/// Recorded days count where they have a humidity and were taken within 50 km, the place's normals for the
/// others. Nothing where the rig's place, or the climate there, is not known.
/// \param world null where no table is at hand
/// Accuracy: of normals `normalError`; a recorded day ±5 points, common practice, no source
[[nodiscard]] std::optional<WeekAir> weekAir(const RigHistory &history, const World *world, CivilDate today);

/// `typed` with what the rig's plates say (placard, sidewall, ratings, studs, torque), and for wood's
/// moisture the air of the week. What was typed stays, and so does a text that was emptied on purpose; an air
/// that was typed leaves the week's out. A plate is written to a millionth of itself.
[[nodiscard]] BenchTexts withTextsOfRig(const BenchQuestion &question, BenchTexts typed,
                                        const RigHistory &history, const World *world, UnitSystem units,
                                        CivilDate today);

} // namespace snugwalk
