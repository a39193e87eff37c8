// SPDX-License-Identifier: Apache-2.0
// Words of people and of the catalogue, with and without accents. What is found is checked against a plain
// reading of all words; how FTS5 folds letters is Unicode's (UAX #15, decomposition) as SQLite's manual gives
// it for unicode61.
#include <algorithm>

#include <doctest/doctest.h>

#include "round/search.hpp"
#include "support/real_catalogue.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const LocalTime june = parseLocal("2026-06-01T09:00:00+12:00").value();

Id idOf(unsigned char number) { return Id::fromBytes(std::string(15, '\1') + static_cast<char>(number)); }

RigHistory someHistory()
{
    RigHistory history;
    FindingHistory rivet;
    rivet.finding.id = idOf(1);
    rivet.finding.point = "belly-pan-sheet";
    rivet.finding.defect = "loose";
    rivet.finding.opened = june;
    Look look;
    look.note = "third rivet aft of the Señal lamp, 14 mm";
    look.by = "M. Rata";
    rivet.looks.push_back(look);
    history.findings.push_back(rivet);
    Mend mend;
    mend.id = idOf(2);
    mend.at = june;
    mend.findings = {rivet.finding.id};
    mend.what = "resealed \"vent\" AND OR NOT";
    mend.parts = {{"lap sealant", 2, "cartridges"}};
    history.mends.push_back(mend);
    Trip trip;
    trip.id = idOf(3);
    trip.title = "Wānaka to Ōtautahi";
    trip.start = june;
    history.trips.push_back(trip);
    return history;
}

std::vector<std::string> idsOf(const SearchIndex &index, std::string_view words)
{
    std::vector<std::string> ids;
    for (const Hit &hit : index.find(words, 100).value())
        ids.push_back(hit.id);
    return ids;
}

bool finds(const SearchIndex &index, std::string_view words, const std::string &id)
{
    const auto ids = idsOf(index, words);
    return std::find(ids.begin(), ids.end(), id) != ids.end();
}

} // namespace

TEST_CASE("what people wrote is found by beginnings of words, in any order, without accents")
{
    const auto index = SearchIndex::make(realCatalogue(), someHistory(), realTexts("en")).value();
    const std::string rivet = idOf(1).text(), mend = idOf(2).text(), trip = idOf(3).text();
    CHECK(finds(index, "rivet", rivet));
    CHECK(finds(index, "RIV", rivet));
    CHECK(finds(index, "senal riv", rivet));
    CHECK(finds(index, "señal", rivet));
    CHECK(finds(index, "rata", rivet));
    CHECK(finds(index, "sealant", mend));
    CHECK(finds(index, "wanaka otautahi", trip));
    CHECK_FALSE(finds(index, "rivet wanaka", rivet));
    CHECK_FALSE(finds(index, "ivet", rivet));
}

TEST_CASE("words of the search's own language are words like others")
{
    const auto index = SearchIndex::make(realCatalogue(), someHistory(), realTexts("en")).value();
    const std::string mend = idOf(2).text();
    CHECK(finds(index, "AND OR NOT", mend));
    CHECK(finds(index, "\"vent\"", mend));
    CHECK(finds(index, "vent*", mend));
    CHECK_FALSE(finds(index, "title:resealed NEAR(x)", mend));
    for (const char *nothing : {"", "  ", "\"", "*", "()^-:"})
        CHECK(idsOf(index, nothing).empty());
}

TEST_CASE("points are found by the words of the language at hand, titles first")
{
    for (const char *language : {"en", "es", "fr", "de"}) {
        const Texts texts = realTexts(language);
        const auto index = SearchIndex::make(realCatalogue(), someHistory(), texts).value();
        for (const Point &point : realCatalogue().points()) {
            CAPTURE(point.slug);
            CHECK(finds(index, texts.point(point.slug).title, point.slug));
        }
    }
    const auto index = SearchIndex::make(realCatalogue(), someHistory(), realTexts("en")).value();
    const auto hits = index.find("tread depth", 5).value();
    REQUIRE(!hits.empty());
    CHECK(hits.front().id == "tread-depth");
    CHECK(index.find("the", 3).value().size() <= 3);
}
