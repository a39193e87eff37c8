// SPDX-License-Identifier: Apache-2.0
// No COSE library is packaged; the one shape is a fixed head, a byte string, and 64 bytes.
#include "sync/envelope.hpp"

#include "base/value.hpp"

namespace snugwalk {
namespace {

// tag 18, array of 4, h'a10127', empty map
constexpr std::string_view head("\xd2\x84\x43\xa1\x01\x27\xa0", 7);
constexpr std::string_view signatureHead("\x58\x40", 2);
constexpr std::size_t signatureBytes = 64;

std::string bytesItem(std::string_view bytes) { return encodeCbor(Value(Bytes{std::string(bytes)})); }

std::string toBeSigned(std::string_view purpose, std::string_view payload)
{
    return encodeCbor(Value::List{"Signature1", Bytes{std::string("\xa1\x01\x27", 3)},
                                  Bytes{std::string(purpose)}, Bytes{std::string(payload)}});
}

Error broken(const char *what) { return {Errc::Corrupt, what, "", ""}; }

} // namespace

std::string signed1(const DeviceKey &key, std::string_view purpose, std::string_view payload)
{
    return std::string(head) + bytesItem(payload) + std::string(signatureHead) +
           key.sign(toBeSigned(purpose, payload));
}

Result<Envelope> parseSigned1(std::string_view bytes)
{
    if (!bytes.starts_with(head))
        return broken("not signed bytes of ours");
    std::string_view rest = bytes.substr(head.size());
    if (rest.size() < 1 + signatureHead.size() + signatureBytes)
        return broken("signed bytes cut short");
    const std::string_view body = rest.substr(0, rest.size() - signatureHead.size() - signatureBytes);
    rest.remove_prefix(body.size());
    if (!rest.starts_with(signatureHead))
        return broken("signed bytes without their signature");
    // the head of a byte string in its shortest form: RFC 8949 sections 3.1 and 4.2.1
    const auto lead = static_cast<unsigned char>(body[0]);
    if (lead < 0x40 || lead > 0x5a)
        return broken("a payload that is not bytes");
    const std::size_t count = lead < 0x58 ? 0 : std::size_t{1} << (lead - 0x58U);
    if (body.size() < 1 + count)
        return broken("a payload that is not bytes");
    const std::string_view payload = body.substr(1 + count);
    std::size_t told = lead - 0x40U;
    if (count > 0) {
        told = 0;
        for (std::size_t i = 0; i < count; ++i)
            told = told << 8U | static_cast<unsigned char>(body[1 + i]);
    }
    const std::size_t least = count == 0 ? 0 : count == 1 ? 24 : count == 2 ? 0x100 : 0x10000;
    if (told != payload.size() || told < least)
        return broken("a payload of another length than it says");
    return Envelope{payload, rest.substr(signatureHead.size())};
}

bool isSignedBy(const Envelope &envelope, std::string_view publicKey, std::string_view purpose)
{
    return verifySignature(publicKey, toBeSigned(purpose, envelope.payload), envelope.signature);
}

} // namespace snugwalk
