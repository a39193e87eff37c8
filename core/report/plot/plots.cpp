// SPDX-License-Identifier: Apache-2.0
// Which plots there are, and their numbers as tables.
#include "report/plot/plots.hpp"

namespace snugwalk {

std::string_view slug(PlotKind kind)
{
    switch (kind) {
    case PlotKind::Weathering:
        return "weathering";
    case PlotKind::Shake:
        return "shake";
    case PlotKind::Cost:
        return "cost";
    case PlotKind::Concern:
        return "concern";
    case PlotKind::Reading:
        return "reading";
    }
    return "weathering";
}

const std::vector<PlotKind> &allPlotKinds()
{
    static const std::vector<PlotKind> kinds = {PlotKind::Weathering, PlotKind::Shake, PlotKind::Cost,
                                                PlotKind::Concern, PlotKind::Reading};
    return kinds;
}

std::optional<PlotKind> parsePlotKind(std::string_view text)
{
    for (const PlotKind kind : allPlotKinds()) {
        if (slug(kind) == text)
            return kind;
    }
    return std::nullopt;
}

std::string plotTitle(PlotKind kind, const Texts &texts)
{
    return texts.phrase("plot_kind_" + std::string(slug(kind)));
}

CsvTable plotTable(const Plot &plot)
{
    CsvTable table{plot.dataHead, {}};
    for (const PlotRow &row : plot.rows)
        table.rows.push_back(row.data);
    return table;
}

std::string rowWords(const Plot &plot, const PlotRow &row)
{
    std::string out;
    for (std::size_t i = 0; i < row.cells.size() && i < plot.head.size(); ++i) {
        if (row.cells[i].empty())
            continue;
        out += i == 0 ? row.cells[i] + ": " : plot.head[i] + " " + row.cells[i] + ", ";
    }
    if (out.ends_with(", "))
        out.resize(out.size() - 2);
    return out;
}

} // namespace snugwalk
