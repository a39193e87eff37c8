// SPDX-License-Identifier: Apache-2.0
// Writing deterministic CBOR, RFC 8949 section 4.2.1.
#include <algorithm>
#include <bit>

#include "base/value.hpp"

namespace snugwalk {
namespace {

void putBigEndian(std::string &out, std::uint64_t value, int bytes)
{
    for (int shift = (bytes - 1) * 8; shift >= 0; shift -= 8)
        out += static_cast<char>((value >> shift) & 0xFF);
}

void putHead(std::string &out, int major, std::uint64_t value)
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

void putText(std::string &out, int major, std::string_view text)
{
    putHead(out, major, text.size());
    out += text;
}

struct Encoder {
    std::string &out;

    void operator()(std::monostate) const { out += '\xF6'; }
    void operator()(bool v) const { out += v ? '\xF5' : '\xF4'; }
    void operator()(std::int64_t v) const
    {
        // RFC 8949 3.1: a negative n is stored as -1 - n, which never overflows in this order.
        if (v >= 0)
            putHead(out, 0, static_cast<std::uint64_t>(v));
        else
            putHead(out, 1, static_cast<std::uint64_t>(-1 - v));
    }
    void operator()(double v) const
    {
        out += '\xFB';
        putBigEndian(out, std::bit_cast<std::uint64_t>(v), 8);
    }
    void operator()(const std::string &v) const { putText(out, 3, v); }
    void operator()(const Bytes &v) const { putText(out, 2, v.data); }
    void operator()(const Value::List &v) const
    {
        putHead(out, 4, v.size());
        for (const Value &item : v)
            std::visit(*this, item.variant());
    }
    void operator()(const Value::Map &v) const
    {
        std::vector<std::pair<std::string, const Value *>> members;
        members.reserve(v.size());
        for (const auto &[key, item] : v) {
            std::string encoded;
            putText(encoded, 3, key);
            members.emplace_back(std::move(encoded), &item);
        }
        // char compares signed; the order asked for is of unsigned bytes
        std::sort(members.begin(), members.end(), [](const auto &a, const auto &b) {
            return std::lexicographical_compare(
                a.first.begin(), a.first.end(), b.first.begin(), b.first.end(),
                [](char x, char y) { return static_cast<unsigned char>(x) < static_cast<unsigned char>(y); });
        });
        putHead(out, 5, v.size());
        for (const auto &[key, item] : members) {
            out += key;
            std::visit(*this, item->variant());
        }
    }
};

} // namespace

std::string encodeCbor(const Value &value)
{
    std::string out;
    std::visit(Encoder{out}, value.variant());
    return out;
}

} // namespace snugwalk
