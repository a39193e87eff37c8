// SPDX-License-Identifier: Apache-2.0
// Sizes by ISO 216 and ANSI/ASME Y14.1.
#include "pdf/sheet.hpp"

#include <cmath>

namespace snugwalk::pdf {

std::optional<SheetSize> parseSheetSize(std::string_view slug)
{
    if (slug == "a4")
        return SheetSize::A4;
    if (slug == "letter")
        return SheetSize::Letter;
    return std::nullopt;
}

QFont letters(double size, bool bold)
{
    QFont font(QStringLiteral("Atkinson Hyperlegible Next"));
    font.setPixelSize(static_cast<int>(std::lround(size * point)));
    font.setBold(bold);
    font.setHintingPreference(QFont::PreferNoHinting);
    return font;
}

Sheet sheetOf(SheetSize size)
{
    Sheet sheet;
    sheet.size = size == SheetSize::A4 ? QSizeF(210 * millimetre, 297 * millimetre)
                                       : QSizeF(8.5 * unitsPerInch, 11.0 * unitsPerInch);
    return sheet;
}

} // namespace snugwalk::pdf
