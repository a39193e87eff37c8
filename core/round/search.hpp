// SPDX-License-Identifier: Apache-2.0
// Finding anything of a rig by words: what was found, walked, mended, driven, and the points themselves.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "catalogue/texts.hpp"
#include "due/rig_history.hpp"
#include "logbook/sqlite.hpp"

namespace snugwalk {

enum class HitKind { Point, Finding, Mark, Mend, Walk, Trip, Stay, Happening };
[[nodiscard]] std::string_view slug(HitKind kind);

struct Hit {
    HitKind kind = HitKind::Point;
    std::string id;    ///< of the thing, as text; a point's slug
    std::string title; ///< in the language of the words the index was made with
    std::string part;  ///< the words around what was found; the title when that was it
    std::optional<LocalTime> at;
};

/// An index in memory, made from one reading of the history in one language. Accents and case are folded;
/// each word typed stands for all that begin with it; all must be there, in any order.
///
/// Method: SQLite's FTS5, tokenizer unicode61 without diacritics, ranked by bm25 with titles four times the
/// rest. Tests:  tests/unit/round/tst_search.cpp
class SearchIndex {
public:
    /// `Io` when SQLite has no FTS5 or no memory.
    [[nodiscard]] static Result<SearchIndex> make(const Catalogue &catalogue, const RigHistory &history,
                                                  const Texts &texts);
    /// Best first, the newer of like ones first; nothing for words without a letter or digit.
    /// \param limit at most so many
    [[nodiscard]] Result<std::vector<Hit>> find(std::string_view words, std::size_t limit) const;

private:
    explicit SearchIndex(sqlite::Connection db) : m_db(std::move(db)) {}
    mutable sqlite::Connection m_db;
};

} // namespace snugwalk
