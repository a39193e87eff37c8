// SPDX-License-Identifier: Apache-2.0
// Words, codes and keys of the commands around sync.
#include "cli/sync/parts.hpp"

#include <iostream>
#include <iterator>
#include <unistd.h>

#include "base/text.hpp"
#include "device/device.hpp"
#include "logbook/files.hpp"
#include "qr/qr_code.hpp"
#include "stores/system_keeper.hpp"
#include "sync/words.hpp"

namespace snugwalk::cli {
namespace {

constexpr std::size_t maxTyped = std::size_t{64} * 1024;
constexpr std::size_t wordsALine = 6;

Result<std::string> readTyped(const std::string &from)
{
    if (from != "-") {
        auto bytes = readFile(from, maxTyped);
        if (!bytes && bytes.error().code == Errc::OutOfRange)
            return Error{Errc::InvalidInput, "this file is neither words nor a code", from,
                         "give what the other device showed"};
        return bytes;
    }
    std::string bytes;
    for (std::istreambuf_iterator<char> in(std::cin), end; in != end && bytes.size() < maxTyped; ++in)
        bytes += *in;
    return bytes;
}

bool looksTyped(const std::string &bytes)
{
    for (const char c : bytes) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z') || (c >= '0' && c <= '9');
        if (!letter && c != ' ' && c != '\n' && c != '\r' && c != '\t' && c != '-')
            return false;
    }
    return true;
}

} // namespace

Result<Keys> keysOf(Session &session, bool create)
{
    const auto book = session.book(create);
    if (!book)
        return book.error();
    return Keys((*book)->device());
}

std::unique_ptr<SecretKeeper> keeper() { return bestKeeper(dataFolder() / "secrets"); }

Result<Id> sharedRig(Session &session)
{
    const Result<Rig> rig = session.rig();
    if (rig)
        return rig->id;
    const auto book = session.book();
    if (!book || rig.error().code != Errc::NotFound || !session.globals().rig.empty())
        return rig.error();
    const auto shared = sharedRigs(**book);
    if (!shared || shared->size() != 1)
        return shared ? rig.error() : shared.error();
    return shared->front().first;
}

Result<std::string> bytesTyped(const std::vector<std::string> &words, const std::string &from)
{
    if (words.empty() == from.empty())
        return Error{Errc::Usage, "type the words, or name a file that has them", "--from", "one of both"};
    if (from.empty())
        return bytesFromWords(join(words, " "));
    const auto bytes = readTyped(from);
    if (!bytes)
        return bytes.error();
    return looksTyped(*bytes) ? bytesFromWords(*bytes) : bytes;
}

std::string wordLines(const std::string &words)
{
    const auto list = split(words, ' ');
    std::string out;
    for (std::size_t i = 0; i < list.size(); ++i) {
        if (i % wordsALine == 0) {
            const std::string number = std::to_string(i + 1);
            out += (i == 0 ? "" : "\n") + std::string(number.size() < 5 ? 5 - number.size() : 0, ' ') +
                   number + " ";
        }
        out += " " + std::string(list[i]);
    }
    return out + "\n";
}

Result<Shown> shown(const std::string &bytes, const std::string &qrFile)
{
    Shown shown{wordsFrom(bytes), ""};
    const auto code = qrFrom(bytes);
    if (!code)
        return code.error();
    if (!qrFile.empty())
        SNUG_TRY(writeQr(*code, qrFile));
    shown.text = wordLines(shown.words) + "\n" + qrText(*code, isatty(STDOUT_FILENO) == 1);
    return shown;
}

std::string entryName(const EntryId &id)
{
    return derivedId("snugwalk entry name", id.stream.bytes(), std::to_string(id.seq)).shortText();
}

std::string counted(std::int64_t count, const std::string &one, const std::string &many)
{
    return std::to_string(count) + " " + (count == 1 ? one : many);
}

} // namespace snugwalk::cli
