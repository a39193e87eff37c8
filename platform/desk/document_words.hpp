// SPDX-License-Identifier: Apache-2.0
// A document as plain lines, for who does not see its pages.
#pragma once

#include <string>

#include "report/document.hpp"

namespace snugwalk {

/// In reading order, a line a row or sentence; pictures by their words.
[[nodiscard]] std::string documentWords(const Document &document);

} // namespace snugwalk
