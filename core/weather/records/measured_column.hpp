// SPDX-License-Identifier: Apache-2.0
// Columns of weather tables: their names, their units told by the name's end, and what can be true.
#pragma once

#include <optional>
#include <span>
#include <string>
#include <string_view>

#include "base/csv.hpp"

namespace snugwalk {

enum class Measured { Low, High, Mean, Humidity, Rain, Radiation };

/// A column's name in lower case, units and blanks joined by underscores: "Tmin (°F)" is `tmin_f`.
[[nodiscard]] std::string plainColumnName(std::string_view name);

/// Where the first column stands whose plain name is one of `names`.
[[nodiscard]] std::optional<std::size_t> findPlainColumn(std::span<const std::string> header,
                                                         std::span<const std::string_view> names);

/// Finds the column of a kind in a header and reads it in our units: °C, %, mm, MJ/m² a day. `tmin_f` is
/// Fahrenheit, `rain_in` inches, `radiation_w` a mean in W/m²; `_c`, `_k`, `_mm`, `_pct`, `_mj` say the rest.
class MeasuredColumn {
public:
    explicit MeasuredColumn(Measured kind) : m_kind(kind) {}

    /// \returns false when the header has none.
    bool find(std::span<const std::string> header);
    [[nodiscard]] std::optional<std::size_t> column() const { return m_column; }
    /// Nothing for an empty cell or an absent column. `InvalidInput` for what is no number, `OutOfRange` for
    /// what no weather has, with line, column and how to name another unit.
    [[nodiscard]] Result<std::optional<double>> read(const CsvRow &row) const;

private:
    Measured m_kind;
    std::optional<std::size_t> m_column;
    std::string m_unit;
};

} // namespace snugwalk
