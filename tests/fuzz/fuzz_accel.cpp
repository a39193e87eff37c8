// SPDX-License-Identifier: Apache-2.0
// Any bytes as a series or an accelerometer log, in portions: an error with advice, or figures that keep the
// laws.
#include <cmath>

#include "fuzz.hpp"
#include "road/accel/accel_log.hpp"
#include "road/accel/roughness_meter.hpp"
#include "road/series/damage.hpp"
#include "road/series/series_reader.hpp"

using namespace snugwalk;

namespace {

template <typename Reader>
Status readInPortions(Reader &reader, std::string_view bytes)
{
    for (std::size_t at = 0; at < bytes.size(); at += 61)
        SNUG_TRY(reader.feed(bytes.substr(at, 61)));
    return reader.finish();
}

void checkSeries(std::string_view bytes)
{
    Rainflow counter;
    double counted = 0.0;
    long long values = 0;
    const auto out = [&](const Cycle &c) {
        SNUG_ASSERT(c.range >= 0.0 && (c.count == 0.5 || c.count == 1.0));
        counted += c.count;
    };
    SeriesReader reader("", [&](const SeriesPoint &p) {
        SNUG_ASSERT(std::isfinite(p.value) && p.line > 0);
        counter.push(p.value, out);
        ++values;
        return done();
    });
    const Status read = readInPortions(reader, bytes);
    SNUG_ASSERT(read || (!read.error().what.empty() && !read.error().act.empty()));
    counter.finish(out);
    SNUG_ASSERT(counted <= static_cast<double>(values));
}

void checkLog(std::string_view bytes)
{
    RoughnessMeter meter = RoughnessMeter::make({}).value();
    double before = -INFINITY;
    AccelReader reader(AccelUnit::Unknown, [&](const AccelSample &s) {
        SNUG_ASSERT(s.time > before && std::isfinite(s.a[0] + s.a[1] + s.a[2]));
        before = s.time;
        meter.add(s);
        return done();
    });
    const Status read = readInPortions(reader, bytes);
    SNUG_ASSERT(read || (!read.error().what.empty() && !read.error().act.empty()));
    const RoughnessResult r = meter.finish();
    SNUG_ASSERT(r.median >= 0.0 && r.p90 >= r.median && r.analysed <= r.driven * (1.0 + 1e-9));
}

} // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t *data, std::size_t size)
{
    checkSeries(asText(data, size));
    checkLog(asText(data, size));
    return 0;
}
