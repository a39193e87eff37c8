// SPDX-License-Identifier: Apache-2.0
// Points of one stand swept by the date that each must be looked at.
#include "round/jobs.hpp"

#include <algorithm>
#include <map>
#include <tuple>

namespace snugwalk {
namespace {

/// A point with the days in which a look is neither wasted nor late.
struct Chance {
    const Point *point = nullptr;
    const DueBand *band = nullptr;
    CivilDate from{};
    CivilDate by{};
};

Chance chanceOf(const Point &point, const DueBand &band, CivilDate today)
{
    Chance chance{&point, &band, today, std::max(*band.alert, today)};
    if (band.lastLook && *band.lastLook < chance.by) {
        const long long whole = daysBetween(*band.lastLook, chance.by);
        chance.from = std::max(today, addDays(*band.lastLook, whole * 3 / 4));
    }
    return chance;
}

void add(const Chance &chance, Job &job)
{
    const DueBand &band = *chance.band;
    const bool first = job.points.empty();
    job.early = first ? *band.early : std::min(job.early, *band.early);
    job.likely = first ? *band.likely : std::min(job.likely, *band.likely);
    job.late = first ? *band.late : std::min(job.late, *band.late);
    job.points.push_back(band.point);
    job.minutes += chance.point->minutes;
}

void addJobs(const std::string &stand, std::vector<Chance> chances, std::vector<Job> &jobs)
{
    std::sort(chances.begin(), chances.end(), [](const Chance &a, const Chance &b) {
        return std::tie(a.by, a.band->point) < std::tie(b.by, b.band->point);
    });
    while (!chances.empty()) {
        Job job;
        job.stand = stand;
        job.day = chances.front().by;
        std::vector<Chance> later;
        for (const Chance &chance : chances) {
            if (chance.from <= job.day)
                add(chance, job);
            else
                later.push_back(chance);
        }
        jobs.push_back(std::move(job));
        chances = std::move(later);
    }
}

} // namespace

std::vector<Job> jobsOf(const Catalogue &catalogue, const std::vector<DueBand> &bands, LocalTime now)
{
    const CivilDate today = civilDate(now);
    std::map<std::string, std::vector<Chance>> byStand;
    for (const DueBand &band : bands) {
        const Point *point = catalogue.find(band.point);
        if (point != nullptr && band.early && band.likely && band.late && band.alert)
            byStand[point->stand].push_back(chanceOf(*point, band, today));
    }
    std::vector<Job> jobs;
    for (auto &[stand, chances] : byStand)
        addJobs(stand, std::move(chances), jobs);
    const std::vector<std::string> &lap = catalogue.route("lap");
    const auto place = [&](const Job &job) {
        return std::find(lap.begin(), lap.end(), job.stand) - lap.begin();
    };
    std::stable_sort(jobs.begin(), jobs.end(), [&](const Job &a, const Job &b) {
        return a.day != b.day ? a.day < b.day : place(a) < place(b);
    });
    return jobs;
}

} // namespace snugwalk
