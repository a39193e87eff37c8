// SPDX-License-Identifier: Apache-2.0
// Which lamps and reflectors a trailer of that size should have, and on which circuit they light.
#pragma once

#include <string_view>
#include <vector>

#include "base/quantity.hpp"
#include "base/result.hpp"

namespace snugwalk {

/// Pins of the plug; `None` for what only shines back.
enum class LampCircuit { Running, Left, Right, Stop, None };
[[nodiscard]] std::string_view slug(LampCircuit circuit);

struct LampRow {
    std::string_view lamp;  ///< slug: "tail", "stop", "side_marker_front" ...
    int count = 0;          ///< at least
    std::string_view color; ///< "red", "amber", "white", "red_or_amber"
    LampCircuit circuit = LampCircuit::Running;
};

struct TrailerSize {
    Length width;  ///< over all
    Length length; ///< over all, with the tongue
    Mass rating;   ///< gross weight rating; nothing known: zero
};

struct LampList {
    std::vector<LampRow> rows;
    bool tape = false; ///< red and white retroreflective tape is asked of it; dwellings may be excepted
    /// Counts by function: a red lamp may be stop and turn in one, and then answers to both.
    [[nodiscard]] int onCircuit(LampCircuit circuit) const;
    [[nodiscard]] int lamps() const;      ///< that light
    [[nodiscard]] int reflectors() const; ///< that do not
};

/// Every trailer: 2 tail, 2 stop, 2 turn, 1 plate, 2 front and 2 rear side markers, 2 rear, 2 front side
/// and 2 rear side reflectors; over 9.144 m (30 ft) 2 intermediate markers and reflectors; from 2.032 m
/// (80 in) of width 2 front and 2 rear clearance and 3 rear identification lamps, tape above 4,536 kg.
///
/// \returns `OutOfRange` naming width (0.5 to 3 m), length (1 to 25 m) or rating (0 to 20,000 kg).
/// Source:   [49-CFR-393.11] as the lighting chart of a state restates it, tape as the rule's text; local
///           law and other countries differ
/// Tests:    tests/published/bench/electric/tst_lamps.cpp
[[nodiscard]] Result<LampList> lampsFor(const TrailerSize &trailer);

} // namespace snugwalk
