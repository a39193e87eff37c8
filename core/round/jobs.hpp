// SPDX-License-Identifier: Apache-2.0
// The question "what goes together?": due points gathered into days of work at one stand.
#pragma once

#include <string>
#include <vector>

#include "catalogue/catalogue.hpp"
#include "due/band.hpp"

namespace snugwalk {

/// A roof day, a wheels day: points that are looked at from one place in one go.
struct Job {
    std::string stand;
    CivilDate day{};   ///< the last day that is in time for all of them, today when one is due already
    CivilDate early{}; ///< of the point that comes up first, as are the two below
    CivilDate likely{};
    CivilDate late{};
    std::vector<std::string> points; ///< by date
    double minutes = 0.0;            ///< as the catalogue has them, without the way
};

/// The fewest jobs a stand such that each point is looked at by the date its band speaks up
/// (`DueBand::alert`, or today where that is past), and no earlier than three quarters of the time since its
/// last look are over (common practice: sooner is a look wasted). Points without a date are left out; a point
/// never looked at belongs to today. By day, then by stand in walking order. Formula: fewest points that
/// pierce a set of intervals, by their ends; exact Tests:   tests/unit/round/tst_jobs.cpp
[[nodiscard]] std::vector<Job> jobsOf(const Catalogue &catalogue, const std::vector<DueBand> &bands,
                                      LocalTime now);

} // namespace snugwalk
