// SPDX-License-Identifier: Apache-2.0
// What a model needs to do something: the worker, who does it, and whom to tell.
#pragma once

#include <functional>

#include "app_parts.hpp"
#include "logbook/acts.hpp"
#include "worker.hpp"

namespace snugwalk {

/// Made by the session, which outlives its models.
struct ActDesk {
    Worker *worker = nullptr;
    const AppParts *parts = nullptr;
    std::function<Doer()> doer;                ///< who, and where the receiver says they are
    std::function<void(const Error &)> refuse; ///< shows what went wrong
    std::function<void(bool atOnce)> changed;  ///< the logbook has more than the snapshot
};

} // namespace snugwalk
