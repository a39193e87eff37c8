// SPDX-License-Identifier: Apache-2.0
// Acts that set one thing.
#include "logbook/acts.hpp"

#include <algorithm>

#include "logbook/query.hpp"
#include "rig/rig_value.hpp"
#include "trip/trip_value.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

// Records one thing with its value's members as fields.
Result<Id> recordThing(Logbook &book, const Id &id, const char *type, const Value &value, const Doer &doer)
{
    const Act act{doer.by, doer.at, doer.where, Id{}, Id{}, {{id, type, value.map()}}};
    const Result<Receipt> receipt = book.record(act);
    if (!receipt)
        return receipt.error();
    return id;
}

Id idOrNew(Logbook &book, const Id &id) { return id.isNull() ? book.newId() : id; }

} // namespace

Result<Id> saveRig(Logbook &book, const Rig &rig, const Doer &doer)
{
    const std::vector<Problem> problems = validate(rig);
    if (!problems.empty())
        return Error{Errc::InvalidInput, problems.front().what, problems.front().field, problems.front().act};
    return recordThing(book, idOrNew(book, rig.id), "rig", toValue(rig), doer);
}

Result<Id> addMend(Logbook &book, const Mend &mend, const Doer &doer)
{
    const auto &actions = mendActions();
    if (std::find(actions.begin(), actions.end(), mend.action) == actions.end())
        return Error{Errc::InvalidInput, "unknown kind of mend \"" + mend.action + "\"", "action",
                     "use replace, reseal, retorque, clean, lubricate, adjust or other"};
    if (mend.findings.empty() && mend.points.empty())
        return Error{Errc::InvalidInput, "a mend of nothing", "mend", "name a finding or a point"};
    for (const Id &id : mend.findings) {
        const Result<Finding> known = findingOf(book, id);
        if (!known)
            return known.error();
        if (known->rig != mend.rig)
            return Error{Errc::InvalidInput, "the finding is of another rig", id.shortText(),
                         "name the rig it is on"};
    }
    return recordThing(book, idOrNew(book, mend.id), "mend", toValue(mend), doer);
}

Result<Id> setStock(Logbook &book, const Stock &stock, const Doer &doer)
{
    if (!(stock.si >= 0.0 && stock.si <= 1e6)) // so that NaN is refused too
        return Error{Errc::OutOfRange, "no such amount on hand", stock.item, "give 0 or more"};
    const Id id = derivedId("stock", stock.rig.view(), stock.item);
    return recordThing(book, id, "stock", toValue(stock), doer);
}

Result<Id> addPhoto(Logbook &book, const Photo &photo, const Doer &doer)
{
    return recordThing(book, idOrNew(book, photo.id), "photo", toValue(photo), doer);
}

Result<Id> addTrip(Logbook &book, const Trip &trip, const Doer &doer)
{
    const auto known = tripsOf(book, trip.rig);
    if (!known)
        return known.error();
    for (const Trip &other : *known) {
        if (other.start.instant == trip.start.instant && other.summary.length == trip.summary.length)
            return Error{Errc::Conflict, "this trip is in the logbook already", other.id.shortText(),
                         "nothing was added; import another file"};
    }
    return recordThing(book, idOrNew(book, trip.id), "trip", toValue(trip), doer);
}

Status changeTrip(Logbook &book, const Trip &trip, const Doer &doer)
{
    const auto known = tripsOf(book, trip.rig);
    if (!known)
        return known.error();
    if (std::none_of(known->begin(), known->end(), [&](const Trip &other) { return other.id == trip.id; }))
        return Error{Errc::NotFound, "no such trip of this rig", trip.id.shortText(),
                     "see `snugwalk trip list`"};
    const Result<Id> id = recordThing(book, trip.id, "trip", toValue(trip), doer);
    return id ? done() : Status(id.error());
}

Result<Id> addStay(Logbook &book, const Stay &stay, const Doer &doer)
{
    if (!isValid(stay.place))
        return Error{Errc::OutOfRange, "no such place on earth", "stay",
                     "give latitude -90 to 90, longitude -180 to 180"};
    if (stay.to && stay.to->instant < stay.from.instant)
        return Error{Errc::OutOfRange, "a stay that ends before it begins", "stay", "check the two times"};
    return recordThing(book, idOrNew(book, stay.id), "stay", toValue(stay), doer);
}

Result<Id> addWeather(Logbook &book, const WeatherRecord &record, const Doer &doer)
{
    const auto &days = record.days;
    if (!isValid(record.place))
        return Error{Errc::OutOfRange, "no such place on earth", "weather",
                     "give latitude -90 to 90, longitude -180 to 180"};
    if (days.empty() || days.size() > weatherDaysLimit)
        return Error{Errc::OutOfRange,
                     days.empty() ? "weather without a day" : "more than eleven years of days", "weather",
                     "give 1 to " + std::to_string(weatherDaysLimit) + " days"};
    const auto unsorted = std::adjacent_find(
        days.begin(), days.end(), [](const WeatherDay &a, const WeatherDay &b) { return b.date <= a.date; });
    if (unsorted != days.end())
        return Error{Errc::InvalidInput, "days out of order", formatDate(unsorted->date),
                     "sort them by date"};
    const auto known = weatherOf(book, record.rig);
    if (!known)
        return known.error();
    for (const WeatherRecord &other : *known) {
        if (other.place == record.place && other.days == days)
            return Error{Errc::Conflict, "this weather is in the logbook already", other.id.shortText(),
                         "nothing was added; import another file"};
    }
    return recordThing(book, idOrNew(book, record.id), "weather", toValue(record), doer);
}

Result<Id> acceptMissed(Logbook &book, const Acceptance &acceptance, Role role, const Doer &doer)
{
    const Acceptance &a = acceptance;
    if (role != Role::Owner)
        return Error{Errc::Conflict, "only the owner may accept what could not be looked at",
                     std::string(slug(role)), "look at the point, or ask the owner"};
    for (const auto &[text, field] :
         {std::pair(&a.reason, "because"), {&a.knowing, "knowing"}, {&a.by, "by"}}) {
        if (text->find_first_not_of(" \t\n") == std::string::npos)
            return Error{Errc::InvalidInput, "an acceptance names who, because of what and knowing what",
                         field, "say it in your own words"};
    }
    const Id id = idOrNew(book, a.id);
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        const auto marks = marksOf(book, a.walk);
        if (!marks)
            return marks.error();
        const Mark *mark = findMark(*marks, a.point);
        if (mark == nullptr || mark->state != MarkState::CouldNotLook)
            return Error{Errc::Conflict, "only a point that could not be looked at is accepted", a.point,
                         "look at it and mark what you find"};
        return Act{doer.by, doer.at, doer.where, Id{}, Id{}, {{id, "acceptance", toValue(a).map()}}};
    });
    if (!receipt)
        return receipt.error();
    return id;
}

Result<Id> addHappening(Logbook &book, const Happening &happening, const Doer &doer)
{
    return recordThing(book, idOrNew(book, happening.id), "happening", toValue(happening), doer);
}

} // namespace snugwalk
