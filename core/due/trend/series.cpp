// SPDX-License-Identifier: Apache-2.0
// Replacements out of mends, and what a tire takes with it.
#include "due/trend/series.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <tuple>
#include <unordered_map>

#include "due/trend/uncertainty.hpp"

namespace snugwalk {
namespace {

constexpr std::array tirePoints = {"tread-depth", "wear-pattern", "sidewall-cracks", "tire-bulges",
                                   "tire-age"};

bool isTirePoint(std::string_view point)
{
    return std::find(tirePoints.begin(), tirePoints.end(), point) != tirePoints.end();
}

} // namespace

std::vector<Replacement> replacementsOf(const RigHistory &history)
{
    std::unordered_map<std::string_view, const Finding *> findings;
    for (const FindingHistory &f : history.findings)
        findings[f.finding.id.view()] = &f.finding;
    std::vector<Replacement> out;
    for (const Mend &mend : history.mends) {
        if (mend.action != "replace")
            continue;
        for (const std::string &point : mend.points)
            out.push_back({mend.at.instant, point, {}});
        for (const Id &id : mend.findings) {
            if (const auto found = findings.find(id.view()); found != findings.end())
                out.push_back({mend.at.instant, found->second->point, found->second->place.named});
        }
    }
    std::sort(out.begin(), out.end(), [](const Replacement &a, const Replacement &b) {
        return std::tie(a.at, a.point, a.place) < std::tie(b.at, b.point, b.place);
    });
    return out;
}

bool renews(const Replacement &r, std::string_view point, std::string_view place)
{
    const bool samePoint = r.point == point || (isTirePoint(r.point) && isTirePoint(point));
    return samePoint && (r.place.empty() || place.empty() || r.place == place);
}

const Replacement *lastReplacement(const std::vector<Replacement> &all, std::string_view point,
                                   std::string_view place, Instant when)
{
    const Replacement *last = nullptr;
    for (const Replacement &r : all) {
        if (r.at <= when && renews(r, point, place))
            last = &r;
    }
    return last;
}

bool tireChangedBetween(const RigHistory &history, std::string_view point, Instant from, Instant to)
{
    return isTirePoint(point) &&
           std::any_of(history.happenings.begin(), history.happenings.end(), [&](const Happening &h) {
               return h.kind == "tire_change" && h.at.instant > from && h.at.instant <= to;
           });
}

bool isWear(const ReadingSpec &spec)
{
    return spec.dimension == Dimension::Length && spec.lowSi.has_value() != spec.highSi.has_value();
}

bool isRise(const ReadingSpec &spec, double thenSi, double nowSi)
{
    if (!isWear(spec))
        return false;
    const double better = spec.lowSi ? nowSi - thenSi : thenSi - nowSi;
    const double doubt =
        std::hypot(readingUncertainty(spec.dimension, thenSi), readingUncertainty(spec.dimension, nowSi));
    return better > 3.0 * doubt;
}

} // namespace snugwalk
