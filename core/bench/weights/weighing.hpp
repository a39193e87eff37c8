// SPDX-License-Identifier: Apache-2.0
// Tongue weight and gross weight from scale tickets, with what the scale leaves open.
#pragma once

#include <optional>

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// The tow vehicle alone.
struct SoloTicket {
    Mass front;
    Mass rear;
};

/// Coupled: both axles of the tow vehicle and the axle group of the trailer.
struct CoupledTicket {
    Mass front;
    Mass rear;
    Mass trailer;
};

/// The share of the trailer's weight that belongs on the hitch.
struct TongueBand {
    double least = 0.0; ///< under it a hold
    double low = 0.0;
    double high = 0.0;
};
/// Common practice: 10 to 15 %, 15 to 25 %, 4 to 7 %; the low end of the hold list 8, 15 and 4 %.
inline constexpr TongueBand travelTrailerBand = {0.08, 0.10, 0.15};
inline constexpr TongueBand fifthWheelBand = {0.15, 0.15, 0.25};
inline constexpr TongueBand lightTrailerBand = {0.04, 0.04, 0.07};

/// Same fuel, people and load on every ticket, on level ground.
struct Weighing {
    SoloTicket solo;
    CoupledTicket coupled;                  ///< spring bars off
    std::optional<CoupledTicket> bars = {}; ///< spring bars on
    std::optional<Mass> trailerAlone = {};  ///< the whole trailer off the hitch
    Mass division = Mass::fromSi(20.0);     ///< step of the scale
    TongueBand band = travelTrailerBand;
};

struct Weighed {
    Estimate tongue;                      ///< kg; of a fifth wheel the pin weight
    Estimate share;                       ///< of the trailer's gross weight
    Estimate gross;                       ///< kg, of the trailer
    Estimate frontUnloading;              ///< kg off the steering axle, bars off
    std::optional<Estimate> restoration;  ///< share of that which the bars put back
    std::optional<Estimate> movedToAxles; ///< kg that the bars move to the trailer's axles
    std::optional<Estimate> mismatch;     ///< kg, bars on minus bars off, or trailer alone minus gross
};

/// T = (F1 + R1) - (F0 + R0), W = T + X1, share T / W; restoration (F2 - F1) / (F0 - F1), moved X2 - X1.
///
/// \returns warnings on `tongue`: `tongue_under_least`, `tongue_under_band`, `tongue_over_band`,
///          `tongue_over_40`, `tickets_do_not_add_up` (a mismatch over three standard uncertainties, a
///          steering axle that gains, or a tongue that outweighs the trailer's axles), `bars_over_full` (over
///          100 %), `bars_unknown` without a ticket with bars.
///          `OutOfRange` naming the ticket for a weight outside 0 to 50 t, or a division outside 0.1 to 500
///          kg; `InvalidInput` naming "coupled" when the tongue comes out below 0 by more than the scale's
///          doubt.
/// Range:    each reading is known to d/√12 (rectangular); sums in quadrature, k = 2
/// Source:   [JCGM-100] 4.3.7 and 5.1.2; bands and bars common practice
/// Limits:   coupler height slope left out (under 2 %)
/// Tests:    tests/published/bench/weights/tst_weighing.cpp
[[nodiscard]] Result<Weighed> weigh(const Weighing &tickets);

/// Doubt (k = 2) of a sum of `readings` readings of a scale with steps of `division`.
[[nodiscard]] Mass scaleDoubt(Mass division, int readings);

} // namespace snugwalk
