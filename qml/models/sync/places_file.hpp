// SPDX-License-Identifier: Apache-2.0
// Folders as stores, listed in one JSON file.
#pragma once

#include <filesystem>
#include <mutex>

#include "sync_places.hpp"

namespace snugwalk {

/// {"stores": [{"name", "kind", "place", "at", "carried"}]}; another kind is listed and left alone.
class PlacesFile final : public SyncPlaces {
public:
    explicit PlacesFile(std::filesystem::path file) : m_file(std::move(file)) {}

    [[nodiscard]] Result<std::vector<SyncPlace>> list() override;
    [[nodiscard]] Status addFolder(const std::string &name, const std::string &folder) override;
    [[nodiscard]] Status remove(const std::string &name) override;
    [[nodiscard]] Result<OpenedPlace> open(const std::string &name) override;
    [[nodiscard]] Status noteMet(const std::string &name, const LocalTime &at, std::int64_t carried,
                                 const ExchangeSummary &summary) override;

private:
    [[nodiscard]] Result<std::vector<SyncPlace>> read() const;
    [[nodiscard]] Status write(const std::vector<SyncPlace> &places) const;

    std::filesystem::path m_file;
    std::mutex m_one; ///< at a time: reading and writing back belong together
};

} // namespace snugwalk
