// SPDX-License-Identifier: Apache-2.0
// Rows of sharing to lines, and lines back to signed bytes.
#include "exchange/sharing_lines.hpp"

#include "base/text.hpp"
#include "exchange/entry_line.hpp"
#include "sync/members.hpp"
#include "sync/segment.hpp"

namespace snugwalk {
namespace {

using sqlite::Connection;
using sqlite::Statement;

Error unreadable(const char *what)
{
    return {Errc::Corrupt, what, "", "fetch the file again from where it was made"};
}

Value::Map lineOfRig(const Id &rig, const Hash &root)
{
    return {{"kind", "rig"}, {"rig", rig.text()}, {"root", root.text()}};
}

Value::Map lineOfRecord(const ControlRecord &record, const std::string &bytes)
{
    Value::List seen;
    for (const Hash &hash : record.seen)
        seen.emplace_back(hash.text());
    return {{"kind", "record"},           {"rig", record.space.text()},   {"hash", record.hash.text()},
            {"by", record.signer.text()}, {"counter", record.counter},    {"prev", record.prev.text()},
            {"seen", std::move(seen)},    {"at", formatLocal(record.at)}, {"action", record.action},
            {"body", record.body},        {"bytes", Bytes{bytes}}};
}

Value::Map lineOfFile(const CarriedFile &file)
{
    Value::List runs;
    for (const EntryRun &run : file.entries)
        runs.emplace_back(Value::List{toHex(run.stream.bytes()), run.first, run.last});
    return {{"kind", "file"},
            {"rig", file.facts.space.text()},
            {"hash", file.facts.hash.text()},
            {"stream", toHex(file.facts.stream.bytes())},
            {"counter", file.facts.counter},
            {"prev", file.facts.prev.text()},
            {"entries", std::move(runs)},
            {"bytes", Bytes{file.bytes}}};
}

Result<Value::Map> lineOfTwin(const TwinEntry &twin)
{
    const auto line = lineOf(twin.bytes, blake2b(twin.bytes), std::nullopt);
    auto entry = line ? parseJson(*line) : Result<Value>(line.error());
    if (!entry)
        return entry.error();
    return Value::Map{{"kind", "twin"},
                      {"file", twin.file == Hash{} ? Value() : Value(twin.file.text())},
                      {"entry", std::move(entry).value()}};
}

// The entries that name the file as theirs, in runs.
Result<std::vector<EntryRun>> runsOf(Connection &db, std::int64_t segment)
{
    Result<Statement> rows =
        db.prepare("SELECT name, seq FROM entry JOIN stream ON stream.id = entry.stream WHERE "
                   "segment = ? ORDER BY name, seq");
    if (!rows)
        return rows.error();
    rows->bind(1, segment);
    std::vector<EntryRun> runs;
    SNUG_TRY(rows->each([&]() -> Status {
        const Result<StreamId> stream = streamFromBytes(rows->bytes(0));
        if (!stream)
            return stream.error();
        const std::int64_t seq = rows->integer(1);
        if (!runs.empty() && runs.back().stream == *stream && runs.back().last + 1 == seq)
            runs.back().last = seq;
        else
            runs.push_back({*stream, seq, seq});
        return done();
    }));
    return runs;
}

Status addRig(Logbook &book, const Id &rig, Sharing &sharing)
{
    const auto controls = controlsOf(book, rig);
    const auto segments = segmentsOf(book, rig);
    if (!controls || !segments)
        return controls ? segments.error() : controls.error();
    for (const std::string &bytes : *controls)
        sharing.records.push_back({rig, blake2b(bytes), bytes});
    for (const KeptSegment &segment : *segments) {
        const auto bytes = segmentBytes(book, segment.row);
        const auto runs = runsOf(book.db(), segment.row);
        if (!bytes || !runs)
            return bytes ? runs.error() : bytes.error();
        sharing.files.push_back({segment.facts, {}, *bytes, *runs});
    }
    return done();
}

Status addTwins(Connection &db, Sharing &sharing)
{
    Result<Statement> rows = db.prepare(
        "SELECT name, seq, twin.bytes, segment.hash FROM twin JOIN stream ON stream.id = twin.stream "
        "LEFT JOIN segment ON segment.id = twin.segment ORDER BY name, seq, twin.hash");
    if (!rows)
        return rows.error();
    return rows->each([&]() -> Status {
        const Result<StreamId> stream = streamFromBytes(rows->bytes(0));
        if (!stream)
            return stream.error();
        sharing.twins.push_back(
            {{*stream, rows->integer(1)}, rows->bytes(2), Hash::fromBytes(rows->bytes(3)).value_or(Hash{})});
        return done();
    });
}

// For who reads the file: what the records come to.
Status tellMembers(Logbook &book, const Id &rig, std::string &text)
{
    const auto members = membersOf(book, rig);
    const auto aside = asideOf(book, rig);
    if (!members || !aside)
        return members ? aside.error() : members.error();
    for (const auto &[device, member] : members->members) {
        const auto role = member.role();
        text += toJson(Value::Map{{"kind", "member"},
                                  {"rig", rig.text()},
                                  {"device", device.text()},
                                  {"name", member.name},
                                  {"role", role ? Value(slugOf(*role)) : Value()},
                                  {"since", formatLocal(member.since)},
                                  {"until", member.accessUntil},
                                  {"reason", member.reason}},
                       false) +
                "\n";
    }
    for (const SetAside &item : *aside)
        text += toJson(Value::Map{{"kind", "aside"},
                                  {"rig", rig.text()},
                                  {"stream", toHex(item.entry.id.stream.bytes())},
                                  {"seq", item.entry.id.seq},
                                  {"reason", item.reason}},
                       false) +
                "\n";
    return done();
}

std::optional<EntryRun> runFrom(const Value &v)
{
    if (v.list().size() != 3)
        return std::nullopt;
    const auto stream = streamFromBytes(fromHex(v.list()[0].asString().value_or("")).value_or(""));
    const auto first = v.list()[1].asInt();
    const auto last = v.list()[2].asInt();
    if (!stream || !first || !last || *first < 1 || *last < *first || *last - *first >= 10'000)
        return std::nullopt;
    return EntryRun{*stream, *first, *last};
}

Status addRecord(const Value &v, const std::string &bytes, Sharing &sharing)
{
    const auto record = readControl(bytes);
    if (!record)
        return record.error();
    if (toJson(Value(lineOfRecord(*record, bytes)), false) != toJson(v, false))
        return unreadable("a record of members that shows something else than its bytes say");
    sharing.records.push_back({record->space, record->hash, bytes});
    return done();
}

Status addFile(const Value &v, const std::string &bytes, Sharing &sharing)
{
    const auto head = readSegmentHead(bytes);
    if (!head)
        return head.error();
    CarriedFile file{head->facts, head->publicKey, bytes, {}};
    for (const Value &item : v["entries"].list()) {
        const auto run = runFrom(item);
        if (!run)
            return unreadable("a file of entries whose numbers cannot be read");
        file.entries.push_back(*run);
    }
    if (toJson(Value(lineOfFile(file)), false) != toJson(v, false))
        return unreadable("a file of entries that shows something else than its bytes say");
    sharing.files.push_back(std::move(file));
    return done();
}

Status addTwin(const Value &v, Sharing &sharing)
{
    const auto entry = entryFromLine(toJson(v["entry"], false));
    if (!entry)
        return entry.error();
    TwinEntry twin{entry->entry.id, entry->entry.bytes,
                   Hash::parse(v["file"].asString().value_or("")).value_or(Hash{})};
    const auto again = lineOfTwin(twin);
    if (!again || toJson(Value(*again), false) != toJson(v, false))
        return unreadable("a twin of an entry that shows something else than its bytes say");
    sharing.twins.push_back(std::move(twin));
    return done();
}

} // namespace

Result<Sharing> sharingOf(Logbook &book, const Id &rig)
{
    const auto shared = sharedRigs(book);
    if (!shared)
        return shared.error();
    Sharing sharing;
    for (const auto &item : *shared) {
        if (!rig.isNull() && item.first != rig)
            continue;
        sharing.rigs.push_back(item);
        SNUG_TRY(addRig(book, item.first, sharing));
    }
    if (rig.isNull()) // a twin may be of any rig
        SNUG_TRY(addTwins(book.db(), sharing));
    return sharing;
}

Result<std::string> sharingText(Logbook &book, const Sharing &sharing)
{
    std::string text;
    const auto add = [&](const Value::Map &line) { text += toJson(Value(line), false) + "\n"; };
    for (const auto &[rig, root] : sharing.rigs)
        add(lineOfRig(rig, root));
    for (const SharedRecord &item : sharing.records) {
        const auto record = readKeptControl(item.bytes);
        if (!record)
            return record.error();
        add(lineOfRecord(*record, item.bytes));
    }
    for (const CarriedFile &file : sharing.files)
        add(lineOfFile(file));
    for (const TwinEntry &twin : sharing.twins) {
        const auto line = lineOfTwin(twin);
        if (!line)
            return line.error();
        add(*line);
    }
    for (const auto &item : sharing.rigs)
        SNUG_TRY(tellMembers(book, item.first, text));
    return text;
}

Status addSharingLine(std::string_view line, Sharing &sharing)
{
    if (line.size() > maxSharingLine)
        return Error{Errc::OutOfRange, "a line of more than 20 MiB", "", "ask who made this file"};
    const Result<Value> v = parseJson(line);
    const auto kind = v ? (*v)["kind"].asString() : std::nullopt;
    if (!kind)
        return unreadable("a line that is no JSON object of a kind");
    if (*kind == "rig") {
        const auto rig = Id::parse((*v)["rig"].asString().value_or(""));
        const auto root = Hash::parse((*v)["root"].asString().value_or(""));
        if (!rig || !root)
            return unreadable("a shared rig without its name or beginning");
        sharing.rigs.emplace_back(*rig, *root);
        return done();
    }
    const auto bytes = fromHex((*v)["bytes"].asString().value_or(""));
    if (*kind == "record")
        return addRecord(*v, bytes.value_or(""), sharing);
    if (*kind == "file")
        return addFile(*v, bytes.value_or(""), sharing);
    return *kind == "twin" ? addTwin(*v, sharing) : done();
}

} // namespace snugwalk
