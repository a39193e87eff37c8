// SPDX-License-Identifier: Apache-2.0
// Words of a plot: the key above it, and labels where they hide nothing.
#pragma once

#include <set>

#include "report/plot/plot_sheet.hpp"

namespace snugwalk {

/// Broken between words where they would be wider than `width`.
[[nodiscard]] std::vector<std::string> wrappedWords(const std::string &text, double width,
                                                    const WordWidth &wordWidth, bool bold = false);

/// Bars by their fill where there are several, shapes, and labels of `inKey`; none where nothing asks for it.
/// \returns how far down it reaches, from `y`
[[nodiscard]] double layKey(PlotSheet &sheet, const Plot &plot, const std::set<std::string> &inKey,
                            const SheetSize &size, const WordWidth &wordWidth, double y);

/// Puts labels on a sheet whose lines and shapes are drawn.
class LabelPlacer {
public:
    LabelPlacer(PlotSheet &sheet, const WordWidth &wordWidth);

    /// Above or below a level line, where it covers least. False where each place lies over words or shapes.
    [[nodiscard]] bool alongLevel(const std::string &label, double y, double left, double right);
    /// Beside a spot.
    bool near(const std::string &label, SheetSpot spot);

private:
    struct Box {
        double left, top, right, bottom;
    };
    [[nodiscard]] Box boxOf(const SheetWords &words) const;
    void hinder(const SheetInk &ink);
    bool put(const std::string &label, const std::vector<SheetSpot> &corners);

    PlotSheet &m_sheet;
    const WordWidth &m_width;
    std::vector<Box> m_inks;   ///< what labels should hide little of
    std::vector<Box> m_shapes; ///< what they may not hide
};

} // namespace snugwalk
