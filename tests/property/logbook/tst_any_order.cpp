// SPDX-License-Identifier: Apache-2.0
// The same entries in any order end in the same tables, and in what a plain model of the rules says.
#include <doctest/doctest.h>

#include <algorithm>
#include <map>
#include <random>

#include "logbook/projection.hpp"
#include "logbook/schema.hpp"
#include "logbook/thing.hpp"

using namespace snugwalk;
using sqlite::Connection;

namespace {

constexpr int deviceCount = 3;
const std::vector<std::string> fields = {"state", "note", "reason"};
const std::vector<std::string> states = {"pass", "attention", "not_fitted", "could_not_look",
                                         "of a newer version"};

StreamId streamOf(int device)
{
    return streamFromBytes(std::string(24, static_cast<char>('a' + device))).value();
}

Id entityOf(int n) { return Id::fromBytes(std::string(16, static_cast<char>('A' + n))); }

// The register in plain words: of the entries that set a field, those that no other entry setting it
// replaces; `known` bounds what a writer had seen.
std::vector<const Entry *> modelHeads(const std::vector<Entry> &known, const Id &entity,
                                      const std::string &field)
{
    std::vector<const Entry *> heads;
    for (const Entry &entry : known) {
        if (entry.entity != entity || entry.fields.count(field) == 0)
            continue;
        const bool replaced = std::any_of(known.begin(), known.end(), [&](const Entry &other) {
            return other.entity == entity && other.fields.count(field) > 0 &&
                   std::find(other.prev.begin(), other.prev.end(), entry.id) != other.prev.end();
        });
        if (!replaced)
            heads.push_back(&entry);
    }
    return heads;
}

// A history of devices that write, and now and then hear of each other; their clocks are years apart.
class History {
public:
    explicit History(unsigned seed) : m_rng(seed), m_known(deviceCount), m_skew(deviceCount)
    {
        for (auto &skew : m_skew)
            skew = std::uniform_int_distribution<std::int64_t>(0, std::int64_t{1} << 40)(m_rng);
        for (int i = 0; i < 40; ++i) {
            const int device = pick(deviceCount);
            if (pick(4) == 0)
                hear(device, pick(deviceCount));
            else
                write(device);
        }
    }

    std::vector<Entry> all;

private:
    int pick(int below) { return std::uniform_int_distribution<int>(0, below - 1)(m_rng); }

    void hear(int device, int from)
    {
        for (const Entry &entry : m_known[static_cast<std::size_t>(from)]) {
            auto &mine = m_known[static_cast<std::size_t>(device)];
            if (std::none_of(mine.begin(), mine.end(), [&](const Entry &e) { return e.id == entry.id; }))
                mine.push_back(entry);
        }
    }

    void write(int device)
    {
        auto &mine = m_known[static_cast<std::size_t>(device)];
        Entry entry;
        entry.id = {streamOf(device), 1};
        for (const Entry &e : mine)
            entry.id.seq += e.id.stream == entry.id.stream ? 1 : 0;
        entry.entity = entityOf(pick(3));
        entry.type = entry.entity == entityOf(2) ? "finding" : "mark";
        entry.hlc = m_skew[static_cast<std::size_t>(device)] + static_cast<std::int64_t>(all.size());
        for (const Entry &e : mine)
            entry.hlc = std::max(entry.hlc, e.hlc + 1);
        for (const std::string &field : fields) {
            if (pick(2) == 0)
                continue;
            entry.fields[field] =
                pick(5) == 0 ? Value() : Value(states.at(static_cast<std::size_t>(pick(5))));
            for (const Entry *head : modelHeads(mine, entry.entity, field)) {
                if (std::find(entry.prev.begin(), entry.prev.end(), head->id) == entry.prev.end())
                    entry.prev.push_back(head->id);
            }
        }
        if (entry.fields.empty())
            return;
        std::sort(entry.prev.begin(), entry.prev.end());
        mine.push_back(entry);
        all.push_back(entry);
    }

    std::mt19937 m_rng;
    std::vector<std::vector<Entry>> m_known;
    std::vector<std::int64_t> m_skew;
};

Connection emptyBook()
{
    Connection db = Connection::open(":memory:", sqlite::OpenMode::Create).value();
    REQUIRE(prepareSchema(db));
    for (int device = 0; device < deviceCount; ++device) {
        auto insert =
            db.prepare("INSERT INTO stream(name, public_key, label, own) VALUES(?, zeroblob(32), '', 0)")
                .value();
        insert.bindBytes(1, streamOf(device).bytes());
        REQUIRE(insert.run());
    }
    return db;
}

Hash applied(Connection &db, const std::vector<Entry> &entries)
{
    REQUIRE(db.exec("DELETE FROM head; DELETE FROM dead; DELETE FROM thing"));
    for (const Entry &entry : entries)
        REQUIRE(project(db, {streamRow(db, entry.id.stream).value(), entry, {}, {}}));
    return projectionHash(db).value();
}

int rankOf(const Value &v)
{
    const std::vector<std::string> worstLast = {"not_fitted", "pass", "could_not_look", "attention"};
    const auto at = std::find(worstLast.begin(), worstLast.end(), v.asString().value_or(""));
    if (at != worstLast.end())
        return static_cast<int>(at - worstLast.begin()) + 1;
    return v.isNull() ? 0 : 5; // a state of a newer version is shown as needing a person, see walk_read.cpp
}

// What the model shows of one entity.
Value::Map shownBy(const std::vector<Entry> &all, const Id &entity, const std::string &type)
{
    Value::Map doc;
    for (const std::string &field : fields) {
        const auto heads = modelHeads(all, entity, field);
        if (heads.empty())
            continue;
        const auto best = *std::max_element(heads.begin(), heads.end(), [&](const Entry *a, const Entry *b) {
            const bool worst = type == "mark" && field == "state";
            // a value goes before a null that did not know of it
            const auto rank = [&](const Entry *e) {
                const Value &v = e->fields.at(field);
                return worst ? rankOf(v) : v.isNull() ? 0 : 1;
            };
            const int rankA = rank(a);
            const int rankB = rank(b);
            return std::tie(rankA, a->hlc, a->id) < std::tie(rankB, b->hlc, b->id);
        });
        if (!best->fields.at(field).isNull())
            doc[field] = best->fields.at(field);
    }
    return doc;
}

} // namespace

TEST_CASE("200 histories of three devices, each in five orders: one projection, the model's")
{
    Connection db = emptyBook();
    std::size_t concurrent = 0;
    for (unsigned seed = 1; seed <= 200; ++seed) {
        CAPTURE(seed);
        const History history(seed);
        const Hash wanted = applied(db, history.all);
        for (int entity = 0; entity < 3; ++entity) {
            const std::string type = entity == 2 ? "finding" : "mark";
            const auto doc = shownBy(history.all, entityOf(entity), type);
            const auto found = thing(db, type, entityOf(entity));
            REQUIRE(found.has_value() == !doc.empty());
            if (found)
                REQUIRE(found->doc.map() == doc);
            for (const std::string &field : fields)
                concurrent += modelHeads(history.all, entityOf(entity), field).size() > 1 ? 1U : 0U;
        }
        std::mt19937 rng(seed * 7919U);
        std::vector<Entry> shuffled = history.all;
        for (int order = 0; order < 5; ++order) {
            std::shuffle(shuffled.begin(), shuffled.end(), rng);
            REQUIRE(applied(db, shuffled) == wanted);
        }
        // an entry that comes twice changes nothing
        shuffled.insert(shuffled.end(), history.all.begin(), history.all.end());
        REQUIRE(applied(db, shuffled) == wanted);
    }
    CHECK(concurrent > 200); // the histories do disagree, or this would prove nothing
    MESSAGE("fields with more than one head over 200 histories: ", concurrent);
}
