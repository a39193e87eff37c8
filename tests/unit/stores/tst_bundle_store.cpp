// SPDX-License-Identifier: Apache-2.0
// A file as a store: whole or not at all, never overwritten, never outside itself.
#include <doctest/doctest.h>

#include "support/temp_folder.hpp"
#include "sync/bundle_store.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

std::size_t filesIn(const TempFolder &folder)
{
    return static_cast<std::size_t>(std::distance(std::filesystem::directory_iterator(folder.path()),
                                                  std::filesystem::directory_iterator()));
}

} // namespace

TEST_CASE("what was published is there after finishing, and not before")
{
    const TempFolder folder;
    const std::string file = folder.file("hand-over.snugbundle");
    {
        auto store = BundleStore::open(file).value();
        CHECK(store->list("")->empty());
        REQUIRE(store->publish("snugwalk1/a/1.seg", "one"));
        REQUIRE(store->publish("snugwalk1/b/2.seg", "two"));
        REQUIRE(store->publish("snugwalk1/a/1.seg", "one"));
        CHECK(store->publish("snugwalk1/a/1.seg", "other").error().code == Errc::Conflict);
        CHECK(store->read("snugwalk1/b/2.seg", 10).value() == "two");
        CHECK_FALSE(std::filesystem::exists(file));
        REQUIRE(store->finish());
        CHECK(filesIn(folder) == 1);
        REQUIRE(store->publish("snugwalk1/c", "three")); // thrown away with the store
    }
    CHECK(filesIn(folder) == 1);
    auto store = BundleStore::open(file).value();
    const auto top = store->list("").value();
    REQUIRE(top.size() == 1);
    CHECK(top.front().name == "snugwalk1/");
    const auto below = store->list("snugwalk1").value();
    REQUIRE(below.size() == 2);
    CHECK(below.front().name == "a/");
    CHECK(store->list("snugwalk1/a").value().front().name == "1.seg");
    CHECK(store->list("snugwalk1/a").value().front().size == 3);
    CHECK(store->list("no").value().empty());
    CHECK(store->read("snugwalk1/a/1.seg", 3).value() == "one");
    CHECK(store->read("snugwalk1/a/1.seg", 2).error().code == Errc::OutOfRange);
    CHECK(store->read("snugwalk1/c", 10).error().code == Errc::NotFound);
}

TEST_CASE("more files join those that were there; the same ones change nothing")
{
    const TempFolder folder;
    const std::string file = folder.file("b");
    auto store = BundleStore::open(file).value();
    REQUIRE(store->publish("m", "middle"));
    REQUIRE(store->finish());
    const std::string first = slurp(file);
    REQUIRE(store->publish("m", "middle"));
    REQUIRE(store->finish());
    CHECK(slurp(file) == first);
    REQUIRE(store->publish("z", "last"));
    REQUIRE(store->publish("a", "first"));
    REQUIRE(store->finish());
    CHECK(slurp(file) == bundleBytes({{"a", "first"}, {"m", "middle"}, {"z", "last"}}));
    CHECK(store->publish("m", "other").error().code == Errc::Conflict);
}

TEST_CASE("names that are paths are refused")
{
    const TempFolder folder;
    auto store = BundleStore::open(folder.file("b")).value();
    for (const char *name : {"", "/a", "../a", "a/../b", "a//b", "a\\b", "A", "c:", "a/", ".", ".."})
        CHECK(store->publish(name, "x").error().code == Errc::InvalidInput);
    CHECK(filesIn(folder) == 0);
}

TEST_CASE("a damaged bundle is refused as a whole or file by file, and stays as it is")
{
    const TempFolder folder;
    const std::string file = folder.file("b");
    const std::string whole = bundleBytes({{"a", "first"}, {"b", "second"}});
    std::string bytes = whole;
    bytes[bundleHead.size()] ^= 1; // in the contents: seen when it is read
    spill(file, bytes);
    auto store = BundleStore::open(file).value();
    CHECK(store->read("a", 10).error().code == Errc::Corrupt);
    CHECK(store->read("b", 10).value() == "second");
    REQUIRE(store->publish("c", "third"));
    CHECK(store->finish().error().code == Errc::Corrupt); // damage is not carried on
    CHECK(slurp(file) == bytes);
    spill(file, std::string_view(whole).substr(0, whole.size() - 1));
    CHECK(BundleStore::open(file).error().code == Errc::Corrupt);
    spill(file, "x");
    CHECK(BundleStore::open(file).error().code == Errc::Corrupt);
    CHECK(BundleStore::open(folder.path().string()).error().code == Errc::Io);
}

TEST_CASE("a folder that is not there is told")
{
    const TempFolder folder;
    auto store = BundleStore::open(folder.file("no/such/folder")).value();
    CHECK(store->publish("a", "b").error().code == Errc::Io);
    REQUIRE(store->finish());
}
