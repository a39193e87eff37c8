// SPDX-License-Identifier: Apache-2.0
// Opening, copying and breaking a device's logbook.
#include "device.hpp"

#include <filesystem>
#include <sqlite3.h>

namespace snugwalk::sim {
namespace {

namespace fs = std::filesystem;

// -1 lets everything through; 0 refuses this commit and lets later ones through
int onCommit(void *left)
{
    int &count = *static_cast<int *>(left);
    if (count < 0)
        return 0;
    return count-- == 0 ? 1 : 0;
}

} // namespace

std::string mutant;

std::string smallPhoto(Dice &dice, std::size_t size)
{
    std::string bytes("\xff\xd8\xff\xda\x00\x02", 6);
    for (std::size_t i = 0; i < size; ++i)
        bytes += static_cast<char>(dice.below(255));
    return bytes + "\xff\xd9";
}

Device::Device(const std::string &folder, const std::string &empty, const std::string &seed,
               std::int64_t clockMillis)
    : clock({fromMillis(clockMillis), ZoneOffset{60}}),
      ids("ids " + seed),
      keys(DeviceKey::fromSeed(blake2b("key " + seed).view())),
      name(seed),
      m_file(folder + "/" + seed + ".snug")
{
    fs::copy_file(empty, m_file, fs::copy_options::overwrite_existing);
    open();
}

void Device::open()
{
    m_commitsLeft = -1;
    m_book.emplace(Logbook::open(m_file, {keys.device, name, &clock, &ids, false}).value());
    SNUG_ASSERT(m_book->db().exec("PRAGMA synchronous = OFF; PRAGMA locking_mode = EXCLUSIVE").has_value());
    if (!mutant.empty()) {
        const std::string sql =
            "CREATE TEMP TRIGGER mutant BEFORE " + mutant + " BEGIN SELECT RAISE(IGNORE); END";
        SNUG_ASSERT(m_book->db().exec(sql.c_str()).has_value());
    }
    sqlite3_commit_hook(m_book->db().raw(), onCommit, &m_commitsLeft);
}

void Device::reopen()
{
    m_book.reset();
    open();
}

void Device::keepCopy()
{
    m_book.reset();
    fs::copy_file(m_file, copyFile(), fs::copy_options::overwrite_existing);
    m_hasCopy = true;
    open();
}

void Device::restoreCopy()
{
    m_book.reset();
    fs::copy_file(copyFile(), m_file, fs::copy_options::overwrite_existing);
    open();
}

void Device::failCommitAfter(int count) { m_commitsLeft = count == 0 ? -1 : count - 1; }

} // namespace snugwalk::sim
