// SPDX-License-Identifier: Apache-2.0
// Things of the projection as values.
#include "logbook/query.hpp"

#include <algorithm>
#include <map>

#include "base/text.hpp"
#include "rig/rig_value.hpp"
#include "trip/trip_value.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

Rig rigFrom(const Thing &thing)
{
    const Result<Rig> read = rigFromValue(thing.doc);
    Rig rig = read ? *read : Rig{};
    if (!read)
        rig.name = thing.doc["name"].asString().value_or("?");
    rig.id = thing.id;
    return rig;
}

// Reads every thing with `from` and gives it its id.
template <typename T, typename Read>
std::vector<T> readAll(const std::vector<Thing> &things, Read from)
{
    std::vector<T> out;
    out.reserve(things.size());
    for (const Thing &thing : things) {
        T item = from(thing.doc);
        item.id = thing.id;
        out.push_back(std::move(item));
    }
    return out;
}

template <typename T, typename Read>
Result<std::vector<T>> ofRig(Logbook &book, const char *type, const Id &rig, Read from)
{
    const auto things = thingsOfRig(book.db(), type, rig);
    if (!things)
        return things.error();
    return readAll<T>(*things, from);
}

} // namespace

Result<std::vector<Rig>> allRigs(Logbook &book)
{
    const auto things = thingsOfRig(book.db(), "rig", Id{});
    if (!things)
        return things.error();
    std::vector<Rig> rigs;
    std::transform(things->begin(), things->end(), std::back_inserter(rigs), rigFrom);
    return rigs;
}

Result<Rig> rigOf(Logbook &book, const Id &id)
{
    const Result<Thing> found = thing(book.db(), "rig", id);
    if (!found)
        return found.error();
    return rigFrom(*found);
}

Result<Rig> findRig(Logbook &book, std::string_view nameOrId)
{
    const auto rigs = allRigs(book);
    if (!rigs)
        return rigs.error();
    const std::string prefix = lowerAscii(nameOrId);
    const auto only = [&](const auto &fits) -> Result<std::vector<Rig>> {
        std::vector<Rig> found;
        std::copy_if(rigs->begin(), rigs->end(), std::back_inserter(found), fits);
        if (found.size() > 1)
            return Error{Errc::InvalidInput, "more than one rig is called so", std::string(nameOrId),
                         "name it by more of its id, see `snugwalk rig list`"};
        return found;
    };
    // a whole name goes before the beginning of another's id
    const auto byName = only([&](const Rig &rig) { return rig.name == nameOrId; });
    if (!byName)
        return byName.error();
    if (!byName->empty())
        return byName->front();
    const auto byId =
        only([&](const Rig &rig) { return prefix.size() >= 4 && rig.id.text().starts_with(prefix); });
    if (!byId)
        return byId.error();
    if (!byId->empty())
        return byId->front();
    return Error{Errc::NotFound, "there is no rig \"" + std::string(nameOrId) + "\"", book.file(),
                 rigs->empty() ? "add one with `snugwalk rig add`" : "see `snugwalk rig list`"};
}

Result<std::vector<Walk>> walksOf(Logbook &book, const Id &rig)
{
    return ofRig<Walk>(book, "walk", rig, walkFromValue);
}

Result<Walk> walkOf(Logbook &book, const Id &id)
{
    const Result<Thing> found = thing(book.db(), "walk", id);
    if (!found)
        return found.error();
    Walk walk = walkFromValue(found->doc);
    walk.id = found->id;
    return walk;
}

Result<std::optional<Walk>> openWalk(Logbook &book, const Id &rig)
{
    const auto walks = walksOf(book, rig);
    if (!walks)
        return walks.error();
    for (auto it = walks->rbegin(); it != walks->rend(); ++it) {
        if (!it->finished)
            return std::optional(*it);
    }
    return std::optional<Walk>();
}

Result<std::vector<Mark>> marksOf(Logbook &book, const Id &walk)
{
    const auto things = thingsOfParent(book.db(), "mark", walk);
    if (!things)
        return things.error();
    std::vector<Mark> marks = readAll<Mark>(*things, markFromValue);
    std::erase_if(marks, [](const Mark &mark) { return mark.state == MarkState::NotLooked; });
    return marks;
}

Result<Finding> findingOf(Logbook &book, const Id &id)
{
    const Result<Thing> found = thing(book.db(), "finding", id);
    if (!found)
        return found.error();
    Finding finding = findingFromValue(found->doc);
    finding.id = found->id;
    return finding;
}

Result<std::vector<Mend>> mendsOf(Logbook &book, const Id &rig)
{
    return ofRig<Mend>(book, "mend", rig, mendFromValue);
}
Result<std::vector<Trip>> tripsOf(Logbook &book, const Id &rig)
{
    return ofRig<Trip>(book, "trip", rig, tripFromValue);
}
Result<std::vector<Stay>> staysOf(Logbook &book, const Id &rig)
{
    return ofRig<Stay>(book, "stay", rig, stayFromValue);
}
Result<std::vector<Photo>> photosOf(Logbook &book, const Id &rig)
{
    return ofRig<Photo>(book, "photo", rig, photoFromValue);
}
Result<std::vector<WeatherRecord>> weatherOf(Logbook &book, const Id &rig)
{
    return ofRig<WeatherRecord>(book, "weather", rig, weatherRecordFromValue);
}

Result<std::vector<Happening>> happeningsOf(Logbook &book, const Id &rig)
{
    return ofRig<Happening>(book, "happening", rig, happeningFromValue);
}
Result<std::vector<Acceptance>> acceptancesOf(Logbook &book, const Id &rig)
{
    return ofRig<Acceptance>(book, "acceptance", rig, acceptanceFromValue);
}

Result<std::vector<Drawing>> drawingsOf(Logbook &book, const Id &rig)
{
    return ofRig<Drawing>(book, "drawing", rig, drawingFromValue);
}
Result<std::vector<Stock>> stocksOf(Logbook &book, const Id &rig)
{
    return ofRig<Stock>(book, "stock", rig, stockFromValue);
}

Result<Photo> photoOf(Logbook &book, const Id &id)
{
    const Result<Thing> found = thing(book.db(), "photo", id);
    if (!found)
        return found.error();
    Photo photo = photoFromValue(found->doc);
    photo.id = found->id;
    return photo;
}

} // namespace snugwalk
