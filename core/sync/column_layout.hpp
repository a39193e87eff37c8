// SPDX-License-Identifier: Apache-2.0
// What the writer and the reader of columns have in common.
#pragma once

#include "sync/column_tables.hpp"

namespace snugwalk {

inline constexpr std::size_t maxFields = 512;
inline constexpr std::int64_t columnsVersion = 1;

enum Column {
    SeqColumn,
    HlcColumn,
    TickColumn,
    StreamColumn,
    ActColumn,
    ScopeColumn,
    UndoesColumn,
    EntityColumn,
    TypeColumn,
    ByColumn,
    AtColumn,
    ShapeColumn,
    WhereColumn,
    PrevColumn,
    columnCount
};
inline constexpr const char *columnNames[] = {"seq",    "hlc",  "tick", "stream", "act",   "scope", "undoes",
                                              "entity", "type", "by",   "at",     "shape", "where", "prev"};
// How an id is told.
enum IdForm { NoId, AsBefore, Listed, Derived, DerivedByText };

// The clock's own milliseconds, from which what the person's clock showed is a few away.
inline std::int64_t millisOf(std::int64_t hlc) { return hlc >> 16; }
inline constexpr std::int64_t tickMask = 0xFFFF;

inline std::int64_t minus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) - static_cast<std::uint64_t>(b));
}

inline std::int64_t plus(std::int64_t a, std::int64_t b)
{
    return static_cast<std::int64_t>(static_cast<std::uint64_t>(a) + static_cast<std::uint64_t>(b));
}

// What both sides remember of the entries before.
struct Last {
    std::map<std::string, std::int64_t, std::less<>> seq; // by stream
    std::int64_t millis = 0;
    Id ids[columnCount]; // by column
};

/// The text of a field, empty when it has none.
[[nodiscard]] std::string_view textField(const Entry &entry, const char *field);
/// The mark that the entry's own fields name; null when they name none.
[[nodiscard]] Id markOfFields(const Entry &entry);
/// What an entry tells itself; `at` is its time as text.
[[nodiscard]] std::string valueText(ValueForm form, const Entry &entry, const std::string &at);

} // namespace snugwalk
