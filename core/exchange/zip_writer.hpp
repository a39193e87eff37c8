// SPDX-License-Identifier: Apache-2.0
// Writing a ZIP whose members are stored as they are: a flipped bit then costs one line, not the rest.
#pragma once

#include <deque>
#include <filesystem>
#include <memory>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "base/time.hpp"

struct zip;

namespace snugwalk {

class ZipWriter {
public:
    /// \param file must not exist. \param when what every member is dated, UTC.
    [[nodiscard]] static Result<ZipWriter> create(const std::string &file, Instant when);

    /// Kept until `close`.
    [[nodiscard]] Status addBytes(const std::string &name, std::string bytes);
    /// Read when the archive is closed.
    [[nodiscard]] Status addFile(const std::string &name, const std::filesystem::path &source);
    /// Writes everything; after an error there is no file. `Io` in words for a person.
    [[nodiscard]] Status close(const std::string &comment);

private:
    struct Discard {
        void operator()(zip *archive) const;
    };
    ZipWriter() = default;
    [[nodiscard]] Error lastError() const;
    [[nodiscard]] Status settle(std::int64_t index);
    std::string m_file;
    Instant m_when{};
    std::deque<std::string> m_bytes; // their places must not change while the library points at them
    std::unique_ptr<zip, Discard> m_archive;
};

} // namespace snugwalk
