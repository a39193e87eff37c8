// SPDX-License-Identifier: Apache-2.0
// Names in archives: ours, harmless ones, and those that no honest archive has.
#include <doctest/doctest.h>

#include "exchange/archive_names.hpp"

using namespace snugwalk;

TEST_CASE("our own names are known, others are left alone")
{
    const Hash hash = blake2b("a picture");
    CHECK(memberName("manifest.json")->kind == MemberKind::Manifest);
    CHECK(memberName("entries.jsonl")->kind == MemberKind::Entries);
    CHECK(memberName("README.txt")->kind == MemberKind::Readme);
    CHECK(memberName("photos/")->kind == MemberKind::Folder);
    const auto photo = memberName(photoMemberName(hash, ".jpg"));
    REQUIRE(photo);
    CHECK(photo->kind == MemberKind::Photo);
    CHECK(photo->photo == hash);
    for (const std::string &other :
         {std::string("notes.txt"), std::string("Manifest.json"), std::string("photos/holiday.jpg"),
          "photos/" + hash.text() + ".gif", "photos/x/" + hash.text() + ".jpg", hash.text() + ".jpg",
          std::string("console.txt"), std::string("a..b"), std::string("caf\u00e9.txt")}) {
        CAPTURE(other);
        REQUIRE(memberName(other));
        CHECK(memberName(other)->kind == MemberKind::Other);
    }
}

TEST_CASE("names that lead elsewhere or fool a reader are refused")
{
    using namespace std::string_literals;
    for (const std::string &name : {""s,
                                    "/etc/passwd"s,
                                    "//server/share"s,
                                    "../x"s,
                                    "a/../b"s,
                                    "photos/../../x"s,
                                    ".."s,
                                    "."s,
                                    "./x"s,
                                    "a//b"s,
                                    "a/./b"s,
                                    "C:/x"s,
                                    "c:x"s,
                                    "..\\x"s,
                                    "a\\b"s,
                                    "\\\\server\\x"s,
                                    "x\0y"s,
                                    "x\ny"s,
                                    "x\x7fy"s,
                                    "con"s,
                                    "CON"s,
                                    "nul.txt"s,
                                    "photos/aux"s,
                                    "Com1.jpg"s,
                                    "lpt9"s,
                                    "PRN .txt"s,
                                    "x."s,
                                    "x "s,
                                    " x"s,
                                    "a./b"s,
                                    "a /b"s,
                                    "x:stream"s,
                                    "x*"s,
                                    "x?"s,
                                    "x|y"s,
                                    "x<y"s,
                                    "x\"y"s,
                                    "\xFF\xFE"s,
                                    "\xC0\xAE\xC0\xAE/x"s,
                                    "photo\u202Egpj.exe"s,
                                    "a\u2066b"s,
                                    std::string(256, 'a')}) {
        CAPTURE(name);
        const auto answer = memberName(name);
        REQUIRE_FALSE(answer);
        CHECK(answer.error().code == Errc::InvalidInput);
    }
}
