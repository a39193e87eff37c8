// SPDX-License-Identifier: Apache-2.0
// A bit that flipped at a store is told with what it belongs to, in every kind of file; and mended.
#include <doctest/doctest.h>

#include <algorithm>

#include "logbook/acts.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "support/party.hpp"
#include "sync/blob.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// Whole as far as a JPEG's marks go; no pixels.
std::string photoOf(std::size_t size)
{
    std::string bytes("\xff\xd8\xff\xda\x00\x02", 6);
    for (std::size_t i = 0; i < size; ++i)
        bytes += static_cast<char>((i * 31) % 251);
    return bytes + "\xff\xd9";
}

struct Kept {
    Kept()
    {
        const std::string bytes = photoOf(chunkBytes + 1000);
        PhotoStore store(s.owner.book().photoFolder());
        REQUIRE(store.keepOriginal(blake2b(bytes), bytes));
        REQUIRE(store.keepThumbnail(blake2b(bytes), photoOf(100)));
        Photo photo;
        photo.rig = s.rig;
        photo.hash = blake2b(bytes).text();
        photo.mime = "image/jpeg";
        photo.added = s.owner.home.clock.now();
        REQUIRE(addPhoto(s.owner.book(), photo, {"somebody", std::nullopt, std::nullopt}));
        s.owner.set(s.owner.home.ids.next(), "trip", {{"rig", s.rig.text()}});
        s.both();
        name = "photo " + photosOf(s.owner.book(), s.rig).value().front().id.shortText();
    }
    std::vector<std::string> lines() { return checkStore(s.owner.book(), s.owner.keys, s.store).value(); }
    std::vector<std::string> filesOf(const std::string &kind)
    {
        std::vector<std::string> names;
        for (const auto &[file, bytes] : s.store.files) {
            if (file.ends_with(kind))
                names.push_back(file);
        }
        return names;
    }
    Shared s;
    std::string name;
};

} // namespace

TEST_CASE("a whole store: nothing to tell")
{
    Kept k;
    CHECK(k.lines().empty());
}

TEST_CASE("one bit flipped in each file in turn: one line, which names the entries, the photo or the record")
{
    Kept k;
    std::size_t checked = 0;
    for (const char *kind : {".ctl", ".seg", ".man", ".chk"}) {
        const auto files = k.filesOf(kind);
        REQUIRE_FALSE(files.empty());
        for (const std::string &file : files) {
            std::string &bytes = k.s.store.files.find(file)->second;
            for (const std::size_t at : {std::size_t{0}, bytes.size() / 2, bytes.size() - 1}) {
                bytes[at] ^= 4;
                const auto lines = k.lines();
                INFO(file << " at " << at);
                REQUIRE(lines.size() == 1);
                const std::string &line = lines.front();
                CHECK(line.find("damaged") != std::string::npos);
                const std::string end = kind;
                if (end == ".ctl") {
                    CHECK(line.starts_with("record of members " + file.substr(0, file.find('.'))));
                } else if (end == ".seg") {
                    CHECK(line.find(file.substr(0, file.find('.'))) != std::string::npos);
                    CHECK(line.find(" entries of device owner, ") != std::string::npos);
                    CHECK(line.find(k.s.owner.book().stream().text()) != std::string::npos);
                } else {
                    CHECK(line.find(k.name) != std::string::npos);
                    CHECK((end == ".man" || line.find("piece ") != std::string::npos));
                }
                bytes[at] ^= 4;
                ++checked;
            }
        }
    }
    CHECK(checked >= 3 * 7);
    CHECK(k.lines().empty());
}

TEST_CASE("what is missing at the store is told, and an exchange that mends puts everything right")
{
    Kept k;
    for (const char *kind : {".ctl", ".seg", ".chk"}) {
        const auto files = k.filesOf(kind);
        const std::string bytes = k.s.store.files.at(files.front());
        k.s.store.files.erase(files.front());
        const auto lines = k.lines();
        REQUIRE(lines.size() == 1);
        CHECK(lines.front().find("not at the store") != std::string::npos);
        k.s.store.files.emplace(files.front(), bytes);
    }
    std::size_t damaged = 0;
    for (auto &[file, bytes] : k.s.store.files) {
        bytes[bytes.size() / 2] ^= 1;
        ++damaged;
    }
    CHECK(k.lines().size() >= 4);
    CHECK(k.s.owner.meet(k.s.store, {Originals::All, true}).damaged >= static_cast<std::int64_t>(damaged));
    CHECK(k.lines().empty());
    Party third("third");
    k.s.owner.enroll(third, k.s.rig, SyncRole::Helper);
    k.s.owner.meet(k.s.store);
    third.meet(k.s.store, {Originals::All, false});
    CHECK(projectionNow(third.book()) == projectionNow(k.s.owner.book()));
}
