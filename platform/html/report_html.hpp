// SPDX-License-Identifier: Apache-2.0
// A report as one HTML page with everything in it.
#pragma once

#include <functional>
#include <string>

#include "catalogue/texts.hpp"
#include "report/report.hpp"

namespace snugwalk::html {

/// Gives the JPEG bytes of a photo's thumbnail, or nothing when it is not on this device.
using Thumbnails = std::function<std::optional<std::string>(const Photo &)>;

struct PageOptions {
    UnitSystem units = UnitSystem::Si;
    std::string language = "en";
};

/// Self-contained: styles, drawing and photos are in the page, nothing is fetched.
[[nodiscard]] std::string reportPage(const Report &report, const Texts &texts, const Thumbnails &thumbnails,
                                     const PageOptions &options);

} // namespace snugwalk::html
