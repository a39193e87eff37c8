// SPDX-License-Identifier: Apache-2.0
// Writing deterministic CBOR, RFC 8949 section 4.2.1.
#include <algorithm>
#include <bit>

#include "base/cbor.hpp"

namespace snugwalk {
namespace {

void putBigEndian(std::string &out, std::uint64_t value, int bytes)
{
    for (int shift = (bytes - 1) * 8; shift >= 0; shift -= 8)
        out += static_cast<char>((value >> shift) & 0xFF);
}

struct Encoder {
    std::string &out;

    void operator()(std::monostate) const { out += cborNull; }
    void operator()(bool v) const { out += v ? '\xF5' : '\xF4'; }
    void operator()(std::int64_t v) const { putCborNumber(out, v); }
    void operator()(double v) const
    {
        out += '\xFB';
        putBigEndian(out, std::bit_cast<std::uint64_t>(v), 8);
    }
    void operator()(const std::string &v) const { putCborText(out, v); }
    void operator()(const Bytes &v) const { putCborBytes(out, v.data); }
    void operator()(const Value::List &v) const
    {
        putCborHead(out, 4, v.size());
        for (const Value &item : v)
            std::visit(*this, item.variant());
    }
    void operator()(const Value::Map &v) const
    {
        std::vector<const Value::Map::value_type *> members;
        members.reserve(v.size());
        for (const auto &member : v)
            members.push_back(&member);
        std::sort(members.begin(), members.end(),
                  [](const auto *a, const auto *b) { return cborKeyBefore(a->first, b->first); });
        putCborHead(out, 5, v.size());
        for (const auto *member : members) {
            putCborText(out, member->first);
            std::visit(*this, member->second.variant());
        }
    }
};

} // namespace

void putCborHead(std::string &out, int major, std::uint64_t value)
{
    const int lead = major << 5;
    if (value < 24) {
        out += static_cast<char>(lead | static_cast<int>(value));
        return;
    }
    const int bytes = value <= 0xFF ? 1 : value <= 0xFFFF ? 2 : value <= 0xFFFFFFFFU ? 4 : 8;
    out += static_cast<char>(lead | (bytes == 1 ? 24 : bytes == 2 ? 25 : bytes == 4 ? 26 : 27));
    putBigEndian(out, value, bytes);
}

void putCborBytes(std::string &out, std::string_view bytes)
{
    putCborHead(out, 2, bytes.size());
    out += bytes;
}

void putCborText(std::string &out, std::string_view text)
{
    putCborHead(out, 3, text.size());
    out += text;
}

void putCborNumber(std::string &out, std::int64_t number)
{
    // RFC 8949 3.1: a negative n is stored as -1 - n, which never overflows in this order.
    if (number >= 0)
        putCborHead(out, 0, static_cast<std::uint64_t>(number));
    else
        putCborHead(out, 1, static_cast<std::uint64_t>(-1 - number));
}

void putCbor(std::string &out, const Value &value) { std::visit(Encoder{out}, value.variant()); }

void putCborMap(std::string &out, const Value::Map &map) { Encoder{out}(map); }

std::string encodeCbor(const Value &value)
{
    std::string out;
    putCbor(out, value);
    return out;
}

} // namespace snugwalk
