// SPDX-License-Identifier: Apache-2.0
// Tongue weight with a small scale under a beam.
#pragma once

#include "base/estimate.hpp"
#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// The beam rests on a fixed pivot at one end and on the scale at the other; the tongue stands between.
struct LeverScale {
    Mass reading;
    Mass tare;       ///< what the scale shows under the bare beam
    Length toTongue; ///< pivot to tongue
    Length toScale;  ///< pivot to scale
    bool fifthWheel = false;
};

/// Most that is weighed like this: 140 kg, about 300 lb. Common practice.
inline constexpr Mass mostByLever = Mass::fromSi(140.0);

/// T = (reading - tare) · toScale / toTongue.
///
/// \returns `Unsupported` naming "kind" for a fifth wheel; `OutOfRange` naming "reading" when it comes out
///          over 140 kg: chock the rig, take it down on the jack and weigh it on a platform; `OutOfRange` or
///          `InvalidInput` naming "reading", "tare", "to-tongue" or "to-scale".
/// Range:    2 % of the reading and 6 mm of each length (common practice), in quadrature
/// Limits:   rig chocked, jack kept an inch below as a catch, feet clear, the beam not split
/// Tests:    tests/published/bench/weights/tst_lever_scale.cpp
[[nodiscard]] Result<Estimate> tongueByLever(const LeverScale &lever);

} // namespace snugwalk
