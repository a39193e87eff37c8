// SPDX-License-Identifier: Apache-2.0
// A WebDAV folder as a store. Source [RFC4918]; what servers really answer was looked at with two.
#pragma once

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <string>

#include "base/time.hpp"
#include "sync/store.hpp"

namespace snugwalk {

struct WebdavSettings {
    std::string address;   ///< https://host[:port]/folder/; http to this machine itself only
    std::string user;      ///< empty for none
    std::string password;  ///< sent as Basic over TLS, with every request
    std::string authority; ///< PEM text of the only authority that is believed; empty for the system's
    std::chrono::milliseconds idle{30'000};         ///< a request ends after so long without a byte
    std::chrono::milliseconds total{600'000};       ///< a request ends after so long in any case
    int tries = 4;                                  ///< of each request that may pass
    std::chrono::milliseconds longestWait{900'000}; ///< between two tries
    /// How to wait; blocks the thread when not given. Tests and a person's *stop* put their own in:
    /// false ends the trying.
    std::function<bool(std::chrono::milliseconds)> wait;
};

/// Blocks: for a worker thread, made and used in one. Nothing is ever overwritten on the server.
class WebdavStore final : public Store {
public:
    /// Looks at address and certificate, sends nothing.
    /// \returns `InvalidInput`, `Unsupported` without TLS on this machine.
    [[nodiscard]] static Result<std::unique_ptr<WebdavStore>> open(const WebdavSettings &settings);
    ~WebdavStore() override;

    /// First contact: writes a random file, reads it back, deletes it.
    [[nodiscard]] Status probe();

    [[nodiscard]] Result<std::vector<StoreFile>> list(std::string_view folder) override;
    [[nodiscard]] Result<std::string> read(std::string_view name, std::int64_t limit) override;
    [[nodiscard]] Status publish(std::string_view name, std::string_view bytes) override;

    /// The server's clock as of its last answer, to tell a wrong one here; nothing before the first.
    [[nodiscard]] std::optional<Instant> serverTime() const;

private:
    struct Inside;
    explicit WebdavStore(std::unique_ptr<Inside> inside);
    std::unique_ptr<Inside> m_inside;
};

} // namespace snugwalk
