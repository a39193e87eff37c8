// SPDX-License-Identifier: Apache-2.0
// Our side of merge_replicas.py: three devices write what the op file says and leave their segments at a
// store; then a fourth device reads all of it through an exchange: signatures, keys, inflating, decoding, a
// durable logbook.
//
// usage: merge_replicas OPS.jsonl FOLDER, then lines on standard input:
//   merge        "SECONDS BYTES ENTRIES": a new device exchanges once; bytes of the segments
//   dump FILE    the same, and what is shown then, as JSON of entity and fields
//   raw          "SECONDS BYTES ENTRIES": the entries' rows alone into a bare table, one transaction
#include <chrono>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <iostream>

#include "sync/exchange.hpp"
#include "sync/memory_store.hpp"

using namespace snugwalk;
namespace fs = std::filesystem;

namespace {

struct Update {
    std::int64_t replica, phase, act;
    LocalTime at;
    std::string by;
    Id scope;
    EntityChange change;
};

std::vector<Update> readUpdates(const std::string &file)
{
    std::ifstream in(file);
    std::vector<Update> updates;
    for (std::string line; std::getline(in, line);) {
        const Value v = parseJson(line).value();
        updates.push_back({*v["replica"].asInt(),
                           *v["phase"].asInt(),
                           *v["act"].asInt(),
                           {fromMillis(*v["at"].asInt()), ZoneOffset{780}},
                           *v["by"].asString(),
                           Id::parse(*v["scope"].asString()).value_or(Id{}),
                           {*Id::parse(*v["entity"].asString()), *v["type"].asString(), v["fields"].map()}});
    }
    return updates;
}

struct Device {
    Device(const fs::path &folder, const std::string &name)
        : key(DeviceKey::fromSeed(blake2b(name).view())), keys(key), ids(name)
    {
        const std::string file = (folder / (name + ".snug")).string();
        for (const char *end : {"", "-wal", "-shm"})
            fs::remove(file + end);
        book.emplace(Logbook::open(file, {key, name, &clock, &ids}).value());
    }
    DeviceKey key;
    Keys keys;
    FixedClock clock{parseLocal("2023-11-01T08:00:00+13:00").value()};
    CountingIds ids;
    std::optional<Logbook> book;
};

class Party {
public:
    Party(const std::string &opsFile, fs::path folder) : m_folder(std::move(folder))
    {
        fs::create_directories(m_folder);
        const std::vector<Update> updates = readUpdates(opsFile);
        m_rig = updates.front().change.entity;
        std::int64_t replicas = 0;
        for (const Update &update : updates)
            replicas = std::max(replicas, update.replica + 1);
        std::vector<std::unique_ptr<Device>> devices;
        for (std::int64_t i = 0; i < replicas; ++i) {
            devices.push_back(std::make_unique<Device>(m_folder, "writer" + std::to_string(i)));
            // these only write down what is read later: their own durability is not what is timed
            SNUG_ASSERT(devices.back()->book->db().exec("PRAGMA synchronous = OFF").has_value());
        }
        Device &owner = *devices.front();
        write(owner, updates, 0, 0);
        SNUG_ASSERT(shareRig(*owner.book, owner.keys, m_rig).has_value());
        m_root = sharedRigs(*owner.book).value().front().second;
        for (std::size_t i = 1; i < devices.size(); ++i)
            enroll(owner, *devices[i]);
        const Device reader(m_folder, "reader");
        enroll(owner, reader);
        for (const auto &device : devices)
            meet(*device);
        for (std::size_t i = 0; i < devices.size(); ++i)
            write(*devices[i], updates, static_cast<std::int64_t>(i), 1);
        for (const auto &device : devices)
            meet(*device);
        for (const auto &[name, bytes] : m_store.files)
            m_bytes += name.ends_with(".seg") ? bytes.size() : 0;
        m_files = m_store.files;
    }

    void merge(const std::string &dumpFile)
    {
        Device reader(m_folder, "reader");
        SNUG_ASSERT(joinRig(*reader.book, m_rig, m_root).has_value());
        const auto begun = std::chrono::steady_clock::now();
        const ExchangeSummary summary = exchange(*reader.book, reader.keys, m_store).value();
        answer(begun, summary.entriesReceived);
        SNUG_ASSERT(summary.damaged == 0 && summary.aside == 0 && summary.gaps == 0 && summary.unopened == 0);
        SNUG_ASSERT(m_store.files == m_files);
        if (!dumpFile.empty())
            dump(*reader.book, dumpFile);
        m_rows = bareRows(*reader.book);
    }

    // The rows of the entries with their own primary key, and nothing else that the logbook keeps.
    void raw()
    {
        const std::string file = (m_folder / "raw.db").string();
        for (const char *end : {"", "-wal", "-shm"})
            fs::remove(file + end);
        auto db = sqlite::Connection::open(file, sqlite::OpenMode::Create).value();
        SNUG_ASSERT(
            db.exec("PRAGMA journal_mode = WAL; PRAGMA synchronous = FULL; "
                    "CREATE TABLE entry(stream INTEGER NOT NULL, seq INTEGER NOT NULL, hlc INTEGER NOT NULL, "
                    "entity BLOB NOT NULL, act BLOB NOT NULL, scope BLOB, bytes BLOB NOT NULL, hash BLOB NOT "
                    "NULL, PRIMARY KEY(stream, seq)) STRICT, WITHOUT ROWID")
                .has_value());
        const auto begun = std::chrono::steady_clock::now();
        auto transaction = sqlite::Transaction::begin(db).value();
        auto insert = db.prepare("INSERT INTO entry VALUES(?, ?, ?, ?, ?, ?, ?, ?)").value();
        for (const Row &row : m_rows) {
            for (int i = 0; i < 3; ++i)
                insert.bind(i + 1, row.numbers[i]);
            for (int i = 0; i < 5; ++i)
                insert.bindBytes(i + 4, row.bytes[i]);
            SNUG_ASSERT(insert.run().has_value());
        }
        SNUG_ASSERT(std::move(transaction).commit().has_value());
        answer(begun, static_cast<std::int64_t>(m_rows.size()));
    }

private:
    struct Row {
        std::int64_t numbers[3];
        std::string bytes[5];
    };

    static std::vector<Row> bareRows(Logbook &book)
    {
        auto rows =
            book.db().prepare("SELECT stream, seq, hlc, entity, act, scope, bytes, hash FROM entry").value();
        std::vector<Row> all;
        while (rows.step().value()) {
            Row &row = all.emplace_back();
            for (int i = 0; i < 3; ++i)
                row.numbers[i] = rows.integer(i);
            for (int i = 0; i < 5; ++i)
                row.bytes[i] = rows.bytes(i + 3);
        }
        return all;
    }

    void answer(std::chrono::steady_clock::time_point begun, std::int64_t entries) const
    {
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
        std::printf("%.6f %zu %lld\n", took.count(), m_bytes, static_cast<long long>(entries));
        std::fflush(stdout);
    }

    static void write(Device &device, const std::vector<Update> &updates, std::int64_t replica,
                      std::int64_t phase)
    {
        Act act;
        std::int64_t number = 0;
        const auto commit = [&] {
            if (!act.changes.empty())
                SNUG_ASSERT(device.book->record(act).has_value());
            act = {};
        };
        for (const Update &update : updates) {
            if (update.replica != replica || update.phase != phase)
                continue;
            if (update.act != number)
                commit();
            number = update.act;
            device.clock.set(update.at);
            act.by = update.by;
            act.at = update.at;
            act.scope = update.scope;
            act.changes.push_back(update.change);
        }
        commit();
    }

    void enroll(Device &owner, const Device &other) const
    {
        const NewDevice device{other.key.publicKey(), other.keys.pair.publicKey(), "other", SyncRole::Helper,
                               ""};
        SNUG_ASSERT(enrollDevice(*owner.book, owner.keys, m_rig, device).has_value());
        SNUG_ASSERT(joinRig(const_cast<Device &>(other).book.value(), m_rig, m_root).has_value());
    }

    void meet(Device &device) { SNUG_ASSERT(exchange(*device.book, device.keys, m_store).has_value()); }

    static void dump(Logbook &book, const std::string &file)
    {
        auto rows = book.db().prepare("SELECT id, doc FROM thing").value();
        Value::Map things;
        while (rows.step().value())
            things[Id::fromBytes(rows.bytes(0)).text()] = decodeCbor(rows.bytes(1)).value();
        std::ofstream(file) << toJson(things, false);
    }

    fs::path m_folder;
    MemoryStore m_store;
    std::map<std::string, std::string, std::less<>> m_files;
    Id m_rig;
    Hash m_root;
    std::size_t m_bytes = 0;
    std::vector<Row> m_rows;
};

} // namespace

int main(int argc, char **argv)
{
    if (argc != 3)
        return 2;
    Party party(argv[1], argv[2]);
    for (std::string line; std::getline(std::cin, line);) {
        if (line == "merge")
            party.merge("");
        else if (line.starts_with("dump "))
            party.merge(line.substr(5));
        else if (line == "raw")
            party.raw();
        else
            return 2;
    }
    return 0;
}
