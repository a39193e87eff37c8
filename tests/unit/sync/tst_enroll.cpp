// SPDX-License-Identifier: Apache-2.0
// Two devices meet by codes; secrets in files; the key on paper.
#include <doctest/doctest.h>

#include <filesystem>

#include "support/party.hpp"
#include "sync/enroll.hpp"
#include "sync/secret_file.hpp"
#include "sync/words.hpp"

using namespace snugwalk;
using namespace snugwalk::test;

TEST_CASE("offer, answer, six digits, enrolled: the new device reads everything")
{
    Party owner("owner");
    Party fresh("fresh");
    const Id rig = owner.addRig("the rig");
    REQUIRE(shareRig(owner.book(), owner.keys, rig));
    CHECK(shareRig(owner.book(), owner.keys, rig).error().code == Errc::Conflict);
    const Offer offer = makeOffer(owner.book(), owner.keys, rig).value();
    CHECK(offer.bytes.size() < 150); // fits a QR code that a phone reads from a screen
    const std::string typed = bytesFromWords(wordsFrom(offer.bytes)).value();
    fresh.home.clock.set(owner.home.clock.now());
    const std::string answer = answerOffer(fresh.book(), fresh.keys, typed, SyncRole::Helper).value();
    const std::string code = confirmCode(offer.bytes, answer);
    CHECK(code.size() == 6);
    CHECK(code == confirmCode(typed, answer));
    NewDevice device = readAnswer(offer, answer, owner.home.clock.now()).value();
    CHECK(device.publicKey == fresh.keys.device.publicKey());
    CHECK(device.role == SyncRole::Helper);
    REQUIRE(enrollDevice(owner.book(), owner.keys, rig, device));
    MemoryStore store;
    owner.meet(store);
    fresh.meet(store);
    CHECK(fresh.shown("rig", rig, "name") == Value("the rig"));
    CHECK(makeOffer(fresh.book(), fresh.keys, rig).error().code == Errc::Unsupported);
}

TEST_CASE("answers that are none: another offer's, too late, changed")
{
    Party owner("owner");
    Party fresh("fresh");
    const Id rig = owner.addRig();
    REQUIRE(shareRig(owner.book(), owner.keys, rig));
    const Offer offer = makeOffer(owner.book(), owner.keys, rig).value();
    const Offer other = makeOffer(owner.book(), owner.keys, rig).value();
    fresh.home.clock.set(owner.home.clock.now());
    const std::string answer = answerOffer(fresh.book(), fresh.keys, offer.bytes, SyncRole::Owner).value();
    CHECK_FALSE(readAnswer(other, answer, owner.home.clock.now()));
    std::string changed = answer;
    changed[changed.size() / 2] = static_cast<char>(changed[changed.size() / 2] ^ 1);
    CHECK_FALSE(readAnswer(offer, changed, owner.home.clock.now()));
    LocalTime late = owner.home.clock.now();
    late.instant += std::chrono::minutes(11);
    CHECK(readAnswer(offer, answer, late).error().code == Errc::OutOfRange);
    fresh.home.clock.set(late);
    CHECK(answerOffer(fresh.book(), fresh.keys, offer.bytes, SyncRole::Owner).error().code ==
          Errc::OutOfRange);
    CHECK_FALSE(answerOffer(fresh.book(), fresh.keys, "nothing", SyncRole::Owner));
    CHECK(confirmCode(offer.bytes, answer) != confirmCode(other.bytes, answer));
}

TEST_CASE("the paper owner's words bring the rig back to a new device")
{
    Party owner("owner");
    const Id rig = owner.addRig("kept");
    REQUIRE(shareRig(owner.book(), owner.keys, rig));
    const std::string words = enrollPaperOwner(owner.book(), owner.keys, rig, "paper").value();
    MemoryStore store;
    owner.meet(store);
    // everything else is lost; a store and the words are left
    Party rescue("rescue");
    const Keys paper(keyFromWords(words).value());
    REQUIRE(joinRig(rescue.book(), rig, sharedRigs(owner.book()).value().front().second));
    REQUIRE(exchange(rescue.book(), paper, store));
    CHECK(rescue.shown("rig", rig, "name") == Value("kept"));
    REQUIRE(enrollDevice(
        rescue.book(), paper, rig,
        {rescue.keys.device.publicKey(), rescue.keys.pair.publicKey(), "rescue", SyncRole::Owner, ""}));
    rescue.set(rig, "rig", {{"name", "goes on"}});
    rescue.meet(store);
    CHECK(membersOf(rescue.book(), rig).value().owners() == 3);
}

TEST_CASE("a secret in a file: for its owner alone, locked when wanted")
{
    const TempFolder folder;
    const std::filesystem::path file = folder.path() / "secret";
    const Secret secret = Secret::random();
    CHECK(readSecretFile(file, std::nullopt).error().code == Errc::NotFound);
    REQUIRE(writeSecretFile(file, secret, std::nullopt));
    CHECK(readSecretFile(file, std::nullopt).value().view() == secret.view());
    CHECK_FALSE(isLocked(file).value());
    std::filesystem::permissions(file, std::filesystem::perms::group_read,
                                 std::filesystem::perm_options::add);
    CHECK(readSecretFile(file, std::nullopt).error().code == Errc::Io);
    REQUIRE(writeSecretFile(file, secret, "correct horse"));
    CHECK(isLocked(file).value());
    CHECK(slurp(file).find(secret.view()) == std::string::npos);
    CHECK(readSecretFile(file, "correct horse").value().view() == secret.view());
    CHECK(readSecretFile(file, "wrong").error().code == Errc::InvalidInput);
    CHECK(readSecretFile(file, std::nullopt).error().code == Errc::InvalidInput);
    CHECK(writeSecretFile(file, secret, "").error().code == Errc::InvalidInput);
}
