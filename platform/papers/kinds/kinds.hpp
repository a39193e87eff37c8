// SPDX-License-Identifier: Apache-2.0
// One function a kind, each in a file of its own. Errors as `compose`.
#pragma once

#include "papers/paper.hpp"

namespace snugwalk::papers {

[[nodiscard]] Result<Document> walkPaper(Paper paper);

} // namespace snugwalk::papers
