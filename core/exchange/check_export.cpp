// SPDX-License-Identifier: Apache-2.0
// From the whole to its parts: what is wrong is told as near to a person's words as the damage lets us.
#include "exchange/check_export.hpp"

#include <algorithm>
#include <set>

#include "exchange/archive_names.hpp"
#include "exchange/manifest.hpp"
#include "exchange/sharing_lines.hpp"
#include "exchange/whole_file.hpp"
#include "exchange/zip_reader.hpp"
#include "logbook/image_codec.hpp"

namespace snugwalk {
namespace {

constexpr std::uint64_t maxTextBytes = std::uint64_t{1} << 30;

std::string nameOf(const EntryId &id) { return "entry " + id.stream.text() + " " + std::to_string(id.seq); }

class Checking {
public:
    explicit Checking(ExportCheck &report) : m_report(report) {}

    void checkMembers(const ZipReader &archive)
    {
        std::set<std::string> there;
        for (const ZipMember &member : archive.members()) {
            there.insert(member.name);
            const Result<MemberName> name = memberName(member.name);
            if (!name)
                fault(name.error().where + ": " + name.error().what);
            else if (name->kind == MemberKind::Manifest)
                readManifestOf(archive, member);
            else if (name->kind == MemberKind::Other || name->kind == MemberKind::Folder)
                fault(member.name + ": not a part of an export");
        }
        for (const ZipMember &member : archive.members()) {
            const Result<MemberName> name = memberName(member.name);
            if (name && name->kind != MemberKind::Manifest)
                checkMember(archive, member, *name);
        }
        for (const std::string_view needed : {readmeName, manifestName, entriesName, thingsName}) {
            if (there.count(std::string(needed)) == 0)
                fault(std::string(needed) + ": missing");
        }
        if (m_hasManifest && m_report.entries != m_manifest.entries)
            fault("entries.jsonl: " + std::to_string(m_report.entries) + " entries, the manifest says " +
                  std::to_string(m_manifest.entries));
        for (const ManifestFile &file : m_manifest.files) {
            if (there.count(file.name) == 0)
                fault(subject(file.name) + ": missing");
        }
    }

private:
    void fault(std::string text) { m_report.faults.push_back(std::move(text)); }

    static std::string subject(const std::string &name)
    {
        const Result<MemberName> known = memberName(name);
        if (known && known->kind == MemberKind::Thumbnail)
            return "thumbnail of photo " + known->photo.text();
        return known && known->kind == MemberKind::Photo ? "photo " + known->photo.text() : name;
    }

    void readManifestOf(const ZipReader &archive, const ZipMember &member)
    {
        const ZipContent content = archive.readAsFarAsItGoes(member, maxManifestBytes);
        if (content.fault)
            fault(member.name + ": " + content.fault->what);
        Result<Manifest> manifest = readManifest(content.bytes);
        if (!manifest) {
            fault(member.name + ": " + manifest.error().what);
            return;
        }
        m_manifest = std::move(manifest).value();
        m_hasManifest = true;
        m_report.streams = static_cast<std::int64_t>(m_manifest.streams.size());
        for (const ForeignStream &stream : m_manifest.streams) {
            if (!stream.isOnlyNamed() &&
                blake2b(stream.publicKey).view().substr(0, 16) != stream.name.device.view())
                fault("stream " + stream.name.text() + ": its key is not the device's");
        }
    }

    void checkMember(const ZipReader &archive, const ZipMember &member, const MemberName &name)
    {
        const bool isPhoto = name.kind == MemberKind::Photo;
        const ZipContent content = archive.readAsFarAsItGoes(member, isPhoto ? maxPhotoBytes : maxTextBytes);
        if (content.fault)
            fault(subject(member.name) + ": " + content.fault->what);
        if (isPhoto) {
            ++m_report.photos;
            if (blake2b(content.bytes) != name.photo)
                fault(subject(member.name) + ": its bytes are not what its name says");
        }
        if (name.kind == MemberKind::Entries)
            eachLine(content.bytes,
                     [&](std::string_view line, std::int64_t number) { checkLine(line, number); });
        if (name.kind == MemberKind::Sharing)
            eachLine(content.bytes,
                     [&](std::string_view line, std::int64_t number) { checkSharing(line, number); });
        if (m_hasManifest)
            checkAgainstManifest(member.name, content.bytes);
    }

    void checkAgainstManifest(const std::string &name, const std::string &bytes)
    {
        const auto row = std::find_if(m_manifest.files.begin(), m_manifest.files.end(),
                                      [&](const ManifestFile &file) { return file.name == name; });
        if (row == m_manifest.files.end())
            fault(subject(name) + ": the manifest does not know it");
        else if (static_cast<std::uint64_t>(row->size) != bytes.size() || row->hash != blake2b(bytes))
            fault(subject(name) + ": its bytes are not what the manifest says");
    }

    template <typename Check>
    static void eachLine(std::string_view text, const Check &check)
    {
        std::int64_t number = 0;
        while (!text.empty()) {
            const std::size_t end = std::min(text.find('\n'), text.size());
            check(text.substr(0, end), ++number);
            text.remove_prefix(std::min(end + 1, text.size()));
        }
    }

    void checkSharing(std::string_view line, std::int64_t number)
    {
        Sharing ignored; // its signatures and its shown members are what is looked at
        const Status read = addSharingLine(line, ignored);
        if (!read)
            fault("sharing.jsonl line " + std::to_string(number) + ": " + read.error().what);
    }

    void checkLine(std::string_view line, std::int64_t number)
    {
        ++m_report.entries;
        const std::string where = "entries.jsonl line " + std::to_string(number);
        const Result<EntryLine> read = entryFromLine(line);
        if (!read) {
            m_chain.skipDamaged();
            fault("entry on " + where + ": " + read.error().what);
            return;
        }
        const Status followed = m_chain.follow(*read);
        if (!followed)
            fault(nameOf(read->entry.id) + " (" + where + "): " + followed.error().what);
    }

    ExportCheck &m_report;
    Manifest m_manifest;
    bool m_hasManifest = false;
    ChainFollower m_chain;
};

} // namespace

Status ChainFollower::follow(const EntryLine &line)
{
    const ForeignEntry &entry = line.entry;
    const auto found = m_last.find(entry.id.stream);
    const Last before = found == m_last.end() ? Last{} : found->second;
    const bool isNext = entry.id.seq == before.seq + 1;
    const bool mayBeDamaged = m_damaged > before.damaged;
    const Hash computed = chainHash(line.previous.value_or(before.told), entry.bytes);
    m_last[entry.id.stream] = {entry.id.seq, entry.hash, computed, m_damaged};
    if (entry.id.seq <= before.seq)
        return Error{Errc::Corrupt, "it is there twice, or out of order", "", ""};
    if (!isNext && !line.previous) {
        if (mayBeDamaged)
            return done(); // told already; from its own hash on the chain is followed again
        return Error{Errc::NotFound, "the entry before it is missing", "", ""};
    }
    // after an entry whose hash was changed, not its bytes, the chain goes on from the hash it should have
    const bool agrees =
        computed == entry.hash || (!line.previous && chainHash(before.computed, entry.bytes) == entry.hash);
    return agrees ? done() : Status(Error{Errc::Corrupt, "its bytes or hash were changed", "", ""});
}

Result<ExportCheck> checkExport(const std::string &file)
{
    const auto whole = sealFault(file);
    if (!whole)
        return whole.error();
    ExportCheck report;
    Checking checking(report);
    Result<ZipReader> archive = ZipReader::open(file, ZipReader::Agreement::Full);
    if (!archive) {
        report.faults.push_back("the archive: " + archive.error().what);
        archive = ZipReader::open(file, ZipReader::Agreement::Partial);
    }
    if (archive)
        checking.checkMembers(*archive);
    const bool isOnlyTheFrame = report.faults.empty();
    if (*whole)
        report.faults.push_back(**whole +
                                (isOnlyTheFrame ? "; every entry and photo in it is as written" : ""));
    return report;
}

} // namespace snugwalk
