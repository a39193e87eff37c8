// SPDX-License-Identifier: Apache-2.0
// Slugs and counts of changes.
#include "compare/change.hpp"

#include <numeric>

namespace snugwalk {

std::string_view slug(Change change)
{
    switch (change) {
    case Change::New:
        return "new";
    case Change::Worse:
        return "worse";
    case Change::Same:
        return "same";
    case Change::Better:
        return "better";
    case Change::Mended:
        return "mended";
    case Change::Gone:
        return "gone";
    case Change::NotLooked:
        return "not_looked";
    case Change::FirstLook:
        return "first_look";
    case Change::NotFitted:
        return "not_fitted";
    }
    return "same";
}

int ChangeCounts::total() const { return std::accumulate(m_counts.begin(), m_counts.end(), 0); }

} // namespace snugwalk
