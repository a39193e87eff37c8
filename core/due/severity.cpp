// SPDX-License-Identifier: Apache-2.0
// Letters of consequence to classes and numbers.
#include "due/severity.hpp"

namespace snugwalk {

bool isOnHoldList(const Point &point) { return point.hold.has_value() || !point.forbids.empty(); }

Severity severityOf(const Point &point)
{
    if (isOnHoldList(point))
        return Severity::I;
    const std::string first = point.consequence.empty() ? "C" : point.consequence.front();
    if (first == "K")
        return Severity::IV;
    return first == "C" ? Severity::III : Severity::II;
}

double consequenceOf(const Point &point)
{
    switch (severityOf(point)) {
    case Severity::I:
        return 100.0;
    case Severity::II:
        return 10.0;
    case Severity::III:
        return 1.0;
    case Severity::IV:
        return 0.1;
    }
    return 1.0;
}

} // namespace snugwalk
