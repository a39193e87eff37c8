// SPDX-License-Identifier: Apache-2.0
// Runs on the worker's thread only.
#include "walk_jobs.hpp"

#include "logbook/acts_photo.hpp"
#include "logbook/import_photo.hpp"
#include "logbook/query.hpp"
#include "taken_photos.hpp"

namespace snugwalk {
namespace {

Result<WalkNow> readNow(Logbook &book, const Id &walk)
{
    Result<Walk> now = walkOf(book, walk);
    if (!now)
        return now.error();
    Result<std::vector<Mark>> marks = marksOf(book, walk);
    if (!marks)
        return marks.error();
    return WalkNow{std::move(now).value(), std::move(marks).value(), {}};
}

// Gives how many acts undo will have to take back: a photo is none, a drawing on the open walk is one.
int keepPhoto(Logbook &book, const WalkJob &job, const PhotoOf &of, const PhotoFile &photo,
              std::vector<Error> &mishaps)
{
    const Result<Photo> kept = importPhotoFile(book, photo.path, *job.parts->codec, of, job.doer);
    if (!kept) {
        mishaps.push_back(kept.error());
        return 0;
    }
    dropTaken(job.parts->takenFolder, photo.path);
    if (photo.lines.empty())
        return 0;
    const Result<Id> drawn = saveDrawing(book, kept->id, photo.lines, job.doer);
    if (!drawn)
        mishaps.push_back(drawn.error());
    return drawn ? 1 : 0;
}

} // namespace

Result<WalkNow> markAlike(Logbook &book, const WalkJob &job, const TapeLine &line, const MarkDraft &how,
                          const std::vector<std::string> &points,
                          const std::vector<std::vector<TypedReading>> &readings)
{
    Result<std::vector<Mark>> before = marksOf(book, job.walk.id);
    if (!before)
        return before.error();
    TapeLine together{line.slug, {}};
    int acts = 0;
    for (std::size_t i = 0; i < points.size(); ++i) {
        if (readings[i].empty() && how.note.empty() && findMark(*before, points[i]) == nullptr) {
            together.points.push_back(points[i]);
            continue;
        }
        MarkDraft draft = how;
        draft.point = points[i];
        draft.readings = readings[i];
        const auto receipt = markPoint(book, *job.catalogue, job.rig, job.walk, draft, job.doer);
        if (!receipt)
            return receipt.error();
        ++acts;
    }
    if (!together.points.empty()) {
        SNUG_TRY(markLine(book, job.walk, together, how.state, how.how, how.reason, job.doer));
        ++acts;
    }
    job.taps->push_back(acts);
    return readNow(book, job.walk.id);
}

Result<WalkNow> markAttention(Logbook &book, const WalkJob &job, const std::vector<AttentionForm> &forms)
{
    std::vector<Error> mishaps;
    int acts = 0;
    for (const AttentionForm &form : forms) {
        const auto receipt = markPoint(book, *job.catalogue, job.rig, job.walk, form.draft, job.doer);
        if (!receipt) {
            if (acts > 0)
                job.taps->push_back(acts);
            return receipt.error();
        }
        ++acts;
        for (std::size_t i = 0; i < form.photos.size(); ++i) {
            const PhotoOf of{job.rig.id, receipt->findings[i], receipt->looks[i], {}};
            for (const PhotoFile &photo : form.photos[i])
                acts += keepPhoto(book, job, of, photo, mishaps);
        }
    }
    job.taps->push_back(acts);
    Result<WalkNow> now = readNow(book, job.walk.id);
    if (now)
        now->mishaps = std::move(mishaps);
    return now;
}

Result<WalkNow> takeBack(Logbook &book, const WalkJob &job)
{
    const int acts = job.taps->empty() ? 1 : job.taps->back();
    if (!job.taps->empty())
        job.taps->pop_back();
    for (int i = 0; i < acts; ++i) {
        const Result<Receipt> taken = book.undo(job.walk.id, job.doer.by);
        if (!taken)
            return taken.error();
    }
    return readNow(book, job.walk.id);
}

Result<WalkNow> finishNow(Logbook &book, const WalkJob &job)
{
    SNUG_TRY(finishWalk(book, job.walk, job.doer));
    return readNow(book, job.walk.id);
}

} // namespace snugwalk
