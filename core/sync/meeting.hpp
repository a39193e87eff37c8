// SPDX-License-Identifier: Apache-2.0
// One rig at one store: the steps of an exchange.
#pragma once

#include "sync/blob.hpp"
#include "sync/exchange.hpp"
#include "sync/segment.hpp"
#include "sync/store_view.hpp"

namespace snugwalk {

struct FoundManifest {
    PhotoManifest manifest;
    Secret key; ///< of the epoch it was sealed in
};

struct Arrived {
    SegmentHead head;
    std::string bytes;
};

/// Everything it does is kept at once and may be done again.
class Meeting {
public:
    Meeting(Logbook &book, const Keys &keys, StoreView &store, const Id &rig, const Hash &root,
            const ExchangeOptions &options, const Progress &progress, ExchangeSummary &summary)
        : m_book(book),
          m_keys(keys),
          m_store(store),
          m_rig(rig),
          m_root(root),
          m_options(options),
          m_progress(progress),
          m_summary(summary)
    {}

    [[nodiscard]] Status run();

private:
    // records, meeting_records.cpp
    [[nodiscard]] Status readControls();
    [[nodiscard]] Result<std::optional<std::string>> freshRoot();
    [[nodiscard]] Result<std::vector<std::pair<Hash, std::string>>> freshControls(const Id &device);
    [[nodiscard]] Status publishControls();
    // entries
    [[nodiscard]] Status readSegments();
    [[nodiscard]] Result<std::vector<Arrived>> freshSegments();
    [[nodiscard]] Status take(const Arrived &segment);
    [[nodiscard]] Status applyWaiting();
    [[nodiscard]] Status leaveStream();
    [[nodiscard]] Status keepClosed(const Arrived &segment);
    [[nodiscard]] bool isFull() const; ///< of files that cannot be opened
    [[nodiscard]] Status openKept();
    [[nodiscard]] Status sealOwn();
    [[nodiscard]] Status publishSegments();
    // photos, meeting_photos.cpp
    [[nodiscard]] Status photos();
    [[nodiscard]] Status publishPhoto(const Hash &photo);
    [[nodiscard]] Status fetchPhoto(const Hash &photo, bool original);
    [[nodiscard]] Result<bool> isListed(const Hash &photo);
    [[nodiscard]] Result<std::optional<FoundManifest>> manifestOf(const Hash &photo);

    [[nodiscard]] Status refreshMembers();
    [[nodiscard]] Status refresh();
    [[nodiscard]] Status publish(const std::string &folder, const std::string &what, const std::string &kind,
                                 std::string_view bytes, bool own);
    [[nodiscard]] Status tell(const char *what, std::int64_t at, std::int64_t of) const;
    [[nodiscard]] Status count();

    Logbook &m_book;
    const Keys &m_keys;
    StoreView &m_store;
    Id m_rig;
    Hash m_root;
    const ExchangeOptions &m_options;
    const Progress &m_progress;
    ExchangeSummary &m_summary;
    RigMembers m_members;
    RigKeys m_open;
    std::vector<KeptSegment> m_segments;
    Judge m_judge;
    std::set<Hash> m_kept;          ///< files of entries that are in the logbook
    std::set<std::string> m_passed; ///< short hashes of those, and of all that were looked at
    std::int64_t m_strangers = 0;   ///< files kept closed
    std::int64_t m_strangerBytes = 0;
    std::vector<OpenedSegment> m_waiting; ///< read, and not in the logbook yet
    std::size_t m_waitingEntries = 0;
};

} // namespace snugwalk
