// SPDX-License-Identifier: Apache-2.0
// A table of names and factors.
#include "weather/records/measured_column.hpp"

#include <algorithm>
#include <array>
#include <span>

#include "base/text.hpp"

namespace snugwalk {
namespace {

struct Kind {
    Measured kind;
    std::array<std::string_view, 7> names;
    std::string_view unit; // when the name tells none
    double low, high;      // what can be true, in that unit
    std::string_view limits;
};
constexpr std::array kinds = {
    Kind{Measured::Low,
         {"tmin", "temp_min", "low", "min_temp", "t_min", "temperature_min", "min_temperature"},
         "c",
         -90,
         60,
         "-90 to 60 °C"},
    Kind{Measured::High,
         {"tmax", "temp_max", "high", "max_temp", "t_max", "temperature_max", "max_temperature"},
         "c",
         -90,
         60,
         "-90 to 60 °C"},
    Kind{Measured::Mean,
         {"temperature", "temp", "t", "tavg", "tmean", "dry_bulb", "air_temperature"},
         "c",
         -90,
         60,
         "-90 to 60 °C"},
    Kind{Measured::Humidity, {"humidity", "rh", "relative_humidity", "hum"}, "pct", 0.5, 110, "0.5 to 110 %"},
    Kind{Measured::Rain,
         {"rain", "precipitation", "precip", "prcp", "p", "rainfall"},
         "mm",
         0,
         5000,
         "0 to 5,000 mm"},
    Kind{Measured::Radiation,
         {"radiation", "solar", "solar_radiation", "ghi", "rs"},
         "mj",
         0,
         125,
         "0 to 125 MJ/m² a day, or 0 to 1,446 W/m² in a column named radiation_w"},
};

struct UnitName {
    std::string_view suffix;
    std::string_view unit;
    double offset, factor; // ours = (theirs + offset) * factor
};
constexpr std::array unitNames = {
    UnitName{"c", "c", 0.0, 1.0},
    UnitName{"degc", "c", 0.0, 1.0},
    UnitName{"celsius", "c", 0.0, 1.0},
    UnitName{"f", "c", -32.0, 5.0 / 9.0},
    UnitName{"degf", "c", -32.0, 5.0 / 9.0},
    UnitName{"fahrenheit", "c", -32.0, 5.0 / 9.0},
    UnitName{"k", "c", -273.15, 1.0},
    UnitName{"kelvin", "c", -273.15, 1.0},
    UnitName{"pct", "pct", 0.0, 1.0},
    UnitName{"percent", "pct", 0.0, 1.0},
    UnitName{"mm", "mm", 0.0, 1.0},
    UnitName{"in", "mm", 0.0, 25.4},
    UnitName{"inch", "mm", 0.0, 25.4},
    UnitName{"cm", "mm", 0.0, 10.0},
    UnitName{"mj", "mj", 0.0, 1.0},
    UnitName{"mj_m2", "mj", 0.0, 1.0},
    UnitName{"w", "mj", 0.0, 0.0864},
    UnitName{"w_m2", "mj", 0.0, 0.0864},
    UnitName{"wm2", "mj", 0.0, 0.0864},
};

const Kind &kindOf(Measured kind) { return kinds.at(static_cast<std::size_t>(kind)); }

const UnitName *unitOf(std::string_view suffix, std::string_view unit)
{
    for (const UnitName &name : unitNames) {
        if (name.suffix == suffix && name.unit == unit)
            return &name;
    }
    return nullptr;
}

} // namespace

std::string plainColumnName(std::string_view text)
{
    std::string name;
    for (const char c : lowerAscii(text)) {
        const bool plain = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
        if (plain)
            name += c;
        else if (c == '%')
            name += name.ends_with('_') ? "pct" : "_pct";
        else if (!name.empty() && name.back() != '_')
            name += '_';
    }
    while (name.ends_with('_'))
        name.pop_back();
    return name;
}

std::optional<std::size_t> findPlainColumn(std::span<const std::string> header,
                                           std::span<const std::string_view> names)
{
    for (std::size_t i = 0; i < header.size(); ++i) {
        if (std::find(names.begin(), names.end(), plainColumnName(header[i])) != names.end())
            return i;
    }
    return std::nullopt;
}

bool MeasuredColumn::find(std::span<const std::string> header)
{
    const Kind &known = kindOf(m_kind);
    for (std::size_t i = 0; i < header.size() && !m_column; ++i) {
        const std::string column = plainColumnName(header[i]);
        for (const std::string_view name : known.names) {
            if (name.empty() || !column.starts_with(name))
                continue;
            const std::string suffix = column.size() > name.size() ? column.substr(name.size() + 1) : "";
            if (column.size() == name.size()) {
                m_column = i;
                m_unit = known.unit;
            } else if (column[name.size()] == '_' && unitOf(suffix, known.unit) != nullptr) {
                m_column = i;
                m_unit = suffix;
            }
        }
    }
    return m_column.has_value();
}

Result<std::optional<double>> MeasuredColumn::read(const CsvRow &row) const
{
    if (!m_column || trim(row.cells[*m_column]).empty())
        return std::optional<double>();
    const Result<double> typed = row.number(*m_column);
    if (!typed)
        return typed.error();
    const Kind &kind = kindOf(m_kind);
    const UnitName *unit = unitOf(m_unit, kind.unit);
    const double value = (*typed + unit->offset) * unit->factor;
    if (value >= kind.low && value <= kind.high)
        return std::optional<double>(value);
    std::string act = "give " + std::string(kind.limits);
    if (kind.unit == "c")
        act += "; a column in Fahrenheit is named " + std::string(kind.names[0]) + "_f, one in kelvin " +
               std::string(kind.names[0]) + "_k";
    return Error{Errc::OutOfRange, "no weather has that: " + std::string(trim(row.cells[*m_column])),
                 row.where(*m_column), act};
}

} // namespace snugwalk
