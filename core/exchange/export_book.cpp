// SPDX-License-Identifier: Apache-2.0
// Rows to lines, lines and photos to an archive, the archive checked, then named.
#include "exchange/export_book.hpp"

#include <map>
#include <set>

#include "base/text.hpp"
#include "exchange/archive_names.hpp"
#include "exchange/check_export.hpp"
#include "exchange/entry_line.hpp"
#include "exchange/export_scope.hpp"
#include "exchange/manifest.hpp"
#include "exchange/sharing_lines.hpp"
#include "exchange/whole_file.hpp"
#include "exchange/zip_reader.hpp"
#include "exchange/zip_writer.hpp"
#include "logbook/files.hpp"
#include "logbook/image_codec.hpp"
#include "logbook/photo_store.hpp"
#include "logbook/query.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;
using sqlite::Connection;
using sqlite::Statement;

constexpr std::string_view readme =
    R"(This is a Snugwalk logbook: what people looked at, found and mended on a rig, in open formats.

manifest.json   who wrote (streams and their Ed25519 public keys), every other file with its size and
                BLAKE2b-256 (`b2sum -l 256 FILE` prints the same)
entries.jsonl   the log: one JSON object a line (RFC 8259), in order of time. Each sets `fields` of one
                `entity`; `prev` names the entries it replaces; null takes a field away. `hash` is
                BLAKE2b-256 of the hash before it in the same `stream` (32 zero bytes before the first)
                and of the entry as deterministic CBOR.
things.jsonl    what the log says now: one JSON object a line, by type. For reading; an import makes it anew.
sharing.jsonl   only where a rig is shared: who belongs to it (signed records), which signed file carried which
                entries, which entries are set aside and why. No private key and no password is in it.
photos/         the pictures byte for byte as they were taken, named by their BLAKE2b-256
thumbnails/     small pictures of those whose original is on another device

The photos and entries hold times and positions as they were taken. Give this file only to people who
may know them.
)";

// What is collected under the lock.
struct Content {
    Manifest manifest;
    std::string entries;
    std::string things;
    std::string sharing;
    std::int64_t sharedRigs = 0;
    std::set<Hash> photos;
};

struct Scope {
    bool isAll = true;
    std::set<Id> entities;
    [[nodiscard]] bool has(const Id &entity) const { return isAll || entities.count(entity) > 0; }
};

Status collectStreams(Connection &db, Content &content)
{
    Result<Statement> rows = db.prepare("SELECT name, public_key, label, partial FROM stream ORDER BY name");
    if (!rows)
        return rows.error();
    return rows->each([&]() -> Status {
        const Result<StreamId> name = streamFromBytes(rows->bytes(0));
        if (!name)
            return name.error();
        content.manifest.streams.push_back({*name, rows->bytes(1), rows->text(2), rows->integer(3) != 0});
        return done();
    });
}

void notePhoto(std::string_view bytes, Content &content)
{
    const Result<Value> entry = decodeCbor(bytes);
    if (!entry || (*entry)["type"].asString() != "photo")
        return;
    const auto hash = Hash::parse((*entry)["fields"]["hash"].asString().value_or(""));
    if (hash)
        content.photos.insert(*hash);
}

// The entry before in its stream.
struct Last {
    Hash hash;
    bool isOut = false; ///< of this export
};

// What the line must name so that its hash can be computed from the export alone. An entry that came by
// itself, without the one before it in its stream, has the hash of an entry with nothing before.
Result<std::optional<Hash>> previousOf(const Last &before, std::string_view bytes, const Hash &hash)
{
    if (chainHash(before.hash, bytes) == hash)
        return before.isOut ? std::optional(before.hash) : std::nullopt;
    if (chainHash(Hash{}, bytes) == hash)
        return std::optional(Hash{});
    return Error{Errc::Corrupt, "an entry whose hash is not that of its bytes", "", "run `snugwalk check`"};
}

Status collectEntries(Connection &db, const Scope &scope, Content &content)
{
    Result<Statement> rows =
        db.prepare("SELECT stream, seq, bytes, hash, entity FROM entry JOIN stream ON stream.id = "
                   "entry.stream ORDER BY hlc, name, seq");
    if (!rows)
        return rows.error();
    std::map<std::int64_t, Last> last;
    return rows->each([&]() -> Status {
        Last &before = last[rows->integer(0)];
        const bool isIn = scope.has(Id::fromBytes(rows->bytes(4)));
        const Hash hash = Hash::fromBytes(rows->bytes(3)).value_or(Hash{});
        if (isIn) {
            const std::string bytes = rows->bytes(2);
            const Result<std::optional<Hash>> previous = previousOf(before, bytes, hash);
            if (!previous)
                return previous.error();
            const Result<std::string> line = lineOf(bytes, hash, *previous);
            if (!line)
                return line.error();
            if (line->size() > maxLineBytes)
                return Error{Errc::Unsupported, "an entry of more than 8 MiB", "", "use a backup instead"};
            content.entries += *line + "\n";
            ++content.manifest.entries;
            notePhoto(bytes, content);
        }
        before = {hash, !isIn};
        return done();
    });
}

Status collectThings(Connection &db, const Scope &scope, Content &content)
{
    Result<Statement> rows = db.prepare("SELECT id, type, doc FROM thing ORDER BY type, sort, id");
    if (!rows)
        return rows.error();
    return rows->each([&]() -> Status {
        const Id id = Id::fromBytes(rows->bytes(0));
        if (!scope.has(id))
            return done();
        Result<Value> doc = decodeCbor(rows->bytes(2));
        if (!doc)
            return doc.error();
        content.things +=
            toJson(Value::Map{{"id", id.text()}, {"type", rows->text(1)}, {"fields", std::move(doc).value()}},
                   false) +
            "\n";
        return done();
    });
}

Status collectSharing(Logbook &book, const Id &rig, Content &content)
{
    const auto sharing = sharingOf(book, rig);
    if (!sharing)
        return sharing.error();
    content.sharedRigs = static_cast<std::int64_t>(sharing->rigs.size());
    if (sharing->isEmpty())
        return done();
    auto text = sharingText(book, *sharing);
    if (!text)
        return text.error();
    content.sharing = std::move(text).value();
    return done();
}

// As of one moment: nobody writes between the parts.
Result<Content> collect(Logbook &book, const Id &rig)
{
    Result<sqlite::Transaction> transaction = sqlite::Transaction::begin(book.db()); // rolled back at the end
    if (!transaction)
        return transaction.error();
    Scope scope;
    if (!rig.isNull()) {
        const Result<Rig> known = rigOf(book, rig);
        if (!known)
            return known.error();
        Result<std::set<Id>> entities = entitiesOfRig(book.db(), rig);
        if (!entities)
            return entities.error();
        scope = {false, std::move(entities).value()};
    }
    Content content;
    content.manifest.made = formatLocal(book.now());
    content.manifest.rig = rig;
    SNUG_TRY(collectStreams(book.db(), content));
    SNUG_TRY(collectEntries(book.db(), scope, content));
    SNUG_TRY(collectThings(book.db(), scope, content));
    SNUG_TRY(collectSharing(book, rig, content));
    return content;
}

class Packing {
public:
    Packing(ZipWriter writer, Content content) : m_writer(std::move(writer)), m_content(std::move(content)) {}

    Status addPhotos(const fs::path &folder, ExportReport &report)
    {
        for (const Hash &hash : m_content.photos) {
            Status added = addPhoto(folder, hash);
            if (added) {
                ++report.photos;
                continue;
            }
            if (added.error().code != Errc::NotFound && added.error().code != Errc::Corrupt)
                return added;
            m_content.manifest.missingPhotos.push_back(hash);
            SNUG_TRY(addThumbnail(folder, hash));
            report.missing.push_back("photo " + hash.text() + ": " + added.error().what);
        }
        return done();
    }

    Status finish()
    {
        SNUG_TRY(addText(readmeName, std::string(readme)));
        SNUG_TRY(addText(entriesName, std::move(m_content.entries)));
        SNUG_TRY(addText(thingsName, std::move(m_content.things)));
        if (!m_content.sharing.empty())
            SNUG_TRY(addText(sharingName, std::move(m_content.sharing)));
        SNUG_TRY(m_writer.addBytes(std::string(manifestName), manifestText(m_content.manifest)));
        return m_writer.close(emptySeal());
    }

private:
    Status addText(std::string_view name, std::string bytes)
    {
        note(std::string(name), bytes.size(), blake2b(bytes));
        return m_writer.addBytes(std::string(name), std::move(bytes));
    }

    Status addPhoto(const fs::path &folder, const Hash &hash)
    {
        for (const char *ending : {".jpg", ".png"}) {
            const fs::path file = folder / hash.text().substr(0, 2) / (hash.text() + ending);
            const Result<std::string> bytes = readFile(file, maxPhotoBytes);
            if (!bytes && bytes.error().code == Errc::NotFound)
                continue;
            if (!bytes)
                return bytes.error();
            if (blake2b(*bytes) != hash)
                return Error{Errc::Corrupt, "its file is damaged on this device", file.string(), ""};
            const std::string name = photoMemberName(hash, ending);
            note(name, bytes->size(), hash);
            return m_writer.addFile(name, file);
        }
        return Error{Errc::NotFound, "its file is not on this device", "", ""};
    }

    Status addThumbnail(const fs::path &folder, const Hash &hash)
    {
        Result<std::string> bytes = PhotoStore(folder).thumbnail(hash);
        return bytes ? addText(thumbnailMemberName(hash), std::move(bytes).value()) : done();
    }

    void note(const std::string &name, std::size_t size, const Hash &hash)
    {
        m_content.manifest.files.push_back({name, static_cast<std::int64_t>(size), hash});
    }

    ZipWriter m_writer;
    Content m_content;
};

Result<ExportReport> write(Logbook &book, const std::string &part, Content content)
{
    ExportReport report;
    report.entries = content.manifest.entries;
    report.streams = static_cast<std::int64_t>(content.manifest.streams.size());
    report.sharedRigs = content.sharedRigs;
    if (content.photos.size() > maxZipMembers - 5)
        return Error{Errc::Unsupported, "more photos than one archive takes", part,
                     "export one rig at a time"};
    Result<ZipWriter> writer = ZipWriter::create(part, book.now().instant);
    if (!writer)
        return writer.error();
    Packing packing(std::move(writer).value(), std::move(content));
    SNUG_TRY(packing.addPhotos(book.photoFolder(), report));
    SNUG_TRY(packing.finish());
    SNUG_TRY(sealFile(part));
    const Result<ExportCheck> check = checkExport(part);
    if (!check)
        return check.error();
    if (!check->faults.empty())
        return Error{Errc::Io, "what was written reads back differently: " + check->faults.front(), part,
                     "try again, or choose another disk"};
    return report;
}

} // namespace

Result<ExportReport> exportLogbook(Logbook &book, const std::string &target, const Id &rig)
{
    std::error_code fault;
    if (fs::exists(target, fault))
        return Error{Errc::Conflict, "something is there already", target, "give a name that is not taken"};
    Result<Content> content = collect(book, rig);
    if (!content)
        return content.error();
    const std::string part = target + std::string(partMark) + toHex(randomBytes(6));
    Result<ExportReport> report = write(book, part, std::move(content).value());
    if (report) {
        const Status published = publishFile(part, target);
        if (published)
            return report;
        report = published.error();
    }
    fs::remove(part, fault);
    Error error = report.error();
    error.where = error.where == part ? target : error.where;
    return error;
}

} // namespace snugwalk
