// SPDX-License-Identifier: Apache-2.0
// The mask of new files is the process's own: it is set for the call and put back.
#include "stores/private_file.hpp"

#include <sys/stat.h>

#include "logbook/files.hpp"

namespace snugwalk {
namespace {

class OwnerOnly {
public:
    OwnerOnly() : m_before(umask(S_IRWXG | S_IRWXO)) {}
    OwnerOnly(const OwnerOnly &) = delete;
    OwnerOnly &operator=(const OwnerOnly &) = delete;
    ~OwnerOnly() { umask(m_before); }

private:
    mode_t m_before;
};

} // namespace

Status makePrivateFolder(const std::filesystem::path &folder)
{
    const OwnerOnly only;
    return makeFolder(folder);
}

Status replacePrivateFile(const std::filesystem::path &file, std::string_view bytes)
{
    const OwnerOnly only;
    SNUG_TRY(makeFolder(file.parent_path()));
    return replaceFile(file, bytes);
}

} // namespace snugwalk
