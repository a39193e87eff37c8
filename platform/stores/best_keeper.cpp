// SPDX-License-Identifier: Apache-2.0
// One secret lies in one place: moved, never copied.
#include "stores/system_keeper.hpp"

namespace snugwalk {
namespace {

class MovingKeeper final : public SecretKeeper {
public:
    MovingKeeper(std::unique_ptr<SecretKeeper> system, std::unique_ptr<SecretKeeper> files)
        : m_system(std::move(system)), m_files(std::move(files))
    {}

    Result<std::optional<Secret>> find(const std::string &name) override
    {
        auto before = m_files->find(name);
        if (!before)
            return before;
        if (!*before)
            return m_system->find(name);
        // A key store that refuses now may take it next time; the file still has it.
        if (m_system->keep(name, **before))
            SNUG_TRY(m_files->forget(name));
        return before;
    }

    Status keep(const std::string &name, const Secret &secret) override
    {
        SNUG_TRY(m_system->keep(name, secret));
        return m_files->forget(name);
    }

    Status forget(const std::string &name) override
    {
        SNUG_TRY(m_files->forget(name));
        return m_system->forget(name);
    }

    std::string says() const override { return m_system->says(); }

private:
    std::unique_ptr<SecretKeeper> m_system;
    std::unique_ptr<SecretKeeper> m_files;
};

} // namespace

std::unique_ptr<SecretKeeper> bestKeeper(const std::filesystem::path &folder)
{
    auto system = systemKeeper(folder);
    auto files = fileKeeper(folder);
    if (!system)
        return files;
    return std::make_unique<MovingKeeper>(std::move(system), std::move(files));
}

} // namespace snugwalk
