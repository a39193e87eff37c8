// SPDX-License-Identifier: Apache-2.0
// Sums over the points.
#include "concern/outlook.hpp"

#include <cmath>

namespace snugwalk {

double atLeastOne(std::span<const double> chances)
{
    double log = 0.0;
    for (const double p : chances)
        log += std::log1p(-p);
    return -std::expm1(log);
}

Outlook outlookOf(const std::vector<PointConcern> &points)
{
    Outlook out;
    std::vector<double> value;
    std::vector<double> low;
    std::vector<double> high;
    double looked = 0.0;
    for (const PointConcern &p : points) {
        out.loss.value += p.risk;
        out.loss.low += p.consequence * p.chance.low;
        out.loss.high += p.consequence * p.chance.high;
        out.weight += p.weight();
        looked += p.current ? p.weight() : 0.0;
        if (p.severity != Severity::I && p.severity != Severity::II)
            continue;
        ++out.seriousItems;
        out.expected.value += p.chance.value;
        out.expected.low += p.chance.low;
        out.expected.high += p.chance.high;
        value.push_back(p.chance.value);
        low.push_back(p.chance.low);
        high.push_back(p.chance.high);
    }
    out.serious = {atLeastOne(value), atLeastOne(low), atLeastOne(high)};
    out.looked = out.weight > 0.0 ? looked / out.weight : 0.0;
    return out;
}

} // namespace snugwalk
