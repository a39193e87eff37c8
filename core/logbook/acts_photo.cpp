// SPDX-License-Identifier: Apache-2.0
// Acts on photos: each sets fields of its own entity, never the photo's bytes.
#include "logbook/acts_photo.hpp"

#include <algorithm>

#include "base/text.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

// Undo belongs to a walk: what is drawn while one is open is of that walk.
Result<Act> actDuring(Logbook &book, const Id &rig, const Doer &doer)
{
    const auto open = openWalk(book, rig);
    if (!open)
        return open.error();
    return Act{doer.by, doer.at, doer.where, *open ? (*open)->id : Id{}, Id{}, {}};
}

Value::Map drawingFields(const Drawing &drawing, const Id &rig)
{
    Value::Map fields = toValue(drawing).map();
    fields["rig"] = rig.text();
    if (drawing.shapes.empty()) {
        for (auto &[field, value] : fields)
            value = Value();
    }
    return fields;
}

Result<std::vector<Photo>> photosBeside(Logbook &book, const Photo &photo)
{
    const auto histories = findingHistories(book, photo.rig);
    if (!histories)
        return histories.error();
    for (const FindingHistory &history : *histories) {
        if (history.finding.id == photo.finding)
            return history.photos;
    }
    return Error{Errc::InvalidInput, "this photo belongs to no finding", photo.id.shortText(),
                 "only photos of a finding have an order"};
}

} // namespace

Result<Id> saveDrawing(Logbook &book, const Id &photo, const std::vector<DrawnShape> &shapes,
                       const Doer &doer)
{
    SNUG_TRY(checkShapes(shapes));
    const Id id = derivedId("drawing", photo.view(), "");
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        const Result<Photo> known = photoOf(book, photo);
        if (!known)
            return known.error();
        Result<Act> act = actDuring(book, known->rig, doer);
        if (!act)
            return act;
        const Drawing drawing{id, photo, shapes, doer.by, doer.at.value_or(book.now())};
        act->changes = {{id, "drawing", drawingFields(drawing, known->rig)}};
        return act;
    });
    if (!receipt)
        return receipt.error();
    return id;
}

Status captionPhoto(Logbook &book, const Id &photo, const std::string &caption, const Doer &doer)
{
    if (caption.size() > 500 || !isUtf8(caption))
        return Error{Errc::OutOfRange, "a caption over 500 bytes or not UTF-8", photo.shortText(),
                     "shorten it"};
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        const Result<Photo> known = photoOf(book, photo);
        if (!known)
            return known.error();
        Result<Act> act = actDuring(book, known->rig, doer);
        if (act)
            act->changes = {{photo, "photo", {{"caption", caption}}}};
        return act;
    });
    return receipt ? done() : Status(receipt.error());
}

Status movePhoto(Logbook &book, const Id &photo, int place, const Doer &doer)
{
    const Result<Receipt> receipt = book.record([&]() -> Result<Act> {
        const Result<Photo> known = photoOf(book, photo);
        if (!known)
            return known.error();
        auto photos = photosBeside(book, *known);
        if (!photos)
            return photos.error();
        if (place < 1 || place > static_cast<int>(photos->size()))
            return Error{Errc::OutOfRange, "no place " + std::to_string(place) + " among the photos",
                         photo.shortText(), "give 1 to " + std::to_string(photos->size())};
        std::erase_if(*photos, [&](const Photo &p) { return p.id == photo; });
        photos->insert(photos->begin() + (place - 1), *known);
        Result<Act> act = actDuring(book, known->rig, doer);
        if (!act)
            return act;
        for (std::size_t i = 0; i < photos->size(); ++i)
            act->changes.push_back({(*photos)[i].id, "photo", {{"order", i + 1}}});
        return act;
    });
    return receipt ? done() : Status(receipt.error());
}

} // namespace snugwalk
