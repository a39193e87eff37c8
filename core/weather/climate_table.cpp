// SPDX-License-Identifier: Apache-2.0
// Decodes climate.bin and interpolates between the cells that hold values.
#include "weather/climate_table.hpp"

#include <algorithm>
#include <cmath>

#include "weather/data_bytes.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view fileName = "climate.bin";
constexpr std::string_view magic = "SNUGCLI1";
constexpr unsigned missingHumidity = 255;

unsigned byteAt(const std::string &bytes, std::size_t index)
{
    return static_cast<unsigned char>(bytes[index]);
}

/// The four cells round a place and how much each counts.
struct Around {
    int row = 0;
    int column = 0;
    double down = 0.0;
    double right = 0.0;
    [[nodiscard]] double weight(int i, int j) const
    {
        return (i != 0 ? down : 1.0 - down) * (j != 0 ? right : 1.0 - right);
    }
};

Around around(double north, double cell, const GeoPoint &place)
{
    const double y = (north - place.latitude) / cell - 0.5;
    const double x = (place.longitude + 180.0) / cell - 0.5;
    const double row = std::floor(y);
    const double column = std::floor(x);
    return {static_cast<int>(row), static_cast<int>(column), y - row, x - column};
}

} // namespace

Result<ClimateTable::Grid> ClimateTable::readGrid(DataBytes &bytes)
{
    Grid grid;
    grid.rows = bytes.u16();
    grid.columns = bytes.u16();
    grid.north = bytes.i16();
    const int minutes = bytes.u16();
    grid.cell = minutes / 60.0;
    if (!bytes.whole() || grid.rows < 1 || grid.north > 90.0 || minutes < 1 ||
        grid.columns * minutes != 360 * 60 || grid.north - grid.rows * grid.cell < -90.0)
        return bytes.fault(fileName, "the grid described there does not fit on the earth");
    return grid;
}

Status ClimateTable::readRuns(DataBytes &bytes, std::uint32_t cells)
{
    std::uint32_t counted = 0;
    for (std::vector<Run> &row : m_rows) {
        int next = 0;
        for (int left = bytes.u16(); left > 0 && bytes.whole(); --left) {
            const Run run{bytes.u16(), bytes.u16(), counted};
            if (!bytes.whole() || run.count == 0 || run.first < next ||
                run.first + run.count > m_land.columns)
                return bytes.fault(fileName, "a row's runs of cells overlap or leave it");
            next = run.first + run.count;
            counted += run.count;
            row.push_back(run);
        }
    }
    if (!bytes.whole() || counted != cells)
        return bytes.fault(fileName, "the runs hold another number of cells than the head says");
    return done();
}

Result<ClimateTable> ClimateTable::fromBytes(std::string_view content)
{
    DataBytes bytes(content);
    if (bytes.take(magic.size()) != magic)
        return bytes.fault(fileName, "this is no climate table of this version");
    ClimateTable table;
    const auto land = readGrid(bytes);
    if (!land)
        return land.error();
    const std::uint32_t cells = bytes.u32();
    const auto sea = readGrid(bytes);
    if (!sea)
        return sea.error();
    table.m_land = *land;
    table.m_sea = *sea;
    table.m_rows.resize(static_cast<std::size_t>(land->rows));
    SNUG_TRY(table.readRuns(bytes, cells));
    table.m_cells = cells;
    table.m_planes = bytes.take(planes * table.m_cells);
    table.m_humidity =
        bytes.take(12U * static_cast<std::size_t>(sea->rows) * static_cast<std::size_t>(sea->columns));
    if (!bytes.whole() || bytes.left() != 0)
        return bytes.fault(fileName, "more bytes follow than the table holds");
    return table;
}

std::optional<std::size_t> ClimateTable::indexOf(int row, int column) const
{
    if (row < 0 || row >= m_land.rows)
        return std::nullopt;
    column = (column % m_land.columns + m_land.columns) % m_land.columns;
    const std::vector<Run> &runs = m_rows[static_cast<std::size_t>(row)];
    const auto after = std::upper_bound(runs.begin(), runs.end(), column,
                                        [](int c, const Run &run) { return c < run.first; });
    if (after == runs.begin())
        return std::nullopt;
    const Run &run = *std::prev(after);
    if (column >= run.first + run.count)
        return std::nullopt;
    return run.index + static_cast<std::size_t>(column - run.first);
}

double ClimateTable::value(Plane plane, std::size_t index) const
{
    const double code = byteAt(m_planes, plane * m_cells + index);
    switch (plane) {
    case July:
    case December:
        return code * 0.5 - 70.0 + lapseKelvin * value(Elevation, index);
    case JulyRain:
    case DecemberRain:
        return code * code / 64.0;
    case Elevation:
        return code * 30.0 - 450.0;
    case SeaDistance:
    case Land:
        break;
    }
    return code;
}

std::optional<double> ClimateTable::seaHumidityAt(const GeoPoint &place, std::size_t month) const
{
    const Around cells = around(m_sea.north, m_sea.cell, place);
    double weight = 0.0;
    double sum = 0.0;
    for (const int i : {0, 1}) {
        for (const int j : {0, 1}) {
            const int row = cells.row + i;
            const int column = (cells.column + j + m_sea.columns) % m_sea.columns;
            if (row < 0 || row >= m_sea.rows)
                continue;
            const std::size_t line =
                month * static_cast<std::size_t>(m_sea.rows) + static_cast<std::size_t>(row);
            const unsigned code = byteAt(m_humidity, line * static_cast<std::size_t>(m_sea.columns) +
                                                         static_cast<std::size_t>(column));
            if (code == missingHumidity)
                continue;
            weight += cells.weight(i, j);
            sum += cells.weight(i, j) * code;
        }
    }
    if (!(weight > 0.0))
        return std::nullopt;
    return std::min(100.0, sum / weight);
}

std::optional<ClimateCell> ClimateTable::at(const GeoPoint &place) const
{
    if (!isValid(place))
        return std::nullopt;
    const auto own = indexOf(static_cast<int>(std::floor((m_land.north - place.latitude) / m_land.cell)),
                             static_cast<int>(std::floor((place.longitude + 180.0) / m_land.cell)));
    if (!own)
        return std::nullopt;
    const Around cells = around(m_land.north, m_land.cell, place);
    std::vector<Corner> corners;
    double weight = 0.0;
    for (const int i : {0, 1}) {
        for (const int j : {0, 1}) {
            if (const auto index = indexOf(cells.row + i, cells.column + j)) {
                corners.push_back({*index, cells.weight(i, j)});
                weight += corners.back().weight;
            }
        }
    }
    const auto between = [&](Plane plane) {
        double sum = 0.0;
        for (const Corner &corner : corners)
            sum += corner.weight / weight * value(plane, corner.index);
        return sum;
    };
    ClimateCell cell;
    cell.julyAtSeaLevel = between(July);
    cell.decemberAtSeaLevel = between(December);
    cell.julyRain = between(JulyRain);
    cell.decemberRain = between(DecemberRain);
    cell.elevation = between(Elevation);
    cell.seaDistance = 10.0 * std::expm1(between(SeaDistance) / 32.0);
    cell.land = byteAt(m_planes, Land * m_cells + *own) == 1;
    for (std::size_t month = 0; month < 12; ++month)
        cell.seaHumidity[month] = seaHumidityAt(place, month);
    return cell;
}

} // namespace snugwalk
