// SPDX-License-Identifier: Apache-2.0
// Reading deterministic CBOR strictly: foreign bytes must be exactly what our writer would make.
#include <bit>
#include <cmath>

#include "base/cbor.hpp"
#include "base/text.hpp"

namespace snugwalk {
namespace {

struct Head {
    int major;
    int info;
    std::uint64_t value;
};

class Decoder {
public:
    explicit Decoder(std::string_view bytes) : m_bytes(bytes) {}

    Result<Value> whole()
    {
        Result<Value> value = item(0);
        if (value && m_at != m_bytes.size())
            return fault("bytes after the end");
        return value;
    }

    Result<Value> one(int deep) { return item(deep); }
    [[nodiscard]] std::size_t at() const { return m_at; }

    std::optional<std::string_view> onlyText()
    {
        const Result<Head> h = head();
        if (!h || h->major != 3 || h->value != m_bytes.size() - m_at)
            return std::nullopt;
        return m_bytes.substr(m_at);
    }

private:
    Error fault(const char *what) const { return {Errc::Corrupt, what, "byte " + std::to_string(m_at), ""}; }

    Result<Head> head()
    {
        if (m_at >= m_bytes.size())
            return fault("ends too early");
        const auto lead = static_cast<unsigned char>(m_bytes[m_at++]);
        const int major = lead >> 5;
        const int info = lead & 31;
        if (info < 24)
            return Head{major, info, static_cast<std::uint64_t>(info)};
        if (info > 27)
            return fault("indefinite or reserved length");
        const int count = 1 << (info - 24);
        if (m_bytes.size() - m_at < static_cast<std::size_t>(count))
            return fault("ends too early");
        std::uint64_t value = 0;
        for (int i = 0; i < count; ++i)
            value = (value << 8) | static_cast<unsigned char>(m_bytes[m_at++]);
        const std::uint64_t least = count == 1 ? 24 : 1ULL << (4 * count);
        if (major != 7 && value < least)
            return fault("a number not in its shortest form");
        return Head{major, info, value};
    }

    Result<std::string_view> text(std::uint64_t size)
    {
        if (size > m_bytes.size() - m_at)
            return fault("ends too early");
        const std::string_view part = m_bytes.substr(m_at, size);
        m_at += size;
        return part;
    }

    Result<Value> simple(const Head &h)
    {
        if (h.info == 20 || h.info == 21)
            return Value(h.info == 21);
        if (h.info == 22)
            return Value();
        const double number = std::bit_cast<double>(h.value);
        if (h.info == 27 && !std::isnan(number))
            return Value(number);
        return fault("a kind of value that is not used here");
    }

    Result<Value> list(std::uint64_t count, int depth)
    {
        if (count > m_bytes.size() - m_at) // every item takes a byte at least
            return fault("ends too early");
        Value::List items;
        for (std::uint64_t i = 0; i < count; ++i) {
            Result<Value> value = item(depth + 1);
            if (!value)
                return value;
            items.push_back(std::move(*value));
        }
        return Value(std::move(items));
    }

    Result<Value> map(std::uint64_t count, int depth)
    {
        if (count > (m_bytes.size() - m_at) / 2)
            return fault("ends too early");
        Value::Map members;
        std::string_view previous;
        for (std::uint64_t i = 0; i < count; ++i) {
            const Result<std::string_view> key = textKey();
            if (!key)
                return key.error();
            // char_traits<char> compares as unsigned bytes
            if (i > 0 && !cborKeyBefore(previous, *key))
                return fault("keys out of order");
            previous = *key;
            Result<Value> value = item(depth + 1);
            if (!value)
                return value;
            members.emplace(*key, std::move(*value));
        }
        return Value(std::move(members));
    }

    Result<std::string_view> textKey()
    {
        const Result<Head> h = head();
        if (!h)
            return h.error();
        if (h->major != 3)
            return fault("a key that is not text");
        const Result<std::string_view> key = text(h->value);
        if (key && !isUtf8(*key))
            return fault("text that is not UTF-8");
        return key;
    }

    Result<Value> integer(const Head &h)
    {
        if (h.value > 0x7FFFFFFFFFFFFFFFULL)
            return fault("an integer beyond 64 bits");
        const auto magnitude = static_cast<std::int64_t>(h.value);
        return Value(h.major == 0 ? magnitude : -1 - magnitude);
    }

    Result<Value> item(int depth)
    {
        if (depth > maxCborDepth)
            return fault("nested too deeply");
        const Result<Head> h = head();
        if (!h)
            return h.error();
        switch (h->major) {
        case 0:
        case 1:
            return integer(*h);
        case 2:
        case 3: {
            const auto part = text(h->value);
            if (!part)
                return part.error();
            if (h->major == 2)
                return Value(Bytes{std::string(*part)});
            if (!isUtf8(*part))
                return fault("text that is not UTF-8");
            return Value(std::string(*part));
        }
        case 4:
            return list(h->value, depth);
        case 5:
            return map(h->value, depth);
        case 7:
            return simple(*h);
        default:
            return fault("a tag, which is not used here");
        }
    }

    std::string_view m_bytes;
    std::size_t m_at = 0;
};

} // namespace

Result<Value> decodeCbor(std::string_view bytes) { return Decoder(bytes).whole(); }

Result<Value> takeCbor(std::string_view &bytes, int deep)
{
    Decoder decoder(bytes);
    Result<Value> value = decoder.one(deep);
    if (value)
        bytes.remove_prefix(decoder.at());
    return value;
}

std::optional<std::string_view> cborText(std::string_view item) { return Decoder(item).onlyText(); }

Status checkEncodable(const Value &value)
{
    // the reader is the one judge of what it takes, so the two can never disagree
    const Result<Value> back = decodeCbor(encodeCbor(value));
    if (!back)
        return Error{Errc::InvalidInput, "cannot be stored: " + back.error().what, "",
                     "correct the text or number"};
    return done();
}

} // namespace snugwalk
