// SPDX-License-Identifier: Apache-2.0
// A fresh logbook, a demo writer, the scenario's acts in order.
#include "demo/load_demo.hpp"

#include "demo/scenario_acts.hpp"
#include "logbook/files.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

// Not a secret: the demo's writer is the same everywhere, and no one else writes with it.
DeviceKey demoKey() { return DeviceKey::fromSeed(blake2b("snugwalk demo-rig writer").view()); }

Result<Value> readScenario(const std::filesystem::path &folder)
{
    const std::filesystem::path file = folder / "scenario.json";
    const Result<std::string> bytes = readFile(file, std::size_t{16} << 20);
    if (!bytes)
        return Error{bytes.error().code, bytes.error().what, file.string(),
                     "name the demo's folder with --from"};
    Result<Value> scenario = parseJson(*bytes);
    if (scenario && (*scenario)["format"].asInt() != 1)
        return Error{Errc::Unsupported, "not a scenario of format 1", file.string(),
                     "name the demo's folder with --from"};
    return scenario;
}

// The first time that an act tells; trips carry theirs in their tracks.
LocalTime beginning(const Value &scenario)
{
    for (const Value &act : scenario["acts"].list()) {
        for (const char *key : {"start", "from", "at"}) {
            if (const auto time = parseLocal(act[key].asString().value_or("")))
                return *time;
        }
    }
    return {};
}

Result<std::string> lastHash(Logbook &book)
{
    auto rows = book.db().prepare("SELECT hash FROM entry ORDER BY hlc DESC, seq DESC LIMIT 1");
    if (!rows)
        return rows.error();
    const Result<bool> row = rows->step();
    if (!row)
        return row.error();
    const auto hash = *row ? Hash::fromBytes(rows->bytes(0)) : std::nullopt;
    return hash ? hash->text() : std::string();
}

} // namespace

Result<DemoReport> loadDemo(const std::string &file, const std::filesystem::path &folder,
                            const ImageCodec &codec)
{
    const Result<Value> scenario = readScenario(folder);
    if (!scenario)
        return scenario.error();
    FixedClock clock(beginning(*scenario));
    CountingIds ids("demo-rig");
    Result<Logbook> book = Logbook::open(file, {demoKey(), "demo", &clock, &ids, true});
    if (!book)
        return book.error();
    const auto rigs = allRigs(*book);
    if (!rigs)
        return rigs.error();
    if (!rigs->empty())
        return Error{Errc::Conflict, "this logbook holds a rig already", file, "name a new file with --book"};
    ScenarioPlayer player(*book, clock, folder, codec);
    SNUG_TRY(player.addRig((*scenario)["rig"]));
    for (const Value &act : (*scenario)["acts"].list()) {
        const Status played = player.play(act);
        if (!played) {
            Error error = played.error();
            error.where = "act " + act["id"].asString().value_or("?") + ", " + error.where;
            return error;
        }
    }
    DemoReport report = player.report();
    const Result<std::string> hash = lastHash(*book);
    if (!hash)
        return hash.error();
    report.lastHash = *hash;
    return report;
}

} // namespace snugwalk
