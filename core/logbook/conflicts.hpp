// SPDX-License-Identifier: Apache-2.0
// Things that two people wrote differently without knowing of each other, and settling them.
#pragma once

#include "logbook/acts.hpp"

namespace snugwalk {

struct Version {
    EntryId entry;
    std::string by;
    LocalTime at;
    std::string device; ///< its name for people, empty when not known
    Value value;        ///< null: taken away
};

struct FieldConflict {
    std::string field;
    std::vector<Version> versions; ///< oldest first; two at least, of which two differ
    Value shown;
};

struct Conflict {
    Id entity;
    std::string type;
    std::vector<FieldConflict> fields;
};

/// Of one rig, or of all when `rig` is null. A field counts when its heads differ; when and by whom is told
/// of each version, and is no conflict by itself. In order of their ids.
[[nodiscard]] Result<std::vector<Conflict>> conflictsOf(Logbook &book, const Id &rig);

/// Writes what a person chose: an entry that names every version as seen. Fields left out stay as they are.
/// \returns `NotFound` when the thing has no conflict in such a field.
[[nodiscard]] Result<Receipt> resolveConflict(Logbook &book, const Id &entity, const Value::Map &chosen,
                                              const Doer &doer);

} // namespace snugwalk
