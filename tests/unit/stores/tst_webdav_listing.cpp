// SPDX-License-Identifier: Apache-2.0
// PROPFIND answers [RFC4918] as the two servers write them, and as nobody should; escapes [RFC3986].
#include <doctest/doctest.h>

#include "sync/webdav_listing.hpp"

using namespace snugwalk;

namespace {

std::string answer(const std::string &responses)
{
    return R"(<?xml version="1.0" encoding="utf-8"?><D:multistatus xmlns:D="DAV:">)" + responses +
           "</D:multistatus>";
}

std::string file(const std::string &href, const std::string &size, const std::string &status = "200 OK")
{
    return "<D:response><D:href>" + href + "</D:href><D:propstat><D:prop><D:getcontentlength>" + size +
           "</D:getcontentlength><D:resourcetype/></D:prop><D:status>HTTP/1.1 " + status +
           "</D:status></D:propstat></D:response>";
}

std::string folder(const std::string &href)
{
    return "<D:response><D:href>" + href +
           "</D:href><D:propstat><D:prop><D:resourcetype><D:collection/></D:resourcetype></D:prop>"
           "<D:status>HTTP/1.1 200 OK</D:status></D:propstat></D:response>";
}

} // namespace

TEST_CASE("files and folders directly under the one asked for")
{
    const std::string xml = answer(
        folder("/dav/a/") + file("/dav/a/1.seg", "12") + file("https://example.org:8443/dav/a/%32.seg", "7") +
        folder("/dav/a/sub/") + folder("/dav/a/other") + file("/dav/a/sub/deep", "1"));
    const auto files = parseListing(xml, "/dav/a/");
    REQUIRE(files);
    REQUIRE(files->size() == 4);
    CHECK((*files)[0].name == "1.seg");
    CHECK((*files)[0].size == 12);
    CHECK((*files)[1].name == "2.seg");
    CHECK((*files)[2].name == "sub/");
    CHECK((*files)[3].name == "other/");
    CHECK(parseListing(xml, "/dav/a")->size() == 4);
    CHECK(parseListing(answer(""), "/dav")->empty());
}

TEST_CASE("another prefix for the namespace, properties found and not found, white space")
{
    const std::string xml =
        "<multistatus xmlns=\"DAV:\"><response><href>\n /d/a.seg \n</href>"
        "<propstat><prop><getetag/><resourcetype/></prop><status>HTTP/1.1 404 Not Found</status></propstat>"
        "<propstat><prop><getcontentlength> 5 </getcontentlength></prop><status>HTTP/1.1 200 "
        "OK</status></propstat>"
        "</response><response><href>/d/b.seg</href><status>HTTP/1.1 403 "
        "Forbidden</status></response></multistatus>";
    const auto files = parseListing(xml, "/d");
    REQUIRE(files);
    REQUIRE(files->size() == 1);
    CHECK(files->front().name == "a.seg");
    CHECK(files->front().size == 5);
}

TEST_CASE("names of strangers and tricks are left out")
{
    const auto files =
        parseListing(answer(file("/d/../etc", "1") + file("/d/%2e%2e", "1") + file("/d/..%2fx", "1") +
                            file("/d/A.seg", "1") + file("/d/a%00b", "1") + file("/d/a%2", "1") +
                            file("/other/a", "1") + file("/d/a%5cb", "1") + file("/dd", "1") + file("", "1") +
                            file("/d/neg", "-5") + file("/d/nan", "x") + file("/d/fine", "1")),
                     "/d");
    REQUIRE(files);
    REQUIRE(files->size() == 1);
    CHECK(files->front().name == "fine");
}

TEST_CASE("a sign-in page, a broken answer, entities, bombs")
{
    std::string deep;
    for (int i = 0; i < 2000; ++i)
        deep += "<x>";
    for (
        const std::string &xml :
        {std::string(), std::string("<html><body>Sign in</body></html>"),
         std::string("<!DOCTYPE html><html>"), answer("").substr(0, 60), std::string("{}"),
         R"(<!DOCTYPE x [<!ENTITY a "aaaa"><!ENTITY b "&a;&a;">]><D:multistatus xmlns:D="DAV:">&b;</D:multistatus>)" +
             std::string(),
         R"(<!DOCTYPE x SYSTEM "file:///etc/passwd"><D:multistatus xmlns:D="DAV:"/>)" + std::string(),
         answer(deep), answer("<D:response><D:href>" + std::string(20'000, 'a') + "</D:href></D:response>"),
         std::string("<multistatus xmlns='other:'/>"), std::string(maxListingBytes + 1, ' ')}) {
        const auto files = parseListing(xml, "/d");
        REQUIRE_FALSE(files);
        CHECK(files.error().code == Errc::Network);
    }
    std::string many;
    for (std::size_t i = 0; i <= maxListingItems; ++i)
        many += "<r:response><r:href>/" + std::to_string(i) + "</r:href></r:response>";
    const auto files = parseListing("<r:multistatus xmlns:r='DAV:'>" + many + "</r:multistatus>", "/");
    CHECK_FALSE(files);
}
