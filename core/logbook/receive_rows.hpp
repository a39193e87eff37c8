// SPDX-License-Identifier: Apache-2.0
// The tables behind receive.hpp. Call within a transaction.
#pragma once

#include "logbook/receive.hpp"

namespace snugwalk {

/// The row of a segment, made when it is not there. `opened` of the answer says whether it was opened before.
[[nodiscard]] Result<KeptSegment> putSegment(sqlite::Connection &db, const SegmentFacts &facts,
                                             std::string_view bytes, bool opened);
/// A rig as shared; `Conflict` when it is shared with another beginning.
[[nodiscard]] Status putRig(sqlite::Connection &db, const Id &space, const Hash &root);
/// A control record; leaves the rig to be judged again.
[[nodiscard]] Status putControl(sqlite::Connection &db, const Id &space, const Hash &hash,
                                std::string_view bytes);
[[nodiscard]] Status markJudged(sqlite::Connection &db, const Id &space);
[[nodiscard]] Status putAside(sqlite::Connection &db, std::int64_t stream, std::int64_t seq,
                              const std::string &reason);
/// Takes an entry out of the log: only for one whose bytes were kept elsewhere in this transaction.
[[nodiscard]] Status dropEntry(sqlite::Connection &db, std::int64_t stream, std::int64_t seq);
/// Whether any entry changed sides.
[[nodiscard]] Result<bool> judgeRows(sqlite::Connection &db, const Id &space, const Judge &judge,
                                     ReceiveCount &count);

} // namespace snugwalk
