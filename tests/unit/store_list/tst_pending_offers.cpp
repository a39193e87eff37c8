// SPDX-License-Identifier: Apache-2.0
// Offers between two runs of the command line: ten minutes, one device.
#include <doctest/doctest.h>

#include <filesystem>

#include "stores/pending_offers.hpp"
#include "support/temp_folder.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
namespace fs = std::filesystem;

namespace {

LocalTime at(const char *text) { return parseLocal(text).value(); }

PendingOffer made(const std::string &bytes)
{
    PendingOffer pending;
    pending.offer = {bytes, Secret::random()};
    pending.rig = Id::fromBytes("0123456789abcdef");
    pending.role = SyncRole::Technician;
    pending.until = "2026-12-24";
    pending.made = at("2026-12-01T08:10:00+13:00");
    return pending;
}

std::size_t filesIn(const fs::path &folder)
{
    return static_cast<std::size_t>(std::distance(fs::directory_iterator(folder), fs::directory_iterator()));
}

} // namespace

TEST_CASE("an offer stands for ten minutes with all it was made with, then goes with its secret")
{
    const TempFolder folder;
    const auto keeper = fileKeeper(folder.path() / "secrets");
    const PendingOffer first = made("first offer");
    REQUIRE(keepOffer(folder.path(), *keeper, first));
    REQUIRE(keepOffer(folder.path(), *keeper, made("second offer")));
    const auto standing = pendingOffers(folder.path(), *keeper, at("2026-12-01T08:20:00+13:00")).value();
    REQUIRE(standing.size() == 2);
    const PendingOffer &back = standing[0].offer.bytes == "first offer" ? standing[0] : standing[1];
    CHECK(back.offer.secret.view() == first.offer.secret.view());
    CHECK(back.rig == first.rig);
    CHECK(back.role == SyncRole::Technician);
    CHECK(back.until == "2026-12-24");
    CHECK(pendingOffers(folder.path(), *keeper, at("2026-12-01T08:20:01+13:00")).value().empty());
    CHECK(filesIn(folder.path() / "offers") == 0);
    CHECK(filesIn(folder.path() / "secrets") == 0);
}

TEST_CASE("an offer that was taken is gone; one without its secret stands for nothing")
{
    const TempFolder folder;
    const auto keeper = fileKeeper(folder.path() / "secrets");
    const LocalTime now = at("2026-12-01T08:11:00+13:00");
    REQUIRE(keepOffer(folder.path(), *keeper, made("first offer")));
    REQUIRE(keepOffer(folder.path(), *keeper, made("second offer")));
    REQUIRE(dropOffer(folder.path(), *keeper, made("first offer")));
    const auto standing = pendingOffers(folder.path(), *keeper, now).value();
    REQUIRE(standing.size() == 1);
    CHECK(standing[0].offer.bytes == "second offer");
    fs::remove_all(folder.path() / "secrets");
    CHECK(pendingOffers(folder.path(), *keeper, now).value().empty());
}
