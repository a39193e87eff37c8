// SPDX-License-Identifier: Apache-2.0
// photo want: originals to fetch at the next sync.
#include "cli/commands.hpp"
#include "cli/sync/parts.hpp"
#include "logbook/query.hpp"
#include "logbook/want_photos.hpp"

namespace snugwalk::cli {
namespace {

struct Typed {
    std::vector<std::string> photos;
    bool all = false;
};

Result<std::vector<Photo>> named(Session &session, const Id &rig, const Typed &typed)
{
    Logbook &book = **session.book();
    if (typed.all == !typed.photos.empty())
        return Error{Errc::Usage, "name photos, or --all", "", "one of both; see `snugwalk photo list`"};
    if (typed.all)
        return photosOf(book, rig);
    std::vector<Photo> photos;
    for (const std::string &name : typed.photos) {
        const auto id = idOf(book, "photo", name);
        const auto photo = id ? photoOf(book, *id) : Result<Photo>(id.error());
        if (!photo)
            return photo.error();
        photos.push_back(*photo);
    }
    return photos;
}

Result<Answer> want(Session &session, const Typed &typed)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    Logbook &book = **session.book();
    const auto photos = named(session, rig->id, typed);
    if (!photos)
        return photos.error();
    const auto count = wantPhotos(book, *photos);
    if (!count)
        return count.error();
    return Answer{Value::Map{{"wanted", count->wanted}, {"here", count->here}},
                  counted(count->wanted, "original comes", "originals come") +
                      " with the next sync that has them; " + std::to_string(count->here) +
                      " already here\n"};
}

} // namespace

void addPhotoWantCommand(CLI::App &photo, Registry &registry)
{
    auto typed = std::make_shared<Typed>();
    CLI::App *sub =
        photo.add_subcommand("want", "fetch originals that are on other devices, at the next sync");
    sub->add_option("photos", typed->photos, "the photos' ids");
    sub->add_flag("--all", typed->all, "all of the rig");
    registry.add(*sub, "  snugwalk photo want 7c01aa20\n  snugwalk photo want --all",
                 [typed](Session &s) { return want(s, *typed); });
}

} // namespace snugwalk::cli
