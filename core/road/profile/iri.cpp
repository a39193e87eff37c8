// SPDX-License-Identifier: Apache-2.0
// Slopes of a profile on their way through the golden car.
#include "road/profile/iri.hpp"

#include <algorithm>
#include <cmath>

namespace snugwalk {
namespace {

constexpr double runUp = 11.0;         // metres on which the car starts
constexpr double tirePrint = 0.25;     // metres that a tire bridges
constexpr double noFilterFrom = 0.167; // spacing from which the points themselves are that far apart

std::size_t boxPoints(double dx)
{
    if (dx >= noFilterFrom)
        return 1;
    return static_cast<std::size_t>(std::max(1.0, std::floor(tirePrint / dx + 0.5)));
}

} // namespace

Result<IriMeter> IriMeter::make(Length spacing, Length segment)
{
    const double dx = spacing.si();
    if (!(dx >= 0.01 && dx <= 0.6))
        return Error{Errc::OutOfRange, "a spacing outside 0.01 to 0.6 m", "dx",
                     "give the metres between two points"};
    if (!(segment.si() >= dx && segment.si() <= 1e6))
        return Error{Errc::OutOfRange, "segments shorter than the spacing", "segment", "give 20 or 100 m"};
    return IriMeter(spacing, segment);
}

IriMeter::IriMeter(Length spacing, Length segment)
    : m_dx(spacing.si()),
      m_box(boxPoints(m_dx)),
      m_runUp(static_cast<std::size_t>(std::lround(runUp / m_dx))),
      m_segment(segment.si()),
      m_step(carStep(spacing, goldenSpeed)),
      m_recent(m_box)
{
    m_first.reserve(m_runUp);
}

void IriMeter::add(double elevation)
{
    ++m_result.points;
    double &oldest = m_recent[m_held % m_box];
    if (m_held >= m_box)
        addSlope((elevation - oldest) / (static_cast<double>(m_box) * m_dx));
    oldest = elevation;
    ++m_held;
}

void IriMeter::addSlope(double slope)
{
    if (m_started) {
        ride(slope);
        return;
    }
    m_first.push_back(slope);
    if (m_first.size() == m_runUp)
        startCar();
}

void IriMeter::startCar()
{
    double mean = 0.0;
    for (const double slope : m_first)
        mean += slope;
    mean /= static_cast<double>(m_first.size());
    m_car = {mean, 0.0, mean, 0.0};
    m_started = true;
    m_unused = m_afterGap ? m_runUp : 0;
    for (const double slope : m_first)
        ride(slope);
    m_first.clear();
}

void IriMeter::ride(double slope)
{
    m_car = m_step.next(m_car, slope);
    ++m_slopes;
    if (m_unused > 0)
        --m_unused;
    else
        count(std::abs(m_car[0] - m_car[2]));
}

void IriMeter::count(double travel)
{
    const double at = m_runStart + static_cast<double>(m_slopes) * m_dx;
    if (m_segmentCount == 0)
        m_segmentFrom = at - m_dx;
    m_segmentSum += travel;
    ++m_segmentCount;
    m_sum += travel;
    ++m_counted;
    if (static_cast<double>(m_segmentCount) * m_dx >= m_segment * (1.0 - 1e-9))
        closeSegment();
}

void IriMeter::closeSegment()
{
    if (m_segmentCount == 0)
        return;
    const double to = m_segmentFrom + static_cast<double>(m_segmentCount) * m_dx;
    m_result.segments.push_back({Distance::fromSi(m_segmentFrom), Distance::fromSi(to),
                                 1000.0 * m_segmentSum / static_cast<double>(m_segmentCount)});
    m_segmentSum = 0.0;
    m_segmentCount = 0;
}

void IriMeter::closeRun()
{
    // a profile of less than 11 m starts the car on all it has; after a gap such a bit is dropped
    if (!m_started && !m_afterGap && !m_first.empty()) {
        m_result.tooShort = true;
        startCar();
    }
    closeSegment();
}

void IriMeter::gap(Distance length)
{
    closeRun();
    if (m_held > 0)
        m_runStart += static_cast<double>(m_held - 1) * m_dx + length.si();
    ++m_result.gaps;
    m_first.clear();
    m_started = false;
    m_afterGap = true;
    m_held = m_slopes = 0;
}

Result<IriResult> IriMeter::finish()
{
    closeRun();
    if (m_counted == 0)
        return Error{Errc::InvalidInput, "too little of a profile for an index", "",
                     "give at least two points, and 11 m beyond any gap"};
    m_result.iri = 1000.0 * m_sum / static_cast<double>(m_counted);
    m_result.analysed = Distance::fromSi(static_cast<double>(m_counted) * m_dx);
    return m_result;
}

Result<IriResult> iriOf(const std::vector<double> &elevations, Length spacing, Length segment)
{
    Result<IriMeter> meter = IriMeter::make(spacing, segment);
    if (!meter)
        return meter.error();
    for (const double elevation : elevations) {
        if (!std::isfinite(elevation))
            return Error{Errc::InvalidInput, "an elevation that is not a number", "",
                         "take it out, or give a gap"};
        meter->add(elevation);
    }
    return meter->finish();
}

} // namespace snugwalk
