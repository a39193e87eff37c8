// SPDX-License-Identifier: Apache-2.0
// photo add, list.
#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "logbook/import_photo.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "trip/place_code.hpp"
#include "walk/walk_value.hpp"

namespace snugwalk::cli {
namespace {

bool isHere(const PhotoStore &store, const Photo &photo)
{
    const auto hash = Hash::parse(photo.hash);
    return hash && store.exists(*hash);
}

Value photoJson(const PhotoStore &store, const Photo &photo)
{
    Value value = toValue(photo);
    value.member("id") = photo.id.text();
    value.member("original") = isHere(store, photo); // false: on another device
    if (photo.where && isValid(*photo.where))
        value.member("cell") = cellValue(*photo.where);
    return value;
}

std::string photoLine(const Photo &photo, bool here)
{
    std::string out =
        photo.id.shortText() + "  " + std::to_string(photo.width) + " x " + std::to_string(photo.height);
    out += photo.taken               ? ", taken " + formatLocalShort(*photo.taken)
           : photo.takenText.empty() ? ", no time of its own"
                                     : ", camera time " + photo.takenText + " (zone unknown)";
    out += photo.where && isValid(*photo.where) ? ", has a position in " + openLocationCode(*photo.where)
                                                : ", no position";
    return out + (here ? "" : ", original on another device") +
           (photo.caption.empty() ? "" : ", " + photo.caption) + "\n";
}

Result<Answer> add(Session &session, const std::vector<std::string> &files, const std::string &finding,
                   const std::string &caption)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    Logbook &book = **session.book();
    PhotoOf of{rig->id, Id{}, Id{}, caption};
    if (!finding.empty()) {
        const Result<Id> id = idOf(book, "finding", finding);
        if (!id)
            return id.error();
        of.finding = *id;
        const Result<Id> look = latestLook(book, *id);
        if (look)
            of.look = *look;
    }
    Value::List json;
    std::string text;
    for (const std::string &file : files) {
        const Result<Photo> photo = importPhotoFile(book, file, session.codec(), of, *doer);
        if (!photo)
            return photo.error();
        json.push_back(photoJson(PhotoStore(book.photoFolder()), *photo));
        text += photoLine(*photo, true);
    }
    return Answer{Value::Map{{"photos", json}}, text};
}

Result<Answer> list(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const auto photos = photosOf(**session.book(), rig->id);
    if (!photos)
        return photos.error();
    Value::List json;
    std::string text;
    const PhotoStore store((*session.book())->photoFolder());
    for (const Photo &photo : *photos) {
        json.push_back(photoJson(store, photo));
        text += photoLine(photo, isHere(store, photo));
    }
    return Answer{Value::Map{{"photos", json}}, photos->empty() ? "no photo yet\n" : text};
}

} // namespace

void addPhotoCommands(CLI::App &app, Registry &registry)
{
    CLI::App *photo = app.add_subcommand("photo", "photos, kept byte for byte");
    photo->require_subcommand(1);
    auto files = std::make_shared<std::vector<std::string>>();
    auto finding = std::make_shared<std::string>();
    auto caption = std::make_shared<std::string>();
    CLI::App *adding = photo->add_subcommand("add", "keep photos, of a finding or of the rig");
    adding->add_option("files", *files, "JPEG or PNG, at most 64 MiB and 64 million pixels")->required();
    adding->add_option("--finding", *finding, "the finding they show");
    adding->add_option("--caption", *caption, "in your words");
    registry.add(*adding, "  snugwalk photo add rivet.jpg --finding 3f2a90bc",
                 [=](Session &s) { return add(s, *files, *finding, *caption); });
    registry.add(*photo->add_subcommand("list", "all photos of the rig"), "  snugwalk photo list",
                 [](Session &s) { return list(s); });
    addPhotoDrawCommands(*photo, registry);
    addPhotoWantCommand(*photo, registry);
}

} // namespace snugwalk::cli
