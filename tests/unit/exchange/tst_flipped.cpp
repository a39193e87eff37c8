// SPDX-License-Identifier: Apache-2.0
// One bit flipped anywhere in an export, a ZIP [APPNOTE], is found, and what it hit is named.
#include <doctest/doctest.h>

#include "exchange/check_export.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"
#include "exchange_fixture.hpp"
#include "image/plain_codec.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

bool names(const ExportCheck &check, const std::string &what)
{
    return std::any_of(check.faults.begin(), check.faults.end(),
                       [&](const std::string &fault) { return fault.find(what) != std::string::npos; });
}

} // namespace

TEST_CASE("every byte of a small export, one bit each")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const Hash photo = addPicture(walker, 10);
    const auto &folder = walker.home.folder();
    REQUIRE(exportLogbook(walker.book(), folder.file("all.zip")));
    const std::string whole = slurp(folder.file("all.zip"));
    REQUIRE(checkExport(folder.file("all.zip"))->faults.empty());

    // members are stored, so their bytes stand in the file as they are
    const std::size_t entries = whole.find("{\"act\"");
    const std::size_t picture = whole.find("\x89PNG");
    const std::size_t pictureEnd = whole.find("IEND", picture) + 8;
    REQUIRE(entries != std::string::npos);
    REQUIRE(picture != std::string::npos);
    const std::size_t entriesEnd = whole.find("PK\3\4", entries);

    int unnoticed = 0;
    int unnamed = 0;
    const std::string file = folder.file("flipped.zip");
    for (std::size_t at = 0; at < whole.size(); ++at) {
        std::string bytes = whole;
        bytes[at] = static_cast<char>(bytes[at] ^ (1 << at % 8));
        spill(file, bytes);
        const auto check = checkExport(file);
        REQUIRE(check);
        unnoticed += check->faults.empty() ? 1 : 0;
        if (at >= picture && at < pictureEnd && !names(*check, "photo " + photo.text()))
            ++unnamed;
        const auto line =
            1 + std::count(whole.begin() + static_cast<std::ptrdiff_t>(entries),
                           whole.begin() + static_cast<std::ptrdiff_t>(at > entries ? at : entries), '\n');
        const std::string place = "entries.jsonl line " + std::to_string(line);
        if (at >= entries && at < entriesEnd && whole[at] != '\n' && !names(*check, place))
            ++unnamed;
    }
    MESSAGE(whole.size(), " flips: ", unnoticed, " unnoticed, ", unnamed, " hit an entry or photo unnamed");
    CHECK(unnoticed == 0);
    CHECK(unnamed == 0);
}

TEST_CASE("cut at any length, or with bytes added")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run")));
    const auto &folder = walker.home.folder();
    REQUIRE(exportLogbook(walker.book(), folder.file("all.zip")));
    const std::string whole = slurp(folder.file("all.zip"));
    TestBook other("other");
    const std::string file = folder.file("cut.zip");
    for (std::size_t length = 0; length < whole.size(); length += length < 200 ? 1 : 37) {
        spill(file, std::string_view(whole).substr(0, length));
        REQUIRE(checkExport(file));
        CHECK_FALSE(checkExport(file)->faults.empty());
        CHECK_FALSE(importLogbook(other.book(), file, PlainCodec()));
    }
    for (const std::string &bytes : {whole + "x", "x" + whole}) {
        spill(file, bytes);
        CHECK_FALSE(checkExport(file)->faults.empty());
    }
    CHECK(entryCount(other.book()) == 0);
    CHECK(checkExport(folder.file("not there.zip")).error().code == Errc::NotFound);
}
