// SPDX-License-Identifier: Apache-2.0
// Where the sea begins: how far a place is from salt water, and the world's outline for a map.
#pragma once

#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/result.hpp"
#include "weather/coast_level.hpp"

namespace snugwalk {

enum class CoastDetail {
    Coarse, ///< Natural Earth 1:50 million, 60,000 points: a continent on a screen
    Fine    ///< Natural Earth 1:10 million, 409,000 points
};

/// The world's coastline. Lakes are land, so that fresh water never counts as salt; the Caspian is sea.
class Coast {
public:
    /// `coast.bin`; see core/weather/data/FORMAT.md.
    /// \returns `Corrupt` naming the byte, for anything but a whole file.
    [[nodiscard]] static Result<Coast> fromBytes(std::string_view bytes);

    /// To the nearest point of the coast, whether the place is on land or at sea. `place` must be `isValid`.
    ///
    /// Method:   [KARNEY-2013] geodesic to the nearest point of the nearest segment, found by straight lines
    ///           through the ellipsoid
    /// Source:   [NATURAL-EARTH] 1:10 million
    /// Accuracy: of the drawn coast 20 m; against a finer one from other maps (GSHHG), for places within 30
    /// km of
    ///           it: half of the distances within 1 km, 8 in 10 within 3.5 km, 19 in 20 within 13 km, for
    ///           estuaries and fjords are drawn short. Say "about"; under 1 km it only says "near".
    /// Tests:    tests/unit/weather/tst_coast.cpp, tests/reference/weather/coast_distance.py,
    ///           tests/reference/weather/coast_accuracy.py
    [[nodiscard]] Distance distanceTo(const GeoPoint &place) const;

    /// By the fine coast. `place` must be `isValid`.
    [[nodiscard]] bool isLand(const GeoPoint &place) const;

    /// The land within a box as closed rings cut at its edges, to be filled by the even-odd rule. Longitudes
    /// are those of the box, so that it may reach over 180 degrees: 170 to 190. Make the box a little larger
    /// than the view when the rings are stroked too.
    [[nodiscard]] std::vector<MapRing> landWithin(const GeoBox &box, CoastDetail detail) const;

private:
    Coast(CoastLevel coarse, CoastLevel fine) : m_coarse(std::move(coarse)), m_fine(std::move(fine)) {}

    CoastLevel m_coarse;
    CoastLevel m_fine;
};

} // namespace snugwalk
