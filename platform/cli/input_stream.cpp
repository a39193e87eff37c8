// SPDX-License-Identifier: Apache-2.0
// Portions of a file, through the C library.
#include "cli/input_stream.hpp"

#include <cerrno>
#include <cstdio>
#include <memory>
#include <vector>

#include "logbook/files.hpp"

namespace snugwalk::cli {
namespace {

constexpr std::size_t portion = std::size_t{1} << 20;

struct Closer {
    void operator()(std::FILE *file) const
    {
        if (file != stdin)
            std::fclose(file);
    }
};

} // namespace

Error inFile(Error error, const std::string &file)
{
    error.where = error.where.empty() ? file : file + ", " + error.where;
    return error;
}

Status readThrough(const std::string &file, const std::function<Status(std::string_view)> &take)
{
    const std::unique_ptr<std::FILE, Closer> input(file == "-" ? stdin : std::fopen(file.c_str(), "rb"));
    if (input == nullptr)
        return systemError(errno, file);
    std::vector<char> buffer(portion);
    for (;;) {
        const std::size_t got = std::fread(buffer.data(), 1, buffer.size(), input.get());
        if (got == 0)
            break;
        if (const Status taken = take({buffer.data(), got}); !taken)
            return inFile(taken.error(), file);
    }
    return std::ferror(input.get()) == 0 ? done() : Status(systemError(errno, file));
}

} // namespace snugwalk::cli
