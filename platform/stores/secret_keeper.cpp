// SPDX-License-Identifier: Apache-2.0
// Secrets as files. A key store of the system would be another maker of the same interface.
#include "stores/secret_keeper.hpp"

#include "stores/private_file.hpp"
#include "sync/secret_file.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

class FileKeeper final : public SecretKeeper {
public:
    explicit FileKeeper(fs::path folder) : m_folder(std::move(folder)) {}

    Result<std::optional<Secret>> find(const std::string &name) override
    {
        const auto secret = readSecretFile(fileOf(name), std::nullopt);
        if (secret)
            return std::optional(*secret);
        if (secret.error().code == Errc::NotFound)
            return std::optional<Secret>();
        return secret.error();
    }

    Status keep(const std::string &name, const Secret &secret) override
    {
        SNUG_TRY(makePrivateFolder(m_folder));
        return writeSecretFile(fileOf(name), secret, std::nullopt);
    }

    Status forget(const std::string &name) override
    {
        std::error_code fault;
        fs::remove(fileOf(name), fault);
        return fault ? Status(Error{Errc::Io, "the secret could not be removed", fileOf(name).string(),
                                    "remove the file by hand"})
                     : done();
    }

    std::string says() const override
    {
        return m_folder.string() +
               ": files for your user alone (0600), without a lock: who can read your files "
               "has them";
    }

private:
    [[nodiscard]] fs::path fileOf(const std::string &name) const { return m_folder / (name + ".key"); }
    fs::path m_folder;
};

} // namespace

std::unique_ptr<SecretKeeper> fileKeeper(const fs::path &folder)
{
    return std::make_unique<FileKeeper>(folder);
}

Result<Secret> secretOf(SecretKeeper &keeper, const std::string &name)
{
    const auto found = keeper.find(name);
    if (!found)
        return found.error();
    if (*found)
        return **found;
    const Secret fresh = Secret::random();
    SNUG_TRY(keeper.keep(name, fresh));
    return fresh;
}

} // namespace snugwalk
