// SPDX-License-Identifier: Apache-2.0
// The Secret Service by libsecret. Values are hexadecimal, since it keeps texts.
#include "stores/system_keeper.hpp"

#include <memory>

#include <libsecret/secret.h>

#include "base/text.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

const SecretSchema *schema()
{
    static const SecretSchema *const made =
        secret_schema_new("snugwalk.secret", SECRET_SCHEMA_NONE, "folder", SECRET_SCHEMA_ATTRIBUTE_STRING,
                          "name", SECRET_SCHEMA_ATTRIBUTE_STRING, nullptr);
    return made;
}

Error refused(GError *fault)
{
    const std::unique_ptr<GError, decltype(&g_error_free)> held(fault, g_error_free);
    return {Errc::Io, "the key store of the system did not answer", held ? held->message : "",
            "unlock it, and do it again"};
}

class SystemKeeper final : public SecretKeeper {
public:
    explicit SystemKeeper(std::string folder) : m_folder(std::move(folder)) {}

    Result<std::optional<Secret>> find(const std::string &name) override
    {
        GError *fault = nullptr;
        const std::unique_ptr<gchar, decltype(&secret_password_free)> text(
            secret_password_lookup_sync(schema(), nullptr, &fault, "folder", m_folder.c_str(), "name",
                                        name.c_str(), nullptr),
            secret_password_free);
        if (fault != nullptr)
            return refused(fault);
        if (!text)
            return std::optional<Secret>();
        const auto bytes = fromHex(text.get());
        const auto secret = Secret::fromBytes(bytes.value_or(""));
        if (!secret)
            return Error{Errc::Corrupt, "the secret in the key store of the system is damaged", name,
                         "remove it there; passwords of stores are typed again then"};
        return std::optional(*secret);
    }

    Status keep(const std::string &name, const Secret &secret) override
    {
        GError *fault = nullptr;
        const std::string label = "Snugwalk: " + name;
        const bool isKept = secret_password_store_sync(
            schema(), SECRET_COLLECTION_DEFAULT, label.c_str(), toHex(secret.view()).c_str(), nullptr, &fault,
            "folder", m_folder.c_str(), "name", name.c_str(), nullptr);
        return isKept ? done() : Status(refused(fault));
    }

    Status forget(const std::string &name) override
    {
        GError *fault = nullptr;
        secret_password_clear_sync(schema(), nullptr, &fault, "folder", m_folder.c_str(), "name",
                                   name.c_str(), nullptr);
        return fault == nullptr ? done() : Status(refused(fault)); // one that is not there is fine
    }

    std::string says() const override
    {
        return "the key store of the system: programs that run as your user can have it while it is unlocked";
    }

private:
    std::string m_folder;
};

} // namespace

std::unique_ptr<SecretKeeper> systemKeeper(const fs::path &folder)
{
    GError *fault = nullptr;
    SecretService *service = secret_service_get_sync(SECRET_SERVICE_OPEN_SESSION, nullptr, &fault);
    if (service == nullptr) {
        g_clear_error(&fault);
        return nullptr; // no bus, or nobody on it who keeps secrets
    }
    g_object_unref(service);
    return std::make_unique<SystemKeeper>(fs::absolute(folder).lexically_normal().string());
}

} // namespace snugwalk
