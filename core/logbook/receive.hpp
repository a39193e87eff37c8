// SPDX-License-Identifier: Apache-2.0
// What sync may do to a logbook: keep what came, apply what is admitted, set the rest aside. No bytes are
// verified here; core/sync does that before it calls.
#pragma once

#include <functional>

#include "logbook/logbook.hpp"

namespace snugwalk {

/// A file of entries that one stream sent of one rig, see core/sync/FORMAT.md.
struct SegmentFacts {
    Hash hash; ///< of the whole file
    Id space;  ///< the rig
    StreamId stream;
    std::int64_t counter = 0; ///< from 1, without a gap, one row for each stream and rig
    Hash prev;                ///< of the file before
};

struct KeptSegment {
    std::int64_t row = 0;
    SegmentFacts facts;
    bool opened = false; ///< whether its entries are in the log
};

struct IncomingEntry {
    Entry entry;
    std::string bytes;
};

/// Why an entry is set aside; nothing when it is admitted. A pure function of what the logbook keeps.
using Judge = std::function<std::optional<std::string>(const KeptSegment &, const Entry &)>;

struct ReceiveCount {
    std::int64_t fresh = 0;  ///< entries that were not here
    std::int64_t aside = 0;  ///< of those, how many were set aside
    std::int64_t twins = 0;  ///< entries with the id of another one
    std::int64_t undone = 0; ///< applied before, set aside now
};

/// A rig whose logbook is shared. `root` names the record that founded it.
[[nodiscard]] Result<std::vector<std::pair<Id, Hash>>> sharedRigs(Logbook &book);

/// Takes part in a rig shared from elsewhere, before any record of it is here. `Conflict` as `keepRoot`.
[[nodiscard]] Status joinRig(Logbook &book, const Id &space, const Hash &root);

/// Control records, as bytes. Keeping one leaves the rig to be judged again (`judgeAll`).
[[nodiscard]] Status keepControl(Logbook &book, const Id &space, const Hash &hash, std::string_view bytes);
/// Many, in one transaction.
[[nodiscard]] Status keepControls(Logbook &book, const Id &space,
                                  const std::vector<std::pair<Hash, std::string>> &records);
/// The first record of a rig, and the rig as shared, in one transaction. `Conflict` when it is shared
/// already.
[[nodiscard]] Status keepRoot(Logbook &book, const Id &space, const Hash &root, std::string_view bytes);
[[nodiscard]] Result<std::vector<std::string>> controlsOf(Logbook &book, const Id &space);
[[nodiscard]] Result<bool> needsJudging(Logbook &book, const Id &space);

[[nodiscard]] Result<std::vector<KeptSegment>> segmentsOf(Logbook &book, const Id &space);
[[nodiscard]] Result<std::string> segmentBytes(Logbook &book, std::int64_t row);
/// Keeps the bytes without opening them: the signer is not known, or a newer version wrote them.
[[nodiscard]] Status keepSegment(Logbook &book, const SegmentFacts &facts, std::string_view bytes);

/// Keeps a segment and its entries in one transaction. Any order, any number of times: the same end. Of two
/// entries with one id one stands and the other is kept as its twin: that of a segment signed by the device
/// that wrote it goes before that of one which carries it for others, then the one whose bytes hash lower.
/// A segment of our own stream, or one that carries entries of it, that are not known here must not come in
/// before `startIncarnation`.
/// \param publicKey of the segment's stream
[[nodiscard]] Result<ReceiveCount> receive(Logbook &book, const SegmentFacts &facts, std::string_view bytes,
                                           std::string_view publicKey,
                                           const std::vector<IncomingEntry> &entries, const Judge &judge);

/// The same for several, in one transaction: a page that many of them touch is written once, and every thing
/// of theirs is projected once.
struct OpenedSegment {
    SegmentFacts facts;
    std::string bytes;
    std::string publicKey; ///< of the segment's stream
    std::vector<IncomingEntry> entries;
};
[[nodiscard]] Result<ReceiveCount> receive(Logbook &book, std::vector<OpenedSegment> segments,
                                           const Judge &judge);

/// Judges every entry of the rig's segments again, and the projection with them, in one transaction.
[[nodiscard]] Result<ReceiveCount> judgeAll(Logbook &book, const Id &space, const Judge &judge);

/// How many bytes of files that could not be opened are kept of a rig.
[[nodiscard]] Result<std::int64_t> unopenedBytes(Logbook &book, const Id &space);

/// What was set aside of a rig, oldest first.
struct SetAside {
    Entry entry;
    std::string reason;
};
[[nodiscard]] Result<std::vector<SetAside>> asideOf(Logbook &book, const Id &space);

/// Entries of the rig that no segment carries yet, in order of their streams and numbers, at most `limit`
/// and at most `maxBytes` of them in sum.
[[nodiscard]] Result<std::vector<IncomingEntry>>
unsentOf(Logbook &book, const Id &space, std::size_t limit, std::size_t maxBytes,
         const std::function<bool(const StreamId &)> &mayCarry);
/// Keeps our own new segment and says of its entries that it carries them, in one transaction.
[[nodiscard]] Status keepOwnSegment(Logbook &book, const SegmentFacts &facts, std::string_view bytes,
                                    const std::vector<IncomingEntry> &entries, const Judge &judge);

/// Whether any of these bears the name of our own stream and is not what was written here: a copy of this
/// logbook went on elsewhere.
[[nodiscard]] Result<bool> isNewsOfOwn(Logbook &book, const std::vector<IncomingEntry> &entries);

/// Leaves the own stream, which went on elsewhere, and begins a new one. Entries that were not sent yet are
/// written again under the new stream, their predecessors with them, so that both ways are kept.
[[nodiscard]] Status startIncarnation(Logbook &book);

/// Photos whose original is to be fetched.
[[nodiscard]] Status wantPhoto(Logbook &book, const Hash &photo);
[[nodiscard]] Result<std::vector<Hash>> wantedPhotos(Logbook &book);
[[nodiscard]] Status photoArrived(Logbook &book, const Hash &photo);

} // namespace snugwalk
