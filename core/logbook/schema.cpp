// SPDX-License-Identifier: Apache-2.0
// Migrations by user_version; core/logbook/FORMAT.md tells the tables in words.
#include "logbook/schema.hpp"

#include <array>

namespace snugwalk {
namespace {

// One text a version, never edited once released.
constexpr std::array migrations = {R"sql(
CREATE TABLE meta(key TEXT PRIMARY KEY, value INTEGER NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE stream(
    id INTEGER PRIMARY KEY,
    name BLOB NOT NULL UNIQUE CHECK(length(name) = 24),
    public_key BLOB NOT NULL CHECK(length(public_key) = 32),
    label TEXT NOT NULL,
    own INTEGER NOT NULL CHECK(own IN (0, 1))) STRICT;
CREATE TABLE entry(
    stream INTEGER NOT NULL REFERENCES stream(id),
    seq INTEGER NOT NULL CHECK(seq > 0),
    hlc INTEGER NOT NULL,
    entity BLOB NOT NULL CHECK(length(entity) = 16),
    act BLOB NOT NULL CHECK(length(act) = 16),
    scope BLOB CHECK(scope IS NULL OR length(scope) = 16),
    undoes BLOB CHECK(undoes IS NULL OR length(undoes) = 16),
    bytes BLOB NOT NULL,
    hash BLOB NOT NULL CHECK(length(hash) = 32),
    PRIMARY KEY(stream, seq)) STRICT, WITHOUT ROWID;
CREATE INDEX entry_by_time ON entry(hlc, stream, seq);
CREATE INDEX entry_by_entity ON entry(entity);
CREATE INDEX entry_by_scope ON entry(scope, hlc) WHERE scope IS NOT NULL;
CREATE INDEX entry_by_undoes ON entry(undoes) WHERE undoes IS NOT NULL;
CREATE TRIGGER entry_never_changes BEFORE UPDATE ON entry
    BEGIN SELECT RAISE(ABORT, 'an entry never changes'); END;
CREATE TRIGGER entry_never_goes BEFORE DELETE ON entry
    BEGIN SELECT RAISE(ABORT, 'an entry is never removed'); END;
CREATE TABLE head(
    entity BLOB NOT NULL, field TEXT NOT NULL, stream INTEGER NOT NULL, seq INTEGER NOT NULL,
    hlc INTEGER NOT NULL, value BLOB NOT NULL,
    PRIMARY KEY(entity, field, stream, seq)) STRICT, WITHOUT ROWID;
CREATE TABLE dead(
    entity BLOB NOT NULL, field TEXT NOT NULL, stream INTEGER NOT NULL, seq INTEGER NOT NULL,
    PRIMARY KEY(entity, field, stream, seq)) STRICT, WITHOUT ROWID;
CREATE TABLE thing(
    id BLOB PRIMARY KEY, type TEXT NOT NULL, rig BLOB, parent BLOB, key TEXT, sort INTEGER NOT NULL,
    doc BLOB NOT NULL) STRICT, WITHOUT ROWID;
CREATE INDEX thing_by_rig ON thing(type, rig, sort) WHERE rig IS NOT NULL;
CREATE INDEX thing_by_parent ON thing(parent, type, sort) WHERE parent IS NOT NULL;
)sql",
                                   R"sql(
ALTER TABLE stream ADD COLUMN partial INTEGER NOT NULL DEFAULT 0;
ALTER TABLE entry ADD COLUMN segment INTEGER;
CREATE INDEX entry_unsent ON entry(stream, seq) WHERE segment IS NULL;
DROP TRIGGER entry_never_changes;
CREATE TRIGGER entry_never_changes
    BEFORE UPDATE OF stream, seq, hlc, entity, act, scope, undoes, bytes, hash ON entry
    BEGIN SELECT RAISE(ABORT, 'an entry never changes'); END;
CREATE TABLE space(
    id BLOB PRIMARY KEY CHECK(length(id) = 16),
    root BLOB NOT NULL CHECK(length(root) = 32),
    judged INTEGER NOT NULL CHECK(judged IN (0, 1))) STRICT, WITHOUT ROWID;
CREATE TABLE control(
    hash BLOB PRIMARY KEY CHECK(length(hash) = 32),
    space BLOB NOT NULL CHECK(length(space) = 16),
    bytes BLOB NOT NULL) STRICT, WITHOUT ROWID;
CREATE TABLE segment(
    id INTEGER PRIMARY KEY,
    hash BLOB NOT NULL UNIQUE CHECK(length(hash) = 32),
    space BLOB NOT NULL CHECK(length(space) = 16),
    stream BLOB NOT NULL CHECK(length(stream) = 24),
    counter INTEGER NOT NULL CHECK(counter > 0),
    prev BLOB NOT NULL CHECK(length(prev) = 32),
    opened INTEGER NOT NULL CHECK(opened IN (0, 1)),
    bytes BLOB NOT NULL) STRICT;
CREATE INDEX segment_by_place ON segment(space, stream, counter);
CREATE TABLE aside(
    stream INTEGER NOT NULL, seq INTEGER NOT NULL, reason TEXT NOT NULL,
    PRIMARY KEY(stream, seq)) STRICT, WITHOUT ROWID;
CREATE TABLE twin(
    stream INTEGER NOT NULL, seq INTEGER NOT NULL, hash BLOB NOT NULL, segment INTEGER NOT NULL,
    bytes BLOB NOT NULL, PRIMARY KEY(stream, seq, hash)) STRICT, WITHOUT ROWID;
CREATE TABLE wanted(hash BLOB PRIMARY KEY CHECK(length(hash) = 32)) STRICT, WITHOUT ROWID;
DROP TABLE head;
CREATE TABLE head(
    entity BLOB NOT NULL, field TEXT NOT NULL, stream INTEGER NOT NULL, seq INTEGER NOT NULL,
    hlc INTEGER NOT NULL, value BLOB NOT NULL, type TEXT NOT NULL,
    PRIMARY KEY(entity, field, stream, seq)) STRICT, WITHOUT ROWID;
)sql",
                                   // Every column that no hash covers stands twice: a bit that changed in one
                                   // of the two is told by SQLite's own check of indexes against tables.
                                   R"sql(
DROP INDEX entry_unsent;
CREATE INDEX entry_by_segment ON entry(segment);
CREATE INDEX meta_twice ON meta(key, value);
CREATE INDEX stream_twice ON stream(name, public_key, label, own, partial);
CREATE INDEX space_twice ON space(id, root, judged);
CREATE INDEX control_twice ON control(hash, space);
CREATE INDEX segment_twice ON segment(hash, space, stream, counter, prev, opened);
CREATE INDEX aside_twice ON aside(stream, seq, reason);
CREATE INDEX twin_twice ON twin(stream, seq, hash, segment);
CREATE INDEX wanted_twice ON wanted(hash);
)sql"};
static_assert(static_cast<std::int64_t>(migrations.size()) == logbookVersion);

Error newer(const std::string &file)
{
    return {Errc::Unsupported,
            "this logbook was written by a newer version of the program; it was not touched", file,
            "update the program on this machine"};
}

struct Marks {
    std::int64_t application = 0;
    std::int64_t version = 0;
    std::int64_t tables = 0;
};

Result<Marks> readMarks(const sqlite::Connection &db)
{
    const auto application = db.number("PRAGMA application_id");
    if (!application)
        return application.error();
    const auto version = db.number("PRAGMA user_version");
    if (!version)
        return version.error();
    const auto tables = db.number("SELECT count(*) FROM sqlite_schema");
    if (!tables)
        return tables.error();
    return Marks{*application, *version, *tables};
}

// All three as of one moment: a process that begins the same logbook must not come between them.
Result<Marks> marksOf(sqlite::Connection &db)
{
    SNUG_TRY(db.exec("BEGIN"));
    Result<Marks> marks = readMarks(db);
    const Status ended = db.exec("ROLLBACK");
    if (marks && !ended) // a fault while reading says more than the one it left behind
        return ended.error();
    return marks;
}

} // namespace

Result<std::vector<std::string>> schemaTexts(const sqlite::Connection &db)
{
    auto rows = db.prepare("SELECT type, name, tbl_name, coalesce(sql, '') FROM sqlite_schema ORDER BY name");
    if (!rows)
        return rows.error();
    std::vector<std::string> texts;
    SNUG_TRY(rows->each([&]() -> Status {
        texts.push_back(rows->text(0) + " " + rows->text(1) + " " + rows->text(2) + " " + rows->text(3));
        return done();
    }));
    return texts;
}

Result<std::vector<std::string>> schemaWanted()
{
    Result<sqlite::Connection> fresh = sqlite::Connection::open(":memory:", sqlite::OpenMode::Create);
    if (!fresh)
        return fresh.error();
    SNUG_TRY(prepareSchema(*fresh));
    return schemaTexts(*fresh);
}

Status prepareSchema(sqlite::Connection &db)
{
    const Result<Marks> marks = marksOf(db);
    if (!marks)
        return marks.error();
    const bool isNew = marks->tables == 0 && marks->version == 0 && marks->application == 0;
    if (!isNew && marks->application != logbookApplicationId)
        return Error{Errc::Unsupported, "a database of another program", db.file(), "give a logbook of ours"};
    if (marks->version > logbookVersion)
        return newer(db.file());
    if (marks->version == logbookVersion)
        return done();

    Result<sqlite::Transaction> transaction = sqlite::Transaction::begin(db);
    if (!transaction)
        return transaction.error();
    // another process may have done it while we waited for the lock
    const auto now = db.number("PRAGMA user_version");
    if (!now)
        return now.error();
    for (auto at = static_cast<std::size_t>(*now); at < migrations.size(); ++at)
        SNUG_TRY(db.exec(migrations.at(at)));
    const std::string mark = "PRAGMA application_id = " + std::to_string(logbookApplicationId) +
                             "; PRAGMA user_version = " + std::to_string(logbookVersion);
    SNUG_TRY(db.exec(mark.c_str()));
    return std::move(*transaction).commit();
}

} // namespace snugwalk
