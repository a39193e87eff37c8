// SPDX-License-Identifier: Apache-2.0
// Fields with more than one head.
#include "logbook/conflicts.hpp"

#include <algorithm>

#include "logbook/entry_rows.hpp"
#include "logbook/space_of.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Result<std::vector<Id>> contested(Connection &db)
{
    Result<Statement> rows =
        // least and greatest, not the number of different ones: that would sort every field of the logbook
        db.prepare("SELECT DISTINCT entity FROM (SELECT entity FROM head GROUP BY entity, "
                   "field HAVING min(value) <> max(value)) ORDER BY entity");
    if (!rows)
        return rows.error();
    std::vector<Id> found;
    SNUG_TRY(rows->each([&] {
        found.push_back(Id::fromBytes(rows->bytes(0)));
        return done();
    }));
    return found;
}

Result<std::string> labelOf(Connection &db, std::int64_t stream)
{
    Result<Statement> rows = db.prepare("SELECT label FROM stream WHERE id = ?");
    if (!rows)
        return rows.error();
    rows->bind(1, stream);
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    return *row ? rows->text(0) : std::string();
}

// Who and when differ whenever two people wrote; people are asked about what they wrote.
bool isAboutWriting(const std::string &field) { return field == "by" || field == "at" || field == "where"; }

bool differ(const std::vector<Head> &heads)
{
    return std::any_of(heads.begin(), heads.end(),
                       [&](const Head &head) { return head.value != heads.front().value; });
}

Result<std::vector<Version>> versionsOf(Connection &db, const std::vector<Head> &heads,
                                        const std::vector<StoredEntry> &entries)
{
    std::vector<Version> versions;
    for (const Head &head : heads) {
        const auto stored = std::find_if(entries.begin(), entries.end(),
                                         [&](const StoredEntry &s) { return s.entry.id == head.id; });
        const auto label = labelOf(db, head.streamRow);
        if (!label)
            return label.error();
        if (stored != entries.end())
            versions.push_back({head.id, stored->entry.by, stored->entry.at, *label, head.value});
    }
    return versions;
}

Result<Conflict> conflictOf(Connection &db, const Id &entity)
{
    const auto heads = headsOf(db, entity);
    const auto entries = entriesOf(db, entity);
    if (!heads || !entries)
        return heads ? entries.error() : heads.error();
    Conflict conflict{entity, entries->empty() ? "" : entries->front().entry.type, {}};
    for (const auto &[field, values] : *heads) {
        if (isAboutWriting(field) || !differ(values))
            continue;
        auto versions = versionsOf(db, values, *entries);
        if (!versions)
            return versions.error();
        conflict.fields.push_back({field, std::move(versions).value(), shownHead(field, values).value});
    }
    return conflict;
}

} // namespace

Result<std::vector<Conflict>> conflictsOf(Logbook &book, const Id &rig)
{
    const auto entities = contested(book.db());
    if (!entities)
        return entities.error();
    RigFinder finder(book.db());
    std::vector<Conflict> found;
    for (const Id &entity : *entities) {
        Result<Conflict> conflict = conflictOf(book.db(), entity);
        if (!conflict)
            return conflict.error();
        if (conflict->fields.empty())
            continue;
        Entry probe;
        probe.entity = entity;
        probe.type = conflict->type;
        const Result<Id> of = rig.isNull() ? Result<Id>(rig) : finder.rigOf(probe);
        if (!of)
            return of.error();
        if (*of == rig)
            found.push_back(std::move(conflict).value());
    }
    return found;
}

Result<Receipt> resolveConflict(Logbook &book, const Id &entity, const Value::Map &chosen, const Doer &doer)
{
    return book.record([&]() -> Result<Act> {
        const Result<Conflict> conflict = conflictOf(book.db(), entity);
        if (!conflict)
            return conflict.error();
        for (const auto &[field, value] : chosen) {
            const bool isContested =
                std::any_of(conflict->fields.begin(), conflict->fields.end(),
                            [name = field](const FieldConflict &c) { return c.field == name; });
            if (!isContested)
                return Error{Errc::NotFound, "nobody disagrees about this", field,
                             "list the conflicts first"};
        }
        // no `replaces`: every head that stands in these fields is named as predecessor
        return Act{doer.by, doer.at, doer.where, Id{}, Id{}, {{entity, conflict->type, chosen}}};
    });
}

} // namespace snugwalk
