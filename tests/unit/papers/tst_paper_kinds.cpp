// SPDX-License-Identifier: Apache-2.0
// What each kind of document has of its own.
#include <doctest/doctest.h>

#include <algorithm>

#include "base/text.hpp"
#include "paper_book.hpp"

using namespace snugwalk;
using namespace snugwalk::papers;
using namespace snugwalk::test;

namespace {

const PaperBook &theBook()
{
    static const PaperBook book;
    return book;
}

bool holds(const std::string &text, const std::string &words)
{
    return text.find(words) != std::string::npos;
}

std::string words(PaperKind kind, const PaperOptions &options = {})
{
    return wordsOf(theBook().compose(kind, options), realTexts());
}

template <typename Kind>
std::vector<Kind> blocksOf(const Document &document)
{
    std::vector<Kind> blocks;
    for (const Block &block : document.blocks) {
        if (const Kind *found = std::get_if<Kind>(&block))
            blocks.push_back(*found);
    }
    return blocks;
}

const TableBlock *tableWith(const std::vector<TableBlock> &tables, const std::string &column)
{
    const auto found = std::find_if(tables.begin(), tables.end(), [&](const TableBlock &t) {
        return std::find(t.head.begin(), t.head.end(), column) != t.head.end();
    });
    return found == tables.end() ? nullptr : &*found;
}

} // namespace

TEST_CASE("a walk report tells fifteen due points at most, each reason once")
{
    const Document document = theBook().compose(PaperKind::Walk);
    const auto tables = blocksOf<TableBlock>(document);
    const TableBlock *due = tableWith(tables, "Why");
    REQUIRE(due != nullptr);
    CHECK(due->rows.size() <= 15);
    for (const auto &row : due->rows) {
        const auto reasons = split(row[2], ';');
        for (std::size_t i = 0; i < reasons.size(); ++i) {
            for (std::size_t j = i + 1; j < reasons.size(); ++j)
                CHECK(trim(reasons[i]) != trim(reasons[j]));
        }
    }
    CHECK(blocksOf<FindingBlock>(document).size() == theBook().standing.state.open.size());
    CHECK(blocksOf<PhotosBlock>(document).front().photos.size() == 2);
}

TEST_CASE("the slip prints an acceptance as it was made, with its time and zone")
{
    const std::string slip = words(PaperKind::RoadSlip);
    const std::string point = realTexts().point(theBook().missedPoint).title;
    CHECK(holds(slip, "I could not look at " + point +
                          " because wet or icy. I know that the latch may open may "
                          "follow. I move it once, today, on my own decision."));
    CHECK(holds(slip, "P. Second, 2026-03-"));
    CHECK(holds(slip, "(UTC+13)"));
    CHECK(holds(slip, point + " (wet or icy)"));
}

TEST_CASE("a work order carries cautions in full, marks licensed work and leaves room for prices")
{
    const Document document = theBook().compose(PaperKind::WorkOrder);
    std::vector<std::string> cautions;
    for (const CautionBlock &block : blocksOf<CautionBlock>(document))
        cautions.insert(cautions.end(), block.lines.begin(), block.lines.end());
    for (const std::string &code : realCatalogue().find(theBook().gasPoint)->cautions)
        CHECK(std::find(cautions.begin(), cautions.end(), realTexts().cautionFull(code)) != cautions.end());
    const std::string text = wordsOf(document, realTexts());
    CHECK(holds(text, "for the licensed person, nobody else"));
    CHECK(holds(text, "Gas shut at the cylinder, no flame: for 1"));
    const auto tables = blocksOf<TableBlock>(document);
    const TableBlock *prices = tableWith(tables, "Price");
    REQUIRE(prices != nullptr);
    CHECK(prices->rows.size() == 2); // the open finding and the total; what is mended waits for a look
    CHECK(prices->rows.front().back().empty());
    CHECK(blocksOf<SignatureBlock>(document).size() == 2);
    CHECK_FALSE(holds(text, "one turned by hand"));
}

TEST_CASE("a work order of one named finding is of that one alone")
{
    PaperOptions options;
    options.findings = {theBook().mendedFinding};
    const std::string text = words(PaperKind::WorkOrder, options);
    CHECK(holds(text, "one turned by hand"));
    CHECK_FALSE(holds(text, "hose rubs"));
    options.findings = {Id::fromBytes(std::string(16, 'x'))};
    const auto unknown = compose(PaperKind::WorkOrder, theBook().source(), options);
    REQUIRE_FALSE(unknown);
    CHECK(unknown.error().code == Errc::NotFound);
}

TEST_CASE("work done prints what is written of a mend and leaves lines for the rest")
{
    const Document document = theBook().compose(PaperKind::WorkDone);
    const std::string text = wordsOf(document, realTexts());
    CHECK(holds(text, "all nuts in star order"));
    CHECK(holds(text, "NZD 12.00"));
    const auto blanks = blocksOf<BlankBlock>(document);
    const auto labelled = [&](const std::string &slug) {
        return std::count_if(blanks.begin(), blanks.end(), [&](const BlankBlock &b) {
            return b.label == realTexts().phrase("paper_" + slug);
        });
    };
    CHECK(labelled("blank_done") == 1);    // the gas finding
    CHECK(labelled("blank_recheck") == 2); // neither is confirmed
    CHECK(labelled("blank_torque") == 1);  // the wheel nuts, of which no figure is written
}

TEST_CASE("a survey proves itself by hashes of photos and of each chain's end")
{
    const std::string text = words(PaperKind::Survey);
    CHECK(holds(text, std::string(64, 'a')));
    CHECK(holds(text, std::string(64, 'b')));
    REQUIRE(theBook().chains.size() == 1);
    CHECK(holds(text, theBook().chains.front().hash.text()));
    CHECK(holds(text, std::to_string(theBook().chains.front().entries)));
    CHECK(holds(text, "Trips written: 1, 80"));
}

TEST_CASE("a damage record lays then beside now and names when it was first seen")
{
    PaperOptions options;
    options.findings = {theBook().gasFinding};
    const Document document = theBook().compose(PaperKind::Damage, options);
    const auto pairs = blocksOf<PairBlock>(document);
    REQUIRE(pairs.size() == 1);
    CHECK(pairs.front().then->photo.hash == std::string(64, 'a'));
    CHECK(pairs.front().now->photo.hash == std::string(64, 'b'));
    CHECK(holds(wordsOf(document, realTexts()), "First seen: 2026-03-14"));
}

TEST_CASE("the sheet of handing out is signed by both, twice")
{
    const Document document = theBook().compose(PaperKind::OutAndBack);
    CHECK(blocksOf<SignatureBlock>(document).size() == 4);
    const auto tables = blocksOf<TableBlock>(document);
    const TableBlock *points = tableWith(tables, "Taken back");
    REQUIRE(points != nullptr);
    CHECK(points->rows.size() > 10); // no such walk is written: what one would ask for, to fill in
}

TEST_CASE("readings keep their tool, and weights stand beside the plate")
{
    CHECK(holds(words(PaperKind::SealsAndDamp), "pin meter"));
    const Document document = theBook().compose(PaperKind::Weights);
    const auto tables = blocksOf<TableBlock>(document);
    const TableBlock *kept = tableWith(tables, "Weighed");
    REQUIRE(kept != nullptr);
    REQUIRE(kept->rows.size() == 1);
    const Mass gross = *theBook().walker.rig.ratings.gross;
    CHECK(kept->rows.front()[2] == format(kilograms(1900), UnitSystem::Si));
    CHECK(kept->rows.front()[3] == format(gross, UnitSystem::Si));
    CHECK(kept->rows.front()[4] == format(gross - kilograms(1900), UnitSystem::Si));
    CHECK(kept->rows.front()[5] == "platform scale");
}

TEST_CASE("the laying-up sheet carries the whole emergency card")
{
    const auto cards = blocksOf<CautionBlock>(theBook().compose(PaperKind::LayingUp));
    REQUIRE_FALSE(cards.empty());
    CHECK(cards.front().lines == std::vector<std::string>{realTexts().word("emergency", "gas"),
                                                          realTexts().word("emergency", "co"),
                                                          realTexts().word("emergency", "fire"),
                                                          realTexts().word("emergency", "tingle")});
}

TEST_CASE("two walks are named with their times; one alone cannot be compared")
{
    CHECK(holds(words(PaperKind::ThenAndNow), "Before the road, 2026-03-"));
    PaperBook book;
    book.standing.history.walks.resize(1);
    const auto none = compose(PaperKind::ThenAndNow, book.source(), {});
    REQUIRE_FALSE(none);
    CHECK(none.error().code == Errc::NotFound);
}

TEST_CASE("dates say what each rests on")
{
    const Document document = theBook().compose(PaperKind::Dates);
    for (const TableBlock &table : blocksOf<TableBlock>(document)) {
        REQUIRE(table.head.size() == 6);
        for (const auto &row : table.rows) {
            CHECK(parseDate(row[1]));
            CHECK(parseDate(row[2]));
            CHECK(parseDate(row[3]));
            CHECK_FALSE(row[5].empty());
            CHECK_FALSE(row[5].starts_with("basis_"));
        }
    }
}

TEST_CASE("nothing to tell of damage without a finding")
{
    PaperBook book;
    book.standing = standingOf(
        book.catalogue,
        [&] {
            RigHistory history = book.standing.history;
            history.findings.clear();
            return history;
        }(),
        book.standing.now);
    const auto none = compose(PaperKind::Damage, book.source(), {});
    REQUIRE_FALSE(none);
    CHECK(none.error().code == Errc::NotFound);
    CHECK(compose(PaperKind::WorkOrder, book.source(), {})); // lines to write on
}
