// SPDX-License-Identifier: Apache-2.0
// A ZIP from anywhere, read with limits. Source [APPNOTE] of the format; bytes through libzip.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"

struct zip;

namespace snugwalk {

struct ZipMember {
    std::string name; ///< raw bytes as they stand in the archive
    std::uint64_t index = 0;
    std::uint64_t size = 0;   ///< bytes once unpacked, as told
    std::uint64_t packed = 0; ///< bytes in the archive
};

/// Bytes as far as they could be read, and what stopped the reading.
struct ZipContent {
    std::string bytes;
    std::optional<Error> fault;
};

inline constexpr std::uint64_t maxZipMembers = 65'534; ///< one more needs the long form of the count
inline constexpr std::uint64_t maxZipRatio = 100;      ///< unpacked to packed, members over 1 MiB

class ZipReader {
public:
    /// How the archive's two directories must agree: in full, or as far as can be read.
    enum class Agreement { Full, Partial };

    /// \returns `NotFound`, `Io`, `InvalidInput` when it is no ZIP or its directories disagree;
    /// `OutOfRange` for more members, more unpacked bytes (1 GiB, or four times the file where that is more)
    /// or a larger ratio than allowed; `Unsupported` for links, encrypted members and kinds of compression
    /// other than none and deflate; `InvalidInput` for two members of one name, upper and lower case alike.
    [[nodiscard]] static Result<ZipReader> open(const std::string &file, Agreement agreement);

    [[nodiscard]] const std::vector<ZipMember> &members() const { return m_members; }

    /// The member's bytes, at most `limit`; its own checksum is looked at.
    [[nodiscard]] Result<std::string> read(const ZipMember &member, std::uint64_t limit) const;
    /// The same as far as it goes, for telling what a damaged archive still has.
    [[nodiscard]] ZipContent readAsFarAsItGoes(const ZipMember &member, std::uint64_t limit) const;

private:
    struct Discard {
        void operator()(zip *archive) const;
    };
    ZipReader() = default;
    [[nodiscard]] Status listMembers(std::uint64_t fileSize);
    std::unique_ptr<zip, Discard> m_archive;
    std::vector<ZipMember> m_members;
};

} // namespace snugwalk
