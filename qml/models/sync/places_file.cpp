// SPDX-License-Identifier: Apache-2.0
// Read whole, written whole.
#include "places_file.hpp"

#include <algorithm>

#include "base/value.hpp"
#include "logbook/files.hpp"
#include "sync/folder_store.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t maxFile = std::size_t{1} << 20U;

auto named(const std::string &name)
{
    return [&name](const SyncPlace &place) { return place.name == name; };
}

Error noSuch(const std::string &name)
{
    return {Errc::NotFound, "no such store", name, "list the stores first"};
}

SyncPlace placeFrom(const Value &v)
{
    const auto text = [&](const char *key) { return v[key].asString().value_or(""); };
    return {text("name"), text("kind"), text("place"), parseLocal(text("at")), v["carried"].asInt()};
}

Value valueOf(const SyncPlace &place)
{
    return Value::Map{{"name", place.name},
                      {"kind", place.kind},
                      {"place", place.where},
                      {"at", place.met ? Value(formatLocal(*place.met)) : Value()},
                      {"carried", place.carried}};
}

} // namespace

Result<std::vector<SyncPlace>> PlacesFile::read() const
{
    const auto bytes = readFile(m_file, maxFile);
    if (!bytes && bytes.error().code == Errc::NotFound)
        return std::vector<SyncPlace>();
    const auto v = bytes ? parseJson(*bytes) : Result<Value>(bytes.error());
    if (!v)
        return v.error();
    std::vector<SyncPlace> places;
    for (const Value &one : (*v)["stores"].list())
        places.push_back(placeFrom(one));
    return places;
}

Status PlacesFile::write(const std::vector<SyncPlace> &places) const
{
    Value::List list;
    for (const SyncPlace &place : places)
        list.push_back(valueOf(place));
    SNUG_TRY(makeFolder(m_file.parent_path()));
    return replaceFile(m_file, toJson(Value::Map{{"stores", list}}, true));
}

Result<std::vector<SyncPlace>> PlacesFile::list()
{
    const std::lock_guard lock(m_one);
    return read();
}

Status PlacesFile::addFolder(const std::string &name, const std::string &folder)
{
    const std::lock_guard lock(m_one);
    if (name.empty())
        return Error{Errc::InvalidInput, "a store needs a name", "name", "give it one"};
    std::error_code fault;
    if (!std::filesystem::is_directory(folder, fault))
        return Error{Errc::NotFound, "the store's folder is not there", folder, "choose it again"};
    auto places = read();
    if (!places)
        return places.error();
    if (std::any_of(places->begin(), places->end(), named(name)))
        return Error{Errc::Conflict, "a store of this name is there", name, "take another name"};
    places->push_back({name, "folder", folder, std::nullopt, std::nullopt});
    return write(*places);
}

Status PlacesFile::remove(const std::string &name)
{
    const std::lock_guard lock(m_one);
    auto places = read();
    if (!places)
        return places.error();
    if (std::erase_if(*places, named(name)) == 0)
        return noSuch(name);
    return write(*places);
}

Result<OpenedPlace> PlacesFile::open(const std::string &name)
{
    const std::lock_guard lock(m_one);
    const auto places = read();
    if (!places)
        return places.error();
    const auto found = std::find_if(places->begin(), places->end(), named(name));
    if (found == places->end())
        return noSuch(name);
    if (found->kind != "folder")
        return Error{Errc::Unsupported, "a store of a kind that this program cannot use", found->kind,
                     "use the command line"};
    OpenedPlace opened;
    opened.store = std::make_unique<FolderStore>(found->where);
    return opened;
}

Status PlacesFile::noteMet(const std::string &name, const LocalTime &at, std::int64_t carried,
                           const ExchangeSummary & /*summary*/)
{
    const std::lock_guard lock(m_one);
    auto places = read();
    if (!places)
        return places.error();
    const auto found = std::find_if(places->begin(), places->end(), named(name));
    if (found == places->end())
        return done();
    found->met = at;
    found->carried = carried;
    return write(*places);
}

} // namespace snugwalk
