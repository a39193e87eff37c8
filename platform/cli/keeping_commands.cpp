// SPDX-License-Identifier: Apache-2.0
// backup, restore and check.
#include "cli/commands.hpp"
#include "cli/sync/check_answers.hpp"
#include "device/device.hpp"
#include "logbook/check.hpp"

namespace snugwalk::cli {
namespace {

Result<Answer> backup(Session &session, const std::string &target)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    SNUG_TRY(backupLogbook(**book, target));
    return Answer{Value::Map{{"backup", target}}, "copied to " + target + " with its photos\n"};
}

std::string counted(std::int64_t count, const char *one, const char *many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

Result<Answer> restore(const std::string &backup, const std::string &target)
{
    const Result<DeviceKey> key = deviceKey(dataFolder());
    if (!key)
        return key.error();
    const SystemClock clock;
    RandomIds ids;
    const Result<CheckReport> report =
        restoreLogbook(backup, target, {*key, deviceLabel(), &clock, &ids, false});
    if (!report)
        return report.error();
    return Answer{Value::Map{{"restored", target},
                             {"entries", report->entries},
                             {"photos", report->photos},
                             {"photos_elsewhere", report->photosElsewhere}},
                  "copied to " + target + ": " + counted(report->entries, "entry", "entries") + ", " +
                      counted(report->photos, "photo", "photos") +
                      ", every hash, chain and table agrees\nopen it with --book " + target + "\n"};
}

Result<Answer> check(Session &session, bool deep)
{
    const auto book = session.book();
    if (!book)
        return book.error();
    const Result<CheckReport> report = checkLogbook(**book, deep);
    if (!report)
        return report.error();
    if (!report->faults.empty()) {
        return foundFaults(report->faults, (*book)->file(),
                           "do not delete this file; open your last backup and keep both");
    }
    return Answer{Value::Map{{"entries", report->entries},
                             {"streams", report->streams},
                             {"photos", report->photos},
                             {"photos_elsewhere", report->photosElsewhere},
                             {"projection", report->projection.text()},
                             {"deep", deep},
                             {"faults", Value::List{}}},
                  std::to_string(report->entries) + " entries in " + std::to_string(report->streams) +
                      (report->streams == 1 ? " stream, " : " streams, ") + std::to_string(report->photos) +
                      (report->photos == 1 ? " photo" : " photos") + ": every hash, chain and table agrees" +
                      (deep ? ", every photo's bytes too" : "") + "\n"};
}

} // namespace

void addKeepingCommands(CLI::App &app, Registry &registry)
{
    auto target = std::make_shared<std::string>();
    CLI::App *copying = app.add_subcommand("backup", "copy the logbook and its photos while it is in use");
    copying->add_option("target", *target, "a file that does not exist yet")->required();
    registry.add(*copying, "  snugwalk backup /media/stick/heron.snugwalk",
                 [target](Session &s) { return backup(s, *target); });
    auto copy = std::make_shared<std::string>();
    CLI::App *restoring =
        app.add_subcommand("restore", "make a new logbook of a backup, once every bit of it is checked");
    restoring->add_option("backup", *copy, "the file that `backup` wrote; it stays as it is")->required();
    restoring->add_option("target", *target, "a file that does not exist yet")->required();
    registry.add(*restoring, "  snugwalk restore /media/stick/heron.snugwalk heron-again.snugwalk",
                 [copy, target](Session &) { return restore(*copy, *target); });
    auto deep = std::make_shared<bool>(false);
    auto store = std::make_shared<std::string>();
    auto file = std::make_shared<std::string>();
    CLI::App *checking =
        app.add_subcommand("check", "whether the logbook is what was written: hashes, chain, tables, photos");
    checking->add_flag("--deep", *deep, "read every page and every photo again");
    checking->add_option("--store", *store, "read everything of this logbook at a store instead");
    checking->add_option("--export", *file, "read an export instead, to the last bit; needs no logbook");
    registry.add(
        *checking,
        "  snugwalk check --deep\n  snugwalk check --store stick\n  snugwalk check --export heron.zip",
        [=](Session &s) -> Result<Answer> {
            if (!store->empty() && !file->empty())
                return Error{Errc::Usage, "one thing at a time", "--store, --export", "leave one out"};
            return !store->empty()  ? checkedStore(s, *store)
                   : !file->empty() ? checkedExport(*file)
                                    : check(s, *deep);
        });
}

} // namespace snugwalk::cli
