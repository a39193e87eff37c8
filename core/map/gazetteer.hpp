// SPDX-License-Identifier: Apache-2.0
// Named places of the world: which one lies nearest, and which are the largest on a map.
#pragma once

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/result.hpp"
#include "weather/coast_level.hpp"

namespace snugwalk {

/// A town or village.
struct NamedPlace {
    std::string name;    ///< UTF-8, as GeoNames spells it: mostly the local name in Latin letters
    std::string country; ///< ISO 3166-1, two letters
    GeoPoint place;      ///< its middle, to 0.001°
    int size = 0;        ///< 10 log2 of its people; 0: not known
};

/// Where somewhere is, seen from the nearest named place.
struct NearPlace {
    NamedPlace named;
    Distance distance;    ///< from the middle of the named place
    double bearing = 0.0; ///< from there, degrees clockwise from true north, 0 <= bearing < 360
};

/// Chosen so that no place lies within 18 km of a larger one (36 km where under 500 people are known), so
/// that a name is one that people of the district know; suburbs are left out.
class Gazetteer {
public:
    /// `places.bin`; see core/map/data/README-PLACES.md.
    /// \returns `Corrupt` naming the byte, for anything but a whole file.
    [[nodiscard]] static Result<Gazetteer> fromBytes(std::string_view bytes);

    [[nodiscard]] std::size_t count() const { return m_entries.size(); }
    /// \param index below `count()`; from south to north.
    [[nodiscard]] NamedPlace at(std::size_t index) const;

    /// The place whose middle is nearest to `place`, which must be `isValid`. There is one: an empty file is
    /// refused.
    ///
    /// Method:   places in the order of their height along the earth's axis, searched both ways until that
    ///           height alone is further than the nearest found in a straight line; of those within 0.1 % of
    ///           it the nearest by [KARNEY-2013], for chords and geodesics order places alike only so far
    /// Source:   [GEONAMES]
    /// Accuracy: that of the middle: some 100 m as stored, as much as the town is wide as meant
    /// Tests:    tests/reference/map/nearest_place.py, tests/unit/map/tst_gazetteer.cpp
    [[nodiscard]] NearPlace nearest(const GeoPoint &place) const;

    /// The largest within a box, the largest first; `box` may reach over 180 degrees.
    [[nodiscard]] std::vector<NamedPlace> largestWithin(const GeoBox &box, std::size_t atMost) const;

private:
    struct Entry {
        std::int32_t latitude = 0; ///< thousandths of a degree
        std::int32_t longitude = 0;
        std::uint32_t nameAt = 0; ///< in m_names
        std::uint8_t nameSize = 0;
        std::uint8_t size = 0;
        std::uint8_t country = 0;
    };
    struct Solid { ///< metres from the middle of the earth
        double x = 0.0;
        double y = 0.0;
        double z = 0.0;
    };
    [[nodiscard]] static Solid solid(double latitude, double longitude);
    template <typename Visit>
    void outward(const Solid &from, const double &within, Visit visit) const;

    std::vector<Entry> m_entries; ///< by latitude
    std::vector<Solid> m_solids;  ///< as m_entries, so by z
    std::string m_names;
    std::string m_countries; ///< two letters each
};

} // namespace snugwalk
