// SPDX-License-Identifier: Apache-2.0
// Taking an act back: new entries that set every field to what it was before.
#include <algorithm>
#include <map>
#include <set>

#include "logbook/entry_rows.hpp"
#include "logbook/undo.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Result<Id> lastActOn(Connection &db, const Id &walk, const Id &device)
{
    Result<Statement> rows = db.prepare(
        "SELECT act FROM entry JOIN stream ON stream.id = entry.stream WHERE scope = ?1 AND undoes IS NULL "
        "AND substr(name, 1, 16) = ?2 AND NOT EXISTS(SELECT 1 FROM aside WHERE aside.stream = entry.stream "
        "AND aside.seq = entry.seq) AND act NOT IN "
        "(SELECT undoes FROM entry WHERE scope = ?1 AND undoes IS NOT NULL) ORDER BY hlc DESC, name DESC, "
        "seq DESC LIMIT 1");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, walk.view());
    rows->bindBytes(2, device.view());
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return Error{Errc::NotFound, "nothing to undo on this walk", walk.shortText(),
                     "mark something first"};
    return Id::fromBytes(rows->bytes(0));
}

// All that was ever written about one entity, for questions about what stood when.
class EntityHistory {
public:
    EntityHistory(std::string type, std::vector<StoredEntry> entries)
        : m_type(std::move(type)), m_all(std::move(entries))
    {
        for (const StoredEntry &stored : m_all)
            m_byId[stored.entry.id] = &stored;
    }

    // The head of `field` that was shown when `entry` was written; nothing when the field had none.
    [[nodiscard]] const StoredEntry *shownBefore(const Entry &entry, const std::string &field) const
    {
        const std::set<EntryId> seen = seenBy(entry);
        std::vector<Head> heads;
        for (const EntryId &id : seen) {
            const StoredEntry &stored = *m_byId.at(id);
            const auto value = stored.entry.fields.find(field);
            if (value != stored.entry.fields.end() && !isReplaced(id, field, seen))
                heads.push_back({stored.streamRow, id, stored.entry.hlc, value->second, m_type});
        }
        return heads.empty() ? nullptr : m_byId.at(shownHead(field, heads).id);
    }

    // Whether the head `id` still shows what `entry` set: it is that entry, or an undo that went back to it.
    [[nodiscard]] bool goesBackTo(const EntryId &id, const Entry &entry, const std::string &field) const
    {
        const StoredEntry *at = m_byId.at(id);
        while (at != nullptr && !at->entry.undoes.isNull()) {
            const Entry *undone = undoneBy(at->entry, field);
            at = undone == nullptr ? nullptr : shownBefore(*undone, field);
        }
        return at != nullptr && at->entry.id == entry.id;
    }

private:
    [[nodiscard]] std::set<EntryId> seenBy(const Entry &entry) const
    {
        std::set<EntryId> seen;
        std::vector<EntryId> open = entry.prev;
        while (!open.empty()) {
            const EntryId id = open.back();
            open.pop_back();
            const auto found = m_byId.find(id);
            if (found != m_byId.end() && seen.insert(id).second)
                open.insert(open.end(), found->second->entry.prev.begin(), found->second->entry.prev.end());
        }
        return seen;
    }

    [[nodiscard]] bool isReplaced(const EntryId &id, const std::string &field,
                                  const std::set<EntryId> &within) const
    {
        return std::any_of(within.begin(), within.end(), [&](const EntryId &other) {
            const Entry &e = m_byId.at(other)->entry;
            return e.fields.count(field) > 0 && std::find(e.prev.begin(), e.prev.end(), id) != e.prev.end();
        });
    }

    // The entry of the act taken back that set the field first: what stood before it was restored.
    [[nodiscard]] const Entry *undoneBy(const Entry &undo, const std::string &field) const
    {
        for (const StoredEntry &stored : m_all) {
            if (stored.entry.act == undo.undoes && stored.entry.fields.count(field) > 0)
                return &stored.entry;
        }
        return nullptr;
    }

    std::string m_type;
    std::vector<StoredEntry> m_all;
    std::map<EntryId, const StoredEntry *> m_byId;
};

// A mark keeps what names it, so that another device's mark of the same point, made without knowing of
// the undo, is still one of this walk.
bool isNaming(const std::string &type, const std::string &field)
{
    return type == "mark" && (field == "walk" || field == "point");
}

// The heads of a field that still show what `entry` set there.
std::vector<EntryId> standingIn(const EntityHistory &history, const std::vector<Head> &heads,
                                const Entry &entry, const std::string &field)
{
    std::vector<EntryId> standing;
    for (const Head &head : heads) {
        if (history.goesBackTo(head.id, entry, field))
            standing.push_back(head.id);
    }
    return standing;
}

// Sets every field of the entry back. Once someone wrote over one of them, the whole stays as it is now.
Result<EntityChange> takenBack(Connection &db, const Entry &entry)
{
    auto rows = entriesOf(db, entry.entity);
    const auto heads = headsOf(db, entry.entity);
    if (!rows || !heads)
        return rows ? heads.error() : rows.error();
    const EntityHistory history(entry.type, std::move(rows).value());
    EntityChange change{entry.entity, entry.type, {}, std::vector<EntryId>()};
    std::set<EntryId> replaced;
    for (const auto &[field, value] : entry.fields) {
        const auto all = heads->find(field);
        const auto standing =
            all == heads->end() ? std::vector<EntryId>() : standingIn(history, all->second, entry, field);
        if (standing.empty())
            return EntityChange{entry.entity, entry.type, {}, std::vector<EntryId>()};
        const StoredEntry *before = history.shownBefore(entry, field);
        if (before == nullptr && isNaming(entry.type, field))
            continue;
        change.fields[field] = before == nullptr ? Value() : before->entry.fields.at(field);
        replaced.insert(standing.begin(), standing.end());
    }
    change.replaces->assign(replaced.begin(), replaced.end());
    return change;
}

Result<Act> undoing(Connection &db, const Id &undone, const Id &scope,
                    const std::vector<StoredEntry> &entries, const std::string &by)
{
    Act act;
    act.by = by;
    act.scope = scope;
    act.undoes = undone;
    for (auto it = entries.rbegin(); it != entries.rend(); ++it) {
        Result<EntityChange> change = takenBack(db, it->entry);
        if (!change)
            return change.error();
        act.changes.push_back(std::move(change).value());
    }
    return act;
}

} // namespace

Result<Receipt> Logbook::undo(const Id &walk, const std::string &by)
{
    return record([&]() -> Result<Act> {
        SNUG_TRY(refuseFinished(m_db, walk));
        const Result<Id> undone = lastActOn(m_db, walk, m_stream.device);
        if (!undone)
            return undone.error();
        const auto entries = entriesOfAct(m_db, walk, *undone);
        if (!entries)
            return entries.error();
        return undoing(m_db, *undone, walk, *entries, by);
    });
}

Result<LastAct> lastAct(Logbook &book)
{
    Result<Statement> rows = book.db().prepare(
        "SELECT act, bytes FROM entry JOIN stream ON stream.id = entry.stream WHERE scope IS NULL "
        "AND undoes IS NULL AND substr(name, 1, 16) = ?1 AND NOT EXISTS(SELECT 1 FROM aside WHERE "
        "aside.stream = entry.stream AND aside.seq = entry.seq) AND NOT EXISTS(SELECT 1 FROM entry AS later "
        "WHERE later.undoes = entry.act) ORDER BY hlc DESC, name DESC, seq DESC LIMIT 1");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, book.stream().device.view());
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return Error{Errc::NotFound, "nothing written on this device outside a walk is left to take back",
                     book.file(), "on a walk, use `snugwalk walk undo`"};
    const Id act = Id::fromBytes(rows->bytes(0));
    const auto entries = entriesOfAct(book.db(), Id{}, act);
    if (!entries || entries->empty())
        return entries
                   ? Error{Errc::Corrupt, "an act without entries", act.shortText(), "run `snugwalk check`"}
                   : entries.error();
    const Entry &first = entries->front().entry;
    return LastAct{act, first.by, first.at, first.type, first.entity};
}

Status mayTakeBack(Logbook &book, const Id &act)
{
    const auto entries = entriesOfAct(book.db(), Id{}, act);
    if (!entries)
        return entries.error();
    for (const StoredEntry &one : *entries) {
        const std::string &type = one.entry.type;
        if (type != "rig" && type != "walk")
            continue;
        const auto all = entriesOf(book.db(), one.entry.entity);
        if (!all)
            return all.error();
        if (!all->empty() && all->front().entry.act == act)
            return Error{Errc::Conflict,
                         "the last thing written here begins a " + type + "; others stand on it",
                         one.entry.entity.shortText(),
                         type == "walk" ? "finish the walk" : "change the rig's figures instead"};
    }
    return done();
}

Result<Receipt> takeBack(Logbook &book, const Id &act, const std::string &by)
{
    return book.record([&]() -> Result<Act> {
        const Result<LastAct> last = lastAct(book);
        if (!last)
            return last.error();
        if (last->act != act)
            return Error{Errc::Conflict, "something else was written here since", act.shortText(),
                         "look what stands last, and take that back first"};
        SNUG_TRY(mayTakeBack(book, act));
        const auto entries = entriesOfAct(book.db(), Id{}, act);
        if (!entries)
            return entries.error();
        Result<Act> back = undoing(book.db(), act, Id{}, *entries, by);
        const bool isEmpty =
            back && std::all_of(back->changes.begin(), back->changes.end(),
                                [](const EntityChange &change) { return change.fields.empty(); });
        if (isEmpty) // or it would stand last for ever, and nothing would happen
            return Error{Errc::Conflict, "what was written here last was changed by someone since",
                         act.shortText(), "change it by hand"};
        return back;
    });
}

} // namespace snugwalk
