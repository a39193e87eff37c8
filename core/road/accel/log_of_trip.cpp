// SPDX-License-Identifier: Apache-2.0
// A trip's time against a log's.
#include "road/accel/log_of_trip.hpp"

#include <chrono>

namespace snugwalk {

double movingSpeed(const Trip &trip)
{
    double seconds = std::chrono::duration<double>(trip.end.instant - trip.start.instant).count();
    for (const StopOver &stop : trip.summary.stops)
        seconds -= std::chrono::duration<double>(stop.to - stop.from).count();
    return seconds > 0.0 ? trip.summary.length.si() / seconds : 0.0;
}

Status checkLogTime(const Trip &trip, double from, double to)
{
    constexpr double slack = 60.0;
    const auto seconds = [](const LocalTime &at) { return static_cast<double>(toMillis(at.instant)) * 1e-3; };
    if (from >= seconds(trip.start) - slack && to <= seconds(trip.end) + slack)
        return done();
    return Error{Errc::InvalidInput, "the log is not of the time of this trip",
                 formatInstant(fromMillis(static_cast<long long>(from * 1e3))) + " to " +
                     formatInstant(fromMillis(static_cast<long long>(to * 1e3))),
                 "name the trip of that time, or say when the log began (--starts)"};
}

} // namespace snugwalk
