// SPDX-License-Identifier: Apache-2.0
// A shared logbook out and in again: who belongs, what is set aside, what was adopted, which file carried
// what.
#include <doctest/doctest.h>

#include "base/text.hpp"
#include "exchange/check_export.hpp"
#include "exchange/export_book.hpp"
#include "exchange/import_book.hpp"
#include "exchange/sharing_lines.hpp"
#include "exchange_fixture.hpp"
#include "image/plain_codec.hpp"
#include "logbook/check.hpp"
#include "logbook/photo_store.hpp"
#include "support/party.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

namespace {

// An owner and a viewer, two of whose entries are set aside and one of them adopted, a device that was
// revoked.
struct Story {
    Story() : s(SyncRole::Viewer), third("third")
    {
        s.owner.enroll(third, s.rig, SyncRole::Helper);
        s.both();
        third.meet(s.store);
        const EntryId kept = write(s.other, "adopted");
        write(s.other, "aside");
        write(third, "in time");
        third.meet(s.store);
        s.both();
        REQUIRE(revokeDevice(s.owner.book(), s.owner.keys, s.rig, third.keys.device.deviceId(), "sold"));
        write(third, "late");
        third.meet(s.store);
        s.both();
        REQUIRE(adoptEntries(s.owner.book(), s.owner.keys, s.rig, {kept}));
        s.both();
        write(s.owner, "not sent yet");
        REQUIRE(exportLogbook(s.owner.book(), file()));
    }
    EntryId write(Party &party, const char *title)
    {
        trips.push_back(s.owner.home.ids.next());
        return party.set(trips.back(), "trip", {{"rig", s.rig.text()}, {"title", title}});
    }
    [[nodiscard]] std::string file() const { return s.owner.home.folder().file("all.zip"); }
    Shared s;
    Party third;
    std::vector<Id> trips;
};

std::string asideText(Logbook &book, const Id &rig)
{
    std::string text;
    for (const SetAside &item : asideOf(book, rig).value())
        text +=
            item.entry.id.stream.text() + " " + std::to_string(item.entry.id.seq) + " " + item.reason + "\n";
    return text;
}

std::string membersText(Logbook &book, const Id &rig)
{
    std::string text;
    const RigMembers found = membersOf(book, rig).value();
    for (const auto &[device, member] : found.members)
        text += device.text() + " " + member.name + " " +
                (member.role() ? std::string(slugOf(*member.role())) : "revoked, " + member.reason) + "\n";
    for (const auto &[id, hash] : found.adopted)
        text += "adopted " + id.stream.text() + " " + std::to_string(id.seq) + " " + hash.text() + "\n";
    return text;
}

std::string linesOf(const std::string &file, const std::string &first)
{
    const std::string whole = slurp(file); // members are stored as they are
    const std::size_t begin = whole.find(first);
    return begin == std::string::npos ? "" : whole.substr(begin, whole.find("PK\3\4", begin) - begin);
}

} // namespace

TEST_CASE("the same log, the same that is shown, the same members, set aside, adopted; twice is once")
{
    Story story;
    Logbook &owner = story.s.owner.book();
    REQUIRE(checkExport(story.file())->faults.empty());
    TestBook other("other");
    const auto in = importLogbook(other.book(), story.file(), PlainCodec());
    REQUIRE_MESSAGE(in, (in ? "" : in.error().what + ", " + in.error().where));
    CHECK(in->sharedRigs == 1);
    CHECK(in->notes.empty());
    CHECK(portableLog(other.book()) == portableLog(owner));
    CHECK(portableProjection(other.book()) == portableProjection(owner));
    CHECK(projectionNow(other.book()) == projectionNow(owner));
    CHECK(projectionRebuilt(other.book()) == projectionNow(owner));
    CHECK(checkLogbook(other.book(), true)->faults.empty());
    const std::string aside = asideText(owner, story.s.rig);
    CHECK(std::count(aside.begin(), aside.end(), '\n') == 2);
    CHECK(asideText(other.book(), story.s.rig) == aside);
    const std::string members = membersText(owner, story.s.rig);
    CHECK(members.find("revoked, sold") != std::string::npos);
    CHECK(members.find("adopted ") != std::string::npos);
    CHECK(membersText(other.book(), story.s.rig) == members);
    CHECK(other.book().db().number("SELECT count(*) FROM entry WHERE segment IS NULL").value() ==
          owner.db().number("SELECT count(*) FROM entry WHERE segment IS NULL").value());

    const auto again = importLogbook(other.book(), story.file(), PlainCodec());
    REQUIRE(again);
    CHECK(again->entriesAdded == 0);
    CHECK(portableProjection(other.book()) == portableProjection(owner));
    CHECK(asideText(other.book(), story.s.rig) == aside);
    // out of the copy come the same lines
    const std::string second = other.folder().file("second.zip");
    REQUIRE(exportLogbook(other.book(), second));
    for (const char *first : {R"({"act":)", R"({"kind":"rig")"}) {
        CHECK_FALSE(linesOf(second, first).empty());
        CHECK(linesOf(second, first) == linesOf(story.file(), first));
    }
}

TEST_CASE("no secret is in it: neither the device's nor the rig's key, plain or as hexadecimal")
{
    Story story;
    const std::string whole = slurp(story.file());
    const RigKeys keys = openKeys(membersOf(story.s.owner.book(), story.s.rig).value(), story.s.owner.keys);
    REQUIRE(keys.all.size() == 2); // one more since the revocation
    std::vector<std::string> secrets{story.s.owner.keys.device.seed(), story.s.other.keys.device.seed()};
    for (const auto &[name, key] : keys.all)
        secrets.emplace_back(key.view());
    for (const std::string &secret : secrets) {
        CHECK(whole.find(secret) == std::string::npos);
        CHECK(whole.find(toHex(secret)) == std::string::npos);
    }
}

TEST_CASE("a device that does not belong holds it, tells nobody, and is let in later")
{
    Story story;
    Party fresh("fresh");
    REQUIRE(importLogbook(fresh.book(), story.file(), PlainCodec()));
    const Hash shown = projectionNow(fresh.book());
    const Id trip = fresh.home.ids.next();
    fresh.set(trip, "trip", {{"rig", story.s.rig.text()}, {"title", "mine"}});
    const auto alone = fresh.meet(story.s.store);
    CHECK(alone.entriesSent == 0);
    CHECK(story.s.owner.shown("trip", trip, "title").isNull());
    story.s.both();
    CHECK(story.s.owner.shown("trip", trip, "title").isNull());

    REQUIRE(enrollDevice(
        story.s.owner.book(), story.s.owner.keys, story.s.rig,
        {fresh.keys.device.publicKey(), fresh.keys.pair.publicKey(), "fresh", SyncRole::Helper, ""}));
    for (int i = 0; i < 2; ++i) {
        story.s.both();
        fresh.meet(story.s.store);
    }
    story.s.both();
    CHECK(story.s.owner.shown("trip", trip, "title") == Value("mine"));
    CHECK(projectionNow(fresh.book()) == projectionNow(story.s.owner.book()));
    CHECK(projectionNow(fresh.book()) != shown);
    CHECK(fresh.number("SELECT count(*) FROM segment WHERE opened = 0") == 0);
    CHECK(checkLogbook(fresh.book(), true)->faults.empty());
}

TEST_CASE("the owner's own device begins again from its export and goes on")
{
    Story story;
    const Hash shown = projectionNow(story.s.owner.book());
    Party back("owner"); // the same key, an empty logbook
    REQUIRE(back.keys.device.deviceId() == story.s.owner.keys.device.deviceId());
    REQUIRE(importLogbook(back.book(), story.file(), PlainCodec()));
    CHECK(projectionNow(back.book()) == shown);
    const auto met = back.meet(story.s.store);
    CHECK(met.entriesSent == 1); // what the export held and nobody had been sent
    CHECK(met.unopened == 0);
    const auto other = story.s.other.meet(story.s.store);
    CHECK(other.entriesReceived == 1);
    CHECK(projectionNow(story.s.other.book()) == projectionNow(back.book()));
}

TEST_CASE("lines that lie are refused: changed bytes, other entries than a file holds, another beginning")
{
    Story story;
    Sharing sharing = sharingOf(story.s.owner.book(), Id{}).value();
    const std::string text = sharingText(story.s.owner.book(), sharing).value();
    int refused = 0;
    int lines = 0;
    for (std::string_view rest = text; !rest.empty();) {
        const std::size_t end = rest.find('\n');
        const std::string line(rest.substr(0, end));
        rest.remove_prefix(end + 1);
        if (line.find("\"bytes\"") == std::string::npos)
            continue;
        ++lines;
        Sharing read;
        CHECK(addSharingLine(line, read));
        for (const char *member :
             {"\"counter\":", "\"rig\":\"", "\"bytes\":\"", "\"hash\":\"", "\"prev\":\""}) {
            std::string spoiled = line;
            char &digit = spoiled[spoiled.find(member) + std::string_view(member).size() +
                                  (member == std::string_view("\"bytes\":\"") ? 40U : 0U)];
            digit = digit == '5' ? '6' : '5';
            refused += addSharingLine(spoiled, read) ? 0 : 1;
        }
    }
    CHECK(lines >= 8);
    CHECK(refused == 5 * lines);

    Party back("owner");
    REQUIRE(importLogbook(back.book(), story.file(), PlainCodec()));
    auto transaction = sqlite::Transaction::begin(back.book().db()).value();
    Sharing lying = sharing;
    std::swap(lying.files.front().entries, lying.files.back().entries);
    CHECK(takeSharing(back.book(), lying).error().code == Errc::Corrupt);
    lying = sharing;
    lying.rigs.front().second = blake2b("another");
    CHECK(takeSharing(back.book(), lying).error().code == Errc::Conflict);
    lying = sharing;
    lying.rigs.clear();
    CHECK(takeSharing(back.book(), lying).error().code == Errc::Corrupt);
}

TEST_CASE("a stream that others only named, and the small picture of a photo that is elsewhere")
{
    Shared s;
    const std::string png = "elsewhere";
    const Hash photo = blake2b(png);
    s.other.set(s.other.home.ids.next(), "photo",
                {{"rig", s.rig.text()}, {"hash", photo.text()}, {"width", 3}, {"height", 2}});
    s.both();
    const StreamId named{Id::fromBytes(std::string(16, 'x')), {}};
    REQUIRE(streamRowOrNew(s.owner.book().db(), named));
    PhotoStore photos(s.owner.book().photoFolder());
    const std::string thumb = std::string("\xff\xd8\xff\xda\x00\x02", 6) + std::string(100, 't') + "\xff\xd9";
    REQUIRE(photos.keepThumbnail(photo, thumb));
    const std::string file = s.owner.home.folder().file("all.zip");
    const auto out = exportLogbook(s.owner.book(), file);
    REQUIRE(out);
    CHECK(out->missing.size() == 1);
    CHECK(checkExport(file)->faults.empty());
    TestBook other("another");
    const auto in = importLogbook(other.book(), file, PlainCodec());
    REQUIRE_MESSAGE(in, (in ? "" : in.error().what + ", " + in.error().where));
    CHECK(in->missing.size() == 1);
    CHECK(PhotoStore(other.book().photoFolder()).thumbnail(photo).value() == thumb);
    const auto check = checkLogbook(other.book(), true);
    CHECK(check->faults.empty());
    CHECK(check->photosElsewhere == 1);
}
