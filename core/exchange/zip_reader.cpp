// SPDX-License-Identifier: Apache-2.0
// Members are judged by what the directory says before a byte is unpacked, and by what comes out after.
#include "exchange/zip_reader.hpp"

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <set>
#include <zip.h>

#include "base/text.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

constexpr std::uint64_t mebibyte = 1024 * 1024;

Error refused(Errc code, const std::string &what, const std::string &where)
{
    return {code, what, where, "ask for the file as Snugwalk exports it"};
}

// The name for an error: bytes of strangers do not go to a terminal.
std::string plain(std::string_view name)
{
    std::string out;
    for (const char c : name.substr(0, 100))
        out += c >= 0x20 && c < 0x7F ? c : '?';
    return out;
}

// The count as the end of the archive tells it, so that a list of a million is refused before it is read.
bool tellsTooMany(const std::string &file, std::uint64_t size)
{
    constexpr std::uint64_t longestEnd = 22 + 65'535; // APPNOTE 4.3.16 with the longest comment
    const std::uint64_t length = std::min(size, longestEnd);
    std::string tail(length, '\0');
    std::ifstream in(file, std::ios::binary);
    in.seekg(static_cast<std::streamoff>(size - length));
    in.read(tail.data(), static_cast<std::streamsize>(length));
    const std::size_t at = tail.rfind("PK\5\6");
    return in && at != std::string::npos && at + 12 <= tail.size() &&
           tail.compare(at + 10, 2, "\xFF\xFF") == 0;
}

bool isFileOrFolder(std::uint32_t attributes)
{
    const std::uint32_t kind = attributes >> 16 & 0170000U; // as UNIX systems write it; 0 elsewhere
    return kind == 0 || kind == 0100000U || kind == 0040000U;
}

Status checkMember(zip *archive, const zip_stat_t &about, const std::string &name)
{
    constexpr zip_uint64_t needed = ZIP_STAT_SIZE | ZIP_STAT_COMP_SIZE | ZIP_STAT_COMP_METHOD;
    if ((about.valid & needed) != needed)
        return refused(Errc::InvalidInput, "a member of the archive without its size", plain(name));
    if ((about.valid & ZIP_STAT_ENCRYPTION_METHOD) != 0 && about.encryption_method != ZIP_EM_NONE)
        return refused(Errc::Unsupported, "a member of the archive is encrypted", plain(name));
    if (about.comp_method != ZIP_CM_STORE && about.comp_method != ZIP_CM_DEFLATE)
        return refused(Errc::Unsupported, "a member is packed in a way we do not read", plain(name));
    zip_uint8_t system = 0;
    zip_uint32_t attributes = 0;
    if (zip_file_get_external_attributes(archive, about.index, 0, &system, &attributes) != 0)
        return refused(Errc::InvalidInput, "a member of the archive cannot be looked at", plain(name));
    if (!isFileOrFolder(attributes))
        return refused(Errc::Unsupported, "the archive holds a link or a device", plain(name));
    if (about.size > mebibyte && about.size / maxZipRatio > about.comp_size)
        return refused(Errc::OutOfRange, "a member would unpack to over 100 times its size", plain(name));
    return done();
}

} // namespace

void ZipReader::Discard::operator()(zip *archive) const { zip_discard(archive); }

Result<ZipReader> ZipReader::open(const std::string &file, Agreement agreement)
{
    std::error_code fault;
    const std::uint64_t size = std::filesystem::file_size(file, fault);
    if (fault)
        return systemError(fault.value(), file);
    if (!std::filesystem::is_regular_file(file, fault))
        return Error{Errc::Io, "this is not a plain file", file, "give the path of a file"};
    if (tellsTooMany(file, size))
        return refused(Errc::OutOfRange, "the archive has more members than a logbook can have", file);
    int code = 0;
    const int flags = ZIP_RDONLY | (agreement == Agreement::Full ? ZIP_CHECKCONS : 0);
    ZipReader reader;
    reader.m_archive.reset(zip_open(file.c_str(), flags, &code));
    if (!reader.m_archive && (code == ZIP_ER_OPEN || code == ZIP_ER_READ))
        return systemError(errno, file);
    if (!reader.m_archive)
        return refused(Errc::InvalidInput,
                       code == ZIP_ER_INCONS ? "the archive says different things about one file"
                                             : "this is no ZIP, or its directory is damaged",
                       file);
    SNUG_TRY(reader.listMembers(size));
    return reader;
}

Status ZipReader::listMembers(std::uint64_t fileSize)
{
    const zip_int64_t count = zip_get_num_entries(m_archive.get(), 0);
    if (count < 0 || static_cast<std::uint64_t>(count) > maxZipMembers)
        return refused(Errc::OutOfRange, "the archive has more members than a logbook can have", "");
    const std::uint64_t limit = std::max(1024 * mebibyte, 4 * fileSize);
    std::uint64_t total = 0;
    std::set<std::string> names;
    for (std::uint64_t i = 0; i < static_cast<std::uint64_t>(count); ++i) {
        zip_stat_t about;
        const char *name = zip_get_name(m_archive.get(), i, ZIP_FL_ENC_RAW);
        if (name == nullptr || zip_stat_index(m_archive.get(), i, 0, &about) != 0)
            return refused(Errc::InvalidInput, "a member of the archive cannot be looked at",
                           "member " + std::to_string(i + 1));
        ZipMember member{name, i, 0, 0};
        SNUG_TRY(checkMember(m_archive.get(), about, member.name));
        member.size = about.size;
        member.packed = about.comp_size;
        if (!names.insert(lowerAscii(member.name)).second)
            return refused(Errc::InvalidInput, "two members of one name", plain(member.name));
        if (member.size > limit - total)
            return refused(Errc::OutOfRange, "the archive would unpack to far more than it is", "");
        total += member.size;
        m_members.push_back(std::move(member));
    }
    return done();
}

ZipContent ZipReader::readAsFarAsItGoes(const ZipMember &member, std::uint64_t limit) const
{
    ZipContent content;
    const auto fail = [&](Errc code, const char *what) {
        content.fault = refused(code, what, plain(member.name));
        return content;
    };
    if (member.size > limit)
        return fail(Errc::OutOfRange, "larger than such a file can be");
    zip_file_t *file = zip_fopen_index(m_archive.get(), member.index, 0);
    if (file == nullptr)
        return fail(Errc::Corrupt, "it cannot be found in the archive");
    std::string block(static_cast<std::size_t>(std::min<std::uint64_t>(member.size + 1, mebibyte)), '\0');
    zip_int64_t got = 0;
    while ((got = zip_fread(file, block.data(), block.size())) > 0 && content.bytes.size() <= member.size)
        content.bytes.append(block, 0, static_cast<std::size_t>(got));
    zip_fclose(file);
    if (got < 0)
        return fail(Errc::Corrupt, "its bytes are not what was packed");
    if (content.bytes.size() != member.size)
        return fail(Errc::Corrupt, "its length is not what the archive says");
    return content;
}

Result<std::string> ZipReader::read(const ZipMember &member, std::uint64_t limit) const
{
    ZipContent content = readAsFarAsItGoes(member, limit);
    if (content.fault)
        return *content.fault;
    return std::move(content.bytes);
}

} // namespace snugwalk
