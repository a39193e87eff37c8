// SPDX-License-Identifier: Apache-2.0
// One function a kind, each in a file of its own. Errors as `compose`.
#pragma once

#include "papers/paper.hpp"

namespace snugwalk::papers {

[[nodiscard]] Result<Document> walkPaper(Paper paper);
[[nodiscard]] Result<Document> thenAndNowPaper(Paper paper);
[[nodiscard]] Result<Document> roadSlipPaper(Paper paper);
[[nodiscard]] Result<Document> workOrderPaper(Paper paper);
[[nodiscard]] Result<Document> workDonePaper(Paper paper);
[[nodiscard]] Result<Document> surveyPaper(Paper paper);
[[nodiscard]] Result<Document> damagePaper(Paper paper);
[[nodiscard]] Result<Document> outAndBackPaper(Paper paper);
[[nodiscard]] Result<Document> sealsAndDampPaper(Paper paper);
[[nodiscard]] Result<Document> weightsPaper(Paper paper);
[[nodiscard]] Result<Document> datesPaper(Paper paper);
[[nodiscard]] Result<Document> shoppingPaper(Paper paper);
[[nodiscard]] Result<Document> layingUpPaper(Paper paper);

} // namespace snugwalk::papers
