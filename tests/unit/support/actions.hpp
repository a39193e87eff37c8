// SPDX-License-Identifier: Apache-2.0
// What a person does on a walk, short to write in a test.
#pragma once

#include <string>

#include "logbook/acts.hpp"
#include "support/book.hpp"
#include "support/real_catalogue.hpp"
#include "support/rigs.hpp"

namespace snugwalk::test {

[[nodiscard]] MarkDraft passOf(const std::string &point, const std::string &note = "");
/// Attention with a new finding of the point's first defect.
[[nodiscard]] MarkDraft attentionOn(const std::string &point, int grade, const std::string &note = "");
/// Attention that looks at a known finding again; grade 0 says that it is gone, and passes.
[[nodiscard]] MarkDraft lookAgain(const std::string &point, const Id &finding, int grade);
[[nodiscard]] MarkDraft couldNotLook(const std::string &point, const std::string &reason = "wet_or_icy");

/// A saved tandem and a started walk; the clock goes on by a minute before each act.
struct Walker {
    explicit Walker(const std::string &seed = "test", const std::string &kind = "before_road");

    [[nodiscard]] Result<MarkReceipt> mark(const MarkDraft &draft);
    [[nodiscard]] Result<Receipt> undo();
    [[nodiscard]] Status finish();
    /// Finishes the walk and starts the next.
    void nextWalk(const std::string &kind = "before_road");
    [[nodiscard]] Logbook &book() { return home.book(); }
    [[nodiscard]] MarkState stateOf(const std::string &point);

    TestBook home;
    Doer doer{"W. Tester", std::nullopt, std::nullopt};
    Rig rig;
    Walk walk;
};

} // namespace snugwalk::test
