// SPDX-License-Identifier: Apache-2.0
// Accelerometer logs: time and three axes, as phones and loggers write them in CSV.
#pragma once

#include <array>
#include <functional>
#include <limits>
#include <optional>
#include <string>
#include <vector>

#include "road/accel/accel_columns.hpp"
#include "road/series/cell_reader.hpp"

namespace snugwalk {

struct AccelSample {
    double time = 0.0;                                       ///< seconds, from the log's start or since 1970
    std::array<double, 3> a{};                               ///< m/s^2, gravity included
    double speed = std::numeric_limits<double>::quiet_NaN(); ///< m/s, NaN where unknown
};

/// What the first samples of a log say about it; known before the first sample is given.
struct AccelFacts {
    double rate = 0.0; ///< samples a second, median
    AccelUnit unit = AccelUnit::Unknown;
    bool unitGuessed = false; ///< no unit was named: told by the pull of gravity
    bool hasSpeed = false;
    bool sinceEpoch = false;    ///< times are dates, not seconds from a start
    long long firstGapLine = 0; ///< the first sample more than 0.5 s after the one before; 0 for none so far
};

/// Reads a log as it comes. Of equal times one sample is made, their mean. A speed that the log tells now
/// and then, its cells empty between, holds for 2 s.
///
/// \returns `InvalidInput` with line and reason: a time that goes back, a bad number, NaN, an empty cell, no
/// header that names time and three axes (four bare columns are time, x, y, z), gravity that shows
/// neither as 9.8 m/s^2 nor as 1 g in the unit named. Gaps are told by the times themselves.
/// Tests: tests/unit/road/tst_accel_log.cpp
class AccelReader {
public:
    using Sink = std::function<Status(const AccelSample &)>;
    /// \param unit what the person says; Unknown for what the header says.
    AccelReader(AccelUnit unit, Sink sink);

    [[nodiscard]] Status feed(std::string_view bytes) { return m_cells.feed(bytes); }
    [[nodiscard]] Status finish();
    [[nodiscard]] const AccelFacts &facts() const { return m_facts; }
    [[nodiscard]] long long samples() const { return m_samples; }

private:
    [[nodiscard]] Status takeRow(std::span<const std::string_view> cells, long long line);
    [[nodiscard]] Status takeSample(const AccelSample &sample, long long line);
    [[nodiscard]] Status release(const AccelSample &sample);
    [[nodiscard]] Status learn();
    [[nodiscard]] Status give(AccelSample sample);

    Sink m_sink;
    CellReader m_cells;
    std::optional<AccelColumns> m_columns;
    std::size_t m_width = 0;
    AccelUnit m_saidUnit;
    double m_timeFactor = 0.0; ///< to seconds; 0 until the first time was seen
    double m_speed = std::numeric_limits<double>::quiet_NaN(); ///< the last one told, and when
    double m_speedAt = 0.0;
    std::optional<AccelSample> m_pending;
    int m_merged = 1;
    std::vector<AccelSample> m_first; ///< until unit and rate are known
    bool m_learned = false;
    double m_toSi = 1.0;
    long long m_firstLine = 0;
    long long m_samples = 0;
    AccelFacts m_facts;
};

} // namespace snugwalk
