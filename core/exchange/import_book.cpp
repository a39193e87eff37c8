// SPDX-License-Identifier: Apache-2.0
// Archive, manifest, lines, chain; then entries and photos in one transaction.
#include "exchange/import_book.hpp"

#include <map>
#include <set>

#include "exchange/archive_names.hpp"
#include "exchange/check_export.hpp"
#include "exchange/manifest.hpp"
#include "exchange/sharing_lines.hpp"
#include "exchange/zip_reader.hpp"
#include "logbook/photo_store.hpp"

namespace snugwalk {
namespace {

constexpr std::uint64_t maxEntriesBytes = std::uint64_t{1} << 30;
constexpr std::uint64_t maxThumbnail = std::uint64_t{32} << 10;

// The members that matter, by what they are.
struct Contents {
    const ZipMember *manifest = nullptr;
    const ZipMember *entries = nullptr;
    const ZipMember *sharing = nullptr;
    std::map<Hash, const ZipMember *> photos;
    std::map<Hash, const ZipMember *> thumbnails;
};

struct Lines {
    std::vector<ForeignEntry> entries;
    std::set<Hash> photos; ///< that they name
};

Error atFile(Error error, const std::string &file)
{
    error.where = error.where.empty() ? file : file + ", " + error.where;
    return error;
}

// Every name is looked at before any byte is taken out.
Result<Contents> sort(const ZipReader &archive, ImportReport &report)
{
    Contents contents;
    for (const ZipMember &member : archive.members()) {
        const Result<MemberName> name = memberName(member.name);
        if (!name)
            return name.error();
        if (name->kind == MemberKind::Manifest)
            contents.manifest = &member;
        else if (name->kind == MemberKind::Entries)
            contents.entries = &member;
        else if (name->kind == MemberKind::Sharing)
            contents.sharing = &member;
        else if (name->kind == MemberKind::Photo)
            contents.photos.emplace(name->photo, &member);
        else if (name->kind == MemberKind::Thumbnail)
            contents.thumbnails.emplace(name->photo, &member);
        else if (name->kind == MemberKind::Other)
            report.notes.push_back(member.name + ": not a part of an export, left out");
    }
    if (contents.manifest == nullptr || contents.entries == nullptr)
        return Error{Errc::InvalidInput, "this is not a logbook's export",
                     contents.manifest == nullptr ? "manifest.json is missing" : "entries.jsonl is missing",
                     "give the file that `snugwalk export` wrote"};
    return contents;
}

Status checkHash(const Manifest &manifest, std::string_view name, const std::string &bytes)
{
    for (const ManifestFile &file : manifest.files) {
        if (file.name == name && file.hash == blake2b(bytes))
            return done();
    }
    return Error{Errc::Corrupt, "the lines are not those that the manifest names", std::string(name),
                 "run `snugwalk check --export` on it; fetch the file again from where it was made"};
}

void notePhoto(const std::string &bytes, std::set<Hash> &photos)
{
    const Result<Entry> entry = entryFromBytes(bytes);
    if (!entry || entry->type != "photo")
        return;
    const auto field = entry->fields.find("hash");
    const auto hash =
        field == entry->fields.end() ? std::nullopt : Hash::parse(field->second.asString().value_or(""));
    if (hash)
        photos.insert(*hash);
}

Result<Lines> readLines(std::string_view text)
{
    Lines lines;
    ChainFollower chain;
    std::int64_t number = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        const std::string where = "entries.jsonl line " + std::to_string(++number);
        Result<EntryLine> line = entryFromLine(text.substr(0, end));
        if (!line)
            return atFile(line.error(), where);
        const Status followed = chain.follow(*line);
        if (!followed)
            return atFile(followed.error(), where);
        notePhoto(line->entry.bytes, lines.photos);
        lines.entries.push_back(std::move(line->entry));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return lines;
}

class PhotoImport {
public:
    PhotoImport(const ZipReader &archive, const Contents &contents, const ImageCodec &codec, PhotoStore store)
        : m_archive(archive), m_contents(contents), m_codec(codec), m_store(std::move(store))
    {}

    Status bring(const std::set<Hash> &wanted, ImportReport &report)
    {
        for (const Hash &hash : wanted) {
            const std::string name = "photo " + hash.text();
            const auto member = m_contents.photos.find(hash);
            if (m_store.verify(hash)) {
                ++report.photosKnown;
            } else if (member == m_contents.photos.end()) {
                SNUG_TRY(addThumbnail(hash));
                report.missing.push_back(name + ": fetch it from the device that took it");
            } else if (const Status added = add(hash, *member->second); added) {
                ++report.photosAdded;
            } else if (added.error().code == Errc::Io || added.error().code == Errc::NotFound) {
                return added;
            } else {
                report.notes.push_back(name + ": left out, " + added.error().what);
            }
        }
        for (const auto &[hash, member] : m_contents.photos) {
            if (wanted.count(hash) == 0)
                report.notes.push_back("photo " + hash.text() + ": no entry names it, left out");
        }
        return done();
    }

private:
    Status add(const Hash &hash, const ZipMember &member)
    {
        const Result<std::string> bytes = m_archive.read(member, maxPhotoBytes);
        if (!bytes)
            return bytes.error();
        if (blake2b(*bytes) != hash)
            return Error{Errc::Corrupt, "its bytes are not what its name says", "", ""};
        const Result<PhotoFacts> kept = m_store.add(*bytes, m_codec);
        return kept ? done() : Status(kept.error());
    }

    // Of an original that is elsewhere: it is shown until that comes.
    Status addThumbnail(const Hash &hash)
    {
        const auto member = m_contents.thumbnails.find(hash);
        if (member == m_contents.thumbnails.end() || m_store.hasThumbnail(hash))
            return done();
        const Result<std::string> bytes = m_archive.read(*member->second, maxThumbnail);
        const Status kept = bytes ? m_store.keepThumbnail(hash, *bytes) : Status(bytes.error());
        return !kept && kept.error().code == Errc::Io ? kept : done();
    }

    const ZipReader &m_archive;
    const Contents &m_contents;
    const ImageCodec &m_codec;
    PhotoStore m_store;
};

Result<Sharing> readSharing(const ZipReader &archive, const ZipMember *member, const Manifest &manifest)
{
    Sharing sharing;
    if (member == nullptr)
        return sharing;
    const Result<std::string> text = archive.read(*member, maxEntriesBytes);
    if (!text)
        return text.error();
    SNUG_TRY(checkHash(manifest, sharingName, *text));
    std::int64_t number = 0;
    for (std::string_view rest = *text; !rest.empty();) {
        const std::size_t end = std::min(rest.find('\n'), rest.size());
        ++number;
        const Status added = addSharingLine(rest.substr(0, end), sharing);
        if (!added)
            return atFile(added.error(), "sharing.jsonl line " + std::to_string(number));
        rest.remove_prefix(std::min(end + 1, rest.size()));
    }
    return sharing;
}

Result<ImportReport> importFrom(Logbook &book, const ZipReader &archive, const ImageCodec &codec)
{
    ImportReport report;
    const Result<Contents> contents = sort(archive, report);
    if (!contents)
        return contents.error();
    const Result<std::string> manifestBytes = archive.read(*contents->manifest, maxManifestBytes);
    if (!manifestBytes)
        return manifestBytes.error();
    const Result<Manifest> manifest = readManifest(*manifestBytes);
    if (!manifest)
        return manifest.error();
    const Result<std::string> text = archive.read(*contents->entries, maxEntriesBytes);
    if (!text)
        return text.error();
    SNUG_TRY(checkHash(*manifest, entriesName, *text));
    const Result<Sharing> sharing = readSharing(archive, contents->sharing, *manifest);
    if (!sharing)
        return sharing.error();
    Result<Lines> lines = readLines(*text);
    if (!lines)
        return lines.error();
    PhotoImport photos(archive, *contents, codec, PhotoStore(book.photoFolder()));
    const auto beforeCommit = [&]() -> Status {
        SNUG_TRY(takeSharing(book, *sharing));
        return photos.bring(lines->photos, report);
    };
    const Result<ImportCount> count =
        importEntries(book, manifest->streams, std::move(lines->entries), beforeCommit);
    if (!count)
        return count.error();
    report.entriesAdded = count->added;
    report.entriesKnown = count->known;
    report.streamsAdded = count->streams;
    report.sharedRigs = static_cast<std::int64_t>(sharing->rigs.size());
    report.mustReopen = count->mustReopen;
    return report;
}

} // namespace

Result<ImportReport> importLogbook(Logbook &book, const std::string &file, const ImageCodec &codec)
{
    const Result<ZipReader> archive = ZipReader::open(file, ZipReader::Agreement::Full);
    if (!archive)
        return archive.error();
    Result<ImportReport> report = importFrom(book, *archive, codec);
    return report ? report : Result<ImportReport>(atFile(report.error(), file));
}

} // namespace snugwalk
