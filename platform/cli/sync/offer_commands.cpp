// SPDX-License-Identifier: Apache-2.0
// device offer (owner), answer (new device), enroll (owner): the six digits are compared by people.
#include "base/text.hpp"
#include "cli/sync/offer.hpp"
#include "cli/sync/parts.hpp"
#include "device/device.hpp"
#include "stores/pending_offers.hpp"
#include "sync/words.hpp"

namespace snugwalk::cli {
namespace {

struct AnswerTyped {
    std::vector<std::string> words;
    std::string from;
    std::string role = "helper";
    std::string qr;
};

struct EnrollTyped {
    std::vector<std::string> words;
    std::string from;
    std::string code;
    std::string role;
    std::string until;
    std::string name;
};

Result<Answer> answer(Session &session, const AnswerTyped &typed)
{
    const auto offered = bytesTyped(typed.words, typed.from);
    if (!offered)
        return offered.error();
    const auto keys = keysOf(session, true);
    if (!keys)
        return keys.error();
    const auto answered = answerOffer(**session.book(), *keys, *offered, *syncRoleOf(typed.role));
    if (!answered)
        return answered.error();
    const auto show = shown(*answered, typed.qr);
    if (!show)
        return show.error();
    const std::string code = confirmCode(*offered, *answered);
    if (code.empty())
        return Error{Errc::Io, "not enough memory to work out the six digits", "",
                     "close other programs and answer again"};
    return Answer{
        Value::Map{{"answer", show->words},
                   {"code", code},
                   {"device", keys->device.deviceId().text()},
                   {"role_asked", typed.role}},
        show->text + "\nSix digits: " + code +
            "\nThe owner enrolls this device with these words, or the code above, and with the digits, which "
            "you tell them yourself.\nThen add the store you meet at, and sync.\n"};
}

struct Matched {
    PendingOffer pending;
    NewDevice device;
};

Result<Matched> matched(const std::vector<PendingOffer> &standing, const std::string &answer,
                        const LocalTime &now)
{
    Error last{Errc::NotFound, "no offer of this device stands", "",
               "make one with `snugwalk share` or `snugwalk device offer`; it is good for ten minutes"};
    for (const PendingOffer &pending : standing) {
        const auto device = readAnswer(pending.offer, answer, now);
        if (device)
            return Matched{pending, *device};
        last = device.error();
    }
    return last;
}

Result<Answer> enroll(Session &session, const EnrollTyped &typed)
{
    SNUG_TRY(checkUntil(typed.until));
    const auto keys = keysOf(session);
    const auto bytes = bytesTyped(typed.words, typed.from);
    if (!keys || !bytes)
        return keys ? bytes.error() : keys.error();
    Logbook &book = **session.book();
    const auto secrets = keeper();
    const auto standing = pendingOffers(dataFolder(), *secrets, book.now());
    if (!standing)
        return standing.error();
    auto match = matched(*standing, *bytes, book.now());
    if (!match)
        return match.error();
    const auto role = typed.role.empty() ? match->pending.role : syncRoleOf(typed.role);
    if (!role)
        return Error{Errc::Usage, "with which role? the offer left it open", "--role",
                     "owner, helper, technician or viewer"};
    const std::string code = confirmCode(match->pending.offer.bytes, *bytes);
    if (code.empty() || code != typed.code)
        return Error{
            Errc::InvalidInput, "the six digits are not those of this answer", match->device.name,
            "compare them with the new device; if they differ there, somebody else answered: offer again"};
    match->device.role = *role;
    match->device.until = typed.until.empty() ? match->pending.until : typed.until;
    match->device.name = typed.name.empty() ? match->device.name : typed.name;
    SNUG_TRY(enrollDevice(book, *keys, match->pending.rig, match->device));
    SNUG_TRY(dropOffer(dataFolder(), *secrets, match->pending));
    const Id device = Id::fromBytes(blake2b(match->device.publicKey).view().substr(0, 16));
    return Answer{Value::Map{{"device", device.text()},
                             {"name", match->device.name},
                             {"role", slugOf(*role)},
                             {"until", match->device.until},
                             {"rig", match->pending.rig.text()}},
                  device.shortText() + "  " + match->device.name + " belongs to the rig as " +
                      std::string(slugOf(*role)) +
                      (match->device.until.empty() ? "" : ", until " + match->device.until + " (a hint)") +
                      ". Sync here, then there.\n"};
}

void addAnswerCommand(CLI::App &device, Registry &registry)
{
    auto typed = std::make_shared<AnswerTyped>();
    CLI::App *sub =
        device.add_subcommand("answer", "on the new device: answer an owner's offer, and show six digits");
    sub->add_option("offer", typed->words, "the words the owner's device shows");
    sub->add_option("--from", typed->from,
                    "a file with the words, or what a reader of QR codes gave; - for standard input");
    sub->add_option("--role", typed->role, "the role you ask for (the owner decides)")
        ->check(CLI::IsMember({"owner", "helper", "technician", "viewer"}));
    sub->add_option("--qr", typed->qr, "also draw the answer into this .png or .svg");
    registry.add(
        *sub,
        "  snugwalk device answer --from offer.txt\n"
        "  zbarimg --raw --oneshot -Sbinary offer.png | snugwalk device answer --from - --qr answer.png",
        [typed](Session &s) { return answer(s, *typed); });
}

void addEnrollCommand(CLI::App &device, Registry &registry)
{
    auto typed = std::make_shared<EnrollTyped>();
    CLI::App *sub = device.add_subcommand("enroll", "on an owner's device: let in the device that answered");
    sub->add_option("answer", typed->words, "the words the new device shows");
    sub->add_option("--from", typed->from,
                    "a file with the words, or what a reader of QR codes gave; - for standard input");
    sub->add_option("--code", typed->code, "the six digits, as the new device's owner tells you")->required();
    sub->add_option(
           "--role", typed->role,
           "owner (all), helper (appends; accepts no hold, changes no points), technician (the same; mends "
           "of what is licensed need a certificate), viewer (reads); default: that of the offer")
        ->check(CLI::IsMember({"owner", "helper", "technician", "viewer"}));
    sub->add_option("--until", typed->until, "a date shown to all; what ends access is `device revoke`");
    sub->add_option("--name", typed->name, "what to call the device (default: what it calls itself)");
    registry.add(*sub, "  snugwalk device enroll --from answer.txt --code 123456 --role helper",
                 [typed](Session &s) { return enroll(s, *typed); });
}

} // namespace

Status checkUntil(const std::string &until)
{
    if (until.empty() || parseDate(until))
        return done();
    return Error{Errc::Usage, "not a date: \"" + until + "\"", "--until", "write it as 2026-12-24"};
}

void addOfferOptions(CLI::App &command, OfferTyped &into)
{
    command.add_option("--role", into.role, "the role that is offered")
        ->check(CLI::IsMember({"owner", "helper", "technician", "viewer"}));
    command.add_option("--until", into.until, "a date shown to all; what ends access is `device revoke`");
    command.add_option("--qr", into.qr, "also draw the offer into this .png or .svg");
}

Result<Answer> offer(Session &session, const Id &rig, const OfferTyped &typed)
{
    SNUG_TRY(checkUntil(typed.until));
    const auto keys = keysOf(session);
    if (!keys)
        return keys.error();
    Logbook &book = **session.book();
    const auto made = makeOffer(book, *keys, rig);
    if (!made)
        return made.error();
    const auto show = shown(made->bytes, typed.qr);
    if (!show)
        return show.error();
    const auto secrets = keeper();
    SNUG_TRY(
        keepOffer(dataFolder(), *secrets, {*made, rig, syncRoleOf(typed.role), typed.until, book.now()}));
    return Answer{Value::Map{{"rig", rig.text()},
                             {"offer", show->words},
                             {"role", typed.role.empty() ? Value() : Value(typed.role)},
                             {"until", typed.until}},
                  show->text +
                      "\nGood for ten minutes and one device. Show it to nobody else; on the new device:\n"
                      "  snugwalk device answer WORDS\n"};
}

void addOfferCommands(CLI::App &device, Registry &registry)
{
    auto typed = std::make_shared<OfferTyped>();
    CLI::App *sub =
        device.add_subcommand("offer", "on an owner's device: offer another one a place in a shared rig");
    addOfferOptions(*sub, *typed);
    registry.add(*sub, "  snugwalk device offer --role owner\n  snugwalk device offer --qr offer.svg",
                 [typed](Session &s) -> Result<Answer> {
                     const auto book = s.book();
                     if (!book)
                         return book.error();
                     const auto rig = sharedRig(s);
                     return rig ? offer(s, *rig, *typed) : rig.error();
                 });
    addAnswerCommand(device, registry);
    addEnrollCommand(device, registry);
}

} // namespace snugwalk::cli
