// SPDX-License-Identifier: Apache-2.0
// Folders below the system's place for short-lived files.
#include "support/temp_folder.hpp"

#include <cstdlib>
#include <fstream>
#include <iterator>

#include "base/contract.hpp"

namespace snugwalk::test {

TempFolder::TempFolder()
{
    std::string name = (std::filesystem::temp_directory_path() / "snugwalk-test-XXXXXX").string();
    SNUG_ASSERT(::mkdtemp(name.data()) != nullptr);
    m_path = name;
}

TempFolder::~TempFolder()
{
    std::error_code ignored;
    std::filesystem::remove_all(m_path, ignored);
}

std::string slurp(const std::filesystem::path &file)
{
    std::ifstream in(file, std::ios::binary);
    SNUG_ASSERT(in.good());
    return {std::istreambuf_iterator<char>(in), std::istreambuf_iterator<char>()};
}

void spill(const std::filesystem::path &file, std::string_view bytes)
{
    std::ofstream out(file, std::ios::binary | std::ios::trunc);
    out.write(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    out.close();
    SNUG_ASSERT(out.good());
}

} // namespace snugwalk::test
