// SPDX-License-Identifier: Apache-2.0
// A folder of its own for one test, gone with it.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

namespace snugwalk::test {

class TempFolder {
public:
    TempFolder();
    TempFolder(const TempFolder &) = delete;
    TempFolder &operator=(const TempFolder &) = delete;
    ~TempFolder();
    [[nodiscard]] const std::filesystem::path &path() const { return m_path; }
    [[nodiscard]] std::string file(std::string_view name) const { return (m_path / name).string(); }

private:
    std::filesystem::path m_path;
};

/// Whole files for tests; a fault of the system ends the test program.
[[nodiscard]] std::string slurp(const std::filesystem::path &file);
void spill(const std::filesystem::path &file, std::string_view bytes);

} // namespace snugwalk::test
