// SPDX-License-Identifier: Apache-2.0
// The shopping list. Amounts of the trade are "common practice, no source"; beads are computed by hand
// beside.
#include <doctest/doctest.h>

#include <algorithm>
#include <cmath>
#include <random>

#include "keys/hash.hpp"
#include "round/supplies.hpp"
#include "support/book.hpp"
#include "support/rigs.hpp"
#include "support/temp_folder.hpp"
#include "walk/draft.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime now = timeAt("2026-11-24T08:10:00+13:00");

const SupplyList &realSupplies()
{
    static const SupplyList list =
        SupplyList::load(slurp(SNUGWALK_SOURCE_DIR "/core/catalogue/data/supplies.json")).value();
    return list;
}

FindingHistory found(const std::string &name, const std::string &point, const std::string &defect, int grade,
                     const std::string &extent, const std::string &place = "")
{
    FindingHistory h;
    h.finding.id = derivedId("test", "finding", name);
    h.finding.point = point;
    h.finding.defect = defect;
    h.finding.place.named = place;
    h.finding.opened = timeAt("2026-11-01T08:00:00+13:00");
    Look look;
    look.id = derivedId("test", "look", name);
    look.at = h.finding.opened;
    look.grade = grade;
    look.extent = parseExtent(extent).value();
    h.looks = {look};
    return h;
}

RigHistory historyOf(std::vector<FindingHistory> findings)
{
    RigHistory history;
    history.rig = tandem();
    history.rig.openings = {{"vent 1",
                             OpeningKind::Vent,
                             Face::Top,
                             {metres(3), {}, metres(2.8)},
                             metres(16 * 0.0254),
                             metres(16 * 0.0254)}};
    history.findings = std::move(findings);
    return history;
}

DueBand dueOn(const std::string &point, const char *early)
{
    DueBand band;
    band.point = point;
    band.early = parseDate(early);
    return band;
}

const SupplyLine *lineOf(const std::vector<SupplyLine> &lines, const std::string &item)
{
    const auto found =
        std::find_if(lines.begin(), lines.end(), [&](const SupplyLine &l) { return l.item == item; });
    return found == lines.end() ? nullptr : &*found;
}

std::vector<SupplyLine> listOf(const RigHistory &history, const std::vector<DueBand> &bands = {})
{
    return suppliesFor(realSupplies(), history, bands, now, 30);
}

Stock stockOf(const std::string &item, double si, const char *when)
{
    return {derivedId("stock", "rig", item + when),
            Id{},
            item,
            realSupplies().find(item)->dimension,
            si,
            "",
            timeAt(when),
            ""};
}

Mend mendWith(const char *when, std::vector<MendPart> parts)
{
    Mend mend;
    mend.at = timeAt(when);
    mend.parts = std::move(parts);
    return mend;
}

} // namespace

TEST_CASE("a crack takes a bead along it and 25 mm more at each end")
{
    const auto lines = listOf(historyOf({found("seam", "front-cap-seam", "crack", 3, "310 mm")}));
    const SupplyLine *lap = lineOf(lines, "lap-sealant");
    REQUIRE(lap != nullptr);
    // by hand: fillet 9.5 x 9.5 / 2 mm² x 360 mm x 1.1 = 17.87 mL
    CHECK(lap->neededSi * 1e6 == doctest::Approx(9.5 * 9.5 / 2 * 360 * 1.1 * 1e-3));
    CHECK(lap->packs == 1);
    REQUIRE(lap->uses.size() == 1);
    CHECK_FALSE(lap->uses[0].assumed);
    CHECK(lap->uses[0].finding == derivedId("test", "finding", "seam"));
}

TEST_CASE("without a length the whole joint counts, and says that it was assumed")
{
    // the trade's vent: 16 x 16 in flange, 64 in of lap about 38 x 3 mm (1 1/2 x 1/8 in)
    const auto lines = listOf(historyOf({found("vent", "roof-vent-sealant", "crack", 3, "", "vent 1")}));
    const SupplyLine *lap = lineOf(lines, "lap-sealant");
    REQUIRE(lap != nullptr);
    CHECK(lap->neededSi * 1e6 == doctest::Approx(38.0 * 3.0 * 64 * 25.4 * 1.1 * 1e-3));
    CHECK(lap->uses[0].assumed);
    CHECK(lap->packs == 1); // one tube a vent: common practice, no source
    const auto seam = listOf(historyOf({found("s", "front-cap-seam", "gap", 3, "")}));
    CHECK(lineOf(seam, "lap-sealant")->neededSi * 1e9 ==
          doctest::Approx(9.5 * 9.5 / 2 * tandem().measures.width.si() * 1e3 * 1.1));
}

TEST_CASE("rivets by count and a fifth to spare, whole ones; each use tells its finding")
{
    const auto lines = listOf(historyOf({found("a", "belly-pan-sheet", "loose", 3, "5"),
                                         found("b", "belly-pan-sheet", "loose", 2, "14 mm")}));
    const SupplyLine *rivets = lineOf(lines, "rivets");
    REQUIRE(rivets != nullptr);
    CHECK(rivets->uses.size() == 2);
    CHECK(rivets->neededSi == 6.0 + 2.0); // ceil(5 x 1.2) and ceil(1 x 1.2)
    CHECK(rivets->packs == 1);
}

TEST_CASE("a due repack takes grease, a seal and a pin a hub, and one of each to spare")
{
    const auto lines = listOf(historyOf({}), {dueOn("bearing-repack", "2026-12-10")});
    // 3 oz a hub and a third for purging: 1 lb for 4 hubs, common practice, no source
    CHECK(lineOf(lines, "bearing-grease")->neededSi == doctest::Approx(0.085 * 4 * 1.33));
    CHECK(lineOf(lines, "bearing-grease")->neededSi == doctest::Approx(0.45359237).epsilon(0.01));
    CHECK(lineOf(lines, "hub-seals")->packs == 5);
    CHECK(lineOf(lines, "split-pins")->packs == 5);
    CHECK(lineOf(lines, "hub-seals")->uses[0].finding.isNull());
    CHECK(listOf(historyOf({}), {dueOn("bearing-repack", "2026-12-26")}).empty()); // beyond 30 days
}

TEST_CASE("what is mended, gone or of another kind needs nothing")
{
    FindingHistory mended = found("m", "front-cap-seam", "crack", 3, "310 mm");
    mended.mends = {mendWith("2026-11-10T08:00:00+13:00", {})};
    FindingHistory gone = found("g", "front-cap-seam", "crack", 0, "");
    CHECK(listOf(historyOf({mended, gone, found("gas", "gas-hoses", "leaking", 4, ""),
                            found("o", "front-cap-seam", "other", 3, "")}))
              .empty());
}

TEST_CASE("stock is the last count less the parts of later mends; packs are what is missing, rounded up")
{
    RigHistory history = historyOf({found("a", "belly-pan-sheet", "loose", 3, "50")});
    CHECK(lineOf(listOf(history), "rivets")->packs == 2); // 60 of 50 a box
    history.stocks = {stockOf("rivets", 3, "2026-11-01T08:00:00+13:00"),
                      stockOf("rivets", 30, "2026-11-05T08:00:00+13:00")};
    CHECK(lineOf(listOf(history), "rivets")->packs == 1);
    CHECK(lineOf(listOf(history), "rivets")->onHandSi == 30.0);
    history.mends = {mendWith("2026-11-04T08:00:00+13:00", {{"rivet", 9, ""}}), // before the count
                     mendWith("2026-11-06T08:00:00+13:00",
                              {{"Rivets 3/16 in", 12, ""}, {"rivet", 3, "bags"}, {"paint", 1, ""}})};
    CHECK(lineOf(listOf(history), "rivets")->onHandSi == 18.0);
    history.mends.push_back(mendWith("2026-11-07T08:00:00+13:00", {{"rivets", 1, "box"}}));
    CHECK(lineOf(listOf(history), "rivets")->onHandSi == 0.0); // never below nothing
    history.stocks.push_back(stockOf("rivets", 60, "2026-11-08T08:00:00+13:00"));
    CHECK(lineOf(listOf(history), "rivets")->packs == 0);
    history.stocks.push_back(stockOf("rivets", 0, "2027-01-01T08:00:00+13:00")); // not yet
    CHECK(lineOf(listOf(history), "rivets")->packs == 0);
}

TEST_CASE("items by what people call them, in every language; amounts by pack, unit or piece")
{
    const auto slugOf = [](const char *typed) {
        const SupplyItem *item = realSupplies().named(typed);
        return item == nullptr ? std::string() : item->slug;
    };
    CHECK(slugOf("lap-sealant") == "lap-sealant");
    CHECK(slugOf("Self-leveling sealant, grey") == "lap-sealant");
    CHECK(slugOf("some sealant") == "non-sag-sealant");
    CHECK(slugOf("sellador autonivelante") == "lap-sealant");
    CHECK(slugOf("4.8 mm rivets") == "rivets");
    CHECK(slugOf("remaches ciegos") == "rivets");
    CHECK(slugOf("Dachdichtmasse") == "lap-sealant");
    CHECK(slugOf("ruban butyle 20 mm") == "butyl-tape");
    CHECK(slugOf("Blindnieten") == ""); // a word of its own, not a name that stands in it
    CHECK(slugOf("12 Nieten") == "rivets");
    CHECK(slugOf("8 écrous de roue") == "wheel-nuts");
    CHECK(slugOf("2 aimants de frein") == "brake-magnets");
    CHECK(slugOf("trivet").empty());
    CHECK(slugOf("").empty());
    const SupplyItem &lap = *realSupplies().find("lap-sealant");
    CHECK(amountOf(lap, 2, "").value() == doctest::Approx(600e-6));
    CHECK(amountOf(lap, 2, "Cartridges").value() == doctest::Approx(600e-6));
    CHECK(amountOf(lap, 2, "Kartuschen").value() == doctest::Approx(600e-6));
    CHECK(amountOf(lap, 2, "cartouches").value() == doctest::Approx(600e-6));
    CHECK(amountOf(*realSupplies().find("rivets"), 12, "Stück").value() == 12.0);
    CHECK(amountOf(lap, 450, "mL").value() == doctest::Approx(450e-6));
    CHECK_FALSE(amountOf(lap, 2, "kg"));
    CHECK(amountOf(*realSupplies().find("bearing-grease"), 85, "g").value() == doctest::Approx(0.085));
    CHECK(amountOf(*realSupplies().find("rivets"), 12, "").value() == 12.0);
    CHECK(amountOf(*realSupplies().find("rivets"), 2, "boxes").value() == 100.0);
}

TEST_CASE("the order of entry never changes the list")
{
    RigHistory history = historyOf(
        {found("a", "belly-pan-sheet", "loose", 3, "5"), found("b", "front-cap-seam", "crack", 3, "310 mm"),
         found("c", "rear-cap-seam", "gap", 2, ""), found("d", "window-frames", "gap", 3, "60 mm")});
    history.stocks = {stockOf("rivets", 3, "2026-11-01T08:00:00+13:00"),
                      stockOf("rivets", 30, "2026-11-05T08:00:00+13:00"),
                      stockOf("lap-sealant", 300e-6, "2026-11-05T08:00:00+13:00")};
    history.mends = {mendWith("2026-11-06T08:00:00+13:00", {{"rivet", 4, ""}}),
                     mendWith("2026-11-07T08:00:00+13:00", {{"lap sealant", 0.5, "cartridge"}})};
    std::vector<DueBand> bands = {dueOn("bearing-repack", "2026-12-10"),
                                  dueOn("coupler-grease", "2026-11-25")};
    const auto wanted = listOf(history, bands);
    REQUIRE(wanted.size() >= 6);
    std::mt19937 rng(11); // fixed: a failure must be repeatable
    for (int i = 0; i < 500; ++i) {
        std::shuffle(history.findings.begin(), history.findings.end(), rng);
        std::shuffle(history.stocks.begin(), history.stocks.end(), rng);
        std::shuffle(history.mends.begin(), history.mends.end(), rng);
        std::shuffle(bands.begin(), bands.end(), rng);
        const auto lines = listOf(history, bands);
        REQUIRE(lines.size() == wanted.size());
        for (std::size_t k = 0; k < lines.size(); ++k) {
            REQUIRE(lines[k].item == wanted[k].item);
            REQUIRE(lines[k].packs == wanted[k].packs);
            REQUIRE(lines[k].neededSi == wanted[k].neededSi);
            REQUIRE(lines[k].onHandSi == doctest::Approx(wanted[k].onHandSi));
        }
    }
}

TEST_CASE("data that cannot be used is refused, with what is wrong")
{
    const std::string item =
        R"({"slug":"x","quantity":"count","unit":"","pack":1,"names":["x"],"basis":{"tag":"CP","keys":["CP"]}})";
    const std::string need = R"({"item":"x","rule":"fixed","points":["p"],"defects":["crack"],"each":1})";
    const auto load = [](const std::string &items, const std::string &needs) {
        return SupplyList::load(R"({"items":[)" + items + R"(],"needs":[)" + needs + "]}");
    };
    REQUIRE(load(item, need));
    CHECK_FALSE(SupplyList::load("no json"));
    CHECK_FALSE(load("", need));
    CHECK_FALSE(load(item + "," + item, need));
    CHECK_FALSE(load(item, R"({"item":"y","rule":"fixed","points":["p"],"defects":["crack"],"each":1})"));
    CHECK_FALSE(load(item, R"({"item":"x","rule":"guess","points":["p"],"defects":["crack"],"each":1})"));
    CHECK_FALSE(load(item, R"({"item":"x","rule":"fixed","points":["p"],"each":1})"));
    CHECK_FALSE(load(item, R"({"item":"x","rule":"fixed","points":["p"],"defects":["crack"]})"));
    CHECK(load(R"({"slug":"x","quantity":"volume","unit":"apples","pack":1})", need).error().code ==
          Errc::Corrupt);
}
