// SPDX-License-Identifier: Apache-2.0
// export, import: the logbook in formats that any program reads.
#include <filesystem>

#include "base/text.hpp"
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"

namespace snugwalk::cli {
namespace {

std::string lines(const std::vector<std::string> &list, const std::string &before)
{
    std::string text;
    for (const std::string &line : list)
        text += "  " + before + line + "\n";
    return text;
}

Value listOf(const std::vector<std::string> &list) { return Value::List(list.begin(), list.end()); }

Result<Answer> exported(Session &session, const std::string &target, bool all)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    Id rig;
    if (!all) {
        const auto one = session.rig();
        if (!one)
            return one.error();
        rig = one->id;
    }
    const auto report = exportLogbook(**book, target, rig);
    if (!report)
        return report.error();
    return Answer{Value::Map{{"export", target},
                             {"entries", report->entries},
                             {"streams", report->streams},
                             {"photos", report->photos},
                             {"shared_rigs", report->sharedRigs},
                             {"missing", listOf(report->missing)}},
                  target + ": " + counted(report->entries, "entry", "entries") + " as JSON Lines and " +
                      counted(report->photos, "photo", "photos") + ", not encrypted\n" +
                      (report->sharedRigs > 0
                           ? "  with who belongs to the rig and what is set aside; no key and no "
                             "password is in it\n"
                           : "") +
                      lines(report->missing, "not in it: ")};
}

Result<Answer> imported(Session &session, const std::string &file)
{
    std::error_code fault;
    if (!std::filesystem::exists(file, fault)) // or a wrong path would leave an empty logbook behind
        return Error{Errc::NotFound, "no such file", file, "look at the path and try again"};
    const auto book = session.book(true);
    if (!book)
        return book.error();
    const auto report = importLogbook(**book, file, session.codec());
    if (!report)
        return report.error();
    return Answer{Value::Map{{"import", file},
                             {"entries_added", report->entriesAdded},
                             {"entries_known", report->entriesKnown},
                             {"streams_added", report->streamsAdded},
                             {"photos_added", report->photosAdded},
                             {"photos_known", report->photosKnown},
                             {"shared_rigs", report->sharedRigs},
                             {"missing", listOf(report->missing)},
                             {"notes", listOf(report->notes)}},
                  counted(report->entriesAdded, "entry", "entries") + " and " +
                      counted(report->photosAdded, "photo", "photos") + " added; " +
                      std::to_string(report->entriesKnown) + " entries were here already\n" +
                      (report->sharedRigs > 0
                           ? "  with who belongs to the rig and what is set aside; a device that does "
                             "not belong yet, an owner lets in: `snugwalk device answer`\n"
                           : "") +
                      lines(report->notes, "") + lines(report->missing, "nobody brought ")};
}

} // namespace

void addExportCommands(CLI::App &app, Registry &registry)
{
    auto target = std::make_shared<std::string>();
    auto all = std::make_shared<bool>(false);
    CLI::App *out =
        app.add_subcommand("export", "write entries as JSON Lines and photos into a ZIP that any program "
                                     "reads; it is not encrypted");
    out->add_option("target", *target, "a file that does not exist yet")->required();
    out->add_flag("--all", *all, "the whole logbook; without it one rig, for reading elsewhere");
    registry.add(*out, "  snugwalk export heron.zip --all",
                 [=](Session &s) { return exported(s, *target, *all); });
    auto file = std::make_shared<std::string>();
    CLI::App *in =
        app.add_subcommand("import", "take a whole export in; what does not verify stays out, the same file "
                                     "again changes nothing");
    in->add_option("file", *file, "what `snugwalk export --all` wrote")->required();
    registry.add(*in, "  snugwalk --book new.snugwalk import heron.zip",
                 [file](Session &s) { return imported(s, *file); });
}

} // namespace snugwalk::cli
