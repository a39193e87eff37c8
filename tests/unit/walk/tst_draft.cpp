// SPDX-License-Identifier: Apache-2.0
// What may not be written on a point, each refusal with its field and what to do.
#include <doctest/doctest.h>

#include <functional>
#include <limits>

#include "support/actions.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

const char *const point = "chains-condition";

Result<CheckedMark> check(const MarkDraft &draft)
{
    return checkMark(draft, *realCatalogue().find(draft.point), tandem());
}

void wantRefusal(const std::string &field, Errc code, MarkDraft draft,
                 const std::function<void(MarkDraft &)> &change)
{
    CAPTURE(field);
    change(draft);
    const auto checked = check(draft);
    REQUIRE_FALSE(checked);
    CHECK(checked.error().code == code);
    CHECK(checked.error().where.find(field) != std::string::npos);
    CHECK_FALSE(checked.error().what.empty());
    CHECK_FALSE(checked.error().act.empty());
}

FindingDraft &first(MarkDraft &draft) { return draft.findings.front(); }

} // namespace

TEST_CASE("the four marks")
{
    CHECK(check(passOf(point))->state == MarkState::Pass);
    CHECK(check(attentionOn(point, 3))->extents.size() == 1);
    for (const std::string &reason : reasons())
        CHECK(check(couldNotLook(point, reason)));
    MarkDraft draft = passOf(point);
    draft.state = MarkState::NotFitted;
    CHECK(check(draft));
}

TEST_CASE("state and reason")
{
    wantRefusal(point, Errc::InvalidInput, passOf(point),
                [](MarkDraft &d) { d.state = MarkState::NotLooked; });
    wantRefusal("reason", Errc::InvalidInput, couldNotLook(point), [](MarkDraft &d) { d.reason.clear(); });
    wantRefusal("reason", Errc::InvalidInput, couldNotLook(point), [](MarkDraft &d) { d.reason = "lazy"; });
    wantRefusal(point, Errc::InvalidInput, attentionOn(point, 3), [](MarkDraft &d) { d.findings.clear(); });
}

TEST_CASE("a finding needs a defect of the point and a grade of 1 to 5")
{
    const MarkDraft good = attentionOn(point, 3);
    wantRefusal("defect", Errc::InvalidInput, good, [](MarkDraft &d) { first(d).defect.clear(); });
    wantRefusal("defect", Errc::InvalidInput, good, [](MarkDraft &d) { first(d).defect = "ugly"; });
    for (const int grade : {-1, 0, 6, 1000})
        wantRefusal("grade", Errc::OutOfRange, good, [=](MarkDraft &d) { first(d).grade = grade; });
    const Id known = derivedId("test", "finding", "1");
    CHECK(check(lookAgain(point, known, 0)));
    CHECK(check(lookAgain(point, known, 5)));
    wantRefusal("grade", Errc::OutOfRange, lookAgain(point, known, 1),
                [](MarkDraft &d) { first(d).grade = 6; });
}

TEST_CASE("what is found needs attention: no other mark may carry it")
{
    for (const MarkState state : {MarkState::Pass, MarkState::NotFitted}) {
        wantRefusal(point, Errc::InvalidInput, attentionOn(point, 4), [=](MarkDraft &d) { d.state = state; });
        wantRefusal(point, Errc::InvalidInput, lookAgain(point, derivedId("t", "f", "1"), 2),
                    [=](MarkDraft &d) { d.state = state; });
    }
    // all that was found is gone: an attention would say there is something
    wantRefusal(point, Errc::InvalidInput, lookAgain(point, derivedId("t", "f", "1"), 0),
                [](MarkDraft &d) { d.state = MarkState::Attention; });
}

TEST_CASE("one finding is looked at once in a mark")
{
    wantRefusal("same", Errc::InvalidInput, lookAgain(point, derivedId("t", "f", "1"), 2),
                [](MarkDraft &d) { d.findings.push_back(first(d)); });
}

TEST_CASE("notes are text of a bearable length")
{
    wantRefusal("note", Errc::OutOfRange, passOf(point),
                [](MarkDraft &d) { d.note = std::string(4001, 'n'); });
    wantRefusal("note", Errc::OutOfRange, passOf(point), [](MarkDraft &d) { d.note = "\xC3\x28"; });
    wantRefusal("note", Errc::OutOfRange, attentionOn(point, 2),
                [](MarkDraft &d) { first(d).note = "\xC3\x28"; });
    wantRefusal("note", Errc::OutOfRange, attentionOn(point, 2),
                [](MarkDraft &d) { first(d).note = std::string(4001, 'n'); });
    CHECK(check(passOf(point, std::string(4000, 'n'))));
}

TEST_CASE("the place must be on the rig")
{
    const double nan = std::numeric_limits<double>::quiet_NaN();
    wantRefusal("place", Errc::OutOfRange, attentionOn(point, 2), [&](MarkDraft &d) {
        first(d).place = {"", Face::Top, RigPosition{metres(nan), metres(0), metres(1)}};
    });
    wantRefusal("place", Errc::InvalidInput, attentionOn(point, 2),
                [](MarkDraft &d) { first(d).place.named = "wheel 7R"; });
}

TEST_CASE("extents: lengths, counts, areas and readings")
{
    const auto si = [](const char *text) { return parseExtent(text).value()->si; };
    CHECK_FALSE(parseExtent("  ").value());
    CHECK(parseExtent("3").value()->dimension == Dimension::Count);
    CHECK(si("3") == 3.0);
    CHECK(parseExtent("14 mm").value()->dimension == Dimension::Length);
    CHECK(si("14 mm") == doctest::Approx(0.014));
    CHECK(si("1/2 in") == doctest::Approx(0.0127));                    // the inch is 25.4 mm [NIST-SP811] B.8
    CHECK(parseExtent("1/2").value()->dimension == Dimension::Length); // a bare fraction is of an inch
    CHECK(si("1/2") == doctest::Approx(0.0127));
    for (const char *bad : {"-3", "nan", "inf", "2.5", "some", "3 stone", "120 %", "300 m2", "-4 mm", "31 m",
                            "1e99 m", "1e99"}) {
        CAPTURE(bad);
        CHECK_FALSE(parseExtent(bad));
    }
    CHECK(parseExtent("20 cm2").value() == Extent{Dimension::Area, 20e-4, "cm²"});
    CHECK(si("2 in²") == doctest::Approx(2 * 0.0254 * 0.0254)); // [NIST-SP811] B.8
    CHECK(parseExtent("24 %").value() == Extent{Dimension::Fraction, 0.24, "%"});
    CHECK(parseExtent("0.3 V").value()->dimension == Dimension::Voltage);
    CHECK(parseExtent("12 kg").value()->dimension == Dimension::Mass);
    wantRefusal("extent", Errc::InvalidInput, attentionOn(point, 2),
                [](MarkDraft &d) { first(d).extentText = "big"; });
}
