// SPDX-License-Identifier: Apache-2.0
// The append-only record of everything about the rigs in one file. The only opener of SQLite.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.hpp"
#include "logbook/projection.hpp"
#include "logbook/sqlite.hpp"
#include "logbook/thing.hpp"

namespace snugwalk {

struct LogbookOptions {
    DeviceKey device;   ///< who writes
    std::string label;  ///< the device's name for people
    const Clock *clock; ///< outlives the logbook
    IdSource *ids;      ///< outlives the logbook
    bool createIfMissing = true;
};

/// What an act sets on one entity; a null value takes a field away.
struct EntityChange {
    Id entity;
    std::string type;
    Value::Map fields;
    /// The entries that are replaced; all that stand in these fields when not given.
    std::optional<std::vector<EntryId>> replaces = std::nullopt;
};

/// What a person did in one go: written whole or not at all.
struct Act {
    std::string by;
    std::optional<LocalTime> at; ///< the clock's now when not given
    std::optional<GeoPoint> where;
    Id scope; ///< the walk, null outside one
    Id undoes;
    std::vector<EntityChange> changes;
};

struct Receipt {
    Id act;                   ///< null when nothing changed
    std::int64_t entries = 0; ///< 0 when nothing changed
};

/// One connection, one thread. Every write is one transaction that is on the disk when it returns.
class Logbook {
public:
    /// Opens `file`, making it when missing, and rebuilds the projection when its rules have changed.
    /// \returns `Corrupt`, `Unsupported` (newer version), `Io` (cannot be written), `Conflict` (locked).
    [[nodiscard]] static Result<Logbook> open(const std::string &file, LogbookOptions options);

    /// Writes an act. Fields that already have the value are left out. `Io` and `Conflict` leave
    /// everything as it was, and so does `InvalidInput` for what could not be read again.
    [[nodiscard]] Result<Receipt> record(const Act &act);
    /// The same for an act that depends on what the logbook says: `build` runs once the write lock is
    /// held, so that no other process comes between. Its error leaves everything as it was.
    [[nodiscard]] Result<Receipt> record(const std::function<Result<Act>()> &build);

    /// Takes back this device's last act on a walk that has not been taken back yet. What someone else
    /// has written over it since stays.
    /// \returns `NotFound` when there is none, `Conflict` when the walk is finished.
    [[nodiscard]] Result<Receipt> undo(const Id &walk, const std::string &by);

    [[nodiscard]] sqlite::Connection &db() { return m_db; }
    [[nodiscard]] LocalTime now() const { return m_options.clock->now(); }
    [[nodiscard]] Id newId() { return m_options.ids->next(); }
    [[nodiscard]] const std::string &file() const { return m_db.file(); }
    /// The folder that keeps the photos of this logbook.
    [[nodiscard]] std::string photoFolder() const { return m_db.file() + ".photos"; }
    [[nodiscard]] const StreamId &stream() const { return m_stream; }
    [[nodiscard]] const DeviceKey &device() const { return m_options.device; }
    [[nodiscard]] const std::string &label() const { return m_options.label; }
    /// Begins another stream of this device. Call within a transaction, see logbook/receive.hpp.
    [[nodiscard]] Status joinNewStream();
    /// Goes on with the stream that the file says is ours: another process, or another connection of this
    /// one, may have begun it.
    [[nodiscard]] Status followStream();

private:
    Logbook(sqlite::Connection db, LogbookOptions options)
        : m_db(std::move(db)), m_options(std::move(options))
    {}
    [[nodiscard]] Status start();
    [[nodiscard]] Status joinStream();
    [[nodiscard]] Status refreshProjection();

    sqlite::Connection m_db;
    LogbookOptions m_options;
    StreamId m_stream;
    std::int64_t m_streamRow = 0;
};

} // namespace snugwalk
