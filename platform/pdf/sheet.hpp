// SPDX-License-Identifier: Apache-2.0
// The sheet of paper, in tenths of a point: fine enough for whole numbers, and fonts take those alone.
#pragma once

#include <optional>
#include <string_view>

#include <QColor>
#include <QFont>
#include <QSizeF>

namespace snugwalk::pdf {

enum class SheetSize { A4, Letter };
/// a4 or letter.
[[nodiscard]] std::optional<SheetSize> parseSheetSize(std::string_view slug);

inline constexpr int unitsPerInch = 720;
inline constexpr double millimetre = unitsPerInch / 25.4;
inline constexpr double point = unitsPerInch / 72.0;

inline const QColor ink{0x1B, 0x1F, 0x23};
inline const QColor quietInk{0x56, 0x5B, 0x60};
inline const QColor hairInk{0xC8, 0xCC, 0xD0};
inline const QColor cautionEdge{0xE6, 0x9F, 0x00};
inline const QColor cautionPaper{0xFF, 0xF8, 0xD2};

/// The app's own letters. \param size in points
[[nodiscard]] QFont letters(double size, bool bold = false);
inline constexpr double bodyPoints = 10.0;
inline constexpr double smallPoints = 8.5;

/// Where words and pictures may stand; the foot lies below.
struct Sheet {
    QSizeF size;
    double left = 17 * millimetre;
    double top = 16 * millimetre;
    double foot = 25 * millimetre; ///< of the sheet's lower edge
    [[nodiscard]] double width() const { return size.width() - 2 * left; }
    [[nodiscard]] double height() const { return size.height() - top - foot; }
};
[[nodiscard]] Sheet sheetOf(SheetSize size);

} // namespace snugwalk::pdf
