// SPDX-License-Identifier: Apache-2.0
// Findings with all that was written about them.
#include <algorithm>
#include <map>

#include "logbook/query.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

// Passes of every walk of the rig, by point, oldest first.
Result<std::map<std::string, std::vector<Mark>>> passesByPoint(Logbook &book, const Id &rig)
{
    const auto walks = walksOf(book, rig);
    if (!walks)
        return walks.error();
    std::map<std::string, std::vector<Mark>> passes;
    for (const Walk &walk : *walks) {
        const auto marks = marksOf(book, walk.id);
        if (!marks)
            return marks.error();
        for (const Mark &mark : *marks) {
            if (mark.state == MarkState::Pass)
                passes[mark.point].push_back(mark);
        }
    }
    return passes;
}

Instant takenOr(const Photo &photo)
{
    return photo.taken ? photo.taken->instant : photo.added.instant;
}

} // namespace

Result<std::vector<FindingHistory>> findingHistories(Logbook &book, const Id &rig)
{
    const auto findings = thingsOfRig(book.db(), "finding", rig);
    const auto mends = mendsOf(book, rig);
    const auto photos = photosOf(book, rig);
    if (!findings || !mends || !photos)
        return !findings ? findings.error() : !mends ? mends.error() : photos.error();
    auto passes = passesByPoint(book, rig);
    if (!passes)
        return passes.error();

    std::vector<FindingHistory> histories;
    for (const Thing &item : *findings) {
        FindingHistory history;
        history.finding = findingFromValue(item.doc);
        history.finding.id = item.id;
        const auto looks = thingsOfParent(book.db(), "look", item.id);
        if (!looks)
            return looks.error();
        for (const Thing &seen : *looks) {
            history.looks.push_back(lookFromValue(seen.doc));
            history.looks.back().id = seen.id;
        }
        std::copy_if(mends->begin(), mends->end(), std::back_inserter(history.mends), [&](const Mend &mend) {
            return std::find(mend.findings.begin(), mend.findings.end(), item.id) != mend.findings.end();
        });
        std::copy_if(photos->begin(), photos->end(), std::back_inserter(history.photos),
                     [&](const Photo &photo) { return photo.finding == item.id; });
        std::stable_sort(history.photos.begin(), history.photos.end(),
                         [](const Photo &a, const Photo &b) { return takenOr(a) < takenOr(b); });
        history.pointPasses = (*passes)[history.finding.point];
        histories.push_back(std::move(history));
    }
    return histories;
}

} // namespace snugwalk
