// SPDX-License-Identifier: Apache-2.0
// A document as one HTML page with everything in it.
#pragma once

#include <string>

#include "html/block_html.hpp"

namespace snugwalk::html {

/// Self-contained: styles, script, drawings and photos are in the page, and its policy forbids it to fetch
/// anything. Without script or on paper pairs stand side by side. The footer stands at the foot of each
/// printed page where the browser can print there, else at the end.
/// Tests: tests/journey/report_page.py (Chromium), tests/unit/html
[[nodiscard]] std::string documentPage(const Document &document, const PageParts &parts);

} // namespace snugwalk::html
