// SPDX-License-Identifier: Apache-2.0
// The parts of the report's page.
#pragma once

#include "html/report_html.hpp"

namespace snugwalk::html {

struct PageContext {
    const Report &report;
    const Texts &texts;
    const Thumbnails &thumbnails;
    const PageOptions &options;
};

[[nodiscard]] std::string stateSection(const PageContext &c);
[[nodiscard]] std::string findingsSection(const PageContext &c);
[[nodiscard]] std::string changesSection(const PageContext &c);
[[nodiscard]] std::string dueSection(const PageContext &c);
[[nodiscard]] std::string walkSection(const PageContext &c);

} // namespace snugwalk::html
