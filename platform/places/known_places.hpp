// SPDX-License-Identifier: Apache-2.0
// The stores of this device, for the app: the same list that the command line keeps.
#pragma once

#include <filesystem>
#include <memory>
#include <mutex>

#include "sync_places.hpp"

namespace snugwalk {

class SecretKeeper;

/// \param folder where the list and the secrets lie
class KnownPlaces final : public SyncPlaces {
public:
    explicit KnownPlaces(std::filesystem::path folder);
    ~KnownPlaces() override;

    [[nodiscard]] Result<std::vector<SyncPlace>> list() override;
    [[nodiscard]] Status add(const NewPlace &place) override;
    [[nodiscard]] Status remove(const std::string &name) override;
    [[nodiscard]] Result<OpenedPlace> open(const std::string &name) override;
    [[nodiscard]] Status noteMet(const std::string &name, const LocalTime &at, std::int64_t carried,
                                 const ExchangeSummary &summary) override;

private:
    [[nodiscard]] SecretKeeper &secrets();

    std::filesystem::path m_folder;
    std::unique_ptr<SecretKeeper> m_secrets; ///< made when first needed
    std::mutex m_one; ///< at a time: reading the list and writing it back belong together
};

} // namespace snugwalk
