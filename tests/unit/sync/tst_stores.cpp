// SPDX-License-Identifier: Apache-2.0
// What every store promises, asked of the folder and of the one in memory; and names that lead elsewhere.
#include <doctest/doctest.h>

#include <filesystem>

#include "support/temp_folder.hpp"
#include "sync/folder_store.hpp"
#include "sync/memory_store.hpp"

using namespace snugwalk;
using namespace snugwalk::test;
namespace fs = std::filesystem;

namespace {

void promises(Store &store)
{
    REQUIRE(store.list("").value().empty());
    CHECK(store.list("a/b").value().empty());
    CHECK(store.read("a/b/one.seg", 100).error().code == Errc::NotFound);
    REQUIRE(store.publish("a/b/one.seg", "first"));
    REQUIRE(store.publish("a/b/one.seg", "first")); // repeated: done
    CHECK(store.publish("a/b/one.seg", "other").error().code == Errc::Conflict);
    CHECK(store.publish("a/b/one.seg", "firs").error().code == Errc::Conflict);
    CHECK(store.read("a/b/one.seg", 5).value() == "first");
    CHECK(store.read("a/b/one.seg", 4).error().code == Errc::OutOfRange);
    REQUIRE(store.publish("a/two", std::string(70'000, '\0')));
    REQUIRE(store.publish("a/empty", ""));
    const auto listed = store.list("a").value();
    REQUIRE(listed.size() == 3);
    CHECK(listed[0].name == "b/");
    CHECK(listed[1].name == "empty");
    CHECK(listed[2].name == "two");
    CHECK(listed[2].size == 70'000);
    CHECK(store.read("a/two", 70'000).value() == std::string(70'000, '\0'));
    CHECK(store.publish("../x", "x").error().code == Errc::InvalidInput);
    CHECK(store.read("a/../a/two", 9).error().code == Errc::InvalidInput);
}

} // namespace

TEST_CASE("a store in memory keeps its promises")
{
    MemoryStore store;
    promises(store);
}

TEST_CASE("a folder keeps the same promises and leaves nothing but what was published")
{
    const TempFolder folder;
    FolderStore store(folder.path());
    promises(store);
    int files = 0;
    for (const auto &item : fs::recursive_directory_iterator(folder.path()))
        files += item.is_regular_file() ? 1 : 0;
    CHECK(files == 3);
}

TEST_CASE("a folder that is not there is no empty store")
{
    const TempFolder folder;
    FolderStore store(folder.path() / "stick");
    CHECK(store.list("").error().code == Errc::NotFound);
    CHECK(store.publish("a", "x").error().code == Errc::NotFound);
}

TEST_CASE("links below the folder are never followed, strange names never listed")
{
    const TempFolder outside;
    const TempFolder folder;
    spill(outside.path() / "secret", "secret");
    fs::create_directory_symlink(outside.path(), folder.path() / "linked");
    fs::create_symlink(outside.path() / "secret", folder.path() / "file");
    spill(folder.path() / "Strange Name", "x");
    spill(folder.path() / "_part-12", "x");
    FolderStore store(folder.path());
    CHECK(store.list("").value().empty());
    CHECK(store.read("linked/secret", 100).error().code == Errc::Io);
    CHECK(store.read("file", 100).error().code == Errc::Io);
    CHECK(store.publish("linked/new", "x").error().code == Errc::Io);
    CHECK(store.publish("file", "secret").error().code == Errc::Conflict);
    CHECK_FALSE(fs::exists(outside.path() / "new"));
}

TEST_CASE("names that are not fine")
{
    for (const std::string_view fine : {"a", "a/b", "snugwalk1/00ff/s/1-2.seg", "a_b-c.d", "com", "com10"})
        CHECK_MESSAGE(nameIsFine(fine), fine);
    const std::string withNul("a\0b", 3);
    for (const std::string_view odd : {std::string_view(),           std::string_view("/"),
                                       std::string_view("/a"),       std::string_view("a/"),
                                       std::string_view("a//b"),     std::string_view("."),
                                       std::string_view(".."),       std::string_view("a/../b"),
                                       std::string_view(".hidden"),  std::string_view("a."),
                                       std::string_view("A"),        std::string_view("a b"),
                                       std::string_view("a\\b"),     std::string_view("c:x"),
                                       std::string_view("nul"),      std::string_view("x/con.txt"),
                                       std::string_view("lpt1"),     std::string_view("com9.seg"),
                                       std::string_view("\xc3\xa4"), std::string_view(withNul)})
        CHECK_FALSE_MESSAGE(nameIsFine(odd), odd);
    CHECK(nameIsFine(std::string(100, 'a')));
    CHECK_FALSE(nameIsFine(std::string(101, 'a')));
    CHECK_FALSE(nameIsFine("a/a/a/a/a/a/a/a/a/a/a/a/a"));
}
