// SPDX-License-Identifier: Apache-2.0
// Records first, since they say whose entries count; what is there before what is here, so that a copy of
// this logbook that went on elsewhere is seen before anything of ours goes out.
#include "sync/meeting.hpp"

#include <algorithm>
#include <optional>
#include <utility>

#include "base/text.hpp"
#include "logbook/many_writes.hpp"
#include "sync/columns.hpp"
#include "sync/store_names.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t entriesASegment = 1000;
constexpr std::size_t bytesASegment = std::size_t{1024} * 1024; // plain; a tenth once sealed
constexpr std::size_t bytesAtOnce = std::size_t{64} * 1024 * 1024;
constexpr std::size_t entriesAtOnce =
    50'000; // in one transaction: some 120 MB in memory, by sizes of members
// files of devices nobody enrolled, and their bytes
constexpr std::int64_t maxStrangers = 1000;
constexpr std::int64_t maxStrangerBytes = std::int64_t{64} * 1024 * 1024;

} // namespace

std::string rigFolder(const Id &rig) { return "snugwalk1/" + rig.text(); }

Status Meeting::tell(const char *what, std::int64_t at, std::int64_t of) const
{
    if (!m_progress || m_progress({m_rig, what, at, of}))
        return done();
    return Error{Errc::Conflict, "the exchange was stopped", what, "exchange again to go on"};
}

Status Meeting::refreshMembers()
{
    auto members = membersOf(m_book, m_rig);
    if (!members)
        return members.error();
    m_members = std::move(members).value();
    m_open = openKeys(m_members, m_keys);
    return refresh();
}

Status Meeting::refresh()
{
    auto segments = segmentsOf(m_book, m_rig);
    if (!segments)
        return segments.error();
    m_segments = std::move(segments).value();
    m_judge = judgeOf(m_members, m_segments);
    m_kept.clear();
    m_strangers = 0;
    for (const KeptSegment &segment : m_segments) {
        m_kept.insert(segment.facts.hash);
        m_strangers += segment.opened ? 0 : 1;
    }
    const auto bytes = unopenedBytes(m_book, m_rig);
    if (!bytes)
        return bytes.error();
    m_strangerBytes = *bytes;
    return done();
}

bool Meeting::isFull() const { return m_strangers >= maxStrangers || m_strangerBytes >= maxStrangerBytes; }

Status Meeting::publish(const std::string &folder, const std::string &what, const std::string &kind,
                        std::string_view bytes, bool own)
{
    const auto there = m_store.has(folder, what, bytes.size());
    if (!there)
        return there.error();
    if (*there) {
        if (!m_options.mend)
            return done();
        const auto whole =
            m_store.read(folder, what, bytes.size(), [&](std::string_view found) { return found == bytes; });
        if (!whole)
            return whole.error();
        if (*whole)
            return done();
    }
    m_summary.filesForwarded += own ? 0 : 1;
    return m_store.publish(folder, what, kind, bytes);
}

// What is neither kept nor was looked at in this exchange: a file that is passed over must not come again, or
// the exchange would never end.
Result<std::vector<Arrived>> Meeting::freshSegments()
{
    for (const Hash &hash : m_kept)
        m_passed.insert(hash.text().substr(0, shortHash));
    const std::string folder = rigFolder(m_rig) + "/s";
    const auto streams = m_store.list(folder);
    if (!streams)
        return streams.error();
    std::vector<Arrived> fresh;
    std::size_t size = 0;
    for (const auto &stream : **streams) {
        const auto device = Id::parse(stream.first.substr(0, 32));
        if (!device || (isFull() && m_members.find(*device) == nullptr))
            continue;
        const std::string path = folder + "/" + stream.first;
        const auto files = m_store.list(path);
        if (!files)
            return files.error();
        for (const auto &file : **files) {
            const std::string hash = claimedHash(file.first);
            if (!m_passed.insert(hash).second)
                continue;
            Arrived arrived;
            const auto bytes = m_store.read(path, file.first, maxSegmentBytes, [&](std::string_view found) {
                // the name's hash first: it is cheaper than a signature
                if (blake2b(found).text().substr(0, shortHash) != hash)
                    return false;
                auto head = readSegmentHead(found);
                if (!head || head->facts.space != m_rig || toHex(head->facts.stream.bytes()) != stream.first)
                    return false;
                arrived.head = std::move(head).value();
                return true;
            });
            if (!bytes)
                return bytes.error();
            if (!*bytes)
                continue;
            arrived.bytes = **bytes;
            size += arrived.bytes.size();
            fresh.push_back(std::move(arrived));
            if (size > bytesAtOnce)
                return fresh;
        }
    }
    return fresh;
}

// Opens it when its signer belongs to the rig and the key is here; keeps it closed otherwise.
Status Meeting::take(const Arrived &segment)
{
    const SegmentHead &head = segment.head;
    if (head.facts.stream == m_book.stream() && m_kept.count(head.facts.hash) == 0)
        SNUG_TRY(leaveStream()); // we never sent this: a copy of this logbook did
    const Member *signer = m_members.find(head.facts.stream.device);
    if (signer == nullptr && isFull())
        return done();
    const auto key = m_open.all.find(head.epoch);
    if (signer == nullptr || key == m_open.all.end() || head.reader > segmentVersion)
        return keepClosed(segment);
    auto entries = openSegment(segment.bytes, key->second);
    if (!entries) { // signed by a member, and yet no entries: nothing here can make it better
        ++m_store.damaged;
        return done();
    }
    const bool isCarrier = std::any_of(signer->standings.begin(), signer->standings.end(),
                                       [](const RoleSpan &span) { return span.role == SyncRole::Owner; });
    const bool carries = std::any_of(entries->begin(), entries->end(), [&](const IncomingEntry &incoming) {
        return incoming.entry.id.stream.device != signer->device;
    });
    if (carries && !isCarrier) // what others wrote comes from them or an owner
        return keepClosed(segment);
    const auto isOurs = isNewsOfOwn(m_book, *entries);
    if (!isOurs)
        return isOurs.error();
    if (*isOurs)
        SNUG_TRY(leaveStream());
    m_waitingEntries += entries->size();
    m_waiting.push_back({head.facts, segment.bytes, head.publicKey, std::move(*entries)});
    return m_waitingEntries < entriesAtOnce ? done() : applyWaiting();
}

// Several files in one transaction: the pages that all of them touch go to the disk once.
Status Meeting::applyWaiting()
{
    if (m_waiting.empty())
        return done();
    const auto received = receive(m_book, std::exchange(m_waiting, {}), m_judge);
    m_waitingEntries = 0;
    if (!received)
        return received.error();
    m_summary.entriesReceived += received->fresh;
    return done();
}

Status Meeting::leaveStream()
{
    SNUG_TRY(applyWaiting());
    SNUG_TRY(startIncarnation(m_book));
    m_summary.forked = true;
    return done();
}

Status Meeting::keepClosed(const Arrived &segment)
{
    if (m_kept.insert(segment.head.facts.hash).second) {
        ++m_strangers;
        m_strangerBytes += static_cast<std::int64_t>(segment.bytes.size());
    }
    return keepSegment(m_book, segment.head.facts, segment.bytes);
}

Status Meeting::openKept()
{
    for (const KeptSegment &segment : std::vector<KeptSegment>(m_segments)) {
        if (segment.opened || m_members.find(segment.facts.stream.device) == nullptr)
            continue;
        auto bytes = segmentBytes(m_book, segment.row);
        if (!bytes)
            return bytes.error();
        const auto head = readSegmentHead(*bytes);
        if (!head)
            return head.error();
        SNUG_TRY(take({*head, *bytes}));
    }
    SNUG_TRY(applyWaiting());
    return refresh();
}

Status Meeting::readSegments()
{
    bool any = false;
    for (;;) {
        const auto fresh = freshSegments();
        if (!fresh)
            return fresh.error();
        if (fresh->empty())
            break;
        any = true;
        // what a cut admits depends on the files around: all are known before the first is judged
        for (const Arrived &segment : *fresh)
            m_segments.push_back({0, segment.head.facts, true});
        m_judge = judgeOf(m_members, m_segments);
        std::optional<sqlite::ManyWrites> many;
        if (fresh->size() > 1)
            many.emplace(m_book.db());
        std::int64_t at = 0;
        for (const Arrived &segment : *fresh) {
            SNUG_TRY(take(segment));
            const Status told = tell("entries", ++at, static_cast<std::int64_t>(fresh->size()));
            if (!told) {
                SNUG_TRY(applyWaiting());
                return told;
            }
        }
        SNUG_TRY(applyWaiting());
        SNUG_TRY(refresh());
    }
    SNUG_TRY(openKept());
    // a file that arrives may complete the way back from a cut, and so admit what waited
    const bool anyCut = std::any_of(m_members.members.begin(), m_members.members.end(),
                                    [](const auto &item) { return item.second.standings.size() > 1; });
    if (!any || !anyCut)
        return done();
    const auto judged = judgeAll(m_book, m_rig, m_judge);
    return judged ? done() : Status(judged.error());
}

Status Meeting::sealOwn()
{
    const Member *me = m_members.find(m_keys.device.deviceId());
    if (me == nullptr || !me->role() || m_open.latest.empty())
        return done(); // not enrolled yet, or no more: what was written stays here
    const bool isOwner = me->role() == SyncRole::Owner;
    const auto mayCarry = [&](const StreamId &stream) {
        return stream.device == m_keys.device.deviceId() || isOwner;
    };
    for (;;) {
        const auto entries = unsentOf(m_book, m_rig, entriesASegment, bytesASegment, mayCarry);
        if (!entries)
            return entries.error();
        if (entries->empty())
            return done();
        SegmentFacts facts{{}, m_rig, m_book.stream(), 1, {}};
        for (const KeptSegment &segment : m_segments) {
            if (segment.facts.stream == m_book.stream() && segment.facts.counter >= facts.counter) {
                facts.counter = segment.facts.counter + 1;
                facts.prev = segment.facts.hash;
            }
        }
        const auto sealed =
            sealSegment(m_keys.device, m_open.all.at(m_open.latest), facts, *entries, m_book.now());
        if (!sealed)
            return sealed.error();
        SNUG_TRY(keepOwnSegment(m_book, sealed->facts, sealed->bytes, *entries, m_judge));
        m_summary.entriesSent += static_cast<std::int64_t>(entries->size());
        SNUG_TRY(refresh());
    }
}

Status Meeting::publishSegments()
{
    std::int64_t at = 0;
    for (const KeptSegment &segment : m_segments) {
        const auto bytes = segmentBytes(m_book, segment.row);
        if (!bytes)
            return bytes.error();
        const SegmentFacts &facts = segment.facts;
        SNUG_TRY(publish(rigFolder(m_rig) + "/s/" + toHex(facts.stream.bytes()),
                         counterName(facts.counter, facts.hash), "seg", *bytes,
                         facts.stream.device == m_keys.device.deviceId()));
        SNUG_TRY(tell("entries", ++at, static_cast<std::int64_t>(m_segments.size())));
    }
    return done();
}

// Counters that are missing below the highest one of each stream.
Status Meeting::count()
{
    std::map<StreamId, std::set<std::int64_t>> counters;
    for (const KeptSegment &segment : m_segments) {
        counters[segment.facts.stream].insert(segment.facts.counter);
        m_summary.unopened += segment.opened ? 0 : 1;
    }
    for (const auto &[stream, seen] : counters)
        m_summary.gaps += *seen.rbegin() - static_cast<std::int64_t>(seen.size());
    const auto aside = asideOf(m_book, m_rig);
    if (!aside)
        return aside.error();
    m_summary.aside += static_cast<std::int64_t>(aside->size());
    return done();
}

Status Meeting::run()
{
    SNUG_TRY(m_book.followStream());
    SNUG_TRY(refreshMembers());
    SNUG_TRY(tell("records", 0, 1));
    SNUG_TRY(readControls());
    SNUG_TRY(readSegments());
    SNUG_TRY(publishControls());
    SNUG_TRY(sealOwn());
    SNUG_TRY(photos());
    SNUG_TRY(publishSegments());
    return count();
}

} // namespace snugwalk
