// SPDX-License-Identifier: Apache-2.0
// 32 plain bytes, or a map with what Argon2id needs.
#include "sync/secret_file.hpp"

#include <cerrno>
#include <fcntl.h>
#include <sodium.h>
#include <sys/stat.h>
#include <unistd.h>

#include "base/text.hpp"
#include "base/value.hpp"
#include "keys/hash.hpp"
#include "keys/sodium_ready.hpp"
#include "logbook/files.hpp"

namespace snugwalk {
namespace {

namespace fs = std::filesystem;

constexpr std::size_t maxFile = 512;
constexpr std::int64_t maxMemory = std::int64_t{1} << 30; // a hostile file must not take more
constexpr std::int64_t maxPasses = 16;
constexpr std::string_view bound = "snugwalk secret 1";

Result<Secret> stretched(const std::string &passphrase, const std::string &salt, std::int64_t passes,
                         std::int64_t memory)
{
    detail::sodiumReady();
    std::string key(32, '\0');
    if (salt.size() != crypto_pwhash_SALTBYTES || passes < 1 || passes > maxPasses || memory < 8192 ||
        memory > maxMemory ||
        crypto_pwhash(reinterpret_cast<unsigned char *>(key.data()), key.size(), passphrase.data(),
                      passphrase.size(), reinterpret_cast<const unsigned char *>(salt.data()),
                      static_cast<unsigned long long>(passes), static_cast<std::size_t>(memory),
                      crypto_pwhash_ALG_ARGON2ID13) != 0)
        return Error{Errc::Corrupt, "the secret's lock cannot be used", "", "restore it from its words"};
    return Secret::fromBytes(key);
}

Result<std::string> locked(const Secret &secret, const std::string &passphrase)
{
    const std::string salt = randomBytes(crypto_pwhash_SALTBYTES);
    constexpr std::int64_t passes = crypto_pwhash_OPSLIMIT_INTERACTIVE;
    constexpr std::int64_t memory = crypto_pwhash_MEMLIMIT_INTERACTIVE;
    const auto key = stretched(passphrase, salt, passes, memory);
    if (!key)
        return key.error();
    const std::string nonce = randomBytes(24);
    return encodeCbor(Value::Map{{"v", 1},
                                 {"salt", Bytes{salt}},
                                 {"passes", passes},
                                 {"memory", memory},
                                 {"nonce", Bytes{nonce}},
                                 {"cipher", Bytes{seal(*key, nonce, secret.view(), bound)}}});
}

Status writePrivate(const fs::path &file, std::string_view bytes)
{
    const fs::path part = file.string() + std::string(partMark) + toHex(randomBytes(6));
    const int fd = ::open(part.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC | O_NOFOLLOW, 0600);
    if (fd < 0)
        return systemError(errno, file);
    const bool written = ::fchmod(fd, 0600) == 0 &&
                         ::write(fd, bytes.data(), bytes.size()) == static_cast<ssize_t>(bytes.size()) &&
                         ::fsync(fd) == 0;
    int number = errno;
    bool placed = ::close(fd) == 0 && written;
    if (placed && ::rename(part.c_str(), file.c_str()) != 0) {
        number = errno;
        placed = false;
    }
    if (!placed) {
        ::unlink(part.c_str());
        return systemError(number, file);
    }
    return done();
}

Result<std::string> readPrivate(const fs::path &file)
{
    struct stat about {};
    if (::stat(file.c_str(), &about) != 0)
        return systemError(errno, file);
    if ((about.st_mode & (S_IRWXG | S_IRWXO)) != 0)
        return Error{Errc::Io, "other users of this machine may read this secret", file.string(),
                     "take their permissions away (chmod 600)"};
    return readFile(file, maxFile);
}

} // namespace

Status writeSecretFile(const fs::path &file, const Secret &secret,
                       const std::optional<std::string> &passphrase)
{
    if (!passphrase)
        return writePrivate(file, secret.view());
    if (passphrase->empty())
        return Error{Errc::InvalidInput, "an empty passphrase locks nothing", file.string(),
                     "give one, or none at all"};
    const auto bytes = locked(secret, *passphrase);
    return bytes ? writePrivate(file, *bytes) : Status(bytes.error());
}

Result<bool> isLocked(const fs::path &file)
{
    const auto bytes = readPrivate(file);
    if (!bytes)
        return bytes.error();
    return bytes->size() != 32;
}

Result<Secret> readSecretFile(const fs::path &file, const std::optional<std::string> &passphrase)
{
    const auto bytes = readPrivate(file);
    if (!bytes)
        return bytes.error();
    if (bytes->size() == 32)
        return Secret::fromBytes(*bytes);
    const Result<Value> v = decodeCbor(*bytes);
    if (!v || (*v)["v"].asInt() != 1)
        return Error{Errc::Corrupt, "the secret's file is damaged", file.string(),
                     "restore it from its words"};
    if (!passphrase)
        return Error{Errc::InvalidInput, "this secret is locked", file.string(), "give its passphrase"};
    const auto key = stretched(*passphrase, (*v)["salt"].asBytes().value_or(""),
                               (*v)["passes"].asInt().value_or(0), (*v)["memory"].asInt().value_or(0));
    if (!key)
        return key.error();
    const auto plain =
        unseal(*key, (*v)["nonce"].asBytes().value_or(""), (*v)["cipher"].asBytes().value_or(""), bound);
    if (!plain)
        return Error{Errc::InvalidInput, "this passphrase does not open the secret", file.string(),
                     "type it again, or restore it from its words"};
    return Secret::fromBytes(*plain);
}

} // namespace snugwalk
