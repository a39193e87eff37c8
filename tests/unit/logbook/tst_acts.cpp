// SPDX-License-Identifier: Apache-2.0
// What people do on a walk and what the logbook then shows.
#include <doctest/doctest.h>

#include "logbook/query.hpp"
#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("a rig is kept as given; saving it again writes only what changed")
{
    Walker walker;
    CHECK(rigOf(walker.book(), walker.rig.id).value() == walker.rig);
    const auto before = entryCount(walker.book());
    CHECK(saveRig(walker.book(), walker.rig, walker.doer).value() == walker.rig.id);
    CHECK(entryCount(walker.book()) == before);
    walker.rig.tires.placard = kilopascals(345);
    REQUIRE(saveRig(walker.book(), walker.rig, walker.doer));
    CHECK(entryCount(walker.book()) == before + 1);
    CHECK(rigOf(walker.book(), walker.rig.id).value() == walker.rig);
    CHECK(allRigs(walker.book())->size() == 1);
}

TEST_CASE("a walk keeps its tape and goes on after reopening at the same line")
{
    Walker walker;
    for (const std::size_t line : {0U, 1U}) {
        for (const std::string &point : walker.walk.tape[line].points)
            REQUIRE(walker.mark(passOf(point)));
    }
    Logbook &book = walker.home.reopened();
    const Walk open = openWalk(book, walker.rig.id).value().value();
    CHECK(open == walker.walk);
    REQUIRE(open.tape.size() == walker.walk.tape.size());
    CHECK(open.tape.back().points == walker.walk.tape.back().points);
    CHECK(nextLine(open, marksOf(book, open.id).value()) == 2);
}

TEST_CASE("a mark again replaces the first")
{
    Walker walker;
    REQUIRE(walker.mark(passOf("chains-run", "first")));
    REQUIRE(walker.mark(couldNotLook("chains-run")));
    const auto marks = marksOf(walker.book(), walker.walk.id).value();
    REQUIRE(marks.size() == 1);
    CHECK(marks[0].state == MarkState::CouldNotLook);
    CHECK(marks[0].reason == "wet_or_icy");
    CHECK(marks[0].note.empty());
    REQUIRE(walker.mark(passOf("chains-run")));
    CHECK(marksOf(walker.book(), walker.walk.id)->front().reason.empty());
}

TEST_CASE("a mark keeps readings, time, zone, who and where; the receipt tells what is outside")
{
    Walker walker("test", "full_round");
    walker.doer.where = GeoPoint{-44.262, 170.105, std::nullopt, metres(4)};
    MarkDraft draft = passOf("tire-pressure");
    draft.how = LookedHow::Measured;
    draft.readings = {{"cold-pressure", "wheel 1L", "300 kPa"}};
    const MarkReceipt receipt = walker.mark(draft).value();
    REQUIRE(receipt.warnings.size() == 1);
    const Mark mark = marksOf(walker.book(), walker.walk.id)->front();
    CHECK(mark.id == receipt.mark);
    CHECK(mark.readings.front().si == 300000.0);
    CHECK(mark.at == timeAt("2026-03-14T09:01:00+13:00"));
    CHECK(mark.by == "W. Tester");
    CHECK(mark.where == walker.doer.where);
    CHECK(mark.how == LookedHow::Measured);
}

TEST_CASE("a finding lives from walk to walk: looked at again, mended, confirmed, come back")
{
    Walker walker;
    const Id finding = walker.mark(attentionOn("chains-condition", 2, "hairline"))->findings.front();
    walker.nextWalk();
    REQUIRE(walker.mark(lookAgain("chains-condition", finding, 4)));
    auto history = findingHistories(walker.book(), walker.rig.id)->front();
    CHECK(history.finding.id == finding);
    CHECK(history.looks.size() == 2);
    CHECK(history.looks.back().grade == 4);
    CHECK(statusOf(history) == FindingStatus::Open);

    walker.home.clock.advance(std::chrono::hours(1));
    Mend mend;
    mend.rig = walker.rig.id;
    mend.at = walker.home.clock.now();
    mend.findings = {finding};
    mend.action = "replace";
    REQUIRE(addMend(walker.book(), mend, walker.doer));
    history = findingHistories(walker.book(), walker.rig.id)->front();
    CHECK(statusOf(history) == FindingStatus::Mended);
    walker.nextWalk();
    REQUIRE(walker.mark(passOf("chains-condition")));
    history = findingHistories(walker.book(), walker.rig.id)->front();
    CHECK(history.pointPasses.size() == 1);
    CHECK(statusOf(history) == FindingStatus::Confirmed);
    walker.nextWalk();
    REQUIRE(walker.mark(lookAgain("chains-condition", finding, 1)));
    CHECK(statusOf(findingHistories(walker.book(), walker.rig.id)->front()) == FindingStatus::Open);
}

TEST_CASE("passes of another rig or point do not confirm a mend")
{
    Walker walker;
    REQUIRE(walker.mark(attentionOn("chains-condition", 2)));
    REQUIRE(walker.mark(passOf("chains-run")));
    Rig second = southernTwinAxle();
    second.id = saveRig(walker.book(), second, walker.doer).value();
    const Walk other =
        startWalk(walker.book(), realCatalogue(), second, "before_road", {}, {}, walker.doer).value();
    REQUIRE(
        markPoint(walker.book(), realCatalogue(), second, other, passOf("chains-condition"), walker.doer));
    CHECK(findingHistories(walker.book(), walker.rig.id)->front().pointPasses.empty());
    CHECK(findingHistories(walker.book(), second.id)->empty());
}

TEST_CASE("a line in one go marks what has no mark yet, and one undo takes it back")
{
    Walker walker;
    const auto line = std::find_if(walker.walk.tape.begin(), walker.walk.tape.end(),
                                   [](const TapeLine &l) { return l.points.size() > 2; });
    REQUIRE(line != walker.walk.tape.end());
    REQUIRE(walker.mark(couldNotLook(line->points[1])));
    REQUIRE(markLine(walker.book(), walker.walk, *line, MarkState::Pass, LookedHow::Glance, "", walker.doer));
    CHECK(walker.stateOf(line->points[0]) == MarkState::Pass);
    CHECK(walker.stateOf(line->points[1]) == MarkState::CouldNotLook);
    REQUIRE(walker.undo());
    CHECK(walker.stateOf(line->points[0]) == MarkState::NotLooked);
    CHECK(walker.stateOf(line->points[1]) == MarkState::CouldNotLook);
}

TEST_CASE("photos, happenings and stays are kept")
{
    Walker walker;
    const auto receipt = walker.mark(attentionOn("chains-condition", 3)).value();
    Photo photo;
    photo.rig = walker.rig.id;
    photo.finding = receipt.findings.front();
    photo.look = receipt.looks.front();
    photo.hash = blake2b("photo").text();
    photo.mime = "image/jpeg";
    photo.added = walker.home.clock.now();
    photo.id = addPhoto(walker.book(), photo, walker.doer).value();
    CHECK(photosOf(walker.book(), walker.rig.id).value() == std::vector<Photo>{photo});
    CHECK(findingHistories(walker.book(), walker.rig.id)->front().photos == std::vector<Photo>{photo});

    Happening hail{Id{}, walker.rig.id, "hail", walker.home.clock.now(), "as peas"};
    hail.id = addHappening(walker.book(), hail, walker.doer).value();
    CHECK(happeningsOf(walker.book(), walker.rig.id).value() == std::vector<Happening>{hail});
    Stay stay;
    stay.rig = walker.rig.id;
    stay.from = walker.home.clock.now();
    stay.place = {-44.262, 170.105, std::nullopt, std::nullopt};
    CHECK(addStay(walker.book(), stay, walker.doer));
    CHECK(staysOf(walker.book(), walker.rig.id)->size() == 1);
}

TEST_CASE("weather records are kept once; what is none is refused")
{
    Walker walker;
    WeatherRecord record;
    record.rig = walker.rig.id;
    record.sourceName = "station.csv";
    record.place = {-44.262, 170.105, std::nullopt, std::nullopt};
    const CivilDate first = civilDate(walker.home.clock.now());
    for (int i = 0; i < 3; ++i)
        record.days.push_back({addDays(first, i), celsius(-2.0), celsius(7.5), {}, {}, {}, {}});
    record.id = addWeather(walker.book(), record, walker.doer).value();
    CHECK(weatherOf(walker.book(), walker.rig.id).value() == std::vector<WeatherRecord>{record});
    CHECK(addWeather(walker.book(), record, walker.doer).error().code == Errc::Conflict);
    std::swap(record.days[0], record.days[1]);
    CHECK(addWeather(walker.book(), record, walker.doer).error().code == Errc::InvalidInput);
    record.days.clear();
    CHECK(addWeather(walker.book(), record, walker.doer).error().code == Errc::OutOfRange);
    record.days.resize(weatherDaysLimit + 1);
    CHECK(addWeather(walker.book(), record, walker.doer).error().code == Errc::OutOfRange);
    record.days.resize(1);
    record.place.latitude = 95.0;
    CHECK(addWeather(walker.book(), record, walker.doer).error().where == "weather");
    CHECK(weatherOf(walker.book(), walker.rig.id)->size() == 1);
}
