// SPDX-License-Identifier: Apache-2.0
// Acts for a logbook to export, and reading it back row by row.
#include "exchange_fixture.hpp"

#include <filesystem>

#include "base/text.hpp"
#include "image/plain_codec.hpp"
#include "logbook/import_photo.hpp"
#include "pictures.hpp"

namespace snugwalk::test {
namespace {

std::string rowsOf(Logbook &book, const char *sql)
{
    sqlite::Statement rows = book.db().prepare(sql).value();
    std::string text;
    while (rows.step().value()) {
        for (int column = 0; column < rows.columns(); ++column)
            text += (rows.isNull(column) ? "null" : toHex(rows.bytes(column))) + " ";
        text += "\n";
    }
    return text;
}

} // namespace

Hash addPicture(Walker &walker, int shade)
{
    const std::string bytes = makePng(3, 2, plain({shade, shade, 40}));
    PhotoOf of;
    of.rig = walker.rig.id;
    of.caption = "shade " + std::to_string(shade);
    SNUG_ASSERT(importPhoto(walker.book(), bytes, PlainCodec(), of, walker.doer).has_value());
    return blake2b(bytes);
}

void fillWithEverything(Walker &walker)
{
    SNUG_ASSERT(walker.mark(passOf("chains-run", "caf\u00e9, \"quoted\", \\ and a tab\t")).has_value());
    SNUG_ASSERT(walker.mark(attentionOn("chains-condition", 3)).has_value());
    SNUG_ASSERT(walker.mark(couldNotLook("spring-bars")).has_value());
    SNUG_ASSERT(walker.mark(passOf("awning-locks")).has_value());
    SNUG_ASSERT(walker.undo().has_value());
    addPicture(walker, 10);
    addPicture(walker, 200);
}

std::string portableProjection(Logbook &book)
{
    return rowsOf(book,
                  "SELECT entity, field, name, seq, hlc, value FROM head JOIN stream ON stream.id = stream "
                  "ORDER BY entity, field, name, seq") +
           rowsOf(book, "SELECT entity, field, name, seq FROM dead JOIN stream ON stream.id = stream "
                        "ORDER BY entity, field, name, seq") +
           rowsOf(book, "SELECT id, type, rig, parent, key, sort, doc FROM thing ORDER BY id");
}

std::string portableLog(Logbook &book)
{
    return rowsOf(
        book, "SELECT name, public_key, seq, hlc, entity, act, scope, undoes, bytes, hash FROM entry JOIN "
              "stream ON stream.id = stream ORDER BY name, seq");
}

} // namespace snugwalk::test
