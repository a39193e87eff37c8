// SPDX-License-Identifier: Apache-2.0
// finding list, show, photo; the verbs of one finding are in finding_look_commands.cpp.
#include <algorithm>

#include "cli/answers.hpp"
#include "cli/commands.hpp"
#include "logbook/import_photo.hpp"
#include "logbook/query.hpp"
#include "words/finding_words.hpp"

namespace snugwalk::cli {

namespace {

std::string historyWords(Session &session, const Rig &rig, const FindingHistory &h)
{
    std::string out = findingLine(session, rig, h);
    for (const Look &look : h.looks)
        out += "  " + formatLocalShort(look.at) + (look.by.empty() ? "" : " " + look.by) + ": " +
               lookWords(h, look, session.texts(), session.units()) + "\n";
    for (const Mend &mend : h.mends)
        out += "  " + formatLocalShort(mend.at) + " mended (" + mend.action + "): " + mendWords(mend) + "\n";
    for (const Photo &photo : h.photos)
        out += "  photo " + photo.id.shortText() +
               (photo.taken ? " taken " + formatLocalShort(*photo.taken) : " without a time of its own") +
               "\n";
    return out;
}

Result<Answer> list(Session &session, bool all)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const auto histories = findingHistories(**session.book(), rig->id);
    if (!histories)
        return histories.error();
    Value::List json;
    std::string text;
    for (const FindingHistory &h : *histories) {
        const FindingStatus status = statusOf(h);
        if (!all && (status == FindingStatus::Confirmed || status == FindingStatus::Gone))
            continue;
        json.push_back(findingJson(h));
        text += findingLine(session, *rig, h);
    }
    return Answer{Value::Map{{"findings", json}}, text.empty() ? "no open finding\n" : text};
}

Result<FindingHistory> historyOf(Session &session, const Rig &rig, const std::string &typed)
{
    Logbook &book = **session.book();
    const Result<Id> id = idOf(book, "finding", typed);
    if (!id)
        return id.error();
    const auto histories = findingHistories(book, rig.id);
    if (!histories)
        return histories.error();
    const auto found = std::find_if(histories->begin(), histories->end(),
                                    [&](const FindingHistory &h) { return h.finding.id == *id; });
    if (found == histories->end())
        return Error{Errc::NotFound, "this finding is of another rig", typed, "name the rig with --rig"};
    return *found;
}

Result<Answer> show(Session &session, const std::string &typed)
{
    const Result<Rig> rig = session.rig();
    if (!rig)
        return rig.error();
    const Result<FindingHistory> h = historyOf(session, *rig, typed);
    if (!h)
        return h.error();
    return Answer{findingJson(*h), historyWords(session, *rig, *h)};
}

Result<Answer> addPhotos(Session &session, const std::string &typed, const std::vector<std::string> &files)
{
    const Result<Rig> rig = session.rig();
    const Result<Doer> doer = session.doer();
    if (!rig || !doer)
        return rig ? doer.error() : rig.error();
    Logbook &book = **session.book();
    const Result<FindingHistory> h = historyOf(session, *rig, typed);
    if (!h)
        return h.error();
    const Result<Id> look = latestLook(book, h->finding.id);
    Value::List json;
    std::string text;
    for (const std::string &file : files) {
        const PhotoOf of{rig->id, h->finding.id, look ? *look : Id{}, ""};
        const Result<Photo> photo = importPhotoFile(book, file, session.codec(), of, *doer);
        if (!photo)
            return photo.error();
        json.push_back(photo->id.text());
        text += "photo " + photo->id.shortText() + " kept\n";
    }
    return Answer{Value::Map{{"photos", json}}, text};
}

} // namespace

void addFindingCommands(CLI::App &app, Registry &registry)
{
    CLI::App *finding = app.add_subcommand("finding", "what was found and what became of it");
    finding->require_subcommand(1);
    auto all = std::make_shared<bool>(false);
    auto id = std::make_shared<std::string>();
    auto files = std::make_shared<std::vector<std::string>>();
    CLI::App *listing = finding->add_subcommand("list", "findings not yet mended and confirmed");
    listing->add_flag("--all", *all, "also those that are");
    registry.add(*listing, "  snugwalk finding list", [all](Session &s) { return list(s, *all); });
    CLI::App *showing = finding->add_subcommand("show", "the history of one finding");
    showing->add_option("finding", *id, "its id")->required();
    registry.add(*showing, "  snugwalk finding show 3f2a90bc", [id](Session &s) { return show(s, *id); });
    CLI::App *photo = finding->add_subcommand("photo", "add photos to a finding");
    photo->add_option("finding", *id, "its id")->required();
    photo->add_option("files", *files, "JPEG or PNG")->required();
    registry.add(*photo, "  snugwalk finding photo 3f2a90bc rivet.jpg",
                 [id, files](Session &s) { return addPhotos(s, *id, *files); });
    addFindingLookCommands(*finding, registry);
}

} // namespace snugwalk::cli
