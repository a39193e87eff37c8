// SPDX-License-Identifier: Apache-2.0
// A fresh logbook, a demo writer, the scenario's acts in order.
#include "demo/load_demo.hpp"

#include "demo/scenario_acts.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

// Not a secret: the demo's writer is the same everywhere, and no one else writes with it.
DeviceKey demoKey() { return DeviceKey::fromSeed(blake2b("snugwalk demo-rig writer").view()); }

Result<Value> readScenario(const DemoSource &source)
{
    const std::string name = "scenario.json";
    const Result<std::string> bytes = source(name);
    if (!bytes)
        return bytes.error();
    Result<Value> scenario = parseJson(*bytes);
    if (scenario && (*scenario)["format"].asInt() != 1)
        return Error{Errc::Unsupported, "not a scenario of format 1", name,
                     "name the demo's folder with --from, or leave it out"};
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

Result<DemoReport> loadDemo(const std::string &file, const DemoSource &source, const ImageCodec &codec,
                            const DemoProgress &progress)
{
    const Result<Value> scenario = readScenario(source);
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
    ScenarioPlayer player(*book, clock, source, codec);
    SNUG_TRY(player.addRig((*scenario)["rig"]));
    const Value::List &acts = (*scenario)["acts"].list();
    int count = 0;
    for (const Value &act : acts) {
        const Status played = player.play(act);
        if (!played) {
            Error error = played.error();
            error.where = "act " + act["id"].asString().value_or("?") + ", " + error.where;
            return error;
        }
        if (progress)
            progress(++count, static_cast<int>(acts.size()));
    }
    DemoReport report = player.report();
    const Result<std::string> hash = lastHash(*book);
    if (!hash)
        return hash.error();
    report.lastHash = *hash;
    return report;
}

} // namespace snugwalk
