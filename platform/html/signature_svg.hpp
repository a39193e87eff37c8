// SPDX-License-Identifier: Apache-2.0
// What a finger drew to sign, as lines.
#pragma once

#include <string>

#include "report/document.hpp"

namespace snugwalk::html {

/// An SVG as wide as its parent, `signatureHeight` of that high. \param spoken for who does not see it
[[nodiscard]] std::string signatureSvg(const Signature &signature, const std::string &spoken);

} // namespace snugwalk::html
