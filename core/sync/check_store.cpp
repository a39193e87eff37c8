// SPDX-License-Identifier: Apache-2.0
// Everything of a rig at a store against its own hash and signature, and against what is here. A damaged file
// of which a whole copy stands under the next name is not told: every reader passes it over.
#include <set>

#include "base/text.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"
#include "sync/blob.hpp"
#include "sync/exchange.hpp"
#include "sync/segment.hpp"
#include "sync/store_names.hpp"
#include "sync/store_view.hpp"

namespace snugwalk {
namespace {

using Lines = std::vector<std::string>;
using Names = std::set<std::string>;

// "entries 4 to 15 of stream 3f2a…", read from the copy that is here.
std::string entriesIn(const std::string &bytes, const RigKeys &keys, const RigMembers &members)
{
    const auto head = readSegmentHead(bytes);
    if (!head)
        return "";
    const Member *writer = members.find(head->facts.stream.device);
    std::string text = std::to_string(head->count) + " entries of " +
                       (writer == nullptr ? head->facts.stream.device.shortText() : writer->name);
    const auto key = keys.all.find(head->epoch);
    const auto entries =
        key == keys.all.end() ? Result<std::vector<IncomingEntry>>(Error{}) : openSegment(bytes, key->second);
    if (entries && !entries->empty())
        text += ", " + entries->front().entry.id.stream.text() + " " +
                std::to_string(entries->front().entry.id.seq) + " to " +
                std::to_string(entries->back().entry.id.seq);
    return text;
}

class StoreCheck {
public:
    StoreCheck(Logbook &book, const Keys &keys, StoreView &view, const Id &rig, Lines &lines)
        : m_book(book), m_keys(keys), m_view(view), m_rig(rig), m_lines(lines)
    {}

    [[nodiscard]] Status run()
    {
        auto members = membersOf(m_book, m_rig);
        if (!members)
            return members.error();
        m_members = std::move(members).value();
        m_open = openKeys(m_members, m_keys);
        SNUG_TRY(controls());
        SNUG_TRY(segments());
        return photos();
    }

private:
    [[nodiscard]] Status controls();
    [[nodiscard]] Status segments();
    [[nodiscard]] Status photos();
    [[nodiscard]] Status photo(const Photo &photo, const Hash &hash);
    [[nodiscard]] Result<Names>
    readAll(const std::string &kind, std::size_t limit, const char *what,
            const std::function<bool(std::string_view, const std::string &)> &fine);

    Logbook &m_book;
    const Keys &m_keys;
    StoreView &m_view;
    Id m_rig;
    Lines &m_lines;
    RigMembers m_members;
    RigKeys m_open;
    std::map<std::string, std::string> m_known; ///< what a file of that hash has, for people
};

// Reads all files below <rig>/<kind>/*/ and tells of those that are damaged; gives the hashes that names
// claim.
Result<Names> StoreCheck::readAll(const std::string &kind, std::size_t limit, const char *what,
                                  const std::function<bool(std::string_view, const std::string &)> &fine)
{
    Names seen;
    const std::string folder = rigFolder(m_rig) + "/" + kind;
    const auto writers = m_view.list(folder);
    if (!writers)
        return writers.error();
    for (const auto &writer : **writers) {
        const std::string path = folder + "/" + writer.first;
        const auto files = m_view.list(path);
        if (!files)
            return files.error();
        for (const auto &file : **files) {
            const std::string hash = claimedHash(file.first);
            const auto bytes = m_view.read(path, file.first, limit, [&](std::string_view found) {
                return blake2b(found).text().substr(0, shortHash) == hash.substr(0, shortHash) &&
                       fine(found, writer.first);
            });
            if (!bytes)
                return bytes.error();
            seen.insert(hash);
            if (*bytes)
                continue;
            const auto known = m_known.find(hash);
            m_lines.push_back(std::string(what) + " " + path + "/" + file.first + " is damaged" +
                              (known == m_known.end() ? "" : ": " + known->second));
        }
    }
    return seen;
}

Status StoreCheck::controls()
{
    const auto kept = controlsOf(m_book, m_rig);
    if (!kept)
        return kept.error();
    const auto seen = readAll("c", maxControlBytes, "record of members",
                              [&](std::string_view bytes, const std::string &device) {
                                  const auto record = readControl(bytes);
                                  return record && record->space == m_rig && record->signer.text() == device;
                              });
    if (!seen)
        return seen.error();
    for (const std::string &bytes : *kept) {
        if (seen->count(blake2b(bytes).text().substr(0, shortHash)) == 0)
            m_lines.emplace_back("a record of members is not at the store");
    }
    return done();
}

Status StoreCheck::segments()
{
    const auto kept = segmentsOf(m_book, m_rig);
    if (!kept)
        return kept.error();
    for (const KeptSegment &segment : *kept) {
        const auto bytes = segmentBytes(m_book, segment.row);
        if (!bytes)
            return bytes.error();
        m_known[segment.facts.hash.text().substr(0, shortHash)] = entriesIn(*bytes, m_open, m_members);
    }
    const auto seen = readAll(
        "s", maxSegmentBytes, "file of entries", [&](std::string_view bytes, const std::string &stream) {
            const auto head = readSegmentHead(bytes);
            return head && head->facts.space == m_rig && toHex(head->facts.stream.bytes()) == stream;
        });
    if (!seen)
        return seen.error();
    for (const auto &[hash, text] : m_known) {
        if (seen->count(hash) == 0)
            m_lines.push_back("a file of entries is not at the store: " + text);
    }
    return done();
}

Status StoreCheck::photo(const Photo &photo, const Hash &hash)
{
    const std::string name = "photo " + photo.id.shortText();
    bool isListed = false;
    for (const auto &[epoch, key] : m_open.all) {
        const std::string what = manifestName(key, hash);
        const std::string folder = rigFolder(m_rig) + "/m/" + what.substr(0, 1);
        const auto listing = m_view.list(folder);
        if (!listing)
            return listing.error();
        if ((*listing)->count(what) == 0)
            continue;
        isListed = true;
        std::optional<PhotoManifest> manifest;
        const auto bytes = m_view.read(folder, what, maxManifest, [&, secret = key](std::string_view found) {
            auto opened = openManifest(secret, hash, found);
            if (opened)
                manifest = std::move(opened).value();
            return manifest.has_value();
        });
        if (!bytes)
            return bytes.error();
        if (!manifest) {
            m_lines.push_back(name + ": its list of pieces is damaged");
            continue;
        }
        for (std::size_t i = 0; i < manifest->chunks.size(); ++i)
            m_known[manifest->chunks[i].text()] =
                name + ", piece " + std::to_string(i + 1) + " of " + std::to_string(manifest->chunks.size());
    }
    if (!isListed && PhotoStore(m_book.photoFolder()).exists(hash))
        m_lines.push_back(name + ": here, not at the store");
    return done();
}

Status StoreCheck::photos()
{
    const auto all = photosOf(m_book, m_rig);
    if (!all)
        return all.error();
    m_known.clear();
    for (const Photo &item : *all) {
        if (const auto hash = Hash::parse(item.hash))
            SNUG_TRY(photo(item, *hash));
    }
    const auto seen = readAll("b", maxSealedChunk, "piece of a photo",
                              [](std::string_view, const std::string &) { return true; });
    if (!seen)
        return seen.error();
    for (const auto &[chunk, text] : m_known) {
        if (seen->count(chunk) == 0)
            m_lines.push_back(text + " is not at the store");
    }
    return done();
}

} // namespace

Result<std::vector<std::string>> checkStore(Logbook &book, const Keys &keys, Store &store)
{
    const auto shared = sharedRigs(book);
    if (!shared)
        return shared.error();
    Lines lines;
    StoreView view(store);
    for (const auto &rig : *shared)
        SNUG_TRY(StoreCheck(book, keys, view, rig.first, lines).run());
    return lines;
}

} // namespace snugwalk
