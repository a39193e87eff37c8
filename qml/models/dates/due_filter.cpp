// SPDX-License-Identifier: Apache-2.0
// Picking and ordering rows.
#include "due_filter.hpp"

#include <algorithm>
#include <iterator>
#include <map>

#include "due_model.hpp"

namespace snugwalk {
namespace {

constexpr double monthDays = 30.0;
constexpr double seasonDays = 91.0;

} // namespace

QString spanName(DueSpan span)
{
    switch (span) {
    case DueSpan::Past:
        return QStringLiteral("past");
    case DueSpan::Month:
        return QStringLiteral("month");
    case DueSpan::Season:
        return QStringLiteral("season");
    case DueSpan::All:
        break;
    }
    return QStringLiteral("all");
}

DueSpan spanOf(const QString &name)
{
    for (const DueSpan span : {DueSpan::Past, DueSpan::Month, DueSpan::Season}) {
        if (spanName(span) == name)
            return span;
    }
    return DueSpan::All;
}

bool isWithin(const DueRow &row, DueSpan span)
{
    const bool isNever = row.kind == QStringLiteral("never");
    switch (span) {
    case DueSpan::All:
        return true;
    case DueSpan::Past:
        return row.pastDue && !isNever;
    case DueSpan::Month:
        return isNever || row.pastDue || row.likely <= monthDays; // no date compares false
    case DueSpan::Season:
        return isNever || row.pastDue || row.likely <= seasonDays;
    }
    return true;
}

std::vector<DueRow> filtered(const std::vector<DueRow> &rows, const DueFilter &filter,
                             const std::vector<PointConcern> &concerns)
{
    std::vector<DueRow> wanted;
    std::copy_if(rows.begin(), rows.end(), std::back_inserter(wanted), [&](const DueRow &row) {
        return isWithin(row, filter.span) && (filter.zone.isEmpty() || row.zoneSlug == filter.zone);
    });
    if (!filter.byConcern)
        return wanted;
    std::map<QString, std::size_t> place;
    for (std::size_t i = 0; i < concerns.size(); ++i)
        place.emplace(Voice::text(concerns[i].point), i);
    const auto placeOf = [&](const DueRow &row) {
        const auto found = place.find(row.key);
        return found == place.end() ? concerns.size() : found->second;
    };
    std::stable_sort(wanted.begin(), wanted.end(),
                     [&](const DueRow &a, const DueRow &b) { return placeOf(a) < placeOf(b); });
    return wanted;
}

} // namespace snugwalk
