// SPDX-License-Identifier: Apache-2.0
// The stores this device knows, as the app asks for them; a platform keeps the list.
#pragma once

#include <functional>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/time.hpp"
#include "sync/exchange.hpp"

namespace snugwalk {

struct SyncPlace {
    std::string name;
    std::string kind; ///< `folder`, `webdav`, `file`
    std::string where;
    std::optional<LocalTime> met; ///< the last exchange that came to its end
    /// Entries of shared rigs that this device had then; nothing when it was not written down.
    std::optional<std::int64_t> carried;
};

struct NewPlace {
    std::string name;
    std::string kind; ///< `folder`, `webdav`, `file`
    std::string where;
    std::string user;     ///< WebDAV only
    std::string password; ///< WebDAV only; kept sealed
    std::string
        authority; ///< WebDAV only: a PEM file of the one authority to believe; empty for the system's
};

/// A store while it is used. `finish` is called once all is done, also when not all was done.
struct OpenedPlace {
    std::unique_ptr<Store> store;
    std::function<Status()> finish;
};

/// Asked from any thread, never from the one that draws.
class SyncPlaces {
public:
    SyncPlaces() = default;
    SyncPlaces(const SyncPlaces &) = delete;
    SyncPlaces &operator=(const SyncPlaces &) = delete;
    virtual ~SyncPlaces() = default;

    /// In the order they were added.
    [[nodiscard]] virtual Result<std::vector<SyncPlace>> list() = 0;
    /// `Conflict` when the name is taken, `InvalidInput` for a name or an address that is none, `NotFound`
    /// without the folder. Nothing is sent.
    [[nodiscard]] virtual Status add(const NewPlace &place) = 0;
    /// Forgets it; what lies there stays. `NotFound`.
    [[nodiscard]] virtual Status remove(const std::string &name) = 0;
    /// `NotFound`, `Unsupported` for a kind that this program cannot use.
    [[nodiscard]] virtual Result<OpenedPlace> open(const std::string &name) = 0;
    /// One that was removed meanwhile stays removed.
    [[nodiscard]] virtual Status noteMet(const std::string &name, const LocalTime &at, std::int64_t carried,
                                         const ExchangeSummary &summary) = 0;
};

} // namespace snugwalk
