// SPDX-License-Identifier: Apache-2.0
// The stores this device knows, in `stores.json` beside its key.
#pragma once

#include <filesystem>
#include <optional>
#include <string>
#include <vector>

#include "stores/secret_keeper.hpp"
#include "sync/exchange.hpp"

namespace snugwalk {

enum class StoreKind { Folder, Webdav, File };
[[nodiscard]] std::string_view slugOf(StoreKind kind);

struct LastExchange {
    LocalTime at;
    Value::Map counts; ///< members of `countsOf`
};

struct StoreRecord {
    std::string name;
    StoreKind kind = StoreKind::Folder;
    std::string place;          ///< an absolute path, or an address without a password in it
    std::string user;           ///< WebDAV only
    std::string authority;      ///< WebDAV only: see `authorityFrom`; empty for the system's authorities
    std::string sealedPassword; ///< see `sealPassword`; empty for none
    std::optional<LastExchange> last;
};

/// The numbers of an exchange under the names that JSON has.
[[nodiscard]] Value::Map countsOf(const ExchangeSummary &summary);

/// A name is 1 to 40 letters, digits, '-' or '_'. `InvalidInput`.
[[nodiscard]] Status checkStoreLabel(const std::string &name);

/// In the order they were added; empty without a file. `Corrupt`, `Io`.
[[nodiscard]] Result<std::vector<StoreRecord>> storeList(const std::filesystem::path &folder);
[[nodiscard]] Status keepStoreList(const std::filesystem::path &folder,
                                   const std::vector<StoreRecord> &stores);
/// `NotFound` names those that there are.
[[nodiscard]] Result<StoreRecord> storeNamed(const std::filesystem::path &folder, const std::string &name);
/// `Conflict` when the name is taken.
[[nodiscard]] Status addStore(const std::filesystem::path &folder, const StoreRecord &store);
[[nodiscard]] Status removeStore(const std::filesystem::path &folder, const std::string &name);
/// Remembers when and how much; a store that was removed meanwhile stays removed.
[[nodiscard]] Status noteExchange(const std::filesystem::path &folder, const std::string &name,
                                  const LastExchange &last);

/// The only authority whose word on a server counts, as PEM text read once and kept in the list: a file that
/// somebody puts in its place later changes nothing. \returns `NotFound`, `InvalidInput` for a file without a
/// certificate or with a private key in it, which has no business here.
[[nodiscard]] Result<std::string> authorityFrom(const std::filesystem::path &file);

/// A password lies in the list sealed with the machine's secret `stores`, and bound to place, user and
/// authority: a list that somebody changed sends it nowhere else. Who has both, list and secret, has the
/// password.
[[nodiscard]] Result<std::string> sealPassword(SecretKeeper &keeper, const StoreRecord &store,
                                               const std::string &password);
/// Empty when the store has none. \returns `Corrupt` when it does not open.
[[nodiscard]] Result<std::string> passwordOf(SecretKeeper &keeper, const StoreRecord &store);

} // namespace snugwalk
