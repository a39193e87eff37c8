// SPDX-License-Identifier: Apache-2.0
// A document as a page: everything in it, nothing fetched, words as they are.
#include <doctest/doctest.h>

#include "data/embedded.hpp"
#include "html/document_html.hpp"
#include "support/rigs.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const Texts &english()
{
    static const Texts texts = productTexts("en").value();
    return texts;
}

Document with(std::vector<Block> blocks)
{
    return {"en", "A <b> & \"c\"", "Heron, 2026-11-24", std::move(blocks),
            "The </style> foot \"x\" \\ of it."};
}

std::string page(std::vector<Block> blocks, html::PagePhotos photos = {})
{
    return html::documentPage(with(std::move(blocks)),
                              {english(), UnitSystem::Si, std::move(photos), nullptr});
}

int count(const std::string &text, const std::string &what)
{
    int found = 0;
    for (std::size_t at = text.find(what); at != text.npos; at = text.find(what, at + what.size()))
        ++found;
    return found;
}

PhotoPicture photo(const std::string &caption)
{
    PhotoPicture picture;
    picture.photo.width = 40;
    picture.photo.height = 30;
    picture.caption = caption;
    return picture;
}

const html::PagePhotos anyPhoto = [](const Photo &) { return html::PagePhoto{"JPEG", "image/jpeg"}; };

} // namespace

TEST_CASE("words are escaped in the page, in its title and in the printed foot")
{
    const std::string out = page({TextBlock{"5 < 6 & 'so'", TextTone::Plain}});
    CHECK(count(out, "<h1>A &lt;b&gt; &amp; &quot;c&quot;</h1>") == 1);
    CHECK(count(out, "5 &lt; 6 &amp; &#39;so&#39;") == 1);
    CHECK(count(out, "</style>") == 1);
    CHECK(count(out, "\\3c /style>") == 1);
    CHECK(count(out, "lang='en'") == 1);
}

TEST_CASE("nothing outside the page is named")
{
    const std::string out = page({PhotosBlock{{photo("one")}}}, anyPhoto);
    CHECK(count(out, "default-src 'none'") == 1);
    CHECK(count(out, "data:image/jpeg;base64,SlBFRw==") == 1);
    CHECK(count(out, "src='data:") == count(out, "src="));
    CHECK(count(out, "href='data:") == count(out, "href="));
    CHECK(count(out, "http://") == count(out, "http://www.w3.org/2000/svg"));
    CHECK(count(out, "https://") == 0);
}

TEST_CASE("a photo that is elsewhere is said to be, with its words")
{
    const std::string out = page({PhotosBlock{{photo("seam, 2025")}}});
    CHECK(count(out, "<img") == 0);
    CHECK(count(out, "The photo is on another device.") == 1);
    CHECK(count(out, "seam, 2025") == 1);
}

TEST_CASE("only a whole pair can be pressed")
{
    CHECK(count(page({PairBlock{"Seam", photo("then"), photo("now")}}, anyPhoto), "<button") == 1);
    const std::string half = page({PairBlock{"Seam", std::nullopt, photo("now")}}, anyPhoto);
    CHECK(count(half, "<button") == 0);
    CHECK(count(half, "<img") == 1);
}

TEST_CASE("a table has a head, and numbers stand to the right")
{
    const std::string out = page({TableBlock{{"What", "Mass"}, {false, true}, {{"hitch", "120 kg"}}}});
    CHECK(count(out, "<th scope='col'>What</th>") == 1);
    CHECK(count(out, "<td class='number'>120 kg</td>") == 1);
    CHECK(count(out, "<thead>") == 1);
}

TEST_CASE("each finding of the drawing has its balloon, in the order of the spots")
{
    const Rig rig = tandem();
    RigDrawingBlock drawing{rig, {}, ""};
    const auto spot = [](int number, double aft, Face face) {
        return RigSpot{number, Call::Watch,
                       RigPlace{"", face, RigPosition{metres(aft), metres(0.1), metres(1.0)}}};
    };
    drawing.spots = {spot(1, 4.0, Face::Right), spot(2, 1.0, Face::Right), spot(3, 2.0, Face::Top)};
    const std::string out = page({drawing});
    const auto at = [&](int n) { return out.find("stroke='none'>" + std::to_string(n) + "</text>"); };
    REQUIRE(at(1) != out.npos);
    CHECK(at(1) < at(2)); // its kerb side is the right one: further aft, so further left
    CHECK(at(3) > at(2)); // under the plan
    CHECK(count(out, "findings at the numbers 1, 2, 3") == 1);
}

TEST_CASE("blanks and signatures give lines to write on")
{
    const std::string out =
        page({BlankBlock{"Price", 3}, SignatureBlock{"Hands out"}, TickBlock{{"key", "papers"}}});
    CHECK(count(out, "class='row'") == 3 + 2);
    CHECK(count(out, "class='box'") == 2);
}

TEST_CASE("what was signed on the screen is drawn, what was not is a line")
{
    const std::string empty = page({SignatureBlock{"Hands it over"}});
    CHECK(count(empty, "<svg") == 0);
    CHECK(count(empty, "class='row'") == 2);
    const Signature drawn{{{{0.1, 0.05}, {0.5, 0.25}}, {{0.9, 0.1}}}, "12 March 2027 <noon>"};
    const std::string signedPage = page({SignatureBlock{"Hands it over", drawn}});
    CHECK(count(signedPage, "viewBox='0 0 1000 300'") == 1);
    CHECK(count(signedPage, "d='M100.0 50.0L500.0 250.0'") == 1);
    CHECK(count(signedPage, "d='M900.0 100.0h0.1'") == 1);
    CHECK(count(signedPage, "12 March 2027 &lt;noon&gt;") == 1);
    CHECK(count(signedPage, "class='row'") == 0);
}
