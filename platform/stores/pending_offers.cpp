// SPDX-License-Identifier: Apache-2.0
// `offers/<hash>.json`, and a secret of the same name.
#include "stores/pending_offers.hpp"

#include "base/text.hpp"
#include "logbook/files.hpp"
#include "stores/private_file.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::chrono::minutes stands{10}; // as the offer itself says; readAnswer asks it again
constexpr std::size_t maxOfferFile = 8192;

std::string nameOf(const Offer &offer) { return "offer-" + blake2b(offer.bytes).text().substr(0, 16); }

fs::path fileOf(const fs::path &folder, const Offer &offer)
{
    return folder / "offers" / (nameOf(offer) + ".json");
}

std::optional<PendingOffer> pendingFrom(const std::string &text)
{
    const Result<Value> v = parseJson(text);
    if (!v)
        return std::nullopt;
    PendingOffer pending;
    const auto bytes = fromHex((*v)["offer"].asString().value_or(""));
    const auto rig = Id::parse((*v)["rig"].asString().value_or(""));
    const auto made = parseLocal((*v)["made"].asString().value_or(""));
    if (!bytes || !rig || !made)
        return std::nullopt;
    pending.offer.bytes = *bytes;
    pending.rig = *rig;
    pending.made = *made;
    pending.role = syncRoleOf((*v)["role"].asString().value_or(""));
    pending.until = (*v)["until"].asString().value_or("");
    return pending;
}

} // namespace

Status keepOffer(const fs::path &folder, SecretKeeper &keeper, const PendingOffer &pending)
{
    SNUG_TRY(keeper.keep(nameOf(pending.offer), pending.offer.secret));
    const Value::Map map{{"offer", toHex(pending.offer.bytes)},
                         {"rig", pending.rig.text()},
                         {"role", pending.role ? Value(slugOf(*pending.role)) : Value()},
                         {"until", pending.until},
                         {"made", formatLocal(pending.made)}};
    return replacePrivateFile(fileOf(folder, pending.offer), toJson(map, true) + "\n");
}

Status dropOffer(const fs::path &folder, SecretKeeper &keeper, const PendingOffer &pending)
{
    std::error_code ignored; // without its secret the file says nothing that was not shown
    fs::remove(fileOf(folder, pending.offer), ignored);
    return keeper.forget(nameOf(pending.offer));
}

Result<std::vector<PendingOffer>> pendingOffers(const fs::path &folder, SecretKeeper &keeper,
                                                const LocalTime &now)
{
    std::vector<PendingOffer> standing;
    std::error_code fault;
    for (const auto &entry : fs::directory_iterator(folder / "offers", fault)) {
        const auto text = readFile(entry.path(), maxOfferFile);
        auto pending = text ? pendingFrom(*text) : std::nullopt;
        if (!pending)
            continue;
        const auto secret = keeper.find(nameOf(pending->offer));
        const auto age = now.instant - pending->made.instant;
        if (!secret || !*secret || age > stands || age < -stands) {
            SNUG_TRY(dropOffer(folder, keeper, *pending));
            continue;
        }
        pending->offer.secret = **secret;
        standing.push_back(std::move(*pending));
    }
    return standing;
}

} // namespace snugwalk
