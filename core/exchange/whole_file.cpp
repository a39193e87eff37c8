// SPDX-License-Identifier: Apache-2.0
// The ZIP's own bookkeeping has no checksum: with this one a flipped bit shows wherever it is.
#include "exchange/whole_file.hpp"

#include <algorithm>
#include <filesystem>
#include <fstream>

#include "keys/hash.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

constexpr std::string_view words = "Snugwalk export 1, BLAKE2b-256 of all bytes before this comment: ";
constexpr std::size_t hexDigits = 64;

std::string sealOf(const Hash &hash) { return std::string(words) + hash.text(); }

struct Whole {
    Hash hash;           ///< of everything but the last bytes
    std::string comment; ///< the last bytes
};

// One pass over the file, a mebibyte at a time.
Result<Whole> readWhole(const std::string &file)
{
    const std::size_t length = words.size() + hexDigits;
    std::error_code fault;
    const std::uintmax_t size = std::filesystem::file_size(file, fault);
    if (fault)
        return systemError(fault.value(), file);
    std::uintmax_t left = size < length ? 0 : size - length;
    std::ifstream in(file, std::ios::binary);
    Hasher hasher;
    std::string block(std::size_t{1024} * 1024, '\0');
    while (in && left > 0) {
        const auto wanted = static_cast<std::streamsize>(std::min<std::uintmax_t>(left, block.size()));
        if (!in.read(block.data(), wanted))
            break;
        hasher.add(std::string_view(block).substr(0, static_cast<std::size_t>(wanted)));
        left -= static_cast<std::uintmax_t>(wanted);
    }
    std::string comment(length, '\0');
    in.read(comment.data(), static_cast<std::streamsize>(length));
    comment.resize(static_cast<std::size_t>(std::max<std::streamsize>(in.gcount(), 0)));
    if (left > 0)
        return Error{Errc::Io, "the file cannot be read to its end", file, "copy it to another disk"};
    return Whole{hasher.finish(), comment};
}

} // namespace

std::string emptySeal() { return sealOf(Hash{}); }

Status sealFile(const std::string &file)
{
    const Result<Whole> whole = readWhole(file);
    if (!whole)
        return whole.error();
    if (whole->comment != emptySeal())
        return Error{Errc::Corrupt, "the archive was not written as it should be", file, "try again"};
    std::fstream out(file, std::ios::binary | std::ios::in | std::ios::out);
    out.seekp(-static_cast<std::streamoff>(hexDigits), std::ios::end);
    out << whole->hash.text();
    out.close();
    return out ? done() : Status(Error{Errc::Io, "the archive cannot be written", file, "try again"});
}

Result<std::optional<std::string>> sealFault(const std::string &file)
{
    const Result<Whole> whole = readWhole(file);
    if (!whole)
        return whole.error();
    if (whole->comment == sealOf(whole->hash))
        return std::optional<std::string>();
    if (whole->comment.starts_with(words))
        return std::optional<std::string>("the file as a whole is not what was written");
    return std::optional<std::string>(
        "the file does not end with its checksum: it was cut, changed or packed anew");
}

} // namespace snugwalk
