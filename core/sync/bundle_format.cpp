// SPDX-License-Identifier: Apache-2.0
// Index lines and trailer, read strictly: sizes are summed against the real length before anything else.
#include "sync/bundle_format.hpp"

#include "base/text.hpp"
#include "sync/store.hpp"

namespace snugwalk {
namespace {

constexpr std::size_t hashDigits = 64;

Error damaged(const std::string &what)
{
    return {Errc::Corrupt, "this is no bundle, or it is damaged: " + what, "",
            "ask for it again; nothing was taken from it"};
}

Error tooLarge(const std::string &what) { return {Errc::OutOfRange, what, "", "ask who made this file"}; }

struct Line {
    std::string name;
    BundleItem item;
};

// `<hash> <size> <name>`, written in one way only.
Result<Line> parseLine(std::string_view text)
{
    if (text.size() < hashDigits + 4 || text[hashDigits] != ' ')
        return damaged("a line of its index");
    const auto hash = Hash::parse(text.substr(0, hashDigits));
    const std::string_view rest = text.substr(hashDigits + 1);
    const std::size_t space = rest.find(' ');
    if (!hash || hash->text() != text.substr(0, hashDigits) || space == std::string_view::npos)
        return damaged("a line of its index");
    const auto size = parseInteger(rest.substr(0, space));
    if (!size || *size < 0 || std::to_string(*size) != rest.substr(0, space))
        return damaged("a size in its index");
    if (*size > maxBundleFileBytes)
        return tooLarge("a bundle with a file of more than 64 MiB");
    const std::string_view name = rest.substr(space + 1);
    if (!nameIsFine(name))
        return damaged("a name in its index");
    return Line{std::string(name), {0, *size, *hash}};
}

std::string bigEndian(std::uint64_t number)
{
    std::string out;
    for (int shift = 56; shift >= 0; shift -= 8)
        out += static_cast<char>(number >> shift & 0xFF);
    return out;
}

} // namespace

Result<std::size_t> bundleIndexLength(std::string_view trailer)
{
    if (trailer.size() != bundleTrailerBytes || !trailer.ends_with(bundleTail))
        return damaged("its end is missing");
    std::uint64_t length = 0;
    for (const char c : trailer.substr(32, 8))
        length = length << 8 | static_cast<unsigned char>(c);
    if (length > maxBundleIndexBytes)
        return tooLarge("a bundle with an index of more than 32 MiB");
    return static_cast<std::size_t>(length);
}

Result<BundleIndex> parseBundleIndex(std::string_view head, std::string_view index, std::string_view trailer,
                                     std::int64_t total)
{
    if (head != bundleHead)
        return damaged("its first line is another");
    const Result<std::size_t> length = bundleIndexLength(trailer);
    if (!length)
        return length.error();
    if (*length != index.size() || blake2b(index).view() != trailer.substr(0, 32))
        return damaged("its index");
    BundleIndex items;
    auto offset = static_cast<std::int64_t>(bundleHead.size());
    while (!index.empty()) {
        const std::size_t end = index.find('\n');
        if (end == std::string_view::npos)
            return damaged("the last line of its index");
        Result<Line> line = parseLine(index.substr(0, end));
        if (!line)
            return line.error();
        if (!items.empty() && line->name <= items.rbegin()->first)
            return damaged("the order of its index");
        if (items.size() == maxBundleFiles)
            return tooLarge("a bundle of more than 100,000 files");
        line->item.offset = offset;
        offset += line->item.size; // 100,000 times 64 MiB stay far below 63 bits
        items.emplace(std::move(line->name), line->item);
        index.remove_prefix(end + 1);
    }
    if (offset + static_cast<std::int64_t>(*length + bundleTrailerBytes) != total)
        return damaged("its length is not what its index says");
    return items;
}

std::string bundleEnd(const BundleIndex &index)
{
    std::string text;
    for (const auto &[name, item] : index)
        text += item.hash.text() + " " + std::to_string(item.size) + " " + name + "\n";
    const std::string hash(blake2b(text).view());
    const std::string length = bigEndian(text.size());
    return text + hash + length + std::string(bundleTail);
}

std::string bundleBytes(const BundleFiles &files)
{
    std::string bytes(bundleHead);
    BundleIndex index;
    for (const auto &[name, content] : files) {
        index.emplace(name, BundleItem{static_cast<std::int64_t>(bytes.size()),
                                       static_cast<std::int64_t>(content.size()), blake2b(content)});
        bytes += content;
    }
    return bytes + bundleEnd(index);
}

Result<BundleFiles> readBundle(std::string_view bytes)
{
    if (bytes.size() < bundleHead.size() + bundleTrailerBytes)
        return damaged("it is too short");
    const std::string_view trailer = bytes.substr(bytes.size() - bundleTrailerBytes);
    const Result<std::size_t> length = bundleIndexLength(trailer);
    if (!length)
        return length.error();
    const std::size_t room = bytes.size() - bundleHead.size() - bundleTrailerBytes;
    if (*length > room)
        return damaged("its index is longer than itself");
    const Result<BundleIndex> index =
        parseBundleIndex(bytes.substr(0, bundleHead.size()),
                         bytes.substr(bytes.size() - bundleTrailerBytes - *length, *length), trailer,
                         static_cast<std::int64_t>(bytes.size()));
    if (!index)
        return index.error();
    BundleFiles files;
    for (const auto &[name, item] : *index) {
        const std::string_view content =
            bytes.substr(static_cast<std::size_t>(item.offset), static_cast<std::size_t>(item.size));
        if (blake2b(content) != item.hash)
            return damaged("the file " + name);
        files.emplace(name, content);
    }
    return files;
}

} // namespace snugwalk
