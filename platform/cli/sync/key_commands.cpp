// SPDX-License-Identifier: Apache-2.0
// key backup, recover: an owner that lives on paper.
#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "device/device.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"
#include "stores/open_store.hpp"
#include "sync/recover.hpp"
#include "sync/words.hpp"

namespace snugwalk::cli {
namespace {

struct RecoverTyped {
    std::vector<std::string> words;
    std::string from;
    std::string mark;
    std::string store;
};

std::string sheet(const std::string &rig, const std::string &words, const std::string &mark,
                  const LocalTime &now)
{
    return "Key to the logbook of " + rig + ", made " + formatLocalShort(now) + "\n\n" + wordLines(words) +
           "\nMark of the rig (not secret; it tells this rig from one somebody made up)\n\n" +
           wordLines(mark) +
           "\nWho has these words and reaches the store owns the logbook: keep them as you keep the papers "
           "of the "
           "rig.\nThey are kept nowhere else. On a new device, with the store added:\n"
           "  snugwalk key recover --store NAME WORDS --mark MARK\n"
           "Paper lost or seen by others: revoke it (it is in `snugwalk device list`) and print another.\n";
}

Result<Answer> backup(Session &session, const std::string &out)
{
    const auto keys = keysOf(session);
    if (!keys)
        return keys.error();
    const auto rig = session.rig();
    const auto now = session.now();
    if (!rig || !now)
        return rig ? now.error() : rig.error();
    Logbook &book = **session.book();
    const auto root = rootOf(book, rig->id);
    if (!root)
        return root.error();
    const auto words =
        enrollPaperOwner(book, *keys, rig->id, "printed key of " + formatDate(civilDate(*now)));
    if (!words)
        return words.error();
    const std::string mark = rigMark(*root);
    const std::string text = sheet(rig->name, *words, mark, *now);
    if (!out.empty())
        SNUG_TRY(writeNewFile(out, text));
    return Answer{Value::Map{{"rig", rig->id.text()}, {"words", *words}, {"mark", mark}},
                  out.empty() ? text + "\nSync once, so that the store knows this key.\n"
                              : "written to " + out +
                                    ": print it, then remove the file. Sync once, so that the store "
                                    "knows this key.\n"};
}

Result<Answer> recover(Session &session, const RecoverTyped &typed)
{
    const auto seed = bytesTyped(typed.words, typed.from);
    if (!seed)
        return seed.error();
    const auto printed = keyFromWords(wordsFrom(*seed));
    const auto record = storeNamed(dataFolder(), typed.store);
    if (!printed || !record)
        return printed ? record.error() : printed.error();
    const auto secrets = keeper();
    const auto opened = openStore(*secrets, *record);
    if (!opened)
        return opened.error();
    auto found = rigsOwnedBy(*opened->store, *printed);
    if (!found)
        return found.error();
    const auto rig = rigOfMark(std::move(found).value(), typed.mark, record->name);
    if (!rig)
        return rig.error();
    const auto keys = keysOf(session, true);
    if (!keys)
        return keys.error();
    SNUG_TRY(recoverRig(**session.book(), *keys, *printed, *rig));
    const std::string mark = rigMark(rig->root);
    return Answer{
        Value::Map{{"rig", rig->rig.text()},
                   {"device", keys->device.deviceId().text()},
                   {"mark", mark},
                   {"mark_compared", !typed.mark.empty()}},
        "This device owns the rig again. Its mark:\n" + wordLines(mark) +
            (typed.mark.empty() ? "Compare it with the paper before you trust what comes.\n" : "") +
            "Now: `snugwalk sync`; then revoke the device that was lost: `snugwalk device revoke`.\n"};
}

} // namespace

void addKeyCommands(CLI::App &app, Registry &registry)
{
    CLI::App *key = app.add_subcommand("key", "a key of a shared rig as printable words");
    key->require_subcommand(1);
    auto out = std::make_shared<std::string>();
    CLI::App *backing = key->add_subcommand(
        "backup", "make a key for paper: 24 words that own the rig when every device is lost; shown once");
    backing->add_option("--out", *out, "write the sheet into this file instead of showing it");
    registry.add(*backing, "  snugwalk key backup", [out](Session &s) { return backup(s, *out); });
    auto typed = std::make_shared<RecoverTyped>();
    CLI::App *recovering = key->add_subcommand("recover", "make this device an owner by the printed words");
    recovering->add_option("words", typed->words, "the 24 words");
    recovering->add_option("--from", typed->from, "a file with the 24 words; - for standard input");
    recovering->add_option("--mark", typed->mark, "the rig's seven words from the same paper, in quotes");
    recovering->add_option("--store", typed->store, "where the rig's entries are")->required();
    registry.add(*recovering, "  snugwalk key recover --store stick --from words.txt --mark \"babab ...\"",
                 [typed](Session &s) { return recover(s, *typed); });
}

} // namespace snugwalk::cli
