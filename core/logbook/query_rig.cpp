// SPDX-License-Identifier: Apache-2.0
// What a rig was: the same register as the projection's, stopped at a moment.
#include <algorithm>
#include <set>

#include "logbook/entry_rows.hpp"
#include "logbook/query.hpp"
#include "rig/rig_value.hpp"

namespace snugwalk {
namespace {

// Values that stand in each field; an entry whose successor came first never stands.
class Fold {
public:
    void add(const StoredEntry &stored)
    {
        const Entry &entry = stored.entry;
        for (const auto &[field, value] : entry.fields) {
            std::vector<Head> &heads = m_heads[field];
            for (const EntryId &prev : entry.prev) {
                m_dead.insert({field, prev});
                std::erase_if(heads, [&](const Head &head) { return head.id == prev; });
            }
            if (m_dead.count({field, entry.id}) == 0)
                heads.push_back({stored.streamRow, entry.id, entry.hlc, value, "rig"});
        }
    }

    [[nodiscard]] Rig rig(const Id &id) const
    {
        Value::Map doc;
        for (const auto &[field, heads] : m_heads) {
            if (!heads.empty())
                doc[field] = shownHead(field, heads).value;
        }
        const Result<Rig> read = rigFromValue(Value(doc));
        Rig rig = read ? *read : Rig{};
        if (!read)
            rig.name = doc["name"].asString().value_or("?");
        rig.id = id;
        return rig;
    }

private:
    HeadsByField m_heads;
    std::set<std::pair<std::string, EntryId>> m_dead;
};

} // namespace

Result<std::vector<RigVersion>> rigVersions(Logbook &book, const Id &rig)
{
    auto entries = entriesOf(book.db(), rig);
    if (!entries)
        return entries.error();
    std::erase_if(*entries, [](const StoredEntry &stored) { return stored.entry.type != "rig"; });
    if (entries->empty())
        return Error{Errc::NotFound, "there is no such rig", rig.text(), "see `snugwalk rig list`"};
    std::stable_sort(entries->begin(), entries->end(), [](const StoredEntry &a, const StoredEntry &b) {
        return a.entry.at.instant < b.entry.at.instant;
    });
    std::vector<RigVersion> versions;
    Fold fold;
    for (std::size_t i = 0; i < entries->size(); ++i) {
        const Entry &entry = (*entries)[i].entry;
        fold.add((*entries)[i]);
        const bool more = i + 1 < entries->size() && (*entries)[i + 1].entry.at.instant == entry.at.instant;
        if (more) // of the same act: half of it was never a rig
            continue;
        Rig stood = fold.rig(rig);
        if (versions.empty() || versions.back().rig != stood)
            versions.push_back({entry.at, std::move(stood)});
    }
    return versions;
}

Result<Rig> rigAt(Logbook &book, const Id &rig, Instant when)
{
    const auto versions = rigVersions(book, rig);
    if (!versions)
        return versions.error();
    const RigVersion *best = &versions->front();
    for (const RigVersion &version : *versions) {
        if (version.from.instant <= when)
            best = &version;
    }
    return best->rig;
}

} // namespace snugwalk
