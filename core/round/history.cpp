// SPDX-License-Identifier: Apache-2.0
// Gathering by queries, nothing computed.
#include "round/history.hpp"

#include "logbook/own_points.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

// Moves the value out, or keeps the first error.
template <typename T>
void take(Result<T> &&from, T &to, std::optional<Error> &error)
{
    if (from)
        to = std::move(from).value();
    else if (!error)
        error = from.error();
}

} // namespace

Result<RigHistory> loadHistory(Logbook &book, const Id &rig)
{
    RigHistory history;
    std::optional<Error> error;
    take(rigOf(book, rig), history.rig, error);
    if (error)
        return *error;
    std::vector<Walk> walks;
    take(walksOf(book, rig), walks, error);
    for (Walk &walk : walks) {
        WalkRecord record{std::move(walk), {}};
        take(marksOf(book, record.walk.id), record.marks, error);
        history.walks.push_back(std::move(record));
    }
    take(findingHistories(book, rig), history.findings, error);
    take(mendsOf(book, rig), history.mends, error);
    take(tripsOf(book, rig), history.trips, error);
    take(staysOf(book, rig), history.stays, error);
    take(weatherOf(book, rig), history.weather, error);
    take(happeningsOf(book, rig), history.happenings, error);
    take(rigVersions(book, rig), history.rigs, error);
    take(ownChoicesOf(book, rig), history.own, error);
    take(stocksOf(book, rig), history.stocks, error);
    take(acceptancesOf(book, rig), history.acceptances, error);
    if (error)
        return *error;
    return history;
}

} // namespace snugwalk
