// SPDX-License-Identifier: Apache-2.0
// The tables beside the columns: ids, shapes of fields, places; and how they are read.
#pragma once

#include <optional>

#include "logbook/entry.hpp"
#include "sync/varint.hpp"

namespace snugwalk {

/// Where a field's value comes from: out of the file, or from what the entry says of itself.
enum class ValueForm { Carried, At, By, Scope };
inline constexpr int valueForms = 4;

struct ShapeField {
    std::string name;
    ValueForm form = ValueForm::Carried;
    friend auto operator<=>(const ShapeField &, const ShapeField &) = default;
};
using Shape = std::vector<ShapeField>; ///< the fields of one entry

/// The same when reading, with the string of values that the field has.
struct ReadField {
    std::string name;
    ValueForm form = ValueForm::Carried;
    std::optional<std::size_t> place;
};
using ReadShape = std::vector<ReadField>;

/// No field has this name: places of entries lie under it.
inline constexpr std::string_view whereName{"\0where", 6};

[[nodiscard]] Value shapeValue(const Shape &shape);
[[nodiscard]] std::vector<ReadShape> shapesIn(const Value &value, bool &fine);
[[nodiscard]] std::vector<std::string> textsIn(const Value &value, bool &fine);
[[nodiscard]] std::vector<std::string> cut(const Value &value, std::size_t size, bool &fine);
[[nodiscard]] std::string joined(const std::vector<std::string> &parts);

[[nodiscard]] Value whereValue(const GeoPoint &where);
/// False unless it is the place of something.
[[nodiscard]] bool readWhere(const Value &value, std::optional<GeoPoint> &where);

/// Ids as how long ago they were first used; 0 is one that is new, and carried.
class IdTable {
public:
    void put(std::string &out, const Id &id);
    [[nodiscard]] const std::string &carried() const { return m_carried; }

private:
    std::map<Id, std::size_t> m_places;
    std::string m_carried;
};

class IdReader {
public:
    IdReader(std::string carried, bool &fine);
    [[nodiscard]] std::optional<Id> get(std::uint64_t ago);
    [[nodiscard]] bool isDone() const { return m_seen * 16 == m_carried.size(); }

private:
    std::string m_carried;
    std::size_t m_seen = 0;
};

} // namespace snugwalk
