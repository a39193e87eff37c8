// SPDX-License-Identifier: Apache-2.0
// Export, import and check by themselves, for scripts: `exchange_probe make|export|import|check|dump BOOK
// [FILE]`.
#include <iostream>

#include "base/text.hpp"
#include "base/value.hpp"
#include "exchange/check_export.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"
#include "image/plain_codec.hpp"
#include "logbook/acts.hpp"
#include "logbook/check.hpp"
#include "logbook/import_photo.hpp"
#include "pictures.hpp"
#include "support/actions.hpp"
#include "sync/exchange.hpp"
#include "sync/memory_store.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

int answer(const Value::Map &members)
{
    std::cout << toJson(members, false) << std::endl;
    return 0;
}

int fail(const Error &error)
{
    answer({{"ok", false}, {"code", codeName(error.code)}, {"what", error.what}, {"where", error.where}});
    return exitCode(error.code);
}

Value texts(const std::vector<std::string> &lines)
{
    Value::List list;
    for (const std::string &line : lines)
        list.emplace_back(line);
    return list;
}

// A tandem, a walk with a few marks, two pictures; shared, and sent once.
int make(Logbook &book)
{
    const Doer doer{"W. Tester", std::nullopt, std::nullopt};
    Rig rig = tandem();
    rig.id = saveRig(book, rig, doer).value();
    const Walk walk = startWalk(book, realCatalogue(), rig, "before_road", {}, {}, doer).value();
    for (const MarkDraft &draft : {passOf("chains-run", "caf\u00e9 \"x\" \\"),
                                   attentionOn("chains-condition", 3), couldNotLook("spring-bars")})
        SNUG_ASSERT(markPoint(book, realCatalogue(), rig, walk, draft, doer).has_value());
    const PlainCodec codec;
    for (int shade = 0; shade < 2; ++shade) {
        PhotoOf of;
        of.rig = rig.id;
        const std::string bytes = makeJpeg(40, 30, plain({shade * 100, 60, 70}));
        SNUG_ASSERT(importPhoto(book, bytes, codec, of, doer).has_value());
    }
    const Keys keys(book.device());
    SNUG_ASSERT(shareRig(book, keys, rig.id).has_value());
    MemoryStore store;
    SNUG_ASSERT(exchange(book, keys, store).has_value());
    return answer({{"ok", true}});
}

// The projection with streams by name, so that two logbooks can be compared.
int dump(Logbook &book)
{
    Hasher hasher;
    for (const char *sql :
         {"SELECT entity, field, name, seq, hlc, value FROM head JOIN stream ON stream.id = "
          "stream ORDER BY entity, field, name, seq",
          "SELECT entity, field, name, seq FROM dead JOIN stream ON stream.id = stream ORDER "
          "BY entity, field, name, seq",
          "SELECT id, type, rig, parent, key, sort, doc FROM thing ORDER BY id",
          "SELECT name, seq, bytes, hash FROM entry JOIN stream ON stream.id = stream ORDER BY "
          "name, seq"}) {
        auto rows = book.db().prepare(sql).value();
        while (rows.step().value()) {
            for (int column = 0; column < rows.columns(); ++column)
                hasher.add(toHex(rows.bytes(column)) + (rows.isNull(column) ? "n" : ","));
        }
    }
    const auto check = checkLogbook(book, true);
    if (!check)
        return fail(check.error());
    return answer({{"ok", true},
                   {"hash", hasher.finish().text()},
                   {"entries", check->entries},
                   {"photos", check->photos},
                   {"faults", texts(check->faults)}});
}

int run(const std::string &command, Logbook &book, const std::string &file)
{
    if (command == "make")
        return make(book);
    if (command == "dump")
        return dump(book);
    if (command == "export") {
        const auto report = exportLogbook(book, file);
        return report ? answer({{"ok", true}, {"entries", report->entries}, {"photos", report->photos}})
                      : fail(report.error());
    }
    const auto report = importLogbook(book, file, PlainCodec());
    if (!report)
        return fail(report.error());
    return answer({{"ok", true},
                   {"entries", report->entriesAdded},
                   {"known", report->entriesKnown},
                   {"photos", report->photosAdded},
                   {"missing", texts(report->missing)},
                   {"notes", texts(report->notes)}});
}

} // namespace

int main(int argc, char **argv)
{
    if (argc < 3)
        return 2;
    const std::string command = argv[1];
    const std::string file = argc > 3 ? argv[3] : "";
    if (command == "check") {
        const auto check = checkExport(argv[2]);
        return check ? answer({{"ok", true}, {"entries", check->entries}, {"faults", texts(check->faults)}})
                     : fail(check.error());
    }
    FixedClock clock(timeAt("2026-03-14T09:00:00+13:00"));
    RandomIds ids;
    auto book = Logbook::open(argv[2], {DeviceKey::random(), "probe", &clock, &ids, true});
    return book ? run(command, *book, file) : fail(book.error());
}
