// SPDX-License-Identifier: Apache-2.0
// Fills a folder as an owner's device does, and prints what a reader needs to open it: sync_writer FOLDER.
#include <cstdio>
#include <filesystem>

#include "base/text.hpp"
#include "logbook/acts.hpp"
#include "logbook/photo_store.hpp"
#include "sync/exchange.hpp"
#include "sync/folder_store.hpp"
#include "sync/secret_file.hpp"

using namespace snugwalk;

int main(int argc, char **argv)
{
    if (argc != 2)
        return 2;
    const std::filesystem::path folder = argv[1];
    std::filesystem::create_directories(folder / "store");
    const SystemClock clock;
    RandomIds ids;
    const DeviceKey device = DeviceKey::random();
    Logbook book =
        Logbook::open((folder / "book.snug").string(), {device, "writer", &clock, &ids, true}).value();
    const Id rig = ids.next();
    Act act;
    act.by = "somebody";
    act.changes = {{rig, "rig", {{"name", "rig"}}}};
    for (int i = 0; i < 500; ++i)
        act.changes.push_back(
            {ids.next(), "trip", {{"rig", rig.text()}, {"title", "trip " + std::to_string(i)}}});
    SNUG_ASSERT(book.record(act).has_value());
    std::string photo("\xff\xd8\xff\xda\x00\x02", 6);
    photo += std::string(1'500'000, 'p') + "\xff\xd9";
    PhotoStore photos(book.photoFolder());
    SNUG_ASSERT(photos.keepOriginal(blake2b(photo), photo).has_value());
    Photo entry;
    entry.rig = rig;
    entry.hash = blake2b(photo).text();
    SNUG_ASSERT(addPhoto(book, entry, {"somebody", std::nullopt, std::nullopt}).has_value());
    const Keys keys(device);
    SNUG_ASSERT(shareRig(book, keys, rig).has_value());
    FolderStore store(folder / "store");
    SNUG_ASSERT(exchange(book, keys, store).has_value());
    const RigKeys open = openKeys(membersOf(book, rig).value(), keys);
    const Secret secret = Secret::fromBytes(device.seed()).value();
    SNUG_ASSERT(writeSecretFile(folder / "secret", secret, "a passphrase").has_value());
    std::printf("%s\n", toJson(Value::Map{{"rig", rig.text()},
                                          {"seed", toHex(device.seed())},
                                          {"epoch", toHex(open.all.at(open.latest).view())},
                                          {"photo", blake2b(photo).text()}},
                               false)
                            .c_str());
    return 0;
}
