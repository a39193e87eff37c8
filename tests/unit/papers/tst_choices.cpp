// SPDX-License-Identifier: Apache-2.0
// What a report is told to be about, how to get at the rig, and who signed.
#include <doctest/doctest.h>

#include <algorithm>

#include "paper_book.hpp"
#include "papers/choices.hpp"

using namespace snugwalk;
using namespace snugwalk::papers;
using namespace snugwalk::test;

namespace {

const PaperBook &theBook()
{
    static const PaperBook book;
    return book;
}

PaperChoices choices(PaperKind kind)
{
    return choicesFor(kind, theBook().standing.history, theBook().standing.state);
}

bool holds(const std::string &text, const std::string &words)
{
    return text.find(words) != std::string::npos;
}

std::string words(PaperKind kind, const PaperOptions &options)
{
    return wordsOf(theBook().compose(kind, options), realTexts());
}

} // namespace

TEST_CASE("everything offered for a kind is taken by it")
{
    for (const PaperKind kind : allPaperKinds()) {
        CAPTURE(slug(kind));
        const PaperChoices offered = choices(kind);
        for (const Id &walk : offered.walks) {
            PaperOptions options;
            options.walk = walk;
            CHECK(papers::compose(kind, theBook().source(), options));
        }
        for (const Id &finding : offered.findings) {
            PaperOptions options;
            options.findings = {finding};
            CHECK(papers::compose(kind, theBook().source(), options));
        }
    }
}

TEST_CASE("walks come newest first, and only those that a kind tells of")
{
    const std::vector<Id> all = choices(PaperKind::Walk).walks;
    const RigHistory &history = theBook().standing.history;
    REQUIRE(all.size() == history.walks.size());
    const auto startOf = [&](const Id &id) {
        return std::find_if(history.walks.begin(), history.walks.end(),
                            [&](const WalkRecord &w) { return w.walk.id == id; })
            ->walk.started.instant;
    };
    CHECK(std::is_sorted(all.begin(), all.end(),
                         [&](const Id &a, const Id &b) { return startOf(a) > startOf(b); }));
    CHECK(choices(PaperKind::RoadSlip).walks.size() == 2); // the book's two before the road
    CHECK(choices(PaperKind::Survey).walks.size() == 1);
    CHECK(choices(PaperKind::Dates).walks.empty());
    const PaperChoices two = choices(PaperKind::ThenAndNow);
    CHECK(two.walks == std::vector<Id>(all.begin(), all.end() - 1)); // nothing stands before the first
    CHECK(two.earlier == std::vector<Id>(all.begin() + 1, all.end()));
    CHECK(choices(PaperKind::Walk).earlier.empty());
}

TEST_CASE("an order asks for open findings, a record of damage tells of mended ones too")
{
    const std::vector<Id> order = choices(PaperKind::WorkOrder).findings;
    const std::vector<Id> damage = choices(PaperKind::Damage).findings;
    const auto has = [](const std::vector<Id> &ids, const Id &id) {
        return std::find(ids.begin(), ids.end(), id) != ids.end();
    };
    CHECK(has(order, theBook().gasFinding));
    CHECK_FALSE(has(order, theBook().mendedFinding));
    CHECK(has(damage, theBook().mendedFinding));
    CHECK(choices(PaperKind::Walk).findings.empty());
}

TEST_CASE("what is typed of the site stands in the order, the rest stays a line to fill in")
{
    CHECK(choices(PaperKind::WorkOrder).access);
    PaperOptions options;
    options.site.access = "behind the yard, second gate";
    const std::string text = words(PaperKind::WorkOrder, options);
    CHECK(holds(text, "Where it stands, how to get there: behind the yard, second gate"));
    CHECK(holds(text, "Power at the place: ____"));
}

TEST_CASE("a signature stands on its own line, the others stay to be signed by hand")
{
    Document document = theBook().compose(PaperKind::OutAndBack);
    const std::vector<std::string> signers = signersOf(document);
    REQUIRE(signers.size() == 4);
    const Signature drawn{{{{0.1, 0.1}, {0.4, 0.2}}}, "12 March 2027, 08:10"};
    signDocument(document, {{1, drawn}, {3, Signature{}}, {9, drawn}});
    std::vector<const SignatureBlock *> lines;
    for (const Block &block : document.blocks) {
        if (const auto *line = std::get_if<SignatureBlock>(&block))
            lines.push_back(line);
    }
    CHECK_FALSE(lines[0]->drawn);
    CHECK(lines[1]->drawn == drawn);
    CHECK_FALSE(lines[3]->drawn); // nothing was drawn
    const std::string text = wordsOf(document, realTexts());
    CHECK(holds(text, signers[1] + ": signed on the screen, 12 March 2027, 08:10"));
    CHECK(holds(text, signers[0] + ": ____"));
}
