// SPDX-License-Identifier: Apache-2.0
// Places outside the logbook, read to the last bit.
#include "cli/sync/check_answers.hpp"

#include "cli/sync/parts.hpp"
#include "device/device.hpp"
#include "exchange/check_export.hpp"
#include "stores/open_store.hpp"

namespace snugwalk::cli {

Error foundFaults(const std::vector<std::string> &faults, const std::string &where, const std::string &act)
{
    constexpr std::size_t most = 20;
    std::string all = faults.front();
    for (std::size_t i = 1; i < faults.size() && i < most; ++i)
        all += "; " + faults[i];
    return Error{Errc::Corrupt, std::to_string(faults.size()) + " found: " + all, where, act};
}

Result<Answer> checkedStore(Session &session, const std::string &name)
{
    const auto keys = keysOf(session);
    const auto record = storeNamed(dataFolder(), name);
    if (!keys || !record)
        return keys ? record.error() : keys.error();
    const auto secrets = keeper();
    const auto opened = openStore(*secrets, *record);
    if (!opened)
        return opened.error();
    const auto faults = checkStore(**session.book(), *keys, *opened->store);
    if (!faults)
        return faults.error();
    if (!faults->empty())
        return foundFaults(*faults, record->place,
                           "`snugwalk sync --store " + name + " --mend` on a device that has them whole");
    return Answer{Value::Map{{"store", name}, {"faults", Value::List{}}},
                  name + ": every file of this logbook's rigs is there and what it should be\n"};
}

Result<Answer> checkedExport(const std::string &file)
{
    const auto report = checkExport(file);
    if (!report)
        return report.error();
    if (!report->faults.empty())
        return foundFaults(report->faults, file, "export again from the logbook");
    return Answer{Value::Map{{"entries", report->entries},
                             {"streams", report->streams},
                             {"photos", report->photos},
                             {"faults", Value::List{}}},
                  counted(report->entries, "entry", "entries") + " in " +
                      counted(report->streams, "stream", "streams") + ", " +
                      counted(report->photos, "photo", "photos") + ": every byte is as it was written\n"};
}

} // namespace snugwalk::cli
