// SPDX-License-Identifier: Apache-2.0
// Blocks of even samples into windows, windows into an index.
#include "road/accel/roughness_meter.hpp"

#include <algorithm>
#include <cmath>

#include "road/shake.hpp"

namespace snugwalk {
namespace {

constexpr double lowEdge = 0.5; // Hz
constexpr double highEdge = 20.0;
constexpr double windowLength = 100.0; // m
constexpr double windowTime = 5.0;     // s, without a speed
constexpr double slowest = 20.0 / 3.6; // m/s
constexpr double evenSpeed = 0.2;
constexpr double settling = 2.0; // s
// no window is longer than one at the slowest speed that counts
constexpr double longestTime = windowLength / slowest;

bool isKnown(double speed) { return speed == speed; } // NaN is not

std::size_t blockSize(double rate) { return static_cast<std::size_t>(std::lround(rate / 2.0)); }

} // namespace

Result<RoughnessMeter> RoughnessMeter::make(const RoughnessOptions &options)
{
    if (!(options.rate >= 50.0 && options.rate <= 10'000.0))
        return Error{
            Errc::OutOfRange, "a sampling rate outside 50 to 10,000 Hz", "fs",
            "log 50 samples a second or more; if times are in milliseconds, name the column time_ms"};
    if (!(options.scale > 0.01 && options.scale < 1000.0))
        return Error{Errc::OutOfRange, "no such scale", "scale", "give m/km for 1 m/s2, such as 5.4"};
    if (!(options.exponent >= 0.0 && options.exponent <= 2.0))
        return Error{Errc::OutOfRange, "no such power of speed", "exponent", "give 0 to 2, such as 0.5"};
    const Result<BandPass4> filter = BandPass4::make(lowEdge, highEdge, options.rate);
    if (!filter)
        return filter.error();
    return RoughnessMeter(options, *filter);
}

RoughnessMeter::RoughnessMeter(const RoughnessOptions &options, BandPass4 filter)
    : m_options(options),
      m_resampler(options.rate),
      m_vertical(options.rate),
      m_filter(filter),
      m_watch(options.rate),
      m_block(blockSize(options.rate)),
      m_speeds(m_block.x.size())
{
    m_settling = std::lround(settling * options.rate);
}

void RoughnessMeter::add(const AccelSample &sample)
{
    m_resampler.add(
        sample, [this](const AccelSample &even) { takeEven(even); }, [this] { startRun(); });
}

void RoughnessMeter::takeEven(const AccelSample &sample)
{
    const std::size_t i = m_block.filled++;
    if (i == 0)
        m_blockStart = sample.time;
    m_block.x[i] = sample.a[0];
    m_block.y[i] = sample.a[1];
    m_block.z[i] = sample.a[2];
    m_speeds[i] = sample.speed;
    if (m_block.filled == m_block.x.size())
        takeBlock();
}

void RoughnessMeter::takeBlock()
{
    m_vertical.run(m_block);
    const std::span<double> vertical(m_block.vertical.data(), m_block.filled);
    m_filter.filter(vertical);
    m_events = m_watch.take(m_block, m_vertical.direction());
    m_open.events.add(m_events);
    walk(vertical);
    if (onVertical)
        onVertical(vertical);
    m_samples += static_cast<long long>(m_block.filled);
    m_block.filled = 0;
}

void RoughnessMeter::startRun()
{
    takeBlock();
    closeWindow();
    ++m_result.gaps;
    m_vertical.reset();
    m_filter.reset();
    m_watch.reset();
    m_settling = std::lround(settling * m_options.rate);
}

void RoughnessMeter::walk(std::span<const double> vertical)
{
    std::size_t i = 0;
    for (; m_settling > 0 && i < vertical.size(); ++i, --m_settling)
        m_driven += isKnown(m_speeds[i]) ? m_speeds[i] : 0.0;
    while (i < vertical.size()) {
        const bool known = isKnown(m_speeds[i]);
        if (m_open.samples > 0 && known != m_open.known)
            closeWindow();
        if (m_open.samples == 0) {
            m_open.start = m_blockStart + static_cast<double>(i) / m_options.rate;
            m_open.known = known;
            m_open.slowest = m_open.fastest = m_speeds[i];
            m_open.events.add(m_events);
        }
        i = walkOn(vertical, i);
        const double longest = (known ? longestTime : windowTime) * m_options.rate;
        if (m_open.speeds >= windowLength * m_options.rate || static_cast<double>(m_open.samples) >= longest)
            closeWindow();
    }
}

// Up to the end of the block or of the window, or to where the speed begins or ceases to be known.
std::size_t RoughnessMeter::walkOn(std::span<const double> vertical, std::size_t from)
{
    OpenWindow open = m_open;
    const double longest = (open.known ? longestTime : windowTime) * m_options.rate;
    const auto room = static_cast<std::size_t>(std::ceil(longest - static_cast<double>(open.samples)));
    const std::size_t end = std::min(vertical.size(), from + room);
    const double limit = windowLength * m_options.rate;
    const double before = open.speeds;
    std::size_t i = from;
    for (; i < end && isKnown(m_speeds[i]) == open.known && open.speeds < limit; ++i) {
        open.squares += vertical[i] * vertical[i];
        if (!open.known)
            continue;
        const double speed = m_speeds[i];
        open.speeds += speed;
        open.slowest = speed < open.slowest ? speed : open.slowest;
        open.fastest = speed > open.fastest ? speed : open.fastest;
    }
    open.samples += static_cast<long long>(i - from);
    m_driven += open.speeds - before;
    m_open = open;
    return i;
}

void RoughnessMeter::closeWindow()
{
    const OpenWindow open = m_open;
    m_open = {};
    if (open.samples == 0)
        return;
    RoughnessWindow w;
    const double seconds = static_cast<double>(open.samples) / m_options.rate;
    w.from = open.start;
    w.to = open.start + seconds;
    w.distance = open.speeds / m_options.rate;
    w.speed = w.distance / seconds;
    w.rms = std::sqrt(open.squares / static_cast<double>(open.samples));
    if (open.known && w.speed <= slowest) {
        ++m_result.slow;
        return;
    }
    // a bit left over at a gap or the end says little
    if (open.known ? w.distance < windowLength / 2 : seconds < windowTime / 2)
        return;
    if (open.known && open.fastest - open.slowest >= evenSpeed * w.speed)
        ++m_result.uneven;
    else if (open.events.handled())
        ++m_result.handled;
    else
        keep(w);
}

void RoughnessMeter::keep(RoughnessWindow w)
{
    const bool known = w.speed > 0.0;
    w.index = roughnessIndex(w.rms, known ? w.speed : referenceSpeed, m_options.scale, m_options.exponent);
    const double seconds = w.to - w.from;
    const double weight = known ? w.distance : seconds * referenceSpeed;
    ++m_result.windows;
    m_result.speedKnown |= known;
    m_result.speedUnknown |= !known;
    m_result.secondsAnalysed += seconds;
    m_analysed += w.distance;
    m_weight += weight;
    m_indices.add(w.index, weight);
    if (known) {
        const double end = m_driven / m_options.rate; // a window is closed where it ends
        m_along.add(end - w.distance, end, w.index);
    }
    for (std::size_t i = 0; i < m_dose.size(); ++i)
        m_dose[i] += weight * std::pow(w.index / smoothRoughness, shakeExponents[i]);
    m_consumption += weight * consumptionOf(w.index);
    if (onWindow)
        onWindow(w);
}

RoughnessResult RoughnessMeter::finish()
{
    takeBlock();
    closeWindow();
    RoughnessResult out = m_result;
    out.driven = Distance::fromSi(m_driven / m_options.rate);
    out.analysed = Distance::fromSi(m_analysed);
    out.seconds = static_cast<double>(m_samples) / m_options.rate;
    out.clipped = m_watch.clipped();
    if (m_weight > 0.0) {
        out.median = m_indices.quantile(0.5);
        out.p90 = m_indices.quantile(0.9);
        for (std::size_t i = 0; i < m_dose.size(); ++i)
            out.dose[i] = m_dose[i] / m_weight;
        out.consumption = m_consumption / m_weight;
        out.along = m_along.means();
        out.alongStep = m_along.step();
    }
    return out;
}

std::optional<RoadMeasure> measureOf(const RoughnessResult &result, const RoughnessOptions &options)
{
    if (!(result.analysed.si() > 0.0))
        return std::nullopt;
    return RoadMeasure{result.analysed,    result.median,          result.p90,         result.dose,
                       result.consumption, options.sensorLocation, options.calibrated, result.clipped,
                       result.along,       result.alongStep};
}

} // namespace snugwalk
