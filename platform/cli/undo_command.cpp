// SPDX-License-Identifier: Apache-2.0
// undo: takes back what this device wrote last outside a walk.
#include "cli/commands.hpp"
#include "logbook/undo.hpp"

namespace snugwalk::cli {
namespace {

Result<Answer> undo(Session &session, bool onlyTell)
{
    const Result<Doer> doer = session.doer();
    if (!doer)
        return doer.error();
    const auto opened = session.book();
    if (!opened)
        return opened.error();
    Logbook &book = **opened;
    const Result<LastAct> last = lastAct(book);
    if (!last)
        return last.error();
    const std::string what = last->type + " " + last->entity.shortText() + ", " + formatLocalShort(last->at) +
                             (last->by.empty() ? "" : ", " + last->by);
    Value::Map json{{"act", last->act.text()},
                    {"type", last->type},
                    {"id", last->entity.text()},
                    {"at", formatLocal(last->at)},
                    {"by", last->by},
                    {"undone_by", Value()},
                    {"entries", 0}};
    if (onlyTell)
        return Answer{json, "last: " + what + "\n"};
    const Result<Receipt> receipt = takeBack(book, last->act, doer->by);
    if (!receipt)
        return receipt.error();
    json["undone_by"] = receipt->act.text();
    json["entries"] = receipt->entries;
    return Answer{json, "taken back: " + what + "\n"};
}

} // namespace

void addUndoCommand(CLI::App &app, Registry &registry)
{
    CLI::App *sub = app.add_subcommand(
        "undo",
        "take back what this device wrote last outside a walk: a mend, a trip, a count, the end of a walk");
    auto onlyTell = std::make_shared<bool>(false);
    sub->add_flag("--what", *onlyTell, "say what it is, and leave it");
    registry.add(*sub, "  snugwalk undo --what\n  snugwalk undo",
                 [onlyTell](Session &s) { return undo(s, *onlyTell); });
}

} // namespace snugwalk::cli
