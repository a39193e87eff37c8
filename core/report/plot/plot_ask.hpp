// SPDX-License-Identifier: Apache-2.0
// A plot asked for by its kind and by what it is about.
#pragma once

#include "report/plot/plots.hpp"

namespace snugwalk {

struct PlotAsk {
    PlotKind kind = PlotKind::Weathering;
    std::string
        point;  ///< of weathering, concern and readings; empty: a roof's seal, the rig's worst, the most read
    Id finding; ///< of concern, instead of a point
    int months = 0; ///< of weathering and shake: the last so many; 0 for all
};

/// The point with the most readings; empty where there is none.
[[nodiscard]] std::string mostReadPoint(const RigHistory &history);

/// One plot; of cost one a currency, of readings one a reading and place, those with a limit first. Where
/// there is nothing to draw, one plot that tells what brings it.
/// \param history with its weathering, as `standingOf` takes it
[[nodiscard]] std::vector<Plot> plotsFor(const PlotAsk &ask, const Catalogue &catalogue,
                                         const RigHistory &history, LocalTime now, const PlotVoice &voice);

} // namespace snugwalk
