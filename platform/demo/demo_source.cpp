// SPDX-License-Identifier: Apache-2.0
// Bytes out of the program, or out of a folder.
#include "demo/demo_source.hpp"

#include "demo/demo_files.hpp"
#include "logbook/files.hpp"

namespace snugwalk {

DemoSource builtInDemo()
{
    return [](const std::string &name) -> Result<std::string> {
        const auto found = embeddedDemoFiles().find(name);
        if (found == embeddedDemoFiles().end())
            return Error{Errc::NotFound, "the demo has no such file", name,
                         "name the demo's folder with --from"};
        return std::string(found->second);
    };
}

DemoSource demoFolder(std::filesystem::path folder)
{
    return [folder = std::move(folder)](const std::string &name) -> Result<std::string> {
        const std::filesystem::path file = folder / name;
        Result<std::string> bytes = readFile(file, std::size_t{64} << 20);
        if (!bytes)
            return Error{bytes.error().code, bytes.error().what, file.string(),
                         "name the demo's folder with --from, or leave it out"};
        return bytes;
    };
}

} // namespace snugwalk
