// SPDX-License-Identifier: Apache-2.0
// A folder as a store: a stick, a shared folder, a drive that some other program carries about.
#pragma once

#include <filesystem>

#include "sync/store.hpp"

namespace snugwalk {

/// Follows no symbolic link below the folder, and reads and writes plain files only. A file is written under
/// a name of its own in the same folder, brought to the disk, read back, then renamed without replacing
/// anything, then the folder is brought to the disk.
class FolderStore final : public Store {
public:
    /// \param root must be there when it is used: a stick that is not put in is `NotFound`, not an empty one.
    explicit FolderStore(std::filesystem::path root) : m_root(std::move(root)) {}

    [[nodiscard]] Result<std::vector<StoreFile>> list(std::string_view folder) override;
    [[nodiscard]] Result<std::string> read(std::string_view name, std::int64_t limit) override;
    [[nodiscard]] Status publish(std::string_view name, std::string_view bytes) override;

private:
    std::filesystem::path m_root;
};

} // namespace snugwalk
