// SPDX-License-Identifier: Apache-2.0
// Offer, answer, code.
#include "sync/enroll.hpp"

#include <cstdio>
#include <sodium.h>

#include "base/text.hpp"
#include "keys/sodium_ready.hpp"

namespace snugwalk {
namespace {

constexpr std::chrono::minutes offerStands{10};
constexpr std::size_t maxOffer = 256;
constexpr std::size_t maxAnswer = 512;
constexpr std::size_t maxName = 60;

struct OfferParts {
    Id space;
    Hash root;
    std::string sealKey;
    std::string token;
    Instant until{};
};

Result<OfferParts> partsOf(std::string_view bytes)
{
    const Error none{Errc::InvalidInput, "this is no offer to share a rig", "", "show the code again"};
    const Result<Value> v = bytes.size() <= maxOffer ? decodeCbor(bytes) : Result<Value>(none);
    if (!v || (*v)["v"].asInt() != 1)
        return none;
    const auto space = (*v)["s"].asBytes();
    const auto root = Hash::fromBytes((*v)["r"].asBytes().value_or(""));
    const auto key = (*v)["x"].asBytes();
    const auto token = (*v)["t"].asBytes();
    const auto until = (*v)["u"].asInt();
    if (!space || space->size() != 16 || !root || !key || key->size() != 32 || !token ||
        token->size() != 16 || !until || *until < 0 || *until > std::int64_t{1} << 32)
        return none;
    return OfferParts{Id::fromBytes(*space), *root, *key, *token, fromMillis(*until * 1000)};
}

Status checkTime(const OfferParts &parts, const LocalTime &now)
{
    if (now.instant <= parts.until)
        return done();
    return Error{Errc::OutOfRange, "this offer is over, or a clock is wrong", "", "make a new one"};
}

// Bound to the token, which only who saw the offer knows.
std::string proof(const OfferParts &parts, const Value::Map &members)
{
    Value::Map rest = members;
    rest.erase("m");
    const Secret key = Secret::fromBytes(parts.token + parts.token).value();
    return keyedHash(key, "snugwalk answer", encodeCbor(Value(rest)));
}

} // namespace

Result<Offer> makeOffer(Logbook &book, const Keys &keys, const Id &rig)
{
    const auto members = membersOf(book, rig);
    const auto rigs = sharedRigs(book);
    if (!members || !rigs)
        return members ? rigs.error() : members.error();
    const Member *me = members->find(keys.device.deviceId());
    if (me == nullptr || me->role() != SyncRole::Owner)
        return Error{Errc::Unsupported, "only an owner's device may do this", rig.shortText(),
                     "do it on an owner's device"};
    Hash root;
    for (const auto &[id, hash] : *rigs)
        root = id == rig ? hash : root;
    Offer offer;
    offer.secret = Secret::random();
    const auto until = std::chrono::floor<std::chrono::seconds>(book.now().instant + offerStands);
    offer.bytes = encodeCbor(Value::Map{{"v", 1},
                                        {"s", Bytes{std::string(rig.view())}},
                                        {"r", Bytes{std::string(root.view())}},
                                        {"x", Bytes{SealPair(offer.secret).publicKey()}},
                                        {"t", Bytes{randomBytes(16)}},
                                        {"u", static_cast<std::int64_t>(until.time_since_epoch().count())}});
    return offer;
}

Result<std::string> answerOffer(Logbook &book, const Keys &keys, std::string_view offer, SyncRole wanted)
{
    const auto parts = partsOf(offer);
    if (!parts)
        return parts.error();
    SNUG_TRY(checkTime(*parts, book.now()));
    SNUG_TRY(joinRig(book, parts->space, parts->root));
    std::string name = book.label().substr(0, maxName);
    while (!isUtf8(name))
        name.pop_back();
    Value::Map members{{"v", 1},
                       {"k", Bytes{keys.device.publicKey()}},
                       {"x", Bytes{keys.pair.publicKey()}},
                       {"n", name},
                       {"w", slugOf(wanted)}};
    members["m"] = Bytes{proof(*parts, members)};
    return sealTo(parts->sealKey, encodeCbor(Value(members)));
}

std::string confirmCode(std::string_view offer, std::string_view answer)
{
    detail::sodiumReady();
    const Hash both = blake2b(std::string(blake2b(offer).view()) + std::string(blake2b(answer).view()));
    std::array<unsigned char, 16> out{};
    const int failed =
        crypto_pwhash(out.data(), out.size(), reinterpret_cast<const char *>(both.bytes.data()),
                      both.bytes.size(), both.bytes.data(), crypto_pwhash_OPSLIMIT_INTERACTIVE,
                      crypto_pwhash_MEMLIMIT_INTERACTIVE, crypto_pwhash_ALG_ARGON2ID13);
    if (failed != 0) // no memory for it: better no code than a quick one
        return "";
    std::uint64_t number = 0;
    for (std::size_t i = 0; i < 8; ++i)
        number = number << 8U | out.at(i);
    std::array<char, 8> digits{};
    std::snprintf(digits.data(), digits.size(), "%06u", static_cast<unsigned>(number % 1'000'000));
    return digits.data();
}

Result<NewDevice> readAnswer(const Offer &offer, std::string_view answer, const LocalTime &now)
{
    const Error none{Errc::InvalidInput, "this is no answer to the offer shown here", "",
                     "show both codes again"};
    const auto parts = partsOf(offer.bytes);
    if (!parts || answer.size() > maxAnswer)
        return none;
    SNUG_TRY(checkTime(*parts, now));
    const auto plain = SealPair(offer.secret).open(answer);
    const Result<Value> v = plain ? decodeCbor(*plain) : Result<Value>(none);
    if (!v || (*v)["v"].asInt() != 1)
        return none;
    const auto key = (*v)["k"].asBytes();
    const auto sealKey = (*v)["x"].asBytes();
    const auto name = (*v)["n"].asString();
    const auto wanted = syncRoleOf((*v)["w"].asString().value_or(""));
    if (!key || key->size() != 32 || !sealKey || sealKey->size() != 32 || !name || name->size() > maxName ||
        !wanted || (*v)["m"].asBytes() != proof(*parts, v->map()))
        return none;
    return NewDevice{*key, *sealKey, *name, *wanted, ""};
}

} // namespace snugwalk
