// SPDX-License-Identifier: Apache-2.0
// Choosing the class behind each maker.
#include "sensor/make_vibration.hpp"

#include "logbook/files.hpp"
#include "sensor/recorded_vibration.hpp"
#ifdef SNUGWALK_SENSORS
#include "sensor/qt_vibration.hpp"
#endif

namespace snugwalk {
namespace {

constexpr std::size_t maxLogBytes = 64U * 1024 * 1024;

} // namespace

std::unique_ptr<VibrationSource> systemVibration()
{
#ifdef SNUGWALK_SENSORS
    auto source = std::make_unique<QtVibration>();
    if (source->isThere())
        return source;
#endif
    return nullptr;
}

Result<std::unique_ptr<VibrationSource>> recordedVibration(const std::string &file)
{
    const Result<std::string> bytes = readFile(file, maxLogBytes);
    if (!bytes)
        return bytes.error();
    std::vector<AccelSample> samples;
    AccelReader reader(AccelUnit::Unknown, [&](const AccelSample &sample) {
        samples.push_back(sample);
        return done();
    });
    const auto named = [&](Error error) {
        error.where = error.where.empty() ? file : file + ", " + error.where;
        return error;
    };
    if (const Status fed = reader.feed(*bytes); !fed)
        return named(fed.error());
    if (const Status finished = reader.finish(); !finished)
        return named(finished.error());
    return std::unique_ptr<VibrationSource>(std::make_unique<RecordedVibration>(std::move(samples)));
}

} // namespace snugwalk
