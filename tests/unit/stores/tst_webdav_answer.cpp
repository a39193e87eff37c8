// SPDX-License-Identifier: Apache-2.0
// Every status code for every verb: only the verb's own codes are a success.
#include <doctest/doctest.h>

#include <map>
#include <set>

#include "sync/webdav_answer.hpp"

using namespace snugwalk;

TEST_CASE("a success is one of the codes that the verb itself has")
{
    // [RFC4918] sections 9.1, 9.3, 9.7, 9.9; [RFC9110] sections 9.3.1, 9.3.2, 9.3.4, 9.3.5 (from memory)
    const std::map<DavVerb, std::set<int>> own = {
        {DavVerb::List, {207}},          {DavVerb::Get, {200}},       {DavVerb::Head, {200}},
        {DavVerb::Put, {200, 201, 204}}, {DavVerb::Move, {201, 204}}, {DavVerb::MakeFolder, {201}},
        {DavVerb::Delete, {200, 204}}};
    for (const auto &[verb, codes] : own) {
        for (int status = 0; status < 700; ++status) {
            CAPTURE(status);
            CHECK((meaningOf(verb, status) == DavMeaning::Done) == (codes.count(status) > 0));
        }
    }
}

TEST_CASE("what to do about the rest")
{
    using enum DavMeaning;
    for (const DavVerb verb : {DavVerb::List, DavVerb::Get, DavVerb::Put, DavVerb::Head}) {
        CHECK(meaningOf(verb, 401) == StopAuth);
        CHECK(meaningOf(verb, 403) == StopAuth);
        CHECK(meaningOf(verb, 404) == Missing);
        CHECK(meaningOf(verb, 413) == StopFull);
        CHECK(meaningOf(verb, 423) == Locked);
        CHECK(meaningOf(verb, 429) == Retry);
        CHECK(meaningOf(verb, 500) == Retry);
        CHECK(meaningOf(verb, 502) == Retry);
        CHECK(meaningOf(verb, 503) == Retry);
        CHECK(meaningOf(verb, 507) == StopFull);
        CHECK(meaningOf(verb, 302) == StopElsewhere);
        CHECK(meaningOf(verb, 400) == Bug);
    }
    CHECK(meaningOf(DavVerb::MakeFolder, 405) == Taken);
    CHECK(meaningOf(DavVerb::MakeFolder, 409) == Parent);
    CHECK(meaningOf(DavVerb::Put, 409) == Parent);
    CHECK(meaningOf(DavVerb::Move, 412) == Taken);
    CHECK(meaningOf(DavVerb::Move, 405) == Refused);
    CHECK(meaningOf(DavVerb::List, 200) == StopPortal);
    CHECK(meaningOf(DavVerb::MakeFolder, 200) == StopPortal);
    CHECK(meaningOf(DavVerb::Move, 200) == StopPortal);
    for (const DavMeaning meaning : {Missing, Parent, Taken, Locked, Refused, Retry, StopAuth, StopFull,
                                     StopTls, StopElsewhere, StopPortal, Bug}) {
        const Error error = errorOf(meaning, 500, "x");
        CHECK_FALSE(error.what.empty());
        CHECK_FALSE(error.act.empty());
    }
    CHECK(errorOf(StopFull, 507, "x").code == Errc::Io);
    CHECK(errorOf(Missing, 404, "x").code == Errc::NotFound);
}

TEST_CASE("waiting doubles, has a limit, and follows the server's wish within reason")
{
    using namespace std::chrono_literals;
    CHECK(waitBefore(1, 0, {}, 15min) == 1s);
    CHECK(waitBefore(2, 0, {}, 15min) == 2s);
    CHECK(waitBefore(3, 1, {}, 15min) == 6s);
    CHECK(waitBefore(60, 0, {}, 15min) == 15min);
    CHECK(waitBefore(1, 0, 30s, 15min) == 30s);
    CHECK(waitBefore(1, 0, std::chrono::seconds(1'000'000), 15min) == 15min);
    CHECK(waitBefore(1, 0, std::chrono::seconds(-5), 15min) == 1s);
}
