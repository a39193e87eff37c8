// SPDX-License-Identifier: Apache-2.0
// What the worker read of the logbook, as a value that screens may hold on to.
#pragma once

#include <memory>
#include <vector>

#include "concern/state.hpp"
#include "due/rig_history.hpp"
#include "logbook/logbook.hpp"
#include "round/world.hpp"
#include "voice.hpp"

namespace snugwalk {

struct Snapshot {
    std::vector<Rig> rigs;
    std::optional<RigHistory> history;          ///< of the chosen rig; none without a rig
    std::shared_ptr<const Catalogue> catalogue; ///< the chosen rig's own; null without a rig
    std::vector<DueBand> bands;                 ///< as `dueBands` gives them
    RigState state;
    LocalTime now;
    std::shared_ptr<const World> world; ///< climate and coast as the bands were made with; may be null

    [[nodiscard]] const WalkRecord *openWalk() const;
    [[nodiscard]] const FindingHistory *finding(const Id &id) const;
};

/// Reads and computes; the worker's work.
/// \param catalogue the product's; the snapshot has it as the rig's owner chose
/// \param chosen the rig to read; the first one when null or unknown.
/// \param world what the weather is taken from; null: the reference
[[nodiscard]] Result<std::shared_ptr<const Snapshot>>
takeSnapshot(Logbook &book, const Catalogue &catalogue, const Id &chosen,
             std::shared_ptr<const World> world = nullptr);

/// What a model shows, and in which words. Never without either.
struct Shown {
    std::shared_ptr<const Snapshot> snapshot = std::make_shared<const Snapshot>();
    std::shared_ptr<const Voice> voice = std::make_shared<const Voice>();

    [[nodiscard]] const RigHistory *history() const
    {
        return snapshot->history ? &*snapshot->history : nullptr;
    }
    /// The rig's own catalogue, or `product` without a rig.
    [[nodiscard]] const Catalogue &catalogue(const Catalogue &product) const
    {
        return snapshot->catalogue ? *snapshot->catalogue : product;
    }
};

} // namespace snugwalk
