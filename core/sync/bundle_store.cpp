// SPDX-License-Identifier: Apache-2.0
// New bytes are spooled to a part file, so that a bundle of many photos never lies in memory.
#include "sync/bundle_store.hpp"

#include <filesystem>
#include <fstream>
#include <set>

#include "base/text.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

Error atFile(Error error, const std::string &file)
{
    error.where = error.where.empty() ? file : error.where;
    return error;
}

std::string freshPart(const std::string &file)
{
    return file + std::string(partMark) + toHex(randomBytes(6));
}

Result<std::string> readAt(const std::string &file, std::int64_t offset, std::int64_t size)
{
    std::string bytes(static_cast<std::size_t>(size), '\0');
    std::ifstream in(file, std::ios::binary);
    in.seekg(offset);
    if (!in.read(bytes.data(), size))
        return Error{Errc::Io, "the file cannot be read", file, "look whether its disk is still there"};
    return bytes;
}

Error cannotWrite(const std::string &file)
{
    return {Errc::Io, "the bundle cannot be written", file, "free some space or choose another disk"};
}

Result<std::string> verified(const std::string &file, const BundleItem &item, std::string_view name)
{
    Result<std::string> bytes = readAt(file, item.offset, item.size);
    if (bytes && blake2b(*bytes) != item.hash)
        return Error{Errc::Corrupt, "a file in the bundle is not what its index says",
                     file + ", " + std::string(name), "ask for the bundle again"};
    return bytes;
}

} // namespace

// A part file that goes with this object.
struct BundleStore::Spool {
    explicit Spool(std::string name) : path(std::move(name)), out(path, std::ios::binary) {}
    Spool(const Spool &) = delete;
    Spool &operator=(const Spool &) = delete;
    ~Spool()
    {
        out.close();
        std::error_code ignored;
        fs::remove(path, ignored);
    }
    std::string path;
    std::ofstream out;
    std::int64_t size = 0;
};

BundleStore::BundleStore(std::string file) : m_file(std::move(file)) {}
BundleStore::~BundleStore() = default;

Result<std::unique_ptr<BundleStore>> BundleStore::open(const std::string &file)
{
    std::unique_ptr<BundleStore> store(new BundleStore(file));
    std::error_code fault;
    if (!fs::exists(file, fault) && !fault)
        return store;
    const Status status = store->readIndex();
    if (!status)
        return atFile(status.error(), file);
    return store;
}

Status BundleStore::readIndex()
{
    std::error_code fault;
    if (!fs::is_regular_file(m_file, fault))
        return Error{Errc::Io, "this is not a plain file", m_file, "give the path of a bundle"};
    const auto total = static_cast<std::int64_t>(fs::file_size(m_file, fault));
    constexpr auto least = static_cast<std::int64_t>(bundleHead.size() + bundleTrailerBytes);
    if (fault)
        return systemError(fault.value(), m_file);
    if (total < least)
        return Error{Errc::Corrupt, "this is no bundle, or it is damaged: it is too short", m_file,
                     "ask for it again; nothing was taken from it"};
    const auto trailer =
        readAt(m_file, total - static_cast<std::int64_t>(bundleTrailerBytes), bundleTrailerBytes);
    const auto head = readAt(m_file, 0, bundleHead.size());
    if (!trailer || !head)
        return trailer ? head.error() : trailer.error();
    const Result<std::size_t> told = bundleIndexLength(*trailer);
    if (!told)
        return told.error();
    const auto length = static_cast<std::int64_t>(*told);
    if (length > total - least)
        return Error{Errc::Corrupt, "this is no bundle, or it is damaged: its index is longer than itself",
                     m_file, "ask for it again; nothing was taken from it"};
    const auto text = readAt(m_file, total - static_cast<std::int64_t>(bundleTrailerBytes) - length, length);
    if (!text)
        return text.error();
    Result<BundleIndex> index = parseBundleIndex(*head, *text, *trailer, total);
    if (!index)
        return index.error();
    m_old = std::move(index).value();
    m_isThere = true;
    return done();
}

Result<std::vector<StoreFile>> BundleStore::list(std::string_view folder)
{
    const std::string prefix = folder.empty() ? "" : std::string(folder) + "/";
    std::map<std::string, std::int64_t> found;
    for (const BundleIndex *index : {&m_old, &m_new}) {
        for (const auto &[name, item] : *index) {
            if (!name.starts_with(prefix))
                continue;
            const std::string rest = name.substr(prefix.size());
            const std::size_t slash = rest.find('/');
            if (slash == std::string::npos)
                found[rest] = item.size;
            else
                found[rest.substr(0, slash + 1)] = 0;
        }
    }
    std::vector<StoreFile> files;
    for (const auto &[name, size] : found)
        files.push_back({name, size});
    return files;
}

Result<std::string> BundleStore::read(std::string_view name, std::int64_t limit)
{
    const auto old = m_old.find(name);
    const auto fresh = m_new.find(name);
    if (old == m_old.end() && fresh == m_new.end())
        return Error{Errc::NotFound, "not in the bundle", std::string(name), ""};
    const BundleItem &item = old != m_old.end() ? old->second : fresh->second;
    if (item.size > limit)
        return Error{Errc::OutOfRange, "larger than such a file can be", std::string(name), ""};
    if (old != m_old.end())
        return verified(m_file, item, name);
    m_spool->out.flush();
    return verified(m_spool->path, item, name);
}

Status BundleStore::publish(std::string_view name, std::string_view bytes)
{
    if (!nameIsFine(name))
        return Error{Errc::InvalidInput, "not a name that a store keeps", std::string(name), ""};
    if (static_cast<std::int64_t>(bytes.size()) > maxBundleFileBytes)
        return Error{Errc::OutOfRange, "more than 64 MiB in one file of a bundle", std::string(name), ""};
    const Hash hash = blake2b(bytes);
    for (const BundleIndex *index : {&m_old, &m_new}) {
        const auto found = index->find(name);
        if (found != index->end() && found->second.hash == hash)
            return done();
        if (found != index->end())
            return Error{Errc::Conflict, "the bundle has other bytes under this name", std::string(name),
                         "keep both and ask the owner"};
    }
    if (m_old.size() + m_new.size() >= maxBundleFiles)
        return Error{Errc::OutOfRange, "more than 100,000 files for one bundle", m_file,
                     "begin another file"};
    if (!m_spool)
        m_spool = std::make_unique<Spool>(freshPart(m_file));
    const BundleItem item{m_spool->size, static_cast<std::int64_t>(bytes.size()), hash};
    m_spool->out.seekp(item.offset); // over what a failed write may have left
    if (!m_spool->out.write(bytes.data(), item.size) || !m_spool->out.flush()) {
        m_spool->out.clear();
        return cannotWrite(m_file);
    }
    m_spool->size += item.size;
    m_new.emplace(name, item);
    return done();
}

Status BundleStore::writeWhole(const std::string &part)
{
    std::ofstream out(part, std::ios::binary);
    out << bundleHead;
    BundleIndex merged = m_old;
    merged.insert(m_new.begin(), m_new.end());
    auto offset = static_cast<std::int64_t>(bundleHead.size());
    for (auto &[name, item] : merged) {
        const Result<std::string> bytes =
            verified(m_old.count(name) > 0 ? m_file : m_spool->path, item, name);
        if (!bytes)
            return bytes.error();
        item.offset = offset;
        offset += item.size;
        out << *bytes;
    }
    out << bundleEnd(merged);
    out.close();
    return out ? done() : Status(cannotWrite(m_file));
}

Status BundleStore::finish()
{
    if (m_new.empty())
        return done();
    const std::string part = freshPart(m_file);
    Status status = writeWhole(part);
    std::error_code fault;
    if (status)
        status = m_isThere ? publishFileOver(part, m_file) : publishFile(part, m_file);
    if (!status) {
        fs::remove(part, fault);
        return atFile(status.error(), m_file);
    }
    m_spool.reset();
    m_new.clear();
    return readIndex();
}

} // namespace snugwalk
