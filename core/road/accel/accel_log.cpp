// SPDX-License-Identifier: Apache-2.0
// Rows to samples in SI, once the first of them have told the unit and the rate.
#include "road/accel/accel_log.hpp"

#include <algorithm>
#include <cmath>

#include "base/text.hpp"
#include "base/time.hpp"
#include "road/accel/resampler.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t samplesToLearn = 256;
constexpr double standardGravity = 9.80665; // m/s^2 [NIST-SP811]
constexpr double largest = 1e5;             // m/s^2 or g: no sensor of a phone or logger goes there
constexpr double speedHolds = 2.0;          // s

// Numbers without a unit: seconds, unless so large that only a count since 1970 makes sense.
double guessedTimeFactor(double first)
{
    if (first > 1e17)
        return 1e-9;
    if (first > 1e14)
        return 1e-6;
    return first > 1e11 ? 1e-3 : 1.0;
}

std::optional<double> dateIn(std::string_view cell)
{
    if (cell.size() < 19 || cell[4] != '-') // most times are plain numbers
        return std::nullopt;
    const auto time = parseLocal(cell);
    return time ? std::optional(static_cast<double>(toMillis(time->instant)) * 1e-3) : std::nullopt;
}

} // namespace

AccelReader::AccelReader(AccelUnit unit, Sink sink)
    : m_sink(std::move(sink)),
      m_cells(
          [this](std::span<const std::string_view> cells, long long line) { return takeRow(cells, line); }),
      m_saidUnit(unit)
{
    m_first.reserve(samplesToLearn);
}

Status AccelReader::takeRow(std::span<const std::string_view> cells, long long line)
{
    if (!m_columns) {
        m_width = cells.size();
        const bool header = isHeader(cells);
        if (!header && m_width != 4)
            return Error{Errc::InvalidInput, "no header, and not the four columns time, x, y, z",
                         lineText(line), "begin with a line such as time,x,y,z"};
        Result<AccelColumns> columns = header ? accelColumns(cells, line) : Result(AccelColumns{});
        if (!columns)
            return columns.error();
        m_columns = *columns;
        m_timeFactor = m_columns->timeFactor;
        m_facts.hasSpeed = m_columns->speed.has_value();
        if (header)
            return done();
    }
    if (cells.size() != m_width)
        return Error{Errc::InvalidInput,
                     std::to_string(cells.size()) + " columns where " + std::to_string(m_width) + " began",
                     lineText(line), "give every line the same columns"};
    AccelSample sample;
    if (const auto date = dateIn(cells[m_columns->time])) {
        sample.time = *date;
        m_timeFactor = 1.0;
    } else {
        const Result<double> time = numberIn(cells[m_columns->time], line, m_columns->time);
        if (!time)
            return time.error();
        if (m_timeFactor == 0.0)
            m_timeFactor = guessedTimeFactor(*time);
        sample.time = *time * m_timeFactor;
    }
    for (std::size_t i = 0; i < 3; ++i) {
        const Result<double> a = numberIn(cells[m_columns->axes[i]], line, m_columns->axes[i]);
        if (!a)
            return a.error();
        if (!(std::abs(*a) < largest))
            return Error{Errc::OutOfRange, "no such acceleration", cellText(line, m_columns->axes[i]),
                         "give m/s2 or g"};
        sample.a[i] = *a;
    }
    if (m_columns->speed && !cells[*m_columns->speed].empty()) {
        const Result<double> speed = numberIn(cells[*m_columns->speed], line, *m_columns->speed);
        if (!speed)
            return speed.error();
        sample.speed = *speed * m_columns->speedFactor;
        if (!(sample.speed >= 0.0 && sample.speed <= 100.0))
            return Error{Errc::OutOfRange, "no such speed on the road", cellText(line, *m_columns->speed),
                         "name its unit: speed (km/h), speed (m/s)"};
    }
    return takeSample(sample, line);
}

Status AccelReader::takeSample(const AccelSample &sample, long long line)
{
    if (m_firstLine == 0)
        m_firstLine = line;
    if (!m_pending) {
        m_pending = sample;
        return done();
    }
    if (sample.time < m_pending->time)
        return Error{Errc::InvalidInput, "not sorted: this time is before the one above", lineText(line),
                     "sort the log by time"};
    if (sample.time == m_pending->time) {
        ++m_merged;
        for (std::size_t i = 0; i < 3; ++i)
            m_pending->a[i] += (sample.a[i] - m_pending->a[i]) / m_merged;
        return done();
    }
    if (m_facts.firstGapLine == 0 && sample.time - m_pending->time > Resampler::longestStep)
        m_facts.firstGapLine = line;
    const AccelSample whole = *m_pending;
    m_pending = sample;
    m_merged = 1;
    return release(whole);
}

Status AccelReader::release(const AccelSample &sample)
{
    ++m_samples;
    if (m_learned)
        return give(sample);
    m_first.push_back(sample);
    return m_first.size() == samplesToLearn ? learn() : done();
}

Status AccelReader::learn()
{
    std::vector<double> pulls;
    std::vector<double> steps;
    for (const AccelSample &s : m_first)
        pulls.push_back(std::hypot(s.a[0], s.a[1], s.a[2]));
    for (std::size_t i = 1; i < m_first.size(); ++i)
        steps.push_back(m_first[i].time - m_first[i - 1].time);
    const auto median = [](std::vector<double> &values) {
        const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
        std::nth_element(values.begin(), middle, values.end());
        return *middle;
    };
    const double pull = median(pulls);
    m_facts.rate = steps.empty() ? 0.0 : 1.0 / median(steps);
    m_facts.sinceEpoch = m_first.front().time > 1e8;
    const auto fits = [&](double gravity) { return pull > 0.5 * gravity && pull < 2.0 * gravity; };
    AccelUnit unit = m_saidUnit != AccelUnit::Unknown ? m_saidUnit : m_columns->unit;
    if (unit == AccelUnit::Unknown) {
        m_facts.unitGuessed = true;
        unit = fits(1.0) ? AccelUnit::Gravities : AccelUnit::MetresPerSecondSquared;
    }
    if (!fits(unit == AccelUnit::Gravities ? 1.0 : standardGravity))
        return Error{Errc::InvalidInput,
                     "gravity shows as " + fixed(pull, 3) +
                         ", neither 9.8 m/s2 nor 1 g: another unit, or gravity taken off",
                     lineText(m_firstLine),
                     "log plain acceleration with gravity, and name its unit: m/s2 or g"};
    m_facts.unit = unit;
    m_toSi = unit == AccelUnit::Gravities ? standardGravity : 1.0;
    m_learned = true;
    for (const AccelSample &s : m_first)
        SNUG_TRY(give(s));
    m_first = {};
    return done();
}

Status AccelReader::give(AccelSample sample)
{
    for (double &a : sample.a)
        a *= m_toSi;
    if (!std::isnan(sample.speed)) {
        m_speed = sample.speed;
        m_speedAt = sample.time;
    } else if (sample.time - m_speedAt <= speedHolds) {
        sample.speed = m_speed;
    }
    return m_sink(sample);
}

Status AccelReader::finish()
{
    SNUG_TRY(m_cells.finish());
    if (!m_pending)
        return Error{Errc::InvalidInput, "no sample in this log", "", "give lines of time, x, y, z"};
    const AccelSample last = *m_pending;
    m_pending.reset();
    SNUG_TRY(release(last));
    return m_learned ? done() : learn();
}

} // namespace snugwalk
