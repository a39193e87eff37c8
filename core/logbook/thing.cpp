// SPDX-License-Identifier: Apache-2.0
// Rows of things.
#include "logbook/thing.hpp"

#include <algorithm>
#include <array>
#include <utility>

#include "base/cbor.hpp"
#include "base/text.hpp"
#include "base/time.hpp"
#include "keys/hash.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

// Which member of a thing says what it belongs to, what it is about and when it was.
struct Shape {
    std::string_view type;
    const char *parent;
    const char *key;
    const char *sort;
};
constexpr std::array shapes = {
    Shape{"rig", "", "name", ""},
    Shape{"walk", "", "kind", "started"},
    Shape{"mark", "walk", "point", "at"},
    Shape{"finding", "opened_on", "point", "opened"},
    Shape{"look", "finding", "", "at"},
    Shape{"mend", "", "action", "at"},
    Shape{"photo", "finding", "hash", "added"},
    Shape{"trip", "", "title", "start"},
    Shape{"stay", "", "name", "from"},
    Shape{"weather", "", "source_name", "from"},
    Shape{"happening", "", "kind", "at"},
    Shape{"drawing", "photo", "", "at"},
    Shape{"stock", "", "item", "at"},
    Shape{"own_point", "", "point", "at"},
    Shape{"hidden_point", "", "point", "at"},
    Shape{"own_interval", "", "point", "at"},
    Shape{"acceptance", "walk", "point", "at"},
};

Shape shapeOf(std::string_view type)
{
    for (const Shape &shape : shapes) {
        if (shape.type == type)
            return shape;
    }
    return {type, "", "", ""}; // of a newer version: kept, and shown by its id alone
}

Result<std::vector<Thing>> readThings(Statement &rows)
{
    std::vector<Thing> things;
    SNUG_TRY(rows.each([&]() -> Status {
        Result<Value> doc = decodeCbor(rows.bytes(1));
        if (!doc)
            return doc.error();
        things.push_back({Id::fromBytes(rows.bytes(0)), std::move(doc).value()});
        return done();
    }));
    return things;
}

Error notThere(std::string_view type, std::string_view id)
{
    return {Errc::NotFound, "there is no such " + std::string(type), std::string(id), "list them first"};
}

} // namespace

Status ThingWriter::remove(const Id &id)
{
    Result<Statement> statement = m_db.prepare("DELETE FROM thing WHERE id = ?");
    if (!statement)
        return statement.error();
    statement->bindBytes(1, id.view());
    return statement->run();
}

Status ThingWriter::put(const Id &id, std::string_view type, std::vector<ShownField> &fields)
{
    if (fields.empty())
        return remove(id);
    if (!m_put) {
        Result<Statement> statement =
            m_db.prepare("INSERT OR REPLACE INTO thing VALUES(?, ?, ?, ?, ?, ?, ?)");
        if (!statement)
            return statement.error();
        m_put.emplace(std::move(*statement));
    }
    const Shape shape = shapeOf(type);
    const auto textOf = [&fields](std::string_view name) {
        const auto found = std::find_if(fields.begin(), fields.end(),
                                        [name](const ShownField &f) { return f.field == name; });
        return found == fields.end() ? std::string_view() : cborText(found->value).value_or("");
    };
    const auto rig =
        type == "rig" ? id : Id::parse(textOf("rig")); // a rig belongs to itself: one index lists all
    const auto parent = Id::parse(textOf(shape.parent));
    const auto when = parseLocal(textOf(shape.sort));
    std::sort(fields.begin(), fields.end(),
              [](const ShownField &a, const ShownField &b) { return cborKeyBefore(a.field, b.field); });
    std::string doc;
    putCborHead(doc, 5, fields.size());
    for (const ShownField &field : fields) {
        putCborText(doc, field.field);
        doc += field.value;
    }
    const auto bindId = [this](int at, const std::optional<Id> &named) {
        if (named)
            m_put->bindKeptBytes(at, named->view());
        else
            m_put->bindNull(at);
    };
    m_put->bindKeptBytes(1, id.view());
    m_put->bindKept(2, type);
    bindId(3, rig);
    bindId(4, parent);
    m_put->bindKept(5, textOf(shape.key));
    m_put->bind(6, when ? toMillis(when->instant) : 0LL);
    m_put->bindKeptBytes(7, doc);
    return m_put->run();
}

Result<std::vector<Thing>> thingsOfRig(Connection &db, std::string_view type, const Id &rig)
{
    Result<Statement> rows = db.prepare(
        rig.isNull() ? "SELECT id, doc FROM thing WHERE type = ? AND rig IS NOT NULL ORDER BY sort, id"
                     : "SELECT id, doc FROM thing WHERE type = ? AND rig = ? ORDER BY sort, id");
    if (!rows)
        return rows.error();
    rows->bind(1, type);
    if (!rig.isNull())
        rows->bindBytes(2, rig.view());
    return readThings(*rows);
}

Result<std::vector<Thing>> thingsOfParent(Connection &db, std::string_view type, const Id &parent)
{
    Result<Statement> rows =
        db.prepare("SELECT id, doc FROM thing WHERE parent = ? AND type = ? ORDER BY sort, id");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, parent.view());
    rows->bind(2, type);
    return readThings(*rows);
}

Id markId(const Id &walk, std::string_view point) { return derivedId("mark", walk.view(), point); }

Result<std::vector<Thing>> marksOfPoint(Connection &db, const Id &rig, std::string_view point)
{
    Result<Statement> walks =
        db.prepare("SELECT id FROM thing WHERE type = 'walk' AND rig = ? ORDER BY sort, id");
    if (!walks)
        return walks.error();
    walks->bindBytes(1, rig.view());
    std::vector<Thing> marks;
    SNUG_TRY(walks->each([&]() -> Status {
        Result<Thing> mark = thing(db, "mark", markId(Id::fromBytes(walks->bytes(0)), point));
        if (mark)
            marks.push_back(std::move(mark).value());
        else if (mark.error().code != Errc::NotFound)
            return mark.error();
        return done();
    }));
    return marks;
}

Status refuseFinished(Connection &db, const Id &walk)
{
    // not the whole walk: its tape is long, and this is asked at every mark. F6 is null, RFC 8949 section 3.3
    Result<Statement> rows =
        db.prepare("SELECT EXISTS(SELECT 1 FROM head WHERE entity = ?1 AND field = 'finished' AND "
                   "value <> x'F6') FROM thing WHERE id = ?1 AND type = 'walk'");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, walk.view());
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    if (!*row)
        return notThere("walk", walk.text());
    if (rows->integer(0) == 0)
        return done();
    return Error{Errc::Conflict, "this walk is finished", walk.shortText(), "start a new walk"};
}

Result<Thing> thing(Connection &db, std::string_view type, const Id &id)
{
    Result<Statement> rows = db.prepare("SELECT id, doc FROM thing WHERE id = ? AND type = ?");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, id.view());
    rows->bind(2, type);
    Result<std::vector<Thing>> things = readThings(*rows);
    if (!things)
        return things.error();
    if (things->empty())
        return notThere(type, id.text());
    return std::move(things->front());
}

Result<Thing> thingByPrefix(Connection &db, std::string_view type, std::string_view prefix)
{
    const std::string wanted = lowerAscii(prefix);
    const std::string name = std::string(type) + " " + std::string(prefix);
    if (wanted.size() < 4 || wanted.find_first_not_of("0123456789abcdef") != std::string::npos)
        return Error{Errc::InvalidInput, "not an id", name, "give at least 4 of its hexadecimal digits"};
    if (wanted.size() > 32)
        return notThere(type, prefix);
    // every id with this beginning lies between it filled up with 0 and with f
    const std::string rest(32 - wanted.size(), '0');
    const auto low = Id::parse(wanted + rest);
    const auto high = Id::parse(wanted + std::string(rest.size(), 'f'));
    SNUG_ASSERT(low && high);
    Result<Statement> rows =
        db.prepare("SELECT id, doc FROM thing WHERE id BETWEEN ? AND ? AND type = ? LIMIT 2");
    if (!rows)
        return rows.error();
    rows->bindBytes(1, low->view());
    rows->bindBytes(2, high->view());
    rows->bind(3, type);
    Result<std::vector<Thing>> things = readThings(*rows);
    if (!things)
        return things.error();
    if (things->empty())
        return notThere(type, prefix);
    if (things->size() > 1)
        return Error{Errc::InvalidInput, "more than one starts so", name, "give more of its digits"};
    return std::move(things->front());
}

} // namespace snugwalk
