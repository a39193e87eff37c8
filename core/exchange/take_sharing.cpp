// SPDX-License-Identifier: Apache-2.0
// Sharing into the logbook: rows first, then every entry of the rigs judged as its records say.
#include <algorithm>

#include "exchange/sharing_lines.hpp"
#include "logbook/receive_rows.hpp"
#include "sync/segment.hpp"
#include "sync/share.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Error untrue(const CarriedFile &file)
{
    return {Errc::Corrupt, "a signed file does not hold the entries that are said to be in it",
            "file " + std::to_string(file.facts.counter) + " of " + file.facts.stream.text(),
            "fetch the export again from where it was made"};
}

bool isShared(const Sharing &sharing, const Id &rig)
{
    return std::any_of(sharing.rigs.begin(), sharing.rigs.end(),
                       [&](const auto &item) { return item.first == rig; });
}

Error strange(const Id &rig)
{
    return {Errc::Corrupt, "a signed record of a rig that is not shared", rig.text(),
            "fetch the export again from where it was made"};
}

// Where this device can open it, it must hold those entries, byte for byte.
Status compare(Connection &db, const CarriedFile &file, const RigKeys &keys)
{
    const auto head = readSegmentHead(file.bytes);
    const auto key = head ? keys.all.find(head->epoch) : keys.all.end();
    if (key == keys.all.end())
        return done();
    const auto entries = openSegment(file.bytes, key->second);
    if (!entries)
        return entries.error();
    std::map<EntryId, const std::string *> inside;
    for (const IncomingEntry &entry : *entries)
        inside[entry.entry.id] = &entry.bytes;
    Result<Statement> same =
        db.prepare("SELECT 1 FROM entry JOIN stream ON stream.id = entry.stream WHERE name = ? "
                   "AND seq = ? AND bytes = ?");
    if (!same)
        return same.error();
    for (const EntryRun &run : file.entries) {
        for (std::int64_t seq = run.first; seq <= run.last; ++seq) {
            const auto found = inside.find({run.stream, seq});
            if (found == inside.end())
                return untrue(file);
            same->bindBytes(1, run.stream.bytes());
            same->bind(2, seq);
            same->bindBytes(3, *found->second);
            const Result<bool> row = same->step();
            if (!row)
                return row.error();
            if (!*row)
                return untrue(file);
            same->reset();
        }
    }
    return done();
}

Status carry(Connection &db, const EntryRun &run, std::int64_t segment)
{
    Result<Statement> mark =
        db.prepare("UPDATE entry SET segment = ?1 WHERE stream = (SELECT id FROM stream WHERE "
                   "name = ?2) AND seq BETWEEN ?3 AND ?4 AND segment IS NULL");
    if (!mark)
        return mark.error();
    mark->bind(1, segment);
    mark->bindBytes(2, run.stream.bytes());
    mark->bind(3, run.first);
    mark->bind(4, run.last);
    return mark->run();
}

Status takeTwin(Connection &db, const TwinEntry &twin)
{
    const auto stream = streamRowOrNew(db, twin.id.stream);
    if (!stream)
        return stream.error();
    Result<Statement> insert =
        db.prepare("INSERT OR IGNORE INTO twin SELECT ?1, ?2, ?3, coalesce((SELECT id FROM "
                   "segment WHERE hash = ?4), 0), ?5");
    if (!insert)
        return insert.error();
    insert->bind(1, *stream);
    insert->bind(2, twin.id.seq);
    insert->bindBytes(3, blake2b(twin.bytes).view());
    insert->bindBytes(4, twin.file.view());
    insert->bindBytes(5, twin.bytes);
    return insert->run();
}

Status judgeRig(Logbook &book, const Id &rig, bool &changed)
{
    const auto members = membersOf(book, rig);
    const auto segments = segmentsOf(book, rig);
    if (!members || !segments)
        return members ? segments.error() : members.error();
    ReceiveCount count;
    const auto moved = judgeRows(book.db(), rig, judgeOf(*members, *segments), count);
    if (!moved)
        return moved.error();
    changed = changed || *moved;
    return markJudged(book.db(), rig);
}

} // namespace

Status takeSharing(Logbook &book, const Sharing &sharing)
{
    Connection &db = book.db();
    for (const auto &[rig, root] : sharing.rigs)
        SNUG_TRY(putRig(db, rig, root));
    std::map<Id, RigKeys> keys;
    for (const SharedRecord &record : sharing.records) {
        if (!isShared(sharing, record.rig))
            return strange(record.rig);
        SNUG_TRY(putControl(db, record.rig, record.hash, record.bytes));
    }
    const Keys own(book.device());
    for (const auto &[rig, root] : sharing.rigs) {
        const auto members = membersOf(book, rig);
        if (!members)
            return members.error();
        keys[rig] = openKeys(*members, own);
    }
    for (const CarriedFile &file : sharing.files) {
        if (!isShared(sharing, file.facts.space))
            return strange(file.facts.space);
        SNUG_TRY(compare(db, file, keys[file.facts.space]));
        const auto stream = streamRowOrNew(db, file.facts.stream, file.publicKey);
        const auto segment = putSegment(db, file.facts, file.bytes, false);
        if (!stream || !segment)
            return stream ? segment.error() : stream.error();
        for (const EntryRun &run : file.entries)
            SNUG_TRY(carry(db, run, segment->row));
    }
    for (const TwinEntry &twin : sharing.twins)
        SNUG_TRY(takeTwin(db, twin));
    bool changed = false;
    for (const auto &item : sharing.rigs)
        SNUG_TRY(judgeRig(book, item.first, changed));
    return changed ? rebuildProjection(db) : done();
}

} // namespace snugwalk
