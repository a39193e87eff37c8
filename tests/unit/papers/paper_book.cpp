// SPDX-License-Identifier: Apache-2.0
// What happened to the rig, act by act.
#include "paper_book.hpp"

#include <doctest/doctest.h>

#include <algorithm>

#include "base/text.hpp"
#include "logbook/own_points.hpp"
#include "logbook/query.hpp"
#include "papers/plain_text.hpp"
#include "round/accept.hpp"
#include "round/history.hpp"

namespace snugwalk::test {
namespace {

const GeoPoint spot{-44.123456, 170.654321, 700.0, std::nullopt};

bool hasCaution(const std::string &slug, std::string_view code)
{
    const Point *point = realCatalogue().find(slug);
    return point != nullptr &&
           std::find(point->cautions.begin(), point->cautions.end(), code) != point->cautions.end();
}

std::vector<std::string> tapeOf(const Walk &walk)
{
    std::vector<std::string> points;
    for (const TapeLine &line : walk.tape)
        points.insert(points.end(), line.points.begin(), line.points.end());
    return points;
}

template <typename Found>
std::string firstOf(const std::vector<std::string> &points, Found found)
{
    const auto at = std::find_if(points.begin(), points.end(), found);
    REQUIRE(at != points.end());
    return *at;
}

} // namespace

PaperBook::PaperBook() : walker("papers", "before_road")
{
    walker.doer.where = spot;
    firstWalk();
    roundInBetween();
    lastWalk();
    takeStanding();
}

Id PaperBook::photoOf(const Id &finding, const Id &look, char digit)
{
    walker.home.clock.advance(std::chrono::minutes(1));
    Photo photo;
    photo.rig = walker.rig.id;
    photo.finding = finding;
    photo.look = look;
    photo.hash = std::string(64, digit);
    photo.mime = "image/jpeg";
    photo.width = 640;
    photo.height = 480;
    photo.taken = walker.book().now();
    photo.where = spot;
    photo.caption = std::string("photo ") + digit;
    return addPhoto(walker.book(), photo, walker.doer).value();
}

void PaperBook::firstWalk()
{
    const std::vector<std::string> tape = tapeOf(walker.walk);
    gasPoint = firstOf(tape, [](const std::string &p) { return hasCaution(p, "c"); });
    missedPoint = firstOf(tape, [&](const std::string &p) {
        return p != gasPoint && realCatalogue().find(p)->hold && p != "wheel-nut-torque";
    });
    for (const std::string &point : tape) {
        if (point == gasPoint) {
            const auto receipt = walker.mark(attentionOn(point, 2, "hose rubs"));
            REQUIRE(receipt);
            gasFinding = receipt->findings.front();
            photoOf(gasFinding, {}, 'a');
            photoOf(gasFinding, {}, 'b');
        } else if (point != tape.back()) { // the last has no mark
            REQUIRE(walker.mark(passOf(point)));
        }
    }
}

void PaperBook::roundInBetween()
{
    walker.nextWalk("full_round");
    walker.home.clock.advance(std::chrono::hours(24));
    MarkDraft damp = passOf("moisture-map");
    damp.readings = {{"moisture", "", "14 %", "pin meter"}};
    REQUIRE(walker.mark(damp));
    MarkDraft weight = passOf("gross-weight");
    weight.readings = {{"gross-weight", "", "1900 kg", "platform scale"}};
    REQUIRE(walker.mark(weight));
    const auto loose = walker.mark(attentionOn("wheel-nut-torque", 3, "one turned by hand"));
    REQUIRE(loose);
    mendedFinding = loose->findings.front();
    Mend mend;
    mend.rig = walker.rig.id;
    mend.findings = {mendedFinding};
    mend.action = "retorque";
    mend.what = "all nuts in star order";
    mend.parts = {{"wheel nuts", 1.0, ""}};
    mend.minutes = 25.0;
    mend.cost = "NZD 12.00";
    walker.home.clock.advance(std::chrono::minutes(5));
    mend.at = walker.book().now();
    mend.by = walker.doer.by;
    REQUIRE(addMend(walker.book(), mend, walker.doer));
}

void PaperBook::lastWalk()
{
    hiddenPoint = "tire-speed-symbol";
    REQUIRE(hidePoint(walker.book(), realCatalogue(), walker.rig.id, hiddenPoint, "", walker.doer));
    walker.nextWalk("before_road");
    walker.home.clock.advance(std::chrono::hours(48));
    walker.doer.by = "P. Second";
    for (const std::string &point : tapeOf(walker.walk)) {
        if (point == missedPoint)
            REQUIRE(walker.mark(couldNotLook(point)));
        else if (point != gasPoint && point != "wheel-nut-torque")
            REQUIRE(walker.mark(passOf(point)));
    }
    Trip trip;
    trip.rig = walker.rig.id;
    trip.title = "to the lake";
    trip.start = timeAt("2026-02-01T09:00:00+13:00");
    trip.end = timeAt("2026-02-01T11:00:00+13:00");
    trip.summary.length = kilometres(80);
    trip.outline = {spot, {-44.25, 170.1, std::nullopt, std::nullopt}};
    REQUIRE(addTrip(walker.book(), trip, walker.doer));
    const auto own = ownChoicesOf(walker.book(), walker.rig.id);
    REQUIRE(own);
    const Catalogue mine = realCatalogue().withOwn(*own);
    const auto history = loadHistory(walker.book(), walker.rig.id);
    REQUIRE(history);
    const Standing now = standingOf(mine, *history, walker.book().now());
    Result<Acceptance> accepted = acceptable(now, missedPoint);
    REQUIRE_MESSAGE(accepted, (accepted ? "" : accepted.error().what));
    accepted->reason = "wet_or_icy";
    accepted->knowing = "the latch may open";
    accepted->by = walker.doer.by;
    accepted->at = walker.book().now();
    REQUIRE(acceptMissed(walker.book(), *accepted, Role::Owner, walker.doer));
}

void PaperBook::takeStanding()
{
    walker.home.clock.advance(std::chrono::hours(1));
    const auto own = ownChoicesOf(walker.book(), walker.rig.id);
    REQUIRE(own);
    catalogue = realCatalogue().withOwn(*own);
    const auto history = loadHistory(walker.book(), walker.rig.id);
    REQUIRE(history);
    standing = standingOf(catalogue, *history, walker.book().now());
    supplies =
        SupplyList::load(slurp(std::string(SNUGWALK_SOURCE_DIR) + "/core/catalogue/data/supplies.json"))
            .value();
    photos = photosOf(walker.book(), walker.rig.id).value();
    chains = chainHeads(walker.book()).value();
}

papers::PaperSource PaperBook::source(const std::string &language) const
{
    return {catalogue, realTexts(language), supplies, standing, photos, chains};
}

Document PaperBook::compose(papers::PaperKind kind, const papers::PaperOptions &options,
                            const std::string &language) const
{
    papers::PaperOptions chosen = options;
    chosen.language = language;
    Result<Document> document = papers::compose(kind, source(language), chosen);
    REQUIRE_MESSAGE(document, (document ? "" : document.error().what + " " + document.error().where));
    return std::move(document).value();
}

std::string wordsOf(const Document &document, const Texts &texts)
{
    return replaceAll(papers::plainText(document, texts, 100000), "\n", " ");
}

} // namespace snugwalk::test
