// SPDX-License-Identifier: Apache-2.0
// Choosing what a report holds.
#include "report/report.hpp"

#include <algorithm>
#include <set>

#include "round/compare.hpp"
#include "walk/progress.hpp"

namespace snugwalk {
namespace {

constexpr int daysAhead = 90;

const Photo *photoById(const FindingHistory &history, const std::vector<Id> &ids)
{
    for (const Photo &photo : history.photos) {
        if (!ids.empty() && photo.id == ids.back())
            return &photo;
    }
    return nullptr;
}

void addLastWalk(Report &report)
{
    const auto &walks = report.standing.history.walks;
    if (walks.empty())
        return;
    report.lastWalk = walks.back();
    for (const TapeLine &line : walks.back().walk.tape) {
        for (const std::string &point : line.points) {
            if (findMark(walks.back().marks, point) == nullptr)
                report.notLooked.push_back(point);
        }
    }
}

} // namespace

std::vector<ReportPhotoPair> photoPairs(const Comparison &comparison, const RigHistory &history)
{
    std::vector<ReportPhotoPair> pairs;
    for (const PointChange &point : comparison.points) {
        for (const FindingChange &f : point.findings) {
            const FindingHistory *h = findHistory(history, f.finding);
            if (h == nullptr)
                continue;
            const Photo *then = photoById(*h, f.thenPhotos);
            const Photo *now = photoById(*h, f.nowPhotos);
            if (then == nullptr && now == nullptr)
                continue;
            pairs.push_back({f.finding, then ? std::optional(*then) : std::nullopt,
                             now ? std::optional(*now) : std::nullopt});
        }
    }
    return pairs;
}

Report makeReport(const Catalogue &catalogue, Standing standing)
{
    Report report;
    report.standing = std::move(standing);
    const RigHistory &history = report.standing.history;
    std::set<std::string> cautions;
    for (const OpenFinding &open : report.standing.state.open) {
        const FindingHistory *h = findHistory(history, open.id);
        if (h != nullptr)
            report.findings.push_back({static_cast<int>(report.findings.size()) + 1, open, *h});
        if (const Point *point = catalogue.find(open.point))
            cautions.insert(point->cautions.begin(), point->cautions.end());
    }
    report.cautions.assign(cautions.begin(), cautions.end());
    addLastWalk(report);
    const CivilDate horizon = addDays(civilDate(report.standing.now), daysAhead);
    std::copy_if(report.standing.bands.begin(), report.standing.bands.end(), std::back_inserter(report.due),
                 [&](const DueBand &band) { return band.early && *band.early <= horizon; });
    if (const auto pair = lastTwo(history)) {
        report.comparison = compareWalks(catalogue, history, pair->then, pair->now);
        report.pairs = photoPairs(*report.comparison, history);
    }
    return report;
}

} // namespace snugwalk
