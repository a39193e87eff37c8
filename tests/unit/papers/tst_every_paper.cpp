// SPDX-License-Identifier: Apache-2.0
// What holds for each kind of document, in each language.
#include <doctest/doctest.h>

#include <algorithm>
#include <regex>

#include "base/text.hpp"
#include "paper_book.hpp"
#include "papers/plain_text.hpp"

using namespace snugwalk;
using namespace snugwalk::papers;
using namespace snugwalk::test;

namespace {

const PaperBook &theBook()
{
    static const PaperBook book;
    return book;
}

bool holds(const std::string &text, const std::string &words)
{
    return text.find(words) != std::string::npos;
}

// The finding is open and the walks are there, so that no kind is refused.
template <typename Check>
void forEveryPaper(Check check)
{
    for (const char *language : {"en", "es"}) {
        for (const PaperKind kind : allPaperKinds()) {
            CAPTURE(language);
            CAPTURE(std::string(slug(kind)));
            const Document document = theBook().compose(kind, {}, language);
            check(document, kind, realTexts(language));
        }
    }
}

} // namespace

TEST_CASE("slugs are read back, and each differs")
{
    for (const PaperKind kind : allPaperKinds())
        CHECK(parsePaperKind(slug(kind)) == kind);
    CHECK(allPaperKinds().size() == 13);
    CHECK_FALSE(parsePaperKind("inspection"));
}

TEST_CASE("title, language, footer with everyone who looked")
{
    forEveryPaper([](const Document &document, PaperKind kind, const Texts &texts) {
        CHECK(document.title == paperTitle(kind, texts));
        CHECK(holds(document.subtitle, theBook().walker.rig.name));
        CHECK(holds(document.subtitle, "(UTC+13)"));
        const std::string whole = texts.text("report_footer");
        const std::size_t at = whole.find("{who}");
        CHECK(document.footer.starts_with(whole.substr(0, at)));
        CHECK(document.footer.ends_with(whole.substr(at + 5)));
        CHECK(holds(document.footer, "W. Tester"));
        if (kind == PaperKind::Walk || kind == PaperKind::RoadSlip || kind == PaperKind::Survey)
            CHECK(holds(document.footer, "P. Second"));
    });
}

TEST_CASE("what was not looked at is listed, and a hidden point of the road is named with who and when")
{
    forEveryPaper([](const Document &document, PaperKind, const Texts &texts) {
        const std::string words = wordsOf(document, texts);
        CHECK(holds(words, texts.phrase("paper_not_looked")));
        const HiddenBy &hidden = *theBook().catalogue.find(theBook().hiddenPoint)->hidden;
        CHECK(holds(words, texts.point(theBook().hiddenPoint).title + ": " +
                               texts.phrase("hidden_by", {"W. Tester", formatDate(hidden.date)})));
    });
}

TEST_CASE("no words are missing and none promises anything")
{
    // the words that DEVELOPERS.md keeps out of every text
    const std::regex promises(
        "\\b(safe|safely|ok|okay|good|cleared|fit|ready|roadworthy|segur[oa]s?|apt[oa]s?)\\b",
        std::regex::icase);
    forEveryPaper([&](const Document &document, PaperKind, const Texts &texts) {
        const std::string words = wordsOf(document, texts);
        CHECK_FALSE(holds(words, "paper_"));
        CHECK_FALSE(std::regex_search(words, std::regex("%[0-9]")));
        CHECK(isUtf8(words));
        std::smatch found;
        CHECK_MESSAGE(!std::regex_search(words, found, promises), found.str());
    });
}

TEST_CASE("no place on earth unless asked, and then no more of it than asked")
{
    PaperOptions coarse;
    coarse.place = PlaceDetail::Coarse;
    PaperOptions exact;
    exact.place = PlaceDetail::Exact;
    for (const PaperKind kind : allPaperKinds()) {
        CAPTURE(std::string(slug(kind)));
        for (const PaperOptions &options : {PaperOptions(), coarse}) {
            const Document document = theBook().compose(kind, options);
            CHECK_FALSE(holds(wordsOf(document, realTexts()), "44.123"));
            CHECK_FALSE(holds(wordsOf(document, realTexts()), "170.654"));
            for (const Block &block : document.blocks) {
                if (const auto *photos = std::get_if<PhotosBlock>(&block)) {
                    for (const PhotoPicture &picture : photos->photos)
                        CHECK(picture.photo.where ==
                              placeToTell(GeoPoint{-44.123456, 170.654321, {}, {}}, options.place));
                }
            }
        }
    }
    for (const PaperKind kind :
         {PaperKind::Walk, PaperKind::RoadSlip, PaperKind::Damage, PaperKind::Survey}) {
        CAPTURE(std::string(slug(kind)));
        const Texts &texts = realTexts();
        CHECK(holds(wordsOf(theBook().compose(kind), texts), texts.phrase("paper_place_left_out")));
        // geohash cell of 0.0439453125 degrees, its middle: from memory of [GEOHASH], 180/4096
        CHECK(holds(wordsOf(theBook().compose(kind, coarse), texts), "about 5 km: -44.14, 170.66 ("));
        CHECK(holds(wordsOf(theBook().compose(kind, exact), texts), "-44.12346, 170.65432"));
    }
}

TEST_CASE("as plain text no line is longer than asked, and none is lost")
{
    forEveryPaper([](const Document &document, PaperKind, const Texts &texts) {
        const std::string text = plainText(document, texts);
        for (const std::string_view line : split(text, '\n'))
            CHECK(std::count_if(line.begin(), line.end(), [](char c) {
                      return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U;
                  }) <= 72);
        CHECK(text.starts_with(document.title + "\n="));
        CHECK(text.ends_with(".\n"));
    });
}
