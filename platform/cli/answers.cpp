// SPDX-License-Identifier: Apache-2.0
// Parts of answers that several commands give.
#include "cli/answers.hpp"

#include "round/history.hpp"
#include "trip/place_code.hpp"
#include "walk/walk_value.hpp"
#include "words/finding_words.hpp"
#include "words/words.hpp"

namespace snugwalk::cli {

Result<Standing> standing(Session &session)
{
    const Result<Rig> rig = session.rig();
    const Result<LocalTime> now = session.now();
    if (!rig || !now)
        return rig ? now.error() : rig.error();
    Result<RigHistory> history = loadHistory(**session.book(), rig->id);
    if (!history)
        return history.error();
    weatherHistory(*history, &session.world(), *now);
    return standingOf(session.catalogue(), std::move(history).value(), *now);
}

Value estimateValue(const Estimate &e)
{
    Value::List warnings(e.warnings.begin(), e.warnings.end());
    Value::List defaulted(e.inputsDefaulted.begin(), e.inputsDefaulted.end());
    return Value::Map{{"value", e.value},   {"unit", e.unit},       {"low", e.low},
                      {"high", e.high},     {"level", e.level},     {"basis", e.basis},
                      {"source", e.source}, {"warnings", warnings}, {"inputs_defaulted", defaulted}};
}

Value cellValue(const GeoPoint &place)
{
    const CellSpan span = geohashSpan();
    return Value::Map{{"geohash", geohash(place)},
                      {"open_location_code", openLocationCode(place)},
                      {"height", Value::Map{{"value", span.latitude}, {"unit", "°"}}},
                      {"width", Value::Map{{"value", span.longitude}, {"unit", "°"}}}};
}

Value countsValue(const Counts &c)
{
    return Value::Map{{"points", c.points},
                      {"pass", c.pass},
                      {"attention", c.attention},
                      {"not_fitted", c.notFitted},
                      {"could_not_look", c.couldNotLook},
                      {"not_looked", c.notLooked}};
}

Value walkJson(const Walk &walk, const std::vector<Mark> &marks)
{
    Value value = toValue(walk);
    value.member("id") = walk.id.text();
    value.member("counts") = countsValue(countMarks(walk, marks));
    Value::List list;
    for (const Mark &mark : marks)
        list.push_back(toValue(mark));
    value.member("marks") = list;
    const auto next = nextLine(walk, marks);
    value.member("next_line") = next ? Value(walk.tape[*next].slug) : Value();
    return value;
}

Value reasonJson(const Reason &reason)
{
    Value::Map out{{"reason", reason.slug}, {"detail", reason.detail}};
    if (reason.si) {
        out["value"] = *reason.si;
        out["unit"] = siSymbol(reason.dimension);
    }
    return out;
}

Value findingJson(const FindingHistory &h)
{
    Value value = toValue(h.finding);
    value.member("id") = h.finding.id.text();
    value.member("status") = slug(statusOf(h));
    Value::List looks;
    for (const Look &look : h.looks) {
        Value one = toValue(look);
        one.member("id") = look.id.text();
        looks.push_back(one);
    }
    value.member("looks") = looks;
    Value::List mends;
    for (const Mend &mend : h.mends) {
        Value one = toValue(mend);
        one.member("id") = mend.id.text();
        mends.push_back(one);
    }
    value.member("mends") = mends;
    Value::List photos;
    for (const Photo &photo : h.photos) {
        Value one = toValue(photo);
        one.member("id") = photo.id.text();
        photos.push_back(one);
    }
    value.member("photos") = photos;
    Value::List drawings;
    for (const Drawing &drawing : h.drawings)
        drawings.push_back(toValue(drawing));
    value.member("drawings") = drawings;
    return value;
}

std::string findingLine(Session &session, const Rig &rig, const FindingHistory &history)
{
    return history.finding.id.shortText() + "  " +
           padded(session.texts().word("statuses", slug(statusOf(history))), 12) +
           findingWords(rig, history, session.texts(), session.units()) + "\n";
}

} // namespace snugwalk::cli
