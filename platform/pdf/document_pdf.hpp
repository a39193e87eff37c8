// SPDX-License-Identifier: Apache-2.0
// A document on sheets of paper: as a PDF file, or as pictures of its pages.
#pragma once

#include <string>
#include <vector>

#include <QImage>

#include "html/block_html.hpp"
#include "pdf/sheet.hpp"

namespace snugwalk::pdf {

/// Letters embedded, photos as JPEG, drawings as lines; the footer and the page's number on each page, the
/// title on each but the first. Wants the app's fonts loaded and a QGuiApplication; any thread.
/// \returns `Io` when the file cannot be made.
/// Tests: tests/journey/report_sheets.py (poppler)
[[nodiscard]] Result<std::string> documentPdf(const Document &document, const html::PageParts &parts,
                                              SheetSize size);

struct Pictures {
    std::vector<QImage> pages; ///< the first ones
    int pageCount = 0;
};
/// \param width of a page, pixels  \param most pages to draw
[[nodiscard]] Pictures documentPictures(const Document &document, const html::PageParts &parts,
                                        SheetSize size, int width, int most);

} // namespace snugwalk::pdf
