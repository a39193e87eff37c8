// SPDX-License-Identifier: Apache-2.0
// A store in memory: what the single file to hand over is filled from, and what tests break on purpose.
#pragma once

#include <map>
#include <string>

#include "sync/store.hpp"

namespace snugwalk {

class MemoryStore final : public Store {
public:
    [[nodiscard]] Result<std::vector<StoreFile>> list(std::string_view folder) override;
    [[nodiscard]] Result<std::string> read(std::string_view name, std::int64_t limit) override;
    [[nodiscard]] Status publish(std::string_view name, std::string_view bytes) override;

    std::map<std::string, std::string, std::less<>> files;
};

} // namespace snugwalk
