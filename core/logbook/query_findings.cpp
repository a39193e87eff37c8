// SPDX-License-Identifier: Apache-2.0
// Findings with all that was written about them.
#include <algorithm>
#include <limits>
#include <map>
#include <tuple>

#include "logbook/query.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk {
namespace {

// Passes of one point on every walk of the rig, oldest first.
Result<std::vector<Mark>> passesOf(Logbook &book, const Id &rig, const std::string &point)
{
    const auto things = marksOfPoint(book.db(), rig, point);
    if (!things)
        return things.error();
    std::vector<Mark> passes;
    for (const Thing &item : *things) {
        Mark mark = markFromValue(item.doc);
        mark.id = item.id;
        if (mark.state == MarkState::Pass)
            passes.push_back(std::move(mark));
    }
    return passes;
}

Instant takenOr(const Photo &photo) { return photo.taken ? photo.taken->instant : photo.added.instant; }

// Where a photo stands among those of its finding: as put, then as taken.
std::tuple<int, Instant> placeOf(const Photo &photo)
{
    return {photo.order.value_or(std::numeric_limits<int>::max()), takenOr(photo)};
}

bool isOn(const std::vector<Photo> &photos, const Drawing &drawing)
{
    return std::any_of(photos.begin(), photos.end(),
                       [&](const Photo &photo) { return photo.id == drawing.photo; });
}

} // namespace

Result<std::vector<FindingHistory>> findingHistories(Logbook &book, const Id &rig)
{
    const auto findings = thingsOfRig(book.db(), "finding", rig);
    const auto mends = mendsOf(book, rig);
    const auto photos = photosOf(book, rig);
    const auto drawings = drawingsOf(book, rig);
    if (!findings || !mends)
        return findings ? mends.error() : findings.error();
    if (!photos || !drawings)
        return photos ? drawings.error() : photos.error();
    std::map<std::string, std::vector<Mark>> passes;

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
                         [](const Photo &a, const Photo &b) { return placeOf(a) < placeOf(b); });
        std::copy_if(drawings->begin(), drawings->end(), std::back_inserter(history.drawings),
                     [&](const Drawing &drawing) { return isOn(history.photos, drawing); });
        const std::string &point = history.finding.point;
        if (passes.count(point) == 0) {
            auto found = passesOf(book, rig, point);
            if (!found)
                return found.error();
            passes[point] = std::move(found).value();
        }
        history.pointPasses = passes[point];
        histories.push_back(std::move(history));
    }
    return histories;
}

} // namespace snugwalk
