// SPDX-License-Identifier: Apache-2.0
// Writes the corpus of fuzz_entry, fuzz_segment and fuzz_control: make_sync_corpus <folder of corpora>.
// The same files each time: no random nonce and no clock is in them.
#include <filesystem>
#include <fstream>

#include "sync/columns.hpp"
#include "sync/control.hpp"
#include "sync/squeeze.hpp"
#include "sync_bytes.hpp"

using namespace snugwalk;

namespace {

std::filesystem::path top;

void keep(const std::string &name, std::string_view bytes)
{
    std::filesystem::create_directories((top / name).parent_path());
    std::ofstream(top / name, std::ios::binary) << bytes;
}

IncomingEntry entryOf(int n)
{
    Entry entry;
    entry.id = {fuzz::streamOf(fuzz::keyOf('k')), n + 1};
    entry.hlc = (1'773'000'000'000LL + n * 1000) << 16;
    entry.act = Id::fromBytes(std::string(16, 'a'));
    entry.entity = Id::fromBytes(std::string(15, 'e') + static_cast<char>('0' + n % 2));
    entry.type = n == 0 ? "mark" : n == 1 ? "mend" : "thing_of_tomorrow";
    entry.by = "somebody";
    entry.at = {fromMillis(1'773'000'000'000LL + n * 1000), ZoneOffset{780}};
    entry.fields = {{"rig", fuzz::rigId().text()}, {"state", n % 2 ? "pass" : "attention"}, {"n", n}};
    if (n == 1)
        entry.fields = {{"licensed", true}, {"certificate", "G-1"}, {"parts", Value::List{Value(), 1.5}}};
    if (n > 0) {
        entry.prev = {{fuzz::streamOf(fuzz::keyOf('k')), n}};
        entry.scope = Id::fromBytes(std::string(16, 'w'));
        entry.where = GeoPoint{-41.25, 174.75, 12.0, Length::fromSi(8.0)};
    }
    return {entry, canonicalBytes(entry)};
}

void entries()
{
    for (int n = 0; n < 3; ++n)
        keep("entry/" + std::to_string(n) + ".cbor", entryOf(n).bytes);
    Entry undo = entryOf(2).entry;
    undo.undoes = Id::fromBytes(std::string(16, 'u'));
    undo.fields = {{"state", Value()}};
    keep("entry/undo.cbor", canonicalBytes(undo));
}

void segments()
{
    const std::string one = packEntries({entryOf(0)}).value();
    const std::string three = packEntries({entryOf(0), entryOf(1), entryOf(2)}).value();
    const std::string whole = fuzz::segmentAround(squeeze(three), static_cast<std::int64_t>(three.size()), 3);
    keep("segment/whole.bin", "0" + whole);
    keep("segment/payload.bin", "1" + std::string(parseSigned1(whole)->payload));
    keep("segment/squeezed.bin", "2" + squeeze(one));
    keep("segment/plain_inside.bin", "2" + one);
    keep("segment/one.bin", "3" + one);
    keep("segment/three.bin", "3" + three);
    keep("segment/frame.bin", "4" + squeeze(three));
    keep("segment/zeros.bin", "4" + squeeze(std::string(50'000, '\0')));
}

std::string step(char signer, char action, char unseen, const Value::Map &body)
{
    const std::string bytes = encodeCbor(Value(body));
    return std::string{signer, action, unseen, static_cast<char>(bytes.size())} + bytes;
}

void controls()
{
    ControlRecord root;
    root.space = fuzz::rigId();
    root.counter = 1;
    root.at = {fromMillis(1'773'000'000'000LL), ZoneOffset{780}};
    root.action = "found";
    root.body = Value::Map{{"seal", Bytes{std::string(32, 's')}},
                           {"name", "first"},
                           {"epoch", Bytes{std::string(8, '1')}},
                           {"sealed", Value::List{}}};
    const std::string bytes = signControl(fuzz::keyOf('k'), root).bytes;
    keep("control/found.bin", "0" + bytes);
    keep("control/payload.bin", "1" + std::string(parseSigned1(bytes)->payload));
    const auto enroll = [](char key, const char *role) {
        return Value::Map{{"key", Bytes{fuzz::keyOf(key).publicKey()}},
                          {"seal", Bytes{std::string(32, 's')}},
                          {"name", std::string(1, key)},
                          {"role", role}};
    };
    const auto revoke = [](char key, const std::string &last) {
        return Value::Map{{"device", Bytes{std::string(fuzz::keyOf(key).deviceId().view())}},
                          {"reason", "lost"},
                          {"control", Bytes{last}}};
    };
    const std::string none(32, '\0');
    // signers 0 1 2 are k a b; actions 1 enroll 2 revoke 3 epoch 4 adopt 5 of tomorrow
    const char none_unseen = 0;
    keep("control/owners.bin",
         "2" + step(0, 1, none_unseen, enroll('a', "owner")) +
             step(1, 1, none_unseen, enroll('b', "helper")) + step(1, 2, none_unseen, revoke('k', none)) +
             step(0, 2, 1, revoke('a', none)) +
             step(0, 3, none_unseen, {{"epoch", Bytes{std::string(8, '2')}}, {"sealed", Value::List{}}}));
    keep("control/again.bin",
         "2" + step(0, 1, none_unseen, enroll('a', "owner")) + step(0, 2, none_unseen, revoke('a', none)) +
             step(0, 1, none_unseen, enroll('a', "viewer")) + step(1, 1, 2, enroll('b', "owner")) +
             step(0, 1, none_unseen, enroll('k', "helper")) + step(2, 5, none_unseen, {{"x", 1}}));
    keep("control/adopt.bin",
         "2" + step(0, 4, none_unseen,
                    {{"entries", Value::List{Value::Map{{"stream", Bytes{std::string(24, 't')}},
                                                        {"seq", 7},
                                                        {"hash", Bytes{std::string(32, 'h')}}}}}}));
}

} // namespace

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    top = argv[1];
    entries();
    segments();
    controls();
    return 0;
}
