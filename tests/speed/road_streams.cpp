// SPDX-License-Identifier: Apache-2.0
// A log of raw doubles x, y, z at 100 Hz in one pass: spectra of the axes, rainflow and damage of the
// vertical, roughness. Prints one JSON object: seconds of the processor, peak memory, spectra, results.
//
// usage: road_streams FILE SAMPLES AXES
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <fstream>
#include <memory>
#include <string>
#include <vector>

#include "base/value.hpp"
#include "road/accel/roughness_meter.hpp"
#include "road/series/damage.hpp"
#include "road/series/welch.hpp"

using namespace snugwalk;

namespace {

constexpr std::size_t portion = 4096; // samples read at a time
constexpr double rate = 100.0;
constexpr double speed = 22.0; // m/s

struct Streams {
    std::vector<Welch> spectra;
    RoughnessMeter meter = RoughnessMeter::make({}).value();
    Rainflow counter;
    Damage damage = Damage::make({2, 4, 6}).value();
    long long taken = 0;
    std::vector<double> axis = std::vector<double>(portion);

    explicit Streams(std::size_t axes)
    {
        for (std::size_t i = 0; i < axes; ++i)
            spectra.push_back(Welch::make(rate, 1024).value());
        meter.onVertical = [this](std::span<const double> vertical) {
            for (const double v : vertical)
                counter.push(v, [this](const Cycle &c) { damage.add(c); });
        };
    }

    void take(const double *samples, std::size_t count)
    {
        for (std::size_t a = 0; a < spectra.size(); ++a) {
            for (std::size_t i = 0; i < count; ++i)
                axis[i] = samples[3 * i + a];
            spectra[a].add(std::span<const double>(axis.data(), count));
        }
        for (std::size_t i = 0; i < count; ++i, ++taken) {
            const double *s = samples + 3 * i;
            meter.add({static_cast<double>(taken) / rate, {s[0], s[1], s[2]}, speed});
        }
    }
};

// Of this program alone: what getrusage tells may be that of the process which started it.
long long peakKilobytes()
{
    std::ifstream status("/proc/self/status");
    std::string line;
    while (std::getline(status, line)) {
        if (line.starts_with("VmHWM:"))
            return std::atoll(line.c_str() + 6);
    }
    return 0;
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 4)
        return 2;
    const std::unique_ptr<std::FILE, int (*)(std::FILE *)> file(std::fopen(argv[1], "rb"), &std::fclose);
    if (file == nullptr)
        return 3;
    long long left = std::atoll(argv[2]);
    const std::clock_t begin = std::clock();
    Streams streams(static_cast<std::size_t>(std::atoi(argv[3])));
    std::vector<double> buffer(3 * portion);
    while (left > 0) {
        const auto wanted = static_cast<std::size_t>(std::min<long long>(left, portion));
        const std::size_t got = std::fread(buffer.data(), 3 * sizeof(double), wanted, file.get());
        if (got == 0)
            return 3;
        streams.take(buffer.data(), got);
        left -= static_cast<long long>(got);
    }
    Value::List densities;
    for (Welch &welch : streams.spectra) {
        const auto s = welch.finish();
        densities.emplace_back(Value::List(s->density.begin(), s->density.end()));
    }
    const RoughnessResult r = streams.meter.finish();
    streams.counter.finish([&](const Cycle &c) { streams.damage.add(c); });
    const double seconds = static_cast<double>(std::clock() - begin) / CLOCKS_PER_SEC;
    std::printf("%s\n", toJson(Value::Map{{"seconds", seconds},
                                          {"peak_kilobytes", peakKilobytes()},
                                          {"density", densities},
                                          {"median", r.median},
                                          {"windows", r.windows},
                                          {"level", streams.damage.sums()[1].level}},
                               false)
                            .c_str());
    return 0;
}
