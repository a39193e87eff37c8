// SPDX-License-Identifier: Apache-2.0
// road, with roughness and calibrate of its own.
#include <cmath>

#include "base/text.hpp"
#include "cli/road_answers.hpp"

namespace snugwalk::cli {
namespace {

struct LogOptions {
    std::vector<std::string> files;
    SensorOptions sensor;
    bool windows = false;
    double knownIri = 0.0;
};

Result<Answer> roughness(const LogOptions &o)
{
    constexpr std::size_t mostWindows = 100'000; // of 100 m: 10,000 km
    Value::List windows;
    const auto onWindow = [&](const RoughnessWindow &w) {
        if (!o.windows || windows.size() == mostWindows)
            return;
        windows.push_back(Value::Map{{"from", w.from},
                                     {"to", w.to},
                                     {"distance", w.distance},
                                     {"speed", w.speed},
                                     {"rms", w.rms},
                                     {"value", w.index}});
    };
    const Result<LogRoughness> log = roughnessOfLogs(o.files, o.sensor, 0.0, 0.0, onWindow);
    if (!log)
        return log.error();
    Value json = roughnessValue(*log);
    if (o.windows)
        json.member("stretches") = windows;
    return Answer{json, roughnessText(*log)};
}

Result<Answer> calibrate(const LogOptions &o)
{
    constexpr long long fewest = 5;
    Calibrator calibrator;
    const auto onWindow = [&](const RoughnessWindow &w) { calibrator.add(w.rms, w.speed); };
    const Result<LogRoughness> log = roughnessOfLogs(o.files, o.sensor, 0.0, 0.0, onWindow);
    if (!log)
        return log.error();
    if (calibrator.windows() < fewest)
        return Error{Errc::InvalidInput, "fewer than 5 stretches of 100 m with a known speed",
                     std::to_string(calibrator.windows()),
                     "drive half a kilometre or more, with --track or --speed"};
    const Calibration c = calibrator.calibrate(o.knownIri);
    // of the mean of so many stretches, by their own scatter: 8 cases in 10
    const double doubt = std::exp(1.2816 * c.spread / std::sqrt(static_cast<double>(c.windows)));
    const Value json = Value::Map{
        {"value", c.scale},
        {"unit", "m/km per m/s2"},
        {"low", c.scale / doubt},
        {"high", c.scale * doubt},
        {"level", Estimate{}.level},
        {"spread", c.spread},
        {"windows", c.windows},
        {"exponent",
         Value::Map{{"value", c.law.exponent}, {"spread", c.law.spread}, {"fitted", c.law.fitted}}},
        {"basis", "fitted"},
        {"source", "common practice"},
        {"warnings", c.law.fitted ? Value::List{} : Value::List{"exponent_not_fitted"}}};
    return Answer{json, "scale " + fixed(c.scale, 3) + " m/km for 1 m/s2 at 80 km/h, from " +
                            std::to_string(c.windows) + " stretches; power of speed " +
                            fixed(c.law.exponent, 2) +
                            (c.law.fitted ? "\n" : " (not fitted: 30 stretches at 3 speeds or more)\n")};
}

} // namespace

void addRoadCommands(CLI::App &app, Registry &registry)
{
    CLI::App *road =
        app.add_subcommand("road", "roughness of roads: profiles, spectra, cycles, accelerometer logs");
    road->require_subcommand(1);
    addRoadProfileCommands(*road, registry);
    addRoadSeriesCommands(*road, registry);
    constexpr const char *logs =
        "CSV with time and three axes, gravity included; logs that follow each other are one";
    auto o = std::make_shared<LogOptions>();
    CLI::App *index =
        road->add_subcommand("roughness", "roughness index of this rig from an accelerometer log, m/km");
    index->add_option("files", o->files, logs)->required();
    addSensorOptions(*index, o->sensor);
    index->add_flag("--windows", o->windows, "also each stretch, with --json");
    registry.add(*index,
                 "  snugwalk road roughness drive.csv --track drive.gpx --location rig --json\n"
                 "  snugwalk road roughness bench.csv --speed 60 --unit g",
                 [o](Session &) { return roughness(*o); });
    auto c = std::make_shared<LogOptions>();
    CLI::App *scale =
        road->add_subcommand("calibrate", "this rig's scale from a stretch of known roughness index");
    scale->add_option("files", c->files, logs)->required();
    scale->add_option("--iri", c->knownIri, "known index of the stretch, m/km")
        ->required()
        ->check(CLI::Range(0.1, 30.0));
    addSensorOptions(*scale, c->sensor);
    registry.add(*scale, "  snugwalk road calibrate stretch.csv --track stretch.gpx --iri 2.1",
                 [c](Session &) { return calibrate(*c); });
}

} // namespace snugwalk::cli
