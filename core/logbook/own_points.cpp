// SPDX-License-Identifier: Apache-2.0
// One entity a rig and point, found alike on every device, so that two people's choices meet.
#include "logbook/own_points.hpp"

#include <algorithm>

#include "catalogue/own_value.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {
namespace {

Error unknownPoint(const std::string &point)
{
    return {Errc::NotFound, "no such point", point, "see `snugwalk points`"};
}

LocalTime timeOf(Logbook &book, const Doer &doer) { return doer.at.value_or(book.now()); }

// Adds what every own thing carries: its rig, and the moment, by which lists are sorted.
Status recordOwn(Logbook &book, const char *type, const Id &rig, const std::string &point, Value::Map fields,
                 const Doer &doer)
{
    const Id id = derivedId(type, rig.view(), point);
    fields["rig"] = rig.text();
    fields["at"] = formatLocal(timeOf(book, doer));
    const Act act{doer.by, doer.at, doer.where, Id{}, Id{}, {{id, type, std::move(fields)}}};
    const Result<Receipt> receipt = book.record(act);
    return receipt ? done() : Status(receipt.error());
}

template <typename T, typename Read>
Status read(Logbook &book, const char *type, const Id &rig, Read from, std::vector<T> &to)
{
    const auto things = thingsOfRig(book.db(), type, rig);
    if (!things)
        return things.error();
    for (const Thing &thing : *things) {
        // taken back by the owner since
        if (thing.doc["hidden"].asBool() == false || thing.doc["usual"].asBool() == true)
            continue;
        to.push_back(from(thing.doc));
    }
    return done();
}

} // namespace

Result<OwnChoices> ownChoicesOf(Logbook &book, const Id &rig)
{
    OwnChoices own;
    SNUG_TRY(read(book, "own_point", rig, ownPointFromValue, own.added));
    SNUG_TRY(read(book, "hidden_point", rig, hiddenPointFromValue, own.hidden));
    SNUG_TRY(read(book, "own_interval", rig, ownIntervalFromValue, own.every));
    return own;
}

Result<std::string> addOwnPoint(Logbook &book, const Catalogue &catalogue, const Id &rig, OwnPoint point,
                                const Doer &doer)
{
    point.slug = ownSlug(point.title);
    point.by = doer.by;
    point.date = civilDate(timeOf(book, doer));
    SNUG_TRY(checkOwnPoint(catalogue, point));
    SNUG_TRY(recordOwn(book, "own_point", rig, point.slug, toValue(point).map(), doer));
    return point.slug;
}

Status hidePoint(Logbook &book, const Catalogue &catalogue, const Id &rig, const std::string &point,
                 const std::string &note, const Doer &doer)
{
    const Point *known = catalogue.find(point);
    if (known == nullptr)
        return unknownPoint(point);
    if (known->hidden)
        return Error{Errc::Conflict, "the point is hidden already, by " + known->hidden->by, point,
                     "show it again with `snugwalk points show`"};
    // every report names who hid such a point, so there has to be a name
    if (doer.by.empty() && known->isRoadOrFire())
        return Error{Errc::InvalidInput, "a point of road safety or fire is hidden under a name only", "by",
                     "say who hides it with --by, or in the settings"};
    Value::Map fields = toValue(HiddenPoint{point, doer.by, civilDate(timeOf(book, doer)), note}).map();
    fields["hidden"] = true;
    return recordOwn(book, "hidden_point", rig, point, std::move(fields), doer);
}

Status showPoint(Logbook &book, const Catalogue &catalogue, const Id &rig, const std::string &point,
                 const Doer &doer)
{
    const Point *known = catalogue.find(point);
    if (known == nullptr)
        return unknownPoint(point);
    if (!known->hidden)
        return Error{Errc::Conflict, "the point is not hidden", point, "nothing was changed"};
    return recordOwn(book, "hidden_point", rig, point, {{"hidden", false}, {"by", doer.by}}, doer);
}

Status setOwnInterval(Logbook &book, const Catalogue &product, const Id &rig, const OwnInterval &every,
                      const Doer &doer)
{
    SNUG_TRY(checkOwnInterval(product, every));
    const auto own = ownChoicesOf(book, rig);
    if (!own)
        return own.error();
    OwnInterval whole = every;
    for (const OwnInterval &before : own->every) {
        if (before.point != every.point)
            continue;
        whole.months = every.months ? every.months : before.months;
        whole.distance = every.distance ? every.distance : before.distance;
    }
    whole.by = doer.by;
    whole.date = civilDate(timeOf(book, doer));
    Value::Map fields = toValue(whole).map();
    fields["usual"] = false;
    return recordOwn(book, "own_interval", rig, every.point, std::move(fields), doer);
}

Status clearOwnInterval(Logbook &book, const Id &rig, const std::string &point, const Doer &doer)
{
    const auto own = ownChoicesOf(book, rig);
    if (!own)
        return own.error();
    const bool known = std::any_of(own->every.begin(), own->every.end(),
                                   [&](const OwnInterval &every) { return every.point == point; });
    if (!known)
        return Error{Errc::NotFound, "this point has the catalogue's interval", point, "nothing was changed"};
    const Value::Map fields{{"usual", true}, {"months", Value()}, {"distance", Value()}, {"by", doer.by}};
    return recordOwn(book, "own_interval", rig, point, fields, doer);
}

} // namespace snugwalk
