// SPDX-License-Identifier: Apache-2.0
// Reading a store whole: every file by its own hash, and what this logbook has against what lies there.
#include <algorithm>

#include "base/text.hpp"
#include "logbook/query.hpp"
#include "sync/blob.hpp"
#include "sync/exchange.hpp"
#include "sync/segment.hpp"

namespace snugwalk {
namespace {

// Reads every file below one rig's folder; what a file is, its folder says.
class StoreCheck {
public:
    StoreCheck(Logbook &book, const Keys &keys, Store &store, const Id &rig)
        : m_book(book), m_keys(keys), m_store(store), m_rig(rig), m_folder(rigFolder(rig))
    {}

    Status run(std::vector<std::string> &faults)
    {
        m_faults = &faults;
        const auto members = membersOf(m_book, m_rig);
        if (!members)
            return members.error();
        m_open = openKeys(*members, m_keys);
        SNUG_TRY(namePhotos());
        for (const char *kind : {"c", "s", "m", "b"}) {
            const auto folders = m_store.list(m_folder + "/" + kind);
            if (!folders)
                return folders.error();
            for (const StoreFile &folder : *folders) {
                if (folder.name.ends_with('/'))
                    SNUG_TRY(readFolder(*kind, m_folder + "/" + kind + "/" +
                                                   folder.name.substr(0, folder.name.size() - 1)));
            }
        }
        return missing();
    }

private:
    void tell(const std::string &file, const std::string &what) { m_faults->push_back(file + ": " + what); }

    Status namePhotos()
    {
        const auto photos = photosOf(m_book, m_rig);
        if (!photos)
            return photos.error();
        for (const Photo &photo : *photos) {
            const auto hash = Hash::parse(photo.hash);
            for (const auto &[name, key] : m_open.all) {
                if (hash)
                    m_photos.emplace(manifestName(key, *hash), std::make_pair(*hash, key));
            }
        }
        return done();
    }

    Status readFolder(char kind, const std::string &folder)
    {
        const auto files = m_store.list(folder);
        if (!files)
            return files.error();
        for (const StoreFile &file : *files) {
            const std::string path = folder + "/" + file.name;
            const auto bytes = m_store.read(path, static_cast<std::int64_t>(maxSegmentBytes));
            if (!bytes && (bytes.error().code == Errc::Io || bytes.error().code == Errc::Network))
                return bytes.error();
            if (!bytes)
                tell(path, bytes.error().what);
            else
                look(kind, path, file.name.substr(0, file.name.find('.')), *bytes);
        }
        return done();
    }

    void look(char kind, const std::string &path, const std::string &what, const std::string &bytes)
    {
        if (kind == 'm')
            return lookAtManifest(path, what, bytes);
        const std::string told = kind == 'b' ? what : what.substr(what.find('-') + 1);
        const Hash hash = blake2b(bytes);
        if (told.size() < 20 || !hash.text().starts_with(told))
            return tell(path, "its bytes are not those it was published with");
        m_whole.insert(hash);
        if (kind == 'c') {
            const auto record = readControl(bytes);
            if (!record)
                tell(path, record.error().what);
        } else if (kind == 's') {
            lookAtSegment(path, bytes);
        }
    }

    void lookAtSegment(const std::string &path, const std::string &bytes)
    {
        const auto head = readSegmentHead(bytes);
        if (!head)
            return tell(path, head.error().what);
        const auto key = m_open.all.find(head->epoch);
        if (key == m_open.all.end() || head->reader > segmentVersion)
            return; // of a device nobody enrolled, or of a newer version: signed, and that is all we can say
        const auto entries = openSegment(bytes, key->second);
        if (!entries)
            tell(path, entries.error().what);
    }

    void lookAtManifest(const std::string &path, const std::string &what, const std::string &bytes)
    {
        const auto known = m_photos.find(what);
        if (known == m_photos.end())
            return; // of a photo whose entry has not come yet
        const auto manifest = openManifest(known->second.second, known->second.first, bytes);
        if (!manifest)
            return tell(path, manifest.error().what + ", photo " + known->second.first.text());
        m_manifests.push_back(*manifest);
    }

    Status missing()
    {
        const auto controls = controlsOf(m_book, m_rig);
        const auto segments = segmentsOf(m_book, m_rig);
        if (!controls || !segments)
            return controls ? segments.error() : controls.error();
        for (const std::string &bytes : *controls) {
            if (m_whole.count(blake2b(bytes)) == 0)
                tell(m_folder + "/c",
                     "record " + blake2b(bytes).text().substr(0, 20) + " is not in the store");
        }
        for (const KeptSegment &segment : *segments) {
            if (m_whole.count(segment.facts.hash) == 0)
                tell(m_folder + "/s/" + toHex(segment.facts.stream.bytes()),
                     "file " + std::to_string(segment.facts.counter) + " is not in the store");
        }
        for (const PhotoManifest &manifest : m_manifests) {
            const bool isWhole = std::all_of(manifest.chunks.begin(), manifest.chunks.end(),
                                             [&](const Hash &chunk) { return m_whole.count(chunk) > 0; });
            if (!isWhole)
                tell(m_folder + "/b", "pieces of photo " + manifest.photo.text() + " are missing");
        }
        return done();
    }

    Logbook &m_book;
    const Keys &m_keys;
    Store &m_store;
    Id m_rig;
    std::string m_folder;
    RigKeys m_open;
    std::map<std::string, std::pair<Hash, Secret>> m_photos;
    std::vector<PhotoManifest> m_manifests;
    std::set<Hash> m_whole;
    std::vector<std::string> *m_faults = nullptr;
};

} // namespace

Result<std::vector<std::string>> checkStore(Logbook &book, const Keys &keys, Store &store)
{
    const auto rigs = sharedRigs(book);
    if (!rigs)
        return rigs.error();
    std::vector<std::string> faults;
    for (const auto &rig : *rigs)
        SNUG_TRY(StoreCheck(book, keys, store, rig.first).run(faults));
    return faults;
}

} // namespace snugwalk
