// SPDX-License-Identifier: Apache-2.0
// The table of the world's land: July, December, height, distance to the sea, and the air over the sea.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/geo.hpp"
#include "base/result.hpp"

namespace snugwalk {

class DataBytes;

/// What the table says at one place, between its cells.
struct ClimateCell {
    double julyAtSeaLevel = 0.0;     ///< °C, brought down by `lapseKelvin`
    double decemberAtSeaLevel = 0.0; ///< °C
    double julyRain = 0.0;           ///< mm a month
    double decemberRain = 0.0;       ///< mm a month
    double elevation = 0.0;          ///< m, mean of the land in the cell
    double seaDistance = 0.0;        ///< km
    bool land = false;               ///< the cell holds land; its neighbours at sea have values too
    std::array<std::optional<double>, 12> seaHumidity; ///< %, over the sea within about 600 km
};

/// Fall of temperature with height, K/m: the standard air's [USSA-1976].
inline constexpr double lapseKelvin = 0.0065;

/// `climate.bin`; see core/weather/data/FORMAT.md.
class ClimateTable {
public:
    /// \returns `Corrupt` naming the byte, for anything but a whole table.
    [[nodiscard]] static Result<ClimateTable> fromBytes(std::string_view bytes);

    /// Nothing at sea, further than one cell from land, and beyond the rows of the table (84° N to 60° S).
    [[nodiscard]] std::optional<ClimateCell> at(const GeoPoint &place) const;

private:
    struct Run {
        std::uint16_t first = 0;
        std::uint16_t count = 0;
        std::uint32_t index = 0; ///< of its first cell in each plane
    };
    struct Grid {
        int rows = 0;
        int columns = 0;
        double north = 0.0; ///< degrees
        double cell = 0.0;  ///< degrees
    };
    enum Plane : std::size_t { July, December, JulyRain, DecemberRain, Elevation, SeaDistance, Land };
    struct Corner {
        std::size_t index = 0;
        double weight = 0.0;
    };
    static constexpr std::size_t planes = 7;

    Status readRuns(DataBytes &bytes, std::uint32_t cells);
    [[nodiscard]] std::optional<std::size_t> indexOf(int row, int column) const;
    [[nodiscard]] double value(Plane plane, std::size_t index) const;
    [[nodiscard]] std::optional<double> seaHumidityAt(const GeoPoint &place, std::size_t month) const;
    static Result<Grid> readGrid(DataBytes &bytes);

    Grid m_land;
    Grid m_sea;
    std::size_t m_cells = 0;
    std::vector<std::vector<Run>> m_rows;
    std::string m_planes; ///< plane after plane
    std::string m_humidity;
};

} // namespace snugwalk
