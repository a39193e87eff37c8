// SPDX-License-Identifier: Apache-2.0
// One pass: judge each fix, tell halting from driving, add up.
#include "trip/track.hpp"

#include "trip/fix_filter.hpp"
#include "trip/halt.hpp"
#include "trip/odometer.hpp"

namespace snugwalk {
namespace {

constexpr double satelliteThreshold = 10.0; // metres
constexpr double barometerThreshold = 5.0;

class Summing {
public:
    Summing(AltitudeSource source, std::vector<GeoPoint> *points)
        : m_odometer(source == AltitudeSource::Satellite ? satelliteThreshold : barometerThreshold),
          m_before(m_odometer),
          m_points(points)
    {}

    void add(const Fix &fix)
    {
        const bool gap = m_last && isGap(*m_last, fix);
        if (gap)
            ++m_out.gaps;
        if (m_halt && m_halt->holds(fix))
            stay(fix);
        else
            move(fix, gap);
        if (!m_out.start)
            m_out.start = fix.time;
        if (!m_out.first)
            m_out.first = fix.point;
        m_last = fix;
        ++m_out.fixesKept;
    }

    TrackSummary finish()
    {
        endHalt();
        m_out.length = Distance::fromSi(m_odometer.length());
        m_out.inferred = Distance::fromSi(m_odometer.inferred());
        m_out.stops = m_stops.finish();
        if (m_last) {
            m_out.end = m_last->time;
            m_out.last = m_last->point;
        }
        if (m_odometer.altitudes() > 0) {
            m_out.lowest = Length::fromSi(m_odometer.lowest());
            m_out.highest = Length::fromSi(m_odometer.highest());
            m_out.ascent = Length::fromSi(m_odometer.climb().up());
            m_out.descent = Length::fromSi(m_odometer.climb().down());
        }
        return std::move(m_out);
    }

    void drop(std::string_view reason, std::size_t index)
    {
        countDrop(m_out.drops, reason, "fix " + std::to_string(index + 1));
    }

private:
    void move(const Fix &fix, bool gap)
    {
        endHalt();
        m_before = m_odometer;
        m_gapBefore = gap;
        m_halt.emplace(fix);
        measure(fix.point, accuracyOf(fix), gap);
    }

    void stay(const Fix &fix)
    {
        const bool stood = m_halt->stands();
        m_halt->add(fix);
        if (!m_halt->stands())
            measure(fix.point, accuracyOf(fix), false);
        else if (!stood)
            takeBack();
    }

    // What looked like slow driving was a halt: its wandering is not part of the way.
    void takeBack()
    {
        m_odometer = m_before;
        if (m_points != nullptr)
            m_points->resize(m_odometer.points());
    }

    void endHalt()
    {
        if (!m_halt || !m_halt->stands())
            return;
        m_stops.add(*m_halt);
        measure(m_halt->place(), std::nullopt, m_gapBefore);
        m_halt.reset();
    }

    void measure(const GeoPoint &point, std::optional<double> accuracy, bool gap)
    {
        m_odometer.add(point, accuracy, gap);
        if (m_points != nullptr && m_odometer.points() > m_points->size())
            m_points->push_back(point);
    }

    Odometer m_odometer;
    Odometer m_before; ///< as it was when the present halt began
    bool m_gapBefore = false;
    std::optional<Halt> m_halt;
    std::optional<Fix> m_last;
    StopList m_stops;
    std::vector<GeoPoint> *m_points;
    TrackSummary m_out;
};

TrackSummary run(std::span<const Fix> fixes, AltitudeSource source, std::vector<GeoPoint> *points)
{
    Summing summing(source, points);
    FixFilter filter(fixes);
    for (std::size_t i = 0; i < fixes.size(); ++i) {
        if (const auto reason = filter.judge(i))
            summing.drop(*reason, i);
        else
            summing.add(fixes[i]);
    }
    TrackSummary out = summing.finish();
    out.fixesRead = static_cast<long long>(fixes.size());
    return out;
}

} // namespace

TrackSummary summarise(std::span<const Fix> fixes, AltitudeSource source)
{
    return run(fixes, source, nullptr);
}

TrackSummary summarise(const ParsedTrack &track, AltitudeSource source)
{
    TrackSummary out = summarise(std::span<const Fix>(track.fixes), source);
    std::vector<Drop> drops = track.drops;
    for (const Drop &drop : out.drops) {
        countDrop(drops, drop.reason, drop.firstWhere);
        for (Drop &sum : drops)
            sum.count += sum.reason == drop.reason ? drop.count - 1 : 0;
    }
    out.drops = std::move(drops);
    return out;
}

std::vector<GeoPoint> measuredPoints(std::span<const Fix> fixes)
{
    std::vector<GeoPoint> points;
    run(fixes, AltitudeSource::Satellite, &points);
    return points;
}

} // namespace snugwalk
